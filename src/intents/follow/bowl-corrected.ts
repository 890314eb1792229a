/** "one got 50 g too much so make it 550 g", behind a split of 600 g: the bowl's new weight, and why it is another. */
import type { Reading } from "../../tools/contract/index.ts";
import { inBase } from "../../tools/lib/units.ts";
import type { State } from "./state.ts";

const leadsToSum =
  /(?:\b(?:so|and|that|which)|,) (?:(?:lets|just|now|please|only|about) )*(?:(?:make|call|do|use) (?:it|that|them) (?:only |just |about )?|(?:its|it is|thats|that is|that makes(?: it)?|makes it|leaves|that leaves|theres|there is|only|now) )*$/;
const ends = /^(?: (?:now|then|please|left|instead|in all|in total|altogether|in the bowl|of it))*[ .!]*$/;

/** The bowl said plainly; undefined where the second weight is not the bowl with the first taken off or put to it. */
export function bowlCorrected({ text, amounts }: Reading, { last }: State): string | undefined {
  const total = last?.tool === "split" ? last.inputs.total_g : undefined;
  const [by, now, ...others] = amounts.filter((each) => each.dim === "weight");
  if (typeof total !== "number" || !by || !now || others.length > 0) return undefined;
  const [step, sum] = [inBase(by.value, by.unit), inBase(now.value, now.unit)];
  const isSum = [total - step, total + step].some((each) => Math.abs(each - sum) < 1e-6);
  return isSum && leadsToSum.test(text.slice(by.at[1], now.at[0])) && ends.test(text.slice(now.at[1]))
    ? `the bowl is only ${now.text}`
    : undefined;
}
