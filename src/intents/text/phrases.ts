/** Turns of phrase that are read as others, once a text is in lower case and plain signs. */

import { anForAnd } from "./phrases/an-for-and.ts";
import { asWeighed } from "./phrases/as-weighed.ts";
import { askedOfTheBowl } from "./phrases/asked-of-the-bowl.ts";
import { askedShort } from "./phrases/asked-short.ts";
import { askedWithin } from "./phrases/asked-within.ts";
import { batchCounted } from "./phrases/batch-counted.ts";
import { batterSharedOut } from "./phrases/batter-shared-out.ts";
import { billOrdered } from "./phrases/bill-ordered.ts";
import { bowlFirst } from "./phrases/bowl-first.ts";
import { bowlTooSmall } from "./phrases/bowl-too-small.ts";
import { boxesTold } from "./phrases/boxes-told.ts";
import { canYou } from "./phrases/can-you.ts";
import { changedAgain } from "./phrases/changed-again.ts";
import { chocolateSwapped } from "./phrases/chocolate-swapped.ts";
import { clockSaid } from "./phrases/clock.ts";
import { clockStarted } from "./phrases/clock-started.ts";
import { colorsEach } from "./phrases/colors-each.ts";
import { comesToMacarons } from "./phrases/comes-to-macarons.ts";
import { countAsked } from "./phrases/count-asked.ts";
import { countTold } from "./phrases/count-told.ts";
import { countsOfKinds } from "./phrases/counts-of-kinds.ts";
import { dollars } from "./phrases/dollars.ts";
import { doneAgo } from "./phrases/done-ago.ts";
import { dozensAlone } from "./phrases/dozens-alone.ts";
import { drawl } from "./phrases/drawl.ts";
import { drawlAmounts } from "./phrases/drawl-amounts.ts";
import { drawlTimers } from "./phrases/drawl-timers.ts";
import { dryMixWeighed } from "./phrases/dry-mix-weighed.ts";
import { eachOfSeveral } from "./phrases/each-of-several.ts";
import { eggsCracked } from "./phrases/eggs-cracked.ts";
import { feetMissing } from "./phrases/feet-missing.ts";
import { filledWhen } from "./phrases/filled-when.ts";
import { fillingsCounted } from "./phrases/fillings-counted.ts";
import { flavorLeft } from "./phrases/flavor-left.ts";
import { forTheNotes } from "./phrases/for-the-notes.ts";
import { givenTime } from "./phrases/given-time.ts";
import { habits } from "./phrases/habits.ts";
import { halfAndHalf } from "./phrases/half-and-half.ts";
import { ifIBake } from "./phrases/if-i-bake.ts";
import { indirect } from "./phrases/indirect.ts";
import { keptCounted } from "./phrases/kept-counted.ts";
import { kindsAlone } from "./phrases/kinds-alone.ts";
import { leadIn } from "./phrases/lead-in.ts";
import { leftOutOfPrice } from "./phrases/left-out-of-price.ts";
import { letGoFor } from "./phrases/let-go-for.ts";
import { linesForMacarons } from "./phrases/lines-for-macarons.ts";
import { listGrown } from "./phrases/list-grown.ts";
import { listKept } from "./phrases/list-kept.ts";
import { listToSize } from "./phrases/list-to-size.ts";
import { meantLast } from "./phrases/meant-last.ts";
import { measures } from "./phrases/measures.ts";
import { meringueAsked } from "./phrases/meringue-asked.ts";
import { meringueWont } from "./phrases/meringue-wont.ts";
import { mixAndItsParts } from "./phrases/mix-and-its-parts.ts";
import { mixesNamed } from "./phrases/mixes-named.ts";
import { moreOfThem } from "./phrases/more-of-them.ts";
import { myDefault } from "./phrases/my-default.ts";
import { notForNotes } from "./phrases/not-for-notes.ts";
import { notWanted } from "./phrases/not-wanted.ts";
import { offhand } from "./phrases/offhand.ts";
import { offhandTimers } from "./phrases/offhand-timers.ts";
import { onTop } from "./phrases/on-top.ts";
import { oneHanded } from "./phrases/one-handed.ts";
import { oneHandedBowls } from "./phrases/one-handed-bowls.ts";
import { oneHandedTimers } from "./phrases/one-handed-timers.ts";
import { oneMoreTold } from "./phrases/one-more-told.ts";
import { oneOfIt } from "./phrases/one-of-it.ts";
import { onePartGets } from "./phrases/one-part-gets.ts";
import { orderInPassing } from "./phrases/order-in-passing.ts";
import { ordersAdded } from "./phrases/orders-added.ts";
import { ordersOf } from "./phrases/orders-of.ts";
import { otherWeights } from "./phrases/other-weights.ts";
import { ovenTold } from "./phrases/oven-told.ts";
import { overSoStop } from "./phrases/over-so-stop.ts";
import { ownCount } from "./phrases/own-count.ts";
import { packsBought } from "./phrases/packs-bought.ts";
import { partsTold } from "./phrases/parts-told.ts";
import { partsWithoutCommas } from "./phrases/parts-without-commas.ts";
import type { Book } from "./phrases/phrase.ts";
import { plainToAdd } from "./phrases/plain-to-add.ts";
import { polite } from "./phrases/polite.ts";
import { pricesKept } from "./phrases/prices-kept.ts";
import { pricesTold } from "./phrases/prices-told.ts";
import { putRight } from "./phrases/put-right.ts";
import { ratioRefused } from "./phrases/ratio-refused.ts";
import { recipesKept } from "./phrases/recipes-kept.ts";
import { ringsInARow } from "./phrases/rings-in-a-row.ts";
import { roundabout } from "./phrases/roundabout.ts";
import { roundaboutSums } from "./phrases/roundabout-sums.ts";
import { saidTwice } from "./phrases/said-twice.ts";
import { sceneAhead } from "./phrases/scene-ahead.ts";
import { shareAhead } from "./phrases/share-ahead.ts";
import { sharesTold } from "./phrases/shares-told.ts";
import { shelved } from "./phrases/shelf.ts";
import { sizeKept } from "./phrases/size-kept.ts";
import { sizesInAList } from "./phrases/sizes-in-a-list.ts";
import { someAreFine } from "./phrases/some-are-fine.ts";
import { sparesTold } from "./phrases/spares-told.ts";
import { splitAsked } from "./phrases/split-asked.ts";
import { spoken } from "./phrases/spoken.ts";
import { stepOfTray } from "./phrases/step-of-tray.ts";
import { stillAsMany } from "./phrases/still-as-many.ts";
import { sumTold } from "./phrases/sum-told.ts";
import { takenUp } from "./phrases/taken-up.ts";
import { talk } from "./phrases/talk.ts";
import { thingFirst } from "./phrases/thing-first.ts";
import { timeThat } from "./phrases/time-that.ts";
import { timersInARow } from "./phrases/timers-in-a-row.ts";
import { timersInPassing } from "./phrases/timers-in-passing.ts";
import { timesSign } from "./phrases/times-sign.ts";
import { toStock } from "./phrases/to-stock.ts";
import { toldScene } from "./phrases/told-beside.ts";
import { toldInPassing } from "./phrases/told-in-passing.ts";
import { trayHolds } from "./phrases/tray-holds.ts";
import { twoFillings } from "./phrases/two-fillings.ts";
import { typed } from "./phrases/typed.ts";
import { unitFirst } from "./phrases/unit-first.ts";
import { usualTimes } from "./phrases/usual-times.ts";
import { volumesAdded } from "./phrases/volumes-added.ts";
import { weighedFirst } from "./phrases/weighed-first.ts";
import { weighedOut } from "./phrases/weighed-out.ts";
import { weightsOfBatch } from "./phrases/weights-of-batch.ts";
import { wentIn } from "./phrases/went-in.ts";
import { whatIsLeft } from "./phrases/what-is-left.ts";
import { whoSays } from "./phrases/who-says.ts";
import { wrappedOrder } from "./phrases/wrapped-order.ts";

