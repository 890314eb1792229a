/**
 * Everyday American talk: imperatives ("gimme", "work me up"), relative clauses ("the buttercream that's in the mixer,
 * which is 300 g"), fractions of inches and pounds, dropped letters. Doses: flavor 3-5 % of buttercream, vanilla bean
 * paste and extract 1-2 %, nut paste 10-20 %. Shells: floor(B × 0.96 / (0.53 d²)), d in cm. Filling: 0.42 d² a macaron,
 * of 0.92. Weights: 1 lb = 453.59237 g, 1 oz = 28.349523125 g, 1 in = 25.4 mm (NIST).
 */
import { describe, expect, it } from "vitest";
import { baker, talk } from "../support/ask.ts";
import { type Case, expectFigures } from "../support/figures.ts";

const amounts: Case[] = [
  // 291 × 3 / 97: a share of what is finished
  [
    "i want the raspberry flavor to come out at 3 percent of the finished filling, and what i've got is 291 g of plain buttercream. grams please",
    "dose",
    { flavor: 9 },
  ],
  ["all we got left here is 300 g of buttercream, mango flavor for it", "dose", { flavor: [9, 15] }],
  [
    "figure me the mango flavor for the buttercream that's in the mixer, which is 300 g",
    "dose",
    { flavor: [9, 15] },
  ],
  // 22 / 0.05 - 350, 22 / 0.04 - 350
  [
    "22 g apricot flavour slipped into 350 g of buttercream. How much plain buttercream must go in to correct this?",
    "dose",
    { "add base": [90, 200] },
  ],
  // 453.59237 × 3 %, × 5 %
  [
    "work me up the pistachio flavor for the pound of buttercream i just made",
    "dose",
    { flavor: [13.607771, 22.679619] },
  ],
  ["how much buttercream'll 12 g of cherry flavor do", "dose", { base: [240, 400] }],
  // 38.1 mm: floor((380 + 20) / 58.1) × floor((280 + 20) / 58.1) = 6 × 5; at 44.45 mm 6 × 4
  ["how many 2 inch shells fit on one tray|what about inch and a half ones", "shells", { shells: 30 }],
  ["figure how many inch and three quarter shells go on a tray", "shells", { shells: 24 }],
  ["say i pipe em an inch and a half, what's a tray hold", "shells", { shells: 30 }],
  // 907.18474 × 0.96 / (0.53 × 3.81²) = 113.2
  ["how many macarons from 2 lb of batter piped 4 cm|and at an inch and a half", "shells", { shells: 113 }],
  ["pound and three quarters to grams", "convert", { result: 793.786648 }],
  ["make it metric, a pound and a quarter of butter", "convert", { result: 566.990463 }],
  ["what's a pound an a half in grams", "convert", { result: 680.388555 }],
  ["cup and a half of powdered sugar in grams", "convert", { result: 180 }],
  // 350 × 0.92 / 6.0648 = 53.09
  ["how far's 350 g of buttercream gonna go, in macarons", "fill", { macarons: 53 }],
  // by half more, a quarter less
  [
    "bump up a recipe of 90 g whites, 120 g amandes en poudre, 110 g sucre glace, 80 g sugar by half",
    "scale",
    { whites: 135, "almond flour": 180, "powdered sugar": 165 },
  ],
  [
    "take a recipe of 100 g whites, 120 g almond flour, 120 g powdered sugar, 90 g granulated sugar and knock it down by a quarter",
    "scale",
    { whites: 75, "almond flour": 90 },
  ],
  // whites 200 : powdered sugar 260 of 280
  [
    "300 g poudre d'amande, 280 g powdered sugar, 200 g whites, granulated sugar without end. How big a shell recipe is possible?",
    "scale",
    { "almond flour": 260, "powdered sugar": 260, "almond flour left": 40, "powdered sugar left": 20 },
  ],
  [
    "i've got 130 g farine d'amande and 90 g blancs, how big a batch could i pull off",
    "scale",
    { whites: 90, "almond flour": 117 },
  ],
];

