/** Bare answers: which input a number alone fills, in which unit, and what is no bare answer. */
import { describe, expect, it } from "vitest";
import { dimensionOf, fillSlot, isBare, multiplied } from "../../src/intents/chosen/slots.ts";
import { read, rounded } from "./reading.ts";

const filled = (said: string, before: Record<string, unknown>, slot?: string) =>
  Object.fromEntries(
    Object.entries(fillSlot(read(said), before, slot)).map(([key, value]) => [key, rounded(value as number)]),
  );

describe("the kind of an input is in its name", () => {
  it.each([
    ["base_g", "weight"],
    ["chocolate_g", "weight"],
    ["percent", "percent"],
    ["margin_percent", "percent"],
    ["diameter_mm", "length"],
    ["for_min", "time"],
    ["mature_h", "time"],
    ["oven_c", "temperature"],
    ["macarons", "number"],
    ["trays", "number"],
    ["name", undefined],
    ["base", undefined],
    ["kg", undefined],
  ])("%s: %s", (slot, dim) => {
    expect(dimensionOf(slot)).toBe(dim);
  });
});

describe("a bare amount takes the place of the one before", () => {
  it.each([
    ["and for 300?", { base_g: 230 }, { base_g: 300 }],
    ["no, 250 g", { base_g: 230 }, { base_g: 250 }],
    ["1.5 kg", { base_g: 230 }, { base_g: 1500 }],
    ["2 oz", { base_g: 230 }, { base_g: 56.69904625 }],
    ["5 cm", { diameter_mm: 38 }, { diameter_mm: 50 }],
    ["45 mm", { diameter_mm: 38 }, { diameter_mm: 45 }],
    ["4", { diameter_mm: 38 }, { diameter_mm: 40 }],
    ["45", { diameter_mm: 38 }, { diameter_mm: 45 }],
    ["half an hour", { rest_min: 40 }, { rest_min: 30 }],
    ["90 sec", { for_min: 1 }, { for_min: 1.5 }],
    ["2 days", { mature_h: 24 }, { mature_h: 48 }],
    ["320 f", { oven_c: 150 }, { oven_c: 160 }],
    ["36", { macarons: 24 }, { macarons: 36 }],
    ["4 %", { percent: 3 }, { percent: 4 }],
    ["and 300?", { base: "buttercream", base_g: 230 }, { base_g: 300 }],
    ["and 3?", { factor: 2 }, { factor: 3 }],
    ["36", { diameter: "big", macarons: 24, base_g: 5 }, { macarons: 36 }],
  ])("%s", (said, before, after) => {
    expect(filled(said, before)).toEqual(after);
  });

  it("fills the input that was asked for, whatever stands before it", () => {
    expect(filled("230", { macarons: 24 }, "base_g")).toEqual({ base_g: 230 });
    expect(filled("12 min", {}, "for_min")).toEqual({ for_min: 12 });
  });
});

describe("no bare amount", () => {
  it.each([
    ["12 min", { base_g: 230 }],
    ["4 %", { base_g: 230 }],
    ["150 c", { rest_min: 30 }],
    ["300", {}],
    ["200 g or 300 g and 4", { base_g: 230 }],
    ["double it", { base_g: 230 }],
    ["300", { factor: 2 }],
  ])("%s", (said, before) => {
    expect(fillSlot(read(said), before, undefined)).toEqual({});
  });
});

it.each([
  "230",
  "no, 250 g",
  "and for 300?",
  "white",
  "about 24",
  "just 230 g please",
  "make that 36",
  "in grams",
  "ok 4 cm",
  "dark",
  "300 instead",
])('"%s" is bare', (said) => {
  expect(isBare(read(said))).toBe(true);
});

it.each([
  "",
  "thanks",
  "what about it",
  "set a timer for 12 min",
  "how much flavor for 230 g buttercream",
  "my 24 macarons cracked",
  "100 whites 130 almond 130 sugar 100 caster",
])('"%s" is not bare', (said) => {
  expect(isBare(read(said))).toBe(false);
});

describe("double it, half of that", () => {
  it.each([
    ["double it", { base_g: 230 }, { base_g: 460 }],
    ["half of that", { base_g: 230 }, { base_g: 115 }],
    ["twice as much", { total_g: 300 }, { total_g: 600 }],
    ["three times that", { macarons: 24 }, { macarons: 72 }],
    ["a third of it", { batter_g: 450 }, { batter_g: 150 }],
    ["double it", { chocolate_g: 200, cream_g: 160 }, { chocolate_g: 400, cream_g: 320 }],
  ])("%s", (said, before, after) => {
    expect(multiplied(read(said), before)).toEqual(after);
  });

  it("multiplies nothing where nothing is there, or where another amount is said", () => {
    expect(multiplied(read("double it"), {})).toBeUndefined();
    expect(multiplied(read("double it to 500 g"), { base_g: 230 })).toBeUndefined();
    expect(multiplied(read("and for 300?"), { base_g: 230 })).toBeUndefined();
  });
});
