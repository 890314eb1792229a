/** Holds a calculator's inputs against its schema; what breaks it becomes an answer that says so. */
import type { Outcome, Tool } from "../contract/index.ts";

export type Checked = { ok: true; inputs: Record<string, unknown> } | { ok: false; outcome: Outcome };

/** The inputs as the schema gives them back, or `impossible` with the schema's own sentences. */
export function checkInputs(tool: Tool, inputs: Record<string, unknown>): Checked {
  const parsed = tool.inputs().safeParse(inputs);
  if (parsed.success) return { ok: true, inputs: parsed.data };
  const messages = [...new Set(parsed.error.issues.map((issue) => issue.message))].filter((text) =>
    /[.?]$/.test(text),
  );
  // without a sentence of its own the fault is in how the question was read, not in what was asked
  if (messages.length === 0)
    return {
      ok: false,
      outcome: {
        status: "declined",
        headline: `I took that for ${tool.name}, but couldn't make out what is wanted. Try "${tool.examples[0]?.say}".`,
      },
    };
  const [wrong] = parsed.error.issues.map((issue) => issue.path[0]);
  return {
    ok: false,
    outcome: {
      status: "impossible",
      headline: messages.join(" "),
      ...(typeof wrong === "string" ? { slot: wrong } : {}),
    },
  };
}
