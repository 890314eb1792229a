/** The dates of a label: best by on day 5, use by on day 7 of the day of making, or a day that she says herself. */
import { inFridge } from "../../../data/rules/keeping.ts";
import type { Outcome, World } from "../contract/index.ts";
import { asking } from "../lib/asking.ts";
import { sellingCaution } from "../lib/care.ts";
import { localDay, plusDays, shortDay } from "../lib/days.ts";
import { ahead, behind } from "../lib/when.ts";
import type { LabelInputs } from "./label.ts";
import type { Dates } from "./whole.ts";

/** Day 5 and day 7 of the day of making. */
export function datesOf(inputs: LabelInputs, world: World): Dates | Outcome | undefined {
  const rule = datesByRule(inputs, world);
  if (!inputs.use_by || (rule && "status" in rule)) return rule;
  const said = ahead(inputs.use_by, world.now_ms);
  if (!said.ok) return { status: "impossible", headline: said.why };
  const latest = rule?.useBy ?? plusDays(localDay(world.now_ms), inFridge.days - 1);
  if (said.day > latest)
    return {
      status: "impossible",
      headline: `Use by ${named(said.day)} is past day ${inFridge.days}: made ${rule ? "that day" : "today"}, it is ${named(latest)} at the latest.`,
    };
  return { bestBy: rule && rule.bestBy < said.day ? rule.bestBy : said.day, useBy: said.day };
}

function datesByRule(inputs: LabelInputs, world: World): Dates | Outcome | undefined {
  if (!inputs.made) return undefined;
  const past = behind(inputs.made, world.now_ms);
  const made = past.ok ? past : ahead(inputs.made, world.now_ms);
  if (!made.ok) return { status: "impossible", headline: made.why };
  return { bestBy: plusDays(made.day, inFridge.best - 1), useBy: plusDays(made.day, inFridge.days - 1) };
}

const named = (day: string) => `${shortDay(day)} (${day})`;

export function datesAlone(dates: Dates | undefined): Outcome {
  if (!dates) {
    return asking("Which day were they made?", "made");
  }
  return {
    status: "answered",
    headline: `Best by ${named(dates.bestBy)}, use by ${named(dates.useBy)}`,
    rule: {
      text: "best by on day 5 (from memory), use by on day 7, the day of making counted as day 1",
      basis: "published",
      source: inFridge.source,
    },
    items: [
      { line: "best by", text: dates.bestBy },
      { line: "use by", text: dates.useBy },
    ],
    cautions: ["Both hold for filled macarons kept at 5 °C (41 °F) or below.", sellingCaution],
  };
}
