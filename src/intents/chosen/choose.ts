/** Which calculator a sentence is for: the cues it matches, added up. Every point can be shown. */
import type { Reading, Tool } from "../../tools/contract/index.ts";
import { cueTable, type Hits, hitsIn } from "../../tools/lib/cue-table.ts";

export interface Score {
  tool: Tool;
  points: number;
  /** The cues that matched, for the trace. */
  because(): string[];
}

/** From here a sentence stands on its own: at least one decisive cue. */
export const stands = 3;
/** Below this nothing is answered. */
export const faint = 2;
/** Two calculators closer than this are a tie. */
export const margin = 1;

const tables = new WeakMap<readonly Tool[], Hits>();

/** Hands over the cues of these calculators as the build wrote them down: `cueTable` of the same list. */
export function primeCues(tools: readonly Tool[], table: string): void {
  tables.set(tools, hitsIn(table));
}

function hitsOf(tools: readonly Tool[]): Hits {
  const known = tables.get(tools);
  if (known) return known;
  const made = hitsIn(cueTable(tools));
  tables.set(tools, made);
  return made;
}

/** All calculators by points, the best first. Pure and order-free: ties keep the registry's order. */
export function score(reading: Pick<Reading, "mask">, tools: readonly Tool[]): Score[] {
  const matching = hitsOf(tools)(reading.mask);
  return tools
    .map((tool, at) => {
      const hits = matching[at] ?? [];
      const best = strongest(hits.filter((cue) => cue.weight > 0).map((cue) => cue.weight));
      const against = hits.filter((cue) => cue.weight < 0).reduce((sum, cue) => sum + cue.weight, 0);
      return {
        tool,
        points: best + against,
        because: () =>
          hits.map(({ at, weight }) => `${weight > 0 ? "+" : ""}${weight} ${tool.cues[at]?.pattern}`),
      };
    })
    .sort((a, b) => b.points - a.points);
}

/** The strongest cue counts whole, the others a quarter each, up to two more points: many hints don't outvote a sure sign. */
function strongest(weights: readonly number[]): number {
  if (weights.length === 0) return 0;
  const [first = 0, ...rest] = [...weights].sort((a, b) => b - a);
  return (
    first +
    Math.min(
      2,
      rest.reduce((sum, weight) => sum + weight / 4, 0),
    )
  );
}
