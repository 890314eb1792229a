/**
 * Two things in one breath, things of a part of what was worked out, and prices and counts told by the piece: each gets
 * its own answer. Expected values are worked by hand, the rule beside each.
 */
import { describe, expect, it } from "vitest";
import { figureOf, lastOf, onlyOf } from "../support/ask.ts";
import { near, range } from "../support/near.ts";

const toolsOf = async (...turns: string[]) => (await lastOf(...turns)).map(({ tool }) => tool);
const figures = async (...turns: string[]) =>
  (await lastOf(...turns)).flatMap((each) => ("figures" in each && each.figures) || []);

describe("eggs by the piece", () => {
  // 3.60 / (12 × 50 g) = 0.006 a gram; a large egg is 50 g (USDA SR28, NDB 01123)
  it.each([
    "eggs cost me 3.60 for 12",
    "12 eggs cost me 3.60",
    "i pay 3.60 for 12 eggs",
    "a dozen eggs is 3.60",
    "eggs are $3.60 a dozen",
    "eggs cost me 30 cents each",
  ])("%s", async (said) => {
    expect((await onlyOf(said)).tool).toBe("shelf");
    expect(await figureOf("egg a kilo", said)).toMatchObject(near(6));
  });

  it("boxes are no macarons", async () =>
    expect((await figures("boxes cost me 5 for 10")).map(({ name }) => name)).toEqual(["cost"]));
});

describe("a conversion in between", () => {
  const asked = "batch costs 12.50, price at 60 % margin, and 4 oz in g";
  // 12.5 / (1 − 0.7)
  it.each(["and at 70", "at 70 percent?", "what about at 70 then"])("%s", async (said) =>
    expect(await figureOf("price", asked, said)).toMatchObject(near(12.5 / 0.3)),
  );

  it("a heat is none of it", async () =>
    expect(await toolsOf("batch costs 12.50, price at 60 % margin", "350 f in c", "and at 325")).toEqual([
      "convert",
    ]));

  it.each(["and for 4.5 cm shells", "and bigger ones, 45 mm"])("how long they bake, %s", async (said) =>
    expect(await toolsOf("how long do i bake 3.8 cm shells", said)).toEqual(["method"]),
  );

  it("and its size in inches", async () =>
    expect(
      await toolsOf("how long do i bake 3.8 cm shells and 3.8 cm in inches", "and for 4.5 cm shells"),
    ).toEqual(["method"]));
});

describe("what a filling is made of, behind a dose", () => {
  // dark, for piping: 1.25 : 1, so 400 / 2.25 of cream
  it.each(["for 400 g what cream and chocolate", "so cream and chocolate for 400 g?"])("%s", async (said) =>
    expect(await figureOf("cream", "rum for 300 g dark ganache", said)).toMatchObject(near(400 / 2.25)),
  );

  // 400 g dark chocolate / 1.25
  it("the weight of the chocolate", async () =>
    expect(await figureOf("cream", "rum for 300 g ganache", "cream for 400 g dark")).toMatchObject(
      near(320),
    ));
});

describe("two chocolates", () => {
  // dark loose 1 : 1, milk firm 2.5 : 1
  it("each asked with its use", async () => {
    const creams = (await figures("cream for 150 g dark, loose, and the cream for 150 g milk, firm")).filter(
      ({ name }) => name === "cream",
    );
    expect(creams).toMatchObject([near(150), near(60)]);
  });

  // dark firm 2 : 1, milk loose 1.5 : 1
  it("asked once", async () => {
    const creams = (await figures("how much cream for 150 g dark, firm, and for 150 g milk, loose")).filter(
      ({ name }) => name === "cream",
    );
    expect(creams).toMatchObject([near(75), near(100)]);
  });
});

