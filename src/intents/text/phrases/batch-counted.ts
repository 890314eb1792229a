/**
 * "for this batch of 24 i pipe 3.5 cm, batter": what a batch is counted in is macarons. Nobody makes a hundred at a time
 * (from memory): three digits are what it weighs.
 */
import type { Phrase } from "./phrase.ts";

export const batchCounted = (): readonly Phrase[] => [
  // "a batch of 460, how many macarons": what is asked for isn't told
  {
    marks: ["batch of "],
    from: /\b(batch of \d{3,4})(?= ?[,;:]? (?:and |so )?(?:how many|what number of) (?:macarons|macs|shells)\b)/g,
    to: "$1 g",
  },
  {
    marks: ["batch of "],
    from: /\b(batch of \d{1,2})(?= ?(?:$|[,;:?!]|\.(?!\d)|(?:i|we|is|are|was|im|i'm|at|piped|baked|of \d|in|with|for|today|tomorrow|tonight|on|by|and|how|what|batter|filling)\b))/g,
    // "batch of 30, 250 g buttercream, how much flavor": asked of the weight
    to: (...found) =>
      /\d ?(?:g|gr|grams?|kg|oz|ounces?|lbs?|ml)\b/.test(String(found.at(-1)))
        ? (found[0] ?? "")
        : `${found[1]} macarons`,
  },
];
