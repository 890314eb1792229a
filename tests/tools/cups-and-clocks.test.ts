/**
 * What a spoon of something weighs, the same conversion once more, how it was measured; moments told of, alarms, what is
 * put back onto a timer. Weights by USDA SR28's portions: a cup of powdered sugar 120 g, sifted 100 g, its tablespoon
 * 8 g; of ground almonds 95 g, of honey 339 g, of granulated sugar 200 g, of packed brown sugar 220 g; salt 6 g a
 * teaspoon and 18 g a tablespoon, cocoa 5.4 g a tablespoon, vanilla extract 4.2 g a teaspoon, lemon zest 6 g a
 * tablespoon. NIST Handbook 44: a pound 453.59237 g, an ounce its sixteenth; a tablespoon 14.78676478125 ml.
 */
import { describe, expect, it } from "vitest";
import { baker, lastAt, lastOf } from "../support/ask.ts";
import { type Case, expectFigures } from "../support/figures.ts";

const converted = (turns: string, result: number): Case => [turns, "convert", { result }];

describe("what a measure weighs, though it is a flavor too", () => {
  it.each([
    converted("how much does 1 tsp salt weigh", 6),
    converted("do you know how much a teaspoon of salt weighs", 6),
    converted("what does 1 tsp of salt come to", 6),
    converted("how much does 1 tsp salt weigh|half of that", 3),
    converted("how much does 1 tsp salt weigh|1 tbsp of it", 18),
    converted("how much does 1 tbsp cocoa powder weigh", 5.4),
    converted("how heavy is 1 tsp vanilla extract", 4.2),
    converted("how much does 1/2 tsp vanilla extract come to in grams", 2.1),
    converted("how much does 1 tbsp lemon zest weigh", 6),
    converted("1 tsp of vanilla extract, how much does that weigh", 4.2),
    converted("how much is a teaspoon of salt in weight", 6),
    // 10 / 6
    converted("how many tsp is 10 g salt", 1.666667),
    // 27 / 5.4
    converted("how much does 27 g cocoa come to in tablespoons", 5),
    // 3 × 33 g: USDA SR, NDB 01124
    converted("how much do 3 egg whites weigh", 99),
    // of what the dose was about
    converted("300 g buttercream how much salt|how much does 1 tsp of that weigh", 6),
    converted("1 cup honey in g|how much does 1 tbsp weigh", 21),
  ])("%s", (...each) => expectFigures(...each));

  it("says so where no table weighs it, and what of it asks", async () => {
    const [matcha] = await lastOf("how much does 1 tbsp of matcha weigh");
    expect([matcha?.tool, matcha?.status, matcha?.figures]).toEqual(["convert", "declined", undefined]);
    const [bare] = await lastOf("how much does 1 tsp weigh");
    expect([bare?.tool, bare?.status]).toEqual(["convert", "asking"]);
  });

  // salt 0.2-0.5 % (from memory), cocoa 3-6 % (from memory) of the bowl, and no weight of a spoon
  it.each<Case>([
    ["how much salt do i weigh for 300 g buttercream", "dose", { salt: [0.6, 1.5] }],
    ["how much cocoa do i weigh out for 300 g buttercream", "dose", { "cocoa powder": [9, 18] }],
    ["500 g ganache salt g", "dose", { salt: [1, 2.5] }],
    // 6 g / 0.5 %, 6 g / 0.2 %
    ["i have 1 tsp salt, how much buttercream does that flavor", "dose", { base: [1200, 3000] }],
  ])("%s stays a dose", (...each) => expectFigures(...each));
});

describe("the unit that is wanted, at the end or in few words", () => {
  it.each([
    // half of 453.59237
    converted("half a pound of icing sugar, g", 226.796185),
    // 226.796185 / 120
    converted("half a pound of icing sugar, g|thats in cups unsifted how many", 1.889968),
    converted("half a pound of icing sugar, g|what do 4 tbsp of it come to in g", 32),
    converted("1.5 lb butter, g", 680.388555),
    converted("3 oz cocoa, grams", 85.048569),
    converted("2 lbs almond flour, kg", 0.907185),
    converted("8 oz dark chocolate, g please", 226.796185),
    converted("the packet says 6 oz, howmuch gram is it", 170.097139),
    converted("the packet says 6 oz, howmuch gram is it|and 500 g how much pound is it", 1.102311),
    converted("how much gram is 6 oz", 170.097139),
    converted("how much g are in 1 pound", 453.59237),
    converted("my recipe says 6 oz butter how much gram i need", 170.097139),
    converted("the tub is 16 ounces so how much kilo is it", 0.453592),
    // 500 / 28.349523125
    converted("500 g butter how much ounces", 17.636981),
  ])("%s", (...each) => expectFigures(...each));
});

