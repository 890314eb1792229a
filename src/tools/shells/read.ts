/** Reads a sizing question: what is known, and which of batter, shells, macarons, trays or eggs is wanted. */
import { usualDiameter } from "../../../data/rules/shells.ts";
import type { Memory, Reading } from "../contract/index.ts";
import { diameter, says, saysDecimal, sizeAgain, thatSize } from "../lib/find.ts";
import { countedShares, namedShares } from "../lib/shares.ts";
import { moreSparesSaid, sparesSaid } from "../lib/spares.ts";
import { inBase } from "../lib/units.ts";
import { firstOf, type Way } from "../lib/ways.ts";
import { bowlWays, ofEach } from "./bowl-said.ts";
import { boxWays } from "./boxes-said.ts";
import { fromBareNumber, fromTable } from "./earlier.ts";
import { finishedWeight } from "./finished-said.ts";
import { knownSaid } from "./known-said.ts";
import { lostOf, lostSome, soManyLeft } from "./lost-said.ts";
import { oneOfThem } from "./one-of-them.ts";
import { countedOut, sizeAsked } from "./size-asked.ts";
import { isUsualSize, severalSizes, sizeAt } from "./sizes-said.ts";
import { onTraySaid } from "./tray-said.ts";
import { type Draft, ofBatter, type ShellsTurn, type ShellsWay, shellsTurn, sized } from "./turn.ts";
import { asksTraysAnew, wantSaid } from "./want-said.ts";

/** "eggs of 55 g each, how many for 120 g whites": what an egg weighs in its shell says nothing of its white. */
const eggsForWhites: ShellsWay = ({ reading }) => {
  const whites = reading.amounts.find((each) => each.dim === "weight" && each.of?.ingredient === "whites");
  const egg = reading.amounts.find((each) => each.dim === "weight" && each !== whites);
  return whites &&
    reading.things.some((each) => each.ingredient === "egg") &&
    says(reading, /how many .*(?:for|to get|make|give) /)
    ? {
        whites_g: inBase(whites.value, whites.unit),
        want: "whites",
        ...(egg ? { egg_g: inBase(egg.value, egg.unit) } : {}),
      }
    : undefined;
};

const fourOrFive =
  /(?:will|would|is|are|does|do) (?:that|it|they|those|this) (?:be |go on |fit on |fit |need |take )?(?:on )?\S*<number> \S*<count=trays> or|(?:will|would|do|does) (?:that|it|they|those|this) (?:all )?(?:go|fit) on \S*<number> \S*<count=trays>(?: \?)?$/;

/** "will that be four trays or five": the numbers are guesses. */
const traysGuessed: ShellsWay = ({ reading, before }) =>
  before && says(reading, fourOrFive) ? { want: "trays" } : undefined;

const goOnIt =
  /how many (?:\S*<length> )?\S*<count=(?:shells|macarons)> (?:will |would |can |do )?(?:go|fit|get) (?:on|onto) (?:it|that|there|one)/;

/** "how many 38 mm shells go on it", behind the tray's own size. */
const onThatTray: ShellsWay = ({ reading, memory }) =>
  memory.last?.tool === "bench" && says(reading, goOnIt)
    ? { want: "tray", ...sized(diameter(reading)) }
    : undefined;

/** "macs at 45 mm", of a bowl of batter. */
const sizeAnew =
  /^(?:(?:and|so|ok|then) )*\S*<count=(macarons|shells)> (?:at|if|with|of|in) (?:\S+ ){0,4}?\S*<(?:length|number)>(?: \?)?$/;

/** "at 38", of an order or a bowl of which no size was said: the size, as behind one that was. */
const usualWhereAt = (reading: ShellsTurn["reading"], before: Draft | undefined): number | undefined =>
  (says(
    reading,
    /^(?:(?:and|so|ok|or|but|what|how|about|if|put|make|pipe|do|try|go|them|it|those) )*at \S*<number>/,
  ) ||
    saysDecimal(reading)) &&
  [before?.macarons, before?.shells, before?.batter_g].some((each) => each !== undefined)
    ? usualDiameter.value
    : undefined;

/** "and for 30 macarons", behind what one shell weighs: no longer of one. */
const isOrderAnew = (known: Draft, before: Draft | undefined): boolean =>
  (before?.want === "one" || before?.want === "one_baked") &&
  (known.macarons ?? known.shells ?? known.trays) !== undefined;

/** "batter for 24 macarons at 40 mm": what is known, with whatever is said beside it or stood there before. */
const sizing: Way<ShellsTurn, Draft> = (turn) => {
  const { reading, memory, before } = turn;
  const known = knownSaid(turn);
  const again = sizeAgain(reading, before?.diameter_mm ?? usualWhereAt(reading, before));
  const at = sizeAt(reading, before);
  const size = diameter(reading) ?? at ?? again ?? thatSize(reading, memory);
  const shells = reading.amounts.find((each) => each.of?.count === "shells");
  const asked = wantSaid(reading) ?? (shells && lostOf(reading, shells) > 0 ? "macarons" : undefined);
  const order = before ?? memory.table;
  const inBowl = before ? before.batter_g !== undefined : memory.table.mass?.thing === "batter";
  const isOrder = order.macarons !== undefined || order.shells !== undefined || inBowl;
  const made = inBowl ? sizeAnew.exec(reading.mask)?.[1] : undefined;
  // "trays at 45" wants how many of them it takes
  const isTrays = isOrder && (asked ?? "tray") === "tray" && asksTraysAnew(reading);
  const want = made ? (made as "macarons" | "shells") : isTrays ? ("trays" as const) : asked;
  const isBatter = reading.amounts.some((each) => each.of?.base === "batter");
  const on_tray = onTraySaid(reading);
  // "48 macarons, half raspberry half pistachio"
  const shares =
    known.macarons === undefined
      ? undefined
      : (namedShares(reading) ?? countedShares(reading, known.macarons));
  const draft: Draft = {
    ...known,
    ...(isBatter && known.batter_g !== undefined ? ofBatter(want) : {}),
    ...(size === undefined && isUsualSize(reading) ? { usual_size: true } : sized(size)),
    ...(want ? { want } : isOrderAnew(known, before) ? { want: "batter" } : {}),
    ...(on_tray === undefined ? {} : { on_tray }),
    ...(shares ? { shares } : {}),
    ...(moreSparesSaid(reading, before) ?? sparesSaid(reading, before?.macarons)),
  };
  if (Object.keys(known).length > 0 || again !== undefined || (at !== undefined && before)) return draft;
  if (
    (draft.spare_percent ?? draft.spare_more ?? draft.spare_less) !== undefined &&
    before?.macarons !== undefined
  )
    return draft;
  // "and once it is baked?", of the one shell that was weighed
  if (want === "baked" && memory.follows && before?.want === "one") return { ...draft, shells: 1 };
  const bare = fromBareNumber(turn);
  // "batter for 30, 2 spare": of the 30
  const spare = moreSparesSaid(reading, before) ?? sparesSaid(reading, bare.macarons ?? before?.macarons);
  return { ...draft, ...bare, ...fromTable(turn, want), ...spare };
};

const ways: readonly ShellsWay[] = [
  ...boxWays,
  finishedWeight,
  lostSome,
  soManyLeft,
  sizeAsked,
  countedOut,
  severalSizes,
  ...bowlWays,
  eggsForWhites,
  ofEach,
  oneOfThem,
  traysGuessed,
  onThatTray,
  sizing,
];

export const readShells = (reading: Reading, memory: Memory): Draft | Draft[] =>
  firstOf(ways, shellsTurn(reading, memory)) ?? {};
