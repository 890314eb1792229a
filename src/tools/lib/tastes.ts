/** The flavors that a sentence is about, as notes keep them. */
import { batchTalk } from "../../../data/words/note-talk.ts";
import type { Thing } from "../contract/index.ts";
import type { Piece } from "./pieces.ts";

/** Behind these a flavor is only a comparison or the one that it was not. */
const aside = new Set(["than", "like", "not", "versus", "vs", "unlike"]);
const heads = new Set([
  "batch",
  "batches",
  "macarons",
  "macaron",
  "macs",
  "mac",
  "shells",
  "ones",
  "one",
  "note",
  "notes",
]);

/** Each taste once, in order; chocolates and what stands before "batch" count too. */
export function tastesIn(some: readonly Piece[]): string[] {
  const found = some.flatMap((piece, at) => {
    if (
      aside.has(some[at - 1]?.text ?? "") ||
      (some[at - 1]?.text === "the" && aside.has(some[at - 2]?.text ?? ""))
    )
      return [];
    const taste = tasteOf(piece, some, at) ?? named(some, at);
    return taste === undefined ? [] : [taste];
  });
  return [...new Set(found)];
}

const degrees = /^(?:too|very|so|bit|quite|rather|slightly|little|really|way|went|came|turned|got|gone)$/;

function tasteOf(piece: Piece, some: readonly Piece[], at: number): string | undefined {
  const { thing } = piece;
  if (!thing || thing.unit !== undefined) return undefined;
  const isWeighed = some.some((each) => each.amount?.of === thing && each.amount.dim === "weight");
  const follows = some[at + 1]?.thing;
  // "100 g almond" is flour, "10 g coconut in 250 g buttercream" isn't; "dark chocolate ganache" is a filling's make,
  // "4 % flavor" no taste.
  const isStaple = thing.ingredient === "almond flour" || !some.some(({ amount }) => amount?.of?.base);
  if (thing.taste) return isWeighed && thing.ingredient && !thing.dose && isStaple ? undefined : thing.taste;
  // "tops too dark": how they came out, and no chocolate
  if (/^(?:dark|white)$/.test(piece.text) && degrees.test(some[at - 1]?.text ?? "")) return undefined;
  const isChocolate = thing.chocolate !== undefined || thing.ingredient === "chocolate";
  if (isChocolate && !isWeighed && !follows?.base && !thing.base) return piece.text;
  return undefined;
}

/** "log kumquat batch", "the lilac ones": a word that no table has as a taste, before what it flavors. */
function named(some: readonly Piece[], at: number): string | undefined {
  const piece = some[at] as Piece;
  const isHead = heads.has(some[at + 1]?.text ?? "") && !["one", "ones"].includes(piece.text);
  if (!isHead || piece.amount || piece.when || batchTalk.has(piece.text)) return undefined;
  if (piece.thing) return piece.thing.color !== undefined && !piece.thing.taste ? piece.text : undefined;
  // "annas batch, raspberry": whose it is, where the flavor is named
  const isOwner = /^[a-z]+s$/.test(piece.text) && some.some((each) => each.thing?.taste);
  return /^[a-z]{3,}$/.test(piece.text) && !isOwner ? piece.text : undefined;
}

/** "brown butter" in notes is one flavor: neither a fault nor a color. */
export const withBrownButter = (some: readonly Piece[]): Piece[] =>
  some.flatMap((each, at) =>
    each.thing?.ingredient === "brown butter" || isBrownButter(some, at)
      ? [{ text: brownButter.text, thing: brownButter }]
      : isBrownButter(some, at - 1)
        ? []
        : [each],
  );

const isBrownButter = (some: readonly Piece[], at: number): boolean =>
  /^brown(?:ed)?$/.test(some[at]?.text ?? "") &&
  some[at + 1]?.thing?.ingredient === "butter" &&
  some[at + 1]?.text === "butter";
const brownButter: Thing = { id: "brown butter", taste: "brown butter", text: "brown butter", at: [0, 0] };

/** Whether a note's flavor is one that was asked for: the same, or with all its words ("caramel", "salted caramel"). */
export function isTaste(asked: string, own: string): boolean {
  const words = own.split(" ");
  return asked === own || asked.split(" ").every((word) => words.includes(word));
}
