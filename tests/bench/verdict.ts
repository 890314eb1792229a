/** What an answer comes to, held against what was expected. */
import type { Answer } from "../../src/tools/contract/index.ts";

export const verdicts = ["right", "wrong", "asked", "declined"] as const;
export type Verdict = (typeof verdicts)[number];

/** Not right: wrong where anything was answered all the same, which is the costly kind. */
export function verdictOf(wrong: boolean, answers: readonly Answer[]): Verdict {
  if (!wrong) return "right";
  if (answers.some((each) => each.status === "answered")) return "wrong";
  return answers.some((each) => each.status === "asking") ? "asked" : "declined";
}
