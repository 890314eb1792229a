/** Once again as it was, said shortly: "single is fine" behind a doubled recipe. */
import type { Phrase } from "./phrase.ts";

const lead =
  "(?:(?:ok|okay|and|so|oh|well|right|no|nah|nope|actually|hm|sorry|but|then|ugh|argh|wait|ha),? )*";
const will =
  "(?: (?:is|'s|will|would|should|be|do|does|fine|enough|plenty|ok|okay|good|then|please|pls|now|instead|after all|thanks|it|again|to be))*";
export const oneOfIt = (): readonly Phrase[] => [
  {
    marks: ["single"],
    from: new RegExp(
      `^${lead}(?:(?:just|only|make it|do|do it|back to|take|the|a|i'll do|keep it) )*single(?: (?:batch|recipe|one|lot|quantity|amount))?${will}[ .!]*$`,
      "g",
    ),
    to: "a single batch will do",
  },
];
