/** Worked out once a list: the same as without, whatever was asked before. */
import fc from "fast-check";
import { expect, it } from "vitest";
import { perList } from "../../../src/tools/lib/memo.ts";

const countOf = (list: readonly number[], wanted: number) => list.filter((each) => each === wanted).length;

it("answers as the work itself does, in any order of lists and questions", () => {
  fc.assert(
    fc.property(
      fc.array(fc.array(fc.integer({ min: 0, max: 9 })), { minLength: 1 }),
      fc.array(fc.tuple(fc.nat(), fc.integer({ min: 0, max: 90 }))),
      (lists, asked) => {
        const kept = perList(countOf, String);
        for (const [which, wanted] of asked) {
          const list = lists[which % lists.length] as number[];
          expect(kept(list, wanted)).toBe(countOf(list, wanted));
        }
      },
    ),
  );
});

it("works once for the same list and question, again for a list that was changed into another", () => {
  let worked = 0;
  const kept = perList((list: readonly number[], wanted: number) => {
    worked += 1;
    return countOf(list, wanted);
  }, String);
  const list = [1, 2, 1];
  expect([kept(list, 1), kept(list, 1), worked]).toEqual([2, 2, 1]);
  expect([kept([...list, 1], 1), worked]).toEqual([3, 2]);
});

it("keeps what came out as nothing, and forgets what was asked longest ago", () => {
  let worked = 0;
  const kept = perList((_list: readonly number[], _asked: number) => {
    worked += 1;
    return undefined;
  }, String);
  const list: number[] = [];
  kept(list, 0);
  kept(list, 0);
  expect(worked).toBe(1);
  for (let each = 1; each <= 200; each += 1) kept(list, each);
  const before = worked;
  kept(list, 200);
  expect(worked).toBe(before);
  kept(list, 0);
  expect(worked).toBe(before + 1);
});
