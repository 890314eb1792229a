/** Works the day out by the solver in day-plan, and says what would fit where it can't be. */
import type { Outcome, World } from "../contract/index.ts";
import {
  type DayImpossible,
  type DayOrder,
  type DayPlan,
  planDay,
  rework,
  usualFillings,
  usualSettings,
  wallSeconds,
  wallText,
  whatNext,
} from "../day-plan/index.ts";
import { clock, clockOfMinute, friendly, localIso } from "../lib/days.ts";
import { type Lesson, learned, lessonText, oddLines, taughtBench, taughtTo } from "../lib/learned.ts";
import { capital, counted, listed, plain } from "../lib/show.ts";
import { shellsFor, shellsOnTray, sizing } from "../lib/sizing.ts";
import type { Said } from "../lib/when.ts";
import { calendarOf } from "./calendar.ts";
import type { DayInputs } from "./day.ts";
import { dueOf, type Standing, standingPlan } from "./standing.ts";

const asking = (question: string, slot: string): Outcome => ({
  status: "asking",
  headline: question,
  question,
  slot,
});

/** @throws never: what is missing, past or can't fit comes back as an outcome that says so. */
export function answerDay(inputs: DayInputs, given: World): Outcome {
  const taught = lessonsFor(inputs, given);
  const world = { ...given, bench: taughtBench(given.bench, taught) };
  if (inputs.macarons === undefined && inputs.want && inputs.want !== "plan")
    return {
      status: "impossible",
      headline: "There is no plan yet. Say how many macarons you need and when.",
    };
  if (inputs.due === undefined) return asking("When do they have to be ready?", "due");
  const standing = standingPlan(inputs);
  const due = dueOf(inputs.due as Said, standing, world);
  if (!due.ok) return { status: "impossible", headline: due.why };
  if (inputs.macarons === undefined) return asking("How many macarons?", "macarons");
  if (!due.timed) return asking("At what time do they have to be ready?", "due");
  const order = orderOf(inputs, due.at_ms, world);
  if ((order.trays ?? 0) > mostTrays)
    return {
      status: "impossible",
      headline: `${order.trays} trays are beyond a home kitchen; check the numbers.`,
    };
  const plan = planNow(inputs, order, standing);
  if (!plan.fits) return withLessons(cannot(plan, order, due.at_ms, world), taught, world.now_ms);
  return withLessons(shown(inputs, plan, order, due.at_ms, due.assumed, world), taught, world.now_ms);
}

/** Names the batches that the plan's lengths are from, and those that were left out. */
function withLessons(outcome: Outcome, taught: readonly Lesson[], now_ms: number): Outcome {
  const { rule, cautions = [] } = outcome;
  if (!rule || taught.length === 0) return outcome;
  const odd = oddLines(taught, now_ms);
  return {
    ...outcome,
    rule: { ...rule, text: [rule.text, ...taught.map(lessonText)].join("; ") },
    ...(cautions.length + odd.length ? { cautions: [...cautions, ...odd] } : {}),
  };
}

/** What her batches teach of the lengths and spares, where her bench doesn't set them. */
function lessonsFor(inputs: DayInputs, { bench, notes }: World): Lesson[] {
  const lessons = learned({ bench, notes }, sizing(inputs.diameter_mm, bench).diameter_mm);
  return taughtTo(bench, lessons, inputs.no_rest ? ["bake", "spares"] : ["bake", "rest", "spares"]);
}

/** More trays than this the solver doesn't take. */
const mostTrays = 2000;

/** The order on the solver's axis: local wall-clock seconds. Lengths are the book's, or the baker's where set. */
function orderOf(inputs: DayInputs, due_ms: number, world: World): DayOrder {
  const { bench } = world;
  const size = sizing(inputs.diameter_mm, bench);
  const named = inputs.fillings?.map(
    (name) =>
      usualFillings.find((each) => each.name.toLowerCase() === name) ?? {
        name: capital(name),
        handsMin: 20,
        setMin: 0,
      },
  );
  const macarons = Math.round(inputs.macarons ?? 1);
  const onTray = Math.max(1, shellsOnTray(size.diameter_mm, bench));
  return {
    macarons,
    shellsOnTray: onTray,
    trays: Math.ceil(shellsFor(macarons, bench) / onTray),
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
    fillings: named ?? usualFillings,
  };
}

/** What there is now: the plan that stands, moved on where the bench or the order has changed, or a new one. */
function planNow(
  inputs: DayInputs,
  order: DayOrder,
  standing: Standing | undefined,
): DayPlan | DayImpossible {
  const first = standing ?? planDay(order);
  if (!first.fits) return first;
  const late = inputs.want === "late" ? Math.round((inputs.late_min ?? 0) * 60) : 0;
  const skipRest = standing !== undefined && order.settings.noRest && !standing.made_for.no_rest;
  if (late === 0 && !skipRest && first.ready === order.due) return first;
  // late before the first step is begun: it begins that much later
  const away = first.start > order.now ? late : Math.max(0, first.start + late - order.now);
  return rework(order, first, order.now, { late, skipRest, away });
}

const msOf = (seconds: number) => new Date(wallText(seconds)).getTime();

