/** A recipe that comes line by line, and one that stands in a file. What isn't weighed or read is named each time. */
import type { Effect, Formula, Outcome, World } from "../contract/index.ts";
import { listed } from "../lib/show.ts";
import type { FormulaInputs } from "./formula.ts";
import { kindOf } from "./kind.ts";
import { figuresOf, leavesOf, textOf } from "./lines.ts";

const shown = 4;
const quoted = (some: readonly string[]) => listed(some.map((each) => `"${each}"`));

/** "; not read: "a", "b" and 3 more". */
export function left(what: string, some: readonly string[]): string {
  if (some.length === 0) return "";
  return `; ${what}: ${quoted(some.slice(0, shown))}${some.length > shown ? ` and ${some.length - shown} more` : ""}`;
}

/** All that is not in the recipe, and amounts that don't agree. */
export function cautionsFor(
  unread: readonly string[],
  unweighed: readonly string[],
  doubts: readonly string[],
): Pick<Outcome, "cautions"> {
  const cautions = [
    ...doubts.map((each) => `${each}.`),
    ...(unweighed.length
      ? [`${quoted(unweighed)} ${unweighed.length === 1 ? "has" : "have"} no weight and no part in any sum.`]
      : []),
    ...(unread.length
      ? [
          `${quoted(unread)} ${unread.length === 1 ? "is" : "are"} not in the recipe: say ${unread.length === 1 ? "it" : "them"} again with a weight.`,
        ]
      : []),
  ];
  return cautions.length ? { cautions } : {};
}

/** A file is read outside; where nothing reads it, that is said. */
export const wanted = (file: string): Outcome => ({
  status: "impossible",
  headline: `${file} can't be read from here.`,
  wants: { file },
});

/** The list's end: what is in the record, and what isn't. */
export function finished(inputs: FormulaInputs, known: Formula | undefined, world: World): Outcome {
  const { name = "", unread = [], doubts = [], taken = [] } = inputs;
  if (!known) return { status: "answered", headline: "Nothing was saved" };
  const { lines, unweighed = [] } = known;
  return {
    status: "answered",
    headline: `Saved ${name}: ${textOf(lines, world)}${left("not weighed", unweighed)}${left("not read", unread)}`,
    figures: figuresOf(lines),
    rule: { text: "your own recipe, as you saved it", basis: "your bench" },
    ...(taken.length ? { assumed: taken } : {}),
    ...cautionsFor(unread, unweighed, doubts),
    leaves: leavesOf(lines),
  };
}

/** Lines over those before; amounts of the same ingredient add up. */
function laid(before: Formula["lines"], now: Formula["lines"]): Formula["lines"] {
  const out = [...before];
  for (const line of now) {
    const at = out.findIndex((each) => each.name === line.name);
    const old = out[at];
    if (old) out[at] = { name: line.name, grams: old.grams + line.grams };
    else out.push(line);
  }
  return out;
}

/** Each line is saved as it comes, so that nothing is lost when the list is broken off. */
export function collect(inputs: FormulaInputs, known: Formula | undefined, world: World): Outcome {
  const { name = "", started, latest, cancelled } = inputs;
  const before = started ? (known?.lines ?? []) : [];
  const lines = laid(before, inputs.lines ?? []);
  const unweighed = [...(started ? (known?.unweighed ?? []) : []), ...(inputs.unweighed ?? [])];
  if (cancelled)
    return {
      status: "answered",
      headline: started && known ? `${name} is not kept` : "Nothing was saved",
      ...(started && known
        ? {
            effects: [{ do: "remove", list: "formulas", id: known.id } as const],
            change: `forgetting ${name}`,
          }
        : {}),
    };
  const question = 'The next line, or "done".';
  const ask = { status: "asking" as const, question, slot: "lines" };
  if (lines.length === 0)
    return {
      ...ask,
      headline: latest
        ? `${latest}. What is in ${name}? A line at a time; a blank line or "done" ends it.`
        : `What is in ${name}? A line at a time; a blank line or "done" ends it.${known && !started ? ` It will replace the ${name} that is saved.` : ""}`,
    };
  const kind = kindOf(lines);
  const entry = { name, lines, ...(kind ? { kind } : {}), ...(unweighed.length ? { unweighed } : {}) };
  const added = inputs.lines?.length || inputs.unweighed?.length;
  const effect: Effect = known
    ? {
        do: "change",
        list: "formulas",
        id: known.id,
        patch: { ...entry, kind: kind ?? null, unweighed: unweighed.length ? unweighed : null },
      }
    : { do: "add", list: "formulas", entry };
  return {
    ...ask,
    headline: `${latest ? `${latest}. ` : ""}${name} so far: ${textOf(lines, world)}`,
    ...(added ? { effects: [effect] } : {}),
    change: started ? `a line of ${name}` : `the recipe ${name}`,
  };
}
