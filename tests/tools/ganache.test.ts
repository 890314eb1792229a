/** Ganache built, checked and mended, worked by hand from the book's ratios. */
import { describe, expect, test } from "vitest";
import { ratios, whiteWithButter } from "../../data/rules/ganache.ts";
import type { World } from "../../src/tools/contract/index.ts";
import { ganache } from "../../src/tools/ganache/ganache.ts";
import { answer, figure, names, range, value } from "../support/world.ts";

const say = (inputs: Record<string, unknown>, more: Partial<World> = {}) => answer(ganache, inputs, more);

describe("the table of ratios, chocolate : cream by weight", () => {
  // typed in by hand: default, low, high; common practice
  test.each([
    ["dark", "loose", 1, 0.8, 1],
    ["dark", "piping", 1.25, 1, 1.5],
    ["dark", "firm", 2, 1.75, 2.25],
    ["milk", "loose", 1.5, 1.25, 1.75],
    ["milk", "piping", 2, 1.75, 2.25],
    ["milk", "firm", 2.5, 2.25, 3],
    ["white", "loose", 2, 1.75, 2.25],
    ["white", "piping", 2.5, 2, 3],
    ["white", "firm", 3.5, 3, 4],
  ] as const)("%s, %s: %d (%d-%d)", (chocolate, use, ratio, low, high) => {
    expect(ratios[chocolate][use]).toMatchObject({ ratio, low, high, basis: "common practice" });
    expect(say({ chocolate, use, cream_g: 100 }).rule?.text).toContain(
      `${ratio} : 1 for ${use === "piping" ? use : `a ${use} one`} (${low}-${high} : 1)`,
    );
  });

  // McGee, On Food and Cooking, 2004: dark soft about 1:1, firm about 2:1
  test("dark soft is 1:1 and firm 2:1, with the source named", () => {
    expect(value(say({ chocolate: "dark", use: "loose", cream_g: 100 }), "chocolate")).toBe(100);
    expect(value(say({ chocolate: "dark", use: "firm", cream_g: 100 }), "chocolate")).toBe(200);
    expect(ratios.dark.loose.source).toMatch(/McGee/);
    expect(ratios.dark.firm.source).toMatch(/McGee/);
  });

  // Greweling, Chocolates and Confections, 2007: chocolate to butter and liquid 1:1 soft, 2:1 firm. The white version
  // with butter is common practice, 100 : 60 : 25, and lies between the two: 100 / (60 + 25) = 1.18.
  test("white with butter lies between the published soft and firm butter ganache", () => {
    const { chocolate, cream, butter } = whiteWithButter;
    expect([chocolate, cream, butter]).toEqual([100, 60, 25]);
    expect(chocolate / (cream + butter)).toBeGreaterThan(1);
    expect(chocolate / (cream + butter)).toBeLessThan(2);
  });
});

describe("build", () => {
  // cream = 300 / 1.25 = 240, from 300 / 1.5 = 200 to 300 / 1 = 300; in all 540, 500 to 600
  test("from the chocolate", () => {
    const said = say({ chocolate: "dark", chocolate_g: 300 });
    expect(figure(said, "cream")).toEqual({ name: "cream", value: 240, low: 200, high: 300, unit: "g" });
    expect(figure(said, "total")).toEqual({ name: "total", value: 540, low: 500, high: 600, unit: "g" });
    expect(said.assumed?.join()).toMatch(/piping/);
    expect(said.leaves).toMatchObject({ mass: { grams: 540, thing: "ganache" }, chocolate: "dark" });
  });

  // chocolate = 120 x 2 = 240, from 120 x 1.75 = 210 to 120 x 2.25 = 270
  test("from the cream", () => {
    const said = say({ chocolate: "white", use: "loose", cream_g: 120 });
    expect(figure(said, "chocolate")).toEqual({
      name: "chocolate",
      value: 240,
      low: 210,
      high: 270,
      unit: "g",
    });
  });

  // cream = 450 / (2 + 1) = 150, chocolate 300; range of cream 450 / 3.25 = 138.4615 to 450 / 2.75 = 163.6364
  test("from the total", () => {
    const said = say({ chocolate: "milk", total_g: 450 });
    expect(value(said, "cream")).toBeCloseTo(150, 12);
    expect(value(said, "chocolate")).toBeCloseTo(300, 12);
    expect(range(said, "cream")[0]).toBeCloseTo(138.4615, 4);
    expect(range(said, "cream")[1]).toBeCloseTo(163.6364, 4);
  });

  // 24 macarons x 0.42 x 3.8^2 = 145.5552; / 0.92 = 158.2122 (from memory); dark piping: cream / 2.25 = 70.3165
  test("from a number of macarons", () => {
    const said = say({ chocolate: "dark", macarons: 24 });
    expect(value(said, "total")).toBeCloseTo(158.2122, 4);
    expect(value(said, "cream")).toBeCloseTo(70.3165, 4);
  });

  // 100 : 60 : 25, 185 in all; 200 g chocolate: cream 120, butter 50, 370 in all; common practice
  test.each([
    ["chocolate", { chocolate_g: 200 }],
    ["cream", { cream_g: 120 }],
    ["total", { total_g: 370 }],
  ])("white for piping gives the butter version too, from the %s", (_, known) => {
    const said = say({ chocolate: "white", ...known });
    expect(value(said, "chocolate, with butter")).toBeCloseTo(200, 9);
    expect(value(said, "cream, with butter")).toBeCloseTo(120, 9);
    expect(value(said, "butter, with butter")).toBeCloseTo(50, 9);
    expect(value(said, "total, with butter")).toBeCloseTo(370, 9);
  });

  test.each([
    ["white", "loose"],
    ["white", "firm"],
    ["milk", "piping"],
  ])("%s for %s has no butter version", (chocolate, use) => {
    expect(names(say({ chocolate, use, cream_g: 100 })).join()).not.toMatch(/butter/);
  });

  test("it is kept cold, and the authority has the last word", () => {
    expect(say({ chocolate: "dark", cream_g: 100 }).cautions?.join()).toMatch(/5 °C.*authority/);
  });
});

