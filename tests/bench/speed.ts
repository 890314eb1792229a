/**
 * `npm run bench:speed`: how long things take, as ratios to a bare start of the same Node (`node -e 0`) in the same run,
 * taken in turns so that a busy machine slows all alike. Needs `npm run build` first. `--json` for machines, `--rounds N`.
 */
import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { spawn } from "@lydell/node-pty";
import type { Note } from "../../src/tools/contract/index.ts";
import { tools } from "../../src/tools/registry.ts";
import { baker } from "../support/ask.ts";
import { conversationsIn, filesOf } from "./documents.ts";
import { table } from "./table.ts";

const { values } = parseArgs({
  options: { json: { type: "boolean", default: false }, rounds: { type: "string", default: "15" } },
});
const rounds = Number(values.rounds);
const program = join(process.cwd(), "dist/bowlside.cjs");
if (!existsSync(program)) {
  console.error("There is no dist/bowlside.cjs: run npm run build first.");
  process.exit(1);
}
const home = mkdtempSync(join(tmpdir(), "speed-"));
process.on("exit", () => rmSync(home, { recursive: true, force: true }));
/** A clock that stands: an order for tomorrow can be met at half past nine, and not at any hour. */
const env = { ...process.env, BOWLSIDE_HOME: home, BOWLSIDE_NOW: "2026-03-14T09:30" };

/** The value below which so large a part lies, 0 to 1. */
function quantile(list: readonly number[], part: number): number {
  const sorted = [...list].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(part * sorted.length))] ?? Number.NaN;
}
const median = (list: readonly number[]) => quantile(list, 0.5);

/** @returns milliseconds that the work took */
async function timed(work: () => unknown): Promise<number> {
  const start = performance.now();
  await work();
  return performance.now() - start;
}

/** @param ends the exit statuses that are no fault: as it is, only "answered" */
function ran(command: string, args: readonly string[], input = "", ends: readonly number[] = [0]): number {
  const start = performance.now();
  const done = spawnSync(command, args, { env, input });
  const took = performance.now() - start;
  if (done.status === null || !ends.includes(done.status))
    throw new Error(`${command} ${args.join(" ")}: ${done.error ?? done.stderr}`);
  return took;
}

/** What the first frame says, and what asks the terminal to tell pasted text from typed: from then on keys are taken. */
const shown = "Ask as you would say it";
const takesKeys = "\u001b[?2004h";

/** Until the chat has written this. */
const untilChat = (writes: string) => (): Promise<number> =>
  new Promise((resolve, reject) => {
    const start = performance.now();
    const screen = spawn(process.execPath, [program], {
      cols: 100,
      rows: 30,
      env: { ...env, TERM: "xterm-256color" },
    });
    const late = setTimeout(() => {
      screen.kill();
      reject(new Error("the chat draws nothing"));
    }, 20_000);
    let took = Number.NaN;
    let written = "";
    screen.onData((data) => {
      written += data;
      if (!Number.isNaN(took) || !written.includes(writes)) return;
      took = performance.now() - start;
      screen.kill();
    });
    screen.onExit(() => {
      clearTimeout(late);
      if (Number.isNaN(took)) reject(new Error(`the chat ended: ${written}`));
      else resolve(took);
    });
  });

/** The most memory that a process held, in MB: asked of itself as it ends. A system that doesn't tell tells the last. */
function memory(args: readonly string[], input = ""): number {
  const report = `import { readFileSync } from "node:fs"; process.on("exit", () => {
    let held = process.memoryUsage().rss / 1024;
    try { held = /VmHWM:\\s+(\\d+)/.exec(readFileSync("/proc/self/status", "utf8"))[1]; } catch {}
    process.stderr.write("\\nRSS " + held);
  });`;
  const done = spawnSync(
    process.execPath,
    ["--import", `data:text/javascript,${encodeURIComponent(report)}`, ...args],
    {
      env,
      input,
      encoding: "utf8",
    },
  );
  return Number(/RSS ([\d.]+)/.exec(done.stderr)?.[1]) / 1024;
}

const present = (command: string, args: readonly string[]) =>
  spawnSync(command, args, { input: "1\n" }).status === 0;
