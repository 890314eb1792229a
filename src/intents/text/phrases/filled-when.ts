/** Which of them were filled when, and whether they may still be handed out. */
import type { Phrase } from "./phrase.ts";

export const filledWhen = (): readonly Phrase[] => [
  // "those filled on the 10th"
  {
    marks: ["those ", "these ", "them "],
    from: /\b(?:those|these) (filled|made|baked|boxed|frozen) (?=on|last|yesterday|this|two|three)/g,
    to: "the ones $1 ",
  },
  // "can they still go out today": to whoever ordered them
  {
    marks: ["still go out", "still be handed"],
    from: /\bcan (?:they|those|these|it) still (?:go out|be handed over|be given out)(?= (?:today|now|tomorrow)| ?[?.!]*$)/g,
    to: "are they still good",
  },
];
