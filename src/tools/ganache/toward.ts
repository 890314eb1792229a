/** How much of something brings a mix to a target: solved, not tried out. Everything is linear in grams. */
import { type Composition, compose, type Line } from "../lib/composition.ts";
import { noise } from "./book-ratio.ts";

export interface Way {
  /** "add dark chocolate", "leave out cream", "glucose syrup in place of cream". */
  does: string;
  /** The ingredient and its grams, added or left out. */
  name: string;
  grams: number;
  lines: Line[];
}

/** What a target asks of a composition: zero where it is met. Linear, so that it can be solved for grams. */
export type Gap = (sum: Composition) => number;

/** Sugar against water: sugar − ratio × water. */
export const activityGap =
  (sugarPerWater: number): Gap =>
  ({ sugar_g, water_g }) =>
    sugar_g - sugarPerWater * water_g;

/** A share of the whole, in %: part − share × whole. */
export const shareGap =
  (part: "water" | "fat" | "sugar", percent: number): Gap =>
  (sum) =>
    sum[`${part}_g`] - (percent / 100) * sum.grams;

/** Grams of `name` to add so that the gap closes; undefined where adding it never does. */
export function toAdd(lines: readonly Line[], gap: Gap, name: string, ndb?: string): Way | undefined {
  const line = (grams: number): Line => ({ name, grams, ...(ndb ? { ndb } : {}) });
  const grams = -gap(compose(lines)) / gap(compose([line(1)]));
  if (!(grams > noise) || !Number.isFinite(grams)) return undefined;
  const place = lines.findIndex((each) => each.name === name && each.ndb === ndb);
  return {
    does: `add ${name}`,
    name,
    grams,
    lines:
      place < 0
        ? [...lines, line(grams)]
        : lines.map((each, at) => (at === place ? { ...each, grams: each.grams + grams } : each)),
  };
}

/** Grams of one of its lines to leave out; undefined where even all of it isn't enough. */
export function toLeaveOut(lines: readonly Line[], gap: Gap, name: string): Way | undefined {
  const place = lines.findIndex((each) => each.name === name);
  const line = lines[place];
  if (!line) return undefined;
  const grams = gap(compose(lines)) / gap(compose([{ ...line, grams: 1 }]));
  if (!(grams > noise) || grams >= line.grams - noise) return undefined;
  return {
    does: `leave out ${name}`,
    name,
    grams,
    lines: lines.map((each, at) => (at === place ? { ...each, grams: each.grams - grams } : each)),
  };
}

/** Grams of `name` in place of as much of one of its lines, the whole unchanged. */
export function toSwap(lines: readonly Line[], gap: Gap, name: string, out: string): Way | undefined {
  const place = lines.findIndex((each) => each.name === out);
  const line = lines[place];
  if (!line) return undefined;
  const gain = gap(compose([{ name, grams: 1 }])) - gap(compose([{ ...line, grams: 1 }]));
  const grams = -gap(compose(lines)) / gain;
  if (!(grams > noise) || !Number.isFinite(grams) || grams >= line.grams - noise) return undefined;
  const less = lines.map((each, at) => (at === place ? { ...each, grams: each.grams - grams } : each));
  const there = less.findIndex((each) => each.name === name);
  return {
    does: `${name} in place of ${out}`,
    name,
    grams,
    lines:
      there < 0
        ? [...less, { name, grams }]
        : less.map((each, at) => (at === there ? { ...each, grams: each.grams + grams } : each)),
  };
}

/** The lines brought to a whole of so many grams, all in proportion. */
export function sized(lines: readonly Line[], total_g: number): Line[] {
  const whole = lines.reduce((sum, each) => sum + each.grams, 0);
  return lines.map((each) => ({ ...each, grams: (each.grams * total_g) / whole }));
}
