/** An order on the solver's axis, the plan that there is for it now, and the rule it goes by. */
import type { Rule, World } from "../contract/index.ts";
import {
  type DayImpossible,
  type DayOrder,
  type DayPlan,
  planDay,
  rework,
  usualSettings,
  wallSeconds,
} from "../day-plan/index.ts";
import { clockOfMinute, localIso } from "../lib/days.ts";
import { plain } from "../lib/show.ts";
import { shellsFor, shellsOnTray, sizing } from "../lib/sizing.ts";
import { pipedAtOnce } from "./at-once.ts";
import type { DayInputs } from "./day.ts";
import { fillingSteps } from "./fillings.ts";
import { isAsPlanned } from "./part-done.ts";
import { fillingsOf } from "./portions.ts";
import { doneBy, stepMeant } from "./progress.ts";
import type { Standing } from "./standing.ts";

/** The order on the solver's axis: local wall-clock seconds. Lengths are the book's, or the baker's where set. */
export function orderOf(
  inputs: DayInputs,
  due_ms: number,
  standing: Standing | undefined,
  world: World,
): DayOrder {
  const { bench } = world;
  const size = sizing(inputs.diameter_mm, bench);
  const macarons = Math.round(inputs.macarons ?? 1);
  const onTray = Math.max(1, shellsOnTray(size.diameter_mm, bench));
  return {
    macarons,
    shellsOnTray: onTray,
    trays: standing?.trays ?? Math.ceil(shellsFor(macarons, bench) / onTray),
    due: wallSeconds(localIso(due_ms)),
    now: wallSeconds(localIso(world.now_ms)),
    settings: {
      ...usualSettings,
      ...(bench.weigh_min !== undefined ? { weigh: bench.weigh_min } : {}),
      ...(bench.macaronage_min !== undefined ? { macaronage: bench.macaronage_min } : {}),
      ...(bench.pipe_min !== undefined ? { pipe: bench.pipe_min } : {}),
      ...(bench.fill_s !== undefined ? { fillEach: bench.fill_s } : {}),
      ...(bench.box_min !== undefined ? { box: bench.box_min } : {}),
      ...(bench.warm_min !== undefined ? { warm: bench.warm_min } : {}),
      ...(bench.bake_min !== undefined ? { bake: bench.bake_min } : {}),
      ...(bench.rest_min !== undefined ? { rest: bench.rest_min } : {}),
      ...(bench.cool_min !== undefined ? { cool: bench.cool_min } : {}),
      ...(bench.mature_h !== undefined ? { mature: bench.mature_h * 60 } : {}),
      ...(bench.trays_at_once !== undefined ? { ovens: bench.trays_at_once } : {}),
      awake: {
        from: bench.wake_min ?? usualSettings.awake.from,
        to: bench.sleep_min ?? usualSettings.awake.to,
      },
      noRest: inputs.no_rest ?? false,
    },
    fillings: fillingSteps(fillingsOf(inputs)),
  };
}

/** What there is now: the plan that stands, moved on where the bench or the order has changed, or a new one. */
export function planNow(
  inputs: DayInputs,
  order: DayOrder,
  standing: Standing | undefined,
): DayPlan | DayImpossible {
  const plan = planLate(inputs, order, standing);
  return standing ? pipedAtOnce(plan, order) : plan;
}

/** Every step as late as it can be. */
function planLate(
  inputs: DayInputs,
  order: DayOrder,
  standing: Standing | undefined,
): DayPlan | DayImpossible {
  const first = standing ?? planDay(order);
  if (!first.fits) return first;
  const done = inputs.want === "done" ? stepMeant(first, inputs.step) : undefined;
  // less than a minute off is on time
  const onTime =
    done && (Math.abs(order.now - done.end) < 60 || isAsPlanned(first, done, inputs.step, order.now));
  if (done && !onTime) return planDay({ ...order, done: doneBy(first, done, order.now, inputs.step) });
  // the rest put back, before anything has begun: planned anew
  if (standing?.made_for.no_rest && !order.settings.noRest && first.start > order.now) return planDay(order);
  const late = inputs.want === "late" ? Math.round((inputs.late_min ?? 0) * 60) : 0;
  const skipRest = standing !== undefined && order.settings.noRest && !standing.made_for.no_rest;
  if (late === 0 && !skipRest && first.ready === order.due) return first;
  if (late > 0 && inputs.done_ids?.length && !skipRest) return lateAfter(inputs.done_ids, late, order, first);
  // late before the first step is begun: it begins that much later
  const away = Math.max(0, first.start > order.now ? late : first.start + late - order.now);
  return rework(order, first, order.now, { late, skipRest, away });
}

/** Late behind steps that were said to be done: those keep their hours, and what the plan has begun since is moved. */
function lateAfter(ids: readonly string[], late: number, order: DayOrder, { steps }: DayPlan) {
  const told = new Set(ids);
  // a rest, a setting or a cooling begins with the end of what it is of
  const isTold = (id: string) => told.has(id) || told.has(ofItself(id));
  const byNow = steps.filter(({ id, start }) => start + (isTold(id) ? 0 : late) < order.now);
  const done = byNow.map(({ id, start, end }) => {
    const by = isTold(id) ? 0 : late;
    return { id, start: start + by, end: end + by };
  });
  const next = steps.find(({ id, hands }) => !isTold(id) && (hands || id.startsWith("bake-")));
  const away =
    next === undefined ? 0 : next.start > order.now ? late : Math.max(0, next.start + late - order.now);
  return planDay({ ...order, now: order.now + away, done });
}

const ofItself = (id: string): string =>
  id
    .replace(/^rest-/, "pipe-")
    .replace(/^cool-/, "bake-")
    .replace(/^set-/, "filling-");

const settingKeys = [
  "weigh_min",
  "macaronage_min",
  "pipe_min",
  "rest_min",
  "bake_min",
  "cool_min",
  "fill_s",
  "mature_h",
  "box_min",
  "warm_min",
  "wake_min",
  "sleep_min",
  "trays_at_once",
  "shells_a_tray",
  "tray_width_mm",
  "tray_depth_mm",
  "spare_percent",
  "diameter_mm",
] as const;

/** The lengths that the plan goes by, the baker's own among them. */
export function planRule({ settings }: DayOrder, world: World): Rule {
  const own = settingKeys.some((key) => world.bench[key] !== undefined);
  const { weigh, macaronage, pipe, rest, noRest, bake, ovens, cool, fillEach, mature, box, warm, awake } =
    settings;
  const oven = ovens === 1 ? "one after another" : `${plain(ovens)} at a time`;
  return {
    text: `weigh ${plain(weigh)} min, meringue and macaronage ${plain(macaronage)}, pipe ${plain(pipe)} a tray, rest ${plain(noRest ? 0 : rest)}, bake ${plain(bake)} a tray ${oven}, cool ${plain(cool)}, fill ${plain(fillEach)} s a macaron, mature ${plain(mature / 60)} h, box ${plain(box)}, to room temperature ${plain(warm)}; one pair of hands, none between ${clockOfMinute(awake.to)} and ${clockOfMinute(awake.from)}`,
    basis: own ? "your bench" : "from memory",
  };
}
