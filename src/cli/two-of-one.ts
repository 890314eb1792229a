/**
 * Two questions that were heard as one: where something that was said is in no sum, or several amounts bring no answer,
 * the sentence is cut at each of its joints, and the first cut stands of which both sides are answered whole.
 */
import type { Unread } from "../intents/converse.ts";
import type { Step } from "../intents/follow/step.ts";
import { cutsAnew } from "../intents/turn/cut-anew.ts";
import { withoutTalk } from "../intents/turn/without-talk.ts";
import type { Reading, World } from "../tools/contract/index.ts";
import { type Hearing, heardOn, leavesSome, onlyGiven } from "./hearing.ts";
import { answerBefore, hiddenIn } from "./hidden-order.ts";
import { computeWith } from "./outcome.ts";
import { isWhole, outcomes, type Tried } from "./tried.ts";

/**
 * Pure: the questions that take the place of the first of some, undefined where it stays as it is.
 * @param found what was made of the first
 */
export function heardAnew(
  [reading, ...rest]: readonly [Reading, ...Reading[]],
  found: readonly Step[] | Unread,
  hearing: Hearing,
): Reading[] | undefined {
  const answersFirst = answerBefore(reading, hearing);
  if (answersFirst) return [...answersFirst, ...rest];
  if (!mayBeTwo(found, reading, hearing.world))
    return rest.length === 0 ? hiddenIn(found, reading, hearing) : undefined;
  // of what nobody understood, two halves for one calculator are a guess
  const mayRepeat = "near" in found ? new Set<string>() : several;
  const own = cutInTwo(reading.text, reading.said, hearing, mayRepeat);
  if (rest.length === 0) return own;
  // what stands at the end of the first may be what the next one asks about
  const apart = own && [...own, ...rest];
  if (apart && outcomes(apart, hearing).every(isWhole)) return apart;
  return (
    cutInTwo([reading, ...rest].map(({ text }) => text).join(", "), reading.said, hearing, mayRepeat) ?? apart
  );
}

/** Something that was said is in no answer, or several amounts bring none. */
function mayBeTwo(found: readonly Step[] | Unread, { amounts }: Reading, world: World): boolean {
  if ("near" in found) return amounts.length > 1;
  if (found.some(leavesSome)) return true;
  if (amounts.length < 2) return false;
  return found.some((step) => {
    const { status, unused = [] } = computeWith(step, world);
    return status === "asking" || status === "declined" || unused.length > 0;
  });
}

function cutInTwo(
  text: string,
  said: string,
  hearing: Hearing,
  mayRepeat: ReadonlySet<string>,
): Reading[] | undefined {
  const heard = heardOn(said, hearing);
  for (const [left, right] of cutsAnew(text)) {
    const behind = heard(right);
    // what is told before the first of them is left out where it isn't understood with it
    for (const before of [left, ...withoutTalk(left)]) {
      const parts = [...heard(before), ...behind];
      const all = outcomes(parts, hearing);
      const isTold = [before, right].some((side) => toldTime.test(side)) && all.some(isTimer);
      const isCut = all.length > 1 && all.every(isWhole) && areApart(all, mayRepeat);
      if (isCut && !isTold && !parts.some(onlyGiven)) return parts;
      if (!all.slice(-behind.length).every(isWhole)) break;
    }
  }
  return undefined;
}

/** "i turned my back for one minute and my ganache has split": what has passed, and nothing to be timed. */
const toldTime =
  /^(?:(?:and|so|but|well|oh|sorry|ok),? )*(?:i|i've|ive|we|we've|weve|it|it's|its|they|they've|she|he|my|our|the|that|there) (?!.*\b(?:timer|alarm|remind|ring|rings|ping|buzz|countdown|wants?|needs?|must|should|have to|has to|got to|let|go(?:es)? in(?:to)?|going in)\b)[^?]*\b(?:\d+|an?|one|two|three|four|five|ten|fifteen|twenty|thirty|forty|half) [a-z ]{0,10}?(?:sec|min|hour|hr)/i;
const isTimer = ({ tool }: Tried): boolean => tool === "timer";

/** Calculators of which a sentence may hold several questions; two answers of another would be one question cut in two. */
const several: ReadonlySet<string> = new Set(["dose", "timer"]);
const areApart = (all: readonly Tried[], mayRepeat: ReadonlySet<string>): boolean => {
  const others = all.map(({ tool }) => tool).filter((tool) => !mayRepeat.has(tool));
  return new Set(others).size === others.length;
};
