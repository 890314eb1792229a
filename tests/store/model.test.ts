/** Random commands carried out on the disk and in a plain model: both always hold the same. */
import * as fs from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import fc from "fast-check";
import { expect, test } from "vitest";
import { undoDepth } from "../../src/store/apply.ts";
import { dayOf } from "../../src/store/copies.ts";
import { openStore } from "../../src/store/open.ts";
import type { Effect } from "../../src/tools/contract/answer.ts";
import { addTimer, noon } from "./growth.ts";
import { minutes, sequences } from "./length.ts";
import { addNote, doing, got, noteNamed, onDisk, unflushed } from "./support.ts";

interface Row {
  id: number;
  [field: string]: unknown;
}

/** All that is remembered, as plain as it can be. */
interface State {
  notes: Row[];
  timers: Row[];
  stock: Row[];
  oven_c: number | undefined;
}

interface Model {
  state: State;
  last: { notes: number; timers: number; stock: number };
  /** For each change that can be taken back its name and the state before it. */
  undo: { name: string; before: State }[];
  copies: Map<string, State>;
  changed?: string;
}

const clone = (state: State): State => structuredClone(state);

type Command =
  | { is: "notes"; count: number }
  | { is: "rate"; nth: number; rating: number | undefined }
  | { is: "remove"; nth: number; count: number }
  | { is: "timer"; min: number }
  | { is: "ring" }
  | { is: "stop"; nth: number }
  | { is: "stock"; grams: number }
  | { is: "oven"; to: number | undefined }
  | { is: "undo" }
  | { is: "back"; nth: number }
  | { is: "wait"; hours: number }
  | { is: "reopen" };

const nat = fc.nat(100_000);
const command: fc.Arbitrary<Command> = fc.oneof(
  {
    weight: 4,
    arbitrary: fc.record({ is: fc.constant("notes" as const), count: fc.integer({ min: 1, max: 150 }) }),
  },
  {
    weight: 3,
    arbitrary: fc.record({
      is: fc.constant("rate" as const),
      nth: nat,
      rating: fc.option(fc.nat(10), { nil: undefined }),
    }),
  },
  {
    weight: 2,
    arbitrary: fc.record({
      is: fc.constant("remove" as const),
      nth: nat,
      count: fc.integer({ min: 1, max: 40 }),
    }),
  },
  {
    weight: 2,
    arbitrary: fc.record({ is: fc.constant("timer" as const), min: fc.integer({ min: 1, max: 5000 }) }),
  },
  { weight: 1, arbitrary: fc.constant({ is: "ring" as const }) },
  { weight: 1, arbitrary: fc.record({ is: fc.constant("stop" as const), nth: nat }) },
  { weight: 1, arbitrary: fc.record({ is: fc.constant("stock" as const), grams: fc.nat(5000) }) },
  {
    weight: 1,
    arbitrary: fc.record({
      is: fc.constant("oven" as const),
      to: fc.option(fc.nat(200), { nil: undefined }),
    }),
  },
  { weight: 5, arbitrary: fc.constant({ is: "undo" as const }) },
  { weight: 2, arbitrary: fc.record({ is: fc.constant("back" as const), nth: nat }) },
  {
    weight: 3,
    arbitrary: fc.record({ is: fc.constant("wait" as const), hours: fc.integer({ min: 1, max: 900 }) }),
  },
  { weight: 1, arbitrary: fc.constant({ is: "reopen" as const }) },
);

const pick = (rows: readonly Row[], nth: number): Row | undefined => rows[nth % Math.max(1, rows.length)];

/** A command as effects for the store, and what it does to the model. */
function planned(
  each: Command,
  model: Model,
  now_ms: number,
): { effects: Effect[]; name?: string; on?(state: State): void } {
  const { state, last } = model;
  if (each.is === "notes") {
    const texts = Array.from({ length: each.count }, (_, n) => `note ${last.notes + 1 + n}`);
    return {
      effects: texts.map(addNote),
      name: `${each.count} notes`,
      on: (to) => to.notes.push(...texts.map((text) => ({ id: ++last.notes, ...noteNamed(text) }))),
    };
  }
  if (each.is === "rate") {
    const note = pick(state.notes, each.nth);
    if (!note) return { effects: [] };
    return {
      effects: [{ do: "change", list: "notes", id: note.id, patch: { rating: each.rating } }],
      name: "the rating",
      on(to) {
        const own = to.notes.find(({ id }) => id === note.id) as Row;
        if (each.rating === undefined) delete own.rating;
        else own.rating = each.rating;
      },
    };
  }
  if (each.is === "remove") {
    const from = state.notes.length ? each.nth % state.notes.length : 0;
    const gone = state.notes.slice(from, from + each.count).map(({ id }) => id);
    if (gone.length === 0) return { effects: [] };
    return {
      effects: gone.map((id) => ({ do: "remove", list: "notes", id })),
      name: "the notes' end",
      on: (to) => {
        to.notes = to.notes.filter(({ id }) => !gone.includes(id));
      },
    };
  }
  if (each.is === "timer") {
    const effect = addTimer("bake", now_ms + each.min * 60_000, "running") as Effect & { do: "add" };
    return {
      effects: [effect],
      name: "the timer",
      on: (to) => to.timers.push({ id: ++last.timers, ...effect.entry }),
    };
  }
  if (each.is === "stop") {
    const timer = pick(
      state.timers.filter((one) => one.state === "running"),
      each.nth,
    );
    if (!timer) return { effects: [] };
    return {
      effects: [{ do: "change", list: "timers", id: timer.id, patch: { state: "stopped" } }],
      name: "stopping",
      on: (to) => Object.assign(to.timers.find(({ id }) => id === timer.id) as Row, { state: "stopped" }),
    };
  }
  if (each.is === "stock")
    return {
      effects: [{ do: "add", list: "stock", entry: { name: "sugar", grams: each.grams } }],
      name: "the sugar",
      on: (to) => to.stock.push({ id: ++last.stock, name: "sugar", grams: each.grams }),
    };
  if (each.is === "oven")
    return {
      effects: [{ do: "set", setting: "oven_c", value: each.to }],
      name: "the oven",
      on: (to) => {
        to.oven_c = each.to;
      },
    };
  return { effects: [] };
}

