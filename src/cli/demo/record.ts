/** The invented record as changes, all of it measured from now. */
import { demo } from "../../../data/demo.ts";
import type { Effect, Note, World } from "../../tools/contract/index.ts";
import { orderOf } from "../../tools/day/making.ts";
import { type DayPlan, planDay, wallSeconds, wallText } from "../../tools/day-plan/index.ts";
import { localDay, localIso } from "../../tools/lib/days.ts";
import { learned, taughtBench, taughtTo } from "../../tools/lib/learned.ts";

export interface DemoChange {
  effects: Effect[];
  /** With a name it can be taken back. */
  change?: string;
}

const minute_ms = 60_000;
const day_min = 24 * 60;

/** The whole record; the last change, a timer, can be undone. */
export function demoChanges(now_ms: number): DemoChange[] {
  const bench = { ...demo.bench, ...hoursAround(now_ms) };
  const notes = demo.notes.map((note) => dated(note, now_ms));
  const plan = planAround(now_ms, bench, notes);
  const add = (list: Extract<Effect, { do: "add" }>["list"], entries: readonly object[]): Effect[] =>
    entries.map((entry) => ({ do: "add", list, entry: { ...entry } }));
  const settings = Object.entries(bench).map(([setting, value]): Effect => ({ do: "set", setting, value }));
  const timers = demo.timers.map((each) => timerOf(each, plan, now_ms));
  const [last] = timers.slice(-1);
  return [
    {
      effects: [
        ...settings,
        ...add("notes", notes),
        ...add("bottles", demo.bottles),
        ...add("stock", demo.stock),
        ...add("formulas", demo.formulas),
        ...add("plans", [plan.entry]),
        ...add("timers", timers.slice(0, -1)),
      ],
    },
    ...(last ? [{ effects: add("timers", [last]), change: `the ${last.label} timer` }] : []),
  ];
}

/** A note of some days ago, noted at that day's own hour. */
function dated({ days_ago, ...note }: (typeof demo.notes)[number], now_ms: number) {
  const noted_ms = new Date(`${localDay(now_ms - days_ago * day_min * minute_ms)}T18:30:00`).getTime();
  return { ...note, date: localDay(noted_ms), noted_ms };
}

/** Early or late in the day, when most bakers sleep, this one is up: hours that hold the bake under way. */
function hoursAround(now_ms: number): { wake_min?: number; sleep_min?: number } {
  const hour = new Date(now_ms).getHours();
  if (hour >= 9 && hour < 19) return {};
  return { wake_min: ((hour + 18) % 24) * 60, sleep_min: ((hour + 9) % 24) * 60 };
}

interface Placed extends DayPlan {
  entry: Record<string, unknown>;
}

/** The day's plan, placed so that its moment (data/demo.ts) lies at now, with an hour at the end that one would say. */
function planAround(now_ms: number, bench: World["bench"], notes: readonly Omit<Note, "id">[]): Placed {
  const { macarons, fillings, at } = demo.day;
  const kept = notes.map((note, at) => ({ ...note, id: at + 1 }));
  const lessons = learned({ bench, notes: kept });
  const world: World = {
    now_ms: now_ms - day_min * minute_ms,
    bench: taughtBench(bench, taughtTo(bench, lessons, ["bake", "rest", "spares"])),
    timers: [],
    notes: kept,
    bottles: [],
    stock: [],
    formulas: [],
    plans: [],
  };
  const planned = (due_ms: number) => {
    const order = orderOf({ macarons, fillings: [...fillings] }, due_ms, undefined, world);
    return { order, plan: planDay(order) };
  };
  const step_s = 5 * 60;
  const now = wallSeconds(localIso(now_ms));
  // near enough that no night lies between; then moved by how far its step is off
  const first = planned(now_ms + 26 * 60 * minute_ms).plan;
  const found = first.fits ? first.steps.find(({ id }) => id === at.step) : undefined;
  if (!first.fits || !found) throw new Error("The demo's day has no plan");
  const off = now - at.minutes * 60 - found.start;
  const ready = Math.ceil((first.ready + off) / step_s) * step_s;
  const { order, plan } = planned(new Date(wallText(ready)).getTime());
  if (!plan.fits) throw new Error("The demo's day has no plan");
  const [day, time] = wallText(ready).split("T") as [string, string];
  const [year, month, ofMonth] = day.split("-").map(Number);
  const [hours = 0, minutes = 0] = time.split(":").map(Number);
  const due = { year, month, day: ofMonth, minute: hours * 60 + minutes, half: "24", text: `${day} ${time}` };
  return {
    ...plan,
    entry: {
      made_ms: now_ms - day_min * minute_ms,
      made_for: { macarons, fillings, due },
      macarons,
      trays: order.trays ?? 1,
      diameter_mm: demo.bench.diameter_mm,
      flavors: demo.day.flavors,
      start: plan.start,
      ready: plan.ready,
      steps: plan.steps.map((each) => ({ ...each })),
    },
  };
}

/** A timer over a step that is going on, or over minutes of its own. */
function timerOf(timer: (typeof demo.timers)[number], plan: DayPlan, now_ms: number) {
  const { label } = timer;
  const running = (set_ms: number, due_ms: number) => ({ label, set_ms, due_ms, state: "running" as const });
  if (!("step" in timer)) {
    const set_ms = now_ms - timer.ago_min * minute_ms;
    return running(set_ms, set_ms + timer.minutes * minute_ms);
  }
  const step = plan.steps.find((each) => each.id === timer.step);
  if (!step) throw new Error(`The demo's day has no step ${timer.step}`);
  const msOf = (seconds: number) => new Date(wallText(seconds)).getTime();
  return running(msOf(step.from ?? step.start), msOf(step.end));
}
