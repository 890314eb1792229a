/** Two orders that are one: "24 macarons and another 12 for tomorrow, how much filling in all" are 36 macarons. */
import { smallNumbers, tens } from "../../../../data/words/numbers.ts";
import type { Phrase } from "./phrase.ts";
import { spelt } from "./spelt.ts";

const many = `(?<![\\d.,:/-])(\\d{1,3}(?!\\d)|a dozen|two dozen|${spelt})`;
const macarons = "(?: (?:filled )?(?:macarons?|macs|macaroons?))";
const day =
  "(?: (?:for )?(?:today|tomorrow|tonight|the weekend|(?:on |next )?(?:mon|tues|wednes|thurs|fri|satur|sun)day))";
const forWhom = "(?: for (?:my|the|our|her|his) [a-z]+)";
const more = `(?:another|an extra|a further|an additional|also|extra) ${many}|${many} (?:more|extra|on top|further ones)`;
const asked = "(?:filling|batter|whites|eggs|buttercream|ganache|shells|trays?|almond flour)";
const inAll =
  /\b(?:in all|in total|altogether|all together|together|for all(?: of (?:them|it))?|for both(?: days)?|for the lot|all told|combined)\b/;
/** Sizes and weights may tell the two apart; boxes and prices count otherwise. */
const apart =
  /\d ?(?:mm|cm|g|kg|oz|%)\b|\b(?:box(?:es)?|each|per|price|sell|cost|notes?|timer|split|half|bigger|smaller|ring|instead|inch(?:es)?)\b/;
const clock = /\b(?:at|by|before) \d|\d ?(?:am|pm)\b|o'?clock|\b(?:plan|ready|due|noon|midday|schedule)\b/;

const value = (said: string): number =>
  said === "a dozen" ? 12 : said === "two dozen" ? 24 : (smallNumbers[said] ?? tens[said] ?? Number(said));

/** The sum, and for when only where that is asked. */
function summed(found: readonly string[], numbers: readonly (string | undefined)[], when: string): string {
  const text = String(found.at(-1));
  if (apart.test(text)) return String(found[0]);
  const sum = numbers.reduce((all, each) => all + (each ? value(each) : 0), 0);
  return `${sum} macarons${clock.test(text) ? when : ""}`;
}

export const moreOfThem = (): readonly Phrase[] => [
  {
    marks: [" and ", " plus ", "+", ", another", ", then"],
    from: new RegExp(
      `${many}${macarons}(?:${day}|${forWhom})?(?:,| and|, and| plus| \\+|,? then)+ (?:${more})(?! (?:shells?|halves|boxes|trays?|bowls?|batches|eggs?|whites|g|grams?)\\b)${macarons}?(${day}|${forWhom})?(?=.*\\b(?:${asked}|plan)\\b|(?<=\\b${asked} for [^?]{0,80}))`,
      "g",
    ),
    to: (...found) => summed(found, [found[1], found[2], found[3]], found[4] ?? ""),
  },
  // "24 macarons today and 12 tomorrow", "30 for saturday and another 20 for sunday": only where the sum is asked for
  {
    marks: [" and ", " plus "],
    from: new RegExp(
      `^((?:(?:i|we) (?:make|need|have|bake|want) )?)${many}${macarons}?(?:${day}|${forWhom})(?:,| and|, and| plus)+ (?:another |then )?${many}${macarons}?(?:${day}|${forWhom})(?=[,.]? .*\\b${asked}\\b)`,
      "g",
    ),
    to: (...found) => {
      const text = String(found.at(-1));
      if (!inAll.test(text) || clock.test(text)) return String(found[0]);
      const put = summed(found, [found[2], found[3]], "");
      return put === found[0] ? put : `${found[1]}${put}`;
    },
  },
];
