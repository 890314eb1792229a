/**
 * In the built program a regular expression is asked only of a text that holds one of the words it can't do without.
 * That must never change what it finds.
 */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { rolldown } from "rolldown";
import { parseAst } from "rolldown/parseAst";
import { describe, expect, it } from "vitest";
import { headOf } from "../../../src/cli/build/pattern-head.mjs";
import { patternTable } from "../../../src/cli/build/pattern-table.mjs";
import { spacedOut, wordsOf } from "../../../src/cli/build/pattern-words.mjs";
import { hearPatterns, patternsIn } from "../../../src/cli/build/patterns.mjs";
import { waiting } from "../../../src/cli/build/waiting.mjs";
import { questions } from "../../../src/intents/converse.ts";
import { understanding } from "../../../src/intents/understanding.ts";
import { tools } from "../../../src/tools/registry.ts";
import { filesIn, textOf } from "../../guards/sources.ts";
import { root } from "../../support/built.ts";

describe("the words that a pattern can't do without", () => {
  it.each([
    ["box|boxes of", ["box"]],
    ["(?:how|what) many", ["how many", "what many"]],
    ["(?:please )?note", ["note"]],
    ["flavou?r", ["flavour", "flavor"]],
    ["(?:ca|ba)[kt]e", ["cake", "cate", "bake", "bate"]],
    ["^(?:so )*twice", [" twice"]],
    ["^(?:(?:so|and) )*(?:he|she) ", [" he ", " she "]],
    ["(?:^| )(?:he|we)(?: |$)", [" he ", " we "]],
    ["(?:^|, )he$", [" he "]],
    ["he(?= now)", ["he now"]],
    ["(?=.*butter)\\d+", ["butter"]],
    ["(?<!no )sugar", ["sugar"]],
  ])("%s", (source, words) =>
    expect(wordsOf(source).map((list) => list.sort())).toEqual([[...words].sort()]),
  );

  it.each([
    ["set (?:a|the) \\S+ timer", [[" timer"], ["set a ", "set the "]]],
    [
      "(?:ring|buzz|timer).*\\b(?:in|at) \\d",
      [
        ["ring", "buzz", "timer"],
        ["in ", "at "],
      ],
    ],
    [
      "\\b(?:in|into) \\S+ bowls?$",
      [
        [" bowl ", " bowls "],
        ["in ", "into "],
      ],
    ],
    ["(?:twice|double)+ it", [["twice", "double"], [" it"]]],
    ["(?:note|log).*note it", [["note it"]]],
  ])("%s: of each list one", (source, lists) =>
    expect(wordsOf(source).map((list) => list.sort())).toEqual(lists.map((list) => [...list].sort())),
  );

  it("at the ends of a text, a space", () => {
    for (const source of ["^(?:^| )butter$", "^(?:so )*(?:^| )butter(?: |$)$", "(?:^butter|butter$)"]) {
      const [words = []] = wordsOf(source);
      expect(words.some((word) => spacedOut("butter").includes(word))).toBe(true);
    }
  });

  it.each(["\\d+", "(?:butter)?", "(?:butter|\\d+)", "[a-z]+n?g?", "a|b", "(?!butter)\\S+"])(
    "%s: none that is sure",
    (source) => expect(wordsOf(source)).toEqual([]),
  );

  it("are small where letters may be large or small, and then only plain ones", () => {
    expect(wordsOf("Butter", "i")).toEqual([["butter"]]);
    expect(wordsOf("crème", "i")).toEqual([]);
    expect(wordsOf("butter", "iu")).toEqual([]);
  });
});

describe("how a pattern begins", () => {
  const long = `(?:${"the long end of it ".repeat(20)})`;
  it.each([
    [`^(?:so |and )*(?:take|try) ${long}`, "^(?:so |and )*(?:take|try) "],
    [`(?:${"step|".repeat(12)}round \\d|batch )${long}`, `(?:${"step|".repeat(12)}round |batch )`],
    [`^(?!.*\\?)note${long}`, "^(?!.*\\?)note(?:the )"],
    [`one ${long}|another ${long}`, "one |another "],
    // what it looks at first tells enough, and talk in front of it is long
    [`^(?!.*how)(?:${"so |".repeat(30)}and )*note ${long}`, "^(?!.*how)"],
  ])("%s", (source, head) => expect(headOf(source)).toBe(head));

  it("is asked of no short one, of none that it is most of, and of none that refers back", () => {
    expect(headOf("take (?:two|three) ")).toBeUndefined();
    expect(headOf(`^(?:${"a word|".repeat(60)}so)* it`)).toBeUndefined();
    expect(headOf(`(one|two) ${long}\\1`)).toBeUndefined();
  });
});

