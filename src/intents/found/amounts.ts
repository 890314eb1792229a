/** Numbers with their units: weights, volumes, lengths, times, temperatures, shares, money; ranges and sums. */
import { factorWords } from "../../../data/words/numbers.ts";
import type { Span } from "../../tools/contract/index.ts";
import type { Token } from "../text/tokens.ts";
import { halfBehind, readArticle, readHalfOf } from "./amounts/halves.ts";
import { readMoney, readPer } from "./amounts/money.ts";
import { type AmountRead, made, text } from "./amounts/parts.ts";
import { readRange } from "./amounts/range.ts";
import { addSmaller } from "./amounts/smaller.ts";
import { readUnit } from "./amounts/unit.ts";
import { type NumberRead, readNumber } from "./numbers.ts";

const span = (tokens: readonly Token[], from: number, next: number): Span => [
  tokens[from]?.at[0] ?? 0,
  tokens[next - 1]?.at[1] ?? 0,
];
const spelt = (tokens: readonly Token[], from: number, next: number) =>
  tokens
    .slice(from, next)
    .map((token, at) => (token.gap && at > 0 ? " " : "") + token.text)
    .join("");

/** An amount that starts at `i`: "230 g", "1 lb 4 oz", "3-5 %", "an hour and a half", "$16 a kilo", "1.5x", "24". */
export function readAmount(tokens: readonly Token[], i: number): AmountRead | undefined {
  const read =
    readMoney(tokens, i) ?? readHalfOf(tokens, i) ?? readArticle(tokens, i) ?? readCounted(tokens, i);
  if (!read) return undefined;
  // "14.50 a kg and 100 g butter": what the price is for, and no kilo and a bit
  const isPerUnit = ["a", "an"].includes(text(tokens[i])) && tokens[i - 1]?.kind === "number";
  const summed = isPerUnit ? read : addSmaller(tokens, read);
  const priced = readPer(tokens, summed);
  return {
    ...priced,
    amount: { ...priced.amount, text: spelt(tokens, i, priced.next), at: span(tokens, i, priced.next) },
  };
}

function readCounted(tokens: readonly Token[], i: number): AmountRead | undefined {
  const number = readNumber(tokens, i);
  if (!number) return readFactorWord(tokens, i);
  const times = readTimes(tokens, number);
  if (times) return times;
  const range = readRange(tokens, i, number);
  if (range) return range;
  const product = readProduct(tokens, number);
  if (product) return product;
  const direct = readUnit(tokens, number.next, Math.abs(number.value));
  const loose = [
    "more",
    "extra",
    "additional",
    "full",
    "fl",
    "level",
    "heaped",
    "rounded",
    "big",
    "whole",
  ].includes(text(tokens[number.next]));
  const unit = direct ?? (loose ? readUnit(tokens, number.next + 1, Math.abs(number.value)) : undefined);
  const fraction = number.fraction ? { fraction: number.fraction } : {};
  if (!unit) return made(number.value, "", "number", number.next, fraction);
  const more = number.spelt || unit.dim === "time" ? halfBehind(tokens, unit.next) : undefined;
  return made(number.value + (more?.value ?? 0), unit.unit, unit.dim, more?.next ?? unit.next, fraction);
}

/** "double it", "halve": a factor said as one word. */
function readFactorWord(tokens: readonly Token[], i: number): AmountRead | undefined {
  // "house shells x 1.75"; between two numbers it multiplies, or stands between a tray's sides
  const times =
    text(tokens[i]) === "x" && tokens[i - 1]?.kind !== "number" ? readNumber(tokens, i + 1) : undefined;
  if (times && !readUnit(tokens, times.next, times.value))
    return made(times.value, "times", "number", times.next);
  const factor = tokens[i]?.kind === "word" ? factorWords[text(tokens[i])] : undefined;
  if (factor === undefined || text(tokens[i + 1]) === "cream") return undefined;
  return made(factor, "times", "number", i + 1);
}

/** "1.5 times", "2x", "x 3". */
function readTimes(tokens: readonly Token[], number: NumberRead): AmountRead | undefined {
  const then = tokens[number.next];
  if (
    text(then) === "times" ||
    text(then) === "fold" ||
    (text(then) === "x" && tokens[number.next + 1]?.kind !== "number")
  )
    return made(number.value, "times", "number", number.next + 1);
  return undefined;
}

/** "3 x 200 g": so many of a weight or a volume, as one. */
function readProduct(tokens: readonly Token[], number: NumberRead): AmountRead | undefined {
  if (text(tokens[number.next]) !== "x" || !Number.isInteger(number.value) || number.negative)
    return undefined;
  const one = readNumber(tokens, number.next + 1);
  const unit = one && readUnit(tokens, one.next, one.value);
  if (!one || !unit || !["weight", "volume"].includes(unit.dim)) return undefined;
  return made(number.value * one.value, unit.unit, unit.dim, unit.next);
}
