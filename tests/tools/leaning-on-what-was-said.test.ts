/**
 * Turns that lean on what was said or answered before: an earlier size, one of several, a number told as a change, a
 * pointing word for the answer. Expected values are worked by hand, the rule beside each.
 */
import { describe, expect, it } from "vitest";
import { baker, figureOf, onlyOf } from "../support/ask.ts";
import { near, range } from "../support/near.ts";

/** A concentrated flavor in buttercream is 3-5 % of it (common practice): 340 g take 10.2 to 17 g. */
describe("back to a size before", () => {
  const start = ["raspberry flavour for 340 g buttercream", "i might just do half of that"];
  it.each([
    "no, go back to the full lot",
    "back to the whole amount please",
    "ok do all of it after all",
    "undo the halving, the whole amount again",
    "no, the first amount",
    "as it was before",
    "go back to the 340",
    "hmm no, what i said first",
    "no, go back to the full lot, and coffee flavouring this time",
    "coffee for the full amount",
  ])("%s", async (said) => {
    expect(await figureOf("flavor", ...start, said)).toMatchObject(range(10.2, 17));
  });

  it("is of a part, where the whole was no more than talk", async () => {
    expect(
      await figureOf("flavor", "lemon flavour for 300 g buttercream", "and for the whole lot"),
    ).toMatchObject(range(9, 15));
  });

  // 0.42 × 3.8² / 0.92 g of filling a macaron (from memory): 40 take 263.687 g
  it.each(["no, just the once", "the single amount", "no, the first number"])(
    "of macarons: %s",
    async (said) => {
      expect(await figureOf("filling", "filling for 40 macarons", "double that", said)).toMatchObject(
        near(263.687, 2),
      );
    },
  );

  // whites 200 × 100 / 460 = 43.5 g: two eggs' at 33 g; 400 g would take 87 g and three
  it("takes the rest of the sentence along", async () => {
    const answer = await onlyOf(
      "200 g of batter, what do i weigh",
      "better 400",
      "no, the first one. how many egg whites is it",
    );
    expect(answer?.figures).toContainEqual(expect.objectContaining({ value: 2, unit: "whites" }));
  });

  // 110 shells are 4 trays of 30, 44 are 2
  it("asks another figure of it", async () => {
    expect(
      await figureOf("trays", "batter for 50 macarons", "make it 20", "trays for the original number"),
    ).toMatchObject(near(4, 2));
  });

  it("finds it with a timer between", async () => {
    const turns = [
      "100 g whites, what else for shells",
      "140",
      "15 minute timer",
      "the first amount after all",
    ];
    expect(await figureOf("almond flour", ...turns)).toMatchObject(near(130, 2));
  });

  it("leaves the one of timers to timers", async () => {
    const answer = await onlyOf("two timers: 8 minutes for tray one, 14 for tray two", "stop the first one");
    expect(answer?.tool).toBe("timer");
  });
});

describe("one of several", () => {
  const cups = "3 cups of almond flour in grams and 2 cups powdered sugar too";
  // 3 × 95 g of almond flour, whites = 285 / 1.3
  it.each([
    "the first one goes all into shells, so what are the other ingredients",
    "the first goes into shells, what else do i need",
    "the almond flour goes into shells, what else",
  ])("%s", async (said) => {
    expect(await figureOf("whites", cups, said)).toMatchObject(near(285 / 1.3, 2));
  });

  it("the larger of two", async () => {
    // 2 cups of cream are 476 g; dark piping ganache 1.25 : 1
    const turns = [
      "1 cup cream in grams and 2 cups cream too",
      "use the bigger one for dark piping ganache, how much chocolate",
    ];
    expect(await figureOf("chocolate", ...turns)).toMatchObject(near(595, 2));
  });

  // 48 × 0.53 × 3² / 0.96
  it.each(["How much batter for 48 shells of the small size?", "batter for 48 shells of the smaller size"])(
    "%s",
    async (said) => {
      const turns = ["Number of 30 mm shells I can get on one tray?", "and at 45", said];
      expect(await figureOf("batter", ...turns)).toMatchObject(near(238.5, 2));
    },
  );

  // 20 × 0.42 × 5² / 0.92
  it("the big ones, with their number", async () => {
    const turns = ["batter for 20 macarons of 5 cm", "and 20 of 3 cm", "filling for the big ones"];
    expect(await figureOf("filling", ...turns)).toMatchObject(near(228.26, 2));
  });

  it("both sums together", async () => {
    // 20 % of 450 and of 600: 90 + 120
    expect(await figureOf("result", "what's 20% of 450", "and of 600", "add the two")).toMatchObject(
      near(210, 2),
    );
  });
});

