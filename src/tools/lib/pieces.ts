/** A sentence as its pieces in order: mended words, with the finds in their places. */
import type { Amount, Reading, Thing, When } from "../contract/index.ts";

export interface Piece {
  /** The words, mended: "and", "a hundred grams", "egg whites". */
  text: string;
  amount?: Amount;
  thing?: Thing;
  when?: When;
}

const amountTag = /<(?:weight|volume|length|time|temperature|percent|money|number|factor)(?:,fraction)?>$/;

/** All pieces of a reading. Amounts, things and moments stand in the mask in the order of their lists. */
export function pieces(reading: Reading): Piece[] {
  let [amounts, things, whens] = [0, 0, 0];
  return reading.mask
    .split(" ")
    .filter(Boolean)
    .map((token): Piece => {
      const tag = token.length > 1 ? token.search(/<[^<>]*>$/) : -1;
      if (tag < 0) return { text: token };
      const text = token.slice(0, tag).replaceAll("_", " ");
      if (token.endsWith("<when>")) return { text, when: reading.whens[whens++] };
      if (amountTag.test(token)) return { text, amount: reading.amounts[amounts++] };
      return { text, thing: reading.things[things++] };
    });
}

/** The mended words between two pieces, both left out. */
export const wordsBetween = (list: readonly Piece[], from: number, to: number): string =>
  list
    .slice(from + 1, to)
    .map((each) => each.text)
    .join(" ");

/** The whole sentence in mended words. */
export const wordsOf = (reading: Reading): string =>
  wordsBetween(pieces(reading), -1, Number.POSITIVE_INFINITY);

/** A sign: comma, colon, question mark. */
export const isSign = (piece: Piece | undefined): boolean =>
  piece !== undefined && /^[^a-z0-9]+$/.test(piece.text);

/** The pieces' words put together again. */
export const textOf = (some: readonly Piece[]): string => some.map((each) => each.text).join(" ");
