/** A text with its typos mended, word by word from the left, each by what stands beside it. */
import { shortSlips } from "../../../data/words/everyday.ts";
import type { Mended } from "../../tools/contract/index.ts";
import { spoken } from "./hearing.ts";
import type { Mender } from "./mend.ts";
import type { Neighbours } from "./readings.ts";
import { stands } from "./stands.ts";
import { type Token, tokenise } from "./tokens.ts";

/** "maca roons", "but ter": one word of the trade in two pieces, one of which is none by itself. */
function tornFrom(one: Token, two: Token | undefined, { knows, joins, counts }: Mender): Token | undefined {
  // "w eight hundred g": a number, and no weight
  if (two && counts(two.text)) return undefined;
  if (two?.kind !== "word" || !two.gap || (knows(one.text) && knows(two.text))) return undefined;
  const text = joins(one.text, two.text);
  return text === undefined ? undefined : { ...one, text, at: [one.at[0], two.at[1]] };
}

/** A mark inside: "how'd", "yesterdya's". */
const isMarked = ({ text, at }: Token): boolean => at[1] - at[0] > text.length;

const unitFirst = /^(g|gr|kg|ml|oz|lb|tsp|tbsp|cm|mm|mins?)(?!s$)([a-z]{3,})$/;

/** Of a word with a mark in it only what stands before an "s" is looked at: "b'cream", "how'd" are meant so. */
function mendToken(token: Token, neighbours: Neighbours, { mend, knows }: Mender): string[] | undefined {
  const [, unit, rest = ""] = (neighbours.glued && unitFirst.exec(token.text)) || [];
  // "640gbatr": the unit stands before the word
  if (unit && !knows(token.text))
    return [unit, ...(mend(rest, { ...neighbours, glued: false, before: unit }) ?? [rest])];
  if (!isMarked(token)) return mend(token.text, neighbours);
  const owner = token.text.slice(0, -1);
  if (!token.text.endsWith("s") || knows(owner)) return undefined;
  const [meant, ...more] = mend(owner, { ...neighbours, next: undefined }) ?? [];
  return meant !== undefined && more.length === 0 ? [`${meant}s`] : undefined;
}

const none: ReadonlySet<string> = new Set();

/** What a token says to the word beside it; nothing where it isn't known itself. */
const beside = (token: Token | undefined, end: string, { knows, counts }: Mender): string | undefined =>
  !token
    ? end
    : token.kind === "word" && counts(token.text)
      ? "#"
      : token.kind !== "word" || knows(token.text)
        ? spoken(token)
        : undefined;

/** What was mended; it counts where a figure hangs on it, or the word was right English as it stood. */
const toldOf = (said: string, words: readonly string[], { measures, knows }: Mender): Mended => ({
  said,
  read: words.join(" "),
  ...(words.some(measures) || (knows(said) && !Object.hasOwn(shortSlips, said)) ? { counts: true } : {}),
});

/** "fofty five": a number for sure, and which one can't be told. */
function doubtOf(said: string, beside: Neighbours, { knows, numbers }: Mender): Mended | undefined {
  const either = knows(said) || beside.glued ? [] : numbers(said, beside);
  return either.length > 0 ? { said, read: said, either } : undefined;
}

/**
 * The tokens with their words mended; a forgotten space makes two tokens on the same place.
 * @param own words of the names that the baker gave: right as they are, and what a slip may have been meant for
 */
export function mendAll(
  tokens: readonly Token[],
  mender: Mender,
  own: ReadonlySet<string> = none,
): { tokens: Token[]; mended: Mended[] } {
  const mended: Mended[] = [];
  const out: Token[] = [];
  let joined = false;
  for (const [at, token] of tokens.entries()) {
    // the second piece of a word that was torn apart
    if (joined) {
      joined = false;
      continue;
    }
    const before = out.at(-1);
    if (token.kind !== "word" || stands(tokens, at, out, own)) {
      out.push(token);
      continue;
    }
    const torn = tornFrom(token, tokens[at + 1], mender);
    if (torn) {
      mended.push({ said: `${token.text} ${tokens[at + 1]?.text}`, read: torn.text });
      out.push(torn);
      joined = true;
      continue;
    }
    const neighbours = {
      before: beside(before, "^", mender),
      next: beside(tokens[at + 1], "$", mender),
      glued: before?.kind === "number" && !token.gap,
      own,
    };
    const words = mendToken(token, neighbours, mender);
    const told = words ? toldOf(token.text, words, mender) : doubtOf(token.text, neighbours, mender);
    if (told) mended.push(told);
    const read = words ?? [token.text];
    out.push(...read.map((text, place) => ({ ...token, text, gap: place > 0 || token.gap })));
  }
  return { tokens: out, mended };
}

/** A text with its typos mended, all else as it was: what phrases and the calculators' own patterns are looked for in. */
export function mendText(
  text: string,
  mender: Mender,
  own: ReadonlySet<string> = none,
): { text: string; mended: Mended[] } {
  const { tokens, mended } = mendAll(tokenise(text), mender, own);
  if (mended.every(({ either }) => either)) return { text, mended };
  let right = "";
  let end = 0;
  for (const { text: word, at, kind } of tokens) {
    // the second of two words that were typed as one
    const isSecond = at[0] < end;
    const typed = text.slice(...at);
    const isAsTyped = kind !== "word" || typed.replaceAll("'", "") === word;
    right += isSecond ? ` ${word}` : text.slice(end, at[0]) + (isAsTyped ? typed : word);
    end = at[1];
  }
  return { text: right + text.slice(end), mended };
}
