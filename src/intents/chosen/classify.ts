/**
 * The trained classifier's second opinion: how likely each calculator is, by the words and the calculator before. It
 * weighs beside the cues where these aren't sure; with no word that it knows it says nothing.
 */
import model from "../../../data/model.json" with { type: "json" };
import { featuresOf } from "./features.ts";

export interface Opinion {
  tool: string;
  /** 0 to 1; all of them add up to 1. */
  sureness: number;
}

let positions: Map<string, number> | undefined;
let weights: Int8Array | undefined;

/** Features that any sentence has: alone they say nothing of it. */
const isFrame = (feature: string) => /^(?:last|length) /.test(feature);

/** Calculators by sureness, the surest first; empty where the sentence holds nothing known. */
export function opinions(mask: string, last?: string): Opinion[] {
  positions ??= new Map(model.features.split("\n").map((feature, at) => [feature, at]));
  weights ??= new Int8Array(Buffer.from(model.weights, "base64"));
  const features = featuresOf(mask, last);
  const known = features.filter((feature) => positions?.has(feature));
  if (known.every(isFrame)) return [];
  const width = model.tools.length;
  const sums = new Float64Array(width);
  const bias = positions.size;
  const add = (row: number, by: number) => {
    for (let at = 0; at < width; at++)
      sums[at] = (sums[at] ?? 0) + (weights?.[row * width + at] ?? 0) * model.step * by;
  };
  for (const feature of known) add(positions.get(feature) ?? 0, 1 / Math.sqrt(known.length) ** 0.5);
  add(bias, 1);
  const top = Math.max(...sums);
  const shares = Array.from(sums, (sum) => Math.exp(sum - top));
  const all = shares.reduce((sum, each) => sum + each, 0);
  return model.tools
    .map((tool, at) => ({ tool, sureness: (shares[at] ?? 0) / all }))
    .sort((a, b) => b.sureness - a.sureness);
}
