/**
 * "3 g powder color in the lemon part, is that ok", "4 g lemon in the first", "gel for two of the four", behind a bowl
 * that was split: a dose into what one of its parts weighs, and no other way to split it.
 */
import { opening } from "../../../data/words/openers.ts";
import { vessel } from "../../../data/words/vessels.ts";
import type { Reading, Thing } from "../../tools/contract/index.ts";
import { areEqual } from "../../tools/lib/parts.ts";
import { inBase } from "../../tools/lib/units.ts";
import { spaced } from "./spaced.ts";
import type { State } from "./state.ts";

const places = ["first", "second", "third", "fourth", "fifth", "sixth"];
const noun = `(?: (?:${vessel}|half|third|quarter|one|bit|lot))?`;
const size = "bigger|larger|biggest|largest|big|large|smaller|smallest|small|little";
/** Words that judge, or say nothing more. */
const tail =
  "(?: ?(?:[,.?!]|is|was|that|it|this|ok|okay|fine|alright|right|good|enough|too|much|strong|weak|little|then|now|please|already|of them|of those))*$";
const goes = "(?:(?:is|are|was|went|goes|go|going|stirred|mixed|put) )?(?:in|into|to|for|on)";
const toPart = new RegExp(
  `^(?: (?:ok|okay|fine|alright|too much))? ${goes} (?:just |only )?(?:the |my |that )?(${places.join("|")}|last|${size}|one|each|every|a single|[a-z]+(?: [a-z]+)?)${noun}(?: of (?:them|those|these|the (?:two|three|four|five|six)))?${tail}`,
);
const judges = /\b(?:ok|okay|fine|alright|too (?:much|strong|little|weak)|enough)\b/;
const putsIn =
  /^(?:(?:and|so|then|now|ok|i|ive|we|have|just|accidentally|only) )*(?:put|added|add|stirred|mixed|dropped|tipped)\b/;

/** More than this of a part is no dose any more, but the part itself. */
const mostDosed = 0.25;
/** Below this it can't be meant as the part. */
const leastPart = 0.1;

interface Part {
  name: string;
  grams: number;
}

/** The part that a word names. */
function partOf(word: string, parts: readonly Part[], each: number | undefined): number | undefined {
  const named = parts.find(({ name }) => name === word || word.startsWith(`${name} `));
  if (named) return named.grams;
  const sizes = parts.map(({ grams }) => grams);
  if (sizes.length > 1 && /^(?:big|larg)/.test(word)) return Math.max(...sizes);
  if (sizes.length > 1 && /^(?:small|little)/.test(word)) return Math.min(...sizes);
  const at = word === "last" ? sizes.length - 1 : places.indexOf(word);
  if (at >= 0 && sizes.length > 0) return sizes[at];
  return at >= 0 || /^(?:one|each|every|a single|last)$/.test(word) ? each : undefined;
}

export const isFlavor = ({ dose, taste, ingredient, base }: Thing): boolean =>
  base === undefined && Boolean(dose ?? taste ?? (/^(?:salt|rum)$/.test(ingredient ?? "") || undefined));

/** "40 g of the buttercream in the lemon", where it was asked of what they were. */
const ofTheMix = /^[^?]{0,40}\bof (?:the |my |that )?(buttercream|batter|ganache|filling|mix)\b(?! flavou?r)/;

/** "lemon flavor", where it was asked of what they were. */
function flavorSettled(
  { text, things }: Reading,
  { unclear, thing }: Record<string, unknown>,
  parts: readonly Part[] = [],
): string | undefined {
  const { name, grams } = (unclear ?? {}) as Partial<Part>;
  const part = parts.find((each) => each.name === name);
  const flavor = things.find(isFlavor);
  if (
    !part ||
    !flavor ||
    !/^(?:it was |its |that was |was )?(?:[\d.]+ ?\S+ )?(?:of )?(?:[a-z]+ ?){1,4}[.]*$/.test(text)
  )
    return undefined;
  const what = flavor.taste ? flavor.text : `${name} ${flavor.text}`;
  return `is ${grams} g ${what} in ${part.grams} g ${String(thing)} too much`;
}