const calculator = present("bc", ["-q"])
  ? { name: "bc (230 * 3 / 100)", run: () => ran("bc", ["-q"], "230 * 3 / 100\n") }
  : present("units", ["1 cup", "ml"])
    ? { name: "units (1 cup in ml)", run: () => ran("units", ["-t", "1 cup", "ml"]) }
    : undefined;

const question = "230 g buttercream, how much pistachio flavor?";
const whole: [string, () => number | Promise<number>][] = [
  ["node -e 0", () => ran(process.execPath, ["-e", "0"])],
  ...(calculator ? [[calculator.name, calculator.run] as [string, () => number]] : []),
  ["one question", () => ran(process.execPath, [program, question])],
  ["--version", () => ran(process.execPath, [program, "--version"])],
  ["first frame of the chat", untilChat(shown)],
  ["the chat takes keys", untilChat(takesKeys)],
];
const took = new Map<string, number[]>(whole.map(([name]) => [name, []]));
// once unmeasured, so that files are in memory
for (let round = -1; round < rounds; round++)
  for (const [name, run] of whole) {
    const time = await run();
    if (round >= 0) took.get(name)?.push(time);
  }
const bare = median(took.get("node -e 0") ?? []);
const processes = whole.map(([name]) => {
  const times = took.get(name) ?? [];
  return { name, median_ms: median(times), p90_ms: quantile(times, 0.9), ratio: median(times) / bare };
});

/** "why?" by itself has nothing to show: asked for a detail, or told that it can't be. All others are answered. */
const endsOf = (say: string) => (say === "why?" ? [2, 3] : [0]);

/** One sentence tells little: the first example of each calculator, beside a bare start each time, the best of three. */
const each = tools
  .flatMap(({ examples }) => examples.slice(0, 1))
  .map(({ say }) => {
    const times: [number, number][] = [0, 1, 2].map(() => [
      ran(process.execPath, ["-e", "0"]),
      ran(process.execPath, [program, say], "", endsOf(say)),
    ]);
    return {
      say,
      bare_ms: Math.min(...times.map(([one]) => one)),
      ms: Math.min(...times.map(([, two]) => two)),
    };
  });
const bareEach = median(each.map(({ bare_ms }) => bare_ms));
const ratios = each.map(({ say, ms }) => ({ say, ratio: ms / bareEach })).sort((a, b) => a.ratio - b.ratio);
const asked = {
  count: ratios.length,
  median: median(ratios.map(({ ratio }) => ratio)),
  p90: quantile(
    ratios.map(({ ratio }) => ratio),
    0.9,
  ),
  slowest: ratios.at(-1),
};

/** All learned conversations in a row, three times over: new at first, then as in a chat that has run for hours. */
const conversations = filesOf(join(process.cwd(), "tests/questions/learned")).flatMap(conversationsIn);
const passes: { name: string; times: number[] }[] = [];
for (const name of ["said for the first time", "again", "and again"]) {
  const times: number[] = [];
  for (const { now, turns } of conversations) {
    const { ask } = baker(now ? { now } : {});
    for (const { say } of turns) times.push(await timed(() => ask(say)));
  }
  passes.push({ name, times });
}

const pieces: Readonly<Record<string, string>> = {
  "ordinary words": "buttercream flavor 230 g and ganache how much almond flour ",
  "one question again": "how much flavor for 230 g buttercream? ",
  "slips in every word": "buttrcream flavr pistacho ganch almnd flor ",
  "unknown words": "zorblax quimble vexing thrumpel ",
  digits: "1234567890",
  brackets: "((((([[[[[",
  "one unit": "g ",
  "one amount": "230 g ",
  joints: "and then ",
};
const lengths = [100, 300, 1000, 3000, 10_000];
const byLength: { name: string; ms: number[] }[] = [];
for (const [name, piece] of Object.entries(pieces)) {
  const ms: number[] = [];
  for (const length of lengths) {
    const line = piece.repeat(Math.ceil(length / piece.length)).slice(0, length);
    const times: number[] = [];
    for (let round = 0; round < 3; round++) times.push(await timed(() => baker().ask(line)));
    ms.push(median(times));
  }
  byLength.push({ name, ms });
}

