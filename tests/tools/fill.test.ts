/** Filling for macarons and macarons for filling, worked by hand from the book's figures (from memory). */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { World } from "../../src/tools/contract/index.ts";
import { fill } from "../../src/tools/fill/fill.ts";
import { baker } from "../support/ask.ts";
import { answer, value } from "../support/world.ts";

const say = (inputs: Record<string, unknown>, more: Partial<World> = {}) => answer(fill, inputs, more);

describe("forward", () => {
  // 24 x 0.42 x 3.8^2 = 145.5552; / 0.92 = 158.21217
  test("24 macarons", () => {
    const said = say({ macarons: 24 });
    expect(value(said, "filling")).toBeCloseTo(158.21217, 5);
    expect(said.rule?.basis).toBe("from memory");
    expect(said.assumed).toEqual(["38 mm shells"]);
    expect(said.leaves).toMatchObject({ macarons: 24 });
  });

  // fillings go into macarons, not shells: 48 shells are 24 macarons, no spares either way; an odd one is left over
  test("shells that are there, two to a macaron", () => {
    expect(value(say({ shells: 48 }), "filling")).toBeCloseTo(158.21217, 5);
    expect(value(say({ shells: 49 }), "filling")).toBeCloseTo(158.21217, 5);
  });

  // 48: 316.42435; ring 60 % = 189.85461, center 40 % = 126.56974
  test("ring and center share what is to be made, 60 : 40", () => {
    const said = say({ macarons: 48, two: true, ring: "buttercream", center: "caramel" });
    expect(value(said, "ring")).toBeCloseTo(189.85461, 5);
    expect(value(said, "center")).toBeCloseTo(126.56974, 5);
    expect(value(said, "total")).toBeCloseTo(316.42435, 5);
    expect(said.headline).toMatch(/buttercream ring.*caramel center/);
  });

  // 0.42 x 3.8^2 = 6.0648; 0.42 x 4.5^2 = 8.505: in the macaron, nothing lost
  test("in one macaron", () => {
    expect(value(say({ macarons: 1 }), "filling")).toBe(6.0648);
    expect(value(say({ macarons: 1, diameter_mm: 45 }), "filling")).toBe(8.505);
  });

  // 10 x 0.42 x 4^2 / 0.92 = 73.04348
  test("the bench's diameter is the baker's own", () => {
    const said = say({ macarons: 10 }, { bench: { diameter_mm: 40 } });
    expect(value(said, "filling")).toBeCloseTo(73.04348, 5);
    expect(said.rule?.basis).toBe("your bench");
  });
});

describe("backward", () => {
  // 300 x 0.92 / 6.0648 = 45.51
  test("300 g fills 45", () => {
    expect(value(say({ filling_g: 300 }), "macarons")).toBe(45);
  });
});

describe("laws", () => {
  const order = fc.record({
    macarons: fc.integer({ min: 2, max: 3000 }),
    diameter_mm: fc.integer({ min: 10, max: 150 }),
  });

  test("ring and center always make the whole", () => {
    fc.assert(
      fc.property(order, (inputs) => {
        const said = say({ ...inputs, two: true });
        expect(value(said, "ring") + value(said, "center")).toBeCloseTo(value(said, "total"), 6);
        expect(value(said, "total")).toBeCloseTo(value(say(inputs), "filling"), 9);
      }),
    );
  });

  test("what is made for a number of macarons fills that number", () => {
    fc.assert(
      fc.property(order, ({ macarons, diameter_mm }) => {
        const filling_g = value(say({ macarons, diameter_mm }), "filling");
        if (filling_g > 1_000_000) return;
        expect(value(say({ filling_g, diameter_mm }), "macarons")).toBe(macarons);
      }),
    );
  });
});

describe("as it is asked", () => {
  test("nothing known: asks for the macarons, and takes a bare number", async () => {
    const chat = baker();
    expect(await chat.one("how much filling do I need")).toMatchObject({ tool: "fill", status: "asking" });
    expect(value(await chat.one("24"), "filling")).toBeCloseTo(158.21217, 5);
  });

  // 48 x 0.42 x 4^2 / 0.92 = 350.60870; x 0.6 = 210.36522
  test("ring and center of 4 cm macarons", async () => {
    const said = await baker().one(
      "48 macarons of 4 cm with a lemon curd center and a buttercream ring, how much of each",
    );
    expect(value(said, "ring")).toBeCloseTo(210.36522, 5);
  });

  test.each(["filling for 0 macarons", "how much filling for -4 macarons"])(
    "%s: impossible",
    async (line) => {
      const said = await baker().one(line);
      expect(said.status).toBe("impossible");
      expect(said.figures ?? []).toEqual([]);
    },
  );
});
