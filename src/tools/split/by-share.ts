/** Parts by percentages, fractions, ratios and counts, as they are said or put right. */
import type { Amount } from "../contract/index.ts";
import { bareNumbers, says } from "../lib/find.ts";
import {
  hundredOf,
  isRatioPart,
  namedBySize,
  namedLater,
  nameFrom,
  namesFor,
  otherNamed,
  pairInOrder,
  shareOf,
} from "./names.ts";
import { oneOfThem, relatedParts } from "./relations.ts";
import type { Draft, Said } from "./said.ts";

const namesBefore = ({ before }: Said): string[] =>
  (before?.parts ?? before?.percents ?? before?.weights ?? []).flatMap(({ name }) => name ?? []);

/** "one of them twice the others", "twice as much pink as white". */
export function related(said: Said): Draft | undefined {
  const { reading, before } = said;
  const [bowls = before?.equal] = bowlsIn(said).map(({ value }) => value);
  const unlike = before && bowls !== undefined ? oneOfThem(reading, bowls) : undefined;
  if (unlike) return { parts: unlike };
  const parts = relatedParts(reading, namesBefore(said));
  return parts && { parts };
}

/** "three to one, plain to gold", "60/40", "50:30:20". */
export function inOrder({ reading, bowl, before }: Said): Draft | undefined {
  const parts = pairInOrder(reading) ?? hundredOf(reading, bowl);
  // "no 50 50", of the same two in their order
  return parts && { parts: otherNamed(parts, before) };
}

const putsRight = /^(?:no|nope|nah|sorry|oops|actually|make it|make that|rather|wait|ok)\b/;

/** "no 40", "make it 40 %": one share was said of the bowl, and this is its new size. */
export function onlyShareChanged({ reading, before, named, bowl }: Said): Draft | undefined {
  const [share, ...more] = reading.amounts;
  if (!before?.percents || !share || more.length > 0 || share === bowl || named(share)) return undefined;
  const isShare =
    share.dim === "percent" ||
    (share.dim === "number" && share.unit === "" && !share.fraction && share.of?.count !== "bowls");
  const isSaid = share.dim === "percent" || putsRight.test(reading.text);
  if (!isShare || !isSaid || share.value >= 100 || reading.things.length > 0) return undefined;
  const [only, ...others] = before.percents;
  // of several it isn't said which: it is asked
  if (!only || others.length > 0) return { percents: [] };
  return {
    percents: [{ ...only, size: share.value }],
    ...(before.rest ? { rest: before.rest } : {}),
  };
}

/** "2 parts pink", behind one part each: that part takes its new size. */
export function partChanged({ reading, before }: Said): Draft | undefined {
  const [size, ...more] = reading.amounts;
  const [name, ...others] = reading.things.flatMap((each) => each.color ?? each.taste ?? []);
  if (!before?.parts || size?.dim !== "number" || more.length > 0 || !name || others.length > 0)
    return undefined;
  const isParts = /^ (?:whole )?pa?rts? /.test(reading.text.slice(size.at[1]));
  return isParts && before.parts.some((each) => each.name === name)
    ? { parts: before.parts.map((each) => (each.name === name ? { ...each, size: size.value } : each)) }
    : undefined;
}

/** "pink 60 %, white 25 %". "split in 2, one with lemon at 4 %" says how much lemon, and no share. */
export function percents({ reading, named, rest, before }: Said): Draft | undefined {
  const inBowls = says(reading, /(?:in|into) (?:\S*<number[,>]|two|three|four)/);
  const found = reading.amounts.filter(
    (each) => each.dim === "percent" && !(inBowls && / at $/.test(reading.text.slice(0, each.at[0]))),
  );
  if (found.length === 0) return undefined;
  const all = withFractions(found, reading.amounts, named);
  const row = rowOfNames(reading, all);
  const shares = all.map((each, at) =>
    shareOf(each.dim === "percent" ? each.value : each.value * 100, row ? row[at] : named(each)),
  );
  return { percents: shares, ...otherOfTwo(shares, before), ...rest };
}

/** "40 percent lemon, a third mint, the rest plain": a fraction with a name of its own is a share like them. */
function withFractions(
  percents: readonly Amount[],
  amounts: readonly Amount[],
  named: Said["named"],
): readonly Amount[] {
  const isShare = (each: Amount) =>
    each.dim === "number" && Boolean(each.fraction) && each.value < 1 && named(each) !== undefined;
  const mixed = amounts.filter((each) => percents.includes(each) || isShare(each));
  const sum = mixed.reduce((all, each) => all + (each.dim === "percent" ? each.value : each.value * 100), 0);
  const isNamed = percents.every((each) => named(each) !== undefined);
  return isNamed && sum <= 100 + 1e-6 ? mixed : percents;
}

