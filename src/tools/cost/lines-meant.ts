/** Weighed lines that a question of money points to without naming their prices. */
import { houseFormula } from "../../../data/rules/shells.ts";
import { pointsBack, says } from "../lib/find.ts";
import { inBase } from "../lib/units.ts";
import { firstOf, type Way } from "../lib/ways.ts";
import type { Draft, Lines, Told } from "./draft.ts";
import { oneLine } from "./one-line.ts";

/** "plus 150 g whites at 5 a kilo", on top of what was priced before. */
const onTop = ({ reading: { text }, draft: { lines }, before }: Told): Lines | undefined =>
  lines &&
  before.lines &&
  /^(?:(?:and|ok|oh|also|i|ah|wait|no) )*(?:plus|add|with|also|forgot|left out|missed) /.test(text)
    ? [...before.lines.filter(({ name }) => !lines.some((each) => each.name === name)), ...lines]
    : undefined;

/** "what does 200 g of it cost", behind a price that was saved. */
function ofShelf({ reading, memory: { last }, draft }: Told): Lines | undefined {
  if (draft.lines || last?.tool !== "shelf" || !pointsBack(reading)) return undefined;
  const [saved, ...others] = (last.inputs.entries as { name: string }[] | undefined) ?? [];
  const weight = reading.amounts.find((each) => each.dim === "weight" && !each.of);
  return saved?.name && others.length === 0 && weight
    ? [{ name: saved.name, grams: inBase(weight.value, weight.unit) }]
    : undefined;
}

/** "what does it cost", of the recipe that lies on the table. */
const ofTable = ({ reading, memory: { table, last }, draft }: Told): Lines | undefined =>
  table.recipe?.length &&
  !draft.lines &&
  draft.cost === undefined &&
  draft.ingredients === undefined &&
  last?.tool !== "cost" &&
  pointsBack(reading) &&
  says(reading, /cost|come to|run me/)
    ? table.recipe.map(({ name, grams }) => ({ name, grams }))
    : undefined;

/** "what does one house batch cost": the house formula once. */
const ofHouse = ({ reading: { text }, draft }: Told): Lines | undefined =>
  !draft.lines &&
  draft.cost === undefined &&
  /\b(?:one|a|the|per) house (?:batch|recipe|formula)\b/.test(text)
    ? houseFormula.map(({ name, parts }) => ({ name, grams: parts }))
    : undefined;

const ways: readonly Way<Told, Lines>[] = [onTop, ofShelf, oneLine, ofTable, ofHouse];

/** The lines meant, or those that the sentence says itself. */
export function linesMeant(turn: Told): Pick<Draft, "lines"> {
  const lines = firstOf(ways, turn);
  return lines ? { lines } : {};
}
