/** Works the day out by the solver in day-plan, and says what would fit where it can't be. */
import { longestStand_min } from "../../../data/rules/step-times.ts";
import type { Effect, Outcome, Plan, World } from "../contract/index.ts";
import {
  type DayImpossible,
  type DayOrder,
  type DayPlan,
  planDay,
  rework,
  usualSettings,
  wallSeconds,
  wallText,
  whatNext,
} from "../day-plan/index.ts";
import { clockOfMinute, friendly, localDay, localIso, weekdayOf } from "../lib/days.ts";
import { type Lesson, learned, lessonText, oddLines, taughtBench, taughtTo } from "../lib/learned.ts";
import { counted, listed, plain } from "../lib/show.ts";
import { shellsFor, shellsOnTray, sizing } from "../lib/sizing.ts";
import type { Said } from "../lib/when.ts";
import { calendarOf } from "./calendar.ts";
import type { DayInputs } from "./day.ts";
import { fillingSteps } from "./fillings.ts";
import { keep, keptPlan, madeFor, wallNow } from "./kept.ts";
import { goingOn, standingLong, stepMeant } from "./progress.ts";
import { fillingsOf, isDetailed, type Sized, sizedOrder } from "./sizes.ts";
import { dueOf, type Standing, standingPlan } from "./standing.ts";

const asking = (question: string, slot: string): Outcome => ({
  status: "asking",
  headline: question,
  question,
  slot,
});

/** What is asked about a plan that there is, rather than a new one. */
const isAbout = ({ want, no_rest, macarons, due }: DayInputs) =>
  (want !== undefined && want !== "plan") || Boolean(no_rest && macarons === undefined && due === undefined);

/** @throws never: what is missing, past or can't fit comes back as an outcome that says so. */
export function answerDay(said: DayInputs, world: World): Outcome {
  const spoken = world.plans.findLast((each) => each.made_ms === said.plan);
  const bare = said.macarons === undefined && said.due === undefined;
  const kept = spoken ?? (bare && isAbout(said) ? keptPlan(undefined, world) : undefined);
  const inputs: DayInputs = kept && said.macarons === undefined ? { ...kept.made_for, ...said } : said;
  if (kept && isAbout(inputs)) {
    if (inputs.want === "drop") return dropped(kept, world);
    if (kept.ready <= wallNow(world)) return over(kept, inputs, world);
  }
  if (inputs.macarons === undefined && (isAbout(inputs) || inputs.want === "drop"))
    return {
      status: "impossible",
      headline: "There is no plan yet. Say how many macarons you need and when.",
    };
  if (inputs.due === undefined) return asking("When do they have to be ready?", "due");
  const standing = standingPlan(inputs, kept);
  const due = dueOf(inputs.due as Said, standing, world);
  if (!due.ok) return { status: "impossible", headline: due.why };
  if (inputs.macarons === undefined) return asking("How many macarons?", "macarons");
  if (!due.timed) return asking("At what time do they have to be ready?", "due");
  const order = orderOf(inputs, due.at_ms, standing, world);
  if ((order.trays ?? 0) > mostTrays)
    return {
      status: "impossible",
      headline: `${order.trays} trays are beyond a home kitchen; check the numbers.`,
    };
  if (inputs.want === "done" && !stepMeant(standing ?? noPlan, inputs.step))
    return { status: "impossible", headline: "There is no such step in the plan." };
  const plan = planNow(inputs, order, standing);
  if (!plan.fits) {
    const later = inAWeek(inputs, due.at_ms, standing, world);
    if (later) return later;
    return cannot(inputs, plan, order, due.at_ms, standing, kept, world);
  }
  return shown(inputs, plan, order, due.at_ms, due.assumed, kept, world);
}

const noPlan: DayPlan = { fits: true, start: 0, ready: 0, steps: [] };

/** "By saturday", said on a Saturday when it can't be done today any more: the one in a week. */
function inAWeek(inputs: DayInputs, due_ms: number, standing: Standing | undefined, world: World) {
  const due = inputs.due as Said;
  const today = localDay(world.now_ms);
  const isToday = due.weekday === weekdayOf(today) && due.which === undefined && localDay(due_ms) === today;
  if (standing || !isToday) return undefined;
  const outcome = answerDay({ ...inputs, due: { ...inputs.due, which: "next" } }, world);
  return outcome.status === "answered"
    ? { ...outcome, assumed: [...(outcome.assumed ?? []), "that weekday in a week, as today can't be met"] }
    : undefined;
}

const msOf = (seconds: number) => new Date(wallText(seconds)).getTime();