describe("the same conversion of something else", () => {
  const first = "330 g almond flour in cups";
  it.each([
    // 330 / 120, then / 100
    converted(`${first}|same question for powdered sugar`, 2.75),
    converted(`${first}|same question for powdered sugar|sifted i mean`, 3.3),
    converted(`${first}|can you do that for powdered sugar too`, 2.75),
    converted(`${first}|tell me the same for powdered sugar, sifted`, 3.3),
    converted(`${first}|same again with powdered sugar`, 2.75),
    // 330 / 200, 330 / 339
    converted(`${first}|the same thing for caster sugar`, 1.65),
    converted(`${first}|do the same for honey`, 0.973451),
    converted(`${first}|repeat for honey`, 0.973451),
    converted(`${first}|ok same thing, powdered sugar`, 2.75),
    converted("2 cups sugar in g|same question but brown sugar", 440),
  ])("%s", (...each) => expectFigures(...each));

  it("is not heard where something else is asked", async () => {
    for (const next of ["can i use honey instead", "i have no sugar", "could i do it with hazelnuts"])
      expect((await lastOf(`${first}|${next}`)).map((each) => each.tool)).not.toContain("convert");
  });
});

describe("how it was measured, told afterwards", () => {
  const first = "2 cups powdered sugar in grams";
  it.each([
    // 2 × 100
    converted(`${first}|and if i did sifted it before`, 200),
    converted(`${first}|but i already sifted it`, 200),
    converted(`${first}|i sift it first`, 200),
    converted(`${first}|forgot to say, sifted`, 200),
    converted(`${first}|oh wait the sugar was sifted`, 200),
    converted(`${first}|what if i sift first and then measure`, 200),
    converted(`${first}|if i put it through a sieve first`, 200),
    converted(`${first}|i use the sifted one`, 200),
    // the cup was filled with what was not: 2 × 120
    converted(`${first}|and if i sift it after measuring`, 240),
    converted("2 cups powdered sugar, sifted after measuring, in grams", 240),
    converted("2 cups powdered sugar sifted in grams|i didnt sift it", 240),
    converted("2 cups powdered sugar sifted in grams|no its not been sifted", 240),
  ])("%s", (...each) => expectFigures(...each));

  it("is no answer to whether it has to be", async () => {
    expect((await lastOf(`${first}|should i sift it`))[0]?.tool).toBe("method");
  });
});

describe("a cup in the drawer is no unit", () => {
  it.each([
    // 60 / 14.78676478125 and so on
    ["My measuring cup's all sticky so tell me how many tablespoons are in sixty milliliters.", 4.057683],
    ["the cup is in the dishwasher, how many tablespoons are in 120 ml", 8.115365],
    ["i only have a tablespoon, how many tablespoons is 60 ml", 4.057683],
    ["i lost the teaspoon so how many tablespoons is 45 ml", 3.043262],
    ["no measuring cups here, what is 300 ml in tablespoons", 20.288414],
    // 500 / 236.5882365, where they are asked for
    ["how many measuring cups is 500 ml", 2.113376],
  ])("%s", async (turn, result) => {
    const answers = await lastOf(turn);
    expect(answers.map((each) => Number(each.figures?.[0]?.value?.toFixed(6)))).toEqual([result]);
  });
});

const start_ms = new Date("2026-03-14T09:30:00").getTime();

/** What runs in the end, with its minutes from half past nine. */
async function running(turns: string) {
  const home = baker({ now: "2026-03-14T09:30:00" });
  for (const turn of turns.split("|")) await home.ask(turn);
  return home
    .record()
    .timers.filter((each) => each.state !== "stopped")
    .map((each) => `${each.label} ${(each.due_ms - start_ms) / 60_000}`)
    .sort()
    .join(", ");
}

describe("told when the clock gets there", () => {
  it.each([
    ["tell me when it is ten to eleven", "timer 80"],
    ["tell me when its half ten", "timer 60"],
    ["can you tell me when it's eleven", "timer 90"],
    ["give me a shout when it's 11", "timer 90"],
    ["ping me when the clock hits 10:30", "timer 60"],
    ["shout when it gets to 10 to 11", "timer 80"],
    ["say when its ten to eleven", "timer 80"],
    ["tell me when 20 min are up", "timer 20"],
    ["tell me when its been 15 minutes", "timer 15"],
    ["tell me when half an hour has passed", "timer 30"],
    ["tell me when to stop whisking", ""],
    ["let me know when its 24 macarons", ""],
    ["what time is it when 40 min are over", ""],
  ])("%s", async (turns, wanted) => expect(await running(turns)).toBe(wanted));
});

