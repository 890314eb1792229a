/** For how many macarons a sum of money is: "each costs 80 cents", "a dozen sells for $30", "a box of six". */
import type { Reading } from "../contract/index.ts";
import { type Piece, pieces } from "../lib/pieces.ts";
import type { Sum } from "./money.ts";

/** What stands beside a sum: the macarons that it is for, or a box of which nobody said how many it holds. */
export interface For {
  macarons?: number;
  boxed?: true | undefined;
}

const many =
  "(?:box|boxes|batch|batches|dozens?|tower|towers|bag|bags|packs?|packets?|gifts?|set|sets|order)";
/** "each costs 80 cents", "$2 apiece", "a macaron sells for £2". */
const eachBefore =
  /\b(?:each|every one|apiece)(?: (?:one|macaron|macarons))?(?: of them)?(?: only| just)? (?:costs?|sells?|goes|is|comes?|at|for)\b|\b(?:each|every|one|an?|single) (?:macaron|macarons|piece)\b|^(?:just |only |if )?one (?:costs?|comes to)\b/;
const eachBehind =
  /^ ?(?:each|ea|apiece|a piece|per piece|a pop|per one|(?:a|per|for (?:a|each|one)) (?:macarons?|macs?))\b/;
/** What comes by the piece, at the beginning of what it costs. */
const isBoughtByPiece =
  /^(?:(?:the|my|new|those|these|gift|small|large|big) )*(?:boxes|bags|ribbons?|stickers?|labels|inserts|trays|sleeves|pods?|beans?|vanilla(?: pods?| beans?)?|eggs?|egg whites?|whites|yolks|egg yolks|lemons?) (?:costs?(?: me| us)?|are|were|is|was)$/;
const boxWord = new RegExp(`\\b${many}\\b`);

/** For each sum, in their order, what it is for by the words of its own clause. */
export function countsOf(reading: Reading, money: readonly Sum[]): For[] {
  const list = pieces(reading);
  const places = money.map((sum) => list.findIndex((each) => each.amount === sum.amount));
  const found: For[] = [];
  for (const [at, place] of places.entries()) {
    const start = clauseStart(list, place, places[at - 1] ?? -1);
    // "at 9 each cost 60": the nine are for each
    const isLasts =
      at > 0 &&
      start - 1 === places[at - 1] &&
      list[start]?.text === "each" &&
      /^costs?$/.test(list[start + 1]?.text ?? "");
    const from = isLasts ? start + 1 : start;
    const to = clauseEnd(list, place, places[at + 1] ?? list.length);
    const said = forOf(list.slice(from, place), list.slice(place + 1, to));
    const own = said.macarons === undefined ? { ...said, ...(madeAside(list, from, to, said) ?? {}) } : said;
    // "boxes at $18 and each one costs me $7.20": each of the boxes
    const left = list
      .slice(from, place)
      .map((each) => each.text)
      .join(" ");
    const last = found.at(-1);
    const ofBoxes =
      own.macarons === 1 &&
      last?.boxed &&
      /\b(?:each|every)(?: one)? (?:of them )?(?:costs?|is|comes?)\b/.test(left);
    found.push(ofBoxes ? { boxed: true } : own);
  }
  return found;
}

/** What is made for a sum, told beside it; a box's price is for what is in the box, and for nothing told behind it. */
function madeAside(list: readonly Piece[], from: number, to: number, said: For): For | undefined {
  if (!said.boxed) return madeBefore(list, from) ?? madeBehind(list, to);
  const isBatch = list.slice(from, to).some((each) => /^batch(?:es)?$/.test(each.text));
  const made = isBatch ? madeBehind(list, to) : undefined;
  return made && { macarons: made.macarons as number, boxed: undefined };
}

