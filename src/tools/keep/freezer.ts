/** In the freezer: how long they are at their best there. */
import { frozen, inFridge, keepingRules } from "../../../data/rules/keeping.ts";
import type { Figure, Outcome, World } from "../contract/index.ts";
import { asking } from "../lib/asking.ts";
import { daysBetween, localDay, plusDays } from "../lib/days.ts";
import { plain } from "../lib/show.ts";
import { answerDays, clockOf, plusMonths } from "./days.ts";
import { behindOrAhead, dayOf, named } from "./days-meant.ts";
import type { KeepInputs } from "./keep.ts";

/** In the freezer, with or without the day it went in. */
export function answerFreezer(inputs: KeepInputs, world: World): Outcome {
  const figures: Figure[] = [
    { name: "freezer", value: frozen.at_c, unit: "°C" },
    { name: "freezer", value: frozen.at_f, unit: "°F" },
    { name: "frozen", value: frozen.months, unit: "months" },
  ];
  const how = `airtight at −18 °C (0 °F), best within ${frozen.months} months; thaw in the closed box in the fridge`;
  const went = dayOf(inputs.frozen, world.now_ms);
  if (went && !went.ok) return { status: "impossible", headline: went.why };
  if (inputs.made && went?.ok) return answerDays(inputs, world);
  const since = went?.ok
    ? went.day
    : inputs.frozen_days !== undefined
      ? plusDays(localDay(world.now_ms), -inputs.frozen_days)
      : undefined;
  const common = {
    status: "answered" as const,
    figures,
    rule: keepingRules.frozen,
    cautions: ["Freezing stops the 7 days of the fridge; thawing starts them again where they stood."],
  };
  if (since === undefined && inputs.still) return asking("Which day did they go into the freezer?", "frozen");
  if (since === undefined) return { ...common, ...unlessOver(inputs, world, how) };
  const until = plusMonths(since, frozen.months);
  const over = daysBetween(localDay(world.now_ms), until) < 0;
  return {
    ...common,
    headline: over
      ? `Past their best: frozen on ${named(since)}, the ${frozen.months} months ended on ${named(until)}`
      : `Best until ${named(until)}: ${how}`,
    items: [{ frozen: since, best_by: until }],
    working: [`${since} and ${plain(frozen.months)} months: ${until}`],
  };
}

/** "can i freeze them", "and the ones i filled on the 6th?": not what is past its last day already. */
function unlessOver(inputs: KeepInputs, { now_ms }: World, how: string) {
  const { made, coming, how_long, weeks_before = 0 } = inputs;
  const found = made && !coming && !how_long ? behindOrAhead(made, now_ms) : undefined;
  const day = found?.ok ? plusDays(found.day, -7 * weeks_before) : undefined;
  const today = localDay(now_ms);
  if (day === undefined || daysBetween(day, today) < 0) return { headline: `Yes: ${how}` };
  const { useBy, bestBy } = clockOf(day);
  const items = [{ made: day, best_by: bestBy, use_by: useBy }];
  return daysBetween(today, useBy) < 0
    ? {
        headline: `No: the last day was ${named(useBy)}, day ${inFridge.days}, and freezing doesn't bring it back. Throw them out.`,
        figures: [],
        rule: keepingRules.inFridge,
        items,
      }
    : { headline: `Yes, by ${named(useBy)} at the latest: ${how}`, items };
}
