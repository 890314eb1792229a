/** Conversations that score are read by the bench alone, and are none of those that the program learned from. */
import { existsSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { root } from "../support/built.ts";
import { filesIn, textOf } from "./sources.ts";

const folder = "tests/questions/unseen";
const scored = existsSync(join(root, folder)) ? filesIn(folder, /\.jsonl$/) : [];
const said = (path: string) =>
  textOf(path)
    .split("\n")
    .filter(Boolean)
    .map((line) =>
      JSON.stringify((JSON.parse(line) as { turns: { say: string }[] }).turns.map(({ say }) => say)),
    );

it("nothing but the bench names their folder", () => {
  const code = [
    ...filesIn("src"),
    ...filesIn("data", /\.ts$/),
    ...filesIn("tests", /\.[mc]?[jt]sx?$/),
    "build.mjs",
  ];
  const naming = code.filter((path) => /["'`/]unseen["'`/]/.test(textOf(path)));
  expect(naming).toEqual(["tests/bench/understanding.ts", "tests/guards/unseen.test.ts"]);
});

it("no conversation of theirs was learned", () => {
  const learned = new Set(filesIn("tests/questions/learned", /\.jsonl$/).flatMap(said));
  expect(learned.size).toBeGreaterThan(1000);
  // one turn alone may be said alike by anyone
  const both = scored.flatMap(said).filter((each) => learned.has(each) && JSON.parse(each).length > 1);
  expect(both).toEqual([]);
});
