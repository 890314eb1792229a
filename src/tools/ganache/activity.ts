/** What an estimate of water activity means: the published lines, the rule in words, who decides. */
import { activity } from "../../../data/rules/keeping.ts";
import type { Rule } from "../contract/index.ts";
import { compositionSource, saturation } from "../lib/composition.ts";

/** A measurement and the authority decide, never the estimate. */
export const authority =
  "An estimate replaces no measurement: before you keep or sell it unchilled, have it measured and ask the local food authority.";

export const keepCold = "Keep it at 5 °C (41 °F) or below.";

/** Where an estimate stands to the two published lines. At or below both it is still no licence. */
export function verdictOf(aw: number): string {
  if (aw > activity.pHLine) return "above both lines: perishable";
  if (aw > activity.line) return `above the ${activity.line} line: treat it as perishable`;
  return "not above the lines, by an estimate alone: keep it cold";
}

/** Norrish's formula as it is used here, and both lines. */
export const activityRule: Rule = {
  text: `a_w = (1 − X) × exp(−6.47 X²), X the mole share of dissolved sugar, all counted as sucrose, at most ${saturation} g per g of water; lines at ${activity.line} (21 CFR 114.3) and ${activity.pHLine} (Food Code 1-201.10)`,
  basis: "published",
  source: `Norrish 1966, sucrose K = 6.47; Mohos, Confectionery and Chocolate Engineering, table A2.2; ${compositionSource}`,
};

export const estimateNote = "an estimate: all sugars counted as sucrose, which errs toward perishable";
