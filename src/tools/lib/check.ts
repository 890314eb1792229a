/** Holds a calculator's inputs against its schema; what breaks it becomes an answer that says so. */
import type { Outcome, Tool } from "../contract/index.ts";

export type Checked = { ok: true; inputs: Record<string, unknown> } | { ok: false; outcome: Outcome };

/** The inputs as the schema gives them back, or `impossible` with the schema's own sentences. */
export function checkInputs(tool: Tool, inputs: Record<string, unknown>): Checked {
  const parsed = tool.inputs.safeParse(inputs);
  if (parsed.success) return { ok: true, inputs: parsed.data };
  const messages = [...new Set(parsed.error.issues.map((issue) => issue.message))];
  return { ok: false, outcome: { status: "impossible", headline: messages.join(" ") } };
}
