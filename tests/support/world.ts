/** A kitchen with an empty record, and small helpers to look at what a calculator hands back. */
import type { Figure, Outcome, Tool, World } from "../../src/tools/contract/index.ts";
import { checkInputs } from "../../src/tools/lib/check.ts";

/** The local moment at which every test stands unless it says otherwise: a Saturday. */
export const standing = "2026-03-14T09:30:00";

/** @param more parts of the record or bench that a test sets */
export const world = (more: Partial<World> = {}): World => ({
  now_ms: new Date(standing).getTime(),
  bench: {},
  timers: [],
  notes: [],
  bottles: [],
  stock: [],
  formulas: [],
  plans: [],
  ...more,
});

/** Inputs through the schema and then the calculator, as the program does it. */
export function answer(tool: Tool, inputs: Record<string, unknown>, more: Partial<World> = {}): Outcome {
  const checked = checkInputs(tool, inputs);
  return checked.ok ? tool.compute(checked.inputs, world(more)) : checked.outcome;
}

/** The one figure of a name; a name that is there twice or not at all is a failed test. */
export function figure({ figures = [], headline }: Outcome, name: string, unit?: string): Figure {
  const found = figures.filter((each) => each.name === name && (unit === undefined || each.unit === unit));
  if (found.length !== 1 || !found[0])
    throw new Error(`${found.length} figures "${name}" in: ${headline} ${JSON.stringify(figures)}`);
  return found[0];
}

export const value = (outcome: Outcome, name: string, unit?: string): number =>
  figure(outcome, name, unit).value ?? Number.NaN;

/** Low and high of a figure. */
export const range = (outcome: Outcome, name: string): [number, number] => {
  const { low = Number.NaN, high = Number.NaN } = figure(outcome, name);
  return [low, high];
};

export const names = ({ figures = [] }: Outcome): string[] => figures.map((each) => each.name);
