/** The command line as data. */
import { parseArgs } from "node:util";

export interface Arguments {
  json: boolean;
  home?: string;
  help: boolean;
  version: boolean;
  /** The question, its words joined; empty when none was given. */
  question: string;
}

export type Parsed = { ok: true; value: Arguments } | { ok: false; message: string };

/**
 * Reads the words behind the command. Anything that isn't an option is part of the question, so that a question may
 * be typed without quotes; a weight below zero ("-50 g ...") is no option.
 */
export function parseArguments(argv: readonly string[]): Parsed {
  const first = argv.findIndex((word) => !word.startsWith("-") || /^-\d/.test(word));
  const ended = argv.indexOf("--");
  const cut = ended >= 0 && (first < 0 || ended < first) ? ended : first;
  const { options, words } = apart(argv, cut);
  try {
    const { values } = parseArgs({
      args: options,
      options: {
        json: { type: "boolean" },
        home: { type: "string" },
        help: { type: "boolean", short: "h" },
        version: { type: "boolean", short: "v" },
      },
    });
    if (values.home === "") return { ok: false, message: "--home needs a folder behind it." };
    return {
      ok: true,
      value: {
        json: values.json ?? false,
        ...(values.home !== undefined ? { home: values.home } : {}),
        help: values.help ?? false,
        version: values.version ?? false,
        question: words.join(" ").trim(),
      },
    };
  } catch (error) {
    return {
      ok: false,
      message: error instanceof Error ? (error.message.split(". ")[0] ?? error.message) : String(error),
    };
  }
}

/** Options wherever they stand, with their values; everything else is the question. */
function apart(argv: readonly string[], cut: number): { options: string[]; words: string[] } {
  const options: string[] = [];
  const words: string[] = [];
  for (let i = 0; i < argv.length; i++) {
    const word = argv[i] ?? "";
    if (word === "--" && i === cut) words.push(...argv.slice(i + 1));
    if (word === "--" && i === cut) break;
    if (word === "--home") options.push(word, argv[++i] ?? "");
    else if (/^--[a-z]/.test(word) || /^-[a-z]$/.test(word)) options.push(word);
    else words.push(word);
  }
  return { options, words };
}

export const usage = `bowlside                       the chat
bowlside "QUESTION"            one answer, then it ends
... | bowlside                 each line a turn, a blank line a new conversation

  --json         one JSON object a turn
  --home DIR     where the record lives (or BOWLSIDE_HOME)
  --help         this
  --version      the version

It ends with 0 answered, 2 a detail is asked for, 3 declined or impossible, 1 something broke.`;
