/** Recipes of the baker's own in an order: one for shells stands in for the house recipe, any other is a filling. */
import type { World } from "../contract/index.ts";
import { kindOf } from "../formula/kind.ts";
import type { DayInputs } from "./day.ts";

/** The order with each recipe in its place; a name that is no recipe any more is left as it was said. */
export function withRecipes(inputs: DayInputs, { formulas }: Pick<World, "formulas">): DayInputs {
  const { fillings } = inputs;
  const makesShells = (name: string | undefined) =>
    name !== undefined &&
    formulas.some(
      (each) => each.name.toLowerCase() === name.toLowerCase() && kindOf(each.lines) === "shells",
    );
  const shells = fillings?.find((each) => makesShells(each.formula))?.formula;
  if (shells === undefined) return inputs;
  const { fillings: _all, ...rest } = inputs;
  const left = fillings?.filter((each) => !makesShells(each.formula)) ?? [];
  return { ...rest, shell_recipe: shells, ...(left.length ? { fillings: left } : {}) };
}