/** Rings in the model: also in the states that an undo would lead to. */
function ring(model: Model, ids: number[]): void {
  for (const state of [model.state, ...model.undo.map(({ before }) => before)])
    for (const timer of state.timers)
      if (ids.includes(timer.id) && timer.state === "running") timer.state = "rung";
}

async function run(commands: readonly Command[]): Promise<void> {
  const home = fs.mkdtempSync(join(tmpdir(), "record-model-"));
  try {
    let now_ms = noon;
    const open = () => openStore(home, { files: unflushed, now_ms: () => now_ms });
    let store = open();
    const empty: State = { notes: [], timers: [], stock: [], oven_c: undefined };
    const model: Model = {
      state: empty,
      last: { notes: 0, timers: 0, stock: 0 },
      undo: [],
      copies: new Map(),
    };
    const changing = () => {
      const today = dayOf(now_ms);
      if (model.changed !== undefined && model.changed !== today) {
        model.copies.set(model.changed, clone(model.state));
        const days = [...model.copies.keys()].sort();
        for (const day of days.slice(0, -7)) model.copies.delete(day);
      }
      model.changed = today;
    };
    for (const each of commands) {
      if (each.is === "wait") now_ms += each.hours * 3_600_000;
      else if (each.is === "reopen") store = open();
      else if (each.is === "undo") {
        got(await store.change(doing([{ do: "undo" }])));
        if (model.undo.length > 0) {
          changing();
          model.state = model.undo.pop()?.before ?? empty;
        }
      } else if (each.is === "ring") {
        const due = model.state.timers.filter(
          (timer) => timer.state === "running" && Number(timer.due_ms) <= now_ms,
        );
        // as the chat does it: of those that it can see
        const seen = new Set(got(await store.read()).record.timers.map(({ id }) => id));
        const ids = due.map(({ id }) => id).filter((id) => seen.has(id));
        got(
          await store.change(
            doing(ids.map((id) => ({ do: "change", list: "timers", id, patch: { state: "rung" } }))),
          ),
        );
        if (ids.length > 0) {
          changing();
          ring(model, ids);
        }
      } else if (each.is === "back") {
        const days = store.copies();
        expect(days).toEqual([...model.copies.keys()].sort());
        const day = days[each.nth % Math.max(1, days.length)];
        if (day === undefined) continue;
        const { timers: _then, ...then } = clone(model.copies.get(day) as State);
        const { timers, ...now } = model.state;
        got(await store.change(doing([{ do: "restore", day }], `back to ${day}`)));
        if (JSON.stringify(then) !== JSON.stringify(now)) {
          model.undo.push({ name: `back to ${day}`, before: clone(model.state) });
          changing();
          model.state = { ...then, timers };
        }
      } else {
        const { effects, name, on } = planned(each, model, now_ms);
        if (!on || name === undefined) continue;
        const before = clone(model.state);
        got(await store.change(doing(effects, name)));
        changing();
        model.undo.push({ name, before });
        on(model.state);
      }
      model.undo.splice(0, Math.max(0, model.undo.length - undoDepth));
      await compare(store, home, model);
    }
    await compare(open(), home, model);
  } finally {
    fs.rmSync(home, { recursive: true, force: true });
  }
}

/** The store's record, and all timers by other means, against the model. */
async function compare(store: ReturnType<typeof openStore>, home: string, model: Model): Promise<void> {
  const read = got(await store.read());
  expect([read.notice, store.late()]).toEqual([undefined, undefined]);
  const { record } = read;
  expect(record.notes).toEqual(model.state.notes);
  expect(record.stock).toEqual(model.state.stock);
  expect(record.bench.oven_c).toEqual(model.state.oven_c);
  expect(record.changes.map(({ name }) => name)).toEqual(model.undo.map(({ name }) => name));
  if (!fs.existsSync(join(home, "record.json"))) return;
  const { sealed, timers } = onDisk(home);
  const old = sealed
    .filter(({ list }) => list === "timers")
    .flatMap(
      ({ file }) => JSON.parse(fs.readFileSync(join(home, "record.parts", file), "utf8")).timers as Row[],
    );
  expect([...old, ...timers].sort((a, b) => a.id - b.id)).toEqual(model.state.timers);
}

test(`${sequences} random sequences of commands`, { timeout: minutes * 2 }, async () => {
  await fc.assert(fc.asyncProperty(fc.array(command, { minLength: 1, maxLength: 40, size: "max" }), run), {
    numRuns: sequences,
    endOnFailure: false,
  });
});

test("timers by the hundred, set and rung over the years", { timeout: minutes }, async () => {
  const year: Command[] = Array.from({ length: 300 }, (_, n) =>
    n % 3 === 0
      ? { is: "timer", min: 20 }
      : n % 3 === 1
        ? { is: "wait", hours: 90 + (n % 7) }
        : { is: "ring" },
  );
  await run([...year, { is: "undo" }, ...year]);
});
