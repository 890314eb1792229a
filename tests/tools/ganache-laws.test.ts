/** Laws of the ganache: one ratio, whichever way it is asked. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { ratios } from "../../data/rules/ganache.ts";
import { ganache } from "../../src/tools/ganache/ganache.ts";
import { answer, range, value } from "../support/world.ts";

const grams = fc.double({ min: 1, max: 20_000, noNaN: true });
const kind = fc.record({
  chocolate: fc.constantFrom("dark" as const, "milk" as const, "white" as const),
  use: fc.constantFrom("loose" as const, "piping" as const, "firm" as const),
});
const near = (got: number, want: number) => expect(Math.abs(got / want - 1)).toBeLessThan(1e-9);

test("built from the chocolate, the cream or the total, it is the same ganache", () => {
  fc.assert(
    fc.property(kind, grams, (which, cream_g) => {
      const first = answer(ganache, { ...which, cream_g });
      const [chocolate_g, total_g] = [value(first, "chocolate"), value(first, "total")];
      near(chocolate_g + cream_g, total_g);
      near(value(answer(ganache, { ...which, chocolate_g }), "cream"), cream_g);
      const back = answer(ganache, { ...which, total_g });
      near(value(back, "cream"), cream_g);
      near(value(back, "chocolate"), chocolate_g);
    }),
  );
});

test("the default lies in the range, and the range's ends are the row's ratios", () => {
  fc.assert(
    fc.property(kind, grams, (which, cream_g) => {
      const said = answer(ganache, { ...which, cream_g });
      const row = ratios[which.chocolate][which.use];
      near(range(said, "chocolate")[0], cream_g * row.low);
      near(range(said, "chocolate")[1], cream_g * row.high);
      near(value(said, "chocolate"), cream_g * row.ratio);
    }),
  );
});

test("what is added to a loose or stiff one reaches the ratio exactly", () => {
  fc.assert(
    fc.property(
      kind,
      grams,
      fc.double({ min: 1.01, max: 5, noNaN: true }),
      fc.boolean(),
      (which, cream_g, off, loose) => {
        const { ratio } = ratios[which.chocolate][which.use];
        const chocolate_g = loose ? (cream_g * ratio) / off : cream_g * ratio * off;
        const said = answer(ganache, {
          ...which,
          chocolate_g,
          cream_g,
          want: "mend",
          fault: loose ? "loose" : "stiff",
        });
        const added = value(said, loose ? "add chocolate" : "add cream");
        expect(added).toBeGreaterThan(0);
        near(loose ? (chocolate_g + added) / cream_g : chocolate_g / (cream_g + added), ratio);
        near(value(said, "total"), chocolate_g + cream_g + added);
      },
    ),
  );
});

test("what was built by the book is judged to be what it was built for", () => {
  fc.assert(
    fc.property(kind, grams, (which, cream_g) => {
      const chocolate_g = value(answer(ganache, { ...which, cream_g }), "chocolate");
      const checked = answer(ganache, { chocolate: which.chocolate, chocolate_g, cream_g });
      expect(checked.headline).toContain(`good for ${which.use}`);
    }),
  );
});
