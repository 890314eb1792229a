/**
 * Recipes and batches put by, the next share and the next thing of a sum, and the same once more in ounces. Worked by
 * hand: almond flour 95 g a cup, powdered sugar 120 g unsifted, granulated 200 g, honey 339 g, butter 227 g (data/tables);
 * filling 0.42 d² g at d in cm over 0.92 (6.592174 g at 38 mm), a ring of 60 percent; an ounce is 28.349523125 g (NIST);
 * 7 days in the fridge, the day of making counted (data/rules/keeping).
 */
import { describe, expect, it, test } from "vitest";
import { baker, lastOf, talk } from "../support/ask.ts";
import { type Case, expectFigures } from "../support/figures.ts";

const filled = "filling for 60 macarons|with a jam middle and a ganache ring, how much of each";
// 60 x 6.592174 = 395.530435 g; 237.318261 and 158.212174 of it, over 28.349523
const inOz = { ring: 8.371155, center: 5.58077, total: 13.951926 };
const cups = "1.5 cups almond flour in grams";
const smbc = "recipe to save, name mint smbc: whites 120g, sugar 180g, butter 300g, salt 6g";
const frozen = "do the filled ones freeze ok, and for how long";

const cases: Case[] = [
  // another share of the same whole
  ["whats 15% of 640|and 20%", "convert", { result: 128 }],
  ["whats 15% of 640|20% then?", "convert", { result: 128 }],
  ["whats 15% of 640|make it 25 %", "convert", { result: 160 }],
  ["whats 15% of 640|and a third", "convert", { result: 213.333333 }],
  ["whats 15% of 640|what about 12.5%", "convert", { result: 80 }],
  ["whats 15% of 640 g|and if it was 20 percent", "convert", { result: 128 }],
  ["3/4 of 260|and 2/3", "convert", { result: 173.333333 }],
  // the same measure of another thing
  [`${cups}|and of icing sugar`, "convert", { result: 180 }],
  [`${cups}|n of icing suger`, "convert", { result: 180 }],
  [`${cups}|& of icing sugar`, "convert", { result: 180 }],
  [`${cups}|as much of icing sugar`, "convert", { result: 180 }],
  [`${cups}|of caster sugar?`, "convert", { result: 300 }],
  // all of it in ounces, and in grams again for what is asked next
  ...["same but in oz", "whats that in oz", "how many ounces is that", "again in ounces", "oz please"].map(
    (say): Case => [`${filled}|${say}`, "fill", inOz],
  ),
  [`${filled}|same but in oz|and for 40`, "fill", { ring: 158.212174, center: 105.474783 }],
  [`${filled}|in pounds`, "convert", { ring: 0.523197, center: 0.348798 }],
  ["buttercream for 40 macarons amounts|same but in oz", "convert", { whites: 1.860257, total: 9.301284 }],
  // kept in the fridge after all
  ...[
    "and not frozen, how many days in the fridge",
    "and unfrozen?",
    "and if i don't freeze them",
    "if they havent been frozen how many days",
    "and those i wont freeze, how many days",
    "and without the freezer",
  ].map((say): Case => [`${frozen}|${say}`, "keep", { "in the fridge": 7 }]),
  // 16 less 4
  ...["take 4 off", "take 4 off it", "knock 4 off", "4 less", "cut 4 off", "4 off", "lose 4 minutes"].map(
    (say): Case => [`timer 16 min|${say}`, "timer", { left: 12 }],
  ),
  // a line of the recipe that was just saved
  ...["change the butter to 200 g", "make the butter 200", "no, the butter is 200 g"].map(
    (say): Case => [`${smbc}|${say}`, "formula", { whites: 120, butter: 200, total: 506 }],
  ),
];

