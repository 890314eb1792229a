/** Mixes named in passing: "make it milk ganache, how much chocolate and cream then", "n=36, 4cm: batter, filling". */
import type { Phrase } from "./phrase.ts";

const lead = "((?:(?:ok|okay|and|now|so|then|well|actually|no|please),? )*)";
const asked = "batter|filling|shells|trays|whites|eggs|buttercream|ganache";

/** "batter, filling, trays": each is asked for. */
const listed = (row: string): string =>
  row
    .split(/ ?[,+&/] ?| and /)
    .filter(Boolean)
    .join(" and ");

export const mixesNamed = (): readonly Phrase[] => [
  // "44 macarons: the batter i need, and the filling i need"
  {
    marks: ["batter ", "filling ", "whites ", "eggs "],
    from: /\b(?:the |what |which )?(batter|filling|whites|eggs)(?: that)? (?:i need|i'?ll need|we need|needed|i want|required)(?:,|,? and|,? then| \+| plus)+ (?:the |what |which )?(batter|filling|whites|eggs|trays)(?: that)? (?:i need|i'?ll need|we need|needed|i want|required|to go with (?:it|them))/g,
    to: "how much $1 and $2",
  },
  // "and if the buttercream was ganache?": another mix, and no two
  {
    marks: ["if "],
    from: /^((?:(?:ok|okay|and|so|but|or|what|well|how about),? )*)if (?:the|my|that|this|it|our) ?(?:butter ?cream|ganache|filling|smbc|mix|one)? ?(?:was|were|is|had been|would be)(?: actually| really)?(?: an?| of| made of)? ((?:(?:dark|milk|white) (?:chocolate )?)?ganache|(?:swiss )?(?:butter ?cream|smbc)|cream cheese filling)(?: instead| then| though)* ?[?.!]*$/g,
    to: "$1what if it were $2",
  },
  {
    marks: ["ganache, ", "ganache how", "ganache what", "ganache and", "ganache so"],
    from: new RegExp(
      `^${lead}(?:make|do|turn|have) (?:it|that|them|this)(?: all)?(?: an?| into(?: an?)?| in(?: an?)?| with)? ((?:dark|milk|white) (?:chocolate )?ganache|ganache),? (?:and |so |then )?(?=how much|what |whats )`,
      "g",
    ),
    // no ganache is made of milk alone
    to: (_said, before = "", mix = "") =>
      `${before}${mix.replace(/^milk ganache/, "milk chocolate ganache")}, `,
  },
  // "scale to 120 g whites and what will it make": how many of them
  {
    marks: ["scale "],
    from: /^((?:(?:ok|okay|and|now|so|please),? )*(?:re)?scale [^?!]{3,90}?)(?:,| and|, and|, then| then|\.) (?:what (?:will|does|would|do) (?:it|that|i|they) (?:make|give|get|yield)(?: me)?|(?:please )?(?:count|work out|give me|tell me|show me) (?:up )?(?:the (?:number of )?|how many )(macarons|macs|shells)(?: (?:it makes|i get|for me|that makes|please))*)[ ?.]*$/g,
    to: (_said, order = "", what = "macarons") => `${order} and how many ${what || "macarons"} is that`,
  },
  // "shells for 40. filling for 40"
  {
    marks: ["shells for "],
    from: new RegExp(`^${lead}(?:the )?shells for (\\d{1,3})(?= ?(?:[.,;?!]|$))`, "g"),
    to: "$1how many shells for $2 macarons",
  },
  // "two bowls of batter, 250 g each"
  {
    marks: ["two bowls of", "2 bowls of", "two lots of", "2 lots of"],
    from: /(?<=^(?:(?:i have|i've|ive|i|got|there are|have|ive got|i've got|so|ok) )*)(?:two|2) (?:bowls|lots|tubs) of (batter|filling|ganache|buttercream),? (?:each |of |at |with )*(\d+(?:\.\d+)? ?(?:g|grams?)) (?:each|apiece|in each)\b/g,
    to: "i have $2 of $1 and another $2 of $1",
  },
  // "n=36", "qty 36", "36 at 4 cm: batter"
  {
    marks: ["n =", "n=", "and =", "and=", "qty", "quantity"],
    from: /^(?:(?:n|and) ?= ?|qty:? ?=? ?|quantity:? ?=? ?)(\d{1,3})\b(?! ?(?:g|mm|cm|min|macarons?|macs|shells)\b)/g,
    to: "$1 macarons",
  },
  {
    marks: [": batter", ": filling", ": shells", " - batter", " - filling", ":batter", ":filling"],
    from: /^(\d{1,3}) (?:@|at|of|x) (?=\d+(?:\.\d+)? ?(?:mm|cm)\b)/g,
    to: "$1 macarons ",
  },
  {
    marks: [": batter", ": filling", ": shells", " - batter", " - filling", ":batter", ":filling"],
    from: new RegExp(
      `^(\\d{1,3} (?:macarons?|macs|pcs|pieces|of them)(?:,? (?:at |of |size )?\\d+(?:\\.\\d+)? ?(?:mm|cm))?) ?[:-] ?((?:${asked})(?:(?: ?[,+&/] ?| and )(?:${asked}))*)[ ?.]*$`,
      "g",
    ),
    to: (_said, many = "", row = "") =>
      `how much ${listed(row)} for ${many.replace(/,(?= (?:at |of )?\d)/, " at").replace("size ", "")}`,
  },
];
