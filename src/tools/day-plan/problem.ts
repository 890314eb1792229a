/** An order made ready to be solved: checked, and every length in whole seconds. */

import { whole, within } from "./ranges.ts";
import { trayCount } from "./trays.ts";
import type { DayOrder, DoneStep } from "./types.ts";
import { type Window, windowOf } from "./waking.ts";

/** The settings that are lengths in minutes. */
const minuteLengths = [
  "weigh",
  "macaronage",
  "pipe",
  "rest",
  "bake",
  "cool",
  "mature",
  "box",
  "warm",
] as const;

export type Lengths = Readonly<Record<(typeof minuteLengths)[number] | "fill", number>>;

export interface Problem {
  readonly now: number;
  readonly due: number;
  readonly window: Window;
  readonly ovens: number;
  readonly trays: number;
  readonly lengths: Lengths;
  readonly fillings: readonly { readonly name: string; readonly hands: number; readonly set: number }[];
  readonly done: ReadonlyMap<string, DoneStep>;
}

/** @throws RangeError for a number outside the ranges that `types.ts` gives */
export function problemOf(order: DayOrder): Problem {
  const { settings, fillings, done = [] } = order;
  const minutes = minuteLengths.map((key) => [key, secondsOf(key, settings[key])]);
  const fill = Math.round(within("fillEach", settings.fillEach, 0, 3600) * order.macarons);
  const lengths: Lengths = { ...Object.fromEntries(minutes), fill };
  if (lengths.bake === 0) throw new RangeError("bake: a tray takes some time");
  const { from, to } = settings.awake;
  for (const edge of [from, to]) within("awake", whole("awake", edge), 0, 1440);
  within("fillings", fillings.length, 0, 10);
  for (const { start, end } of done) within("done", end, whole("done", start), Number.MAX_SAFE_INTEGER);
  return {
    now: whole("now", order.now),
    due: whole("due", order.due),
    window: windowOf(settings.awake),
    ovens: within("ovens", whole("ovens", settings.ovens), 1, 20),
    trays: trayCount(order),
    lengths: settings.noRest ? { ...lengths, rest: 0 } : lengths,
    fillings: fillings.map(({ name, handsMin, setMin }) => ({
      name,
      hands: secondsOf(name, handsMin),
      set: secondsOf(name, setMin),
    })),
    done: new Map(done.map((step) => [step.id, step])),
  };
}

function secondsOf(name: string, minutes: number): number {
  return Math.round(within(name, minutes, 0, 10_080) * 60);
}
