/**
 * Runs what a question and the chat run, with nothing shown and a record that is thrown away, so that the code caches
 * made at build hold it compiled. The program that answers never gets here.
 */
import { tools } from "../tools/registry.ts";
import { main, type Outside, type Parts } from "./main.ts";

const quiet = (home: string, argv: readonly string[], parts: Parts): Outside => ({
  argv: ["--home", home, ...argv],
  env: {},
  stdin: () => process.stdin,
  stdout: () => process.stdout,
  isTerminal: () => false,
  write: () => {},
  complain: () => {},
  version: "",
  parts,
});

/** The first example of each calculator. */
export const examples = (): string[] =>
  tools.flatMap((tool) => tool.examples.slice(0, 1)).map(({ say }) => say);

/** Answers one question. */
export const warm = (home: string, question: string): Promise<number> =>
  main(quiet(home, [question], {} as Parts));

/**
 * Opens the chat on a terminal that shows nothing, and leaves it once it takes keys.
 * @param streams Node's, handed over: a question that is answered would pay for loading them too
 */
export function warmChat(
  home: string,
  chat: Parts["chat"],
  { PassThrough }: typeof import("node:stream"),
): Promise<number> {
  const keys = Object.assign(new PassThrough(), { isTTY: true, setRawMode: () => {}, ref() {}, unref() {} });
  const screen = Object.assign(new PassThrough(), { isTTY: true, columns: 100, rows: 30 });
  screen.on("data", (drawn: Buffer) => {
    if (drawn.includes("\u001b[?2004h")) keys.write("\u0003");
  });
  return main({
    ...quiet(home, [], { chat } as Parts),
    stdin: () => keys as unknown as NodeJS.ReadStream,
    stdout: () => screen as unknown as NodeJS.WriteStream,
    isTerminal: () => true,
  });
}
