/** Reads one number at a place in the tokens: digits, fractions, words, dictated hundreds. */
import { groupWords, magnitudes, partWords, smallNumbers, tens } from "../../../data/words/numbers.ts";
import type { Token } from "../text/tokens.ts";

export interface NumberRead {
  value: number;
  /** Index of the first token after it. */
  next: number;
  fraction?: readonly [number, number];
  /** It was spelt in words, so that "two thirty" may be a dictated 230. */
  spelt?: boolean;
  negative?: boolean;
}

const word = (token: Token | undefined) => (token?.kind === "word" ? token.text : undefined);
const sign = (token: Token | undefined, text: string) => token?.kind === "sign" && token.text === text;

/** A number that starts at `i`, or undefined. Never mends: a misread digit is a wrong answer. */
export function readNumber(tokens: readonly Token[], i: number): NumberRead | undefined {
  const negated = readNegative(tokens, i);
  if (negated) return negated;
  const token = tokens[i];
  const read =
    token?.kind === "number"
      ? readDigits(tokens, i)
      : token?.kind === "word"
        ? readWords(tokens, i)
        : undefined;
  return read && grouped(tokens, read);
}

/** "half dozen", "one and a half dozen", "two and a half thousand": what stands behind multiplies all of it. */
function grouped(tokens: readonly Token[], read: NumberRead): NumberRead {
  const behind = word(tokens[read.next]) ?? "";
  const group = behind === "score" ? undefined : groupWords[behind];
  const times = group ?? (Number.isInteger(read.value) ? undefined : magnitudes[behind]);
  if (times) return { value: read.value * times, next: read.next + 1, spelt: true };
  // "a dozen and a half"
  const dozen = groupWords[word(tokens[read.next - 1]) ?? ""];
  const half = dozen ? andPart(tokens, read.next) : undefined;
  return dozen && half?.value === 0.5
    ? { value: read.value + dozen / 2, next: half.next, spelt: true }
    : read;
}

function readNegative(tokens: readonly Token[], i: number): NumberRead | undefined {
  const token = tokens[i];
  const minusWord = word(token) === "minus" || word(token) === "negative";
  const before = tokens[i - 1];
  const minusSign =
    sign(token, "-") && token?.gap === true && tokens[i + 1]?.gap === false && before?.kind !== "number";
  const next = tokens[i + 1];
  if ((!minusWord && !minusSign) || sign(next, "-") || ["minus", "negative"].includes(word(next) ?? ""))
    return undefined;
  const read = readNumber(tokens, i + 1);
  return read && !read.negative ? { ...read, value: -read.value, negative: true } : undefined;
}

function readDigits(tokens: readonly Token[], i: number): NumberRead {
  const value = tokens[i]?.value ?? Number.NaN;
  const over = fractionAt(tokens, i);
  if (over) return { value: over[0] / over[1], next: i + 3, fraction: over };
  const mixed = fractionAt(tokens, i + 1);
  if (mixed && mixed[0] < mixed[1] && Number.isInteger(value) && tokens[i + 1]?.gap)
    return { value: value + mixed[0] / mixed[1], next: i + 4 };
  const behindAnd = word(tokens[i + 1]) === "and" ? fractionAt(tokens, i + 2) : undefined;
  // "15% of 230 and 3/4 of 260", "5% of 640 and 640 / 16": another sum
  const isOwn = word(tokens[i + 5]) === "of" && tokens[i + 6]?.kind === "number";
  // "baked 12 min and 7/10" is a mark, and no part of a minute
  if (behindAnd && behindAnd[0] < behindAnd[1] && !marksOutOf.has(behindAnd[1]) && !isOwn)
    return { value: value + behindAnd[0] / behindAnd[1], next: i + 5 };
  const half = andPart(tokens, i + 1);
  if (half) return { value: value + half.value, next: half.next };
  const magnitude = magnitudes[word(tokens[i + 1]) ?? ""];
  // "4 hundred twenty", "1 hundred and five g"; "1.5 thousand" has nothing behind it
  if (magnitude)
    return Number.isInteger(value) && value < 100
      ? continueWords(tokens, i + 2, value * magnitude)
      : { value: value * magnitude, next: i + 2 };
  const group = groupWords[word(tokens[i + 1]) ?? ""];
  if (group) return { value: value * group, next: i + 2 };
  return { value, next: i + 1 };
}

/** What a mark may be out of: "and 7/10" is no part of what stands before it. */
export const marksOutOf: ReadonlySet<number> = new Set([5, 10, 20, 100]);

