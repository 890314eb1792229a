/**
 * Other bakes and other matters are turned down by name; the same words told in passing spoil nothing. And what isn't
 * wanted is left alone, beside what is. Expected values by hand from the published rules that stand beside them.
 */
import { describe, expect, test } from "vitest";
import { baker } from "../support/ask.ts";

/** The answers to the last turn of a talk. */
async function last(talk: string) {
  const { ask } = baker();
  let answers: Awaited<ReturnType<typeof ask>> = [];
  for (const turn of talk.split("|")) answers = await ask(turn.trim());
  return answers;
}

const ends = (talk: string) => last(talk).then((answers) => answers.map(({ status }) => status));

describe("another bake is what it is about", () => {
  test.each([
    ["what amount of flavoring goes into 640 g of banana muffin batter", "banana muffin batter"],
    ["how much vanilla extract for 500 g cake batter", "cake batter"],
    ["gel color for 700 g of cupcake batter please", "cupcake batter"],
    ["lavender oil for 300 g candle wax?", "candle wax"],
    ["how many cupcakes do i get from 600 g of batter", "cupcakes"],
    ["how much batter for 24 cupcakes", "cupcakes"],
    ["how much frosting for 24 cupcakes", "cupcakes"],
    ["plan a birthday cake for saturday 3 pm", "birthday cake"],
    ["label for my soy candles", "soy candles"],
    ["allergens in my carrot cake", "carrot cake"],
    ["how long do cupcakes keep in the fridge", "cupcakes"],
    ["shopping list for 40 cupcakes", "cupcakes"],
    ["im making cupcakes. how much filling for 24", "cupcakes"],
    ["flavor for 230 g buttercream | and a 900 g loaf of brioche dough", "loaf"],
    ["filling for 40 macarons | for 40 cupcakes?", "cupcakes"],
    ["filling for 40 macarons | what about 2 cakes", "cakes"],
    ["filling for 40 macarons | for 40 cupcakes? | and for 60?", "cupcakes"],
    ["24 macarons for tomorrow 4:30 pm, when do i start | 24 cupcakes for then?", "cupcakes"],
  ])("%s", async (talk, name) => {
    const [answer, ...more] = await last(talk);
    expect(more).toEqual([]);
    expect([answer?.status, answer?.figures]).toEqual(["declined", undefined]);
    expect(answer?.headline).toContain(name);
  });

  test("the nearest thing that can be asked is shown", async () => {
    const [answer] = await last("filling for 40 macarons | for 40 cupcakes?");
    expect(answer?.headline).toMatch(/filling do I make for 24 macarons/);
  });
});

// 3-5 % of 230 g (common practice); 0.42 × 3.8² g a macaron, 8 % left in the bag (from memory)
const dose = { low: 6.9, high: 11.5 };
const filling = (40 * 0.42 * 3.8 ** 2) / 0.92;

describe("another bake is told in passing", () => {
  test.each([
    "230 g buttercream left over from cupcakes, how much flavor",
    "230 g buttercream, it also goes on cupcakes, flavor?",
    "cupcake buttercream 230 g, how much flavor",
    "the kids ate the pizza. flavor for 230 g buttercream?",
    "230 g buttercream, how much banana flavor",
    "filling for 40 macarons | for 40 cupcakes? | ok then flavor for 230 g buttercream",
  ])("%s", async (talk) => {
    const [figure] = (await last(talk))[0]?.figures ?? [];
    expect(figure?.low).toBeCloseTo(dose.low, 6);
    expect(figure?.high).toBeCloseTo(dose.high, 6);
  });

  test.each([
    "party has cupcakes too, filling for 40 macarons?",
    "instead of a cake we do a macaron tower, filling for 40 macarons",
    "calories dont matter, filling for 40 macarons",
  ])("%s", async (talk) => {
    expect((await last(talk))[0]?.figures?.[0]?.value).toBeCloseTo(filling, 6);
  });

  test.each([
    ["set a timer 20 min for the bread", "timer"],
    ["note: banana muffin batch, tasted great", "note"],
    ["6 oz of bread flour in grams", "convert"],
    ["dark ganache to pour over a cake, 180 g cream, how much chocolate", "ganache"],
    ["ive promised cupcakes as well, 750 g of swiss meringue buttercream, what goes in", "buttercream"],
    ["save recipe brownies: 200 g butter, 100 g sugar | double brownies", "scale"],
    ["why are my shells flat like biscuits", "trouble"],
  ])("%s", async (talk, tool) => {
    expect((await last(talk)).map((each) => [each.tool, each.status])).toEqual([[tool, "answered"]]);
  });
});

