/** Turns of phrase put plainly, and what only looks like one. */
import { expect, it } from "vitest";
import { plainly } from "../../src/intents/text/phrases.ts";

it.each([
  ["y tho", "why tho"],
  ["but y is it hollow", "but why is it hollow"],
  // "y" is Spanish for "and"
  ["200 g chocolate y 100 g nata", "200 g chocolate y 100 g nata"],
  ["ring me at 14h30", "ring me at 14:30"],
  ["bake for 14h", "bake for 14h"],
  ["split it 60 40", "split it 60/40"],
  ["split it 60 30", "split it 60 30"],
  ["20 40 g", "20 40 g"],
  ["3 quarters of a cup", "3/4 of a cup"],
  ["i put 10 in", "i put 10 inside"],
  ["a 10 in pan", "a 10 in pan"],
  ["94 g whites / 122 g almond flour", "94 g whites, 122 g almond flour"],
  ["ring at 11 love", "ring at 11"],
  ["i love 11", "i love 11"],
  ["nut-free macarons", " nutfree  macarons"],
  ["freeze-dried", "freeze dried"],
  ["12/15 min", "12-15 min"],
  ["3/12 min", "3/12 min"],
  ["10ish min", "10 min"],
  ["a whole one", "1"],
])("%s: %s", (said, expected) => expect(plainly(said)).toBe(expected));

it("puts a text plainly once: again changes nothing", () => {
  for (const said of ["y tho", "ring me at 14h30", "split it 60 40", "3 quarters of a cup", "10ish min"])
    expect(plainly(plainly(said))).toBe(plainly(said));
});
