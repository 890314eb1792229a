/** "a spoon of it", "how much does a spoonful of cream weigh": one spoon holds three times what the other does. */
import { opening } from "../../../data/words/openers.ts";
import type { Reading } from "../contract/index.ts";
import type { ConvertInputs } from "./convert.ts";
import { nameOf } from "./named.ts";

type Draft = Partial<ConvertInputs>;

const size =
  "(?:heaped|level|levelled|leveled|heaping|rounded|big|large|small|little|full|single|whole|good|of)";
const of = "(?:of )?(?:the |my )?(?:it|that|this|them|the same|\\S*<[^>]*ingredient=[^>]*>)";
const spoonSaid = new RegExp(
  `^${opening}(?:(?:what about|how about|and|what|whats|what is|what does|what do|how much does|how much do|how much is|how heavy is|how many g|how many grams|how many \\S*<unit=g>|how much|does|is|are|in|for|if|weight of|the weight of|grams in|grams of|give me|tell me) )*(?:(?:a|an|one|the|each|per|just|only|\\S*<number(?:,fraction)?>) )?(?:${size} )*spoon(?:ful)?s?(?: ${of})?(?: (?:weigh|weighs|is|be|then|please|come to|in (?:g|grams|\\S*<unit=(?:g|oz)>)|to \\S*<unit=(?:g|oz)>))*(?: \\?)?$`,
);

/** A spoon of which nobody says whether it is for tea or for the table; its unit is asked for. */
export function spoonsOf({ mask, amounts, things }: Reading, before: Draft | undefined): Draft | undefined {
  if (!/(?:^| )spoon(?:ful)?s?(?: |$)/.test(mask) || !spoonSaid.test(mask)) return undefined;
  const thing = things.find((each) => each.ingredient);
  const named: Draft = thing ? nameOf(thing) : before?.ingredient ? { ingredient: before.ingredient } : {};
  if (!thing && !before) return undefined;
  const to = things.find((each) => each.unit)?.unit ?? (before?.to === "oz" ? "oz" : "g");
  return { ...named, value: amounts[0]?.value ?? 1, to: to as "g", spoon: true };
}

/** "tea", "the big one". */
export const whichSpoon = (text: string): "tsp" | "tbsp" | undefined =>
  /\b(?:table|soup|big|bigger|large|larger|tb|tbs)\b/.test(text)
    ? "tbsp"
    : /\b(?:tea|coffee|small|smaller|little)\b/.test(text)
      ? "tsp"
      : undefined;
