/**
 * What a question means behind others. Nothing here is asked of the first question of a conversation: the build keeps
 * it apart, and reads it when something was said before.
 */
import type { Reading } from "../../tools/contract/index.ts";
import { firstOf, type Way } from "../../tools/lib/ways.ts";
import { bowlCorrected } from "./bowl-corrected.ts";
import { bowlParted } from "./bowl-parted.ts";
import { corrected } from "./corrected.ts";
import { type Earlier, earlierOne } from "./earlier-one.ts";
import { withItsFlavor, withoutBowl, withoutEcho } from "./echoed.ts";
import { figureAgain } from "./figure-again.ts";
import { forATimer } from "./for-a-timer.ts";
import { forGood } from "./for-good.ts";
import { goneBack } from "./gone-back.ts";
import { heatAsked } from "./heat-asked.ts";
import { heatBefore } from "./heat-before.ts";
import { moved } from "./heat-moved.ts";
import { howHeavy } from "./how-heavy.ts";
import { inWeighedOne } from "./in-weighed-one.ts";
import { intoPart } from "./into-part.ts";
import { intoTheMix } from "./into-the-mix.ts";
import { justWeighed } from "./just-weighed.ts";
import { lostOfBowl } from "./lost-of-bowl.ts";
import { ofSize } from "./of-size.ts";
import { oneFewer } from "./one-fewer.ts";
import { oneMinute } from "./one-minute.ts";
import { orderChanged } from "./order-changed.ts";
import { orderNow } from "./order-now.ts";
import { orderParted } from "./order-parted.ts";
import { otherOfTwo } from "./other-of-two.ts";
import { otherPart } from "./other-part.ts";
import { partCorrected } from "./part-corrected.ts";
import { partGets } from "./part-gets.ts";
import { partWeighed } from "./part-weighed.ts";
import { ratioAgain } from "./ratio-again.ts";
import { ratioOfMix } from "./ratio-of-mix.ts";
import { recipeAgain } from "./recipe-again.ts";
import { returned } from "./returned.ts";
import { reworded } from "./reworded.ts";
import { shareInstead, shareNamed } from "./share-named.ts";
import { shareOfPart } from "./share-of-part.ts";
import { sharesAnew } from "./shares-anew.ts";
import { splitAnew } from "./split-anew.ts";
import type { State, Topic } from "./state.ts";
import { stretchedTo } from "./stretched-to.ts";
import { sumIsBowl } from "./sum-is-bowl.ts";
import { thatLong } from "./that-long.ts";
import { timerAlike } from "./timer-alike.ts";
import { toldChange } from "./told-change.ts";
import { toldOfGanache } from "./told-of-ganache.ts";
import { trayAsked } from "./tray-asked.ts";
import { trayInMinutes } from "./tray-in-minutes.ts";
import { weighedAnew } from "./weighed-anew.ts";
import { withTheBowl } from "./with-the-bowl.ts";

export { allAgain, isRoot } from "./all-again.ts";
export { namesEarlier } from "./earlier-one.ts";
export { asksOfNew } from "./figure-again.ts";
export { ofBoth, ofWholeTurn } from "./of-several.ts";
export { asksNoSum, sameAgain } from "./same-again.ts";
export { shifted } from "./shifted.ts";

interface Said {
  said: Reading;
  now: State;
  /** Names of timers that run. */
  timers: readonly string[];
}

/** A sentence that is another, said of what was asked before. */
const ways: readonly Way<Said, string>[] = [
  ({ said, now, timers }) => forATimer(said, now, timers),
  ({ said, now }) => heatAsked(said, now),
  ({ said, now }) => heatBefore(said, now),
  ({ said, now }) => oneFewer(said, now),
  ({ said, now }) => oneMinute(said, now),
  ({ said, now }) => stretchedTo(said, now),
  ({ said, now }) => thatLong(said, now),
  ({ said, now }) => timerAlike(said, now),
  ({ said, now }) => forGood(said, now),
  ({ said, now }) => moved(said, now),
  ({ said, now }) => toldOfGanache(said, now),
  ({ said, now }) => bowlCorrected(said, now),
  ({ said, now }) => partCorrected(said, now),
  ({ said, now }) => bowlParted(said, now),
  ({ said, now }) => weighedAnew(said, now),
  ({ said, now }) => lostOfBowl(said, now),
  ({ said, now }) => trayAsked(said, now),
  ({ said, now }) => howHeavy(said, now),
  ({ said, now }) => toldChange(said, now),
  ({ said, now }) => reworded(said, now),
  ({ said, now }) => otherPart(said, now),
  ({ said, now }) => withItsFlavor(said, now),
  ({ said, now }) => justWeighed(said, now),
  ({ said, now }) => sumIsBowl(said, now),
  ({ said, now }) => intoTheMix(said, now),
  ({ said, now }) => withoutEcho(said, now),
  ({ said, now }) => withoutBowl(said, now),
];

/** What a question means: other words, another question that it goes on from, or one that is asked once more. */
export interface Meant {
  text?: string;
  topic?: Topic;
  back?: Earlier;
}

/** "the one with butter", of the two that a white ganache has: another of its own answer, and no other question. */
const isOfAnswer = ({ text }: Reading, { last }: State): boolean =>
  last?.tool === "ganache" && /\b(?:one|version) with(?:out)? (?:the )?butter\b/.test(text);

/** @param timers the names of those that run */
export function meantBehind(said: Reading, now: State, timers: readonly string[]): Meant {
  if (now.pending) {
    // "40 g lemon flavor in the lemon", where it was asked what was put there
    const text = now.pending.slot === "unclear" ? intoPart(said, now) : shareInstead(said, now);
    return text === undefined ? {} : { text };
  }
  const minutes = trayInMinutes(said, now);
  if (minutes !== undefined) return { text: minutes };
  const figure = figureAgain(said, now);
  if (figure) return figure;
  // "the first one is rose flavor", of a bowl that was split: no question that was asked first
  const part = inWeighedOne(said, now) ?? partGets(said, now);
  const back =
    part === undefined && !isOfAnswer(said, now)
      ? (otherOfTwo(said, now) ?? earlierOne(said, now))
      : undefined;
  if (back) return { back };
  const other =
    orderChanged(said, now) ??
    orderNow(said, now) ??
    orderParted(said, now) ??
    partWeighed(said, now) ??
    withTheBowl(said, now) ??
    recipeAgain(said, now) ??
    splitAnew(said, now) ??
    ratioAgain(said, now) ??
    ratioOfMix(said, now) ??
    shareNamed(said, now) ??
    sharesAnew(said, now) ??
    ofSize(said, now) ??
    shareOfPart(said, now) ??
    goneBack(said, now);
  const text = other?.text ?? part ?? firstOf(ways, { said, now, timers });
  return { ...(text === undefined ? {} : { text }), ...(other?.topic ? { topic: other.topic } : {}) };
}

/** The state with the question in front that this sentence returns to, or puts right. */
export const goesOnFrom = (reading: Reading, now: State): State => corrected(reading, returned(reading, now));
