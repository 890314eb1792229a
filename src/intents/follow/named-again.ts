/** An earlier topic that is named once more without "back to": "the buttercream again", "what if the margin is 40". */
import type { Reading } from "../../tools/contract/index.ts";
import type { Way } from "../../tools/lib/ways.ts";
import type { State, Topic } from "./state.ts";

type Said = { reading: Reading; state: State };

const ofShare = /\b(?:margin|mark ?up|food cost)\b/;

const isBill = ({ tool }: Topic): boolean => tool === "cost";

/** "what if the margin is 40", with something else between: of the bill that was reckoned. */
export const marginAgain: Way<Said, Topic> = ({
  reading: { text, amounts },
  state: { last, topics, past = [] },
}) => {
  const [only, ...others] = amounts;
  const isShare = only !== undefined && (only.dim === "percent" || (only.dim === "number" && !only.of));
  if (last?.tool === "cost" || others.length > 0 || !isShare || !ofShare.test(text)) return undefined;
  // a margin of 100 % had no answer, and is put right
  return past.findLast(isBill) ?? topics.findLast(isBill);
};

const again =
  /^(?:(?:no|wait|so|ok|okay|and|now|anyway|right|well|oh|but),? )*(?:the|my|that) [a-z]+(?: [a-z]+)? again\b/;
const supposed =
  /^(?:(?:no|so|ok|okay|and|now|well|oh|but),? )*(?:what )?if (?:the|my|that) (?:[a-z]+ )?[a-z]+ (?:is|was|were|weighs|comes to) /;

/** "the buttercream again, its 460 g", "and if the buttercream is 210 g", with something else between. */
export const mixAgain =
  (about: (reading: Reading, past: readonly Topic[]) => Topic[]): Way<Said, Topic> =>
  ({ reading, state: { last, past = [] } }) => {
    const names = reading.things.some(({ base }) => base !== undefined);
    if (!names || !(again.test(reading.text) || supposed.test(reading.text))) return undefined;
    const topic = about(reading, past).at(-1);
    return topic?.tool === last?.tool ? undefined : topic;
  };

const lineAsked =
  /^(?:(?:so|ok|okay|and|now|right|wait|sorry|oh|hm),? )*(?:what|how much|whats|what's) (?:(?:was|is|were) )?(?:the|my|of the)? ?[a-z]+(?: [a-z]+)?(?: (?:was it|was that|again|then))+ ?\??$/;
const runsShort =
  /\b(?:only|just) (?:has|have|had|got|holds?|held)\b|\b(?:has|have|got|theres|there's|there is) only\b|\bran out at\b/;
const withLines: ReadonlySet<string> = new Set(["scale", "buttercream", "ganache"]);

/** "what was the almond again", "the almond bag only has 190", with a timer between: of the recipe that was weighed. */
export const lineAgain: Way<Said, Topic> = ({ reading, state: { last, past = [] } }) => {
  const { text, things, amounts } = reading;
  const isOne = things.filter(({ ingredient }) => ingredient).length === 1 && amounts.length < 2;
  const isSaid = amounts.length === 0 ? lineAsked.test(text) : runsShort.test(text);
  if (!last || withLines.has(last.tool) || !isOne || !isSaid) return undefined;
  if (things.some(({ base, dose }) => base ?? (dose !== undefined && amounts.length > 0))) return undefined;
  return past.findLast(({ tool }) => withLines.has(tool));
};
