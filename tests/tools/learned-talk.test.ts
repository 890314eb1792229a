/** The bench that learns, in words: noted, asked, forgotten, set aside and taken up again. Figures worked by hand. */
import { describe, expect, test } from "vitest";
import { baker } from "../support/ask.ts";

// 426 / 60 = 7.1 and 497 / 70 = 7.1; 216 / 36 = 6 and 260 / 40 = 6.5; 16 and 18 min
const first = "note: vanilla, 426 g batter, 60 shells, 4 % coffee flavor, baked 16 min, 9/10";
const second = "note: coffee, 497 g batter, 70 shells, 4.2 % coffee flavor, baked 18 min, 8/10";

async function taught() {
  const one = baker();
  await one.ask(first);
  await one.ask(second);
  return one;
}

const batter = async (one: ReturnType<typeof baker>) => {
  const said = await one.one("batter for 24 macarons");
  return said.figures?.find((each) => each.name === "batter")?.value ?? Number.NaN;
};
/** 53 shells: 0.53 x 3.8^2 x 53 / 0.96 by the book, 53 x 7.1 by her batches. */
const [book, own] = [422.52042, 376.3];

test("nothing noted teaches nothing; from the second batch on her own figure is used and said", async () => {
  const one = baker();
  const none = await one.one("what have you learned");
  expect([none.tool, none.status, none.items]).toEqual(["bench", "answered", []]);
  expect(await batter(one)).toBeCloseTo(book, 4);
  await one.ask(first);
  expect(await batter(one)).toBeCloseTo(book, 4);
  expect((await one.one("what have you learned")).cautions?.join()).toMatch(/one batch so far/);
  await one.ask(second);
  const said = await one.one("batter for 24 macarons");
  expect(said.rule?.basis).toBe("your bench");
  expect(said.rule?.text).toMatch(/your last 2 batches: 7\.1 g a shell/);
  expect(await batter(one)).toBeCloseTo(own, 6);
});

test("what have you learned lists it", async () => {
  const one = await taught();
  const said = await one.one("what have you learned?");
  expect(said.headline).toMatch(/7\.1 g a shell \(2 batches\).*17 min bake.*4\.1 % coffee/);
  expect(said.figures).toContainEqual({ name: "bake", value: 17, unit: "min" });
  expect(said.rule?.basis).toBe("your bench");
});

test("use the book, and her own again; settings stay", async () => {
  const one = await taught();
  await one.ask("my mat has 28 circles");
  expect((await one.one("use the book")).headline).toMatch(/set aside/);
  expect(one.record().bench).toEqual({ shells_a_tray: 28, use_book: true });
  expect(await batter(one)).toBeCloseTo(book, 4);
  expect((await one.one("what have you learned")).headline).toMatch(/The book is in use/);
  await one.ask("use my own figures again");
  expect(await batter(one)).toBeCloseTo(own, 6);
  await one.ask("undo");
  expect(await batter(one)).toBeCloseTo(book, 4);
  await one.ask("undo");
  expect(await batter(one)).toBeCloseTo(own, 6);
});

test("forgotten by topic or whole, undone, and learned anew from later batches", async () => {
  const one = await taught();
  expect((await one.one("forget what you learned about the bake time")).headline).toMatch(/baking time/);
  expect(await batter(one)).toBeCloseTo(own, 6);
  expect((await one.one("what have you learned")).headline).not.toMatch(/bake/);
  await one.ask("undo");
  expect((await one.one("what have you learned")).headline).toMatch(/17 min bake/);
  await one.ask("forget what you learned");
  expect(await batter(one)).toBeCloseTo(book, 4);
  expect(one.record().notes).toHaveLength(2);
  await one.ask("undo");
  expect(await batter(one)).toBeCloseTo(own, 6);
  await one.ask("forget everything you have learned");
  // 480 / 80 and 360 / 60 are 6 g; 53 x 6 = 318
  await one.ask("note: 480 g batter, 80 shells");
  expect(await batter(one)).toBeCloseTo(book, 4);
  await one.ask("note: 360 g batter, 60 shells");
  expect(await batter(one)).toBeCloseTo(318, 6);
});

test("a batch far off is named", async () => {
  const one = await taught();
  await one.ask("note: mint, 470 g batter, 36 shells");
  const said = await one.one("batter for 24 macarons");
  expect(said.cautions?.join()).toMatch(/left out: the batch of today, 13\.1 g a shell/);
  expect(await batter(one)).toBeCloseTo(own, 6);
});

test("what was left over is kept apart from what was made", async () => {
  const one = baker();
  await one.ask("note: lemon, 460 g batter, 18 g left in the bowl, 70 shells");
  await one.ask("note: 230 g ganache for 36 macarons, 15 g of ganache left");
  await one.ask("note: 480 g batter, leftover batter 20 g");
  const [bowl, bag, over] = one.record().notes;
  expect(bowl).toMatchObject({ batter_g: 460, batter_left_g: 18, shells: 70 });
  expect(bag).toMatchObject({ filling_g: 230, filling_left_g: 15, macarons: 36 });
  expect(over).toMatchObject({ batter_g: 480, batter_left_g: 20 });
});

// 4.1 % of 200 g is 8.2 g; the table has 3-5 %
test("her usual dose as asked for, the table's range otherwise", async () => {
  const one = await taught();
  const table = await one.one("how much coffee flavor for 200 g buttercream");
  expect(table.figures).toContainEqual({ name: "flavor", low: 6, high: 10, unit: "g" });
  const usual = await one.one("my usual dose of coffee for 200 g buttercream");
  expect(usual.figures?.[0]?.value).toBeCloseTo(8.2, 9);
  expect(usual.rule?.basis).toBe("your bench");
});

describe.each([
  ["what have you learnt", "learned"],
  ["what did you learn from my notes", "learned"],
  ["show me what you've learned", "learned"],
  ["unlearn the bake time", "forgotten"],
  ["please forget all you learned", "forgotten"],
  ["stop using my figures", "use_book"],
  ["go by the book", "use_book"],
])("%s", (say, what) => {
  test(`is heard: ${what}`, async () => {
    const one = await taught();
    const said = await one.one(say);
    expect([said.tool, said.status]).toEqual(["bench", "answered"]);
    if (what === "learned") expect(said.items?.length).toBeGreaterThan(0);
    else expect(Object.keys(one.record().bench)).toEqual([what]);
  });
});

test.each([
  ["note: learned to fold slower, 7/10", "note"],
  ["forget my mat", "bench"],
  ["forget my recipe for porch shells", "formula"],
  ["what do i usually bake at", "recall"],
])("not about what was learned: %s", async (say, tool) => {
  const one = await taught();
  expect((await one.ask(say))[0]?.tool).toBe(tool);
  expect(one.record().bench).toEqual({});
});