describe("a number said once more, or beside the answer", () => {
  // ganache 3-4 %: 12 / 0.04 to 12 / 0.03
  it.each(["And those 12 in ganache?", "and that 12 g in ganache", "would the same 12 in ganache do"])(
    "%s",
    async (said) => {
      const turns = ["12 g lemon flavour, how much buttercream will it do?", said];
      expect(await figureOf("base", ...turns)).toMatchObject(range(300, 400));
    },
  );

  // hazelnut paste 10-20 %: 20 / 0.2 to 20 / 0.1
  it("how much the flavor that there is will do", async () => {
    const turns = [
      "hazelnut paste for 300 g ganache",
      "i only have 20 g of it",
      "so how much ganache can i make with that",
    ];
    expect(await figureOf("base", ...turns)).toMatchObject(range(100, 200));
  });

  it.each([
    [
      "100 g whites, what else for shells",
      "is it under 500 g of batter altogether",
      /^Less than 500 g: 460 g/,
    ],
    ["batter for 40 macarons", "is that more than 600 g", /^More than 600 g: 702 g/],
    ["380 g batter makes how many", "is that more than 20 macarons", /^More than 20 macarons: 23 macarons/],
    ["3 cups sugar in grams", "is that more than half a kilo", /^More than 500 g: 600 g/],
  ])("%s: %s", async (first, said, headline) => {
    expect((await onlyOf(first, said))?.headline).toMatch(headline);
  });

  it("is answered once where it is asked twice", async () => {
    const turns = [
      "125 g granulated for shells, the rest?",
      "is that more than 600 g of batter all in all? what does it come to",
    ];
    expect(await figureOf("total", ...turns)).toMatchObject(near(575, 2));
  });

  // 145 − 20 = 125 °C, × 9/5 + 32
  it.each(["what you just gave me, in fahrenheit", "ok, and your answer in fahrenheit"])(
    "%s",
    async (said) => {
      expect(await figureOf("result", "145 C conventional, for my fan oven?", said)).toMatchObject(
        near(257, 2),
      );
    },
  );

  it.each([
    "when does that go off",
    "at what time does it go off",
    "what time will it beep",
    "when do i get reminded",
  ])("%s", async (said) => {
    const answer = await onlyOf("remind me in 50 minutes to take the butter out", said);
    expect(answer?.tool).toBe("timer");
    expect(answer?.figures).toContainEqual({ name: "left", value: 50, unit: "min" });
  });

  it.each([
    "read it back to me",
    "say it back please",
    "what did you put down",
    "ok, show me what you wrote",
  ])("%s", async (said) => {
    const answer = await onlyOf("note rose batch, soft feet", said);
    expect(`${answer?.tool}: ${answer?.headline}`).toMatch(/^recall: .*rose batch, soft feet/);
  });
});

describe("told as a change", () => {
  // ceil(22 × 52 / 10) = 115 shells, 32 macarons 71
  it.each([
    ["my friend wants 12 more", 115],
    ["she ordered another 12", 115],
    ["the bride asked for a dozen extra", 115],
    ["12 more are needed", 115],
    ["take off 8", 71],
    ["lets leave 8 out", 71],
  ])("%s", async (said, shells) => {
    expect(await figureOf("shells", "batter for 40 macarons", said)).toMatchObject(near(shells, 2));
  });

  // 6.5922 g a macaron: 34 and 32 of them
  it.each([
    ["i dropped six of them", 224.134],
    ["the dog ate 6", 224.134],
    ["minus 8", 210.95],
    ["8 were eaten", 210.95],
  ])("filling, %s", async (said, filling) => {
    expect(await figureOf("filling", "filling for 40 macarons", said)).toMatchObject(near(filling, 2));
  });

  it("stretches the timer that was set, and sets no other", async () => {
    const { ask } = baker();
    await ask("20 minute timer for the oven");
    await ask("can it be half an hour");
    const [listed] = await ask("which timers are on");
    expect(listed?.items).toHaveLength(1);
  });
});

