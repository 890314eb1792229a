/** What is said with the hands full: more of it went in, the other number, how many there are to be now, "on it". */
import { describe, expect, it } from "vitest";
import { figureOf, lastOf, onlyOf } from "../support/ask.ts";

const near = (value: number) => expect.closeTo(value, 4);
const between = (low: number, high: number) => ({ low: near(low), high: near(high) });

// 8 g and 4 g are 12 of 312
describe("more of the flavor went in", () => {
  const before = ["312 g of buttercream. how much raspberry flavor", "ive put 8 in so far, is that enough?"];
  it.each([
    "right, another 4 went in. now?",
    "another 4 in. now?",
    "another 4",
    "i put another 4 in",
    "ive just added another 4",
    "then 4 more went in. ok now?",
  ])("%s", async (said) => {
    expect(await figureOf("share", ...before, said)).toMatchObject({ value: near((100 * 12) / 312) });
  });

  it.each(["i made another 4 macarons", "another 3 in in mm"])("none of it: %s", async (said) => {
    expect((await onlyOf(...before, said)).tool).not.toBe("dose");
  });
});

// 18 g in 250 g: 60 g of plain mix were looked at first, 140 g make 390 g
describe("so much plain mix instead", () => {
  const before = [
    "18 g hazelnut flavoring in 250 g buttercream, too much?",
    "so how much plain buttercream do i add to save it",
    "only got 60 g more of it, would that do",
  ];
  it.each([
    "and if i add 140 instead of the 60",
    "if its 140 i add",
    "what about 140 instead",
    "or 140?",
    "make it 140 then",
    "i add another 80",
  ])("%s", async (said) => {
    expect(await figureOf("share", ...before, said)).toMatchObject({ value: near((100 * 18) / 390) });
  });

  // so little is of the flavor; a bowl that is weighed is another one
  it.each([
    ["what about 12 g", (100 * 12) / 310],
    ["and if it had been 12 g i put in", (100 * 12) / 250],
    ["and 9 g in 250", (100 * 9) / 250],
  ])("no plain mix: %s", async (said, share) => {
    expect(await figureOf("share", ...before, said)).toMatchObject({ value: near(share) });
  });

  it("a bowl before anything was added", async () => {
    expect(await figureOf("share", before[0] ?? "", "what about 300")).toMatchObject({ value: near(6) });
  });
});

// powder color is 0.3 to 1 % of the batter
describe("powder in batter is a color", () => {
  it.each([
    [["540 g batter, split it in 3"], "then powder for one of those", 180],
    [["540 g batter, split it in 3"], "powder for each", 180],
    [["540 g batter"], "powder for half of it", 270],
    [["540 g batter"], "and powder for it", 540],
  ])("%s, %s", async (turns, said, grams) => {
    expect(await figureOf("powder color", ...turns, said)).toMatchObject(
      between(0.003 * grams, 0.01 * grams),
    );
  });

  it.each([
    ["540 g batter, split it in 3", "cocoa powder for one of those", "declined"],
    ["540 g batter, split it in 3", "raspberry powder for one of those", "declined"],
    ["380 g buttercream, split it in two", "powder for one of those", "asking"],
  ])("%s, %s", async (first, said, status) => {
    expect((await onlyOf(first, said)).status).toBe(status);
  });
});

describe("a bowl called by its weight", () => {
  it.each([
    ["how much rose in the 380", 380],
    ["how much rose for the whole 380?", 380],
    ["how much rose in the other 200", 200],
  ])("%s", async (said, grams) => {
    const turns = ["380 g buttercream how much violet", "and for half of that"];
    expect(await figureOf("flavor", ...turns, said)).toMatchObject(between(0.03 * grams, 0.05 * grams));
  });

  it.each([
    ["batter for 40 macarons", "how much rose for the 40"],
    ["20 g lemon flavor", "how much rose for the 12"],
  ])("no bowl: %s, %s", async (first, said) => {
    const { status } = await onlyOf(first, "how much lemon for 264 g buttercream", said);
    expect(status).toBe("asking");
  });
});

describe("on it, behind a timer", () => {
  const both = "nice. timer 40 min for the rest, and whats 145 c in f";
  it.each([
    ["10 more on it", 50],
    ["and 10 more on it please", 50],
    ["give it 10 more", 50],
    ["5 off it", 35],
  ])("%s", async (said, left) => {
    expect(await figureOf("left", "filling for 47 macarons", both, said)).toMatchObject({
      value: near(left),
    });
  });

  it("with the order before and nothing between", async () => {
    const turns = ["filling for 30 macarons", "timer 40 min for the rest", "10 more on it"];
    expect(await figureOf("left", ...turns)).toMatchObject({ value: near(50) });
  });

  it("of two the one that was set last", async () => {
    const two = "timer 40 min for the rest, and a 15 min one for the bake, and whats 145 c in f";
    expect(await figureOf("left", two, "10 more on it")).toMatchObject({ value: near(25) });
  });

  it.each([
    [[both], "and 10 more", "convert"],
    [["batter for 30 macarons", "timer 40 min for the rest"], "6 more macarons on that order", "shells"],
    [["filling for 30 macarons", both], "10 more macarons on it", "fill"],
  ])("not of it: %s, %s", async (turns, said, tool) => {
    expect((await onlyOf(...turns, said)).tool).toBe(tool);
  });
});

