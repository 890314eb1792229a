/**
 * "thats my buttercream in grams. vanilla extract for it", behind what 3/4 of 480 is: the bowl weighs what the sum came to.
 * Read word by word: what is told of the number is that it is that mix, and nothing else is measured.
 */
import { leadingWords } from "../../../data/words/openers.ts";
import type { Reading } from "../../tools/contract/index.ts";
import { flavorsSaid, plainDose, wordsWithout } from "./part-gets.ts";
import type { State } from "./state.ts";

/** One of them has to be said: the number is pointed at. */
const points = new Set("thats that's that this its it's it those theyre".split(" "));
const talk: ReadonlySet<string> = new Set([
  ...leadingWords,
  ...points,
  ...(
    "is was will would be are weighs weigh weighed weight the my our of all whole how much many heavy i ive have got in g grams gram " +
    "grammes amount bowl bowlful big for into with what whats should goes go do does need needs wants want gets get take takes " +
    "add put to a as dose there theres here only just about exactly say please pls what's some flavor which second third next other another same"
  ).split(" "),
]);

/** Undefined where no sum stands before it, or more is said of it. Pure. */
export function sumIsBowl(reading: Reading, { last, table, past = [] }: State): string | undefined {
  if (last?.tool !== "convert") return undefined;
  const weight = table.mass?.thing ? undefined : table.mass?.grams;
  const grams = last.inputs.sum === undefined ? weight : table.number;
  if (grams === undefined || grams <= 0) return undefined;
  const said = flavorsSaid(reading);
  const [mix, ...others] = reading.things.filter((each) => each.base && !said?.flavors.includes(each));
  if (!said || !mix?.base || others.length > 0 || said.amount?.dim === "weight" || reading.whens.length > 0)
    return undefined;
  const words = wordsWithout(reading.text, [...said.flavors, mix, ...(said.amount ? [said.amount] : [])]);
  if (!words.some((word) => points.has(word)) || !words.every((word) => talk.has(word))) return undefined;
  // "same flavour": the one that was dosed before
  const before = words.includes("same") ? past.findLast(({ tool }) => tool === "dose")?.inputs : undefined;
  const { taste, dose, name } = before ?? {};
  if (dose === "flavor" && typeof taste === "string")
    return `how much ${taste} flavor for ${grams} g ${mix.text}`;
  if (typeof name === "string" && dose !== "flavor") return `how much ${name} for ${grams} g ${mix.text}`;
  return plainDose(said.flavors, said.amount, grams, mix.text);
}
