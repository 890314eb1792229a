/** Reads what a mix is to be brought to, what moves it, and a part of it changed: "20 g less cream". */
import type { Memory, Reading } from "../contract/index.ts";
import { says, weighed } from "../lib/find.ts";
import { nameOf } from "../lib/lines.ts";
import { inBase } from "../lib/units.ts";
import type { GanacheInputs } from "./ganache.ts";
import { readMix } from "./mix-said.ts";
import { type Draft, ganacheBefore } from "./turn.ts";

const activity = /(?:^| )(?:water\S* activity|a _ w|a w|aw)(?: |$)/;
const moving =
  /(?:what|how|anything|which|ways) .*(?:moves?|lowers?|raises?|changes?|affects?|reduces?|bring\S* .*down|drops?)(?: |$)|(?:happens to|effect on|does? to)(?: |$)/;
const lessPerishable = /(?:^| )(?:less perishable|more stable|more shelf_stable|keep longer by)(?: |$)/;
/** Water activities that a filling can be brought to lie here; other bare numbers mean something else. */
const lowest = 0.5;

/** A target or the table of moves; undefined where the sentence asks for neither. */
export function readAim(reading: Reading, memory: Memory): Draft | undefined {
  const before = ganacheBefore(memory);
  const carried = memory.follows && before ? mixOf(before) : {};
  const share = shareSaid(reading);
  const number = reading.amounts.find(
    (each) =>
      each.dim === "number" && each.unit === "" && each.value >= lowest && each.value < 1 && !each.fraction,
  );
  const talks = says(reading, activity);
  const after = memory.follows && ["composition", "moves", "target"].includes(before?.want ?? "");
  const measured = talks && says(reading, /(?:measured|lab\S*|meter|reading|estimated) /);
  // a mended mix lies on the table; any other is that of the question before, unless weights are said now
  const kept = after && weighed(reading).filter((each) => each.thing?.ingredient).length === 0;
  const mix = (): Draft =>
    kept
      ? before?.want === "target"
        ? onTable(memory, carried)
        : { ...carried, ...kindOf(reading) }
      : { ...carried, ...readMix(reading, memory), ...kindOf(reading) };
  if (memory.slot === "target_aw" && number) return { ...before, target_aw: number.value };
  const step = stepSaid(reading);
  if (step && (after || talks)) {
    const { lines: _said, ...rest } = mix();
    const lines =
      weighed(reading).length > 1 ? withoutStep(readMix(reading, memory).lines, step.grams) : carried.lines;
    return {
      want: "composition",
      ...rest,
      ...(lines ? { lines } : {}),
      steps: [...(carried.steps ?? []), step],
    };
  }
  if (number && !measured && (talks || after) && !says(reading, /(?:^| )(?:is|was) 0?\.\d+<number>/))
    return { want: "target", target_aw: number.value, ...mix() };
  if (
    share &&
    (reading.things.some((each) => each.base === "ganache") || weighed(reading).length > 1 || after)
  )
    return { want: "target", ...share, ...mix() };
  if (says(reading, lessPerishable) && reading.things.some((each) => each.chocolate || each.base))
    return { want: "moves", ...mix() };
  if (talks && says(reading, moving)) return { want: "moves", ...mix() };
  if (after && says(reading, moving)) return { want: "moves", ...mix() };
  return undefined;
}

/** What the answer before left on the table. */
export const onTable = (memory: Memory, carried: Draft): Draft => {
  const lines = memory.table.recipe?.map(({ name, grams }) => ({ name, grams }));
  return lines?.length ? { lines } : carried;
};

/** The mix of the question before. */
function mixOf({ lines, chocolate, chocolate_g, cream_g, total_g, formula, base, use, steps }: Draft): Draft {
  return Object.fromEntries(
    Object.entries({ lines, chocolate, chocolate_g, cream_g, total_g, formula, base, use, steps }).filter(
      ([, value]) => value !== undefined,
    ),
  );
}

/** Lines said beside the step: the step itself is none of them. */
const withoutStep = (lines: GanacheInputs["lines"], step_g: number) =>
  lines?.at(-1)?.grams === step_g ? lines.slice(0, -1) : lines;

/** "white ganache" where no chocolate is named. */
function kindOf(reading: Reading): Draft {
  const kind = reading.things.find((each) => each.chocolate)?.chocolate;
  if (kind) return { chocolate: kind };
  return says(reading, /\S*<color=white> \S*<base=ganache>/) ? { chocolate: "white" } : {};
}

/** "30 % fat", "with a fat content of 35 %". */
function shareSaid(reading: Reading): Draft | undefined {
  for (const each of reading.amounts) {
    if (each.dim !== "percent") continue;
    const behind = /^ ?(?:of )?(?:milk ?)?(fat|water|sugar)/.exec(reading.text.slice(each.at[1]))?.[1];
    const before = /(fat|water|sugar)(?: content| share)? (?:of|at|to|is)? ?$/.exec(
      reading.text.slice(0, each.at[0]),
    )?.[1];
    const toward =
      /(?:lower|raise|bring|get|cut|reduce|take) (?:the |its |my )?(fat|water|sugar)\b.* (?:down |up )?to $/.exec(
        reading.text.slice(0, each.at[0]),
      )?.[1];
    const part = behind ?? before ?? toward;
    if (part) return { part: part as "fat" | "water" | "sugar", target_percent: each.value };
  }
  return undefined;
}

/** "with 20 g less cream": a line of the mix before, or of the one that is named. */
function stepSaid(reading: Reading): NonNullable<GanacheInputs["steps"]>[number] | undefined {
  const more = [...reading.amounts].find(
    (each) => each.dim === "weight" && /^ (?:less|fewer|more|extra)\b/.test(reading.text.slice(each.at[1])),
  );
  const thing =
    more && reading.things.find((each) => each.at[0] >= more.at[1] && (each.ingredient || each.chocolate));
  if (!more || !thing) return undefined;
  const less = /^ (?:less|fewer)/.test(reading.text.slice(more.at[1]));
  return { name: nameOf(thing), grams: inBase(more.value, more.unit), does: less ? "less" : "more" };
}
