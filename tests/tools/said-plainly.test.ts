/**
 * What a baker says in passing. Sums by hand: shells 0.53 d² g of batter over 0.96 at d
 * in cm, two a macaron and a tenth spare, so 24 macarons are 53 shells; 33 g a white (USDA SR, NDB 01124); a flavor 3 to 5 %
 * of buttercream; gel 0.5 to 1.5 % of batter; keeping by USDA FSIS (2 h out of the fridge in all).
 */
import { describe, expect, it, test } from "vitest";
import { baker, talk } from "../support/ask.ts";
import { type Case, expectFigures } from "../support/figures.ts";

const cases: Case[] = [
  // parts that are said by one another: the whole in shares, never an equal split
  ["split 600 g batter yellow twice as much as pink", "split", { yellow: 400, pink: 200 }],
  ["split 450 g batter, twice as much pink as white", "split", { pink: 300, white: 150 }],
  ["split 450 g batter, half as much pink as white", "split", { pink: 150, white: 300 }],
  ["split 600 g batter so that pink is double the white", "split", { pink: 400, white: 200 }],
  [
    "split 600 g batter: white 1, pink twice that, yellow half of that",
    "split",
    { white: 150, pink: 300, yellow: 150 },
  ],
  ["split 600 g batter, 100 g more pink than white", "split", { pink: 350, white: 250 }],
  ["split 480 g batter pink and white|pink twice as much", "split", { pink: 320, white: 160 }],
  ["500 g buttercream, three times as much vanilla as raspberry", "split", { vanilla: 375, raspberry: 125 }],
  ["split 480 g batter in three|2 g more each", "split", { each: 162 }],
  [
    "split 480 g batter pink white and yellow|20 g more in the pink",
    "split",
    { pink: 180, white: 150, yellow: 150 },
  ],
  // boxes: 50 / 12 is 4 and 2 over
  ["12 in a box, how many boxes for 50", "shells", { boxes: 5 }],
  ["how many boxes of 12 for 48 macarons", "shells", { boxes: 4 }],
  ["batter for 50 macarons|how many boxes is that|12", "shells", { boxes: 5 }],
  // spares by number, what a tray holds, macarons for the house: 2 x 24 + 8; 132 over 28
  ["24 macarons and 8 spares, how much batter", "shells", { shells: 56 }],
  ["batter for 24 macarons|and 6 spare", "shells", { shells: 54 }],
  ["40 mm, 28 a tray, how many trays for 60 macarons", "shells", { trays: 5 }],
  ["batter for 48 macarons and 12 for us", "shells", { shells: 132 }],
  // a slip is put right where it was made: 53 x 0.53 x 4² / 0.96
  ["batter for 24 macarons|in 35 mm|no, 40", "shells", { batter: 468.166667 }],
  ["200 g dark chocolate 100 g cream, ok for piping|20 g more cream|no, 30", "ganache", { ratio: 1.538462 }],
  ["200 g dark chocolate 100 g cream, ok for piping|add 20 cream", "ganache", { ratio: 1.666667 }],
  ["200 g dark chocolate 100 g cream, ok for piping|no, 140|the cream", "ganache", { ratio: 1.428571 }],
  // money: what was said of 24 holds for 48; hours at a wage; one sum put right
  ["24 macs sold at 2.20 each, ingredients 14|for 48", "cost", { margin: 73.484848, cost: 28, price: 105.6 }],
  [
    "ingredients 14 for 24, 2 hrs work at 18, whats the cost each",
    "cost",
    { cost: 50, "cost per macaron": 2.083333 },
  ],
  ["whats one macaron cost, ingredients 14 for 24, 2 hours work|18 an hour", "cost", { cost: 2.083333 }],
  [
    "24 macarons, ingredients 14, box 2, 1 hour work at 18 an hour, what does each cost|no, ingredients 11",
    "cost",
    { cost: 31 },
  ],
  // a third of a bowl with its flavor in it tastes the same
  ["is 8 g flavor in 230 g buttercream ok|1/3 of it", "dose", { share: 3.478261, flavor: [2.3, 3.833333] }],
  ["how much is 4 whites", "convert", { result: 132 }],
  ["how much does one white weigh", "convert", { result: 33 }],
  // words that are a taste and a color: in batter the color
  ["480 g batter|violet for that|gel", "dose", { "gel color": [2.4, 7.2] }],
  ["pink for 480 g batter|gel", "dose", { "gel color": [2.4, 7.2] }],
  // fees, tax and discounts are no margin: 9 / (1 - 0.45 - 0.08); 20 x 1.19; 15 x 0.9
  ["box of 12 costs me 9 eur, i want 45% margin|fees 8%", "cost", { price: 19.148936, margin: 45 }],
  ["price for ingredients 10 at 50% margin with 19% vat", "cost", { price: 20, "price with tax": 23.8 }],
  ["if i sell for 15 eur and cost is 6|10% discount", "cost", { price: 13.5, margin: 55.555556 }],
  ["if i sell for 15 eur and cost is 6|with 2 eur shipping", "cost", { margin: 46.666667 }],
  ["costs me 6, sell at 15, platform takes 10% fee, margin", "cost", { margin: 50 }],
  // a bill for fewer or more: 17.80 / 24 each, 40 % margin
  [
    "ingredients 14.20 packaging 3.60 for 24 macarons, price with 40% margin|and a box of 6",
    "cost",
    { price: 7.416667 },
  ],
  [
    "ingredients 14.20 packaging 3.60 for 24 macarons, price with 40% margin|for 5 orders",
    "cost",
    { cost: 89 },
  ],
  ["selling 6 boxes of 8 at 12 eur each, cost was 3.50 per box", "cost", { margin: 70.833333 }],
  // orders that are shared out: 6.5922 g of filling each
  [
    "filling for 36 macarons, half ganache half buttercream",
    "fill",
    { ganache: 118.65913, buttercream: 118.65913 },
  ],
  ["300 g filling, 2/3 ganache rest buttercream", "fill", { ganache: 200, buttercream: 100 }],
  [
    "order: 48 macarons half raspberry half pistachio|how much filling do i need|ganache for the raspberry ones",
    "fill",
    { filling: 158.212174 },
  ],
  [
    "filling for 24 macarons, ganache center with buttercream ring|how much dark chocolate for that",
    "ganache",
    { total: 63.28487, chocolate: 35.158261 },
  ],
  ["480 g batter, thirds pink white green", "split", { pink: 160, white: 160, green: 160 }],
  ["ganache for 48 macarons|white|no make it buttercream", "fill", { filling: 316.424348 }],
  ["500 g buttercream|is it enough for 60 macarons", "fill", { "filling left": 104.469565 }],
  // what follows is of what was said: 350 + 20
  [
    "dark ganache 200 g chocolate 150 cream|and flavor it with mint|add 20 g butter",
    "dose",
    { flavor: [11.1, 14.8] },
  ],
  [
    "220 g bc, how much peppermint oil|10 min timer quick|ok and for the 180 g bowl",
    "dose",
    { "peppermint oil": [0.36, 0.9] },
  ],
  ["gel color for 300 g batter|no the max is 1.5", "dose", { "gel color": 4.5 }],
  [
    "6 drops of rose flavour in 200g bc is that ok|I weighed it and those drops came to two grams.",
    "dose",
    { share: 1 },
  ],
  [
    "540g batter three equal bowls|no make one twice as big as the other two",
    "split",
    { "part 1": 270, "part 2": 135 },
  ],
  ["340 butter for swiss mer buttercream what else|butter in oz", "convert", { result: 11.993147 }],
  ["3/4 of 340|plus 60|divided by 5|thats grams, whats it in oz", "convert", { result: 2.22226 }],
  [
    "150 g milk choc to 75 cream, what is that good for|and with 90 cream|how much choc do i add so that last one pipes",
    "ganache",
    { "add chocolate": 30 },
  ],
];

