/** What a line would come to, before anything of it is carried out. */
import { type Names, next } from "../intents/converse.ts";
import { remember } from "../intents/follow/remember.ts";
import type { State } from "../intents/follow/state.ts";
import type { Step } from "../intents/follow/step.ts";
import type { Understanding } from "../intents/understanding.ts";
import type { Answer, Reading, World } from "../tools/contract/index.ts";
import { computeWith, otherwise } from "./outcome.ts";

export interface Tried {
  tool: string;
  status: Answer["status"];
  /** Everything measured that was said is in it. */
  whole: boolean;
}

/** Something that was said is in none of the inputs. */
export const leavesSome = ({ left, lost }: Step): boolean => left !== undefined || lost === true;

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
    const found = next(reading, state, names, understanding);
    if (!Array.isArray(found)) return [{ tool: "help", status: "declined", whole: false }];
    const taken = otherwise(found, reading, world, understanding, names) ?? found;
    return taken.map((step) => {
      const first = computeWith(step, world);
      const again = first.status === "asking" && step.fallback ? { ...step, inputs: step.fallback } : step;
      const outcome = again === step ? first : computeWith(again, world);
      state = remember(state, again, outcome);
      return {
        tool: step.tool.name,
        status: outcome.status,
        whole: !leavesSome(step) && !outcome.unused?.length,
      };
    });
  });
}
