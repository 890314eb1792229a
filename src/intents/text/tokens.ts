/** Words, numbers and signs with their places. Apostrophes inside words are dropped: "what's" reads as "whats". */
import type { Span } from "../../tools/contract/index.ts";

export interface Token {
  kind: "word" | "number" | "sign";
  text: string;
  /** Of a number. */
  value?: number;
  /** White space stood before it. */
  gap: boolean;
  at: Span;
}

/** From here on digits are no number that anyone weighs or counts with, and sums of them would overflow. */
const tooLarge = 1e15;

// "10 000" and "1'000" are one number; "1 200 g" may be one piece of 200 g and isn't
const piece =
  /(\d{1,3}(?: 000)+(?!\d)|\d{1,3}(?:'\d{3})+(?!\d)|\d+(?:[.,]\d+)*|(?<![a-z])[.,]\d+)|([a-z]+(?:'[a-z]+)*)|(\S)/gu;

/** Splits normalised text. "230g" gives a number and a word; "2tbs", "1.5x" likewise. Linear in the text's length. */
export function tokenise(text: string): Token[] {
  const tokens: Token[] = [];
  let end = 0;
  for (const match of text.matchAll(piece)) {
    const from = match.index;
    const gap = from > end || from === 0;
    end = from + match[0].length;
    const at: Span = [from, end];
    const value = match[1] === undefined ? undefined : decimal(match[1]);
    if (value !== undefined && value < tooLarge)
      tokens.push({ kind: "number", text: match[0], value, gap, at });
    else if (match[2] !== undefined)
      tokens.push({ kind: "word", text: match[2].replaceAll("'", ""), gap, at });
    else tokens.push({ kind: "sign", text: match[0], gap, at });
  }
  return tokens;
}

/**
 * "1,5" is one and a half, "1,000" a thousand, "0,125" an eighth, "1.250" a quarter over one.
 * Commas in groups of three after one to three digits separate thousands, unless the number starts with a zero.
 */
export function decimal(written: string): number {
  const digits = written.replace(/[ ']/g, "");
  if (/^[1-9]\d{0,2}(,\d{3})+(\.\d+)?$/.test(digits)) return Number(digits.replaceAll(",", ""));
  if (/^[1-9]\d{0,2}(\.\d{3})+,\d+$/.test(digits))
    return Number(digits.replaceAll(".", "").replace(",", "."));
  const parts = digits.replaceAll(",", ".").split(".");
  // "1.250.000" is a million and a quarter; "5.5.5" and "14.3.2026" are no numbers
  if (parts.length > 2)
    return /^[1-9]\d{0,2}(\.\d{3})+$/.test(digits) ? Number(digits.replaceAll(".", "")) : Number.NaN;
  const [whole, part] = [parts[0] || "0", parts[1] ?? ""];
  return Number(part ? `${whole}.${part}` : whole);
}
