/**
 * Fragments, words run together and short follow-ups, as typed with one hand. Sums by hand, by the trade's rules: a
 * concentrated flavor 3-5 % of buttercream, 3-4 % of ganache; fruit powder 2-5 % of ganache, instant coffee 1-2 %, spirit
 * 2-5 %, tea powder 1.5-3 %, purée 5-10 % of ganache, powder color 0.3-1 % of batter (common practice and from memory);
 * ganache dark 1.25 : 1 for piping and 2 : 1 firm, white 2.5 : 1, milk 2 : 1; house formula 100 : 130 : 130 : 100; batter
 * 0.53 d² a shell over 0.96 with 10 % spares; 33 g a white (USDA SR); 28.349523125 g an ounce, 453.59237 g a pound (NIST).
 */
import { describe, expect, it, test } from "vitest";
import { baker, talk } from "../support/ask.ts";
import { type Case, expectFigures } from "../support/figures.ts";

const chocolate: Case[] = [
  ["dk gnache piping 200 choc, crm?", "ganache", { cream: 160 }],
  // 360 in 1.25 : 1
  ["360 dk gnache all in, to fill em", "ganache", { chocolate: 200, cream: 160 }],
  ["360 dk gnache all in, to fill em|420 rather", "ganache", { chocolate: 233.333333, cream: 186.666667 }],
  ["gnache dk 225 all up", "ganache", { chocolate: 125, cream: 100 }],
  ["crm for dk piping gnache?|190 choc", "ganache", { cream: 152 }],
  ["wht gnache 200 choc how mch crm", "ganache", { cream: 80 }],
  // 250 / 2.5 - 80
  ["wht ganahce tostiff for the bag. 250choc 80crm", "ganache", { "add cream": 20 }],
  ["200 mlk choc 100 heavy crm, good for?", "ganache", { ratio: 2 }],
  // 1.25 × 150 - 150
  ["gnache loose. dk 150 choc 150 crm. add what", "ganache", { "add chocolate": 37.5 }],
  // 2 and 10 % of what is in the bowl
  ["250 gnache SPLIT, oil evrywhere!!", "ganache", { "at a time": 5, "at most": 25 }],
  ["my 400 dark ganache has split", "ganache", { "at a time": 8, "at most": 40 }],
];

const bowls: Case[] = [
  ["kirsch into buttercrm, 150 of it. grams plz", "dose", { kirsch: [3, 7.5] }],
  ["almond flvr into gnache, 240 of that, grams?", "dose", { flavor: [7.2, 9.6] }],
  ["bc 260 hzlnut flvr at 4%", "dose", { flavor: 10.4 }],
  ["hw much kirsch 4 200 bc", "dose", { kirsch: [4, 10] }],
  [
    "raspbery puree intoganache 190 , grams?|powdr instead",
    "dose",
    { "raspberry freeze-dried powder": [3.8, 9.5] },
  ],
  ["coffee extract 250 bc|powdr insted", "dose", { "coffee powder": [2.5, 5] }],
  ["6oz is g?|thats my bc. anise flavr how mucb goes in it", "dose", { flavor: [5.102914, 8.504857] }],
  ["rose flvr bottle says 1-1,5% savethat|rose for 260 smbc then", "dose", { flavor: [2.6, 3.9] }],
  // a quarter of 300, a third of 360
  ["300 bc to 4 equal bowls, matcha powdr for one bowl hwmuch", "dose", { "matcha powder": [1.125, 2.25] }],
  ["split 360 bc three ways, mint flvr for each how much", "dose", { flavor: [3.6, 6] }],
  ["500 battr 4 bowls even, black powdr colr for one hw much", "dose", { "powder color": [0.375, 1.25] }],
  ["bc 300 to 4 equal bowls, mint flvr for one", "dose", { flavor: [2.25, 3.75] }],
  ["420smbc, coffe n choc, two to one", "split", { coffee: 280, choc: 140 }],
  ["420smbc, coffe n choc, two to one|3 to 1", "split", { coffee: 315, choc: 105 }],
  ["300 bc mint n rose 2 to 1", "split", { mint: 200, rose: 100 }],
  ["third choc rest plain 540 bc", "split", { choc: 180 }],
];

const recipes: Case[] = [
  // 520 × 100 / 460
  ["shellbatter 520 want, weigh out what", "scale", { whites: 113.043478, "almond flour": 146.956522 }],
  ["need 460 battr. what do i weigh out", "scale", { whites: 100, "almond flour": 130 }],
  [
    "my recpe 90 whites 120 almond 110 powdrd 75 sugar. whites in the bowl only 60",
    "scale",
    { "almond flour": 80, "powdered sugar": 73.333333, sugar: 50 },
  ],
  ["x1,5: 90 whites 115 af 115 ps 80 gs", "scale", { whites: 135, "granulated sugar": 120 }],
  // 4 × 33 / 2
  ["halve: 200 g butter, 120 g sugar, 4 whites", "scale", { butter: 100, sugar: 60, whites: 66 }],
  // 99 × 7.6532 / 0.96
  ["macs 45 battr?", "shells", { batter: 789.23625 }],
];

