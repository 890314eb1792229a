/**
 * What a calculator left unread. A weight or a percentage that was said and stands in none of its inputs shows that
 * another calculator was meant, or that the sentence was misread: then a number is no answer.
 */
import type { Amount, Reading } from "../../tools/contract/index.ts";
import { white_g } from "../../tools/lib/find.ts";
import { each_g } from "../../tools/lib/lines.ts";
import { inBase, unitRow } from "../../tools/lib/units.ts";
import type { Inputs } from "../follow/state.ts";

/** Calculators that keep the words themselves, or that take what is left as a remark. */
export const keepsWords: ReadonlySet<string> = new Set([
  "note",
  "recall",
  "explain",
  "help",
  "undo",
  "trouble",
  "method",
]);

/** Calculators in which every number of a question counts for something. */
export const exact: ReadonlySet<string> = new Set([
  "dose",
  "scale",
  "shells",
  "fill",
  "ganache",
  "buttercream",
  "cost",
]);

/** Up to here a number may be talk: "2 much", "for 4 people". */
const mostTalk = 4;

/** Calculators that hold a price by the gram, whatever it was said by. */
const priced = new Set(["shelf", "cost"]);

const numbersIn = (value: unknown): number[] => {
  if (typeof value === "number") return [value];
  return value !== null && typeof value === "object" ? Object.values(value).flatMap(numbersIn) : [];
};

const textIn = (value: unknown): string => {
  if (typeof value === "string") return value;
  return value !== null && typeof value === "object" ? Object.values(value).map(textIn).join(" ") : "";
};

const same = (a: number, b: number) => Math.abs(a - b) <= 1e-6 * Math.max(1, Math.abs(b));

/** The values by which an input may hold an amount: as said, in base units, percent as a share. */
function values({ value, high, unit, dim, per: each }: Amount): number[] {
  const per = dim === "percent" ? 0.01 : unit === "" || unit === "times" ? 1 : unitRow(unit).per;
  // "12.99 per kg" is held by the gram
  if (dim === "money" && each) return [value, value * per, (value * per) / inBase(each.value, each.unit)];
  return [value, ...(high === undefined ? [] : [high])].flatMap((each) => [each, each * per]);
}

