/** A plan as an answer: its steps and sizes, on timers, as a calendar file, or what comes next. */
import { longestStand_min } from "../../../data/rules/step-times.ts";
import type { DayStep, Outcome, Plan, Rule, World } from "../contract/index.ts";
import { type DayImpossible, type DayOrder, type DayPlan, wallText, whatNext } from "../day-plan/index.ts";
import { friendly, shortDay } from "../lib/days.ts";
import { counted, listed, plain } from "../lib/show.ts";
import { calendarOf } from "./calendar.ts";
import type { DayInputs } from "./day.ts";
import { changesIt, msOf, wallNow, written } from "./kept.ts";
import { planNow, planRule } from "./making.ts";
import { onTimers } from "./on-timers.ts";
import { goingOn, standingLong } from "./progress.ts";
import { onSheet } from "./sheet.ts";
import { isDetailed, type Sized, sizedOrder } from "./sizes.ts";
import type { Standing } from "./standing.ts";

/** The steps as answers have them, those that are over by `from` left out. */
const stepsOf = (plan: DayPlan, from = Number.NEGATIVE_INFINITY): DayStep[] =>
  plan.steps
    .filter((step) => step.end > from)
    .map((step) => ({
      name: step.name,
      start: wallText(step.start),
      end: wallText(step.end),
      hands: step.hands,
      ...(step.from !== undefined && step.from < step.start ? { from: wallText(step.from) } : {}),
    }));

/**
 * What would fit. Where a bake is under way it goes on for the earliest hour there is, and that is kept: what has been
 * done stays done, whether or not it is in time.
 */
export function cannot(
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
      ? [
          `${inputs.wake_min === undefined ? "started now" : "started as early as you can"} they are ready ${friendly(msOf(plan.readyAt), world.now_ms)}`,
        ]
      : []),
    ...(plan.most ? [`${counted(plan.most, "macaron")} would be ready in time`] : []),
    ...(plan.noRestFits ? ["with the no-rest method it would fit"] : []),
  ];
  const onward =
    standing && kept && plan.readyAt !== undefined && changesIt(inputs, kept)
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

/** Boxed long before they are wanted, they go back into the fridge. */
function backInFridge({ steps }: DayPlan, { now_ms }: World): string[] {
  const [box, warm] = ["box", "warm"].map((id) => steps.find((step) => step.id === id));
  return box && warm && warm.start > box.end
    ? [
        `Boxed they go back into the fridge, and come out at ${friendly(msOf(warm.start), now_ms)}, not before.`,
      ]
    : [];
}

