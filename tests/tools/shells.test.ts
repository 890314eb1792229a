/** Batter, shells, macarons, trays and eggs, forward and back, worked by hand from the book's figures (from memory). */
import { describe, expect, test } from "vitest";
import type { World } from "../../src/tools/contract/index.ts";
import { shells } from "../../src/tools/shells/shells.ts";
import { baker } from "../support/ask.ts";
import { answer, value } from "../support/world.ts";

const say = (inputs: Record<string, unknown>, more: Partial<World> = {}) => answer(shells, inputs, more);

describe("forward from an order", () => {
  // 24: ceil(52.8) = 53 shells; 53 x 7.6532 / 0.96 = 422.52042 g; 53 / 30 -> 2 trays;
  // whites 422.52042 x 100 / 460 = 91.85226 g, / 33 = 2.78 -> 3
  test("24 macarons", () => {
    const said = say({ macarons: 24 });
    expect(value(said, "batter")).toBeCloseTo(422.52042, 5);
    expect(value(said, "shells")).toBe(53);
    expect(value(said, "macarons")).toBe(24);
    expect(value(said, "trays")).toBe(2);
    expect(value(said, "whites", "g")).toBeCloseTo(91.85226, 5);
    expect(value(said, "whites", "whites")).toBe(3);
    expect(said.assumed).toEqual(expect.arrayContaining(["38 mm shells", "10 % spare shells"]));
    expect(said.rule?.basis).toBe("from memory");
  });

  // ceil(22 x 50 / 10)
  test("50 macarons are 110 shells", () => {
    expect(value(say({ macarons: 50, want: "shells" }), "shells")).toBe(110);
  });

  // a number of shells that is said takes no spares: 40 x 7.6532 / 0.96 = 318.88333
  test("40 shells are 40 shells", () => {
    const said = say({ shells: 40 });
    expect(value(said, "shells")).toBe(40);
    expect(value(said, "macarons")).toBe(20);
    expect(value(said, "batter")).toBeCloseTo(318.88333, 5);
    expect(said.assumed?.join()).not.toMatch(/spare/);
  });

  // two trays of 30: 60 x 7.6532 / 0.96 = 478.325
  test("trays to fill", () => {
    expect(value(say({ trays: 2, want: "batter" }), "batter")).toBeCloseTo(478.325, 9);
  });

  // 40 -> 88 shells; 88 / 28 -> 4 trays on her own mat
  test("the baker's own mat counts the trays, and the rule says that it is hers", () => {
    const said = say({ macarons: 40, want: "trays" }, { bench: { shells_a_tray: 28 } });
    expect(value(said, "trays")).toBe(4);
    expect(said.rule?.basis).toBe("your bench");
  });

  // bench 45 mm: 0.53 x 4.5^2 = 10.7325; 24 without spares: 48 x 10.7325 / 0.96 = 536.625
  test("the baker's own size and spares", () => {
    const said = say({ macarons: 24 }, { bench: { diameter_mm: 45, spare_percent: 0 } });
    expect(value(said, "batter")).toBeCloseTo(536.625, 9);
    expect(said.rule?.basis).toBe("your bench");
    // a size said now goes before hers: 48 x 7.6532 / 0.96 = 382.66
    expect(
      value(
        say({ macarons: 24, diameter_mm: 38 }, { bench: { diameter_mm: 45, spare_percent: 0 } }),
        "batter",
      ),
    ).toBeCloseTo(382.66, 9);
  });
});

