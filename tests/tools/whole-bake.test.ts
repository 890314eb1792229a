/**
 * A whole bake in her words: the order with recipes, stock and batches of her own, the day moved on at the bench, and
 * what is taken off the shelf when it is over. Weights by hand from the book's figures (data/rules) and the recipes.
 */
import { describe, expect, test } from "vitest";
import type { Answer, Outcome } from "../../src/tools/contract/index.ts";
import { baker } from "../support/ask.ts";
import { value } from "../support/world.ts";

const thursday = "2026-03-12T08:00:00";
const g = (said: Answer, name: string) => value(said as Outcome, name, "g");
/** 132 shells of 0.53 x 3.8² g, / 0.96. */
const batter = (132 * 7.6532) / 0.96;
/** 60 x 0.42 x 3.8² / 0.92, of which 60 % are ring. */
const filling = (60 * 6.0648) / 0.92;
const order = "60 macarons by saturday 6 pm, apricot ganache and vanilla buttercream";
const snow =
  "save recipe snow: whites 100 to 110 g, almond flour 130 g, powdered sugar 130 g, sugar 100 g, pinch of salt";

async function said(lines: readonly string[], now = thursday) {
  const chat = baker({ now });
  let last: Answer | undefined;
  for (const line of lines) last = (await chat.ask(line)).at(-1);
  if (!last) throw new Error("no answer");
  return { last, ...chat };
}

describe("her own recipes", () => {
  test("the house recipe makes the day's shells, and what of it has no weight is named", async () => {
    const { last } = await said([snow, "use snow as my house recipe", order]);
    expect(g(last, "whites")).toBeCloseTo((batter * 105) / 465, 6);
    expect(g(last, "almond flour")).toBeCloseTo((batter * 130) / 465, 6);
    expect(last.rule?.basis).toBe("your bench");
    expect(last.cautions?.join()).toContain("pinch of salt");
  });

  test("a recipe named in the order stands in for the house recipe this once", async () => {
    const { last } = await said([snow, "24 macarons by saturday 6 pm with snow, vanilla buttercream"]);
    // 53 shells
    expect(g(last, "almond flour")).toBeCloseTo(((53 * 7.6532) / 0.96) * (130 / 465), 6);
  });

  test("a ganache of that name makes the center, also on the list", async () => {
    const save = "save recipe apricot ganache: 120 g white chocolate, 60 g cream, 15 g apricot puree";
    const { last, one } = await said([save, order]);
    expect(g(last, "center")).toBeCloseTo(filling * 0.4, 6);
    expect(g(last, "chocolate")).toBeCloseTo((filling * 0.4 * 120) / 195, 6);
    const list = await one("what do i need to buy");
    expect(g(list, "cream")).toBeCloseTo((filling * 0.4 * 60) / 195, 6);
    expect(g(list, "white chocolate")).toBeCloseTo((filling * 0.4 * 120) / 195, 6);
  });

  test("scaled, a range keeps its ends and lines without a weight are named", async () => {
    const { last } = await said([snow, "double snow"]);
    expect(last.figures?.find((each) => each.name === "whites")).toEqual({
      name: "whites",
      value: 210,
      low: 200,
      high: 220,
      unit: "g",
    });
    expect(last.cautions?.join()).toContain("pinch of salt");
  });

  test("a filling's recipe for a number of macarons is what they are filled with", async () => {
    const { last } = await said([
      "save recipe vanilla smbc: 100 g whites, 150 g sugar, 250 g butter",
      "vanilla smbc for 36 macarons",
    ]);
    expect(g(last, "total")).toBeCloseTo((36 * 6.0648) / 0.92, 6);
    expect(g(last, "butter")).toBeCloseTo((36 * 6.0648) / 0.92 / 2, 6);
    expect(last.assumed?.join()).toContain("only filling");
  });

  test("shells of other nuts are what the allergens go by", async () => {
    const { last } = await said([
      "save recipe nutty: 100 g whites, 130 g ground hazelnuts, 130 g powdered sugar, 100 g sugar",
      "use nutty as my house recipe",
      "which allergens are in macarons with buttercream",
    ]);
    expect(last.headline).toMatch(/hazelnut/);
    expect(last.headline).not.toMatch(/almond/);
  });

  test("the name may stand last", async () => {
    const { record } = await said(["my shells are 120 g whites, 150 g almond flour, save that as puff"]);
    expect(record().formulas.map((each) => each.name)).toEqual(["puff"]);
  });

  test("the label after a planned day holds shells, fillings and flavors", async () => {
    const { last } = await said([order, "label"]);
    const list = last.items?.find((each) => each.line === "ingredients")?.text;
    for (const name of ["almond flour", "butter", "dark chocolate", "vanilla flavor", "apricot flavor"])
      expect(list).toContain(name);
  });
});

