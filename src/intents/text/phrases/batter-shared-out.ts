/**
 * "batter for 40 macarons, half pink half white", "40 macarons, 2:1 pink and white, how much batter": how much there has
 * to be, and what of it goes into each bowl. Two questions, of which the second takes what the first comes to.
 */
import { leadingText } from "../../../../data/words/openers.ts";
import { colors } from "../../../../data/words/things.ts";
import type { Phrase } from "./phrase.ts";

const lead = `(${leadingText("how much", "what", "i need", "give me", "make", "weigh")})`;
/** How many, or those that were spoken of. */
const macarons =
  "(\\d{1,3}(?: (?:macarons?|macaroons?|macs))?|that|them|those|it|the lot|all of (?:it|them|those)|the order)";
/** How it is shared out: looked at word by word. */
const rest = "([^?!;]{3,90}?)";
const each = "(?: (?:of each|each|in each|per (?:bowl|colou?r)|for each))?";
const needed = "(?: (?:do i need|will i need|is that|needed|needs to be made|i need))*";

const colorWords = new Set(colors.flatMap((each) => each.split(" ")));
const shades = new Set(["light", "dark", "pale", "bright", "deep"]);
const splits = new Set(
  "split divide divided share shared out parted made it up evenly equally between in into as to be then the batter".split(
    " ",
  ),
);
const shareWords = new Set(
  "half halves third thirds quarter quarters rest remainder other others % percent equal equally evenly ways way : one two three four".split(
    " ",
  ),
);
const bowls = new Set(
  "ways way bowls parts colors colours color colour half halves thirds quarters : to".split(" "),
);
const links = new Set(
  "and , in of it part parts the with for a an to bowls colors colours color colour".split(" "),
);

const wordsOf = (said: string): string[] => said.match(/[a-z]+|\d+(?:\.\d+)?|[^\s]/g) ?? [];
const isColor = (word: string): boolean => colorWords.has(word);

/** How it is shared out behind what is asked; undefined where that says nothing of bowls. */
function sharedOut(said: string): string | undefined {
  const words = wordsOf(said);
  const known = (word: string) =>
    isColor(word) || [shades, splits, shareWords, links].some((some) => some.has(word)) || /^\d/.test(word);
  if (!words.every(known)) return undefined;
  const at = words.findIndex((word) => !splits.has(word) || word === "evenly" || word === "equally");
  const how = said.split(" ").slice(Math.max(at, 0)).join(" ").trim();
  // "split in pink and white": evenly
  const isSplit = /^(?:split|divided?|shared)$/.test(words[0] ?? "");
  const shares =
    words.some((word) => shareWords.has(word)) || /\d to \d|\b[2-6] (?:bowls|parts|colou?rs)\b/.test(said);
  const named = words.filter(isColor).length;
  if (!shares)
    return isSplit && named > 1 ? `in ${named === 2 ? "two" : `${named} equal bowls`}, ${how}` : undefined;
  const inParts = words.some((word) => isColor(word) || bowls.has(word));
  // "10 % extra", "half": no bowls
  const isOne = /^(?:the |and |,|in |for )*(?:\d+(?:\.\d+)? ?(?:%|percent)|half) ?$/.test(said);
  return inParts && !isOne ? how : undefined;
}

export const batterSharedOut = (): readonly Phrase[] => [
  {
    marks: [" for "],
    from: new RegExp(
      `^(?=.{0,160}$)${lead}((?:shell )?(?:batter|shells|mix)${needed}) for (?:the |my |an order of )?${macarons}(?: and|,|;|:| -)? ${rest} ?[?.!]*$`,
      "g",
    ),
    to: (said, ...found) => {
      const [before = "", what = "", many = "", told = ""] = found;
      const how = sharedOut(told);
      return how === undefined ? said : `${before}${what} for ${many}. split it ${how}`;
    },
  },
  {
    marks: ["batter"],
    from: new RegExp(
      `^(?=.{0,160}$)${lead}(?:for )?${macarons}(?: and|,|;|:| -)? ${rest}(?:,|\\.|;|:| -)? (?:so |and )?(?:how much |what )?(?:shell )?(?:batter|mix)${needed}${each} ?[?.!]*$`,
      "g",
    ),
    to: (said, ...found) => {
      const [before = "", many = "", told = ""] = found;
      const how = sharedOut(told.replace(/[,.:]$/, ""));
      return how === undefined ? said : `${before}batter for ${many}. split it ${how}`;
    },
  },
];
