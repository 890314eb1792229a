import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type DayChange,
  type DayOrder,
  type DayPlan,
  planDay,
  rework,
  usualFillings,
  usualSettings,
  wallSeconds,
  wallText,
  whatNext,
} from "../../src/tools/day-plan/index.ts";

const order: DayOrder = {
  macarons: 24,
  due: wallSeconds("2026-03-15T15:00"),
  now: wallSeconds("2026-03-14T09:30"),
  settings: usualSettings,
  fillings: usualFillings,
};
const at = (clock: string): number => wallSeconds(`2026-03-14T${clock}`);
const planned = (given: DayOrder): DayPlan => {
  const plan = planDay(given);
  if (!plan.fits) throw new Error("no plan");
  return plan;
};
/** Due an hour later: time to spare. */
const spare = { ...order, due: order.due + 3600 };

function again(from: DayOrder, clock: string, change: DayChange, due = from.due): DayPlan {
  const answer = rework({ ...from, due }, planned(from), at(clock), change);
  if (!answer.fits) throw new Error(`ready at ${wallText(answer.readyAt ?? 0)}`);
  return answer;
}
const clocks = ({ steps }: DayPlan, ...ids: string[]): string[] =>
  ids.map((id) => {
    const step = steps.find((one) => one.id === id);
    return step ? `${wallText(step.start).slice(11, 16)}-${wallText(step.end).slice(11, 16)}` : "none";
  });

describe("the rest of a plan made anew", () => {
  test("ten minutes late, due an hour later: what has begun moves by the ten, the rest by the hour", () => {
    // At 12:10 the bench stands where the plan stood at 12:00: the meringue of 11:57 to 12:22 runs until
    // 12:32.
    const anew = again(order, "12:10", { late: 600 }, spare.due);
    expect(clocks(anew, "weigh", "macaronage", "pipe-1", "fill")).toEqual([
      "11:47-12:07",
      "12:07-12:32",
      "13:22-13:32",
      "15:02-15:10",
    ]);
  });

  test("late without time to spare: it says when it would be ready", () => {
    // Ten minutes behind at 12:10 is ten minutes behind at the end.
    const answer = rework(order, planned(order), at("12:10"), { late: 600 });
    expect(answer).toEqual({ fits: false, readyAt: order.due + 600, noRestFits: true });
  });

  test("called away: nothing is begun until then, what runs runs on", () => {
    // At 13:00 the ganache is being made; tray 1 is due in the oven at 13:02. Back at 13:10: 8 minutes are
    // missing.
    const answer = rework(order, planned(order), at("13:00"), { away: 600 });
    expect(answer).toMatchObject({ fits: false, readyAt: order.due + 480 });
    // Away from 12:50 to 13:02 it is the ganache of 12:57 that waits.
    expect(rework(order, planned(order), at("12:50"), { away: 720 })).toMatchObject({
      readyAt: order.due + 300,
    });
  });

  test("skipping the rest: the trays that rest are ready now, the others as soon as they are piped", () => {
    // At 12:40 tray 1 has rested 8 minutes and tray 2 is being piped until 12:47. Due 20 minutes sooner, all
    // that is baked and made goes 20 minutes sooner: bake from 12:42, ganache by 12:57, not before the hands
    // are free.
    const sooner = order.due - 20 * 60;
    expect(rework({ ...order, due: sooner }, planned(order), at("12:40")).fits).toBe(false);
    const answer = rework({ ...order, due: sooner }, planned(order), at("12:40"), { skipRest: true });
    // The ganache holds it up: 12:47 to 13:07, set by 13:52, and that is 10 minutes sooner than planned.
    expect(answer).toMatchObject({ fits: false, readyAt: order.due - 600 });
    const anew = again(order, "12:40", { skipRest: true }, order.due - 600);
    expect(clocks(anew, "rest-1", "rest-2", "bake-1", "bake-2", "filling-1")).toEqual([
      "12:32-12:40",
      "none",
      "12:52-13:07",
      "13:07-13:22",
      "12:47-13:07",
    ]);
  });

  test("a filling already set counts from when it was made", () => {
    // The ganache was made by 10:00, long before anything else.
    const done = [{ id: "filling-1", start: at("09:40"), end: at("10:00") }];
    const anew = planned({ ...order, now: at("10:00"), done });
    expect(clocks(anew, "filling-1", "set-1", "weigh")).toEqual([
      "09:40-10:00",
      "13:17-14:02",
      "11:37-11:57",
    ]);
    expect(anew.steps.find(({ id }) => id === "set-1")?.from).toBe(at("10:00"));
  });

  test("a bake left in for longer holds up the next", () => {
    // Three trays go in at 15:43, 15:58 and 16:13. The second is to stay in until 16:20: 7 minutes are
    // missing.
    const three = { ...order, macarons: 36, due: wallSeconds("2026-03-20T18:00") };
    const day = (clock: string): number => wallSeconds(`2026-03-19T${clock}`);
    const done = planned(three)
      .steps.filter(({ start }) => start < day("16:00"))
      .map((step) => (step.id === "bake-2" ? { ...step, end: day("16:20") } : step));
    expect(planDay({ ...three, now: day("16:00"), done })).toMatchObject({ readyAt: three.due + 420 });
    // In a second oven it holds up nothing but its own cooling, 16:20 to 16:50, which is in time for 16:58.
    const two = { ...three, settings: { ...usualSettings, ovens: 2 } };
    expect(planDay({ ...two, now: day("16:00"), done }).fits).toBe(true);
  });

  test("with all done but the boxing, a later hour moves only that", () => {
    const next = wallSeconds("2026-03-15T10:00");
    const anew = rework(spare, planned(order), next) as DayPlan;
    expect(clocks(anew, "fill", "box", "warm")).toEqual(["14:02-14:10", "15:10-15:30", "15:30-16:00"]);
  });
});

test("at any moment and without a change, the plan comes back as it was", () => {
  const orders = fc.record({
    macarons: fc.integer({ min: 1, max: 150 }),
    ovens: fc.constantFrom(1, 1, 2),
    due: fc.integer({ min: order.due, max: order.due + 3 * 86_400 }),
    fillings: fc.array(
      fc.record({
        name: fc.constant("Curd"),
        handsMin: fc.constantFrom(0, 10, 20, 30),
        setMin: fc.integer({ min: 0, max: 300 }),
      }),
      { maxLength: 4 },
    ),
  });
  fc.assert(
    fc.property(orders, fc.double({ min: 0, max: 1, noNaN: true }), ({ ovens, ...more }, part) => {
      const given = { ...order, ...more, settings: { ...usualSettings, ovens } };
      const plan = planDay(given);
      if (!plan.fits) return;
      const now = plan.start + Math.floor(part * (plan.ready - plan.start));
      expect(rework(given, plan, now)).toEqual(plan);
    }),
    { numRuns: 1000 },
  );
});

test("what goes on and what comes next", () => {
  const plan = planned(order);
  const names = (clock: string) => {
    const { running, next } = whatNext(plan, at(clock));
    return [running.map(({ name }) => name).join(), next?.name];
  };
  expect(names("11:00")).toEqual(["", "Weigh and sift"]);
  expect(names("11:37")).toEqual(["Weigh and sift", "Meringue and macaronage"]);
  expect(names("12:40")).toEqual(["Rest tray 1,Pipe tray 2", "Ganache"]);
  expect(names("13:20")).toEqual(["Bake tray 2,Ganache sets", "Buttercream"]);
  expect(names("20:00")).toEqual(["Mature", "Box and label"]);
  expect(whatNext(plan, order.due)).toEqual({ running: [] });
});
