/**
 * What there is to eat in a sentence, by the words of the allergens' tables as well as the lexicon's: "soy milk" is no
 * milk, "halva" is a food though no calculator weighs it. An allergen that was typed may not vanish.
 */
import { plainQualifiers } from "../../../data/words/plain-qualifiers.ts";
import type { Amount, Reading, Span, Thing } from "../contract/index.ts";
import type { LinesRead } from "../lib/lines.ts";
import { type PartAt, partsAt, rowNamed } from "./composite.ts";
import { isRefusedAt } from "./refused-said.ts";

/** "for the cake stall", "biscuit tin": where it is sold or kept, and nothing in it. */
const isPlace =
  /^s? (?:stall|sale|shop|stand|fair|box|boxes|tin|tins|table|competition|club|tasting|party|decorat\w*|makers?)\b/;

const overlap = (one: Span, other: Span): boolean => one[0] < other[1] && other[0] < one[1];
const holds = (outer: Span, inner: Span): boolean => outer[0] <= inner[0] && inner[1] <= outer[1];

/** Whether a thing says less than the words it stands in: "milk" of "soy milk", "milk powder" of "soy milk powder". */
const isLess = (thing: Thing, part: PartAt): boolean =>
  overlap(part.at, thing.at) &&
  (part.at[0] < thing.at[0] || (holds(part.at, thing.at) && part.at[1] > thing.at[1])) &&
  rowNamed(thing.text) !== part.row;

const isFoodThing = (each: Thing): boolean =>
  Boolean(
    each.ingredient || each.chocolate || each.taste || each.dose || each.base || each.count || each.formula,
  );

/** What goes in: "macarons filled with cookies" have cookies in them, "24 cookies" are macarons. */
const goesIn = /\b(?:with|crushed|crumbled|chopped|plus) $/;

/** A thing that tells a calculator how much of it there is, and nobody what is in it: the "curd" of "curd ganache". */
const isSilent = (each: Thing, text: string): boolean =>
  each.count !== undefined
    ? goesIn.test(text.slice(0, each.at[0]))
    : !(each.ingredient || each.chocolate || each.taste || each.base || each.formula);

/**
 * The things of a sentence with those of the allergens' tables among them, in their order. Only for what looks at
 * things and text: the mask knows the lexicon's alone.
 */
export function foodsSaid({ text, things }: Reading): Thing[] {
  const all = partsAt(text);
  const kept = things.filter((each) => !all.some((part) => isLess(each, part)));
  const parts = all.filter(
    (part) =>
      !isRefusedAt(text, part.at) &&
      !isPlace.test(text.slice(part.at[1])) &&
      !kept.some((each) => isFoodThing(each) && !isSilent(each, text) && overlap(each.at, part.at)),
  );
  const fresh = parts.map(({ at }): Thing => {
    const said = text.slice(...at);
    return { id: said, ingredient: said, text: said, at };
  });
  // "black" of "black sesame" is no color
  const others = kept.filter(
    (each) =>
      (isFoodThing(each) && !isSilent(each, text)) || !parts.some((part) => overlap(part.at, each.at)),
  );
  return [...others, ...fresh].sort((a, b) => a.at[0] - b.at[0]);
}

/** What stands behind a weight, as far as it may be a name: "20 g of nutfree pesto and ...". */
const nameBehind =
  /^ (?:of )?((?:[\p{L}'-]+ )*?[\p{L}'-]+) *(?=$|[,;.:+&\d]|(?:and|with|for|in|into|plus|on|to|then)\b)/du;

/** "50 g of chopped walnuts": nothing between them but what says nothing of what it is. */
const isPlainBetween = (words: string): boolean =>
  words
    .trim()
    .split(" ")
    .every((word) => word === "" || (plainQualifiers.has(word) && !/^(?:and|or|with)$/.test(word)));

/**
 * The sentence with those foods in it, and the weights that stand beside one and were nothing's: "custard: 50 g". What
 * is weighed and nobody knows keeps its name too.
 */
export function withFoods(reading: Reading, things: Thing[]): Reading {
  const { text, unknown } = reading;
  const strange = ({ at: [, end] }: Amount): Thing | undefined => {
    const [from, to] = nameBehind.exec(text.slice(end))?.indices?.[1] ?? [0, 0];
    const at: Span = [end + from, end + to];
    const name = text.slice(...at);
    return !things.some((each) => overlap(each.at, at)) &&
      name.split(" ").some((word) => unknown.includes(word))
      ? { id: name, ingredient: name, text: name, at }
      : undefined;
  };
  const isFree = ({ at }: Thing) => !reading.amounts.some(({ of }) => of && overlap(of.at, at));
  const behind = ({ at: [, end] }: Amount) =>
    things.find(({ at: [start] }) => start >= end && isPlainBetween(text.slice(end, start)));
  const before = ({ at: [start] }: Amount) =>
    things.find(
      (each) => each.at[1] <= start && isFree(each) && /^[ :=-]+$/.test(text.slice(each.at[1], start)),
    );
  const amounts = reading.amounts.map((each) => {
    const of =
      each.of ?? (each.dim === "weight" ? (behind(each) ?? strange(each) ?? before(each)) : undefined);
    return of?.ingredient ? { ...each, of } : each;
  });
  return { ...reading, things, amounts };
}

/** "2 tbsp zorp" in a row of weights without a sign: a measure that went into no line, with the word behind it. */
export const looseIn = ({ text, amounts }: Reading, { lines, unread }: LinesRead): string[] =>
  amounts
    .filter(
      (each) =>
        each.dim === "volume" &&
        !lines.some(({ at }) => at[0] === each.at[0]) &&
        !unread.some((piece) => piece.includes(each.text)),
    )
    .map((each) => `${each.text}${nameBehind.exec(text.slice(each.at[1]))?.[0] ?? ""}`.trim());

/** What stands before a food in a list: "with butter and zorp". */
const listed = /(?:\b(?:with|and|plus|or|containing|filled with)|,)(?: (?:a|an|the|some|my))* $/;

/** Words that nobody knows where a food would stand, or right before one: "zorp macarons". They are named as not read. */
export function strangeBefore({ text, unknown }: Reading, foods: readonly Thing[]): string[] {
  const hits = [...text.matchAll(/\p{L}+/gu)].map((hit) => ({
    word: hit[0],
    at: [hit.index, hit.index + hit[0].length] as Span,
  }));
  const strange = hits.filter(
    ({ word, at }) =>
      unknown.includes(word) &&
      !foods.some((each) => overlap(each.at, at)) &&
      (listed.test(text.slice(0, at[0])) ||
        foods.some((each) => isFoodThing(each) && each.at[0] === at[1] + 1)),
  );
  return [...new Set(strange.map(({ word }) => word))];
}
