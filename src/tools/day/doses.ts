/** What goes into the parts of an order: the flavor into a filling, the colors of the batter. */
import type { Figure, Outcome, World } from "../contract/index.ts";
import { answerDose } from "../dose/answer.ts";
import { weightRange } from "../lib/show.ts";
import { split } from "../split/split.ts";
import type { DayInputs } from "./day.ts";
import { type Portion, recipeFor } from "./portions.ts";

export interface Dosed {
  figure?: Figure;
  /** The middle of the range, g. */
  middle_g: number;
  text: string;
  rule?: string;
  own: boolean;
  assumed: string[];
  cautions: string[];
  working: string[];
}

/** The flavor into a filling, by the dose calculator: its table, its bottles, its cautions. */
export function doseOf({ filling, grams }: Portion, world: World): Dosed | undefined {
  const { flavor, base } = filling;
  // a recipe of her own has its flavor in it
  if (!flavor || recipeFor(filling, world)) return undefined;
  const outcome = answerDose({ ...flavor, base, base_g: grams }, world);
  const [dosed] = outcome.figures ?? [];
  const name = dosed?.name === "flavor" && flavor.taste ? `${flavor.taste} flavor` : dosed?.name;
  if (!dosed || !name)
    return {
      text: outcome.headline,
      middle_g: 0,
      own: false,
      assumed: [],
      cautions: outcome.cautions ?? [],
      working: [],
    };
  const [low, high] = [dosed.low ?? dosed.value ?? 0, dosed.high ?? dosed.value ?? 0];
  return {
    figure: { ...dosed, name },
    middle_g: (low + high) / 2,
    text: `${name} ${weightRange(low, high, world.bench.scale_g)}`,
    rule: `${name} ${outcome.rule?.text}`,
    own: outcome.rule?.basis === "your bench",
    assumed: outcome.assumed ?? [],
    cautions: outcome.cautions ?? [],
    working: outcome.working ?? [],
  };
}

/** The batter by color, as the split calculator splits a bowl. */
export function colorParts(
  { colors }: DayInputs,
  total_g: number,
  world: World,
): { name: string; grams: number }[] | Outcome | undefined {
  if (!colors) return undefined;
  const { assumed: _assumed, ...shares } = colors;
  const outcome = split.compute({ total_g, thing: "batter", ...shares }, world);
  return outcome.status === "answered" ? (outcome.leaves?.parts ?? []) : outcome;
}