describe("fillings that no rule makes", () => {
  test("a jam is a filling with its share, and on the list", async () => {
    const { last, one } = await said(["60 macarons by saturday 6 pm, raspberry jam and vanilla buttercream"]);
    expect(g(last, "center")).toBeCloseTo(filling * 0.4, 6);
    expect(JSON.stringify(last.items)).toContain("raspberry jam 158 g");
    const list = await one("what do i need to buy");
    expect(g(list, "raspberry jam")).toBeCloseTo(filling * 0.4, 6);
    // buttercream 100 : 150 : 250, three fifths of the filling
    expect(g(list, "butter")).toBeCloseTo(filling * 0.6 * 0.5, 6);
  });

  test("a curd is called a curd", async () => {
    const { last } = await said(["24 macarons by saturday noon, lemon curd and vanilla buttercream"]);
    expect(JSON.stringify(last.items)).toContain("lemon curd");
  });

  test("the one number counts them all", async () => {
    const { last } = await said(["24 macarons with ganache and buttercream by saturday 3 pm"]);
    expect(last.status).toBe("answered");
    expect(value(last as Outcome, "macarons")).toBe(24);
  });
});

describe("the shelf", () => {
  // 276.23 g of whites are wanted; four eggs hold 132
  test.each([
    ["pantry: 10 eggs", undefined],
    ["pantry: 4 eggs", batter * (100 / 460) + filling * 0.6 * 0.2 - 132],
  ])("eggs there are whites: %s", async (stock, left) => {
    const { last } = await said([stock, "shopping list for 60 macarons"]);
    const whites = last.items?.find((each) => each.buy === "whites")?.grams;
    if (left === undefined) expect(whites).toBeUndefined();
    else expect(whites).toBeCloseTo(left, 6);
  });

  test("bags with their price are stock, a price and a pack at once", async () => {
    const { record } = await said(["i bought 2 bags of almond flour, 500 g each, 9 dollars a bag"]);
    expect(record().stock).toMatchObject([
      { name: "almond flour", grams: 1000, pack_g: 500, price_per_g: 0.018 },
    ]);
  });

  test("one price for all of it", async () => {
    const { record } = await said(["bought 2 bags of almond flour, 500 g each, for 18 dollars"]);
    expect(record().stock[0]?.price_per_g).toBeCloseTo(0.018, 12);
  });

  test.each([
    ["my mint bottle says 4 g to 500 g", 0.8, 0.8],
    ["my label says 4 g to 500 g, save that for the mint bottle", 0.8, 0.8],
    ["the label on my mint flavour says 4g to 500g", 0.8, 0.8],
    ["mint bottle: 4 g to 6 g per 500 g", 0.8, 1.2],
  ])("%s", async (line, low_percent, high_percent) => {
    const { record } = await said([line]);
    expect(record().bottles).toMatchObject([{ taste: "mint", low_percent, high_percent }]);
    expect(record().stock).toEqual([]);
  });

  test("a range of grams to nobody knows how much is not saved", async () => {
    const { last, record } = await said(["my mint bottle says 4 g to 6 g"]);
    expect(last.status).not.toBe("answered");
    expect(record().bottles).toEqual([]);
  });

  test("a noted batch after a planned bake takes off what the plan takes", async () => {
    const chat = baker({ now: thursday });
    await chat.one("pantry: 1 kg almond flour");
    await chat.one(order);
    const later = baker({ now: "2026-03-14T19:00:00", record: chat.record() });
    const answers = await later.ask("note: lovely feet, 9/10, take it off the shelf");
    expect(answers.map((each) => each.tool)).toEqual(["note", "shelf"]);
    // almond flour 130 of 460
    expect(later.record().stock[0]?.grams).toBeCloseTo(1000 - (batter * 130) / 460, 6);
  });
});

