/** Numbers as they stand in turns of phrase: in digits, or spelt out up to ninety-nine. */
import { smallNumbers, tens } from "../../../../data/words/numbers.ts";

export const spelt = [...Object.keys(smallNumbers), ...Object.keys(tens)].join("|");
export const count = `(?:\\d+(?:\\.\\d+)?|(?:${spelt})(?:[ -](?:${spelt}))?)`;
