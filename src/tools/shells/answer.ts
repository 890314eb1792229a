/** Works sizes out, forward from an order or back from a bowl. Counts are cut off exactly, never by a float's whim. */
import type { Outcome, World } from "../contract/index.ts";
import { asking } from "../lib/asking.ts";
import { white_g } from "../lib/find.ts";
import { houseOf } from "../lib/house.ts";
import { learned, ownFigures, taughtBench, taughtTo } from "../lib/learned.ts";
import { shellsFor, shellsOnTray, shellWeight, sizing } from "../lib/sizing.ts";
import { withSpares } from "../lib/spares.ts";
import { inBoxes } from "./boxes.ts";
import { finished } from "./finished.ts";
import { baked, eggsAnswer, oneShell, trayAnswer, unbaked } from "./one.ts";
import { forOrder } from "./order.ts";
import type { Measures } from "./rule.ts";
import type { ShellsInputs } from "./shells.ts";
import { sizeFor } from "./size-asked.ts";
import { fromBatter, haveBatter, isEnough, whitesBatter } from "./yields.ts";

/** @throws never: what is missing comes back as `asking`. */
export function answerShells(said: ShellsInputs, given: World): Outcome {
  const size: Measures = { ...sizing(said.diameter_mm, given.bench), lessons: {}, own: {}, set: given.bench };
  size.lessons = learned(given, size.diameter_mm);
  size.own = ownFigures(size.lessons);
  // Spares that her batches teach stand where the bench sets none.
  const world = {
    ...given,
    bench: withSpares(taughtBench(given.bench, taughtTo(given.bench, size.lessons, ["spares"])), said),
  };
  const onTray = said.on_tray ?? shellsOnTray(size.diameter_mm, world.bench);
  if (said.want === "boxes") return inBoxes(said);
  if (said.want === "finished")
    return said.macarons === undefined
      ? asking("How many macarons are in them?", "macarons")
      : finished(said.macarons, size, world);
  const made = said.shells ?? (said.macarons === undefined ? undefined : 2 * said.macarons);
  if (said.want === "size" && said.batter_g !== undefined && made !== undefined)
    return sizeFor(said.batter_g, made, size, world);
  if (said.want === "tray") return trayAnswer(size, onTray, world);
  if (said.want === "one") return oneShell(size, world);
  if (said.want === "one_baked") return baked(shellWeight(size.diameter_mm, size.own), 1, world, size);
  if (said.baked_g !== undefined) return unbaked(said.baked_g, world);
  if (said.shell_g !== undefined) return baked(said.shell_g, 1, world);
  if (said.want === "whites" && said.batter_g !== undefined) {
    const { whites, total } = houseOf(given);
    const share = said.of_batter ? whites / total : 1;
    return eggsAnswer(said.batter_g * share, world);
  }
  if (said.want === "whites" && (said.whites_g !== undefined || said.whites_count !== undefined))
    return eggsAnswer(said.whites_g ?? (said.whites_count ?? 0) * white_g, world, said.egg_g);
  if (said.want === "baked" && said.batter_g !== undefined) return baked(said.batter_g, 1, world);
  const house = houseOf(given);
  const lacks = said.have?.find((each) => !house.lines.some((line) => line.name === each.name));
  if (lacks)
    return {
      status: "impossible",
      headline: `Your house recipe, ${house.name}, has no ${lacks.name} in it.`,
    };
  const batter = said.batter_g ?? haveBatter(said, house) ?? whitesBatter(said, house);
  if (batter !== undefined && said.macarons !== undefined)
    return isEnough(fromBatter(batter, size, onTray, said, world), batter, said.macarons, size, world);
  // shells that were counted aren't worked out once more
  if (batter !== undefined && said.shells === undefined) return fromBatter(batter, size, onTray, said, world);
  // half of 29 shells: what pairs up is cut off, what is to be piped is not
  const counted =
    said.shells && (said.want === "macarons" ? Math.floor(said.shells) : Math.ceil(said.shells));
  const shells =
    counted ??
    (said.trays !== undefined && said.macarons === undefined ? said.trays * onTray : undefined) ??
    (said.macarons !== undefined ? shellsFor(said.macarons, world.bench) : undefined);
  if (shells === undefined && said.want === "baked" && said.diameter_mm !== undefined)
    return baked(shellWeight(size.diameter_mm, size.own), 1, world, size);
  if (shells === undefined) return asking("For how many macarons?", "macarons");
  if (said.want === "baked")
    return baked(shellWeight(size.diameter_mm, size.own) * shells, shells, world, size);
  return forOrder(shells, size, onTray, said, world);
}
