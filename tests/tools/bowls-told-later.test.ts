/** A bowl that is told later, changed or parted, and what goes into it: several turns each, worked by hand. */
import { describe, expect, it } from "vitest";
import type { Answer } from "../../src/tools/contract/index.ts";
import { lastOf } from "../support/ask.ts";

const figureOf = (answer: Answer | undefined, name: string) =>
  answer?.figures?.find((each) => each.name === name);

/** Low and high of the figure by that name, in g. */
const rangeOf = (answer: Answer | undefined, name: string) => {
  const { low, high } = figureOf(answer, name) ?? {};
  return [low, high].map((each) => (each === undefined ? undefined : Number(each.toFixed(3))));
};

// the table: spirit in ganache or buttercream 2-5 %, salt 0.2-0.5 %, flavor 3-5 % in buttercream and 3-4 % in ganache
describe("one end of a range", () => {
  it.each([
    ["330g dark ganache and a bottle of rum, whats the most i get away with", "rum", 16.5, [6.6, 16.5]],
    ["rum in 300 g ganache, most i can get away with?", "rum", 15, [6, 15]],
    ["whats the strongest i can go with rum in 250 g ganache", "rum", 12.5, [5, 12.5]],
    ["whats the least salt in 300 g caramel buttercream", "salt", 0.6, [0.6, 1.5]],
    ["how little lemon flavor can i get away with in 200 g buttercream", "flavor", 6, [6, 10]],
  ] as const)("%s", async (said, name, value, range) => {
    const [answer] = await lastOf(said);
    expect(figureOf(answer, name)?.value).toBeCloseTo(value, 6);
    expect(rangeOf(answer, name)).toEqual(range);
  });
});

describe("a part, whatever it stands in", () => {
  // 600 / 4 = 150 g, of that 1-2 % extract or 2-5 % rum
  it.each([
    ["divide 600 g buttercream in 4 tubs, then vanilla extract for one tub?"],
    ["split 600 g buttercream into 4 pots, vanilla extract per pot"],
    ["600 g buttercream into 4 dishes, how much vanilla extract for a single dish"],
    ["600 g buttercream in 4 bags, how much vanilla extract in one bag"],
  ])("%s", async (said) => {
    expect(rangeOf((await lastOf(said)).at(-1), "vanilla extract")).toEqual([1.5, 3]);
  });

  it.each(["jar", "portion", "container", "dish"])("asked a turn later: %s", async (vessel) => {
    const [answer] = await lastOf("600 g buttercream into 4 bowls", `rum for one ${vessel}`);
    expect(rangeOf(answer, "rum")).toEqual([3, 7.5]);
  });
});

describe("a part of the mix left out", () => {
  const mix =
    "my ganache is 180 g milk chocolate, 90 g cream and 30 g butter. how many grams of hazelnut paste";

  // without the 30 g butter 270 g, of that 10-20 %
  it.each(["and if I leave the butter out", "what if i left out the butter", "i skipped the butter"])(
    "%s",
    async (said) => {
      expect(rangeOf((await lastOf(mix, said))[0], "hazelnut paste")).toEqual([27, 54]);
    },
  );

  it("stays so for what is asked next, until it is put back", async () => {
    const turns = [mix, "and if I leave the butter out", "what about rum in there as well?"];
    expect(rangeOf((await lastOf(...turns))[0], "rum")).toEqual([5.4, 13.5]);
    expect(rangeOf((await lastOf(...turns, "no the butter went in after all"))[0], "rum")).toEqual([6, 15]);
  });
});

describe("more of the flavor, or of the mix", () => {
  // 9 g at 3-5 % are enough for 180 to 300 g
  it.each(["found a second bottle so its 9 in all", "got one more bottle, makes it 9 g now"])(
    "%s",
    async (said) => {
      const [answer] = await lastOf(
        "4.5 g raspberry concentrate, how much buttercream will it flavour",
        said,
      );
      expect(rangeOf(answer, "base")).toEqual([180, 300]);
    },
  );

  it("plain mix that was found is no bowl of its own: 14 / 450 = 3.11 %", async () => {
    const [answer] = await lastOf("14 g lemon flavor in 350 g buttercream", "found another 100 g plain");
    expect(figureOf(answer, "share")?.value).toBeCloseTo(3.1111, 3);
  });
});

// 350 g at 3-5 %
it.each([
  "and what would the right amount be in grams",
  "what was the right amount",
  "and how much would have been right",
])("the right dose for a bowl with something in it: %s", async (said) => {
  const [answer] = await lastOf("i put 2 tsp lemon flavor in 350 g smbc, is it enough", said);
  expect(rangeOf(answer, "flavor")).toEqual([10.5, 17.5]);
  expect(answer?.headline).toContain(" g ");
});

it("over her own percentage is not over the table's", async () => {
  const turns = ["violet flavor for 310 g smbc", "go 2.5% then", "12 g went in. too much?"];
  const [answer] = await lastOf(...turns);
  // 12 / 310 = 3.87 %
  expect(answer?.headline).toContain("over the 2.5 % you asked for, within the 3-5 % of the table");
});