function cannot(plan: DayImpossible, order: DayOrder, due_ms: number, world: World): Outcome {
  const would = [
    ...(plan.readyAt !== undefined
      ? [`started now they are ready ${friendly(msOf(plan.readyAt), world.now_ms)}`]
      : []),
    ...(plan.most ? [`${plan.most} macarons would be ready in time`] : []),
    ...(plan.noRestFits ? ["with the no-rest method it would fit"] : []),
  ];
  return {
    status: "impossible",
    headline: `They can't be ready by ${friendly(due_ms, world.now_ms)}${would.length ? `: ${listed(would, "or")}` : ""}.`,
    rule: planRule(order, world),
  };
}

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
function planRule({ settings }: DayOrder, world: World) {
  const own = settingKeys.some((key) => world.bench[key] !== undefined);
  const { weigh, macaronage, pipe, rest, noRest, bake, ovens, cool, fillEach, mature, box, warm, awake } =
    settings;
  const oven = ovens === 1 ? "one after another" : `${plain(ovens)} at a time`;
  return {
    text: `weigh ${plain(weigh)} min, meringue and macaronage ${plain(macaronage)}, pipe ${plain(pipe)} a tray, rest ${plain(noRest ? 0 : rest)}, bake ${plain(bake)} a tray ${oven}, cool ${plain(cool)}, fill ${plain(fillEach)} s a macaron, mature ${plain(mature / 60)} h, box ${plain(box)}, to room temperature ${plain(warm)}; one pair of hands, none between ${clockOfMinute(awake.to)} and ${clockOfMinute(awake.from)}`,
    basis: own ? ("your bench" as const) : ("from memory" as const),
  };
}

function shown(
  inputs: DayInputs,
  plan: DayPlan,
  order: DayOrder,
  due_ms: number,
  moment: string[],
  world: World,
): Outcome {
  const steps = plan.steps.map(({ name, start, end, hands }) => ({
    name,
    start: wallText(start),
    end: wallText(end),
    hands,
  }));
  const start_ms = msOf(plan.start);
  const { bench } = world;
  const trays = order.trays ?? 1;
  const { want: _want, late_min: _late, plan: _plan, ...kept } = inputs;
  const leaves = {
    macarons: order.macarons,
    order: { ...kept, plan: { ...plan, made_for: kept } } as Record<string, unknown>,
  };
  const assumed = [
    ...moment,
    ...(inputs.fillings ? [] : ["one ganache and one buttercream"]),
    ...(inputs.diameter_mm === undefined && bench.diameter_mm === undefined ? ["38 mm shells"] : []),
    ...(bench.spare_percent === undefined ? ["10 % spare shells"] : []),
  ];
  const base: Outcome = {
    status: "answered",
    headline: `Start ${friendly(start_ms, world.now_ms)} for ${plain(order.macarons)} macarons, ${counted(trays, "tray")}, ready ${friendly(due_ms, world.now_ms)}`,
    rule: planRule(order, world),
    assumed,
    cautions: [
      "Keep them at 5 °C (41 °F) or below until they are boxed; your local food authority has the last word.",
    ],
    steps,
    working: plan.steps.map(
      (step) => `${wallText(step.start).slice(11, 16)} to ${wallText(step.end).slice(11, 16)} ${step.name}`,
    ),
    leaves,
  };
  if (inputs.want === "timers") return onTimers(base, plan, world);
  if (inputs.want === "calendar")
    return {
      ...base,
      headline: `A calendar file with ${steps.length} steps, from ${friendly(start_ms, world.now_ms)}`,
      effects: [
        {
          do: "write file",
          name: `bake-${steps[0]?.start.slice(0, 10) ?? "day"}.ics`,
          text: calendarOf(plan, world.now_ms),
        },
      ],
    };
  if (inputs.want === "next") return next(base, plan, world);
  return base;
}

/** A timer at the start of each step that wants hands or the oven. */
function onTimers(base: Outcome, plan: DayPlan, world: World): Outcome {
  const calls = plan.steps.filter(
    (step) => (step.hands || step.id.startsWith("bake-")) && msOf(step.start) > world.now_ms,
  );
  if (calls.length === 0)
    return {
      status: "impossible",
      headline: "Every step of that plan has begun; there is nothing left to ring for.",
    };
  return {
    ...base,
    headline: `${calls.length} timers set, the first rings ${friendly(msOf(calls[0]?.start ?? 0), world.now_ms)}`,
    items: calls.map((step) => ({
      label: step.name,
      due: wallText(step.start),
      left: (msOf(step.start) - world.now_ms) / 60_000,
      state: "running",
    })),
    effects: calls.map((step) => ({
      do: "add",
      list: "timers",
      entry: { label: step.name, set_ms: world.now_ms, due_ms: msOf(step.start), state: "running" },
    })),
    change: `${calls.length} timers for the plan`,
  };
}

function next(base: Outcome, plan: DayPlan, world: World): Outcome {
  const { running, next: then } = whatNext(plan, wallSeconds(localIso(world.now_ms)));
  const going = running.length ? `Now: ${listed(running.map((step) => step.name))}. ` : "";
  return {
    ...base,
    headline: then
      ? `${going}Next at ${clock(msOf(then.start))}: ${then.name}`
      : `${going}Nothing more is planned.`,
  };
}
