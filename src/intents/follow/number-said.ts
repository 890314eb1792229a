/** A number as it stands in a text, in digits or spelt up to nineteen. */
import { smallNumbers } from "../../../data/words/numbers.ts";

/** NaN where the word is no number. */
export const numberSaid = (word: string): number =>
  (Object.hasOwn(smallNumbers, word) ? smallNumbers[word] : undefined) ??
  (/^\d+(?:\.\d+)?$/.test(word) ? Number(word) : Number.NaN);
