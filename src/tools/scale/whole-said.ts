/** A weight of all of it together: "900 g all in all", "so that everything together weighs 465". */
import { ofAllBefore, ofAllBehind } from "../../../data/words/amount-talk.ts";
import type { Amount, Reading } from "../contract/index.ts";
import { gramsOf } from "../lib/units.ts";

/** No recipe that is scaled weighs so little; under it a bare number is a count or a factor. */
const leastBare_g = 25;

const isLoose = ({ dim, unit, value, fraction, of }: Amount): boolean =>
  (!of || of.base !== undefined) &&
  (dim === "weight" || (dim === "number" && unit === "" && !fraction && value >= leastBare_g));

/** g; undefined where no weight, or the weight of one ingredient, was said so. */
export function wholeSaid({ amounts, text }: Reading): number | undefined {
  const said = amounts.find(
    (each) =>
      isLoose(each) &&
      (ofAllBehind.test(text.slice(each.at[1])) || ofAllBefore.test(text.slice(0, each.at[0]))),
  );
  return said && gramsOf(said);
}
