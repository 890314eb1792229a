/** A calculator is one object that declares everything about itself. */
import type * as z from "zod/mini";
import type { Outcome } from "./answer.ts";
import type { Memory, Reading } from "./reading.ts";
import type { World } from "./record.ts";

/** A sign that a sentence is for this calculator: positive speaks for it, negative against. */
export interface Cue {
  /** As it is written, for the trace. */
  pattern: string;
  weight: number;
}

export interface Tool<I extends Record<string, unknown> = Record<string, unknown>> {
  name: string;
  /** One line for help: what she can ask. */
  purpose: string;
  /** Made by `later`: two dozen schemas take longer to make than most questions to answer. */
  inputs: () => z.ZodMiniType<I>;
  cues: readonly Cue[];
  /** Signs that a sentence goes on with what this calculator was asked last; looked at only then. */
  goesOn?: readonly Cue[];
  /** Signs that count only behind an answer of the calculator named: "ok set it", behind how long a step takes. */
  after?: Readonly<Record<string, readonly Cue[]>>;
  /** Phrases with the inputs they must yield: they train, they are tested, help shows them. */
  examples: readonly { say: string; inputs: Partial<I> }[];
  /** Phrases that look alike and belong to another calculator. */
  elsewhere: readonly { say: string; tool: string }[];
  /** Inputs of which a new one replaces the old: a weight said now ends the count said before. */
  rivals?: readonly (readonly (keyof I & string)[])[];
  /** Each order stands alone: nothing of the one before is taken over but what `read` takes itself. */
  alone?: true;
  /** It knows of no boxes: "12 boxes of 6" are 72 macarons to it. */
  unboxes?: true;
  /**
   * Its weights and counts move by a difference: "10 less", "one more bowl". With `added` by "add 60 g" too, which
   * elsewhere pours that into the bowl.
   */
  shifts?: "told" | "added";
  /**
   * It only works something out: said a second time it is the same sum, and no second order. Not so where one of these
   * inputs was said both times and differs.
   */
  sum?: readonly (keyof I & string)[];
  /** Inputs found in the sentence; several when it asks several things of this calculator at once. */
  read(reading: Reading, memory: Memory): Partial<I> | Partial<I>[];
  compute(inputs: I, world: World): Outcome;
}

/** Keeps a calculator's own input type while it is written; the registry forgets it. */
export function tool<I extends Record<string, unknown>>(declared: Tool<I>): Tool {
  return declared as unknown as Tool;
}