describe("back from a bowl", () => {
  // 460 x 0.96 / 7.6532 = 57.70 -> 57 shells, 28 macarons, 2 trays
  test("460 g batter", () => {
    const said = say({ batter_g: 460 });
    expect([value(said, "shells"), value(said, "macarons"), value(said, "trays")]).toEqual([57, 28, 2]);
  });

  // 3 whites: 99 g x 4.6 = 455.4 g batter; x 0.96 / 7.6532 = 57.12 -> 57, 28 macarons
  test("three whites, by the house formula, 33 g each", () => {
    const said = say({ whites_count: 3 });
    expect(value(said, "batter")).toBeCloseTo(455.4, 9);
    expect(value(said, "macarons")).toBe(28);
    expect(said.assumed?.join()).toMatch(/house formula/);
    expect(value(say({ whites_g: 99 }), "macarons")).toBe(28);
  });

  test("less than one shell's batter is impossible, without figures", () => {
    const said = say({ batter_g: 7.9 });
    expect(said.status).toBe("impossible");
    expect(said.figures ?? []).toEqual([]);
  });
});

describe("single figures", () => {
  test("batter in one shell: 7.6532 g at 38 mm, 13.25 g at 50 mm", () => {
    expect(value(say({ want: "one" }), "batter")).toBe(7.6532);
    expect(value(say({ want: "one", diameter_mm: 50 }), "batter")).toBe(13.25);
  });

  // floor(400 / 58) x floor(300 / 58) = 30; at 50 mm 5 x 4 = 20
  test("shells on a tray", () => {
    expect(say({ want: "tray" }).figures?.[0]).toMatchObject({ value: 30, unit: "shells" });
    expect(say({ want: "tray", diameter_mm: 50 }).figures?.[0]).toMatchObject({ value: 20, unit: "shells" });
  });

  // 10 x 0.87 = 8.7; 460 x 0.87 = 400.2; 10 shells x 7.6532 x 0.87 = 66.58284
  test("baked weight is 0.87 of the batter piped", () => {
    expect(value(say({ shell_g: 10 }), "baked", "g")).toBeCloseTo(8.7, 12);
    expect(value(say({ batter_g: 460, want: "baked" }), "baked", "g")).toBeCloseTo(400.2, 9);
    expect(value(say({ shells: 10, want: "baked" }), "baked", "g")).toBeCloseTo(66.58284, 9);
  });

  // USDA SR, NDB 01124: 33 g; ceil(120 / 33) = 4
  test("whites to buy", () => {
    const said = say({ whites_g: 120, want: "whites" });
    expect(value(said, "whites")).toBe(4);
    expect(said.rule).toMatchObject({ basis: "published", source: expect.stringContaining("01124") });
  });
});

describe("what is missing and what can't be", () => {
  test("asks for the number of macarons", () => {
    expect(say({})).toMatchObject({ status: "asking", slot: "macarons" });
  });

  test.each([
    { macarons: 0 },
    { macarons: -3 },
    { shells: 0 },
    { batter_g: 0 },
    { macarons: 10, diameter_mm: 5 },
    { macarons: 10, diameter_mm: 151 },
  ])("%o is impossible", (inputs) => {
    const said = say(inputs);
    expect(said.status).toBe("impossible");
    expect(said.figures ?? []).toEqual([]);
  });
});

describe("as it is asked, turn after turn", () => {
  test("a number of shells scaled for gives that number back", async () => {
    const chat = baker();
    // 80 x 7.6532 / 0.96 = 637.76667 g, a weight that no decimal writes out
    await chat.one("shell recipe for 80 shells");
    const said = await chat.one("how many macarons is that batter");
    expect(value(said, "macarons")).toBe(40);
  });

  // 5 cm: 0.53 x 25 = 13.25; 53 x 13.25 / 0.96 = 731.51042
  test("another size takes the place of the one before", async () => {
    const chat = baker();
    expect(value(await chat.one("batter for 24 macarons"), "batter")).toBeCloseTo(422.52042, 5);
    expect(value(await chat.one("and with 5 cm shells?"), "batter")).toBeCloseTo(731.51042, 5);
  });

  test("a bowl of next to nothing is impossible, not an error", async () => {
    expect((await baker().one("how many macarons from 0.0000005 g of batter")).status).toBe("impossible");
  });
});
