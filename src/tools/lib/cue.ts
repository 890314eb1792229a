/**
 * Cues are written as short patterns over the masked sentence.
 *   {dose}            any thing with that facet      {base=ganache}   a thing with that very facet
 *   {weight}          an amount of that kind         ..               up to ten tokens between
 * Everything else in a pattern is a plain regular expression.
 *
 * There are thousands of them, and compiling a regular expression costs more than anything else in a turn: a cue is
 * only looked at when a word is there that it can't do without, and most are walked token by token (cue-walk.ts).
 */
import type { Cue } from "../contract/index.ts";
import { needed } from "./cue-needs.ts";
import { type Walk, walkOf, walks } from "./cue-walk.ts";

const tag = (name: string) => {
  const [facet, value] = name.replaceAll(" ", "_").split("=");
  return `\\S*<(?:[^>\\s]*,)?${facet}${value === undefined ? "" : `=(?:${value})`}(?:[=,][^>\\s]*)?>`;
};

/** Compiles one pattern of the little language above. */
export function sign(pattern: string): RegExp {
  const source = pattern
    .trimEnd()
    .replace(/\{([a-z][^}]*)\}/g, (_, name: string) => tag(name))
    .replace(/ \.\. /g, " (?:\\S+ ){0,10}");
  return new RegExp(`(?:^| )(?:${source})(?= |$)`);
}

/** A list of cues of one weight each. */
export function cues(...list: readonly (readonly [weight: number, ...patterns: string[]])[]): Cue[] {
  return list.flatMap(([weight, ...patterns]) => patterns.map((pattern) => new Written(pattern, weight)));
}

/** The words of all cues, each with the cues that can't match without one of their words. */
interface Index {
  words: readonly string[];
  of: readonly string[];
  cues: readonly Cue[];
}

let index: Index | undefined;
/** Cues that have no chance in the sentence looked at last are passed over. */
let looked: { mask: string; tokens: string[]; hot: ReadonlySet<Cue> | undefined } | undefined;

function look(mask: string): NonNullable<typeof looked> {
  if (looked?.mask === mask) return looked;
  looked = { mask, tokens: mask.split(" "), hot: index && hotIn(mask, index) };
  return looked;
}

function hotIn(mask: string, { words, of, cues }: Index): Set<Cue> {
  const hot = new Set<Cue>();
  words.forEach((word, at) => {
    if (word !== "" && !mask.includes(word)) return;
    for (const place of (of[at] ?? "").split(" ")) hot.add(cues[Number(place)] as Cue);
  });
  return hot;
}

class Written implements Cue {
  private way: Way | undefined;
  private compiled: RegExp | undefined;
  /** Its way as the build wrote it down. */
  written: string | undefined;

  constructor(
    readonly pattern: string,
    readonly weight: number,
  ) {}

  matches(mask: string): boolean {
    const { tokens, hot } = look(mask);
    if (hot && this.written !== undefined && !hot.has(this)) return false;
    this.way ??= this.written ? (JSON.parse(this.written) as Way) : wayOf(this.pattern);
    if ("nodes" in this.way) return walks(this.way, tokens);
    if (!this.way.needs.every((any) => any.some((word) => mask.includes(word)))) return false;
    this.compiled ??= sign(this.pattern);
    return this.compiled.test(mask);
  }
}

/** How a cue is matched: walked, or by a regular expression where its words are there. */
type Way = Walk | { needs: string[][] };

const wayOf = (pattern: string): Way => walkOf(pattern) ?? { needs: needed(pattern) };

/**
 * The cues worked out beforehand, which costs more than a whole turn: how many there are, a line for each with its way,
 * then a line a word: the word, and the places of the cues that can't match without it or another of theirs. The first
 * of these has no word, for cues that need none.
 */
export function indexOf(cues: readonly Cue[]): string {
  const places = new Map<string, number[]>([["", []]]);
  cues.forEach(({ pattern }, at) => {
    const best = needed(pattern).sort((a, b) => rarity(b) - rarity(a))[0] ?? [""];
    for (const word of new Set(best)) places.set(word, [...(places.get(word) ?? []), at]);
  });
  const ways = cues.map(({ pattern }) => JSON.stringify(wayOf(pattern)));
  return [cues.length, ...ways, ...[...places].map(([word, all]) => `${word} ${all.join(" ")}`)].join("\n");
}

/** Long words are seldom in a sentence by chance; one short one among them spoils it. */
const rarity = (any: readonly string[]) => Math.min(...any.map((word) => word.length)) - any.length / 8;

/** Hands cues what `indexOf` worked out. A table of another number of cues is from another build and is left alone. */
export function prime(cues: readonly Cue[], table: string): void {
  const [count, ...rest] = table.split("\n");
  if (Number(count) !== cues.length) return;
  const lines = rest.slice(cues.length);
  const ends = lines.map((line) => line.indexOf(" "));
  index = {
    cues,
    words: lines.map((line, at) => line.slice(0, ends[at])),
    of: lines.map((line, at) => line.slice((ends[at] ?? 0) + 1)),
  };
  looked = undefined;
  cues.forEach((cue, at) => {
    if (cue instanceof Written) cue.written = rest[at];
  });
}