describe("another matter, whatever numbers stand in it", () => {
  test.each([
    "who won the match, 3-1?",
    "whats the score, 2-2?",
    "calories in one macaron 3.8 cm",
    "carbs in 12 macarons",
    "how much sugar is in one macaron",
    "nutrition label for 20 macarons",
    "how often do i water my orchid",
    "how do i unbend a baking sheet",
    "text my sister that its 40 macarons",
    "125 g whites, what to weigh | how do i fix the bent tray",
    "set a timer for 11 min | make me a playlist of 10 songs",
    "340 f to c and 22 min on the timer | 22 of what is in a cup",
    "how many macarons for 30 guests",
    "how many macs do i need for 12 kids",
    "18 kids at the party. how many macs?",
    "but why is that so",
  ])("%s", async (talk) => {
    expect(await ends(talk)).toEqual(["declined"]);
  });

  test.each([
    "how do i fix a split ganache",
    "how do i fix a tray of hollow shells",
    "15 guests, 2 macarons each, how much batter",
  ])("%s is ours", async (talk) => {
    expect(await ends(talk)).toEqual(["answered"]);
  });

  test.each(["if i had a 4th hand, lol", "i wish i had 2 ovens", "could use 3 more hands here lol"])(
    "a sigh weighs nothing: %s",
    async (sigh) => {
      const [answer] = await last(`flavor for 230 g buttercream | ${sigh}`);
      expect([answer?.tool, answer?.figures]).toEqual(["help", undefined]);
    },
  );

  test.each(["caramelised pink", "gold", "ruby", "blond", "toasted white"])(
    "no ratio for %s chocolate",
    async (kind) => {
      const talk = `dark ganache to pipe, 350 g of chocolate. cream? | what about ${kind} chocolate, you got a ratio`;
      const [answer] = await last(talk);
      expect(answer?.status).not.toBe("answered");
      expect(answer?.figures).toBeUndefined();
    },
  );
});

describe("what isn't wanted is left alone", () => {
  // vanilla extract 1-2 % of 340 g (common practice)
  test.each([
    "dont need salt this time only vanilla extract, 340 g of cream cheese filling",
    "i dont want salt, only vanilla extract in 340 g cream cheese filling",
    "never mind salt, vanilla extract in 340 g cream cheese filling?",
    "vanilla extract for 340 g cream cheese filling, leave the salt out",
    "340 g cream cheese filling, just vanilla extract, salts not needed",
    "vanilla extract in 340 g cream cheese filling, dont bother with salt",
  ])("%s", async (talk) => {
    const answers = await last(talk);
    expect(answers.map(({ figures }) => figures?.map(({ low, high }) => [low, high]))).toEqual([
      [[expect.closeTo(3.4, 6), expect.closeTo(6.8, 6)]],
    ]);
  });

  test.each([
    "dont set a timer! just say how long shells rest",
    "skip the timer, just tell me how long shells rest",
    "how long do shells rest, dont start a timer",
    "no need for a timer, how long do the shells rest",
  ])("%s", async (talk) => {
    const answers = await last(talk);
    expect(answers.map(({ tool }) => tool)).toEqual(["method"]);
  });

  test("don't set 10 min, set 12 min", async () => {
    const [answer, ...more] = await last("don't set 10 min, set 12 min");
    expect([answer?.tool, answer?.figures?.[0]?.value, more.length]).toEqual(["timer", 12, 0]);
  });

  test.each([
    "what rule did you use there, dont want another number",
    "dont need another number, just the rule",
    "which rule is that from, no numbers please",
    "whats the rule for that",
    "did you make that up",
  ])("%s", async (why) => {
    const answers = await last(`610 g of batter, how many shells | ${why}`);
    expect(answers.map(({ tool }) => tool)).toEqual(["explain"]);
    expect(answers[0]?.headline).toMatch(/0\.53|7\.65/);
  });
});

describe("where a limit of keeping comes from", () => {
  // FDA Food Code 2022, 3-501.17 (7 days); USDA FSIS (2 h)
  test.each([
    ["is the 7 day limit your own invention or published", /FDA Food Code/],
    ["did you make up the 7 day limit or is it published", /FDA Food Code/],
    ["who says 7 days in the fridge", /FDA Food Code/],
    ["is the 2 hour limit published", /USDA FSIS/],
    ["the 2 hours out limit, who says", /USDA FSIS/],
  ])("%s", async (say, source) => {
    const [answer] = await last(say);
    expect([answer?.tool, answer?.rule?.basis]).toEqual(["keep", "published"]);
    expect(answer?.rule?.source).toMatch(source);
  });
});

describe("her own recipe is no house formula", () => {
  test("it is asked for, and taken times what was said", async () => {
    expect(await ends("triple my recipe pls")).toEqual(["asking"]);
    const [answer] = await last("triple my recipe pls | its 80 g mascarpone 30 g cream 9 g icing sugar");
    // 3 × 80, 3 × 30, 3 × 9
    expect(answer?.figures?.slice(0, 3).map(({ value }) => value)).toEqual([240, 90, 27]);
  });
});

test.each([
  ["coffee", "note: coffee batch, slightly too strong | what had i written on coffee"],
  ["rose", "note for march 7: rose, 22 good ones | what did i make on march 6 | last saturday i mean"],
])("%s is read out of the notes", async (taste, talk) => {
  const [answer] = await last(talk);
  expect(answer?.tool).toBe("recall");
  expect(JSON.stringify(answer)).toContain(taste);
});
