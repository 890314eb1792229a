/** Labels: order, names, net weight, dates; nothing claimed that isn't known. Sources beside each check. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { label } from "../../src/tools/label/label.ts";
import { ingredientLine, inOrder, netWeight, twoPercent } from "../../src/tools/label/lines.ts";
import { baker } from "../support/ask.ts";
import { answer, value } from "../support/world.ts";

const lines = [
  { name: "almond flour", grams: 130 },
  { name: "powdered sugar", grams: 130 },
  { name: "whites", grams: 100 },
  { name: "granulated sugar", grams: 100 },
  { name: "butter", grams: 90 },
];
const say = (inputs: Record<string, unknown>, more = {}) => answer(label, inputs, more);
const line = (said: ReturnType<typeof say>, name: string) =>
  said.items?.find((each) => each.line === name)?.text as string;

describe("the list of ingredients", () => {
  // 21 CFR 101.4(a): descending order of predominance by weight
  test("heaviest first, by common name", () => {
    expect(line(say({ lines, market: "us" }), "ingredients")).toBe(
      "Ingredients: almond flour (almonds), powdered sugar [its own list, from the wrapper], egg whites, sugar, unsalted butter (cream)",
    );
  });

  // Regulation 1169/2011, Articles 18 and 21: descending, allergens emphasised inside the list
  test("in the European form the allergens stand in capitals", () => {
    expect(line(say({ lines, market: "eu" }), "ingredients")).toBe(
      "Ingredients: ground ALMONDS, icing sugar [its own list, from the wrapper], EGG whites, sugar, butter (MILK)",
    );
  });

  test("sugar named two ways is one ingredient", () => {
    const text = ingredientLine(
      [
        { name: "whites", grams: 150, allergens: ["egg"] },
        { name: "sugar", grams: 100, allergens: [] },
        { name: "granulated sugar", grams: 90, allergens: [] },
      ],
      "us",
    );
    expect(text).toBe("Ingredients: sugar, egg whites");
  });

  test("law: the order is by weight, and nothing gets lost", () => {
    const one = fc.record({
      name: fc.constantFrom("butter", "cream", "whites", "honey", "salt", "almond flour"),
      grams: fc.double({ min: 0.1, max: 1e4, noNaN: true }),
      allergens: fc.constant([]),
    });
    fc.assert(
      fc.property(fc.array(one, { minLength: 1, maxLength: 8 }), (list) => {
        const ordered = inOrder(list, "us");
        expect(ordered.map((each) => each.grams)).toEqual(
          ordered.map((each) => each.grams).sort((a, b) => b - a),
        );
        expect(ordered.reduce((sum, each) => sum + each.grams, 0)).toBeCloseTo(
          list.reduce((sum, each) => sum + each.grams, 0),
          6,
        );
      }),
    );
  });
});

describe("net weight, rounded down", () => {
  // 16 CFR 500.19 factors; NIST SP 1020: 5 oz = 141 g, 3 oz = 85 g, never overstated
  test.each([
    [5, 141],
    [3, 85],
  ])("%s oz is %s g", (oz, grams) => {
    expect(netWeight(undefined, oz, "us")).toMatchObject({ grams, ounces: oz });
  });

  // 120 / 28.349523125 = 4.2328..., shown as 4.2
  test("120 g is 4.2 oz", () => {
    expect(netWeight(120, undefined, "us").text).toBe("Net Wt 4.2 oz (120 g)");
    expect(netWeight(120, undefined, "eu").text).toBe("120 g");
  });

  // 20 x 28.349523125 = 566.99
  test("from a pound on in pounds too", () => {
    expect(netWeight(undefined, 20, "us").text).toBe("Net Wt 20 oz (1 lb 4 oz) (566 g)");
  });

  test("law: neither figure is ever more than what is in the box", () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 5000, noNaN: true }), (grams) => {
        const net = netWeight(grams, undefined, "us");
        return net.grams <= grams + 1e-6 && net.ounces * 28.349523125 <= grams + 1e-6;
      }),
    );
  });
});

describe("dates and blanks", () => {
  // FDA Food Code 3-501.17: day 7 is the last; best by on day 5 is from memory
  test("made today: best by the 18th, use by the 20th", () => {
    const said = say({ lines, market: "us", made: { days: 0 } });
    expect(line(said, "best by")).toBe("2026-03-18");
    expect(line(said, "use by")).toBe("2026-03-20");
  });

  test("name and address are always blank and named, and so is what wasn't said", () => {
    const said = say({ lines });
    expect(said.headline).toContain("left blank: name and address, net weight and best-by date");
    expect(line(said, "name and address")).toBe("______");
    expect(line(said, "home kitchen")).toContain("local law");
    expect(line(said, "storage")).toContain("41 °F");
  });

  test("only the date", async () => {
    const said = await baker().one("whats the best by date on the label for a batch i filled today");
    expect(said.headline).toContain("2026-03-18");
  });
});

describe("in words", () => {
  test("a US label with its net weight in ounces", async () => {
    const said = await baker().one(
      "maek me a us label, 130 g almond flour, 130 g powdered sugar, 100 g sugar, 100 g egg whites, 120 g white chocolate, 50 g cream, net weight 5 oz",
    );
    expect(value(said, "net weight", "g")).toBe(141);
    expect(line(said as never, "allergens")).toBe("Contains: almond, egg, milk");
    expect(said.headline).toContain("not complete");
  });

  test("amounts behind their names, a European label, talk around it", async () => {
    const said = await baker().one(
      "eu label for almond flower 130 g, icing sugar 130 g, egg whites 100 g, sugar 100 g, cream 90 g, my cousin lives over there",
    );
    expect(line(said as never, "ingredients")).toContain("cream (MILK)");
    expect(JSON.stringify(said)).not.toContain("cousin lives");
  });

  test("a line that can't be read is named, and the label isn't complete", async () => {
    const said = await baker().one(
      "label text for 100 g whites, 130 g almond flour, a pinch of salt, 130 g powdered sugar",
    );
    expect(JSON.stringify(said.items)).toContain("a pinch of salt");
    expect(said.headline).toContain("not complete");
  });

  test("asked for without ingredients it asks, and takes a list", async () => {
    const { one } = baker();
    expect((await one("us label please")).status).toBe("asking");
    expect((await one("130 g almond flour, 120 g sugar, 100 g whites")).headline).toContain(
      "contains almond and egg",
    );
  });

  test("the bench's market counts where none is said", () => {
    expect(say({ lines }, { bench: { market: "eu" } }).headline).toMatch(/^EU label/);
    expect(say({ lines }).headline).toMatch(/^US label/);
  });

  test("it always defers", () => {
    expect(say({ lines }).cautions?.at(-1)).toContain("local food authority");
  });
});

describe("the group of 2 % or less", () => {
  // 21 CFR 101.4(a)(2): ingredients of 2 percent or less by weight may stand last under one heading
  test("two or more of them stand last; in the European form there is no such group", () => {
    const list = [
      { name: "sugar", grams: 96, allergens: [] },
      { name: "salt", grams: 2, allergens: [] },
      { name: "cream of tartar", grams: 2, allergens: [] },
    ];
    expect(ingredientLine(list, "us")).toBe("Ingredients: sugar, 2% or less of: salt, cream of tartar");
    expect(ingredientLine(list, "eu")).toBe("Ingredients: sugar, salt, cream of tartar");
  });

  test("law: nothing above 2 % is in it, nothing gets lost, and the list before it is still by weight", () => {
    const one = fc.record({
      name: fc.constantFrom("butter", "cream", "whites", "honey", "salt", "almond flour", "citric acid"),
      grams: fc.double({ min: 0.1, max: 1000, noNaN: true }),
      allergens: fc.constant([]),
    });
    fc.assert(
      fc.property(fc.array(one, { minLength: 1, maxLength: 10 }), (some) => {
        const ordered = inOrder(some, "us");
        const [main, small] = twoPercent(ordered);
        const whole = ordered.reduce((sum, each) => sum + each.grams, 0);
        expect([...main, ...small]).toEqual(ordered);
        for (const each of small) expect(each.grams / whole).toBeLessThanOrEqual(0.02 + 1e-9);
      }),
    );
  });
});

describe("a filled macaron from its recipes", () => {
  const record = {
    formulas: [
      {
        id: 1,
        name: "cloud",
        lines: [
          { name: "whites", grams: 100 },
          { name: "almond flour", grams: 130 },
          { name: "powdered sugar", grams: 130 },
          { name: "granulated sugar", grams: 100 },
        ],
      },
      {
        id: 2,
        name: "velvet",
        lines: [
          { name: "whites", grams: 100 },
          { name: "sugar", grams: 150 },
          { name: "butter", grams: 250 },
        ],
      },
    ],
  };

  // from memory, 38 mm: batter 2 x 0.53 x 3.8² = 15.3064 g, filling 0.42 x 3.8² = 6.0648 g. By hand: sugar
  // 15.3064 x 100/460 + 6.0648 x 0.3 = 3.3275 + 1.8194 = 5.1469; whites 3.3275 + 1.2130 = 4.5404;
  // almond flour and powdered sugar 4.3257 each; butter 3.0324. Whole, as saved, butter would lead with 250 g.
  test("each in the share in which it goes in", async () => {
    const said = await baker({ record }).one("us label for cloud with velvet");
    expect(line(said as never, "ingredients")).toBe(
      "Ingredients: sugar, egg whites, almond flour (almonds), powdered sugar [its own list, from the wrapper], unsalted butter (cream)",
    );
    expect(said.assumed?.join(" ")).toContain("15.3 g cloud and 6.1 g velvet");
  });

  test("one recipe alone counts whole", async () => {
    const said = await baker({ record }).one("us label for velvet");
    expect(line(said as never, "ingredients")).toBe(
      "Ingredients: unsalted butter (cream), sugar, egg whites",
    );
  });
});
