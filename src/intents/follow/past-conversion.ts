/**
 * "and at 70", behind a price at 60 percent and what 4 oz are; "and for 4.5 cm shells", behind a baking time and what
 * 3 cm are: a conversion asked in between takes neither, the question before it does.
 */
import { opening } from "../../../data/words/openers.ts";
import type { Reading } from "../../tools/contract/index.ts";
import { spaced } from "./spaced.ts";
import type { State, Topic } from "./state.ts";

export interface PastConversion {
  topic: Topic;
  /** What is said, put so that the question before takes it. */
  rest: string;
}

const lead =
  "(?:(?:and|or|what about|how about|what if (?:its|it was|i do)|try|make it|now|then|with|do it|say) )*";
const talk =
  "(?: (?:then|instead|please|pls|now|rather|though|margin|profit margin|markup|mark up|this time))*[ ?.]*$";

const atShare = new RegExp(
  `^${opening}${lead}(?:at|on|with)(?: an?)? (\\d{1,2}(?:\\.\\d+)?)( ?%| percent)?${talk}`,
);
const bareShare = new RegExp(`^${opening}${lead}(\\d{1,2}(?:\\.\\d+)?)( ?%| percent)${talk}`);
/** "and the price at 70 %?", behind a timer: it says itself that it is a price. */
const pricedShare = new RegExp(
  `^${opening}${lead}(?:(?:the|what'?s|what is|is|my|a|selling|sale|sell|would|box) )*(?:price|charge)(?: (?:be|is))? (?:at|with|on|for)(?: an?)? (\\d{1,2}(?:\\.\\d+)?)( ?%| percent)${talk}`,
);
const shares = ["margin_percent", "markup_percent", "food_cost_percent"] as const;

const ofSize = new RegExp(
  `^${opening}${lead}(?:for |of |in |at )?(?:(?:the|bigger|smaller|larger|some|ones|macarons|shells|of|at) )*\\d+(?:\\.\\d+)? ?(?:cm|mm|inch(?:es)?|in)(?: (?:wide|across))? (?:shells?|ones|macarons?|macs?)(?: (?:then|instead|please|now|too))*[ ?.]*$`,
);
/** "and 45 mm", "and if they're 5 cm", behind a baking time. */
const bareSize = new RegExp(
  `^${opening}${lead}(?:(?:if|for|of|in|at|the|they're|theyre|they are|its|it's|i make them|bigger|smaller|larger|ones|macarons|shells|,) ?)*\\d+(?:\\.\\d+)? ?(?:cm|mm|inch(?:es)?)(?: (?:wide|across|ones|shells|macarons|macs|then|instead|please|now|too))*[ ?.]*$`,
);
/** "what if it were ganache", behind a timer: of the flavor that was asked for before. */
const otherMix = /^(?:(?:and|so|but|or|ok) )*what if it were [a-z ]+?[ ?.]*$/;
const inPassing: ReadonlySet<string> = new Set(["timer", "note", "convert", "bench", "keep", "shelf"]);
const sizing: ReadonlySet<string> = new Set(["method", "shells", "fill"]);

/** How many questions back it may be. */
const reach = 3;

/** Undefined where nothing that was asked takes what is said so. Pure. */
export function pastConversion({ text }: Reading, { last, past = [] }: State): PastConversion | undefined {
  if (last === undefined || last.tool === "cost") return undefined;
  const said = spaced(text);
  const before = past.slice(-1 - reach);
  const priced = pricedShare.exec(said);
  if (priced) return ofPrice(before, priced[1]);
  if (otherMix.test(said) && inPassing.has(last.tool)) {
    const topic = before.findLast(({ tool }) => !inPassing.has(tool));
    return topic?.tool === "dose" ? { topic, rest: said } : undefined;
  }
  if (last.tool !== "convert" && last.tool !== "method") return undefined;
  const isSize = ofSize.test(said) || (last.tool === "method" && bareSize.test(said));
  if (isSize) {
    const topic = before.findLast(({ tool }) => tool !== "convert");
    if (!topic || !sizing.has(topic.tool)) return undefined;
    // the step's time is a range that holds for all sizes
    return { topic, rest: topic.tool === "method" ? "" : said };
  }
  const share = last.tool === "convert" ? (atShare.exec(said) ?? bareShare.exec(said)) : undefined;
  // a heat is "at 150" of itself
  if (!share || last.inputs.unit === "°C" || last.inputs.unit === "°F") return undefined;
  return ofPrice(before, share[1]);
}

/** The price that was worked out before, at another margin. */
function ofPrice(before: readonly Topic[], percent: string | undefined): PastConversion | undefined {
  const topic = before.findLast(
    ({ tool, inputs }) => tool === "cost" && shares.some((key) => typeof inputs[key] === "number"),
  );
  return topic && { topic, rest: `and at ${percent} percent` };
}
