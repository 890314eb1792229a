/** What is shipped: one narrow file for a single question, with neither ink nor react in it, and nothing to fetch. */
import { spawnSync } from "node:child_process";
import { readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { builtinModules } from "node:module";
import { join } from "node:path";
import { rolldown } from "rolldown";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { builtDist, root } from "../support/built.ts";

let dist: Awaited<ReturnType<typeof builtDist>>;
beforeAll(async () => {
  dist = await builtDist();
}, 180_000);
afterAll(() => dist?.remove());

const shipped = (name: string) => readFileSync(join(dist.folder, name), "utf8");
/** The program in parts: those that every question needs in one pack, all others in files of their own. */
const parts = () => readdirSync(dist.folder).filter((name) => /^(?!bowlside).*\.(?:cjs|pack)$/.test(name));
const builtins = new Set(builtinModules.flatMap((name) => [name, `node:${name}`]));

/** Names that a bundle asks for when it runs. */
const asked = (code: string) =>
  [
    ...code.matchAll(
      /\b(?:require|import)\(\s*["'`]([^"'`]+)["'`]\s*\)|\bfrom\s*["']([\w@./:-]*\w[\w@./:-]*)["']/g,
    ),
  ].map(([, a, b]) => a ?? b ?? "");

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
    const names = readdirSync(dist.folder).filter((name) => /\.(?:[cm]js|pack)$/.test(name));
    expect(names).toEqual(expect.arrayContaining(["bowlside.cjs", "question.pack", "dose.cjs", "chat.cjs"]));
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
    const watch = join(dist.folder, "watch.cjs");
    writeFileSync(
      watch,
      `const vm = require("node:vm");
      vm.Script = class extends vm.Script {
        constructor(code, options) {
          super(code, options);
          process.stderr.write("<" + require("node:path").basename(options.filename) + " " + this.cachedDataRejected + ">");
        }
      };`,
    );
    for (const [question, part] of [
      ["230 g buttercream, how much flavor?", "dose"],
      ["250 f in c", "convert"],
    ]) {
      const args = ["-r", watch, join(dist.folder, "bowlside.cjs"), "--home", dist.folder, question ?? ""];
      const { stderr } = spawnSync(process.execPath, args, { encoding: "utf8" });
      expect(stderr).toBe(`<program.cjs false><${part}.cjs false><shared.cjs false>`);
    }
  });
});
