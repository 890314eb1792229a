/** Plots where looking beats reading, made from an answer's plain data. Text alone: no meaning hangs on color. */
import type { Answer } from "../../../tools/contract/index.ts";
import type { Signs } from "../signs.ts";
import { comparison } from "./compare.ts";
import { compositionPlot } from "./composition.ts";
import { dosePlot } from "./dose.ts";
import { ratingsPlot } from "./ratings.ts";

/** The lines of what can be drawn of an answer, none of most. None is longer than `columns` cells. */
export function plotLines(answer: Answer, columns: number, signs: Signs): string[] {
  if (answer.status !== "answered") return [];
  return [dosePlot, compositionPlot, ratingsPlot, comparison].flatMap((plot) => plot(answer, columns, signs));
}
