/** "filling for 20, and how much coffee in that": inputs that are of what an earlier question of the turn came to. */
import type { Reading, Table } from "../../tools/contract/index.ts";
import { inBase } from "../../tools/lib/units.ts";
import type { Derived, Inputs } from "./state.ts";

/** What of these inputs stood on the table and was not said itself; undefined where nothing did. Pure. */
export function derivedFrom(inputs: Inputs, { amounts }: Reading, left: Table): Derived | undefined {
  const isSaid = (value: number) =>
    amounts.some(
      (each) => each.value === value || (each.dim === "weight" && inBase(each.value, each.unit) === value),
    );
  const found = Object.entries(inputs).flatMap(([key, value]): [string, "mass" | "macarons"][] => {
    if (typeof value !== "number" || isSaid(value)) return [];
    if (key.endsWith("_g") && value === left.mass?.grams) return [[key, "mass"]];
    return key === "macarons" && value === left.macarons ? [[key, "macarons"]] : [];
  });
  return found.length > 0 ? Object.fromEntries(found) : undefined;
}

/** The step with what stands on the table now. Pure. */
export function withDerived<Each extends { inputs: Inputs; from?: Derived }>(step: Each, table: Table): Each {
  if (!step.from) return step;
  const now = { mass: table.mass?.grams, macarons: table.macarons };
  const own = Object.entries(step.from).flatMap(([key, where]) =>
    now[where] === undefined ? [] : [[key, now[where]] as const],
  );
  return { ...step, inputs: { ...step.inputs, ...Object.fromEntries(own) } };
}
