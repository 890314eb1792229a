/**
 * Finished batter can't wait: as soon as it is folded it is piped, rests and bakes, however much later the plan had it.
 * What is left of the day stays as late as it can be. Source: from memory.
 */
import {
  type DayImpossible,
  type DayOrder,
  type DayPlan,
  type DoneStep,
  planDay,
} from "../day-plan/index.ts";

/** The batter may stand this long before its first tray, seconds; from memory. */
const stands_s = 15 * 60;

type Made = DayPlan | DayImpossible;

/** The plan with its trays piped from now on, where the batter is made and the first was to wait. */
export function pipedAtOnce(plan: Made, order: DayOrder): Made {
  if (!plan.fits) return plan;
  const { now, settings } = order;
  const batter = plan.steps.find(({ id }) => id === "macaronage");
  const pipes = plan.steps.filter(({ id }) => id.startsWith("pipe-"));
  const first = Math.min(...pipes.map(({ start }) => start));
  if (!batter || batter.end > now || first <= now + stands_s) return plan;
  const done = plan.steps
    .filter(({ start }) => start < now)
    .map(({ id, start, end }) => ({ id, start, end }));
  const free = Math.max(
    now,
    ...plan.steps.filter(({ hands, start, end }) => hands && start < now && end > now).map(({ end }) => end),
  );
  const early = shellsFrom(
    free,
    pipes.map(({ id }) => id.slice("pipe-".length)),
    settings,
  );
  const made = planDay({ ...order, done: [...done, ...early] });
  return made.fits && !clashes(made, early) ? made : plan;
}

/** Piped one after another; each bakes as soon as it has rested and an oven is free. */
function shellsFrom(from: number, trays: readonly string[], settings: DayOrder["settings"]): DoneStep[] {
  const rest = settings.noRest ? 0 : settings.rest * 60;
  const ovens = Array<number>(settings.ovens).fill(from);
  return trays.flatMap((tray, at): DoneStep[] => {
    const start = from + at * settings.pipe * 60;
    const piped = start + settings.pipe * 60;
    const oven = ovens.indexOf(Math.min(...ovens));
    const bakes = Math.max(piped + rest, ovens[oven] ?? from);
    ovens[oven] = bakes + settings.bake * 60;
    return [
      { id: `pipe-${tray}`, start, end: piped },
      ...(rest > 0 ? [{ id: `rest-${tray}`, start: piped, end: piped + rest }] : []),
      { id: `bake-${tray}`, start: bakes, end: bakes + settings.bake * 60 },
    ];
  });
}

/** No two hands at once, and none where the day has none. */
function clashes(plan: DayPlan, early: readonly DoneStep[]): boolean {
  const ids = new Set(early.map(({ id }) => id));
  const hands = plan.steps.filter(({ hands }) => hands);
  return hands.some(
    (one) =>
      ids.has(one.id) &&
      hands.some((other) => other !== one && one.start < other.end && other.start < one.end),
  );
}
