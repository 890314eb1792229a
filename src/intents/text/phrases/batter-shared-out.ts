/**
 * "batter for 40 macarons, half pink half white", "40 macarons, 2:1 pink and white, how much batter": how much there has
 * to be, and what of it goes into each bowl. Two questions, of which the second takes what the first comes to.
 */
import { leadingText } from "../../../../data/words/openers.ts";
import { colors } from "../../../../data/words/things.ts";
import type { Phrase } from "./phrase.ts";

const lead = `(${leadingText("how much", "what", "i need", "give me", "make", "weigh")})`;
const macarons = "(\\d{1,3}(?: (?:macarons?|macaroons?|macs))?)";
const color = `(?:(?:light|dark|pale|bright|deep) )?(?:${[...colors].sort((a, b) => b.length - a.length).join("|")})`;
const split =
  "(?:(?:split|divided?|shared(?: out)?|parted|made|it|up|evenly|equally|between|in|into|as|to be|then) )*";
const share =
  "(?:\\d+(?:\\.\\d+)? ?(?:%|percent)|\\d+(?: ?: ?\\d+)+|\\d+ to \\d+|(?:one|two|three|four) to (?:one|two|three|four)|(?:a |one |two )?(?:half|halves|thirds?|quarters?)|the (?:other half|rest|remainder|others?)|rest|(?:two|three|four|[2-6]) (?:equal )?(?:ways|bowls|parts|colou?rs)|equal(?:ly)?|evenly|half)";
const part = `(?:${share}|${color}|and|,|in|of it|parts?|the|with|for)`;
const shares = `${split}(?:${part})(?:,? ${part})*`;
const each = "(?: (?:of each|each|in each|per (?:bowl|colou?r)|for each))?";

const isShare = new RegExp(`\\b${share}(?![a-z])`);
const isParts = new RegExp(
  `\\b(?:${color}|halves|half|thirds|quarters|ways|bowls|parts|colou?rs)(?![a-z])|:| to `,
);
/** "split in pink and white": evenly. */
const isEven = new RegExp(`^(?:split|divided?|shared)\\b.*\\b${color} (?:and|&) ${color}$`);
const isNoShare = /^(?:the |and |,|in |for )*(?:\d+(?:\.\d+)? ?(?:%|percent)|half) ?(?:spares?|extra)?$/;

/** How it is shared out behind what is asked; undefined where that says nothing of bowls. */
function sharedOut(said: string): string | undefined {
  const rest = said.replace(new RegExp(`^${split}`), "").trim();
  const how = rest === "" ? said.trim() : rest;
  if (isEven.test(said.trim())) return `evenly into ${how}`;
  return isShare.test(said) && isParts.test(said) && !isNoShare.test(said) ? how : undefined;
}

export const batterSharedOut: readonly Phrase[] = [
  {
    marks: [" for "],
    from: new RegExp(
      `^(?=.{0,160}$)${lead}((?:shell )?(?:batter|shells|mix)(?: (?:do i need|will i need|is that|needed|needs to be made|i need))*) for (?:the |my |an order of )?${macarons}(?: and|,|;|:| -)? (${shares}) ?[?.!]*$`,
      "g",
    ),
    to: (said, ...found) => {
      const [before = "", what = "", many = "", rest = ""] = found;
      const how = sharedOut(rest);
      return how === undefined ? said : `${before}${what} for ${many}. split it ${how}`;
    },
  },
  {
    marks: ["batter"],
    from: new RegExp(
      `^(?=.{0,160}$)${lead}(?:for )?${macarons}(?: and|,|;|:| -)? (${shares})(?:,|\\.|;|:| -)? (?:so |and )?(?:how much |what )?(?:shell )?(?:batter|mix)(?: (?:do i need|will i need|needed|is that))?${each} ?[?.!]*$`,
      "g",
    ),
    to: (said, ...found) => {
      const [before = "", many = "", rest = ""] = found;
      const how = sharedOut(rest);
      return how === undefined ? said : `${before}batter for ${many}. split it ${how}`;
    },
  },
];
