/** The percentages that a dose goes by, and where they come from: the table, the bottle, the notes, or what was said. */
import { type DoseRow, doseRows, type Range } from "../../../data/rules/doses.ts";
import { bases } from "../../../data/words/things.ts";
import type { Bottle, Item, Outcome, Rule, World } from "../contract/index.ts";
import { type BestDose, bestDose } from "../lib/best-dose.ts";
import { listed, percent, plain } from "../lib/show.ts";
import { firstOf, type Way } from "../lib/ways.ts";
import type { DoseInputs } from "./dose.ts";
import { bottleFor, ownForm, rangeOf, strongFor } from "./own-bottle.ts";
import { pastNotes } from "./past-notes.ts";
import { nameOf } from "./shown.ts";

const labelCaution = "The directions on your bottle are the limit.";

/** The percentages in force, and where they come from. */
export interface Dose {
  row: DoseRow;
  name: string;
  low: number;
  high: number;
  /** The range that `low` and `high` are one end of, where one was asked for. */
  whole?: Range;
  /** The range that would be in force, where she has said a percentage of her own. */
  beside?: { range: Range; of: string };
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

/** What the percentages may come from. */
interface Sources {
  inputs: DoseInputs;
  row: DoseRow;
  base: string;
  /** The table's range, and the same by how strong the flavor is. */
  table?: Range;
  byStrength?: Range;
  /** Her bottle with directions, and its range. */
  bottle?: Bottle;
  directions?: Range;
  /** Her bottle with a strength alone. */
  strong?: Bottle;
  /** The dose of her liked batches, where she asks for it. */
  usual?: BestDose["usual"];
}

/** The percentages, and the rule that has them. */
type Source = Way<Sources, { range: Range; rule: Rule }>;

const asSaid: Source = ({ inputs, base }) => {
  if (inputs.percent === undefined) return undefined;
  const range = [inputs.percent, inputs.percent_high ?? inputs.percent] as const;
  const whole = inputs.of_finished ? "of the finished weight" : `of the ${base}'s weight`;
  return { range, rule: { text: `${percent(...range)} ${whole}, as you said`, basis: "arithmetic" } };
};

const byBottle: Source = ({ base, bottle, directions }) => {
  if (!bottle || !directions) return undefined;
  const whose = bottle.low_percent === 0 ? `at most ${percent(bottle.high_percent ?? 0)} by` : "from";
  const text = `${percent(...directions)} of the ${base}'s weight, ${whose} your ${bottle.taste} bottle`;
  return { range: directions, rule: { text, basis: "your bench" } };
};

/** Her usual dose stands where she asks for it, never over the directions of her own bottle. */
const byNotes: Source = ({ base, usual }) => {
  if (!usual) return undefined;
  const ratings = listed(usual.batches.map((each) => plain(each.rating)));
  const text = `${percent(usual.percent)} of the ${base}'s weight, your usual: your last ${usual.batches.length} batches rated ${ratings}`;
  return { range: [usual.percent, usual.percent], rule: { text, basis: "your bench" } };
};

const byTable: Source = ({ inputs, row, base, table, byStrength, strong }) => {
  if (!table || !byStrength) return undefined;
  const ofTable = `${percent(...table)} of the ${base}'s weight`;
  const range = byStrength;
  if (inputs.strength !== undefined) {
    const text = `${ofTable} by the table, for a flavor ${plain(inputs.strength)} times as strong: ${percent(...range)}`;
    return { range, rule: { text, basis: row.basis } };
  }
  if (strong) {
    const text = `${ofTable} by the table, your ${strong.taste} bottle is ${plain(strong.strength ?? 1)} times as strong: ${percent(...range)}`;
    return { range, rule: { text, basis: "your bench" } };
  }
  return { range, rule: { text: ofTable, basis: row.basis } };
};

/** What was said goes before the bottle, that before the notes, those before the table. */
const sources: readonly Source[] = [asSaid, byBottle, byNotes, byTable];

function findRow(inputs: DoseInputs, world: World): Dose | Outcome {
  const id = inputs.dose ?? "flavor";
  if (id === "color") return asking("Is it gel color or powder color?", "dose");
  if (id === "powder")
    return asking("Which powder is it: freeze-dried fruit, cocoa, tea or coffee?", "taste");
  if (id === "paste")
    return asking(
      "Which paste is it: vanilla bean paste, nut paste or a fruit's? Each has its own dose.",
      "dose",
    );
  const row = doseRows.find((each) => each.id === id);
  const base = inputs.base ?? (/ color$/.test(id) ? "batter" : "buttercream");
  const name = nameOf(inputs, row);
  if (base === "batter" && (row?.liquid || id === "vanilla paste")) return liquidInBatter(name);
  const column = bases.find((each) => each.id === base)?.column ?? "any";
  const table = row?.[column === "any" ? "buttercream" : column];
  const bottle = bottleFor(inputs, world.bottles);
  const directions = bottle && rangeOf(bottle, table);
  const strong = bottle ? undefined : strongFor(inputs, world.bottles);
  const strength = inputs.strength ?? strong?.strength ?? 1;
  const byStrength = table && ([table[0] / strength, table[1] / strength] as const);
  if (!row) return noRule(name, base);
  const rated = bestDose({ taste: inputs.taste, row: row.id, base }, world);
  // what she likes stands in for the table's range, and where there is none for nothing
  const isByTable = table !== undefined && inputs.percent === undefined && !directions;
  const usual = inputs.usual && isByTable ? rated?.usual : undefined;
  const source = firstOf(sources, {
    inputs,
    row,
    base,
    table,
    byStrength,
    bottle,
    directions,
    strong,
    usual,
  });
  if (!source) return noRule(name, base);
  const { range, rule } = source;
  const [low, high] = range;
  const assumed = [
    ...(inputs.bare && row.id === "flavor" && !directions ? ["a concentrated flavor"] : []),
    ...(row.id === "oil" ? ["super strength oil"] : []),
    ...(row.id === "purée" ? ["reduced first"] : []),
    ...(inputs.base === undefined ? [`it goes into ${base}`] : []),
    ...(inputs.base !== undefined && column === "any" ? ["the filling is a buttercream"] : []),
    ...(inputs.usual && !usual && inputs.percent === undefined ? [whyNotUsual(directions)] : []),
  ];
  const cautions = [
    ...(usual && byStrength ? besideTable(usual.percent, byStrength) : []),
    ...(row.caution ? [row.caution] : []),
    labelCaution,
  ];
  const known = inputs.percent === undefined ? undefined : (directions ?? byStrength);
  const beside = known ? { beside: { range: known, of: directions ? "your bottle" : "the table" } } : {};
  return {
    row,
    name,
    low,
    high,
    ...beside,
    rule,
    base,
    assumed,
    cautions,
    items: pastNotes(inputs, rated, world),
  };
}

const whyNotUsual = (directions: Range | undefined): string =>
  directions
    ? "your bottle's directions, before your usual dose"
    : "the table's range: no two liked batches agree on a dose yet";

/** Her usual dose lies outside of the table's range. */
const besideTable = (usual: number, range: Range): string[] =>
  usual < range[0] || usual > range[1]
    ? [`The table has ${percent(...range)}; your usual is ${usual > range[1] ? "over" : "under"} it.`]
    : [];

const noRule = (name: string, base: string): Outcome => ({
  status: "declined",
  headline: `There is no rule for ${name} in ${base}, so I give no figure. Try a little, weigh it, and note what worked.`,
  cautions: [labelCaution],
});

const liquidInBatter = (name: string): Outcome => ({
  status: "answered",
  headline: `Leave ${name} out of the shell batter; flavor the filling instead.`,
  rule: {
    text: "no figure for liquid flavor in shell batter: the filling carries the flavor",
    basis: "common practice",
  },
  cautions: ["Liquid flavor upsets the batter: it can spread, crack or bake without feet."],
});
