/** The borders between the folders, by what their files import. */
import { existsSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { root } from "../support/built.ts";
import { data, type Import, imports, importsOf, sources, told } from "./sources.ts";

const within = (folder: string) => imports.filter(({ from }) => from.startsWith(`${folder}/`));
/** Trains the classifier on all calculators' phrases and writes a file; no part of the program. */
const training = "src/intents/chosen/train.ts";
const reading = within("src/intents").filter(({ from }) => from !== training);
const packageOf = ({ to }: Import) =>
  /^(?:src|data)\//.test(to)
    ? undefined
    : to
        .split("/")
        .slice(0, to.startsWith("@") ? 2 : 1)
        .join("/");

it("the scan sees what it has to see", () => {
  expect(sources.length).toBeGreaterThan(100);
  expect(data.length).toBeGreaterThan(10);
  expect(told(importsOf("src/cli/main.ts"))).toContain("src/cli/main.ts imports src/tools/registry.ts");
  expect(told(importsOf("src/tools/registry.ts"))).toContain(
    "src/tools/registry.ts imports src/tools/dose/dose.ts",
  );
  expect(told(importsOf("src/intents/text/vocabulary.ts"))).toContain(
    "src/intents/text/vocabulary.ts imports natural/lib/natural/stemmers/porter_stemmer.js",
  );
});

describe("folders", () => {
  const forbidden: readonly (readonly [string, RegExp])[] = [
    ["src/tools", /^src\/(?:intents|cli|store)\//],
    ["src/intents", /^src\/(?:cli|store)\//],
    ["src/store", /^src\/(?:cli|intents)\//],
    ["data", /^src\/(?!tools\/contract\/)/],
  ];
  it.each(forbidden)("%s imports nothing of %s", (folder, others) => {
    expect(told(within(folder).filter(({ to }) => others.test(to)))).toEqual([]);
  });

  it("the store knows of calculators only their contract", () => {
    expect(told(within("src/store").filter(({ to }) => /^src\/tools\/(?!contract\/)/.test(to)))).toEqual([]);
  });

  it("reading knows of calculators their contract, and the shared sums, never one of them", () => {
    expect(told(reading.filter(({ to }) => /^src\/tools\/(?!contract\/|lib\/)/.test(to)))).toEqual([]);
  });

  it("training is done at build time: nothing that runs imports it", () => {
    expect(told(imports.filter(({ to }) => to === training))).toEqual([]);
  });

  it("a calculator imports another only where it is made of it", () => {
    const own = (path: string) => /^src\/tools\/([a-z-]+)/.exec(path)?.[1] ?? "";
    const shared = new Set(["lib", "contract"]);
    const crossing = within("src/tools").filter(({ from, to }) => {
      const [a, b] = [own(from), own(to)];
      return to.startsWith("src/tools/") && a !== b && !shared.has(b) && a !== "registry";
    });
    // the shared folder stands below them all
    expect(told(crossing.filter(({ from }) => shared.has(own(from))))).toEqual([]);
  });
});

describe("packages", () => {
  const only = (name: string, allowed: RegExp) =>
    told(imports.filter((each) => packageOf(each) === name && !allowed.test(each.from)));

  it("calculators touch no disk, no screen and no process", () => {
    const touched = within("src/tools").filter(
      ({ to }) =>
        /^(?:node:|fs$|os$|path$|process$)/.test(to) ||
        ["ink", "react", "lowdb", "natural"].includes(to.split("/")[0] ?? ""),
    );
    expect(told(touched)).toEqual([]);
  });

  it("reading touches no disk either", () => {
    expect(told(reading.filter(({ to }) => /^node:/.test(to)))).toEqual([]);
  });

  it.each([
    ["ink", /^src\/cli\/chat\//],
    ["react", /^src\/cli\/chat\//],
    ["lowdb", /^src\/store\//],
    ["natural", /^src\/intents\//],
    ["pdfkit", /^src\/cli\/paper\//],
    ["papaparse", /^src\/cli\/csv\//],
  ] as const)("%s is used in its own folder only", (name, allowed) => {
    expect(only(name, allowed)).toEqual([]);
  });

  it("natural comes file by file: its root loads databases and prints", () => {
    const wide = imports.filter(
      (each) =>
        packageOf(each) === "natural" && !/^natural\/lib\/natural\/[a-z_]+\/[a-z_]+\.js$/.test(each.to),
    );
    expect(told(wide.filter(({ types }) => !types))).toEqual([]);
    expect(told(imports.filter(({ to }) => /^natural\/.*\/index(?:\.js)?$/.test(to)))).toEqual([]);
  });

  it("mathjs comes by its narrow entry: the root loads everything", () => {
    expect(
      told(imports.filter((each) => packageOf(each) === "mathjs" && !each.to.startsWith("mathjs/"))),
    ).toEqual([]);
  });

  it("zod comes small, date-fns function by function", () => {
    expect(told(imports.filter((each) => packageOf(each) === "zod" && each.to !== "zod/mini"))).toEqual([]);
    expect(
      told(
        imports.filter((each) => packageOf(each) === "date-fns" && !/^date-fns\/[a-zA-Z]+$/.test(each.to)),
      ),
    ).toEqual([]);
  });

  it("data imports none", () => {
    expect(told(within("data").filter((each) => packageOf(each) !== undefined))).toEqual([]);
  });
});

describe("files", () => {
  it("are imported by their whole names, and are there", () => {
    const own = imports.filter((each) => packageOf(each) === undefined);
    expect(told(own.filter(({ to }) => !/\.(?:tsx?|json)$/.test(to)))).toEqual([]);
    expect(told(own.filter(({ to }) => !existsSync(join(root, to))))).toEqual([]);
  });

  it("import each other never round in a circle", () => {
    const next = new Map<string, string[]>();
    for (const { from, to, types, later } of imports)
      if (!types && !later) next.set(from, [...(next.get(from) ?? []), to]);
    const circles: string[] = [];
    const done = new Set<string>();
    const walk = (file: string, path: string[]): void => {
      if (path.includes(file)) circles.push([...path.slice(path.indexOf(file)), file].join(" > "));
      if (done.has(file) || path.includes(file)) return;
      for (const to of next.get(file) ?? []) walk(to, [...path, file]);
      done.add(file);
    };
    for (const file of next.keys()) walk(file, []);
    expect(circles).toEqual([]);
  });

  it("that one question needs reach neither ink nor react", () => {
    const seen = new Set<string>();
    const walk = (file: string): void => {
      if (seen.has(file)) return;
      seen.add(file);
      for (const { to, types } of imports.filter(({ from }) => from === file)) if (!types) walk(to);
    };
    walk("src/cli/entry.ts");
    expect(seen.size).toBeGreaterThan(50);
    expect(
      [...seen].filter((file) => /^(?:ink|react|yoga-layout|pdfkit|papaparse)(?:\/|$)|\.tsx$/.test(file)),
    ).toEqual([]);
  });
});
