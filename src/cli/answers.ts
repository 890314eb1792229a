/** Outcomes as the answers that are shown, and those of one turn put together. */
import type { Answer, Outcome, Reading, Tool } from "../tools/contract/index.ts";
import { nearMiss, topicNamed } from "./not-known.ts";

export function answerFrom(tool: string, outcome: Outcome): Answer {
  const {
    slot: _slot,
    wants: _wants,
    leaves: _leaves,
    unused: _unused,
    effects: _effects,
    change: _change,
    ...answer
  } = outcome;
  return { tool, ...answer };
}

export function declined(reading: Reading, near: string[]): Answer {
  const about = near.map(topicNamed);
  const hint = about.length ? `: did you mean something about ${about.join(" or ")}? ` : ". ";
  return {
    tool: "help",
    status: "declined",
    headline: `${nearMiss(reading) || `I didn't understand that${hint}`}I weigh, convert, time and note for macarons: try "230 g buttercream, how much flavor?" or "help".`,
  };
}

export interface Said {
  /** Only what was answered before, once more. */
  repeats?: true;
  answer: Answer;
  inputs: Record<string, unknown>;
  /** As its calculator has it: there where it only works something out. */
  sum?: Tool["sum"];
}

/**
 * "I want a 65 % margin. My cost is $10.50": the first part alone would ask for what the second says. A question is left
 * out where a later part of the same turn was answered by the same calculator with all that it knew.
 */
export const withoutSettled = (answers: readonly Answer[], steps: readonly Said[]): Answer[] =>
  answers.filter((answer) => {
    const at = steps.findIndex((each) => each.answer === answer);
    const own = steps[at];
    // "is that more than 600 g? what does it come to": the same answer twice
    const isTwice = steps
      .slice(0, Math.max(at, 0))
      .some(
        (each) =>
          each.answer.tool === answer.tool && JSON.stringify(each.inputs) === JSON.stringify(own?.inputs),
      );
    // "375 g of dark ganache: choc? cream?": the same answer says both
    const isSame = steps.slice(0, Math.max(at, 0)).some(
      ({ answer: before, inputs }) =>
        before.tool === answer.tool &&
        before.headline === answer.headline &&
        // 100 g of yellow batter and 100 g of red are two bowls
        own?.sum?.every(
          (key) =>
            inputs[key] === undefined || own.inputs[key] === undefined || inputs[key] === own.inputs[key],
        ),
    );
    if (isSame || (own?.repeats && isTwice)) return false;
    if (answer.status !== "asking" || !own) return true;
    return !steps
      .slice(at + 1)
      .some(
        ({ answer: later, inputs }) =>
          later.tool === answer.tool &&
          later.status === "answered" &&
          Object.entries(own.inputs).every(
            ([key, value]) => key === "want" || JSON.stringify(inputs[key]) === JSON.stringify(value),
          ),
      );
  });
