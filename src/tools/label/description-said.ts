/** A label by description: mixes, chocolates, nuts and tastes by name, of which no weight is said. */
import type { Thing } from "../contract/index.ts";
import { nameOf } from "../lib/lines.ts";
import { partsAt, saysMore } from "./composite.ts";
import { strangeBefore } from "./foods-said.ts";
import { oldIn } from "./swapped.ts";
import { type Draft, isFood, type LabelTurn, type LabelWay } from "./turn.ts";

/** Bases that say nothing of what is in them, or are the shells. */
const notMixes = ["filling", "batter"];

/** "hazelnut macarons": a taste alone, of which nobody said whether it is nut, paste or flavor. */
const isBareTaste = (thing: Thing): boolean =>
  Boolean(
    thing.taste &&
      (!thing.dose || thing.dose === "flavor") &&
      (!thing.ingredient || thing.text === thing.taste),
  );

/** "tahini caramel": named whole, since its caramel brings more than its tahini. */
const fullName = (thing: Thing): string =>
  partsAt(thing.text).length > 1 || saysMore(thing.text, nameOf(thing)) ? thing.text : nameOf(thing);

/** Macarons and "ones" bring their shells. */
function described({ things: all, reading, isAsked, isRefused, want }: LabelTurn): Draft | undefined {
  const { mask } = reading;
  const things = all.filter((each) => !isRefused(each));
  const isLeft = (each: Thing) => want === "allergens" && isAsked(each);
  const mixes = [...new Set(things.flatMap(({ base }) => (base && !notMixes.includes(base) ? [base] : [])))];
  const named = things
    .filter((each) => isFood(each) && each.id !== "dates" && !isLeft(each))
    .map((each) =>
      isBareTaste(each) ? { name: each.taste ?? each.text, taste: each.taste } : { name: fullName(each) },
    );
  const hasShells =
    things.some(({ count, base }) => count === "macarons" || count === "shells" || base === "batter") ||
    /\bones?\b/.test(mask);
  if (!hasShells && mixes.length === 0 && named.length === 0) return undefined;
  const strange = strangeBefore(reading, things);
  return {
    mixes: hasShells ? ["shells", ...mixes] : mixes,
    ...(named.length > 0 ? { named } : {}),
    ...(strange.length > 0 ? { unread: strange } : {}),
  };
}

/** "and if i put peanut butter in them": more in what was asked about. */
function addedTo({ reading, memory, before, common }: LabelTurn, said: Draft): Draft | undefined {
  const isMore = /(?:^| )(?:in|into|on|to) (?:them|it|those|that|these)(?: |$)/.test(reading.mask);
  if (!memory.follows || !before || !isMore) return undefined;
  return {
    ...before,
    ...common,
    mixes: [...new Set([...(before.mixes ?? []), ...(said.mixes ?? [])])],
    named: [...(before.named ?? []), ...(said.named ?? [])],
  };
}

/** "and with peanut butter in place of the walnut": the rest stays as it was asked about. */
function inPlaceOf({ reading, things, memory, before, common }: LabelTurn, said: Draft): Draft | undefined {
  if (!memory.follows || !before?.named || !said.named) return undefined;
  // "and if theyre pistachio instead": the taste alone is another
  const tastes = before.named.filter((each) => each.taste !== undefined);
  const onlyTaste = said.named.length === 1 && said.named[0]?.taste !== undefined;
  if (onlyTaste && tastes.length === 1 && /\binstead(?! of\b)/.test(reading.text)) {
    const others = before.named.filter((each) => each.taste === undefined);
    return { ...common, ...before, named: [...others, ...said.named] };
  }
  const isOld = oldIn(reading);
  if (!isOld) return undefined;
  const gone = new Set(things.filter(isOld).flatMap((each) => [each.taste, nameOf(each)]));
  const named = [...before.named, ...said.named].filter(
    (each) => !gone.has(each.name) && !gone.has(each.taste),
  );
  return { ...common, ...before, named };
}

/** "and for pistachio with white chocolate?", behind macarons: their shells are in it all the same. */
const inTheirShells = ({ memory, before }: LabelTurn, { mixes = [], named }: Draft): string[] =>
  memory.follows &&
  before?.want === "allergens" &&
  before.mixes?.includes("shells") &&
  named &&
  !mixes.includes("shells")
    ? ["shells", ...mixes]
    : mixes;

export const byDescription: LabelWay = (turn) => {
  const { memory, before, want, common } = turn;
  const asked = want === "allergens" ? turn.asked : [];
  const said = described(turn);
  if (!said) return undefined;
  // "and now the us one for the same": another label, and nothing else in it
  if (memory.follows && before?.lines && !said.named && said.mixes?.join() === "shells") return undefined;
  return (
    addedTo(turn, said) ??
    inPlaceOf(turn, said) ?? {
      ...common,
      want: want ?? "allergens",
      ...said,
      mixes: inTheirShells(turn, said),
      ...(asked.length > 0 ? { asked } : {}),
    }
  );
};