/** "a batch costs 12 euros, it makes 30", "cost 12. that made 24 macarons": so many for it. */
function madeBehind(list: readonly Piece[], to: number): For | undefined {
  if (!/^[,;.]$/.test(list[to]?.text ?? "")) return undefined;
  const clause = list.slice(to + 1, clauseEnd(list, to, list.length));
  const at = clause.findIndex((each) => each.amount !== undefined);
  const amount = clause[at]?.amount;
  const lead = clause.slice(0, Math.max(at, 0)).map((each) => each.text);
  const end = clause.slice(at + 1).map((each) => each.text);
  const isMade =
    /^(?:(?:and|it|that|this|they|the|one|a|each|batch|recipe) )*(?:makes?|made|yields?|gives?|gave|is (?:for|enough for)|does)(?: (?:me|us|about|around))?$/;
  const isWhole = amount?.dim === "number" && amount.unit === "" && Number.isInteger(amount.value);
  return isWhole &&
    amount.value >= 2 &&
    (!amount.of || amount.of.count === "macarons") &&
    isMade.test(lead.join(" ")) &&
    /^(?:(?:of them|filled|macarons?|macs?|pieces?) ?)*$/.test(end.join(" "))
    ? { macarons: amount.value }
    : undefined;
}

/** "24 macarons, cost 12": so many were made, said by itself before what they cost. */
function madeBefore(list: readonly Piece[], from: number): For | undefined {
  const [many, things, joint, verb] = list.slice(Math.max(0, from - 3), from + 1);
  const amount = from === 3 ? many?.amount : undefined;
  const isMade = amount?.of?.count === "macarons" && /^mac/.test(things?.text ?? "") && joint?.text === ",";
  return isMade && Number.isInteger(amount?.value) && /^costs?$/.test(verb?.text ?? "")
    ? { macarons: amount?.value as number }
    : undefined;
}

function forOf(before: readonly Piece[], after: readonly Piece[]): For {
  const [left, right] = [before, after].map((some) => some.map((each) => each.text).join(" "));
  const boxes = boxWord.test(`${left} ${right}`);
  if (!boxes && (eachBefore.test(left ?? "") || eachBehind.test(right ?? ""))) return { macarons: 1 };
  // "each macaron costs 60p in a box of 6" is still one of them
  if (/\b(?:each|every) macarons?\b/.test(left ?? "")) return { macarons: 1 };
  // "boxes cost me 5 for 10": ten of those
  if (isBoughtByPiece.test(left ?? "") && /^for \d+(?: of them)?$/.test(right ?? "")) return {};
  const macarons = numberOf([...before, ...after]);
  if (macarons !== undefined) return { macarons };
  return boxes ? { boxed: true } : {};
}

/** The number of macarons in a clause: "24 macarons", "a dozen", "a box of six", "to make 24". */
function numberOf(clause: readonly Piece[]): number | undefined {
  const hit = clause.find((piece, at) => {
    const next = clause[at + 1]?.text;
    const { amount } = piece;
    if (amount?.dim !== "number" || amount.unit !== "" || !Number.isInteger(amount.value) || amount.value < 2)
      return false;
    if (amount.of?.count === "macarons" || /dozen/.test(amount.text)) return true;
    const words = clause
      .slice(Math.max(0, at - 3), at)
      .map((each) => each.text)
      .join(" ");
    return (
      /^packs?$/.test(next ?? "") ||
      new RegExp(`\\b${many} of$`).test(words) ||
      (!amount.of && /^(?:costs?|sells?)$/.test(next ?? "") && !/\bcosts?(?: me)?$/.test(words)) ||
      (!amount.of &&
        /\b(?:to make|makes?|made|for(?: all| the)?|per|batch of|sell|sells|selling|sold)$/.test(words))
    );
  });
  return hit?.amount?.value;
}

const isJoint = (piece: Piece | undefined) =>
  piece !== undefined &&
  !piece.amount &&
  /^(?:[,;:?!.]|and|but|plus|while|if|when|what|whats)$/.test(piece.text);

function clauseStart(list: readonly Piece[], place: number, last: number): number {
  for (let at = place - 1; at > last; at--) if (isJoint(list[at])) return at + 1;
  return last + 1;
}

function clauseEnd(list: readonly Piece[], place: number, next: number): number {
  for (let at = place + 1; at < next; at++) if (isJoint(list[at])) return at;
  return next;
}
