/** "3 tbsp butter in g, and i want 300 g dark ganache": behind a question of another matter a wish is an order of its own. */
import type { Ear, Part } from "./part.ts";

const wish =
  /^(?:(?:and|also|then|plus|so|but|,) )*(?:(?:i|we|id|ill)(?: (?:also|really|will|would|still|just|do|am))* (?:want|need|like|make|making|got to make|have to make|after)|(?:make|mix|give me|mix me|make me)) (?:to (?:make|have|mix) )?(?:about |roughly )?\S*<weight> (?:of )?(?:(?!for|in|into|with)\S+ ){0,2}?\S*<[^>]*base=(?:ganache|buttercream|batter)/;

/** Calculators that have nothing to do with how much of a mix is made. */
const others = ["convert", "timer", "keep", "label", "trouble", "method"];

/**
 * @param before a question or order
 * @param part what stands behind it
 */
export const wantsMix = (before: Part, part: Part, ear: Ear): boolean =>
  wish.test(ear.mask(part)) &&
  ["ganache", "buttercream", "scale", "shells"].includes(ear.claimed(part)?.name ?? "") &&
  others.includes(ear.claimed(before)?.name ?? "");
