/** A recipe's lines in a headline, as figures, and on the table. */
import type { Formula, World } from "../contract/index.ts";
import { weight } from "../lib/show.ts";
import { kindOf } from "./kind.ts";

export const textOf = (lines: Formula["lines"], world: World) =>
  lines.map(({ name, grams }) => `${name} ${weight(grams, world.bench.scale_g)} g`).join(", ");
export const figuresOf = (lines: Formula["lines"]) => [
  ...lines.map(({ name, grams }) => ({ name, value: grams, unit: "g" })),
  { name: "total", value: lines.reduce((sum, each) => sum + each.grams, 0), unit: "g" },
];
export const leavesOf = (lines: Formula["lines"]) => ({
  recipe: lines.map(({ name, grams }) => ({ name, grams })),
  mass: {
    grams: lines.reduce((sum, each) => sum + each.grams, 0),
    thing: kindOf(lines) === "shells" ? "batter" : (kindOf(lines) ?? ""),
  },
});
