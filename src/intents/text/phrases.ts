/** Turns of phrase that are read as others, once a text is in lower case and plain signs. */
import { askedWithin } from "./phrases/asked-within.ts";
import { clockSaid } from "./phrases/clock.ts";
import { dollars } from "./phrases/dollars.ts";
import { drawl } from "./phrases/drawl.ts";
import { drawlAmounts } from "./phrases/drawl-amounts.ts";
import { drawlTimers } from "./phrases/drawl-timers.ts";
import { indirect } from "./phrases/indirect.ts";
import { leadIn } from "./phrases/lead-in.ts";
import { measures } from "./phrases/measures.ts";
import { offhand } from "./phrases/offhand.ts";
import { offhandTimers } from "./phrases/offhand-timers.ts";
import { oneHanded } from "./phrases/one-handed.ts";
import { oneHandedBowls } from "./phrases/one-handed-bowls.ts";
import { oneHandedTimers } from "./phrases/one-handed-timers.ts";
import { polite } from "./phrases/polite.ts";
import { roundabout } from "./phrases/roundabout.ts";
import { roundaboutSums } from "./phrases/roundabout-sums.ts";
import { spoken } from "./phrases/spoken.ts";
import { talk } from "./phrases/talk.ts";
import { typed } from "./phrases/typed.ts";

// sounds and signs of money, then slips: the others are written in right words
const phrases = [
  ...leadIn,
  ...spoken,
  ...dollars,
  ...oneHanded,
  ...oneHandedTimers,
  ...oneHandedBowls,
  ...typed,
  ...drawlAmounts,
  ...drawl,
  ...drawlTimers,
  ...offhandTimers,
  ...offhand,
  ...roundabout,
  ...roundaboutSums,
  ...polite,
  ...askedWithin,
  ...indirect,
  ...talk,
  ...clockSaid,
  ...measures,
];

/** The text with its turns of phrase put plainly. */
export function plainly(text: string): string {
  let now = text;
  // the space in front stands for the start of a word
  let spaced = ` ${now}`;
  for (const { marks, from, to } of phrases) {
    if (!holdsOne(spaced, marks)) continue;
    now = typeof to === "string" ? now.replace(from, to) : now.replace(from, (...found) => to(...found));
    spaced = ` ${now}`;
  }
  return now;
}

/** Most texts hold none of most phrases' marks, and are asked for all of them. */
function holdsOne(text: string, marks: readonly string[]): boolean {
  for (const mark of marks) if (text.includes(mark)) return true;
  return false;
}
