/** How the steps are done. Numbers: common practice, unless a source stands beside them. */
import { describe, expect, test } from "vitest";
import { methodRows } from "../../data/rules/methods.ts";
import { method } from "../../src/tools/method/method.ts";
import { baker, steps } from "../support/ask.ts";
import { answer, figure, value } from "../support/world.ts";

describe("examples read to their inputs", () => {
  test.each(method.examples.map((each) => [each.say, each.inputs] as const))("%s", (say, inputs) => {
    const [step] = steps(say)[0] as { tool: { name: string }; inputs: unknown }[];
    expect([step?.tool.name, step?.inputs]).toEqual(["method", expect.objectContaining(inputs)]);
  });
});

describe("the book's numbers", () => {
  const of = (step: string) => answer(method, { step });
  test("shells 150 °C (300 °F), 15 min, 12-18", () => {
    expect([value(of("bake"), "oven", "°C"), value(of("bake"), "oven", "°F")]).toEqual([150, 300]);
    expect(figure(of("bake"), "bake")).toEqual({ name: "bake", value: 15, low: 12, high: 18, unit: "min" });
  });
  test("rest 30 min, 30-60; cool 30 min; mature 24-48 h", () => {
    expect(figure(of("rest"), "rest")).toEqual({ name: "rest", value: 30, low: 30, high: 60, unit: "min" });
    expect(value(of("cool"), "cool")).toBe(30);
    expect(figure(of("mature"), "mature")).toMatchObject({ low: 24 * 60, high: 48 * 60 });
  });
  test("dry mix: two additions, 5 s and 7-10 s on the lowest speed", () => {
    expect(value(of("dry mix"), "additions")).toBe(2);
    expect(value(of("dry mix"), "after the first")).toBe(5);
    expect(figure(of("dry mix"), "after the second")).toMatchObject({ low: 7, high: 10 });
    expect(of("dry mix").headline).toMatch(/lowest speed/);
  });
  test("ganache: wait 1-2 min, set 30-60 min", () => {
    expect(figure(of("ganache"), "wait")).toMatchObject({ low: 1, high: 2 });
    expect(figure(of("ganache sets"), "ganache sets")).toMatchObject({ low: 30, high: 60 });
  });
  // USDA FSIS, egg safety: 71 °C (160 °F)
  test("whites and sugar 71 °C, published", () => {
    expect(value(of("whites heated"), "whites and sugar", "°C")).toBe(71);
    expect(of("whites heated").rule).toMatchObject({
      basis: "published",
      source: expect.stringContaining("FSIS"),
    });
  });
  test("frozen at −18 °C, from memory", () => expect(value(of("freeze"), "freezer")).toBe(-18));
});

describe("asked in words", () => {
  test.each([
    ["what oven temp", "bake"],
    ["at what temperature should i bake macarons", "bake"],
    ["how long in the oven", "bake"],
    ["how long to rest the piped shells before they go in", "rest"],
    ["do i have to rest them", "rest"],
    ["how long do filled macs need to mature before I sell them", "mature"],
    ["how long before i can eat them", "mature"],
    ["how long should shells cool", "cool"],
    ["how long does the ganache set in the fridge before i pipe", "ganache sets"],
    ["how do i make ganache", "ganache"],
    ["how long do i wait before stirring the cream and chocolate", "ganache"],
    ["whats the best way to get butter into a ganache", "butter into ganache"],
    ["do i put the dry mix into the meringue all at once", "dry mix"],
    ["how do i whip the whites", "meringue"],
    ["how far apart do i pipe", "piping"],
    ["when do i add the color", "color"],
    ["do i sift the almond flour", "sifting"],
    ["how do i freeze the shells", "freeze"],
    ["how to make macarons", "whole bake"],
  ])("%s", (say, step) => {
    const [read] = steps(say)[0] as { tool: { name: string }; inputs: Record<string, unknown> }[];
    expect([read?.tool.name, read?.inputs.step]).toEqual(["method", step]);
  });

  test.each([
    ["what temperature do i usually bake the peach ones at", "recall"],
    ["how long do i normally rest the walnut ones", "recall"],
    ["start the rest timer", "timer"],
    ["why are my shells hollow", "trouble"],
    ["how long do they keep in the fridge", "keep"],
    ["150 c conventional to fan", "convert"],
  ])("not the method's: %s", async (say, tool) => {
    expect((await baker().one(say)).tool).toBe(tool);
  });
});

describe("her own bench wins, and says so", () => {
  const bake = (bench: object, more: object = {}) => answer(method, { step: "bake", ...more }, { bench });
  test("a fan oven 20 °C (25 °F) lower", () => {
    expect([
      value(bake({ fan_oven: true }), "oven", "°C"),
      value(bake({ fan_oven: true }), "oven", "°F"),
    ]).toEqual([130, 275]);
    expect(bake({ fan_oven: true }).rule?.basis).toBe("your bench");
    expect(bake({}, { oven: "fan" }).rule?.basis).toBe("common practice");
  });
  test("an oven that runs 10 °C hot is set 10 lower", () =>
    expect(value(bake({ oven_offset_c: 10 }), "oven", "°C")).toBe(140));
  test("her own heat and time stand as said", () => {
    expect(value(bake({ oven_c: 145, bake_min: 16, oven_offset_c: 10 }), "oven", "°C")).toBe(145);
    expect(value(bake({ oven_c: 145, bake_min: 16 }), "bake")).toBe(16);
  });
  test("her own rest", () =>
    expect(value(answer(method, { step: "rest" }, { bench: { rest_min: 45 } }), "rest")).toBe(45));
});

test("without a step it asks which", () => expect(answer(method, {}).slot).toBe("step"));

test("whatever keeps or heats egg ends by deferring to the local authority", () => {
  for (const row of methodRows.filter((each) =>
    /ganache|mature|freeze|thaw|heated|buttercream|whole/.test(each.id),
  ))
    expect(row.cautions?.join(" "), row.id).toMatch(/local food authority|pasteurised/);
});

describe("whether she may sell is not for this program to say", () => {
  test.each([
    "do i need a license to sell macarons from home",
    "what permits do i need",
    "is it legal to sell from my kitchen",
    "sell at the market, do i need a licence",
  ])("%s", async (say) => {
    const { headline, status } = await baker().one(say);
    expect([status, headline]).toEqual(["answered", expect.stringMatching(/local food authority/)]);
  });
});
