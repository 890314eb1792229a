/** The recipe of her own that stands in for the book's shells. */
import type { Outcome, World } from "../contract/index.ts";
import { asking } from "../lib/asking.ts";
import { houseOf } from "../lib/house.ts";
import { listed, plain, weight } from "../lib/show.ts";
import type { FormulaInputs } from "./formula.ts";

/** @throws never: a recipe that makes no shells is refused, with nothing changed. */
export function house({ does, name }: FormulaInputs, world: World): Outcome {
  const now = houseOf(world);
  const text = listed(now.lines.map((each) => `${each.name} ${weight(each.grams, world.bench.scale_g)} g`));
  const figures = now.lines.map(({ name, grams }) => ({ name, value: grams, unit: "g" }));
  if (does === "book house") {
    if (!world.bench.house_formula)
      return { status: "answered", headline: `The book's house formula counts already: ${text}`, figures };
    return {
      status: "answered",
      headline:
        "The book's house formula counts again: whites 100, almond flour 130, powdered sugar 130, granulated sugar 100",
      rule: { text: "house formula by weight", basis: "common practice" },
      effects: [{ do: "set", setting: "house_formula", value: null }],
      change: "going back to the book's house formula",
    };
  }
  if (!name)
    return {
      status: "answered",
      headline: now.name ? `Your house recipe is ${now.name}: ${text}` : `The book's house formula: ${text}`,
      figures,
      rule: {
        text: now.name ? `your "${now.name}"` : "house formula by weight",
        basis: now.name ? "your bench" : "common practice",
      },
    };
  const found = world.formulas.findLast((each) => each.name.toLowerCase() === name.toLowerCase());
  if (!found) return asking(`No recipe is called ${name}. Which one?`, "name");
  const whites = found.lines.find((each) => each.name === "whites" || each.name === "pasteurised whites");
  if (found.kind !== "shells" || !whites)
    return {
      status: "impossible",
      headline: `${found.name} makes no shells: whites and ground nuts have to be in it.`,
    };
  return {
    status: "answered",
    headline: `${found.name} is your house recipe from now on: shells, scaling, shopping and cost go by it`,
    figures: found.lines.map((each) => ({ name: each.name, value: each.grams, unit: "g" })),
    rule: {
      text: `your "${found.name}", ${plain(found.lines.reduce((sum, each) => sum + each.grams, 0))} g of batter`,
      basis: "your bench",
    },
    effects: [{ do: "set", setting: "house_formula", value: found.name }],
    change: `${found.name} as house recipe`,
    leaves: { recipe: found.lines.map(({ name, grams }) => ({ name, grams })) },
  };
}