/** "1/3 and 2/3, pink and green", "pink and green, 40 % and 60 %": a row of names beside a row of shares, in one order. */
function rowOfNames({ things }: Said["reading"], shares: readonly Amount[]): string[] | undefined {
  const hues = things.filter((each) => (each.color || each.taste) && !each.base && !each.dose);
  const [from, to] = [
    Math.min(...shares.map((each) => each.at[0])),
    Math.max(...shares.map((each) => each.at[1])),
  ];
  const beside = hues.every((each) => each.at[0] >= to) || hues.every((each) => each.at[1] <= from);
  const names = hues.flatMap((each) => nameFrom(each) ?? []);
  return beside && shares.length > 1 && names.length === shares.length ? names : undefined;
}

/** "60 % pink", behind pink and blue: what is left is the blue. */
function otherOfTwo(shares: { name?: string }[], before: Said["before"]): Draft {
  const names = (before?.parts ?? before?.weights ?? []).flatMap(({ name }) => name ?? []);
  const [said, ...more] = shares;
  const other = names.find((name) => name !== said?.name);
  return names.length === 2 && more.length === 0 && said?.name && names.includes(said.name) && other
    ? { rest: other }
    : {};
}

/** "no, 40 green", "make it 70 and 30 instead", "equal parts then": the shares before, put right. */
export function changedShare({ reading, before, named }: Said): Draft | undefined {
  const [share, ...more] = reading.amounts.filter(
    (each) => each.dim === "number" && !each.fraction && each.of?.count !== "bowls",
  );
  const shared =
    share && before?.percents?.find((each) => each.name !== undefined && each.name === named(share));
  if (before?.percents && share && shared && more.length === 0 && share.value < 100)
    return {
      percents: before.percents.map((each) => (each === shared ? { ...each, size: share.value } : each)),
      ...(before.rest ? { rest: before.rest } : {}),
    };
  const bare = bareNumbers(reading);
  if (
    before?.percents &&
    bare.length === before.percents.length &&
    Math.abs(bare.reduce((sum, each) => sum + each.value, 0) - 100) < 1e-9
  )
    return { percents: before.percents.map((each, at) => ({ ...each, size: bare[at]?.value ?? each.size })) };
  const isEven = says(
    reading,
    /(?:one|1|equal|same)\S* (?:part|share|amount|\S+<count=bowls>)s? each|equal[ _]parts|(?:^| )(?:even|evenly|equally|alike)(?: |$)/,
  );
  const shares = before?.parts ?? before?.percents;
  // what is left beside the percentages isn't among them
  return isEven && shares && shares.length > 1 && !before?.rest
    ? { parts: shares.map((each) => ({ ...each, size: 1 })) }
    : undefined;
}

/** "a third pink the rest plain", "thirds pink white green". */
export function fractions({ reading, numbers, named, rest }: Said): Draft | undefined {
  const found = numbers.filter((each) => each.fraction);
  const [piece] = found;
  const names = reading.things.filter((each) => (each.color || each.taste) && !each.base && !each.dose);
  if (piece && found.length === 1 && names.length > 2 && Math.abs(1 / piece.value - names.length) < 1e-6)
    return { parts: names.map((each) => shareOf(1, nameFrom(each))) };
  const isHow = found.length === 1 && /(?:in|into) \S*<number,fraction>$/.test(reading.mask.trim());
  const row = rowOfNames(reading, found);
  return found.length > 0 && !isHow
    ? { percents: found.map((each, at) => shareOf(each.value * 100, row ? row[at] : named(each))), ...rest }
    : undefined;
}

/** "between 24 lemon, 18 rose and 18 coffee", "480 g batter, 24 pink 12 green": by how many there are of each. */
export function byCount({ reading, numbers, bowl }: Said): Draft | undefined {
  const named = numbers.filter((each) => each.of?.taste ?? each.of?.color);
  const share = (each: Amount) => shareOf(each.value, each.of?.color ?? each.of?.taste);
  if (named.length > 1 && says(reading, /between \S*<number>/)) return { parts: named.map(share) };
  const few = named.filter((each) => !each.fraction && each.value <= 60);
  return bowl && few.length > 1 && few.some((each) => each.value > 4) ? { parts: few.map(share) } : undefined;
}

