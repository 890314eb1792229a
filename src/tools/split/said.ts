/** What a sentence says of a split, once for all the ways to read it. */
import type { Amount, Memory, Reading } from "../contract/index.ts";
import { nameBeside, restName } from "./names.ts";
import type { SplitInputs } from "./split.ts";

export type Draft = Partial<SplitInputs>;

export interface Said {
  reading: Reading;
  memory: Memory;
  /** The amount that is the bowl itself, where the sentence says it. */
  bowl: Amount | undefined;
  /** The split before, where the sentence follows it. */
  before: Draft | undefined;
  /** The name of what is left over. */
  rest: Draft;
  /** Bare numbers that may be sizes; "3 whites" are no bowls. */
  numbers: Amount[];
  /** The color or taste that stands beside a number. */
  named: (amount: Amount) => string | undefined;
}

export const saidOf = (reading: Reading, memory: Memory, bowl: Amount | undefined): Said => ({
  reading,
  memory,
  bowl,
  before: memory.follows && memory.last?.tool === "split" ? (memory.last.inputs as Draft) : undefined,
  rest: restName(reading),
  numbers: reading.amounts.filter(
    (each) =>
      each.dim === "number" &&
      each.unit === "" &&
      each !== bowl &&
      !/^(?:whites|egg|egg yolk)$/.test(each.of?.ingredient ?? ""),
  ),
  named: (amount) => nameBeside(reading, amount, bowl),
});
