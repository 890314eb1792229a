/** A plan asked about: what there is to do at an hour, when a step comes, whether one can be moved by itself. */
import type { Outcome, World } from "../contract/index.ts";
import { type DayOrder, type DayPlan, wallSeconds, wallText } from "../day-plan/index.ts";
import { clock, friendly, localDay, localIso } from "../lib/days.ts";
import { capital, listed } from "../lib/show.ts";
import { ahead, type Said } from "../lib/when.ts";
import type { DayInputs } from "./day.ts";
import { msOf } from "./kept.ts";
import { planRule } from "./making.ts";
import { begins } from "./progress.ts";

/** Nothing of the plan is changed by these. */
export function askedAbout(inputs: DayInputs, plan: DayPlan, order: DayOrder, world: World): Outcome {
  if (inputs.want === "at") return atMoment(inputs, plan, order, world);
  return inputs.want === "when" ? whenStep(inputs, plan, order, world) : notAlone(inputs, plan, order, world);
}

const stepsShown = (steps: DayPlan["steps"]) =>
  steps.map(({ name, start, end, hands }) => ({ name, start: wallText(start), end: wallText(end), hands }));

/** An hour that is said alone is one of the plan's own day where today holds none of it. */
function momentMeant(inputs: DayInputs, plan: DayPlan, world: World): number | string {
  const { text: _text, ...said } = (inputs.at ?? {}) as Said & { text?: string };
  const { wake_min } = world.bench;
  const options = wake_min === undefined ? {} : { wake_min };
  const isHourAlone = ["days", "weekday", "day", "month"].every(
    (key) => (said as Record<string, unknown>)[key] === undefined,
  );
  const found = ahead(said, world.now_ms, options);
  const first = localDay(msOf(plan.start));
  const moment =
    found.ok && isHourAlone && wallSeconds(localIso(found.at_ms)) < plan.start && first !== found.day
      ? ahead(said, world.now_ms, { ...options, day: first })
      : found;
  if (!moment.ok) return moment.why;
  return moment.timed ? wallSeconds(localIso(moment.at_ms)) : "At what time?";
}

function atMoment(inputs: DayInputs, plan: DayPlan, order: DayOrder, world: World): Outcome {
  const at = momentMeant(inputs, plan, world);
  if (typeof at === "string") return { status: "impossible", headline: at };
  const going = plan.steps.filter((step) => begins(step) <= at && at < step.end);
  const [next, ...more] = plan.steps.filter(
    ({ start, id, hands }) => start > at && (hands || id.startsWith("bake-")),
  );
  const when = friendly(msOf(at), world.now_ms);
  const then = next
    ? `Next ${/^\d/.test(friendly(msOf(next.start), world.now_ms)) ? "at " : ""}${friendly(msOf(next.start), world.now_ms)}: ${next.name}`
    : "Nothing comes after that";
  const what = going.length
    ? listed(going.map(({ name }) => name))
    : at < plan.start
      ? "nothing yet"
      : "nothing for your hands";
  return {
    status: "answered",
    headline: `${/^\d/.test(when) ? "At " : ""}${capital(when)}: ${what}. ${then}`,
    rule: planRule(order, world),
    steps: stepsShown([...going, ...[next, ...more].flatMap((step) => step ?? []).slice(0, 3)]),
  };
}

/** "bake-2" of the bakes, "filling-1" by its name. */
function stepsOf({ steps }: DayPlan, said: DayInputs["step"]): DayPlan["steps"] {
  const { kind, tray, filling } = said ?? {};
  if (filling !== undefined)
    return steps.filter(({ id, name }) => id.startsWith("filling-") && name.toLowerCase().includes(filling));
  const all = steps.filter(({ id }) => id === kind || id.startsWith(`${kind}-`));
  return tray === undefined ? all : all.filter(({ id }) => id === `${kind}-${tray}`);
}

function spans(found: DayPlan["steps"], world: World): string {
  return listed(
    found.map(
      ({ name, start, end }) => `${name} ${friendly(msOf(start), world.now_ms)} to ${clock(msOf(end))}`,
    ),
  );
}

function whenStep(inputs: DayInputs, plan: DayPlan, order: DayOrder, world: World): Outcome {
  const found = stepsOf(plan, inputs.step);
  if (found.length === 0) return { status: "impossible", headline: "There is no such step in the plan." };
  return {
    status: "answered",
    headline: spans(found, world),
    rule: planRule(order, world),
    steps: stepsShown(found),
  };
}

/** Each step goes as late as it can: what can be moved is the start, or the hour of being ready. */
function notAlone(inputs: DayInputs, plan: DayPlan, order: DayOrder, world: World): Outcome {
  const found = stepsOf(plan, inputs.step);
  return {
    status: "impossible",
    headline: `A step of a plan can't be moved by itself${found.length ? `; it has ${spans(found, world)}` : ""}. What can move is the start ("start at 9 am") or the hour they are ready ("an hour later"). Nothing is changed.`,
    rule: planRule(order, world),
  };
}
