/**
 * An order that is told in parts: "two boxes of 12 and one of 6", "5 boxes of 6 pistachio and 3 boxes of 6 rose", "1 dozen
 * lemon, 2 dozen rose", "24 for her and 18 for her sister". Its number is their sum.
 */
import { smallNumbers } from "../../../../data/words/numbers.ts";
import { kind } from "./counts-of-kinds.ts";
import { isSized, isToldOf } from "./many-said.ts";
import type { Phrase } from "./phrase.ts";
import { countSaid } from "./spelt.ts";

const number = `(?:\\d{1,3}|an?|${Object.keys(smallNumbers).join("|")})`;
const joint = "(?:,? and |, ?| & | ?\\+ ?|,? plus )";
const box = "(?:boxe?s?|tins?|packs?)";
const boxes = `(?:(${number}) ${box} (?:of|with) (${number})|(${number}) (?:of|with) (${number}))(?: (?:of )?(${kind}))?(?: (?:macarons?|macs))?`;
const firstBoxes = `${number} ${box} (?:of|with) ${number}(?: (?:of )?${kind})?(?: (?:macarons?|macs))?`;
const moreBoxes = `(?:(?:an?other|also) )?(?:${number} ${box} (?:of|with) ${number}|${number} (?:of|with) ${number})(?: (?:of )?${kind})?(?: (?:macarons?|macs))?`;

const dozens = `(${number}|half an?) dozens?(?: (?:of )?(${kind}))?(?: (?:macarons?|macs))?`;
const someDozens = `(?:${number}|half an?) dozens?(?: (?:of )?${kind})?(?: (?:macarons?|macs))?`;

/** Counted by the dozen too: "1 dozen macarons and 2 dozen cupcakes" is no sum. */
const notMacarons =
  "cup ?cakes?|cookies?|biscuits?|eggs?|scones?|muffins?|brownies?|cakes?|buns?|rolls?|tarts?|truffles?|eclairs?|meringues?|boxes|trays|bags|roses|people|guests|kids|doughnuts?|donuts?|pops|labels?|bottles?";

const isParted =
  /^(?=.*\d ?(?:g|gr|grams?|kg|oz)\b)(?=.*\b(?:split|splits|part|divide|divided|share|portion)\b)/;

interface Part {
  count: number;
  name: string | undefined;
}

/** The sum, with how many there are of each where all of them are named. */
function summed(parts: readonly Part[]): string | undefined {
  const sum = parts.reduce((all, { count }) => all + count, 0);
  if (parts.length < 2 || parts.some(({ count }) => count <= 0)) return undefined;
  const isNamed = parts.every(({ name }) => name !== undefined);
  return `${sum} macarons${isNamed ? `, ${parts.map(({ count, name }) => `${count} ${name}`).join(" and ")}` : ""}`;
}

const who =
  "(?:(?:her|him|me|us|them)(?! )|(?:her|his|my|our|their|the) (?:[a-z]+ )?(?:sister|brother|mum|mom|mother|dad|father|friend|neighbou?r|boss|aunt|cousin|daughter|son|office|school|party|wedding|church|team|class|stall)|(?:her|him|me|us|them))";
const people = `(\\d{1,3})(?: (?:macarons?|macs))? for ${who}`;

export const ordersAdded = (): readonly Phrase[] => [
  // "8 boxes of 4 minus 2 boxes": boxes that were called off
  {
    marks: [" box", " tin", " pack"],
    from: new RegExp(
      `\\b(${number}) (${box}) (of|with) (${number})(?:,? (?:minus|less|without|but not|take away)) (${number}) (?:${box}|of them)(?! (?:of|with) )`,
      "g",
    ),
    to: (said, ...found) => {
      const [all = "", what = "", of = "", each = "", off = ""] = found;
      const left = countSaid(all) - countSaid(off);
      return left > 0 ? `${left} ${what} ${of} ${each}` : said;
    },
  },
  {
    marks: [" box", " tin", " pack"],
    from: new RegExp(`(?<![\\d.,/-])\\b${firstBoxes}(?:${joint}${moreBoxes})+(?![a-z\\d])`, "g"),
    to: (said, ...found) => {
      const parts = [...said.matchAll(new RegExp(boxes, "g"))].map(([, many, each, few, of, name]) => ({
        count: countSaid(many ?? few ?? "") * countSaid(each ?? of ?? ""),
        name,
      }));
      return isToldOf.test(found.at(-1) ?? "") ? said : (summed(parts) ?? said);
    },
  },
  {
    marks: [" dozen"],
    from: new RegExp(
      `(?<![\\d.,/-])\\b${someDozens}(?:${joint}${someDozens})+(?<!dozens?(?= (?:${notMacarons})\\b))(?![a-z\\d])`,
      "g",
    ),
    to: (said, ...found) => {
      const parts = [...said.matchAll(new RegExp(dozens, "g"))].map(([, many = "", name]) => ({
        count: 12 * countSaid(many),
        name,
      }));
      const whole = found.at(-1) ?? "";
      // "600 g batter for 2 dozen lime and 1 dozen rose, how do i part it": the bowl goes by their counts
      if (isParted.test(whole) && parts.every(({ name }) => name !== undefined))
        return parts.map(({ count, name }) => `${count} ${name}`).join(" and ");
      return isToldOf.test(whole) ? said : (summed(parts) ?? said);
    },
  },
  {
    marks: [" for "],
    from: new RegExp(`(?<![\\d.,/-])\\b${people}(?:${joint}${people})+(?![a-z\\d])`, "g"),
    to: (said, ...found) => {
      const parts = [...said.matchAll(new RegExp(people, "g"))].map(([, count]) => ({
        count: Number(count),
        name: undefined,
      }));
      return isSized.test(found.at(-1) ?? "") ? (summed(parts) ?? said) : said;
    },
  },
];
