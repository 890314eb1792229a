import { type Problem, problemOf } from "./problem.ts";
import { type Solution, solve } from "./solve.ts";
import type { Span } from "./too-early.ts";
import { trayCount, traysFor } from "./trays.ts";
import type { DayImpossible, DayOrder, DayPlan } from "./types.ts";
import { DAY } from "./waking.ts";

/**
 * The day worked back from when it is due: of all plans that keep every rule, the one whose steps, compared
 * from the first to the last, start latest. Where none keeps them, what would fit.
 *
 * The rules: nothing before `now` or before what it comes after; one pair of hands, each hands step within
 * one waking window; as many trays in the oven as it holds, none put in or taken out while asleep; ready by
 * `due`. What goes by itself (rest, cool, set, warm) is placed just before it is needed; it may well begin
 * earlier.
 * Source of the rules and lengths: from memory, settings.
 * @throws RangeError for a number outside the ranges of the types, or for `done` with a gap in it
 */
export function planDay(order: DayOrder): DayPlan | DayImpossible {
  const problem = problemOf(order);
  const solution = solve(problem);
  return solution ? planOf(solution, order.due) : whatWouldFit(order, problem);
}

function planOf({ tasks, times }: Solution, ready: number): DayPlan {
  const steps = tasks
    .map(({ id, name, kind, after }) => {
      const { start, end } = times.get(id) as Span;
      const before = after.map((earlier) => (times.get(earlier) as Span).end);
      const from = before.length > 0 ? Math.max(...before) : start;
      // out of the fridge they come no sooner than they have to: their time there is counted
      const early = kind === "alone" && id !== "warm";
      return { id, name, start, end, hands: kind === "hands", ...(early && { from }) };
    })
    .filter(({ start, end }) => end > start)
    // The sort is stable: what starts together stays in the order of the table.
    .sort((a, b) => a.start - b.start);
  return { fits: true, start: steps[0]?.start ?? ready, ready, steps };
}

function whatWouldFit(order: DayOrder, problem: Problem): DayImpossible {
  const readyAt = earliestReady(problem);
  return {
    fits: false,
    ...(readyAt !== undefined && { readyAt }),
    ...(problem.done.size === 0 && { most: mostMacarons(order) }),
    noRestFits: solve({ ...problem, lengths: { ...problem.lengths, rest: 0 } }) !== undefined,
  };
}

/** A plan for one hour serves for any later one, so the earliest hour that has a plan is found by halving. */
function earliestReady(problem: Problem): number | undefined {
  const { lengths, trays, fillings, done } = problem;
  const from = Math.max(problem.now, problem.due, ...[...done.values()].map(({ end }) => end));
  const work = Object.values(lengths).reduce((sum, length) => sum + length * trays, 0);
  const make = fillings.reduce((sum, { hands, set }) => sum + hands + set, 0);
  // One step at a time, each waiting up to two days for its hours: what has no plan by then never has.
  const never = from + work + make + 2 * DAY * (2 * trays + fillings.length + 5);
  const fits = (due: number): boolean => solve({ ...problem, due }) !== undefined;
  return fits(never) ? halve(problem.due, never, fits) : undefined;
}

/** Fewer macarons never need more of anything, so the most that fit are found by halving too. */
function mostMacarons(order: DayOrder): number {
  const tooMany = (macarons: number): boolean => {
    const trays = Math.min(trayCount(order), traysFor(macarons, order.shellsOnTray));
    return solve(problemOf({ ...order, macarons, trays })) === undefined;
  };
  return halve(0, order.macarons, tooMany) - 1;
}

/**
 * The least whole number at which `holds`, which does not at `low`, does at `high`, and holds from there on.
 */
function halve(low: number, high: number, holds: (n: number) => boolean): number {
  let no = low;
  let yes = high;
  while (yes - no > 1) {
    const middle = Math.floor((no + yes) / 2);
    if (holds(middle)) yes = middle;
    else no = middle;
  }
  return yes;
}