describe("a dose into a part", () => {
  // gel 0.5-1.5 % of 320 g
  it("of the bigger", async () =>
    expect((await figures("split 480 g batter 2 to 1 and gel for the bigger")).at(-1)).toMatchObject(
      range(1.6, 4.8),
    ));

  // of 2 × 130 g
  it("of two of the four", async () =>
    expect(
      (await figures("split 520 g batter into four, and gel color for two of the four")).at(-1),
    ).toMatchObject(range(1.3, 3.9)));

  // 3 g of 240 g is 1.25 %
  it.each(["3 g powder color in the lemon part, is that ok", "i stirred 3 g powder color into the lemon"])(
    "%s",
    async (said) =>
      expect(await figureOf("share", "split 480 g batter into lemon and raspberry", said)).toMatchObject(
        near(1.25),
      ),
  );

  // 4 g of 240 g
  it("lemon in the first", async () =>
    expect(await figureOf("share", "split 480 g buttercream in two", "4 g lemon in the first")).toMatchObject(
      near(100 / 60),
    ));

  it("asks what so much of it was", async () => {
    const [answer] = await lastOf(
      "split 480 g buttercream into lemon and raspberry",
      "i put 40 g in the lemon",
    );
    expect(answer).toMatchObject({ tool: "split", status: "asking" });
  });

  it("40 g of the bowl itself", async () =>
    expect(
      await figureOf(
        "raspberry",
        "split 480 g buttercream into lemon and raspberry",
        "i put 40 g in the lemon",
        "of the buttercream",
      ),
    ).toMatchObject(near(440)));

  it("a part told by its weight stays one", async () =>
    expect(await figureOf("part 1", "split 480 g batter in three", "200 g in the first")).toMatchObject(
      near(200),
    ));
});

describe("an answer for the notes", () => {
  it.each([
    "flavor for 200 g buttercream, and keep it in the notes",
    "how much rum for 250 g ganache and note that down",
    "lemon flavor for 300 g buttercream, put it in the notes too",
  ])("%s", async (said) => expect(await toolsOf(said)).toEqual(["dose", "note"]));

  it("what was done is a note alone", async () =>
    expect(await toolsOf("used 8 g mint in 220 g buttercream, keep it in the notes")).toEqual(["note"]));

  it.each(["note: pistachio, about fifty of them shells shiny feet even"])("%s", async (said) =>
    expect(await figures(said)).toMatchObject([{ name: "macarons", value: 50 }]),
  );

  it.each([
    "this goes in the notes: vanilla, dried 40 min, baked 15",
    "note: vanilla, rested 40, baked 15",
    "note: vanilla, baked 15, dried 40 min",
  ])("%s", async (said) => {
    expect(await figureOf("bake", said)).toMatchObject(near(15));
    expect(await figureOf("rest", said)).toMatchObject(near(40));
  });

  it("a number alone may be macarons", async () =>
    expect(await figures("note: vanilla, baked 15")).toEqual([]));
});

describe("stock and weights", () => {
  it.each(["the fridge has 250 g butter", "in the freezer: 250 g butter", "got 250 g butter in the fridge"])(
    "%s",
    async (said) => {
      expect((await onlyOf(said)).tool).toBe("shelf");
      expect(await figureOf("butter", said)).toMatchObject(near(250));
    },
  );

  // 66 shells × 0.53 × 3.8² / 0.96 = 526.1575 g of batter; 100 of 460 are whites
  it.each(["shells for 30 baked macarons, the weights", "weights for 30 baked macarons"])(
    "%s",
    async (said) => expect(await figureOf("whites", said)).toMatchObject(near((526.1575 * 100) / 460)),
  );

  // 130 of 460 of 88 shells' batter
  it.each(["whites for 40 macarons and the almond flour", "almond flour for 40 macarons"])(
    "%s",
    async (said) =>
      expect((await figures(said)).find(({ name }) => name === "almond flour")).toMatchObject(
        near((((88 * 0.53 * 3.8 ** 2) / 0.96) * 130) / 460),
      ),
  );

  it("the eggs too", async () =>
    expect((await lastOf("batter for 40 macarons and the eggs")).map(({ headline }) => headline)).toEqual([
      expect.stringContaining("702 g batter"),
      expect.stringContaining("5 egg whites"),
    ]));
});

