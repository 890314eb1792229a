/** A question back: understood, one thing is missing. */
import type { Outcome } from "../contract/index.ts";

/** @param slot the input that the answer fills */
export const asking = (question: string, slot: string): Outcome => ({
  status: "asking",
  headline: question,
  question,
  slot,
});