describe("patterns that wait", () => {
  const waitingIn = (code: string): string[] =>
    patternsIn(parseAst(code, { lang: "ts" })).map(({ start, end }) => code.slice(start, end));
  const all = 'new RegExp("a" + "b", "g")';

  it("are those of a name that is only searched for, and begin anew each time", () => {
    const named = `const each = ${all};`;
    for (const use of ["matchAll(each)", "match(each)", 'replace(each, "")', 'replaceAll(each, "")'])
      expect(waitingIn(`${named} const f = (text) => text.${use};`)).toEqual([all]);
  });

  it("are none that remember where they were", () => {
    const named = `const each = ${all};`;
    for (const use of [
      "each.test(text)",
      "each.exec(text)",
      "g(each)",
      "text.matchAll(each) && each.lastIndex",
    ])
      expect(waitingIn(`${named} const f = (text) => ${use};`)).toEqual([]);
    expect(waitingIn(`export ${named} const f = (text) => text.matchAll(each);`)).toEqual([]);
  });

  it("are those of a book, which is opened once, and none that a function makes each time", () => {
    expect(waitingIn(`const book = (): readonly Phrase[] => [{ from: ${all} }];`)).toEqual([all]);
    expect(waitingIn(`const made = (word: string) => [{ from: ${all} }];`)).toEqual([]);
    expect(waitingIn(`const made = () => [{ from: ${all} }];`)).toEqual([]);
  });
});

/** Every pattern of the sources: as it is written, and as it is put together when the program is read. */
async function everyPattern(): Promise<RegExp[]> {
  const code = [...filesIn("src", /\.tsx?$/), ...filesIn("data", /\.ts$/)];
  const written = code
    .filter((path) => !path.endsWith(".d.ts"))
    .flatMap((path) => patternsIn(parseAst(textOf(path), { lang: path.endsWith("x") ? "tsx" : "ts" })))
    .flatMap(({ regex }) => (regex ? [regex] : []));
  const heard = await hearPatterns(root, async (plugin, file) => {
    const build = await rolldown({
      input: join(root, "src/cli/entry.ts"),
      platform: "node",
      cwd: root,
      logLevel: "silent",
      plugins: [plugin],
    });
    await build.write({ file, format: "cjs", codeSplitting: false });
  });
  const all = new Map(
    [...written, ...heard.values()].map((each) => [`/${each.pattern}/${each.flags}`, each]),
  );
  return [...all.values()].map(({ pattern, flags }) => new RegExp(pattern, flags));
}

const learned = join(root, "tests/questions/learned");
const said = [
  ...tools.flatMap((tool) => [...tool.examples, ...tool.elsewhere]).map(({ say }) => say),
  ...readdirSync(learned)
    .flatMap((name) => readFileSync(join(learned, name), "utf8").split("\n").filter(Boolean))
    .flatMap((line) => (JSON.parse(line) as { turns: { say: string }[] }).turns.map(({ say }) => say))
    .filter((_, at) => at % 12 === 0),
];
const all = understanding(tools);
const texts = [
  ...new Set(
    said.flatMap((say) => [
      say,
      say.toLowerCase(),
      ...questions(say, all).flatMap(({ text, mask }) => [text, mask]),
    ]),
  ),
];

