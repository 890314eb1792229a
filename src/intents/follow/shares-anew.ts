/**
 * "two parts to one looks nicer", "too much cream, make it 5 to 1", "no just two bowls, even": behind a split, the bowl is
 * to be split in another way, whatever is said of it around the numbers.
 */
import type { Reading } from "../../tools/contract/index.ts";
import { numberSaid } from "./number-said.ts";
import { spaced } from "./spaced.ts";
import type { State, Topic } from "./state.ts";

interface Anew {
  text: string;
  topic: Topic;
}
interface Share {
  name?: string;
  size: number;
}

const words = "one two three four five six seven eight nine ten eleven twelve".split(" ");
const number = `(?:\\d{1,2}(?:\\.\\d)?|${words.join("|")})`;

/** Matters of another kind, which a ratio or a number of something may be of. */
const otherMatter =
  /\b(?:remind|timers?|alarm|clock|oven|bake|baked|rest them|keeps?|notes?|log|save|eggs?|whites|trays?|shells|macarons?|macs|people|guests|boxes|minutes|hours|days|times?|between|how long|more bowls?|another|extra|gel|extract|paste|drops?|pinch|pinches|spoons?|salt|dose|flavou?r|flavou?ring|scale|weighs?|grams|same (?:split|again|thing|for)|back to)\b|%|\d ?(?:g|kg|oz|ml|mm|cm)\b/;

const namesIn = ({ weights, parts, percents, rest }: Topic["inputs"]): string[] => [
  ...((weights ?? parts ?? percents ?? []) as Share[]).flatMap(({ name }) => name ?? []),
  ...(typeof rest === "string" ? [rest] : []),
];
const sizesIn = ({ weights, parts, percents, rest, total_g }: Topic["inputs"]): number[] => {
  const all = ((weights ?? parts ?? percents ?? []) as Share[]).map(({ size }) => size);
  const sum = all.reduce((whole, each) => whole + each, 0);
  return typeof rest === "string" ? [...all, (percents ? 100 : Number(total_g)) - sum] : all;
};

const part = "(?: (?:whole )?pa?rts?)?(?: of)?(?: the)?";
const to = "(?: ?:| to| for every| for each| per) ?";
const link = "(?: ?,)?(?: and| to| :| with| for every| for each)?(?: the)? ";
const behindName = "(?: (?:bowl|batter|one|part|colou?red|coloured|shade))?";

/** "two green to one white", "5 parts green, one part white", "two parts green for every part white". */
function besideNames(text: string, names: readonly string[]): Share[] | undefined {
  const any = names.map((name) => name.replace(/[^a-z0-9 ]/g, ".")).join("|");
  if (names.length < 2) return undefined;
  const pair = `(${number}|(?<=every |each )part)${part} (${any})${behindName}`;
  const row = new RegExp(
    `(?:^| )${pair}((?:${link}${pair.replaceAll("(", "(?:").replaceAll("(?:?", "(?")})+)(?= |$)`,
  ).exec(text);
  const said = row?.[0];
  if (!said) return undefined;
  const shares = [...said.matchAll(new RegExp(`(?:^| )${pair}`, "g"))].map(([, size = "", name = ""]) => ({
    name,
    size: size === "part" ? 1 : numberSaid(size),
  }));
  const isWhole =
    shares.length === names.length && new Set(shares.map(({ name }) => name)).size === names.length;
  return isWhole ? shares : undefined;
}

/** "make the cream one part and the lilac five": each name ahead of its number. */
function behindNames(text: string, names: readonly string[]): Share[] | undefined {
  const is = "(?: ?,)?(?: (?:is|gets|be|being|as|to|at|takes|only|just|should|shall|will|has|have|comes))*";
  const sizes = names.map(
    (name) =>
      new RegExp(`(?:^| )${name}${behindName}${is} (${number})(?: pa?rts?)?(?= |$)(?! in | of )`).exec(
        text,
      )?.[1],
  );
  return sizes.length > 1 && sizes.every((size) => size !== undefined)
    ? sizes.map((size, at) => ({ name: names[at] ?? "", size: numberSaid(size ?? "") }))
    : undefined;
}

/** "the white should be one part in three": of two, the other is what that leaves. */
function oneIn(text: string, names: readonly string[]): Share[] | undefined {
  const [, size = "", all = ""] =
    new RegExp(
      `(?:^| )(${number})(?: pa?rts?)? (?:in|out of) (?:every )?(${number})(?: pa?rts?)?(?= |$)`,
    ).exec(text) ?? [];
  const said = names.filter((name) => new RegExp(`\\b${name}\\b`).test(text));
  const [one, ...more] = said;
  const left = numberSaid(all) - numberSaid(size);
  if (names.length !== 2 || one === undefined || more.length > 0 || !(left > 0)) return undefined;
  return names.map((name) => ({ name, size: name === one ? numberSaid(size) : left }));
}

