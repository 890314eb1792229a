/** A list of which one thing is named twice: once as a line of the recipe, once as what it is to be brought to. */
import type { Reading } from "../contract/index.ts";
import type { Weighed } from "../lib/find.ts";
import type { Draft } from "./draft.ts";

/** "and another 40 g whites": more of the same, and no other size. */
const addsUp =
  /\b(?:more|another|extra|further|again|also|used|spilt|spilled|dropped|lost|plus|add|added|as well|too|leftover|second|later)\b/;
/** What stands between two lines of a list and says nothing. */
const joins = /\b(?:and|of|the|my|g|then|some|about)\b|[^a-z]/g;

/** The words between two of a list, without the names of the things. */
function between(reading: Reading, before: Weighed, after: Weighed): string {
  const end = Math.max(before.amount.at[1], before.thing?.at[1] ?? 0);
  const start = Math.min(after.amount.at[0], after.thing?.at[0] ?? after.amount.at[0]);
  // the thing's name may stand before its weight, with words between
  return `${reading.text.slice(end, start)} ${
    after.thing && after.thing.at[1] < after.amount.at[0]
      ? reading.text.slice(after.thing.at[1], after.amount.at[0])
      : ""
  }`;
}

const turns = (words: string): boolean => !addsUp.test(words) && words.replace(joins, "") !== "";

const nameOf = (each: Weighed): string => each.thing?.ingredient ?? each.thing?.text ?? "";

/** A recipe of three lines or more, each named once, and one of them again apart from it. */
export function broughtTo(reading: Reading, weights: readonly Weighed[]): Draft | undefined {
  if (weights.length < 4) return undefined;
  const [first, last] = [weights[0], weights.at(-1)];
  if (!first || !last) return undefined;
  const asTarget = (target: Weighed, lines: readonly Weighed[]): Draft | undefined => {
    const names = lines.map(nameOf);
    const isOne = new Set(names).size === names.length && names.includes(nameOf(target));
    return isOne && target.thing?.ingredient
      ? {
          lines: lines.map((each) => ({ name: nameOf(each), grams: each.grams })),
          have: [{ name: nameOf(target), grams: target.grams }],
        }
      : undefined;
  };
  const [second, beforeLast] = [weights[1], weights.at(-2)];
  if (beforeLast && turns(between(reading, beforeLast, last))) {
    // "i have 110 g whites, 140 g almond flour, ...": what stands in the cupboard is no recipe
    const lead = reading.text.slice(
      0,
      Math.min(first.amount.at[0], first.thing?.at[0] ?? Number.POSITIVE_INFINITY),
    );
    return isStock.test(lead) ? undefined : asTarget(last, weights.slice(0, -1));
  }
  // "i want my list on 154 g whites, it is 110 g whites, ..."
  const lead = reading.text.slice(0, first.amount.at[0]);
  return second && wants.test(lead) && turns(between(reading, first, second))
    ? asTarget(first, weights.slice(1))
    : undefined;
}

const isStock =
  /\b(?:i|ive|we|weve|ve) (?:still |only |just )?(?:have|got|had|bought)\b|\b(?:theres|there is|there are|pantry|cupboard|larder|ive got)\b|^(?:ive|got|have) /;
const wants =
  /\b(?:to|on|for|with|from|at|using|only|have|got|want|need|ive|theres|weigh|weighs)(?: (?:just|about|only))? $/;
