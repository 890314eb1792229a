/** A ganache that is too loose or too stiff: what to add. */
import type { Chocolate, RatioRow, Use } from "../../../data/rules/ganache.ts";
import type { Outcome, World } from "../contract/index.ts";
import { asking } from "../lib/asking.ts";
import { plain, weight } from "../lib/show.ts";
import { keepFilledCold, leftOf, noise, ruleOf } from "./book-ratio.ts";
import type { GanacheInputs } from "./ganache.ts";

/** How much chocolate or cream brings one that was weighed to the book's ratio. */
export function mend(
  inputs: GanacheInputs,
  chocolate: Chocolate,
  use: Use,
  row: RatioRow,
  world: World,
): Outcome {
  const { chocolate_g, cream_g } = inputs;
  if (chocolate_g === undefined) return asking("How many grams of chocolate are in it?", "chocolate_g");
  if (cream_g === undefined) return asking("How many grams of cream are in it?", "cream_g");
  const loose = inputs.fault !== "stiff";
  const add_g = loose ? row.ratio * cream_g - chocolate_g : chocolate_g / row.ratio - cream_g;
  const what = loose ? "chocolate" : "cream";
  const formula = loose
    ? `${plain(row.ratio)} × ${plain(cream_g)} − ${plain(chocolate_g)}`
    : `${plain(chocolate_g)} / ${plain(row.ratio)} − ${plain(cream_g)}`;
  const rule = ruleOf(chocolate, use, row);
  if (add_g <= noise)
    return {
      status: "answered",
      headline: loose
        ? "The ratio isn't the cause: chill it, 30-60 min in the fridge, before you judge it."
        : "The ratio isn't the cause: warm it gently and stir, then let it come to room temperature.",
      rule,
      leaves: leftOf(chocolate_g + cream_g, chocolate),
      working: [`${what} to add = ${formula} = ${plain(add_g)} g, not above zero`],
    };
  const total = chocolate_g + cream_g + add_g;
  const { have_g } = inputs;
  const now = have_g !== undefined && have_g < add_g - noise ? have_g : undefined;
  const ratioNow =
    now === undefined ? 0 : loose ? (chocolate_g + now) / cream_g : chocolate_g / (cream_g + now);
  const enough =
    have_g === undefined
      ? ""
      : now === undefined
        ? `: ${plain(have_g)} g is enough`
        : `: with ${plain(now)} g it comes to ${plain(ratioNow)} : 1 of the ${plain(row.ratio)} : 1`;
  return {
    status: "answered",
    headline: `Add ${weight(add_g, world.bench.scale_g)} g ${what}${enough}`,
    figures: [
      { name: `add ${what}`, value: add_g, unit: "g" },
      { name: "total", value: total, unit: "g" },
    ],
    rule: {
      ...rule,
      text: `${rule.text}; ${loose ? "chocolate to add = ratio × cream − chocolate" : "cream to add = chocolate / ratio − cream"}`,
    },
    ...(inputs.use ? {} : { assumed: [`for ${use}`] }),
    cautions: [
      loose
        ? "Melt the chocolate first and stir it in warm, from the center."
        : "Warm the cream first and stir it in from the center.",
      keepFilledCold,
    ],
    working: [`${what} to add = ${formula} = ${plain(add_g)} g`],
    leaves: leftOf(total, chocolate),
  };
}
