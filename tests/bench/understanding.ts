/**
 * `npm run bench:understanding`: how well unseen conversations are understood, what is taken for what, how sure it was,
 * and how other readers choose on the same first questions. Files given as arguments are scored instead of the unseen
 * ones; learned ones say nothing, since everything here was taught with them. `--json` for machines; `--logistic N` sets
 * how many features natural's logistic classifier may have; it takes many minutes, so it is left out unless asked for.
 */
import { existsSync } from "node:fs";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { score } from "../../src/intents/chosen/choose.ts";
import { opinions } from "../../src/intents/chosen/classify.ts";
import { featuresOf } from "../../src/intents/chosen/features.ts";
import { questions } from "../../src/intents/converse.ts";
import { understanding } from "../../src/intents/understanding.ts";
import { tools } from "../../src/tools/registry.ts";
import { baker } from "../support/ask.ts";
import { type Conversation, fault } from "../support/judge.ts";
import { conversationsIn, type Document, documents, filesOf, wantedTools } from "./documents.ts";
import { peers } from "./peers.ts";
import { percent, table } from "./table.ts";
import { typed } from "./typings.ts";
import { type Verdict, verdictOf, verdicts } from "./verdict.ts";

interface Asked extends Pick<Document, "raw" | "masked"> {
  kind: string;
  verdict: Verdict;
  wanted: string[];
  got: string;
  /** Points of the best calculator by its cues, and the classifier's share for its first. */
  points: number;
  share: number;
  /** Whether cues alone, and the classifier alone, had the right one first. */
  byCues: boolean;
  byClassifier: boolean;
}

const all = understanding(tools);

async function turnsOf({ kind, now, turns }: Conversation): Promise<Asked[]> {
  const { ask } = baker(now ? { now } : {});
  const judged: Asked[] = [];
  let last: string | undefined;
  for (const { say, expect } of turns) {
    const [reading, ...more] = questions(say, all);
    const answers = await ask(say);
    if (expect && reading) {
      const wanted = wantedTools(expect[0]);
      const [best] = score(reading, tools);
      const [likeliest] = opinions(reading.mask, last);
      const wrong = expect.some((each, at) => fault(each, answers[at]) !== undefined);
      judged.push({
        kind,
        verdict: verdictOf(wrong, answers),
        wanted,
        got: answers[0]?.tool ?? "nothing",
        points: best?.points ?? 0,
        share: likeliest?.sureness ?? 0,
        byCues: wanted.includes(best?.points ? best.tool.name : "help"),
        byClassifier: wanted.includes(likeliest?.tool ?? "help"),
        raw: more.length === 0 ? say : reading.text,
        masked: featuresOf(reading.mask, last),
      });
    }
    const answered = answers.findLast((each) => !["help", "explain", "undo"].includes(each.tool));
    last = answered?.tool ?? last;
  }
  return judged;
}

const isRight = ({ wanted, got }: Asked) => wanted.includes(got);

function byKind(asked: readonly Asked[]) {
  const row = (kind: string, some: readonly Asked[]) => ({
    kind,
    turns: some.length,
    ...(Object.fromEntries(
      verdicts.map((verdict) => [verdict, some.filter((each) => each.verdict === verdict).length]),
    ) as Record<Verdict, number>),
  });
  const kinds = [...new Set(asked.map(({ kind }) => kind))].sort();
  return [
    ...kinds.map((kind) =>
      row(
        kind,
        asked.filter((each) => each.kind === kind),
      ),
    ),
    row("all", asked),
  ];
}

/** How often each wanted calculator became each other one; those that came out right are on the diagonal. */
function confusion(asked: readonly Asked[]): { wanted: string; got: string; times: number }[] {
  const cells = new Map<string, number>();
  for (const each of asked) {
    const cell = `${isRight(each) ? each.got : (each.wanted[0] ?? "anything")} ${each.got}`;
    cells.set(cell, (cells.get(cell) ?? 0) + 1);
  }
  return [...cells]
    .map(([cell, times]) => {
      const [wanted = "", got = ""] = cell.split(" ");
      return { wanted, got, times };
    })
    .sort((a, b) => b.times - a.times);
}

