/** A ratio judged: what it is good for, and whether it is right for what was meant. */
import { type Chocolate, type RatioRow, ratios, type Use, useNames } from "../../../data/rules/ganache.ts";
import type { Outcome } from "../contract/index.ts";
import { plain } from "../lib/show.ts";
import { goodFor, keepFilledCold, leftOf, placeIn, ruleOf, usesOf } from "./book-ratio.ts";

/** "is 1:1 dark ganache ok for piping": where a ratio lies to the book's range, or what it is good for. */
export function judged(ratio: number, chocolate: Chocolate, use: Use | undefined): Outcome {
  if (!use) {
    const uses = usesOf(ratio, chocolate);
    return {
      status: "answered",
      headline: `${plain(ratio)} : 1, good for ${goodFor(uses)}`,
      figures: [{ name: "ratio", value: ratio, unit: ":1" }],
      rule: ruleOf(chocolate, uses[0] as Use, ratios[chocolate][uses[0] as Use]),
      cautions: [keepFilledCold],
    };
  }
  const row = ratios[chocolate][use];
  return {
    status: "answered",
    headline: `${plain(ratio)} : 1 is ${placeIn(ratio, row)} the ${plain(row.low)}-${plain(row.high)} : 1 of ${chocolate} chocolate ${useNames[use]}`,
    figures: [{ name: "ratio", value: ratio, low: row.low, high: row.high, unit: ":1" }],
    rule: ruleOf(chocolate, use, row),
    cautions: [keepFilledCold],
  };
}

/** "what ratio for a milk ganache I can pipe": the table's own figure. */
export const ratioOf = (chocolate: Chocolate, use: Use, row: RatioRow, assumed: boolean): Outcome => ({
  status: "answered",
  headline: `${plain(row.ratio)} : 1, ${chocolate} chocolate to cream by weight, for ${useNames[use]}`,
  figures: [{ name: "ratio", value: row.ratio, low: row.low, high: row.high, unit: ":1" }],
  rule: ruleOf(chocolate, use, row),
  ...(assumed ? { assumed: [`for ${use}`] } : {}),
  cautions: [keepFilledCold],
});

/** "200 g dark and 160 g cream, what is that good for". */
export function check(
  chocolate_g: number,
  cream_g: number,
  chocolate: Chocolate,
  asked: Use | undefined,
): Outcome {
  if (cream_g <= 0) return { status: "impossible", headline: "Without cream there is no ganache to judge." };
  const ratio = chocolate_g / cream_g;
  const uses = usesOf(ratio, chocolate);
  const near = uses.map((use) => `${use} ${plain(ratios[chocolate][use].ratio)}`).join(", ");
  return {
    status: "answered",
    headline: `${plain(ratio)} : 1, good for ${goodFor(uses)}${asked && !uses.includes(asked) ? `; ${forUse(ratio, asked, ratios[chocolate][asked])}` : ""}`,
    figures: [
      { name: "ratio", value: ratio, unit: ":1" },
      { name: "total", value: chocolate_g + cream_g, unit: "g" },
    ],
    rule: { text: `nearest ratio for ${chocolate} chocolate: ${near} : 1`, basis: "common practice" },
    cautions: [keepFilledCold],
    working: [
      `ratio = ${plain(chocolate_g)} / ${plain(cream_g)} = ${plain(ratio, 3)}`,
      `nearest by the logarithm: ${near}`,
    ],
    leaves: leftOf(chocolate_g + cream_g, chocolate),
  };
}

/** "is it ok for piping", of one that is nearer to another use. */
const forUse = (ratio: number, use: Use, row: RatioRow): string =>
  `for ${use} it is ${placeIn(ratio, row)} the ${plain(row.low)} to ${plain(row.high)} : 1`;