/** "into 3 bowls, 3 2 1", "1 part red 2 parts white", "one pink one plain". */
export function byParts({ reading, numbers, bowl, named }: Said): Draft | undefined {
  const [ways, ...sizes] = numbers;
  const listed =
    ways?.of?.count === "bowls" &&
    ways.value === sizes.length &&
    sizes.length > 1 &&
    sizes.every((each) => !each.of && each.value > 0 && !isRatioPart(reading, each));
  if (bowl && listed) return { parts: sizes.map((each) => shareOf(each.value, undefined)) };
  const isPart = (each: Amount) => /^ pa?rts? (?:of )?[a-z]/.test(reading.text.slice(each.at[1]));
  // "2 parts pink 1 white": the later ones without the word
  const first = numbers.findIndex(isPart);
  const inParts = numbers.filter(
    (each, at) =>
      isPart(each) || (first >= 0 && at > first && /^ [a-z]/.test(reading.text.slice(each.at[1]))),
  );
  if (inParts.length > 1 && inParts.every((each) => named(each) !== undefined))
    return { parts: inParts.map((each) => shareOf(each.value, named(each))) };
  const singles = numbers.filter((each) => each.value === 1 && (each.of?.taste ?? each.of?.color));
  const others = numbers.filter((each) => !singles.includes(each));
  return singles.length > 1 && others.every((each) => each.value === singles.length)
    ? { parts: singles.map((each) => shareOf(1, each.of?.color ?? each.of?.taste)) }
    : undefined;
}

const bowlsIn = ({ reading, numbers }: Said): Amount[] => {
  const ratio = numbers.filter((each) => isRatioPart(reading, each));
  return ratio.length > 1 ? ratio : numbers.filter((each) => each.of?.count === "bowls");
};

/** "in 4 equal bowls, in one bowl comes matcha", "into 3 bowls, 2 bowls pink": some of them, and no parts beside them. */
export function someOfThem({ reading, numbers, named, rest }: Said): Draft | undefined {
  const isInto = ({ at }: Amount) =>
    /\b(?:in|into|between|among|over) (?:about )?$/.test(reading.text.slice(0, at[0]));
  const ways = numbers.find((each) => isInto(each) && (!each.of || each.of.count === "bowls"));
  // "into five parts three parts and two parts" is a ratio
  const some = numbers.filter(
    (each) =>
      each !== ways &&
      each.of?.count === "bowls" &&
      !/^ (?:equal )?pa?rts?\b/.test(reading.text.slice(each.at[1])),
  );
  const taken = some.reduce((sum, each) => sum + each.value, 0);
  if (!ways || some.length === 0 || taken > ways.value || ways.value < 2) return undefined;
  const left = ways.value - taken;
  if (![...some, ways].every((each) => Number.isInteger(each.value)) || ways.value > mostBowls)
    return undefined;
  const others = rest.rest
    ? [{ size: left, name: rest.rest }]
    : Array.from({ length: left }, () => ({ size: 1 }));
  return {
    parts: [...some.map((each) => shareOf(each.value, named(each))), ...(left > 0 ? others : [])],
  };
}

/** Nobody sets out more. */
const mostBowls = 20;

const one = "one\\S*(?: of (?:them|those|these)| bowl\\S*| part)?";
const verbs =
  "(?:(?:i|want|wanna|ill|make|comes|come|goes|go|gets|is|with|should|will|to|be|has|have|for|in|into|only|just|colou?red|dyed|tinted|turned|made) )*";
const hue = "([^ <]+)<[^ >]*(?:taste|color)=[^ >]*>";
const oneNamed = new RegExp(
  `(?:^| )${one} ${verbs}${hue}|${hue} ${verbs}(?:in|into|for) (?:just |only )?${one}(?= |$)`,
  "g",
);

/** "split it 4 ways, one of them matcha": named, so that what goes into it can be asked for. */
export function oneOfEqual({ reading, numbers, rest }: Said): Draft | undefined {
  const [ways, ...more] = numbers;
  const hues = reading.things.filter((each) => (each.color || each.taste) && !each.base);
  const names = [...reading.mask.matchAll(oneNamed)].map((each) =>
    (each[1] ?? each[2] ?? "").replaceAll("_", " "),
  );
  // "in 2, one purple": the one is of its color
  const isPlain =
    more.every((each) => each.value === 1 && (!each.of || hues.includes(each.of))) && rest.rest === undefined;
  if (!ways || !isPlain || !Number.isInteger(ways.value) || ways.value < 2 || ways.value > mostBowls)
    return undefined;
  if (names.length === 0 || names.length !== hues.length || names.length >= ways.value) return undefined;
  if (
    !/\b(?:in|into|between|among|over) $|^$/.test(reading.text.slice(0, ways.at[0])) &&
    !/^ (?:equal )?(?:ways|bowls)\b/.test(reading.text.slice(ways.at[1]))
  )
    return undefined;
  return {
    parts: Array.from({ length: ways.value }, (_, at) => shareOf(1, names[at])),
  };
}

