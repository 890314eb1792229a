/** "minus 10", "5 more", behind an amount in another unit: that amount so much less or more, in the same unit again. */
import { opening } from "../../../data/words/openers.ts";
import type { Reading } from "../../tools/contract/index.ts";
import { inBase, unitRow } from "../../tools/lib/units.ts";
import { spaced } from "./spaced.ts";
import type { State } from "./state.ts";

const number = "(\\d+(?:\\.\\d+)?)";
const unit = "( ?(?:degrees?|deg|°)?(?: ?[cf])?| ?[a-z]{1,6})";
const tail =
  "(?: (?:off|off (?:it|that)|from (?:it|that)|to (?:it|that)|then|please|instead|of (?:it|that)))*[ ?.!]*$";
const down =
  "(?:minus|less|take off|take away|knock off|knock|take|drop it by|drop it|lower it by|turn it down(?: by)?|down|subtract|reduce it by|go down)";
const up = "(?:plus|add|raise it by|turn it up(?: by)?|up|increase it by|go up|put on)";
const another = "(?:another |a further |a bit more, )?";
let known: { less: RegExp[]; more: RegExp[] } | undefined;

const patterns = () => ({
  less: [
    new RegExp(`^${opening}${down} ${another}${number}${unit}${tail}`),
    new RegExp(`^${opening}${another}${number}${unit} (?:less|lower|cooler|colder|down|lighter|off)${tail}`),
  ],
  more: [
    new RegExp(`^${opening}${up} ${another}${number}${unit}${tail}`),
    new RegExp(`^${opening}${another}${number}${unit} (?:more|higher|hotter|warmer|up|heavier|extra)${tail}`),
  ],
});

/** Below it "minus 18" is the cold itself, and nothing taken off. In °C and °F. */
const leastHeat: Readonly<Record<string, number>> = { "°C": 60, "°F": 140 };

/** The units that the words after a number may say: nothing, or the one that was spoken of. */
const isSame = (said: string, of: string): boolean => {
  const plain = said.trim().replace(/^(?:degrees?|deg|°) ?/, "");
  return plain === "" || plain === of.replace("°", "").toLowerCase() || (of === "g" && /^gram/.test(plain));
};

/** "minus 50", behind 500 g in ounces: more than all of the answer, so it is of what was turned. */
function isOfSource(step: number, value: number, of: string, to: unknown): boolean {
  if (typeof to !== "string") return false;
  // so few are cups, so many are grams, whichever of them was turned
  if (unitRow(of).dim !== unitRow(to).dim) return unitRow(of).dim === "weight" ? step >= 10 : step < 10;
  return step > inBase(value, of) / unitRow(to).per;
}

/** The amount put plainly; undefined where none is meant. */
export function moved(reading: Reading, { last }: State): string | undefined {
  if (last?.tool !== "convert" || reading.amounts.length !== 1 || reading.things.some((each) => !each.unit))
    return undefined;
  const { value, high, unit: of, to, ingredient, oven, sum } = last.inputs;
  if (typeof value !== "number" || typeof of !== "string" || high !== undefined || sum !== undefined)
    return undefined;
  if (of === "large" || (typeof to !== "string" && typeof oven !== "string")) return undefined;
  const heat = leastHeat[of];
  const text = spaced(reading.text.replace(/-(?=\d)/, "minus "));
  // "and minus 18": a freezer's, where it is joined on
  if (heat !== undefined && (value < heat || /^(?:and|or|what about|how about) minus/.test(text)))
    return undefined;
  // "minus 18 c" is a temperature
  if (heat !== undefined && /^minus \d+(?:\.\d+)? ?(?:degrees? |deg |°)?[cf]\b/.test(text)) return undefined;
  known ??= patterns();
  const find = (some: readonly RegExp[]) => some.map((each) => each.exec(text)).find((each) => each !== null);
  const [less, more] = [find(known.less), find(known.more)];
  const found = less ?? more;
  const [, said = "", unitSaid = ""] = found ?? [];
  if (!found || !isSame(unitSaid, of)) return undefined;
  const now = Math.round((value + (less ? -1 : 1) * Number(said)) * 1e6) / 1e6;
  if (heat === undefined && (now <= 0 || !isOfSource(Number(said), value, of, to))) return undefined;
  // "add 20 to it", behind one cup in grams: of the grams that came out
  const isOfResult = heat === undefined && unitSaid.trim() === "" && to === "g" && Number(said) > 3 * value;
  if (isOfResult && /\b(?:it|that|this)\b/.test(text)) return undefined;
  const what = typeof ingredient === "string" ? ` ${ingredient}` : "";
  const target =
    typeof to === "string" ? ` in ${to.replace("°", "").toLowerCase()}` : ` in a ${String(oven)} oven`;
  return `${now} ${of.replace("°", "").toLowerCase()}${what}${target}`;
}
