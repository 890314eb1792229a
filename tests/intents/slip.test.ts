/** How many slips lie between two words: by hand for each kind of slip, and against an edit distance from outside. */
import fc from "fast-check";
import distance from "natural/lib/natural/distance/levenshtein_distance.js";
import { describe, expect, it, test } from "vitest";
import { slipsBetween } from "../../src/intents/text/slip.ts";
import { slipped } from "../support/slips.ts";

const slips = (typed: string, meant: string) => slipsBetween(typed, meant, 100) ?? Number.NaN;

describe("a slip that fingers make easily costs less", () => {
  test.each([
    ["a doubled letter", "timmer", "timer", "a letter of its own", "tismer", "timer"],
    ["a letter forgotten of a pair", "bater", "batter", "another letter forgotten", "bater", "barter"],
    ["a vowel forgotten", "choclate", "chocolate", "a consonant forgotten", "hocolate", "chocolate"],
    ["two letters swapped", "hwo", "how", "two other letters", "hap", "how"],
    ["a key beside it", "batrer", "batter", "a key far off", "batmer", "batter"],
    ["one vowel for another", "meny", "many", "a consonant for another", "mapy", "many"],
    ["a slip inside", "flaovr", "flavor", "one at the beginning", "falvro", "flavor"],
  ])("%s (%s for %s) than %s (%s for %s)", (_, typed, meant, __, worse, right) => {
    expect(slips(typed, meant)).toBeLessThan(slips(worse, right));
  });
});

describe("laws", () => {
  const word = fc.stringMatching(/^[a-z]{1,10}$/);
  it("a word is no slip from itself, and some from any other", () => {
    fc.assert(
      fc.property(word, word, (one, two) => {
        expect(slips(one, one)).toBe(0);
        if (one !== two) expect(slips(one, two)).toBeGreaterThan(0);
      }),
    );
  });
  it("past the most that is asked for there is none", () => {
    fc.assert(
      fc.property(word, word, fc.double({ min: 0, max: 4, noNaN: true }), (one, two, most) => {
        const all = slips(one, two);
        expect(slipsBetween(one, two, most)).toBe(all > most ? undefined : all);
      }),
    );
  });
  // restricted Damerau-Levenshtein distance of natural 8.1.1 (MIT), a general-purpose reference library
  it("lies between the cheapest and the dearest slip for each edit of the library's distance", () => {
    fc.assert(
      fc.property(word, word, (one, two) => {
        const edits = distance.DamerauLevenshteinDistance(one, two, { restricted: true });
        expect(slips(one, two)).toBeGreaterThanOrEqual(0.4 * edits - 1e-9);
        expect(slips(one, two)).toBeLessThanOrEqual(1.9 * edits + 1e-9);
      }),
    );
  });
  it("what a finger slips, but for dropped vowels, is one edit away", () => {
    fc.assert(
      fc.property(
        fc.stringMatching(/^[a-z]{3,10}$/),
        fc.infiniteStream(fc.double({ min: 0, max: 0.91, noNaN: true })),
        (meant, stream) => {
          const typed = slipped(meant, () => stream.next().value ?? 0);
          if (typed !== meant) expect(slips(typed, meant)).toBeLessThanOrEqual(1.9);
        },
      ),
    );
  });
});
