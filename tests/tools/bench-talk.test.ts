/**
 * Whole exchanges at the bench, each last answer summed by hand. House formula 100 : 130 : 130 : 100; buttercream 100 : 150
 * : 250; batter 0.53 d² a shell over 0.96 and filling 0.42 d² over 0.92, d in cm (from memory); baked shells 0.87 of their
 * batter (from memory); ganache 1.25 dark and 2 milk for piping (common practice); doses as in data/rules/doses.ts; a spoon
 * of a liquid 4.92892159375 ml (NIST SP 811); an ounce 28.349523125 g (NIST SP 811); margins by arithmetic.
 */
import { describe, expect, it } from "vitest";
import { baker, talk } from "../support/ask.ts";
import { type Case, expectFigures } from "../support/figures.ts";

const cases: Case[] = [
  // plain mix added after too much flavor: 15 of 290, then of 320 instead; 14 of 370
  [
    "tipped 15 g strawberry flavor in 240 g buttercream, too much?|how much plain buttercream do i add|only 50 g spare, if i add that what is it",
    "dose",
    { share: 5.172414 },
  ],
  [
    "tipped 15 g strawberry flavor in 240 g buttercream, too much?|how much plain buttercream do i add|only 50 g spare, if i add that what is it|and if i add 80 g instead",
    "dose",
    { share: 4.6875 },
  ],
  [
    "14 g hazelnut flavoring went into 320 g ganache, how bad|how much ganache fixes that|stirred in another 50 g ganache, where does that leave me",
    "dose",
    { share: 3.783784 },
  ],
  // another bowl holds nothing yet
  [
    "9.5 g orange flavor in 160 g buttercream, too strong?|how much plain do i add|and for a fresh bowl of 160 g",
    "dose",
    { flavor: [4.8, 8] },
  ],
  // what was spoken of goes on into the second half, and the second two
  [
    "instant coffee for 180 g buttercream and how much for 220 g ganache",
    "dose",
    { "instant coffee": [2.2, 4.4] },
  ],
  [
    "vanilla bean paste for 340 g buttercream and how much salt|same two for 260",
    "dose",
    { salt: [0.52, 1.3] },
  ],
  ["240 g buttercream flavor? also 120 g", "dose", { flavor: [3.6, 6] }],
  // the kind and the bottle that were meant
  ["gel color for 520 g batter|what if its the powdered stuff", "dose", { "powder color": [1.56, 5.2] }],
  [
    "285 g smbc passionfruit flavoring|with freeze dried powder instead of the bottle|back to the bottle, i went with 10 g, ok?",
    "dose",
    { share: 3.508772 },
  ],
  [
    "pistachio flavor in 200 g buttercream and 150 g ganache|gel color for 300 g batter|back to the buttercream, how much rum for it",
    "dose",
    { rum: [4, 10] },
  ],
  [
    "flavor both: 200 g ganache and 150 g buttercream, almond extract",
    "dose",
    { "almond extract": [1.5, 3] },
  ],
  ["18 g coffee flavor left, for how much ganache is it enough", "dose", { base: [450, 600] }],
  [
    "buttercream from 88 g whites, and freeze dried raspberry powder for the whole",
    "dose",
    { "raspberry freeze-dried powder": [13.2, 35.2] },
  ],
  // mixes by their weight, their size, what there is
  ["smbc from 4 egg whites|scale that to 500 g", "buttercream", { whites: 100, butter: 250 }],
  ["dark ganache 300 g|scale it to 450 g", "ganache", { chocolate: 250, cream: 200 }],
  ["dark ganache for 48 macs 45 mm", "ganache", { chocolate: 246.521739, cream: 197.217391 }],
  [
    "only 180 g sugar in the house. how much butter and whites for smbc",
    "buttercream",
    { whites: 120, butter: 300 },
  ],
  [
    "10 oz milk chocolate and 8 oz cream, what is it good for|how much chocolate gets it to piping",
    "ganache",
    { "add chocolate": 170.097139 },
  ],
  [
    "2 cups ground almonds in grams|i will use the lot for shells. what else goes in",
    "scale",
    { whites: 146.153846 },
  ],
  [
    "curd: 120 g lemon juice, 150 g sugar, 90 g butter, 160 g egg, times 1.5|the lemons gave me 100 g juice",
    "scale",
    { sugar: 125, butter: 75 },
  ],
  [
    "100 g whites 130 g almond flour 130 g powdered sugar 100 g sugar, scale to 75 g whites",
    "scale",
    { "almond flour": 97.5 },
  ],
  [
    "a third of this. 270 g white chocolate, 120 g cream, 45 g butter",
    "scale",
    { "white chocolate": 90, butter: 15 },
  ],
  // bowls and their parts
  [
    "400 g batter, 3 parts pink, 2 parts blue, 1 plain",
    "split",
    { pink: 200, blue: 133.333333, plain: 66.666667 },
  ],
  ["520 g batter, three parts purple to one gray|make it two to one", "split", { purple: 346.666667 }],
  ["cut 600 g batter in two, and gel color for one half", "dose", { "gel color": [1.5, 4.5] }],
  // macarons, filled and weighed
  ["60 macarons 12 g filling each how much filling", "fill", { filling: 782.608696 }],
  ["48 macs 36 mm half ganache half buttercream", "fill", { ganache: 141.996522 }],
  ["how much does a box of 12 weigh", "shells", { filled: 232.576416 }],
  ["batter for 40 macarons|so how many trays|trays for the 40?", "shells", { trays: 3 }],
  // a price a kilo before "and", cents behind dollars, one box out of many
  ["cost of 130 g almond flour at 14.50 a kg and 100 g butter at 8 a kg", "cost", { cost: 2.685 }],
  ["cost of 130 g almond flour at 14.50/kg, 100 g butter at 8 per kg", "cost", { cost: 2.685 }],
  [
    "ingredients were nine dollars and sixty cents and the boxes two dollars and forty cents, what do i charge for a fifty percent margin",
    "cost",
    { cost: 12, price: 24 },
  ],
  ["6€ ingredients, 40 % margin, 36 macs, price per box of 6", "cost", { price: 1.666667 }],
  [
    "6€ ingredients 1.20 packaging, 2 hours at 15 an hour, 40 % margin, 36 macs|what would i charge for a box of 6|and for a box of 12",
    "cost",
    { price: 20.666667 },
  ],
  ["my cost is €10, 40% margin|with 60 markup instead", "cost", { price: 16 }],
  ["ingredients £5, price £20. whats my food cost percent", "cost", { "food cost": 25 }],
  ["one box costs me $7.20, i sell it for $18|margin if i drop it to $16", "cost", { margin: 55 }],
  // what stands on the shelf, put right where it was told
  [
    "put 800 g almond flour in the pantry|used 130 g of it|no hang on i used 150",
    "shelf",
    { "almond flour left": 650 },
  ],
  ["put 500 g sugar in the pantry|no sorry 600", "shelf", { sugar: 600 }],
];

