/** Which oven a temperature is wanted for: the one that is hers, or the one named second. */
import type { Amount, Reading } from "../contract/index.ts";
import { isOfRecipe, type Mention, type Oven, ovenThere, written } from "./oven-there.ts";
import { celsius } from "./units.ts";

/** A heat said without a scale is in °F above this: no shell bakes at 230 °C, none at 230 °F. Common practice. */
const hottest_c = 230;

/** The scale of an oven's heat: as said, else by what an oven can have. */
export const scaleOf = ({ value, unit }: { value: number; unit?: string | undefined }): "°C" | "°F" =>
  unit === "°C" || unit === "°F" ? unit : value > hottest_c ? "°F" : "°C";

/** An oven's heat in °C. */
export const inCelsius = (heat: Pick<Amount, "value" | "unit">): number => celsius(heat.value, scaleOf(heat));

const fanWords = /^(?:fan|fans|convection|fanforced|blower)$/;
const plainWords = /^(?:conventional|conventionals|static|regular|normal|ordinary|standard)$/;
const hers = /^(?:my|mine|mines|our|ours|ive|i|weve|we)$/;
const no = /^(?:no|not|without|isnt|hasnt|doesnt|non)$/;

/** "i don't have a fan oven". */
const hasNone = /(?:dont|do not|havent|doesnt|hasnt) (?:have|has|got|own|use)(?: an?| any| the)?$/;

/** The oven that the answer is for, or undefined when no oven is named. */
export function ovenWanted(reading: Reading): Oven | undefined {
  const words = reading.mask.split(" ");
  const mentions = mentionsIn(words);
  if (mentions.length === 0) return undefined;
  const heat = words.findIndex((word) => /<temperature[^>]*>$|<number>$/.test(word));
  const kinds = new Set(mentions.map((each) => each.oven));
  const alone = kinds.size === 1;
  // "140 c on my fan oven, what would that be in a conventional one"
  const target =
    /(?:that|it|this) (?:be )?(?:in|on|for) (?:an? |the |my )?(fan|convection|conventional|static|normal|regular|ordinary|standard)(?: |$)/.exec(
      reading.mask,
    )?.[1];
  if (target && kinds.size > 1) return fanWords.test(target) ? "fan" : "conventional";
  // "that is for a conventional oven, and those 163 °C in a fan oven"
  const told =
    /(?:that|it|this|which) (?:is|was) for (?:an? |the )?(fan|convection|conventional|static|normal|regular|ordinary|standard)(?: |$)/.exec(
      reading.mask,
    )?.[1];
  if (told) return other(fanWords.test(told) ? "fan" : "conventional");
  const recipes = mentions.find(({ at }) => isOfRecipe(words, at));
  if (recipes) return other(recipes.oven);
  const there = kinds.size > 1 ? ovenThere(words, mentions, heat) : undefined;
  if (there) return there;
  const mine = mentions.find(
    (each) =>
      words.slice(Math.max(0, each.at - 5), each.at).some((word) => hers.test(word)) &&
      !words.slice(Math.max(0, each.at - 5), each.at).some((word) => written.test(word)) &&
      !isSource(words, each, heat, alone),
  );
  if (mine) return mine.oven;
  const source = mentions.find((each) => isSource(words, each, heat, alone));
  if (source) return other(source.oven);
  if (alone) return mentions[0]?.oven;
  const behind = mentions.filter((each) => each.at > heat);
  return (behind.at(-1) ?? mentions.at(-1))?.oven;
}

/**
 * Straight behind the temperature it says what that is for: "150 c conventional", "130 c in a fan oven". With "in a"
 * and no other oven named it is what is asked for ("what is 180 c in a fan oven"), unless a recipe says it.
 */
function isSource(words: readonly string[], mention: Mention, heat: number, alone: boolean): boolean {
  if (heat < 0) return false;
  // "what for a fan oven if a conventional one is 150 c"
  if (mention.at < heat) {
    const before = words.slice(mention.at + 1, heat);
    return (
      !alone && before.includes("is") && before.every((word) => ["one", "oven", "is", "at"].includes(word))
    );
  }
  const between = words.slice(heat + 1, mention.at);
  const ahead = words.slice(0, heat);
  const isWritten = ahead.some((word) =>
    ["recipe", "book", "cookbook", "magazine", "says", "gives", "wants", "card", "calls"].includes(word),
  );
  // "book gives 165 c, conventional. mine has a fan", and not "fan 145 c, conventional would be"
  const isFirst = !ahead.some((word) => fanWords.test(word) || plainWords.test(word));
  const joins = isFirst && (!alone || isWritten);
  if (!between.every((word) => leadIn.has(word) || (word === "," && joins))) return false;
  return !alone || !between.includes("in") || isWritten;
}

const leadIn = new Set(["in", "a", "an", "the", "with", "(", "on", "is", "oven", "electric"]);

/** Which oven a sentence speaks of, when it speaks of one only: "in a fan oven". */
export function ovenNamed(reading: Reading): Oven | undefined {
  const kinds = new Set(mentionsIn(reading.mask.split(" ")).map((each) => each.oven));
  return kinds.size === 1 ? [...kinds][0] : undefined;
}

const other = (oven: Oven): Oven => (oven === "fan" ? "conventional" : "fan");

function mentionsIn(words: readonly string[]): Mention[] {
  return words.flatMap((word, at): Mention[] => {
    if (plainWords.test(word))
      return /^(?:regular|normal|ordinary|standard)$/.test(word) &&
        words[at + 1] !== "oven" &&
        words[at + 1] !== "one" &&
        // "325 f regular"
        !/<temperature[^>]*>$/.test(words[at - 1] ?? "")
        ? []
        : [{ oven: "conventional", at }];
    if (!fanWords.test(word)) return [];
    return [
      {
        oven:
          words.slice(Math.max(0, at - 2), at).some((each) => no.test(each)) ||
          hasNone.test(words.slice(Math.max(0, at - 4), at).join(" "))
            ? "conventional"
            : "fan",
        at,
      },
    ];
  });
}
