/**
 * Learns from the conversations in tests/questions/learned: `npm run train` trains the classifier on them and on the
 * calculators' own phrases (data/model.json), `npm run hear` counts their words (data/heard.json).
 */
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { tools } from "../../tools/registry.ts";
import { questions } from "../converse.ts";
import { hear } from "../text/hearing.ts";
import { understanding } from "../understanding.ts";
import { featuresOf } from "./features.ts";
import { type Example, softmax } from "./softmax.ts";

/** A feature seen once says more about the phrase than about the calculator. */
const least = 2;

interface Turn {
  say: string;
  expect?: { tool?: string; status?: string }[];
}

/** The conversations of a folder, a line each. */
const linesOf = (folder: string): string[] =>
  readdirSync(folder)
    .filter((name) => name.endsWith(".jsonl"))
    .sort()
    .flatMap((name) => readFileSync(join(folder, name), "utf8").split("\n").filter(Boolean));

const turnsOf = (line: string): Turn[] => (JSON.parse(line) as { turns: Turn[] }).turns;

/** @param folder of learned conversations @param file where the counts are written */
export function listen(folder: string, file: string): void {
  const said = linesOf(folder).flatMap((line) => turnsOf(line).map(({ say }) => say));
  writeFileSync(file, `${JSON.stringify(hear(said))}\n`);
}

/** The calculator that an expected answer names; what is to be declined is nobody's, which help answers. */
const wanted = (answer: { tool?: string; status?: string } | undefined): string | undefined =>
  answer?.tool?.split("|")[0] ?? (answer?.status === "declined" ? "help" : undefined);

/** Every phrase that the calculators declare and every judged turn, as features of the calculator it belongs to. */
export function documents(folder: string): { features: string[]; tool: string }[] {
  const all = understanding(tools);
  const own = tools.flatMap((tool) => [
    ...tool.examples.map(({ say }) => ({ say, tool: tool.name })),
    ...tool.elsewhere,
  ]);
  const docs = own.flatMap(({ say, tool }) =>
    questions(say, all).map((reading) => ({ features: featuresOf(reading.mask), tool })),
  );
  for (const line of linesOf(folder)) {
    let last: string | undefined;
    for (const { say, expect } of turnsOf(line)) {
      const parts = questions(say, all);
      const fits = parts.length === (expect?.length ?? 0);
      parts.forEach((reading, at) => {
        const tool = wanted(fits || at < parts.length - 1 ? expect?.[fits ? at : -1] : expect?.[0]);
        if (tool) docs.push({ features: featuresOf(reading.mask, last), tool });
      });
      last = wanted(expect?.at(-1)) ?? last;
    }
  }
  return docs;
}

/** @param folder of learned conversations @param file where the model is written */
export function train(folder: string, file: string): void {
  const docs = documents(folder);
  const seen = new Map<string, number>();
  for (const { features } of docs)
    for (const feature of features) seen.set(feature, (seen.get(feature) ?? 0) + 1);
  const features = [...seen].filter(([, times]) => times >= least).map(([feature]) => feature);
  const at = new Map(features.map((feature, position) => [feature, position]));
  const names = tools.map(({ name }) => name);
  const examples: Example[] = docs.map((doc) => ({
    features: doc.features.flatMap((feature) => at.get(feature) ?? []),
    label: names.indexOf(doc.tool),
  }));
  const { weights, step } = softmax(
    examples.filter(({ label }) => label >= 0),
    features.length,
    names.length,
  );
  const model = {
    trained: "softmax regression on the calculators' phrases and the learned conversations",
    tools: names,
    // one text: thousands of strings would each cost at every start
    features: features.join("\n"),
    step,
    weights: Buffer.from(weights.buffer).toString("base64"),
  };
  writeFileSync(file, `${JSON.stringify(model)}\n`);
}
