/** The text of a turn without what was said beside its questions; every span still points at its place. */

import { spanOf } from "./items.ts";
import type { Part } from "./part.ts";
import type { Item } from "./scan.ts";

/** Words that only join: they stay, whether a part has them or not. */
const joints = new Set(["and", "then", "also", "plus", "n", "so"]);

/** @returns the text with the items that are in no part turned to spaces */
export function withoutDropped(text: string, items: readonly Item[], parts: readonly Part[]): string {
  const kept = new Set(parts.flat());
  const dropped = items.filter(
    (item) => !kept.has(item) && item.is !== "sign" && !(item.is === "word" && joints.has(item.text)),
  );
  let out = text;
  for (const item of dropped) {
    const [from, to] = spanOf(item);
    out = out.slice(0, from) + " ".repeat(to - from) + out.slice(to);
  }
  return dropped.length > 0 ? out.trimEnd() : text;
}
