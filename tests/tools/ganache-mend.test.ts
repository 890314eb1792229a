/** A ganache that is too loose, too stiff or split, worked by hand from the book's ratios. */
import { describe, expect, test } from "vitest";
import { ganache } from "../../src/tools/ganache/ganache.ts";
import { answer, value } from "../support/world.ts";

const say = (inputs: Record<string, unknown>) => answer(ganache, inputs);

describe("mend", () => {
  // ratio x cream - chocolate = 2 x 150 - 200 = 100
  test("too loose: chocolate to add", () => {
    const said = say({ chocolate: "milk", chocolate_g: 200, cream_g: 150, want: "mend", fault: "loose" });
    expect(value(said, "add chocolate")).toBeCloseTo(100, 12);
    expect(value(said, "total")).toBeCloseTo(450, 12);
  });

  // chocolate / ratio - cream, for piping when no use is said: 300 / 1.25 - 150 = 90
  test("too stiff: cream to add, for piping when no use is said", () => {
    const said = say({ chocolate: "dark", chocolate_g: 300, cream_g: 150, want: "mend", fault: "stiff" });
    expect(value(said, "add cream")).toBeCloseTo(90, 12);
    expect(said.assumed?.join()).toMatch(/piping/);
  });

  // for loose the ratio is 1: 300 / 1 - 150 = 150
  test("too stiff for a drip: cream to add for that", () => {
    const said = say({
      chocolate: "dark",
      use: "loose",
      chocolate_g: 300,
      cream_g: 150,
      want: "mend",
      fault: "stiff",
    });
    expect(value(said, "add cream")).toBeCloseTo(150, 12);
  });

  test.each([
    // 1.25 x 200 - 300 = -50; 1.25 x 200 - 250 = 0: not above zero
    ["loose", 300, 200, /chill|cool|fridge/],
    ["loose", 250, 200, /chill|cool|fridge/],
    // 200 / 1.25 - 200 = -40
    ["stiff", 200, 200, /warm/],
  ])("too %s at %d : %d is not the ratio's fault: no figure", (fault, chocolate_g, cream_g, advice) => {
    const said = say({ chocolate: "dark", chocolate_g, cream_g, want: "mend", fault });
    expect(said.status).toBe("answered");
    expect(said.figures ?? []).toEqual([]);
    expect(said.headline).toMatch(/isn't the cause/);
    expect(said.headline).toMatch(advice);
  });

  // 300 x 2 % = 6, x 10 % = 30; from memory
  test("split: warmed to 32-40 °C, 2 % at a time, 10 % at most", () => {
    const said = say({ total_g: 300, want: "split" });
    expect(value(said, "at a time")).toBe(6);
    expect(value(said, "at most")).toBe(30);
    expect(said.headline).toMatch(/32-40 °C/);
    expect(said.rule?.basis).toBe("from memory");
    expect(said.cautions?.join()).toMatch(/baked/);
  });

  test("split, with chocolate and cream known: of both together", () => {
    // (200 + 100) x 2 % = 6
    expect(value(say({ chocolate_g: 200, cream_g: 100, want: "split" }), "at a time")).toBe(6);
  });
});
