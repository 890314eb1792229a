/** What lies on top goes into no bowl: "15 g of it is in the 500 g buttercream and 8 candy canes on top". */
import type { Phrase } from "./phrase.ts";
import { count } from "./spelt.ts";

/** What is measured, or counted to be made or paid: nothing to decorate with. */
const counted =
  "g|gr|grams?|kg|oz|ounces?|lbs?|ml|cl|l|cups?|tbsps?|tsps?|tablespoons?|teaspoons?|spoons?|drops?|pinch|pinches|sticks?|s|sec|secs|seconds?|min|mins|minutes|percent|hours?|days?|mm|cm|butter ?cream|ganache|filling|batter|more|extra|others?|another|spares?|of|macarons?|macs|shells?|pairs?|whites?|eggs?|yolks?|trays?|sheets?|box|boxes|batch|batches|bowls?|bags?|packs?|packets?|bottles?|people|guests|euros?|dollars?|pounds?|cents?|bucks|quid";

export const onTop = (): readonly Phrase[] => [
  // "filling for 24 macarons with 6 g each, and 12 macarons on top": made as well, and nothing to decorate with
  {
    marks: [" on top"],
    from: /\b(\d{1,3}) (macarons?|macs)\b([^?.;]*?)(?:,| and|, and| with| plus)+ (\d{1,3}) (?:(?:more|extra|macarons?|macs|of them|others?) ?)+on top\b(?! of\b)/g,
    to: (_said, many = "", what = "", between = "", more = "") =>
      `${Number(many) + Number(more)} ${what}${between}`,
  },
  // "24 macarons at 6 g each and 12 more"
  {
    marks: [" more"],
    from: /\b(\d{1,3}) (macarons?|macs)\b([^?.;]*?)(?:,| and|, and| plus|, plus) (?:another )?(\d{1,3}) more(?: (?:macarons?|macs|of them|ones?))*(?= ?(?:$|[.?!,]))/g,
    to: (_said, many = "", what = "", between = "", more = "") =>
      `${Number(many) + Number(more)} ${what}${between}`,
  },
  {
    marks: [" on top", " decorat", " garnish", " on the lids"],
    from: new RegExp(
      `(?<=\\d ?(?:g|grams?)\\b[^?]*)(?:,| and|, and| with| plus)+ (?:${count}|some|a few) ?(?!(?:${counted})\\b)[a-z]+(?: (?!of\\b)[a-z]+){0,2} (?:on top|on the lids|(?:for|as) (?:decoration|a garnish|garnish)|to decorate|for decorating)(?: (?:of (?:it|them)|too|as well))*`,
      "g",
    ),
    to: "",
  },
];