const measures: Case[] = [
  ["6oz is g?", "convert", { result: 170.097139 }],
  ["1/2lb buttr g", "convert", { result: 226.796185 }],
  [
    "pantry add 2kg icing sugr|350g icing sugr used|icing sugr still got?",
    "shelf",
    { "powdered sugar": 1650 },
  ],
  ["stock: 500g almnd flour|got any almnd flour", "shelf", { "almond flour": 500 }],
  ["stock: 500g butter|used 120 buttr|left now?", "shelf", { butter: 380 }],
];

const timers: Case[] = [
  ["4% marzipan flvr in 210 bc + tmr 11m", "timer", { left: 11 }],
  ["160c in f + tmr 11m bake", "timer", { left: 11 }],
  ["tmr 22min|7 min more|undo it|left now?", "timer", { left: 22 }],
  ["rest tmr go|timers on which", "timer", { left: 30 }],
];

describe("short words for chocolate, and weights without a unit", () => {
  test.each(chocolate)("%s", (...each) => expectFigures(...each));
});

describe("a bowl, what is in it, and parts of it", () => {
  test.each(bowls)("%s", (...each) => expectFigures(...each));
});

describe("recipes and counts in any order", () => {
  test.each(recipes)("%s", (...each) => expectFigures(...each));
});

describe("measures and what there is", () => {
  test.each(measures)("%s", (...each) => expectFigures(...each));
});

describe("timers", () => {
  test.each(timers)("%s", (...each) => expectFigures(...each));

  it.each([
    ["set 2 tmrs 12m bake 30m rest", ["bake 12", "rest 30"]],
    ["set two timers, 12m bake, 30m rest", ["bake 12", "rest 30"]],
    ["3 timers bake 14m rest 30m ganache 45m", ["bake 14", "rest 30", "ganache 45"]],
    ["10 min tmr lids", ["lids 10"]],
    ["bake 15 go", ["bake 15"]],
  ])("%s", async (said, names) => {
    const { ask } = baker();
    await ask(said);
    const [list] = await ask("which timers are running");
    expect((list?.items ?? []).map((each) => `${each.label} ${each.left}`).sort()).toEqual([...names].sort());
  });

  it("what is told before the order names the timer that is stopped, and nothing else does", async () => {
    const { ask } = baker();
    await ask("25 min tmr for pink tray");
    await ask("10 min tmr for lids");
    const [stopped] = await ask("pink tray out of the oven, stop it");
    expect(stopped?.headline).toContain("Stopped pink tray");
  });
});

describe("no word is taken for more than it says", () => {
  it("a weekday with the day of the month is that day", async () => {
    // Saturday 14 March 2026 is today: Sunday the 22nd is no tomorrow
    expect((await talk("60 macs due sun 22nd noon , when do i hav to start")).headline).toContain("22 Mar");
    expect((await talk("24 macs mon 23rd 10am, start?")).headline).toContain("Mon 23 Mar");
    expect((await talk("36 macs sun 22 noon start")).headline).toContain("Sun 22 Mar");
    expect((await talk("30 macs sun 5pm start")).headline).toContain("tomorrow 17:00");
  });

  it("a note begins with its day", async () => {
    const noted = await talk(
      "for 5 march note : rhubarb batch, oven 145, bit pale",
      "what did i bake 5th march",
    );
    expect(noted.headline).toMatch(/5 Mar.*rhubarb/);
  });

  it("what no table weighs is declined, whichever stands first", async () => {
    expect((await talk("sprinkls half a cup in grams")).status).toBe("declined");
    expect((await talk("half a cup in grams")).status).toBe("asking");
  });

  it("ganache left out is kept or thrown out, whatever its ratio", async () => {
    expect((await talk("dk gnache fillng 1to1 , leave em out overnite ok?")).tool).toBe("keep");
    expect((await talk("dark ganache 1:1, ok to leave out overnight?")).tool).toBe("keep");
  });

  it.each(["Feet?none on any. why", "feet? zero on all of them", "feet none. what happend"])(
    "%s",
    async (said) => {
      expect((await talk(said)).headline).toContain("No feet");
    },
  );

  it("a flavor as a powder is asked about where it could be several", async () => {
    expect((await talk("mint extract for 200 bc", "powder then")).status).toBe("asking");
  });

  it("4 g are no bowl", async () => {
    expect((await talk("how much mint 4 g in 200 bc")).of("share")).toMatchObject({ value: 2 });
  });
});
