/** Ganache questions as they are typed, and what a turn leaves for the next. */
import { expect, test } from "vitest";
import { baker } from "../support/ask.ts";
import { value } from "../support/world.ts";

const one = (line: string) => baker().one(line);

// common practice: 300 / 1.25 = 240
test("chocolate in hand, cream wanted", async () => {
  expect(value(await one("300 g dark chocolate, how much cream for piping"), "cream")).toBeCloseTo(240, 9);
});

// "grams said of the ganache are its total": 450 / 3 = 150 cream
test("grams said of the ganache are its total", async () => {
  expect(value(await one("I need 450 g milk ganache to fill"), "cream")).toBeCloseTo(150, 9);
});

// NIST SP 811: 8 oz = 226.796185 g; milk for piping is 2 : 1, so 113.3980925 g cream
test("ounces of chocolate", async () => {
  expect(value(await one("8 oz milk chocolate, how much cream for piping"), "cream")).toBeCloseTo(
    113.3980925,
    7,
  );
});

// USDA SR28 WEIGHT 01053: a cup of heavy cream, fluid, 238 g; half of it 119 g; dark for piping 119 x 1.25 = 148.75
test("half a cup of cream is weighed by its portion row, and that is said", async () => {
  const said = await one("half a cup of cream, how much dark chocolate for piping");
  expect(value(said, "chocolate")).toBeCloseTo(148.75, 9);
  expect(said.assumed?.join()).toMatch(/portion table/);
});

test("without the kind of chocolate it asks, and the next turn may be just that", async () => {
  const chat = baker();
  expect(await chat.one("how much cream for 300 g chocolate")).toMatchObject({
    tool: "ganache",
    status: "asking",
  });
  // 300 / 2 = 150
  expect(value(await chat.one("milk"), "cream")).toBeCloseTo(150, 9);
});

// 2 x 150 - 200 = 100
test("too runny, with what went in", async () => {
  const said = await one("my milk ganache is too runny, it was 200 g chocolate and 150 g cream");
  expect(value(said, "add chocolate")).toBeCloseTo(100, 9);
});

// from memory: 400 x 2 % = 8, x 10 % = 40
test("split", async () => {
  const said = await one("my 400 g ganache split");
  expect([value(said, "at a time"), value(said, "at most")]).toEqual([8, 40]);
});

// Norrish on USDA rows, by hand in ganache-composition.test.ts: 1:1 dark 0.95872
test("water activity", async () => {
  const said = await one("water activity of 200 g dark chocolate and 200 g cream");
  expect(value(said, "aw")).toBeCloseTo(0.95872, 4);
});

// USDA SR26 19904, 70-85 %: (23.99 + 2.79) / 2 = 13.39 % sugar
test("a cacao percentage picks the chocolate's row", async () => {
  expect(
    value(await one("water activity of 100 g 70 % dark chocolate and 100 g cream"), "sugar"),
  ).toBeCloseTo(13.39, 9);
});

// 300 g of it on the table: dark for piping, 3-4 % of 300 = 9 to 12; common practice
test("what was built is what the next question is about", async () => {
  const chat = baker();
  await chat.one("300 g dark ganache for piping");
  const said = await chat.one("how much flavor does it take");
  expect(said).toMatchObject({ tool: "dose", status: "answered" });
  expect(said.figures?.[0]?.low).toBeCloseTo(9, 9);
  expect(said.figures?.[0]?.high).toBeCloseTo(12, 9);
});

// a grade stands between the weight and what it is a weight of: 200 / 1.25 = 160
test.each(["200 g 70% dark chocolate, how much cream", "200 g of 70 % cocoa dark chocolate, how much cream"])(
  "%s: the weight is the chocolate's",
  async (line) => {
    const said = await one(line);
    expect(said).toMatchObject({ tool: "ganache", status: "answered" });
    expect(value(said, "cream")).toBeCloseTo(160, 9);
  },
);

// 180 / 120 = 1.5
test("a grade of the cream", async () => {
  expect(
    value(await one("180 g milk chocolate and 120 g 35 % cream, what is that good for"), "ratio"),
  ).toBeCloseTo(1.5, 9);
});