describe("what is said in passing", () => {
  it.each(cases)("%s", expectFigures);

  test.each([
    ["230 g buttercream and 150 g how much flavor", "150 g"],
    ["200 g dark chocolate 100 g cream, ok for piping|no, 140", "chocolate or the cream"],
    ["uk label: 200 g almond flour, 200 g icing sugar, 150 g whites, 150 g sugar", "us or eu"],
  ])("%s: asks rather than guesses", async (turns, word) => {
    const answer = await talk(...turns.split("|"));
    expect([answer.status, answer.headline]).toEqual(["asking", expect.stringContaining(word)]);
  });
});

describe("what could hurt", () => {
  test("the bell is what stop means; the other timer runs on", async () => {
    const her = baker();
    await her.ask("timer 10 min for shells");
    await her.ask("timer 60 min for ganache");
    her.setClock("2026-03-14T09:41:00");
    expect((await her.one("stop")).headline).toMatch(/^Stopped shells\. Still running: .*ganache/);
  });

  test("spells out of the fridge add up", async () => {
    const her = baker();
    await her.ask("i left them out for an hour");
    expect((await her.one("another 30 min")).headline).toContain("1.5 h of the 2 h");
    expect((await her.one("is it still ok after another 45 min")).headline).toMatch(/^No/);
  });

  test("shells without a filling aren't judged as filled ones", async () => {
    expect((await talk("left the shells out overnight, not filled, still good?")).status).toBe("declined");
    expect((await talk("left them out overnight, still good?", "they were not filled yet")).status).toBe(
      "declined",
    );
  });

  test("the one bottle of a taste is the one meant, and it says so", async () => {
    const her = baker();
    await her.ask("my lemon oil bottle says 0.1 to 0.2 %");
    const dose = await her.one("how much lemon for 200 g buttercream");
    expect(dose.figures?.[0]).toMatchObject({ low: 0.2, high: 0.4 });
    expect([dose.rule?.basis, dose.assumed]).toEqual([
      "your bench",
      expect.arrayContaining(["your lemon oil bottle"]),
    ]);
    expect((await her.one("how much lemon extract for 200 g buttercream")).figures?.[0]).toMatchObject({
      low: 2,
      high: 4,
    });
  });

  test("a bottle saved without the word", async () => {
    const her = baker();
    expect((await her.one("save my lemon oil, 0.1 to 0.2 percent")).tool).toBe("shelf");
    expect(her.record().bottles).toMatchObject([
      { taste: "lemon", form: "oil", low_percent: 0.1, high_percent: 0.2 },
    ]);
  });

  test("a label takes her name and keeps its list", async () => {
    const her = baker();
    await her.ask(
      "eu label: 125 g almond flour, 125 g powdered sugar, 96 g egg whites, 96 g sugar, net weight 150 g",
    );
    const named = await her.one("add my name: Ida Holm, 3 Mill Lane");
    expect(named.items).toContainEqual({ line: "name and address", text: "Ida Holm, 3 Mill Lane" });
    const more = await her.one("add 5 g raspberry powder");
    const list = more.items?.find((each) => each.line === "ingredients")?.text;
    expect(list).toContain("raspberry");
    expect(list).toContain("ALMOND");
    expect(more.items).toContainEqual({ line: "name and address", text: "Ida Holm, 3 Mill Lane" });
  });
});

