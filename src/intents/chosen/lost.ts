/**
 * What of a sentence its calculator never took: a heat beside a dose, a timer's minutes beside a recipe. Weights and
 * shares are looked after by `leftOver`; these may be talk, and are only a reason to look for a second question.
 */
import type { Amount, Dimension, Reading } from "../../tools/contract/index.ts";
import { celsius, unitRow } from "../../tools/lib/units.ts";
import type { Inputs } from "../follow/state.ts";
import { exact, keepsWords } from "./left-over.ts";

/** No volume: a spoon of something is held as its grams. */
const dims: ReadonlySet<Dimension> = new Set(["temperature", "time", "length", "money"]);

/** "54 macarons", beside a split. */
const counts: ReadonlySet<string> = new Set(["macarons", "shells", "trays"]);

const isOfBowl = ({ dim, unit, of }: Amount): boolean =>
  (dim === "weight" && of !== undefined) || (dim === "number" && unit === "" && of?.ingredient === "whites");

const turnsVolume =
  /<volume> (?:\S+ ){0,4}?(?:in|to|into|as) \S*<unit=|how many \S*<unit=\S* (?:\S+ ){0,4}?\S*<volume>/;

const everything = (value: unknown): (number | string)[] => {
  if (typeof value === "number" || typeof value === "string") return [value];
  return value !== null && typeof value === "object" ? Object.values(value).flatMap(everything) : [];
};

const same = (a: number, b: number) => Math.abs(a - b) <= 1e-6 * Math.max(1, Math.abs(b));

/** The values by which an input may hold it. */
function values({ value, high, unit, dim }: Amount): number[] {
  const all = [value, ...(high === undefined ? [] : [high])];
  if (dim === "temperature") return all.flatMap((each) => [each, celsius(each, unit)]);
  const per = unit === "" || unit === "times" || dim === "money" ? 1 : unitRow(unit).per;
  return all.flatMap((each) => [each, each * per, (each * per) / 60]);
}

/** @returns whether an amount that is no weight and no share stands in none of the inputs. Pure. */
export function losesSome(tool: string, { amounts, mask }: Reading, drafts: readonly Inputs[]): boolean {
  // "batter from 4 whites and how long do they rest": the trade's figures take no bowl and no whites
  if (tool === "method") return amounts.some(isOfBowl);
  if (keepsWords.has(tool)) return false;
  // "3 tbsp butter in g and 300 g dark ganache": a spoon to be turned, in an answer that turns nothing
  if (tool !== "convert" && turnsVolume.test(mask)) return true;
  // "135 c in f and my whites weigh 178 g": into which unit is said of the one, and the other is no conversion
  if (tool === "convert" && drafts.some((each) => "to" in each) && drafts.some((each) => !("to" in each)))
    return true;
  const held = everything(drafts);
  // "rest - 5 min" is held as what is taken off
  const numbers = held.filter((each) => typeof each === "number").map(Math.abs);
  if (saysTwice(amounts, numbers)) return true;
  const texts = held.filter((each) => typeof each === "string").join(" ");
  const holds = (value: number) => numbers.some((each) => same(each, value));
  // "500 g each, 9 dollars a bag" is held as a price by the gram, "3 boxes at $4" as what they come to
  // ("310 g at 2 %, and 155 c in f": a heat is no factor of the 310)
  const isPartOfSum = (amount: Amount) =>
    amount.dim !== "temperature" &&
    amounts.some((each) => {
      const [one = 0, other = 0] = [values(amount)[1], values(each)[1]];
      return each !== amount && [one * other, one / other, other / one].some(holds);
    });
  return amounts
    .filter(
      ({ dim, of, unit }) =>
        dims.has(dim) ||
        (!exact.has(tool) &&
          dim === "number" &&
          unit === "" &&
          (counts.has(of?.count ?? "") || of?.ingredient === "whites")),
    )
    .some(
      (amount) =>
        !values(amount).some(holds) && !texts.includes(String(amount.value)) && !isPartOfSum(amount),
    );
}

/** "120 g buttercream ..., and 120 g milk chocolate", "130 g ..., and 130 c": two that are alike, and one is held. */
function saysTwice(amounts: readonly Amount[], held: readonly number[]): boolean {
  const measured = amounts.filter(
    ({ dim, of }) => (dim === "weight" && of !== undefined) || dim === "temperature" || dim === "time",
  );
  return measured.some((one) => {
    const alike = measured.filter((each) => each.value === one.value);
    const isOther = alike.some((each) => each.dim !== one.dim || each.of?.id !== one.of?.id);
    const kept = held.filter((each) => values(one).some((value) => same(each, value)));
    return isOther && kept.length < alike.length;
  });
}