describe("put right", () => {
  const put = "put 14 g rum in 200 g ganache, too much?";
  // 14 / 300 and 14 / 350, rum 2-5 %
  it.each([
    ["the ganache was actually 300 g", 14 / 3],
    ["turns out the ganache weighs 350 g", 4],
    ["i misjudged, the bowl has 350 g", 4],
    ["I misread, the ganache is just 350 g", 4],
  ])("%s", async (said, share) => {
    expect(await figureOf("share", put, said)).toMatchObject(near(share, 2));
  });

  // whites 100 : sugar 150 : butter 250
  it("the other part of the mix", async () => {
    const turns = ["150 g butter, meringue buttercream", "i mean 150 g sugar", "no, whites"];
    expect(await figureOf("butter", ...turns)).toMatchObject(near(375, 2));
  });

  // 300 g fill floor(300 × 0.92 / (0.42 × 25)) of 5 cm
  it.each(["mine are 5 cm", "my macarons are 5 cm", "the shells are 5 cm"])("%s", async (said) => {
    expect(await figureOf("macarons", "got 300 g of filling here how many can i fill", said)).toMatchObject(
      near(26, 2),
    );
  });

  // 20 / (1 − 0.45)
  it.each(["and with a smaller margin, 45", "a different margin: 45", "with 45 for the margin"])(
    "%s",
    async (said) => {
      expect(await figureOf("price", "costs £20, price at 55 % margin", said)).toMatchObject(near(36.364, 2));
    },
  );

  it("the usual after so many percent, and so many percent again", async () => {
    const turns = ["lemon flavor for 300 g buttercream", "at 4 percent", "no, the usual"];
    expect(await figureOf("flavor", ...turns)).toMatchObject(range(9, 15));
    expect(await figureOf("flavor", ...turns, "and at 5")).toMatchObject(near(15, 2));
  });
});

describe("back to what was asked, with something between", () => {
  // 5 oz are 141.748 g, × 1.3
  it.each(["ok use 5 oz of whites instead", "take 5 oz of whites then", "so use that much whites"])(
    "%s",
    async (said) => {
      const turns = ["100 g whites, what else for shells?", "5 oz in grams", said];
      expect(await figureOf("almond flour", ...turns)).toMatchObject(near(184.272, 2));
    },
  );

  it("leaves a conversion a conversion", async () => {
    const answer = await onlyOf(
      "100 g whites, what else for shells?",
      "5 oz in grams",
      "and 6 oz whites in grams",
    );
    expect(answer?.tool).toBe("convert");
  });

  // 176 shells on trays of 30; ganache 3-4 %
  it("goes on behind a timer", async () => {
    const timer = "12 minute timer";
    expect(
      await figureOf("trays", "sixty macarons, how much batter", timer, "and with 80, trays?"),
    ).toMatchObject(near(6, 2));
    expect(await figureOf("flavor", "flavor for 300 g ganache", timer, "and for 400 g?")).toMatchObject(
      range(12, 16),
    );
  });

  // 16 / 290 g
  it.each(["back to the orange, i put 16 g in. too much?", "with the orange, 16 g went in, too much?"])(
    "%s",
    async (said) => {
      const turns = ["orange flavour for 290 g buttercream", "rum for 200 g ganache", said];
      expect(await figureOf("share", ...turns)).toMatchObject(near(5.517, 2));
    },
  );
});

describe("what a mix weighs, said beside it", () => {
  it.each([
    ["orange flavour for my buttercream, it weighs 290", 8.7, 14.5],
    ["coffee flavour for the buttercream. it came to 510", 15.3, 25.5],
    ["lemon flavour for my ganache? it's 240 on the scale", 7.2, 9.6],
  ])("%s", async (said, low, high) => {
    expect(await figureOf("flavor", said)).toMatchObject(range(low, high));
  });

  // gel color is 0.5-1.5 % of the batter, and never the weight said of it
  it("is never the flavor's weight", async () => {
    expect(
      await figureOf("gel color", "how much gel colour for my batter, weighs about 480 g"),
    ).toMatchObject(range(2.4, 7.2));
    expect(await figureOf("rum", "how much rum for my ganache, weighing 300 g")).toMatchObject(range(6, 15));
  });

  // firm dark ganache is 2 : 1, piping 1.25 : 1
  it("is what all packs weigh together", async () => {
    const bars =
      "I bought three bars of dark, 300 grams together. Cream for a firm ganache to roll balls from?";
    expect(await figureOf("cream", bars)).toMatchObject(near(150, 2));
    expect(await figureOf("cream", bars, "Changed my mind, I'll pipe it")).toMatchObject(near(240, 2));
    expect(await figureOf("total", "2 tubs of butter, 500 g in total, meringue buttercream")).toMatchObject(
      near(1000, 2),
    );
  });

  // 34 macarons take 224.134 g: a fifth whites
  it("is of the mix that is to be made of it", async () => {
    const turns = [
      "filling for 34 macarons, and 20 minutes on a timer",
      "that filling will be swiss meringue buttercream, what goes into it",
    ];
    expect(await figureOf("whites", ...turns)).toMatchObject(near(44.827, 2));
  });
});
