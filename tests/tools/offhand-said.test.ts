/**
 * Said offhand, at the bench: what there is only of in the drawer, a factor in the place of another, what a bowl will
 * give, a size by a word and its length, timers for a step "as well". Gel color 0.5-1.5 % of batter, powder color
 * 0.3-1 %; flavor 3-5 % of buttercream, extract 1-2 %. House recipe: whites 100, almond flour 130. Shells:
 * floor(B × 0.96 / (0.53 d²)), d in cm, macarons half of them; to make: ceil(22 N / 10) × 0.53 d² / 0.96. Filling:
 * 0.42 d² a macaron, of 0.92. Buttercream 100 : 150 : 250. A fan oven 20 °C lower. Rest 30 min, bake 15, cool 30,
 * ganache 45, mature 24 h.
 */
import { describe, expect, it } from "vitest";
import { baker, lastOf } from "../support/ask.ts";
import { type Case, expectFigures } from "../support/figures.ts";

const gel = "batter weighs 515, gel colour, grams?";
// 515 × 0.3 %, × 1 %
const powder = { "powder color": [1.545, 5.15] as [number, number] };

const swapped: Case[] = [
  "cant find the gel, only powder colour in the drawer",
  "can't find my gel, only the powder colour here",
  "no gel left, only powder colour in the cupboard",
  "out of gel, ive only got powder colour",
  "the gel's run out, there's just powder colour in the tin",
  "turns out i've no gel, just powder colour",
  "gel's gone missing, all i have is powder colour",
  "we've run out of gel, only powder color left",
  "i havent got gel, only powder colour to hand",
  "all i can find is powder colour",
  "there's only powder colour in the drawer",
].map((said): Case => [`${gel}|${said}`, "dose", powder]);
// extract 1-2 %, freeze-dried powder 3-8 %
swapped.push(
  [
    "400 g buttercream, vanilla bean paste|can't find the paste, only vanilla extract here",
    "dose",
    { "vanilla extract": [4, 8] },
  ],
  [
    "230 g buttercream how much raspberry puree|no puree left, just freeze dried raspberry powder",
    "dose",
    { "raspberry freeze-dried powder": [6.9, 18.4] },
  ],
);

const list = "times this by 2.5 for me: 80 g cream cheese, 44 g butter, 12 g honey";
const doubled = { "cream cheese": 160, butter: 88, honey: 24 };

const otherFactor: Case[] = [
  ...[
    "mum says only double it",
    "gran reckons just double it",
    "my sister says double it, no more",
    "on second thoughts only double it",
    "she only wants it doubled",
    "just double it",
    "make it only double",
    "no need, double it is enough",
    "actually double will do",
    "double's enough",
    "just twice, not 2.5",
    "he says to only double it",
  ].map((said): Case => [`${list}|${said}`, "scale", doubled]),
  ...[
    "And treble it?",
    "and triple it?",
    "what if i treble it",
    "and if i tripled it?",
    "and three times it?",
    "or treble it?",
    "how about trebling it",
    "and times three?",
    "what about triple",
    "and tripled?",
    "and at three times?",
  ].map(
    (said): Case => [
      `one and a half times the house recipe if you'd be so kind|${said}`,
      "scale",
      { whites: 300, "almond flour": 390 },
    ],
  ),
  // of the base: 200 and 300 g of chocolate, not 600
  ...["and treble it?", "or triple it?", "and if i treble it?", "what if i tripled it"].map(
    (said): Case => [
      `dark piping ganache, 100 g chocolate|double it|${said}`,
      "scale",
      { "dark chocolate": 300, cream: 240 },
    ],
  ),
  // once more, of what there is now
  ["house recipe times 1.5|double that", "scale", { whites: 300 }],
  ["house recipe times 2|and halve it?", "scale", { whites: 100 }],
  ["times this by 2: 80 g butter, 40 g honey|my sister wants triple", "scale", { butter: 240, honey: 120 }],
  // 3 × 230 g, 3-5 %
  ["230 g buttercream, how much flavor|double it|and treble it?", "dose", { flavor: [20.7, 34.5] }],
  ["dark piping ganache, 100 g chocolate|double it|double it again", "scale", { "dark chocolate": 400 }],
];

