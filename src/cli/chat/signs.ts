/** The few signs that the chat draws with, and the same in plain ASCII for terminals that have no others. */

export interface Signs {
  /** Before the question: a bowl seen from the side. */
  prompt: string;
  /** Where a text was shortened. */
  gap: string;
  /** A cell of a bar: the part that has passed, the part that is left. */
  full: string;
  empty: string;
  /** In a day's chart: hands at work, what goes by itself, and what goes on into the next day. */
  hands: string;
  waits: string;
  onward: string;
  /** Points down at a place on the scale below it. */
  mark: string;
  /** Parts of a whole side by side, told apart by their pattern alone. */
  parts: readonly [string, string, string, string];
  /** What large digits are made of. */
  block: string;
  /** Before the likely end of the line, which the right arrow takes. */
  take: string;
}

export const drawn: Signs = {
  prompt: "∪ ",
  gap: "…",
  full: "■",
  empty: "·",
  hands: "■",
  waits: "─",
  onward: "→",
  mark: "▼",
  parts: ["█", "▒", "░", "·"],
  block: "█",
  take: "→ ",
};
export const ascii: Signs = {
  prompt: "u ",
  gap: "..",
  full: "#",
  empty: ".",
  hands: "#",
  waits: "-",
  onward: ">",
  mark: "v",
  parts: ["#", "=", "-", "."],
  block: "#",
  take: "> ",
};

type Environment = Readonly<Record<string, string | undefined>>;

/**
 * Chooses by the locale that is in force. Where none is set, as in many containers, the terminal is taken to
 * be a UTF-8 one: node writes UTF-8 in any case.
 */
export function signsFor(env: Environment): Signs {
  if (env.TERM === "linux" || env.TERM === "dumb") return ascii;
  const locale = env.LC_ALL || env.LC_CTYPE || env.LANG;
  return !locale || /utf-?8/i.test(locale) ? drawn : ascii;
}
