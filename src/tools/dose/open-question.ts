/** What has to be asked before a dose can be worked out, its row being known. */
import type { Outcome } from "../contract/index.ts";
import { plain } from "../lib/show.ts";
import { firstOf, type Way } from "../lib/ways.ts";
import type { DoseInputs } from "./dose.ts";
import { asking, type Dose } from "./in-force.ts";

type Question = Way<{ inputs: DoseInputs; dose: Dose }, Outcome>;

/** A question that no single input answers: what was spoken of before stays. */
const asksOnly = (question: string): Outcome => ({ status: "asking", headline: question, question });

/** "20 g", right behind a range. */
const ofWhich: Question = ({ inputs: { which_g, flavor_g }, dose: { name, base } }) =>
  which_g !== undefined && flavor_g === undefined
    ? asking(`Is that ${plain(which_g)} g of ${name}, or ${plain(which_g)} g of ${base}?`, "which")
    : undefined;

/** "2 tsp raspberry powder in 200 g". */
const spoonOfPowder: Question = ({ inputs: { by_volume, flavor_g, want }, dose: { name, row } }) =>
  by_volume && flavor_g !== undefined && want !== "flavor" && !row.liquid
    ? asking(`How many grams of ${name} is it? A spoon of it isn't in the table.`, "flavor_g")
    : undefined;

/** "double the green". */
const twiceOfWhat: Question = ({ inputs: { twice }, dose: { name, base } }) =>
  twice === undefined ? undefined : asksOnly(`Twice as much ${twice} ${base}, or twice the ${name} in it?`);

/** "60 %", behind gel for a bowl. */
const shareOrDose: Question = ({ inputs: { percent, want, far_over }, dose: { name, base } }) =>
  percent !== undefined && want !== "check" && far_over
    ? asksOnly(
        `Is ${plain(percent)} % the share of the ${base} that gets it? As a dose it is far over the table: say that part's grams, or the percentage of ${name} once more.`,
      )
    : undefined;

const strengthWords: Readonly<Record<number, readonly [times: string, word: string]>> = {
  0.5: ["half", "half"],
  2: ["twice", "double"],
  3: ["three times", "triple"],
};

/** "flavor for 200 g, twice as strong". */
const howStrong: Question = ({ inputs: { strength_unclear }, dose: { name } }) => {
  if (strength_unclear === undefined) return undefined;
  const [times, word] = strengthWords[strength_unclear] ?? [];
  return asking(
    `Is the ${name} itself ${times} as strong as usual? Say "it is ${word} strength" and the dose goes by that; for more or less taste ask for a percentage.`,
    "strength",
  );
};

/** "is that enough", of no flavor that was named. */
const howMuchIsIn: Question = ({ inputs: { dose, taste, bare, usual, want, flavor_g } }) =>
  want === "check" && (dose ?? taste ?? bare ?? usual) === undefined && flavor_g === undefined
    ? asking("How many grams of flavor are in it?", "flavor_g")
    : undefined;

const howBigABowl: Question = ({ inputs: { base_g, flavor_g }, dose: { base } }) =>
  base_g === undefined && flavor_g === undefined
    ? asking(`How much ${base} is it for, in grams?`, "base_g")
    : undefined;

/** "added 5 more". */
const howMuchWithMore: Question = ({ inputs: { more_g, flavor_g }, dose: { name } }) =>
  more_g !== undefined && flavor_g === undefined
    ? asking(`How many grams of ${name} are in it now, with the ${plain(more_g)} g?`, "flavor_g")
    : undefined;

/** "is 9 g too much". */
const inHowMuch: Question = ({ inputs: { want, base_g, flavor_g }, dose: { base } }) =>
  want === "check" && base_g === undefined && flavor_g !== undefined
    ? asking(`How many grams of ${base} is it in?`, "base_g")
    : undefined;

/** What was meant isn't clear. */
const unclear: readonly Question[] = [ofWhich, spoonOfPowder, twiceOfWhat, shareOrDose];
/** A weight or a strength is missing. */
const missing: readonly Question[] = [howStrong, howMuchIsIn, howBigABowl, howMuchWithMore, inHowMuch];

export const unclearIn = (inputs: DoseInputs, dose: Dose): Outcome | undefined =>
  firstOf(unclear, { inputs, dose });
export const missingIn = (inputs: DoseInputs, dose: Dose): Outcome | undefined =>
  firstOf(missing, { inputs, dose });
