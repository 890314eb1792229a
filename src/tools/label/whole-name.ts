/** What a weighed line is called in full: "60 g peanut buttercream" is no buttercream, "walnut cream" no walnuts. */
import type { Reading, Span, Thing } from "../contract/index.ts";
import { nameOf } from "../lib/lines.ts";
import { partsWithin } from "./composite.ts";

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

/** The name that was said, where it has several parts; else the line's own. */
export function wholeName(reading: Reading, line: Said): string {
  const [start, end] = around(reading, line);
  const stop = goesInto.exec(reading.text.slice(start, end))?.index ?? end - start;
  const parts = reading.things.filter(
    (each) => isPart(each) && each.at[0] >= start && each.at[1] <= start + stop,
  );
  const first = parts[0];
  const last = parts.at(-1);
  if (!first || !last) return line.name;
  const clean = (text: string) =>
    text
      .replace(/\b(?:please|pls|each|in all|total|altogether)\b/g, "")
      .replace(/\s+/g, " ")
      .trim();
  // "sesame brittle": the second word is no thing by itself, and brings something all the same
  const said = clean(reading.text.slice(first.at[0], start + stop));
  if (partsWithin(said).length > Math.max(partsWithin(line.name).length, 1)) return said;
  if (new Set(parts.map(nameOf)).size < 2) return line.name;
  return clean(reading.text.slice(first.at[0], last.at[1]));
}

const refused =
  /\b(?:no|not|without|free of|free from|isnt|minus|instead of|rather than|never) (?:any |the |a )?$/;

/** Foods that were named where no line weighs them: "label for pistachio macarons: ...". None of them may be dropped. */
export function besideLines(
  { text, things }: Reading,
  lines: readonly string[],
  isLeft: (thing: Thing) => boolean,
): string[] {
  const inLines = (each: Thing) =>
    lines.some((name) => name === nameOf(each) || ` ${name} `.includes(` ${each.text} `));
  const named = things.filter(
    (each) =>
      (each.ingredient || each.chocolate || each.taste || (each.base && each.base !== "filling")) &&
      each.id !== "dates" &&
      !isLeft(each) &&
      !inLines(each) &&
      !refused.test(text.slice(0, each.at[0])) &&
      !/^[ -]?free\b/.test(text.slice(each.at[1])),
  );
  return [...new Set(named.map((each) => each.text))];
}
