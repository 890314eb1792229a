/** Numbers with their units: weights, volumes, lengths, times, temperatures, shares, money; ranges and sums. */
import { factorWords } from "../../data/words/numbers.ts";
import type { Amount, Dimension, Span } from "../tools/contract/index.ts";
import { inBase, unitRow } from "../tools/lib/units.ts";
import { unitIndex } from "./lexicon.ts";
import { type NumberRead, readNumber } from "./numbers.ts";
import type { Token } from "./tokens.ts";

export interface AmountRead {
  amount: Amount;
  next: number;
}

type UnitRead = { unit: string; dim: Dimension; next: number };

let index: ReturnType<typeof unitIndex> | undefined;
const unitsAt = (word: string) => {
  index ??= unitIndex();
  return index.get(word);
};
const text = (token: Token | undefined) => token?.text ?? "";
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

const made = (
  value: number,
  unit: string,
  dim: Dimension,
  next: number,
  more: Partial<Amount> = {},
): AmountRead => ({
  amount: { dim, value, unit, text: "", at: [0, 0], ...more },
  next,
});

function readMoney(tokens: readonly Token[], i: number): AmountRead | undefined {
  const unit = unitsAt(text(tokens[i]))?.find((each) => each.words.length === 1)?.unit;
  // "€12" and "EUR 12"; "dollars 12" says nothing
  const before = tokens[i]?.kind === "sign" || text(tokens[i]) === unit?.toLowerCase();
  if (!unit || !before || unitRow(unit).dim !== "money") return undefined;
  const read = readNumber(tokens, i + 1);
  return read && made(read.value, unit, "money", read.next);
}

/** "half an hour", "three quarters of an hour", "half a kilo", "half a percent", "half a stick". */
function readHalfOf(tokens: readonly Token[], i: number): AmountRead | undefined {
  const part = readNumber(tokens, i);
  if (!part?.fraction) return undefined;
  let at = part.next;
  if (text(tokens[at]) === "of") at += 1;
  const isOne = ["a", "an", "one"].includes(text(tokens[at]));
  // "three quarters of hour", the article left out
  const isHour = at > part.next && /^hours?$/.test(text(tokens[at]));
  if (!isOne && !isHour) return undefined;
  const unit = readUnit(tokens, isOne ? at + 1 : at, part.value);
  const range = unit && readRange(tokens, i, part, unit);
  if (range) return range;
  return unit && made(part.value, unit.unit, unit.dim, unit.next, { fraction: part.fraction });
}

/** "an hour", "a kilo", "a cup and a half", "another minute". */
function readArticle(tokens: readonly Token[], i: number): AmountRead | undefined {
  // "hour and 20 minutes", "hour and a half": the article swallowed
  if (text(tokens[i]) === "hour" && text(tokens[i + 1]) === "and") {
    const half = halfBehind(tokens, i + 1);
    const summed = half
      ? made(1 + half.value, "h", "time", half.next)
      : addSmaller(tokens, made(1, "h", "time", i + 1));
    return summed.next > i + 1 ? summed : undefined;
  }
  // "tablespoon of honey in g": one of it, the article left out
  const bare =
    i === 0 && /^(?:cup|stick|tablespoon|tbsp|teaspoon|tsp|pint)$/.test(text(tokens[i]))
      ? readUnit(tokens, i, 1)
      : undefined;
  const then = tokens[bare?.next ?? 0];
  const measures =
    text(then) === "of" ||
    (then?.kind === "word" && !["in", "to", "into", "size", "is", "as"].includes(text(then)));
  if (bare && measures) return made(1, bare.unit, bare.dim, bare.next);
  // "with the whole pound"
  const whole =
    text(tokens[i]) === "the" && ["whole", "full", "entire"].includes(text(tokens[i + 1]))
      ? readUnit(tokens, i + 2, 1)
      : undefined;
  if (whole?.dim === "weight" || whole?.dim === "volume") return made(1, whole.unit, whole.dim, whole.next);
  if (!["a", "an", "another", "per"].includes(text(tokens[i])) || text(tokens[i]) === "per") return undefined;
  const filled = ["whole", "full", "level", "heaped", "rounded", "single"].includes(text(tokens[i + 1]))
    ? 2
    : 1;
  const unit = readUnit(tokens, i + filled, 1);
  if (
    !unit ||
    unit.dim === "money" ||
    unit.unit === "d" ||
    (unit.dim === "percent" && text(tokens[i]) === "a")
  )
    return undefined;
  // "a second batch" is no time
  if (unit.unit === "s" && text(tokens[i + 1]) === "second") return undefined;
  const more = halfBehind(tokens, unit.next);
  return made(more ? 1 + more.value : 1, unit.unit, unit.dim, more?.next ?? unit.next);
}

