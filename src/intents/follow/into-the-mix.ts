/** "and kirsch", "vanilla paste too?", behind a ganache or a buttercream that was weighed out: how much of it goes in. */
import { leadingWords } from "../../../data/words/openers.ts";
import type { Reading } from "../../tools/contract/index.ts";
import { isFlavor } from "./into-part.ts";
import { wordsWithout } from "./part-gets.ts";
import type { State } from "./state.ts";

const talk: ReadonlySet<string> = new Set([
  ...leadingWords,
  ..."and with some a bit splash of the also too as well in it please pls then now for that plus what about how much many grams add adding put stir stirring swirl swirling fold folding mix mixing beat whisk i want lets".split(
    " ",
  ),
]);
/** What was weighed out by them is a bowl that something goes into. */
const weighs: ReadonlySet<string> = new Set(["ganache", "buttercream"]);

/** The dose asked plainly; undefined where anything else is said. Pure. */
export function intoTheMix(reading: Reading, { last, table }: State): string | undefined {
  const { things, amounts, whens, text } = reading;
  const flavors = things.filter((each) => isFlavor(each) && !each.color && !each.chocolate);
  const [only, ...others] = flavors;
  const mass = table.mass;
  if (!last || !weighs.has(last.tool) || mass?.thing !== last.tool || !only) return undefined;
  // "raspberry in it, grams?": the unit is no other thing
  const named = things.filter((each) => each.unit === undefined);
  if (others.length > 0 || named.length > 1 || amounts.length > 0 || whens.length > 0) return undefined;
  const words = wordsWithout(text, [only]);
  return words.every((word) => talk.has(word)) ? `how much ${only.text} for it` : undefined;
}
