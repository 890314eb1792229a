/** What is turned down or asked back before any row of the table is looked at. */
import { notFoodRules } from "../../../data/rules/not-food.ts";
import { whitener } from "../../../data/words/not-food.ts";
import type { Outcome } from "../contract/index.ts";
import { capital } from "../lib/show.ts";
import { firstOf, type Way } from "../lib/ways.ts";
import type { DoseInputs } from "./dose.ts";
import { asking } from "./in-force.ts";

type Refusal = Way<DoseInputs, Outcome>;

const declined = (headline: string, cautions?: string[]): Outcome => ({
  status: "declined",
  headline,
  ...(cautions ? { cautions } : {}),
});

/** "candle fragrance oil". */
const noFood: Refusal = ({ not_food }) =>
  not_food
    ? declined(
        `No dose: ${not_food} is not for eating. Leave it out, and throw out what it went into: ${notFoodRules.food.text}. Ask me with a food flavor or color in its place.`,
        ["If somebody has eaten it, call your local poison center."],
      )
    : undefined;

/** "2 vanilla beans", "2 cups of buttercream". */
const withoutWeight: Refusal = ({ unweighable, base_g }) =>
  unweighable
    ? asking(
        `How much does it weigh in grams? ${capital(unweighable)} can weigh many things.`,
        // a bowl that was weighed stays: what has no weight is what goes into it
        /drop/.test(unweighable) || base_g !== undefined ? "flavor_g" : "base_g",
      )
    : undefined;

/** "how many drops of lemon oil". */
const inDrops: Refusal = ({ asks_drops, base_g, base, dose, name }) =>
  // "how many drops in 1.5 g": nothing is named that so little could be a bowl of
  asks_drops && (base_g === undefined || !(base ?? dose ?? name))
    ? declined(
        "A drop has no weight of its own: bottles and liquids differ, so I give no number of drops. Put the bowl on the scale, set it to zero and drop until it shows the grams.",
      )
    : undefined;

const liquidColor: Refusal = ({ liquid_color }) =>
  liquid_color
    ? declined(
        "There is no rule here for liquid food color, so I give no figure: its water thins batter and buttercream. Gel or powder color has a dose.",
      )
    : undefined;

/** "titanium dioxide", "luster dust". */
const otherColorant: Refusal = ({ colorant }) => {
  if (!colorant) return undefined;
  const noRule = `There is no rule here for ${colorant}, so I give no figure`;
  return declined(
    whitener.test(colorant)
      ? `${noRule}: ${notFoodRules.whitener.text}. Elsewhere its label and your local food authority have the last word.`
      : `${noRule}. Gel or powder color has a dose; for this go by its label, and only if that says edible.`,
  );
};

/** "crushed biscuit", "sprinkles". */
const inPieces: Refusal = ({ inclusion }) =>
  inclusion
    ? declined(
        `There is no rule here for ${inclusion}, so I give no figure. Fold a little in, weigh it, and note what worked.`,
      )
    : undefined;

/** "olive oil": the row of oils is of flavors many times as strong. */
const plainFat: Refusal = ({ plain_oil }) =>
  plain_oil
    ? declined(
        `There is no rule here for ${plain_oil}, so I give no figure: it is a plain fat and no flavoring oil. Weigh what you put in, and note what worked.`,
      )
    : undefined;

/** "15 g zibbelmus in it": of what went in the kind is asked, of what is to go in nothing can be said. */
const unknownName: Refusal = ({ unknown, flavor_g, dose, taste }) => {
  if (!unknown || dose !== undefined || taste !== undefined) return undefined;
  return flavor_g === undefined
    ? declined(
        `I don't know ${unknown}, so I give no figure. Say its form with it, as in "pistachio paste", "lemon extract" or "raspberry powder".`,
      )
    : asking(
        `What kind is ${unknown}: a spirit or liqueur, an extract, flavor drops, a paste or a powder? I don't know the name, and each has its own dose.`,
        "dose",
      );
};

/** Neither a flavor nor a bowl. */
const nothingSaid: Refusal = ({ dose, base, base_g, flavor_g }) =>
  [dose, base, base_g, flavor_g].every((each) => each === undefined)
    ? asking("How much buttercream or ganache is it for, in grams?", "base_g")
    : undefined;

const refusals: readonly Refusal[] = [
  noFood,
  withoutWeight,
  inDrops,
  liquidColor,
  otherColorant,
  inPieces,
  plainFat,
  unknownName,
  nothingSaid,
];

/** @returns undefined where the table may have a dose */
export const noDose = (inputs: DoseInputs): Outcome | undefined => firstOf(refusals, inputs);
