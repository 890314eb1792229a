/** What an order says beyond how many and when: fillings with their flavors, and the colors of the shells. */
import { tastes } from "../../../data/words/flavors.ts";
import type { Amount, Reading, Thing } from "../contract/index.ts";
import { nameOf } from "../dose/flavor-said.ts";
import { readShares } from "../split/read.ts";
import type { DayInputs } from "./day.ts";
import type { Draft } from "./draft.ts";

export type Filling = NonNullable<DayInputs["fillings"]>[number];

/** Bases that aren't a filling of their own. */
const noFillings = ["filling", "batter", "meringue"];
const rings = "ring|border|rim|dam|outside";
const centers = "center|centre|middle|core|inside";

export function readDetails(reading: Reading): Draft {
  const found = reading.things.filter((each) => isFilling(each, reading)).map((each) => runOf(each, reading));
  const used = new Set(found.flatMap((each) => each.flavor ?? []));
  const loose = reading.things.filter((each) => isFlavor(each) && !used.has(each));
  const fillings = withoutTotal(distinct(found.map((each) => fillingOf(each, reading))), reading);
  const colors = readColors(reading);
  const flavor = loose[0] && loose.length === 1 ? nameOf(loose[0], reading) : undefined;
  const unplaced = loose.length > 1 ? [...new Set(loose.map((each) => each.taste ?? each.text))] : [];
  return {
    ...(fillings.length ? { fillings } : {}),
    ...(flavor ? { flavor } : {}),
    ...(unplaced.length ? { unplaced } : {}),
    ...(colors ? { colors } : {}),
  };
}

/** A filling in the sentence with what stands around it. */
interface Run {
  base: Thing;
  flavor?: Thing;
  chocolate?: Thing;
  /** Where its words begin. */
  from: number;
}

const isFlavor = (each: Thing): boolean =>
  Boolean((each.taste || each.dose) && !each.base && !each.chocolate && !/color$/.test(each.dose ?? ""));

/** A mix, a recipe of her own, a jam that is said to be the ring or the center or stands beside another filling. */
function isFilling(each: Thing, reading: Reading): boolean {
  // "without ganache, only buttercream"
  if (
    /\b(?:without|no|not|instead of|rather than|skip|leave out) (?:the |any |a )?$/.test(
      reading.text.slice(0, each.at[0]),
    )
  )
    return false;
  if (each.formula) return true;
  if (each.base) return !noFillings.includes(each.base);
  return isJam(each) && (placeOf(each, each.at[0], reading) !== undefined || isBeside(each, reading));
}

/** "raspberry jam and vanilla buttercream": joined to a filling, not before one ("jam buttercream") or in one. */
function isBeside(jam: Thing, reading: Reading): boolean {
  const mixes = reading.things.filter((each) => each.base && !noFillings.includes(each.base));
  const joined = (between: string) =>
    /^ ?(?:and|,|&|\+|plus) ?(?:a |an |the |some )?(?:\S+ ){0,2}$/.test(between);
  return mixes.some(
    (mix) =>
      joined(reading.text.slice(jam.at[1], mix.at[0])) || joined(reading.text.slice(mix.at[1], jam.at[0])),
  );
}

const isJam = (each: Thing) => each.dose === "purée" && /jam|jelly|curd|compote/.test(each.text);

