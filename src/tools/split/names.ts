/** The names of a bowl's parts: beside their numbers, later in the sentence, by which is the larger. */
import { tastes } from "../../../data/words/flavors.ts";
import type { Amount, Reading, Thing } from "../contract/index.ts";
import type { Draft } from "./said.ts";

type Share = { name?: string; size: number };

/** "3 to 1, plain to gold", "3 to 2 to 1 for pink, green and white": as many names in a row as numbers, in their order. */
export function pairInOrder(reading: Reading): Share[] | undefined {
  const sizes = reading.amounts.filter((each) => isRatioPart(reading, each));
  const [first, last] = [sizes[0], sizes.at(-1)];
  if (!first || !last || sizes.length < 2) return undefined;
  const all = reading.things.filter(
    (each) => (each.color || each.taste || each.chocolate || each.ingredient) && !each.base,
  );
  const behind = all.filter((each) => each.at[0] >= last.at[1]);
  const names =
    behind.length > 0 ? behind : all.filter((each) => each.at[1] <= first.at[0]).slice(-sizes.length);
  const inRow = names
    .slice(1)
    .every((each, at) =>
      joint.test(reading.text.slice(names[at]?.at[1], each.at[0]).replace(at === 0 ? most : /$^/, "")),
    );
  if (names.length !== sizes.length || !inRow) return undefined;
  const order = most.exec(reading.text.slice(names[0]?.at[1], names[1]?.at[0]))?.[1];
  const values = sizes.map(({ value }) => value);
  if (order) values.sort((a, b) => (/^(?:least|smallest|fewest)$/.test(order) ? a - b : b - a));
  return values.map((value, at) => shareOf(value, nameFrom(names[at] as Thing)));
}

/** "3:2:1, rose gets the most then pistachio then lemon": which end of the row the first one is. */
const most =
  /^ (?:gets|get|is|has|having|takes|being|with|getting)(?: the)? (most|largest|biggest|main|bulk|least|smallest|fewest)(?: part| share| of it| one)?(?=,| )/;

/** Between the names of a row. */
const joint = /^(?:,? (?:(?:to|and|then|and then|with|plus|&|n) )?(?:the |some )?|,| ?[:/] ?)$/;

/**
 * "60/40", "50-50", "50:30:20": numbers side by side that make a hundred, with the colors if there are as many.
 * @param bowl is no share
 */
export function hundredOf(reading: Reading, bowl: Amount | undefined): Share[] | undefined {
  const found = /(?:^| )(\d{1,2}(?:(?: ?[/:-] ?| )\d{1,2}){1,5})(?=[ ,.;]|$)/.exec(
    bowl ? ` ${reading.text.slice(bowl.at[1])}` : reading.text,
  );
  const sizes = / fifty fifty(?: |$)/.test(reading.text)
    ? [50, 50]
    : (found?.[1]?.match(/\d+/g) ?? []).map(Number);
  if (sizes.length < 2 || sizes.reduce((sum, each) => sum + each, 0) !== 100) return undefined;
  const colors = reading.things.filter((each) => (each.color || each.taste) && !each.base);
  const names = colors.length === sizes.length ? colors.map((each) => each.color ?? each.taste) : [];
  return sizes.map((size, at) => shareOf(size, names[at]));
}

export const shareOf = (size: number, name: string | undefined): Share => ({
  size,
  ...(name ? { name } : {}),
});

/** "2 to 1", "3 : 2 : 1": the number has another beside it. */
export function isRatioPart(reading: Reading, amount: Amount): boolean {
  const [from, to] = amount.at;
  return (
    (/^(?: ?to |: ?(?=\d)| : ?)(?:\d|one|two|three|four|five)\b/.test(reading.text.slice(to)) &&
      // "in 3: 1 part red" begins a list
      !/^: \d+ pa?rts?\b/.test(reading.text.slice(to))) ||
    (/(?:\d|one|two|three|four|five) ?(?:to|:) ?$/.test(reading.text.slice(0, from)) &&
      !/^ pa?rts?\b/.test(reading.text.slice(to)))
  );
}

