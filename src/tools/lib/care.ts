/** The sentences that every answer about keeping, selling, raw egg or allergens ends with. */

/** Keeping, raw egg: who decides. */
const lastWord = "Your local food authority and its rules for home kitchens have the last word.";
export const keepingCaution = `When in doubt throw it out. ${lastWord}`;
/** When they have matured: who decides, and nothing is in doubt. */
export const maturedCaution = lastWord;

/** Selling: who decides. */
export const sellingCaution =
  "Whether and how you may sell from home is for your local food authority and the rules for home kitchens to say.";

/** Allergens: what the program can't know. */
export const allergenCaution =
  "Traces from your kitchen and what the wrappers say are yours to check; your local food authority has the last word on what a label must carry.";
