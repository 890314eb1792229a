/** What every calculator promises, held against all of them. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Outcome, Tool } from "../../src/tools/contract/index.ts";
import { checkInputs } from "../../src/tools/lib/check.ts";
import { toolNamed, tools } from "../../src/tools/registry.ts";
import { steps } from "../support/ask.ts";
import { faults } from "../support/faults.ts";
import { world } from "../support/world.ts";

/** The program's calculators by name: what --json puts into "tool". */
const promised = [
  "dose",
  "scale",
  "shells",
  "split",
  "fill",
  "ganache",
  "buttercream",
  "convert",
  "timer",
  "note",
  "recall",
  "day",
  "buy",
  "shelf",
  "formula",
  "cost",
  "label",
  "method",
  "keep",
  "trouble",
  "explain",
  "bench",
  "undo",
  "help",
];

const src = "src/tools";
const files = readdirSync(src, { recursive: true, encoding: "utf8" }).filter((each) => each.endsWith(".ts"));
const textOf = (file: string) => readFileSync(join(src, file), "utf8");

/** The inputs that a calculator declares, by name. */
const declared = (tool: Tool): string[] =>
  Object.keys((tool.inputs() as unknown as { _zod: { def: { shape?: object } } })._zod.def.shape ?? {});

/** The first step that a sentence leads to in a fresh conversation. */
function stepOf(say: string) {
  const [first] = steps(say);
  const [step] = Array.isArray(first) ? first : [];
  if (!step) throw new Error(`no calculator takes "${say}": ${JSON.stringify(first)}`);
  return step;
}

function frozen<T>(value: T): T {
  if (typeof value === "object" && value !== null) {
    Object.freeze(value);
    Object.values(value).forEach(frozen);
  }
  return value;
}

/** Computes as the program does, on a world that nothing can be written to. */
function outcomeOf(tool: Tool, inputs: Record<string, unknown>): Outcome {
  const checked = checkInputs(tool, inputs);
  return checked.ok ? tool.compute(frozen(checked.inputs), frozen(world())) : checked.outcome;
}

describe("the registry", () => {
  test("names are unique and are those that are promised", () => {
    const names = tools.map((each) => each.name);
    expect(new Set(names).size).toBe(names.length);
    expect(names.toSorted()).toEqual(promised.toSorted());
    for (const name of names) expect(toolNamed(name)?.name).toBe(name);
  });

  test("every file that declares a calculator is in it", () => {
    const found = files.flatMap((file) =>
      [...textOf(file).matchAll(/\btool(?:<.*>)?\(\{\s*name: "([a-z]+)"/g)].map((match) => match[1]),
    );
    expect(found.length).toBeGreaterThan(10);
    expect(found.toSorted()).toEqual(tools.map((each) => each.name).toSorted());
  });

  test("calculators know nothing of the reader, the command line or the store", () => {
    const offending = files.filter((file) => /from "(?:\.\.\/)+(?:intents|cli|store)\//.test(textOf(file)));
    expect(offending).toEqual([]);
  });

  test("calculators read no clock and touch no disk", () => {
    const impure = files.filter((file) =>
      /Date\.now|new Date\(\)|Math\.random|from "(?:node:)?fs|from "lowdb|from "ink/.test(textOf(file)),
    );
    expect(impure).toEqual([]);
  });
});

describe.each(tools.map((tool) => [tool.name, tool] as const))("%s", (name, tool) => {
  test("says in a line what it is for, and has enough examples", () => {
    expect(tool.purpose).toMatch(/^\S.*\S$/);
    expect(tool.examples.length).toBeGreaterThanOrEqual(5);
    expect(tool.elsewhere.length).toBeGreaterThanOrEqual(3);
    expect(tool.cues.some((each) => each.weight >= 3)).toBe(true);
  });

  test("names only inputs that it declares", () => {
    const known = declared(tool);
    const named = [
      ...tool.examples.flatMap((each) => Object.keys(each.inputs)),
      ...(tool.rivals ?? []).flat(),
    ];
    expect(named.filter((each) => !known.includes(each))).toEqual([]);
  });

  test.each(tool.examples.map((each) => [each.say, each.inputs] as const))("takes: %s", (say, inputs) => {
    const step = stepOf(say);
    expect(step.tool.name).toBe(name);
    expect(step.inputs).toMatchObject(inputs);
    expect(checkInputs(tool, step.inputs)).toMatchObject({ ok: true });
  });

  const owned = tool.elsewhere.filter((each) => toolNamed(each.tool));
  if (owned.length > 0)
    test.each(owned.map((each) => [each.tool, each.say] as const))("leaves to %s: %s", (other, say) => {
      expect(stepOf(say).tool.name).toBe(other);
    });

  test("answers its examples as promised, twice the same, and writes to nothing it was handed", () => {
    for (const { say } of tool.examples) {
      const { inputs } = stepOf(say);
      const outcome = outcomeOf(tool, inputs);
      expect(faults(outcome), say).toEqual([]);
      for (const { name: what, low = 0, high = 0 } of outcome.figures ?? [])
        expect(low, `${say}: ${what}`).toBeLessThanOrEqual(high);
      expect(outcomeOf(tool, inputs)).toEqual(outcome);
      expect(JSON.parse(JSON.stringify(outcome)).status).toBe(outcome.status);
    }
  });

  test("no number breaks it: it answers, asks, or says that it can't be", () => {
    const odd = fc.oneof(
      fc.double({ min: -1000, max: -0.001, noNaN: true }),
      fc.double({ min: 1e-6, max: 100_000, noNaN: true }),
      fc.integer({ min: -3, max: 400 }),
      fc.constantFrom(0, -0, 5e-7, 1e-12, 99.999999, 100, 1e6, 1e9, Number.MAX_SAFE_INTEGER),
    );
    const drafts = tool.examples.map((each) => stepOf(each.say).inputs);
    fc.assert(
      fc.property(fc.constantFrom(...drafts), fc.infiniteStream(odd), (draft, numbers) => {
        const outcome = outcomeOf(tool, withNumbers(draft, numbers));
        expect(faults(outcome)).toEqual([]);
        if (outcome.slot !== undefined) expect(declared(tool)).toContain(outcome.slot);
      }),
      { numRuns: 300 },
    );
  });
});

const momentKeys = ["days", "weekday", "day", "month", "year", "minute", "part"];

/** The same inputs with other numbers in them; moments stay as the reader made them. */
function withNumbers<T>(value: T, numbers: Iterator<number>): T {
  if (typeof value === "number") return numbers.next().value as T;
  if (Array.isArray(value)) return value.map((each) => withNumbers(each, numbers)) as T;
  if (typeof value !== "object" || value === null || momentKeys.some((key) => key in value)) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, each]) => [key, withNumbers(each, numbers)]),
  ) as T;
}
