/**
 * Whose an amount is, and whether it is meant: what somebody else has, what lies in the cupboard, what there is in truth
 * beside what is supposed, a number put right, a thing said before its amount. Expected values by hand from the rules
 * that stand beside them.
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

type Named = [name: string, value: number];

/** One answer, with these figures among its own. */
async function expectFigures(talk: string, ...wanted: Named[]) {
  const [answer, ...more] = await last(talk);
  expect(more).toEqual([]);
  for (const [name, value] of wanted)
    expect(answer?.figures?.find((each) => each.name === name)?.value).toBeCloseTo(value, 6);
}

/** 3-5 % of a buttercream (common practice). */
async function expectFlavorFor(grams: number, talk: string) {
  const [answer, ...more] = await last(talk);
  expect(more).toEqual([]);
  const flavor = answer?.figures?.find(({ name }) => name === "flavor");
  expect([flavor?.low, flavor?.high].map((each) => Number(each?.toFixed(6)))).toEqual(
    [grams * 0.03, grams * 0.05].map((each) => Number(each.toFixed(6))),
  );
}

/** Whites 100 : almond flour 130 : powdered sugar 130 : granulated sugar 100 (common practice). */
const house = (whites: number): Named[] => [
  ["whites", whites],
  ["almond flour", whites * 1.3],
  ["powdered sugar", whites * 1.3],
  ["granulated sugar", whites],
];

describe("what somebody else has is told beside it", () => {
  test.each([
    [130, "my sister has half a kilo, I have 130 g buttercream, flavor for mine"],
    [180, "neighbour puts 15 g in her 300 g batch. mine is 180 g buttercream, how much flavor"],
    [225, "so my friend's batch is 350 g of buttercream. mine's smaller, 225 g. how much flavor do i want"],
    [200, "he says 8 g, she says 12 g. i have 200 g buttercream. how much flavor?"],
    [170, "aunt has 9 oz of buttercream, i have 170 g. flavor for mine"],
    [230, "how much flavor for 230 g buttercream? my sister used 20 g in hers"],
    [145, "flavor for mine please: i have 145 g of buttercream, my flatmate 600 g"],
    [140, "i have 260 g buttercream, my daughter has 140 g. how much flavor for hers?"],
    [170.09713875, "6 oz in g | thats how much buttercream i have, aunt has 9 oz. flavor for mine?"],
  ])("%d g: %s", (grams, talk) => expectFlavorFor(grams, talk));

  test("of each, both are answered", async () => {
    const answers = await last("my daughter has 140 g of buttercream and i have 260 g. flavor for each?");
    expect(answers.map(({ figures }) => figures?.[0]?.low?.toFixed(2))).toEqual(["4.20", "7.80"]);
  });

  test("whites and macarons are hers, too", async () => {
    await expectFigures(
      "the girl next door has 90 g whites, i have 70 g. scale the house recipe for me",
      ...house(70),
    );
    // 53 shells for 24 macarons, 0.53 × 3.8² g each, 4 % left in the bowl (from memory)
    await expectFigures("my sister makes 60 macarons, i make 24. how much batter for mine?", [
      "batter",
      (53 * 0.53 * 3.8 ** 2) / 0.96,
    ]);
  });

  test("what is of the baker's own bowl stays, whoever did it", async () => {
    // 15 g in 250 g
    await expectFigures("the kids tipped 15 g lemon flavor in my 250 g buttercream, is that too much", [
      "share",
      6,
    ]);
    await expectFigures("we had 300 g of ganache, she added 15 g of kirsch, is it over", ["share", 5]);
    // a recipe is scaled, whoever wrote it: 80 of its 100 g whites
    await expectFigures(
      "my aunt's card says 100 g whites, 120 g almond flour, 120 g powdered sugar, 90 g granulated sugar. i have 80 g whites, what are the others",
      ["almond flour", 96],
      ["granulated sugar", 72],
    );
  });

  test("a note keeps what others had", async () => {
    const [answer] = await last("note: my sister had 20 of them and i had 5, hazelnut, lovely");
    expect(answer?.tool).toBe("note");
  });
});

describe("what is used counts, not what there is", () => {
  test.each([
    [200, "out of 500 g buttercream i take 200 g. flavor for that?"],
    [250, "i've got 600 g buttercream, using only 250 g of it. how much flavor?"],
    [200, "i take 200 g out of the 500 g of buttercream, flavor for the 200 g"],
    [250, "there's 750 g buttercream, i keep 500 g plain and flavor 250 g. how much flavor"],
    [150, "got a kilo of buttercream, only need flavor for 150 g of it"],
    [220, "theres 600g bc but im only doing 220g of it, flavour?"],
  ])("%d g: %s", (grams, talk) => expectFlavorFor(grams, talk));

  // a large egg's white weighs 33 g (USDA SR, NDB 01124)
  test.each([
    [132, "box of 6 eggs in the fridge, im using four of the whites. rest of the shell recipe in grams?"],
    [150, "i have 1 kg of almond flour but want to use just 195 g of it. weights for the rest?"],
    [90, "half a kilo of whites in the freezer but thawed only 90 g. house recipe for that"],
    [99, "tray of 30 eggs, 3 whites go in. the rest of the shells recipe in grams?"],
    [130, "got 300 g whites, but 130 g will do. what else for shells"],
  ])("%d g whites: %s", (whites, talk) => expectFigures(talk, ...house(whites)));

  test("what is left, and what went in, stay what they are", async () => {
    await expectFigures("i have 300 g buttercream and used 12 g flavor, is that right", ["share", 4]);
    await expectFigures("i have 250 g of ganache but only 6 g of flavor, enough?", ["share", 2.4]);
  });
});

