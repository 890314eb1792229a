/**
 * The exact plan, worked backward from the hour it is due.
 *
 * No step is worse off for a later one moving later still. Boxing and filling come after all other hands
 * steps, so each goes as late as its own hours allow. Bakes are alike and need no hands, so the latest oven
 * slots are the latest one by one of all ways to bake. That leaves a deadline for every other hands step and
 * one question, their order, which `hands.ts` answers exactly. What is done already only adds moments before
 * which nothing may start: the latest plan keeps them if any plan does.
 */

import { type HandsJob, latestHands } from "./hands.ts";
import type { Problem } from "./problem.ts";
import { checkDone, type Task, tasksOf } from "./tasks.ts";
import { type Span, startsTooEarly } from "./too-early.ts";
import { latestBakeStart, latestHandsStart } from "./waking.ts";

export interface Solution {
  readonly tasks: readonly Task[];
  /** By the id of the task, seconds: what is done, running and ahead. */
  readonly times: ReadonlyMap<string, Span>;
}

/**
 * @returns undefined when no plan keeps every rule
 * @throws RangeError when `done` has a step without one that it comes after
 */
export function solve(problem: Problem): Solution | undefined {
  const tasks = tasksOf(problem);
  checkDone(tasks, problem);
  const times = workBack(problem);
  return times && !startsTooEarly(problem, tasks, times) ? { tasks, times } : undefined;
}

function workBack(problem: Problem): Map<string, Span> | undefined {
  const { lengths, window, done, due, now } = problem;
  const times = new Map<string, Span>();
  const put = (id: string, start: number, length: number): Span => {
    const span = done.get(id) ?? { start, end: start + length };
    times.set(id, span);
    return span;
  };
  const putHands = (id: string, end: number, length: number): Span =>
    put(id, length > 0 ? latestHandsStart(window, end, length) : end, length);
  // What goes by itself ends when it is needed. Once begun it stays as it began, unless it is needed sooner.
  const putAlone = (id: string, end: number, length: number): void => {
    const begun = done.get(id);
    times.set(id, begun && begun.end <= end ? begun : { start: end - length, end });
  };

  putAlone("warm", due, lengths.warm);
  const box = putHands("box", due - lengths.warm, lengths.box);
  const fill = putHands("fill", box.start - lengths.mature, lengths.fill);
  if (box.end > due || box.start - fill.end < lengths.mature) return undefined;
  if (fill.start < now && !done.has("fill")) return undefined;
  // Maturing is the one length that stretches: from filled to boxed.
  times.set("mature", { start: fill.end, end: box.start });

  const trays = traysToBake(problem);
  const slots = latestSlots(problem, trays.length, fill.start - lengths.cool);
  trays.forEach((tray, i) => {
    put(`bake-${tray}`, slots[i] as number, lengths.bake);
  });
  for (let tray = 1; tray <= problem.trays; tray++) {
    // The bakes that `slots` leaves out are the done ones.
    const bake = put(`bake-${tray}`, times.get(`bake-${tray}`)?.start as number, lengths.bake);
    putAlone(`cool-${tray}`, fill.start, lengths.cool);
    putAlone(`rest-${tray}`, bake.start, lengths.rest);
  }
  problem.fillings.forEach(({ set }, i) => {
    putAlone(`set-${i + 1}`, fill.start, set);
  });

  const shells = shellsAhead(problem, trays, slots);
  const placed = latestHands(shells, fillingsAhead(problem, fill.start), window);
  if (!placed) return undefined;
  for (const { job, start } of placed) put(job.id, start, job.length);
  for (const [id, span] of done) if (!times.has(id)) times.set(id, span);
  return times;
}

/** The trays not yet in the oven, in the order they go in: the first piped is the first rested. */
function traysToBake({ trays, done }: Problem): number[] {
  const piped = (tray: number): number => done.get(`pipe-${tray}`)?.end ?? Number.MAX_SAFE_INTEGER;
  return Array.from({ length: trays }, (_, i) => i + 1)
    .filter((tray) => !done.has(`bake-${tray}`))
    .sort((a, b) => piped(a) - piped(b) || a - b);
}

/** The latest starts of so many bakes, first to last, that are all out of the oven by `end`. */
function latestSlots({ window, lengths, ovens }: Problem, count: number, end: number): number[] {
  const backward: number[] = [];
  for (let i = 0; i < count; i++) {
    backward.push(latestBakeStart(window, backward[i - ovens] ?? end, lengths.bake));
  }
  return backward.reverse();
}

/**
 * The hands steps of the shells that are not done, in order, each with the moment that the oven needs it by.
 */
function shellsAhead(
  { lengths, done }: Problem,
  trays: readonly number[],
  slots: readonly number[],
): HandsJob[] {
  const backward: HandsJob[] = [];
  let deadline = Number.MAX_SAFE_INTEGER;
  const ahead = (id: string, length: number): void => {
    // A step of no length is no step, but the ones before it keep the deadline it passes on.
    if (length > 0 && !done.has(id)) backward.push({ id, length, deadline });
  };
  for (let i = trays.length - 1; i >= 0; i--) {
    // The slots only get earlier this way, and so the deadlines.
    deadline = (slots[i] as number) - lengths.rest;
    ahead(`pipe-${trays[i]}`, lengths.pipe);
  }
  ahead("macaronage", lengths.macaronage);
  ahead("weigh", lengths.weigh);
  return backward.reverse();
}

function fillingsAhead({ fillings, done }: Problem, needed: number): HandsJob[] {
  return fillings
    .map(({ hands, set }, i) => ({ id: `filling-${i + 1}`, length: hands, deadline: needed - set }))
    .filter(({ id, length }) => length > 0 && !done.has(id));
}
