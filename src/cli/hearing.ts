/** What a question is heard in, and the pieces of a turn that is tried in another cut. */
import { type Names, questions } from "../intents/converse.ts";
import type { State } from "../intents/follow/state.ts";
import type { Step } from "../intents/follow/step.ts";
import type { Understanding } from "../intents/understanding.ts";
import type { Reading, World } from "../tools/contract/index.ts";

/** What a question is heard in. */
export interface Hearing {
  state: State;
  world: World;
  names: Names;
  understanding: Understanding;
}

/** The questions on one side of a cut: still of the turn that was said. */
export const heardOn =
  (said: string, { understanding, names }: Hearing) =>
  (side: string): Reading[] =>
    questions(side, understanding, names).map((each) => ({ ...each, said }));

/** "230 g buttercream": what there is, and no question. */
export const onlyGiven = ({ mask }: Reading): boolean =>
  /^(?:(?:and|i|have|ive|got|theres|there|is|with|the|my|ok|so) )*\S*<weight> (?:of )?\S*<[^>]*>(?: [,.;])*$/.test(
    mask,
  );

/** Something that was said is in none of the inputs. */
export const leavesSome = ({ left, lost }: Step): boolean => left !== undefined || lost === true;
