/** What a bottle's own label says beside a percentage: a weight to a weight, a strength, what is left in it. */
import { doseRows } from "../../../data/rules/doses.ts";
import type { Amount, Reading } from "../contract/index.ts";
import { plain } from "../lib/show.ts";
import { inBase } from "../lib/units.ts";
import type { Draft } from "./draft.ts";

/** A liquid's ml count as grams, an estimate. */
const gramsOf = (value: number, { dim, unit }: Amount) =>
  dim === "weight" || dim === "volume" ? inBase(value, unit) : Number.NaN;
const weighable = (amount: Amount) =>
  amount.dim === "weight" ||
  (amount.dim === "volume" &&
    (["ml", "cl", "l"].includes(amount.unit) ||
      // a spoon of a liquid counts as water; one of powder has no weight of its own
      (["tsp", "tbsp"].includes(amount.unit) && liquid.has(amount.of?.dose ?? "flavor"))));
const liquid = new Set(doseRows.filter((row) => row.liquid).map((row) => row.id));

const perUnit: readonly (readonly [RegExp, number, string])[] = [
  [
    /^\s*(?:per|a|an|for (?:a|each|every|one)|to (?:a|the|each)|in (?:a|each)|\/)\s*(?:kilo\w*|kgs?)\b/,
    1000,
    "kg",
  ],
  [
    /^\s*(?:per|a|an|for (?:a|each|every|one)|to (?:a|the|each)|in (?:a|each)|\/)\s*(?:lit(?:er|re)s?|l)\b/,
    1000,
    "l",
  ],
  [
    /^\s*(?:per|a|an|for (?:a|each|every|one)|to (?:a|the|each)|in (?:a|each)|\/)\s*(?:pounds?|lbs?)\b/,
    453.59237,
    "lb",
  ],
];

/** "6 to 9 g per kilogram" is 0.6 to 0.9 %; "5 ml to 1 kg" is 0.5 %. */
function perWeight(reading: Reading): Draft | undefined {
  for (const [at, amount] of reading.amounts.entries()) {
    if (!weighable(amount)) continue;
    const behind = reading.text.slice(amount.at[1]);
    const unit = perUnit.find(([pattern]) => pattern.test(behind));
    const next = reading.amounts[at + 1];
    const joined =
      next &&
      weighable(next) &&
      /^\s*(?:per|for|to|in|\/)(?: (?:a|each|every|one))?\s*$/.test(
        reading.text.slice(amount.at[1], next.at[0]),
      );
    const whole = unit?.[1] ?? (joined ? gramsOf(next.value, next) : undefined);
    if (!whole && isRatio(amount)) return ratioOf(amount);
    if (!whole) continue;
    const low = (gramsOf(amount.value, amount) * 100) / whole;
    const high = (gramsOf(amount.high ?? amount.value, amount) * 100) / whole;
    const to = unit ? `a ${unit[2]}` : (next?.text ?? "");
    const share = low === high ? plain(low, 3) : `${plain(low, 3)}-${plain(high, 3)}`;
    return {
      low_percent: low,
      high_percent: high,
      taken: `${amount.text} to ${to} is ${share} %${amount.dim === "volume" ? ", ml counted as grams: an estimate" : ""}`,
    };
  }
  return undefined;
}

/** A label never spans this far from its low to its high end. */
const widest = 4;

/** "4 g to 500 g", both with their unit and far apart: so much to so much, not from one to the other. */
const isRatio = ({ value, high, text }: Amount) =>
  high !== undefined && high >= widest * value && /[a-z]\.? ?to ?\d/.test(text.replaceAll("_", " "));

function ratioOf(amount: Amount): Draft {
  const share = (gramsOf(amount.value, amount) * 100) / gramsOf(amount.high ?? amount.value, amount);
  return {
    low_percent: share,
    high_percent: share,
    taken: `${amount.text} is ${plain(share, 3)} %${amount.dim === "volume" ? ", ml counted as grams: an estimate" : ""}`,
  };
}

const spelt: Readonly<Record<string, number>> = { double: 2, twice: 2, triple: 3, quadruple: 4, half: 0.5 };

function strengthOf(reading: Reading): number | undefined {
  const word = /\b(double|twice|triple|quadruple|half)\b[ -]?(?:the )?(?:usual |normal )?(?:as )?str/.exec(
    reading.text,
  )?.[1];
  if (word) return spelt[word];
  const times = reading.amounts.find((each) => each.unit === "times");
  return times && /strength|strong/.test(reading.text) ? times.value : undefined;
}

/** Directions by weight (`mix`), strength, and what is left; each only where it is said. */
export function bottleFacts(reading: Reading): { mix?: Draft; strength?: number; left_g?: number } {
  if (/\bhow (?:much|many)\b/.test(reading.text)) return {};
  const mix = perWeight(reading);
  const strength = strengthOf(reading);
  const amount = mix ? undefined : reading.amounts.find(weighable);
  const left =
    amount &&
    /\b(?:left|remaining|holds|in it|full|bottle (?:is|has)(?: (?:still|about|now|only|a))*\s+[\d])/.test(
      reading.text,
    );
  return {
    ...(mix ? { mix } : {}),
    ...(strength !== undefined ? { strength } : {}),
    ...(left ? { left_g: gramsOf(amount.value, amount) } : {}),
  };
}
