/** "a 200/160 dark ganache": chocolate over cream in weights, and what was tipped in on top of it. */
import type { Amount, Reading } from "../contract/index.ts";
import { says, weighed } from "../lib/find.ts";
import type { Draft } from "./turn.ts";

/** Below this a number beside a slash is part of a ratio or of a fraction, no weight. */
const lightest_g = 20;

/** @returns the two weights with what was added to one of them, in g; undefined where no pair is said */
export function pairSaid(reading: Reading): Draft | undefined {
  const { amounts, text } = reading;
  const isAsked = judges.test(text) && !moves.test(text);
  const at = amounts.findIndex(
    (first, place) =>
      isPair(first, amounts[place + 1], text) ||
      (isAsked && isPair(first, amounts[place + 1], text, / ?to /)),
  );
  const own = at < 0 ? amounts.filter(isOne) : amounts.slice(at, at + 2);
  const [chocolate_g, cream_g] = own[0]?.fraction ?? own.map(({ value }) => value);
  if (chocolate_g === undefined || cream_g === undefined || !speaksOfGanache(reading)) return undefined;
  const pair = { chocolate_g, cream_g };
  const [more, ...others] = weighed({ ...reading, amounts: amounts.filter((each) => !own.includes(each)) });
  if (!more) return pair;
  const isCream = more.thing?.ingredient === "cream";
  const isChocolate = more.thing?.chocolate !== undefined || more.thing?.ingredient === "chocolate";
  if (others.length > 0 || !(isCream || isChocolate) || !says(reading, added)) return undefined;
  return isCream
    ? { ...pair, cream_g: pair.cream_g + more.grams, want: "mend", fault: "loose" }
    : { ...pair, chocolate_g: pair.chocolate_g + more.grams, want: "mend", fault: "stiff" };
}

const added =
  /(?:^| )(?:added|tipped|poured|put|dropped|spilt|spilled|stirred)(?: |$)|(?:^| )(?:extra|more)(?: |$)|too much/;

/** "200/100" is read as a fraction wherever it comes out even. */
const isOne = ({ fraction, dim }: Amount): boolean =>
  dim === "number" && fraction !== undefined && fraction.every((each) => each >= lightest_g);

const use = "(?:pip\\w+|roll\\w*|pour\\w*|drip\\w*|fill\\w*|cut\\w*|truffles?|glaz\\w+)";
/** "is 200 to 100 dark more for piping or rolling": which use two weights suit. */
const judges = new RegExp(
  `\\b${use}(?: it)? or (?:for )?${use}\\b|\\b(?:good|right|ok|okay|better|best|fine|meant|suited|enough|more) (?:for|to) ${use}\\b|\\b(?:what|which).*\\b(?:good for|suit\\w*|use)\\b`,
);
/** From one weight to another: no ratio. */
const moves = /\b(?:from|scale|change|reduce|down|up|between|about|cut back)\b/;

const isPair = (first: Amount, second: Amount | undefined, text: string, joint = / ?\/ ?/): boolean =>
  second !== undefined &&
  [first, second].every(
    ({ dim, unit, value }) => value >= lightest_g && (unit === "g" || (dim === "number" && unit === "")),
  ) &&
  new RegExp(`^${joint.source}$`).test(text.slice(first.at[1], second.at[0]));

const speaksOfGanache = ({ things }: Reading): boolean =>
  things.some((each) => each.base === "ganache" || each.chocolate || each.ingredient === "chocolate");