const got = { shells: 77, macarons: 38 }; // 620 × 0.96 / 7.6532 = 77.77
const given: Case[] = [
  ...[
    "bowl has 620 g batter in it. what will i get",
    "bowl's got 620 g of batter in, what do i get",
    "620 g of batter, what'll i get",
    "there's 620 g batter in the bowl. what can i expect",
    "ive 620 g of batter. what will that give me",
    "620 g batter in the bowl, what does it make",
    "what will i get out of 620 g of batter",
    "620 g batter, what am i going to end up with",
    "the bowl holds 620 g of batter. what comes out of it",
    "what would 620 g of batter give me",
    "mixed up 620 g of batter, what's that going to get me",
  ].map((said): Case => [said, "shells", got]),
  // 620 × 0.96 / (0.53 × 4.2²) = 63.66
  ...[
    "piped bigger, 42 mm",
    "bigger ones, 42 mm",
    "a bit larger, 4.2 cm",
    "chunky ones, 42 mm",
    "if i pipe bigger, 42 mm",
    "say i pipe them larger, 42 mm",
    "i piped em big, 42 mm",
    "slightly bigger: 42 mm",
    "make em fatter, 42 mm",
    "whoppers, 42 mm",
    "they came out bigger, 42 mm",
  ].map(
    (said): Case => [
      `bowl has 620 g batter in it. what will i get|${said}`,
      "shells",
      { shells: 63, macarons: 31 },
    ],
  ),
  // 60 × 0.42 × 9 / 0.92
  ...[
    "teeny ones, 3 cm",
    "tiny ones, 3 cm",
    "teensy ones of 3 cm",
    "dinky ones, 30 mm",
    "itty bitty ones, 3 cm",
    "wee ones, 3 cm",
    "little ones, 3cm",
    "smaller, 3 cm",
    "mini ones 3 cm across",
    "small ones though, 3 cm",
    "bite size ones, 3 cm",
    "they're teeny, 3 cm",
  ].map(
    (said): Case => [
      `doing sixty macarons for the school fair, what weight of filling do i mix|${said}`,
      "fill",
      { filling: 246.521739 },
    ],
  ),
];

const fan: Case[] = [
  "cookbook gives 165 C in an ordinary oven. mine has the fan on, setting?",
  "the cookbook says 165 c in a normal oven. mine's a fan, what setting?",
  "book wants 165 C conventional. mine has a fan. setting?",
  "recipe is for 165 c in an ordinary oven, mine has a fan, what do i set",
  "it says 165 C in an ordinary oven. i've a fan one, what do i put it on?",
  "magazine gives 165 C for an ordinary oven, ours has the fan on. what temperature?",
  "165 C in an ordinary oven. with my fan on, what setting?",
  "the card gives 165 C for a conventional oven. mine's fan, setting?",
  "nan's book gives 165 C for an oven without a fan. mine has one, what setting?",
  "165 c, ordinary oven, in the book. what on a fan one?",
  "they bake at 165 C in a conventional oven. what do i set my fan oven to?",
].map((said) => [said, "convert", { result: 145 }]);

const timers: Case[] = [
  ...[
    "kick off cooling",
    "kick off the cooling",
    "kick off a cooling timer",
    "get the cooling going",
    "start the cooling",
    "start cooling now",
    "start timing the cooling",
    "time the cooling",
    "set cooling off",
    "set one going for cooling",
    "run a cooling timer",
    "put cooling on",
  ].map((said): Case => [said, "timer", { left: 30 }]),
  ...[
    "maturing as well",
    "and maturing",
    "maturing too",
    "and one for maturing",
    "same for maturing",
    "also maturing",
    "plus maturing",
    "and the maturing too please",
    "now maturing",
    "kick off maturing as well",
    "and start the maturing",
  ].map((said): Case => [`kick off cooling|${said}`, "timer", { left: 1440 }]),
  ...[
    "stick 22min on",
    "stick 22 mins on",
    "stick 22 min on the clock",
    "pop 22 minutes on",
    "bung 22 mins on for me",
    "whack 22 min on please",
    "put 22 minutes on the clock",
    "get 22 minutes going",
    "22 minutes on the clock",
    "run 22 minutes",
    "chuck 22 mins on the timer",
    "set 22 for the rest",
    "ok put 22 on for the bake",
  ].map((said): Case => [said, "timer", { left: 22 }]),
  ...[
    "knock 4 off it",
    "knock 4 off",
    "knock four minutes off",
    "knock 4 min off that",
    "take 4 off it",
    "shave 4 off",
    "shave 4 min off it",
    "lop 4 off it",
    "chop 4 off that",
    "drop it by 4",
    "cut it by 4 min",
  ].map((said): Case => [`stick 22min on|${said}`, "timer", { left: 18 }]),
];

