/** The trained classifier fits the program that it was trained for. */
import { expect, it } from "vitest";
import model from "../../data/model.json" with { type: "json" };
import { opinions } from "../../src/intents/chosen/classify.ts";
import { tools } from "../../src/tools/registry.ts";
import { read } from "../intents/reading.ts";

const features = model.features.split("\n");

it("knows the calculators that there are, and a weight for each feature", () => {
  const names = tools.map(({ name }) => name);
  expect(model.tools.filter((name) => !names.includes(name))).toEqual([]);
  expect(names.filter((name) => !model.tools.includes(name))).toEqual([]);
  expect(Buffer.from(model.weights, "base64")).toHaveLength(model.tools.length * (features.length + 1));
  expect(model.step).toBeGreaterThan(0);
  expect(new Set(features).size).toBe(features.length);
});

it("says nothing of a sentence in which it knows no word", () => {
  for (const said of ["", "xyzzyq wumple", "?!"]) expect(opinions(read(said).mask)).toEqual([]);
});

it("is between unsure and sure, the surest first", () => {
  const all = opinions(read("I have 230 g buttercream, how much flavor?").mask);
  expect(all.length).toBe(model.tools.length);
  all.forEach(({ sureness }, at) => {
    expect(sureness).toBeGreaterThanOrEqual(0);
    expect(sureness).toBeLessThanOrEqual(all[at - 1]?.sureness ?? 1);
  });
});

it("agrees with most of the phrases that it was trained on", () => {
  const right = tools.flatMap(({ name, examples }) =>
    examples.map(({ say }) => opinions(read(say).mask)[0]?.tool === name),
  );
  expect(right.filter(Boolean).length / right.length).toBeGreaterThan(0.8);
});
