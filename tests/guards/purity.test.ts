/** No hidden clock, chance, environment or chatter below the command and the store. */
import { describe, expect, it } from "vitest";
import { codeOf, data, sources } from "./sources.ts";

const below = [...sources.filter((path) => /^src\/(?:tools|intents)\//.test(path)), ...data];
const all = [...sources, ...data];

/** "file: what" for each line of code that has it. */
const having = (files: readonly string[], what: RegExp) =>
  files.flatMap((path) =>
    codeOf(path)
      .split("\n")
      .filter((line) => what.test(line))
      .map((line) => `${path}: ${line.trim()}`),
  );

describe("outside of src/cli and src/store there is", () => {
  it.each([
    ["no clock", /\bDate\.now\b|\bnew Date\(\s*\)|\bperformance\.|\bDate\(\s*\)/],
    ["no chance", /\bMath\.random\b|\brandomUUID\b|\bgetRandomValues\b/],
    ["no environment", /\bprocess\s*[.[]|\bglobalThis\b/],
    ["no timer of the machine", /\bset(?:Timeout|Interval|Immediate)\(/],
    ["no network", /\bfetch\(|\bXMLHttpRequest\b|\bWebSocket\b/],
    ["nothing that runs text as code", /\beval\(|\bnew Function\(/],
  ])("%s", (_, what) => {
    expect(having(below, what)).toEqual([]);
  });
});

it("nothing anywhere writes to the console, goes on the network or runs text as code", () => {
  expect(having(all, /\bconsole\./)).toEqual([]);
  expect(
    having(all, /\bfetch\(|\bXMLHttpRequest\b|\bWebSocket\b|\bnode:(?:http|https|net|tls|dgram|dns)\b/),
  ).toEqual([]);
  expect(having(all, /\beval\(|\bnew Function\(/)).toEqual([]);
});

it("chance is used by the store at most, for names of files", () => {
  expect(
    having(
      sources.filter((path) => !path.startsWith("src/store/")),
      /\bMath\.random\b/,
    ),
  ).toEqual([]);
});

it("the command's clock is read in main and nowhere else but in the chat's own ticking", () => {
  const readers = sources.filter(
    (path) => path.startsWith("src/cli/") && /\bDate\.now\b|\bnew Date\(\s*\)/.test(codeOf(path)),
  );
  expect(readers.filter((path) => !path.startsWith("src/cli/chat/"))).toEqual(["src/cli/main.ts"]);
});

it("the scan would see one", () => {
  const clock = /\bDate\.now\b|\bnew Date\(\s*\)/;
  expect(clock.test("const t = Date.now();")).toBe(true);
  expect(clock.test("new Date( )")).toBe(true);
  expect(clock.test("new Date(now_ms)")).toBe(false);
});
