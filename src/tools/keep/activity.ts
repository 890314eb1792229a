/** Water activity: a measured one against the published lines, an estimated one beside another answer. */
import { activity, keepingRules } from "../../../data/rules/keeping.ts";
import type { Outcome } from "../contract/index.ts";
import { asking } from "../lib/asking.ts";
import { awBand, compose, waterActivity } from "../lib/composition.ts";
import { plain } from "../lib/show.ts";
import type { KeepInputs } from "./keep.ts";

/**
 * What the filling is made of, beside the answer: its water activity by the book's formula, an estimate that errs
 * toward perishable and by itself never clears a filling.
 */
export function withFilling(outcome: Outcome, lines: KeepInputs["lines"]): Outcome {
  const sum = lines && compose(lines);
  const aw = sum && sum.unknown.length === 0 ? waterActivity(sum) : undefined;
  if (outcome.status !== "answered" || aw === undefined) return outcome;
  const side =
    Math.abs(aw - activity.line) <= awBand
      ? "on the published line of 0.85, which an estimate alone doesn't clear"
      : aw > activity.pHLine
        ? "above both published lines, 0.85 and 0.88"
        : "between the published lines, 0.85 and 0.88";
  return {
    ...outcome,
    headline: `${outcome.headline}. Its water activity is about ${aw.toFixed(2)} (± ${awBand}, an estimate): ${side}, so keep it cold`,
    figures: [
      ...(outcome.figures ?? []),
      { name: "aw", value: aw, low: aw - awBand, high: aw + awBand, unit: "aw" },
    ],
    cautions: [
      ...(outcome.cautions ?? []),
      "A measurement, not an estimate, and your authority decide whether a filling may stand out.",
    ],
  };
}

/** A measured value against the two published lines. Below them it is still no licence. */
export function activityLines({ aw }: KeepInputs): Outcome {
  if (aw === undefined) return asking("What is its water activity, between 0 and 1?", "aw");
  const side =
    aw > activity.pHLine
      ? "above both lines, 0.85 and 0.88"
      : aw > activity.line
        ? "above 0.85, not above 0.88 (the line at a pH above 5)"
        : "not above either line, 0.85 and 0.88";
  return {
    status: "answered",
    headline:
      aw > activity.line
        ? `Perishable: ${plain(aw)} is ${side}. Keep it cold`
        : `${plain(aw)} is ${side}; that alone doesn't clear it to stand out: a laboratory's measurement and your authority decide`,
    figures: [{ name: "aw", value: aw, unit: "aw" }],
    rule: keepingRules.activity,
  };
}
