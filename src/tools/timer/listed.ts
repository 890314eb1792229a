/** "timers: rest 30, ganache 45 and bake 15": several timers in a row, each with its name and its minutes. */
import { isSign, type Piece, textOf } from "../lib/pieces.ts";

/** Words that make a row of names and numbers one of timers. */
const ordered = /(?:^| )(?:timers?|alarms?|countdowns?)(?: |$)/;
/** A small number behind a word that is no step may be part of its name: "batch 2". */
const leastBehind = 4;

const isJoint = (piece: Piece): boolean => isSign(piece) || /^(?:and|then|plus|also|n)$/.test(piece.text);

/** "tray two", "tray 1": the number is the tray's. */
const isPlace = (some: readonly Piece[], at: number): boolean => some[at - 1]?.thing?.count !== undefined;

/** A number that can be minutes: it counts no shells and is no share, whatever food stands beside it. */
const canBeMinutes = (some: readonly Piece[], at: number): boolean => {
  const amount = some[at]?.amount;
  // "18 tray 2": the tray has its own number
  const isOfOne = some[at + 1]?.thing?.count !== undefined && isNumberOf(some[at + 2]);
  return (
    amount?.dim === "number" &&
    amount.unit === "" &&
    !amount.fraction &&
    (amount.of?.count === undefined || isOfOne) &&
    amount.value > 0 &&
    !isPlace(some, at) &&
    // "3 timers": how many of them
    !/^(?:timers|alarms)$/.test(some[at + 1]?.text ?? "")
  );
};

const isNumberOf = (piece: Piece | undefined): boolean =>
  piece?.amount?.dim === "number" || /^(?:one|[a-d])$/.test(piece?.text ?? "");

interface Chunk {
  from: number;
  to: number;
}

function chunksOf(some: readonly Piece[]): Chunk[] {
  const out: Chunk[] = [];
  let from = 0;
  for (let at = 0; at <= some.length; at++) {
    const piece = some[at];
    if (piece && !isJoint(piece)) continue;
    if (at > from) out.push({ from, to: at });
    from = at + 1;
  }
  return out.flatMap((each) => inPairs(some, each));
}

/** "timers rest 30 ganache 45 bake 15": each ends with its number, and nothing stands between them. */
function inPairs(some: readonly Piece[], chunk: Chunk): Chunk[] {
  const ends = some.flatMap((_, at) =>
    at >= chunk.from && at < chunk.to && canBeMinutes(some, at) ? [at + 1] : [],
  );
  if (ends.length < 2 || ends.at(-1) !== chunk.to || !some.some((each) => each.text === "timers"))
    return [chunk];
  return ends.map((to, i) => ({ from: ends[i - 1] ?? chunk.from, to }));
}

const nameless =
  /^(?:set|start|begin|run|please|pls|a|an|the|my|me|timers?|alarms?|countdowns?|for|of|at|in|min|minutes?|another|tray|trays)$/;

/** Where the one time of a chunk stands, with a name beside it; undefined where it has none, or more than one. */
function timeIn(some: readonly Piece[], { from, to }: Chunk): number | undefined {
  const places = Array.from({ length: to - from }, (_, i) => from + i);
  const times = places.filter((at) => some[at]?.amount?.dim === "time" || canBeMinutes(some, at));
  const others = places.some(
    (at) =>
      some[at]?.when ||
      (some[at]?.amount &&
        !times.includes(at) &&
        !isPlace(some, at) &&
        !/^(?:timers|alarms)$/.test(some[at + 1]?.text ?? "")),
  );
  const [time] = times;
  if (time === undefined || times.length > 1 || others) return undefined;
  const words = places.filter((at) => at !== time && !nameless.test(some[at]?.text ?? ""));
  const before = words.some((at) => at < time);
  const isSmall = (some[time]?.amount?.value ?? 0) < leastBehind && some[time]?.amount?.dim === "number";
  const step = some[time - 1]?.thing?.step !== undefined;
  return words.length === 0 || (isSmall && before && !step) ? undefined : time;
}

/**
 * The places of the times in such a row, or undefined where the sentence is none: each of its pieces between commas and
 * "and" has to have a name and one time. Where all have a unit, the times alone say it.
 */
export function listedTimes(some: readonly Piece[]): number[] | undefined {
  if (!ordered.test(textOf(some))) return undefined;
  const chunks = chunksOf(some).filter(
    // "timers: ..." says nothing of its own
    ({ from, to }) =>
      some
        .slice(from, to)
        .some(
          (each, at) =>
            !nameless.test(each.text) && !/^(?:timers|alarms)$/.test(some[from + at + 1]?.text ?? ""),
        ),
  );
  const times = chunks.map((each) => timeIn(some, each));
  const sure = times.filter((each) => each !== undefined);
  const isBare = sure.some((at) => some[at]?.amount?.dim === "number");
  return isBare && sure.length === times.length && sure.length > 0 ? sure : undefined;
}

/** "set two timers 10 12 min", "2 timers: 10, 12": as many lengths as timers are said; the places of the lengths. */
export function countedTimes(some: readonly Piece[]): number[] | undefined {
  const timers = some.findIndex((each) => /^(?:timers|alarms)$/.test(each.text));
  const count = some[timers - 1]?.amount;
  if (count?.dim !== "number" || count.value < 2 || some.some((each) => each.when)) return undefined;
  const times = some.flatMap((each, at) =>
    at > timers && (each.amount?.dim === "time" || canBeMinutes(some, at)) ? [at] : [],
  );
  const others = some.some((each, at) => at > timers && each.amount && !times.includes(at));
  const isBare = times.some((at) => some[at]?.amount?.dim === "number");
  return !others && isBare && times.length === count.value ? times : undefined;
}

/** The pieces with each of these numbers as so many minutes, of nothing that stands beside it. */
export const asMinutes = (some: readonly Piece[], times: readonly number[]): Piece[] =>
  some.map((each, at) =>
    each.amount?.dim === "number" && times.includes(at)
      ? { ...each, amount: { ...each.amount, dim: "time", unit: "min", of: undefined } }
      : each,
  );

/** Whether a part of such a row had no unit of its own. */
export const wasBare = (said: readonly Piece[], part: readonly Piece[]): boolean =>
  part.some(({ amount }) =>
    said.some(
      (each) => each.amount?.dim === "number" && amount?.dim === "time" && each.amount.at === amount.at,
    ),
  );

const reminds = /^(?:remind|ping|nudge|wake|buzz|alert)$/;

/** "15 min bake timer, 40 min ganache, remind me at 11 ...": where a reminder at its own hour begins, behind timers. */
export function reminderBehind(some: readonly Piece[]): number | undefined {
  const at = some.findIndex((each, i) => i > 1 && reminds.test(each.text));
  const joint = some[at - 1];
  if (at < 0 || !joint || !isJoint(joint)) return undefined;
  const isLength = (each: Piece) => each.amount?.dim === "time";
  const before = some.slice(0, at);
  const own = some.slice(at);
  return before.some(isLength) && own.some((each) => isLength(each) || each.when?.minute !== undefined)
    ? at
    : undefined;
}