const tastes = ["pistachio", "lemon", "coffee", "vanilla", "raspberry"];
/** Notes made up for this, an hour apart, the newest yesterday. */
const notes = (count: number): Note[] =>
  Array.from({ length: count }, (_, at) => ({
    id: at + 1,
    date: new Date(Date.UTC(2026, 2, 13) - (count - at) * 3_600_000).toISOString().slice(0, 10),
    noted_ms: Date.UTC(2026, 2, 13) - (count - at) * 3_600_000,
    text: `${tastes[at % tastes.length]} batch, ${20 + (at % 30)} of them, ${at % 6} hollow`,
    flavors: [tastes[at % tastes.length] ?? ""],
    problems: at % 6 ? ["hollow"] : [],
    macarons: 20 + (at % 30),
    oven_c: 145 + (at % 12),
    rating: 1 + (at % 5),
  }));
const recalls = [
  "my last pistachio batch",
  "which batch was my best",
  "what oven do I usually use",
  "my lemon notes",
];
const recall: { say: string; few_ms: number; many_ms: number; ratio: number; first_ms: number }[] = [];
const [few, many] = [baker({ record: { notes: notes(200) } }), baker({ record: { notes: notes(20_000) } })];
for (const say of recalls) {
  const [a, b]: [number[], number[]] = [[], []];
  for (let round = 0; round < 7; round++) {
    a.push(await timed(() => few.ask(say)));
    b.push(await timed(() => many.ask(say)));
  }
  recall.push({
    say,
    few_ms: median(a),
    many_ms: median(b),
    ratio: median(b) / median(a),
    first_ms: b[0] ?? Number.NaN,
  });
}

const rss = [
  { name: "node -e 0", mb: memory(["-e", "0"]) },
  { name: "one question", mb: memory([program, question]) },
  { name: "a hundred turns", mb: memory([program], `${question}\n`.repeat(100)) },
];
const report = {
  node: process.version,
  rounds,
  calculator: calculator?.name ?? "none",
  processes,
  asked,
  turns: passes.map(({ name, times }) => ({
    name,
    count: times.length,
    median_ms: median(times),
    p99_ms: quantile(times, 0.99),
    most_ms: Math.max(...times),
  })),
  lengths,
  byLength,
  recall,
  memory: rss.map((each) => ({ ...each, ratio: each.mb / (rss[0]?.mb ?? 1) })),
};

if (values.json) console.log(JSON.stringify(report));
else {
  const n = (value: number, digits = 1) => value.toFixed(digits);
  console.log(
    `Node ${report.node}, ${rounds} rounds in turns${calculator ? "" : "; neither bc nor units is here"}\n`,
  );
  console.log(
    table(
      ["whole process", "median ms", "p90 ms", "to node -e 0"],
      processes.map((each) => [each.name, n(each.median_ms), n(each.p90_ms), n(each.ratio, 2)]),
    ),
  );
  console.log(
    `${asked.count} questions, one of each calculator: ${n(asked.median, 2)}, p90 ${n(asked.p90, 2)}, at most ${n(asked.slowest?.ratio ?? Number.NaN, 2)} ("${asked.slowest?.say}")`,
  );
  console.log();
  console.log(
    table(
      [
        `${report.turns[0]?.count} turns of conversations`,
        "median ms",
        "p99 ms",
        "longest ms",
        "to node -e 0",
      ],
      report.turns.map((each) => [
        each.name,
        n(each.median_ms, 2),
        n(each.p99_ms, 2),
        n(each.most_ms),
        n(each.median_ms / bare, 3),
      ]),
    ),
  );
  console.log();
  console.log(
    table(
      ["a turn by its letters, ms", ...lengths.map(String)],
      byLength.map(({ name, ms }) => [name, ...ms.map((each) => n(each))]),
    ),
  );
  console.log();
  console.log(
    table(
      ["notes asked", "200, ms", "20000, ms", "ratio", "20000 for the first time, ms"],
      recall.map((each) => [
        each.say,
        n(each.few_ms, 2),
        n(each.many_ms, 2),
        n(each.ratio),
        n(each.first_ms, 2),
      ]),
    ),
  );
  console.log();
  console.log(
    table(
      ["memory at most", "MB", "to node -e 0"],
      report.memory.map((each) => [each.name, n(each.mb), n(each.ratio, 2)]),
    ),
  );
}
// pseudo-terminals that were closed may still hold the process
process.exit(0);
