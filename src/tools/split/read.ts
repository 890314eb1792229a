/** Reads how a bowl is to be split: the numbers with the names that stand beside them. */
import type { Amount, Memory, Reading } from "../contract/index.ts";
import { bareNumbers, pointsBack, says } from "../lib/find.ts";
import { inBase } from "../lib/units.ts";
import {
  isRatioPart,
  nameBeside,
  namedBySize,
  namedLater,
  nameFrom,
  otherNamed,
  pairInOrder,
  restName,
  shareOf,
  wholeHundred,
} from "./names.ts";
import { differing, oneOfThem, partMore, relatedParts } from "./relations.ts";
import type { SplitInputs } from "./split.ts";

type Draft = Partial<SplitInputs>;

export function readShares(reading: Reading, memory: Memory): Draft {
  // "525", where the weight of the bowl was asked for
  const bare = bareNumbers(reading)[0];
  if (memory.slot === "total_g" && reading.amounts.length === 1 && bare) return { total_g: bare.value };
  const before = memory.last?.tool === "split" ? (memory.last.inputs as Draft) : undefined;
  const bowl_g = emptyBowl(reading);
  // "what does each bowl read if the bowls weigh 120 g"
  if (before?.total_g !== undefined && bowl_g !== undefined)
    return asksScale(reading) ? { ...before, bowl_g } : {};
  const total = newTotal(reading, memory);
  if (total !== undefined) return { total_g: total };
  const bowl = bowlOf(reading, memory);
  return { ...bowl.draft, ...sharesOf(reading, memory, bowl.amount) };
}

/** The bowl: the weight of batter or filling, the first bare weight, or what lies on the table. */
function bowlOf(reading: Reading, memory: Memory): { draft: Draft; amount?: Amount } {
  const mixes = new Set(reading.things.flatMap((each) => each.base ?? []));
  // "half for ganache, half for buttercream": the parts, and not the bowl
  const mix = mixes.size > 1 ? undefined : [...mixes][0];
  const weights = reading.amounts.filter((each) => each.dim === "weight");
  // "450 buttercream g": a number of a mix beyond any number of bowls is its weight
  const bare = reading.amounts.find((each) => each.dim === "number" && each.of?.base && each.value > 40);
  if (bare && weights.length === 0)
    return { draft: { total_g: bare.value, thing: bare.of?.base }, amount: bare };
  // "half green, half plain, it weighs 520"
  const weighed = reading.amounts.find((each) => each.dim === "number" && !each.fraction && each.value > 40);
  if (weighed && weights.length === 0 && says(reading, /weighs? (?:about |around )?\S*<number>/))
    return { draft: { total_g: weighed.value, ...(mix ? { thing: mix } : {}) }, amount: weighed };
  // "split the 690 a third mint, rest plain"
  const named = reading.amounts.find(
    (each) =>
      each.dim === "number" &&
      each.unit === "" &&
      each.value > 40 &&
      /\bsplit (?:the|that|my|those) $/.test(reading.text.slice(0, each.at[0])),
  );
  if (named && weights.length === 0)
    return { draft: { total_g: named.value, ...(mix ? { thing: mix } : {}) }, amount: named };
  // "split batter 3 ways 612"
  const [large, ...larger] = bareNumbers(reading).filter((each) => each.value > 100);
  if (large && mix && larger.length === 0 && weights.length === 0 && bareNumbers(reading).length <= 2)
    return { draft: { total_g: large.value, thing: mix }, amount: large };
  // "split 480 in 3", with no mix named
  const parts = reading.amounts.filter((each) => each !== large);
  if (
    large &&
    parts.length === 1 &&
    parts[0]?.dim === "number" &&
    weights.length === 0 &&
    says(
      reading,
      /\S*<number> (?:split |divided? )?(?:(?:in|into|between|by|among) )?\S*<number>(?: (?:equal )?\S*count=bowls\S*)?/,
    )
  )
    return { draft: { total_g: large.value }, amount: large };
  const amount =
    weights.find((each) => each.of?.base) ??
    weights.find((each) => !each.of) ??
    (weights.length === 1 && !memory.follows ? weights[0] : undefined);
  if (amount)
    return {
      draft: {
        total_g: inBase(amount.value, amount.unit),
        ...((amount.of?.base ?? mix) ? { thing: amount.of?.base ?? mix } : {}),
      },
      amount,
    };
  // "half the batter yellow", behind batter and filling
  const own = mix === undefined ? undefined : memory.table.masses?.[mix];
  const table = own === undefined ? wholeOnTable(memory) : { grams: own, thing: mix ?? "" };
  const fits =
    table &&
    memory.last?.tool !== "split" &&
    ((pointsBack(reading) && (!mix || table.thing === mix || ["filling", ""].includes(table.thing))) ||
      (mix && (table.thing === mix || table.thing === "filling")) ||
      // "two colors even": what has just been worked out is colored
      (!mix && table.thing === "batter" && /\bcolou?rs\b/.test(reading.text)) ||
      // "half raspberry half plain", right behind a filling
      (!mix && ["buttercream", "ganache", "fill"].includes(memory.last?.tool ?? "")));
  if (fits) return { draft: { total_g: table.grams, thing: mix ?? table.thing } };
  return { draft: mix ? { thing: mix } : {} };
}

