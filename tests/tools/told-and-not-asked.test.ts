/**
 * What is told in passing: faults that stayed away, what others baked and have, prices that don't count, hours of guests,
 * the bowl that is fine. It gives no figure, and what is asked beside it is worked out as if it stood alone. Values by
 * hand: a ganache to pipe is 1.25 : 1 of dark, 2 : 1 of milk, 2.5 : 1 of white (common practice); one that split takes 2 %
 * of its weight at a time and 10 % at most; filled macarons keep 7 days from the day of filling (FDA Food Code 2022).
 */
import { describe, expect, it } from "vitest";
import type { Answer } from "../../src/tools/contract/index.ts";
import { baker } from "../support/ask.ts";

const figure = (answers: readonly Answer[], name: string): number | undefined =>
  answers.flatMap(({ figures = [] }) => figures).find((each) => each.name === name)?.value;

const last = async (...turns: readonly string[]): Promise<Answer[]> => {
  const { ask } = baker();
  let answers: Answer[] = [];
  for (const turn of turns) answers = await ask(turn);
  return answers;
};

describe("news that asks for nothing", () => {
  it.each([
    "my ganache did not split today, 400 g of it",
    "not one of the 60 shells was hollow this time",
    "i thought the ganache would split but it didnt, 220 g",
    "my neighbour baked pistachio ones, hers all cracked",
    "a friend made macarons yesterday and hers were hollow, poor her",
    "my mum has 900 g almond flour in her cupboard",
    "don't write this down but the lime ones were a disaster",
    "the sunday one is in the freezer behind the peas",
  ])("%s", async (said) => {
    expect((await last(said)).flatMap(({ figures = [] }) => figures)).toEqual([]);
  });

  it("is no news where help is wanted, or a verb is denied", async () => {
    expect((await last("my sister's shells came out hollow, why"))[0]?.tool).toBe("trouble");
    expect((await last("dark ganache wont pipe, its too stiff"))[0]?.tool).toBe("ganache");
    expect((await last("others in the batch were hollow"))[0]?.headline).toMatch(/hollow/i);
  });

  it("is not noted when it says so", async () => {
    const { ask, record } = baker();
    await ask("the lime ones were a disaster, don't write that down");
    expect(record().notes).toEqual([]);
  });
});

describe("of two, the one that is spoken of", () => {
  it.each([
    ["220 g ganache split, the 400 g from sunday is still fine. what do i stir into the split one", 220],
    ["the 500 g ganache is perfect but the 260 g one split. how do i rescue it", 260],
    ["my 400 g ganache is fine, the 150 g one split, what do i stir into the split one", 150],
  ])("%s", async (said, grams) => {
    const answers = await last(said);
    expect(figure(answers, "at a time")).toBeCloseTo(grams * 0.02, 6);
    expect(figure(answers, "at most")).toBeCloseTo(grams * 0.1, 6);
  });

  it.each([
    [
      "bought 500 ml cream and 180 g dark chocolate, using all the chocolate, how much of the cream for piping ganache",
      "cream",
      144,
    ],
    [
      "400 g milk chocolate and 100 g cream here, all the cream goes in, how much of the chocolate for piping",
      "chocolate",
      200,
    ],
    ["300g white chocolate ganache to pipe, 300 is the chocolate alone, no butter, cream?", "cream", 120],
    ["160 g dark ganache to pipe, 160 is the cream alone, how much chocolate", "chocolate", 200],
  ])("%s", async (said, name, grams) => {
    expect(figure(await last(said), name)).toBeCloseTo(grams, 6);
  });

  it.each([
    ["only the chocolate was wrong, it's 400", 2],
    ["cream stays, chocolate is 250", 1.25],
    ["the cream i had wrong, 100 not 200", 2],
  ])("behind 200 g dark and 200 g cream: %s", async (said, ratio) => {
    const first = "dark, 200 g chocolate and 200 g cream, what would that be good for";
    expect(figure(await last(first, said), "ratio")).toBeCloseTo(ratio, 6);
  });

  it("leaves a recipe of both parts and a share of the whole alone", async () => {
    // 200 g to 200 g is too loose to pipe: 1.25 x 200 = 250, 50 more
    const loose = "dark ganache too loose to pipe. 200 g choc, 200 g cream, how much more chocolate";
    expect(figure(await last(loose), "add chocolate")).toBeCloseTo(50, 6);
    // 540 x 2 / 3
    const shared = "i'm after 540g milk ganache in total to pipe, split that up into choc and cream";
    expect(figure(await last(shared), "chocolate")).toBeCloseTo(360, 6);
  });
});

