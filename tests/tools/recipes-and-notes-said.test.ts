/**
 * Recipes scaled by what is said next, mixes and bowls shared out, notes opened and put right, recipes named. Sums by hand:
 * house formula 100 : 130 : 130 : 100 with 100 g of whites in one (common practice), a white 33 g (USDA SR, NDB 01124),
 * one factor over all lines and the scarcest setting it (arithmetic), buttercream 100 : 150 : 250 (common practice),
 * filling 0.42 d² over 0.92 at 3.8 cm, ring 60 % and center 40 % (from memory); the clock stands on Saturday, 14 March 2026.
 */
import { describe, expect, it, test } from "vitest";
import { baker, talk } from "../support/ask.ts";
import { type Case, expectFigures } from "../support/figures.ts";

const whites = "Whites 145. Rest of it?";
const short =
  "only 85g egg white in the jar, so for shells what do i weigh of the other things, house recipe";
const cheese = "times 2.5 please :: 200g cream cheese, 60g butter, 50g icing sugar";
const own =
  "mine goes 90 whites 115 almond flour 115 powdered sugar 80 granulated. ive 126 g of whites today so whats the rest";
const bySixty = "Weights for 60 macs' worth of shells.";
const butter = "300 g butter softened for a swiss meringue buttercream, whites and sugar?";

describe("a recipe by what is said next", () => {
  // 1.3 × 160
  const settled: Case[] = [
    "call it 160.",
    "lets say 160",
    "round it up to 160",
    "just call it 160 g",
    "160 it is",
    "put it at 160",
  ].map((say) => [`${whites}|${say}`, "scale", { "almond flour": 208, "granulated sugar": 160 }]);

  // one house recipe has 100 g of whites, whatever was scaled before: 1.5 × 130
  const house: Case[] = [
    bySixty,
    "120 g egg whites, what do I need of the rest",
    "three egg whites how much almond flour",
  ].flatMap((first) =>
    ["No. Straight 1.5x the house recipe.", "just 1.5 times the house recipe"].map(
      (say): Case => [`${first}|${say}`, "scale", { whites: 150, "almond flour": 195 }],
    ),
  );

  // 180 / 1.3: what was reckoned by before no longer counts
  const limited: Case[] = [
    "forget the whites, almond flour is whats short, theres 180",
    "never mind the whites, the almond flour is short, 180 left",
    "its the almond flour thats short, only 180 g",
    "almond flour runs out first, just 180 g",
    "whites are plenty, its the almond flour: 180 g",
    "ignore the whites, almond flour is down to 180",
  ].map((say) => [`${short}|${say}`, "scale", { whites: 138.461538, "almond flour": 180 }]);

  // 310 g in all: 465 / 310 = 1.5
  const whole: Case[] = [cheese, `${cheese}|turns out theres just 150 g cream cheese`].flatMap((first) =>
    [
      "alternatively so that everything together weighs 465",
      "465 all in all",
      "so it all comes to 465 g",
      "the total should be 465",
      "scale the lot to 465 g",
    ].map(
      (say): Case => [`${first}|${say}`, "scale", { "cream cheese": 300, butter: 90, "powdered sugar": 75 }],
    ),
  );

  test.each<Case>([
    ...settled,
    ...house,
    ...limited,
    ...whole,
    // 900 / 4.6
    [`${bySixty}|900 g all in all`, "scale", { whites: 195.652174 }],
    // 3 × 33: nobody weighs 3 g of whites out
    [`${whites}|make it 3`, "scale", { whites: 99 }],
    // a bare number that no hand cracks is grams
    ["three egg whites how much almond flour|make it 120", "scale", { whites: 120, "almond flour": 156 }],
  ])("%s", (...each) => expectFigures(...each));

  it("asks where a number can be neither a weight nor a count", async () => {
    const asked = await talk("300 g almond flour, whats the rest of the shell recipe", "make it 3");
    expect([asked.tool, asked.status, asked.figures]).toEqual(["scale", "asking", undefined]);
  });
});

describe("stock told of its thing", () => {
  // min(110 / 100, 200 / 130, 130 / 130) = 1
  test.each<Case>(
    [
      "So for shells I've got 110 grams of whites, 200 grams of almond flour, plenty of granulated sugar, but the powdered sugar is down to 130 grams, so how much can I make with that?",
      "i have 110 g whites, 200 g almond flour, and the powdered sugar is down to its last 130 g, what can i make",
      "110 g whites, 200 g almond flour, powdered sugar theres 130 g left, whats the most shells i can make",
    ].map((say) => [
      say,
      "scale",
      { whites: 100, "almond flour": 130, "almond flour left": 70, "whites left": 10 },
    ]),
  )("%s", (...each) => expectFigures(...each));

  it("is none of what was only spoken of", async () => {
    const answer = await talk("house recipe for 4 egg whites", "one had a speck of yolk so its 112 g now");
    // 1.3 × 112
    expect(answer.of("almond flour")?.value).toBeCloseTo(145.6);
  });
});

