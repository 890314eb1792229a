/**
 * An order that is told by how many there are of each: "15 with raspberry buttercream and 15 with pistachio ganache",
 * "buttercream for 15 and ganache for 15", "30 macarons in 3 flavors, 12 9 9". The filling is shared out by the counts.
 */
import type { Amount, Reading, Thing } from "../contract/index.ts";
import type { NamedShare } from "../lib/shares.ts";

export interface CountedMixes {
  macarons: number;
  shares: NamedShare[];
}

/** Flavors that are counted: "2 flavors", "three different flavours". */
const flavorsBehind = /^ (?:(?:different|separate|kinds of|other) )?(?:flavou?rs|tastes|kinds|sorts)\b/;

/** "2 flavors": so many, and no grams of one. */
export const flavorsCounted = ({ amounts, text }: Reading): Amount | undefined =>
  amounts.find(
    (each) =>
      isCount(each) && each.value > 1 && each.value <= 12 && flavorsBehind.test(text.slice(each.at[1])),
  );

const isCount = ({ dim, unit, fraction, value }: Amount): boolean =>
  dim === "number" && unit === "" && !fraction && Number.isInteger(value) && value > 0;

/** Between two that are counted: the names before it are of the one, those behind it of the next. */
const joints = /(?:,|;|\+|&|\b(?:and|plus|then)\b)/;

const tasteOf = (thing: Thing): string | undefined =>
  thing.taste ?? thing.chocolate ?? (thing.count || thing.base ? undefined : thing.ingredient);
const mixOf = (thing: Thing): string | undefined =>
  thing.base && thing.base !== "filling" && thing.base !== "batter" ? thing.base : undefined;

interface Named {
  taste?: string | undefined;
  base?: string | undefined;
}

/** What is named from one place to another: its first taste and its first mix. */
function namedIn({ things }: Reading, from: number, to: number): Named {
  const inside = things.filter(({ at }) => at[0] >= from && at[1] <= to);
  return {
    taste: inside.map(tasteOf).find((each) => each !== undefined),
    base: inside.map(mixOf).find((each) => each !== undefined),
  };
}

const isNamed = ({ taste, base }: Named): boolean => taste !== undefined || base !== undefined;

/** "raspberry buttercream 15", "buttercream for 15": what they are stands before each number, after the last joint. */
function namesBefore(reading: Reading, counts: readonly Amount[]): Named[] {
  return counts.map(({ at }, n) => {
    const from = counts[n - 1]?.at[1] ?? 0;
    const between = reading.text.slice(from, at[0]);
    const joint = joints.exec(between);
    const before = namedIn(reading, n > 0 && joint ? from + joint.index : from, at[0]);
    // "buttercream for 15 lemon": the taste may stand behind the number
    const to = counts[n + 1]?.at[0] ?? reading.text.length;
    const rest = reading.text.slice(at[1], to);
    const end = joints.exec(rest);
    const { taste } = namedIn(reading, at[1], end ? at[1] + end.index : to);
    return { base: before.base, taste: before.taste ?? taste };
  });
}

/** "15 w raspberry buttercream": what they are stands behind each number. */
const namesBehind = (reading: Reading, counts: readonly Amount[]): Named[] =>
  counts.map(({ at }, n) => namedIn(reading, at[1], counts[n + 1]?.at[0] ?? reading.text.length));

/** "for 15 and ganache for 15": each number ends what it is of. */
const endsName = / (?:for|in|into|on|to fill|fills?) (?:the |just |only |about |my |those )*$/;

function namesOf(reading: Reading, counts: readonly Amount[]): Named[] | undefined {
  const before = namesBefore(reading, counts);
  const behind = namesBehind(reading, counts);
  const isEnded = counts.every(({ at }) => endsName.test(` ${reading.text.slice(0, at[0])}`));
  if (isEnded && before.every(({ base }) => base !== undefined)) return before;
  if (behind.every(isNamed)) return behind;
  return before.every(isNamed) ? before : undefined;
}

/**
 * @returns undefined where fewer than two are counted, where something is weighed, or where it isn't plain what they
 * are: two names at least one of which is a mix, or counts that make the number said of all
 */
