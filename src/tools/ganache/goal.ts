/** What a mix is to be brought to, as something that grams can be solved for. */
import type { Figure, Outcome } from "../contract/index.ts";
import { asking } from "../lib/asking.ts";
import {
  compose,
  compositionSource,
  type Line,
  saturation,
  sugarPerWater,
  waterActivity,
} from "../lib/composition.ts";
import { plain } from "../lib/show.ts";
import { activityRule } from "./activity.ts";
import { awFigure, sharesOf } from "./composition.ts";
import type { GanacheInputs } from "./ganache.ts";
import { activityGap, type Gap, shareGap } from "./toward.ts";

export interface Aim {
  value: number;
  gap: Gap;
  of(lines: readonly Line[]): number;
  /** As it is said; `fine` with a place more, where two values would look alike. */
  shown(value: number, fine?: boolean): string;
  rule: NonNullable<Outcome["rule"]>;
  figure(value: number): Figure;
}

/** The target as something that grams can be solved for; says why where nothing can reach it. */
export function aimOf({ target_aw, target_percent, part }: GanacheInputs): Aim | Outcome {
  if (target_aw !== undefined) {
    const ratio = sugarPerWater(target_aw);
    if (ratio === undefined)
      return {
        status: "impossible",
        headline: `By this formula no sugar brings it to ${plain(target_aw)}: saturated with sugar it stays at ${(waterActivity({ water_g: 1, sugar_g: saturation }) ?? 0).toFixed(3)}. Lower values are for a measurement, and other sugars, to show.`,
      };
    return {
      value: target_aw,
      gap: activityGap(ratio),
      of: (lines) => waterActivity(compose(lines)) ?? Number.NaN,
      shown: (aw, fine) => `a_w ${aw.toFixed(fine ? 3 : 2)}`,
      rule: activityRule,
      figure: awFigure,
    };
  }
  if (target_percent === undefined || part === undefined || part === "all")
    return asking("To which water activity, between 0.84 and 1?", "target_aw");
  return {
    value: target_percent,
    gap: shareGap(part, target_percent),
    of: (lines) => sharesOf(compose(lines))[part],
    shown: (share, fine) => `${plain(share, fine ? 2 : 1)} % ${part}`,
    rule: {
      text: `${part} summed from the table's rows, solved for ${plain(target_percent, 1)} % of the whole`,
      basis: "published",
      source: compositionSource,
    },
    figure: (share) => ({ name: part, value: share, unit: "%" }),
  };
}