it("goes on with the bowl that was told later", async () => {
  const turns = ["how much matcha should i be using", "oh sorry, its 275 g of dark chocolate ganache"];
  // tea powder in ganache 1.5-3 %, coffee powder 1-2 %
  expect(rangeOf((await lastOf(...turns))[0], "matcha powder")).toEqual([4.125, 8.25]);
  const espresso = [...turns, "espresso powder instead of the matcha"];
  expect(rangeOf((await lastOf(...espresso))[0], "espresso powder")).toEqual([2.75, 5.5]);
  const doubled = await lastOf(...espresso, "ok and if i double the ganache");
  expect(rangeOf(doubled[0], "espresso powder")).toEqual([5.5, 11]);
});

describe("all flavors of one turn", () => {
  const three = "lemon flavor, salt and vanilla extract for 250 g buttercream";

  it.each(["and for 300", "the three of them for 300 g", "all of them for 300 g", "make it 300"])(
    "%s",
    async (said) => {
      const answers = await lastOf(three, said);
      expect(answers.map((each) => rangeOf(each, each.figures?.[0]?.name ?? ""))).toEqual([
        [9, 15],
        [0.6, 1.5],
        [3, 6],
      ]);
    },
  );

  it("but the one that is named alone", async () => {
    const answers = await lastOf(three, "only salt for 300 g");
    expect(answers.map((each) => rangeOf(each, "salt"))).toEqual([[0.6, 1.5]]);
  });

  it("and two bowls of one turn stay two", async () => {
    const answers = await lastOf(
      "lemon flavor for 200 g buttercream and rum for 300 g ganache",
      "and for 150",
    );
    expect(answers).toHaveLength(1);
  });

  it("a taste beside one that has a form is a flavor too", async () => {
    const answers = await lastOf("coffee and salt for 200 g buttercream");
    expect(answers.map((each) => each.figures?.[0]?.name)).toEqual(["flavor", "salt"]);
  });
});

it.each([
  "gonna flavor 200 g ganache, how much",
  "lets flavor 200 g ganache",
  "wanna flavor 200 g ganache, how much",
])("what is done is no taste: %s", async (said) => {
  const [answer] = await lastOf(said);
  expect(answer?.headline).toBe("6 to 8 g flavor");
});

describe("ganache", () => {
  // dark 1.25 : 1, milk 2 : 1, white 2.5 : 1 for piping
  it.each([
    ["150 g dark and 150 g milk ganache", [83.333, 100]],
    ["half a kilo each of dark and milk ganache", [277.778, 333.333]],
    ["100 g dark, 100 g milk and 100 g white ganache", [55.556, 66.667, 71.429]],
  ] as const)("several by their whole weight: %s", async (said, chocolates) => {
    const answers = await lastOf(said);
    expect(answers.map((each) => Number(figureOf(each, "chocolate")?.value?.toFixed(3)))).toEqual(chocolates);
  });

  it("but two kinds in one have no ratio", async () => {
    const [answer] = await lastOf("150 g dark and 150 g milk in one ganache");
    expect(answer?.status).toBe("declined");
  });

  // 160 × 2
  it.each(["ah no more dark. with milk chocolate?", "no dark left, milk instead"])("%s", async (said) => {
    const [answer] = await lastOf("160 g cream and dark chocolate for piping, how much chocolate", said);
    expect(figureOf(answer, "chocolate")?.value).toBeCloseTo(320, 6);
  });

  it.each([
    ["mine came out 240 g milk chocolate to 120 g cream, what would you use that for", "piping"],
    ["had 150 g cream and 300 g dark chocolate, whats that going to be right for", "firm"],
  ])("a ratio and its use: %s", async (said, use) => {
    const [answer] = await lastOf(said);
    expect(figureOf(answer, "ratio")?.value).toBeCloseTo(2, 6);
    expect(answer?.headline).toContain(use);
  });

  // white set with butter 5 : 3 : 1.25, so 300 g white take 180 and 75
  it("white set with butter, the kind said twice", async () => {
    const said = "white choc ganache set with butter for filling, 300 g white. cream n butter?";
    const [answer] = await lastOf(said);
    expect(figureOf(answer, "cream, with butter")?.value).toBeCloseTo(180, 6);
    expect(figureOf(answer, "butter, with butter")?.value).toBeCloseTo(75, 6);
  });

  it.each(["and 40 g unsalted butter on top of that", "40 g butter melted in too"])(
    "%s: the mix with it",
    async (said) => {
      const [answer] = await lastOf("water activity of 300 g dark chocolate and 200 g cream", said);
      // 200 g cream of 57.71 % water, 300 g dark of about 1 %, 40 g butter of about 16-18 %: near 125 of 540 g
      expect(figureOf(answer, "water")?.value).toBeGreaterThan(22);
      expect(figureOf(answer, "water")?.value).toBeLessThan(25);
      expect(figureOf(answer, "aw")?.value).toBeCloseTo(0.941, 2);
    },
  );
});
