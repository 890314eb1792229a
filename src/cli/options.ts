/**
 * The command's options, uses, settings and exit statuses, said once. The command line is read by this table; help,
 * the manual page and completion are made of it.
 */

export interface Option {
  name: string;
  short?: string;
  /** What stands behind it; none where it is a switch. */
  takes?: { name: string; of: "folder" | readonly string[] };
  /** One line, no full stop. */
  says: string;
  /** What the manual page adds. */
  more?: string;
}

export const shells = ["bash", "zsh", "fish"] as const;
export type Shell = (typeof shells)[number];

export const options = [
  {
    name: "json",
    says: "one JSON object a turn",
    more: "Numbers are unrounded, weights in g, times in min. Without a question, lines are read from standard input, in a terminal too.",
  },
  {
    name: "home",
    takes: { name: "DIR", of: "folder" },
    says: "where the record lives",
    more: "The folder is made at the first change. It goes before BOWLSIDE_HOME.",
  },
  {
    name: "demo",
    says: "an invented baker's record, in a place of its own that is gone at the end",
    more: "Works for the chat, for a question and for lines. Your own record is neither read nor written.",
  },
  {
    name: "speak",
    says: "the chat reads answers and rings aloud",
    more: 'It uses the system\'s own speech program, espeak-ng on Linux or say on macOS, and says so where there is none. In the chat "speak" and "stop speaking" do the same.',
  },
  {
    name: "ring-here",
    says: "rings timers in this terminal with no chat open; Ctrl-C ends it",
    more: "A bell and a line for each timer that comes due, and for what came due before. Where a chat is open too, one of both rings.",
  },
  {
    name: "completion",
    takes: { name: "SHELL", of: shells },
    says: `prints what completes these options in ${shells.slice(0, -1).join(", ")} or ${shells.at(-1)}`,
    more: 'For bash and zsh, "source <(bowlside --completion bash)", with the shell\'s own name, goes into the file that the shell reads at its start; fish reads what is kept in ~/.config/fish/completions/bowlside.fish by itself.',
  },
  { name: "help", short: "h", says: "this help" },
  { name: "version", short: "v", says: "the version" },
] as const satisfies readonly Option[];

export const summary = "weigh, time, plan and note for filled macarons, in plain words";

export const uses: readonly (readonly [how: string, says: string])[] = [
  ["bowlside", 'the chat; "bye" leaves, and so does Ctrl-C on an empty line'],
  ['bowlside "QUESTION"', "one answer, then it ends; the quotes may go where the shell allows it"],
  ["... | bowlside", "each line a turn of one conversation, a blank line a new one"],
];

export const settings: readonly (readonly [name: string, says: string])[] = [
  ["BOWLSIDE_HOME", "where the record lives"],
  ["BOWLSIDE_NOW", "a local moment, 2026-03-14T09:30:00, at which the clock stands, to try a plan"],
  ["NO_COLOR", "with anything in it: no color"],
  ["FORCE_COLOR", "with anything but 0 in it: color where there is no terminal too; NO_COLOR goes before it"],
  ["LC_ALL, LC_CTYPE, LANG", "a locale that is not UTF-8 gets plain ASCII"],
];

/** Exit statuses of a single question; of lines, all but the last mean 0. */
export const statuses: readonly (readonly [status: number, says: string])[] = [
  [0, "answered; with lines or the chat, nothing broke"],
  [1, "something broke, or the command line wasn't understood; standard error says what"],
  [2, "a detail is asked for"],
  [3, "declined, or it can't be"],
];
