/** A sentence cut where it goes on to another matter, each part a reading of its own with its finds in place. */
import type { Reading } from "../contract/index.ts";
import { isSign, type Piece, pieces } from "./pieces.ts";

/** At each comma, semicolon and "and". Parts without a word are left out. */
export function partsOf(reading: Reading): Reading[] {
  const all = pieces(reading);
  const tokens = reading.mask.split(" ").filter(Boolean);
  const out: Reading[] = [];
  let from = 0;
  for (let to = 0; to <= all.length; to++) {
    const piece = all[to];
    const isCut = piece === undefined || isJoint(piece);
    if (!isCut) continue;
    if (all.slice(from, to).some((each) => !isSign(each)))
      out.push(partOf(reading, all.slice(from, to), tokens.slice(from, to)));
    from = to + 1;
  }
  return out;
}

const isJoint = (piece: Piece) =>
  !piece.amount && !piece.thing && !piece.when && /^(?:,|;|:|and|also|plus)$/.test(piece.text);

function partOf(reading: Reading, some: readonly Piece[], tokens: readonly string[]): Reading {
  let text = "";
  const [amounts, things, whens]: [Reading["amounts"], Reading["things"], Reading["whens"]] = [[], [], []];
  for (const piece of some) {
    const at = text === "" ? 0 : text.length + 1;
    text = text === "" ? piece.text : `${text} ${piece.text}`;
    const place: [number, number] = [at, text.length];
    if (piece.amount) amounts.push({ ...piece.amount, at: place });
    else if (piece.thing) things.push({ ...piece.thing, at: place });
    else if (piece.when) whens.push({ ...piece.when, at: place });
  }
  return { ...reading, said: text, text, mask: tokens.join(" "), amounts, things, whens, unknown: [] };
}
