/** What moves a filling's water activity: each change of 10 g, worked by the same formula. */
import type { Outcome, World } from "../contract/index.ts";
import { awBand, compose, type Line, waterActivity } from "../lib/composition.ts";
import { plain } from "../lib/show.ts";
import { activityRule, authority, estimateNote, keepCold, verdictOf } from "./activity.ts";
import { awFigure, sharesOf, unknownIn } from "./composition.ts";
import type { GanacheInputs } from "./ganache.ts";
import { changed, mixOf } from "./mix.ts";

/** The step of the table, g; a twentieth of the batch where that is less. */
const step_g = 10;

export interface Move {
  /** "10 g less cream". */
  change: string;
  lines: Line[];
}

export function answerMoves(inputs: GanacheInputs, world: World): Outcome {
  const mix = mixOf(inputs, world);
  if ("status" in mix) return mix;
  const missing = unknownIn(mix.lines);
  if (missing) return missing;
  const sum = compose(mix.lines);
  const aw = waterActivity(sum);
  if (aw === undefined) return { status: "declined", headline: "There is no water in it to speak of." };
  const moved = movesOf(mix.lines)
    .flatMap(({ change, lines }) => {
      const to = waterActivity(compose(lines));
      return to === undefined ? [] : [{ change, to, by: to - aw }];
    })
    .sort((a, b) => a.to - b.to);
  const [best] = moved;
  const last = moved.at(-1);
  const shares = sharesOf(sum);
  return {
    status: "answered",
    headline: `a_w about ${aw.toFixed(2)} ± ${awBand} now, ${verdictOf(aw)}. ${
      best && best.by < -0.0005
        ? `What lowers it most: ${best.change}, by ${plain(-best.by, 3)}`
        : "Its water holds all the sugar it can: nothing here lowers it further"
    }${last && last.by > 0.0005 ? `; what raises it: ${last.change}, by ${plain(last.by, 3)}` : ""}`,
    figures: [
      awFigure(aw),
      ...moved.map(({ change, to }) => ({ name: `aw, ${change}`, value: to, unit: "aw" })),
      ...Object.entries(shares).map(([name, value]) => ({ name, value, unit: "%" })),
    ],
    items: moved.map(({ change, to, by }) => ({
      change,
      aw: to.toFixed(3),
      by: Math.abs(by) < 0.0005 ? "no change" : `${by > 0 ? "+" : "−"}${Math.abs(by).toFixed(3)}`,
    })),
    rule: activityRule,
    assumed: [
      ...mix.assumed,
      estimateNote,
      '"for": in its place, weight for weight; glucose binds more water than the formula gives it credit for',
    ],
    cautions: [
      `A step smaller than ± ${awBand} is a direction and not a safety margin.`,
      keepCold,
      authority,
    ],
    working: moved.map(
      ({ change, to, by }) =>
        `${change}: a_w ${plain(to, 4)} (${by > 0 ? "+" : "−"}${plain(Math.abs(by), 4)})`,
    ),
    leaves: {
      mass: { grams: sum.grams, thing: mix.thing },
      recipe: mix.lines.map(({ name, grams }) => ({ name, grams })),
    },
  };
}

/** More of what is sweet, less and more of what is wet, sugars in place of the wettest, glucose syrup in place of sugar. */
export function movesOf(lines: readonly Line[]): Move[] {
  const whole = lines.reduce((sum, each) => sum + each.grams, 0);
  const step = whole < 20 * step_g ? whole / 20 : step_g;
  const size = `${plain(step, 1)} g`;
  const rich = lines.map((line) => ({ line, ...sharesOf(compose([line])) }));
  const wet = rich
    .filter((each) => each.water > 20)
    .sort((a, b) => b.line.grams * b.water - a.line.grams * a.water);
  const sweet = rich.filter((each) => each.sugar > 20);
  const [wettest] = wet;
  const crystals = lines.filter((each) => /sugar$/.test(each.name));
  return [
    ...sweet.map(({ line }) => ({
      change: `${size} more ${line.name}`,
      lines: changed(lines, line.name, step),
    })),
    ...wet.flatMap(({ line }) => [
      ...(line.grams > step
        ? [{ change: `${size} less ${line.name}`, lines: changed(lines, line.name, -step) }]
        : []),
      { change: `${size} more ${line.name}`, lines: changed(lines, line.name, step) },
    ]),
    ...(wettest && wettest.line.grams > step
      ? ["glucose syrup", "sugar"].map((name) => ({
          change: `${name} for ${size} ${wettest.line.name}`,
          lines: changed(changed(lines, wettest.line.name, -step), name, step),
        }))
      : []),
    ...(crystals.length === 0
      ? [{ change: `${size} sugar added`, lines: changed(lines, "sugar", step) }]
      : []),
    { change: `${size} glucose syrup added`, lines: changed(lines, "glucose syrup", step) },
    ...crystals
      .filter((each) => each.grams > step)
      .map((each) => ({
        change: `glucose syrup for ${size} ${each.name}`,
        lines: changed(changed(lines, each.name, -step), "glucose syrup", step),
      })),
  ];
}
