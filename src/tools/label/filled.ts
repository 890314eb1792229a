/** The ingredients of a filled macaron from the recipes that make it, each in the share in which it goes in. */
import { ringShare } from "../../../data/rules/shells.ts";
import type { Formula, World } from "../contract/index.ts";
import { kindOf } from "../formula/kind.ts";
import { listed, plain } from "../lib/show.ts";
import { fillingWeight, shellWeight, sizing } from "../lib/sizing.ts";
import type { LabelInputs } from "./label.ts";

type Lines = NonNullable<LabelInputs["lines"]>;

export interface Filled {
  lines: Lines;
  /** How the recipes were put together. */
  assumed: string[];
}

/**
 * Weights as they go in, 21 CFR 101.4(a) and Regulation 1169/2011, Article 18. Shells with one or two fillings are
 * weighed for one macaron of the bench's size; recipes that make no macaron together count whole, as saved.
 */
export function filledOf(names: readonly string[], world: World): Filled {
  const found = names.flatMap(
    (name) => world.formulas.findLast((each) => each.name.toLowerCase() === name.toLowerCase()) ?? [],
  );
  const shells = found.filter((each) => kindOf(each.lines) === "shells");
  const fillings = found.filter((each) => kindOf(each.lines) !== "shells");
  const [shell, ...others] = shells;
  if (!shell || others.length > 0 || fillings.length === 0 || fillings.length > 2)
    return {
      lines: found.flatMap((each) => each.lines.map(({ name, grams }) => ({ name, grams }))),
      assumed: found.length > 1 ? ["each recipe whole, as it is saved"] : [],
    };
  const { diameter_mm } = sizing(undefined, world.bench);
  const batter_g = 2 * shellWeight(diameter_mm);
  const filling_g = fillingWeight(diameter_mm);
  const ring = ringShare.value / 100;
  const shares = fillings.length === 2 ? [ring, 1 - ring] : [1];
  return {
    lines: [
      ...sized(shell, batter_g),
      ...fillings.flatMap((each, at) => sized(each, filling_g * (shares[at] ?? 0))),
    ],
    assumed: [
      `in a macaron of ${plain(diameter_mm)} mm ${plain(batter_g, 1)} g ${shell.name} and ${plain(filling_g, 1)} g ${listed(fillings.map((each) => each.name))}, as they go in`,
      ...(fillings.length === 2 ? [`${plain(ringShare.value)} % of it ring, the first of the two`] : []),
    ],
  };
}

/** The lines of a recipe for so many grams of it. */
function sized(recipe: Formula, grams: number): Lines {
  const whole = recipe.lines.reduce((sum, each) => sum + each.grams, 0);
  return recipe.lines.map((each) => ({ name: each.name, grams: (each.grams * grams) / whole }));
}
