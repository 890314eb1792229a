/** Reads a label's ingredients, or a description to find allergens by: each way in its order. */
import type { Memory, Reading } from "../contract/index.ts";
import { nameOf } from "../lib/lines.ts";
import { gramsOf } from "../lib/units.ts";
import { firstOf } from "../lib/ways.ts";
import { amended } from "./amended.ts";
import { isAllergen } from "./composite.ts";
import { byDescription } from "./description-said.ts";
import { askedAgain, netAgain, printedAgain, rightWays, signed, usedBy } from "./said-anew.ts";
import { type Draft, type LabelTurn, type LabelWay, labelTurn } from "./turn.ts";
import { asksSafety, tellsOfSomebody } from "./want-said.ts";
import { asksToAdd, byWeight, withSaved } from "./weighed-said.ts";

const forSafety: LabelWay = ({ reading }) => (asksSafety.test(reading.text) ? { want: "safe" } : undefined);

/** "nut allergy at the party": somebody's, and nothing else is said of what is in them. */
const ofSomebody: LabelWay = ({ reading, foods, isAsked }) =>
  tellsOfSomebody(reading.text) &&
  reading.amounts.every((each) => each.dim !== "weight") &&
  foods.every((each) => isAsked(each) || isAllergen(each.text))
    ? { want: "safe" }
    : undefined;

/** Foods named beside recipes that are saved, whose names may hold a food themselves. */
const beside = ({ foods, isAsked, isRefused }: LabelTurn, formulas: readonly string[]): string[] =>
  foods
    .filter((each) => !isAsked(each) && !isRefused(each))
    .filter((each) => !formulas.some((name) => name.toLowerCase().includes(each.text)))
    .map(nameOf);

/** "label for my hazelnut praline", "allergens in lazy sunday plus pistachio paste": a recipe that is saved. */
const ofFormulas: LabelWay = (turn) => {
  const { formulas } = withSaved(turn.reading, turn.memory);
  if (!formulas) return undefined;
  const also = beside(turn, formulas);
  return { want: "label", ...turn.common, formulas, ...(also.length > 0 ? { also } : {}) };
};

/** "add pistachio to it", behind the label of a saved recipe. */
const addedToSaved: LabelWay = (turn) => {
  const { reading, memory, before, common } = turn;
  if (!memory.follows || !before?.formulas || !asksToAdd.test(reading.text)) return undefined;
  const also = beside(turn, before.formulas);
  return also.length > 0 && turn.lines.length === 0
    ? { ...before, ...common, also: [...new Set([...(before.also ?? []), ...also])] }
    : undefined;
};

/** "40 g", where it was asked how much of the one added food is in it. */
const weighedBeside: LabelWay = ({ reading, memory, before }) => {
  const [food, ...more] = before?.also ?? [];
  const [amount, ...others] = reading.amounts;
  if (memory.slot !== "lines" || !before || !food || more.length > 0 || !amount || others.length > 0)
    return undefined;
  const grams = gramsOf(amount);
  if (grams === undefined) return undefined;
  const { also: _asked, ...rest } = before;
  return { ...rest, lines: [...(before.lines ?? []), { name: food, grams }] };
};

const datesAlone: LabelWay = ({ want, common }) => (want === "dates" ? common : undefined);

/** "which allergens are in them", behind a filling: in the macarons, with their shells. */
const theFilled: LabelWay = ({ reading, memory: { table }, before, want, common }) => {
  const mix = table.filling ?? table.mass?.thing;
  const areThey = /(?:^| )(?:they|them|these|those|theyre)(?: |$)/.test(reading.mask);
  if (want !== "allergens" || before || !areThey || (mix !== "ganache" && mix !== "buttercream"))
    return undefined;
  const chocolates = (table.recipe ?? []).filter((each) => /chocolate/.test(each.name));
  return { ...common, want, mixes: ["shells", mix], named: chocolates.map(({ name }) => ({ name })) };
};

/** The recipe of the answer before. */
const ofTable: LabelWay = ({ things, memory, before, want, asked, common }) => {
  const { recipe } = memory.table;
  // of a filling alone: what is asked about are macarons, unless the filling is named
  const isFilling = want === "allergens" && !things.some((each) => each.base);
  return recipe?.length && !before
    ? {
        ...common,
        ...(isFilling ? { mixes: ["shells"] } : {}),
        ...(isFilling && asked.length > 0 ? { asked } : {}),
        want: want ?? "label",
        lines: recipe.map(({ name, grams }) => ({ name, grams })),
        from_table: true,
      }
    : undefined;
};

/** "does it have nuts", of the label before. */
const askedOfBefore: LabelWay = ({ memory, before, want, asked, common }) =>
  want === "allergens" && asked.length > 0 && memory.follows && before
    ? { ...before, ...common, asked }
    : undefined;

/** "egg free version?", of nothing before: of any macaron, whose shells are known. */
const ofAnyMacaron: LabelWay = ({ want, before, asked, common }) =>
  want === "allergens" && !before && asked.length > 0
    ? { ...common, want, mixes: ["shells"], asked }
    : undefined;

const ways: readonly LabelWay[] = [
  forSafety,
  ofSomebody,
  weighedBeside,
  ...rightWays,
  usedBy,
  amended,
  signed,
  askedAgain,
  byWeight,
  netAgain,
  printedAgain,
  addedToSaved,
  ofFormulas,
  datesAlone,
  byDescription,
  theFilled,
  ofTable,
  askedOfBefore,
  ofAnyMacaron,
];

export function readLabel(reading: Reading, memory: Memory): Draft {
  const turn = labelTurn(reading, memory);
  return firstOf(ways, turn) ?? turn.common;
}
