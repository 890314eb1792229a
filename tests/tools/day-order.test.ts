/** An order in one sentence, sized in full: worked by hand from the book's figures (rules in data/rules). */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Answer, Outcome } from "../../src/tools/contract/index.ts";
import { day } from "../../src/tools/day/day.ts";
import { baker } from "../support/ask.ts";
import { answer, range, value } from "../support/world.ts";

/** A Wednesday. */
const wednesday = "2026-03-18T09:30:00";
const order = "I need 60 macarons by Saturday 10 am, apricot ganache and vanilla buttercream";
const asked = (line: string, now = wednesday) => baker({ now }).one(line);
const g = (said: Answer | Outcome, name: string) => value(said as Outcome, name, "g");

describe("60 with two fillings", () => {
  test("is a day with its start, and every step", async () => {
    const said = await asked(order);
    expect(said).toMatchObject({ tool: "day", status: "answered" });
    expect(said.headline).toMatch(/60 macarons, 5 trays, ready Sat 21 Mar 10:00/);
    expect(said.steps?.map((step) => step.name)).toEqual(
      expect.arrayContaining([
        "Apricot ganache",
        "Apricot ganache sets",
        "Vanilla buttercream",
        "Bake tray 5",
      ]),
    );
  });

  // 22 x 60 / 10 = 132 shells on 5 trays of 30; 0.53 x 3.8² = 7.6532 g each, / 0.96; filling 60 x 0.42 x 3.8² / 0.92
  test("sizes shells, batter, trays and both fillings", async () => {
    const said = await asked(order);
    expect([value(said, "shells"), value(said, "trays")]).toEqual([132, 5]);
    expect(g(said, "batter")).toBeCloseTo((132 * 7.6532) / 0.96, 9);
    expect(g(said, "filling")).toBeCloseTo((60 * 6.0648) / 0.92, 9);
    expect(g(said, "ring")).toBeCloseTo(237.3183, 3);
    expect(g(said, "center")).toBeCloseTo(158.2122, 3);
  });

  // ring 237.32: 3-5 %; center 158.21: 3-4 %; dark chocolate 1.25 : 1; buttercream 100 : 150 : 250
  test("and what each is made of, with its flavor", async () => {
    const said = await asked(order);
    const [low, high] = range(said, "vanilla flavor");
    expect([low, high].map((each) => each.toFixed(2))).toEqual(["7.12", "11.87"]);
    expect(range(said, "apricot flavor").map((each) => each.toFixed(2))).toEqual(["4.75", "6.33"]);
    expect(["chocolate", "cream", "butter", "sugar"].map((name) => g(said, name).toFixed(1))).toEqual([
      "87.9",
      "70.3",
      "118.7",
      "71.2",
    ]);
    expect(g(said, "whites, vanilla buttercream")).toBeCloseTo(47.4637, 3);
    expect(said.assumed?.join()).toMatch(/dark chocolate in the apricot ganache/);
  });

  // whites 228.76 + 47.46 = 276.23, / 33 = 8.4
  test("and what to buy", async () => {
    const said = await asked(order);
    expect(value(said, "eggs")).toBe(9);
    expect(JSON.stringify(said.items?.at(-1))).toMatch(/whites 276 g \(9 eggs\).*almond flour 297 g/);
  });

  test("half pink half white splits the batter", async () => {
    const said = await asked(`${order}, half pink half white`);
    expect(g(said, "pink")).toBeCloseTo(g(said, "batter") / 2, 9);
    expect(g(said, "white")).toBeCloseTo(g(said, "batter") / 2, 9);
  });
});

