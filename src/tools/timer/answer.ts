/** Answers about timers. Nothing ticks here: a timer is a moment, and what is left is that moment less now. */
import type { Effect, Outcome, World } from "../contract/index.ts";
import { clock, friendly, lengthText } from "../lib/days.ts";
import { capital, listed } from "../lib/show.ts";
import { cutRename, freeName, type Live, liveTimers, meant, severalSaid } from "./find.ts";
import { figure, item, left, line, list, none, on, which } from "./show.ts";
import { clockThen, setTimer, untilMoment } from "./start.ts";
import type { TimerInputs } from "./timer.ts";
import { inTurn, together } from "./together.ts";

/**
 * @throws never: what can't be done comes back as `asking`, `impossible` or `declined`
 */
export function answerTimer(inputs: TimerInputs, world: World): Outcome {
  const live = liveTimers(world.timers, world.now_ms);
  if (inputs.do === "set") return setTimer(inputs, world, live);
  if (inputs.do === "until") return untilMoment(inputs, world);
  if (inputs.do === "clock") return clockThen(inputs, world);
  if (inputs.do === "pause")
    return {
      status: "declined",
      headline:
        "A timer can't be paused: it is a moment on the clock. Stop it, or give it more minutes afterwards.",
    };
  if (inputs.do === "list") return list(live, world.now_ms);
  // "i mean 10:30", where the timer before couldn't be set
  if (live.length === 0 && inputs.do === "move" && (inputs.when || inputs.for_min !== undefined))
    return setTimer({ ...inputs, do: "set" }, world, live);
  if (live.length === 0) return none();
  if (inputs.do === "left") return left(inputs, live, world.now_ms);
  if (inputs.do === "rename") return rename(inputs, live, world);
  if (inputs.do === "stop") return stop(inputs, live, world.now_ms);
  if (inputs.both || (inputs.all && inputs.do !== "restart")) {
    const many = together(inputs, live, world.now_ms);
    return "status" in many ? many : inTurn(many, (each) => change(inputs, each, world));
  }
  const target = one(inputs, live, world.now_ms);
  if ("status" in target) return target;
  return change(inputs, target, world);
}

function change(inputs: TimerInputs, target: Live, world: World): Outcome {
  if (inputs.do === "add") return add(inputs, target, world.now_ms);
  if (inputs.do === "restart")
    return move(target, world.now_ms, target.due_ms - target.set_ms, "starts again", world.now_ms);
  return correct(inputs, target, world);
}

/** The one timer that an order is for; with several that fit, it asks which. One that runs alone needs no name. */
function one(inputs: TimerInputs, live: readonly Live[], now_ms: number): Live | Outcome {
  const running = live.filter((each) => !each.isRung);
  if (!inputs.name) {
    const recent = live.findLast((each) => each.label === inputs.recent);
    const alone =
      running.length === 1 ? running[0] : running.length === 0 && live.length === 1 ? live[0] : undefined;
    return recent ?? alone ?? which(live, now_ms, "Which timer?");
  }
  const found = meant(inputs.name, live, inputs.recent);
  const best = found.filter((each) => !each.isRung);
  const only = best.length === 1 ? best[0] : found.length === 1 ? found[0] : undefined;
  return (
    only ??
    which(
      live,
      now_ms,
      found.length ? `Which ${inputs.name}?` : `No timer is called ${inputs.name}. Which one?`,
    )
  );
}

/** Sets a timer's end and says so. The end has to be to come. */
function move(timer: Live, now_ms: number, length_ms: number, how: string, from_ms: number): Outcome {
  const due_ms = from_ms + length_ms;
  if (due_ms <= now_ms)
    return {
      status: "impossible",
      headline: `${capital(timer.label)} has only ${lengthText(timer.left_min)} left; that would end it. Stop it instead.`,
    };
  const moved: Live = { ...timer, due_ms, left_min: (due_ms - now_ms) / 60_000, isRung: false };
  const patch = { due_ms, state: "running", ...(how === "starts again" ? { set_ms: now_ms } : {}) };
  return {
    status: "answered",
    headline: `${lengthText(moved.left_min)} left${on(timer.label)}, ${how}, rings ${friendly(due_ms, now_ms)}`,
    figures: [figure(moved)],
    items: [item(moved)],
    effects: [{ do: "change", list: "timers", id: timer.id, patch }],
    change: `the new end of the ${timer.label} timer`,
    leaves: { timer: timer.label },
  };
}

/** More time or less. One that has rung gets it from now on. */
function add(inputs: TimerInputs, timer: Live, now_ms: number): Outcome {
  const more = inputs.more_min;
  if (more === undefined)
    return {
      status: "asking",
      headline: `How many minutes for ${timer.label}?`,
      question: `How many minutes for ${timer.label}?`,
      slot: "more_min",
    };
  const from_ms = timer.isRung ? now_ms : timer.due_ms;
  const how = more < 0 ? `${lengthText(-more)} less` : `${lengthText(more)} more`;
  return move(timer, now_ms, more * 60_000, how, from_ms);
}