/** "2 to 1", "two parts to one", "5:4:1". */
function ratioIn(text: string): number[] | undefined {
  const found = [
    ...text.matchAll(
      new RegExp(`(?<=^| )(${number}(?: pa?rts?)?(?:${to}${number}(?: pa?rts?)?)+)(?= |$)`, "g"),
    ),
  ];
  const [only, ...more] = found;
  if (!only || more.length > 0) return undefined;
  return [...(only[1] ?? "").matchAll(new RegExp(number, "g"))].map(([said]) => numberSaid(said));
}

type Wanted = "less" | "more" | "larger" | "smaller";

/** "too much cream", "less cream", "the cream is too much"; "more cream", "too little cream". */
function wanted(text: string, name: string): Wanted | undefined {
  const size = new RegExp(
    `\\b${name} (?:(?:is|as|gets|being|should be|to be|the|a) )*(big|bigger|biggest|larger|largest|main|most|small|smaller|smallest|little|least)(?: (?:one|part|bowl|share))?\\b|\\b(big|bigger|biggest|larger|largest|main|small|smaller|smallest|little) (?:one|part|bowl|share) (?:(?:is|in|gets|goes|for|being|should be|to be|the) )*${name}\\b|\\b(mostly) ${name}\\b`,
  ).exec(text);
  const said = size?.slice(1).find(Boolean);
  if (said) return /^(?:small|little|least)/.test(said) ? "smaller" : "larger";
  const of = "(?: of)?(?: the| that| this)? ";
  const less = new RegExp(
    `\\b(?:too much|(?:a bit |bit |far |way )?too|less|not (?:so|as|that) much|fewer|so much|a lot of)${of}${name}\\b|\\b${name} (?:is|are|was|looks|seems|part is) (?:(?:far|way|a bit|much|just) )?too (?:much|big|large|strong|loud|dark)`,
  );
  const more = new RegExp(
    `\\b(?:more|too little|not enough|(?:a bit|some) more)${of}${name}\\b|\\b${name} (?:is|are|was|looks|seems|part is) (?:(?:far|way|a bit|much|just) )?too (?:little|small|weak|faint)`,
  );
  return more.test(text) ? "more" : less.test(text) ? "less" : undefined;
}

/** The sizes with the names before, in their order, or the other way round where the words ask for that. */
function inOrder(text: string, sizes: readonly number[], last: Topic["inputs"]): Share[] | undefined {
  const names = namesIn(last);
  if (names.length !== sizes.length) return sizes.map((size) => ({ size }));
  const before = sizesIn(last);
  const row = (all: readonly number[]) => all.map((size, at) => ({ size, name: names[at] ?? "" }));
  const share = (all: readonly number[], at: number) =>
    (all[at] ?? 0) / all.reduce((sum, each) => sum + each, 0);
  const said = names.filter((name) => new RegExp(`\\b${name}\\b`).test(text));
  const asks = said.flatMap((name) => {
    const way = wanted(text, name);
    return way ? [{ at: names.indexOf(name), way }] : [];
  });
  // a name that stands there for another reason may say whose the number is
  if (asks.length < said.length) return undefined;
  const isSo: Record<Wanted, (all: readonly number[], at: number) => boolean> = {
    less: (all, at) => share(all, at) < share(before, at),
    more: (all, at) => share(all, at) > share(before, at),
    larger: (all, at) => all[at] === Math.max(...all),
    smaller: (all, at) => all[at] === Math.min(...all),
  };
  const suits = (all: readonly number[]) => asks.every(({ at, way }) => isSo[way](all, at));
  const turned = [...sizes].reverse();
  if (suits(sizes)) return row(sizes);
  return sizes.length === 2 && suits(turned) ? row(turned) : undefined;
}

const even = "(?:even|evenly|equal|equally|alike|identical)";
const sameIn =
  /\b(?:even|evenly|equal|equally|alike|identical|(?:the )?same (?:amount|weight|size|in|much)|all the same|half and half)\b/;
const revises =
  /\b(?:no|nope|nah|just|only|rather|instead|actually|make it|lets|let us|prefer|changed my mind|forget|sorry|wait|would be|will do|is enough|are enough|is plenty|nicer|better|maybe|in|into)\b/;
