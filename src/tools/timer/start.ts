/** Sets a timer: for a length of time, until a clock time, or for the step's own time. */
import { stepTimes } from "../../../data/rules/step-times.ts";
import type { Outcome, Rule, World } from "../contract/index.ts";
import { clock, friendly, lengthText, localIso } from "../lib/days.ts";
import { capital, plain } from "../lib/show.ts";
import { ahead } from "../lib/when.ts";
import { freeName, type Live, unnamed } from "./find.ts";
import type { TimerInputs } from "./timer.ts";

/** When it ends, and how that was found. */
interface End {
  due_ms: number;
  assumed: string[];
  rule?: Rule;
  cautions?: string[];
}

/** A timer can't be set further ahead than this, in ms. */
const most_ms = 366 * 86_400_000;

export function setTimer(inputs: TimerInputs, world: World, live: readonly Live[]): Outcome {
  if (inputs.kept === "no")
    return {
      status: "declined",
      headline: inputs.told
        ? `No timer, then. To keep it with a batch say "note baked ${inputs.told}".`
        : // what was kept so long
          'No timer, then. For how long it keeps ask "how long does it keep", with what it is and where.',
    };
  if (inputs.told)
    return asking(
      `Was it baked for ${inputs.told}, or shall a timer run for ${inputs.told}? Nothing is set yet.`,
      "kept",
    );
  if (inputs.kept)
    return asking(
      `Shall a timer run for ${inputs.kept}? If it has been kept that long, ask "is it still ok" with what it is and where it was.`,
      "kept",
    );
  const { now_ms } = world;
  const ago_ms = (inputs.ago_min ?? 0) * 60_000;
  const end = endOf(inputs, { ...world, now_ms: now_ms - ago_ms }, live);
  if ("status" in end) return end;
  if (end.due_ms <= now_ms)
    return {
      status: "impossible",
      headline: `It would have rung at ${friendly(end.due_ms, now_ms)}; nothing is set.`,
    };
  if (end.due_ms - now_ms > most_ms)
    return { status: "impossible", headline: "That is over a year away; check the time." };
  const running = live.filter((each) => !each.isRung);
  const label = freeName(inputs.name ?? inputs.step ?? unnamed, running);
  const left_min = (end.due_ms - now_ms) / 60_000;
  const twin =
    label !== (inputs.name ?? unnamed) && inputs.name
      ? [`${inputs.name} still runs; this one is ${label}`]
      : [];
  const begun = ago_ms > 0 ? [`begun at ${clock(now_ms - ago_ms)}`] : [];
  const taken = inputs.alarm ? takenFor(inputs) : inputs.bare ? ["minutes"] : [];
  const assumed = [...taken, ...end.assumed, ...begun, ...twin];
  return {
    status: "answered",
    headline: `${lengthText(left_min)}${label === unnamed ? "" : ` on ${label}`}, rings ${friendly(end.due_ms, now_ms)}`,
    figures: [{ name: "left", value: left_min, unit: "min" }],
    ...(end.rule ? { rule: end.rule } : {}),
    ...(assumed.length ? { assumed } : {}),
    items: [{ label, due: localIso(end.due_ms), left: left_min, state: "running" }],
    effects: [
      {
        do: "add",
        list: "timers",
        entry: { label, set_ms: now_ms - ago_ms, due_ms: end.due_ms, state: "running" },
      },
    ],
    change: inputs.name ? `the ${label} timer` : `the ${lengthText(left_min)} timer`,
    leaves: { timer: label },
  };
}

/** "an alarm for 7" rings at an hour, "an alarm for 15" in so many minutes; either could have been meant. */
function takenFor({ when, for_min = 0 }: TimerInputs): string[] {
  const number = when?.minute === undefined ? for_min : when.minute / 60;
  const hour = number > 12 ? `${plain(number)}:00` : `${plain(number)} o'clock`;
  return [when ? `${hour}, not ${plain(number)} min` : `${plain(number)} min, not ${hour}`];
}