describe("the last answer of an exchange", () => {
  it.each(cases)("%s", expectFigures);
});

describe("what isn't sure is asked", () => {
  it.each([
    ["i added 2 g too much flavor to 200 g buttercream, how much base do i add", "in it now"],
    ["ingredients 37.20 euro, 36 macs, 40 % margin|i sell them at 2.50, whats my margin", "for one macaron"],
    ["filled last friday, still good?", "or Fri 6 Mar"],
    ["scale this up: 8 oz butter, 12 oz powdered sugar, 1 oz cream", "?"],
  ])("%s", async (turns, question) => {
    const answer = await talk(...turns.split("|"));
    expect(answer.status).toBe("asking");
    expect(answer.headline).toContain(question);
  });
  it("and the answer counts: 36 at 2.50 against 37.20", async () => {
    const said = await talk(
      "ingredients 37.20 euro, 36 macs, 40 % margin",
      "i sell them at 2.50, whats my margin",
      "each",
    );
    expect(said.of("margin")?.value).toBeCloseTo(100 * (1 - 37.2 / 90), 6);
  });
});

describe("what nobody ordered isn't done", () => {
  it("a question of the clock sets no timer", async () => {
    const { ask, one, record } = baker();
    expect((await one("what time will it be in 3 hours")).headline).toContain("12:30");
    await ask("when is 45 min from now");
    expect(record().timers).toEqual([]);
  });
  it("a dose behind a saved bottle puts nothing on the shelf", async () => {
    const { one, ask, record } = baker();
    await ask("my mint bottle says half to one percent, save that");
    const dose = await one("mint for 250 g");
    expect(dose.figures?.[0]).toMatchObject({ low: 1.25, high: 2.5 });
    expect(record().stock).toEqual([]);
  });
  it("a question of what there is adds nothing", async () => {
    const { ask, one, record } = baker();
    await ask("pantry: 500 g almond flour");
    expect((await one("do i have enough almond flour for 40 macs")).headline).toMatch(/^Yes/);
    expect((await one("and for 120")).headline).toMatch(/^No/);
    expect(record().stock.map(({ grams }) => grams)).toEqual([500]);
  });
  it("what is forgotten isn't set", async () => {
    const { ask, record } = baker();
    await ask("forget the fan oven");
    expect(record().bench.fan_oven).toBeUndefined();
    await ask("i have a fan oven");
    await ask("i dont have a fan oven");
    expect(record().bench.fan_oven).toBe(false);
  });
});