const timers: Case[] = [
  ["gimme an hour an ten on the buttercream thats comin up to room temp", "timer", { left: 70 }],
  ["gimme a shout in an hour an a half for the butter that's softenin", "timer", { left: 90 }],
  ["gimme a heads up in twenty for the tray that just went in|tack on another five", "timer", { left: 25 }],
  ["gimme fifteen on the shells thats bakin", "timer", { left: 15 }],
  ["holler at me in ten", "timer", { left: 10 }],
  ["put 12 on the tray that's bakin and 45 on the ganache that's coolin off", "timer", { left: 45 }],
  ["start me fifteen for the oven and thirty for the resting shells", "timer", { left: 30 }],
  [
    "set one for the ganache that's coolin, 50 minutes, an another for 12 on the shells",
    "timer",
    { left: 12 },
  ],
];

describe("everyday american talk", () => {
  it.each([...amounts, ...timers])("%s", expectFigures);

  it("answers the mix and what is to flavor all of it", async () => {
    const { ask } = baker();
    // 20 oz = 566.99 g: whites a fifth, paste 1-2 %
    const [mix, paste] = await ask(
      "gimme what goes in 20 oz of swiss meringue buttercream, and the vanilla bean paste that'd flavor all of it",
    );
    expect(mix?.figures?.[0]?.value).toBeCloseTo(113.398093, 6);
    expect(paste?.figures?.[0]?.low).toBeCloseTo(5.669905, 6);
    expect(paste?.figures?.[0]?.high).toBeCloseTo(11.339809, 6);
  });

  // no row of the table has a dose of a ground spice; a flavor of it has
  it.each([
    "how much ground nutmeg for 8 oz of buttercream",
    "grated nutmeg for 300 g buttercream",
    "how much freshly ground cardamom for 300 g of buttercream",
    "crushed black pepper for 250 g of chocolate ganache, how much",
  ])("%s has no rule", async (turn) => {
    const { tool, status, figures } = await talk(turn);
    expect([tool, status, figures]).toEqual(["dose", "declined", undefined]);
  });
  it("keeps the flavor of a spice", () =>
    expectFigures("nutmeg flavor for 300 g buttercream", "dose", { flavor: [9, 15] }));

  it.each([
    ["a timer, 1,5 h, for the syrup", "syrup"],
    ["gimme an hour and ten on the buttercream", "buttercream"],
    ["set a timer, 30 min, for my shells", "shells"],
    ["10 min for the oven|18 minutes for the first tray|cut off the oven one", "oven"],
    ["10 min for the oven|18 minutes for the first tray|cut the oven timer off", "oven"],
  ])("%s names its timer", async (turns, name) => {
    const { tool, status, headline } = await talk(...turns.split("|"));
    expect([tool, status]).toEqual(["timer", "answered"]);
    expect(headline).toContain(name);
  });

  it("leaves out a reason all the same", () =>
    expectFigures("set a timer for 12 min, for the children are asleep", "timer", { left: 12 }));

  it.each(["put the cherry batch down too, tops cracked", "stick the cherry one in there too, tops cracked"])(
    "%s is a note",
    async (turn) => {
      const { ask } = baker();
      await ask("put this in my notes, mint batch came out hollow");
      expect((await ask(turn))[0]).toMatchObject({ tool: "note", status: "answered" });
      const [found] = await ask("pull up the ones that cracked");
      expect(found?.tool).toBe("recall");
      expect(JSON.stringify(found)).toMatch(/cherry/);
    },
  );

  it.each([
    "tell me everthing you can do",
    "what all can y'all do",
    "run me through everything you do",
    "give me the rundown of what you do",
    "show me what you got",
  ])("%s is no thanks", async (turn) => {
    const { tool, headline } = await talk(turn);
    expect(tool).toBe("help");
    expect(headline).toMatch(/flavor/);
  });
});
