/** "batter for 30 and 2 spare pairs", "for 24, 4 spare": shells that are piped besides, told of the order before them. */
import { smallNumbers } from "../../../../data/words/numbers.ts";
import type { Phrase } from "./phrase.ts";
import { countSaid } from "./spelt.ts";

const count = `(\\d{1,2}|a|an|${Object.keys(smallNumbers).join("|")}|a couple(?: of)?)`;
const besides = `(?:,? (?:and|plus|with)|,) ${count} (?:(?:spare|extra) (pairs?|sets?|shells?)|spares?|(pairs?|sets?) (?:as |to |for |of )?spares?)(?= ?(?:$|[,.?!]))`;

/** Two shells to a pair. */
function shellsBesides(many: string, pairs: string): number {
  return countSaid(many) * (/^(?:pair|set)/.test(pairs) ? 2 : 1);
}

export const sparesTold = (): readonly Phrase[] => [
  {
    marks: [" spare", " extra"],
    from: new RegExp(`(?<=\\b(?:batter|shells|mix) )for (\\d{1,3})${besides}`, "g"),
    to: (said, order = "", many = "", pairs = "", sets = "") => {
      const shells = shellsBesides(many, pairs || sets);
      return shells > 0 ? `for ${order} macarons with ${shells} spares` : said;
    },
  },
  {
    marks: [" spare", " extra"],
    from: new RegExp(`(?<=\\b(?:batter|shells|mix|macarons?|macs)\\b.*\\d[^?]*?)${besides}`, "g"),
    to: (said, many = "", pairs = "", sets = "") => {
      const shells = shellsBesides(many, pairs || sets);
      return shells > 0 ? ` with ${shells} spares` : said;
    },
  },
];
