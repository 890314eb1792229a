/** The command: a chat in a terminal, one answer for a question, a conversation for lines on standard input. */
import { homedir } from "node:os";
import { understanding } from "../intents/converse.ts";
import { recordHome } from "../store/home.ts";
import { openStore } from "../store/open.ts";
import { tools } from "../tools/registry.ts";
import { parseArguments, usage } from "./arguments.ts";
import type { ChatOptions } from "./chat/options.ts";
import { signsFor } from "./chat/signs.ts";
import { clockFrom } from "./clock.ts";
import { fileReader, fileWriter } from "./files.ts";
import { turnJson } from "./json.ts";
import { linesOf } from "./lines.ts";
import { turnText } from "./plain.ts";
import { type Session, StoreFailure, startSession, type Turn } from "./session.ts";

export interface Outside {
  argv: readonly string[];
  env: Readonly<Record<string, string | undefined>>;
  /** Streams are made when they are first asked for. */
  stdin(): NodeJS.ReadStream;
  stdout(): NodeJS.WriteStream;
  isTerminal(descriptor: 0 | 1): boolean;
  /** Answers, and nothing else, to standard output. */
  write(text: string): void;
  /** What isn't an answer, to standard error. */
  complain(text: string): void;
  version: string;
  /** ink and react come only with this. */
  loadChat(): Promise<{ openChat(options: ChatOptions): Promise<void> }>;
}

/** Runs the command and gives its exit status. The one boundary that catches what broke. */
export async function main(outside: Outside): Promise<number> {
  try {
    return await run(outside);
  } catch (error) {
    const hint = error instanceof StoreFailure ? ` ${error.hint}` : "";
    outside.complain(`bowlside: ${error instanceof Error ? error.message : String(error)}${hint}\n`);
    return 1;
  }
}

async function run(outside: Outside): Promise<number> {
  const { argv, env, version, write, complain } = outside;
  const parsed = parseArguments(argv);
  if (!parsed.ok) {
    complain(`bowlside: ${parsed.message}\n\n${usage}\n`);
    return 1;
  }
  const { json, question, help, home } = parsed.value;
  if (help || parsed.value.version) {
    write(`${help ? usage : version}\n`);
    return 0;
  }
  const clock = clockFrom(env.BOWLSIDE_NOW, Date.now);
  if (!clock.ok) {
    complain(`bowlside: ${clock.message}\n`);
    return 1;
  }
  const { now_ms } = clock;
  const store = openStore(recordHome(env, home, process.platform, homedir()), { now_ms });
  const session = startSession({
    store,
    understanding: understanding(tools),
    now_ms,
    writeFile: fileWriter(process.cwd()),
    readFile: fileReader(process.cwd(), homedir()),
  });
  const shows = outside.isTerminal(1);
  const columns = shows ? (outside.stdout().columns ?? 80) : 100;
  const color = shows && !env.NO_COLOR;
  const signs = signsFor(env);
  const show = (turn: Turn) => write(`${json ? turnJson(turn) : turnText(turn, columns, color, signs)}\n`);
  const told = new Set<string>();
  const tell = async () => {
    const notice = await noticeOf(session);
    if (notice && !told.has(notice)) complain(`bowlside: ${notice}\n`);
    if (notice) told.add(notice);
  };

  if (question !== "") {
    const turn = await session.ask(question);
    await tell();
    show(turn);
    return statusOf(turn);
  }
  if (!outside.isTerminal(0) || json) {
    let first = true;
    for await (const line of linesOf(outside.stdin())) {
      const turn = await session.ask(line);
      await tell();
      if (turn.answers.length === 0) continue;
      if (!first && !json) write("\n");
      first = false;
      show(turn);
    }
    return 0;
  }
  const { openChat } = await outside.loadChat();
  const { chatOptions } = await import("./open-chat.ts");
  await openChat(
    chatOptions({ session, store, now_ms, env, stdin: outside.stdin(), stdout: outside.stdout() }),
  );
  return 0;
}

/** 0 answered, 2 a detail is asked for, 3 declined or impossible. */
function statusOf(turn: Turn): number {
  const states = turn.answers.map((answer) => answer.status);
  if (states.some((state) => state === "asking")) return 2;
  return states.some((state) => state !== "answered") ? 3 : 0;
}

const noticeOf = async (session: Session): Promise<string | undefined> => session.notice?.();
