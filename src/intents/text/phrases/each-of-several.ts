/** "half a dozen of each of five flavours", "20 of each in three flavours": so many times so many, or one flavor's share. */
import { isToldOf, isWeighed, many, manySaid } from "./many-said.ts";
import type { Phrase } from "./phrase.ts";

const ways =
  "((?:[2-9]|two|three|four|five|six|seven|eight|nine|ten|a dozen)) (?:different |other )?(flavou?rs|colou?rs|kinds|sorts|types|tastes|varieties|fillings|ones)";
const of = "(?: (?:macarons?|macaroons?|macs))?";
/** What is asked of one of them. */
const perOne =
  /,? ?(?:(?:of|for|in|per|by) (?:each|every|one|a|the)? ?(?:single |one )?(?:flavou?rs?|colou?rs?|kinds?|sorts?|types?|tastes?|fillings?|of them)|\bper (?:flavou?r|colou?r|kind|sort|type|taste)|\bfor each(?: one)?|\beach(?: (?:flavou?r|colou?r|kind|one))?)(?= ?[?.!]*$)/;
const asked = /\b(?:how much|how many|what(?:'s|s)?|batter|filling|shells|trays|whites)\b[^,.;?]*[?.!]*$/;

export const eachOfSeveral = (): readonly Phrase[] => [
  {
    marks: [" each", " every"],
    from: new RegExp(
      `^(?=.{0,240}$)(.*?)(?<![\\d.,/-])\\b(${many})${of} (?:of |for )?(?:each|every)(?: one)?(?: of| in| for| from|,| x)? (?:the |my |our |her )?${ways}(?: i (?:do|make|have))?(.*)$`,
      "g",
    ),
    to: (said, before = "", number = "", kinds = "", what = "", rest = "") => {
      const [each, sorts] = [manySaid(number), kinds === "a dozen" ? 12 : manySaid(kinds)];
      const isOther = isToldOf.test(said) || isWeighed.test(said);
      if (each < 1 || sorts < 2 || isOther || !asked.test(`${before} ${rest}`)) return said;
      if (perOne.test(rest)) return `${before}${each} macarons${rest.replace(perOne, "")}`;
      // colors are of the batter; how many flavors there are is of no filling in all
      return `${before}${each * sorts} macarons${/^colou?r/.test(what) ? ` in ${kinds} ${what}` : ""}${rest}`;
    },
  },
];
