/** What is shipped: one narrow file for a single question, with neither ink nor react in it, and nothing to fetch. */
import { readdirSync, readFileSync, statSync } from "node:fs";
import { builtinModules } from "node:module";
import { join } from "node:path";
import { Script } from "node:vm";
import { rolldown } from "rolldown";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { builtDist, root } from "../support/built.ts";

let dist: Awaited<ReturnType<typeof builtDist>>;
beforeAll(async () => {
  dist = await builtDist();
}, 180_000);
afterAll(() => dist?.remove());

const shipped = (name: string) => readFileSync(join(dist.folder, name), "utf8");
/** The program in parts, all but what runs first. */
const parts = () => readdirSync(dist.folder).filter((name) => /\.cjs$/.test(name) && name !== "bowlside.cjs");
const builtins = new Set(builtinModules.flatMap((name) => [name, `node:${name}`]));

/** Names that a bundle asks for when it runs. */
const asked = (code: string) =>
  [...code.matchAll(/\b(?:require|import)\(\s*["'`]([^"'`]+)["'`]\s*\)|\bfrom\s*["']([^"']+)["']/g)].map(
    ([, a, b]) => a ?? b ?? "",
  );

describe("the program for one question", () => {
  it("holds neither ink nor react, nor anything of the packages that are for tests", async () => {
    const build = await rolldown({
      input: join(root, "src/cli/entry.ts"),
      platform: "node",
      cwd: root,
      logLevel: "silent",
    });
    const { output } = await build.generate({ format: "cjs", codeSplitting: false });
    await build.close();
    const modules = output.flatMap((chunk) => (chunk.type === "chunk" ? chunk.moduleIds : []));
    const packages = new Set(
      modules.flatMap((id) => /node_modules[\\/]((?:@[^\\/]+[\\/])?[^\\/]+)/.exec(id)?.[1] ?? []),
    );
    expect(modules.length).toBeGreaterThan(100);
    expect([...packages]).toContain("zod");
    for (const name of [
      "ink",
      "react",
      "react-reconciler",
      "yoga-layout",
      "chrono-node",
      "fast-check",
      "ical.js",
      "mongoose",
      "redis",
      "pg",
      "pdfkit",
      "papaparse",
      "csv-parse",
      "unpdf",
    ])
      expect([...packages], name).not.toContain(name);
  });

  it("shows it in its text too", () => {
    // what react and ink can't do without
    const react = /react\.(?:transitional\.)?element|react-reconciler|yoga-layout|useInput/;
    for (const name of parts().filter((each) => each !== "chat.cjs"))
      expect(shipped(name), name).not.toMatch(react);
    expect(shipped("chat.cjs")).toMatch(/react\.(?:transitional\.)?element/);
  });

  it("makes papers without a reader of font files", () => {
    expect(statSync(join(dist.folder, "paper.mjs")).size).toBeLessThan(300_000);
    expect(shipped("paper.mjs")).not.toMatch(/node:fs|readFileSync\(["'`]/);
  });

  it("asks for nothing but what comes with node, and for its own parts", () => {
    const names = readdirSync(dist.folder).filter((name) => /\.[cm]js$/.test(name));
    expect(names).toEqual(expect.arrayContaining(["bowlside.cjs", "program.cjs", "dose.cjs", "chat.cjs"]));
    for (const name of names)
      expect(
        asked(shipped(name)).filter((each) => !builtins.has(each) && !each.startsWith("./")),
        name,
      ).toEqual([]);
  });

  it("can be run as it is", () => {
    expect(shipped("bowlside.cjs").startsWith("#!/usr/bin/env node\n")).toBe(true);
    if (process.platform !== "win32")
      expect(statSync(join(dist.folder, "bowlside.cjs")).mode & 0o111).not.toBe(0);
  });

  it("carries V8's cache of each part, which V8 takes", () => {
    for (const name of parts()) {
      const filename = join(dist.folder, name);
      const cachedData = readFileSync(filename.replace(/cjs$/, "cache"));
      const script = new Script(readFileSync(filename, "latin1"), { filename, cachedData });
      expect(script.cachedDataRejected, name).toBe(false);
    }
  });
});