/** "and a half" after the unit: "an hour and a half". */
function halfBehind(tokens: readonly Token[], i: number): { value: number; next: number } | undefined {
  if (text(tokens[i]) !== "and") return undefined;
  const read = readNumber(tokens, i + 1);
  if (!read?.fraction || read.value >= 1) return undefined;
  // "a cup and half a stick": the half belongs to what comes behind it
  return readUnit(tokens, read.next, 1) || ["a", "an"].includes(text(tokens[read.next])) ? undefined : read;
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

/** "3-5 %", "3 to 5 percent", "half to one percent", "between 100 and 150 g". Low first, or it is a ratio. */
function readRange(
  tokens: readonly Token[],
  i: number,
  low: NumberRead,
  lowUnit = readUnit(tokens, low.next, low.value),
): AmountRead | undefined {
  const at = lowUnit?.next ?? low.next;
  const between = text(tokens[i - 1]) === "between";
  const joint = text(tokens[at]);
  if (
    !(joint === "-" || joint === "to" || joint === "or" || joint === "till" || (between && joint === "and"))
  )
    return undefined;
  if (joint === "-" && tokens[at]?.gap && tokens[at + 1]?.gap === false) return undefined;
  // "by 1.75 - 60 g whites": the dash begins a list
  if (joint === "-" && text(tokens[i - 1]) === "by") return undefined;
  const high = readNumber(tokens, at + 1);
  if (!high || high.negative || low.negative || high.value <= low.value) return undefined;
  if (joint === "-" && tokens[at]?.gap && low.value > 0 && high.value > 10 * low.value) return undefined;
  const unit = readUnit(tokens, high.next, high.value);
  if (lowUnit && unit && lowUnit.dim !== unit.dim) return undefined;
  if (!unit && !lowUnit)
    return joint === "-" ? made(low.value, "", "number", high.next, { high: high.value }) : undefined;
  const { unit: name, dim } = unit ?? (lowUnit as UnitRead);
  // "14 g to 350 g buttercream": into it
  if (joint === "to" && dim === "weight" && lowUnit && high.value > 8 * low.value) return undefined;
  const scale =
    lowUnit && unit && lowUnit.unit !== unit.unit
      ? inBase(low.value, lowUnit.unit) / inBase(1, unit.unit)
      : low.value;
  return made(scale, name, dim, unit?.next ?? high.next, { high: high.value });
}

/** What may stand behind "1 hour 15" for the fifteen to be its minutes and no count of something. */
const endsTime = new Set([
  "",
  ",",
  ".",
  "?",
  "!",
  ";",
  "for",
  "please",
  "pls",
  "on",
  "from",
  "timer",
  "thanks",
]);

/** "1 lb 4 oz", "1 hour and 20 minutes", "1h30": a smaller unit of the same kind adds up. */
function addSmaller(tokens: readonly Token[], read: AmountRead): AmountRead {
  const { amount } = read;
  if (amount.dim === "money") return addCents(tokens, read);
  const shared = amount.fraction && amount.dim !== "volume";
  if (!["weight", "time", "volume"].includes(amount.dim) || amount.high !== undefined || shared) return read;
  const at = ["and", "+", "plus"].includes(text(tokens[read.next])) ? read.next + 1 : read.next;
  const number = readNumber(tokens, at);
  if (!number) return read;
  if (
    amount.unit === "h" &&
    at === read.next &&
    (tokens[at]?.gap === false || endsTime.has(text(tokens[number.next]))) &&
    number.value < 60 &&
    Number.isInteger(number.value) &&
    !readUnit(tokens, number.next, number.value)
  )
    return made(amount.value * 60 + number.value, "min", "time", number.next);
  // "an hour and ten": minutes, where nothing else follows that they could be
  const loose = tokens[number.next];
  const endsThere =
    !loose ||
    loose.kind === "sign" ||
    ["for", "on", "in", "please", "pls", "timer", "to", "till"].includes(loose.text);
  if (
    amount.unit === "h" &&
    at > read.next &&
    number.spelt &&
    number.value >= 5 &&
    number.value < 60 &&
    endsThere
  )
    return made(amount.value * 60 + number.value, "min", "time", number.next);
  const unit = readUnit(tokens, number.next, number.value);
  const pairs: Record<string, string[]> = {
    lb: ["oz"],
    kg: ["g"],
    h: ["min", "s"],
    min: ["s"],
    d: ["h"],
    cup: ["tbsp", "tsp"],
    tbsp: ["tsp"],
  };
  if (!unit || !pairs[amount.unit]?.includes(unit.unit)) return read;
  const total = inBase(amount.value, amount.unit) + inBase(number.value, unit.unit);
  // spoons beside a cup stay parts of it: what fills a cup is weighed by the cup
  const as = amount.unit === "cup" ? amount.unit : unit.unit;
  return addSmaller(tokens, made(total / inBase(1, as), as, amount.dim, unit.next));
}

/** "nine dollars and sixty cents": the hundredths of the same currency. */
function addCents(tokens: readonly Token[], read: AmountRead): AmountRead {
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

/** "$16 a kilo", "15 euros an hour", "2 per kg", "$4 for 500 g" is left to the calculator. */
function readPer(tokens: readonly Token[], read: AmountRead): AmountRead {
  if (read.amount.dim !== "money") return read;
  const joint = text(tokens[read.next]);
  if (!["a", "an", "per", "the", "/", "each"].includes(joint)) return read;
  const number = readNumber(tokens, read.next + 1);
  const at = number?.next ?? read.next + 1;
  const unit = readUnit(tokens, at, number?.value ?? 1);
  if (!unit || !["weight", "time", "volume"].includes(unit.dim)) return read;
  return { amount: { ...read.amount, per: { unit: unit.unit, value: number?.value ?? 1 } }, next: unit.next };
}

/** A unit at `i`. Exact spellings only; letters that mean several things go by their neighbours. */
export function readUnit(tokens: readonly Token[], i: number, value: number): UnitRead | undefined {
  const token = tokens[i];
  if (!token) return undefined;
  const found = unitsAt(token.text)?.find(({ words }) =>
    words.every((word, at) => text(tokens[i + at]) === word),
  );
  if (!found) return undefined;
  const next = i + found.words.length;
  const unit = found.risky ? settle(tokens, i, next, value) : found.unit;
  if (!unit) return undefined;
  // "3 L eggs": a size
  if (unit === "l" && /^(?:eggs?|whites?|yolks?)$/.test(text(tokens[next]))) return undefined;
  // "2 tbsp. cocoa": the dot of an abbreviation, not the sentence's end
  const dotted =
    ["tsp", "tbsp", "oz", "lb", "in"].includes(unit) &&
    text(tokens[next]) === "." &&
    tokens[next]?.gap === false;
  const goesOn = dotted && tokens[next + 1]?.kind === "word" && !sentenceStarts.has(text(tokens[next + 1]));
  return { unit, dim: unitRow(unit).dim, next: goesOn ? next + 1 : next };
}

const sentenceStarts = new Set(
  "how what whats which is does can should when so and i ive it that".split(" "),
);

/** Which of its meanings a one-letter unit has, from the number before it and the word behind it. */
function settle(tokens: readonly Token[], i: number, next: number, value: number): string | undefined {
  const [token, then] = [text(tokens[i]), text(tokens[next])];
  const numberBefore = tokens[i - 1]?.kind === "number" || tokens[i]?.gap === false;
  if (!numberBefore) return undefined;
  const converting = ["to", "in", "into"].includes(then);
  if (token === "c") {
    const toHeat = converting && /^(f|fahrenheit|farenheit|°)/.test(text(tokens[next + 1]));
    return value <= 12 && !toHeat && !(then === "" && value > 3) && then !== "oven" && then !== "fridge"
      ? "cup"
      : "°C";
  }
  if (token === "f") return "°F";
  if (token === "in") {
    const glued = tokens[i]?.gap === false;
    return glued ||
      [
        "to",
        "in",
        "into",
        "wide",
        "across",
        "round",
        "diameter",
        "shells",
        "tip",
        "macarons",
        "macs",
        "circles",
        "nozzle",
        "",
      ].includes(then)
      ? "in"
      : undefined;
  }
  if (token === '"') return "in";
  if (token === "m") return "min";
  if (token === "s") return "s";
  if (token === "d") return "d";
  if (token === "p") return tokens[i]?.gap === false ? "GBP penny" : undefined;
  if (token === "¢") return "USD cent";
  return undefined;
}
