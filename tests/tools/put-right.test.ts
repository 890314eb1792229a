/**
 * What is put right afterwards, and parts of a bowl as they are called. Sums by hand: batter 0.53 d² a shell over 0.96 (from
 * memory), 33 g a white (USDA SR, NDB 01124), buttercream 100 : 150 : 250 (common practice), a split ganache 2 % at a time
 * and 10 % at most (common practice), keeping by USDA FSIS: 2 h out of the fridge in all.
 */
import { describe, expect, it, test } from "vitest";
import { baker, talk } from "../support/ask.ts";
import { type Case, expectFigures } from "../support/figures.ts";

const cases: Case[] = [
  // three shares of a hundred, however they are parted: 600 × 0.5, 0.3, 0.2
  ["600 g batter split 50:30:20", "split", { "part 1": 300, "part 2": 180, "part 3": 120 }],
  ["split 600 g batter 50/30/20", "split", { "part 1": 300, "part 2": 180, "part 3": 120 }],
  ["split 600 g batter 50 30 20", "split", { "part 1": 300, "part 2": 180, "part 3": 120 }],
  // 3 × 33 × 4.6 = 455.4, less 200, over 2
  [
    "3 egg whites how much batter|split it in 3|the first one is 200 g the others equal",
    "split",
    { "part 1": 200, "part 2": 127.7, "part 3": 127.7 },
  ],
  ["split 500 g batter into 100, 150 and the rest", "split", { "part 1": 100, "the rest": 250 }],
  [
    "i have 312 g batter, 2 parts pink 1 part blue|blue is 60 the rest pink",
    "split",
    { blue: 60, pink: 252 },
  ],
  // 252 × 0.96 / 7.6532 = 31.6
  [
    "i have 312 g batter, 2 parts pink 1 part blue|blue is 60 the rest pink|how many shells from pink",
    "shells",
    { shells: 31 },
  ],
  ["480 g batter half pink half white|how many macarons from the white", "shells", { macarons: 15 }],
  [
    "split 450 g buttercream in three, and how much rum goes in each|four ways instead",
    "split",
    { each: 112.5 },
  ],
  ["540g battr: 3 prts pink 1 part white 2 parts green", "split", { pink: 270, white: 90, green: 180 }],
  // gel for one of unequal parts: 570 / 3 × 0.5 and 1.5 %
  [
    "570 g batter, 1 part yellow 2 parts white, how much gel colour for the yellow",
    "dose",
    { "gel color": [0.95, 2.85] },
  ],
  // 2 % of 240 at a time, 24 at most, 10 of them in
  ["my ganache split 240 g", "ganache", { "at a time": 4.8, "at most": 24 }],
  ["my ganache split 240 g|added 10 g cream still split", "ganache", { left: 14 }],
  [
    "my 300 g ganache just split|added 6 g cream still split|stirred in 24 more, still split",
    "ganache",
    { "at most": 30 },
  ],
  // an egg's own weight says nothing of its white: 120 / 33
  ["eggs 55 g each how many for 120 g whites", "shells", { whites: 4 }],
  [
    "got one 250 g block of butter, what goes in smbc|two blocks, ive just found another",
    "buttercream",
    { whites: 200, butter: 500 },
  ],
  [
    "five whites for the shells, what else do i weigh|and smbc with another five",
    "buttercream",
    { whites: 165, butter: 412.5 },
  ],
  ["220g drkchoc hw mch crm so i can pipe it", "ganache", { cream: 176 }],
  ["my measuring cup is two hundred and fifty ml|how many ml is three cups", "convert", { result: 750 }],
  [
    "60 macs w a jam center and vanilla buttercream piped around it, how much of each",
    "fill",
    { ring: 237.318261, center: 158.212174 },
  ],
  // (30 - 14) / 30; 5.32 + 0.15 × 12, over 0.3; 20 / 0.4
  [
    "what do i charge a box for a 60 % margin|it costs me $14|and what would the margin be if i charged $30 instead",
    "cost",
    { margin: 53.333333 },
  ],
  [
    "200 g almond flour at $18 a kilo, 200 g icing sugar at $3 a kilo, 160 g whites at $7 a kilo, what does it cost|forgot the butter, 150 g at $12 a kilo|so what do i charge for a 70 % margin",
    "cost",
    { price: 23.733333 },
  ],
  ["my cost is 16 CAD, price at 60 percent margin?|what if the cost goes up to 20", "cost", { price: 50 }],
  // 325 of powdered sugar: × 100 / 130; 195 of almond flour, of granulated the least: 140 × 1.3
  [
    "theres 250 g icing sugar in the house, what goes with it for shells|found another 75 g of it!",
    "scale",
    { whites: 250 },
  ],
  [
    "i got 150 g whites, 160 g almond flour, 210 g icing sugar and 140 g granulated. how big a batch of the house shells can i do|found another 35 g of almond flour at the back of the cupboard, now how far",
    "scale",
    { "almond flour": 182 },
  ],
  // 310 × 0.92 / 0.42 × 3.8²
  ["how many macarons can i fill with what i got left in the bowl|310 g", "fill", { macarons: 47 }],
  // 800 / 5 = 160, by 33
  ["smbc, 800 g|how many eggs do i crack for that", "shells", { whites: 5 }],
  // 95 g a cup
  ["2 1/2 cups icing sugar in grams|same cups of almond flour?", "convert", { result: 237.5 }],
  [
    "five whites for the shells, what else|and smbc with another five|back to the shells, make it four whites",
    "scale",
    { whites: 132 },
  ],
  [
    "gel color for 500 g batter|timer 14 min for tray 2|powder color instead of the gel",
    "dose",
    { "powder color": [1.5, 5] },
  ],
  ["20 min for the shells to rest and 45 for the ganache|5 off the first", "timer", { left: 15 }],
  [
    "20 min for the shells to rest and 45 for the ganache|5 off the first|and 10 on to the other",
    "timer",
    { left: 55 },
  ],
  ["stick on 18 mins there", "timer", { left: 18 }],
  // the right dose of 350, whatever is in it: 3 and 5 %
  [
    "ive tipped 25 g of lemon flavoring in 350 g buttercream|how much plain do i add to bring that back|and what should i have put in the 350 to begin with?",
    "dose",
    { flavor: [10.5, 17.5] },
  ],
  [
    "lemon flavoring for 220 g buttercream, then lemon flavoring for 220 g ganache|first one again but 400 g",
    "dose",
    { flavor: [12, 20] },
  ],
  [
    "lemon flavoring for 220 g buttercream, then lemon flavoring for 220 g ganache|first one again but 400 g|and the second one with 300 g",
    "dose",
    { flavor: [9, 12] },
  ],
  // 12 / 320, with a timer between
  [
    "320 g buttercream, how much passion fruit flavoring|bake timer 13 min|anyway i put 12 g of the passion fruit in, alright?",
    "dose",
    { share: 3.75 },
  ],
  // 112.5 × 2 and 5 %
  [
    "split 450 g buttercream in three, and how much rum goes in each|four ways instead|and the rum for one of those?",
    "dose",
    { rum: [2.25, 5.625] },
  ],
  [
    "how much cherry flavor goes in the ganache|340 g|thats with the bowl. bowl weighs 90",
    "dose",
    { flavor: [7.5, 10] },
  ],
  // coffee powder 1 and 2 % of the bowl that cocoa has no rule for
  [
    "cocoa powder for 400 g buttercream|cocoa powder for 300 g ganache|fine, espresso powder in that instead",
    "dose",
    { "espresso powder": [3, 6] },
  ],
  [
    "teaspoons of peppermint flavoring for 370 g buttercream|whats that in grams",
    "dose",
    { flavor: [11.1, 18.5] },
  ],
  [
    "freeze dried raspberry powder in 150 g cream cheese filling|ive got 10 g of the powder. how much of that filling can i do",
    "dose",
    { base: [125, 333.333333] },
  ],
  [
    "mint flavor for 200 g buttercream|i have 8 g of it, how much of that buttercream can i do",
    "dose",
    { base: [160, 266.666667] },
  ],
  ["cocoa powder for 250 g buttercream|and what is 3 tbsp cocoa powder in g", "convert", { result: 16.2 }],
];