export function shown(
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
  const isMoved = kept !== undefined && changesIt(inputs, kept) !== undefined;
  const sized =
    isPlan && !isMoved && isDetailed(inputs) ? sizedOrder(inputs, order.macarons, trays, world) : undefined;
  if (sized && "status" in sized) return sized;
  const { effects, change, leaves } = written(inputs, plan, order, kept, world);
  const assumed = [
    ...moment,
    ...(inputs.fillings ? [] : ["one ganache and one buttercream"]),
    ...(inputs.diameter_mm === undefined && bench.diameter_mm === undefined ? ["38 mm shells"] : []),
    ...(bench.spare_percent === undefined ? ["10 % spare shells"] : []),
    ...(sized?.assumed ?? []),
  ];
  const what = `${counted(order.macarons, "macaron")}, ${counted(trays, "tray")}, ready ${friendly(due_ms, world.now_ms)}`;
  // a delay that the plan has room for is said to be one
  const inTime =
    inputs.want === "late" ? "Still in time. " : inputs.idle ? "Nothing in that changes the plan. " : "";
  const base: Outcome = {
    status: "answered",
    // under way the start is past: what is going on and what comes next stand in its place
    headline:
      plan.start < wallNow(world)
        ? `${inTime}${nowAndNext(plan, world)}; ${what}`
        : `${inTime}Start ${friendly(start_ms, world.now_ms)} for ${what}`,
    ...(sized ? { figures: sized.figures, items: sized.items } : {}),
    rule: withSizes(planRule(order, world), sized),
    assumed,
    cautions: [
      ...standCautions(plan, world),
      ...batterNow(inputs, plan, world),
      ...(sized?.cautions ?? []),
      "Keep them at 5 °C (41 °F) or below until they are boxed; your local food authority has the last word.",
      ...backInFridge(plan, world),
    ],
    steps,
    working: [...(sized?.working ?? []), ...plan.steps.map((step) => `${spanText(step)} ${step.name}`)],
    ...(effects ? { effects, ...(change ? { change } : {}) } : {}),
    leaves: {
      ...leaves,
      ...(sized?.parts ? { parts: sized.parts } : {}),
      ...(sized ? { recipe: sized.recipe, masses: sized.masses } : {}),
    },
  };
  const { steps: _steps, ...brief } = base;
  if (inputs.want === "timers") return onTimers(brief, plan, world);
  if (inputs.want === "calendar")
    return {
      ...brief,
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
  if (inputs.want === "sheet") return onSheet(brief, inputs, order, plan, world);
  if (inputs.want === "next") return next(base, plan, world);
  return base;
}

/** "Thu 12 Mar 14:02 to 14:10", the day again where it ends on another. */
function spanText({ start, end }: { start: number; end: number }): string {
  const [from, to] = [wallText(start), wallText(end)];
  const on = (text: string) => `${shortDay(text.slice(0, 10))} ${text.slice(11, 16)}`;
  return `${on(from)} to ${from.slice(0, 10) === to.slice(0, 10) ? to.slice(11, 16) : on(to)}`;
}

/** So many steps ahead are shown with the next one. */
const soon = 6;

function next(base: Outcome, plan: DayPlan, world: World): Outcome {
  const now = wallNow(world);
  return {
    ...base,
    steps: stepsOf(plan, now).slice(0, goingOn(plan, now).length + soon),
    headline: nowAndNext(plan, world),
  };
}

/** "Now: Rest tray 1. Next at 15:35: Pipe tray 2". */
function nowAndNext(plan: DayPlan, world: World): string {
  const now = wallNow(world);
  const running = goingOn(plan, now);
  const { next: then } = whatNext(plan, now);
  const at = then ? friendly(msOf(then.start), world.now_ms) : "";
  const going = running.length ? `Now: ${listed(running.map((step) => step.name))}. ` : "";
  return then
    ? `${going}Next ${/^\d/.test(at) ? "at " : ""}${at}: ${then.name}`
    : `${going}Nothing more is planned.`;
}

function withSizes(rule: Rule, sized: Sized | undefined): Rule {
  if (!sized) return rule;
  return { text: `${rule.text}; ${sized.rule}`, basis: sized.own ? "your bench" : rule.basis };
}

/** The batter is made ahead of the plan: its trays go first. */
function batterNow({ want, step }: DayInputs, plan: DayPlan, world: World): string[] {
  const first = plan.steps.find(({ id }) => id.startsWith("pipe-"));
  return want === "done" && step?.kind === "macaronage" && first && first.start <= wallNow(world)
    ? ["Finished batter can't wait: pipe it now, bake it as soon as it has rested (from memory)."]
    : [];
}

/** Piped shells that a plan leaves standing for hours, most often overnight. */
function standCautions(plan: DayPlan, world: World): string[] {
  const stand = standingLong(plan, longestStand_min.value * 60);
  const first = stand[0];
  if (!first) return [];
  const trays = stand.map((each) => each.tray);
  return [
    `${trays.length === 1 ? "Tray" : "Trays"} ${listed(trays)} would stand piped from ${friendly(msOf(first.from), world.now_ms)} to ${friendly(msOf(first.to), world.now_ms)}: shells that dry for over ${plain(longestStand_min.value / 60)} h can crack or bake lopsided. Start early enough to bake them the same day, or ask for a later hour.`,
  ];
}
