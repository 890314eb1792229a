/** The question line as a pure reducer: a line and a key in, a line and what was asked out. */
import type { Key } from "./keys.ts";
import { isLeaving } from "./leave.ts";
import { pasted } from "./paste.ts";
import { after, before, printable } from "./text.ts";

export interface Editor {
  text: string;
  /** Index into `text` in code units; movement keeps it between graphemes. */
  cursor: number;
  /** Lines asked before, the oldest first. */
  history: readonly string[];
  /** Which line of the history is shown; its length for the line being written. */
  place: number;
  /** The line being written, kept while older ones are looked at. */
  draft: string;
}

export interface Edited {
  editor: Editor;
  /** Lines that were ended, in order. */
  submitted: string[];
  /** Those of them that joined the history. */
  kept: string[];
  /** The baker wants to go: at once, or when what was submitted is answered. Later keys do nothing. A line that is begun is cleared first. */
  leave?: "now" | "in turn";
}

const longestHistory = 500;

/** An empty line over the lines of earlier sessions. */
export function freshEditor(history: readonly string[] = []): Editor {
  const kept = history.map((line) => printable(line).trim()).filter((line) => line !== "");
  return {
    text: "",
    cursor: 0,
    history: kept.slice(-longestHistory),
    place: Math.min(kept.length, longestHistory),
    draft: "",
  };
}

/** What would follow a text; "" for nothing. */
export type Likely = (text: string, history: readonly string[]) => string;

/**
 * Carries out keys one after the other.
 * @param likely the end of the line that Tab, or the right arrow behind the last letter, takes
 */
export function edit(editor: Editor, keys: readonly Key[], likely: Likely = () => ""): Edited {
  const submitted: string[] = [];
  const kept: string[] = [];
  let now = editor;
  const end = (line: Editor) => {
    const { history } = now;
    submitted.push(line.text);
    now = asked(line);
    if (now.history !== history) kept.push(now.history.at(-1) ?? "");
  };
  for (const key of keys) {
    if (key.do === "leave") {
      if (now.text === "") return { editor: now, submitted, kept, leave: "now" };
      now = cleared(now);
      continue;
    }
    if (key.do === "leave or erase" && now.text === "")
      return { editor: now, submitted, kept, leave: "in turn" };
    if (key.do === "paste" && key.text.includes("\n")) {
      const { turns, rest } = pasted(now.text.slice(0, now.cursor), key.text);
      const tail = now.text.slice(now.cursor);
      for (const turn of turns) {
        end({ ...now, text: turn });
      }
      now = insert({ ...now, text: tail, cursor: 0 }, rest);
      continue;
    }
    const rest = takesEnd(now, key, keys.length === 1) ? likely(now.text, now.history) : "";
    if (rest !== "") {
      now = insert(now, rest);
      continue;
    }
    if (key.do === "tab") {
      now = insert(now, " ");
      continue;
    }
    if (key.do !== "insert" && key.do !== "paste") {
      now = single(now, key);
      continue;
    }
    const [first = "", ...others] = key.text.split("\n");
    now = insert(now, first);
    for (const line of others) {
      end(now);
      now = insert(now, line);
    }
  }
  return { editor: now, submitted, kept };
}

/** A tab that came with other keys is one of a text that a terminal pastes without saying so. */
const takesEnd = ({ text, cursor }: Editor, key: Key, alone: boolean) =>
  cursor === text.length && (key.do === "tab" ? alone : key.do === "move" && key.to === "right");

function single(editor: Editor, key: Exclude<Key, { do: "insert" | "paste" | "tab" | "leave" }>): Editor {
  switch (key.do) {
    case "move":
      return { ...editor, cursor: target(editor, key.to) };
    case "erase":
      return erase(editor, key.what);
    case "leave or erase":
      return erase(editor, "forward");
    case "recall":
      return recall(editor, key.which === "older" ? -1 : 1);
    case "escape":
      return editor;
  }
}

/** Text goes in as it is, even inside a grapheme: so chunks don't matter. */
function insert(editor: Editor, text: string): Editor {
  const shown = printable(text);
  const { text: line, cursor } = editor;
  return {
    ...editor,
    text: line.slice(0, cursor) + shown + line.slice(cursor),
    cursor: cursor + shown.length,
  };
}

/** Nothing is written, and no older line is looked at. */
const cleared = (editor: Editor): Editor => ({
  ...editor,
  text: "",
  cursor: 0,
  place: editor.history.length,
  draft: "",
});

/** The line was ended: it joins the history unless it is blank, a goodbye, or was the last one too. */
function asked(editor: Editor): Editor {
  // a recipe of several lines comes back as one
  const line = editor.text
    .trim()
    .replace(/\s*\n\s*/g, "; ")
    .replace(/:; /, ": ");
  const keep = line !== "" && !isLeaving(line) && line !== editor.history.at(-1);
  const history = keep ? [...editor.history, line].slice(-longestHistory) : editor.history;
  return cleared({ ...editor, history });
}

function target({ text, cursor }: Editor, to: Extract<Key, { do: "move" }>["to"]): number {
  switch (to) {
    case "left":
      return before(text, cursor);
    case "right":
      return after(text, cursor);
    case "start":
      return 0;
    case "end":
      return text.length;
    case "word left":
      return (/\S+\s*$/.exec(text.slice(0, cursor)) ?? { index: 0 }).index;
    case "word right":
      return cursor + (/^\s*\S*/.exec(text.slice(cursor))?.[0].length ?? 0);
  }
}

const reach = {
  back: "left",
  forward: "right",
  "word back": "word left",
  "word forward": "word right",
  "to start": "start",
  "to end": "end",
} as const;

function erase(editor: Editor, what: keyof typeof reach): Editor {
  const end = target(editor, reach[what]);
  const [from, to] = end < editor.cursor ? [end, editor.cursor] : [editor.cursor, end];
  return { ...editor, text: editor.text.slice(0, from) + editor.text.slice(to), cursor: from };
}

function recall(editor: Editor, by: -1 | 1): Editor {
  const place = editor.place + by;
  if (place < 0 || place > editor.history.length) return editor;
  const draft = editor.place === editor.history.length ? editor.text : editor.draft;
  const text = editor.history[place] ?? draft;
  return { ...editor, text, cursor: text.length, place, draft };
}