const butter: Case[] = [
  ...[
    "two blocks of butter, 250g each, so 500g, for swiss buttercream. whites and sugar?",
    "2 blocks of butter at 250 g each, 500 g in all, for swiss buttercream. whites and sugar?",
    "two 250 g blocks of butter for swiss buttercream, whites and sugar?",
    "i've two blocks of butter, 250 g each. whites and sugar for swiss buttercream?",
    "swiss buttercream with two packs of butter, 250g apiece, that's 500g. how much sugar and whites",
    "butter: two blocks of 250 g, makes 500 g. swiss buttercream, whites and sugar?",
    "for swiss buttercream i have two slabs of butter, each 250 g, so 500 g. whites and sugar?",
    "two lots of 250 g butter, so 500 g, for swiss buttercream. whites and sugar?",
    "2 x 250 g butter, so 500 g, for swiss buttercream. whites and sugar?",
    "four packs of butter, 125 g each so half a kilo, for swiss buttercream. whites and sugar?",
    "a pair of butter blocks, 250g each, so 500g, swiss buttercream. whites and sugar?",
  ].map((said): Case => [said, "buttercream", { whites: 200, sugar: 300, total: 1000 }]),
];

const shelf: Case[] = [
  "2kg icing sugar come in this morning, put it in the pantry|used 640g icing sugar",
  "2kg icing sugar came this morning, pop it in the pantry|used 640g icing sugar",
  "2 kg of icing sugar turned up, put it in the pantry|used 640g icing sugar",
  "2 kg icing sugar was delivered today, stick it in the larder|used 640g icing sugar",
  "got 2kg icing sugar delivered, into the pantry with it|used 640g icing sugar",
  "2kg icing sugar arrived, put it on the shelf|used 640g icing sugar",
  "a 2kg bag of icing sugar come today, put it away in the pantry|used 640g icing sugar",
  "2kg icing sugar just got here, add it to the pantry|used 640g icing sugar",
  "we've had 2kg icing sugar come in, put that in the pantry|used 640g icing sugar",
  "put the 2kg icing sugar that came this morning in the pantry|used 640g icing sugar",
  "2kg icing sugar has come in, shelve it|used 640g icing sugar",
].map((said) => [`${said}|how much icing sugar's left`, "shelf", { "powdered sugar": 1360 }]);

const both: Case[] = [
  "same again but for 54",
  "same again for 54",
  "the same but for 54",
  "same thing for 54",
  "both again for 54",
  "do that again for 54",
  "now both for 54",
  "and the same for 54 macs",
  "same two for 54",
  "once more, for 54",
  "same question, 54 macs",
  "ok 54 this time",
].map((said) => [
  `36 macs, how much batter and how much filling am i making|${said}`,
  "fill",
  { filling: 355.977391 },
]);

const cases: readonly [string, readonly Case[]][] = [
  ["another row in the place of the one there is none of", swapped],
  ["another factor, of what was given", otherFactor],
  ["what a weight gives, at a size", given],
  ["a heat for the other oven", fan],
  ["timers by step, and their length", timers],
  ["blocks of so much each", butter],
  ["what came in and went on the shelf", shelf],
  ["all of the last turn, for another number", both],
];

