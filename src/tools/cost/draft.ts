/** What the readers of a question about money look at. */
import type { Memory, Reading } from "../contract/index.ts";
import type { CostInputs } from "./cost.ts";

/** Inputs as far as they are known. */
export type Draft = Partial<CostInputs>;

export type Lines = NonNullable<Draft["lines"]>;

/** A sentence, and the bill that it may go on from. */
export interface Turn {
  reading: Reading;
  memory: Memory;
  /** The bill of the turn before. */
  before: Draft;
}

/** What such a sentence says by itself, on the way to its bill. */
export interface Told extends Turn {
  draft: Draft;
}
