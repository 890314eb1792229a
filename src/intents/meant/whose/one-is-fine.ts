/**
 * "220 g ganache split, the 400 g from sunday is still fine": of two bowls the one is spoken of and nothing is asked about
 * it; and of two faults the one that stayed away: "the ganache isn't split, it's grainy".
 */
import { spanOf, wordOf } from "../../found/items.ts";
import type { Item } from "../../found/scan.ts";
import { type Fault, faultsIn } from "./faults.ts";
import { amountAt, thingAt } from "./telling.ts";

const fine = new Set(
  "fine ok okay good smooth perfect alright lovely great intact glossy unharmed right silky".split(" "),
);
const stayed = new Set("didnt hasnt isnt wasnt doesnt".split(" "));
const joints = new Set("but and while whereas though although".split(" "));
const asks = new Set("how what whats fix rescue save repair stir help do add".split(" "));

const noted = /\b(?:notes?|log|jot|write|written|record)\b/;

interface Piece {
  from: number;
  to: number;
}

/** From stop to stop, or from comma to comma and joint to joint. */
function piecesOf(items: readonly Item[], isFine: boolean): Piece[] {
  const out: Piece[] = [];
  let from = 0;
  items.forEach((item, at) => {
    const isStop = item.is === "sign" && (isFine ? /^[,.;:!?()-]$/ : /^[.;:!?()]$/).test(item.text);
    const isJoint = isFine ? joints.has(wordOf(item)) : wordOf(item) === "but";
    if (!isStop && !isJoint) return;
    if (at > from) out.push({ from, to: at });
    from = isStop ? at + 1 : at;
  });
  if (items.length > from) out.push({ from, to: items.length });
  return out;
}

/** The turn without the bowl that is fine; undefined where it doesn't tell of two. */
export function brokenOne(text: string, items: readonly Item[]): string | undefined {
  const weights = items.flatMap((_, at) => (amountAt(items, at)?.dim === "weight" ? [at] : []));
  const faults = faultsIn(items).filter(({ isDenied }) => !isDenied);
  if (weights.length !== 2 || faults.length === 0 || noted.test(text)) return undefined;
  for (const isFine of [false, true]) {
    const pieces = piecesOf(items, isFine).filter(({ from, to }) =>
      weights.some((at) => at >= from && at < to),
    );
    if (pieces.length !== 2) continue;
    const good = pieces.filter((piece) => isGood(items, piece, isFine));
    const [drop] = good;
    if (!drop || good.length !== 1 || faults.every(({ at }) => at >= drop.from && at < drop.to)) continue;
    const rest = items.filter((_, at) => at < drop.from || at >= drop.to);
    if (!rest.some((item) => asks.has(wordOf(item)))) continue;
    const weight = weights.find((at) => at < drop.from || at >= drop.to);
    return putPlainly(items, weight, faults) ?? without(text, items, drop, isFine);
  }
  return undefined;
}

/** "220 g ganache has split, what do i stir in": where one mix is named, and one fault. */
function putPlainly(
  items: readonly Item[],
  at: number | undefined,
  faults: readonly Fault[],
): string | undefined {
  const weight = at === undefined ? undefined : amountAt(items, at);
  const bases = new Set(
    items.flatMap((item) => (item.is === "thing" && item.thing.base ? [item.thing.base] : [])),
  );
  const said = new Set(faults.flatMap((each) => thingAt(items, each.at)?.text ?? []));
  const [[base], [fault]] = [[...bases], [...said]];
  if (!weight || bases.size !== 1 || said.size !== 1 || !base || !fault) return undefined;
  const cure =
    base === "ganache" && /^(?:split|splits|splitting|broke|broken|separated|curdled)$/.test(fault);
  return cure
    ? `${weight.text} ${base} has split, what do i stir in`
    : `${weight.text} ${base} is ${fault}, how do i fix it`;
}

/** It says so itself, or the next words behind a comma do: "the second bowl, 280 g, is okay". */
function isGood(items: readonly Item[], { from, to }: Piece, isFine: boolean): boolean {
  const own = items.slice(from, to);
  if (faultsIn(items).some(({ at, isDenied }) => at >= from && at < to && !isDenied)) return false;
  const words = own.map((item) => (item.is === "thing" ? item.thing.text : wordOf(item)));
  if (words.some((word, at) => fine.has(word) && words[at - 1] !== "not")) return true;
  if (stayed.has(words.at(-1) ?? "") || words.find((word) => word !== "but" && word !== "and") === "not")
    return true;
  const behind = items.slice(to + 1, to + 4).map(wordOf);
  return (
    isFine &&
    /^(?:is|looks|thats?|that one|it|still)/.test(behind[0] ?? "") &&
    behind.some((word) => fine.has(word))
  );
}

/** A joint before it goes too; where commas cut, what is said of it behind the next comma does as well. */
function without(text: string, items: readonly Item[], { from, to }: Piece, isFine: boolean): string {
  let end = to;
  if (isFine && !items.slice(from, to).some((item) => fine.has(wordOf(item)))) {
    const next = items.slice(to + 1).findIndex((item) => item.is === "sign");
    const behind = items.slice(to + 1, next < 0 ? items.length : to + 1 + next);
    if (behind.some((item) => fine.has(wordOf(item)))) end = to + 1 + behind.length;
  }
  const [first, last] = [items[from], items[end - 1]];
  if (!first || !last) return text;
  return tidied(`${text.slice(0, spanOf(first)[0])} ${text.slice(spanOf(last)[1])}`);
}

const tidied = (text: string): string =>
  text
    .replace(/\s+/g, " ")
    .replace(/(?: ?[,.;:-])+ ?(?=[,.;:?!])/g, "")
    .replace(/^[ ,.;:!-]+/, "")
    .trim();

/** "ganache isn't split or anything, but it's grainy": without what isn't wrong with it. */
export function onlyTheFault(text: string, items: readonly Item[]): string | undefined {
  const faults = faultsIn(items);
  const denied = faults.filter(({ isDenied, from, at }) => isDenied && from < at);
  if (denied.length === 0 || denied.length === faults.length || /\bbatch\b/.test(text)) return undefined;
  let now = text;
  for (const { from, at } of [...denied].reverse()) {
    const [first, last] = [items[from], items[at]];
    // several of one "not": cut off with the last of them
    if (!first || !last || faults.some((each) => each.from === from && each.at > at)) continue;
    now = `${now.slice(0, spanOf(first)[0])} ${now.slice(spanOf(last)[1])}`;
  }
  return tidied(now);
}
