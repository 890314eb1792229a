/** What must not stand in any file: places outside of the repository, addresses in the source. */
import { readdirSync, statSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { root } from "../support/built.ts";
import { filesIn, textOf } from "./sources.ts";

const folders = [
  "src",
  "data",
  "tests",
  ...["docs", "bench", "scripts", "tools"].filter((name) => readdirSync(root).includes(name)),
];
const loose = readdirSync(root).filter(
  (name) => statSync(join(root, name)).isFile() && name !== "package-lock.json",
);
const files = [...folders.flatMap((folder) => filesIn(folder)), ...loose].filter((path) =>
  /\.(?:[mc]?[jt]sx?|json|jsonl|md|txt|ya?ml|sh)$|^[^.]+$|^\.[a-z]+$/.test(path),
);

const holding = (what: RegExp, some = files) => some.filter((path) => what.test(textOf(path)));

it("there are files to look at", () => {
  expect(files.length).toBeGreaterThan(150);
  expect(files).toContain("package.json");
});

it("no file names a place outside of the repository", () => {
  // put together here, so that this file doesn't hold them either
  const outside = [
    ["", "work", ""],
    ["..", "shared"],
  ].map((parts) => parts.join("/").replaceAll(".", "\\."));
  expect(holding(new RegExp(outside.join("|")))).toEqual([]);
});

it("no address stands in the source or its data", () => {
  const own = files.filter((path) => /^(?:src|data)\//.test(path));
  expect(holding(/\bhttps?:\/\/|\bwww\.[a-z]/i, own)).toEqual([]);
});

it("no source leans on a test", () => {
  expect(
    holding(
      /from "[^"]*tests\//,
      files.filter((path) => /^(?:src|data)\//.test(path)),
    ),
  ).toEqual([]);
});

it("no test is left out or alone", () => {
  const mark = new RegExp(
    `\\b(?:it|test|describe)\\.${["on", "ly"].join("")}\\b|\\b(?:it|test|describe)\\.(?:skip|todo)\\(`,
  );
  expect(
    holding(
      mark,
      files.filter((path) => /^tests\/.*\.tsx?$/.test(path)),
    ),
  ).toEqual([]);
});
