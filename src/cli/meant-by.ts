/** What a question is heard as: by the turn before, by itself, or by another question of the turn before. */
import { next, type Unread } from "../intents/converse.ts";
import type { Topic } from "../intents/follow/state.ts";
import type { Step } from "../intents/follow/step.ts";
import type { Reading, World } from "../tools/contract/index.ts";
import { type Hearing, leavesSome } from "./hearing.ts";
import { computeWith, otherwise } from "./outcome.ts";

/** Pure: the steps of a question, or what nobody took. */
export function meantBy(reading: Reading, hearing: Hearing): Step[] | Unread {
  const { state, world, names, understanding } = hearing;
  const found = next(reading, state, names, understanding);
  const taken = Array.isArray(found)
    ? (otherwise(found, reading, world, understanding, names) ?? found)
    : found;
  return ofOther(taken, reading, hearing) ?? taken;
}

/**
 * "make that 240 g, and add ten to the timer", behind a dose and a timer: where the last question of the turn before has
 * no answer to it, another one of that turn may have, if it alone takes all that is said.
 */
function ofOther(taken: readonly Step[] | Unread, reading: Reading, hearing: Hearing): Step[] | undefined {
  const { state, world, names, understanding } = hearing;
  if (state.pending) return undefined;
  const topics = others(reading, hearing);
  if (topics.length === 0 || isAnswered(taken, world)) return undefined;
  const found = topics.flatMap((topic) => {
    const { turn: _turn, row: _row, ...before } = state;
    const steps = next(reading, { ...before, last: topic }, names, understanding);
    const [step, ...more] = Array.isArray(steps) ? steps : [];
    const isOwn = step?.tool.name === topic.tool && more.length === 0 && isOther(step, topic);
    return step && isOwn && isAnswered([step], world) ? [[step]] : [];
  });
  // of two that could be meant it isn't guessed which
  return found.length === 1 ? found[0] : undefined;
}

const isAnswered = (taken: readonly Step[] | Unread, world: World): boolean =>
  !("near" in taken) &&
  taken.every((step) => {
    const { status, unused = [] } = computeWith(step, world);
    return ["answered", "impossible"].includes(status) && unused.length === 0 && !leavesSome(step);
  });

const isOther = ({ inputs }: Step, topic: Topic): boolean =>
  JSON.stringify(inputs) !== JSON.stringify(topic.inputs);

/** What the turn before was about besides the last thing. */
function others({ said }: Reading, { state: { turn, last } }: Hearing): Topic[] {
  const topics = (turn?.said === said ? turn.before : turn?.topics) ?? [];
  return topics.filter(({ tool }) => tool !== last?.tool && goesOnFrom.has(tool));
}

/** What may be gone on from with a few words; a note or a stock is changed only where it is named. */
const goesOnFrom = new Set(
  "dose scale shells fill ganache buttercream split convert cost day label".split(" "),
);