describe("the record", () => {
  test("several prices at once", async () => {
    const her = baker();
    await her.ask("almond flour 16 a kilo, sugar 2 a kilo, butter 9 a kilo, remember that");
    expect(her.record().stock.map(({ name, price_per_g }) => [name, price_per_g])).toEqual([
      ["almond flour", 0.016],
      ["sugar", 0.002],
      ["butter", 0.009],
    ]);
  });

  test("what a note's numbers count, and what was forgotten is added", async () => {
    const her = baker();
    await her.ask("note: raspberry, 40 made, 145 fan, 8 of 10, 22 shells cracked of 60");
    expect(her.record().notes[0]).toMatchObject({ macarons: 40, shells: 60, oven_c: 145, rating: 8 });
    expect((await her.one("forgot, rested 45 min")).tool).toBe("note");
    expect(her.record().notes).toHaveLength(1);
    expect(her.record().notes[0]).toMatchObject({ rest_min: 45 });
    await her.ask("forget the last note");
    expect(her.record().notes).toEqual([]);
  });

  test("a mat's circles and their size", async () => {
    const her = baker();
    await her.ask("my mat has 24 circles, 35 mm");
    expect(her.record().bench).toMatchObject({ shells_a_tray: 24, diameter_mm: 35 });
  });

  test("what is had already comes off the list; what was said of a plan stays with it", async () => {
    const her = baker();
    await her.ask("what do i need to buy for 40 macarons");
    const list = await her.one("i got 500 g almond flour already");
    expect([list.tool, list.headline.includes("almond flour")]).toEqual(["buy", false]);
    await her.ask("24 macarons for tomorrow 3 pm");
    const plan = await her.one("i cant start before 9");
    expect([plan.tool, plan.headline]).toEqual(["day", expect.stringContaining("24 macarons")]);
  });

  test("maturing that can't be left out isn't held against the next plan", async () => {
    const her = baker();
    expect((await her.one("can i skip the maturing")).status).toBe("impossible");
    expect((await her.one("24 macarons for monday 3pm")).status).toBe("answered");
  });

  test("a limit on a bottle is a limit; a hue has its own bottle", async () => {
    const her = baker();
    await her.ask("my gel bottle says 1% max");
    expect((await her.one("gel color for 300 g batter")).figures?.[0]).toMatchObject({ low: 1.5, high: 3 });
    await her.ask("my red gel says 0.4 %, save that");
    expect((await her.one("red gel for 300 g batter")).figures?.[0]).toMatchObject({ value: 1.2 });
    expect((await her.one("blue gel for 300 g batter")).figures?.[0]).toMatchObject({ low: 1.5, high: 3 });
  });

  test("a saved cream fills; it is no batter", async () => {
    const her = baker();
    await her.ask("save recipe lemon cream: 100 g butter, 50 g lemon juice, 150 g sugar, 2 eggs");
    const made = await her.one("lemon cream for 24 macarons");
    const sum = made.figures?.filter((each) => each.unit === "g" && each.name !== "total") ?? [];
    expect(sum.reduce((all, each) => all + (each.value ?? 0), 0)).toBeCloseTo(158.212174, 6);
  });

  test("a recipe that was scaled goes on", async () => {
    const her = baker();
    await her.ask(
      "save recipe grey shells: 110 g whites, 140 g almond flour, 120 g powdered sugar, 100 g granulated sugar",
    );
    await her.ask("scale grey shells to 4 whites");
    const fewer = await her.one("one broke, 3 whites");
    expect(fewer.figures?.find((each) => each.name === "almond flour")?.value).toBeCloseTo(126, 6);
  });

  test("what was left out too long is no better for the fridge, the freezer or the post", async () => {
    const her = baker();
    await her.ask("left filled macarons out 3 hours");
    for (const next of ["can i put them back in the fridge", "can i freeze them", "can i sell them"])
      expect((await her.one(next)).headline, next).toMatch(/^No: 3 h is past/);
    expect((await talk("can i ship macarons by post 3 days")).headline).toMatch(/^Only if they stay at 5 °C/);
  });

  test("two orders in a sentence are two", async () => {
    const her = baker();
    const asked = await her.one("60 macarons for tuesday 11am and 24 for wednesday 2pm");
    expect([asked.status, asked.headline]).toEqual(["asking", expect.stringContaining("two orders")]);
    expect((await her.one("just the first")).headline).toContain("60 macarons");
    expect((await her.one("and the other one")).headline).toContain("24 macarons");
  });

  test("a cause that was tried makes way for the next", async () => {
    const her = baker();
    await her.ask("no feet at all");
    expect((await her.one("i rested 30 min")).headline).toContain("then perhaps the oven was too cool");
    expect((await her.one("what else")).headline).toContain("folded too far");
  });

  test("the monday before is a week earlier", async () => {
    const her = baker();
    await her.ask("made them on monday, still ok?");
    expect((await her.one("it was the monday before")).headline).toMatch(/^No, not today/);
  });

  test("when they come out of the fridge is half an hour before they are eaten", async () => {
    expect(
      (await talk("24 macarons for monday 3pm", "when do i take them out of the fridge")).of(
        "out before eating",
      )?.value,
    ).toBe(30);
  });
});
