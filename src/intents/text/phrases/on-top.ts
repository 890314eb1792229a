/** What lies on top goes into no bowl: "15 g of it is in the 500 g buttercream and 8 candy canes on top". */
import type { Phrase } from "./phrase.ts";
import { count } from "./spelt.ts";

export const onTop: readonly Phrase[] = [
  {
    marks: [" on top", " decorat", " garnish", " on the lids"],
    from: new RegExp(
      `(?<=\\d ?(?:g|grams?)\\b[^?]*)(?:,| and|, and| with| plus)+ (?:${count}|some|a few) ?(?!(?:g|gr|grams?|kg|oz|ml|min|mins|minutes|percent|hours?|butter ?cream|ganache|filling)\\b)[a-z]+(?: (?!of\\b)[a-z]+){0,2} (?:on top|on the lids|(?:for|as) (?:decoration|a garnish|garnish)|to decorate|for decorating)(?: (?:of (?:it|them)|too|as well))*`,
      "g",
    ),
    to: "",
  },
];
