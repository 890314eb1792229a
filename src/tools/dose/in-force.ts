/** The percentages that a dose goes by, and where they come from: the table, the bottle, the notes, or what was said. */
import { type DoseRow, doseRows } from "../../../data/rules/doses.ts";
import { bases } from "../../../data/words/things.ts";
import type { Bottle, Item, Outcome, Rule, World } from "../contract/index.ts";
import { type BestDose, bestDose } from "../lib/best-dose.ts";
import { friendlyDay } from "../lib/days.ts";
import { listed, percent, plain } from "../lib/show.ts";
import type { DoseInputs } from "./dose.ts";
import { nameOf } from "./shown.ts";

const labelCaution = "The directions on your bottle are the limit.";

/** The percentages in force, and where they come from. */
export interface Dose {
  row: DoseRow;
  name: string;
  low: number;
  high: number;
  rule: Rule;
  base: string;
  assumed: string[];
  cautions: string[];
  items: Item[];
}

export const asking = (question: string, slot: string): Outcome => ({
  status: "asking",
  headline: question,
  question,
  slot,
});

/** The row, its column and what replaces it: a percentage that was said, or the baker's own bottle. */
export function find(said: DoseInputs, world: World): Dose | Outcome {
  const own = ownForm(said, world.bottles);
  const found = findRow(own ? { ...said, dose: own.form } : said, world);
  if (!own || "status" in found) return found;
  return { ...found, assumed: [`your ${own.taste} ${own.form} bottle`, ...found.assumed] };
}

/** "lemon", where the only bottle of lemon on the shelf is an oil: the oil is meant, at its own dose. */
function ownForm(
  { bare, taste, dose = "flavor" }: DoseInputs,
  bottles: readonly Bottle[],
): { taste: string; form: string } | undefined {
  if (!bare || taste === undefined || dose !== "flavor") return undefined;
  const forms = new Set(bottles.filter((each) => each.taste === taste).map((each) => each.form ?? "flavor"));
  const [form] = forms;
  return forms.size === 1 && form !== undefined && form !== "flavor" ? { taste, form } : undefined;
}

function findRow(inputs: DoseInputs, world: World): Dose | Outcome {
  const id = inputs.dose ?? "flavor";
  if (id === "color") return asking("Is it gel color or powder color?", "dose");
  if (id === "powder")
    return asking("Which powder is it: freeze-dried fruit, cocoa, tea or coffee?", "taste");
  const row = doseRows.find((each) => each.id === id);
  const isColor = / color$/.test(id);
  const base = inputs.base ?? (isColor ? "batter" : "buttercream");
  const name = nameOf(inputs, row);
  if (base === "batter" && (row?.liquid || id === "vanilla paste")) return liquidInBatter(name);
  const column = bases.find((each) => each.id === base)?.column ?? "any";
  const tableRange = row?.[column === "any" ? "buttercream" : column];
  const bottle = bottleFor(inputs, world.bottles);
  const own =
    bottle?.low_percent !== undefined
      ? rangeOf(bottle.low_percent, bottle.high_percent ?? bottle.low_percent, tableRange)
      : undefined;
  const strong = own ? undefined : strongFor(inputs, world.bottles);
  const strength = inputs.strength ?? strong?.strength ?? 1;
  const range = tableRange && ([tableRange[0] / strength, tableRange[1] / strength] as const);
  const said =
    inputs.percent !== undefined
      ? ([inputs.percent, inputs.percent_high ?? inputs.percent] as const)
      : undefined;
  const wantsRule = said === undefined;
  if (!row || (!range && !own && wantsRule))
    return {
      status: "declined",
      headline: `There is no rule for ${name} in ${base}, so I give no figure. Try a little, weigh it, and note what worked.`,
      cautions: [labelCaution],
    };
  const rated = bestDose({ taste: inputs.taste, row: row.id, base }, world);
  // Her usual dose stands where she asks for it, never over the directions of her own bottle.
  const usual = inputs.usual && !said && !own ? rated?.usual : undefined;
  const [low, high] = said ?? own ?? (usual && ([usual.percent, usual.percent] as const)) ?? range ?? [0, 0];
  const rule: Rule = usual
    ? {
        text: `${percent(low)} of the ${base}'s weight, your usual: your last ${usual.batches.length} batches rated ${listed(usual.batches.map((each) => plain(each.rating)))}`,
        basis: "your bench",
      }
    : own && !said
      ? {
          text: `${percent(low, high)} of the ${base}'s weight, ${bottle?.low_percent === 0 ? `at most ${percent(bottle.high_percent ?? 0)} by` : "from"} your ${bottle?.taste} bottle`,
          basis: "your bench",
        }
      : said
        ? {
            text: `${percent(low, high)} ${inputs.of_finished ? "of the finished weight" : `of the ${base}'s weight`}, as you said`,
            basis: "arithmetic",
          }
        : inputs.strength !== undefined
          ? {
              text: `${percent(...(tableRange ?? [0, 0]))} of the ${base}'s weight by the table, for a flavor ${plain(strength)} times as strong: ${percent(low, high)}`,
              basis: row.basis,
            }
          : strong
            ? {
                text: `${percent(...(tableRange ?? [0, 0]))} of the ${base}'s weight by the table, your ${strong.taste} bottle is ${plain(strength)} times as strong: ${percent(low, high)}`,
                basis: "your bench",
              }
            : { text: `${percent(low, high)} of the ${base}'s weight`, basis: row.basis };
  const assumed = [
    ...(inputs.bare && row.id === "flavor" && !own ? ["a concentrated flavor"] : []),
    ...(row.id === "oil" ? ["super strength oil"] : []),
    ...(row.id === "purée" ? ["reduced first"] : []),
    ...(inputs.base === undefined
      ? [`it goes into ${base}`]
      : column === "any"
        ? ["the filling is a buttercream"]
        : []),
    ...(inputs.usual && !usual && !said
      ? [
          own
            ? "your bottle's directions, before your usual dose"
            : "the table's range: no two liked batches agree on a dose yet",
        ]
      : []),
  ];
  const beyond =
    usual && range && (usual.percent < range[0] || usual.percent > range[1])
      ? [
          `The table has ${percent(...range)}; your usual is ${usual.percent > range[1] ? "over" : "under"} it.`,
        ]
      : [];
  const cautions = [...beyond, ...(row.caution ? [row.caution] : []), labelCaution];
  return { row, name, low, high, rule, base, assumed, cautions, items: pastNotes(inputs, rated, world) };
}