describe("every pattern of the program", async () => {
  const patterns = await everyPattern();
  const sure = patterns.flatMap((pattern) => {
    const lists = wordsOf(pattern.source, pattern.flags);
    const head = headOf(pattern.source, pattern.flags);
    const isHeld = (text: string) => {
      const searched = spacedOut(pattern.ignoreCase ? text.toLowerCase() : text);
      const isBegun = head === undefined || new RegExp(head, pattern.flags.replace("g", "")).test(text);
      return isBegun && lists.every((list) => list.some((word) => searched.includes(word)));
    };
    return lists.length > 0 || head ? [{ pattern, isHeld }] : [];
  });

  // those that are asked by their heads alone count too
  it("most have such words or such a head", () => {
    expect(patterns.length).toBeGreaterThan(1000);
    expect(sure.length / patterns.length).toBeGreaterThan(0.6);
  });

  it("matches no text of bakers that lacks them", () => {
    const missed = sure.flatMap(({ pattern, isHeld }) =>
      texts.filter((text) => pattern.test(text) && !isHeld(text)).map((text) => `${pattern}: ${text}`),
    );
    expect(missed).toEqual([]);
  });

  it("matches no text made for it that lacks them", () => {
    let made = 0;
    for (const { pattern, isHeld } of sure) {
      let texts: fc.Arbitrary<string>;
      try {
        texts = fc.stringMatching(pattern);
      } catch {
        // what looks ahead can't be made up
        continue;
      }
      made += 1;
      for (const text of fc.sample(texts, { numRuns: 5, seed: 7 }))
        if (pattern.test(text)) expect(isHeld(text), `${pattern}: ${text}`).toBe(true);
    }
    expect(made).toBeGreaterThan(300);
  });
});

/** Longer than 300 letters: it waits for "two " or "some " at the start too. */
const long = new RegExp(`^(two|some) (?:of )*(bowls|butter)(?:${" and another long end of it".repeat(12)})?`);

/** The patterns as they wait in the built program, one behind the other in one table. */
function waitingFor(patterns: readonly RegExp[]): () => ReturnType<typeof waiting>[] {
  const table = patternTable();
  const places = patterns.map(({ source, flags }) =>
    table.add(source, flags, wordsOf(source, flags), headOf(source, flags)),
  );
  const source = (start: number, length: number) => table.sources().slice(start, start + length);
  return () => places.map((at) => waiting(at, { lines: table.lines, source }));
}

it("waiting for its head, it is made of no text that begins otherwise", () => {
  expect([long.source.length > 300, headOf(long.source)]).toEqual([true, "^(two|some) "]);
  const made = (text: string) => {
    const [late] = waitingFor([long])();
    const found = late?.exec(text)?.[0];
    return [found, (late as { pattern?: RegExp } | undefined)?.pattern];
  };
  // its words are in all of them
  expect(made("so two bowls")).toEqual([undefined, undefined]);
  expect(made("two little bowls")).toEqual([undefined, long]);
  expect(made("two of bowls")).toEqual(["two of bowls", long]);
});

it("waiting, it does what it does at once", () => {
  const pieces = ["two", "two bowls", "bowls", "of", "butter", "230_g<weight>", " ", ","];
  const several = [/(two|some) bowls/, /Butter(?: of)? (\S+)/i, long, /,\s*two/, /\bof\b/, /two.* bowls/];
  const all = waitingFor(several);
  fc.assert(
    fc.property(fc.array(fc.constantFrom(...pieces), { maxLength: 12 }), (words) => {
      const text = words.join(" ");
      for (const [at, pattern] of several.entries()) {
        const late = () => all()[at] as ReturnType<typeof waiting>;
        expect(late().test(text)).toBe(pattern.test(text));
        expect(late().exec(text)).toEqual(pattern.exec(text));
        expect(text.match(late())).toEqual(text.match(pattern));
        expect(text.search(late())).toBe(text.search(pattern));
        expect(text.replace(late(), "<$1>")).toBe(text.replace(pattern, "<$1>"));
        expect(text.split(late())).toEqual(text.split(pattern));
        expect(text.split(late(), 1)).toEqual(text.split(pattern, 1));
        const wide = new RegExp(pattern.source, `${pattern.flags.replace("g", "")}g`);
        const lateWide = waitingFor([wide])()[0] as ReturnType<typeof waiting>;
        expect([...text.matchAll(lateWide)]).toEqual([...text.matchAll(wide)]);
        expect(text.replaceAll(lateWide, "<$1>")).toBe(text.replaceAll(wide, "<$1>"));
        expect(late().source).toBe(pattern.source);
        expect(late().flags).toBe(pattern.flags);
      }
    }),
  );
});