const isOfMix = ({ things }: Reading, { at }: Thing): boolean =>
  things.some((each) => each.base !== undefined && each.at[0] === at[1] + 1);

/** The color or taste that follows an amount before the next one, else the one right before it. */
export function nameBeside(reading: Reading, amount: Amount, bowl: Amount | undefined): string | undefined {
  const ofMixes = new Set(reading.things.flatMap((each) => each.base ?? [])).size > 1;
  const isName = (each: Thing) =>
    Boolean((each.color || each.taste || each.chocolate || each.dose || each.ingredient) && !each.base) ||
    (ofMixes && each.base !== undefined && each.base !== "filling");
  const next = reading.amounts
    .filter((each) => each !== bowl && each.at[0] > amount.at[0])
    .map((each) => each.at[0]);
  const rest = reading.text.indexOf(" rest ", amount.at[1]);
  const end = Math.min(...next, rest < 0 ? Number.POSITIVE_INFINITY : rest);
  const after = reading.things.find((each) => isName(each) && each.at[0] >= amount.at[1] && each.at[0] < end);
  // "pink half and white half", "pink 50 % white 25 %": the names come first throughout
  const joined = reading.things.find((each) => isName(each) && amount.at[0] - each.at[1] === 1);
  const shares = reading.amounts.filter((each) => each !== bowl).map((each) => each.at[0]);
  const names = reading.things
    // "mint 100, pink 120": a taste may stand in a row of colors, "apricot ganache" is none of it
    .filter((each) => (each.color || (each.taste && !isOfMix(reading, each))) && !each.base)
    .map((each) => each.at[0]);
  const from = bowl ? bowl.at[1] : 0;
  const first = Math.min(...names.filter((at) => at >= from || at < (bowl?.at[0] ?? 0)));
  if (joined && (joined.color || joined.taste) && first < Math.min(...shares)) return nameFrom(joined);
  // "half lemon buttercream, half mint ganache"
  const mixOf = ofMixes
    ? reading.things.find((each) => each.base && each.at[0] >= amount.at[1] && each.at[0] < end)
    : undefined;
  if (after && mixOf && after !== mixOf) return `${nameFrom(after)} ${nameFrom(mixOf)}`;
  const mix = mixBeside(reading, amount);
  if (mix && (!after || after.at[0] > mix.at[1] + 1)) return mix.base;
  if (after) return nameFrom(after);
  const before = reading.things.findLast(
    (each) => isName(each) && each.at[1] <= amount.at[0] && amount.at[0] - each.at[1] <= 4,
  );
  return before && nameFrom(before);
}

/** "3 to 1, three parts pink": the number said once more, with its name. */
export function namedLater(
  { amounts, text }: Reading,
  amount: Amount,
  parts: readonly Amount[],
): string | undefined {
  if (parts.filter((each) => each.value === amount.value).length > 1) return undefined;
  const again = amounts.find(
    (each) =>
      !parts.includes(each) && each.value === amount.value && /^ parts? /.test(text.slice(each.at[1])),
  );
  return again && /^ parts? (?:of )?(\S+)/.exec(text.slice(again.at[1]))?.[1];
}

/** The one name of the shares before that none has yet, where one has none. */
export function otherNamed(parts: Share[], before: Draft | undefined): Share[] {
  const names = [...(before?.percents ?? []), ...(before?.parts ?? [])].flatMap((each) => each.name ?? []);
  // "make it two to one", of the same two in their order
  if (parts.length > 1 && parts.length === names.length && parts.every((each) => each.name === undefined))
    return parts.map((each, at) => ({ ...each, name: names[at] }));
  const left = names.filter((name) => !parts.some((each) => each.name === name));
  const [name] = left;
  const nameless = parts.filter((each) => each.name === undefined);
  return name && left.length === 1 && nameless.length === 1 && parts.length === names.length
    ? parts.map((each) => (each.name === undefined ? { ...each, name } : each))
    : parts;
}

