/** Laws of the dose: each direction undoes another, for any weight and any row. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { doseRows } from "../../data/rules/doses.ts";
import { dose } from "../../src/tools/dose/dose.ts";
import { answer, range, value } from "../support/world.ts";

const grams = fc.double({ min: 1, max: 20_000, noNaN: true });
/** Up to 95: beyond it a bowl of 20 kg would want more than the tonne that is taken. */
const percent = fc.double({ min: 0.01, max: 95, noNaN: true });
/** A row with a column that has a range. */
const cell = fc.constantFrom(
  ...doseRows.flatMap((row) =>
    (["buttercream", "ganache", "batter"] as const).flatMap((base) => {
      const pair = row[base];
      return pair ? [{ dose: row.id, base, low: pair[0], high: pair[1] }] : [];
    }),
  ),
);

const near = (got: number, want: number) => expect(Math.abs(got / want - 1)).toBeLessThan(1e-9);
const first = (outcome: ReturnType<typeof answer>) => outcome.figures?.[0]?.name ?? "";

test("the base that a flavor serves, of the flavor that a base takes, is that base", () => {
  fc.assert(
    fc.property(cell, grams, ({ dose: row, base }, base_g) => {
      const forward = answer(dose, { dose: row, base, base_g });
      const [low, high] = range(forward, first(forward));
      // the low dose serves it as the high end of a base, the high dose as the low end
      near(range(answer(dose, { dose: row, base, flavor_g: low }), "base")[1], base_g);
      near(range(answer(dose, { dose: row, base, flavor_g: high }), "base")[0], base_g);
    }),
  );
});

test("the same holds for a percentage that is said, of the base or of the finished weight", () => {
  fc.assert(
    fc.property(grams, percent, fc.boolean(), (base_g, share, of_finished) => {
      const said = { dose: "flavor", base: "buttercream", percent: share, of_finished };
      const flavor_g = value(answer(dose, { ...said, base_g }), "flavor");
      near(value(answer(dose, { ...said, flavor_g }), "base"), base_g);
      near((flavor_g / (of_finished ? base_g + flavor_g : base_g)) * 100, share);
    }),
  );
});

test("what is added to an overdosed bowl brings it exactly to the top and to the middle", () => {
  fc.assert(
    fc.property(
      cell,
      grams,
      fc.double({ min: 1.01, max: 30, noNaN: true }),
      ({ dose: row, base, low, high }, base_g, times) => {
        const flavor_g = (base_g * high * times) / 100;
        const said = answer(dose, { dose: row, base, base_g, flavor_g, want: "mend" });
        const [least, most] = range(said, "add base");
        expect(least).toBeGreaterThan(0);
        near((flavor_g / (base_g + least)) * 100, high);
        near((flavor_g / (base_g + most)) * 100, (low + high) / 2);
      },
    ),
  );
});

test("exactly on either edge is within, a thousandth beyond it isn't", () => {
  fc.assert(
    fc.property(cell, grams, ({ dose: row, base, low, high }, base_g) => {
      const verdict = (share: number) =>
        /: (under|within|over) the/.exec(
          answer(dose, { dose: row, base, base_g, flavor_g: (base_g * share) / 100 }).headline,
        )?.[1];
      expect([low, high].map(verdict)).toEqual(["within", "within"]);
      expect([low * 0.999, high * 1.001].map(verdict)).toEqual(["under", "over"]);
    }),
  );
});

test("twice the base takes twice the flavor", () => {
  fc.assert(
    fc.property(cell, fc.double({ min: 1, max: 10_000, noNaN: true }), ({ dose: row, base }, base_g) => {
      const one = answer(dose, { dose: row, base, base_g });
      const two = answer(dose, { dose: row, base, base_g: 2 * base_g });
      const [a, b] = [range(one, first(one)), range(two, first(two))];
      near(b[0], 2 * a[0]);
      near(b[1], 2 * a[1]);
    }),
  );
});
