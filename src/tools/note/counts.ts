/** How many were made: "42 macs", "36 of them", "made 28", "two trays". */
import { praise } from "../../../data/words/symptoms.ts";
import { isSign, type Piece } from "../lib/pieces.ts";
import type { Found } from "./heat.ts";

const made = new Set([
  "made",
  "got",
  "makes",
  "make",
  "gave",
  "yielded",
  "yield",
  "total",
  "totalling",
  "came",
]);
/** Behind these a number tells what was lost, not what was made. */
const losses = new Set([
  "lost",
  "binned",
  "threw",
  "dropped",
  "ate",
  "broke",
  "sold",
  "gave",
  "only",
  "except",
  "but",
]);

export function countsIn(some: readonly Piece[]): Omit<Found, "assumed"> {
  const found: Omit<Found, "assumed"> = { found: {}, taken: [] };
  some.forEach((piece, at) => {
    const { amount } = piece;
    if (
      amount?.dim !== "number" ||
      amount.unit !== "" ||
      amount.fraction ||
      !Number.isInteger(amount.value) ||
      amount.value < 1
    )
      return;
    // "22 shells cracked of 60"
    if (some[at - 1]?.text === "of" && isFaultOfShells(some.slice(Math.max(0, at - 5), at))) {
      found.found.shells ??= amount.value;
      found.taken.push(at);
      return;
    }
    // "made 48 of them shells cracked": the number is of what was made
    const isMade = making.test(some[at - 1]?.text ?? "") && isAll(some, at);
    if ((isDamage(some, at) && !isMade) || isAbout(some, at)) return;
    // "mango batch 20 of them": the number is of what it made, and not of batches
    const count =
      amount.of?.count === "batches" && /^(?:of|in|out)$/.test(some[at + 1]?.text ?? "") && isAll(some, at)
        ? undefined
        : amount.of?.count;
    // "about fifty of them shells shiny": what is made, and then how its shells were
    const isOfThem = count === "shells" && /^(?:them|em)$/.test(some[at + 2]?.text ?? "") && isAll(some, at);
    const what =
      (isOfThem ? "macarons" : count) ??
      (isAll(some, at) ||
      opensBatch(some, at) ||
      aheadOfFlavors(some, at) ||
      madeOf(some, at) ||
      behindFlavor(some, at)
        ? "macarons"
        : undefined);
    if (what !== "macarons" && what !== "shells" && what !== "trays") return;
    found.found[what] ??= amount.value;
    found.taken.push(at);
  });
  return found;
}

const making = /^(?:made|baked|did|piped|finished)$/;

/** "made 40 raspberry ones", "i baked 36 pistachio today": behind the verb, before the flavor. */
function madeOf(some: readonly Piece[], at: number): boolean {
  const [next, behind] = [some[at + 1], some[at + 2]];
  const count = behind?.thing?.count;
  return (
    making.test(some[at - 1]?.text ?? "") &&
    (some[at]?.amount?.value ?? 0) >= 4 &&
    next?.thing?.taste !== undefined &&
    !behind?.thing?.base &&
    !behind?.thing?.dose &&
    (count === undefined || count === "macarons")
  );
}

/** What a flavor is told in: "raspberry / pistachio", "vanilla choc". */
const isOfFlavor = (piece: Piece | undefined): boolean =>
  piece !== undefined &&
  (piece.thing?.taste !== undefined ||
    piece.thing?.chocolate !== undefined ||
    piece.thing?.ingredient === "chocolate" ||
    /^(?:\/|and|&|n|with)$/.test(piece.text));
/** More than so many are hardly made at once: a heat, or a weight without its unit. */
const mostMade = 120;
/** What may stand between a note's beginning and its flavor. */
const leadsIn = /^(?:note|log|record|made|baked|did|piped|yesterday|today|batch|of|the|my|new|a|some|:)$/;

/** "sat party 30 raspberry/pistachio 150C 14 min": so many of that flavor, whatever comes next. */
function aheadOfFlavors(some: readonly Piece[], at: number): boolean {
  const value = some[at]?.amount?.value ?? 0;
  if (value < 12 || value > mostMade || some[at + 1]?.thing?.taste === undefined) return false;
  if (losses.has(some[at - 1]?.text ?? "") || /^(?:at|for|of|by|to|no)$/.test(some[at - 1]?.text ?? ""))
    return false;
  const end = some.findIndex((each, i) => i > at && !isOfFlavor(each));
  const behind = end < 0 ? undefined : some[end];
  return (
    !behind?.thing?.base &&
    !behind?.thing?.dose &&
    behind?.thing?.count === undefined &&
    !behind?.thing?.symptom
  );
}

