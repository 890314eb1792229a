/** What a mix takes up, what goes with a batter, and cups by their longer names. */
import type { Phrase } from "./phrase.ts";

const mix =
  "(?:(?:dark|milk|white|plain|swiss|chocolate|choc) ){0,2}(?:butter ?cream|smbc|bc|ganache|filling|batter)";
/** No flavor is asked for by these. */
const noFlavor =
  "(?!(?:time|longer|more|heat|of|cream|butter|chocolate|choc|milk|sugar|less|is|does|do|can|will|it|that|water|room|space|weight)\\b)";
const takes = "(?:take|hold|handle|stand|carry|bear|cope with|stomach|use|absorb|manage|want|need)";
const filling = "((?:(?:dark|milk|white) (?:chocolate |choc )?)?ganache|filling|butter ?cream)";
const some = "(?:(?:the|enough|some|their|also|a) )*";
const fits =
  "(?:(?:to|that|which) )?(?:go|goes|going|match|matches|fill|fills|fit|suit|enough)(?: with| for)?(?: (?:it|them|that|those|these|the lot))*";
const size = "((?:,? (?:of |at |all )?\\d+(?:\\.\\d+)? ?(?:mm|cm))?)";
const chocolate = "((?:, (?:dark|milk|white)(?: (?:one|chocolate))?)?)";

/** Both, each with how many it is for. */
const both = (many: string, size = "", kind = "", fill = ""): string => {
  const of = size ? ` of ${size.replace(/^[, ]*(?:of |at |all )?/, "")}` : "";
  const mix = kind && fill === "ganache" ? `${kind.replace(/^, | one$/g, "")} ${fill}` : fill;
  // "them" is no number of macarons for what a ganache is made of
  return `batter for ${many}${of} and ${mix.endsWith("ganache") ? `${mix} for ${many}${of}` : `the ${mix} for them`}`;
};

export const takenUp = (): readonly Phrase[] => [
  // "how much rum can that ganache take"
  {
    marks: ["how much "],
    from: new RegExp(
      `\\bhow much ${noFlavor}([a-z]+(?: [a-z]+){0,2}?) (?:can|could|will|would|does|may) ((?:that|the|this|my) ${mix}|it|that|this) ${takes}(?: on| up)?(?= ?[?.!]*$)`,
      "g",
    ),
    to: "how much $1 for $2",
  },
  // "batter for 20 macarons and the filling to go with it"
  {
    marks: ["filling", "ganache", "buttercream", "butter cream"],
    from: new RegExp(
      `\\b(?:batter|shells) for (\\d{1,3} (?:macarons?|macs|shells?))${size}(?:,| and| plus|, and| with|, plus) ${some}${filling} ${fits}${size}${chocolate}(?= ?(?:please|pls)? ?[?.!]*$)`,
      "g",
    ),
    to: (_said, many = "", before = "", fill = "", behind = "", kind = "") =>
      both(many, before || behind, kind, fill),
  },
  {
    marks: ["ganache for", "filling for", "buttercream for"],
    from: new RegExp(
      `\\b${filling} for (\\d{1,3} (?:macarons?|macs))${size}(?:,| and| plus|, and|, plus) ${some}(?:batter|shells) ${fits}${size}${chocolate}(?= ?(?:please|pls)? ?[?.!]*$)`,
      "g",
    ),
    to: (_said, fill = "", many = "", before = "", behind = "", kind = "") =>
      both(many, before || behind, kind, fill),
  },
  // "one measuring cup of heavy cream": a cup
  {
    marks: ["measuring cup", "us cup", "american cup", "u.s. cup", "baking cup", "standard cup"],
    from: /(?<!\b(?:no|any|my|the|without|have) )\b(?:measuring|us|american|u\.s\.|baking|standard) (cups?)\b/g,
    to: "$1",
  },
];
