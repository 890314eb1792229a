/** "too much, take one off", behind a timer: one minute. */
import { openingText } from "../../../data/words/openers.ts";
import type { Reading } from "../../tools/contract/index.ts";
import type { State } from "./state.ts";

const lead = openingText(
  "too (?:much|long|little|short|many)",
  "not enough",
  "can you",
  "could you",
  "lets|let's",
);
const end =
  "(?: (?:of it|of that|again|then|please|pls|now|from (?:it|that)|(?:on )?(?:to )?(?:it|that)))*[ .!]*$";
const ways: readonly (readonly [RegExp, string])[] = [
  [
    new RegExp(`^${lead}(?:take|knock|shave|cut|lop) (?:just |only |another )?one (?:off|away|back)${end}`),
    "take 1 min off",
  ],
  [new RegExp(`^${lead}one (?:less|fewer|off|minute less)${end}`), "take 1 min off"],
  [
    new RegExp(
      `^${lead}(?:put|add|stick|pop|tack) (?:just |only )?(?:another one|one more|one)(?: (?:on|on top|back on|to it|more))*${end}`,
    ),
    "add 1 min",
  ],
];

/** The sentence put plainly; undefined where no timer was spoken of. Pure. */
export function oneMinute({ text, amounts, things, whens }: Reading, { last }: State): string | undefined {
  if (last?.tool !== "timer" || amounts.length + things.length + whens.length > 0) return undefined;
  return ways.find(([said]) => said.test(text))?.[1];
}
