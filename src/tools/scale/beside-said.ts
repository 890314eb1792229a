/** "the powdered sugar is down to 130 g", "almond flour is whats short, theres 180": the amount of the thing before it. */
import { betweenThingAndAmount } from "../../../data/words/amount-talk.ts";
import type { Reading } from "../contract/index.ts";
import type { Weighed } from "../lib/find.ts";
import { gramsOf } from "../lib/units.ts";

/** Under it a bare number beside a thing is a count or a factor. */
const leastBare_g = 10;

/** "the scale says 72 g for the whites". */
const isFor = /^ (?:g |grams? )?(?:for|of|worth of|on) (?:just |all )?(?:the|my|our) $/;

/** "cracked my whites into the bowl and they weigh 105 g": put on the scale, and nothing else is named between. */
const isWeighing =
  /\b(?:they|theyre|it|its|that|which|this|those|these|all of (?:it|them)) (?:all )?(?:weighs?|weighed|weigh in at|came|comes?|reads?|measures?|is|are|was|were|adds?)\b|\bscales? (?:says?|reads?|shows?)\b/;
const isOther =
  /[?;.]|\b(?:want|need|make|total|together|altogether|all told|for|batter|how|what|whats|which|if|or|batch|macarons?|macs|mix|everything|lot)\b/;

/** "how much almond flour, 500 g": asked for, and not what there is. */
const isAsked = /\b(?:how (?:much|many)|whats|what is|which) (?:of )?(?:the |my )?$/;

/**
 * Amounts that nothing was bound to, of the ingredient that they are told of.
 * @param isLine whether the recipe can have it: "one had a speck of yolk, its 112 g" tells of no yolk
 */
export function besideThing(
  { amounts, things, text }: Reading,
  isLine: (ingredient: string) => boolean,
): Weighed[] {
  return amounts.flatMap((amount): Weighed[] => {
    const isBare =
      amount.dim === "number" && amount.unit === "" && !amount.fraction && amount.value >= leastBare_g;
    if (amount.of || !(amount.dim === "weight" || isBare)) return [];
    const thing =
      things.find((each) => isFor.test(text.slice(amount.at[1], each.at[0])) && each.at[0] > amount.at[1]) ??
      things.findLast((each) => each.at[1] <= amount.at[0] && each.count !== "bowls");
    if (!thing?.ingredient || thing.base || !isLine(thing.ingredient)) return [];
    if (amounts.some(({ of }) => of?.at[0] === thing.at[0])) return [];
    const said = plain(text.slice(thing.at[1], amount.at[0]));
    const isOfIt =
      thing.at[0] > amount.at[0] ||
      said.split(/[ ,:-]+/).every((word) => word === "" || betweenThingAndAmount.has(word)) ||
      (isWeighing.test(said) && !isOther.test(said));
    return isOfIt && !isAsked.test(plain(text.slice(0, thing.at[0])))
      ? [{ grams: gramsOf(amount), thing, amount }]
      : [];
  });
}

const plain = (text: string) => text.replaceAll("'", "");
