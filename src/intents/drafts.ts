/** What a calculator reads from a sentence, as the conversation keeps it. */
import type { Memory, Reading, Tool } from "../tools/contract/index.ts";
import type { Inputs } from "./step.ts";

/** The drafts that a calculator reads from a sentence, without what it left undefined. */
export function drafts(tool: Tool, reading: Reading, memory: Memory): Inputs[] {
  const read = tool.read(reading, memory);
  return (Array.isArray(read) ? read : [read]).map((inputs) =>
    Object.fromEntries(Object.entries(inputs).filter(([, value]) => value !== undefined)),
  );
}
