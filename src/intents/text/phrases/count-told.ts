/** How many of them, told by the way: "im doing thirty, ...", "exactly 75 shells, no spares", "and the yield at 4 cm". */
import { openingText } from "../../../../data/words/openers.ts";
import type { Phrase } from "./phrase.ts";
import { spelt } from "./spelt.ts";

const lead = `(${openingText()})`;
const number = `(?:\\d{1,3}|(?:${spelt})(?:[ -](?:${spelt}))?|(?:a|one|two|three|four) dozen)`;

export const countTold = (): readonly Phrase[] => [
  // "im doing thirty, ring of buttercream and ..."
  {
    marks: [
      "im doing ",
      "i'm doing ",
      "we're doing ",
      "im making ",
      "i'm making ",
      "im baking ",
      "i'm baking ",
    ],
    from: new RegExp(
      `^${lead}(?:i'?m|we'?re) (?:doing|making|baking) (${number})(?= ?,(?=.*\\b(?:ring|cent(?:er|re)|filling|butter ?cream|ganache|curd|batter|shells)\\b))`,
      "g",
    ),
    to: "$1$2 macarons",
  },
  // "exactly 75 shells, no spares, batter in g"
  {
    marks: ["no spare"],
    from: /^(?:(?:exactly|just|only) )?(\d+) shells,? (?:with |and )?no spares?(?: shells)?,? (?:how much )?batter(?: in g(?:rams)?)?(?= ?[?.!]*$)/g,
    to: "batter for $1 shells, no spares",
  },
  // "140 g whites: rest of the shells, and yield at 4 cm"
  {
    marks: ["yield"],
    from: /\b(and|plus|also|&|,) (?:the |its |what )?yield(?: is that| would that be)? (?=(?:at|of|in|with) \d)/g,
    to: "$1 how many macarons ",
  },
];
