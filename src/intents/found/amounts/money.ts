/** Money: "$16 a kilo", "nine dollars and sixty cents". */
import { inBase, unitRow } from "../../../tools/lib/units.ts";
import type { Token } from "../../text/tokens.ts";
import { readNumber } from "../numbers.ts";
import { type AmountRead, made, text } from "./parts.ts";
import { readUnit, unitsAt } from "./unit.ts";

/** "€12", "EUR 12", "$ 4.50". */
export function readMoney(tokens: readonly Token[], i: number): AmountRead | undefined {
  const unit = unitsAt(text(tokens[i]))?.find((each) => each.words.length === 1)?.unit;
  // "€12" and "EUR 12"; "dollars 12" says nothing
  const before = tokens[i]?.kind === "sign" || text(tokens[i]) === unit?.toLowerCase();
  if (!unit || !before || unitRow(unit).dim !== "money") return undefined;
  const read = readNumber(tokens, i + 1);
  return read && made(read.value, unit, "money", read.next);
}

/** "nine dollars and sixty cents": the hundredths of the same currency. */
export function addCents(tokens: readonly Token[], read: AmountRead): AmountRead {
  const spoken = spokenCents(tokens, read);
  if (spoken) return spoken;
  const { value, unit, high } = read.amount;
  const number = readNumber(tokens, text(tokens[read.next]) === "and" ? read.next + 1 : read.next);
  const cents = number && readUnit(tokens, number.next, number.value);
  const areCents = cents?.dim === "money" && inBase(1, cents.unit) === 0.01;
  return number &&
    cents &&
    areCents &&
    inBase(1, unit) === 1 &&
    high === undefined &&
    Number.isInteger(value) &&
    number.value < 100
    ? made(value + number.value / 100, unit, "money", cents.next)
    : read;
}

/** What may stand behind "three dollars fifty": anything that could be counted makes another thing of the fifty. */
const behindCents = new Set(
  "a an per the each for and so to in on at is was what whats how i we my it which that then with from but or please plus all total altogether".split(
    " ",
  ),
);

/** Behind pounds, which may be a weight. */
const behindPounds = new Set("a an per the each for at was".split(" "));

/** "three dollars fifty a kilo", "eleven pounds twenty": the hundredths without their word, as they are spoken. */
export function spokenCents(tokens: readonly Token[], { amount, next }: AmountRead): AmountRead | undefined {
  const isSum = amount.dim === "money" || (amount.unit === "lb" && /^pounds?$/.test(text(tokens[next - 1])));
  // "$12 50" has its sign before it: nothing is known of the fifty
  const isNamed = tokens[next - 1]?.kind === "word" && tokens[next - 2] !== undefined;
  if (!isSum || !isNamed || amount.high !== undefined || !Number.isInteger(amount.value)) return undefined;
  const number = readNumber(tokens, next);
  if (!number || !Number.isInteger(number.value) || number.value < 10 || number.value > 99 || number.fraction)
    return undefined;
  const behind = tokens[number.next];
  // "3 pounds 12 in grams" is a weight and its ounces
  const mayFollow = amount.dim === "money" ? behindCents : behindPounds;
  if (behind && behind.kind !== "sign" && !mayFollow.has(behind.text)) return undefined;
  if (behind && ["%", ":", "/", "*", "+", "-", "x"].includes(behind.text)) return undefined;
  const unit = amount.dim === "money" ? amount.unit : "GBP";
  return inBase(1, unit) === 1
    ? made(amount.value + number.value / 100, unit, "money", number.next)
    : undefined;
}

/** "$16 a kilo", "15 euros an hour", "2 per kg", "$4 for 500 g" is left to the calculator. */
export function readPer(tokens: readonly Token[], read: AmountRead): AmountRead {
  if (read.amount.dim !== "money") return read;
  const joint = text(tokens[read.next]);
  if (!["a", "an", "per", "the", "/", "each"].includes(joint)) return read;
  const number = readNumber(tokens, read.next + 1);
  const at = number?.next ?? read.next + 1;
  const unit = readUnit(tokens, at, number?.value ?? 1);
  if (!unit || !["weight", "time", "volume"].includes(unit.dim)) return read;
  return { amount: { ...read.amount, per: { unit: unit.unit, value: number?.value ?? 1 } }, next: unit.next };
}