describe("what is somebody else's", () => {
  it.each([
    ["my sister set 50 minutes on hers, set 35 minutes on mine", 35],
    ["nan leaves hers 60 min but set 35 min for me", 35],
    ["the recipe says 30 min, my sister does 45 min, set 40 min", 40],
  ])("%s", async (said, minutes) => {
    const { ask, record } = baker();
    await ask(said);
    expect(record().timers.map(({ set_ms, due_ms }) => (due_ms - set_ms) / 60_000)).toEqual([minutes]);
  });

  it("asks nobody else's margin, and gives no law", async () => {
    const bill = "$11.20 ingredients and $2.80 boxes, price for 65 % margin";
    for (const asked of [
      "the bakery on the corner asks $38, what do they earn on it",
      "is $4 an hour even legal to pay my daughter",
    ])
      expect((await last(bill, asked))[0]?.status).toBe("declined");
  });
});

describe("what doesn't count", () => {
  it.each([
    "$11.20 ingredients and $2.80 boxes, mixer was $300 years ago leave it out, price for 65 % margin",
    "leave out the $300 mixer: $11.20 ingredients, $2.80 boxes, price for 65 % margin",
    "ingredients $11.20, boxes $2.80, the mixer ($300) doesn't count, price for 65 % margin",
  ])("%s", async (said) => {
    // 11.20 + 2.80 = 14; 14 / (1 - 0.65) = 40
    const answers = await last(said);
    expect(figure(answers, "cost")).toBeCloseTo(14, 6);
    expect(figure(answers, "price")).toBeCloseTo(40, 6);
  });

  it.each([
    "300 g dark ganache for piping, oven's on at 150 and theres 24 people coming",
    "300 g dark ganache to pipe, 24 people coming",
  ])("%s", async (said) => {
    // 300 x 1.25 / 2.25
    expect(figure(await last(said), "chocolate")).toBeCloseTo(166.6667, 3);
  });

  it("an hour of guests is no deadline", async () => {
    const plain = await last("24 macarons ready sunday 2 pm, when do i start");
    const told = await last("24 macarons ready sunday 2 pm, guests only turn up at 4, when do i start");
    expect(told[0]?.headline).toBe(plain[0]?.headline);
  });

  it.each([
    "shells are from the 10th, i filled the macarons on the 12th, in the fridge, still good today?",
    "filled on the 12th, shells were from the 10th, fridge. still good?",
    "assembled on the 12th from shells baked on the 10th, fridge, still good today?",
  ])("%s", async (said) => {
    expect((await last(said))[0]?.headline).toContain("2026-03-18");
  });

  it("other food has no days here", async () => {
    for (const said of [
      "how long does victoria sponge keep in the fridge",
      "how long does jam keep in the fridge once open",
    ])
      expect((await last(said))[0]?.status).toBe("declined");
  });
});

describe("who says so", () => {
  it.each(["who decided 1.25", "says who, 1.25", "is 1.25 official", "why 1.25 and not 1"])(
    "%s",
    async (said) => {
      const answers = await last("300 g dark ganache for piping", said);
      expect(answers[0]?.tool).toBe("explain");
      expect(answers[0]?.headline).toContain("common practice");
    },
  );

  it("the heat of whites is the inspection service's", async () => {
    const answers = await last(
      "4 egg whites in swiss buttercream. sugar and butter?",
      "who says the whites have to be cooked to 71",
    );
    expect(answers[0]?.rule?.source).toContain("USDA FSIS");
  });
});

describe("a timer of anything", () => {
  it.each([
    ["15 min timer please, its for the pasta not the shells", "pasta is done stop it"],
    ["10 min timer for the bread", "cancel the bread"],
    ["15 min timer for the potatoes", "potatoes are cooked, you can stop"],
  ])("%s, then %s", async (first, then) => {
    const { ask, record } = baker();
    await ask(first);
    await ask(then);
    expect(record().timers.map(({ state }) => state)).toEqual(["stopped"]);
  });
});
