/**
 * What is told in the middle of a bake and is no order. Sums by hand: batter 0.53 d² a shell over 0.96, 10 % spare shells,
 * house formula 100 : 130 : 130 : 100, buttercream 100 : 150 : 250 and filling 0.42 d² over 0.92 (common practice; sizes
 * from memory).
 */
import { describe, expect, it, test } from "vitest";
import { baker, talk } from "../support/ask.ts";
import { type Case, expectFigures } from "../support/figures.ts";

const cases: Case[] = [
  // 88 shells for 40, less 6, in pairs
  ["shells for 40 macarons|kids ate 6 shells", "shells", { macarons: 41, shells: 82 }],
  // 88 × 7.6532 / 0.96 × 130 / 460
  ["how much of everything for the shells for 40 macarons", "scale", { "almond flour": 198.262246 }],
  ["batter for 40 macarons|almond flour?", "scale", { "almond flour": 198.262246 }],
  // 33 of them: 33 × 6.0648 / 0.92 = 217.541739, butter a half of it
  ["how many macarons from 531 g batter|lemon buttercream for those", "buttercream", { butter: 108.77087 }],
  // 2 × 0.87 × 7.6532 + 6.0648 g each, 12 of them
  ["how much do 2 boxes of 6 macarons weigh", "shells", { filled: 232.576416 }],
];

describe("the last answer of an exchange", () => {
  test.each(cases)("%s", (...each) => expectFigures(...each));
});

describe("what was done, paid or named is no other number of macarons", () => {
  test.each([
    ["batter for 40 macarons", "i sifted 190 already"],
    ["batter for 40 macarons", "costs me about 9 for everything"],
  ])("%s / %s", async (...turns) => {
    const answer = await talk(...turns);
    expect(answer.of("batter")).toBeUndefined();
    expect(answer.of("macarons")).toBeUndefined();
  });
  it("a tray's number is no mat of one shell", async () => {
    const { ask, record } = baker();
    await ask("oven runs 10 hot");
    await ask("tray 1 goes in now");
    expect(record().bench.shells_a_tray).toBeUndefined();
  });
  it("batter on the table is no bowl of buttercream", async () => {
    const answer = await talk("batter for 24 macarons", "how much rum in the buttercream");
    expect(answer).toMatchObject({ tool: "dose", status: "asking" });
  });
});

it("a kind of chocolate said behind its ganache is the kind of that ganache", async () => {
  const answer = await talk("plan 40 macs for tomorrow 4pm, passion fruit ganache milk choc");
  expect(answer.assumed?.join()).not.toMatch(/dark chocolate/);
});

test.each([
  ["passion fruit puree for 150 g ganache", "its runny now", "trouble", /^Loose ganache/],
  ["hello", "how stiff should the whites be", "method", /stiff glossy peaks/],
])("%s / %s", async (first, second, tool, said) => {
  const answer = await talk(first, second);
  expect(answer.tool).toBe(tool);
  expect(answer.headline).toMatch(said);
});

describe("told, and nothing kept or set by it", () => {
  test.each(["left out 90 min", "i left them out 1 hour", "had them out 50 min"])("%s", async (say) => {
    const { one, record } = baker();
    expect(await one(say)).toMatchObject({ tool: "keep", status: "answered" });
    expect(record().timers).toEqual([]);
  });
  test.each(["wait 5 min", "set it to 170", "oven 160"])("a note stays as it was: %s", async (say) => {
    const { ask, record } = baker();
    await ask("note: lemon 24 macs, 148 c 15 min");
    const { notes } = record();
    await ask(say);
    expect(record().notes).toEqual(notes);
  });
  it("a bottle is forgotten by its whole name", async () => {
    const { ask, record } = baker();
    await ask("my mint bottle says 0.5 to 1 percent, save that");
    await ask("forget mint tea");
    expect(record().bottles).toHaveLength(1);
    await ask("forget mint");
    expect(record().bottles).toHaveLength(0);
  });
});

describe("a label's lines, changed", () => {
  const label = "us label: 130 g almond flour, 100 g whites, 90 g sugar, 85 g butter, net weight 150 g";
  it("adds to what there is: 85 + 10 g come before 90 g of sugar", async () => {
    const { one } = baker();
    await one(label);
    const { items } = await one("add 10 g butter");
    const list = items?.find(({ line }) => line === "ingredients")?.text ?? "";
    expect(list).toMatch(/egg whites, .*butter.*, sugar$/);
  });
  it("takes the swapped one and its allergen off", async () => {
    const { headline } = await talk(label, "swap the butter for 40 g hazelnut paste");
    expect(headline).toMatch(/contains almond, egg and hazelnut;/);
  });
  it("takes no bare number for a net weight", async () => {
    expect((await talk(label, "make it 24")).of("net weight")).toBeUndefined();
  });
});

// (6 - 9 × 6 / 24) / 6; one box of nobody knows how many is asked
test("a box's price is held against a box", async () => {
  expect(await talk("cost 9 for 24, sell 6 a box")).toMatchObject({ tool: "cost", status: "asking" });
  expect((await talk("cost 9 for 24, sell 6 a box", "6")).of("margin")?.value).toBe(62.5);
});

test.each(["i sleep an hour later", "my sister comes an hour later"])("moves no plan: %s", async (say) => {
  const order = "24 macs for tomorrow 3pm when do i start";
  const [plan, after] = [await talk(order), await talk(order, say)];
  expect(after.headline).toContain(plan.headline.replace(/^Start /, ""));
});
test("work till an hour is her own start, and no hour of being ready", async () => {
  const answer = await talk("24 macs for tomorrow 3pm when do i start", "i have work till 5");
  expect(answer.headline).toMatch(/^Start 17:00/);
});
