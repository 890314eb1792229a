/** What a calculator reads from a sentence, as the conversation keeps it. */
import type { Memory, Reading, Tool } from "../../tools/contract/index.ts";
import { boxed } from "../follow/boxed.ts";
import type { Inputs } from "../follow/state.ts";

/** The sentence as a calculator sees it: some know of no boxes. */
export const seenBy = (tool: Tool, reading: Reading, in_box: number | undefined): Reading =>
  tool.unboxes ? boxed(reading, in_box) : reading;

/** The drafts that a calculator reads from a sentence, without what it left undefined. */
export function drafts(tool: Tool, reading: Reading, memory: Memory): Inputs[] {
  const read = tool.read(seenBy(tool, reading, memory.in_box), memory);
  return (Array.isArray(read) ? read : [read]).map((inputs) =>
    Object.fromEntries(Object.entries(inputs).filter(([, value]) => value !== undefined)),
  );
}
