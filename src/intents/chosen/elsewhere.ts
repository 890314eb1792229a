/** Questions that are none of ours, whatever numbers stand in them: they are declined by name instead of being guessed at. */
import type { Reading } from "../../tools/contract/index.ts";
import type { State } from "../follow/state.ts";
import { keepsOther } from "./keeps-other.ts";
import { otherDish } from "./other-dish.ts";
import { asksPerGuest, isSigh, otherMatter } from "./other-matter.ts";
import { othersEarn } from "./others-earn.ts";

/** What a question is of, and how it is turned down. */
export interface Elsewhere {
  name: string;
  kind: "bake" | "matter" | "guests";
}

/** Calculators that write down or look up what was said, of whatever it is. */
const keepsAny: ReadonlySet<string> = new Set("note formula undo explain bench".split(" "));
/** What was noted, of whatever it is. */
const looksUp =
  /(?:^| )(?:notes?|noted|wrote|written|logged|batch\S*|\S*<count=batches|made|baked|bake|rated)(?: |$)/;
/** These tell how many macarons there are or shall be. */
const counts: ReadonlySet<string> = new Set("shells fill day buy scale".split(" "));

/**
 * Undefined where the question is ours. Pure.
 * @param tool that would answer it; undefined where none would
 * @param follows it took from the turn before what it doesn't say
 */
export function elsewhere(reading: Reading, state: State, tool: string | undefined): Elsewhere | undefined {
  if (tool !== undefined && keepsAny.has(tool)) return undefined;
  if (tool === "recall" && looksUp.test(reading.mask)) return undefined;
  const dish = otherDish(reading, tool);
  if (dish !== undefined) return { name: dish, kind: "bake" };
  const food = tool === "keep" ? keepsOther(reading) : undefined;
  if (food !== undefined) return { name: food, kind: "bake" };
  if (tool === "cost" && othersEarn(reading)) return { name: "what others earn", kind: "matter" };
  // "timer for the match, 90 min"
  const isTimer = tool === "timer" && / ?timers?\b|alarm|remind/.test(reading.mask);
  const isTimed = tool === "timer" && reading.mask.includes("<time");
  const matter = isTimer ? undefined : otherMatter(reading, isTimed);
  if (matter !== undefined) return { name: matter, kind: "matter" };
  if ((tool === undefined || counts.has(tool)) && asksPerGuest(reading))
    return { name: "guests", kind: "guests" };
  return goesOn(reading, state, tool);
}

/** "and for 60?", behind "for 40 cupcakes?": still of those. */
function goesOn({ things, amounts, mask }: Reading, { elsewhere: before }: State, tool: string | undefined) {
  const isElided =
    before?.kind === "bake" &&
    tool !== undefined &&
    counts.has(tool) &&
    things.length === 0 &&
    amounts.length > 0 &&
    amounts.every(({ dim }) => dim === "number") &&
    mask.split(" ").length <= 7;
  return isElided ? { name: before.name, kind: before.kind } : undefined;
}

export { isSigh };
