import fc from "fast-check";
import { expect, test } from "vitest";
import {
  type DayOrder,
  type DayPlan,
  type DayStep,
  planDay,
  rework,
} from "../../src/tools/day-plan/index.ts";

/*
 * Every way to go through a small bake, hour by hour and forward, with all lengths, hours and dates whole
 * (the latest plan is then made of whole hours too: each step ends against another, an opening or a closing).
 * Nothing here is shared with the solver: at each hour all choices are tried of what the hands begin and how
 * many rested trays go into the oven, and bakes in the same condition are followed once.
 */

const HOUR = 3600;

/**
 * Left of what is going on, in hours; `todo` and `over` for what is not. A tray is piped, rests, bakes and
 * cools.
 */
type Left = readonly [stage: string, hours: number];

interface Bake {
  /** Hands steps begun, fill and box included. */
  readonly begun: number;
  /** Hours of the hands steps not begun. */
  readonly owed: number;
  /** Trays put in at this hour. */
  readonly loaded: number;
  readonly shells: Left;
  readonly trays: readonly Left[];
  readonly fillings: readonly Left[];
  readonly last: Left;
}

/** The stage that follows by itself when one has no hours left; `ready` stages wait for the baker. */
const follows: Record<string, string> = {
  weigh: "weighed",
  macaronage: "mixed",
  pipe: "rest",
  rest: "rested",
  bake: "cool",
  cool: "cooled",
  make: "set",
  set: "made",
  fill: "mature",
  mature: "matured",
  box: "warm",
  warm: "ready",
};
const byHand = new Set(["weigh", "macaronage", "pipe", "make", "fill", "box"]);

/** Whether the n-th hands step that is begun (from 0) may begin at this hour, and be this one. */
type Allowed = (nth: number, hour: number, stage: string, filling: number) => boolean;

/**
 * What has been done before an hour, and stays: how many trays went in at each hour before, asleep or not.
 */
interface Past {
  readonly before: number;
  readonly traysIn: (hour: number) => number;
}
const nothing: Past = { before: -Infinity, traysIn: () => 0 };

/**
 * The hour at which it can be ready at the earliest, starting from an hour; undefined when not by `until`.
 */
