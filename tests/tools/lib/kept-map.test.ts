/** A map that is written down has to give what the map gave that was written. */
import fc from "fast-check";
import { expect, it } from "vitest";
import { keptMap, numberAt, numberWidth, readMap, writtenNumber } from "../../../src/tools/lib/kept-map.ts";

// few letters, so that keys begin alike
const key = fc.string({ unit: fc.constantFrom("a", "b", " ", "é"), maxLength: 6 });
const value = fc.string({ unit: fc.constantFrom("1", "2", " ", "\t", "é"), maxLength: 6 });
const map = fc.array(fc.tuple(key, value), { maxLength: 80 }).map((entries) => new Map(entries));

it("gives the values of all keys that a text has from a place on, the shortest first", () => {
  fc.assert(
    fc.property(map, key, key, fc.nat(8), (entries, before, text, longest) => {
      const said = before + text;
      const wanted = Array.from({ length: Math.min(longest, text.length) + 1 }, (_, size) =>
        entries.get(text.slice(0, size)),
      ).filter((each) => each !== undefined);
      expect(readMap(keptMap(entries)).startingAt(said, before.length, longest)).toEqual(wanted);
    }),
    { numRuns: 1000 },
  );
});

it("stands anywhere in a text, and says where that goes on", () => {
  fc.assert(
    fc.property(map, key, fc.string(), (entries, before, behind) => {
      const text = before + keptMap(entries) + behind;
      const { end, startingAt } = readMap(text, before.length);
      expect(text.slice(end)).toBe(behind);
      for (const [each, kept] of entries) expect(startingAt(each, 0, each.length).at(-1)).toBe(kept);
    }),
  );
});

it("numbers up to eight millions are three letters, none of which ends a line", () => {
  fc.assert(
    fc.property(fc.nat(7_999_999), (number) => {
      const written = writtenNumber(number);
      expect([...written].every((letter) => letter > " ")).toBe(true);
      expect(written.length).toBe(numberWidth);
      expect(numberAt(`x${written}`, 1)).toBe(number);
    }),
  );
});
