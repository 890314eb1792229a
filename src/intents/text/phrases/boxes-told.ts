/** "10 boxes, 5 in each", "50 bags of 2", "boxes of 4, a dozen of them", "orders today 12 + 18 + 24": put as orders are told. */
import { isSized, isToldOf, isWeighed, many, manySaid } from "./many-said.ts";
import type { Phrase } from "./phrase.ts";

const box = "(?:boxes|tins|packs|packets|bags|favou?rs|tubes|cartons|towers|gift boxes|gift bags|trios)";
const isOrder = (whole: string): boolean =>
  isSized.test(whole) && !isToldOf.test(whole) && !isWeighed.test(whole);
const end = "(?= ?[,.;?!]| ?$)";
const bare = "\\d{1,3}";
const joint = "(?:, and | and |, ?| ?\\+ ?| & |,? plus )";

export const boxesTold = (): readonly Phrase[] => [
  // "4 doz"
  {
    marks: [" doz", " dz"],
    from: new RegExp(`(?<![\\d.,/-])\\b(${many}|half an?|an?) (?:doz|dz|dzn|dozn)\\b\\.?`, "g"),
    to: "$1 dozen",
  },
  {
    marks: [" each", " in a", " per ", " of "],
    from: new RegExp(
      `(?<![\\d.,/-])\\b(${many}) (${box})(?:,|:| -)?(?: (?:with|of|and|holding|at))* (${many})(?: (?:macarons?|macs|of them|go|goes))? ?(?:in (?:each|every|a|one)|per|to (?:a|each)|each)(?: (?:box|tin|pack|packet|bag|favou?r|tube|carton|one))?${end}`,
      "g",
    ),
    to: (said, ...found) => {
      const [number = "", , each = ""] = found;
      return isOrder(found.at(-1) ?? "") ? `${number} boxes of ${each}` : said;
    },
  },
  // "50 bags of 2"
  {
    marks: [" bags of", " favo", " tubes of", " cartons of", " packets of", " towers of"],
    from: new RegExp(
      `(?<![\\d.,/-])\\b(${many}) (?:bags|favou?rs|tubes|cartons|packets|towers|gift bags) (?:of|with) (${many})(?: (?:macarons?|macs))?${end}`,
      "g",
    ),
    to: (said, ...found) =>
      isOrder(found.at(-1) ?? "") ? `${found[0] ?? ""} boxes of ${found[1] ?? ""}` : said,
  },
  // "boxes of 4, a dozen of them"
  {
    marks: ["boxes of"],
    from: new RegExp(
      `(?<!${many} )\\bboxes of (${many})(?:,|:| -) ?(?:and )?(${many})(?: of (?:them|those)| boxes)${end}`,
      "g",
    ),
    to: (said, ...found) =>
      isOrder(found.at(-1) ?? "") ? `${found[1] ?? ""} boxes of ${found[0] ?? ""}` : said,
  },
  // "guests 45, three macarons each"
  {
    marks: ["guests", "people", "kids"],
    from: new RegExp(
      `(?<=^|[,.;] )(guests|people|kids):? (${many}),? (?:and )?(${many}) (?:macarons?|macs) each${end}`,
      "g",
    ),
    to: "$2 $1, $3 macarons each",
  },
  // "orders today 12 + 18 + 24", "i've 3 orders: 12, 18 and 24"
  {
    marks: ["orders", "customers"],
    from: new RegExp(
      `\\borders(?: (?:today|in|are|of|for|this|week|now|came))*:? (${bare}(?:${joint}${bare}){1,5})(?: (?:macarons?|macs))?${end}|(?<![\\d.,/-])\\b(${bare}(?:${joint}${bare}){1,5}) for (?:two|three|four|five|six|[2-6]) (?:customers|people|clients|ladies)${end}`,
      "g",
    ),
    to: (said, ...found) => {
      const list = found[0] ?? found[1] ?? "";
      const sum = [...list.matchAll(/\d+/g)].reduce((all, [each]) => all + manySaid(each), 0);
      return isOrder(found.at(-1) ?? "") ? `${sum} macarons` : said;
    },
  },
];
