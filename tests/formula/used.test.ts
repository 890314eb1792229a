/** A recipe of her own in every calculator, bottles with strength, batches off the shelf. Worked by hand. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { buy } from "../../src/tools/buy/buy.ts";
import type { Formula, Stock } from "../../src/tools/contract/index.ts";
import { scale } from "../../src/tools/scale/scale.ts";
import { shelf } from "../../src/tools/shelf/shelf.ts";
import { baker } from "../support/ask.ts";
import { answer, range, value } from "../support/world.ts";

const snowy: Formula = {
  id: 1,
  name: "snowy shells",
  kind: "shells",
  // 460 g in all
  lines: [
    { name: "whites", grams: 110 },
    { name: "almond flour", grams: 130 },
    { name: "powdered sugar", grams: 125 },
    { name: "granulated sugar", grams: 95 },
  ],
};
const mocha: Formula = {
  id: 2,
  name: "mocha ganache",
  kind: "ganache",
  lines: [
    { name: "dark chocolate", grams: 200 },
    { name: "cream", grams: 160 },
  ],
};
const kitchen = (more = {}) => baker({ record: { formulas: [snowy, mocha], ...more } });

describe("used by its name", () => {
  test.each([
    ["scale snowy shells to 55 g whites", "scale", "almond flour", 65],
    ["double snowy shells", "scale", "granulated sugar", 190],
  ])("%s", async (say, tool, name, grams) => {
    const said = await kitchen().one(say);
    expect(said.tool).toBe(tool);
    expect(value(said, name)).toBeCloseTo(grams, 9);
    expect(said.rule?.basis).toBe("your bench");
  });
  test("cost, label, composition, shopping", async () => {
    const { one } = kitchen();
    expect((await one("what does snowy shells cost")).headline).toContain("whites");
    expect((await one("label for snowy shells")).headline).toContain("almond and egg");
    const made = await one("how much fat is in mocha ganache");
    expect(made.tool).toBe("ganache");
    expect(made.status).toBe("answered");
    // batter for 40 macarons: ceil(88) shells x 7.6532 / 0.96 = 701.54 g; whites 110 / 460 of it
    const list = await one("what do i need to buy for 40 macarons with snowy shells, only the shells");
    expect(value(list, "whites")).toBeCloseTo((((88 * 0.53 * 3.8 * 3.8) / 0.96) * 110) / 460, 9);
  });
});

describe("as the house recipe", () => {
  test("scale, shells and buy go by it; the book comes back", async () => {
    const { one, record } = kitchen();
    await one("use snowy shells as my house recipe");
    expect(record().bench.house_formula).toBe("snowy shells");
    const scaled = await one("house recipe with 55 g whites");
    expect(value(scaled, "granulated sugar")).toBeCloseTo(47.5, 9);
    expect(scaled.rule?.basis).toBe("your bench");
    const eggs = await one("how many eggs for 40 macarons");
    // 701.54 x 110 / 460 = 167.76 g, of 33 g: six
    expect(value(eggs, "whites", "whites")).toBe(6);
    expect(eggs.rule?.basis).toBe("your bench");
    expect((await one("what is my house recipe")).headline).toContain("snowy shells");
    await one("rename snowy shells to winter shells");
    expect(record().bench.house_formula).toBe("winter shells");
    await one("back to the book's recipe");
    expect(record().bench.house_formula).toBeUndefined();
  });
  test("forgotten, it no longer counts; a ganache can't be it", async () => {
    const { one, record } = kitchen();
    expect((await one("use mocha ganache as my house recipe")).status).toBe("impossible");
    await one("use snowy shells as my house recipe");
    await one("forget snowy shells");
    expect(record().bench.house_formula).toBeUndefined();
    await one("undo");
    expect(record().bench.house_formula).toBe("snowy shells");
  });
});

describe("bottles", () => {
  test.each([
    [
      "My bottle of violet flavor prescribes 6 to 9 g per kilogram of filling. Please save this.",
      "violet",
      0.6,
      0.9,
    ],
    ["my rose bottle says 5 ml per kg", "rose", 0.5, 0.5],
    ["the label on my mint bottle says 4 g for 500 g, save it", "mint", 0.8, 0.8],
  ])("%s", async (say, taste, low_percent, high_percent) => {
    const { one, record } = baker();
    expect((await one(say)).tool).toBe("shelf");
    expect(record().bottles[0]).toMatchObject({ taste, low_percent, high_percent });
  });
  test("strength without directions: half of 3-5 % where it is double", async () => {
    const { one } = baker();
    await one("my mint bottle is double strength");
    const dose = await one("how much mint for 400 g buttercream");
    expect(
      range(
        dose,
        "flavor|mint".split("|").find((name) => dose.figures?.some((each) => each.name === name)) ??
          "mint flavor",
      ),
    ).toEqual([6, 10]);
    expect(dose.rule?.basis).toBe("your bench");
  });
  test("what is left goes down, never below nothing", async () => {
    const { one, record } = baker();
    await one("my mint bottle has 30 ml left");
    await one("used 12 g of mint");
    expect(record().bottles[0]?.left_g).toBe(18);
    expect((await one("used 25 g of mint")).status).toBe("impossible");
    expect(record().bottles[0]?.left_g).toBe(18);
    expect((await one("how much is left in my mint bottle")).headline).toContain("18 g left");
  });
});

describe("a batch taken off the shelf", () => {
  test("with the note, what the recipe on the table took", async () => {
    const { one, ask, record } = kitchen({});
    await one("pantry: 500 g almond flour, 100 g powdered sugar");
    await one("double snowy shells");
    const [noted, taken] = await ask("note: good feet, rated 8, and take it off the shelf");
    expect(noted?.tool).toBe("note");
    // 500 - 260; 100 - 250 stands at nothing
    expect(record().stock.map((each) => each.grams)).toEqual([240, 0]);
    expect(taken?.headline).toContain("not on the shelf: whites and granulated sugar");
    expect(taken?.cautions?.join()).toContain("powdered sugar");
    await one("undo");
    expect(record().stock.map((each) => each.grams)).toEqual([500, 100]);
  });
  test("without a recipe it asks, with nothing there it says so", async () => {
    expect((await baker().one("take it off the shelf")).status).toBe("asking");
    const { one } = kitchen();
    await one("double snowy shells");
    expect((await one("take it off the shelf")).status).toBe("impossible");
  });
});

describe("shopping", () => {
  test("in the size that is sold, for the order of the day", async () => {
    const { one } = baker();
    await one("almond flour comes in 250 g bags");
    await one("i need 60 macarons by friday 10 am with vanilla buttercream");
    const list = await one("what do i need to buy");
    expect(list.tool).toBe("buy");
    // 132 shells: 132 x 7.6532 / 0.96 = 1052.3 g batter, 130 / 460 of it 297.4 g almond: two bags
    expect(list.headline).toContain("almond flour 297 g (2 × 250 g)");
    expect(list.headline).not.toContain("chocolate");
  });
});

const grams = fc.double({ min: 1, max: 5000, noNaN: true });
const named = fc.constantFrom(
  "whites",
  "almond flour",
  "powdered sugar",
  "granulated sugar",
  "butter",
  "cream",
);

test("law: scaled up and down again a recipe is what it was", () => {
  fc.assert(
    fc.property(
      fc.uniqueArray(fc.record({ name: named, grams }), { selector: (each) => each.name, minLength: 1 }),
      fc.double({ min: 0.05, max: 40, noNaN: true }),
      (lines, factor) => {
        const up = answer(scale, { lines, factor });
        const down = answer(scale, {
          lines: lines.map(({ name }) => ({ name, grams: value(up, name) })),
          factor: 1 / factor,
        });
        for (const line of lines) expect(value(down, line.name)).toBeCloseTo(line.grams, 6);
      },
    ),
  );
});

test("law: what is bought and what is there cover what is needed, and nothing is ever below zero", () => {
  const stock = fc
    .uniqueArray(fc.record({ name: named, grams, pack_g: fc.option(grams, { nil: undefined }) }), {
      selector: (each) => each.name,
    })
    .map((some) => some.map((each, at): Stock => ({ id: at + 1, ...each })));
  fc.assert(
    fc.property(stock, fc.integer({ min: 1, max: 300 }), (held, macarons) => {
      const bare = answer(buy, { macarons });
      const list = answer(buy, { macarons }, { stock: held });
      for (const figure of list.figures ?? []) expect(figure.value).toBeGreaterThanOrEqual(0);
      for (const item of list.items ?? []) {
        if (item.buy === undefined) continue;
        const same = (name: unknown) =>
          String(name).replace("granulated ", "") === String(item.buy).replace("granulated ", "");
        const there = held.filter((each) => same(each.name)).reduce((sum, each) => sum + each.grams, 0);
        const needed = (bare.items ?? []).find((each) => same(each.buy));
        expect(Number(item.grams) + there).toBeGreaterThanOrEqual(Number(needed?.grams) - 1e-6);
      }
    }),
  );
});

test("law: a batch taken off never leaves less than nothing", () => {
  const some = fc.uniqueArray(fc.record({ name: named, grams }), {
    selector: (each) => each.name,
    minLength: 1,
  });
  fc.assert(
    fc.property(some, some, (held, entries) => {
      const said = answer(
        shelf,
        { does: "use", whole: true, entries },
        { stock: held.map((each, at) => ({ id: at + 1, ...each })) },
      );
      for (const effect of said.effects ?? [])
        if (effect.do === "change") expect(Number(effect.patch.grams)).toBeGreaterThanOrEqual(0);
    }),
  );
});
