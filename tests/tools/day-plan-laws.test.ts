import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type DayOrder,
  type DayStep,
  planDay,
  rework,
  usualFillings,
  usualSettings,
} from "../../src/tools/day-plan/index.ts";

/** Every rule that a list of steps breaks, read off the table of steps and not off the solver. */
function faults(order: DayOrder, steps: readonly DayStep[]): string[] {
  const { settings: s, fillings, now, due, macarons } = order;
  const found: string[] = [];
  const broken = (rule: string, really: boolean): void => {
    if (really) found.push(rule);
  };
  const kept = new Set((order.done ?? []).map(({ id }) => id));
  const at = new Map(steps.map((step) => [step.id, step]));
  broken("the same step twice", at.size !== steps.length);
  const expected = new Set<string>();

  // A step of no length stands at the end of what it comes after.
  const step = (id: string, minutes: number, ends: number[], kind: "hands" | "oven" | "alone"): number => {
    const ready = Math.max(-Infinity, ...ends);
    const seconds = Math.round(minutes * 60);
    if (seconds === 0 && !kept.has(id)) return ready;
    expected.add(id);
    const got = at.get(id);
    if (!got) return Number.POSITIVE_INFINITY;
    const long = got.end - got.start;
    broken(`${id} takes its time`, id === "mature" ? long < seconds : !kept.has(id) && long !== seconds);
    broken(`${id} comes after`, got.start < ready);
    broken(`${id} by hand`, got.hands !== (kind === "hands"));
    const begunEarlier = kind === "alone" && (order.done ?? []).some(({ end }) => end === ready);
    broken(`${id} before now`, !kept.has(id) && !begunEarlier && got.start < now);
    if (kind === "hands" && !kept.has(id)) broken(`${id} asleep`, !within(got.start, got.end));
    if (kind === "oven" && !kept.has(id)) {
      broken(`${id} in or out asleep`, !within(got.start, got.start) || !within(got.end, got.end));
    }
    return got.end;
  };
  const within = (start: number, end: number): boolean => {
    const { from, to } = s.awake;
    if (from === to || to - from === 1440) return true;
    const open = from * 60;
    const close = (to > from ? to : to + 1440) * 60;
    return Array.from({ length: 5 }, (_, i) => (Math.floor(start / 86_400) - 2 + i) * 86_400).some(
      (midnight) => midnight + open <= start && end <= midnight + close,
    );
  };

  const mixed = step("macaronage", s.macaronage, [step("weigh", s.weigh, [], "hands")], "hands");
  const shells = Math.ceil((macarons * 22) / 10);
  const trays = order.trays ?? Math.ceil(shells / (order.shellsOnTray ?? 30));
  const parts = Array.from({ length: trays }, (_, i) => {
    const piped = step(`pipe-${i + 1}`, s.pipe, [mixed], "hands");
    const rested = step(`rest-${i + 1}`, s.noRest ? 0 : s.rest, [piped], "alone");
    const baked = step(`bake-${i + 1}`, s.bake, [rested], "oven");
    return step(`cool-${i + 1}`, s.cool, [baked], "alone");
  });
  fillings.forEach(({ handsMin, setMin }, i) => {
    const made = step(`filling-${i + 1}`, handsMin, [], "hands");
    parts.push(step(`set-${i + 1}`, setMin, [made], "alone"));
  });
  const filled = step("fill", (s.fillEach * macarons) / 60, parts, "hands");
  const boxed = step("box", s.box, [step("mature", s.mature, [filled], "alone")], "hands");
  broken("ready when needed", step("warm", s.warm, [boxed], "alone") > due);

  broken("all steps and no others", [...expected].join() !== [...expected].filter((id) => at.has(id)).join());
  broken(
    "no others",
    steps.some(({ id }) => !expected.has(id)),
  );
  broken(
    "in order",
    steps.some(({ start }, i) => i > 0 && start < (steps[i - 1] as DayStep).start),
  );
  const most = (some: DayStep[]): number =>
    Math.max(0, ...some.map((a) => some.filter((b) => b.start <= a.start && a.start < b.end).length));
  broken("one pair of hands", most(steps.filter(({ hands }) => hands)) > 1);
  broken("room in the oven", most(steps.filter(({ id }) => id.startsWith("bake-"))) > s.ovens);
  return found;
}