describe("at the bench", () => {
  const friday = (time: string) => `2026-03-13T${time}:00`;

  test("timers are set once", async () => {
    const { one, record } = await said([order, "set timers for it"]);
    const count = record().timers.length;
    const again = await one("set timers for it");
    expect(again.headline).toMatch(/run already/);
    expect(record().timers).toHaveLength(count);
  });

  test("a dropped plan takes its timers along, and isn't made again by asking about it", async () => {
    const { one, record } = await said([order, "set timers for it", "cancel the plan"]);
    expect(record().timers.filter((each) => each.state === "running")).toEqual([]);
    expect((await one("what's next")).headline).toMatch(/no plan/);
    expect(record().plans).toEqual([]);
  });

  test("a ganache made ahead is done, and its timer is silent", async () => {
    const { one, record, setClock } = await said([order, "set timers for it"]);
    setClock(friday("14:50"));
    const done = await one("the apricot ganache is done");
    expect(done.tool).toBe("day");
    expect(done.steps?.find((each) => each.name === "Apricot ganache")?.end).toBe(friday("14:50"));
    expect(record().timers.find((each) => each.label === "Apricot ganache")?.state).not.toBe("running");
  });

  test("skipping the rest, taken back, stays back when the hour changes", async () => {
    const { one, record, setClock } = await said([order]);
    setClock(friday("14:30"));
    await one("skip the rest");
    await one("undo");
    const moved = await one("they want them at 7 pm now");
    expect(moved.status).toBe("answered");
    expect(record().plans[0]?.steps.some((each) => each.id === "rest-5")).toBe(true);
  });

  test("an hour alone belongs to the plan's day, in another process too", async () => {
    const first = await said([order]);
    const later = baker({ now: friday("14:30"), record: first.record() });
    await later.one("done weighing");
    const moved = await later.one("they want them at 7 pm now");
    expect(moved.headline).toMatch(/ready tomorrow 19:00/);
  });

  test.each([
    ["pink macarons, 24 for friday 3pm", 24],
    ["6 boxes of 12 for saturday noon", 72],
  ])("%s", async (line, macarons) => {
    expect((await said([line])).last.headline).toContain(`${macarons} macarons`);
  });

  test("more boxes hold as many", async () => {
    const { last } = await said(["6 boxes of 12 for saturday noon", "and 8 boxes"]);
    expect(last.headline).toContain("96 macarons");
  });

  test("hours said with the order hold for it and are not kept", async () => {
    const { last, record } = await said(["36 macarons by saturday 10am, i sleep 10 to 6"]);
    expect(last.rule?.text).toContain("none between 22:00 and 6:00");
    expect(record().bench).toEqual({});
  });

  test("each line of the sum has its day", async () => {
    const { last } = await said(["24 macarons for friday 3 pm", "why"]);
    expect(JSON.stringify(last)).toContain("Thu 12 Mar 14:10 to Fri 13 Mar 14:10 Mature");
  });
});

