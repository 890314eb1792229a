/** Lines of a recipe and a second telling of it, in the order that the calculators know; `listKept` finds the name. */
import type { Phrase } from "./phrase.ts";

const polite = "(?:(?:please|pls|for me|for later|and|so|ok|now|also|this|that|it|as well|too),? )*";
/** A list of weights begins here, and nothing is asked before it. */
const list = "(?= ?(?:\\d|(?:[a-z]+ ){1,3}\\d|(?:two|three|four|five|six|seven|eight) (?:egg )?whites))";

/** What one white weighs at the least and at the most, in g: "4 egg whites, 132 g" is one line where it is of them. */
const [lightest, heaviest] = [25, 42];
const numbers = ["one", "two", "three", "four", "five", "six", "seven", "eight"];
const counted = (word: string): number => numbers.indexOf(word) + 1 || Number(word);

export const recipesKept = (): readonly Phrase[] => [
  {
    marks: ["whites, ", "whites: ", "whites ("],
    from: /\b(\d{1,2}|one|two|three|four|five|six|seven|eight) (egg )?whites(?:, | ?: | \()(\d+(?:\.\d+)?) ?(g|grams?)\b\)?(?=[,.;]| and )/g,
    to: (whole, ...found) => {
      const [many = "", egg = "", grams = ""] = found;
      const each = Number(grams) / counted(many);
      return each >= lightest && each <= heaviest ? `${many} ${egg ?? ""}whites weighing ${grams} g` : whole;
    },
  },
  // "save the recipe green ring once more, this time with butter 230 g": the same name, and a list anew
  {
    marks: ["sav", "stor", "keep", "remember", "fil"],
    from: new RegExp(
      `^(${polite}(?:save|store|keep|remember|file) (?:the |my |our )?(?:recipe |formula )?(?:for |called )?[a-z][a-z'-]*(?: [a-z][a-z'-]*){0,3}?),? (?:again|anew|once more|once again|a second time|another time|over|afresh)(?:,? (?:but|only|and|now|this time|with|as|changed to|at|having|like this|like so|it has|using|of)(?![a-z]))*(?: ?[:,-])?${list} ?`,
      "g",
    ),
    to: "$1: ",
  },
];
