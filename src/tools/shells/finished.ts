/** What filled macarons weigh: two baked shells and the filling between them. An estimate, and none for a label. */
import { bakedShare } from "../../../data/rules/shells.ts";
import type { Outcome, World } from "../contract/index.ts";
import { counted, plain, weight } from "../lib/show.ts";
import { fillingWeight, shellWeight } from "../lib/sizing.ts";
import { assumptions, type Measures } from "./rule.ts";

/** @param macarons how many of them, 1 and more */
export function finished(macarons: number, size: Measures, world: World): Outcome {
  const shell_g = (shellWeight(size.diameter_mm, size.own) * bakedShare.value) / 100;
  const filling_g = fillingWeight(size.diameter_mm, size.own);
  const one_g = 2 * shell_g + filling_g;
  return {
    status: "answered",
    headline: `About ${weight(macarons * one_g, world.bench.scale_g)} g for ${counted(macarons, "filled macaron")}${macarons > 1 ? `, ${plain(one_g, 1)} g each` : ""}: an estimate`,
    figures: [{ name: "filled", value: macarons * one_g, unit: "g" }],
    rule: {
      text: `two shells baked to ${plain(bakedShare.value / 100)} of their batter, and ${plain(filling_g, 2)} g filling between them`,
      basis: size.own.shell_g === undefined ? bakedShare.basis : "your bench",
    },
    assumed: assumptions(size, false, world),
    cautions: [
      "For a label weigh what is in the box, without the box: a net weight is weighed, not estimated.",
    ],
    working: [
      `2 × ${plain(shell_g, 3)} + ${plain(filling_g, 3)} = ${plain(one_g, 2)} g; × ${plain(macarons)}`,
    ],
  };
}
