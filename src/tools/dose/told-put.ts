/** "i put 8 g in", "oops put 12 g raspberry in": so much went into the bowl, and it is no bowl itself. */
import { putWords } from "../../../data/words/putting.ts";
import type { Reading } from "../contract/index.ts";
import { says } from "../lib/find.ts";

/** What somebody did, up to its weight. */
export const iPut = new RegExp(
  `(?:^| )i (?:have |ve |already |just )*(?:${putWords})(?: in| already)? \\S*<weight>`,
);
/** Told without a word of whom. */
const putIn = new RegExp(
  `^(?:(?:oops|oh|no|damn|argh|and|so|but|accidentally|just|already|,) )*(?:${putWords})(?: in)? \\S*<(?:weight|number)>(?: of)?(?: \\S+){0,2}? in(?:to)?(?: (?:it|there|already|now|too|by mistake|[.!?]))*$`,
);

export const tellsPut = (reading: Reading): boolean => says(reading, iPut) || says(reading, putIn);