/** "No, 17 minutes": counted from when it was set, as if it had been said then. */
function correct(inputs: TimerInputs, timer: Live, world: World): Outcome {
  if (inputs.for_min !== undefined) {
    const outcome = move(
      timer,
      world.now_ms,
      inputs.for_min * 60_000,
      `now ${lengthText(inputs.for_min)}`,
      timer.set_ms,
    );
    const begun = world.now_ms - timer.set_ms >= 60_000 && outcome.status === "answered";
    return begun
      ? { ...outcome, assumed: [`counted from ${clock(timer.set_ms)}, when it was set`] }
      : outcome;
  }
  const moved = setTimer({ ...inputs, do: "set", name: timer.label }, { ...world, timers: [] }, []);
  const added = moved.effects?.find((each): each is Effect & { do: "add" } => each.do === "add");
  if (!added) return moved;
  return {
    ...move(timer, world.now_ms, Number(added.entry.due_ms) - world.now_ms, "moved", world.now_ms),
    ...(moved.assumed ? { assumed: moved.assumed } : {}),
  };
}

function rename(inputs: TimerInputs, live: readonly Live[], world: World): Outcome {
  const cut = inputs.words ? cutRename(inputs.words, live) : undefined;
  const target = cut?.timer ?? one(inputs, live, world.now_ms);
  if ("status" in target) return target;
  const to = inputs.to ?? cut?.to ?? inputs.words ?? "";
  if (to === "")
    return {
      status: "asking",
      headline: `What shall I call ${target.label}?`,
      question: `What shall I call ${target.label}?`,
      slot: "to",
    };
  const label = freeName(
    to,
    live.filter((each) => each.id !== target.id),
  );
  const renamed = { ...target, label };
  return {
    status: "answered",
    headline: `${target.label} is now called ${label}. ${line(renamed, world.now_ms)}`,
    figures: [figure(renamed)],
    items: [item(renamed)],
    effects: [{ do: "change", list: "timers", id: target.id, patch: { label } }],
    change: `the name ${label}`,
    leaves: { timer: label },
  };
}

const bell_min = 10;
const rangLately = (timer: Live, now_ms: number): boolean =>
  timer.isRung && now_ms - timer.due_ms <= bell_min * 60_000;

/** It had rung when the timer that "it" points at was set, which still runs: then its bell is no news. */
const rangBefore = (timer: Live, recent: string | undefined, live: readonly Live[]): boolean =>
  live.some(({ label, isRung, set_ms }) => label === recent && !isRung && set_ms >= timer.due_ms);

function toStop(inputs: TimerInputs, live: readonly Live[], now_ms: number): Live[] | Outcome {
  if (inputs.both) return together(inputs, live, now_ms);
  const some = inputs.name ? severalSaid(inputs.name, live, inputs.recent) : [];
  if (some.length > 0) return some;
  const target = one(inputs, live, now_ms);
  return "status" in target ? target : [target];
}

/** All of a few; of more how many, and the next to ring. */
const toldOf = 3;
const stillRunning = (rest: readonly Live[], now_ms: number): string => {
  const [next] = rest;
  if (!next) return "";
  return rest.length <= toldOf
    ? ` Still running: ${rest.map((each) => line(each, now_ms)).join("; ")}`
    : ` Still running: ${rest.length}, the next: ${line(next, now_ms)}`;
};

function stop(inputs: TimerInputs, live: readonly Live[], now_ms: number): Outcome {
  // "stop", said to the bell: what rings is meant, never what still runs
  const ringing =
    inputs.name || inputs.all || inputs.both
      ? []
      : live.filter((each) => rangLately(each, now_ms) && !rangBefore(each, inputs.recent, live));
  const gone = inputs.all
    ? live.filter((each) => each.label !== inputs.except)
    : ringing.length === 1
      ? ringing
      : toStop(inputs, live, now_ms);
  if ("status" in gone) return gone;
  const names = listed(gone.map((each) => each.label));
  const rest = live.filter((each) => !gone.includes(each) && !each.isRung);
  return {
    status: "answered",
    headline: `Stopped ${names}.${inputs.more_to_stop ? "" : stillRunning(rest, now_ms)}`,
    items: gone.map((each) => ({ ...item(each), state: "stopped" })),
    effects: gone.map((each) => ({ do: "change", list: "timers", id: each.id, patch: { state: "stopped" } })),
    change: gone.length === 1 ? `stopping ${names}` : "stopping the timers",
  };
}