function over(kept: Plan, { want }: DayInputs, world: World): Outcome {
  const what = `${plain(kept.macarons)} macarons were due ${friendly(msOf(kept.ready), world.now_ms)}`;
  return {
    status: want === "next" ? "answered" : "impossible",
    headline: `That plan is over: ${what}. ${want === "next" ? "Nothing more is planned." : "Say how many you need next, and when."}`,
    ...(want === "next" ? { steps: [] } : {}),
  };
}

const dropped = (kept: Plan, world: World): Outcome => ({
  status: "answered",
  headline: `Dropped: the plan for ${plain(kept.macarons)} macarons, ${friendly(msOf(kept.ready), world.now_ms)}`,
  effects: [{ do: "remove", list: "plans", id: kept.id }],
  change: "dropping the plan",
});

/** More trays than this the solver doesn't take. */
const mostTrays = 2000;

/** The order on the solver's axis: local wall-clock seconds. Lengths are the book's, or the baker's where set. */
function orderOf(inputs: DayInputs, due_ms: number, standing: Standing | undefined, world: World): DayOrder {
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
function planNow(
  inputs: DayInputs,
  order: DayOrder,
  standing: Standing | undefined,
): DayPlan | DayImpossible {
  const first = standing ?? planDay(order);
  if (!first.fits) return first;
  const done = inputs.want === "done" ? stepMeant(first, inputs.step) : undefined;
  // done now means that the bench stands where the plan has that step's end
  const late = done
    ? order.now - done.end
    : inputs.want === "late"
      ? Math.round((inputs.late_min ?? 0) * 60)
      : 0;
  const skipRest = standing !== undefined && order.settings.noRest && !standing.made_for.no_rest;
  if (late === 0 && !skipRest && first.ready === order.due) return first;
  // late before the first step is begun: it begins that much later
  const away = done ? 0 : first.start > order.now ? late : Math.max(0, first.start + late - order.now);
  return rework(order, first, order.now, { late, skipRest, away });
}

/**
 * What would fit. Where a bake is under way it goes on for the earliest hour there is, and that is kept: what has been
 * done stays done, whether or not it is in time.
 */
function cannot(
  inputs: DayInputs,
  plan: DayImpossible,
  order: DayOrder,
  due_ms: number,
  standing: Standing | undefined,
  kept: Plan | undefined,
  world: World,
): Outcome {
  const would = [
    ...(plan.readyAt !== undefined
      ? [`started now they are ready ${friendly(msOf(plan.readyAt), world.now_ms)}`]
      : []),
    ...(plan.most ? [`${plan.most} macarons would be ready in time`] : []),
    ...(plan.noRestFits ? ["with the no-rest method it would fit"] : []),
  ];
  const onward =
    standing && kept && plan.readyAt !== undefined && changesIt(inputs)
      ? planNow(inputs, { ...order, due: plan.readyAt }, standing)
      : undefined;
  return {
    status: "impossible",
    headline: `They can't be ready by ${friendly(due_ms, world.now_ms)}${would.length ? `: ${listed(would, "or")}` : ""}.${onward?.fits ? " The plan goes on for that hour." : ""}`,
    rule: planRule(order, world),
    ...(onward?.fits
      ? { ...written(inputs, onward, order, kept, world), steps: stepsOf(onward, wallNow(world)) }
      : {}),
  };
}

/** What is told of the bake itself and moves the plan, in the words that undo has for it. */
const changes: Readonly<Record<string, string>> = { late: "the delay", done: "what was said to be done" };
const changesIt = ({ want, no_rest }: DayInputs) => (want ? changes[want] : no_rest ? "skipping the rest" : undefined);

/** The plan written into the record, and left on the table to go on from. Only what moves a kept one can be undone. */
function written(
  inputs: DayInputs,
  plan: DayPlan,
  order: DayOrder,
  kept: Plan | undefined,
  world: World,
): Pick<Outcome, "effects" | "change" | "leaves"> {
  const made_for = madeFor(inputs);
  const size = sizing(inputs.diameter_mm, world.bench);
  const { effects, made_ms } = keep(
    plan,
    {
      made_for,
      macarons: order.macarons,
      trays: order.trays ?? 1,
      diameter_mm: size.diameter_mm,
      flavors: flavorsOf(inputs),
    },
    kept,
    world,
  );
  const change = kept && changesIt(inputs);
  return {
    ...(effects.length ? { effects, ...(change ? { change } : {}) } : {}),
    leaves: { macarons: order.macarons, order: { ...made_for, plan: made_ms } },
  };
}

const flavorsOf = (inputs: DayInputs): string[] => [
  ...new Set([
    ...fillingsOf(inputs).flatMap((each) => each.of || (each.flavor?.taste ?? [])),
    ...(inputs.unplaced ?? []),
  ]),
];

const stepsOf = (plan: DayPlan, from = Number.NEGATIVE_INFINITY) =>
  plan.steps
    .filter((step) => step.end > from)
    .map((step) => ({
      name: step.name,
      start: wallText(step.start),
      end: wallText(step.end),
      hands: step.hands,
      ...(step.from !== undefined && step.from < step.start ? { from: wallText(step.from) } : {}),
    }));

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
  kept: Plan | undefined,
  world: World,
): Outcome {
  const steps = stepsOf(plan);
  const start_ms = msOf(plan.start);
  const { bench } = world;
  const trays = order.trays ?? 1;
  const isPlan = inputs.want === undefined || inputs.want === "plan";
  const sized =
    isPlan && isDetailed(inputs) ? sizedOrder(inputs, order.macarons, trays, world) : undefined;
  if (sized && "status" in sized) return sized;
  const { effects, change, leaves } = written(inputs, plan, order, kept, world);
  const assumed = [
    ...moment,
    ...(inputs.fillings ? [] : ["one ganache and one buttercream"]),
    ...(inputs.diameter_mm === undefined && bench.diameter_mm === undefined ? ["38 mm shells"] : []),
    ...(bench.spare_percent === undefined ? ["10 % spare shells"] : []),
    ...(sized?.assumed ?? []),
  ];
  const base: Outcome = {
    status: "answered",
    headline: `Start ${friendly(start_ms, world.now_ms)} for ${plain(order.macarons)} macarons, ${counted(trays, "tray")}, ready ${friendly(due_ms, world.now_ms)}`,
    ...(sized ? { figures: sized.figures, items: sized.items } : {}),
    rule: withSizes(planRule(order, world), sized),
    assumed,
    cautions: [
      ...standCautions(plan, world),
      ...(sized?.cautions ?? []),
      "Keep them at 5 °C (41 °F) or below until they are boxed; your local food authority has the last word.",
    ],
    steps,
    working: [
      ...(sized?.working ?? []),
      ...plan.steps.map(
        (step) => `${wallText(step.start).slice(11, 16)} to ${wallText(step.end).slice(11, 16)} ${step.name}`,
      ),
    ],
    ...(effects ? { effects, ...(change ? { change } : {}) } : {}),
    leaves: { ...leaves, ...(sized?.parts ? { parts: sized.parts } : {}) },
  };
  if (inputs.want === "timers") return onTimers(base, plan, world);
  if (inputs.want === "calendar")
    return {
      ...base,
      headline: `A calendar file with ${steps.length} steps, from ${friendly(start_ms, world.now_ms)}`,
      effects: [
        ...(base.effects ?? []),
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
    effects: [
      ...(base.effects ?? []),
      ...calls.map(
        (step): Effect => ({
          do: "add",
          list: "timers",
          entry: { label: step.name, set_ms: world.now_ms, due_ms: msOf(step.start), state: "running" },
        }),
      ),
    ],
    change: `${calls.length} timers for the plan`,
  };
}

function next(base: Outcome, plan: DayPlan, world: World): Outcome {
  const now = wallNow(world);
  const running = goingOn(plan, now);
  const { next: then } = whatNext(plan, now);
  const going = running.length ? `Now: ${listed(running.map((step) => step.name))}. ` : "";
  return {
    ...base,
    steps: stepsOf(plan, now),
    headline: then
      ? `${going}Next at ${friendly(msOf(then.start), world.now_ms)}: ${then.name}`
      : `${going}Nothing more is planned.`,
  };
}

function withSizes(rule: ReturnType<typeof planRule>, sized: Sized | undefined): ReturnType<typeof planRule> {
  if (!sized) return rule;
  return { text: `${rule.text}; ${sized.rule}`, basis: sized.own ? "your bench" : rule.basis };
}

/** Piped shells that a plan leaves standing for hours, most often overnight. */
function standCautions(plan: DayPlan, world: World): string[] {
  const stand = standingLong(plan, longestStand_min.value * 60);
  const first = stand[0];
  if (!first) return [];
  const trays = stand.map((each) => each.tray);
  return [
    `${trays.length === 1 ? "Tray" : "Trays"} ${listed(trays)} would stand piped from ${friendly(msOf(first.from), world.now_ms)} to ${friendly(msOf(first.to), world.now_ms)}: shells that dry for over ${plain(longestStand_min.value / 60)} h can crack or bake lopsided. A later hour, or a day more, lets them be piped and baked in one go.`,
  ];
}
