/** A ganache that split: warm cream or milk a little at a time, and no more than it takes. */
import { split } from "../../../data/rules/ganache.ts";
import type { Outcome, Rule, World } from "../contract/index.ts";
import { asking } from "../lib/asking.ts";
import { plain, weight } from "../lib/show.ts";
import { keepFilledCold, noise } from "./book-ratio.ts";
import type { GanacheInputs } from "./ganache.ts";

export function mendSplit(inputs: GanacheInputs, world: World): Outcome {
  const total_g =
    inputs.total_g ??
    (inputs.chocolate_g !== undefined && inputs.cream_g !== undefined
      ? inputs.chocolate_g + inputs.cream_g
      : undefined);
  if (total_g === undefined) return asking("How many grams of ganache are in the bowl?", "total_g");
  const [step, most] = [(total_g * split.atATime_percent) / 100, (total_g * split.atMost_percent) / 100];
  const scale = world.bench.scale_g;
  const { stirred_g = 0 } = inputs;
  if (stirred_g > 0) return goOn(stirred_g, step, most, scale);
  return {
    status: "answered",
    headline: inputs.still
      ? `Back to ${split.low_c}-${split.high_c} °C, and another ${weight(step, scale)} g of warm cream or milk from the center; ${weight(most, scale)} g in all, no more. How much has gone in? "added ${weight(step, scale)} g" and I say what is left`
      : `Bring it to ${split.low_c}-${split.high_c} °C, then stir in warm cream or milk from the center, ${weight(step, scale)} g at a time, ${weight(most, scale)} g at most`,
    figures: [
      { name: "at a time", value: step, unit: "g" },
      { name: "at most", value: most, unit: "g" },
      { name: "temperature", low: split.low_c, high: split.high_c, unit: "°C" },
    ],
    rule: {
      text: `${split.low_c}-${split.high_c} °C, then ${split.atATime_percent} % of the weight at a time, ${split.atMost_percent} % at most`,
      basis: split.basis,
    },
    cautions: ["If it is still split after that, use it in something baked.", keepFilledCold],
    working: [
      `${plain(total_g)} × ${split.atATime_percent} / 100 = ${plain(step)} g`,
      `${plain(total_g)} × ${split.atMost_percent} / 100 = ${plain(most)} g`,
    ],
  };
}

/** How much may still go into one that stays split. */
function goOn(stirred_g: number, step: number, most: number, scale: number | undefined): Outcome {
  const left = most - stirred_g;
  const rule: Rule = {
    text: `${split.atATime_percent} % of the weight at a time, ${split.atMost_percent} % at most`,
    basis: split.basis,
  };
  const working = [`${plain(most)} g at most - ${plain(stirred_g)} g stirred in = ${plain(left)} g`];
  if (left <= most * noise)
    return {
      status: "answered",
      headline: `Stop: ${weight(stirred_g, scale)} g is all that it takes, ${weight(most, scale)} g at most. Use it in something baked.`,
      figures: [{ name: "at most", value: most, unit: "g" }],
      rule,
      cautions: [keepFilledCold],
      working,
    };
  return {
    status: "answered",
    headline: `Go on at ${split.low_c}-${split.high_c} °C, ${weight(Math.min(step, left), scale)} g at a time: ${weight(left, scale)} g of the ${weight(most, scale)} g are left`,
    figures: [
      { name: "at a time", value: Math.min(step, left), unit: "g" },
      { name: "left", value: left, unit: "g" },
    ],
    rule,
    cautions: ["If it is still split after that, use it in something baked.", keepFilledCold],
    working,
  };
}