/** Undefined where it isn't said so. Pure. */
export function intoPart(reading: Reading, { last, table, pending }: State): string | undefined {
  const mix = pending?.slot === "unclear" ? ofTheMix.exec(reading.text)?.[1] : undefined;
  if (mix) return `of the ${mix}`;
  const settled =
    pending?.slot === "unclear" ? flavorSettled(reading, pending.inputs, table.parts) : undefined;
  if (settled) return settled;
  const parts = table.parts ?? [];
  const each = parts.length === 0 || areEqual(parts) ? table.part?.grams : undefined;
  const thing = table.part?.thing ?? table.mass?.thing ?? last?.inputs.thing;
  if (last?.tool !== "split" || (parts.length === 0 && each === undefined) || typeof thing !== "string")
    return undefined;
  return ofSome(reading, each, thing) ?? put(reading, parts, each, thing);
}

/** "gel color for two of the four". */
function ofSome({ text, things }: Reading, each: number | undefined, thing: string): string | undefined {
  if (each === undefined || !things.some(isFlavor)) return undefined;
  const [, lead = "", many = ""] = someOf.exec(spaced(text)) ?? [];
  const number = numbers[many] ?? Number(many);
  return many && number > 1 ? `${lead} for ${number * each} g ${thing}` : undefined;
}
const numbers: Readonly<Record<string, number>> = { two: 2, three: 3, four: 4, five: 5 };
const someOf =
  /^(.{3,60}) (?:for|in|into) (?:just |only )?(two|three|four|five|[2-5]) (?:of (?:the|those|these|my) (?:two|three|four|five|six|eight|ten|[2-9]|parts|bowls)|of (?:them|those|these))(?: parts| bowls)?(?: (?:please|then|too))*[ ?.]*$/;

function put(reading: Reading, parts: readonly Part[], each: number | undefined, thing: string) {
  const { text, amounts, things } = reading;
  const [amount, ...others] = amounts.filter(({ dim }) => dim !== "number");
  if (amount?.dim !== "weight" || others.length > 0) return undefined;
  const between = (to: number) => text.slice(amount.at[1], to);
  const flavor = things.find((one) => isFlavor(one) && /^ (?:of )?(?:the |my )?$/.test(between(one.at[0])));
  const [, word = ""] = toPart.exec(` ${spaced(text.slice(flavor?.at[1] ?? amount.at[1]))}`) ?? [];
  const grams = word && text.slice(0, amount.at[0]).length < 60 ? partOf(word, parts, each) : undefined;
  if (grams === undefined || !led.test(text.slice(0, amount.at[0]))) return undefined;
  const share = inBase(amount.value, amount.unit) / grams;
  if (share > mostDosed) return undefined;
  // asked so that no part of a bowl could be heard in it
  const asked = (what: string) => `is ${amount.text} ${what} in ${grams} g ${thing} too much`;
  if (flavor) return asked(flavor.text === "powder" && thing === "batter" ? "powder color" : flavor.text);
  const isTaste = things.some((one) => one.taste === word && !one.dose);
  // "3 g in the pink": nobody pipes so little
  if (share < leastPart && thing === "batter" && !isTaste)
    return `is ${amount.text} food color too much for ${grams} g ${thing}`;
  if (judges.test(text) && isTaste) return asked(word);
  // of the bowl that was split, or of what flavors it? it has to be asked
  return putsIn.test(text) && isTaste && share >= leastPart
    ? `${amount.text} of what in the ${word}`
    : undefined;
}
const led = new RegExp(
  `^${opening}(?:(?:and|so|then|now|ok|i|ive|i've|we|have|just|accidentally|only|put|added|add|stirred|mixed|in|about|with|is|are|was|were|theres|what if|if|can|could) ?)*$`,
);
