/** The inputs of a dose as far as they are known: what a way of saying it found, or what was spoken of before. */
import type { Memory } from "../contract/index.ts";
import type { DoseInputs } from "./dose.ts";

export type Draft = Partial<DoseInputs>;

/** The dose that was spoken of last. */
export const doseBefore = ({ last }: Pick<Memory, "last">): Draft | undefined =>
  last?.tool === "dose" ? (last.inputs as Draft) : undefined;

/** The same, where this turn leans on it. */
export const doseLeanedOn = (memory: Memory): Draft | undefined =>
  memory.follows ? doseBefore(memory) : undefined;

/** The inputs that name a flavor. */
export const flavorOf = ({
  dose,
  taste,
  name,
  bare,
}: Pick<Draft, "dose" | "taste" | "name" | "bare">): Pick<Draft, "dose" | "taste" | "name" | "bare"> => ({
  ...(dose ? { dose } : {}),
  ...(taste ? { taste } : {}),
  ...(name ? { name } : {}),
  ...(bare ? { bare } : {}),
});

/** The inputs that name a bowl that was weighed. */
export const bowlOf = ({ base_g, base }: Draft): Draft =>
  base_g === undefined ? {} : { base_g, ...(base ? { base } : {}) };
