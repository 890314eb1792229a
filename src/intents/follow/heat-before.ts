/** "and the 160?", behind an oven's heat and what that is in °F: the heat that was told before it, on that scale too. */
import type { Reading } from "../../tools/contract/index.ts";
import { spaced } from "./spaced.ts";
import type { State } from "./state.ts";

/** No home oven is hotter. From memory. */
const hottest = { c: 275, f: 530 };

/** Nothing but a number. */
const alone =
  /^(?:(?:and|so|ok|or|then|what about|how about|whats|what's|what is|what was|the|that|other|original|first|recipe'?s|for|is) )+#(?: (?:one|c|f|degrees|conventional|fan|oven|then|too|as well|instead|from before|the recipe says|,))*[ ?.!]*$/;

/** The sentence with both scales; undefined where the turn before turned no answer into degrees. Pure. */
export function heatBefore({ text, amounts, whens }: Reading, { last }: State): string | undefined {
  const [only, ...others] = amounts;
  const to = last?.tool === "convert" && last.inputs.that === true ? last.inputs.to : undefined;
  if ((to !== "°F" && to !== "°C") || !only || others.length > 0 || whens.length > 0) return undefined;
  const isHeat = only.dim === "temperature" || (only.dim === "number" && only.unit === "" && !only.fraction);
  const said = spaced(`${text.slice(0, only.at[0])}#${text.slice(only.at[1])}`.toLowerCase());
  if (!isHeat || !alone.test(said) || only.unit === to) return undefined;
  // of a number alone the scale is the other one, as far as an oven goes
  if (only.unit === "" && only.value > (to === "°F" ? hottest.c : hottest.f)) return undefined;
  return to === "°F" ? `${only.value} c in f` : `${only.value} f in c`;
}
