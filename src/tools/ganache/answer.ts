/** Works a ganache out. ratio = chocolate / cream by weight; everything else follows from it. */
import { type RatioRow, ratios } from "../../../data/rules/ganache.ts";
import type { Outcome, World } from "../contract/index.ts";
import { asking } from "../lib/asking.ts";
import { listed, plain } from "../lib/show.ts";
import { build } from "./build.ts";
import { answerComposition } from "./composition.ts";
import type { GanacheInputs } from "./ganache.ts";
import { check, judged, ratioOf } from "./judge.ts";
import { mend } from "./mend.ts";
import { mendSplit } from "./mend-split.ts";
import { answerMoves } from "./moves.ts";
import { answerTarget } from "./target.ts";

/** @throws never: what can't be worked out comes back as `asking` or `impossible`. */
export function answerGanache(inputs: GanacheInputs, world: World): Outcome {
  const assumed = inputs.by_volume ? ["cream weighed by the portion table"] : [];
  const outcome = route(inputs, world);
  return assumed.length && outcome.status === "answered"
    ? { ...outcome, assumed: [...(outcome.assumed ?? []), ...assumed] }
    : outcome;
}

function route(inputs: GanacheInputs, world: World): Outcome {
  if (inputs.unsure_g !== undefined && inputs.lines)
    return asking(
      `${plain(inputs.unsure_g)} g of what: ${listed(
        inputs.lines.map((each) => each.name),
        "or",
      )}?`,
      "unsure_g",
    );
  if (inputs.want === "composition") return answerComposition(inputs, world);
  if (inputs.mixed)
    return {
      status: "declined",
      headline: `I have a ratio for each chocolate, none for ${listed(inputs.mixed)} together. Make a ganache of each and stir them into one another, or save your own recipe.`,
    };
  if (inputs.other)
    return {
      status: "declined",
      headline: `I have ratios for dark, milk and white chocolate, none for ${inputs.other}: its fat and sugar differ. Go by its maker's, or save your own recipe.`,
    };
  if (inputs.unsure_g !== undefined)
    return asking(`Is the ${plain(inputs.unsure_g)} g the chocolate or the cream?`, "unsure_g");
  if (inputs.want === "moves") return answerMoves(inputs, world);
  if (inputs.want === "target") return answerTarget(inputs, world);
  if (inputs.want === "split") return mendSplit(inputs, world);
  const { chocolate } = inputs;
  const weighs = [inputs.chocolate_g, inputs.cream_g, inputs.total_g, inputs.macarons].some(
    (each) => each !== undefined,
  );
  if (inputs.ratio !== undefined && chocolate && !weighs) return judged(inputs.ratio, chocolate, inputs.use);
  if (inputs.ratio !== undefined && (inputs.chocolate_g === undefined || inputs.cream_g === undefined))
    return build(inputs, chocolate, inputs.use ?? "piping", ownRow(inputs.ratio), world);
  if (!chocolate) return asking("Which chocolate is it: dark, milk or white?", "chocolate");
  const use = inputs.use ?? "piping";
  const row = ratios[chocolate][use];
  if (inputs.want === "ratio") return ratioOf(chocolate, use, row, inputs.use === undefined);
  if (inputs.want === "mend") return mend(inputs, chocolate, use, row, world);
  if (inputs.chocolate_g !== undefined && inputs.cream_g !== undefined)
    return check(inputs.chocolate_g, inputs.cream_g, chocolate, inputs.use);
  return build(inputs, chocolate, use, row, world);
}

/** A ratio of her own: no range, and nothing of the book's. */
const ownRow = (ratio: number): RatioRow => ({ ratio, low: ratio, high: ratio, basis: "arithmetic" });
