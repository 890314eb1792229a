/** The baker's own bottles: which one is meant, and the percentages on it. */
import type { Range } from "../../../data/rules/doses.ts";
import type { Bottle } from "../contract/index.ts";
import type { DoseInputs } from "./dose.ts";

/** "lemon", where the only bottle of lemon on the shelf is an oil: the oil is meant, at its own dose. */
export function ownForm(
  { bare, taste, dose = "flavor" }: DoseInputs,
  bottles: readonly Bottle[],
): { taste: string; form: string } | undefined {
  if (!bare || taste === undefined || dose !== "flavor") return undefined;
  const forms = new Set(bottles.filter((each) => each.taste === taste).map((each) => each.form ?? "flavor"));
  const [form] = forms;
  return forms.size === 1 && form !== undefined && form !== "flavor" ? { taste, form } : undefined;
}

/** The saved bottle of this taste; where a form was said, the bottle has to be of it. */
export function bottleFor(inputs: DoseInputs, bottles: readonly Bottle[]): Bottle | undefined {
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
export const strongFor = (inputs: DoseInputs, bottles: readonly Bottle[]): Bottle | undefined =>
  bottles.findLast(
    (bottle) =>
      bottle.taste === inputs.taste &&
      bottle.strength !== undefined &&
      bottle.low_percent === undefined &&
      (bottle.form === undefined || bottle.form === (inputs.dose ?? "flavor")),
  );

/** The range of a bottle with directions; where it only says how much at most, the table's as far as that. */
export function rangeOf(bottle: Bottle, table: Range | undefined): Range {
  const { low_percent: low = 0, high_percent: high = low } = bottle;
  if (low > 0) return [low, high];
  return table ? [Math.min(table[0], high), Math.min(table[1], high)] : [high, high];
}
