/** Which plan is meant: the one spoken of, or the kept one where the words are about a plan alone. */
import type { Plan, World } from "../contract/index.ts";
import { wallText } from "../day-plan/index.ts";
import { localDay } from "../lib/days.ts";
import { ahead, type Said } from "../lib/when.ts";
import type { DayInputs } from "./day.ts";
import { keptPlan, wallNow } from "./kept.ts";
import { hasMoved } from "./moved-said.ts";

/** What is asked about a plan that there is, rather than a new one. */
export const isAbout = ({ want, no_rest, macarons, due, ...said }: DayInputs) =>
  (want !== undefined && want !== "plan") ||
  Boolean((no_rest || hasMoved(said)) && macarons === undefined && due === undefined);

export function planMeant(said: DayInputs, world: World): Plan | undefined {
  const spoken = world.plans.findLast((each) => each.made_ms === said.plan);
  const bare = said.macarons === undefined && said.due === undefined;
  if (said.want === "sheet" && said.due === undefined) return spoken ?? sheetPlan(said, world);
  return spoken ?? (bare && isAbout(said) ? keptPlan(world) : undefined);
}

/** A sheet for as many as are planned, and for nothing else, is that plan's; one for a day is for a plan with that day in it. */
function sheetPlan(
  { want: _want, paper: _paper, plan: _plan, as_kept: _kept, on, macarons, ...more }: DayInputs,
  world: World,
) {
  const now = wallNow(world);
  const isAny = macarons === undefined && Object.keys(more).length === 0;
  if (on) {
    const day = dayOf(on as Said, world);
    const having = world.plans.filter((each) =>
      each.steps.some(({ start }) => wallText(start).startsWith(day)),
    );
    return keptPlan({ ...world, plans: having });
  }
  const next = keptPlan(world);
  const same =
    next?.macarons === macarons && next !== undefined && next.ready > now && Object.keys(more).length === 0;
  return isAny || same ? next : undefined;
}

export function dayOf(on: Said, world: World): string {
  const moment = ahead(on, world.now_ms);
  return moment.ok ? moment.day : localDay(world.now_ms);
}
