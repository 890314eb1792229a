/** Whose form a label is to have: of the United States, of the European Union, or of a land that no table here knows. */
import type { Reading } from "../contract/index.ts";
import type { LabelInputs } from "./label.ts";

const european = /\b(?:eu|e\.u\.|europe\w*|german\w*|french|irish)\b/;

/** "us" is a word of many sentences: it counts beside a form, behind "for the", or alone. */
const american =
  /\b(?:us|usa|u\.s\.|american?|fda|states) (?:label|form|version|rules?|law|one)|\b(?:usa|american|fda|united states)\b|for the (?:us|states)\b|^(?:the |a )*us(?: one| please| pls| then)*[.!]?$/;

const otherLands =
  /\b(?:(uk|u\.k\.|british|english|scottish|welsh|canadian|australian|aussie|indian|japanese|swiss|norwegian|mexican|brazilian|south african|new zealand) (?:label|form|version|rules?|law|one)|for (?:the |a )?(uk|u\.k\.|united kingdom|britain|england|scotland|wales|canada|australia|india|japan|switzerland|norway|mexico|brazil|south africa|new zealand))\b/;

export function marketSaid({ text }: Reading): Partial<LabelInputs> {
  if (european.test(text)) return { market: "eu" };
  if (american.test(text)) return { market: "us" };
  const land = otherLands.exec(text);
  return land ? { elsewhere: land[1] ?? land[2] } : {};
}