describe("keeping", () => {
  // 24 h after noon; 28 h till four o'clock the day after (common practice: 24 to 48 h)
  it.each([
    ["filled noon yesterday, when is maturing done", "2026-03-14"],
    ["filled at noon yesterday, pickup today at 4pm, is that enough maturing", "Yes: 28 h"],
    ["is 20 h enough maturing", "No: 20 h"],
    // USDA FSIS: 2 h, 1 h above 90 °F; unchilled is no word for unfilled
    ["party is at 7, pickup at 5, unchilled ok?", "2 h out of the fridge"],
    ["its 96 out today, how long can filled ones sit on the table", "1 h out of the fridge"],
    // frozen two months at best: 20 January to 20 March
    ["froze a box of filled ones jan 20, still good?", "2026-03-20"],
  ])("%s", async (said, text) => expect((await talk(said)).headline).toContain(text));
  it("others that are spoken of anew were never frozen", async () => {
    const said = await talk(
      "frozen since january can i still sell them",
      "filled monday, is it ok to sell saturday",
      "filled them on 8 march, still ok?",
    );
    // day 7 of the 8th is the 14th
    expect(said.headline).toContain("use by Sat 14 Mar");
  });
});

describe("faults", () => {
  it.each([
    "caramel too hard",
    "jam too runny",
    "buttercream turned yellow",
    "my meringue is grainy and weeping",
  ])("%s: no page of another thing", async (said) => expect((await talk(said)).status).toBe("declined"));
  it("a fault that comes while a weight is asked for is answered first", async () =>
    expect((await talk("how much flavor for the ganache", "300g ganache just split")).headline).toContain(
      "6 g at a time, 30 g at most",
    ));
});

describe("notes and labels", () => {
  it.each([
    ["note: raspberry today, rating 6|change the raspberry rating to 7", 7],
    ["note: lemon today, rating 6|rate the lemon 8", 8],
    ["note: lemon today, rating 6|it was 4 out of 10", 4],
    ["log batch: wattleseed, 9 out of 10|sorry the wattleseed should be 6 out of 10", 6],
  ])("%s", async (turns, rating) => {
    const { ask, record } = baker();
    for (const turn of turns.split("|")) await ask(turn);
    expect(record().notes.map((each) => each.rating)).toEqual([rating]);
  });
  it("an allergy that is to be remembered is a note, and no batch of that flavor", async () => {
    const { ask, record } = baker();
    await ask("remember my sister is allergic to hazelnut");
    expect(record().notes).toMatchObject([{ text: "my sister is allergic to hazelnut", flavors: [] }]);
  });
  it("a name and address stand on the label, and are no ingredient", async () => {
    const label = "us label: 130 g almond flour, 130 g powdered sugar, 100 g whites, 90 g butter";
    const said = await talk(label, "add address: Ada Rowe, 5 Mill Lane", "remove the butter");
    expect(said.headline).toContain("contains almond and egg;");
    expect(said.headline).not.toContain("name and address");
  });
});

describe("a day by its own lengths", () => {
  it.each([
    // a day more of maturing is a day earlier
    ["24 macs for next saturday 3pm mature 48 hours", "Start Thu 19 Mar 11:37"],
    // fifteen minutes more of rest
    ["24 macarons for tomorrow 3pm|what if i rest them 45 min", "Start 11:22"],
    ["30 macs for tomorrow 4pm|they've said 6 now", "Start 14:20"],
  ])("%s", async (turns, start) => expect((await talk(...turns.split("|"))).headline).toContain(start));
  it("maturing is never cut under a day", async () =>
    expect((await talk("24 macarons for tomorrow 3pm, mature 12 h")).status).toBe("impossible"));
});
