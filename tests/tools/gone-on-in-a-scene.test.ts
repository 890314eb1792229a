/** Scenes of several turns: what is in a jar, the other bowl, one shell of many, colors shared anew, a filling given up. */
import { describe, expect, it } from "vitest";
import { figureOf, onlyOf, withFigures } from "../support/ask.ts";

const near = (value: number) => expect.closeTo(value, 4);
const between = (low: number, high: number) => ({ low: near(low), high: near(high) });

// 10 to 20 %: 30 g do for 150 to 300 g
describe("what is in the jar", () => {
  it.each([
    "nah theres just 30 g in the jar, how much buttercream does that flavour",
    "theres only 30 g left, how much buttercream does that flavor",
    "i only have 30 g, how much buttercream is that good for",
    "the jar only has 30 g, how much buttercream can i flavor with it",
    "30 g in the tub, how much buttercream",
    "no there are 30 g of it, what does that flavor",
  ])("%s", async (said) => {
    expect(await figureOf("base", "hazelnut paste, 240 g buttercream, how much", said)).toMatchObject(
      between(150, 300),
    );
  });

  // so much may be the bowl itself
  it("200 g in the tub", async () => {
    const { status } = await onlyOf(
      "120 g buttercream, how much raspberry flavor",
      "there's only 200 g in the tub, how much buttercream is that",
    );
    expect(status).toBe("asking");
  });
});

// ganache takes 3 to 4 %: of 300 g 9 to 12 g
describe("the bowl, behind how far a bottle goes", () => {
  it.each([
    "ok going w the ganache, its 300 g. so how much lavender",
    "ganache instead, 300 g of it, how much lavender",
    "ganache then, and 300 g of it, so how many grams of lavender",
  ])("%s", async (said) => {
    const first = "11 g lavender flavor, how much buttercream will that do";
    expect(await figureOf("flavor", first, said)).toMatchObject(between(9, 12));
  });

  // 3 to 5 %: 8 g do for 160 to 267 g, 15 g for 300 to 500 g
  it.each([
    ["i found 8 g more, how much lavender is that", 160, 800 / 3],
    ["make it 15 g", 300, 500],
  ])("%s", async (said, low, high) => {
    const first = "11 g lavender flavor, how much buttercream will that do";
    expect(await figureOf("base", first, said)).toMatchObject(between(low, high));
  });
});

// 3 to 4 % of 180 g
describe("the other bowl gets the same", () => {
  it.each([
    "lovely. the other bowl is 180 g dark ganache and gets the same flavour, how much for that one?",
    "and the other one's 180 g dark ganache and wants the same flavouring, how much in that?",
    "the other bowl is 180 g dark ganache and it takes hazelnut flavor, how much",
  ])("%s", async (said) => {
    const { tool, range } = await withFigures("410 g buttercream, hazelnut flavor, how much", said);
    expect([tool, range("flavor")]).toMatchObject(["dose", between(5.4, 7.2)]);
  });

  it("makings, where they are asked for", async () => {
    const { tool } = await onlyOf("the other bowl is 180 g dark ganache, how much chocolate is in it");
    expect(tool).toBe("ganache");
  });
});

// the bottle says 0.3 %: 0.6 g in 200 g; lemon oil by the table 0.2 to 0.5 %
describe("the same oil", () => {
  it.each([
    "remember that my spearmint oil says 0.3 percent on the label",
    "please remember my spearmint oil says 0.3 percent on the label",
    "my spearmint oil says 0.3 % on the label, remember that",
  ])("%s", async (said) => {
    const { figures } = await onlyOf(said, "350 g buttercream, how much spearmint oil");
    expect(figures).toMatchObject([{ value: near(1.05) }]);
  });

  // 200 g of dark chocolate take 160 g of cream, however dark it is
  it("cream says 35 % on the pot", async () => {
    const said = "cream says 35 % on the pot, 200 g dark chocolate, how much cream";
    expect(await figureOf("cream", said)).toMatchObject({ value: near(160) });
  });

  it.each(["And the same oil for 200 grams of ganache?", "and the oil for 200 g ganache"])(
    "%s",
    async (said) => {
      const { figures, rule } = await onlyOf(
        "remember that my spearmint oil says 0.3 percent on the label",
        "350 g buttercream, how much of the spearmint oil?",
        said,
      );
      expect(figures).toMatchObject([{ name: "spearmint oil", value: near(0.6) }]);
      expect(rule?.basis).toBe("your bench");
    },
  );

  it("another than the flavor before", async () => {
    const { figures } = await onlyOf("350 g buttercream, how much lemon flavor", "and oil for 200 g ganache");
    expect(figures).toMatchObject([{ name: "oil", ...between(0.4, 1) }]);
  });
});

// 6 g of gel are 1.5 % of 400 g and 1 % of 600 g: 140 to 340 g on top of 260 g
describe("plain batter to add", () => {
  it.each(["how much batter do i add then", "what weight of batter do i add", "how much more batter"])(
    "%s",
    async (said) => {
      expect(await figureOf("add base", "260 g batter, 6 g gel is already in", said)).toMatchObject(
        between(140, 340),
      );
    },
  );

  // 66 shells of 0.53 * 3.8² / 0.96 g
  it("how much batter for 30 macarons", async () => {
    const { tool, value } = await withFigures(
      "260 g batter, 6 g gel is already in",
      "how much batter for 30 macarons",
    );
    expect([tool, value("batter")]).toEqual(["shells", near(526.1575)]);
  });
});