function earliest(
  order: DayOrder,
  from: number,
  until: number,
  allowed: Allowed = () => true,
  past: Past = nothing,
): number | undefined {
  const { settings: s, fillings, macarons } = order;
  const trays = Math.ceil(Math.ceil((22 * macarons) / 10) / (order.shellsOnTray ?? 30));
  const hours = (stage: string, filling = 0): number => {
    if (stage === "fill") return (s.fillEach * macarons) / HOUR;
    if (stage === "rest" && s.noRest) return 0;
    const minutes: Record<string, number | undefined> = {
      ...{ weigh: s.weigh, macaronage: s.macaronage, pipe: s.pipe, rest: s.rest, bake: s.bake, cool: s.cool },
      ...{ mature: s.mature, box: s.box, warm: s.warm },
      ...{ make: fillings[filling]?.handsMin, set: fillings[filling]?.setMin },
    };
    return (minutes[stage] ?? 0) / 60;
  };
  const awake = (start: number, end: number): boolean => {
    if (start < past.before) return true;
    const [open, close] = [s.awake.from / 60, s.awake.to / 60];
    const day = Math.floor(start / 24) * 24;
    return [day - 24, day].some((d) => d + open <= start && end <= d + close + (close <= open ? 24 : 0));
  };

  const settle = ([stage, left]: Left, filling = 0): Left => {
    const next = follows[stage];
    return left > 0 || !next ? [stage, left] : settle([next, hours(next, filling)], filling);
  };
  const settled = (bake: Bake): Bake => ({
    ...bake,
    shells: settle(bake.shells),
    trays: bake.trays.map((tray) => settle(tray)).sort((a, b) => (`${a}` < `${b}` ? -1 : 1)),
    fillings: bake.fillings.map((left, i) => settle(left, i)),
    last: settle(bake.last),
  });
  const tick = ([stage, left]: Left): Left => [stage, Math.max(0, left - 1)];
  const replaced = (list: readonly Left[], at: number, by: Left): Left[] =>
    list.map((x, i) => (i === at ? by : x));

  /** All that the hands can do at an hour, idling first. */
  const withHands = (bake: Bake, hour: number): Bake[] => {
    const all = [bake.shells, bake.last, ...bake.trays, ...bake.fillings];
    const can = (stage: string, i = 0): boolean =>
      awake(hour, hour + hours(stage, i)) &&
      allowed(bake.begun, hour, stage, i) &&
      !all.some(([x]) => byHand.has(x));
    const go = (stage: string, i = 0): Left => [stage, hours(stage, i)];
    const choices = [bake];
    const add = (stage: string, part: Partial<Bake>, i = 0): void => {
      choices.push({ ...bake, begun: bake.begun + 1, owed: bake.owed - hours(stage, i), ...part });
    };
    if (bake.shells[0] === "todo" && can("weigh")) add("weigh", { shells: go("weigh") });
    if (bake.shells[0] === "weighed" && can("macaronage")) add("macaronage", { shells: go("macaronage") });
    const tray = bake.trays.findIndex(([stage]) => stage === "todo");
    if (tray >= 0 && bake.shells[0] === "mixed" && can("pipe")) {
      add("pipe", { trays: replaced(bake.trays, tray, go("pipe")) });
    }
    bake.fillings.forEach(([stage], i) => {
      if (stage === "todo" && can("make", i)) {
        add("make", { fillings: replaced(bake.fillings, i, go("make", i)) }, i);
      }
    });
    const filled = bake.trays.every(([x]) => x === "cooled") && bake.fillings.every(([x]) => x === "made");
    if (bake.last[0] === "todo" && filled && can("fill")) add("fill", { last: go("fill") });
    if (bake.last[0] === "matured" && can("box")) add("box", { last: go("box") });
    return choices;
  };
  /** And with none, one or more of the rested trays put in. */
  const withOven = (bake: Bake, hour: number): Bake[] => {
    const tray = bake.trays.findIndex(([stage]) => stage === "rested");
    const full = bake.trays.filter(([stage]) => stage === "bake").length >= s.ovens;
    const out = hour + hours("bake");
    const asleep = hour >= past.before && !(awake(hour, hour) && awake(out, out));
    if (tray < 0 || full || asleep) return [bake];
    const put = replaced(bake.trays, tray, ["bake", hours("bake")]);
    return [bake, ...withOven({ ...bake, trays: put, loaded: bake.loaded + 1 }, hour)];
  };

  const todo: Left = ["todo", 0];
  const once = ["weigh", "macaronage", "fill", "box"].map((stage) => hours(stage));
  const made = fillings.map((_, i) => hours("make", i));
  const start: Bake = {
    begun: 0,
    owed: [...once, ...made].reduce((sum, long) => sum + long, hours("pipe") * trays),
    loaded: 0,
    shells: todo,
    trays: Array(trays).fill(todo),
    fillings: fillings.map(() => todo),
    last: todo,
  };
  let bakes = [settled(start)];
  for (let hour = from; hour <= until; hour++) {
    if (bakes.some(({ last }) => last[0] === "ready")) return hour;
    const left = Array.from({ length: until - hour }, (_, i) => hour + i);
    const awakeLeft = left.filter((h) => awake(h, h + 1)).length;
    const next = new Map<string, Bake>();
    for (const bake of bakes.flatMap((b) => withHands(b, hour)).flatMap((b) => withOven(b, hour))) {
      if (hour < past.before && bake.loaded !== past.traysIn(hour)) continue;
      // Not enough waking hours are left for what the hands still owe: nothing comes of this one.
      const alone = bake.last[0] === "todo" ? hours("mature") + hours("warm") : 0;
      if (bake.owed > awakeLeft || bake.owed + alone > until - hour) continue;
      const { shells, trays, fillings, last } = bake;
      const ticked = {
        shells: tick(shells),
        trays: trays.map(tick),
        fillings: fillings.map(tick),
        last: tick(last),
      };
      const later = settled({ ...bake, ...ticked, loaded: 0 });
      next.set([bake.begun, later.shells, ...later.trays, ...later.fillings, later.last].join(), later);
    }
    bakes = [...next.values()];
  }
  return undefined;
}

const hourLong = (min: number, max: number) => fc.integer({ min, max }).map((n) => n * 60);
const small: fc.Arbitrary<DayOrder> = fc.record({
  macarons: fc.integer({ min: 1, max: 3 }),
  // 3, 5 and 7 shells: one, two and three trays, or one and two, or one.
  shellsOnTray: fc.constantFrom(3, 3, 4, 7),
  settings: fc.record({
    weigh: hourLong(1, 3),
    macaronage: hourLong(1, 2),
    pipe: hourLong(1, 3),
    rest: hourLong(0, 4),
    bake: hourLong(1, 4),
    cool: hourLong(0, 2),
    fillEach: fc.constant(HOUR),
    mature: hourLong(0, 6),
    box: hourLong(1, 2),
    warm: hourLong(0, 2),
    awake: fc
      .tuple(fc.integer({ min: 0, max: 23 }), fc.integer({ min: 4, max: 16 }))
      .map(([from, long]) => ({ from: from * 60, to: ((from + long) % 24) * 60 })),
    ovens: fc.constantFrom(1, 1, 2),
    noRest: fc.boolean(),
  }),
  fillings: fc.array(
    fc.record({ name: fc.constant("Curd"), handsMin: hourLong(1, 4), setMin: hourLong(0, 5) }),
    { maxLength: 2 },
  ),
  now: fc.integer({ min: 0, max: 23 }).map((hour) => hour * HOUR),
  due: fc.constant(0),
});

