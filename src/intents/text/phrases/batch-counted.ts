/** "for this batch of 24 i pipe 3.5 cm, batter": what a batch is counted in is macarons. */
import type { Phrase } from "./phrase.ts";

export const batchCounted: readonly Phrase[] = [
  {
    marks: ["batch of "],
    from: /\b(batch of \d{1,3})(?= ?(?:$|[,;:?!]|\.(?!\d)|(?:i|we|is|are|was|im|i'm|at|piped|baked|of \d|in|with|for|today|tomorrow|tonight|on|by|and|how|what|batter|filling)\b))/g,
    to: "$1 macarons",
  },
];
