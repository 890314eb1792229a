/** "2:1", "two to one", "2 parts chocolate to 1 part cream": a ratio of her own, in place of the book's. */
import type { Amount, Reading } from "../contract/index.ts";

/** Nobody makes a ganache of more than this many parts of one to the other; larger numbers are weights. */
const most = 10;

const isBare = (amount: Amount) =>
  amount.dim === "number" &&
  amount.unit === "" &&
  !amount.fraction &&
  amount.value > 0 &&
  amount.value <= most;

/** @returns chocolate over cream, and the reading without the two numbers; undefined where no ratio is said */
export function ratioSaid(reading: Reading): { ratio: number; rest: Reading } | undefined {
  const { amounts, text } = reading;
  for (const [at, first] of amounts.entries()) {
    const second = amounts[at + 1];
    if (!second || !isBare(first) || !isBare(second)) continue;
    const between = text.slice(first.at[1], second.at[0]);
    const joined = /^ ?(?::|to|-to-) ?$/.test(between);
    const inParts = /^ (?:parts?|times)\b.*\b(?:to|and|per|for|:) ?$/.test(between);
    if (!joined && !inParts) continue;
    const behind = text.slice(second.at[1]);
    const creamFirst = inParts ? /cream/.test(between) : /^ ?(?:of )?cream (?:to|:) /.test(behind);
    return {
      ratio: creamFirst ? second.value / first.value : first.value / second.value,
      rest: { ...reading, amounts: amounts.filter((each) => each !== first && each !== second) },
    };
  }
  return undefined;
}