describe("what is asked of the answer before", () => {
  test.each(cases)("%s", (turns, tool, figures) => expectFigures(turns, tool, figures));

  it("answers for each of two things", async () => {
    const answers = await lastOf(cups, "and of honey n of butter");
    // 1.5 x 339, 1.5 x 227
    expect(answers.map((each) => each.figures?.[0]?.value)).toEqual([508.5, 340.5]);
  });

  it("asks of the freezer where freezing is asked about", async () => {
    for (const say of ["can they not be frozen", "shouldn't they be frozen", "why don't they freeze well"])
      expect((await lastOf("can i freeze filled macarons", say))[0]?.headline, say).toContain("−18 °C");
  });

  it("counts no freezing that wasn't", async () => {
    // day 1 on Monday 9 March, day 5 on Friday
    const [said] = await lastOf("filled on monday and not frozen, still ok on friday");
    expect(said?.headline).not.toContain("Frozen");
  });

  it("sets as many timers as are said", async () => {
    for (const say of ["set two timers 10 and 12 min", "set two timers 10 12 min", "2 timers: 10, 12"])
      expect(
        (await lastOf(say)).map((each) => each.figures?.[0]?.value),
        say,
      ).toEqual([10, 12]);
  });
});

describe("what is put by", () => {
  const lines = "100g whites, 125g AF, 120g PS, 95g granulated";

  test.each([
    `can u save a recipe for me pls, cloud shells: ${lines}`,
    `save this recipe for me, cloud shells: ${lines}`,
    `save a recipe for us thanks, its cloud shells: ${lines}`,
    `save a recipe for me if you can, cloud shells: ${lines}`,
    `remember a recipe for later, cloud shells: ${lines}`,
    `can you store a recipe quickly, cloud shells: ${lines}`,
    `save recipe for my sister, cloud shells: ${lines}`,
    `save a recipe for me - cloud shells - ${lines}`,
  ])("%s", async (say) => {
    expect((await lastOf(say, "list my recipes"))[0]?.headline).toBe("1 recipe: cloud shells");
  });

  it("changes no recipe where so much is all there is", async () => {
    for (const say of [
      "mint smbc but only 200g butter, amts",
      "mint smbc, i only have 200 g butter",
      "but only 200 g butter, amounts",
    ]) {
      const { ask } = baker();
      await ask(smbc);
      await ask(say);
      const [shown] = await ask("show me mint smbc");
      expect(shown?.headline, say).toContain("butter 300 g");
    }
  });

  it("keeps the other lines of a recipe of which one is told", async () => {
    const [said] = await lastOf(smbc, "mint smbc now has only 200 g butter, save that");
    expect(said?.figures).toContainEqual({ name: "whites", value: 120, unit: "g" });
  });

  test.each([
    "yesterdays batch needs writing down: hazelnut, tops cracked, rushed the rest",
    "yesterday's batch wants noting, hazelnut, tops cracked",
    "yesterdays hazelnut batch still has to be logged: tops cracked",
    "yesterdays bake has to go in the book: hazelnut, tops cracked",
    "need to write down yesterdays batch: hazelnut, tops cracked",
    "i havent written yesterdays batch down yet: hazelnut, tops cracked",
    "for the book: hazelnut yesterday, tops cracked",
  ])("%s", async (say) => {
    expect((await lastOf(say))[0]?.headline).toBe("Noted for yesterday: hazelnut, cracked tops");
  });
});

describe("what was noted", () => {
  const noted = [
    "note: blackcurrant batch, oven 148, smooth tops",
    "note: honey batch, oven 160, they browned",
    "which ones were browned",
  ];

  test.each([
    "and how was the blackcurrant",
    "and the blackcurrant",
    "and how did the blackcurrant go",
    "what about the blackcurrant ones",
    "and what did i say about blackcurrant",
  ])("a new search: %s", async (say) => {
    expect((await lastOf(...noted, say))[0]?.headline).toContain("smooth tops");
  });

  it("looks among what was found where that is said", async () => {
    expect((await lastOf(...noted, "only the blackcurrant ones"))[0]?.headline).toContain("No note");
  });
});

describe("what is put into what was labelled", () => {
  const label =
    "us label: 120 g almond flour, 120 g powdered sugar, 95 g egg whites, 95 g sugar, 60 g butter, net weight 150 g";

  // almond flour, whites, butter, and the paste: none of them may be left out
  test.each([
    "which allergens if i use pistachio paste in them",
    "what allergens if i put pistachio paste and cream in",
    "allergens if i add pistachio paste and milk",
  ])("%s", async (say) => {
    const [said] = await lastOf(label, say);
    expect(said?.headline).toContain("Declare almond, egg, milk and pistachio");
  });

  it("asks about milk and puts none in", async () => {
    const all = await talk(label, "any milk in them");
    expect(JSON.stringify(all)).not.toContain("from the milk");
  });
});
