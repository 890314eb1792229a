/** Signs that are looked at only in their place, and so are no part of the table of cues. */
import type { Cue, Tool } from "../../tools/contract/index.ts";
import { sign } from "../../tools/lib/cue.ts";

const compiled = new Map<string, { pattern: RegExp; weight: number }[]>();

/** The points of the signs that a sentence matches; they are compiled once for each key. */
export function pointsOf(key: string, list: readonly Cue[], mask: string): number {
  if (list.length === 0) return 0;
  const signs = compiled.get(key) ?? list.map(({ pattern, weight }) => ({ pattern: sign(pattern), weight }));
  compiled.set(key, signs);
  return signs.reduce((sum, { pattern, weight }) => sum + (pattern.test(mask) ? weight : 0), 0);
}

/** What speaks for a calculator behind the answer of another. */
export const pointsAfter = (tool: Tool, last: string | undefined, mask: string): number =>
  last === undefined || last === tool.name
    ? 0
    : pointsOf(`${tool.name} after ${last}`, tool.after?.[last] ?? [], mask);