/** What lies on the table; of a part that was spoken of, the bowl that it is a part of. */
function wholeOnTable({ table, last }: Memory): Memory["table"]["mass"] {
  const { mass, parts = [] } = table;
  const isPart = parts.length > 1 && parts.some((each) => Math.abs(each.grams - (mass?.grams ?? 0)) < 1e-6);
  return mass && isPart && last?.tool === "dose"
    ? { ...mass, grams: parts.reduce((sum, each) => sum + each.grams, 0) }
    : mass;
}

const asksScale = (reading: Reading): boolean =>
  says(
    reading,
    /(?:what|how much) .*(?:read|reads|say|says|show|shows|be on the scale|weigh with)|(?:scale|bowls?\S*) (?:\S+ )?(?:reads?|says?|shows?)/,
  );

/** "if the bowls weigh 120 g", "the bowl was 354 empty": g of one empty bowl. */
function emptyBowl(reading: Reading): number | undefined {
  const amount = reading.amounts.find(
    (each) =>
      (each.dim === "weight" || (each.dim === "number" && each.unit === "" && each.value > 20)) &&
      (/\bbowls (?:are|were|weigh|weighed|each weigh)(?: (?:only|about|just))? $/.test(
        reading.text.slice(0, each.at[0]),
      ) ||
        /^ empty\b/.test(reading.text.slice(each.at[1]))),
  );
  return amount && (amount.dim === "weight" ? inBase(amount.value, amount.unit) : amount.value);
}

/** "same split for 480": more than any number of bowls, a new weight for the shares said before. */
const newTotal = (reading: Reading, memory: Memory): number | undefined => {
  // "actually 150 pink": a part, not the bowl
  if (reading.amounts[0]?.of?.color) return undefined;
  const shares = memory.last?.tool === "split" ? ((memory.last.inputs as Draft).weights ?? []) : [];
  // "make the coffee 170"
  if (reading.things.some((each) => shares.some(({ name }) => name === (each.color ?? each.taste))))
    return undefined;
  const before = memory.follows && memory.last?.tool === "split" ? (memory.last.inputs as Draft) : undefined;
  const [only, ...others] = reading.amounts;
  return before?.total_g !== undefined && only?.dim === "number" && others.length === 0 && only.value > 40
    ? only.value
    : undefined;
};

/** The bare numbers of a list that ends in a weight: they have its unit. */
function listedBefore({ amounts, text }: Reading, weight: Amount, bowl: Amount | undefined): Amount[] {
  const found: Amount[] = [];
  let next = weight;
  for (const each of amounts.filter((other) => other.at[1] <= weight.at[0]).reverse()) {
    const joins = /^ ?(?:,|and|,? and|&) ?$/.test(text.slice(each.at[1], next.at[0]));
    if (each === bowl || each.dim !== "number" || each.unit !== "" || each.fraction || !joins) break;
    found.unshift({ ...each, dim: "weight", unit: weight.unit });
    next = each;
  }
  return found;
}

const namesBefore = ({ follows, last }: Memory): string[] => {
  const { parts, percents, weights } = follows && last?.tool === "split" ? (last.inputs as Draft) : {};
  return (parts ?? percents ?? weights ?? []).flatMap(({ name }) => name ?? []);
};