/** "14 macarons" and "sell 12 for 20" count; "5 whites" are weighed, "510, no, 520 g" and "i'm 14" say nothing. */
function isNumberThatCounts({ amounts, text }: Reading, amount: Amount): boolean {
  const { dim, unit, value, fraction, of, at, text: said } = amount;
  if (dim !== "number" || unit !== "" || fraction || !/\d/.test(said)) return false;
  const [before, behind] = [text.slice(0, at[0]), text.slice(at[1])];
  // "2:1" is a ratio, however small its numbers
  const inRatio = /^ ?: ?\d/.test(behind) || /\d ?: ?$/.test(before);
  if (value <= mostTalk && !inRatio) return false;
  if (["whites", "egg", "pasteurised whites"].includes(of?.ingredient ?? "")) return false;
  return (
    !/^,? ?(?:no|sorry|wait|i mean|oops)\b/.test(behind) &&
    !/(?:^| )(?:im|i'm|aged|age|turned) $/.test(before) &&
    !amounts.some((each) => each !== amount && each.per && each.at[0] <= at[0] && at[1] <= each.at[1])
  );
}

/** A sum of money: with its sign, or a number with hundredths. */
const isSum = ({ dim, unit, fraction, text }: Amount): boolean =>
  (dim === "money" && /\d/.test(text)) ||
  (dim === "number" && unit === "" && !fraction && /\d[.,]\d\d?$/.test(text));

/** Sums of so many are looked through. */
const mostSums = 10;

/** Whether what is held is this sum with some of the others, or this sum by a weight that another one is for. */
function makesUp(held: number, sum: Amount, amounts: readonly Amount[]): boolean {
  const worth = ({ value, unit, dim }: Amount) => (dim === "money" ? inBase(value, unit) : value);
  const per = amounts.flatMap(({ dim, per: each }) =>
    dim === "money" && each ? [inBase(each.value, each.unit)] : [],
  );
  if ([...per, ...Object.values(each_g)].some((grams) => same(held, worth(sum) / grams))) return true;
  const others = amounts
    .filter(
      (each) => each !== sum && (isSum(each) || (each.dim === "number" && each.unit === "" && !each.of)),
    )
    .slice(0, mostSums)
    .map(worth);
  return [...Array(2 ** others.length).keys()].some((mask) =>
    same(
      held,
      others.reduce((all, each, at) => ((mask >> at) % 2 === 1 ? all + each : all), worth(sum)),
    ),
  );
}

/** "double the flavor for 200 g", "reduced by 10 %": of what isn't said, but that it changes the number is sure. */
const isPlainFactor = ({ text }: Reading, { unit, fraction, dim, at, text: said }: Amount): boolean =>
  (unit === "times" && /%|percent/.test(said)) ||
  ((unit === "times" || (dim === "number" && fraction !== undefined)) &&
    /^ (?:the|my|our) (?:usual |normal |same )?(?:flavou?r|dose|amount)/.test(text.slice(at[1])));

/**
 * The weights and percentages of a sentence that none of the drafts holds, as they were said; of a question that stands
 * alone its numbers too, where every number counts.
 */
export function leftOver(
  tool: string,
  reading: Reading,
  drafts: readonly Inputs[],
  follows = false,
  before: Inputs = {},
): string[] {
  if (keepsWords.has(tool) || drafts.some((each) => "unweighable" in each)) return [];
  const held = numbersIn(drafts);
  const text = textIn(drafts);
  // "540 g ganache, rum for half of it" is held as the half
  const shares = reading.amounts.flatMap((each) => (each.fraction && !each.of ? each.value : []));
  const isOf = (number: number, value: number) =>
    same(number, value) || shares.some((share) => same(number, value * share));
  // "minus 50 g" is held by the shelf as 50 that are taken
  const isMinus = (number: number, value: number) => tool === "shelf" && value < 0 && same(number, -value);
  const holds = (amount: Amount) =>
    values(amount).some((value) => held.some((each) => isOf(each, value) || isMinus(each, value)));
  // of "250 to 300 g" both ends have to be there
  const isHeld = (amount: Amount) => {
    const { high, dim } = amount;
    const { high: _high, ...low } = amount;
    return high === undefined || dim !== "weight"
      ? holds(amount)
      : holds(low) && holds({ ...low, value: high });
  };
  // "all of the 100 g has gone in" is held in the sum with what was there, "350 stays plain" in the difference
  const counted = typeof before.whites_count === "number" ? [before.whites_count * white_g] : [];
  const earlier = [...numbersIn(before), ...counted];
  const isChange = (amount: Amount) =>
    values(amount).some((value) =>
      earlier.some((old) => held.some((each) => same(each, old + value) || same(each, old - value))),
    );
  // "€3.20 for almonds, €0.80 icing sugar" are held together, "sugar 1.20" by the gram, "eggs 0.30 each" by an egg's
  const isInSum = (amount: Amount) =>
    tool === "cost" && isSum(amount) && held.some((each) => makesUp(each, amount, reading.amounts));
  const left = reading.amounts
    .filter(
      (amount) =>
        amount.dim === "weight" ||
        amount.dim === "percent" ||
        (!follows &&
          tool === "dose" &&
          ((amount.dim === "volume" && !amount.of) || isPlainFactor(reading, amount))) ||
        (!follows && exact.has(tool) && isNumberThatCounts(reading, amount)) ||
        // "box 1.80": in a sum of money every sum counts, however small
        (tool === "cost" && isSum(amount)),
    )
    .filter(({ of }) => of?.ingredient !== "tant pour tant")
    // "60 / 40 percent" is held as two shares
    .filter(({ text: said }) => !/^\d{1,2} ?[/-] ?\d{1,2}/.test(said))
    // "ok added that 70": what the answer before said
    .filter(
      ({ dim, at }) => !(dim === "number" && /\b(?:that|those|these) $/.test(reading.text.slice(0, at[0]))),
    )
    // "16 a kilo": the unit of a price, in which it is held
    .filter(({ text: said }) => !(priced.has(tool) && /^(?:an? |per |each )/.test(said)))
    .filter((amount) => !isHeld(amount) && !isChange(amount) && !isInSum(amount))
    .filter(({ value }) => !text.includes(String(value)));
  // "this makes 500 g, i want 350 g" is held as one over the other, "2:1" as 2, "$1.20 a box, 6 boxes" as their product
  // a share is no factor of so many: 65 g beside 2 % isn't held in 130 g
  const base = ({ value, unit, dim }: Amount) =>
    dim === "percent" ? value / 100 : value * (unit === "" || unit === "times" ? 1 : inBase(1, unit));
  // nor is it by what is held of the share itself: 130 g over 65 g are 2, and no 2 %
  const isShare = (own: number) =>
    reading.amounts.some(({ dim, value }) => dim === "percent" && same(own, value));
  const isPartOfSum = (amount: Amount) =>
    reading.amounts.some((each) => {
      if (each === amount || each.dim === "temperature") return false;
      const [one, other] = [base(amount), base(each)];
      return [one * other, one / other, other / one, one + other, Math.abs(one - other)].some((made) =>
        held.some((own) => same(own, made) && !isShare(own)),
      );
    });
  // "the a kilo" would say nothing
  return left
    .filter((amount) => !isPartOfSum(amount))
    .map(({ text: said }) => said)
    .filter((said, _, all) => all.length === 1 || !/^(?:an?|per|each) /.test(said));
}