describe("held against what is named", () => {
  it.each([
    "do i need more than 500 g of batter",
    "will 500 g of batter be enough",
    "would it take more than 500 g",
  ])("%s", async (said) => {
    const [answer] = await lastOf("batter for 40 macarons", said);
    // 88 shells take 701.54 g
    expect(answer?.headline).toMatch(/^More than 500 g: 702 g/);
  });
});

describe("filling for what a batter gives", () => {
  // floor(552 × 0.96 / 7.6532) = 69 shells, 34 macarons; 34 × 0.42 × 3.8² / 0.92
  const filling = (34 * 0.42 * 3.8 ** 2) / 0.92;
  it.each([
    ["scale to 120 g whites and how much filling would they need"],
    ["scale to 120 g whites", "how much filling for that"],
    ["scale to 120 g whites", "filling to go with it"],
    ["filling for 552 g batter"],
  ])("%s %s", async (...turns) =>
    expect((await figures(...turns.filter(Boolean))).find(({ name }) => name === "filling")).toMatchObject(
      near(filling),
    ),
  );
});

describe("so many times", () => {
  const two = "flavor for 200 g buttercream and cream for 150 g dark chocolate";
  // 3-5 % of 400 g; 300 g / 1.25
  it.each(["double", "double both", "doubled please"])("%s is of both", async (said) =>
    expect((await figures(two, said)).filter(({ name }) => /^(?:flavor|cream)$/.test(name))).toMatchObject([
      range(12, 20),
      near(240),
    ]),
  );

  it("of one, and no house recipe", async () =>
    expect(await figureOf("cream", "cream for 150 g dark", "double")).toMatchObject(near(240)));

  // 264 = ceil(2.2 × 120) shells
  it("times 3", async () =>
    expect(await figureOf("shells", "batter for 40 macarons", "times 3")).toMatchObject(near(264)));

  it.each(["pastry cream x 2", "pastry cream ×2", "the pastry cream x 2 please"])("%s", async (said) =>
    expect(
      await figureOf(
        "milk",
        "save recipe pastry cream: 500 g milk, 100 g sugar, 80 g yolks, 40 g starch",
        said,
      ),
    ).toMatchObject(near(1000)),
  );
});

describe("lines of a bill that go and come back", () => {
  const bill = "250 g butter at 8 per kg, 200 g sugar at 1.20 per kg, what does it cost";
  it.each(["drop the sugar from it", "scrap the sugar", "take the sugar off the bill"])("%s", async (said) =>
    expect(await figureOf("cost", bill, said)).toMatchObject(near(2)),
  );
  // 2 + 0.24
  it.each(["with the sugar again", "put the sugar back", "with it again"])("%s", async (said) =>
    expect(await figureOf("cost", bill, "drop the sugar from it", said)).toMatchObject(near(2.24)),
  );
});

describe("a share ahead of its question", () => {
  it("9 g / 2 %, and 2.5 % of 350 g", async () =>
    expect(
      (
        await figures(
          "how much ganache will 9 g of flavor do at 2 percent and at 2.5 %, how much flavoring does 350 g of smbc need",
        )
      ).filter(({ name }) => /^(?:base|flavor)$/.test(name)),
    ).toMatchObject([near(450), near(8.75)]));
});

describe("a timer for each", () => {
  it.each([
    ["alert me at 10:30 plus in 20 minutes", [60, 20]],
    ["buzz me at quarter to eleven and then in two hours", [75, 120]],
    ["set a timer for 20 minutes and one for 10:30", [20, 60]],
    ["ring me at 11 and again in an hour", [90, 60]],
  ] as const)("%s", async (said, minutes) =>
    expect((await figures(said)).filter(({ name }) => name === "left")).toMatchObject(minutes.map(near)),
  );
});
