/** The book's ratios of chocolate to cream, and what a ratio is good for. */
import { type Chocolate, type RatioRow, ratios, type Use, useNames } from "../../../data/rules/ganache.ts";
import type { Outcome, Rule } from "../contract/index.ts";
import { listed, plain } from "../lib/show.ts";

/** Ratios and weights closer than this are the same: no more than sums and quotients of floats leave behind. */
export const noise = 1e-9;

export const keepFilledCold =
  "Keep ganache-filled macarons cold, at 5 °C (41 °F) or below; your local food authority has the last word.";

export const ruleOf = (chocolate: Chocolate, use: Use, row: RatioRow): Rule => ({
  text: `${chocolate} chocolate : cream ${plain(row.ratio)} : 1 for ${use === "piping" ? use : `a ${use} one`} (${plain(row.low)}-${plain(row.high)} : 1)`,
  basis: row.basis,
  ...(row.source ? { source: row.source } : {}),
});

/** Which use a ratio suits: the nearest default by the logarithm, and both where two are as near. */
export function usesOf(ratio: number, chocolate: Chocolate): Use[] {
  const apart = (Object.keys(ratios[chocolate]) as Use[]).map((use) => ({
    use,
    by: Math.abs(Math.log(ratio / ratios[chocolate][use].ratio)),
  }));
  const least = Math.min(...apart.map((each) => each.by));
  return apart.filter((each) => each.by - least < noise).map((each) => each.use);
}

/** "piping or a firm ganache". */
export const goodFor = (uses: readonly Use[]): string =>
  listed(
    uses.map((use) => useNames[use]),
    "or",
  );

/** Where a ratio lies to the range of a use, whichever default is nearest. */
export const placeIn = (ratio: number, { low, high }: RatioRow): "under" | "over" | "within" =>
  ratio < low - noise ? "under" : ratio > high + noise ? "over" : "within";

/** What a ganache of so many grams leaves on the table. */
export const leftOf = (grams: number, chocolate: Chocolate | undefined): NonNullable<Outcome["leaves"]> => ({
  mass: { grams, thing: "ganache" },
  ...(chocolate ? { chocolate } : {}),
  filling: "ganache",
});
