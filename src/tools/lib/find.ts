/** Questions a calculator asks of a reading. All pure; weights come back in grams. */
import type { Amount, Memory, Reading, Thing } from "../contract/index.ts";
import { gramsOfVolume } from "./portions.ts";
import { inBase } from "./units.ts";

/** One egg white by number weighs 33 g. Source: USDA SR, NDB 01124, large egg. */
export const white_g = 33;
/** A whole one and a yolk. Source: USDA SR28, file WEIGHT, "large", NDB 01123 and 01125. */
export const egg_g = 50;
const yolk_g = 17;

/** Above this, a bare number beside "whites" is grams: nobody cracks twenty-five eggs by hand and says so. */
const mostWhitesByNumber = 24;

export interface Weighed {
  grams: number;
  thing?: Thing;
  amount: Amount;
  /** It was said by volume and weighed by the portion table or by estimate. */
  estimate?: boolean;
}

/** True when the masked sentence matches. */
export const says = (reading: Reading, pattern: RegExp): boolean => pattern.test(reading.mask);

/** A bare number of whites ("three egg whites", "2 eggs"), not their weight. */
export const isWhitesCount = (amount: Amount): boolean =>
  amount.dim === "number" &&
  amount.unit === "" &&
  ["whites", "egg", "pasteurised whites"].includes(amount.of?.ingredient ?? "") &&
  amount.value <= mostWhitesByNumber;

const stickOfButter = ({ text, at }: Amount): Thing => ({ id: "butter", ingredient: "butter", text, at });

/**
 * Everything in the sentence that is a weight: said in a unit of weight, as a volume of a known ingredient, or as a
 * bare number beside an ingredient or a mix ("105 whites 135 almond"), which counts as grams.
 */
export function weighed(reading: Reading): Weighed[] {
  return reading.amounts.flatMap((amount): Weighed[] => {
    if (amount.dim === "weight")
      return [{ grams: inBase(amount.value, amount.unit), thing: amount.of, amount }];
    // a stick is butter, whether that is said or not
    const owner = amount.of ?? (amount.unit === "stick" ? stickOfButter(amount) : undefined);
    if (amount.dim === "volume" && owner?.ingredient) {
      const portion = gramsOfVolume(
        owner.ingredient,
        amount.value,
        amount.unit,
        mannerBeside(reading, owner),
      );
      return portion ? [{ grams: portion.grams, thing: owner, amount, estimate: true }] : [];
    }
    if (amount.dim !== "number" || amount.unit !== "" || amount.fraction || !owner) return [];
    // "was 200 white 100 cream": a chocolate beside its cream
    const isChocolate =
      owner.color === "white" &&
      amount.value >= 20 &&
      reading.things.some((each) => each.ingredient === "cream") &&
      !reading.things.some((each) => each.base === "batter");
    if (isChocolate) return [{ grams: amount.value, thing: owner, amount }];
    if (isWhitesCount(amount) || owner.count || owner.color || isNoWeight(reading, amount)) return [];
    // "the two sugars" are two of them
    if (amount.value < 5 && owner.text.endsWith("s") && /\bthe $/.test(reading.text.slice(0, amount.at[0])))
      return [];
    // "just one filling" counts; no bowl holds so few grams
    if (owner.base && amount.value < 5) return [];
    // "4 egg yolks" are so many, and not so many grams
    if (owner.ingredient === "egg yolk" && amount.value <= mostWhitesByNumber)
      return [{ grams: amount.value * yolk_g, thing: owner, amount, estimate: true }];
    if (owner.ingredient || owner.base || owner.chocolate)
      return [{ grams: amount.value, thing: owner, amount }];
    return [];
  });
}

/** "2:1" is a ratio, "14 a kilo" a price. */
function isNoWeight({ text }: Reading, { at, value }: Amount): boolean {
  const [before, behind] = [text.slice(0, at[0]), text.slice(at[1])];
  return (
    (value <= 10 && (/^ ?: ?\d/.test(behind) || /\d ?: ?$/.test(before))) ||
    /^ (?:an?|per|each|the) (?:kilo|kg|lb|pound|ounce|oz|100)\b|^ ?\/ ?(?:kilo|kg|lb|pound|oz|100)\b/.test(
      behind,
    )
  );
}

/** "1 cup sifted powdered sugar": how it was measured, where that stands right beside the ingredient. */
const mannerBeside = (reading: Reading, owner: Thing): string | undefined =>
  reading.things.find(
    (each) =>
      each.manner && (Math.abs(owner.at[0] - each.at[1]) <= 1 || Math.abs(each.at[0] - owner.at[1]) <= 1),
  )?.manner;

/** The first thing with a facet. */
export function thing(reading: Reading, facet: keyof Thing): Thing | undefined {
  return reading.things.find((each) => each[facet] !== undefined);
}

/** The first amount of a kind. */
export function amount(reading: Reading, dim: Amount["dim"]): Amount | undefined {
  return reading.amounts.find((each) => each.dim === dim);
}

/** How many of something were said: "24 macarons", "3 trays". */
export function counted(reading: Reading, what: string): number | undefined {
  const said = countedOf(reading, what);
  return said && said.value + (what === "macarons" ? forUs(reading, said) : 0);
}

