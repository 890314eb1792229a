/**
 * The trained classifier's second opinion. It breaks ties and lends weight to a faint reading; it never answers alone:
 * with no word it knows it says nothing, since then every class would score a half.
 */
import model from "../../data/model.json" with { type: "json" };
import { featuresOf } from "./features.ts";

export interface Opinion {
  tool: string;
  /** 0 to 1, as the logistic function gives it. */
  sureness: number;
}

let positions: Map<string, number> | undefined;

/** Calculators by sureness, the surest first; empty where the sentence holds nothing known. */
export function opinions(mask: string): Opinion[] {
  positions ??= new Map(model.features.map((feature, at) => [feature, at]));
  const known = featuresOf(mask).flatMap((feature) => positions?.get(feature) ?? []);
  if (known.length === 0) return [];
  return model.tools
    .map((tool, at) => {
      const sum = known.reduce((all, position) => all + (model.weights[at]?.[position] ?? 0), 0);
      return { tool, sureness: 1 / (1 + Math.exp(-sum)) };
    })
    .sort((a, b) => b.sureness - a.sureness);
}
