/** What a weighed line is called in full: "60 g peanut buttercream" is no buttercream, "walnut cream" no walnuts. */
import { plainQualifiers } from "../../../data/words/plain-qualifiers.ts";
import type { Reading, Span, Thing } from "../contract/index.ts";
import { nameOf } from "../lib/lines.ts";
import { partsAt, rowNamed, saysMore } from "./composite.ts";
import { isRefusedAt } from "./refused-said.ts";

/** A line of the sentence: where its weight stands, and what it was taken to be of. */
interface Said {
  name: string;
  at: Span;
  thing?: Thing | undefined;
}

const joints = /[,;:+&.]|\band\b|\bplus\b/g;
/** "100 g butter for the buttercream": what it goes into is no part of it. */
const goesInto = /\b(?:for|in|into|on|onto|to|instead|but|not|no|without)\b/;

const isPart = (each: Thing): boolean =>
  Boolean(each.ingredient || each.chocolate || each.taste || each.dose || each.base || each.count);

/** Where the joints stand, in characters of the text, but none inside of a thing: "half and half". */
const cutsOf = ({ text, things }: Reading): Span[] =>
  [...text.matchAll(joints)]
    .map((cut): Span => [cut.index, cut.index + cut[0].length])
    .filter(([from]) => !things.some(({ at }) => at[0] <= from && from < at[1]));

/** The text in which a line's name stands: from its weight to the next joint or weight, or the same backward. */
function around(reading: Reading, { at, thing }: Said): Span {
  const others = reading.amounts.map((each) => each.at);
  const cuts = [...cutsOf(reading), ...others];
  if (thing && thing.at[1] <= at[0])
    return [Math.max(0, ...cuts.map((cut) => cut[1]).filter((end) => end <= thing.at[0])), at[0]];
  const ends = cuts.map((cut) => cut[0]).filter((start) => start >= at[1]);
  return [at[1], Math.min(reading.text.length, ...ends)];
}

const talk = /\b(?:please|pls|each|in all|total|altogether)\b/g;

/** Words of a piece that stand before its weight and lead to the name: "label for butter 60 g". */
const leads = /^.*\b(?:labels?|for|of|with|from|contains?|its|is|the|a|my)\b/;

/**
 * The name that was said, where it says more than the line's own: several parts, a part of the allergens' tables that
 * the lexicon hasn't got ("soy milk"), or a word in front of which nothing is known ("zorp butter").
 */
export function wholeName(reading: Reading, line: Said): string {
  const { text, things } = reading;
  const [from, end] = around(reading, line);
  const isBehind = from >= line.at[1];
  const start = isBehind ? from : from + (leads.exec(text.slice(from, end))?.[0].length ?? 0);
  const stop = start + (goesInto.exec(text.slice(start, end))?.index ?? end - start);
  const own = things.filter((each) => isPart(each) && each.at[0] >= start && each.at[1] <= stop);
  const parts = partsAt(text.slice(start, stop))
    .map((part) => ({ ...part, at: [part.at[0] + start, part.at[1] + start] as Span }))
    .filter((part) => !isRefusedAt(text, part.at));
  const known = [...own, ...parts];
  const odd = oddWords(reading, [start, stop], known, isBehind);
  const isMore =
    new Set(own.map(nameOf)).size > 1 ||
    new Set(parts.map((part) => part.row)).size > 1 ||
    parts.some((part) => !own.some(({ at }) => at[0] <= part.at[0] && part.at[1] <= at[1])) ||
    parts.some(({ at }) => saysMore(text.slice(...at), line.name)) ||
    odd.length > 0;
  if (!isMore || known.length === 0 || !line.thing) return line.name;
  const spans = [...known, ...odd].map(({ at }) => at);
  const name = text
    .slice(Math.min(...spans.map((at) => at[0])), Math.max(...spans.map((at) => at[1])))
    .replace(talk, "")
    .replace(/\s+/g, " ")
    .trim();
  return rowNamed(name) !== undefined && rowNamed(name) === rowNamed(line.name) ? line.name : name;
}

/** Words of a name that no table knows: before or between its parts, or behind them where nobody knows them. */
function oddWords(
  { text, unknown, things, mended }: Reading,
  [start, end]: Span,
  known: readonly { at: Span }[],
  isBehind: boolean,
): { at: Span }[] {
  const last = Math.max(...known.map(({ at }) => at[1]));
  return [...text.slice(start, end).matchAll(/[\p{L}]+/gu)]
    .map((hit) => ({ word: hit[0], at: [hit.index + start, hit.index + start + hit[0].length] as Span }))
    .filter(({ word, at }) => {
      if ([...known, ...things].some((each) => each.at[0] <= at[0] && at[1] <= each.at[1])) return false;
      if (word.length < 3 || plainQualifiers.has(word)) return false;
      const isStrange = unknown.includes(word) || mended.some((each) => each.said === word);
      return isStrange || (isBehind && at[1] <= last);
    });
}

/** Foods that were named where no line weighs them: "label for pistachio macarons: ...". None of them may be dropped. */
export function besideLines(
  text: string,
  foods: readonly Thing[],
  lines: readonly string[],
  isLeft: (thing: Thing) => boolean,
): string[] {
  const inLines = (each: Thing) =>
    lines.some((name) => name === nameOf(each) || ` ${name} `.includes(` ${each.text} `));
  const named = foods.filter(
    (each) =>
      (each.ingredient || each.chocolate || each.taste || (each.base && each.base !== "filling")) &&
      each.id !== "dates" &&
      !isLeft(each) &&
      !inLines(each) &&
      !isRefusedAt(text, each.at),
  );
  return [...new Set(named.map((each) => each.text))];
}
