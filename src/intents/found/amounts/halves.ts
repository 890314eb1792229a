/** Halves, and one of a unit that is said with an article. */

import type { Token } from "../../text/tokens.ts";
import { marksOutOf, readNumber } from "../numbers.ts";
import { type AmountRead, made, text } from "./parts.ts";
import { readRange } from "./range.ts";
import { addSmaller } from "./smaller.ts";
import { readUnit } from "./unit.ts";

/** "half an hour", "three quarters of an hour", "half a kilo", "half a percent", "half a stick". */
export function readHalfOf(tokens: readonly Token[], i: number): AmountRead | undefined {
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
export function readArticle(tokens: readonly Token[], i: number): AmountRead | undefined {
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
  const filled = ["whole", "full", "level", "heaped", "rounded", "single", "entire", "complete"].includes(
    text(tokens[i + 1]),
  )
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
export function halfBehind(tokens: readonly Token[], i: number): { value: number; next: number } | undefined {
  if (text(tokens[i]) !== "and") return undefined;
  const read = readNumber(tokens, i + 1);
  // "12 min and 7/10" is a mark; nobody measures in tenths
  if (!read?.fraction || read.value >= 1 || marksOutOf.has(read.fraction[1])) return undefined;
  // "a cup and half a stick": the half belongs to what comes behind it
  return readUnit(tokens, read.next, 1) || ["a", "an"].includes(text(tokens[read.next])) ? undefined : read;
}
