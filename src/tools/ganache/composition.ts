/** What a filling is made of and how free its water is: summed from the table, estimated by formula. */
import type { Outcome } from "../contract/index.ts";
import { awBand, compose, compositionSource, saturation, waterActivity } from "../lib/composition.ts";
import { listed, plain } from "../lib/show.ts";
import type { GanacheInputs } from "./ganache.ts";

/** The two published lines above which a filling needs time and temperature control. */
export const awLines = [
  { aw: 0.85, source: "21 CFR 114.3" },
  { aw: 0.88, source: "FDA Food Code 1-201.10, table B, at a pH above 5" },
] as const;

const authority =
  "An estimate replaces no measurement: before you keep or sell it unchilled, have it measured and ask the local food authority.";

export function answerComposition(inputs: GanacheInputs): Outcome {
  const lines = inputs.lines ?? [];
  if (lines.length === 0)
    return {
      status: "asking",
      headline: "What is in it, in grams? For example 110 g white chocolate, 70 g cream, 25 g butter.",
      question: "What is in it, in grams?",
      slot: "lines",
    };
  const sum = compose(lines);
  if (sum.unknown.length)
    return {
      status: "declined",
      headline: `I have no composition for ${listed(sum.unknown)}, so I can't add it up.`,
      cautions: [authority],
    };
  const share = (grams: number) => (grams / sum.grams) * 100;
  const aw = waterActivity(sum);
  const parts = { water: share(sum.water_g), fat: share(sum.fat_g), sugar: share(sum.sugar_g) };
  const verdict =
    aw === undefined
      ? ""
      : aw > 0.88
        ? "above both lines: perishable"
        : aw > 0.85
          ? "above the 0.85 line: treat it as perishable"
          : "below the lines, by an estimate alone";
  return {
    status: "answered",
    headline: `${aw === undefined ? "" : `a_w about ${aw.toFixed(2)} ± ${awBand}, an estimate, ${verdict}; `}water ${plain(parts.water, 1)} %, fat ${plain(parts.fat, 1)} %, sugar ${plain(parts.sugar, 1)} %`,
    figures: [
      ...(aw === undefined
        ? []
        : [{ name: "aw", value: aw, low: aw - awBand, high: aw + awBand, unit: "aw" }]),
      ...Object.entries(parts).map(([name, value]) => ({ name, value, unit: "%" })),
    ],
    rule: {
      text: `a_w = (1 − X) × exp(−6.47 X²), X the mole share of dissolved sugar, all counted as sucrose, at most ${saturation} g per g of water; lines at 0.85 (21 CFR 114.3) and 0.88 (Food Code 1-201.10)`,
      basis: "published",
      source: `Norrish 1966, sucrose K = 6.47; Mohos, Confectionery and Chocolate Engineering, table A2.2; ${compositionSource}`,
    },
    assumed: ["an estimate: all sugars counted as sucrose, which errs toward perishable"],
    cautions: ["Keep it at 5 °C (41 °F) or below.", authority],
    working: [
      `in ${plain(sum.grams)} g: water ${plain(sum.water_g)} g, fat ${plain(sum.fat_g)} g, sugar ${plain(sum.sugar_g)} g`,
      `dissolved sugar ${plain(Math.min(sum.sugar_g, saturation * sum.water_g))} g`,
      ...(aw === undefined ? [] : [`a_w = ${plain(aw, 4)}`]),
    ],
    leaves: {
      mass: { grams: sum.grams, thing: "ganache" },
      recipe: lines.map(({ name, grams }) => ({ name, grams })),
    },
  };
}