describe("a recipe of her own, told and scaled", () => {
  test.each<Case>([
    // 126 / 90 = 1.4, 63 / 90 = 0.7
    [own, "scale", { "almond flour": 161, "granulated sugar": 112 }],
    [
      `${own}|hold on the carton was half empty, 63 g`,
      "scale",
      { "almond flour": 80.5, "granulated sugar": 56 },
    ],
    ...[
      "and the original times one and a half?",
      "one and a half of the original",
      "my recipe times 1.5",
    ].map(
      (say): Case => [
        `${own}|no 63|${say}`,
        "scale",
        { whites: 135, "almond flour": 172.5, "granulated sugar": 120 },
      ],
    ),
    [
      "mine goes 90 whites 115 almond flour 115 powdered sugar 80 granulated|times 1.5",
      "scale",
      { whites: 135 },
    ],
    [
      "mine is 90 whites 115 almond flour 115 powdered sugar 80 granulated and ive 126 g of whites, rest?",
      "scale",
      { "almond flour": 161 },
    ],
    // what there is of each is no recipe: 80 / 100 of the house formula
    [
      "i have 90 whites 115 almond flour 115 powdered sugar 80 granulated. how much can i make",
      "scale",
      { whites: 80, "almond flour": 104 },
    ],
  ])("%s", (...each) => expectFigures(...each));
});

describe("a buttercream by what is said next", () => {
  // 4 × 33 = 132; 2.5 × 132
  const byWhites: Case[] = [
    "4 egg whites are what i have",
    "i only have 4 egg whites",
    "ive got 4 whites",
    "4 whites is all there is",
  ].map((say) => [`${butter}|${say}`, "buttercream", { whites: 132, sugar: 198, butter: 330 }]);
  // 900 / 5
  const whole: Case[] = [butter, `${butter}|4 egg whites are what i have`].flatMap((first) =>
    [
      "nine hundred grams all in all then",
      "so that everything together weighs 900",
      "so it comes to 900 g",
    ].map((say): Case => [`${first}|${say}`, "buttercream", { whites: 180, sugar: 270, butter: 450 }]),
  );
  test.each<Case>([
    ...byWhites,
    ...whole,
    [`${butter}|120 g whites is what i have`, "buttercream", { butter: 300 }],
    ["buttercream with 4 egg whites|150", "buttercream", { whites: 150, butter: 375 }],
    // shells named are shells
    [`${butter}|4 whites for the shells, how much almond flour`, "scale", { "almond flour": 171.6 }],
  ])("%s", (...each) => expectFigures(...each));
});

describe("a ring and a center by where they go", () => {
  // 0.42 × 3.8² × 60 / 0.92 = 395.530435; 60 and 40 % of it
  test.each([
    [
      "60 macarons, around the edge a ring of buttercream and in the center jam. how much from each i make",
      "jam",
    ],
    ["60 macarons, outside buttercream, inside jam, how much of each", "jam"],
    ["60 macarons, around the edge buttercream and curd in the center, how much of each", "curd"],
    ["60 macarons, buttercream round the rim, jam center. quantities?", "jam"],
    ["for 60 macarons a buttercream border and in the middle caramel, how much of both", "caramel"],
  ])("%s", async (say, center) => {
    const [answer] = await baker().ask(say);
    expect(answer?.headline).toContain(`237 g buttercream ring, 158 g ${center} center`);
    expect(answer?.figures?.map(({ value }) => value?.toFixed(3))).toEqual(["237.318", "158.212", "395.530"]);
  });
});

describe("some of the bowls", () => {
  test.each<Case>([
    // 420 / 4 each, and no fifth bowl
    ["split 420 g batter in 4 bowls. one bowl is pink", "split", { pink: 105 }],
    [
      "420 g buttercream split in 4, one bowl lemon and one bowl raspberry",
      "split",
      { lemon: 105, raspberry: 105 },
    ],
    // 420 / 3 each
    ["split 420 g batter into 3 bowls, 2 bowls pink and 1 bowl white", "split", { pink: 280, white: 140 }],
    ["420 g buttercream, 4 bowls. in one of them i want matcha", "split", { matcha: 105 }],
    // 5 : 3 : 2 is a ratio
    [
      "split five hundred grams of buttercream into five parts three parts and two parts",
      "split",
      { "part 1": 250 },
    ],
  ])("%s", (...each) => expectFigures(...each));
});

