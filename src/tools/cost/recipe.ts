/** Whose weights a cost is added up from: lines said, a saved recipe, or shells and filling for a number of macarons. */
import { buttercreamParts } from "../../../data/rules/buttercream.ts";
import { ratios } from "../../../data/rules/ganache.ts";
import type { World } from "../contract/index.ts";
import { kindOf } from "../formula/kind.ts";
import { houseFor, houseOf } from "../lib/house.ts";
import {
  type Lesson,
  learned,
  lessonText,
  oddLines,
  ownFigures,
  taughtBench,
  taughtTo,
} from "../lib/learned.ts";
import { merged } from "../lib/lines.ts";
import { plain } from "../lib/show.ts";
import { batterFor, fillingFor, sizing } from "../lib/sizing.ts";
import type { CostInputs } from "./cost.ts";

type Lines = { name: string; grams: number; price_per_g?: number }[];

/** The lines to price, with what was assumed and learned for them; none where no weights can be told. */
export interface Recipe {
  lines: Lines | undefined;
  assumed: string[];
  taught: Lesson[];
}

export function recipeOf(inputs: CostInputs, world: World): Recipe {
  const none: Recipe = { lines: undefined, assumed: [], taught: [] };
  if (inputs.lines) return { ...none, lines: inputs.lines };
  const saved = savedOf(inputs.formula, world);
  const planned =
    inputs.macarons !== undefined &&
    (inputs.fitted || inputs.want === undefined || inputs.want === "cost") &&
    inputs.cost === undefined &&
    inputs.ingredients === undefined;
  if (saved && !(planned && inputs.fitted)) return { ...none, lines: saved.lines };
  return planned ? planFor(inputs, inputs.macarons ?? 0, world) : none;
}

const savedOf = (name: string | undefined, { formulas }: World) =>
  name ? formulas.findLast((each) => each.name.toLowerCase() === name.toLowerCase()) : undefined;

/** Shells for the macarons by the house recipe, or by a saved one that makes shells, and their filling where it is named. */
function planFor(inputs: CostInputs, macarons: number, world: World): Recipe {
  const saved = savedOf(inputs.formula, world);
  const own = saved && kindOf(saved.lines) === "shells" ? saved.name : undefined;
  const size = sizing(inputs.diameter_mm, world.bench);
  const lessons = learned(world, size.diameter_mm);
  const spares = taughtTo(world.bench, lessons, ["spares"]);
  const filled = filling(inputs, saved && !own ? saved : undefined);
  const taught = [
    lessons.shell,
    lessons["batter loss"],
    ...spares,
    ...(filled ? [lessons.filling, lessons["filling loss"]] : []),
  ].filter((lesson) => lesson !== undefined);
  const house = houseOf(world, own);
  const batter_g = batterFor(
    macarons,
    size.diameter_mm,
    taughtBench(world.bench, spares),
    ownFigures(lessons),
  );
  const filling_g = filled ? fillingFor(macarons, size.diameter_mm, ownFigures(lessons)) : 0;
  const whole = filled?.parts.reduce((sum, each) => sum + each.grams, 0) ?? 1;
  return {
    lines: merged([
      ...houseFor(house, batter_g),
      ...(filled?.parts ?? []).map(({ name, grams }) => ({ name, grams: (grams / whole) * filling_g })),
    ]),
    assumed: [
      `${house.name ?? "house shells"} for ${plain(macarons)} macarons of ${plain(size.diameter_mm)} mm, ${filled ? `filled with ${plain(filling_g, 0)} g ${filled.name}` : "without filling"}`,
      ...taught.map(lessonText),
      ...oddLines(taught, world.now_ms),
    ],
    taught,
  };
}

/** What the named filling is made of, in parts: a saved recipe, a ganache by the book's ratio, a buttercream. */
function filling(
  { filling: base, chocolate }: CostInputs,
  saved: { name: string; lines: readonly { name: string; grams: number }[] } | undefined,
): { name: string; parts: { name: string; grams: number }[] } | undefined {
  if (saved) return { name: saved.name, parts: saved.lines.map(({ name, grams }) => ({ name, grams })) };
  if (base === "buttercream")
    return { name: base, parts: buttercreamParts.map(({ name, parts }) => ({ name, grams: parts })) };
  if (base !== "ganache") return undefined;
  const kind = chocolate ?? "dark";
  return {
    name: `${kind} chocolate ganache, ${plain(ratios[kind].piping.ratio)} : 1`,
    parts: [
      { name: `${kind} chocolate`, grams: ratios[kind].piping.ratio },
      { name: "cream", grams: 1 },
    ],
  };
}
