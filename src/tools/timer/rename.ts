/** Reads a new name for a timer: which timer, and what it is called from now on. */
import { errandEdges } from "../../../data/words/timer-talk.ts";
import type { Memory } from "../contract/index.ts";
import type { Piece } from "../lib/pieces.ts";
import type { Draft } from "./draft.ts";
import { nameFrom } from "./name.ts";

const talk = new Set(["instead", "please", "pls", "now", "of"]);
const newEdges = new Set([...errandEdges, "to", "as"]);

/** "it": the timer that was spoken of last. */
export const remembered = (memory: Memory): Draft =>
  memory.table.timer ? { recent: memory.table.timer } : {};

/**
 * "rename the oven one to preheat", "call it tray two instead". In "call tray 1 blue shells" nothing says where the
 * old name ends; `words` keeps both, and the running timers cut them.
 */
export function readRename(some: readonly Piece[], memory: Memory): Draft {
  const at = some.findIndex((each) => ["call", "rename", "name"].includes(each.text));
  const rest = some.slice(at + 1).filter((each) => !talk.has(each.text));
  // "name them shells and ganache": no part of the name, of one or of several that run
  const isLast = /^(?:it|that|this|them|these|those)$/.test(rest[0]?.text ?? "");
  if (isLast) return { do: "rename", to: nameFrom(rest.slice(1), newEdges), ...remembered(memory) };
  const to = rest.findIndex((each) => each.text === "to" || each.text === "as");
  const cut = to >= 0 ? to : rest.findIndex((_, i) => i > 0 && i < rest.length - 1 && isHead(rest, i));
  if (cut < 0)
    return {
      do: "rename",
      words: nameFrom(rest, errandEdges),
      ...(memory.follows ? remembered(memory) : {}),
    };
  const name = nameFrom(rest.slice(0, cut));
  return {
    do: "rename",
    ...(name ? { name } : remembered(memory)),
    to: nameFrom(rest.slice(cut + 1), newEdges),
  };
}

/** "name them shells and ganache", of two that run: one name each, in the order in which they were set. */
export function renamedEach(some: readonly Piece[], { names }: Memory): Draft[] | undefined {
  const at = some.findIndex((each) => ["call", "rename", "name"].includes(each.text));
  const rest = some.slice(at + 1).filter((each) => !talk.has(each.text));
  const joint = rest.findIndex((each) => each.text === "and");
  if (at < 0 || !/^(?:them|these|those)$/.test(rest[0]?.text ?? "") || names.timers.length !== 2)
    return undefined;
  const [one, other] = [nameFrom(rest.slice(1, joint), newEdges), nameFrom(rest.slice(joint + 1), newEdges)];
  return joint > 1 && one && other
    ? [
        { do: "rename", name: "first", to: one },
        { do: "rename", name: "second", to: other },
      ]
    : undefined;
}

/** "the bake one", "the bake timer": the old name ends here. In "tray one" the word is a number. */
const isHead = (rest: readonly Piece[], i: number) =>
  rest[i]?.text === "timer" || (rest[i]?.text === "one" && rest[i - 1]?.thing?.count === undefined);