/** A bottle's range; where it only says how much at most, the table's as far as that. */
function rangeOf(
  low: number,
  high: number,
  table: readonly [number, number] | undefined,
): readonly [number, number] {
  if (low > 0) return [low, high];
  return table ? [Math.min(table[0], high), Math.min(table[1], high)] : [high, high];
}

const liquidInBatter = (name: string): Outcome => ({
  status: "answered",
  headline: `Leave ${name} out of the shell batter; flavor the filling instead.`,
  rule: {
    text: "no figure for liquid flavor in shell batter: the filling carries the flavor",
    basis: "common practice",
  },
  cautions: ["Liquid flavor upsets the batter: it can spread, crack or bake without feet."],
});

/** The saved bottle of this taste; where a form was said, the bottle has to be of it. */
function bottleFor(inputs: DoseInputs, bottles: readonly Bottle[]): Bottle | undefined {
  const row = inputs.dose ?? "flavor";
  if (/ color$/.test(row)) return colorBottle(row, inputs.hue, bottles);
  return bottles
    .filter(
      (bottle) =>
        bottle.taste === inputs.taste &&
        bottle.low_percent !== undefined &&
        (bottle.form === undefined || bottle.form === row),
    )
    .at(-1);
}

/** A color's bottle: of the hue that was said, else the one of any hue, else the only one where none was said. */
function colorBottle(row: string, hue: string | undefined, bottles: readonly Bottle[]): Bottle | undefined {
  const own = bottles.filter((each) => each.form === row && each.low_percent !== undefined);
  return (
    own.findLast((each) => hue !== undefined && each.taste === `${hue} ${row}`) ??
    own.findLast((each) => each.taste === row) ??
    (hue === undefined && own.length === 1 ? own[0] : undefined)
  );
}

/** A bottle of this taste with a strength and no directions: the table's range goes by it. */
const strongFor = (inputs: DoseInputs, bottles: readonly Bottle[]): Bottle | undefined =>
  bottles.findLast(
    (bottle) =>
      bottle.taste === inputs.taste &&
      bottle.strength !== undefined &&
      bottle.low_percent === undefined &&
      (bottle.form === undefined || bottle.form === (inputs.dose ?? "flavor")),
  );

/** Words on how strongly it tasted. */
const ofTaste =
  /\b(?:strong\w*|weak\w*|faint|intense|overpowering|overwhelming|bland|subtle|mild|sharp|too (?:much|little)|barely|could(?:nt|n't) taste|flavou?r\w*|taste\w*)\b/i;

/** What the baker's own notes say of this flavor, the newest first: beside the dose, never instead of it. */
function pastNotes(inputs: DoseInputs, rated: BestDose | undefined, world: World): Item[] {
  if (!inputs.taste) return [];
  const last = world.notes
    .filter(
      (note) =>
        !note.ignored &&
        note.flavors.includes(inputs.taste ?? "") &&
        (note.doses?.length || ofTaste.test(note.text)),
    )
    .slice(-1)
    .map((note) => ({
      date: note.date,
      flavors: note.flavors,
      text: note.text,
      ...(note.rating !== undefined ? { rating: note.rating } : {}),
    }));
  if (!rated) return last;
  const { best, usual } = rated;
  const day = friendlyDay(best.note.date, world.now_ms);
  return [
    ...last,
    {
      best: `${percent(best.percent)} ${inputs.taste}, rated ${plain(best.rating)} out of 10, ${day}`,
      ...(usual && !inputs.usual
        ? { your_bench: `${percent(usual.percent)} is your usual, in ${usual.batches.length} liked batches` }
        : {}),
    },
  ];
}
