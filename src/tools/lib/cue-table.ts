/**
 * All cues of all calculators in one table, so that a sentence is compared with the few that have a chance in it. There
 * are well over a thousand: compiling a regular expression for each would cost more than everything else in a turn, so
 * a cue is only looked at when every word is there that it can't do without, and most are then walked token by token
 * (cue-walk.ts). The table is a text, since the build keeps it: working it out takes longer than a whole question.
 *
 *   line 1   how many cues each calculator has       line 2   which cues to look at always
 *   line 3   how many words cues can't do without    then a map of them: a word's number, and which cues it is in
 *   then a line a cue, tabs between: its weight, the words it needs, then its walk or else its regular expression; the
 *   build adds to the latter how it begins, and lists of strings of which the sentence, spaced out, holds one each
 */
import type { Tool } from "../contract/index.ts";
import { sign } from "./cue.ts";
import { needed, rarest } from "./cue-needs.ts";
import { tokensOf, type Walk, walkOf, walks } from "./cue-walk.ts";
import { type KeptMap, keptMap, readMap } from "./kept-map.ts";

type Cued = Pick<Tool, "cues">;

/** The table of these calculators, as a text. */
export function cueTable(tools: readonly Cued[]): string {
  const ids = new Map<string, number>();
  const idOf = (word: string) => {
    if (!ids.has(word)) ids.set(word, ids.size);
    return ids.get(word) as number;
  };
  const always: number[] = [];
  const when: number[][] = [];
  const lines = tools
    .flatMap(({ cues }) => cues)
    .map(({ pattern, weight }, place) => {
      const needs = needed(pattern).map((any) => [...new Set(any)]);
      if (needs.length === 0) always.push(place);
      for (const word of rarest(needs)) {
        const id = idOf(word);
        when[id] = [...(when[id] ?? []), place];
      }
      const walk = walkOf(pattern);
      const ways = needs.map((any) => any.map(idOf).join("|")).join(" ");
      return [weight, ways, walk ? packed(JSON.stringify(walk)) : sign(pattern).source].join("\t");
    });
  const words = new Map([...ids].map(([word, id]) => [word, [id, ...(when[id] ?? [])].join(" ")]));
  const longest = Math.max(0, ...[...ids.keys()].map(({ length }) => length));
  const head = [
    tools.map(({ cues }) => cues.length).join(" "),
    always.join(" "),
    `${ids.size} ${longest}`,
    keptMap(words),
  ].join("\n");
  return head + lines.join("\n");
}

/** A cue that matches: which of its calculator's cues it is. */
export interface Hit {
  at: number;
  weight: number;
}

/** The cues that match a masked sentence, a list for each calculator, in the calculators' order. */
export type Hits = (mask: string) => readonly (readonly Hit[])[];

/** A cue as its line tells it. */
interface Row extends Hit {
  /** Which calculator's it is. */
  tool: number;
  /** Of each of these lists one word has to be there. */
  needs: number[][];
  /** As it is written, until it is looked at. */
  written: string;
  /** What tells sooner that it can't match: how it begins, and lists of strings. */
  head: string;
  lists: string[][];
  /** The head, once it is asked. */
  begins?: RegExp;
  way?: Walk | RegExp;
}

/** @param table as `cueTable` wrote it */
export function hitsIn(table: string): Hits {
  const [counts = "", always = "", sizes = ""] = table.split("\n", 3);
  const [size = 0, longest = 0] = sizes.split(" ").map(Number);
  const words = readMap(table, counts.length + always.length + sizes.length + 3);
  let lines: number[] | undefined;
  const starts = () => {
    lines ??= startsIn(table, words.end);
    return lines;
  };
  const ends = endsOf(counts.split(" ").map(Number));
  const rows: Row[] = [];
  const lineAt = (place: number) =>
    table.slice(starts()[place], (starts()[place + 1] ?? table.length + 1) - 1);
  const rowOf = (place: number) => {
    const tool = ends.findIndex((end) => place < end);
    rows[place] ??= readRow(lineAt(place), tool, place - (ends[tool - 1] ?? 0));
    return rows[place];
  };
  const there = marks(size);
  const looked = marks(ends.at(-1) ?? 0);
  const found = (mask: string): Hit[][] => {
    const hits: Hit[][] = ends.map(() => []);
    const tokens = tokensOf(mask);
    there.clear();
    looked.clear();
    const ids = wordsIn(mask, words, longest);
    for (const [id = 0] of ids) there.add(id);
    const look = (place: number) => {
      if (!looked.add(place)) return;
      const row = rowOf(place);
      if (!hasAll(row.needs, there) || !(row.way || mayMatch(row, mask))) return;
      const way = wayOf(row);
      if (way instanceof RegExp ? way.test(mask) : walks(way, tokens)) hits[row.tool]?.push(row);
    };
    for (const place of numbersIn(always)) look(place);
    for (const [, ...places] of ids) for (const place of places) look(place);
    for (const each of hits) if (each.length > 1) each.sort((a, b) => a.at - b.at);
    return hits;
  };
  const last = new Map<string, Hit[][]>();
  return (mask) => {
    const known = last.get(mask);
    if (known) return known;
    if (last.size >= kept) last.clear();
    const hits = found(mask);
    last.set(mask, hits);
    return hits;
  };
}