/** "they get 3 macs each so 60 macs": what one of them gets is not how many there are. */
export function countedOf({ amounts, text }: Reading, what: string): Amount | undefined {
  const all = amounts.filter((each) => each.dim === "number" && each.of?.count === what && !each.fraction);
  return all.find(({ at }) => !forHead.test(text.slice(at[1]))) ?? all[0];
}

const forHead = /^ \w+ (?:each|apiece|a head|(?:per|for each|for every) (?:person|head|guest|child|kid))\b/;

/** "48 macarons and 12 for us": those are made too. */
export function forUs({ amounts, text }: Reading, counted: Amount): number {
  const also = amounts.find(
    (each) =>
      each !== counted &&
      each.at[0] > counted.at[1] &&
      each.dim === "number" &&
      each.unit === "" &&
      !each.fraction &&
      /\b(?:and|plus) (?:another |an extra |about )?$/.test(text.slice(0, each.at[0])) &&
      /^ (?:more |extra |of them )?(?:for (?:us|me|myself|ourselves|home|the family|my family|tasting|the house|the kids)|to (?:keep|taste))\b/.test(
        text.slice(each.at[1]),
      ),
  );
  return also?.value ?? 0;
}

/** A diameter in mm: any length said beside shells, macarons or piping; lengths under 1 are taken as said. */
export function diameter(reading: Reading): number | undefined {
  const length = amount(reading, "length");
  return length && inBase(length.value, length.unit);
}

/**
 * A bare number for the size, where one was said before: "and if theyre 3.8" and "n if i go 4" are cm, "at 45" is mm.
 * "And for 6" is no size.
 * @returns mm
 */
export function sizeAgain(reading: Reading, before_mm: number | undefined): number | undefined {
  const [only, ...others] = reading.amounts;
  if (before_mm === undefined || others.length > 0 || only?.dim !== "number" || only.unit !== "" || only.of)
    return undefined;
  const lead =
    /(?:^| )(at|go|pipe|piped|size|theyre|they are|they were|theyd be|they come out|they came out|make)(?: (?:it|them|to|at|only|about|just|nearer|all))* \S*<number>(?: (?:then|instead|now|across|wide))*(?: \?)?$/.exec(
      reading.mask,
    )?.[1];
  const isWhole = Number.isInteger(only.value);
  if (!lead || (lead === "make" && isWhole)) return undefined;
  if (only.value >= 2 && only.value <= 8) return only.value * 10;
  return lead === "at" && only.value >= 20 && only.value <= 80 ? only.value : undefined;
}

/** "and if they were 4.2": nobody makes a part of a macaron, so it is a size, whether one was said before or not. */
export const saysDecimal = (reading: Reading): boolean =>
  says(
    reading,
    /^(?:(?:and|so|ok|or|but|what|how|about|if|hmm?|now) )*(?:theyre|they are|they were|theyd be|they come out) (?:only |about |just )*\d[.,]\d+<number>/,
  );

/** "batter for 22 of that size", "50 of them": mm, of the macarons that lie on the table. */
export const thatSize = (reading: Reading, { table, last }: Memory): number | undefined =>
  // the conversation has put what was asked first in front
  says(reading, /the first size(?: |$)/)
    ? (last?.inputs.diameter_mm as number | undefined)
    : says(reading, /(?:that|this|the same|same) size(?: |$)|<number> of (?:them|those|these)(?: |$)/) ||
        isForThem(reading, table)
      ? table.diameter_mm
      : undefined;

/** "filling for 40 too", behind the batter for 40 of 42 mm: of those. */
const isForThem = (reading: Reading, { macarons, diameter_mm }: Memory["table"]): boolean =>
  macarons !== undefined &&
  diameter_mm !== undefined &&
  reading.amounts.length === 1 &&
  reading.amounts[0]?.dim === "number" &&
  reading.amounts[0].value === macarons &&
  says(reading, /^(?:and|plus) |(?:^| )(?:too|also|as well)(?: \?)?$/) &&
  // "at my usual size"
  !says(reading, /(?:^| )(?:usual|normal|standard|regular|size|sized|minis?|small|big|large)(?: |$)/);

/** What stayed of a weight of which a part was taken. */
export const otherPart =
  /\b(?:other (?:half|part)|the rest|remaining (?:half|part|third|two thirds)|what(?:s| is) left)\b/;

/** Numbers that stand alone in the sentence, bound to nothing. */
export function bareNumbers(reading: Reading): Amount[] {
  return reading.amounts.filter(
    (each) => each.dim === "number" && each.unit === "" && !each.of && !each.fraction,
  );
}

/** "it", "that", "all of it", "the lot": the sentence points at what lies on the table. */
export function pointsBack(reading: Reading): boolean {
  return /(?:^| )(?:it|its|that|thats|this|them|those|these|the (?:whole )?lot|the whole (?:of it|bowl\S*|thing|batch\S*)|the whole(?= [?,]|$)|all of it|the same|same)(?: |$)/.test(
    reading.mask,
  );
}

/** The weight that "it" means, if the table has one. */
export function onTable(memory: Memory): { grams: number; thing: string } | undefined {
  return memory.table.mass;
}

/** "double strength", "twice as strong", "half as sweet": a factor of how something is, not of how much there is. */
export const isOfQuality = ({ text }: Reading, { at }: Amount): boolean =>
  /^ (?:the )?(?:usual |normal )?(?:strength|as (?!much|many|big|large|far|long|often)[a-z])/.test(
    text.slice(at[1]),
  );
