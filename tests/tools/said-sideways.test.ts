/**
 * Things said from the side: what is swapped, a bowl that turned out bigger, "of them" of the whites, a list divided, a
 * mix made of what was just weighed. Values by hand, by the book's rules (common practice): concentrated flavors 3 to 5 %
 * of buttercream, mint oil 0.2 to 0.5 %; ganache to pipe 1.25 : 1 of dark, 2 : 1 of milk, 2.5 : 1 of white; shells 1.3 g
 * almond flour and powdered sugar to 1 g whites and sugar; buttercream 2 : 3 : 5 of whites, sugar and butter. A shell
 * takes 0.53 × d² g of batter and a filling 0.42 × d² g, d in cm and 3.8 where none is said; 4 % of the batter and 8 % of
 * the filling stay in bowl and bag; of two fillings the ring is 60 % (from memory). What a ganache holds is summed from
 * USDA SR26, file ABBREV.
 */
import { describe, expect, it } from "vitest";
import type { Answer } from "../../src/tools/contract/index.ts";
import { baker } from "../support/ask.ts";

const last = async (...turns: readonly string[]): Promise<Answer[]> => {
  const { ask } = baker();
  let answers: Answer[] = [];
  for (const turn of turns) answers = await ask(turn);
  return answers;
};
const figure = (answers: readonly Answer[], name: string) =>
  answers.flatMap(({ figures = [] }) => figures).find((each) => each.name === name);

describe("one chocolate for another", () => {
  const dark = "cream for 220 g dark to pipe";
  it.each([
    ["swap the dark for white", 88],
    ["replace dark with milk", 110],
    ["change the dark to milk chocolate please", 110],
    ["exchange dark chocolate for white", 88],
  ])("%s", async (said, cream) =>
    expect(figure(await last(dark, said), "cream")?.value).toBeCloseTo(cream, 6),
  );

  it("is not one from the other side", async () => {
    expect(
      figure(await last("dark ganache to pipe from 140 g cream", "same 140 g cream but milk"), "chocolate")
        ?.value,
    ).toBe(280);
  });
});

describe("a bowl that holds another weight", () => {
  it.each([
    "bowls bigger actually, 260",
    "the bowl is bigger, 260 g",
    "oh the bowl's fuller than i thought, its 260",
  ])("%s", async (said) =>
    expect(figure(await last("how much violet for 185 g buttercream", said), "flavor")).toMatchObject({
      low: 7.8,
      high: 13,
    }),
  );
});

describe("how much of the mix", () => {
  it.each(["how big a buttercream would 3 g suit then", "how much buttercream is 3 g enough for"])(
    "%s",
    async (said) =>
      expect(figure(await last("is 3 g peppermint oil in 500 g buttercream ok", said), "base")).toMatchObject(
        {
          low: 600,
          high: 1500,
        },
      ),
  );

  // to 15 %: 22 / 0.15 - 120 = 26.7 g; to the middle of 5 to 15 %: 22 / 0.1 - 120 = 100 g
  it.each(["so whats the buttercream i still have to add", "what do i fold in of the plain stuff"])(
    "%s",
    async (said) => {
      const [answer] = await last("22 g raspberry jam went in 120 g buttercream, too much?", said);
      expect(answer?.figures?.[0]).toMatchObject({
        name: "add base",
        low: expect.closeTo(22 / 0.15 - 120, 6),
        high: expect.closeTo(100, 6),
      });
    },
  );
});

describe("what was just weighed or made", () => {
  it("is what a mix is made of", async () => {
    expect(
      figure(await last("2 1/4 cups almond flour to grams", "base the shells on that"), "whites")?.value,
    ).toBeCloseTo(213.75 / 1.3, 6);
    expect(
      figure(await last("2 cups butter in grams", "buttercream with that much"), "butter")?.value,
    ).toBeCloseTo(454, 0);
  });

  it("is all that a flavor goes into", async () => {
    const milk = "260 g milk choc, make it a piping ganache, cream?";
    expect((await last(milk, "matcha powder for the whole amount"))[0]?.figures?.[0]).toMatchObject({
      low: 390 * 0.015,
      high: 390 * 0.03,
    });
  });

  // water in 100 g: dark chocolate 1.25 g (19903), cream 57.71 g (01053); (200 × 1.25 + 160 × 57.71) / 360 = 26.34 %
  it("is asked what it holds", async () => {
    const said = await last("200 g dark 160 g cream what is that good for", "how much water has it got");
    expect(figure(said, "water")).toMatchObject({ unit: "%", value: expect.closeTo(9483.6 / 360, 6) });
  });
});