/** The hands steps stand where they could not all be later; the first so many of them are given. */
function isLatest(order: DayOrder, plan: DayPlan, given: readonly HandsStep[] = [], past = nothing): void {
  const hands = handsOf(plan.steps);
  const [from, until] = [plan.start / HOUR, order.due / HOUR];
  const at = (nth: number, hour: number, stage: string, filling: number): boolean =>
    nth < given.length ? isStep(hands[nth], hour, stage, filling) : hour === hands[nth]?.hour;
  expect(earliest(order, from, until, at, past)).toBeDefined();
  // The first k as they are, the one after them later, the others anywhere: no such plan.
  for (let k = given.length; k < hands.length; k++) {
    const better: Allowed = (nth, hour, stage, filling) =>
      nth < k ? at(nth, hour, stage, filling) : nth > k || hour > (hands[k]?.hour ?? 0);
    expect(earliest(order, from, until, better, past)).toBeUndefined();
  }
}

interface HandsStep {
  readonly hour: number;
  readonly stage: string;
  readonly filling: number;
}

function handsOf(steps: readonly DayStep[]): HandsStep[] {
  return steps
    .filter(({ hands }) => hands)
    .map(({ id, start }) => {
      const [stage = "", number = "1"] = id.split("-");
      const filling = stage === "filling" ? Number(number) - 1 : 0;
      return { hour: start / HOUR, stage: stage === "filling" ? "make" : stage, filling };
    });
}

const isStep = (step: HandsStep | undefined, hour: number, stage: string, filling: number): boolean =>
  step?.hour === hour && step.stage === stage && step.filling === filling;

test("of all plans, none starts later, nor has a later next step with the ones before it the same", () => {
  let plans = 0;
  fc.assert(
    fc.property(small, fc.integer({ min: 0, max: 10 }), (order, spare) => {
      const answer = planDay(order);
      if (answer.fits || answer.readyAt === undefined) return;
      // Due some hours after it can be ready at the earliest.
      const due = answer.readyAt + spare * HOUR;
      const plan = planDay({ ...order, due });
      if (!plan.fits) throw new Error("a plan for one hour serves for any later one");
      plans++;
      isLatest({ ...order, due }, plan);
    }),
    { numRuns: 40 },
  );
  expect(plans).toBeGreaterThan(20);
});

test("what is impossible is so, and the earliest hour and the most macarons are exact", () => {
  let late = 0;
  fc.assert(
    fc.property(small, fc.integer({ min: 1, max: 30 }), (order, hours) => {
      const answer = planDay(order);
      if (answer.fits) throw new Error("due before now");
      const from = order.now / HOUR;
      const never = from + 400;
      const ready = earliest(order, from, answer.readyAt === undefined ? never : answer.readyAt / HOUR);
      expect(answer.readyAt).toBe(ready === undefined ? undefined : ready * HOUR);
      if (ready === undefined) return;
      late++;
      const due = ready - hours;
      const fit = [1, 2].filter((macarons) => {
        return macarons < order.macarons && earliest({ ...order, macarons }, from, due) !== undefined;
      });
      expect(planDay({ ...order, due: due * HOUR })).toMatchObject({
        fits: false,
        most: Math.max(0, ...fit),
      });
    }),
    { numRuns: 60 },
  );
  expect(late).toBeGreaterThan(30);
});

test("of all ways to go on from what is done, the one made anew is the latest, or none is in time", () => {
  let [plans, late] = [0, 0];
  const change = fc.record({
    after: fc.integer({ min: 0, max: 40 }),
    late: fc.integer({ min: -1, max: 4 }),
    away: fc.integer({ min: 0, max: 4 }),
  });
  fc.assert(
    fc.property(small, fc.integer({ min: 0, max: 8 }), change, (order, spare, { after, late: by, away }) => {
      const { fits, ...answer } = planDay(order);
      if (fits || !("readyAt" in answer)) return;
      const due = (answer.readyAt ?? 0) + spare * HOUR;
      const plan = planDay({ ...order, due }) as DayPlan;
      const now = plan.start + after * HOUR;
      const anew = rework({ ...order, due }, plan, now, { late: by * HOUR, away: away * HOUR });

      const done = plan.steps
        .map((step) => ({ ...step, start: step.start + by * HOUR }))
        .filter(({ start }) => start < now);
      const given = handsOf(done);
      const before = now / HOUR + away;
      const into = done.filter(({ id }) => id.startsWith("bake-")).map(({ start }) => start / HOUR);
      const past = { before, traysIn: (hour: number) => into.filter((h) => h === hour).length };
      if (anew.fits) {
        plans++;
        isLatest({ ...order, due }, anew, given, past);
        return;
      }
      late++;
      const goesOn: Allowed = (nth, hour, stage, filling) =>
        nth < given.length ? isStep(given[nth], hour, stage, filling) : hour >= before;
      const ready = earliest(order, given[0]?.hour ?? before, (anew.readyAt ?? 0) / HOUR, goesOn, past);
      expect(ready).toBe((anew.readyAt ?? 0) / HOUR);
      expect(ready).toBeGreaterThan(due / HOUR);
    }),
    { numRuns: 80 },
  );
  expect(Math.min(plans, late)).toBeGreaterThan(10);
});