// 0.53 * 3.4² = 6.1268 g of batter, 0.87 of it baked
describe("one of those shells", () => {
  const bowl = "piping at 34mm. 780g batter gives how many shells?";
  it.each([
    "what does one of those shells weigh once it's baked",
    "how heavy is a single shell after baking",
    "baked weight of one shell",
    "and per shell after baking?",
  ])("%s", async (said) => {
    expect(await figureOf("baked", bowl, said)).toMatchObject({ value: near(5.330316) });
  });

  it("before it is baked", async () => {
    expect(await figureOf("batter", bowl, "what does a shell weigh")).toMatchObject({ value: near(6.1268) });
  });

  it("all of them", async () => {
    expect(await figureOf("baked", bowl, "what do they weigh once baked")).toMatchObject({
      value: near(678.6),
    });
  });

  // floor(780 * 0.96 / (0.53 * 4.5²)) = 69
  it("another size, of the same batter", async () => {
    const { value } = await withFigures(
      bowl,
      "what does one of those weigh baked",
      "and if i go 45mm instead, same batter, how many shells",
    );
    expect(value("shells")).toBe(69);
  });
});

describe("colors of one bowl", () => {
  it.each(["same amount each", "the same each", "same weight each", "equal amounts"])("%s", async (said) => {
    const { figures } = await onlyOf(`620 g batter into pink, yellow and white, ${said}`);
    expect(figures?.map(({ value }) => value)).toEqual([near(620 / 3), near(620 / 3), near(620 / 3)]);
  });

  it.each([
    "no i want half of it white and the other two a quarter each",
    "make it half white and a quarter each of the others",
    "half of it white and the rest shared",
  ])("%s", async (said) => {
    const first = "620 g batter into pink, yellow and white, same amount each";
    const { value } = await withFigures(first, said);
    expect([value("pink"), value("yellow"), value("white")]).toEqual([near(155), near(155), near(310)]);
    // 0.5 to 1.5 % of 155 g
    expect(await figureOf("gel color", first, said, "gel colour for the pink bit then")).toMatchObject(
      between(0.775, 2.325),
    );
  });

  it("half white, the rest pink", async () => {
    const { value } = await withFigures(
      "split 620 g into pink, yellow and white",
      "half white, the rest pink",
    );
    expect([value("white"), value("pink")]).toEqual([near(310), near(310)]);
  });
});

// floor(200 * 0.92 / (0.42 * 4.2²)) = 24
describe("a filling that was given up", () => {
  it.each([
    "change of plan. no curd just 200 g buttercream, still 42mm. how many can i fill",
    "no curd, only 200 g of buttercream. how many macarons",
    "forget the curd, just 200 g buttercream. how many can i fill",
  ])("%s", async (said) => {
    const { tool, value } = await withFigures(
      "45 macs at 42 mm, how much filling",
      "its a buttercream ring w lemon curd in the middle, how much of each",
      said,
    );
    expect([tool, value("macarons")]).toEqual(["fill", 24]);
  });

  // 30 * 0.42 * 3.8² / 0.92: a ganache in the place of what was said, and not left out
  it("no ganache, 30 how much", async () => {
    const { value } = await withFigures("filling for 45 macs", "no ganache, 30 how much");
    expect(value("ganache") ?? value("filling")).toEqual(near(197.765217));
  });
});

describe("scaled lists", () => {
  // 4 * 33 g of whites, 1.3 times that
  it.each([
    "just the icing sugar if id used four",
    "just the icing sugar if i'd only used four",
    "and the icing sugar with four",
    "and the icing sugar for four",
  ])("%s", async (said) => {
    expect(await figureOf("powdered sugar", "six whites, how much of everything", said)).toMatchObject({
      value: near(171.6),
    });
  });

  it("and with 90 g icing sugar", async () => {
    const turns = ["six whites, how much of everything", "and with 90 g icing sugar"];
    expect(await figureOf("powdered sugar", ...turns)).toMatchObject({ value: near(90) });
  });

  it.each([
    "times 2.5 this curd for me: 40 g yolks 75 g sugar 60 g passion fruit juice",
    "2.5 times this curd: 40 g yolks, 75 g sugar, 60 g passion fruit juice",
  ])("%s", async (said) => {
    expect(await figureOf("sugar", said)).toMatchObject({ value: near(187.5) });
    expect(await figureOf("sugar", said, "sorry 1.5 not 2.5")).toMatchObject({ value: near(112.5) });
  });

  // 110 shells of 0.53 * 3.8² / 0.96 g, 100 / 460 of it whites
  it.each([
    "ingredient list for fifty macarons, the shells only",
    "ingredient list for the shells of 50 macarons",
    "list of ingredients for 50 macarons, only the shells",
  ])("%s", async (said) => {
    const { tool, value } = await withFigures(said);
    expect([tool, value("whites")]).toEqual(["scale", near(190.636775)]);
    expect(await figureOf("almond flour", said, "30 instead")).toMatchObject({ value: near(148.696685) });
  });

  it("for a label", async () => {
    const { tool } = await onlyOf("ingredient list for 50 macarons for a label, contains milk");
    expect(tool).toBe("label");
  });
});