describe("offhand", () => {
  for (const [what, rows] of cases)
    describe(what, () => {
      it.each([...rows])("%s", async (...each) => {
        await expectFigures(...each);
        if (rows !== both) expect(await lastOf(each[0]), each[0]).toHaveLength(1);
      });
    });

  it.each(both)("%s: batter as well", async (turns) => {
    const { ask } = baker();
    let answers = await ask("hello");
    for (const turn of turns.split("|")) answers = await ask(turn);
    // 54 × 22 / 10 = 118.8: 119 shells × 7.6532 / 0.96
    expect(answers.map((each) => each.tool)).toEqual(["shells", "fill"]);
    expect(answers[0]?.figures?.find((each) => each.name === "batter")?.value).toBeCloseTo(948.677917, 6);
  });

  it.each([
    "my freezer is empty, do filled macarons freeze and for how many months",
    "got an empty freezer, how many months do filled macarons freeze for",
    "the freezer's empty: can i freeze filled macarons and how long for",
    "i emptied the freezer. how many months will filled macs keep in it",
    "do filled macarons freeze, and for how many months",
    "can you freeze filled macs and for how long",
    "will filled macarons freeze ok? for how many months?",
    "filled macarons in the freezer, how many months",
    "how many months can filled macarons stay frozen",
    "there's room in the freezer, do filled macarons freeze, how many months",
    "freezer drawer is empty so do filled ones freeze and for how many months",
  ])("the freezer: %s", async (turn) => {
    const { ask } = baker();
    const [answer] = await ask(turn);
    expect([answer?.tool, answer?.status]).toEqual(["keep", "answered"]);
    expect(JSON.stringify(answer)).toMatch(/2 months/);
    expect(JSON.stringify(answer)).toMatch(/[−-]18/);
  });

  it.each([
    "explain the maths",
    "explain your maths",
    "explain the sum",
    "explain the calculation",
    "explain those numbers",
    "what's the maths behind that",
    "talk me through the maths",
    "take me through the sums",
    "show me the sums",
    "break the maths down for me",
    "can you explain the working",
    "go through the maths with me",
    "how does the maths work",
  ])("the sum: %s", async (turn) => {
    const { ask } = baker();
    await ask("how many macarons out of 700 g batter");
    const [answer] = await ask(turn);
    expect([answer?.tool, answer?.status]).toEqual(["explain", "answered"]);
    expect(JSON.stringify(answer)).toMatch(/0\.53/);
  });

  it.each([
    "i'm up with the bread so i can do hands-on work from 5am to 9pm, remember that",
    "i can do hands-on work from 5am to 9pm",
    "i'm free for hands-on work from 5am to 9pm, remember that",
    "hands-on work is fine from 5am to 9pm, remember that",
    "i can have my hands in the batter from 5am to 9pm, remember",
    "i'm an early riser, i can work from 5am till 9pm, remember that",
    "remember i can work 5am to 9pm",
    "i'm available from 5am to 9pm, keep that in mind",
    "my working hours are 5am to 9pm",
    "i can bake between 5am and 9pm, remember that",
    "i'm in the kitchen from 5am to 9pm every day",
    "note that i can do hands on stuff from 5am until 9pm",
  ])("hours: %s", async (turn) => {
    const { ask, record } = baker();
    const [answer] = await ask(turn);
    expect([answer?.tool, answer?.status]).toEqual(["bench", "answered"]);
    expect(record().bench).toMatchObject({ wake_min: 300, sleep_min: 1260 });
  });

  it.each([
    "no, i've changed me mind about the size: set it to 4cm",
    "i've changed my mind about the size, set it to 4 cm",
    "changed my mind on the size: make it 4cm from now on",
    "no, different size: set it to 4cm",
    "about that size, set it to 4 cm instead",
    "change the size to 4cm",
    "set the size to 4cm instead",
    "put the size back to 4cm",
    "actually set the size to 4cm",
    "set the shell size to 4 cm after all",
    "i'd rather have the size at 4cm from now on",
    "change that size to 4cm",
  ])("the size for good: %s", async (turn) => {
    const { ask, record } = baker();
    await ask("all me shells are 4.5cm from here on");
    await ask("batter for 18 macs");
    const [answer] = await ask(turn);
    expect([answer?.tool, answer?.status]).toEqual(["bench", "answered"]);
    expect(record().bench).toMatchObject({ diameter_mm: 40 });
  });
});
