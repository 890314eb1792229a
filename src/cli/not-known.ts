/** What is said where nothing was understood: what can be said all the same, and what to try. */
import { topics } from "../../data/words/topics.ts";
import type { Reading } from "../tools/contract/index.ts";

const swaps =
  /\b(?:instead of|in place of|rather than|swap\w*|replac\w*|substitut\w*|exchange)\b|\bcan i (?:use|blend)\b|\b(?:no|out of|ran out of|havent got|dont have) \S+ \S*,? ?(?:can|what|use)/;
const slips =
  /\b(?:forgot|forgotten|by mistake|accidentally|too early|too late|dropped|spilled|spilt|overwhipped|overmixed|underbaked|overbaked|mixed up)\b/;

const allNotes =
  /\b(?:delete|erase|clear|remove|forget) (?:all|every|everything)\b.*\b(?:notes?|batches|log)\b|\bdelete everything\b/;

const isFood = (reading: Reading): boolean =>
  reading.things.some((each) => each.ingredient || each.dose || each.chocolate || each.base);

/** The sentence ahead of the usual one; empty where there is none. */
export function nearMiss(reading: Reading): string {
  if (allNotes.test(reading.text))
    return 'Notes go one at a time, so that none is lost by a slip: "delete the last note", "delete the lemon note". ';
  if (!isFood(reading)) return "";
  if (swaps.test(reading.text))
    return "I have no rule for putting one ingredient in another's place: almond flour, whites and sugars each do a job that others don't, so I give no figure. A recipe of your own I can save, scale, price and label. ";
  return slips.test(reading.text)
    ? "I have no rule for saving that. Weigh what is in the bowl and tell me, or note the batch and ask what went wrong. "
    : "";
}

/** Calculators whose own name says little to a baker. */
const plainly: Readonly<Record<string, string>> = {
  recall: "your notes",
  shelf: "your shelf",
  trouble: "what went wrong",
  bench: "your settings",
  method: "a step of the bake",
};

/** "keeping", "your shelf": what a calculator is about, in a baker's word. */
export const topicNamed = (tool: string): string => plainly[tool] ?? topics[tool]?.[0] ?? tool;
