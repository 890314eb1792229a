/** What a filling is made of and how free its water is: summed from the table, estimated by formula. */
import type { Figure, Outcome, World } from "../contract/index.ts";
import { asking } from "../lib/asking.ts";
import {
  awBand,
  type Composition,
  compose,
  type Line,
  saturation,
  waterActivity,
} from "../lib/composition.ts";
import { listed, plain } from "../lib/show.ts";
import { activityRule, authority, estimateNote, keepCold, verdictOf } from "./activity.ts";
import type { GanacheInputs } from "./ganache.ts";
import { type Mix, mixOf } from "./mix.ts";

export function answerComposition(inputs: GanacheInputs, world: World): Outcome {
  const mix = mixOf(inputs, world);
  return "status" in mix ? mix : composed(mix, inputs.part);
}

/** No composition for one of them, or nothing weighed: no sum, no figure. */
export const unknownIn = (lines: readonly Line[]): Outcome | undefined => {
  const { unknown, grams } = compose(lines);
  if (!(grams > 0 && Number.isFinite(grams)))
    return asking("What is in it, in grams? For example 200 g dark chocolate, 100 g cream.", "lines");
  return unknown.length === 0
    ? undefined
    : {
        status: "declined",
        headline: `I have no composition for ${listed(unknown)}, so I can't add it up.`,
        cautions: [authority],
      };
};

/** Shares of the whole in %, as figures name them. */
export const sharesOf = (sum: Composition) => ({
  water: (sum.water_g / sum.grams) * 100,
  fat: (sum.fat_g / sum.grams) * 100,
  sugar: (sum.sugar_g / sum.grams) * 100,
});

export const awFigure = (aw: number): Figure => ({
  name: "aw",
  value: aw,
  low: aw - awBand,
  high: Math.min(1, aw + awBand),
  unit: "aw",
});

const isSaturated = ({ sugar_g, water_g }: Composition) => water_g > 0 && sugar_g > saturation * water_g;

/** Source: University of Minnesota Extension 2019, unofficial measurements. */
const saturatedNote =
  "its water is saturated with sugar, where the formula ends: it may lie lower (powdered-sugar butter frosting was measured at 0.80-0.81)";

function composed({ lines, assumed, thing }: Mix, part: GanacheInputs["part"]): Outcome {
  const missing = unknownIn(lines);
  if (missing) return missing;
  const sum = compose(lines);
  const aw = waterActivity(sum);
  const shares = sharesOf(sum);
  const said =
    aw === undefined ? [] : [`a_w about ${aw.toFixed(2)} ± ${awBand}, an estimate, ${verdictOf(aw)}`];
  const made = `water ${plain(shares.water, 1)} %, fat ${plain(shares.fat, 1)} %, sugar ${plain(shares.sugar, 1)} %`;
  return {
    status: "answered",
    headline: (part === undefined ? [...said, made] : [made, ...said]).join("; "),
    figures: [
      ...(aw === undefined ? [] : [awFigure(aw)]),
      ...Object.entries(shares).map(([name, value]) => ({ name, value, unit: "%" })),
    ],
    rule: activityRule,
    assumed: [...assumed, estimateNote, ...(isSaturated(sum) ? [saturatedNote] : [])],
    cautions: [keepCold, authority],
    working: [
      `in ${plain(sum.grams)} g: water ${plain(sum.water_g)} g, fat ${plain(sum.fat_g)} g, sugar ${plain(sum.sugar_g)} g`,
      `dissolved sugar ${plain(Math.min(sum.sugar_g, saturation * sum.water_g))} g`,
      ...(aw === undefined ? [] : [`a_w = ${plain(aw, 4)}`]),
    ],
    leaves: {
      mass: { grams: sum.grams, thing },
      recipe: lines.map(({ name, grams }) => ({ name, grams })),
    },
  };
}
