/** What is named for a bowl and has no row: no food at all, or a colorant that is neither gel nor powder color. */
import { inclusion } from "../../../data/words/inclusions.ts";
import { notFood, otherColorant, poisonous, whitener } from "../../../data/words/not-food.ts";
import type { Reading, Thing } from "../contract/index.ts";
import type { Draft } from "./draft.ts";
import { ofTurn } from "./of-turn.ts";

/** Some of these letters stand in all that the patterns look for: looking for them costs less than compiling those. */
const marks =
  "candle soap wax diffuser perfume cosmetic massage bath aroma incense potpourri fragrance acrylic wall craft spray poster nail fabric hair clothes oil titan tio e171 whiten air dust glitter paint ink pen marker cocoa candy powder".split(
    " ",
  );
const mayBe = (text: string): boolean => {
  const close = text.replaceAll(" ", "");
  return marks.some((mark) => close.includes(mark));
};

/** To fry in or to thin with: no flavor, and none of the strong oils. */
const plainOil =
  /\b(?:(?:extra |virgin )*olive|sunflower|rapeseed|canola|vegetable|grapeseed|corn|neutral|cooking|coconut) oil\b/;

/** What the turn names of that kind. */
const namedIn = ofTurn((text) => {
  const isLiquid = text.includes("liquid") && /\bliquid (?:food )?(?:colou?r\w*|dye)\b/.test(text);
  if (!mayBe(text)) return { isLiquid };
  return {
    isLiquid,
    poison: poisonous.exec(text)?.[0],
    scent: notFood.exec(text)?.[0],
    colorant: whitener.exec(text) ?? otherColorant.exec(text) ?? undefined,
    isEssential: /\bessential oils?\b/.test(text),
    fat: plainOil.exec(text) ?? undefined,
  };
});

/** "candle fragrance oil", "wintergreen oil": no food. An essential oil may be one. */
export function saidOfFood({ text, things }: Reading): Draft {
  const { poison, scent, colorant, isLiquid, isEssential, fat } = namedIn(text);
  if (poison) return { not_food: `${poison} oil` };
  if (scent) return { not_food: scent };
  if (colorant && !isBeside(text, things, colorant)) return { colorant: colorant[0] };
  if (isLiquid) return { liquid_color: true };
  if (fat && isDosed(text, fat) && !hasFlavor(things, fat)) return { plain_oil: fat[0] };
  const piece = inclusionAsked(text);
  if (piece) return { inclusion: piece };
  return isEssential ? { essential: true } : {};
}

/** "how much", "what percentage of the": what is asked for stands behind. */
const asksFor =
  /\b(?:how (?:much|many)|(?:what|which) (?:percentage|percent|share|amount|weight|quantity|dose)|how many (?:grams|g))(?: (?:grams|g|percent|of|the|my|some|more))* /;

/** "how much crushed biscuit": the pieces that are asked for, with no flavor's dose. */
const inclusionAsked = ofTurn((text) => {
  const asks = asksFor.exec(text);
  return asks ? inclusion.exec(text.slice(asks.index + asks[0].length))?.[0] : undefined;
});

/** "5 g olive oil for 200 g ganache", "how much olive oil": it is what goes in, and no part of the bowl. */
const isDosed = (text: string, { 0: said, index }: RegExpExecArray): boolean =>
  (!isPart.test(text.slice(0, index)) &&
    /^(?: (?:is|are|was|be|ok|okay|fine|went|right|too much|enough))* (?:for|in|into|to) /.test(
      text.slice(index + said.length),
    )) ||
  /\b(?:how (?:much|many)|added|put|stirred|poured)(?: in)?(?: \S+){0,2}? (?:of )?$/.test(
    text.slice(0, index),
  );

const isPart = /\b(?:with|plus|containing|and) (?:[\d.]+ ?g )?(?:of )?$/;

/** "lemon flavor for 200 g ganache with olive oil in it". */
const hasFlavor = (things: readonly Thing[], { 0: said, index }: RegExpExecArray): boolean =>
  things.some(
    ({ at, dose, taste, base }) =>
      !base && (dose ?? taste) !== undefined && (at[1] <= index || at[0] >= index + said.length),
  );

/** "gel for 200 g batter and edible glitter on top": the gel has its dose all the same. */
const isBeside = (text: string, things: readonly Thing[], { 0: said, index }: RegExpExecArray): boolean =>
  things.some(
    ({ at, dose }) =>
      /^(?:gel|powder) color$/.test(dose ?? "") &&
      /\b(?:and|plus|then)\b|,/.test(
        at[0] < index ? text.slice(at[1], index) : text.slice(index + said.length, at[0]),
      ),
  );
