/** What is told behind a note goes into it, in words that need no "to it"; and what went wrong is asked of it. */
import { expect, test } from "vitest";
import { lastOf } from "../support/ask.ts";

test.each([
  [
    "note: lavender, 40 of them|add that two had lopsided feet|show my lavender note",
    /; two had lopsided feet/,
  ],
  ["note: lemon, 24 macarons|add three were hollow|my lemon notes", /; three were hollow/],
  ["note: lemon, 24 macarons|add that they cracked|my lemon notes", /; they cracked/],
  ["note: lemon, 24 macarons|add three were hollow|any problems with it", /three were hollow/],
  [
    "note: mint, two cracked|note: lemon, smooth|show my mint note|and were there any problems with them",
    /mint, two cracked/,
  ],
  ["note: mint, two cracked|note: lemon, smooth|were there any problems with the mint", /mint, two cracked/],
])("%s", async (turns, shown) => {
  const [answer] = await lastOf(turns);
  expect(answer?.tool).toBe("recall");
  expect(answer?.headline).toMatch(shown);
});