/** "2:1, the big part raspberry": named by which is the larger. */
export function namedBySize(reading: Reading, parts: readonly Amount[]): Share[] | undefined {
  const said = [
    ...reading.mask.matchAll(
      /the (big|bigger|biggest|larger|largest|small|smaller|smallest|little) (?:part|half|bowl|one|share|bit)\S* (?:(?:is|in|gets|goes|will be|should be|to be|for|stays|with|the|left) )*(\S+)<[^>]*(?:taste|color)=/g,
    ),
  ];
  const sizes = parts.map((each) => each.value);
  if (said.length === 0 || new Set(sizes).size !== sizes.length) return undefined;
  const names = new Map(
    said.map(([, size = "", name = ""]) => [
      /^(?:big|larg)/.test(size) ? Math.max(...sizes) : Math.min(...sizes),
      name.replaceAll("_", " "),
    ]),
  );
  return sizes.map((size) => shareOf(size, names.get(size)));
}

/**
 * The names of so many bowls: "lemon rasp and vanilla" in three are three, though "lemon raspberry" may be one taste.
 * @returns undefined where there aren't as many names as bowls
 */
export function namesFor(hues: readonly Thing[], bowls: number): string[] | undefined {
  const whole = hues.map(nameFrom);
  if (whole.length === bowls) return whole;
  const apart = whole.flatMap((name) => {
    const words = name.split(" ");
    return words.every((word) => tastes.some((each) => each.taste === word)) ? words : [name];
  });
  return apart.length === bowls ? apart : undefined;
}

export const nameFrom = (thing: Thing) => thing.color ?? thing.taste ?? thing.base ?? thing.text;

/** Mixes that a part of a filling may be; "the rest of the batter" is the bowl itself. */
const partMixes: ReadonlySet<string> = new Set(["buttercream", "ganache"]);
const beforeMix =
  /\b(?:rest|remainder|remaining)(?: (?:is|as|in|goes|stays|will|be|gets|with|dark|milk|white|a|an))* $/;

/** "a third lemon curd, the rest buttercream": what is left is called by its mix, where the bowl isn't. */
function mixOfRest({ text, things }: Reading): string | undefined {
  const mix = things.find((each) => each.base && beforeMix.test(text.slice(0, each.at[0])));
  if (!mix?.base || !partMixes.has(mix.base)) return undefined;
  return things.filter((each) => each.base === mix.base).length === 1 ? mix.base : undefined;
}

/** "two thirds buttercream, one third curd": a mix that stands right behind one share of several. */
const mixBeside = (reading: Reading, amount: Amount): Thing | undefined => {
  const isShare = (each: Amount) => Boolean(each.fraction) || each.dim === "percent";
  const several = reading.amounts.filter(isShare).length > 1 || / (?:rest|remainder)\b/.test(reading.text);
  const mix = reading.things.find(
    (each) => each.base && partMixes.has(each.base) && each.at[0] === amount.at[1] + 1,
  );
  const once = reading.things.filter((each) => each.base === mix?.base).length === 1;
  return isShare(amount) && several && once ? mix : undefined;
};

export function restName(reading: Reading): Draft {
  const mix = mixOfRest(reading);
  if (mix) return { rest: mix };
  const plain = /(?:^| )(?:the_)?rest_(?:\S+_)?(plain|natural|white|uncolou?red)(?:<|_| |$)/.exec(
    reading.mask,
  )?.[1];
  if (plain) return { rest: plain };
  const match =
    /(?:the_rest\S*|the rest(?: \S+)?|(?<=(?:<\S+|,) )rest\S*|remainder|remaining|others?)\S* (?:stays? |left |is |in |goes |gets |becomes |be |for |to |can be )*(\S+)<(?:chocolate|(?:[^>]*,)?(?:color|taste)=|[^>]*color)/.exec(
      reading.mask,
    );
  return match?.[1] ? { rest: match[1].replaceAll("_", " ") } : {};
}
