/** Two orders of which one was heard: all that was measured is in its answer, so nothing else shows that there are two. */

import { score } from "../intents/chosen/choose.ts";
import type { Unread } from "../intents/converse.ts";
import { asksOfNew } from "../intents/follow/behind.ts";
import type { Step } from "../intents/follow/step.ts";
import { cutsAnew } from "../intents/turn/cut-anew.ts";
import { mayHoldAmount } from "../intents/turn/has-amount.ts";
import type { Reading } from "../tools/contract/index.ts";
import { type Hearing, heardOn, onlyGiven } from "./hearing.ts";
import { isWhole, outcomes, type Tried } from "./tried.ts";

/** "320 g, and salt for it?": what was asked for, and a question behind it. */
export function answerBefore(reading: Reading, hearing: Hearing): Reading[] | undefined {
  const asked = hearing.state.pending ?? hearing.state.waiting;
  if (!asked || asked.of === reading.said) return undefined;
  const heard = heardOn(reading.said, hearing);
  for (const [left, right] of cutsAnew(reading.text)) {
    const parts = [...heard(left), ...heard(right)];
    if (parts.length !== 2 || !isAnswer.test(parts[0]?.mask ?? "")) continue;
    const all = outcomes(parts, hearing);
    const [first, second] = all;
    // "40 macarons, 4 cm wide": more of the same question
    const isAnother =
      second?.tool !== first?.tool || parts[1]?.things.some((each) => each.dose ?? each.taste);
    if (all.length === 2 && first?.tool === asked.tool && isAnother && all.every(isWhole)) return parts;
  }
  return undefined;
}

/** "it's 320 g", "for 24 of them". */
const isAnswer =
  /^(?:(?:oh|ah|ok|okay|so|well|right|sorry|yes|its|it is|theres|about|around|roughly|for|make it|say|ive got|i have|got) )*\S*<(?:weight|number|time|length|percent|temperature)>(?: (?:of )?(?:it|them|those|\S*<(?:base|count)=[^>]*>))?$/;

/**
 * "450 g swiss buttercream, quantities, and freeze-dried raspberry for it": all that was measured is in the answer, and
 * yet one of two orders isn't. It is cut where what is answered stays as it was, or is of what the other side comes to.
 */
export function hiddenIn(
  found: readonly Step[] | Unread,
  reading: Reading,
  hearing: Hearing,
): Reading[] | undefined {
  const [step, ...more] = "near" in found ? [] : found;
  // "ganache and rest", where it was asked which two
  if (hearing.state.pending) return undefined;
  if (!step || more.length > 0 || !hidesOrders.has(step.tool.name)) return undefined;
  let whole: Tried | undefined;
  const heard = heardOn(reading.said, hearing);
  for (const [left, right] of cutsAnew(reading.text)) {
    const joint = reading.text.trimStart().slice(left.length).trimStart();
    const isAsked = joint.startsWith("?");
    if (joint.startsWith(":") || given.test(left) || asksOfNew(left, right)) continue;
    if (!(isAsked || mayOrder(left, right, step.tool.name))) continue;
    const before = heard(left);
    if (before.length !== 1 || before.some(onlyGiven)) continue;
    const parts = [...before, ...heard(right)];
    const [one, other] = parts;
    if (!one || !other || parts.length !== 2 || parts.some(onlyGiven)) continue;
    const side = { left, right, one, other, isAsked, hearing };
    if (!mayHide(side, step.tool.name)) continue;
    whole ??= outcomes([reading], hearing)[0];
    if (!whole) return undefined;
    const all = outcomes(parts, hearing);
    const [first, second] = all;
    if (!first || !second || all.length !== 2 || !all.every(isWhole)) continue;
    const cut = { ...side, first, second, whole };
    if (areTwo.some((each) => each(cut))) return parts;
  }
  return undefined;
}