// sounds and signs of money, then slips: the others are written in right words
const books: readonly Book[] = [
  leadIn,
  canYou,
  wrappedOrder,
  feetMissing,
  letGoFor,
  meringueWont,
  myDefault,
  timeThat,
  packsBought,
  ratioRefused,
  keptCounted,
  stillAsMany,
  halfAndHalf,
  eggsCracked,
  moreOfThem,
  otherWeights,
  doneAgo,
  oneOfIt,
  whatIsLeft,
  onePartGets,
  partsWithoutCommas,
  onTop,
  billOrdered,
  whoSays,
  notForNotes,
  leftOutOfPrice,
  notWanted,
  sceneAhead,
  toldScene,
  asWeighed,
  givenTime,
  usualTimes,
  forTheNotes,
  habits,
  oneMoreTold,
  toStock,
  recipesKept,
  listKept,
  ifIBake,
  overSoStop,
  timersInARow,
  ringsInARow,
  pricesKept,
  pricesTold,
  partsTold,
  sharesTold,
  listGrown,
  orderInPassing,
  weighedFirst,
  meantLast,
  putRight,
  saidTwice,
  thingFirst,
  unitFirst,
  plainToAdd,
  chocolateSwapped,
  askedOfTheBowl,
  timersInPassing,
  listToSize,
  mixAndItsParts,
  changedAgain,
  countTold,
  filledWhen,
  flavorLeft,
  fillingsCounted,
  boxesTold,
  ordersOf,
  sumTold,
  ordersAdded,
  eachOfSeveral,
  countsOfKinds,
  kindsAlone,
  dozensAlone,
  countAsked,
  batterSharedOut,
  sizesInAList,
  sparesTold,
  colorsEach,
  dryMixWeighed,
  twoFillings,
  wentIn,
  clockStarted,
  stepOfTray,
  someAreFine,
  takenUp,
  splitAsked,
  bowlFirst,
  bowlTooSmall,
  weighedOut,
  comesToMacarons,
  ownCount,
  trayHolds,
  sizeKept,
  batchCounted,
  mixesNamed,
  meringueAsked,
  weightsOfBatch,
  linesForMacarons,
  shareAhead,
  timesSign,
  volumesAdded,
  spoken,
  dollars,
  oneHanded,
  oneHandedTimers,
  oneHandedBowls,
  anForAnd,
  typed,
  drawlAmounts,
  drawl,
  drawlTimers,
  offhandTimers,
  offhand,
  ovenTold,
  askedShort,
  toldInPassing,
  roundabout,
  roundaboutSums,
  polite,
  askedWithin,
  indirect,
  talk,
  clockSaid,
  measures,
];

const shelf = shelved(books);
/** Hands over what `turnTable` wrote: looking where marks are takes longer than a question. */
export const primeTurns = shelf.prime;
/** Where the marks of all turns of phrase are, written down. */
export const turnTable = shelf.table;

/** The text with its turns of phrase put plainly. */
export function plainly(text: string): string {
  let now = text;
  let held = shelf.heldIn(now);
  for (let at = 0; at < held.length; at++) {
    const place = held[at] ?? 0;
    const { only, from, to } = shelf.phraseAt(place);
    if (only?.(now) === false) continue;
    const next =
      typeof to === "string" ? now.replace(from, to) : now.replace(from, (...found) => to(...found));
    if (next === now) continue;
    now = next;
    // those behind it are looked for in what it made of the text
    held = shelf.heldIn(now);
    at = held.findLastIndex((each) => each <= place);
  }
  return now;
}
