/** The plan that is spoken of, as the turns before left it. What is done of it is the record's. */
import type { Memory } from "../contract/index.ts";
import type { Draft } from "./draft.ts";
import { hasMoved } from "./moved-said.ts";

/** The plan of the turn before, or the last that was made. */
export function planBefore(memory: Memory): Draft | undefined {
  const { table, last } = memory;
  const found =
    movedBefore(memory) ??
    (last?.tool === "day" ? (last.inputs as Draft) : (table.order as Draft | undefined));
  const { done_ids: _done, unclear_min: _min, unclear_of: _of, ...plan } = found ?? {};
  return found && plan;
}

/** What the plan was moved to in the turn before. */
export function movedBefore({ table, last }: Memory): Draft | undefined {
  const order = table.order as Draft | undefined;
  return last?.tool === "day" && order && hasMoved(last.inputs as Draft) ? order : undefined;
}