describe("what is supposed is asked about", () => {
  test.each([
    [500, "if i had 500 g buttercream (i dont, 150 is all) what flavor would the 500 take"],
    [400, "suppose i had 400 g of buttercream instead of the 200 g i've got, how much flavor then"],
    [480, "what would 480 g of buttercream need in flavor, not that i have that much, it's 120 g"],
    [300, "i have 200 g buttercream but if i had 300 g how much flavor would it be"],
    [
      260,
      "just curious, if i had 700 g of buttercream, how much flavor would go in? in truth its 260 g | and for the 260 i've really got?",
    ],
  ])("%d g: %s", (grams, talk) => expectFlavorFor(grams, talk));

  test("a condition without a second amount, and a sum, are none", async () => {
    await expectFlavorFor(260, "if i have 260 g buttercream, how much flavor");
    // dark chocolate 300 : cream 150
    await expectFigures("if i use 300 g dark chocolate and i have 150 g cream, what is it good for", [
      "ratio",
      2,
    ]);
  });
});

describe("a number is put right", () => {
  test.each([
    "not 230, 250",
    "250 not 230",
    "no wait its not 230 its 250 g",
    "i said 230 but it's 250",
    "i typed 230, meant 250",
    "not two hundred thirty, two hundred fifty",
    "sorry, 230 is wrong, its 250",
  ])("%s", (said) => expectFlavorFor(250, `flavor for 230 g buttercream | ${said}`));

  test("behind any calculator, and behind two at once", async () => {
    await expectFigures("split 400 g buttercream in 4 | not 4, 5", ["each", 80]);
    await expectFigures("150 c in f | not 150, 160", ["result", 320]);
    const both = await last("batter for 34 macarons and filling to make for them | not 34, 44");
    // 97 shells for 44 macarons; 0.42 × 3.8² g of filling in each, 8 % left in the bag (from memory)
    expect(both.map(({ figures }) => figures?.[0]?.value?.toFixed(3))).toEqual([
      ((97 * 0.53 * 3.8 ** 2) / 0.96).toFixed(3),
      ((44 * 0.42 * 3.8 ** 2) / 0.92).toFixed(3),
    ]);
  });

  test("another mix, the weight being right: 3-4 % of a ganache (common practice)", async () => {
    const [answer] = await last(
      "260 g of buttercream, flavor? | sorry no butter in that, its a dark ganache, weight is right",
    );
    expect(answer?.figures?.[0]).toMatchObject({ name: "flavor", low: 7.8, high: 10.4 });
  });

  test("half the house one is of the house recipe", () =>
    expectFigures("twice the house recipe | half of it please (half the house one)", ...house(50)));
});

describe("what could be two things is asked", () => {
  test("which spoon", async () => {
    const [asked] = await last("half a cup of egg whites in grams | a spoon of it");
    expect([asked?.status, asked?.figures]).toEqual(["asking", undefined]);
    // 243 g a cup (USDA SR, NDB 01124), a sixteenth of it a tablespoon (NIST Handbook 44)
    await expectFigures("half a cup of egg whites in grams | a spoon of it | a tablespoon", [
      "result",
      243 / 16,
    ]);
  });

  test("which paste: vanilla bean 1-2 %, nuts 10-20 % (from memory)", async () => {
    const [asked] = await last("how much paste in 200 g buttercream");
    expect([asked?.status, asked?.figures]).toEqual(["asking", undefined]);
    const [vanilla] = await last(
      "how much paste in 200 g buttercream | vanilla bean paste i mean, jar has 118 ml in it",
    );
    expect(vanilla?.figures?.[0]).toMatchObject({ low: 2, high: 4 });
    const [nut] = await last("how much paste in 200 g buttercream | pistachio");
    expect(nut?.figures?.[0]).toMatchObject({ low: 20, high: 40 });
  });

  test("a taste is in the form that was asked for: freeze-dried powder 3-8 % (from memory)", async () => {
    const [answer] = await last("how much powder in 200 g buttercream | raspberry");
    expect(answer?.figures?.[0]).toMatchObject({ low: 6, high: 16 });
  });
});

describe("the thing comes first", () => {
  test("what one has of it, and how much of it", async () => {
    await expectFigures("dark chocolate i own 200 g of. cream for a piping ganache?", ["cream", 160]);
    await expectFigures("which four weights give me shell batter of 460 g", ...house(100));
    // whites 100 : sugar 150 : butter 250 (common practice)
    await expectFigures(
      "75 g whites left over from the curd. meringue buttercream out of it, sugar and butter how much",
      ["sugar", 112.5],
      ["butter", 187.5],
    );
    const both = await last(
      "thirty macarons for the school fair, batter how much and filling how much do i make",
    );
    expect(both.map(({ tool }) => tool)).toEqual(["shells", "fill"]);
  });

  test("another timer, by its name alone", () =>
    expectFigures("8 min timer for tray 5 | how long has tray 2 got left | and tray 5", ["left", 8]));
});

// 0.53 d^2 g a shell (from memory), 2 a macaron and 10 % spare, 4 % stays in bowl and bag: 8.48 g at 4 cm
describe("somebody else's size", () => {
  test.each([
    ["my sister makes hers 5 cm, mine are 4 cm. batter for 30", (66 * 8.48) / 0.96],
    ["36 macarons, mum does 5 cm ones, mine 4", (80 * 8.48) / 0.96],
  ])("%s", (talk, batter) => expectFigures(talk, ["batter", batter]));
});

test("who has a birthday is no timer", async () =>
  expect(await last("rest timer|my daughter is 9 today!")).toMatchObject([{ tool: "help" }]));
