/** Laws of scaling, for any recipe. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { scale } from "../../src/tools/scale/scale.ts";
import { answer, figure, value } from "../support/world.ts";

const name = fc.constantFrom(
  "whites",
  "almond flour",
  "powdered sugar",
  "butter",
  "cream",
  "honey",
  "salt",
  "cocoa powder",
);
const grams = fc.double({ min: 0.1, max: 5000, noNaN: true });
const recipe = fc.uniqueArray(fc.record({ name, grams }), {
  minLength: 1,
  maxLength: 6,
  selector: (each) => each.name,
});
const times = fc.double({ min: 0.05, max: 20, noNaN: true });

const scaled = (lines: { name: string; grams: number }[], factor: number) => {
  const said = answer(scale, { lines, factor });
  return lines.map((each) => ({ name: each.name, grams: value(said, each.name) }));
};
const near = (got: number, want: number) =>
  expect(Math.abs(got - want)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(want)));

test("scaled by a and then by b is scaled by a x b", () => {
  fc.assert(
    fc.property(recipe, times, times, (lines, a, b) => {
      const twice = scaled(scaled(lines, a), b);
      for (const [at, each] of scaled(lines, a * b).entries())
        near(twice[at]?.grams ?? Number.NaN, each.grams);
    }),
  );
});

test("the lines keep their proportions and add up to the total", () => {
  fc.assert(
    fc.property(recipe, grams, (lines, total_g) => {
      const said = answer(scale, { lines, total_g });
      const all = lines.reduce((sum, each) => sum + each.grams, 0);
      for (const each of lines) near(value(said, each.name) / value(said, "total"), each.grams / all);
      near(
        lines.reduce((sum, each) => sum + value(said, each.name), 0),
        total_g,
      );
    }),
  );
});

test("the limiting ingredient leaves nothing negative, is used up, and is named", () => {
  fc.assert(
    fc.property(
      recipe.filter((lines) => lines.length > 1),
      fc.array(grams, { minLength: 6, maxLength: 6 }),
      (lines, amounts) => {
        const have = lines.map((each, at) => ({ name: each.name, grams: amounts[at] ?? 1 }));
        const said = answer(scale, { lines, have });
        const limiting = /; (.+) runs out first$/.exec(said.headline)?.[1];
        const mine = have.find((each) => each.name === limiting);
        expect(mine).toBeDefined();
        near(value(said, limiting ?? ""), mine?.grams ?? 0);
        for (const each of have) {
          if (each.name === limiting) continue;
          const left = figure(said, `${each.name} left`).value ?? -1;
          expect(left).toBeGreaterThanOrEqual(-1e-9 * each.grams);
          near(left + value(said, each.name), each.grams);
        }
      },
    ),
  );
});

test("what is at hand of one line alone sets the size by that line", () => {
  fc.assert(
    fc.property(recipe, grams, (lines, grams_) => {
      const [first] = lines;
      if (!first) return;
      near(
        value(answer(scale, { lines, have: [{ name: first.name, grams: grams_ }] }), "factor"),
        grams_ / first.grams,
      );
    }),
  );
});
