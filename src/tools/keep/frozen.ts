/** The count of days where they were frozen: the freezer stops it, and thawing starts it again. */
import { frozen, inFridge, keepingRules } from "../../../data/rules/keeping.ts";
import type { Outcome, World } from "../contract/index.ts";
import { daysBetween, localDay, plusDays } from "../lib/days.ts";
import { behindOrAhead, inTheCold, named } from "./days-meant.ts";
import type { KeepInputs } from "./keep.ts";

/** "frozen on day 2, thawed today": the days left are sure without the day of making. */
export function fromDay(inputs: KeepInputs, world: World): Outcome {
  const used = (inputs.frozen_on_day ?? 1) - 1;
  if (used >= inFridge.days)
    return {
      status: "answered",
      headline: `No: day ${used + 1} is past day ${inFridge.days}. Throw them out.`,
      rule: keepingRules.clock,
    };
  const left = inFridge.days - used;
  const thawed = inputs.thawed && behindOrAhead(inputs.thawed, world.now_ms);
  if (thawed && !thawed.ok) return { status: "impossible", headline: thawed.why };
  const until = thawed?.ok ? plusDays(thawed.day, left - 1) : undefined;
  const over = until !== undefined && daysBetween(localDay(world.now_ms), until) < 0;
  return {
    status: "answered",
    headline: over
      ? `No: the last day was ${named(until)}. Throw them out.`
      : `${left} days from the day they thaw, which is the first of them${until ? `: use by ${named(until)}` : ""}`,
    figures: over
      ? []
      : [
          {
            name: "days left",
            value: until ? daysBetween(localDay(world.now_ms), until) + 1 : left,
            unit: "d",
          },
        ],
    rule: keepingRules.clock,
    assumed: [`kept at ${inTheCold} but for the freezer`],
    working: [
      `frozen on day ${used + 1}: ${used} of ${inFridge.days} days used; ${inFridge.days} − ${used} = ${left}`,
    ],
  };
}

/** In the freezer: the count stands. */
export function stopped(made: string, froze: string): Outcome {
  const used = daysBetween(made, froze);
  if (used >= inFridge.days)
    return {
      status: "answered",
      headline: `No: they were frozen on ${named(froze)}, after day ${inFridge.days} (${plusDays(made, inFridge.days - 1)}). Throw them out.`,
      rule: keepingRules.clock,
    };
  return {
    status: "answered",
    headline: `Frozen on ${named(froze)} with ${used} of ${inFridge.days} days used: ${inFridge.days - used} left from the day you thaw them, best within ${frozen.months} months of freezing`,
    figures: [
      { name: "days left", value: inFridge.days - used, unit: "d" },
      { name: "frozen", value: frozen.months, unit: "months" },
      { name: "freezer", value: frozen.at_c, unit: "°C" },
    ],
    rule: keepingRules.clock,
    working: [`${made} to ${froze}: ${used} days used; ${inFridge.days} − ${used} = ${inFridge.days - used}`],
  };
}
