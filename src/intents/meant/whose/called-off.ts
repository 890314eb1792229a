/**
 * "720 g batter, no, 690, 720 was last week": the number that was said first, and behind the right one what it was of;
 * "150 g milk ganache, i mean 150 g is the chocolate": of what it is after all.
 */
import type { Amount } from "../../../tools/contract/index.ts";
import { spanOf, textOf } from "../../found/items.ts";
import type { Item } from "../../found/scan.ts";
import { amountsOf, type Piece, piecesTold, withoutPieces } from "./pieces-told.ts";
import { amountAt, listed } from "./telling.ts";

const leads = listed(
  "no nope nah wait sorry oops whoops oh ah er erm um hang on hold actually rather and but so then well i mean meant the that those these my ok",
);
/** What may stand with the right number: "the whole buttercream is #", "make it #". */
const around = listed(
  "whole thing bowl lot real actual total full all it its is of now make only just really about at weighs comes to in there",
);

/** "720 was last week", "the 200 was without the sugar", "310 is what i had in my head", "250 is just the butter". */
function tellsOld({ words }: Piece): boolean {
  const at = words.indexOf("#");
  if (at < 0 || !words.slice(0, at).every((word) => leads.has(word))) return false;
  const said = words.slice(at + 1).join(" ");
  return (
    !/(?:^| )(?:how|what much|whats|which|flavou?r)(?: |$)/.test(said) &&
    /^(?:\S+ ){0,2}?(?:was|were|is (?:just|only|what|the old)|are (?:just|only)|being)(?: |$)/.test(said)
  );
}

const isBare = ({ dim, unit }: Amount) => dim === "number" && unit === "";
const isPlain = ({ fraction, high, unit }: Amount) => !fraction && high === undefined && unit !== "times";
/** The same number, with its unit or without. */
const isSame = (one: Amount, other: Amount) =>
  one.value === other.value && (one.unit === other.unit || isBare(one) || isBare(other));
const couldBe = (old: Amount, now: Amount) =>
  old.value !== now.value && isPlain(now) && (old.dim === now.dim || isBare(now));

/** Nothing but the right number, and what takes the other one back. */
const isRightOne = (items: readonly Item[], { words, amounts, from, to }: Piece): boolean =>
  amounts.length === 1 &&
  words.length <= 9 &&
  items.slice(from, to).every((item) => item.is !== "word" || leads.has(item.text) || around.has(item.text));

const isLeadOnly = ({ words }: Piece) => words.every((word) => leads.has(word));

/** The turn with the right number in the place of the one before; undefined where none is told so. */
export function withoutCalledOff(text: string, items: readonly Item[]): string | undefined {
  const pieces = piecesTold(items);
  const told = pieces.findIndex((piece, at) => at > 0 && tellsOld(piece));
  const tells = pieces[told];
  const said = tells && amountsOf(items, tells)[0];
  if (!tells || !said) return undefined;
  const begun = pieces.findIndex(
    (piece, at) => at < told && amountsOf(items, piece).some((each) => isSame(each, said)),
  );
  const first = pieces[begun];
  const old = first?.amounts.find((at) => isSame(amountAt(items, at) as Amount, said));
  if (!first || old === undefined) return undefined;
  const oldAmount = amountAt(items, old) as Amount;
  const between = pieces.slice(begun + 1, told);
  const right = between.findLast(
    (piece) => isRightOne(items, piece) && amountsOf(items, piece).some((each) => couldBe(oldAmount, each)),
  );
  const now = right && amountsOf(items, right)[0];
  if (now) {
    const shown = isBare(now) ? textOf(items[old] as Item).replace(/[\d.,]+/, now.text) : now.text;
    const gone = [...between.filter((piece) => piece === right || isLeadOnly(piece)), tells];
    const rest = withoutPieces(text, items, gone);
    const [start, end] = spanOf(items[old] as Item);
    // nothing before it was taken away
    return `${rest.slice(0, start)}${shown}${rest.slice(end)}`;
  }
  // "720 g batter no 690, 720 was last week": which of the two is meant is heard there
  const inSame = first.amounts.some((at) => at > old && couldBe(oldAmount, amountAt(items, at) as Amount));
  return inSame ? withoutPieces(text, items, [tells]) : undefined;
}

const isOnly =
  /^(?:(?:i|no|mean|meant|sorry|well|and|so|but|wait|the|that|where|of which) )*# (?:(?:g|is|was|are|being|of|just|only|for|the|that|it|its) )*(?:(?:milk|dark|white|plain) )?(?:chocolate|choc)(?: (?:alone|only|itself|part|bit|on its own|by itself|though|not the whole|in it|weight))*$/;

/** "200 g dark ganache, the 200 is just the chocolate": so much chocolate, and a ganache of it. */
export function withItsChocolate(text: string, items: readonly Item[]): string | undefined {
  const pieces = piecesTold(items);
  const tells = pieces.find((piece, at) => at > 0 && isOnly.test(piece.words.join(" ")));
  const said = tells && amountsOf(items, tells)[0];
  if (!tells || !said) return undefined;
  const at = items.findIndex(
    (item, place) => place < tells.from && item.is === "amount" && isSame(item.amount, said),
  );
  const own = items[at];
  // "150 g milk chocolate ganache", "200 g dark ganache", "200 g ganache": up to the mix itself
  const mix = items.findIndex(
    (item, place) => place > at && place <= at + 3 && item.is === "thing" && item.thing.base === "ganache",
  );
  const named = items[mix];
  if (own?.is !== "amount" || !named || items.slice(at, mix).some((item) => item.is === "sign"))
    return undefined;
  const kind = text.slice(spanOf(own)[1], spanOf(named)[1]).match(/\b(?:milk|dark|white)\b/)?.[0] ?? "";
  const rest = withoutPieces(text, items, [tells]);
  const [start, end] = [spanOf(own)[0], spanOf(named)[1]];
  return `${rest.slice(0, start)}ganache with ${own.amount.text} ${kind} chocolate${rest.slice(end)}`.replace(
    / +/g,
    " ",
  );
}
