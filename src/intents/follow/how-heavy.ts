/** "how heavy is one", behind a bowl of shells: what one of those weighs. */
import { opening } from "../../../data/words/openers.ts";
import type { Reading } from "../../tools/contract/index.ts";
import { spaced } from "./spaced.ts";
import type { State } from "./state.ts";

const asked = new RegExp(
  `^${opening}(?:how heavy|what weight) (?:is|are|was|were|will|would|should) (?:they each|each(?: one)?|one|a single one|any one|one each|each of (?:them|those|these)|one of (?:them|those|these))(?: (?:be|each|alone|then|now|piped|raw|roughly|about))*((?: (?:once|when|after)(?: its| it is| theyre| they are)?)? (?:baked|out of the oven))?(?: (?:then|please|pls))*[ ?.!]*$`,
);

/** Undefined where no shells were spoken of. Pure. */
export function howHeavy({ text, amounts, whens }: Reading, { last }: State): string | undefined {
  if (last?.tool !== "shells" || !/\b(?:heavy|weight)\b/.test(text) || whens.length > 0) return undefined;
  if (amounts.some(({ value, dim }) => dim !== "number" || value !== 1)) return undefined;
  const found = asked.exec(spaced(text));
  return found ? `what does one of those weigh${found[1] ? " once its baked" : ""}` : undefined;
}
