/** What is named for a bowl and has no row: no food at all, or a colorant that is neither gel nor powder color. */
import { notFood, otherColorant, poisonous, whitener } from "../../../data/rules/not-food.ts";
import type { Reading, Thing } from "../contract/index.ts";
import type { DoseInputs } from "./dose.ts";

type Draft = Partial<DoseInputs>;

/** "candle fragrance oil", "wintergreen oil": no food. An essential oil may be one. */
export function saidOfFood({ text, things }: Reading): Draft {
  const [scent] = notFood.exec(text) ?? [];
  const [poison] = poisonous.exec(text) ?? [];
  if (poison) return { not_food: `${poison} oil` };
  if (scent) return { not_food: scent };
  const colorant = whitener.exec(text) ?? otherColorant.exec(text);
  if (colorant && !isBeside(text, things, colorant)) return { colorant: colorant[0] };
  if (/\bliquid (?:food )?(?:colou?r\w*|dye)\b/.test(text)) return { liquid_color: true };
  return /\bessential oils?\b/.test(text) ? { essential: true } : {};
}

/** "gel for 200 g batter and edible glitter on top": the gel has its dose all the same. */
const isBeside = (text: string, things: readonly Thing[], { 0: said, index }: RegExpExecArray): boolean =>
  things.some(
    ({ at, dose }) =>
      /^(?:gel|powder) color$/.test(dose ?? "") &&
      /\b(?:and|plus|then)\b|,/.test(
        at[0] < index ? text.slice(at[1], index) : text.slice(index + said.length, at[0]),
      ),
  );