describe("the last answer of an exchange", () => {
  test.each(cases)("%s", (...each) => expectFigures(...each));
});

describe("a mix put right is the mix said at once", () => {
  const whole = "water activity of 110 g white chocolate 90 g cream 20 g glucose";
  const first = "water activity of 110 g white chocolate 70 g cream 20 g glucose";
  test.each([
    [first, "make it 90 cream"],
    [first, "no 90 cream"],
    [first, "the cream was 90"],
    [first, "no 90", "the cream"],
    [first.replace("white", "dark"), "with white chocolate instead of the dark", "90 g cream"],
  ])("%s / %s", async (...turns) => {
    const [now, once] = [await talk(...turns), await talk(whole)];
    expect(now.figures).toEqual(once.figures);
  });
  it("asks which of several lines a bare weight is", async () => {
    const answer = await talk(first, "no 90");
    expect(answer).toMatchObject({ tool: "ganache", status: "asking" });
    expect(answer.headline).toMatch(/white chocolate, cream or glucose/);
  });
});

describe("a label keeps its list", () => {
  const list = "eu label: 120 g almond flour, 90 g whites, 90 g sugar, 60 g butter";
  it("takes a bare weight for the net weight that was said last", async () => {
    const answer = await talk(`${list}, net 130 g`, "no 140 g");
    expect(answer.of("net weight")?.value).toBe(140);
    expect(answer.headline).toMatch(/almond, egg and milk/);
  });
  test.each([
    ["the butter", undefined],
    ["net weight", 140],
  ])("asks what weighs so much, and takes %s", async (name, net) => {
    expect(await talk(list, "no 140 g")).toMatchObject({ tool: "label", status: "asking" });
    const answer = await talk(list, "no 140 g", name);
    expect(answer.of("net weight")?.value).toBe(net);
    expect(answer.headline).toMatch(/almond, egg and milk/);
  });
});

