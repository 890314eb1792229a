/** Parts as they are shown may come to a gram more or less than the bowl: then the sum is written out, to a finer step. */
import { plain, weight } from "../lib/show.ts";

/** Finer than that no part is written out, unless her scale reads finer. */
const tenth = 0.1;

/**
 * Each part in steps that make the whole: all cut off, and those that lost most get a step more.
 * @returns in g, undefined where the whole is no number of such steps
 */
export function stepped(parts: readonly number[], total: number, step: number): number[] | undefined {
  const whole = Math.round(total / step);
  if (Math.abs(whole * step - total) > 1e-6) return undefined;
  const cut = parts.map((each) => Math.floor(each / step + 1e-9));
  const missing = whole - cut.reduce((sum, each) => sum + each, 0);
  const most = parts
    .map((each, at) => ({ at, lost: each / step - (cut[at] ?? 0) }))
    .sort((a, b) => b.lost - a.lost)
    .slice(0, Math.max(0, missing))
    .map(({ at }) => at);
  return cut.map((each, at) => (each + (most.includes(at) ? 1 : 0)) * step);
}

/** ": 257.5 + 257.5 = 515 g" where what is shown doesn't come to what is in the bowl; else nothing. */
export function sumShown(parts: readonly number[], scale_g: number | undefined): string {
  const total = parts.reduce((sum, each) => sum + each, 0);
  const shown = parts.reduce((sum, each) => sum + Number(weight(each, scale_g)), 0);
  if (parts.length > 12 || Math.abs(shown - Number(weight(total, scale_g))) < 1e-6) return "";
  const steps = stepped(parts, total, scale_g ?? tenth);
  return steps ? `: ${steps.map((each) => plain(each)).join(" + ")} = ${plain(total)} g` : "";
}
