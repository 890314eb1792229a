/** "again", "X again please", "undo that", "whats the total": behind every kind of answer something sensible. */
import { describe, expect, it } from "vitest";
import { baker } from "../support/ask.ts";

/** A question, its calculator, and what one calls a figure of its answer. */
const asked: readonly (readonly [string, string, string])[] = [
  ["flavor for 240 g buttercream", "dose", "flavor"],
  ["200 g dark ganache to pipe, how much chocolate and cream", "ganache", "cream"],
  ["120 g whites, what else", "scale", "almond flour"],
  ["batter for 30 macarons", "shells", "batter"],
  ["filling for 30 macarons", "fill", "filling"],
  ["ring and center for 40 macarons", "fill", "ring and center"],
  ["split 600 g batter in three", "split", "split"],
  ["100 g butter for smbc", "buttercream", "whites"],
  ["1 cup almond flour in grams", "convert", "conversion"],
  ["24 macarons for tomorrow 3pm, when do i start", "day", "plan"],
  ["what do i need to buy for 40 macarons", "buy", "shopping list"],
  ["ingredients $6, packaging $2, price at 60% margin", "cost", "price"],
  [
    "us label: 130 g almond flour 130 g powdered sugar 100 g egg whites 100 g sugar, net weight 150 g",
    "label",
    "label",
  ],
  ["what temp do shells bake at", "method", "temperature"],
];

/** Asked of these: they give no figure by a name, but can be asked again. */
const ruled: readonly (readonly [string, string, string])[] = [
  ["how long do filled macarons keep in the fridge", "keep", ""],
  ["my tops cracked, why", "trouble", ""],
  ["how did the rose batch go", "recall", ""],
];

const sayings = ["again", "again please", "same again", "say that again", "what was that again"];

describe("again", () => {
  it.each([...asked, ...ruled])("behind %s", async (question, tool) => {
    for (const saying of tool === "keep" ? ["same again"] : sayings) {
      const { one } = baker();
      const first = await one(question);
      const again = await one(saying);
      expect([saying, again.tool, again.headline]).toEqual([saying, tool, first.headline]);
      expect(again.figures).toEqual(first.figures);
    }
  });
});

describe("X again please", () => {
  it.each(asked)("behind %s, with a note and a timer between", async (question, tool, name) => {
    for (const saying of [
      `${name} again please`,
      `what was the ${name} again`,
      `can i have the ${name} again`,
    ]) {
      const { one } = baker();
      const first = await one(question);
      await one("note: rose batch done");
      await one("5 min timer for the syrup");
      const again = await one(saying);
      expect([saying, again.tool, again.headline]).toEqual([saying, tool, first.headline]);
    }
  });

  it("goes by the number that is told before it", async () => {
    // 36 macarons: ceil(22 * 36 / 10) = 80 shells of 0.53 * 3.8² g, 4 % left behind
    const batter_g = (80 * 0.53 * 3.8 ** 2) / 0.96;
    for (const saying of [
      "36 now. batter again pls",
      "they just rang, its 36. batter again",
      "make that 36, batter again please",
      "batter again for 36",
      "36 in the end, batter again",
    ]) {
      const { one } = baker();
      await one("batter for 30 macarons");
      await one("filling for them");
      const answer = await one(saying);
      expect([saying, answer.tool]).toEqual([saying, "shells"]);
      expect(answer.figures?.find(({ name }) => name === "batter")?.value).toBeCloseTo(batter_g, 6);
    }
  });

  it("goes by the number of now, and was by the one of then", async () => {
    const { one } = baker();
    const first = await one("batter for 30 macarons");
    await one("filling for 40 macarons");
    expect((await one("what was the batter again")).headline).toBe(first.headline);
    // 40: 88 shells
    await one("filling for 40 macarons");
    const now = await one("and batter again");
    expect(now.figures?.find(({ name }) => name === "batter")?.value).toBeCloseTo(
      (88 * 0.53 * 3.8 ** 2) / 0.96,
      6,
    );
  });

  it("of the same flavor takes what the mix comes to now", async () => {
    const { one } = baker();
    await one("150 g butter for smbc");
    await one("coffee powder in all of it");
    // 100 : 150 : 250, so 120 g butter make 240 g
    const less = await one("hm 150 was with the dish, only 120");
    expect([less.tool, less.figures?.find(({ name }) => name === "total")?.value]).toEqual([
      "buttercream",
      240,
    ]);
    // 1-2 % of 240 g
    const coffee = await one("same coffee again");
    expect(coffee.figures?.[0]).toMatchObject({ low: 2.4, high: 4.8 });
  });
});

describe("undo that", () => {
  it.each([...asked, ...ruled])("behind %s takes nothing back", async (question) => {
    const { one } = baker();
    await one(question);
    expect(await one("undo that")).toMatchObject({ tool: "undo", status: "impossible" });
  });

  it.each([
    "put 1 kg almond flour on the shelf",
    "my mat has 28 circles",
    "note: rose batch, 40 of them",
    "10 min for the syrup",
    "save recipe nonna: 100 g whites, 120 g almond flour, 140 g powdered sugar, 90 g sugar",
  ])("behind %s takes it back, whatever was asked since", async (order) => {
    for (const saying of ["undo that", "no i didnt, undo that"]) {
      const { one } = baker();
      await one(order);
      await one("flavor for 240 g buttercream");
      expect(await one(saying)).toMatchObject({ tool: "undo", status: "answered" });
    }
  });
});