describe("what stood warm for a day or a night is thrown out", () => {
  test.each([
    "egg white left out since yesterday is it ok",
    "raw egg whites left out since yesterday ok to use",
    "eggs whites from yesterday left on the table",
    "fridge broke over night it was 12 c can i sell them",
    "filled macarons out on the counter since saturday morning, safe?",
  ])("%s", async (say) => {
    const answer = await talk(say);
    expect(answer).toMatchObject({ tool: "keep", status: "answered" });
    expect(answer.headline).toMatch(/^No: .*Throw it out/);
  });
});

it("two questions in a breath, the second an order for a timer", async () => {
  const { ask } = baker();
  const answers = await ask("4 % coffee flavoring in 260 g ganache and pop the ganache timer on");
  expect(answers.map(({ tool }) => tool)).toEqual(["dose", "timer"]);
});

it("a currency by its name in the unit table", async () => {
  const { ask, record } = baker();
  await ask("set my currency to rand");
  expect(record().bench.currency).toBe("ZAR");
});

it("the rest comes back into a plan that went without it", async () => {
  const { ask } = baker();
  const [plain] = await ask("when do i start for 48 macarons wanted tuesday at 4 pm");
  const other = baker();
  await other.ask("when do i start for 48 macarons wanted tuesday at 4 pm, doing the no rest method");
  const [again] = await other.ask("and if i do rest them");
  expect(again?.headline).toBe(plain?.headline);
});

it("goes one batch further back, and says when there is none", async () => {
  const { ask } = baker();
  await ask("log yesterdays earl grey batch, stuck to the mat, baked 14 min");
  await ask("log another earl grey today, baked 17 min, came off clean");
  await ask("when did i last do earl grey");
  expect((await ask("and the one before, what happened with that"))[0]?.headline).toMatch(/14 min/);
  expect((await ask("and the one before that"))[0]?.headline).toMatch(/None before/);
});

it("so much in one bowl and so much in another is asked about, and no bowl of it", async () => {
  expect(await talk("i put 10 g rum in 200 g buttercream and 5 g in the ganache")).toMatchObject({
    status: "asking",
  });
});

it("what is used of each is taken off each, and all of it is shown", async () => {
  const { ask } = baker();
  await ask("pantry: 2 kg icing sugar and 800 g almond flour");
  await ask("used 260 g of each");
  const [left] = await ask("so whats left in the pantry");
  expect(left?.headline).toMatch(/powdered sugar 1740 g, almond flour 540 g/);
});

it("trays that an oven takes bake at once, and are no shells", async () => {
  const { ask, record } = baker();
  await ask("my oven takes 2 trays");
  expect(record().bench).toMatchObject({ trays_at_once: 2 });
  expect(record().bench.shells_a_tray).toBeUndefined();
});