/** "2 to 1", "3 : 2 : 1, the big part pink". */
/** "3 pink to 2 green to 1 white": each with its own. */
const chain = /<number[^>]*> \S*<[^>]*(?:color|taste)=\S* (?:to|:) \S*<number/;

/** "3 to 2 to 1 for pink and green": two names behind three numbers, and nobody said whose they are. */
const isRowBehind = ({ things }: Said["reading"], parts: readonly Amount[]): boolean => {
  const end = Math.max(...parts.map((each) => each.at[1]));
  const hues = things.filter(
    (each) => (each.color || each.taste || each.chocolate || each.ingredient) && !each.base,
  );
  return hues.filter((each) => each.at[0] >= end).length > 1 && hues.every((each) => each.at[0] >= end);
};

export function byRatio(said: Said): Draft | undefined {
  const { reading, named, before } = said;
  const chained = says(reading, chain) ? said.numbers.filter((each) => named(each) !== undefined) : [];
  if (chained.length > 1) return { parts: chained.map((each) => shareOf(each.value, named(each))) };
  const parts = bowlsIn(said);
  if (parts.length < 2) return undefined;
  const shares = isRowBehind(reading, parts)
    ? parts.map((each) => shareOf(each.value, undefined))
    : parts.map((each) => shareOf(each.value, named(each) ?? namedLater(reading, each, parts)));
  return { parts: namedBySize(reading, parts) ?? otherNamed(shares, before) };
}

const plurals: Readonly<Record<string, number>> = {
  thirds: 3,
  quarters: 4,
  fourths: 4,
  fifths: 5,
  sixths: 6,
  eighths: 8,
};

/** "480 g, thirds please", "split it in quarters": as many parts alike, where none of them has a name. */
function inPlural({ amounts, things }: Said["reading"]): number | undefined {
  const [share, ...others] = amounts.filter(({ dim }) => dim === "number");
  const isNamed = things.some(({ color, taste, base }) => (color ?? taste) && !base);
  return share && others.length === 0 && !isNamed ? plurals[share.text] : undefined;
}

/** "in halves", "split in 3", "3 equal bowls, pink green and white", "evenly pink and blue". */
export function halves({ reading }: Said): Draft | undefined {
  const plural = inPlural(reading);
  if (plural !== undefined) return { equal: plural };
  const piece = reading.amounts.find((each) => each.unit === "times" && each.value < 1);
  return piece && { equal: Math.round(1 / piece.value) };
}

export const inTwo = ({ reading }: Said): Draft | undefined =>
  says(reading, /(?:evenly|equally) (?:in|into) two|(?:in|into) hal|half.and.half|in two halves/)
    ? { equal: 2 }
    : undefined;

/** "pink, yellow and white, same amount each". */
const asMuchOfEach =
  /evenly|equal|split|divide|(?:^| )(?:the )?same (?:(?:amount|weight|size|share|quantity|much|of|in|for|to) )*(?:each|every|all|both)(?: |$)|(?:^| )(?:as much|alike)(?: (?:of|in|for))? (?:each|every)/;

export function equally(said: Said): Draft | undefined {
  const { reading, memory, numbers } = said;
  const parts = bowlsIn(said);
  const hues = reading.things.filter((each) => (each.color || each.taste) && !each.base && !each.dose);
  if (parts.length === 1 && hues.length > 1 && hues.length === parts[0]?.value)
    return { parts: hues.map((each) => shareOf(1, nameFrom(each))) };
  const one = parts[0] ?? numbers.find((each) => each.of?.color || each.of?.taste) ?? numbers[0];
  // "split 500 g buttercream in 3, lemon, raspberry and vanilla"
  const [ways] = numbers;
  const names = ways && hues.length > 1 && numbers.length === 1 ? namesFor(hues, ways.value) : undefined;
  if (names) return { parts: names.map((name) => shareOf(1, name)) };
  const splits =
    /split|divide|share|equal|into|between|ways|bowls|(?:^| )(?:cut|halve|part|separate)\S* .* in \S*<number>(?: |$)/;
  if (
    one &&
    one.value <= 100 &&
    (parts.length === 1 || says(reading, splits) || memory.follows || memory.slot === "equal")
  ) {
    const unlike = oneOfThem(reading, one.value);
    return unlike ? { parts: unlike } : { equal: one.value };
  }
  const [bare] = bareNumbers(reading);
  if (bare && memory.slot === "equal") return { equal: bare.value };
  return hues.length > 1 && says(reading, asMuchOfEach)
    ? { parts: hues.map((each) => shareOf(1, nameFrom(each))) }
    : undefined;
}
