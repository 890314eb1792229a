/** "i let them bake 14 min, too long?": a time that is told is judged by the step's own, and no timer is set for it. */
import type { Reading } from "../contract/index.ts";
import { inBase } from "../lib/units.ts";

const timed =
  "^(?!.*(?:timer|alarm|countdown|remind|ring |how long|{weight}|{when}|fridge|freezer))(?:\\S+ )*?";
const many =
  "(?:(?:for|about|around|like|nearly|only|just|a|good|full|over|roughly|almost|now|already) )*{time}";
const step =
  "(?:{step=(?:bake|rest)}|\\S*rest_for\\S*|bak(?:e|ed|es|ing)|rest(?:ed|s|ing)?|dry|dried|drying|oven|no-rest)";
const between = "(?:\\S+ ){0,6}?";
/** "too long?", "is that ok": whether so long was right. */
const plainly =
  "(?:too (?:long|short|much|little|brief)|long enough|not enough|still (?:bake\\S*|ok to bake\\S*)|overbaked|underbaked|overdone)";
const asked =
  "(?:is|was|are|were|will|would) (?:(?:that|it|this|they|be|about|still) )+(?:too (?:long|short|much|little)|long enough|enough|ok|okay|fine|alright|right|normal|good|bad|wrong)";
const judged = `(?:${plainly}|${asked})`;
const end =
  "(?: (?:for (?:them|it|macarons|shells|that|this)|or (?:not|what)|do you (?:think|reckon)|then|now|though|please))*(?: [?])*$";

/** With the step named, before the time or behind it. */
export const judgesStep: readonly string[] = [
  `${timed}${step} ${between}${many} ${between}${judged}${end}`,
  `${timed}${many} (?:of |in the |for |at |is |a |the ){0,3}${step} ${between}${judged}${end}`,
  `^(?:(?:so|and|ok|but) )*(?:is|are|was|were|would) ${many} (?:(?:of|in|the|a) )*(?:${step} )?(?:(?:really|way|much|already|still) )?${plainly}(?: (?:to|for|in) (?:(?:the|a|my|them|shells|{count=(?:shells|macarons)}) )*${step}(?: (?:them|it|shells|{count=(?:shells|macarons)}))?)${end}`,
  `^(?:(?:so|and|ok|but) )*(?:is|are|was|were|would) ${many} (?:(?:of|in|the|a) )*${step} (?:(?:really|way|much|already|still) )?(?:${plainly}|ok|okay|fine|enough|alright|right)${end}`,
];

/** "i let them go for 14 min, is that too long": which step is not said. */
export const judgesSome: readonly string[] = [
  `^(?:(?:so|and|ok|but|oh|i|we|ive|weve) )*(?:let|gave|had|kept|left) (?:them|the shells|mine|\\S*<count=(?:shells|trays)>) (?:(?:go|have|in|sit|stand|run|on) )*${many} ${between}${judged}${end}`,
  `^(?:(?:so|and|ok|but|oh) )*(?:they|the shells|mine) (?:(?:were|went|have been|had been|was|are|been|stayed) )+(?:in|in there|going|at it) ${many} ${between}${judged}${end}`,
];

const inOven = /<step=bake>|\bbak(?:e|ed|es|ing)\b|\boven\b|\bin(?: there)? (?:\S+ )?\S*<time>/;
const resting = /<step=rest>|\brest|\bdry|\bdri|\bstand|\bstood|\bsit\b|\bsat\b/;

/** The minutes that are judged, and the step where it is said. */
export function judgedTime({
  mask,
  amounts,
}: Reading): { step?: "bake" | "rest"; judge_min: number } | undefined {
  const times = amounts.filter(({ dim }) => dim === "time");
  const [only] = times;
  if (!only || times.length > 1 || !isJudged.test(mask)) return undefined;
  const step = inOven.test(mask) ? "bake" : resting.test(mask) ? "rest" : undefined;
  return { ...(step ? { step } : {}), judge_min: inBase(only.value, only.unit) };
}
const isJudged =
  /too (?:long|short|much|little|brief)|enough|overbaked|underbaked|overdone|(?:is|was|are|were|will|would) /;
