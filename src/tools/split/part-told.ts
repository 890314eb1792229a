/** One of the parts told by its weight, behind a split: "40 g in the first part", "one got 50 g too much". */
import type { Memory, Reading } from "../contract/index.ts";
import { gramsOf } from "../lib/units.ts";
import type { Draft, Said } from "./said.ts";

type Part = { name: string; grams: number };

const places = ["first", "second", "third", "fourth", "fifth", "sixth"];
const part = "(?:part|portion|bowl|share|half|third|one|bit|pot|bag)";
/** Which of them, where it has no name of its own. */
const which = `(?:the )?(?:(${places.join("|")}|last|other)(?: ${part})?|one(?: ${part})?(?: of (?:them|those|these))?)`;
const lead =
  "(?:(?:and|ok|so|oh|no|but|then|now|actually|sorry|wait|hm|put|make|give|i|ive|we|have|had|has|only|just|please|lets|take|change|set|,) )*";
const tells =
  "(?:got|gets?|has|have|is|was|to|at|with|be|should be|should get|takes?|took|came to|weighs?|weighed|needs?|holds?|only|just|about|now|,|=|:)";
const much = "(\\S+<weight>)";
const more = "(more|extra|over|too much|heavier|less|fewer|short|too little|under|lighter)";
const tail =
  "(?: (?:of (?:it|the batter|that)|than (?:planned|it should(?: have)?|that|before|the others?|the other one)|now|then|please|instead|in it|in there|by mistake|[.!?]))*$";

/** "40 g in the first", "20 g more in the first part". */
const amountFirst = new RegExp(
  `^${lead}${much}(?: ${more})? (?:went |goes |go |is |are )?(?:in|into|for|to|on) WHICH${tail}`.replace(
    "WHICH",
    which,
  ),
);
/** "first 350 g", "one is 350 g", "one got 50 g too much". */
const partFirst = new RegExp(
  `^${lead}WHICH(?: ${tells})* ${much}(?: ${more})?${tail}`.replace("WHICH", which),
);

/** "200 g pink", "make pink 200 g": a part by its own name needs no word between. */
const amountOfNamed = new RegExp(
  `^${lead}${much}(?: of (?:it|that|the batter))?(?: (?:is|as|goes|going|be|should be))? the first one${tail}`,
);
/** "and the rest green": the other of two. */
const andTheRest =
  /(?: (?:,|and))* (?:and_)?(?:the[ _])?(?:rest|remainder)\S*(?: (?:is|stays?|goes?|be|in|to|for|as))*(?: \S+<(?:color|taste)\S*| \S+<[^>]*(?:color|taste)=[^>]*>)?(?= \.|$)/;

/** The name of a part with "part" behind it, said as a place: "the lemon part" is the first of lemon and rose. */
function placed({ mask, things }: Reading, parts: readonly Part[]): { mask: string; at: number | undefined } {
  for (const thing of things) {
    const at = parts.findIndex((each) => each.name === (thing.color ?? thing.taste));
    if (at < 0 || thing.dose) continue;
    const name = thing.text.replaceAll(" ", "_");
    const named = new RegExp(
      `(?:the |my )?${name.replace(/[^a-z0-9_]/g, ".")}<[^>\\s]*>(?: ${part}(?:<[^>\\s]*>)?)?(?= |$)`,
    );
    if (named.test(mask)) return { mask: mask.replace(named, "the first one"), at };
  }
  return { mask, at: undefined };
}

/** What the parts were by the answer before, with the name of each. */
function partsBefore(before: Draft | undefined, memory: Memory): Part[] {
  const total = before?.total_g;
  if (total === undefined) return [];
  if (before?.equal !== undefined && before.equal > 1)
    return Array.from({ length: before.equal }, (_, at) => ({
      name: `part ${at + 1}`,
      grams: total / (before.equal ?? 1),
    }));
  return memory.table.parts?.map(({ name, grams }) => ({ name, grams })) ?? [];
}

/** That part takes the weight, and the others share what is left as they did; nothing where another reading is meant. */
export function partTold(said: Said): Draft | undefined {
  const { reading, memory } = said;
  // the whole sentence says nothing but this, whether it leans on the one before or not
  const before = memory.last?.tool === "split" ? (memory.last.inputs as Draft) : undefined;
  const [only, ...others] = reading.amounts.filter((each) => each.dim === "weight");
  const parts = partsBefore(before, memory);
  const total_g = before?.total_g;
  if (!before || !only || others.length > 0 || parts.length < 2 || total_g === undefined) return undefined;
  const named = placed(reading, parts);
  // words alone, but for the weight: "part" and "first" are read as other things too
  const rest = parts.length === 2 && named.at !== undefined ? andTheRest.exec(named.mask)?.[0] : undefined;
  const alone = rest === undefined ? named.mask : named.mask.replace(rest, "");
  const mask = alone.replace(/<(?!weight)[^>\s]*>/g, "");
  const found =
    amountFirst.exec(mask) ??
    partFirst.exec(mask) ??
    (named.at === undefined ? null : amountOfNamed.exec(mask));
  if (!found) return undefined;
  const place = found.find((each, at) => at > 0 && places.concat("last", "other").includes(each ?? ""));
  const differs = found.find((each, at) => at > 0 && new RegExp(`^${more}$`).test(each ?? ""));
  const at =
    named.at ??
    (place === undefined
      ? 0
      : place === "last" || place === "other"
        ? parts.length - 1
        : places.indexOf(place));
  const own = parts[at];
  if (!own) return undefined;
  const isLess = /^(?:less|fewer|short|too little|under|lighter)$/.test(differs ?? "");
  const step = (isLess ? -1 : 1) * gramsOf(only);
  // "one is 50 g heavier" is held against the other, and not against what it was to be
  const isApart = /^(?:heavier|lighter)$/.test(differs ?? "");
  if (isApart && parts.length !== 2) return undefined;
  const size = differs === undefined ? step : isApart ? (total_g + step) / 2 : own.grams + step;
  if (size <= 0) return undefined;
  // "mint 180 g", of 300 g pink, 250 g mint and the rest white: what was weighed stays, the rest takes what is left
  const others_g = before.rest ? before.weights?.filter((each) => each.name !== own.name) : undefined;
  if (others_g && others_g.length < (before.weights?.length ?? 0) && own.name !== before.rest)
    return {
      total_g,
      by: reading.said,
      weights: (before.weights ?? []).map((each) => (each.name === own.name ? { ...each, size } : each)),
      rest: before.rest,
    };
  const left = total_g - size;
  const remaining = parts.filter((each) => each !== own);
  const sum = remaining.reduce((all, each) => all + each.grams, 0);
  const share = (each: Part) => (each === own ? size : (left * each.grams) / sum);
  return {
    total_g,
    by: reading.said,
    weights:
      left <= 0 ? [{ name: own.name, size }] : parts.map((each) => ({ name: each.name, size: share(each) })),
  };
}
