/** Dose questions as they are typed: which weights are the base, which row is meant, what is asked back. */
import { describe, expect, test } from "vitest";
import { baker } from "../support/ask.ts";
import { range, value } from "../support/world.ts";

const one = (line: string) => baker().one(line);

describe("the row that a word means, on 200 g", () => {
  test.each<[line: string, low: number, high: number]>([
    // bare tastes are concentrated flavors: 3-5 % in buttercream, 3-4 % in ganache, common practice
    ["how much pistachio for 200 g buttercream", 6, 10],
    ["200 g ganache, how much coffee flavor", 6, 8],
    // the rest from memory: 1-2 %
    ["how much vanilla extract for 200 g buttercream", 2, 4],
    ["how much vanilla bean paste in 200 g ganache", 2, 4],
    // 0.2-0.5 %
    ["how much lemon oil for 200 g ganache", 0.4, 1],
    // 3-8 %
    ["how much freeze dried raspberry powder in 200 g buttercream", 6, 16],
    // 5-15 %, 5-10 %
    ["how much raspberry puree for 200 g buttercream", 10, 30],
    ["how much strawberry jam for 200 g ganache", 10, 20],
    // 10-20 %
    ["how much pistachio paste for 200 g buttercream", 20, 40],
    // 3-6 %
    ["how much cocoa powder for 200 g buttercream", 6, 12],
    // 1-2 %
    ["how much espresso powder in 200 g buttercream", 2, 4],
    // 1.5-3 %
    ["how much matcha for 200 g buttercream", 3, 6],
    // 0.5-1.5 %
    ["how much lemon zest for 200 g buttercream", 1, 3],
    // 0.1-0.3 %
    ["how much citric acid for 200 g ganache", 0.2, 0.6],
    // 0.2-0.5 %
    ["how much salt in 200 g caramel buttercream", 0.4, 1],
    // 2-5 %
    ["how much rum for 200 g ganache", 4, 10],
    // of batter: 0.5-1.5 %, 0.3-1 %
    ["gel color for 200 g batter", 1, 3],
    ["powder color for 200 g batter", 0.6, 2],
  ])("%s", async (line, low, high) => {
    const said = await one(line);
    expect(said).toMatchObject({ tool: "dose", status: "answered" });
    const [from, to] = range(said, said.figures?.[0]?.name ?? "");
    expect(from).toBeCloseTo(low, 9);
    expect(to).toBeCloseTo(high, 9);
  });

  // answers.md: "flavor" for a concentrated one, else its own name
  test.each([
    ["how much pistachio for 200 g buttercream", "flavor"],
    ["how much vanilla extract for 200 g buttercream", "vanilla extract"],
    ["how much salt in 200 g caramel buttercream", "salt"],
    ["how much cocoa powder for 200 g buttercream", "cocoa powder"],
  ])("%s names its figure %s", async (line, name) => {
    expect((await one(line)).figures?.map((each) => each.name)).toEqual([name]);
  });

  test("a bare taste is said to be taken for a concentrated flavor; a named one isn't", async () => {
    expect((await one("how much pistachio for 200 g buttercream")).assumed?.join()).toMatch(
      /concentrated flavor/,
    );
    expect((await one("how much vanilla extract for 200 g buttercream")).assumed ?? []).toEqual([]);
  });
});

describe("what is the base", () => {
  // 200 + 100 + 40 = 340; 3-4 % common practice: 10.2 to 13.6
  test("the parts of a ganache are added up", async () => {
    const said = await one("200 g white chocolate, 100 g cream and 40 g butter, how much flavor");
    expect(range(said, "flavor")[0]).toBeCloseTo(10.2, 9);
    expect(range(said, "flavor")[1]).toBeCloseTo(13.6, 9);
    expect(said.working?.join(" ")).toContain("200 + cream 100 + butter 40 = 340");
  });

  // NIST SP 811: 8 oz = 226.796185 g; x 3 % = 6.80388555, x 5 % = 11.33980925
  test("ounces are weighed as ounces", async () => {
    const said = await one("how much flavor for 8 oz buttercream");
    expect(range(said, "flavor")[0]).toBeCloseTo(6.80388555, 8);
    expect(range(said, "flavor")[1]).toBeCloseTo(11.33980925, 8);
  });

  // 6 / 5 % = 120, 6 / 3 % = 200
  test("backward: the base that a weight of flavor serves", async () => {
    expect(range(await one("6 g lemon flavor, how much buttercream does that do"), "base")).toEqual([
      120, 200,
    ]);
  });
});

describe("spoons, drops and cups", () => {
  // NIST Handbook 44: 2 x 4.92892159375 ml as grams = 9.8578431875; of 500 g 1.9715686375 %, in 1-2 %
  test("a teaspoon of a liquid flavor counts as 4.93 g, an estimate, vanilla extract's too", async () => {
    const said = await one("2 tsp vanilla extract in 500 g buttercream, is that enough");
    expect(value(said, "share", "%")).toBeCloseTo(1.9715686375, 9);
    expect(said.headline).toContain("within");
    expect(said.assumed?.join()).toMatch(/estimate/);
  });

  test.each([
    "2 cups of buttercream how much flavor",
    "3 drops of lemon oil in 200 g buttercream",
    "2 tsp matcha in 300 g buttercream, too much?",
  ])("%s: asked back for in grams", async (line) => {
    const said = await one(line);
    expect(said.status).toBe("asking");
    expect(said.question).toMatch(/gram|weigh/);
    expect(said.figures ?? []).toEqual([]);
  });

  // USDA SR28 WEIGHT 02047: a teaspoon of table salt is 6 g; 6 / 300 = 2 %, over 0.2-0.5 %
  test("a spoon of salt is weighed by its portion row", async () => {
    const said = await one("put 1 tsp salt into 300 g buttercream, too much?");
    expect(value(said, "share", "%")).toBeCloseTo(2, 9);
    expect(said.headline).toContain("over");
  });
});

describe("no guessing", () => {
  test("400 % is impossible", async () => {
    expect(await one("400 % flavor in 200 g buttercream")).toMatchObject({
      tool: "dose",
      status: "impossible",
    });
  });

  test("cocoa powder in ganache has no rule and no figure", async () => {
    const said = await one("how much cocoa powder for 200 g ganache");
    expect(said.status).toBe("declined");
    expect(said.figures ?? []).toEqual([]);
  });

  test("liquid flavor in shell batter gets a caution and no figure", async () => {
    const said = await one("how much vanilla extract in 400 g shell batter");
    expect(said).toMatchObject({ tool: "dose", status: "answered" });
    expect(said.figures ?? []).toEqual([]);
    expect(said.cautions?.length).toBeGreaterThan(0);
  });
});
