/** "a pound and a half of butter", "a stick and a half": the half belongs to the unit before it. */
import type { Amount, Reading } from "../contract/index.ts";
import { unitRow } from "../lib/units.ts";

const joined = /^and(?: an?)?$/;

/** The amounts with such halves put together; a unit that stood without a number counts as one. */
export function withHalves(reading: Reading): Amount[] {
  const gap = (from: number, to: number) => reading.text.slice(from, to).trim();
  return reading.amounts.flatMap((amount, i): Amount[] => {
    const next = reading.amounts[i + 1];
    if (next && isPart(next) && measures(amount) && joined.test(gap(amount.at[1], next.at[0])))
      return [
        {
          ...amount,
          value: amount.value + next.value,
          of: next.of ?? amount.of,
          at: [amount.at[0], next.at[1]],
        } as Amount,
      ];
    if (!isPart(amount)) return [amount];
    const before = reading.amounts[i - 1];
    if (before && measures(before) && joined.test(gap(before.at[1], amount.at[0]))) return [];
    const unit = reading.things.find((each) => each.unit && joined.test(gap(each.at[1], amount.at[0])));
    return unit?.unit
      ? [
          {
            ...amount,
            value: 1 + amount.value,
            unit: unit.unit,
            dim: unitRow(unit.unit).dim,
            at: [unit.at[0], amount.at[1]],
          } as Amount,
        ]
      : [amount];
  });
}

const listed = /^(?:,|and|or|&|\+|plus|, and|then)$/;

/** "1 1/2 and 3/4 cups of flour", "1 cup and 1/2 cup of it": measures of one thing; "2 and a half cups" is one. */
export function withSharedUnits(reading: Reading): Amount[] {
  const out: Amount[] = [];
  for (const amount of withHalves(reading).reverse()) {
    const next = out.at(-1);
    const isListed = next && listed.test(reading.text.slice(amount.at[1], next.at[0]).trim());
    out.push(isListed ? sharing(amount, next) : amount);
  }
  return out.reverse();
}

/** The unit of the next measure and what that is of, where the one before it says neither. */
function sharing(amount: Amount, next: Amount): Amount {
  if (amount.of || !["volume", "weight"].includes(next.dim)) return amount;
  const of = next.of ? { of: next.of } : {};
  if (amount.dim === "volume" && next.dim === "volume") return { ...amount, ...of };
  const isBare = amount.dim === "number" && amount.unit === "" && amount.value > 0;
  // "1 and 3/4 cups" is one measure
  if (!isBare || (Number.isInteger(amount.value) && next.value < 1)) return amount;
  const { fraction: _fraction, ...rest } = amount;
  return { ...rest, unit: next.unit, dim: next.dim, ...of } as Amount;
}

const isPart = (amount: Amount) =>
  amount.dim === "number" && amount.unit === "" && Boolean(amount.fraction) && amount.value < 1;
const measures = (amount: Amount) => ["weight", "volume", "time", "length"].includes(amount.dim);