describe("check: the use whose default is nearest by the logarithm", () => {
  test.each([
    // 200 / 160 = 1.25
    [200, 160, "piping"],
    // 1.6: halfway between 1.25 and 2 is 1.625 by the difference but 1.5811 by the logarithm, so it is firm
    [160, 100, "firm"],
    // 1.12: halfway between 1 and 1.25 is 1.125 by the difference but 1.1180 by the logarithm, so it is piping
    [112, 100, "piping"],
    [50, 100, "loose"],
    [900, 100, "firm"],
  ])("dark %d : %d is %s", (chocolate_g, cream_g, use) => {
    const said = say({ chocolate: "dark", chocolate_g, cream_g });
    expect(value(said, "ratio", ":1")).toBeCloseTo(chocolate_g / cream_g, 12);
    expect(value(said, "total")).toBe(chocolate_g + cream_g);
    expect(said.headline).toMatch(new RegExp(`good for ${use}`));
    expect(said.headline).not.toMatch(/ or (?:loose|piping|firm),/);
  });

  // as far by the logarithm from both: sqrt(1 x 1.25), sqrt(1.25 x 2); milk sqrt(2 x 2.5)
  test.each([
    ["dark", 1.25, ["loose", "piping"]],
    ["dark", 2.5, ["piping", "firm"]],
    ["milk", 5, ["piping", "firm"]],
  ])("%s, the square root of %d: a tie names both", (chocolate, square, both) => {
    const said = say({ chocolate, chocolate_g: 100 * Math.sqrt(square), cream_g: 100 });
    for (const use of both) expect(said.headline).toContain(use);
  });
});

describe("what is missing and what can't be", () => {
  test.each([
    ["the kind of chocolate", { cream_g: 100 }, "chocolate"],
    ["a weight", { chocolate: "dark" }, "chocolate_g"],
    ["the chocolate of a loose one", { chocolate: "dark", cream_g: 100, want: "mend" }, "chocolate_g"],
    ["the cream of a loose one", { chocolate: "dark", chocolate_g: 100, want: "mend" }, "cream_g"],
    ["what a split bowl weighs", { want: "split" }, "total_g"],
    ["what it is made of", { want: "composition" }, "lines"],
  ])("asks for %s", (_, inputs, slot) => {
    const said = say(inputs);
    expect(said).toMatchObject({ status: "asking", slot });
    expect(said.figures ?? []).toEqual([]);
  });

  test.each([
    { chocolate: "dark", chocolate_g: 0 },
    { chocolate: "dark", chocolate_g: -5 },
    { chocolate: "dark", cream_g: -5 },
    { chocolate: "dark", chocolate_g: 100, cream_g: 0 },
    { chocolate: "dark", cream_g: 0 },
    { chocolate: "dark", total_g: 0 },
  ])("%o is impossible", (inputs) => {
    const said = say(inputs);
    expect(said.status).toBe("impossible");
    expect(said.figures ?? []).toEqual([]);
  });
});
