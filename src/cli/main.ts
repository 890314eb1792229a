/** The command: a chat in a terminal, one answer for a question, a conversation for lines on standard input. */
import { homedir } from "node:os";
import { understanding } from "../intents/understanding.ts";
import { recordHome } from "../store/home.ts";
import { openStore } from "../store/open.ts";
import { tools } from "../tools/registry.ts";
import { type Arguments, parseArguments } from "./arguments.ts";
import type { ChatOptions } from "./chat/options.ts";
import { signsFor } from "./chat/signs.ts";
import { printable } from "./chat/text.ts";
import { clockFrom } from "./clock.ts";
import { wantsColor } from "./color.ts";
import { completion } from "./completion.ts";
import type { Demo } from "./demo/main.ts";
import { fileReader, fileWriter } from "./files.ts";
import type { Makers } from "./hand-over.ts";
import { helpText } from "./help.ts";
import { turnJson } from "./json.ts";
import { linesOf } from "./lines.ts";
import { openIn } from "./open-chat.ts";
import { turnText } from "./plain.ts";
import { startProgress } from "./progress.ts";
import { ringHere } from "./ring-here.ts";
import { StoreFailure, startSession, type Turn } from "./session.ts";

/** What the program loads only when it is wanted. */
export interface Parts {
  /** ink and react come only with this. */
  chat(): Promise<{ openChat(options: ChatOptions): Promise<void> }>;
  demo(): Promise<{ openDemo(): Demo }>;
  /** The library that makes PDFs. */
  paper: Makers["paper"];
  /** The library that writes and reads CSV. */
  csv: Makers["csv"];
}

export interface Outside {
  argv: readonly string[];
  env: Readonly<Record<string, string | undefined>>;
  /** Streams are made when they are first asked for. */
  stdin(): NodeJS.ReadStream;
  stdout(): NodeJS.WriteStream;
  isTerminal(descriptor: 0 | 1 | 2): boolean;
  /** Answers, and nothing else, to standard output. */
  write(text: string): void;
  /** What isn't an answer, to standard error. */
  complain(text: string): void;
  version: string;
  parts: Parts;
}

/** Columns where no terminal tells its own. */
const plainColumns = 100;

/** Runs the command and gives its exit status. The one boundary that catches what broke. */
export async function main(outside: Outside): Promise<number> {
  const { argv, env, version, write } = outside;
  try {
    const parsed = parseArguments(argv);
    if (!parsed.ok) {
      tell(outside, `${parsed.message.replace(/\.?$/, ".")} "bowlside --help" shows what there is.`);
      return 1;
    }
    const { help, completion: shell } = parsed.value;
    if (help || parsed.value.version || shell) {
      write(help ? `${helpText(columnsOf(outside))}\n` : shell ? completion(shell) : `${version}\n`);
      return 0;
    }
    const clock = clockFrom(env.BOWLSIDE_NOW, Date.now);
    if (!clock.ok) {
      tell(outside, clock.message);
      return 1;
    }
    const demo = parsed.value.demo ? (await outside.parts.demo()).openDemo() : undefined;
    try {
      return await run(outside, parsed.value, clock.now_ms, demo);
    } finally {
      demo?.remove();
    }
  } catch (error) {
    const hint = error instanceof StoreFailure ? ` ${error.hint}` : "";
    tell(outside, `${error instanceof Error ? error.message : String(error)}${hint}`);
    return 1;
  }
}

/** Messages name what was typed, and files: nothing in them may reach the terminal but letters. */
const tell = (outside: Outside, message: string): void =>
  outside.complain(`bowlside: ${printable(message)}\n`);

const columnsOf = (outside: Outside): number =>
  outside.isTerminal(1) ? outside.stdout().columns || 80 : plainColumns;

async function run(
  outside: Outside,
  { json, question, home, speak = false, ringsHere }: Arguments,
  now_ms: () => number,
  demo: Demo | undefined,
): Promise<number> {
  const { env, write, complain } = outside;
  const store = openStore(demo?.home ?? recordHome(env, home, process.platform, homedir()), { now_ms });
  const broke = await demo?.fill(store, now_ms());
  if (broke !== undefined) {
    tell(outside, broke);
    return 1;
  }
  const session = startSession({
    store,
    understanding: understanding(tools),
    now_ms,
    writeFile: fileWriter(process.cwd()),
    readFile: fileReader(process.cwd(), homedir()),
    makers: outside.parts,
  });
  if (ringsHere) {
    return ringHere({ session, store, now_ms, write, tell: (message) => tell(outside, message) });
  }
  const asks = question !== "";
  if (!asks && !json && outside.isTerminal(0) && outside.isTerminal(1)) {
    const [stdin, stdout] = [outside.stdin(), outside.stdout()];
    // A terminal that was closed takes no more; the chat hears of it by its input, and ends in order.
    stdout.on("error", () => {});
    const given = { session, store, now_ms, env, stdin, stdout, demo: demo !== undefined, speak };
    await openIn(given, outside.parts.chat);
    return 0;
  }
  const signs = signsFor(env);
  const shows = outside.isTerminal(1);
  const color = wantsColor(env, shows);
  const columns = json ? plainColumns : columnsOf(outside);
  const progress = startProgress({ shows: outside.isTerminal(2), write: complain, real_ms: Date.now });
  const told = new Set<string>();
  const show = (turn: Turn, gap: string) => {
    progress.clear();
    const notice = session.notice?.();
    if (notice && !told.has(notice)) tell(outside, notice);
    if (notice) told.add(notice);
    if (turn.answers.length > 0)
      write(`${gap}${json ? turnJson(turn) : turnText(turn, columns, color, signs)}\n`);
  };
  const ask = (line: string) => progress.during("Still at it ...", () => session.ask(line));

  if (asks) {
    const turn = await ask(question);
    show(turn, "");
    return statusOf(turn);
  }
  let gap = "";
  let turns = 0;
  for await (const line of linesOf(outside.stdin())) {
    const turn = await ask(line);
    show(turn, gap);
    turns += 1;
    if (turn.answers.length > 0 && !json) gap = "\n";
    // in a terminal the answers themselves show how far it is
    if (!shows) progress.so(() => `${turns} lines answered ...`);
  }
  progress.clear();
  return 0;
}

/** 0 answered, 2 a detail is asked for, 3 declined or impossible. */
function statusOf(turn: Turn): number {
  const states = turn.answers.map((answer) => answer.status);
  if (states.some((state) => state === "asking")) return 2;
  return states.some((state) => state !== "answered") ? 3 : 0;
}
