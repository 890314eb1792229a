/** Numbers as they are told beside a question, and what shows that one is an amount after all. Pieces of patterns. */
import { units } from "../../../../data/words/units.ts";
import { spelt } from "../phrases/spelt.ts";

export const number = "\\d+(?:[.,]\\d+)?";
/** In digits or spelt out. */
export const spoken = `(?:\\d+(?:[.,]\\d+)?|(?:${spelt})(?:[ -](?:${spelt}))?)`;

const unitWords = [...new Set(units.flatMap(({ words }) => words))].filter((word) => /^[a-z]+$/.test(word));
const countedWords =
  "macarons?|macs?|macaroons?|shells?|cookies?|pieces?|pcs|halves|sandwiches|boxes|box|trays?|batches|batch|bowls?|parts?|portions?|colou?rs?|whites?|eggs?|yolks?|people|guests?|kids|times|more|less|fewer|extra|dozen|hundred|thousand|each";
const ofThem = "of (?:them|those|these|the|my|it)";

const followed = (...words: string[]) =>
  `(?![\\d]|[.,:/]\\d| ?(?:${unitWords.join("|")})\\b| ?(?:°|%|x\\b|"|to \\d|- ?\\d|and a half|\\+|\\*|:\\d)| ?(?:[a-z]+ )?(?:${words.join("|")})\\b)`;

/** Behind a number: it doesn't go on, and is no amount of something. */
export const bare = followed(countedWords, ofThem);
/** Where a clause has to end behind it anyway, it needn't be said what else it is no amount of. */
export const whole = "(?!\\d|[.,:/]\\d)";
/** The same of one that names something: "page 12 of my book". */
export const bareName = followed(countedWords);

/** Where a clause ends, or goes on with something else. */
export const clauseEnd = "(?= ?(?:[,.;:!?)]|-+ |$)| (?:and|but|so|btw|by the way|lol|haha)\\b)";
/** Where one begins. */
export const clauseStart = "(?<=^|[,.;:!?(] ?|\\.{3} ?| - |\\b(?:and|but|so|btw|oh|also) )";

/** "14.50", "$12", "3 euros". */
export const money = `(?:[£$€] ?${number}(?: ?(?:quid|dollars?|bucks|euros?))?|${number} ?(?:quid|dollars?|bucks|euros?|pence|cents|pounds(?! of))\\b|\\d+[.,]\\d\\d(?!\\d| ?(?:${unitWords.join("|")})\\b| ?%))`;

/** "at 5", "by half 6", "from 17:30". */
export const hour = `(?:half (?:past )?|quarter (?:past|to) )?\\d{1,2}(?:[:.]\\d\\d)?(?: ?(?:am|pm|a\\.m\\.|p\\.m\\.|o'?clock)\\b)?${whole}`;