/** "how long till 4 pm": the time to it, and nothing set. */
export function untilMoment(inputs: TimerInputs, world: World): Outcome {
  const end = endAt(inputs, world);
  if ("status" in end) return end.status === "asking" ? asking("Until what time that day?", "when") : end;
  const left_min = (end.due_ms - world.now_ms) / 60_000;
  return {
    status: "answered",
    headline: `${lengthText(left_min)} till ${friendly(end.due_ms, world.now_ms)}`,
    figures: [{ name: "left", value: left_min, unit: "min" }],
    ...(end.assumed.length ? { assumed: end.assumed } : {}),
  };
}

const asking = (question: string, slot: string): Outcome => ({
  status: "asking",
  headline: question,
  question,
  slot,
});

function endOf(inputs: TimerInputs, world: World, live: readonly Live[]): End | Outcome {
  const { now_ms } = world;
  if (inputs.when) return endAt(inputs, world);
  if (inputs.for_min !== undefined) {
    const range =
      inputs.high_min === undefined
        ? []
        : [
            `the low end of ${lengthText(inputs.for_min)} to ${lengthText(inputs.high_min)}, so that you look in time`,
          ];
    const before = inputs.after ? lastToRing(live) : undefined;
    const then = before
      ? [`${lengthText(inputs.for_min)} once ${before.label} rings, ${friendly(before.due_ms, now_ms)}`]
      : [];
    return {
      due_ms: (before?.due_ms ?? now_ms) + inputs.for_min * 60_000,
      assumed: [...then, ...range],
    };
  }
  if (inputs.heat !== undefined)
    return asking(
      `Is ${plain(inputs.heat)} a heat, or shall the ${inputs.name ? `${inputs.name} ` : ""}timer run ${plain(inputs.heat)} min?`,
      "for_min",
    );
  const own = stepTimes.find((row) => row.step === inputs.step);
  if (inputs.unclear)
    return asking(
      `Is ${inputs.unclear} a length, as in "1 hour 30 minutes" or "90 seconds", or the time of day?`,
      "for_min",
    );
  if (!own) return asking(`How long shall the ${inputs.name ? `${inputs.name} ` : ""}timer run?`, "for_min");
  const setting = own.setting && world.bench[own.setting.name];
  const minutes = setting !== undefined && own.setting ? setting * own.setting.per : own.minutes;
  const rule: Rule =
    setting === undefined
      ? { text: own.text, basis: own.basis }
      : { text: `your ${own.step} time, ${lengthText(minutes)}`, basis: "your bench" };
  return {
    due_ms: now_ms + minutes * 60_000,
    rule,
    assumed: [
      `${lengthText(minutes)}, the usual time to ${own.step === "ganache" ? "set a ganache" : own.step}`,
    ],
  };
}

/** "after that": the timer that rings last of those that run. */
const lastToRing = (live: readonly Live[]): Live | undefined =>
  live.filter((each) => !each.isRung).sort((a, b) => b.due_ms - a.due_ms)[0];

function endAt(inputs: TimerInputs, world: World): End | Outcome {
  const { now_ms } = world;
  const moment = ahead(
    inputs.when ?? {},
    now_ms,
    world.bench.wake_min === undefined ? {} : { wake_min: world.bench.wake_min },
  );
  if (!moment.ok) return { status: "impossible", headline: moment.why };
  if (!moment.timed) return asking("What time shall it ring?", "when");
  const due_ms = moment.at_ms + (inputs.shift_min ?? 0) * 60_000;
  if (due_ms <= now_ms)
    return { status: "impossible", headline: `${capital(friendly(due_ms, now_ms))} has passed.` };
  return { due_ms, assumed: moment.assumed };
}

/** "what time will it be in 3 hours": told, and no timer set. */
export function clockThen({ for_min = 0 }: TimerInputs, { now_ms }: World): Outcome {
  const then_ms = now_ms + for_min * 60_000;
  return {
    status: "answered",
    headline:
      for_min === 0
        ? `It is ${clock(now_ms)}`
        : `In ${lengthText(for_min)} it is ${friendly(then_ms, now_ms)}. No timer is set`,
    ...(for_min === 0 ? {} : { working: [`${clock(now_ms)} + ${lengthText(for_min)} = ${clock(then_ms)}`] }),
  };
}