/** From each level to the next: how many, and how often the cues, the classifier and the program chose right. */
function calibration(asked: readonly Asked[], of: "points" | "share", levels: readonly number[]) {
  return levels.map((from, at) => {
    const to = levels[at + 1] ?? Number.POSITIVE_INFINITY;
    const some = asked.filter((each) => each[of] >= from && each[of] < to);
    return {
      from,
      turns: some.length,
      alone: some.filter(of === "points" ? ({ byCues }) => byCues : ({ byClassifier }) => byClassifier)
        .length,
      program: some.filter(isRight).length,
    };
  });
}

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { json: { type: "boolean", default: false }, logistic: { type: "string", default: "0" } },
});
const questionsFolder = join(process.cwd(), "tests/questions");
const unseen = join(questionsFolder, "unseen");
const files = positionals.length > 0 ? positionals : existsSync(unseen) ? filesOf(unseen) : [];
if (files.length === 0) {
  console.error("There are no conversations in tests/questions/unseen; name files to try this out.");
  process.exit(1);
}

const asked: Asked[] = [];
const conversations = files.flatMap(conversationsIn);
for (const each of conversations) asked.push(...(await turnsOf(each)));
const chosen = asked.filter(({ wanted }) => wanted.length > 0);
const taught = documents(filesOf(join(questionsFolder, "learned")), all);
const compared = [
  { name: "this program", right: chosen.filter(isRight).length },
  { name: "its cues alone", right: chosen.filter(({ byCues }) => byCues).length },
  { name: "its classifier alone", right: chosen.filter(({ byClassifier }) => byClassifier).length },
];
for (const { name, choose } of await peers(taught, Number(values.logistic))) {
  let right = 0;
  for (const each of chosen) if (each.wanted.includes((await choose(each)) ?? "help")) right += 1;
  compared.push({ name, right });
}
const report = {
  learned: files.some((file) => /[\\/]learned[\\/]/.test(file)),
  taught: taught.length,
  turns: asked.length,
  choices: chosen.length,
  kinds: byKind(asked),
  confusion: confusion(chosen),
  points: calibration(chosen, "points", [Number.NEGATIVE_INFINITY, 1e-9, 2, 3, 4, 5, 6]),
  share: calibration(chosen, "share", [0, 1e-9, 0.3, 0.5, 0.7, 0.8, 0.9, 0.95, 0.99]),
  compared,
  typed: await typed(conversations),
};

if (values.json) console.log(JSON.stringify(report));
else {
  if (report.learned)
    console.log("LEARNED conversations: everything below was taught with them, so it scores nothing.\n");
  console.log(
    table(
      ["kind", "turns", ...verdicts, "right %"],
      report.kinds.map((each) => [
        each.kind,
        each.turns,
        ...verdicts.map((verdict) => each[verdict]),
        percent(each.right, each.turns),
      ]),
    ),
  );
  const names = [...new Set(report.confusion.flatMap(({ wanted, got }) => [wanted, got]))].sort();
  const times = (wanted: string, got: string) =>
    report.confusion.find((each) => each.wanted === wanted && each.got === got)?.times ?? "";
  console.log("\nCalculators: wanted down, got across");
  console.log(
    table(
      ["", ...names.map((name) => name.slice(0, 5))],
      names.map((wanted) => [wanted, ...names.map((got) => times(wanted, got))]),
    ),
  );
  for (const [name, rows] of [
    ["the cues' points", report.points],
    ["the classifier's share", report.share],
  ] as const) {
    console.log(`\nHow often the choice was right, by ${name}`);
    console.log(
      table(
        ["from", "turns", "that alone %", "program %"],
        rows.map((each) => [
          Number.isFinite(each.from) ? each.from : "below",
          each.turns,
          percent(each.alone, each.turns),
          percent(each.program, each.turns),
        ]),
      ),
    );
  }
  console.log(
    `\nThe right calculator for the first question of ${report.choices} turns, taught ${report.taught} sentences`,
  );
  console.log(
    table(
      ["", "right", "right %"],
      compared.map(({ name, right }) => [name, right, percent(right, report.choices)]),
    ),
  );
  console.log(
    "\nThe same turns with slips of the keyboard, dictated, with talk around them: each in a conversation that is right before it",
  );
  console.log(
    table(
      ["", ...verdicts, "right %", "wrong %"],
      report.typed.map(({ typing, counts }) => {
        const all = verdicts.reduce((sum, verdict) => sum + counts[verdict], 0);
        return [
          typing,
          ...verdicts.map((verdict) => counts[verdict]),
          percent(counts.right, all),
          percent(counts.wrong, all),
        ];
      }),
    ),
  );
}
