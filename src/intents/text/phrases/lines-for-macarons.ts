/** "batter for 40 macarons and the eggs", "almond flour for 40 macarons": each line is asked for by itself, for as many. */
import type { Phrase } from "./phrase.ts";

const lead =
  "((?:(?:ok|okay|and|so|oh|now|also|please|can you|could you|give me|tell me|i need|i want),? )*)";
const eggs = "(?:eggs|egg whites|whites|number of eggs|egg count)";
const line =
  "(?:(?:ground )?almonds|almond (?:flour|meal)|(?:powdered|icing|granulated|caster|confectioners) sugar|sugars?)";
const many =
  "((?:\\d+|a dozen|two dozen|three dozen|fifty|forty|thirty|twenty) (?:macarons?|macs)(?: (?:at|of) [\\d.]+ ?(?:cm|mm))?)";
const end = "(?: (?:please|pls|too|as well|for (?:them|it|that|those)))*( ?\\?)?[ .]*$";
const mix = "(?:the )?(?:batter|shells|shell mix|macaronage|trays|whites|eggs|egg whites)";
const asked = "(?:how many|how much|what|whats)";

/** Eggs are counted, the rest is weighed. */
const ask = (name: string): string => (/egg|white/.test(name) ? `how many ${name}` : `how much ${name}`);
const marks = ["macaron", " macs"];

export const linesForMacarons = (): readonly Phrase[] => [
  // "batter for 40 macarons and the eggs", "whites for 40 macarons, and almond flour"
  {
    marks,
    from: new RegExp(
      `^${lead}((?:${asked} )?${mix}) (?:for|to make) ${many},? (?:and|plus|with|&) (?:the |their |its |my |also |${asked} )*(${eggs}|${line})${end}`,
      "g",
    ),
    to: (_said, before = "", first = "", number = "", second = "") =>
      `${before}${first} for ${number}, and ${ask(second)} for ${number}`,
  },
  // "how many eggs and how much almond flour for 40 macarons"
  {
    marks,
    from: new RegExp(
      `^${lead}(?:${asked} )?(?:the )?(${eggs}) and (?:${asked} )?(?:the )?(${line}) (?:do i need |are needed |i need )?(?:for|to make) ${many}${end}`,
      "g",
    ),
    to: (_said, before = "", first = "", second = "", number = "") =>
      `${before}${ask(first)} for ${number}, and ${ask(second)} for ${number}`,
  },
  {
    marks,
    from: new RegExp(`^${lead}(?:the )?(${line}) (?:for|to make) ${many}${end}`, "g"),
    to: (_said, before = "", name = "", number = "") => `${before}${ask(name)} for ${number}`,
  },
];
