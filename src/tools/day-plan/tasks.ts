/** The table of steps for one problem: what each takes, and what it comes after. */

import type { Problem } from "./problem.ts";

/** `alone`: it goes on by itself, awake or asleep, any number at a time. */
export type Kind = "hands" | "oven" | "alone";

export interface Task {
  readonly id: string;
  readonly name: string;
  readonly kind: Kind;
  /** Seconds. */
  readonly length: number;
  readonly after: readonly string[];
}

/**
 * The steps that there are, in the order of the table: those of no length are left out and stepped across.
 */
export function tasksOf(problem: Problem): Task[] {
  const { done } = problem;
  const kept: Task[] = [];
  const across = new Map<string, readonly string[]>();
  for (const task of allTasks(problem)) {
    const after = task.after.flatMap((id) => across.get(id) ?? [id]);
    if (task.length > 0 || done.has(task.id)) kept.push({ ...task, after });
    else across.set(task.id, after);
  }
  return kept;
}

function allTasks({ lengths, trays, fillings }: Problem): Task[] {
  const task = (id: string, name: string, kind: Kind, length: number, ...after: string[]): Task => {
    return { id, name, kind, length, after };
  };
  const numbers = Array.from({ length: trays }, (_, i) => i + 1);
  return [
    task("weigh", "Weigh and sift", "hands", lengths.weigh),
    task("macaronage", "Meringue and macaronage", "hands", lengths.macaronage, "weigh"),
    ...numbers.flatMap((n) => [
      task(`pipe-${n}`, `Pipe tray ${n}`, "hands", lengths.pipe, "macaronage"),
      task(`rest-${n}`, `Rest tray ${n}`, "alone", lengths.rest, `pipe-${n}`),
      task(`bake-${n}`, `Bake tray ${n}`, "oven", lengths.bake, `rest-${n}`),
      task(`cool-${n}`, `Cool tray ${n}`, "alone", lengths.cool, `bake-${n}`),
    ]),
    ...fillings.flatMap(({ name, hands, set }, i) => [
      task(`filling-${i + 1}`, name, "hands", hands),
      task(`set-${i + 1}`, `${name} sets`, "alone", set, `filling-${i + 1}`),
    ]),
    task(
      "fill",
      "Fill",
      "hands",
      lengths.fill,
      ...numbers.map((n) => `cool-${n}`),
      ...fillings.map((_, i) => `set-${i + 1}`),
    ),
    task("mature", "Mature", "alone", lengths.mature, "fill"),
    task("box", "Box and label", "hands", lengths.box, "mature"),
    task("warm", "To room temperature", "alone", lengths.warm, "box"),
  ];
}

/** @throws RangeError when a step is said to be done before one that it comes after */
export function checkDone(tasks: readonly Task[], problem: Problem): void {
  const byId = new Map(tasks.map((task) => [task.id, task]));
  // What goes by itself need not be recorded; what stands before it must be.
  const doers = (id: string): string[] => {
    const task = byId.get(id);
    return task?.kind === "alone" ? task.after.flatMap(doers) : [id];
  };
  for (const task of tasks) {
    if (task.kind === "alone" || !problem.done.has(task.id)) continue;
    const missing = task.after.flatMap(doers).find((id) => !problem.done.has(id));
    if (missing) throw new RangeError(`done: ${task.id} comes after ${missing}, which is not`);
  }
}