const bowls = "(?:bowls?|colou?rs?|parts?|portions?|ways|pieces|lots|shades|halves|batches)";
const counted = new RegExp(
  `(?:^| )(${number}) (?:(?:${even}|same|separate|different) )?${bowls}(?= |$)`,
  "g",
);
const inSoMany = new RegExp(`(?:^| )(?:in|into) (${number})(?= ?$| ?,| ${even}| please| then| instead)`, "g");
const pieces: Readonly<Record<string, number>> = { halves: 2, thirds: 3, quarters: 4, fifths: 5 };
const onlyPieces =
  /^(?:[a-z]+ ){0,4}?(?:in |into )?(halves|thirds|quarters|fifths)(?: (?:then|please|instead|will do|is fine))*(?: [.!?])*$/;

/** One part is told by another: they are not alike. */
const isUneven = /\b(?:twice|double|thrice|triple|half (?:as|of|the)|bigger|larger|smaller|less|more)\b/;

/** Another number of parts, all alike. */
function manyIn(text: string): number | undefined {
  const piece = onlyPieces.exec(text)?.[1];
  if (piece) return pieces[piece];
  const found = [...text.matchAll(counted), ...text.matchAll(inSoMany)].map(([, said = ""]) =>
    numberSaid(said),
  );
  const many = found.at(-1);
  if (isUneven.test(text)) return undefined;
  if (many === undefined || new Set(found).size > 1 || !Number.isInteger(many) || many < 2) return undefined;
  return sameIn.test(text) && revises.test(text) ? many : undefined;
}

/** A ratio and no more: no flavor is dosed so. */
const onlyRatio = new RegExp(
  `^(?:(?:no|nah|wait|ok|hm|hmm|actually|and|or|rather|make it|lets do|lets go|,) )*${number}(?: ?:| to) ?${number}(?: (?:please|then|instead|rather|is nicer|is better|looks nicer|looks better))*(?: [.!?])*$`,
);
/** "id like it the other way round", "swap them". */
const otherWay =
  /^(?:(?:no|oh|wait|hm|hmm|sorry|actually|id|i|like|want|prefer|rather|have|it|them|make|do|lets|think|could|we|meant|and|or|what|if|the colou?rs?|,) )*(?:(?:the )?other way (?:round|around|about)|vice versa|swap (?:them|it|the two|those)(?: (?:round|over|around))?|swapped|reversed|the reverse)(?: (?:please|then|instead|rather|looks nicer|would be better))*(?: [.!?])*$/;

const asShares = (shares: readonly Share[]): string =>
  shares.every(({ name }) => name)
    ? shares.map(({ size, name }) => `${size} parts ${name}`).join(" and ")
    : shares.map(({ size }) => size).join(" to ");

/** The sentence put plainly, with the split that it changes; undefined where it changes none. Pure. */
export function sharesAnew(reading: Reading, { last, topics }: State): Anew | undefined {
  const topic = last?.tool === "split" ? last : topics.findLast(({ tool }) => tool === "split");
  if (!last || !topic || topic.inputs.total_g === undefined) return undefined;
  const text = spaced(reading.text.replace(/'/g, ""));
  if (otherMatter.test(text) || reading.whens.length > 0) return undefined;
  if (reading.amounts.some(({ dim }) => dim !== "number")) return undefined;
  const { thing } = topic.inputs;
  if (reading.things.some(({ base }) => base !== undefined && base !== thing)) return undefined;
  const names = namesIn(topic.inputs);
  // "one part lilac, one part mint and one part yellow": another part has joined them
  const isNew = (name: string | undefined) =>
    name !== undefined && !names.some((each) => each.includes(name));
  if (names.length > 0 && reading.things.some(({ color, taste }) => isNew(color ?? taste))) return undefined;
  // with something else asked since, only what can be nothing else
  const isElse = last !== topic && !/\bparts?\b/.test(text) && !names.some((name) => text.includes(name));
  if (isElse && !(last.tool === "dose" && onlyRatio.test(text))) return undefined;
  if (otherWay.test(text) && names.length === 2) {
    const sizes = [...sizesIn(topic.inputs)].reverse();
    return { text: asShares(names.map((name, at) => ({ name, size: sizes[at] ?? 0 }))), topic };
  }
  const beside = besideNames(text, names) ?? behindNames(text, names) ?? oneIn(text, names);
  if (beside) return { text: asShares(beside), topic };
  const ratio = ratioIn(text);
  if (ratio) {
    const shares = inOrder(text, ratio, topic.inputs);
    return shares && { text: asShares(shares), topic };
  }
  const many = reading.things.some(({ color, taste }) => color ?? taste) ? undefined : manyIn(text);
  return many === undefined || (many === names.length && new Set(names).size === many)
    ? undefined
    : { text: `make it ${many} equal bowls`, topic };
}