function sharesOf(reading: Reading, memory: Memory, bowl: Amount | undefined): Draft {
  const rest = restName(reading);
  const named = (amount: Amount): string | undefined => nameBeside(reading, amount, bowl);
  // "three to one, plain to gold": the names stand in the same order
  const was =
    memory.follows && memory.last?.tool === "split" ? (memory.last.inputs as Draft).equal : undefined;
  const unlike = was === undefined ? undefined : oneOfThem(reading, was);
  if (unlike) return { parts: unlike };
  const related = relatedParts(reading, namesBefore(memory));
  if (related) return { parts: related };
  const whole = bowl && bowl.dim === "weight" ? inBase(bowl.value, bowl.unit) : bowl?.value;
  const split = memory.follows && memory.last?.tool === "split";
  const grown = partMore(reading, (split && memory.table.parts) || []);
  if (grown) return { weights: grown, by: reading.said };
  const apart = differing(reading, whole ?? memory.table.mass?.grams);
  if (apart) return { weights: apart, by: reading.said };
  const pair = pairInOrder(reading);
  if (pair) return { parts: pair };
  const hundred = wholeHundred(reading);
  if (hundred) return { parts: hundred };
  const halved = reading.amounts.find((each) => each.unit === "times" && each.value < 1);
  if (halved) return { equal: Math.round(1 / halved.value) };
  // "split in 2, one with lemon at 4 %": how much lemon, and no share
  const inBowls = says(reading, /(?:in|into) (?:\S*<number>|two|three|four)/);
  const percents = reading.amounts.filter(
    (each) => each.dim === "percent" && !(inBowls && / at $/.test(reading.text.slice(0, each.at[0]))),
  );
  if (percents.length > 0)
    return { percents: percents.map((each) => shareOf(each.value, named(each))), ...rest };
  const weights = reading.amounts.filter((each) => each.dim === "weight" && each !== bowl);
  const [portion] = weights;
  // "divide 480 g into 5 g samples"
  if (
    portion &&
    bowl &&
    weights.length === 1 &&
    says(
      reading,
      /(?:in|into) (?:lots of |pieces of )?\S*<weight> (?:samples?|portions?|pieces|bags?|lots|each|ones|balls|cups?)/,
    )
  ) {
    const equal = inBase(bowl.value, bowl.unit) / inBase(portion.value, portion.unit);
    if (Number.isInteger(equal)) return { equal };
  }
  if (weights.length > 0) {
    // "into bowls of 200, 150 and 120 g": the unit holds for all of the list
    const listed = [...listedBefore(reading, weights[0] as Amount, bowl), ...weights];
    return { weights: listed.map((each) => shareOf(inBase(each.value, each.unit), named(each))), ...rest };
  }
  // "600 g batter: 200 pink, rest blue": more than any number of bowls
  const heavy = reading.amounts.filter(
    (each) =>
      each.dim === "number" &&
      each.unit === "" &&
      !each.fraction &&
      each !== bowl &&
      each.value > 40 &&
      // "out of that 390" is the bowl again
      !/\b(?:out of|of|from) (?:that|the|those|this) $/.test(reading.text.slice(0, each.at[0])),
  );
  const before = memory.follows && memory.last?.tool === "split" ? (memory.last.inputs as Draft) : undefined;
  // "no, 40 green": one of the shares said before
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
  const bareShares = bareNumbers(reading);
  // "make it 70 and 30 instead", of the same two
  if (
    before?.percents &&
    bareShares.length === before.percents.length &&
    Math.abs(bareShares.reduce((sum, each) => sum + each.value, 0) - 100) < 1e-9
  )
    return {
      percents: before.percents.map((each, at) => ({ ...each, size: bareShares[at]?.value ?? each.size })),
    };
  if (
    before?.parts &&
    says(reading, /(?:one|1|equal|same)\S* (?:part|share|amount|\S+<count=bowls>)s? each|equal parts/)
  )
    return { parts: before.parts.map((each) => ({ ...each, size: 1 })) };
  // "actually 150 pink": one part of those said before takes its new weight
  const [changed, ...others] = heavy;
  if (before?.weights && changed && others.length === 0) {
    const name = named(changed);
    if (before.weights.some((each) => each.name === name))
      return {
        weights: before.weights.map((each) => (each.name === name ? { ...each, size: changed.value } : each)),
        ...(before.rest ? { rest: before.rest } : {}),
      };
  }
  if (heavy.length > 0 && (rest.rest || heavy.every((each) => each.of?.color || each.of?.taste)))
    return { weights: heavy.map((each) => shareOf(each.value, named(each))), ...rest };
  const numbers = reading.amounts.filter(
    (each) =>
      each.dim === "number" &&
      each.unit === "" &&
      each !== bowl &&
      // "3 whites" are no bowls
      !/^(?:whites|egg|egg yolk)$/.test(each.of?.ingredient ?? ""),
  );
  const fractions = numbers.filter((each) => each.fraction);
  // "thirds pink white green": as many names as parts, each the same
  const [piece] = fractions;
  const namesSaid = reading.things.filter((each) => (each.color || each.taste) && !each.base && !each.dose);
  if (
    piece &&
    fractions.length === 1 &&
    namesSaid.length > 2 &&
    Math.abs(1 / piece.value - namesSaid.length) < 1e-6
  )
    return { parts: namesSaid.map((each) => shareOf(1, nameFrom(each))) };
  if (
    fractions.length > 0 &&
    !(fractions.length === 1 && /(?:in|into) \S*<number,fraction>$/.test(reading.mask.trim()))
  )
    return { percents: fractions.map((each) => shareOf(each.value * 100, named(each))), ...rest };
  if (says(reading, /(?:evenly|equally) (?:in|into) two/)) return { equal: 2 };
  if (says(reading, /(?:in|into) hal|half.and.half|in two halves/)) return { equal: 2 };
  // "between 24 lemon, 18 rose and 18 coffee": by how many there are of each
  const counts = numbers.filter((each) => each.of?.taste ?? each.of?.color);
  if (counts.length > 1 && says(reading, /between \S*<number>/))
    return { parts: counts.map((each) => shareOf(each.value, each.of?.color ?? each.of?.taste)) };
  // "480 g batter, 24 pink 12 green 12 white": by how many of each there are to be
  const perName = numbers.filter(
    (each) => (each.of?.color ?? each.of?.taste) && !each.fraction && each.value <= 60,
  );
  if (bowl && perName.length > 1 && perName.some((each) => each.value > 4))
    return { parts: perName.map((each) => shareOf(each.value, each.of?.color ?? each.of?.taste)) };
  const [ways, ...sizes] = numbers;
  const listed =
    ways?.of?.count === "bowls" &&
    ways.value === sizes.length &&
    sizes.length > 1 &&
    sizes.every((each) => !each.of && each.value > 0 && !isRatioPart(reading, each));
  if (bowl && listed) return { parts: sizes.map((each) => shareOf(each.value, undefined)) };
  // "1 part red 2 parts white 1 part blue"
  const isPart = (each: Amount) => /^ pa?rts? (?:of )?[a-z]/.test(reading.text.slice(each.at[1]));
  // "2 parts pink 1 white": the later ones without the word
  const first = numbers.findIndex(isPart);
  const inParts = numbers.filter(
    (each, at) =>
      isPart(each) || (first >= 0 && at > first && /^ [a-z]/.test(reading.text.slice(each.at[1]))),
  );
  if (inParts.length > 1 && inParts.every((each) => named(each) !== undefined))
    return { parts: inParts.map((each) => shareOf(each.value, named(each))) };
  // "one pink one plain"
  const singles = numbers.filter((each) => each.value === 1 && (each.of?.taste ?? each.of?.color));
  const notSingles = numbers.filter((each) => !singles.includes(each));
  if (singles.length > 1 && notSingles.every((each) => each.value === singles.length))
    return { parts: singles.map((each) => shareOf(1, each.of?.color ?? each.of?.taste)) };
  const ratio = numbers.filter((each) => isRatioPart(reading, each));
  const parts = ratio.length > 1 ? ratio : numbers.filter((each) => each.of?.count === "bowls");
  if (parts.length > 1)
    return {
      parts:
        namedBySize(reading, parts) ??
        otherNamed(
          parts.map((each) => shareOf(each.value, named(each) ?? namedLater(reading, each, parts))),
          before,
        ),
    };
  // "3 equal bowls, pink green and white"
  const hues = reading.things.filter((each) => (each.color || each.taste) && !each.base && !each.dose);
  if (parts.length === 1 && hues.length > 1 && hues.length === parts[0]?.value)
    return { parts: hues.map((each) => shareOf(1, nameFrom(each))) };
  const one = parts[0] ?? numbers.find((each) => each.of?.color || each.of?.taste) ?? numbers[0];
  if (
    one &&
    one.value <= 100 &&
    (parts.length === 1 ||
      says(
        reading,
        /split|divide|share|equal|into|between|ways|bowls|(?:^| )(?:cut|halve|part|separate)\S* .* in \S*<number>(?: |$)/,
      ) ||
      memory.follows ||
      memory.slot === "equal")
  ) {
    const unlike = oneOfThem(reading, one.value);
    return unlike ? { parts: unlike } : { equal: one.value };
  }
  const bare = bareNumbers(reading)[0];
  if (bare && memory.slot === "equal") return { equal: bare.value };
  const colors = reading.things.filter((each) => each.color && !each.base);
  if (colors.length > 1 && says(reading, /evenly|equal|split|divide/))
    return { parts: colors.map((each) => shareOf(1, each.color)) };
  return {};
}