const minutes = (max: number) => fc.oneof(fc.integer({ min: 0, max }), fc.constantFrom(0, 5, 10, max));
const settings = fc.record({
  weigh: minutes(60),
  macaronage: minutes(60),
  pipe: minutes(30),
  rest: minutes(90),
  bake: fc.integer({ min: 1, max: 40 }),
  cool: minutes(60),
  fillEach: fc.integer({ min: 0, max: 40 }),
  mature: fc.constantFrom(0, 600, 1440, 2880),
  box: minutes(40),
  warm: minutes(60),
  awake: fc.oneof(
    fc.constant({ from: 420, to: 1320 }),
    fc.record({ from: fc.integer({ min: 0, max: 1440 }), to: fc.integer({ min: 0, max: 1440 }) }),
  ),
  ovens: fc.constantFrom(1, 1, 1, 2, 3),
  noRest: fc.boolean(),
});
const filling = fc.record({
  name: fc.constantFrom("Ganache", "Curd"),
  handsMin: minutes(60),
  setMin: minutes(240),
});
const now = 20_526 * 86_400;
const orders: fc.Arbitrary<DayOrder> = fc.record({
  macarons: fc.integer({ min: 1, max: 150 }),
  shellsOnTray: fc.constantFrom(20, 28, 30, 35),
  settings: fc.oneof(fc.constant(usualSettings), settings),
  fillings: fc.oneof(fc.constant(usualFillings), fc.array(filling, { maxLength: 4 })),
  now: fc.integer({ min: now, max: now + 86_400 }),
  due: fc.integer({ min: now, max: now + 5 * 86_400 }),
});

describe("for any order", () => {
  test("a plan keeps every rule, and no step of it could be later by itself", () => {
    fc.assert(
      fc.property(orders, fc.integer({ min: 1, max: 90_000 }), (order, shift) => {
        const plan = planDay(order);
        if (!plan.fits) return;
        expect(faults(order, plan.steps)).toEqual([]);
        expect(plan.start).toBe(plan.steps[0]?.start ?? order.due);
        for (const { id } of plan.steps) {
          for (const by of [1, 60, shift]) expect(faults(order, later(plan.steps, id, by))).not.toEqual([]);
        }
      }),
      { numRuns: 1500 },
    );
  });

  test("begun a minute after its start, no plan at all is in time", () => {
    fc.assert(
      fc.property(orders, (order) => {
        const plan = planDay(order);
        if (!plan.fits || plan.steps.length === 0) return;
        expect(planDay({ ...order, now: plan.start }).fits).toBe(true);
        expect(planDay({ ...order, now: plan.start + 60 }).fits).toBe(false);
      }),
      { numRuns: 1500 },
    );
  });

  test("what is said to fit fits, and a second or a macaron more does not", () => {
    fc.assert(
      fc.property(orders, (order) => {
        const answer = planDay(order);
        if (answer.fits) return;
        const { readyAt, most = 0, noRestFits } = answer;
        if (readyAt !== undefined) {
          const then = planDay({ ...order, due: readyAt });
          expect(then.fits && faults({ ...order, due: readyAt }, then.steps)).toEqual([]);
          expect(planDay({ ...order, due: readyAt - 1 }).fits).toBe(false);
        }
        expect(most).toBeLessThan(order.macarons);
        if (most > 0) expect(planDay({ ...order, macarons: most }).fits).toBe(true);
        expect(planDay({ ...order, macarons: most + 1 }).fits).toBe(false);
        expect(planDay({ ...order, settings: { ...order.settings, noRest: true } }).fits).toBe(noRestFits);
      }),
      { numRuns: 600 },
    );
  });

  test("a plan made anew keeps every rule too, but for what is done", () => {
    const moment = fc.double({ min: 0, max: 1, noNaN: true });
    const change = fc.record({
      late: fc.integer({ min: -1200, max: 7200 }),
      away: fc.integer({ min: 0, max: 7200 }),
      skipRest: fc.boolean(),
    });
    fc.assert(
      fc.property(orders, moment, fc.nat(20_000), change, (order, part, spare, { late, away, skipRest }) => {
        const plan = planDay(order);
        if (!plan.fits) return;
        const now = plan.start + Math.floor(part * (plan.ready - plan.start));
        const due = order.due + spare;
        const anew = rework({ ...order, due }, plan, now, { late, away, skipRest });
        if (!anew.fits) return;
        const done = plan.steps
          .filter(({ start }) => start + late < now)
          .map(({ id, start, end }) => ({ id, start: start + late, end: end + late }));
        const settings = { ...order.settings, noRest: skipRest || order.settings.noRest };
        expect(faults({ ...order, due, settings, now: now + away, done }, anew.steps)).toEqual([]);
      }),
      { numRuns: 1500 },
    );
  });

  test("an hour more to go never makes the start earlier", () => {
    fc.assert(
      fc.property(orders, (order) => {
        const [sooner, after] = [planDay(order), planDay({ ...order, due: order.due + 3600 })];
        if (sooner.fits) expect(after.fits && after.start >= sooner.start).toBe(true);
      }),
      { numRuns: 600 },
    );
  });
});

function later(steps: readonly DayStep[], id: string, by: number): DayStep[] {
  return steps
    .map((step) => (step.id === id ? { ...step, start: step.start + by, end: step.end + by } : step))
    .sort((a, b) => a.start - b.start);
}