/** The commonest of what is only given, told by its words alone. */
const given =
  /^(?:(?:i have|ive|i've|got) )?\d[\d.,]* ?(?:g|gr|grams?|kg|oz) (?:of )?(?:my |plain |swiss |dark |milk |white )?(?:buttercream|ganache|batter|filling|frosting|smbc|bc)$/i;

/** A sentence cut in two. */
interface Sides {
  left: string;
  right: string;
  one: Reading;
  other: Reading;
  /** A question mark ends the first. */
  isAsked: boolean;
  hearing: Hearing;
}

/** With what was made of all of it and what each side comes to. */
interface Cut extends Sides {
  first: Tried;
  second: Tried;
  whole: Tried;
}

/** Looked at before a side is even read, which takes longest: by some word it may be an order, or is one part of the mix. */
function mayOrder(left: string, right: string, whole: string): boolean {
  if (whole === "timer" || whole === "undo" || keptBy.test(left)) return true;
  if ([left, right].some((side) => timed.test(side) || ends.test(side))) return true;
  const [before, behind] = [left, right].map(mayHoldAmount);
  return (
    // "buttercream with 200 g butter, and salt for all of it"
    (before === true && ofAll.test(right)) ||
    (question.test(left) && (before || behind || temperature.test(left))) ||
    (question.test(right) && (behind || temperature.test(right))) ||
    [verb, bowls, shares].some((each) => (before && each.test(left)) || (behind && each.test(right)))
  );
}
const temperature = /\btemp/i;

/** Looked at before any calculator is asked: hardly a turn is two. */
const mayHide = ({ left, right, one, other, isAsked, hearing }: Sides, whole: string): boolean =>
  isAsked ||
  whole === "timer" ||
  whole === "undo" ||
  keptBy.test(left) ||
  question.test(left) ||
  isPartOf(one) ||
  ordered(left, one) ||
  ordered(right, other) ||
  [one, other].some((part) => [...sure].some((tool) => isSurely(tool, part, hearing)));

/** One weight or count, of a part of the mix. */
const isPartOf = ({ amounts: [only, ...others] }: Reading): boolean =>
  others.length === 0 && Boolean(only?.of?.ingredient ?? only?.of?.chocolate) && !only?.of?.dose;

const isKept = (each: Tried, { whole }: Cut): boolean =>
  each.tool === whole.tool && JSON.stringify(each.figures) === JSON.stringify(whole.figures);

/** "shells are 4.4 cm from now on, filling for 20?": what is kept holds for what is asked with it. */
const keepsFirst = ({ left, one, first, second, whole, hearing }: Cut): boolean =>
  second.tool === whole.tool &&
  keeps.has(first.tool) &&
  keptBy.test(left) &&
  isSurely(first.tool, one, hearing);

/** "undo that size, and filling for 20 again". */
const takesBackFirst = ({ other, first, second, whole }: Cut): boolean =>
  whole.tool === "undo" && first.tool === "undo" && isGained(second) && other.amounts.length > 0;

/** "five more on the cake and stop the fudge": what is done with one timer is no business of the other. */
const twoTimers = ({ first, second, whole }: Cut): boolean =>
  [first, second, whole].every(({ tool }) => tool === "timer") &&
  first.does !== second.does &&
  first.names !== undefined &&
  second.names !== undefined &&
  first.names !== second.names;

/** "what is left of it, and half a kilo in oz": of the stock or a timer, and of nothing that is measured. */
const looksUpFirst = (cut: Cut): boolean =>
  isKept(cut.second, cut) &&
  lookedUp.has(cut.first.tool) &&
  !lookedUp.has(cut.second.tool) &&
  cut.other.amounts.length > 0 &&
  question.test(cut.left) &&
  isGained(cut.first);

/** Both sides name something of their own, and are for two calculators. */
const areApart = ({ one, other, first, second, whole, isAsked }: Cut): boolean =>
  // "how do i get 2 lb of batter, weights please": the second says nothing of its own
  [one, other].every((each) => namesSome(each) && !onlyGiven(each)) &&
  first.tool !== second.tool &&
  // what is in it is one list
  (whole.tool !== "label" || isAsked);

/** "buttercream with 200 g butter, and salt for all of it": 200 g is a part of it, and no bowl. */
const isOfPart = (cut: Cut): boolean => {
  const { one, second, whole } = cut;
  return (
    areApart(cut) &&
    isPartOf(one) &&
    second.tool === whole.tool &&
    second.derived === true &&
    !isKept(second, cut)
  );
};

const ordersFirst = (cut: Cut): boolean => {
  const { left, one, first, second, whole, isAsked, hearing } = cut;
  if (!areApart(cut) || toldOnly.test(left) || !isGained(first)) return false;
  const isOrder =
    isAsked || (sure.has(first.tool) && isSurely(first.tool, one, hearing)) || ordered(left, one);
  return isOrder && (isKept(second, cut) || (second.tool === whole.tool && second.derived === true));
};

const ordersSecond = (cut: Cut): boolean => {
  const { left, right, other, first, second, hearing } = cut;
  if (!areApart(cut) || toldOnly.test(left) || !isGained(second) || !isKept(first, cut)) return false;
  return (sure.has(second.tool) && isSurely(second.tool, other, hearing)) || ordered(right, other);
};

const areTwo: readonly ((cut: Cut) => boolean)[] = [
  keepsFirst,
  takesBackFirst,
  twoTimers,
  looksUpFirst,
  isOfPart,
  ordersFirst,
  ordersSecond,
];

/** What is asked of the record. */
const lookedUp: ReadonlySet<string> = new Set(["shelf", "timer"]);

const hidesOrders: ReadonlySet<string> = new Set([
  "dose",
  "label",
  "convert",
  "scale",
  "shells",
  "fill",
  "trouble",
  "timer",
  "undo",
]);

/** Calculators that change what is known from then on. */
const keeps: ReadonlySet<string> = new Set(["bench", "shelf"]);
const keptBy =
  /\b(?:bottle|from (?:now|today) on|keep (?:that|it)|remember|save|always|by default|for good)\b/i;
/** Calculators that do something besides answering: what is surely for one of them is an order. */
const sure: ReadonlySet<string> = new Set(["timer", "day"]);

const isSurely = (tool: string, part: Reading | undefined, { understanding }: Hearing): boolean => {
  const [best] = part ? score(part, understanding.tools) : [];
  return best?.tool.name === tool && best.points >= certain;
};
/** From here no other calculator is likely. */
const certain = 4;

/** What is told, and nothing asked by it. */
const toldOnly =
  /^(?:(?:and|so|ok|well|oh|sorry|hi|hello|right),? )*(?:i|im|ive|i'm|i've|id|we|we're|we've|weve|were|it|its|it's|they|he|she|my|our|the|this|that|there|theres|there's|if|when|with|for|in|because|since|got|have|having|making|made|using|used|put|added|after|before) /i;
const namesSome = ({ amounts, things }: Reading): boolean => amounts.length + things.length > 0;

/** Something was worked out, or told of what went wrong and how it is done. */
const isGained = ({ tool, figures = [] }: Tried): boolean =>
  figures.length > 0 || ["trouble", "label", "day", "timer"].includes(tool);

const verb =
  /^(?:(?:and|also|then|so|ok|please|plus|just|now|,) )*(?:split|share|divide|portion|scale|convert|turn|work out|give me|tell me|make (?:it|that|me)|plan|set|start|time)\b/i;
const question =
  /^(?:(?:and|also|then|so|ok|please|plus|just|now|,) )*(?:what(?!s? (?:if|about))|whats|what's|how(?! about)|which|when|temp\w*|oven temp\w*|baking temp\w*)\b/i;
const bowls =
  /\b(?:in|into|between|among|over|across) (?:(?:\d+|two|three|four|five|six|seven|eight|nine|ten|a dozen) )?(?:equal )?(?:bowls|parts|portions|lots|tubs|cups|bags|thirds|halves|quarters)$/i;
const ends =
  /\b(?:please|pls|plz|quantities|amounts|weights|proportions|breakdown|ingredients list|instead|as well)$/i;

/** "only two thirds of that ganache": of what was worked out before. */
const shares =
  /^(?:(?:and|so|ok|now|but|then|,) )*(?:only |just )?(?:an? |one |two |three )?(?:half|halve|third|thirds|quarter|quarters|double|twice|triple)\b.* (?:that|the|this|those) \S+$/i;

/** A time, an hour or a day: it may be for a timer or for the plan of a day. */
const timed =
  /\b(?:timers?|alarms?|remind|rings?|buzz|ping|beep|count ?down|min(?:ute)?s?|h(?:ou)?rs?|secs?|seconds?|ready|starts?|begin|plan|when|today|tonight|tomorrow|[a-z]+day|noon|midnight|[ap]m|clock|\d+:\d+)\b|\d(?:min|h|hr|am|pm|s|sec)/i;
const ofAll = /\b(?:it|all|that|this|those|them|whole|lot|same|both)\b/i;

/** It says by a word of its own that something is to be worked out, shared out, set or turned into another unit. */
const ordered = (side: string, reading: Reading | undefined): boolean => {
  const isMeasured = (reading?.amounts.length ?? 0) > 0;
  // "scale battery died" orders nothing
  return (
    (question.test(side) && (isMeasured || temperature.test(side))) ||
    ends.test(side) ||
    (isMeasured && shares.test(side)) ||
    (isMeasured && (verb.test(side) || bowls.test(side)))
  );
};
