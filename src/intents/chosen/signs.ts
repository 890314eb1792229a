/**
 * Signs that are looked at only in their place: what speaks for going on with a calculator, and for one behind the
 * answer of another. They stand in a table of their own, so that one that has no chance in a sentence is never compiled.
 */
import type { Cue, Tool } from "../../tools/contract/index.ts";
import { cueTable, type Hits, hitsIn } from "../../tools/lib/cue-table.ts";

interface Signs {
  /** Which list of the table is whose. */
  places: ReadonlyMap<string, number>;
  hits: Hits;
}

const behind = (tool: string, last: string) => `${tool} after ${last}`;

const listsOf = ({ name, goesOn = [], after = {} }: Tool): [string, readonly Cue[]][] => [
  [name, goesOn],
  ...Object.entries(after).map(([last, cues]): [string, readonly Cue[]] => [behind(name, last), cues]),
];

/** The signs of these calculators, as a text: whose each list is in its first line, behind it a table of cues. */
export function signTable(tools: readonly Tool[]): string {
  const lists = tools.flatMap(listsOf).filter(([, cues]) => cues.length > 0);
  return [lists.map(([key]) => key).join(","), cueTable(lists.map(([, cues]) => ({ cues })))].join("\n");
}

const known = new WeakMap<readonly Tool[], () => Signs>();

/** Hands over what `signTable` wrote, read when it is needed: looking for it would else read every calculator. */
export function primeSigns(tools: readonly Tool[], table: () => string | undefined): void {
  let signs: Signs | undefined;
  known.set(tools, () => (signs ??= signsIn(table() ?? signTable(tools))));
}

function signsIn(table: string): Signs {
  const [keys = ""] = table.split("\n", 1);
  return {
    places: new Map(keys.split(",").map((key, at) => [key, at])),
    hits: hitsIn(table.slice(keys.length + 1)),
  };
}

/** Every sign counts whole. */
function pointsOf(tools: readonly Tool[], key: string, mask: string): number {
  if (!known.has(tools)) primeSigns(tools, () => undefined);
  const signs = known.get(tools)?.();
  const at = signs?.places.get(key);
  if (!signs || at === undefined) return 0;
  return (signs.hits(mask)[at] ?? []).reduce((sum, { weight }) => sum + weight, 0);
}

/** What a calculator's own signs say for going on with it, in points of cues; none speak against it. */
export const pointsToGoOn = (tools: readonly Tool[], { name }: Tool, mask: string): number =>
  Math.max(0, pointsOf(tools, name, mask));

/** What speaks for a calculator behind the answer of another. */
export const pointsAfter = (
  tools: readonly Tool[],
  { name }: Tool,
  last: string | undefined,
  mask: string,
): number => (last === undefined || last === name ? 0 : pointsOf(tools, behind(name, last), mask));
