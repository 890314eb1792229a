/** "how many out of the 540", behind the filling for what 540 g of batter made: macarons again, of the size that is said. */
import type { Reading } from "../../tools/contract/index.ts";
import { inBase } from "../../tools/lib/units.ts";
import type { State } from "./state.ts";

const asksMany = /\bhow many\b/;
const outOf = /\b(?:out of|from|of|in|with|get out of) (?:all )?(?:the |that |my |those )?$/;

/** Undefined where the number isn't that of the batter before. Pure. */
export function outOfBatter(
  { text, amounts, things }: Reading,
  { last, past = [] }: State,
): string | undefined {
  if (!last || last.tool === "split") return undefined;
  const sizes = amounts.filter(({ dim }) => dim === "length");
  const [only, ...others] = amounts.filter((each) => !sizes.includes(each));
  if (!only || others.length > 0 || sizes.length > 1 || !asksMany.test(text)) return undefined;
  if (
    things.some(
      ({ base, count }) => (base && base !== "batter") || (count && !/^(?:macarons|shells)$/.test(count)),
    )
  )
    return undefined;
  const isSaid =
    outOf.test(text.slice(0, only.at[0])) &&
    (only.dim === "weight" || (only.dim === "number" && only.unit === ""));
  if (!isSaid || only.fraction) return undefined;
  const grams = only.dim === "weight" ? inBase(only.value, only.unit) : only.value;
  const made = past.findLast(({ tool, inputs }) => tool === "shells" && inputs.batter_g === grams);
  // what is right behind the batter is read there
  if (!made || (last.tool === "shells" && only.dim === "weight")) return undefined;
  const size =
    sizes[0]?.text ?? (typeof made.inputs.diameter_mm === "number" ? `${made.inputs.diameter_mm} mm` : "");
  return `how many ${things.some(({ count }) => count === "shells") ? "shells" : "macarons"}${size ? ` of ${size}` : ""} from ${grams} g batter`;
}
