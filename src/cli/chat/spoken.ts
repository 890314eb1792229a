/** An answer as it is read aloud: the number first, then what to watch for; signs and units as words. */
import type { Answer } from "../../tools/contract/index.ts";
import { answerLines } from "./lines.ts";
import { printable } from "./text.ts";

/** Longer than this nobody listens; the screen has the rest. */
const longest = 900;
/** Wide enough that no line is broken. */
const unbroken = 2000;
const heard = new Set(["headline", "figure", "item", "step", "question", "caution"]);

/** What is said of the answers of a turn. */
export function spokenAnswers(answers: readonly Answer[]): string {
  const lines = answers.flatMap((answer) =>
    answerLines(answer, unbroken, undefined, true)
      .filter(({ tone }) => heard.has(tone))
      .map(({ text }) => text.replace(/^! /, "")),
  );
  return spoken(lines.map((line) => line.trim().replace(/([^.?!:;,])$/, "$1.")).join(" "));
}

/** A unit is one only behind a number: "5 g", and not the g of a word. */
const units: readonly (readonly [RegExp, string])[] = [
  [/(?<=\d) ?°C/g, " degrees Celsius"],
  [/(?<=\d) ?°F/g, " degrees Fahrenheit"],
  [/(?<=\d) ?%/g, " per cent"],
  [/(?<=\d) kg(?!\p{L})/gu, " kilograms"],
  [/(?<=\d) g(?!\p{L})/gu, " grams"],
  [/(?<=\d) mg(?!\p{L})/gu, " milligrams"],
  [/(?<=\d) ml(?!\p{L})/gu, " milliliters"],
  [/(?<=\d) mm(?!\p{L})/gu, " millimeters"],
  [/(?<=\d) cm(?!\p{L})/gu, " centimeters"],
  [/(?<=\d) tsp(?!\p{L})/gu, " teaspoons"],
  [/(?<=\d) tbsp(?!\p{L})/gu, " tablespoons"],
  [/(?<=\d) oz(?!\p{L})/gu, " ounces"],
  [/(?<=\d) lb(?!\p{L})/gu, " pounds"],
  [/(?<=\d) min(?!\p{L})/gu, " minutes"],
  [/(?<=\d) h(?!\p{L})/gu, " hours"],
  [/(?<=\d) s(?!\p{L})/gu, " seconds"],
  // a range, and not the parts of a date
  [/(?<![\d-])(\d+(?:\.\d+)?)[-–](\d+(?:\.\d+)?)(?![\d-])/g, "$1 to $2"],
  [/×/g, " times "],
  [/±/g, " plus or minus "],
  [/−(?=\d)/g, "minus "],
  [/(?<=\d) ?:1(?!\d)/g, " to 1"],
];

/**
 * Text that is safe and plain for a speech program: one line, no control characters, and none of the brackets in which
 * such programs take commands and phonemes. A long one ends at a sentence.
 */
export function spoken(text: string): string {
  const worded = units.reduce((said, [sign, word]) => said.replace(sign, word), printable(text));
  const clean = worded
    .replace(/[^\p{L}\p{N}\p{M}\s.,:;?!'’%°+/-]/gu, " ")
    .replace(/\s+/g, " ")
    .trim();
  if (clean.length <= longest) return clean;
  const cut = clean.slice(0, longest);
  const end = Math.max(cut.lastIndexOf(". "), cut.lastIndexOf("? "), cut.lastIndexOf("! "));
  return end > 0 ? cut.slice(0, end + 1) : cut.slice(0, cut.lastIndexOf(" "));
}
