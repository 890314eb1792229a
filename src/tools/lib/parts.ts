/** Which part is meant of a bowl that was split: by its name, its size, or as "the other one". */
import type { Memory, Reading } from "../contract/index.ts";

export interface PartOnTable {
  name: string;
  grams: number;
}

/** A part by its color, its taste or what it is called. */
export const isNamed = (reading: Reading, name: string): boolean =>
  (name === "with butter" &&
    /\bbutter (?:one|version|ganache)\b|\bwith (?:the )?butter\b/.test(reading.text)) ||
  reading.things.some(
    (thing) =>
      [thing.color, thing.taste, thing.base].includes(name) ||
      (thing.base !== undefined && name.endsWith(` ${thing.base}`)) ||
      (thing.taste !== undefined && name.startsWith(`${thing.taste} `)),
  ) ||
  goesInto(reading, name);

/** "in the raspberry half", "for the ring". */
export const goesInto = ({ mask }: Reading, name: string): boolean =>
  new RegExp(
    `(?:for|in|into) (?:the |my |that |this )?${name === "center" ? "cent(?:er|re)" : name}[ <]`,
  ).test(`${mask} `);

/** The part on the table that the sentence names. */
export const namedPart = (reading: Reading, { table }: Memory): PartOnTable | undefined =>
  table.parts?.find((each) => isNamed(reading, each.name)) ??
  onlyGanache(reading, table.parts) ??
  (table.mass?.thing === undefined || table.mass.thing === "filling"
    ? onlyOfMix(reading, table.parts)
    : undefined);

/** "for the buttercream part", of a buttercream ring around jam: the one that is made of it. */
function onlyOfMix(
  { things }: Reading,
  parts: readonly (PartOnTable & { of?: string })[] = [],
): PartOnTable | undefined {
  const base = things.find((each) => each.base)?.base;
  const [only, ...others] = base ? parts.filter(({ of }) => of === base) : [];
  return others.length === 0 && parts.length > 1 ? only : undefined;
}

const chocolates: ReadonlySet<string> = new Set(["dark", "milk", "white"]);

/** "for the ganache part", of jam and dark: the one that is made of chocolate. */
function onlyGanache({ text }: Reading, parts: readonly PartOnTable[] = []): PartOnTable | undefined {
  const [only, ...others] = parts.filter(({ name }) => chocolates.has(name));
  return others.length === 0 && /\bganache (?:part|portion|share|bit|one)\b/.test(text) ? only : undefined;
}

const larger = /(?:the|a) (?:bigger|larger|biggest|largest|big)(?: (?:part|half|bowl|one)|[ ?.]*$)/;
const smaller = /(?:the|a) (?:smaller|smallest|small|little)(?: (?:part|half|bowl|one)|[ ?.]*$)/;

/** "the bigger half", "the small bowl": g. */
export function partBySize({ text }: Reading, { table }: Memory): number | undefined {
  const sizes = (table.parts ?? []).map((each) => each.grams);
  if (sizes.length === 0) return undefined;
  if (larger.test(text)) return Math.max(...sizes);
  return smaller.test(text) ? Math.min(...sizes) : undefined;
}

/** "the other one", of two, where the first was the one of so many grams: g. */
export function otherOfTwo({ text }: Reading, { table }: Memory, one_g: number | undefined) {
  const two = (table.parts ?? []).map((each) => each.grams);
  const at = two.indexOf(one_g ?? Number.NaN);
  return two.length === 2 && at >= 0 && /\bthe other (?:one|half|bowl|part|lot)\b/.test(text)
    ? two[1 - at]
    : undefined;
}

/** True where what was split lies there in parts of one weight. */
export const areEqual = (parts: readonly PartOnTable[] | undefined): boolean =>
  parts !== undefined &&
  parts.length > 1 &&
  parts.every((each) => Math.abs(each.grams - (parts[0]?.grams ?? 0)) < 1e-6);