/** The flavor and chocolate right before a filling, else the flavor said behind it: "buttercream with vanilla". */
function runOf(base: Thing, reading: Reading): Run {
  const run: Run = { base, from: base.at[0] };
  for (;;) {
    const before = reading.things.find(
      (each) =>
        each.at[1] <= run.from && !each.base && reading.text.slice(each.at[1], run.from).trim() === "",
    );
    if (before?.chocolate && !run.chocolate) run.chocolate = before;
    else if (before && isFlavor(before) && !run.flavor) run.flavor = before;
    else break;
    run.from = before.at[0];
  }
  // "passion fruit ganache milk choc": said behind it
  const kindBehind = reading.things.find(
    (each) =>
      each.chocolate &&
      each.at[0] >= base.at[1] &&
      /^ ?(?:\(|,|(?:in|with|of|made with) )? ?(?:some |a )?$/.test(
        reading.text.slice(base.at[1], each.at[0]),
      ) &&
      !reading.things.some(
        (other) => other.base && other.at[0] - each.at[1] >= 0 && other.at[0] - each.at[1] <= 1,
      ),
  );
  if (base.base === "ganache" && kindBehind && !run.chocolate) run.chocolate = kindBehind;
  if (run.flavor || !base.base) return run;
  const behind = reading.things.find((each) => {
    const gap = reading.text.slice(base.at[1], each.at[0]);
    return (
      isFlavor(each) &&
      each.at[0] >= base.at[1] &&
      /^ ?(?:\(|(?:(?:flavou?red|made) )?with )(?:some |a )?$/.test(gap)
    );
  });
  const isNext = reading.things.some((each) => each.base && behind && each.at[0] - behind.at[1] === 1);
  return behind && !isNext ? { ...run, flavor: behind } : run;
}

function fillingOf(run: Run, reading: Reading): Filling {
  const { base, chocolate } = run;
  const part = placeOf(base, run.from, reading);
  const macarons = countBefore(run, reading);
  if (base.formula)
    return {
      base: /ganache|buttercream/.exec(base.formula.toLowerCase())?.[0] ?? "filling",
      formula: base.formula,
      ...(part ? { part } : {}),
      ...(macarons !== undefined ? { macarons } : {}),
    };
  const flavor = run.flavor ?? (base.base ? tasteWithin(base) : undefined);
  return {
    base: base.base ?? /jelly|curd|compote/.exec(base.text)?.[0] ?? "jam",
    ...(base.base ? {} : { of: base.taste ?? "" }),
    ...(flavor ? { flavor: nameOf(flavor, reading) } : {}),
    ...(chocolate?.chocolate ? { chocolate: chocolate.chocolate } : {}),
    ...(part ? { part } : {}),
    ...(macarons !== undefined ? { macarons } : {}),
  };
}

/** "vanilla buttercream" is known as one word; the taste is in it. */
function tasteWithin(base: Thing): Thing | undefined {
  const row = tastes.find((each) => base.text.startsWith(`${each.taste} `));
  return row && { id: row.taste, taste: row.taste, text: row.taste, at: base.at };
}

/** "... ring", "a center of ...". */
function placeOf(base: Thing, from: number, reading: Reading): Filling["part"] {
  const [before, after] = [reading.text.slice(0, from), reading.text.slice(base.at[1])];
  const has = (words: string) =>
    new RegExp(`^ (?:(?:as|for|in|is) )?(?:the |a )?(?:${words})(?![a-z])`).test(after) ||
    new RegExp(`(?:^| )(?:${words}) ?(?:of|is|from|:)? ?(?:a |the )?$`).test(before);
  if (has(rings)) return "ring";
  return has(centers) ? "center" : undefined;
}

/** "12 with lemon ganache": a number that belongs to this filling alone. */
function countBefore(run: Run, reading: Reading): number | undefined {
  const before = (each: Amount) =>
    /^ (?:(?:macarons?|macs?|of them|are|filled|get) )*(?:(?:with|of|in) )?(?:a |the )?$/.test(
      reading.text.slice(each.at[1], run.from),
    ) || each.at[1] === run.from - 1;
  return reading.amounts.find(
    (each) =>
      each.dim === "number" && each.unit === "" && !each.fraction && each.at[1] <= run.from && before(each),
  )?.value;
}

/** "60 macarons with jam and buttercream": the one number there is counts them all, not those of the first filling. */
function withoutTotal(fillings: Filling[], reading: Reading): Filling[] {
  const own = fillings.filter((each) => each.macarons !== undefined);
  const numbers = reading.amounts.filter(
    (each) => each.dim === "number" && each.unit === "" && (!each.of || each.of.count === "macarons"),
  );
  if (own.length !== 1 || numbers.length > 1) return fillings;
  return fillings.map(({ macarons: _all, ...rest }) => rest);
}

const distinct = (fillings: readonly Filling[]): Filling[] => [
  ...new Map(fillings.map((each) => [JSON.stringify(each), each])).values(),
];

/** "24 pink and 12 white", "2:1 pink and white". */
function colorsCounted({ amounts, things, text }: Reading, names: readonly string[]) {
  const counts = amounts.flatMap(({ dim, unit, fraction, value, at }) => {
    const next = things.find(
      (each) => each.color && each.at[0] >= at[1] && /^ ?$/.test(text.slice(at[1], each.at[0])),
    );
    return next?.color && dim === "number" && unit === "" && !fraction
      ? [{ name: next.color, size: value }]
      : [];
  });
  if (counts.length > 1 && counts.length === names.length) return counts;
  const ratio = /(?<![\d:])\d+(?: ?: ?\d+)+(?= (?:of )?[a-z])/.exec(text)?.[0].split(":").map(Number);
  return ratio?.length === names.length
    ? names.map((name, at) => ({ name, size: ratio[at] ?? 0 }))
    : undefined;
}

/** Colors of the shells: by shares where they were said, else in equal parts. One color alone splits nothing. */
function readColors(reading: Reading): Draft["colors"] {
  const names = [
    ...new Set(
      reading.things.flatMap((each) => (each.color && !each.base && !each.taste ? [each.color] : [])),
    ),
  ];
  if (names.length === 0) return undefined;
  const counted = colorsCounted(reading, names);
  if (counted) return { parts: counted };
  const amounts = reading.amounts.filter(
    (each) => each.of?.color || each.fraction || each.dim === "percent" || each.of?.count === "bowls",
  );
  const shares = amounts.length
    ? readShares(
        { ...reading, amounts },
        { table: {}, follows: false, names: { formulas: [], bottles: [], timers: [] } },
      )
    : {};
  const { percents, parts, rest } = shares;
  if (percents?.length) return { percents, ...(rest ? { rest } : {}) };
  if (parts?.length) return { parts };
  return names.length > 1 ? { parts: names.map((name) => ({ name, size: 1 })), assumed: true } : undefined;
}
