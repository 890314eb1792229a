/** "pink twice as much as white", "100 g more pink than white": parts that are said by how they stand to one another. */
import type { Amount, Reading, Thing } from "../contract/index.ts";
import { gramsOf } from "../lib/units.ts";
import type { SplitInputs } from "./split.ts";

type Share = NonNullable<SplitInputs["parts"]>[number];

const nameOf = (thing: Thing): string => thing.color ?? thing.taste ?? thing.chocolate ?? thing.text;
const isName = (each: Thing): boolean =>
  Boolean((each.color || each.taste || each.chocolate) && !each.base && (!each.dose || each.taste));

interface Relation {
  of: string;
  /** Without it: of every other part. */
  than?: string;
  times: number;
}

const much = "(?:as )?(?:much|many|big|large|heavy)";

/** What a factor says of the names around it; nothing where it stands beside none. */
function relationOf(reading: Reading, factor: Amount, names: readonly Thing[]): Relation | undefined {
  const tail = reading.text.slice(factor.at[1]);
  const times = factor.value;
  const before = names.findLast((each) => each.at[1] <= factor.at[0]);
  const [first, second] = names.filter((each) => each.at[0] >= factor.at[1]);
  const between = first ? reading.text.slice(factor.at[1], first.at[0]) : "";
  // "twice as much pink as white", "half as much pink"
  if (first && new RegExp(`^ ${much} (?:of )?(?:the )?$`).test(between)) {
    const than =
      second && / as (?:the )?$/.test(reading.text.slice(first.at[1], second.at[0])) ? second : undefined;
    return { of: nameOf(first), times, ...(than ? { than: nameOf(than) } : {}) };
  }
  if (!before) return undefined;
  const of = nameOf(before);
  // "twice as much as white", "double the white", "twice the amount of white", "twice that of the white"
  const compared = new RegExp(
    `^ (?:${much} )?(?:as |of |the |what |that of |the (?:amount|weight|size) of )(?:the )?(?:in )?$`,
  );
  if (first && compared.test(between)) return { of, than: nameOf(first), times };
  // "twice that", of the part before it
  const previous = names.filter((each) => each.at[1] <= before.at[0]).at(-1);
  if (/^ (?:of )?(?:that|it|this)\b/.test(tail))
    return previous ? { of, than: nameOf(previous), times } : undefined;
  return new RegExp(`^(?: ${much})?(?: ?[,.;?]|$| and\\b)`).test(tail) ? { of, times } : undefined;
}

/** Sizes by the relations; a part of which nothing is said is one. Undefined where they go round in a circle. */
function sizesOf(names: readonly string[], relations: readonly Relation[]): Share[] | undefined {
  const sizes = new Map(
    names.filter((name) => !relations.some((each) => each.of === name)).map((name) => [name, 1]),
  );
  for (let round = 0; round < relations.length; round++)
    for (const { of, than, times } of relations) {
      const other = than === undefined ? 1 : sizes.get(than);
      if (other !== undefined) sizes.set(of, other * times);
    }
  if (sizes.size < names.length) return undefined;
  return names.map((name) => ({ name, size: sizes.get(name) ?? 1 }));
}

/** "half as much", "white is half of the pink": of another part, and not of the bowl. */
function isFractionOf({ text }: Reading, { dim, fraction, at }: Amount): boolean {
  if (dim !== "number" || !fraction) return false;
  if (new RegExp(`^ ${much}\\b`).test(text.slice(at[1]))) return true;
  return (
    /\b(?:is|are|be|gets|just|only) $/.test(text.slice(0, at[0])) &&
    /^ (?:of )?the \w/.test(text.slice(at[1]))
  );
}

/** "in three, one double the others": the first is that one. */
export function oneOfThem(reading: Reading, equal: number): Share[] | undefined {
  const said =
    /\b(?:the_)?(?:one|first|1st)(?:<number>)? (?:of them |one |bowl |part )?(?:is |gets |being |should be |with )?(?:the )?(\S+)<factor>(?:<\S+)? (?:(?:as|of|the) )*(?:much|big|large|size|weight|amount|\S*others?|\S*second|2nd|\S*rest)/.exec(
      reading.mask,
    );
  const times = said && reading.amounts.find((each) => each.unit === "times")?.value;
  return times ? Array.from({ length: equal }, (_, at) => ({ size: at === 0 ? times : 1 })) : undefined;
}

/** The parts where one is said by another; undefined where none is. Pure. @param known names said before */
export function relatedParts(reading: Reading, known: readonly string[] = []): Share[] | undefined {
  const things = reading.things.filter(isName);
  const said = things.map(nameOf);
  const names = [...new Set(said.every((each) => known.includes(each)) ? known : said)];
  if (said.length === 0 || names.length < 2) return undefined;
  const relations = reading.amounts
    .filter((each) => each.unit === "times" || isFractionOf(reading, each))
    .flatMap((each) => relationOf(reading, each, things) ?? []);
  return relations.length > 0 ? sizesOf(names, relations) : undefined;
}

/** "20 g more in the pink", of a bowl that is split: the others share what that leaves, as they did. */
export function partMore(
  reading: Reading,
  parts: readonly { name: string; grams: number }[],
): Share[] | undefined {
  const [amount, ...others] = reading.amounts;
  const named = reading.things.filter(isName);
  const said = /<(?:weight|number)> (more|less|extra)\b/.exec(reading.mask)?.[1];
  const part = parts.find((each) => named.length === 1 && named[0] && nameOf(named[0]) === each.name);
  if (!amount || others.length > 0 || !said || !part || parts.length < 2 || / than /.test(reading.text))
    return undefined;
  const step = (said === "less" ? -1 : 1) * gramsOf(amount);
  const total = parts.reduce((sum, each) => sum + each.grams, 0);
  const size = part.grams + step;
  if (size <= 0 || size >= total) return undefined;
  const scale = (total - size) / (total - part.grams);
  return parts.map((each) => ({ name: each.name, size: each === part ? size : each.grams * scale }));
}

/** "pink 100 g more than white", "100 g more pink than white": of two parts, what each weighs. */
export function differing(reading: Reading, total_g: number | undefined): Share[] | undefined {
  const things = reading.things.filter(isName);
  const names = [...new Set(things.map(nameOf))];
  const said = /<(?:weight|number)> (?:more|less|heavier|lighter)\b.*\bthan\b/.test(reading.mask);
  if (total_g === undefined || names.length !== 2 || !said) return undefined;
  const by = reading.amounts.find((each) =>
    /^ (?:more|less|heavier|lighter)\b/.test(reading.text.slice(each.at[1])),
  );
  if (!by) return undefined;
  const than = reading.text.search(/\bthan\b/);
  const smaller = things.find((each) => each.at[0] > than);
  const other = smaller && names.find((name) => name !== nameOf(smaller));
  if (!smaller || !other) return undefined;
  const isLess = /^ (?:less|lighter)/.test(reading.text.slice(by.at[1]));
  const grams = (isLess ? -1 : 1) * gramsOf(by);
  const more = (total_g + grams) / 2;
  if (more <= 0 || more >= total_g) return undefined;
  const sizes = new Map([
    [other, more],
    [nameOf(smaller), total_g - more],
  ]);
  return names.map((name) => ({ name, size: sizes.get(name) ?? 0 }));
}
