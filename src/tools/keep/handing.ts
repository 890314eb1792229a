/** On the way to whoever eats them: out of the fridge in time, by post only while it is cold. */
import { fridge, inFridge, keepingRules, outside } from "../../../data/rules/keeping.ts";
import type { Outcome, World } from "../contract/index.ts";
import { usualSettings } from "../day-plan/types.ts";
import { plain } from "../lib/show.ts";

/** On the way the fridge's rule holds: cold or two hours, and the days count. */
export function posted(): Outcome {
  return {
    status: "answered",
    headline: `Only if they stay at ${fridge.limit_c} °C (${fridge.limit_f} °F) or below all the way: out of the fridge ${outside.limit_h} h in all is the limit, and the days on the way count among the ${inFridge.days}`,
    figures: [
      { name: "out of the fridge", value: outside.limit_h, unit: "h" },
      { name: "fridge", value: fridge.limit_c, unit: "°C" },
    ],
    rule: keepingRules.outside,
    cautions: [
      "A parcel without cooling is warm within hours; ice packs that have thawed no longer hold them cold. Hand them over in person, or freeze them and send them with a carrier that keeps food cold.",
    ],
  };
}

/** Out of the fridge in their box, so that water settles on the box and the butter softens. From memory. */
export function serving({ bench }: World): Outcome {
  const min = bench.warm_min ?? usualSettings.warm;
  return {
    status: "answered",
    headline: `Take them out ${plain(min)} min before they are eaten, box closed; ${outside.limit_h} h out of the fridge in all`,
    figures: [{ name: "out before eating", value: min, unit: "min" }],
    rule: {
      text: `${plain(min)} min to room temperature, boxed, ending when they are needed; ${keepingRules.outside.text}`,
      basis: bench.warm_min === undefined ? "from memory" : "your bench",
    },
    cautions: [
      `What has been out for ${outside.limit_h} h in all (${outside.hot_h} h above ${outside.hot_c} °C, ${outside.hot_f} °F) is eaten or thrown out.`,
    ],
  };
}
