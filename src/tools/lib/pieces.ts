/** The masked sentence as pieces in order, each with what was found there: for readers that go by neighbours. */
import type { Amount, Reading, Thing, When } from "../contract/index.ts";

export interface Piece {
  /** As said, typos mended: "take", "2 more minutes", "salted caramel". */
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

/** A plain word, nothing found in it. */
export const isWord = (piece: Piece | undefined): piece is Piece =>
  piece !== undefined && !piece.amount && !piece.thing && !piece.when && /^[a-z]/.test(piece.text);

/** A sign: comma, colon, question mark. */
export const isSign = (piece: Piece | undefined): boolean =>
  piece !== undefined && /^[^a-z0-9]+$/.test(piece.text);

/** The pieces' words put together again. */
export const textOf = (some: readonly Piece[]): string => some.map((each) => each.text).join(" ");
