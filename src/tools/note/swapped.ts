/** "change the thirteen minutes to seventeen": the first was wrong, the second takes its place. No range of both. */
import { opening } from "../../../data/words/openers.ts";
import type { Amount, Reading } from "../contract/index.ts";
import { inBase } from "../lib/units.ts";

const orders = "(?:change|correct|fix|amend|edit|update|turn|switch|swap|make)";
const figure = "\\S*<(?:time|temperature|number)>";
const pair = `^(?!.*timer)${opening}${orders} (?:the |that |my |its )?(?:\\S+ ){0,2}${figure} (?:\\S+ ){0,2}(?:to|into|for|with) ${figure}`;
const asRange = `^(?!.*timer)${opening}${orders} (?:the |that |my |its )?(?:\\S+ ){0,2}\\S*_to_${figure}`;

/** Signs that count only behind a note. */
export const swaps: readonly string[] = [pair, asRange];
const signs = swaps.map((each) => new RegExp(`${each}(?= |$)`));

/** The sentence with what is right now alone, and what was wrong; undefined where nothing takes another's place. */
export function swapped(reading: Reading): { reading: Reading; wrong: number[] } | undefined {
  if (!signs.some((each) => each.test(reading.mask))) return undefined;
  const [old, now, ...more] = reading.amounts;
  if (!old || more.length > 0) return undefined;
  if (now === undefined) {
    const { high, ...low } = old;
    return high === undefined || !/_to_/.test(reading.mask)
      ? undefined
      : { reading: { ...reading, amounts: [{ ...low, value: high }] }, wrong: [inMinutes(low)] };
  }
  // a bare number is of what it takes the place of
  const own = now.dim === "number" && now.unit === "" ? { ...now, dim: old.dim, unit: old.unit } : now;
  return {
    reading: { ...reading, amounts: [own], mask: reading.mask.replace(/<(?:time|temperature|number)>/, "") },
    wrong: [inMinutes(old)],
  };
}

/** As a note holds it: times in minutes. */
const inMinutes = ({ dim, value, unit }: Amount): number => (dim === "time" ? inBase(value, unit) : value);
