/** "pistachio paste: 60 g left, cost 9.80 for 200 g": what there is of a thing and what it cost, told in one breath. */
import type { Amount, Reading } from "../contract/index.ts";
import { nameOf } from "../lib/lines.ts";
import { currencySaid } from "../lib/money.ts";
import { inBase, unitRow } from "../lib/units.ts";
import type { Draft } from "./draft.ts";

const isLeft = /^ (?:left|in stock|remaining|on the shelf|there|in it)\b/;
const isFor = /^ ?(?:for|per|a|an|the|\/) ?$/;

/** Nothing where it isn't one thing, so much of it that is left, and a sum for another weight. */
export function stockAndPrice({ amounts, things, text }: Reading): Draft | undefined {
  const owners = things.filter((each) => each.ingredient || each.chocolate);
  const [owner, ...others] = owners;
  const weights = amounts.filter(({ dim }) => dim === "weight");
  const left = weights.filter(({ at }) => isLeft.test(text.slice(at[1])));
  const sums = amounts.filter(({ dim, unit }) => dim === "money" || (dim === "number" && unit === ""));
  const [sum, ...more] = sums;
  const [there, ...twice] = left;
  if (!owner || others.length > 0 || !sum || more.length > 0 || !there || twice.length > 0) return undefined;
  const pack = weights.find(
    (each) => each !== there && each.at[0] >= sum.at[1] && isFor.test(text.slice(sum.at[1], each.at[0])),
  );
  const for_g = gramsFor(sum, pack);
  if (for_g === undefined || weights.length !== (pack ? 2 : 1)) return undefined;
  const value = sum.dim === "money" ? inBase(sum.value, sum.unit) : sum.value;
  const currency = currencySaid(sum);
  return {
    does: "set",
    entries: [
      {
        name: nameOf(owner),
        grams: inBase(there.value, there.unit),
        price_per_g: value / for_g,
        ...(currency ? { currency } : {}),
      },
    ],
  };
}

/** The weight that the sum is for. */
function gramsFor({ per }: Amount, pack: Amount | undefined): number | undefined {
  if (pack) return inBase(pack.value, pack.unit);
  return per && unitRow(per.unit).dim === "weight" ? inBase(per.value, per.unit) : undefined;
}
