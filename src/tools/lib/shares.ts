/** "half raspberry half pistachio", "two thirds ganache, the rest buttercream", "12 dark and 12 white": shares by name. */
import type { Amount, Reading, Table, Thing } from "../contract/index.ts";

export interface NamedShare {
  name: string;
  /** Of the whole, above 0 and below 1; all of them make 1. */
  share: number;
  /** The mix it is of, where the name is one. */
  base?: string;
  /** So many of them, where they were counted. */
  count?: number;
}

const nameOf = (thing: Thing): string | undefined =>
  thing.base && thing.base !== "filling" && thing.base !== "batter"
    ? thing.taste
      ? `${thing.taste} ${thing.base}`
      : thing.base
    : (thing.taste ??
      thing.chocolate ??
      thing.color ??
      (thing.ingredient && !thing.count ? thing.ingredient : undefined));

/** The first thing with a name behind an amount, before the next amount. */
function behind(
  { things, amounts, text }: Reading,
  { at }: { at: readonly [number, number] },
): Thing | undefined {
  const next = Math.min(
    // "half of 40 macarons with buttercream": the share is of those, and its name comes behind them
    ...amounts
      .filter((each) => each.at[0] >= at[1] && text.slice(at[1], each.at[0]).trim() !== "of")
      .map((each) => each.at[0]),
    text.length,
  );
  const rest = text.indexOf(" rest", at[1]);
  const end = Math.min(next, rest < 0 ? text.length : rest);
  return things.find((each) => each.at[0] >= at[1] && each.at[0] < end && nameOf(each) !== undefined);
}

const shareOf = ({ dim, value, fraction }: Amount): number | undefined => {
  const share = dim === "percent" ? value / 100 : dim === "number" && fraction ? value : undefined;
  return share !== undefined && share > 0 && share < 1 ? share : undefined;
};

/**
 * The shares of a sentence, each with its name; a rest with a name takes what is left.
 * @returns undefined where they don't make a whole, or one of them has no name
 */
export function namedShares(reading: Reading): NamedShare[] | undefined {
  const found = reading.amounts.flatMap((amount) => {
    const share = shareOf(amount);
    const thing = share === undefined ? undefined : behind(reading, amount);
    return share === undefined ? [] : [{ share, thing }];
  });
  if (found.length === 0 || found.some(({ thing }) => !thing)) return undefined;
  const shares = found.map(({ share, thing }) => named(thing as Thing, share));
  const left = 1 - shares.reduce((sum, each) => sum + each.share, 0);
  const at = reading.text.search(/\b(?:rest|remainder)\b/);
  const rest =
    at < 0 ? undefined : reading.things.find((each) => each.at[1] > at + 4 && nameOf(each) !== undefined);
  if (left > 1e-6) return rest ? [...shares, named(rest, left)] : undefined;
  return Math.abs(left) <= 1e-6 && shares.length > 1 ? shares : undefined;
}

const named = (thing: Thing, share: number): NamedShare => ({
  name: nameOf(thing) ?? thing.text,
  share,
  ...(thing.base ? { base: thing.base } : {}),
});

/** "12 dark and 12 white", of 24: by how many there are of each. */
export function countedShares(reading: Reading, whole: number | undefined): NamedShare[] | undefined {
  const counts = reading.amounts.filter(
    (each) => each.dim === "number" && each.unit === "" && !each.fraction && each.of?.count !== "macarons",
  );
  const things = counts.map((each) => behind(reading, each));
  const sum = counts.reduce((all, each) => all + each.value, 0);
  if (counts.length < 2 || things.some((each) => !each) || sum !== whole) return undefined;
  return counts.map((each, n) => named(things[n] as Thing, each.value / sum));
}

/** The one share of an order that a sentence names: "for the raspberry ones". */
export function shareSaid(reading: Reading, shares: Table["shares"] = []): NamedShare | undefined {
  const hits = shares.filter(({ name }) =>
    reading.things.some(
      (each) => each.taste === name || each.chocolate === name || each.base === name || nameOf(each) === name,
    ),
  );
  return hits.length === 1 ? hits[0] : undefined;
}

/**
 * "make coffee 24", "lemon cancelled", of an order that was shared out: how many there are of each then.
 * @returns undefined where none of them is changed
 */
export function sharesChanged(
  reading: Reading,
  shares: readonly NamedShare[],
  macarons: number,
): { shares: NamedShare[]; macarons: number } | undefined {
  const named = shareSaid(reading, [...shares]);
  if (!named) return undefined;
  const counts = shares.map((each) => ({ ...each, count: each.share * macarons }));
  const gone = /\b(?:cancel\w*|without|no|drop|dropped|skip|leave out|forget|scrap)\b/.test(reading.text);
  const number = reading.amounts.find(
    (each) => each.dim === "number" && each.unit === "" && !each.fraction,
  )?.value;
  const isSet =
    number !== undefined && /\b(?:make|instead|now|want|be|are|only|just|change|to)\b/.test(reading.text);
  if (!gone && !isSet) return undefined;
  const next = counts.flatMap((each) =>
    each.name !== named.name
      ? [each]
      : gone && number === undefined
        ? []
        : [{ ...each, count: number ?? each.count }],
  );
  const sum = next.reduce((all, each) => all + each.count, 0);
  if (sum <= 0) return undefined;
  return {
    macarons: sum,
    shares: next.map(({ count, ...each }) => ({ ...each, share: count / sum })),
  };
}