describe("weights said from the side", () => {
  it("of the whites, where one is lost", async () => {
    const said =
      "one white went down the sink so its just 85 g of them, what would the other three come to for the shells";
    expect(figure(await last(said), "almond flour")?.value).toBeCloseTo(110.5, 6);
  });

  it("of a list that is divided", async () => {
    const list = "270g cream cheese 90g butter 60g icing sugar, divide by 3";
    expect(figure(await last(list), "butter")?.value).toBe(30);
    expect(figure(await last(list, "half not third"), "butter")?.value).toBe(45);
  });

  it("of butter that is ready", async () => {
    const said =
      "this butter's gone lovely and soft, 325 g, so for smbc thats how much white and how much sugar";
    expect(figure(await last(said), "whites")?.value).toBe(130);
  });

  // 30 × 0.42 × 3.8² / 0.92 = 197.77 g, of which 60 and 40 %
  it("of macarons, where only their number is told", async () => {
    const by = await last(
      "im doing thirty, ring of buttercream and lemon curd in the center, how much of the two",
    );
    expect(by.map(({ tool }) => tool)).toEqual(["fill"]);
    expect([figure(by, "ring")?.value, figure(by, "center")?.value]).toEqual([
      expect.closeTo(118.66, 2),
      expect.closeTo(79.11, 2),
    ]);
  });
});

it("two things wanted of one bowl, the second named first, are both answered", async () => {
  const answers = await last(
    "500 g of smbc, what does it take, and then orange oil, how much in all of that",
  );
  expect(answers.map(({ tool }) => tool)).toEqual(["buttercream", "dose"]);
  expect(answers[1]?.figures?.[0]).toMatchObject({ low: 1, high: 2.5 });
});

it("a wish for milk chocolate is no ganache as thin as milk", async () => {
  const said = "id like milk ganache i can pour, 120 g cream, so how much chocolate";
  expect(figure(await last(said), "chocolate")?.value).toBe(180);
});

describe("a slip put right with the word for it behind", () => {
  it.each([
    ["flavor for 310 g buttercream, sorry 210 i mean", { low: 6.3, high: 10.5 }],
    ["flavor for 310 g buttercream, 210 i meant", { low: 6.3, high: 10.5 }],
    ["timer 12 min, no 14 i mean", { value: 14 }],
    ["split 300 g batter in 3, oops 4 i meant", { value: 75 }],
  ])("%s", async (said, wanted) => expect((await last(said))[0]?.figures?.[0]).toMatchObject(wanted));

  it("takes no comma of a number for one", async () => {
    const [shells] = await last("610 g batter, how many shells", "piped at 4,2 cm i mean");
    // 585.6 g are piped, 9.3492 g in each: 62.6
    expect(shells?.figures?.find(({ name }) => name === "shells")?.value).toBe(
      Math.floor((610 * 0.96) / (0.53 * 4.2 ** 2)),
    );
  });
});

describe("orders given from the side", () => {
  it.each([
    // 3 and 5 % of 370
    [
      ["how much rose for 185 g buttercream", "doubling it, 370"],
      "dose",
      [{ name: "flavor", low: 11.1, high: 18.5 }],
    ],
    // to 5 %: 13 / 0.05 - 220; to the middle, 4 %: 13 / 0.04 - 220
    [
      ["13 g caramel flavor slipped into 220 g buttercream, waaay to strong. what do i stir in"],
      "dose",
      [{ name: "add base", low: 40, high: 105 }],
    ],
    // published: USDA FSIS, egg safety
    [["smbc 300 g", "what temp over the waterbath"], "buttercream", [{ value: 71, unit: "°C" }]],
    [
      ["350 g smbc as the end result, parts pls"],
      "buttercream",
      [
        { name: "whites", value: 70 },
        { name: "sugar", value: 105 },
        { name: "butter", value: 175 },
      ],
    ],
    [
      ["timer 25 min for resting", "how long do they have left to rest"],
      "timer",
      [{ name: "left", value: 25 }],
    ],
  ])("%j", async (turns, tool, figures) => {
    const answers = await last(...turns);
    expect(answers.map((each) => [each.tool, each.status])).toEqual([[tool, "answered"]]);
    expect(answers[0]?.figures?.slice(0, figures.length)).toMatchObject(figures);
  });

  it("of feet", async () => {
    const answers = await last("feet all went sideways on half of them");
    expect(answers.map(({ headline }) => headline)).toEqual([expect.stringMatching(/^Lopsided feet/)]);
  });

  it("of a price, where the cost stands before its margin", async () => {
    expect(figure(await last("$13 cost at 50% margin what price"), "price")?.value).toBe(26);
  });

  it("never mind, and another number", async () => {
    // with a tenth of spares 40 shells are 44 and 24 are 27
    const ask = "shells for 12 macarons, weights";
    const [twelve, twenty] = [figure(await last(ask), "whites"), figure(await last(ask, "nvm 20"), "whites")];
    expect(Number(twenty?.value) / Number(twelve?.value)).toBeCloseTo(44 / 27, 6);
  });
});

describe("what an oven doesn't take", () => {
  it.each(["my oven wont take 3 trays", "my oven cant fit 2 trays", "my trays dont fit 30 shells"])(
    "keeps nothing: %s",
    async (said) => {
      const { ask, record } = baker();
      await ask(said);
      expect(record().bench).toEqual({});
    },
  );

  it("keeps what it takes at most", async () => {
    expect((await last("my oven wont take more than 2 trays"))[0]?.headline).toContain("2 trays at once");
    expect((await last("my trays dont hold more than 24 shells"))[0]?.headline).toContain("24 shells a tray");
  });
});
