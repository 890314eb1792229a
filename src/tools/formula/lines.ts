/** A recipe's lines in a headline, as figures, and on the table. */
import type { Formula, World } from "../contract/index.ts";
import { weight, weightRange } from "../lib/show.ts";
import { kindOf } from "./kind.ts";

export const textOf = (lines: Formula["lines"], world: World) =>
  lines.map((line) => lineText(line, world)).join(", ");
const lineText = ({ name, grams, low_g, high_g }: Formula["lines"][number], { bench }: World) =>
  `${name} ${weight(grams, bench.scale_g)} g${low_g !== undefined && high_g !== undefined ? ` (${weightRange(low_g, high_g, bench.scale_g)})` : ""}`;
export const figuresOf = (lines: Formula["lines"]) => [
  ...lines.map(({ name, grams, low_g, high_g }) => ({
    name,
    value: grams,
    ...(low_g !== undefined && high_g !== undefined ? { low: low_g, high: high_g } : {}),
    unit: "g",
  })),
  { name: "total", value: lines.reduce((sum, each) => sum + each.grams, 0), unit: "g" },
];
export const leavesOf = (lines: Formula["lines"]) => ({
  recipe: lines.map(({ name, grams }) => ({ name, grams })),
  mass: {
    grams: lines.reduce((sum, each) => sum + each.grams, 0),
    thing: kindOf(lines) === "shells" ? "batter" : (kindOf(lines) ?? ""),
  },
});
