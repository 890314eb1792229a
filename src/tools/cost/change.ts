/** What a change of size, price, filling or share did to the answer before: laid beside the new one. */
import type { Outcome } from "../contract/index.ts";
import { moneyText } from "../lib/money.ts";
import { plain } from "../lib/show.ts";

/** The figure that an answer about money leads with. */
const leads = ["cost", "price", "margin", "markup", "food cost"] as const;
type Lead = (typeof leads)[number];

/**
 * The new answer with the difference to the one before; unchanged where they can't be compared.
 * @param want the figure that both answers lead with
 */
export function compared(now: Outcome, before: Outcome, want: Lead): Outcome {
  const of = (outcome: Outcome) =>
    outcome.status === "answered" ? outcome.figures?.find((each) => each.name === want) : undefined;
  const [new_, old] = [of(now), of(before)];
  if (new_?.value === undefined || old?.value === undefined || new_.unit !== old.unit) return now;
  // a margin of 120 % had no price
  if (want === "price" && old.value <= 0) return now;
  const by = new_.value - old.value;
  if (Math.abs(by) < 1e-9 || !Number.isFinite(by)) return now;
  const way = by > 0 ? "more" : "less";
  const text =
    new_.unit === "%"
      ? `${plain(Math.abs(by), 1)} points ${way} than before (${plain(old.value, 1)} %)`
      : `${moneyText(Math.abs(by), new_.unit)} ${way} than before (${moneyText(old.value, old.unit)})`;
  return {
    ...now,
    headline: `${now.headline}; ${text}`,
    figures: [...(now.figures ?? []), { name: "change", value: by, unit: new_.unit }],
  };
}
