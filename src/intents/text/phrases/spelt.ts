/** Numbers as they stand in turns of phrase: in digits, or spelt out up to ninety-nine. */
import { smallNumbers, tens } from "../../../../data/words/numbers.ts";

export const spelt = [...Object.keys(smallNumbers), ...Object.keys(tens)].join("|");
export const count = `(?:\\d+(?:\\.\\d+)?|(?:${spelt})(?:[ -](?:${spelt}))?)`;

/** What such a word counts: "a" and "one" are 1, "a couple" 2, "half a" a half; 0 for what is no number. */
export function countSaid(said: string): number {
  if (/^a couple\b/.test(said)) return 2;
  if (/^half\b/.test(said)) return 0.5;
  if (/^an?$/.test(said)) return 1;
  return Number(said) || (smallNumbers[said as keyof typeof smallNumbers] ?? 0);
}
