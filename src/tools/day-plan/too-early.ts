import type { Problem } from "./problem.ts";
import type { Task } from "./tasks.ts";

export interface Span {
  readonly start: number;
  readonly end: number;
}

/**
 * Whether any step ahead would start before it may: before now, or before what is done or running has ended.
 */
export function startsTooEarly(
  problem: Problem,
  tasks: readonly Task[],
  times: ReadonlyMap<string, Span>,
): boolean {
  const { now, done } = problem;
  const ends = (kind: Task["kind"]): number[] =>
    tasks.flatMap((task) => (task.kind === kind ? (done.get(task.id)?.end ?? []) : []));
  const handsFree = Math.max(now, ...ends("hands"));

  const earliest = ({ id, kind, after }: Task): number => {
    // What goes by itself may have begun before now, as soon as the step before it ended. Maturing is no such
    // step: it ends when the box is taken out, boxed or not.
    const byItself = after.length > 0 && !after.includes("mature");
    const alone = byItself ? -Infinity : (done.get(id)?.start ?? now);
    const floor = kind === "hands" ? handsFree : kind === "oven" ? now : alone;
    return Math.max(floor, ...after.map((before) => times.get(before)?.end ?? Infinity));
  };
  const early = tasks
    .filter(({ id, kind }) => kind === "alone" || !done.has(id))
    .some((task) => (times.get(task.id)?.start ?? -Infinity) < earliest(task));
  return early || ovenTooFull(problem, tasks, times, ends("oven"));
}

/**
 * Whether the first bakes ahead begin while running ones hold the ovens. The bakes ahead keep out of one
 * another's way, and a running one ends before any of them can have ended, so the n-th of them needs the n-th
 * oven that comes free. (One that is left in for longer than that, beside other ovens, may hold up a bake
 * that it need not.)
 */
function ovenTooFull(
  { ovens, done }: Problem,
  tasks: readonly Task[],
  times: ReadonlyMap<string, Span>,
  ends: readonly number[],
): boolean {
  const starts = tasks
    .filter(({ id, kind }) => kind === "oven" && !done.has(id))
    .map(({ id }) => times.get(id)?.start ?? -Infinity)
    .sort((a, b) => a - b);
  // An oven in which nothing has baked yet is free at any time.
  const held = [...ends].sort((a, b) => a - b).slice(-ovens);
  const free = [...Array<number>(ovens - held.length).fill(-Infinity), ...held];
  return starts.slice(0, ovens).some((start, i) => start < (free[i] as number));
}