// 40 macarons are 88 shells of 0.53 × 4.2² g, over 0.96; filling 40 × 0.42 × 4.2² over 0.92
describe("how many there are to be now, and what is asked of them", () => {
  const first = "28 macarons at 4,2 cm how much batter";
  const batter = (88 * 0.53 * 4.2 ** 2) / 0.96;
  const filling = (40 * 0.42 * 4.2 ** 2) / 0.92;
  it.each([
    "customer rang, she wants 40 not 28. batter?",
    "they want 40 now, how much batter",
    "her order is 40, not 28, so what batter",
    "its for 40 not 28, batter then",
    "the bride now needs 40 macarons instead of 28. batter?",
  ])("%s", async (said) => {
    expect(await figureOf("batter", first, "and the filling for them", said)).toMatchObject({
      value: near(batter),
    });
  });

  it.each(["she said 40, not 28, how much filling", "so it's 40. filling?"])("%s", async (said) => {
    expect(await figureOf("filling", first, said)).toMatchObject({ value: near(filling) });
  });

  it.each(["filling for 40 too", "and filling for 40", "filling for 40 macarons as well"])(
    "%s",
    async (said) => {
      const turns = [first, "she wants 40 not 28. batter?"];
      expect(await figureOf("filling", ...turns, said)).toMatchObject({ value: near(filling) });
    },
  );

  // of other macarons nobody has said the size: 38 mm
  it("another number", async () => {
    expect(await figureOf("filling", first, "filling for 50 as well")).toMatchObject({
      value: near((50 * 0.42 * 3.8 ** 2) / 0.92),
    });
  });

  // 28 and 40 are 68: 150 shells
  it("so many more", async () => {
    expect(await figureOf("shells", first, "she wants 40 more, batter?")).toMatchObject({ value: 150 });
  });

  it.each(["she wants 40 in pink, batter?", "the oven is 150. batter?"])("no order: %s", async (said) => {
    expect((await onlyOf(first, said)).status).toBe("asking");
  });
});

describe("the heat before, on the other scale too", () => {
  const turns = [
    "recipe wants 160 C in a normal oven, i've a fan oven, what do i set",
    "what's that in fahrenheit",
  ];
  it.each([
    ["and the 160?", 320],
    ["what about the original 160 one?", 320],
    ["and 180?", 356],
  ])("%s", async (said, heat) => {
    const [answer, ...others] = await lastOf(...turns, said);
    expect(others).toEqual([]);
    expect(answer?.figures).toContainEqual(expect.objectContaining({ value: near(heat), unit: "°F" }));
  });

  it.each([
    ["batter for 160", "shells"],
    ["and the filling for 30?", "fill"],
  ])("%s", async (said, tool) => {
    expect((await onlyOf(...turns, said)).tool).toBe(tool);
  });
});

describe("what remains on the shelf", () => {
  const turns = ["stock up: 2 kg icing sugar", "took 650g icing sugar out for today"];
  it.each([
    "icing sugar remaining?",
    "the icing sugar remaining now?",
    "icing sugar left?",
    "icing sugar left over?",
  ])("%s", async (said) => {
    expect(await figureOf("powdered sugar", ...turns, said)).toMatchObject({ value: near(1350) });
  });

  it("counted, and no question", async () => {
    expect(await figureOf("powdered sugar", ...turns, "900 g icing sugar remaining")).toMatchObject({
      value: near(900),
    });
  });
});

// 2.5 : 1 of 370 g, and 100 : 60 : 25 beside it
describe("white ganache, and the one with butter beside it", () => {
  it.each([
    "370 g white choc ganache in total to pipe, and gimme the one with butter too",
    "370 g white choc ganache to pipe and also the butter one too",
    "370 g white choc ganache to pipe, both with and without butter",
  ])("%s", async (said) => {
    const { figures } = await onlyOf(said);
    const value = (name: string) => figures?.find((each) => each.name === name)?.value;
    expect(value("chocolate")).toBeCloseTo((370 * 2.5) / 3.5, 4);
    expect(value("chocolate, with butter")).toBeCloseTo(200, 4);
    expect(value("butter, with butter")).toBeCloseTo(50, 4);
  });

  it("the one alone", async () => {
    const said = "370 g white choc ganache to pipe, the one with butter please";
    expect(await figureOf("chocolate", said)).toMatchObject({ value: near(200) });
  });
});

// 60 macarons are 132 shells: 1052.315 g of batter, 100 of 460 of it whites
describe("what to weigh", () => {
  it.each([
    "quantities to weigh for sixty macarons shells",
    "weights i need to weigh out for 60 macarons' shells",
    "amounts to measure out for 60 macarons",
  ])("%s", async (said) => {
    const grams = (132 * 0.53 * 3.8 ** 2) / 0.96;
    expect(await figureOf("almond flour", said)).toMatchObject({ value: near((grams * 130) / 460) });
  });

  it.each(["batter for sixty macarons shells", "how many trays for sixty macarons shells"])(
    "%s",
    async (said) => {
      expect((await onlyOf(said)).tool).toBe("shells");
    },
  );
});
