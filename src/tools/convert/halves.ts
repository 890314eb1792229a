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

const isPart = (amount: Amount) =>
  amount.dim === "number" && amount.unit === "" && Boolean(amount.fraction) && amount.value < 1;
const measures = (amount: Amount) => ["weight", "volume", "time", "length"].includes(amount.dim);
