/** The text of a turn without what was said beside its questions; every span still points at its place. */

import type { Span } from "../../tools/contract/index.ts";
import { spanOf } from "../found/items.ts";
import type { Item } from "../found/scan.ts";
import type { Part } from "./part.ts";

/** Words that only join: they stay, whether a part has them or not. */
const joints = new Set(["and", "then", "also", "plus", "n", "so"]);

/** @returns the text with the items that are in no part turned to spaces */
export function withoutDropped(text: string, items: readonly Item[], parts: readonly Part[]): string {
  const blanked = without(text, items, new Set(parts.flat()));
  return blanked === text ? text : blanked.trimEnd();
}

/** @param from where in the turn the text begins */
function without(text: string, items: readonly Item[], kept: ReadonlySet<Item>, from = 0): string {
  let out = text;
  for (const item of items) {
    if (kept.has(item) || item.is === "sign" || (item.is === "word" && joints.has(item.text))) continue;
    const [start, end] = spanOf(item);
    out = out.slice(0, start - from) + " ".repeat(end - start) + out.slice(end - from);
  }
  return out;
}

/**
 * A question of several with its own text, its items at their places in that: what another question says is no answer
 * to this one. Looks at no more of the turn than the question spans, so that a long turn costs by its length.
 */
export function ownText(
  text: string,
  items: readonly Item[],
  part: Part,
): { text: string; items: readonly Item[] } {
  const spans = part.map(spanOf);
  const from = Math.min(...spans.map(([start]) => start));
  const to = Math.max(...spans.map(([, end]) => end));
  const within = items.filter((item) => spanOf(item)[0] >= from && spanOf(item)[1] <= to);
  return { text: without(text.slice(from, to), within, new Set(part), from), items: movedBack(part, from) };
}

/** Stops between the parts of one question read as the commas that its mask has there: told so or so, it is the same. */
export function inOneBreath(text: string, items: readonly Item[], part: Part): string {
  const kept = new Set(part);
  const [first, last] = [part[0], part.at(-1)];
  if (!first || !last) return text;
  const [from, to] = [spanOf(first)[0], spanOf(last)[1]];
  let out = text;
  for (const item of items) {
    if (item.is !== "sign" || !/^[.;]$/.test(item.text) || kept.has(item)) continue;
    const [at, end] = item.at;
    if (at > from && end < to && end - at === 1) out = `${out.slice(0, at)},${out.slice(end)}`;
  }
  return out;
}

const movedBack = (part: Part, by: number): readonly Item[] =>
  by === 0
    ? part
    : part.map((item): Item => {
        const [from, to] = spanOf(item);
        const at: Span = [from - by, to - by];
        if (item.is === "thing") return { ...item, thing: { ...item.thing, at } };
        if (item.is === "amount") return { ...item, amount: { ...item.amount, at } };
        return item.is === "when" ? { ...item, when: { ...item.when, at } } : { ...item, at };
      });
