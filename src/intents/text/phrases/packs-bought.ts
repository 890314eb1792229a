/**
 * What a bottle holds and what it cost, told beside the bowl that is flavored: "got a 118 ml bottle of vanilla extract for
 * 9 dollars, the filling is 275 g, how many grams of extract". Neither is poured in.
 */
import { container } from "../../../../data/words/told-beside.ts";
import type { Phrase } from "./phrase.ts";

const number = "\\d+(?:[.,]\\d+)?";
const volume = `${number} ?(?:ml|cl|millilitres?|milliliters?)`;
const weight = `${number} ?(?:g|gr|grams?|kg|oz|ounces?)\\b`;
const mix = "(?:smbc|butter ?cream|ganache|filling|frosting|mascarpone)";
const bowl = `(?:\\b${weight} (?:of )?(?:[a-z]+ ){0,3}${mix}\\b|\\b(?:${mix}|bowl|batch)\\b[^.?!\\d]{0,20}${weight})`;
const asks = "\\b(?:how (?:much|many grams?|many g)|grams of|what dose)\\b";
/** Then the bottle or its price is what it is about. */
const ofBottle =
  "\\b(?:price|margin|profit|shelf|stock|notes?|save|remember|label|directions?|says|enough|whole|all of|empt(?:y|ied)|per|charge|sell|timer|costs|convert|used?|using|use it up|more|is in|in it|good for|is all i have|tipped|poured|put|added|went|already|in ml|how many ml|how (?:much|many) (?:does|do|did|is|was) [^?]*cost)\\b";
const flavor =
  "(?:[a-z]+ ){0,2}?(?:extract|flavou?r(?:ing)?|essence|oil|liqueur|rum|kirsch|syrup|concentrate)";

const packs: readonly [RegExp, string][] = [
  [new RegExp(`\\b${volume} (${container})( of)?\\b`, "g"), "$1$2"],
  [new RegExp(`\\b(${container} of ${flavor}),? (?:it'?s |is |holds |of )?${volume}(?=[ ,.;]|$)`, "g"), "$1"],
  [new RegExp(`\\b(got|bought|picked up|found) ${volume} (?:of )?(?=${flavor}\\b)`, "g"), "$1 "],
];
const price =
  /,? (?:for |at |(?:that |which |it )?(?:was |were |cost(?: me)? ))?(?:only |just |about )?(?:[$£€] ?\d+(?:[.,]\d+)?|\d+(?:[.,]\d+)? ?(?:dollars?|euros?|quid|bucks|pence|cents))\b|,? (?:for |(?:that |which |it )?(?:was |cost(?: me)? ))(?:only |just |about )?\d+(?:[.,]\d+)? pounds\b/g;

export const packsBought = (): readonly Phrase[] => [
  {
    marks: ["ml", "cl", "millil"],
    from: new RegExp(`^(?=.*\\d ?(?:ml|cl|milli))(?=.*${bowl})(?=.*${asks})(?!.*${ofBottle}).*$`, "g"),
    to: (whole = "") => {
      const plain = packs.reduce((text, [from, to]) => text.replace(from, to), whole);
      return plain === whole ? whole : plain.replace(price, "");
    },
  },
];