/** "3/4" at i, as its two numbers; the parts are whole and the lower one isn't zero. */
function fractionAt(tokens: readonly Token[], i: number): readonly [number, number] | undefined {
  const [up, slash, down] = [tokens[i], tokens[i + 1], tokens[i + 2]];
  if (up?.kind !== "number" || !sign(slash, "/") || down?.kind !== "number") return undefined;
  const pair = [up.value ?? 0, down.value ?? 0] as const;
  // "50/50" is two halves, not one
  return Number.isInteger(pair[0]) &&
    Number.isInteger(pair[1]) &&
    pair[1] > 0 &&
    pair[1] <= 100 &&
    pair[0] !== pair[1]
    ? pair
    : undefined;
}

/** "and a half", "and half", "and three quarters". */
function andPart(tokens: readonly Token[], i: number): { value: number; next: number } | undefined {
  if (word(tokens[i]) !== "and" && word(tokens[i]) !== "n") return undefined;
  const at = word(tokens[i + 1]) === "a" || word(tokens[i + 1]) === "one" ? i + 2 : i + 1;
  const part = partWords[word(tokens[at]) ?? ""];
  // "a third of 435 and half of 120": another sum
  if (word(tokens[at + 1]) === "of" && tokens[at + 2]?.kind === "number") return undefined;
  if (part && at > i) return { value: 1 / part, next: at + 1 };
  const times = smallNumbers[word(tokens[i + 1]) ?? ""];
  const of = partWords[word(tokens[i + 2]) ?? ""];
  return times && of && of > 2 ? { value: times / of, next: i + 3 } : undefined;
}

/** What follows "point": "five", "two five", or digits. */
function readDecimals(tokens: readonly Token[], i: number): { digits: string; next: number } | undefined {
  const number = tokens[i]?.kind === "number" ? tokens[i]?.text : undefined;
  if (number !== undefined) return /^\d+$/.test(number) ? { digits: number, next: i + 1 } : undefined;
  let digits = "";
  let next = i;
  for (let digit = smallNumbers[word(tokens[next]) ?? ""]; digit !== undefined && digit < 10; ) {
    digits += digit;
    next += 1;
    digit = smallNumbers[word(tokens[next]) ?? ""];
  }
  return digits ? { digits, next } : undefined;
}

function readWords(tokens: readonly Token[], i: number): NumberRead | undefined {
  const first = word(tokens[i]) ?? "";
  // "point five percent"; "at this point five of them" is none
  if (
    first === "point" &&
    !["this", "that", "some", "the", "a", "which", "what"].includes(word(tokens[i - 1]) ?? "")
  ) {
    const decimals = readDecimals(tokens, i + 1);
    if (decimals) return { value: Number(`0.${decimals.digits}`), next: decimals.next, spelt: true };
  }
  const part = partWords[first];
  if (part && !isOrdinalUse(tokens, i)) {
    // "half a dozen"
    if (word(tokens[i + 1]) === "a" && groupWords[word(tokens[i + 2]) ?? ""])
      return { value: (groupWords[word(tokens[i + 2]) ?? ""] ?? 0) / part, next: i + 3 };
    return { value: 1 / part, next: i + 1, fraction: [1, part], spelt: true };
  }
  if (first === "a" || first === "an") {
    const then = word(tokens[i + 1]) ?? "";
    if (groupWords[then]) return { value: groupWords[then] ?? 0, next: i + 2 };
    if (then === "couple") return readWords(tokens, i + 1);
    if (magnitudes[then]) return continueWords(tokens, i + 2, magnitudes[then] ?? 0);
    if (partWords[then] && !isOrdinalUse(tokens, i + 1))
      return {
        value: 1 / (partWords[then] ?? 1),
        next: i + 2,
        fraction: [1, partWords[then] ?? 1],
        spelt: true,
      };
    return undefined;
  }
  if (first === "couple") {
    const at = word(tokens[i + 1]) === "of" ? i + 2 : i + 1;
    const group = groupWords[word(tokens[at]) ?? ""];
    return group ? { value: 2 * group, next: at + 1, spelt: true } : undefined;
  }
  if (magnitudes[first]) return continueWords(tokens, i + 1, magnitudes[first] ?? 0);
  // "a few dozen" is no number
  if (groupWords[first] && first !== "score" && !["few", "several"].includes(word(tokens[i - 1]) ?? ""))
    return { value: groupWords[first] ?? 0, next: i + 1 };
  const below = readBelowHundred(tokens, i);
  if (!below) return undefined;
  const then = word(tokens[below.next]) ?? "";
  const of = partWords[then];
  // "two thirds", "three quarters", "one third"
  if (of && below.value < of * 10 && below.value < 20)
    return { value: below.value / of, next: below.next + 1, fraction: [below.value, of], spelt: true };
  if (groupWords[then])
    return { value: below.value * (groupWords[then] ?? 1), next: below.next + 1, spelt: true };
  if (magnitudes[then]) return continueWords(tokens, below.next + 1, below.value * (magnitudes[then] ?? 1));
  const decimals = then === "point" ? readDecimals(tokens, below.next + 1) : undefined;
  if (decimals)
    return { value: Number(`${below.value}.${decimals.digits}`), next: decimals.next, spelt: true };
  const half = andPart(tokens, below.next);
  if (half) return { value: below.value + half.value, next: half.next, spelt: true };
  // Dictation drops the hundred: "two thirty grams" is 230, "three twenty five" 325.
  // "one oh five" is 105, and an hour behind "at"
  const isOh =
    ["oh", "o"].includes(then) && !["at", "by", "till", "until"].includes(word(tokens[i - 1]) ?? "");
  const last = isOh ? (smallNumbers[word(tokens[below.next + 1]) ?? ""] ?? 0) : 0;
  if (below.value < 10 && last > 0 && last < 10 && !isTimeWord(tokens, below.next + 2))
    return { value: below.value * 100 + last, next: below.next + 2, spelt: true };
  const rest = below.value < 10 ? readBelowHundred(tokens, below.next, true) : undefined;
  if (rest && rest.value >= 10 && !isTimeWord(tokens, rest.next))
    return { value: below.value * 100 + rest.value, next: rest.next, spelt: true };
  return { value: below.value, next: below.next, spelt: true };
}

