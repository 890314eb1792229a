/** The command line as data. */
import { parseArgs } from "node:util";
import { options as known, type Option, type Shell, shells } from "./options.ts";

export interface Arguments {
  json: boolean;
  home?: string;
  /** An invented record instead of the baker's own. */
  demo: boolean;
  /** Rings timers and asks nothing. */
  ringsHere?: boolean;
  /** The chat reads answers and rings aloud. */
  speak?: boolean;
  completion?: Shell;
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
  const { options, words } = apart(argv);
  try {
    // a question alone needs no parser, which costs more than a question
    const values: Readonly<Record<string, unknown>> =
      options.length === 0 ? {} : parseArgs({ args: options, options: forParser }).values;
    const { home, completion } = values as { home?: string; completion?: string };
    if (home === "") return { ok: false, message: "--home needs a folder behind it." };
    const shell = shells.find((each) => each === completion);
    if (completion !== undefined && !shell)
      return { ok: false, message: `--completion needs a shell behind it: ${shells.join(", ")}.` };
    if (home !== undefined && values.demo)
      return { ok: false, message: "--demo has a record of its own; leave --home out." };
    // a variable of the shell that was empty, most likely: read as no question, it would wait for lines
    if (words.length > 0 && words.join("").trim() === "")
      return { ok: false, message: "The question is empty." };
    return {
      ok: true,
      value: {
        json: values.json === true,
        ...(home !== undefined ? { home } : {}),
        demo: values.demo === true,
        ...(values["ring-here"] ? { ringsHere: true } : {}),
        ...(values.speak === true ? { speak: true } : {}),
        ...(shell ? { completion: shell } : {}),
        help: values.help === true,
        version: values.version === true,
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

/** The options table as node's parser takes it. */
const forParser = Object.fromEntries(
  known.map(({ name, short, takes }: Option) => [
    name,
    { type: takes ? ("string" as const) : ("boolean" as const), ...(short ? { short } : {}) },
  ]),
);

const withValue = new Set(known.flatMap(({ name, takes }: Option) => (takes ? [`--${name}`] : [])));

/** Options wherever they stand, with their values; everything else is the question, and all behind a leading "--". */
function apart(argv: readonly string[]): { options: string[]; words: string[] } {
  const options: string[] = [];
  const words: string[] = [];
  for (let i = 0; i < argv.length; i++) {
    const word = argv[i] ?? "";
    if (word === "--" && words.length === 0) {
      words.push(...argv.slice(i + 1));
      break;
    }
    if (withValue.has(word)) options.push(word, argv[++i] ?? "");
    else if (/^--[a-z]/.test(word) || /^-[a-z]$/.test(word)) options.push(word);
    else words.push(word);
  }
  return { options, words };
}
