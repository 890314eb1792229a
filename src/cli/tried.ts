/** What a line would come to, before anything of it is carried out. */
import type { Names } from "../intents/converse.ts";
import { withDerived } from "../intents/follow/derived.ts";
import { remember } from "../intents/follow/remember.ts";
import type { State } from "../intents/follow/state.ts";
import type { Understanding } from "../intents/understanding.ts";
import type { Answer, Outcome, Reading, World } from "../tools/contract/index.ts";
import { type Hearing, leavesSome } from "./hearing.ts";
import { meantBy } from "./meant-by.ts";
import { computeWith } from "./outcome.ts";

export interface Tried {
  tool: string;
  status: Answer["status"];
  /** Everything measured that was said is in it. */
  whole: boolean;
  /** What it comes to. */
  figures?: Outcome["figures"];
  /** What is done, and with what of the record by its name. */
  does?: unknown;
  names?: unknown;
  /** It takes what a question before it in the same turn came to. */
  derived?: boolean;
}

/** Pure: each question of a line with its calculator and what comes of it in this world. */
export function tried(
  parts: readonly Reading[],
  before: State,
  world: World,
  names: Names,
  understanding: Understanding,
): Tried[] {
  let state = before;
  return parts.flatMap((reading): Tried[] => {
    const taken = meantBy(reading, { state, world, names, understanding });
    if (!Array.isArray(taken)) return [{ tool: "help", status: "declined", whole: false }];
    return taken.map((each) => {
      const step = withDerived(each, state.table);
      const first = computeWith(step, world);
      const again = first.status === "asking" && step.fallback ? { ...step, inputs: step.fallback } : step;
      const outcome = again === step ? first : computeWith(again, world);
      state = remember(state, again, outcome);
      return {
        tool: step.tool.name,
        status: outcome.status,
        whole: !leavesSome(step) && !outcome.unused?.length,
        figures: outcome.figures,
        does: again.inputs.do,
        names: again.inputs.name,
        derived: state.last?.from !== undefined,
      };
    });
  });
}

/** The same of questions that are heard in a conversation. */
export const outcomes = (
  parts: readonly Reading[],
  { state, world, names, understanding }: Hearing,
): Tried[] => tried(parts, state, world, names, understanding);

export const isWhole = ({ status, whole }: Tried): boolean => status === "answered" && whole;