export function mixesCounted(reading: Reading): CountedMixes | undefined {
  const ways = flavorsCounted(reading);
  if (reading.amounts.some(({ dim }) => dim === "weight" || dim === "money" || dim === "time"))
    return undefined;
  const all = reading.amounts.filter(
    (each) => each !== ways && isCount(each) && (!each.of?.count || each.of.count === "macarons"),
  );
  const whole = all.find(
    (each) =>
      each.of?.count === "macarons" &&
      all.length > 2 &&
      all.reduce((sum, other) => sum + (other === each ? 0 : other.value), 0) === each.value,
  );
  const counts = all.filter((each) => each !== whole);
  // "two flavors, lemon and rose, 15 of each"
  const [first] = counts;
  const ofEach = ways && counts.length === 1 && first ? ofEachNamed(reading, first) : undefined;
  if (ofEach) return ofEach;
  const evenly = ways && counts.length === 1 ? namedEvenly(reading, ways.value, counts) : undefined;
  if (evenly) return evenly;
  const rest = counts.length === 2 ? withRest(reading, counts) : undefined;
  if (rest) return rest;
  const [only] = counts;
  if (counts.length < 2) return only && ofEachNamed(reading, only);
  const names = namesOf(reading, counts);
  const macarons = counts.reduce((sum, { value }) => sum + value, 0);
  if (!names) {
    // "12 9 9" of 30, in so many flavors, and none of them named
    return whole && ways?.value === counts.length
      ? { macarons, shares: counts.map(({ value }) => share(`for ${value}`, undefined, value, macarons)) }
      : undefined;
  }
  const called = names.map(({ taste, base }) => [taste, base].filter(Boolean).join(" "));
  const isApart = new Set(called).size === called.length;
  if (!isApart || (!whole && !names.some(({ base }) => base))) return undefined;
  return {
    macarons,
    shares: counts.map(({ value }, n) => share(called[n] ?? "", names[n]?.base, value, macarons)),
  };
}

/** "40 macarons, 25 buttercream and the rest ganache": what is left of all of them is the rest. */
function withRest(reading: Reading, [all, some]: readonly Amount[]): CountedMixes | undefined {
  const at = reading.text.search(/\b(?:the )?(?:rest|remainder|remaining|others)\b/);
  if (all?.of?.count !== "macarons" || !some || at < some.at[1] || some.value >= all.value) return undefined;
  const names = [namedIn(reading, some.at[1], at), namedIn(reading, at, reading.text.length)];
  const called = names.map(({ taste, base }) => [taste, base].filter(Boolean).join(" "));
  if (!names.every(isNamed) || called[0] === called[1]) return undefined;
  const counts = [some.value, all.value - some.value];
  return {
    macarons: all.value,
    shares: counts.map((count, n) => share(called[n] ?? "", names[n]?.base, count, all.value)),
  };
}

const ofEach = /^ (?:(?:macarons?|macs) )?(?:(?:of|for|in|with) )?each\b/;

/** "15 of each flavor, lemon and rose", "12 each of lemon buttercream and dark ganache": so many with every one of them. */
function ofEachNamed(reading: Reading, { value, at }: Amount): CountedMixes | undefined {
  if (!ofEach.test(reading.text.slice(at[1]))) return undefined;
  const mixes = reading.things.flatMap((thing, n) => {
    const base = mixOf(thing);
    const before = reading.things[n - 1];
    const taste = before && thing.at[0] - before.at[1] <= 1 ? tasteOf(before) : undefined;
    return base ? [{ name: [taste, base].filter(Boolean).join(" "), base }] : [];
  });
  const named = mixes.length > 0 ? mixes : tastesNamed(reading).map((name) => ({ name, base: undefined }));
  const names = [...new Set(named.map(({ name }) => name))];
  if (names.length < 2 || names.length !== named.length) return undefined;
  const macarons = value * names.length;
  return { macarons, shares: named.map(({ name, base }) => share(name, base, value, macarons)) };
}

const share = (name: string, base: string | undefined, count: number, whole: number): NamedShare => ({
  name,
  share: count / whole,
  count,
  ...(base ? { base } : {}),
});

/** "30 macarons, 2 flavors raspberry pistachio": as many tastes are named as there are flavors, and they share evenly. */
function namedEvenly(reading: Reading, ways: number, [all]: readonly Amount[]): CountedMixes | undefined {
  const tastes = [...new Set(tastesNamed(reading))];
  return all && tastes.length === ways
    ? { macarons: all.value, shares: tastes.map((name) => ({ name, share: 1 / ways })) }
    : undefined;
}

/** The tastes that are named, each once. */
export const tastesNamed = ({ things }: Reading): string[] =>
  things.flatMap((each) => (each.count || each.base ? [] : (each.taste ?? [])));
