/**
 * Chats over several bowls: what one part of a bowl gets is what a bowl of that weight gets, whatever words name it.
 * Each turn's answer is held against the plain question, asked by itself in a chat of its own; the weights of the parts
 * are divided by hand.
 */
import { describe, expect, it } from "vitest";
import type { Answer } from "../../src/tools/contract/index.ts";
import { baker, lastOf, talk } from "../support/ask.ts";

/** What is said, and the plain question that it comes to; undefined: only said. */
type Turn = readonly [say: string, plain?: string];

const figures = (answers: readonly Answer[]) =>
  answers.map(({ tool, status, figures = [] }) => ({
    tool,
    status,
    figures: figures.map(({ name, unit, ...range }) => ({
      name,
      unit,
      ...Object.fromEntries(
        Object.entries(range).map(([key, value]) => [
          key,
          typeof value === "number" ? Number(value.toFixed(4)) : value,
        ]),
      ),
    })),
  }));

async function holds(turns: readonly Turn[]) {
  const { ask } = baker();
  for (const [say, plain] of turns) {
    const answers = await ask(say);
    if (plain !== undefined) expect(figures(answers), say).toEqual(figures(await lastOf(plain)));
  }
}

const chats: Record<string, readonly (readonly Turn[])[]> = {
  "parts of a split, one after the other": [
    [
      ["split 480 g buttercream in 4 bowls"],
      ["first one is rose flavor", "how much rose flavor for 120 g buttercream"],
      ["the next one 5 percent almond flavor", "5 % almond flavor in 120 g buttercream"],
      [
        "third gets freeze dried raspberry powder, how much",
        "freeze dried raspberry powder for 120 g buttercream",
      ],
      ["and the last one cocoa", "cocoa for 120 g buttercream"],
    ],
    [
      ["450 g ganache into three equal parts"],
      ["one with rum please", "rum for 150 g ganache"],
      ["another with instant coffee", "instant coffee for 150 g ganache"],
      ["the third one hazelnut paste, 12 percent", "12 % hazelnut paste in 150 g ganache"],
    ],
    [
      ["divide 600 g batter between 2 bowls"],
      ["one turns pink, gel color", "gel color for 300 g batter"],
      ["the other powder color", "powder color for 300 g batter"],
    ],
    [
      ["split 500 g buttercream in two"],
      ["one bowl gets lemon extract", "lemon extract for 250 g buttercream"],
      ["and the other one 3.5 % strawberry flavor", "3.5 % strawberry flavor in 250 g buttercream"],
    ],
    [
      ["dark ganache for piping from 200 g chocolate", "dark ganache for piping from 200 g chocolate"],
      ["split that in 3"],
      ["one third gets orange oil", "orange oil for 120 g ganache"],
      ["another third 2 % instant coffee", "2 % instant coffee in 120 g ganache"],
      ["timer 12 min for the oven"],
      ["and the last third salt, how much", "salt for 120 g ganache"],
    ],
    [
      ["share 630 g of buttercream out over three bowls please"],
      ["ill make one of them lavender flavor", "lavender flavor for 210 g buttercream"],
      ["number two is going to be pistachio paste", "pistachio paste for 210 g buttercream"],
      ["and number three 4% peach flavor", "4 % peach flavor in 210 g buttercream"],
    ],
    [
      ["split 360 g buttercream in 3"],
      ["one got 6 g of pear flavor, is that ok", "6 g pear flavor in 120 g buttercream, is that ok"],
      ["second one got 4 g plum flavor, ok?", "4 g plum flavor in 120 g buttercream, is that ok"],
    ],
    [
      ["split 560 g buttercream 4 ways"],
      ["how much cherry flavor for the first", "cherry flavor for 140 g buttercream"],
      ["the second: maple flavor", "maple flavor for 140 g buttercream"],
      ["3 should be matcha", undefined],
      ["a fourth with lime zest", "lime zest for 140 g buttercream"],
    ],
    [
      ["600 g batter 3:2:1, pink yellow white"],
      ["the pink one gets gel", "gel color for 300 g batter"],
      ["the yellow one powder color", "powder color for 200 g batter"],
    ],
    [
      ["split 500 g buttercream 3 to 2"],
      ["the bigger one gets vanilla extract", "vanilla extract for 300 g buttercream"],
      ["smaller one matcha", "matcha for 200 g buttercream"],
    ],
    [
      ["100 g whites for swiss buttercream please"],
      ["split it in half"],
      ["one half gets espresso powder", "espresso powder for 250 g buttercream"],
      ["other half 3 % mint flavor", "3 % mint flavor in 250 g buttercream"],
    ],
  ],
  "parts in other words": [
    [
      ["divvy 540 g buttercream up into three"],
      ["so the first is caramel", "caramel flavor for 180 g buttercream"],
      ["second one: coffee extract", "coffee extract for 180 g buttercream"],
      ["and the third, 5% banana", "5 % banana flavor in 180 g buttercream"],
    ],
    [
      ["i want 700 g batter in four equal bowls"],
      ["gel for one of them", "gel color for 175 g batter"],
      ["red powder color in the second one please", "powder color for 175 g batter"],
      ["third: 2 g gel color, is that ok", "2 g gel color in 175 g batter, is that ok"],
    ],
    [
      ["portion 450 g buttercream into 3 tubs"],
      ["tub one has raspberry jam in it, how much", "raspberry jam for 150 g buttercream"],
      ["the remaining one vanilla bean paste", "vanilla bean paste for 150 g buttercream"],
    ],
    [
      ["split 420 g buttercream in 3"],
      ["one stays plain, one gets rum", "rum for 140 g buttercream"],
      ["leave the first plain, the second gets 4 % lime flavor", "4 % lime flavor in 140 g buttercream"],
      // two of three
      ["the other two get salt", "salt for 280 g buttercream"],
    ],
    [
      ["split 600 g buttercream 2:1"],
      ["the first part gets pistachio paste", "pistachio paste for 400 g buttercream"],
      ["the second part rum", "rum for 200 g buttercream"],
    ],
    [["split 420 g buttercream in 3"], ["300 g ganache, rum for it", "rum for 300 g ganache"]],
  ],
  "a number that is a bowl": [
    [
      ["whats 2/3 of 450"],
      ["thats how much ganache i have in grams. rum for it", "rum for 300 g ganache"],
      ["salt instead", "salt for 300 g ganache"],
    ],
    [
      ["14 oz in grams", "14 oz in grams"],
      ["that is my buttercream. how much raspberry flavor", "raspberry flavor for 14 oz buttercream"],
    ],
    [
      ["half of 700"],
      [
        "the buttercream weighs that many grams, how much lemon extract",
        "lemon extract for 350 g buttercream",
      ],
      ["lemon zest instead", "lemon zest for 350 g buttercream"],
    ],
    [
      ["40 % of 600"],
      ["so thats my ganache, grams. hazelnut paste for that", "hazelnut paste for 240 g ganache"],
    ],
    [
      ["3/8 of 800"],
      ["ok so thats the weight of my buttercream, cocoa for it?", "cocoa for 300 g buttercream"],
    ],
  ],
  "a part of the filling by its name": [
    [
      ["60 macarons, how much filling"],
      ["a quarter raspberry jam, the rest ganache, split it"],
      // 60 macarons take 395.530435 g (data/rules: the house's filling); three quarters of it
      ["rum for the ganache part", "rum for 296.647826 g ganache"],
      ["and salt in the ganache part", "salt for 296.647826 g ganache"],
    ],
    [
      ["400 g filling, 30 percent caramel the rest buttercream, split it"],
      ["flavor for the buttercream", "flavor for 280 g buttercream"],
    ],
    [
      ["filling for 45 macarons"],
      ["two thirds buttercream, one third lemon curd, split that"],
      // 45 take 296.647826 g
      ["vanilla extract for the buttercream part", "vanilla extract for 197.765217 g buttercream"],
    ],
  ],
  "a part that is made of a mix": [
    [
      ["filling for 48 macarons with a ring of buttercream and jam in the center"],
      // 48 take 316.424348 g, 60 % of it in the ring (data/rules)
      ["flavor for the buttercream part", "flavor for 189.854609 g buttercream"],
    ],
    [
      ["divide 500 g filling: 60 percent ganache, the rest caramel"],
      ["mint flavor for the ganache", "mint flavor for 300 g ganache"],
    ],
  ],
  "another kind, and back to the one before": [
    [
      ["dark ganache for piping from 200 g chocolate"],
      ["how many macarons would that fill"],
      ["and if it was milk choc, 240 g", "milk ganache for piping from 240 g chocolate"],
    ],
    [
      ["milk ganache for piping from 250 g chocolate"],
      ["how many macarons is that enough for"],
      ["same for white chocolate, 200 g of it", "white ganache for piping from 200 g chocolate"],
      ["and how many does that one fill", "how many macarons does 280 g filling fill"],
      ["back to the milk one, make it 180 g chocolate", "milk ganache for piping from 180 g chocolate"],
    ],
    [
      ["dark ganache for piping, 150 g cream"],
      ["timer 10 min"],
      ["now white ganache from 100 g cream, same use", "white ganache for piping from 100 g cream"],
      ["back to the dark one with 200 g cream", "dark ganache for piping from 200 g cream"],
    ],
    [
      ["white ganache to pipe from 300 g chocolate"],
      ["how many macarons does it fill"],
      ["now the same with dark, 240 g", "dark ganache for piping from 240 g chocolate"],
      ["returning to the white, only 150 g chocolate", "white ganache for piping from 150 g chocolate"],
    ],
    [
      ["smbc from 90 g whites"],
      ["how many macarons does it fill"],
      ["back to the buttercream, make it 120 g whites", "smbc from 120 g whites"],
    ],
  ],
  "one half dark, the other white": [
    [
      ["filling for 30 macarons"],
      // 30 take 197.765217 g
      [
        "half of it milk and half dark ganache. milk half first",
        "98.8826085 g milk ganache for piping, what goes in",
      ],
      ["then the dark half", "98.8826085 g dark ganache for piping, what goes in"],
      ["rum for that half", "rum for 98.8826085 g ganache"],
    ],
    [
      ["400 g white ganache for piping, what goes in"],
      [
        "no, half of it white and half milk. the white half first",
        "200 g white ganache for piping, what goes in",
      ],
      ["and the milk half", "200 g milk ganache for piping, what goes in"],
    ],
  ],
  "of what was asked before": [
    [
      ["how many macarons from 620 g batter"],
      ["buttercream for those"],
      ["and how many 3 cm ones out of that 620 g", "how many 3 cm macarons from 620 g batter"],
    ],
    [
      ["my ganache is split, theres 250 g of it"],
      ["the second bowl broke too, its 150 g", "my ganache split, 150 g of it"],
      ["new one then, 160 g dark chocolate, to pipe", "dark ganache for piping from 160 g chocolate"],
    ],
    [
      ["how many macarons from 700 g batter"],
      ["filling for them"],
      ["and if they are 3 cm, how many from the 700", "how many 3 cm macarons from 700 g batter"],
    ],
    [
      ["10 oz butter in g"],
      ["what smbc can i make with all of that butter", "smbc from 10 oz butter"],
      ["vanilla extract for the lot", undefined],
      ["and with only half of the butter, what smbc do i get then", "smbc from 5 oz butter"],
    ],
    [
      ["240 g cream, dark ganache for piping"],
      ["rum for all of it"],
      ["and if i take just half of the cream, what ganache then", "dark ganache for piping from 120 g cream"],
    ],
    [["my ganache split, 300 g"], ["the other bowl is 180 g and split too", "my ganache split, 180 g of it"]],
    [
      ["12 g of mango flavor went into 200 g buttercream, too much?"],
      [
        "how much buttercream do i add",
        "12 g mango flavor in 200 g buttercream, how much plain buttercream do i add",
      ],
    ],
  ],
};

it("what went into the next part is judged by itself, behind one that was judged: 4 / 150", async () => {
  const { of } = await talk(
    "6 g pear flavor in 120 g buttercream, is that ok",
    "4 g plum flavor in 150 g buttercream, is that ok",
  );
  expect(of("share")?.value).toBeCloseTo(2.666667, 5);
});

it("of parts that weigh unlike, one is none of them yet: it asks", async () => {
  const [answer] = await lastOf("split 600 g buttercream 2:1", "one gets rum, how much");
  expect(answer?.figures ?? []).toEqual([]);
});

it("both halves of one filling weigh the same: half of 329.608696", async () => {
  const answers = await lastOf("filling for 50 macarons", "half of it dark ganache and half white ganache");
  expect(answers.map(({ figures = [] }) => figures.find(({ name }) => name === "total")?.value)).toEqual([
    expect.closeTo(164.804348, 5),
    expect.closeTo(164.804348, 5),
  ]);
});

for (const [kind, all] of Object.entries(chats))
  describe(kind, () => {
    it.each(all.map((turns) => ({ name: turns.map(([say]) => say).join(" | "), turns })))(
      "$name",
      ({ turns }) => holds(turns),
    );
  });