describe("batches that count and don't", () => {
  const batches = [
    "note for march 8: 40 macarons, 80 shells, 640 g batter, coffee 4 %, 8/10",
    "note for march 10: 40 macarons, 80 shells, 640 g batter, coffee 4 %, 9/10",
  ];

  test("ignored, counted again, taken back", async () => {
    const { one } = await said(batches);
    // 640 / 80 = 8 g a shell; the book 7.6532 / 0.96
    expect(g(await one("batter for 50 shells"), "batter")).toBeCloseTo(400, 6);
    expect((await one("don't count that one")).headline).toMatch(/Left out/);
    expect(g(await one("batter for 50 shells"), "batter")).toBeCloseTo((50 * 7.6532) / 0.96, 6);
    await one("undo");
    expect(g(await one("batter for 50 shells"), "batter")).toBeCloseTo(400, 6);
    await one("ignore the batch of march 8");
    expect(g(await one("batter for 50 shells"), "batter")).toBeCloseTo((50 * 7.6532) / 0.96, 6);
    await one("count that batch again");
    expect(g(await one("batter for 50 shells"), "batter")).toBeCloseTo(400, 6);
  });

  test("the usual dose", async () => {
    const { last } = await said([...batches, "what's my usual dose of coffee"]);
    expect(last.headline).toMatch(/^4 %/);
  });

  test.each([
    [{}, "2026-02-03"],
    [{ market: "eu" as const }, "2026-03-02"],
  ])("a day with a slash, %j", async (bench, date) => {
    const { one, record } = baker({ now: thursday, record: { bench } });
    const answer = await one("note for 2/3: 40 macarons coffee 8/10");
    expect(record().notes[0]).toMatchObject({ date, rating: 8 });
    expect(answer.assumed?.join()).toMatch(/2\/3 is/);
  });
});

describe("small sums", () => {
  test("two fillings share what goes into them", async () => {
    const { last } = await said(["how much buttercream and ganache for 24 macarons"]);
    const all = (24 * 6.0648) / 0.92;
    expect([g(last, "ring"), g(last, "center")].map((each) => each.toFixed(6))).toEqual(
      [all * 0.6, all * 0.4].map((each) => each.toFixed(6)),
    );
    expect(last.assumed?.join()).toContain("buttercream as the ring");
  });

  test("a number to the tray said with the question", async () => {
    const { last } = await said(["12 shells per tray, how many trays for 40 macarons"]);
    expect(value(last as Outcome, "trays")).toBe(8);
  });

  test("one shell is one", async () => {
    expect((await said(["batter for 1 shell"])).last.headline).toContain("1 shell,");
  });

  test("the parts of a bowl have their names", async () => {
    const { last } = await said(["split 450 g batter 40 % chocolate the rest plain"]);
    expect(last.figures?.map((each) => [each.name, each.value])).toEqual([
      ["chocolate", 180],
      ["plain", 270],
    ]);
  });

  test("half of a bowl said in the same breath", async () => {
    const { last } = await said(["540 g ganache, rum for half of it"]);
    // 2-5 % of 270
    expect(last.figures?.[0]).toMatchObject({ low: 5.4, high: 13.5 });
  });

  test("a dose under the scale's step is never nothing, and says what the scale can show", async () => {
    const { last } = await said(["my scale reads to 1 g", "0.3 percent salt for 120 g buttercream"]);
    expect(last.headline).toContain("0.36 g");
    // 1 g is 0.3 % of 333 g
    expect(last.cautions?.join()).toContain("1 g, right for 333 g");
  });
});

// 6.9 / 28.349523 = 0.2434, 11.5 / 28.349523 = 0.4056; 423 / 28.349523 = 14.92
test("weights in ounces have their grams behind them", async () => {
  const { one } = await said(["show weights in ounces"]);
  const dose = await one("how much flavor for 230 g buttercream");
  expect(dose.headline).toBe("0.243 to 0.406 oz (6.9 to 11.5 g) flavor");
  expect((await one("batter for 24 macarons")).headline).toContain("14.92 oz (423 g) batter");
  await one("back to grams");
  expect((await one("batter for 24 macarons")).headline).toContain("423 g batter");
});

test("hours and trays of the bench in plain words", async () => {
  const { record } = await said([
    "i sleep from 11 pm to 6 am",
    "i bake two trays at once",
    "i rest mine 40 minutes",
    "currency euro",
  ]);
  expect(record().bench).toMatchObject({
    sleep_min: 23 * 60,
    wake_min: 6 * 60,
    trays_at_once: 2,
    rest_min: 40,
    currency: "EUR",
  });
});
