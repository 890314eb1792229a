/** What the words of a note say, read outside of a conversation: for notes that come from a file. */

import { itemsOf, readingOf } from "./read.ts";
import { sanitise } from "./text/normalise.ts";
import type { Understanding } from "./understanding.ts";

/** The facts as the note calculator reads them; nothing where there are no words. */
export function noteFacts(words: string, { reader, tools }: Understanding): Record<string, unknown> {
  const said = `note: ${sanitise(words)}`;
  const tool = tools.find((each) => each.name === "note");
  const { text, items, mended } = itemsOf(said, reader);
  const reading = readingOf(said, text, items, mended, reader);
  const read = tool?.read(reading, {
    table: {},
    follows: false,
    names: { formulas: [], bottles: [], timers: [] },
  });
  const { facts } = (Array.isArray(read) ? read[0] : read) ?? {};
  return (facts ?? {}) as Record<string, unknown>;
}