/** What follows a hundred or a thousand: "two hundred and thirty five". */
function continueWords(tokens: readonly Token[], i: number, sum: number): NumberRead {
  const at = word(tokens[i]) === "and" ? i + 1 : i;
  const digits = tokens[at]?.kind === "number" && at > i ? undefined : readBelowHundred(tokens, at);
  if (digits) {
    const then = magnitudes[word(tokens[digits.next]) ?? ""];
    if (then && then < sum) return continueWords(tokens, digits.next + 1, sum + digits.value * then);
    return { value: sum + digits.value, next: digits.next, spelt: true };
  }
  const half = andPart(tokens, i);
  if (half) return { value: sum + half.value * sum, next: half.next, spelt: true };
  // "4 hundred 20 g", "2 hundred and 5 grams": digits belong to it where they are grams as well
  const { kind, value = 0 } = tokens[at] ?? {};
  const isGrams = /^(?:g|gr|gm|gms|gram|grams|grammes?)$/.test(word(tokens[at + 1]) ?? "");
  if (kind === "number" && isGrams && Number.isInteger(value) && value > 0 && value < Math.min(sum, 100))
    return { value: sum + value, next: at + 1, spelt: true };
  return { value: sum, next: i, spelt: true };
}

/** @param dictated the hundred before it was left out: in "two sixty two hundred sixty" another number follows */
function readBelowHundred(
  tokens: readonly Token[],
  i: number,
  dictated = false,
): { value: number; next: number } | undefined {
  const first = word(tokens[i]) ?? "";
  const ten = tens[first];
  if (ten !== undefined) {
    const at = sign(tokens[i + 1], "-") ? i + 2 : i + 1;
    const one = smallNumbers[word(tokens[at]) ?? ""];
    const isNext = dictated && Object.hasOwn(magnitudes, word(tokens[at + 1]) ?? "");
    return one && one < 10 && !isNext ? { value: ten + one, next: at + 1 } : { value: ten, next: i + 1 };
  }
  const small = smallNumbers[first] ?? glued(first);
  return small === undefined ? undefined : { value: small, next: i + 1 };
}

/** "twentyfour": the space forgotten. */
function glued(first: string): number | undefined {
  const ten = Object.keys(tens).find((each) => first.startsWith(each) && first.length > each.length);
  const one = ten === undefined ? undefined : smallNumbers[first.slice(ten.length)];
  return ten !== undefined && one && one < 10 ? (tens[ten] ?? 0) + one : undefined;
}

const timeWords = new Set(["min", "mins", "minute", "minutes", "pm", "am", "oclock", "sec", "seconds"]);
const isTimeWord = (tokens: readonly Token[], i: number) => timeWords.has(word(tokens[i]) ?? "");

/** "the third batch", "a second one": an ordinal, not a part. */
function isOrdinalUse(tokens: readonly Token[], i: number): boolean {
  const text = word(tokens[i]) ?? "";
  if (!["third", "fourth", "fifth", "sixth", "eighth", "tenth"].includes(text)) return false;
  const then = word(tokens[i + 1]) ?? "";
  return word(tokens[i - 1]) === "the" && !["of", "pink", "white", "plain"].includes(then) && then !== "";
}
