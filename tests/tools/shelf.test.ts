/** The shelf: bottles, stock, prices. Orders change the record and can be taken back; never below nothing. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Stock } from "../../src/tools/contract/index.ts";
import { shelf } from "../../src/tools/shelf/shelf.ts";
import { baker } from "../support/ask.ts";
import { answer, value } from "../support/world.ts";

const stock: Stock[] = [{ id: 1, name: "almond flour", grams: 500 }];
const say = (inputs: Record<string, unknown>, more = {}) => answer(shelf, inputs, { stock, ...more });

describe("bottles", () => {
  test.each([
    [
      "my mint bottle says half to one percent, save that",
      { taste: "mint", low_percent: 0.5, high_percent: 1 },
    ],
    [
      "my lavender bottle says 1 to 2 percent, save it",
      { taste: "lavender", low_percent: 1, high_percent: 2 },
    ],
    ["the lemon bottle says 2 percent, remember that", { taste: "lemon", low_percent: 2, high_percent: 2 }],
    [
      "my vanilla extract bottle says 1 to 1.5 %, save it",
      { taste: "vanilla", form: "extract", low_percent: 1, high_percent: 1.5 },
    ],
    [
      "bottle of peppermint oil says 0.1 - 0.3 %, save",
      { taste: "peppermint", form: "oil", low_percent: 0.1, high_percent: 0.3 },
    ],
  ])("%s", async (line, bottle) => {
    const { one, record } = baker();
    expect((await one(line)).tool).toBe("shelf");
    expect(record().bottles).toMatchObject([bottle]);
  });

  // 400 x 0.5 / 100 = 2; 400 x 1 / 100 = 4
  test("a saved bottle replaces the row in a dose", async () => {
    const { one } = baker();
    await one("my mint bottle says half to one percent, save that");
    const said = await one("how much mint in 400 g buttercream");
    expect(said.figures).toContainEqual({ name: "flavor", low: 2, high: 4, unit: "g" });
    expect(said.rule?.basis).toBe("your bench");
  });

  test("said again it replaces itself, and undo brings the old one back", async () => {
    const { one, record } = baker();
    await one("my mint bottle says half to one percent, save that");
    await one("my mint bottle says 2 percent, save that");
    expect(record().bottles).toMatchObject([{ low_percent: 2, high_percent: 2 }]);
    await one("undo");
    expect(record().bottles).toMatchObject([{ low_percent: 0.5, high_percent: 1 }]);
  });

  test("directions that are no share are not saved", async () => {
    const { one, record } = baker();
    expect((await one("my mint bottle says 5 drops, save that")).status).toBe("declined");
    expect(record().bottles).toEqual([]);
  });

  test("asked for and forgotten", async () => {
    const { one, record } = baker();
    await one("my mint bottle says 1 percent, save that");
    expect((await one("what does my mint bottle say")).headline).toContain("1 %");
    await one("forget the mint bottle");
    expect(record().bottles).toEqual([]);
    expect((await one("forget the mint bottle")).status).toBe("impossible");
  });
});

describe("stock", () => {
  // 1000 - 250 = 750
  test("put there, used, asked for", async () => {
    const { one } = baker();
    await one("ive got 1 kg almond flour in the cupboard, put it in the pantry");
    expect(value(await one("used 250 g of the almnd flour"), "almond flour left")).toBe(750);
    expect(value(await one("how much almond flour have i got"), "almond flour")).toBe(750);
  });

  // 2 lb = 907.18474 g, NIST SP 811; less 300
  test("it is what was spoken of", async () => {
    const { one } = baker();
    await one("put 2 lb of almond flour in the pantry i just bought it");
    await one("used 300 g of it");
    expect(value(await one("how much almond flour is there now"), "almond flour")).toBeCloseTo(607.18474, 9);
    expect(value(await one("how much is left"), "almond flour")).toBeCloseTo(607.18474, 9);
  });

  test("several at once are one order", async () => {
    const { one, record } = baker();
    await one("put 2 kg of icing sugar and 500 g butter in the pantry");
    expect(record().stock).toMatchObject([
      { name: "powdered sugar", grams: 2000 },
      { name: "butter", grams: 500 },
    ]);
    await one("used 100 g icing sugar and 50 g butter");
    expect(record().stock).toMatchObject([{ grams: 1900 }, { grams: 450 }]);
    await one("undo");
    expect(record().stock).toMatchObject([{ grams: 2000 }, { grams: 500 }]);
  });

  test("what is added adds up; what is set is set", () => {
    expect(value(say({ does: "add", entries: [{ name: "almond flour", grams: 250 }] }), "almond flour")).toBe(
      750,
    );
    expect(value(say({ does: "set", entries: [{ name: "almond flour", grams: 250 }] }), "almond flour")).toBe(
      250,
    );
  });

  test("a statement tells what is there, and says what was", async () => {
    const { one } = baker({ record: { stock } });
    const said = await one("pantry: 300 g almond flour");
    expect(value(said, "almond flour")).toBe(300);
    expect(said.headline).toContain("it was 500 g");
  });

  test("two bags of 500 g each are a kilo, and that is how it is sold", async () => {
    const { one, record } = baker();
    await one("i have 2 bags of almond flour, 500 g each, put them in the pantry");
    expect(record().stock).toMatchObject([{ name: "almond flour", grams: 1000, pack_g: 500 }]);
  });

  test("more used than there is changes nothing unless she says to zero", async () => {
    const { one, record } = baker({ record: { stock } });
    const said = await one("used 800 g almond flour");
    expect(said.status).toBe("impossible");
    expect(said.headline).toContain("500 g");
    expect(record().stock[0]?.grams).toBe(500);
    expect(value(await one("to zero"), "almond flour left")).toBe(0);
  });

  test("what isn't there can't be used", () => {
    expect(say({ does: "use", entries: [{ name: "butter", grams: 10 }] }).status).toBe("impossible");
  });

  test("half of it, and all of it", () => {
    expect(
      value(say({ does: "use", entries: [{ name: "almond flour", part: 0.5 }] }), "almond flour left"),
    ).toBe(250);
    expect(
      value(say({ does: "use", entries: [{ name: "almond flour", part: 1 }] }), "almond flour left"),
    ).toBe(0);
  });

  test("sugar and granulated sugar are one thing on a shelf", () => {
    const said = answer(
      shelf,
      { does: "use", entries: [{ name: "granulated sugar", grams: 100 }] },
      { stock: [{ id: 3, name: "sugar", grams: 300 }] },
    );
    expect(said.effects).toEqual([{ do: "change", list: "stock", id: 3, patch: { grams: 200 } }]);
  });

  test("an empty shelf is answered, and says so", async () => {
    expect(await baker().one("what's on my shelf")).toMatchObject({ status: "answered", items: [] });
    expect((await baker().one("how much butter do i have left")).headline).toBe("No butter on the shelf");
  });

  test("law: what is put there and used again leaves what was there, and it never goes below nothing", () => {
    const grams = fc.double({ min: 0, max: 5000, noNaN: true });
    fc.assert(
      fc.property(grams, grams, (put, used) => {
        const there = value(
          say({ does: "add", entries: [{ name: "almond flour", grams: put }] }),
          "almond flour",
        );
        const said = answer(
          shelf,
          { does: "use", entries: [{ name: "almond flour", grams: used }] },
          { stock: [{ id: 1, name: "almond flour", grams: there }] },
        );
        if (said.status === "impossible") return used > there;
        return Math.abs(value(said, "almond flour left") - (500 + put - used)) < 1e-6;
      }),
    );
  });
});

describe("prices", () => {
  // 9 / 907.18474 a gram; 16 a kilo
  test.each([
    ["almond flour costs 16 a kilo, remember", 0.016, "USD"],
    ["Ground almonds cost me £14 a kilo, save that price", 0.014, "GBP"],
    ["i paid $9 for a 2 lb bag of almond flour, save it", 9 / 907.18474, "USD"],
  ])("%s", async (line, price_per_g, currency) => {
    const { one, record } = baker();
    expect((await one(line)).tool).toBe("shelf");
    expect(record().stock[0]?.price_per_g).toBeCloseTo(price_per_g, 12);
    expect(record().stock[0]?.currency).toBe(currency);
  });

  test("a price without a weight is asked back", () => {
    expect(say({ does: "price", entries: [{ name: "butter" }] }).status).toBe("asking");
  });
});

test.each([
  ["i have 250 g almond flour, what do i need of the rest", "scale"],
  ["130 g almond flour at $16 a kilo, what did that cost", "cost"],
  ["how much mint flavor for 400 g buttercream", "dose"],
  ["note: used the new almond flour, 36 macs", "note"],
])("%s is for %s", async (line, tool) => {
  expect((await baker().one(line)).tool).toBe(tool);
});
