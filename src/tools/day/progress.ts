/** How far the bench is: which step was said to be done, what is going on, whether it is all over. */
import type { DayPlan, DayStep, DoneStep } from "../day-plan/index.ts";
import type { DayInputs } from "./day.ts";

/** What a step takes at the least where the hands were at another until now, in seconds. */
const least_s = 60;

/** The steps as their ids name them: `pipe-2`, `weigh`. */
const ofTray = ["pipe", "rest", "bake", "cool"];

/** The step of a plan that is meant; without a tray's number the last of its kind. */
export function stepMeant(plan: DayPlan, said: DayInputs["step"]): DayStep | undefined {
  if (!said) return undefined;
  const { kind, tray, filling } = said;
  if (filling !== undefined) {
    const mixes = plan.steps.filter((step) => step.id.startsWith("filling-"));
    const said = filling.toLowerCase().split(" ");
    const has = (step: DayStep, words: readonly string[]) =>
      words.every((word) => step.name.toLowerCase().includes(word));
    return mixes.find((step) => has(step, said)) ?? mixes.find((step) => has(step, said.slice(-1)));
  }
  if (kind === undefined) return undefined;
  if (!ofTray.includes(kind)) return plan.steps.find((step) => step.id === kind);
  const trays = plan.steps.filter((step) => step.id.startsWith(`${kind}-`));
  return tray === undefined
    ? [...trays].sort((a, b) => b.end - a.end)[0]
    : trays.find((step) => step.id === `${kind}-${tray}`);
}

/** When a step really begins: what goes by itself as soon as the one before it has ended. */
export const begins = (step: DayStep): number => step.from ?? step.start;

/** What is going on at a moment, seconds; a step that starts right then is. */
export const goingOn = (plan: DayPlan, now: number): DayStep[] =>
  plan.steps.filter((step) => begins(step) <= now && now < step.end);

/** Trays whose shells stand piped for longer than `limit` seconds before they bake. */
export function standingLong(plan: DayPlan, limit: number): { tray: string; from: number; to: number }[] {
  return plan.steps.flatMap((step) => {
    const [kind, tray = ""] = step.id.split("-");
    const stands = kind === "rest" && step.end - begins(step) > limit;
    return stands ? [{ tray, from: begins(step), to: step.end }] : [];
  });
}

const isOven = (step: DayStep) => step.id.startsWith("bake-");

/** The steps by hand or in the oven that a step comes after, those that go by themselves stepped across. */
function comesAfter(id: string, all: readonly DayStep[]): string[] {
  const [kind = "", tray] = id.split("-");
  const of = (start: string) => all.filter((step) => step.id.startsWith(start)).map((step) => step.id);
  const before: Readonly<Record<string, string[]>> = {
    macaronage: ["weigh"],
    pipe: ["macaronage"],
    bake: [`pipe-${tray}`],
    fill: [...of("pipe-"), ...of("bake-"), ...of("filling-")],
    box: ["fill"],
  };
  return before[kind] ?? [];
}

/** All that a step comes after, however far back. */
function allBefore(id: string, all: readonly DayStep[], found = new Set<string>()): Set<string> {
  for (const each of comesAfter(id, all)) {
    if (found.has(each)) continue;
    found.add(each);
    allBefore(each, all, found);
  }
  return found;
}

/** The trays that are planned before one, where it was said that all up to it are done. */
const traysBefore = (plan: DayPlan, target: DayStep, said: DayInputs["step"]): string[] => {
  const [kind] = target.id.split("-");
  return said?.first
    ? plan.steps
        .filter((step) => step.id.startsWith(`${kind}-`) && step !== target && step.end <= target.end)
        .map(({ id }) => id)
    : [];
};

/** The steps that are over for certain once one is said to be: it, and all that it comes after. */
export function overWith(plan: DayPlan, target: DayStep, said: DayInputs["step"]): string[] {
  const steps = plan.steps.filter((step) => step.hands || isOven(step));
  return [target.id, ...traysBefore(plan, target, said)].flatMap((id) => [id, ...allBefore(id, steps)]);
}

/**
 * What is over before a step that began at `to`: as planned, else one by one as long as each takes, as far as there was
 * time since the last thing that was done. It took some time all the same.
 */
function toldBefore(steps: readonly DayStep[], to: number, free: number): Map<string, DoneStep> {
  const over = new Map<string, DoneStep>();
  let last = to;
  for (const step of [...steps].sort((a, b) => b.start - a.start)) {
    const end = Math.min(step.end, step.hands ? last : to);
    const least = end - least_s;
    const length = step.end - step.start;
    const start =
      step.end <= end ? Math.min(step.start, least) : Math.min(Math.max(end - length, free), least);
    over.set(step.id, { id: step.id, start, end });
    if (step.hands) last = Math.min(last, start);
  }
  return over;
}

/**
 * What has been done when a step is said to be finished at `now`: it and all that it comes after; of the rest what the
 * plan has begun, as planned, except that hands that were at this step until now were at no other.
 */
export function doneBy(plan: DayPlan, target: DayStep, now: number, said?: DayInputs["step"]): DoneStep[] {
  const steps = plan.steps.filter((step) => step.hands || isOven(step));
  const before = new Set(overWith(plan, target, said).filter((id) => id !== target.id));
  // begun ahead of the plan, it takes the time since the last thing that was done
  const isAhead = target.start >= now;
  const free = Math.max(...steps.filter((step) => step.hands && step.end <= now).map((step) => step.end));
  // never no time at all: a step without a length would be lost, and be made again
  const start = isAhead
    ? Math.min(now - least_s, Math.max(now - (target.end - target.start), free))
    : target.start;
  const told = toldBefore(
    steps.filter(({ id }) => before.has(id)),
    start,
    free,
  );
  const done = new Map<string, DoneStep>([[target.id, { id: target.id, start, end: now }]]);
  for (const step of steps) {
    const { id } = step;
    if (id === target.id || allBefore(id, steps).has(target.id)) continue;
    const over = told.get(id);
    if (over) {
      done.set(id, over);
    } else if (step.start < now && (!step.hands || !target.hands || step.end <= (isAhead ? now : start)))
      done.set(id, { id, start: step.start, end: step.end });
  }
  const isBacked = (id: string) =>
    [...allBefore(id, steps)].every((each) => done.has(each) || !steps.some((step) => step.id === each));
  return [...done.values()].filter(({ id }) => isBacked(id));
}