/** Where each line begins, from a place on. The lines themselves are cut when they are looked at. */
function startsIn(text: string, from: number): number[] {
  const starts: number[] = [];
  for (let at = from; at > 0 && at < text.length; at = text.indexOf("\n", at) + 1) starts.push(at);
  return starts;
}

/** So many masks are remembered: one turn asks again and again for its pieces. */
const kept = 100;

/** Which numbers were added since it was cleared, for many rounds over the same few numbers. */
function marks(size: number) {
  const rounds = new Uint32Array(size);
  let round = 0;
  return {
    clear() {
      round += 1;
    },
    /** @returns whether it is new */
    add(at: number): boolean {
      if (rounds[at] === round) return false;
      rounds[at] = round;
      return true;
    },
    has: (at: number) => rounds[at] === round,
  };
}

/** Of each of these lists one is there. */
function hasAll(needs: readonly (readonly number[])[], there: { has(at: number): boolean }): boolean {
  for (const any of needs) {
    let has = false;
    for (const id of any)
      if (there.has(id)) {
        has = true;
        break;
      }
    if (!has) return false;
  }
  return true;
}

/** What is kept of the words that something in the mask begins with, and of those that it is: a number, and places of cues. */
function wordsIn(mask: string, words: KeptMap, longest: number): number[][] {
  const there = new Set<string>();
  for (const piece of new Set(mask.split(/[ <,>]/)))
    for (const kept of words.startingAt(`${piece} `, 0, longest)) there.add(kept);
  return [...there].map(numbersIn);
}

const numbersIn = (list: string): number[] => (list === "" ? [] : list.split(" ").map(Number));

/** Behind which place each calculator's cues end. */
function endsOf(counts: readonly number[]): number[] {
  let sum = 0;
  return counts.map((count) => {
    sum += count;
    return sum;
  });
}

/** Compiling a long regular expression takes longer than all that is looked at here. */
function mayMatch(row: Row, mask: string): boolean {
  const spaced = ` ${mask} `;
  if (!row.lists.every((list) => list.some((each) => spaced.includes(each)))) return false;
  if (row.head === "") return true;
  row.begins ??= new RegExp(row.head);
  return row.begins.test(mask);
}

function readRow(line: string, tool: number, at: number): Row {
  const [weight, needs = "", written = "", head = "", ...lists] = line.split("\t");
  return {
    tool,
    at,
    weight: Number(weight),
    needs: needs === "" ? [] : needs.split(" ").map((any) => any.split("|").map(Number)),
    written,
    head,
    lists: lists.map((list) => list.split("|")),
  };
}

function wayOf(row: Row): Walk | RegExp {
  row.way ??= row.written.startsWith(signs[0])
    ? (JSON.parse(unpacked(row.written)) as Walk)
    : new RegExp(row.written);
  return row.way;
}

/**
 * What stands in nearly every walk, a letter each: a text of over 256 kB costs V8 milliseconds at every start, and the
 * table is read whole while hardly a line of it is looked at.
 */
const common = ['{"row":', '{"f":"', '{"any":[[', '"loose":1', '"many":1', '"is":['] as const;
const signs = ["\u0001", "\u0002", "\u0003", "\u0004", "\u0005", "\u0006"] as const;

const packed = (walk: string): string =>
  common.reduce((text, each, at) => text.replaceAll(each, signs[at] ?? each), walk);

const unpacked = (text: string): string =>
  signs.reduce((walk, mark, at) => walk.replaceAll(mark, common[at] ?? mark), text);
