/** What is packed for others: the built program, its manual page, the licenses of what is in it, and nothing to fetch. */
import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { builtDist, root } from "../support/built.ts";
import { textOf } from "./sources.ts";

const about = JSON.parse(textOf("package.json"));

let dist: Awaited<ReturnType<typeof builtDist>>;
beforeAll(async () => {
  dist = await builtDist();
}, 180_000);
afterAll(() => dist?.remove());

it("needs no other package, and says what it is, what it runs on and under which license", () => {
  expect(about.dependencies ?? {}).toEqual({});
  for (const kind of ["peerDependencies", "optionalDependencies", "bundleDependencies"])
    expect(about[kind]).toBeUndefined();
  expect(about.license).toBe("MIT");
  expect(about.engines).toEqual({ node: ">=20" });
  expect(about.bin).toEqual({ bowlside: "dist/bowlside.cjs" });
  // npm links a manual page from a list only
  expect(about.man).toEqual(["./data/pages/bowlside.1"]);
});

it("runs nothing on the machine that it is installed on", () => {
  for (const script of ["preinstall", "install", "postinstall"])
    expect(about.scripts[script]).toBeUndefined();
});

it("holds the program, the manual page and the README, and no source", () => {
  const packed = spawnSync("npm", ["pack", "--dry-run", "--json", "--ignore-scripts"], {
    cwd: root,
    encoding: "utf8",
  });
  // a list before npm 12, an object by name after it
  const [told] = Object.values(JSON.parse(packed.stdout)) as { size: number; files: { path: string }[] }[];
  const files = told?.files.map(({ path }) => path) ?? [];
  const others = files.filter((path) => !path.startsWith("dist/"));
  expect(others.sort()).toEqual(["README.md", "data/pages/bowlside.1", "package.json"]);
  // bytes, packed: 3.54 million as measured, half of them caches. 6 % are room to learn more words; caches kept twice would
  // be past it.
  expect(told?.size).toBeLessThan(3_750_000);
}, 60_000);

describe("the licenses", () => {
  it("name what is bundled, each with its text", () => {
    const text = readFileSync(join(dist.folder, "licenses.txt"), "utf8");
    for (const name of ["zod", "lowdb", "ink", "react", "mathjs", "date-fns", "pdfkit"])
      expect(text).toMatch(new RegExp(`^${name} \\d+\\.\\d+\\.\\d+$`, "m"));
    for (const part of text.split(`${"-".repeat(72)}\n`))
      expect(part).toMatch(/permission|license|copyright/i);
    expect(text).not.toContain("not said");
  });
});
