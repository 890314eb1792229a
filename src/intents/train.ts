/** Trains the classifier on the calculators' own phrases. Run by `npm run train`; its result is data/model.json. */
import { writeFileSync } from "node:fs";
import Logistic from "natural/lib/natural/classifiers/logistic_regression_classifier.js";
import { tools } from "../tools/registry.ts";
import { questions, understanding } from "./converse.ts";
import { featuresOf } from "./features.ts";

/** A feature seen once says more about the phrase than about the calculator. */
const least = 2;

/** Every phrase that the calculators declare, as features of the calculator it belongs to. */
export function documents(): { features: string[]; tool: string }[] {
  const all = understanding(tools);
  const said = tools.flatMap((tool) => [
    ...tool.examples.map(({ say }) => ({ say, tool: tool.name })),
    ...tool.elsewhere,
  ]);
  return said.flatMap(({ say, tool }) =>
    questions(say, all).map((reading) => ({ features: featuresOf(reading.mask), tool })),
  );
}

export function train(file: string): void {
  const docs = documents();
  const seen = new Map<string, number>();
  for (const { features } of docs)
    for (const feature of features) seen.set(feature, (seen.get(feature) ?? 0) + 1);
  const classifier = new Logistic();
  for (const { features, tool } of docs) {
    const kept = features.filter((feature) => (seen.get(feature) ?? 0) >= least);
    if (kept.length > 0) classifier.addDocument(kept, tool);
  }
  classifier.train();
  const { classifications, theta } = classifier.classifier;
  const weights = theta.map(({ elements }) => elements.map((weight) => Number(weight.toFixed(3))));
  const model = {
    trained: "natural's logistic regression, on the calculators' example phrases",
    tools: classifications,
    features: Object.keys(classifier.features),
    weights,
  };
  writeFileSync(file, `${JSON.stringify(model)}\n`);
}