describe("a note is opened", () => {
  test.each([
    [
      "Put down a note for March tenth, I made coconut and the tops were really smooth.",
      "2026-03-10",
      ["coconut"],
    ],
    ["put a note down for march 10, coconut, tops smooth", "2026-03-10", ["coconut"]],
    ["jot down a note that i made coconut, smooth tops", "2026-03-14", ["coconut"]],
    ["put this down, coconut batch today, smooth tops", "2026-03-14", ["coconut"]],
    ["i want to make a note, coconut batch smooth tops", "2026-03-14", ["coconut"]],
    ["leave a little note: coconut batch, smooth tops", "2026-03-14", ["coconut"]],
  ])("%s", async (say, date, flavors) => {
    const { ask, record } = baker();
    await ask(say);
    expect(record().notes).toMatchObject([{ date, flavors }]);
  });

  test.each([
    [
      "cherry batch from today, write down i give it 6 out of 10",
      "cherry batch from today, i give it 6 out of 10",
      6,
    ],
    [
      "the cherry ones from yesterday, put down 6 out of 10",
      "the cherry ones from yesterday, 6 out of 10",
      6,
    ],
    ["cherry batch: write down that the feet were low", "cherry batch, the feet were low", undefined],
    [
      "made lemon today, mark 8 out of 10, record heat outside",
      "made lemon today, mark 8 out of 10, record heat outside",
      8,
    ],
  ])("behind its batch: %s", async (say, text, rating) => {
    const { ask, record } = baker();
    await ask(say);
    const [note, ...others] = record().notes;
    expect([note?.text, note?.rating, others.length]).toEqual([text, rating, 0]);
  });

  test.each([
    "set a note timer for 5 min",
    "take this down to 70 g whites: 100 g whites, 125 g almond flour",
    "show the lemon note",
  ])("and not: %s", async (say) => {
    const { ask, record } = baker();
    await ask(say);
    expect(record().notes).toEqual([]);
  });
});

describe("a note is put right", () => {
  test.each([
    "Oh I misspoke, change that to seventeen minutes.",
    "i was wrong, it was 17 minutes",
    "thats wrong, 17 minutes",
    "scratch that, 17 minutes",
    "typo, 17 min",
    "my mistake, 17",
    // the first was wrong, the second is right: no range of both
    "change the thirteen minutes to seventeen",
    "change thirteen to seventeen",
    "change 13 min to 17 min",
  ])("%s", async (say) => {
    const { ask, record } = baker();
    await ask("Make a note that the strawberry batch baked for thirteen minutes.");
    await ask(say);
    expect(record().notes).toMatchObject([{ bake_min: 17 }]);
    expect(record().timers).toEqual([]);
  });

  it("but a while to wait is none of its", async () => {
    const { ask, record } = baker();
    await ask("Make a note that the strawberry batch baked for thirteen minutes.");
    await ask("hold on 5 min");
    expect(record().notes).toMatchObject([{ bake_min: 13 }]);
  });
});

test.each([
  "Remind me how the peanut butter ones came out?",
  "remind me how the peanut butter macarons went",
  "i forget how the peanut butter ones came out",
  "do you remember how the peanut butter batch turned out",
])("recalled: %s", async (say) => {
  const answer = await talk("note: peanut butter and jelly macarons, 8 out of 10", say);
  expect([answer.tool, answer.of("rating")?.value]).toEqual(["recall", 8]);
});

describe("what a recipe is called", () => {
  const lines = "90g whites, 130g sugar, 240g butter";
  test.each([
    `New recipe to keep, plum smbc: ${lines}`,
    `a recipe to remember: plum smbc, ${lines}`,
    `new recipe for the book, plum smbc: ${lines}`,
    `heres a recipe to keep called plum smbc: ${lines}`,
    `another recipe to keep - plum smbc: ${lines}`,
    `new recipe i want to keep, plum smbc: ${lines}`,
    `new recipe, plum smbc: ${lines}`,
    `keep this one: plum smbc, ${lines}`,
    `save a new one, plum smbc: ${lines}`,
  ])("%s", async (say) => {
    const { ask, record } = baker();
    await ask(say);
    expect(record().formulas).toMatchObject([
      { name: "plum smbc", lines: [{ grams: 90 }, { grams: 130 }, { grams: 240 }] },
    ]);
  });

  it("is asked for where only lines were said", async () =>
    expect(await talk(`keep this recipe: ${lines}`)).toMatchObject({ tool: "formula", status: "asking" }));

  test.each([
    "Delete plum smbc.",
    "get rid of plum smbc",
    "scrap plum smbc",
    "i dont need plum smbc anymore",
  ])("gone with: %s", async (say) => {
    const { ask, record } = baker();
    await ask(`save recipe plum smbc: ${lines}`);
    await ask(say);
    expect(record().formulas).toEqual([]);
  });
});

describe("faults of what is no macaron", () => {
  test.each([
    "how do i cook rice so its not sticky",
    "why did my bread come out hollow",
    "my cheesecake cracked on top, why",
  ])("%s", async (say) => {
    const { status, figures } = await talk(say);
    expect([status, figures]).toEqual(["declined", undefined]);
  });
  test.each([
    "the bottoms are sticky like sticky rice",
    "my carrot cake macarons cracked",
    "the birthday cake ones are hollow",
    "tops cracked, it was for a cake order",
  ])("but %s", async (say) => expect(await talk(say)).toMatchObject({ tool: "trouble", status: "answered" }));
});
