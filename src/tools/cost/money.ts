/** The sums of money in a sentence: how much each is, in what, and what it is for. */
import type { Amount, Reading } from "../contract/index.ts";
import { dollars, isBareDollar } from "../lib/money.ts";
import { type Piece, pieces, wordsBetween } from "../lib/pieces.ts";
import { inBase, unitRow } from "../lib/units.ts";
import { bareSums, isSaidAsSum } from "./bare-money.ts";
import { shareSaid } from "./said-share.ts";
import { besideSum, type Use, useOf } from "./sum-use.ts";

export interface Sum {
  value: number;
  /** ISO 4217, or "" where no sign was said. */
  currency: string;
  /** Said with a $, or with no sign. */
  bare?: "$" | "";
  use?: Use;
  /** "almond flour is $16 a kilo, powdered sugar $2": the weight that an earlier price was for goes on. */
  per?: Amount["per"];
  amount: Amount;
}

/** Money in order. Where no sign is said at all, bare numbers beside words of money count. */
export function sums(reading: Reading): Sum[] {
  const list = pieces(reading);
  const signed = reading.amounts.filter((each) => each.dim === "money");
  // what was found to be money without a sign has more of its kind beside it
  const isSigned = signed.some((each) => each.unit !== "unsigned");
  const also = isSigned ? reading.amounts.filter((each) => isSaidAsSum(each, list)) : bareSums(reading, list);
  const moneys = reading.amounts.filter(
    (each) => (signed.includes(each) || also.includes(each)) && !isPerVolume(each),
  );
  const places = moneys.map((amount) => list.findIndex((each) => each.amount === amount));
  const aimed = aimsAtShare(reading);
  // "nz$11 and $4": the sign alone is of the same country
  const country = moneys.find(({ unit, text }) => dollars.includes(unit) && !isBareDollar(unit, text))?.unit;
  return moneys.map((amount, at) => {
    const place = places[at] ?? 0;
    const earlier = moneys.slice(0, at);
    const per = perOfEarlier(amount, list, place, earlier);
    const isMoney = amount.dim === "money";
    const sign = signOf(amount, signed.length > 0);
    const bare = sign === "$" && country ? undefined : sign;
    const beside = besideSum(
      amount,
      wordsBetween(list, places[at - 1] ?? -1, place),
      wordsBetween(list, place, places[at + 1] ?? list.length),
      at === 0,
    );
    return {
      ...(per ? { per } : {}),
      value:
        signBefore(amount, reading) *
        (isMoney ? inBase(amount.value, amount.unit) + centsBehind(list, place) : amount.value),
      // "USD cent" is a hundredth of a USD
      currency:
        sign === "$" && country
          ? country
          : isMoney && amount.unit !== "unsigned" && !isCents(amount)
            ? amount.unit.slice(0, 3)
            : "",
      ...(bare === undefined ? {} : { bare }),
      use: useOf({ ...beside, earlier: earlier.map(({ value }) => value), words: list.length, aimed }),
      amount,
    };
  });
}

/**
 * "ingredients -$3", "$-6", "cost is minus $3": below zero, which no sum of money can be. A dash with a space behind it
 * only sets apart, and behind a number a sign takes away.
 */
const belowZero = /(?:^|[^\s\d%] ?|\s)(?:-[$£€]?|\b(?:minus|negative) [$£€]?)$/;
const takesAway = /\d\S* ?(?:-|minus )[$£€]?$/;
function signBefore({ at, value }: Amount, { text }: Reading): 1 | -1 {
  const before = text.slice(0, at[0]);
  const isSaid = belowZero.test(before) && !takesAway.test(before) && value > 0;
  return isSaid || /^[$£€]-\d/.test(text.slice(at[0])) ? -1 : 1;
}

/** "6 a litre": what a litre weighs nobody said, so it is no price of a weight, and no cost of the whole either. */
const isPerVolume = ({ per }: Amount): boolean => per !== undefined && unitRow(per.unit).dim === "volume";

/** "30 cents", "30 ct": a hundredth of whatever the rest is in. */
const isCents = ({ unit, text }: Pick<Amount, "unit" | "text">): boolean =>
  unit === "USD cent" && !/[$¢]|us/i.test(text);

/** A $ may be of several countries, a number without a sign of any; every other sign says its currency. */
function signOf({ dim, unit, text }: Amount, isElsewhere: boolean): Sum["bare"] {
  if (dim !== "money") return isElsewhere ? undefined : "";
  if (unit === "unsigned" || isCents({ unit, text })) return "";
  return isBareDollar(unit, text) ? "$" : undefined;
}

/** "powdered sugar $2", behind "almond flour is $16 a kilo": a kilo as well. */
function perOfEarlier(
  { per }: Amount,
  list: readonly Piece[],
  place: number,
  earlier: readonly Amount[],
): Amount["per"] {
  const isNamed = list[place - 1]?.thing?.ingredient && list[place - 2]?.amount?.dim !== "weight";
  return isNamed && !per
    ? earlier.findLast((each) => each.per && unitRow(each.per.unit).dim === "weight")?.per
    : undefined;
}

/** A margin is aimed at and no price said: a box's sum is no price. */
const aimsAtShare = (reading: Reading): boolean =>
  !/\b(?:sell|sells|selling|sold|charge|charging) (?!for)/.test(reading.text) &&
  (shareSaid(reading) !== undefined ||
    (reading.amounts.some((each) => each.dim === "percent") &&
      /\b(?:margin|mark ?-?up)\b/.test(reading.text)));

/** "six dollars fifty": the number straight behind the sum is its hundredths. */
function centsBehind(list: readonly Piece[], place: number): number {
  const [money, cents] = [list[place]?.amount, list[place + 1]?.amount];
  const isCents =
    cents?.dim === "number" &&
    cents.unit === "" &&
    !cents.of &&
    !cents.fraction &&
    // "$21 a dozen"
    !/dozen|couple/.test(cents.text) &&
    Number.isInteger(cents.value);
  return isCents &&
    money &&
    Number.isInteger(money.value) &&
    cents.value >= 1 &&
    cents.value < 100 &&
    !list[place + 2]?.thing
    ? cents.value / 100
    : 0;
}