describe("a second timer, and which one is asked for", () => {
  const two = "8 min timer for heating the oven and one more of 50 min for the ganache";
  it("sets both", async () => expect(await running(two)).toBe("ganache 50, heating the oven 8"));
  it.each([
    [`${two}|the ganache needs how long still`, 50],
    [`${two}|how long still on the oven`, 8],
    [`${two}|the oven still needs how long`, 8],
    ["timer 15 min bake|another one of 20 min for the syrup|how long do i have on the syrup", 20],
    ["timer 15 min bake|another one of 20 min for the syrup|syrup how long still", 20],
    ["timer 15 min bake|another one of 20 min for the syrup|how many minutes do i have on the bake", 15],
    ["20 min for the oven, 40 min for the ganache|how long does the oven need still", 20],
    ["20 min for the oven, 40 min for the ganache|how long have i left on the oven", 20],
    ["20 min for the oven, 40 min for the ganache|how long have we got on the oven", 20],
    ["20 min for the oven, 40 min for the ganache|how much has the ganache got", 40],
    ["20 min for the oven, 40 min for the ganache|time on the oven", 20],
    ["20 min for the oven, 40 min for the ganache|oven?", 20],
  ])("%s", async (turns, left) => {
    const answers = await lastOf(turns);
    expect(answers.flatMap((each) => each.figures?.map(({ value }) => value) ?? [])).toEqual([left]);
  });
  it("leaves what keeps to its own rule", async () => {
    for (const turn of [
      "how long do i have on the counter with filled ones",
      "rest 30 min timer|how long do i have for the filled ones out",
      "filled macarons made tuesday have how long left",
    ])
      expect((await lastOf(turn))[0]?.tool).toBe("keep");
  });
});

describe("minutes put back, taken off, and a length called out", () => {
  it.each([
    // 16 - 3 + 5
    ["16 min timer for the bake|Knock 3 off|put 5 back on", "bake 18"],
    ["16 min timer for the bake|Knock 3 off|put the 3 back on", "bake 16"],
    ["16 min timer for the bake|put 5 min back on", "bake 21"],
    ["16 min timer for the bake|stick 3 back on", "bake 19"],
    ["16 min timer for the bake|give me 5 back", "bake 21"],
    ["16 min timer for the bake|20 min for the syrup|put 3 back on the bake", "bake 19, syrup 20"],
    ["16 min timer for the bake|push it back by 3", "bake 19"],
    ["16 min timer for the bake|drop 2", "bake 14"],
    ["16 min timer for the bake|take 2 off|put 2 on again", "bake 16"],
    ["16 min timer for the bake|add back 5 min", "bake 21"],
    ["16 min timer for the bake|stick another 2 back on it", "bake 18"],
    ["16 min timer for the bake|make it 3 shorter", "bake 13"],
    ["timer 20 min oven|and one more, 40 min, ganache", "ganache 40, oven 20"],
    ["16 min timer for the bake|lop 2 off", "bake 14"],
    ["16 min timer for the bake|call it 20", "bake 20"],
    ["16 min timer for the bake|call it tray 2", "tray 2 16"],
    ["16 min timer for the bake|put 5 on the ganache", "bake 16, ganache 5"],
    ["rest 30 min timer|put 5 back in the box", "rest 30"],
    ["stick 20 min on for the butter to soften", "butter 20"],
    ["put 2 back on the shelf", ""],
  ])("%s", async (turns, wanted) => expect(await running(turns)).toBe(wanted));

  // 130, 130 and 100 to 100 of whites; 3-5 % of the bowl (both common practice); 22 × 50 / 10 shells with the spares
  it.each<Case>([
    [
      "Whites 145. Rest of it?|Call it 160.",
      "scale",
      { "almond flour": 208, "powdered sugar": 208, "granulated sugar": 160 },
    ],
    ["300 g buttercream how much vanilla|call it 320", "dose", { flavor: [9.6, 16] }],
    ["48 macarons how much batter|call it 50", "shells", { shells: 110 }],
  ])("%s is no timer's", (...each) => expectFigures(...each));
});

describe("an alarm rings at an hour", () => {
  const evening = "2026-03-14T21:10:00";
  it.each([
    // from ten past nine in the evening to the next time that the clock shows it
    ["Set an alarm for 7", 590, "7 o'clock, not 7 min"],
    ["alarm 8", 650, "8 o'clock, not 8 min"],
    ["set an alarm for seven to take the butter out", 590, "7 o'clock, not 7 min"],
    ["alarm for half 6", 560],
    ["set an alarm for 6 30", 560],
    ["alarm for 630", 560],
    ["wake me up for 7", 590],
    ["set my alarm for 7 tomorrow", 590],
    // and a number that is no hour, or a tray's, in so many minutes
    ["alarm for 20", 20, "20 min, not 20:00"],
    ["set an alarm for 5, tray 1", 5, "5 min, not 5 o'clock"],
    ["alarm for 45", 45, "minutes"],
    ["alarm for 10 or 12 minutes", 10],
    ["set a timer for 7", 7, "minutes"],
  ])("%s", async (turn, left, assumed?: string) => {
    const [answer] = await lastAt(evening, turn);
    expect(answer?.figures).toEqual([{ name: "left", value: left, unit: "min" }]);
    if (assumed) expect(answer?.assumed).toContain(assumed);
  });
  it("each of several at its own", async () => {
    const answers = await lastAt(evening, "alarms for 7, 8 and 9");
    expect(answers.map((each) => each.figures?.[0]?.value)).toEqual([590, 650, 710]);
  });
});