/** "36 pistachio, feet ok": the number that a note begins with, right before its flavor, counts the macarons. */
function opensBatch(some: readonly Piece[], at: number): boolean {
  const [next, behind] = [some[at + 1], some[at + 2]];
  return (
    (at === 0 || isSign(some[at - 1])) &&
    (some[at]?.amount?.value ?? 0) >= 4 &&
    next?.thing?.taste !== undefined &&
    (behind === undefined || isSign(behind) || behind.text === "and")
  );
}

/** "raspberry 48, 5 cracked": the number right behind the flavor that a note begins with. */
function behindFlavor(some: readonly Piece[], at: number): boolean {
  const next = some[at + 1];
  const value = some[at]?.amount?.value ?? 0;
  let from = at - 1;
  while (from >= 0 && isOfFlavor(some[from])) from--;
  const isNamed = some.slice(from + 1, at).some((each) => each.thing?.taste !== undefined);
  const lead = some[from];
  return (
    isNamed &&
    (lead === undefined || isSign(lead) || leadsIn.test(lead.text) || lead.when !== undefined) &&
    value >= 12 &&
    value <= mostMade &&
    (next === undefined || isSign(next) || next.text === "and")
  );
}

/** "made 28", "36 of them", "28 in total": all of them, so filled macarons. */
function isAll(some: readonly Piece[], at: number): boolean {
  const [before, first, second] = [some[at - 1]?.text ?? "", some[at + 1], some[at + 2]?.text ?? ""];
  const value = some[at]?.amount?.value ?? 0;
  if (first?.text === "of" && ["them", "em", "these", "those"].includes(second)) return true;
  if (first?.text === "in" && (second === "total" || second === "all")) return true;
  // "got 41 out of it"
  if (made.has(before) && first?.text === "out" && second === "of" && value >= 4) return true;
  // "40 made", "40 pcs"
  const closes = some[at + 2] === undefined || isSign(some[at + 2]);
  if (["made", "pcs", "pc", "pieces", "total"].includes(first?.text ?? "") && closes && value >= 4)
    return true;
  const ends =
    first === undefined || isSign(first) || ["and", "in", "from", "altogether"].includes(first.text);
  // "there were 38"
  const wereThere = before === "were" && /^(?:there|they)$/.test(some[at - 2]?.text ?? "");
  return (made.has(before) || wereThere) && ends && value >= 4;
}

/** "one tray 2 min too long", "one tray over-baked": what happened to some of them, not how many there were. */
function isAbout(some: readonly Piece[], at: number): boolean {
  const [first, second] = [some[at + 1], some[at + 2]];
  return (
    first?.thing?.count === "trays" &&
    (second?.amount?.dim === "time" || second?.amount?.dim === "temperature" || second?.text === "too")
  );
}

const isFaultOfShells = (before: readonly Piece[]): boolean =>
  before.some((each) => (each.amount?.of ?? each.thing)?.count === "shells") && before.some(isFault);

const isFault = (piece: Piece) => piece.thing?.symptom !== undefined && !praise.includes(piece.thing.symptom);

/** "3 shells cracked", "no feet on one tray", "two hollow", "2 of them had no feet", "lost 4 shells". */
export function isDamage(some: readonly Piece[], at: number): boolean {
  if (losses.has(some[at - 1]?.text ?? "") && some[at - 1]?.text !== "gave") return true;
  // "no feet on 4"; in "two cracked and got 30 out of it" the number is another matter
  const before = some.slice(Math.max(0, at - 3), at);
  if (before.some(isFault) && !before.some(isSign) && !isJoined(before)) return true;
  for (let next = at + 1; next < some.length && next <= at + 5; next++) {
    const each = some[next] as Piece;
    if (isFault(each)) return !isJoined(some.slice(at, next));
    // a mark stands between, and the fault is what it was marked for: "24 macs 7/10 sticky"
    if (isSign(each) || each.amount || /^\d/.test(each.text)) return false;
  }
  return false;
}

/** "24 macarons and they cracked": the fault is a second thing said. */
const isJoined = (some: readonly Piece[]) => some.some((each) => ["and", "but", "with"].includes(each.text));
