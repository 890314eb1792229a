/** Which bytes are which key. Terminals differ in what they send; every form seen is a row here. */

export type EditKey =
  | { do: "move"; to: "left" | "right" | "start" | "end" | "word left" | "word right" }
  | { do: "erase"; what: "back" | "forward" | "word back" | "word forward" | "to start" | "to end" }
  | { do: "recall"; which: "older" | "newer" }
  | { do: "leave" }
  | { do: "leave or erase" }
  | { do: "tab" }
  | { do: "escape" };

const move = (to: Extract<EditKey, { do: "move" }>["to"]): EditKey => ({ do: "move", to });
const erase = (what: Extract<EditKey, { do: "erase" }>["what"]): EditKey => ({ do: "erase", what });
const older: EditKey = { do: "recall", which: "older" };
const newer: EditKey = { do: "recall", which: "newer" };

/** Control characters: Ctrl-A is \u0001 and so on. Backspace is \u007f on most terminals, \u0008 on some. */
export const controlKeys: Readonly<Record<string, EditKey>> = {
  "\u0001": move("start"),
  "\u0002": move("left"),
  "\u0003": { do: "leave" },
  "\u0004": { do: "leave or erase" },
  "\u0005": move("end"),
  "\u0006": move("right"),
  "\u0008": erase("back"),
  "\u0009": { do: "tab" },
  "\u000b": erase("to end"),
  "\u000e": newer,
  "\u0010": older,
  "\u0015": erase("to start"),
  "\u0017": erase("word back"),
  "\u007f": erase("back"),
};

/** What follows Escape when Alt is held; Escape twice is Escape. */
export const metaKeys: Readonly<Record<string, EditKey>> = {
  "": { do: "escape" },
  b: move("word left"),
  f: move("word right"),
  d: erase("word forward"),
  "\u007f": erase("word back"),
  "\u0008": erase("word back"),
};

const byName: Readonly<Record<string, EditKey>> = {
  A: older,
  B: newer,
  C: move("right"),
  D: move("left"),
  H: move("start"),
  F: move("end"),
  "1~": move("start"),
  "7~": move("start"),
  "4~": move("end"),
  "8~": move("end"),
  "3~": erase("forward"),
};

/** The same keys with Ctrl or Alt held; c and d are how one family of terminals sends them. */
const withModifier: Readonly<Record<string, EditKey>> = {
  C: move("word right"),
  D: move("word left"),
  c: move("word right"),
  d: move("word left"),
  "3~": erase("word forward"),
};

// biome-ignore lint/suspicious/noControlCharactersInRegex: escape sequences start with one
const cursorForm = /^\u001b[[O](\d*)(?:;(\d+))?([A-Za-z~^])$/;

/** The key that a whole escape sequence stands for; undefined for those that mean nothing here. */
export function csiKey(sequence: string): EditKey | undefined {
  const [, number = "", modifier = "1", last = ""] = cursorForm.exec(sequence) ?? [];
  const held = ((Number(modifier) - 1) & 0b110) !== 0 || /[cd^]/.test(last);
  const name = /[~^]/.test(last) ? `${number}~` : last;
  return (held ? withModifier[name] : undefined) ?? byName[name];
}

// A sequence from its start: cursor and function keys, and the strings that terminals answer with.
// Put together from text, since each part is written twice: once for the whole, once for what has only begun.
const introducer = "\\u001b(?:";
const cursorKey = "\\[\\[?[0-?]*[ -/]*";
const functionKey = "O[0-9;]*";
const reply = "[\\]PX^_][^\\u0000-\\u001f]*";
const whole = new RegExp(
  `${introducer}${cursorKey}[@-~]|${functionKey}[A-Za-z]|${reply}(?:\\u0007|\\u001b\\\\))`,
  "y",
);
const begun = new RegExp(`${introducer}${cursorKey}|${functionKey}|${reply}\\u001b?)?$`, "y");

/**
 * The escape sequence that starts at `at`; undefined while its end hasn't come. Escape and a plain character
 * are Alt with it; before a control character, another Escape or Enter say, it is the key alone.
 */
export function readSequence(input: string, at: number): string | undefined {
  whole.lastIndex = at;
  const found = whole.exec(input)?.[0];
  if (found) return found;
  begun.lastIndex = at;
  if (begun.test(input)) return undefined;
  const next = input.codePointAt(at + 1) ?? 0;
  const control = next < 0x20 && next !== 0x08;
  return input.charAt(at) + (control ? "" : String.fromCodePoint(next));
}
