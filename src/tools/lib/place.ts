/** "the second", "the 3rd", "the last one": which of several that stand in a row. */
import { ordinals } from "../../../data/words/numbers.ts";

const words = Object.keys(ordinals).join("|");
const ordinal = new RegExp(`\\b(?:(${words})|(\\d+)(?:st|nd|rd|th))\\b`);

/** Its place for `Array.at`: 0 for the first, -1 for the last; nothing where none is named. Pure. */
export function placeSaid(text: string): number | undefined {
  const [found, word, digits] = ordinal.exec(text) ?? [];
  if (found) return (word === undefined ? Number(digits) : (ordinals[word] ?? 0)) - 1;
  if (/\bformer\b/.test(text)) return 0;
  if (/\blatter\b/.test(text)) return 1;
  return /\blast\b/.test(text) ? -1 : undefined;
}
