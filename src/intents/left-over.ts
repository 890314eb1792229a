/**
 * What a calculator left unread. A weight or a percentage that was said and stands in none of its inputs shows that
 * another calculator was meant, or that the sentence was misread: then a number is no answer.
 */
import type { Amount, Reading } from "../tools/contract/index.ts";
import { inBase, unitRow } from "../tools/lib/units.ts";
import type { Inputs } from "./step.ts";

/** Calculators that keep the words themselves, or that take what is left as a remark. */
const keepsWords = new Set(["note", "recall", "explain", "help", "undo", "trouble", "method"]);

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
function values({ value, high, unit, dim }: Amount): number[] {
  const per = dim === "percent" ? 0.01 : unitRow(unit).per;
  return [value, ...(high === undefined ? [] : [high])].flatMap((each) => [each, each * per]);
}

/** The weights and percentages of a sentence that none of the drafts holds, as they were said. */
export function leftOver(tool: string, reading: Reading, drafts: readonly Inputs[]): string[] {
  if (keepsWords.has(tool)) return [];
  const held = numbersIn(drafts);
  const text = textIn(drafts);
  // "540 g ganache, rum for half of it" is held as the half
  const shares = reading.amounts.flatMap((each) => (each.fraction && !each.of ? each.value : []));
  const isOf = (number: number, value: number) =>
    same(number, value) || shares.some((share) => same(number, value * share));
  const left = reading.amounts
    .filter(({ dim }) => dim === "weight" || dim === "percent")
    // "16 a kilo": the unit of a price, in which it is held
    .filter(({ text: said }) => !(priced.has(tool) && /^(?:an? |per |each )/.test(said)))
    .filter((amount) => !values(amount).some((value) => held.some((each) => isOf(each, value))))
    .filter(({ value }) => !text.includes(String(value)));
  const [one, other] = left;
  // "this makes 500 g, i want 350 g" is held as one over the other
  const ratio =
    left.length === 2 && one && other
      ? inBase(other.value, other.unit) / inBase(one.value, one.unit)
      : undefined;
  return ratio !== undefined && held.some((each) => same(each, ratio))
    ? []
    : left.map((amount) => amount.text);
}
