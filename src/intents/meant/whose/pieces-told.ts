/** A turn cut at its signs, each piece with its words and where its amounts stand; and the text without some of them. */
import type { Amount } from "../../../tools/contract/index.ts";
import { spanOf, textOf, wordOf } from "../../found/items.ts";
import type { Item } from "../../found/scan.ts";
import { amountAt } from "./telling.ts";

export interface Piece {
  from: number;
  to: number;
  /** Its words, an amount as "#", a moment as "~". */
  words: readonly string[];
  /** Where its amounts stand in the turn. */
  amounts: readonly number[];
}

const stops = /^[,.;:?!()-]$/;

const wordsAt = (item: Item): readonly string[] =>
  item.is === "amount" ? ["#"] : item.is === "when" ? ["~"] : textOf(item).split(" ");

export function piecesTold(items: readonly Item[]): Piece[] {
  const out: Piece[] = [];
  let from = 0;
  const end = (to: number, next: number) => {
    if (to > from) out.push(pieceOf(items, from, to));
    from = next;
  };
  items.forEach((item, at) => {
    if (item.is === "sign" && stops.test(item.text)) end(at, at + 1);
    // "200 g ganache but 200 is only the chocolate"
    const told = wordOf(items[at + 1]) === "the" ? items[at + 2] : items[at + 1];
    if (/^(?:but|though|where|whereas)$/.test(wordOf(item)) && told?.is === "amount") end(at, at);
    // "9 oz. flavor for mine": the stop went with the unit
    if (item.is === "amount" && /[a-z]\.$/.test(item.amount.text) && items[at + 1]?.is !== "sign")
      end(at + 1, at + 1);
  });
  end(items.length, items.length);
  return out;
}

function pieceOf(items: readonly Item[], from: number, to: number): Piece {
  const own = items.slice(from, to);
  return {
    from,
    to,
    words: own.flatMap(wordsAt),
    amounts: own.flatMap((item, at) => (item.is === "amount" ? [from + at] : [])),
  };
}

export const amountsOf = (items: readonly Item[], { amounts }: Piece): Amount[] =>
  amounts.flatMap((at) => amountAt(items, at) ?? []);

/** The text without some pieces, and without the signs that stood around them. */
export function withoutPieces(text: string, items: readonly Item[], gone: readonly Piece[]): string {
  let out = text;
  for (const { from, to } of [...gone].sort((a, b) => b.from - a.from)) {
    const [first, last, before, behind] = [items[from], items[to - 1], items[from - 1], items[to]];
    if (!first || !last) continue;
    const joins = before?.is === "sign" && /^[,;(-]$/.test(before.text);
    const closes = behind?.is === "sign" && (joins ? /^\)$/ : /^[,.;!):-]$/).test(behind.text);
    const start = joins ? spanOf(before)[0] : spanOf(first)[0];
    const end = closes ? spanOf(behind)[1] : spanOf(last)[1];
    out = `${out.slice(0, start).trimEnd()} ${out.slice(end).trimStart()}`;
  }
  return out
    .replace(/ +(?=[,.;?!])/g, "")
    .replace(/ +/g, " ")
    .trim();
}
