/** A page for each calculator: its questions with the answers that the demo's record gives, its rules, its numbers. */
import { demoChanges } from "../../src/cli/demo/record.ts";
import { turnText } from "../../src/cli/plain.ts";
import { applyEffects } from "../../src/store/apply.ts";
import { emptyRecord, type RecordData } from "../../src/store/schema.ts";
import type { Answer, Tool } from "../../src/tools/contract/index.ts";
import { capital } from "../../src/tools/lib/show.ts";
import { tools } from "../../src/tools/registry.ts";
import { importsOf, sources } from "../guards/sources.ts";
import { baker } from "../support/ask.ts";
import { standing } from "../support/world.ts";
import { table } from "./table.ts";

const columns = 88;

/** What has to be asked before, where a question is about the answer before it. */
const before: Readonly<Record<string, string>> = { explain: "I have 230 g buttercream, how much flavor?" };

const now_ms = new Date(standing).getTime();
/** The demo's record at the moment at which all tests stand. */
export const demoRecord = (): RecordData =>
  demoChanges(now_ms).reduce(
    (record, { effects, change }) => applyEffects(record, effects, change, now_ms),
    emptyRecord(),
  );

export interface Asked {
  say: string;
  answers: Answer[];
}

/** A calculator's own questions, each in a conversation of its own over a demo's record of its own. */
export function questionsOf(tool: Tool): Promise<Asked[]> {
  return Promise.all(
    tool.examples.map(async ({ say }) => {
      const talk = baker({ record: demoRecord() });
      const first = before[tool.name];
      if (first) await talk.ask(first);
      return { say, answers: await talk.ask(say) };
    }),
  );
}

/** Answered, and by the calculator whose question it is. */
export const isAnswered = (tool: Tool, { answers }: Asked): boolean =>
  answers.length > 0 && answers.every((each) => each.status === "answered" && each.tool === tool.name);

const shown = ({ say, answers }: Asked): string[] => [
  "```text",
  `∪ ${say}`,
  turnText({ asked: say, answers }, columns, false),
  "```",
  "",
];

/** Rule files that a calculator's own files lean on, through what they share too. */
function ruleFiles(tool: Tool): string[] {
  const own = sources.filter((path) => new RegExp(`^src/tools/${tool.name}(?:/|\\.ts$)`).test(path));
  const found = new Set<string>();
  const seen = new Set<string>();
  const walk = (path: string): void => {
    if (seen.has(path)) return;
    seen.add(path);
    for (const { to, types } of importsOf(path)) {
      if (types) continue;
      if (/^data\/(?:rules|tables)\//.test(to)) found.add(to);
      else if (to.startsWith("src/tools/") && to !== "src/tools/registry.ts") walk(to);
    }
  };
  for (const path of own) walk(path);
  return [...found].sort();
}

/** A rule file's place on the page of numbers. */
const placeOf = (file: string) => /([a-z-]+)\.(?:ts|json)$/.exec(file)?.[1] ?? "";

/** The rules of the answers, each once: the words, and what they rest on. */
function rulesOf(asked: readonly Asked[]): string[][] {
  const rules = asked.flatMap(({ answers }) => answers.flatMap(({ rule }) => (rule ? [rule] : [])));
  const rows = rules.map(({ text, basis, source }) => [text, basis, source ?? ""]);
  return rows.filter((row, at) => rows.findIndex((other) => other.join("|") === row.join("|")) === at);
}

export async function calculatorPage(tool: Tool): Promise<string> {
  const asked = await questionsOf(tool);
  const answered = asked.filter((each) => isAnswered(tool, each));
  const others = asked.filter((each) => !answered.includes(each));
  const rules = rulesOf(answered);
  const files = ruleFiles(tool);
  return [
    `# ${tool.name}`,
    "",
    `${capital(tool.purpose)}.`,
    "",
    '[All calculators](README.md). Made of the calculator itself by "npm run pages"; changes here are lost.',
    "",
    "## Questions that it answers",
    "",
    `Answered as here with the demo's record (\`bowlside --demo\`) at ${standing.replace("T", ", ").slice(0, 17)}; yours answers by yours.`,
    "",
    ...(before[tool.name] ? [`Asked before each of them: "${before[tool.name]}"`, ""] : []),
    ...answered.flatMap(shown),
    ...(others.length ? ["## When something is missing, or can't be", "", ...others.flatMap(shown)] : []),
    ...(rules.length
      ? ["## Rules behind these answers", "", ...table(["rule", "rests on", "source"], rules), ""]
      : []),
    ...(files.length
      ? [
          "## Where its numbers stand",
          "",
          ...files.map(
            (file) => `- [${file}](../../${file}), shown in [numbers](numbers.md#${placeOf(file)})`,
          ),
          "",
        ]
      : []),
    "## What looks alike and is for another",
    "",
    ...tool.elsewhere.map((each) => `- "${each.say}" goes to [${each.tool}](${each.tool}.md)`),
    "",
  ].join("\n");
}

/** The list of all pages. */
export const indexPage = (): string =>
  [
    "# What the program can be asked",
    "",
    'Made of the calculators themselves by "npm run pages"; changes here are lost.',
    "",
    ...table(
      ["calculator", "what for", "for example"],
      tools.map((tool) => [
        `[${tool.name}](${tool.name}.md)`,
        capital(tool.purpose),
        `"${tool.examples[0]?.say ?? ""}"`,
      ]),
    ),
    "",
    "[Where every number comes from](numbers.md). The command's own manual page is [bowlside.1](bowlside.1).",
    "",
  ].join("\n");