describe("what else was said of the fillings", () => {
  test.each([
    ["24 macarons for friday 3pm with pistachio buttercream", "filling", "pistachio buttercream"],
    [
      "24 macarons for friday 3pm, white chocolate ganache center, rose buttercream ring",
      "center",
      "white chocolate ganache",
    ],
    ["24 macarons for friday 3pm, buttercream center and mint ganache ring", "ring", "mint ganache"],
    ["24 macarons for friday 3pm, vanilla buttercream ring, apricot jam center", "center", "apricot jam"],
    ["24 macarons for friday 3pm, buttercream with lemon", "filling", "lemon buttercream"],
    ["24 rose macarons for friday 3pm", "ring", "rose buttercream"],
  ])("%s", async (line, part, what) => {
    const said = await asked(line);
    expect(said.items).toContainEqual(expect.objectContaining({ part, what }));
  });

  // 12 x 6.0648 / 0.92 each
  test("a number of its own is what a filling is for", async () => {
    const said = await asked(
      "24 macarons for friday 3pm, 12 with lemon ganache and 12 with rose buttercream",
    );
    expect(g(said, "lemon ganache")).toBeCloseTo((12 * 6.0648) / 0.92, 9);
    expect(g(said, "rose buttercream")).toBeCloseTo((12 * 6.0648) / 0.92, 9);
  });

  test("one without a number takes the rest", async () => {
    const said = await asked(
      "24 macarons for friday 3pm, 8 with lemon ganache and the others rose buttercream",
    );
    expect(g(said, "rose buttercream")).toBeCloseTo((16 * 6.0648) / 0.92, 9);
  });

  test("numbers that don't add up are said, and no figure is given", async () => {
    const said = await asked(
      "60 macarons by friday 5pm, 40 raspberry buttercream and 30 dark chocolate ganache",
    );
    expect(said).toMatchObject({ status: "impossible", headline: expect.stringMatching(/40 and 30 of 60/) });
    expect(said.figures).toBeUndefined();
  });

  test("two flavors without a filling are not dosed, and said not to be", async () => {
    const said = await asked("24 macarons for friday 3pm, lemon and raspberry");
    expect(said.figures?.some((each) => / flavor$/.test(each.name))).toBe(false);
    expect(said.assumed?.join()).toMatch(/no dose for lemon and raspberry/);
  });

  test("a bottle's own directions go before the table", () => {
    const fillings = [{ base: "buttercream", flavor: { dose: "flavor", taste: "mint", bare: true } }];
    const due = { weekday: 5, minute: 900, half: "pm" };
    const bottles = [{ id: 1, taste: "mint", low_percent: 1, high_percent: 1 }];
    const said = answer(day, { macarons: 24, due, fillings }, { bottles });
    expect(g(said, "mint flavor")).toBeCloseTo(g(said, "filling") / 100, 9);
    expect(said.rule?.basis).toBe("your bench");
  });

  test("without fillings or flavors the plan stays short", async () => {
    const said = await asked("24 macarons for tomorrow 3pm, when do I start");
    expect([said.figures, said.items]).toEqual([undefined, undefined]);
  });
});

describe("sizing adds up", () => {
  const flavor = fc.constantFrom({ dose: "flavor", taste: "mint", bare: true }, undefined);
  const filling = fc.record({
    base: fc.constantFrom("ganache", "buttercream", "cream cheese filling"),
    flavor,
    chocolate: fc.constantFrom("dark" as const, "white" as const, undefined),
  });
  const due = { days: 20, minute: 900, half: "pm" };

  test("colors to the batter, fillings to what the macarons take with what the bag keeps, parts to their filling", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 400 }),
        fc.integer({ min: 20, max: 60 }),
        fc.uniqueArray(filling, { minLength: 1, maxLength: 2, selector: (each) => JSON.stringify(each) }),
        fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 2, maxLength: 4 }),
        (macarons, diameter_mm, fillings, sizes) => {
          const parts = sizes.map((size, at) => ({ name: `color ${at}`, size }));
          const said = answer(day, { macarons, diameter_mm, due, fillings, colors: { parts } });
          if (said.status !== "answered") return;
          const sum = (names: (name: string) => boolean) =>
            (said.figures ?? [])
              .filter(({ name }) => names(name))
              .reduce((all, each) => all + (each.value ?? 0), 0);
          expect(sum((name) => name.startsWith("color "))).toBeCloseTo(g(said, "batter"), 6);
          expect(g(said, "batter") * 0.96).toBeCloseTo(
            value(said, "shells") * 0.53 * (diameter_mm / 10) ** 2,
            6,
          );
          expect(g(said, "filling") * 0.92).toBeCloseTo(macarons * 0.42 * (diameter_mm / 10) ** 2, 6);
          if (fillings.length === 2)
            expect(sum((name) => name === "ring" || name === "center")).toBeCloseTo(g(said, "filling"), 6);
          const whole = fillings.every(({ base }) => base !== "cream cheese filling");
          const made = sum((name) => /^(?:chocolate|cream|butter|sugar|whites, )/.test(name));
          if (whole) expect(made).toBeCloseTo(g(said, "filling"), 6);
        },
      ),
      { numRuns: 200 },
    );
  });
});

describe("shells that stand piped overnight", () => {
  // due 10:00: filled by 9:10 the day before, five trays to bake from 7:00 on, so the first are piped the evening before
  test("are warned of, and the step says since when", async () => {
    const said = await asked(order);
    expect(said.cautions?.join()).toMatch(
      /Trays 1, 2 and 3 would stand piped from tomorrow 21:40 to Fri 20 Mar 7:05/,
    );
    expect(said.steps?.find((step) => step.name === "Rest tray 1")).toMatchObject({
      from: "2026-03-19T21:40:00",
      start: "2026-03-20T06:35:00",
    });
  });

  test("and not where they rest and bake in one go", async () => {
    expect((await asked("24 macarons for tomorrow 3pm, when do I start")).cautions?.join()).not.toMatch(
      /stand piped/,
    );
  });
});

test("a weekday that is today and can't be met is the one in a week", async () => {
  const said = await asked("24 macarons by saturday 11 am, when do I start", "2026-03-14T09:30:00");
  expect(said.headline).toMatch(/ready Sat 21 Mar 11:00/);
  expect(said.assumed?.join()).toMatch(/in a week/);
});
