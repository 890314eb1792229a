/** The manual page is current, says all that the options table says, and is roff that man can show. */
import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { helpText } from "../../src/cli/help.ts";
import { options, settings, statuses, uses } from "../../src/cli/options.ts";
import { root } from "../support/built.ts";
import { manual } from "./manual.ts";

const file = join(root, "data/pages/bowlside.1");

it("is current: npm run pages writes it anew", async () => {
  await expect(manual()).toMatchFileSnapshot(file);
});

const has = (command: string) => spawnSync(command, ["--version"]).error === undefined;

it("is ASCII", () => {
  expect(manual()).toMatch(/^\p{ASCII}*$/u);
});

describe.runIf(has("man"))("shown by man", () => {
  const shown = spawnSync("man", ["-l", "-"], {
    input: manual(),
    encoding: "utf8",
    env: { PATH: process.env.PATH ?? "", MANWIDTH: "80", LC_ALL: "C.UTF-8" },
  });
  const words = shown.stdout.replace(/\s+/g, " ");

  it("has no complaint", () => {
    expect([shown.status, shown.stderr]).toEqual([0, ""]);
  });

  it("says what the options table says", () => {
    const lower = words.toLowerCase();
    for (const each of [
      ...options.map(({ name }) => `--${name}`),
      ...options.map(({ says }) => says),
      ...[...uses, ...settings].flat(),
      ...statuses.map(([status, says]) => `${status} ${says}`),
    ])
      expect(lower).toContain(each.toLowerCase());
  });
});

describe.runIf(has("mandoc") || spawnSync("mandoc", ["-h"]).error === undefined)("mandoc", () => {
  it("finds no error in it", () => {
    const { stdout } = spawnSync("mandoc", ["-T", "lint", "-W", "error"], {
      input: manual(),
      encoding: "utf8",
    });
    expect(stdout).toBe("");
  });
});

describe("help", () => {
  it.each([40, 60, 80, 100, 200])("says the same in %d columns", (columns) => {
    const text = helpText(columns);
    for (const line of text.split("\n")) expect(line.length).toBeLessThanOrEqual(columns);
    const words = text.replace(/\s+/g, " ");
    for (const each of [
      ...options.map(({ name }) => `--${name}`),
      ...options.map(({ says }) => says),
      ...[...uses, ...settings].flat(),
      ...statuses.map(([status, says]) => `${status} ${says}`),
    ])
      expect(words).toContain(each);
  });
});
