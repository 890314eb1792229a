/** What the README quotes is what the program does: its session, its examples, its help, its files and commands. */
import { existsSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import type { Answer } from "../../src/tools/contract/index.ts";
import { textOf } from "../guards/sources.ts";
import { baker } from "../support/ask.ts";
import { root } from "../support/built.ts";
import { demoRecord } from "./calculators.ts";
import { currentReadme, section, sessionOf } from "./readme.ts";

const readme = textOf("README.md");

it("its session and its help are current: npm run pages writes them anew", async () => {
  expect(sessionOf(readme).length).toBeGreaterThan(2);
  await expect(await currentReadme()).toMatchFileSnapshot(join(root, "README.md"));
});

it("its session is all answered, with the numbers that the text above it speaks of", async () => {
  const talk = baker();
  const answers: Answer[] = [];
  for (const say of sessionOf(readme)) answers.push(await talk.one(say));
  expect(answers.map(({ status }) => status)).toEqual(answers.map(() => "answered"));
  // 3 and 5 % of 230 and of 300 g; 300 g / 1.25 - 180 g
  expect(answers.slice(0, 3).map(({ headline }) => headline)).toEqual([
    "6.9 to 11.5 g flavor",
    "9 to 15 g flavor",
    "Add 60 g cream",
  ]);
});

describe("what you can ask", () => {
  const rows = section(readme, "What you can ask")
    .split("\n")
    .filter((line) => /^\| [a-z]/.test(line) && !line.startsWith("| about"))
    .map((line) => {
      const [, about = "", examples = ""] = line.split("|").map((each) => each.trim());
      return [about, examples.split(/ [·→] /).map((each) => each.replace(/^"|"$/g, ""))] as const;
    });

  it("has rows, each with questions in quotes and nothing else", () => {
    expect(rows).toHaveLength(10);
    for (const [about, questions] of rows) expect([about, questions.length > 2]).toEqual([about, true]);
  });

  it("what stands behind no arrow is answered by itself, in a record with nothing in it", async () => {
    const alone = [...section(readme, "What you can ask").matchAll(/[|·] "([^"]+)"/g)].map(
      ([, say = ""]) => say,
    );
    expect(alone.length).toBeGreaterThan(30);
    for (const say of alone) {
      const answers = await baker().ask(say);
      expect(answers.length, say).toBeGreaterThan(0);
      const may = say === "undo" ? "impossible" : "answered";
      expect([say, ...answers.map(({ status }) => status)]).toEqual([say, ...answers.map(() => may)]);
    }
  });

  it.each(rows)(
    "%s: every question is answered, in a fresh record and in one with something in it",
    async (_, questions) => {
      for (const record of [{}, demoRecord()]) {
        const talk = baker({ record });
        for (const say of questions) {
          const answers = await talk.ask(say);
          // nothing has been changed yet in a fresh record; a second timer has to be named in a full one
          const may = say === "undo" ? ["answered", "impossible"] : ["answered"];
          for (const { status, headline } of answers)
            expect([say, headline, may.includes(status)]).toEqual([say, headline, true]);
          expect(answers.length, say).toBeGreaterThan(0);
        }
      }
    },
  );
});

it("every file and folder that it links to is there", () => {
  const links = [...readme.matchAll(/\]\(([^)#]+)(?:#[^)]*)?\)/g)].map(([, to = ""]) => to);
  expect(links.length).toBeGreaterThan(6);
  expect(links.filter((to) => !existsSync(join(root, to)))).toEqual([]);
});

it("every npm script that README and DEVELOPERS name is there", () => {
  const { scripts } = JSON.parse(textOf("package.json")) as { scripts: Record<string, string> };
  const named = [...`${readme}${textOf("DEVELOPERS.md")}`.matchAll(/(?:`|^)npm (?:run )?([\w:]+)/gm)].map(
    ([, name = ""]) => name,
  );
  const own = new Set(["ci", "pack", "install"]);
  expect(named).toContain("pages");
  expect(named.filter((name) => !own.has(name) && !(name in scripts))).toEqual([]);
});
