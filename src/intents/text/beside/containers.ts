/** What a thing comes in and how strong it is: "30 ml bottle", "jar is 200 g", "the 54 percent stuff", "35 % cream". */
import { tastes } from "../../../../data/words/flavors.ts";
import { container, containerWords } from "../../../../data/words/told-beside.ts";
import { clauseEnd, clauseStart, number } from "./pieces.ts";
import type { ToldBeside } from "./told-beside.ts";

const volume = `${number} ?(?:ml|cl|dl|l|millilitres?|milliliters?|litres?|liters?|fl\\.? ?oz|fluid ounces?)\\b`;
const weight = `${number} ?(?:g|gr|grams?|oz|ounces?|kg|kilos?)\\b`;
/** Of what is worked out, there is a weight or a number besides. */
const bowl =
  /\d ?(?:g|gr|grams?|oz|ounces?|kg|kilos?|lbs?)\b[^.?!]{0,25}\b(?:smbc|buttercream|butter cream|ganache|filling|batter|cream|chocolate|mix|curd|caramel|jam|mascarpone|frosting|shells?)\b|\b(?:smbc|buttercream|ganache|filling|batter)\b[^.?!]{0,20}\d ?(?:g|gr|grams?|oz|kg)\b|\d+ (?:macarons?|macs|shells)\b/;
const told =
  "(?:'?s| is| has| holds| says| reads| contains| was| comes as| weighs| states)(?: about| only| just| got| a)?";
const inIt = "(?: (?:in it|in there|in total|of it|big|size|size only|when full|full|altogether))*";

const percent = `(?:${number} ?(?:%|percent|per cent|pct))`;
/** A drink that burns: no dose is as high as its strength. */
const spirits = tastes
  .filter(({ usual }) => usual === "spirit")
  .flatMap(({ taste, words = [] }) => [taste, ...words]);
const spirit = `(?:${[...spirits, "liqueur", "liquor", "schnapps", "spirits?", "booze", "alcohol"].join("|")})`;
const strong = "(?:1[5-9]|[2-9]\\d)(?:[.,]\\d+)? ?(?:%|percent|per cent|pct)";
const ofSpirit = new RegExp(`\\b${spirit}\\b`);

/** "my spearmint oil says 0.3 percent on the label": how much of it goes in, and not what it is made of. */
const ofFlavor =
  "\\b(?:oil|extract|flavou?r(?:ing)?|essence|gel|colou?r(?:ing)?) (?:only |just )?(?:says|reads|states|wants|has|is) (?:to use |use |about |only |just )?(?:[\\d.,]+ ?(?:-|to) ?)?";

export const containers: readonly ToldBeside[] = [
  // "a 30 ml bottle", "from the 200 g jar"
  {
    is: "what the pack holds",
    marks: ["ml", "cl", " l "],
    words: containerWords,
    said: new RegExp(`\\b(?:in )?(?:an? )?${volume} (?=${container}\\b(?! of ))`, "g"),
    unless: ["words", "money", "stock", "unit", "whole", "recipe"],
  },
  {
    is: "what the pack holds",
    marks: [" g", "oz", "kg", "kilo", "gr"],
    words: containerWords,
    said: new RegExp(
      `\\b(?:in )?(?:an? )?${weight} (?=${container}\\b(?! of (?:the )?(?:smbc|buttercream|ganache|batter|filling)))`,
      "g",
    ),
    unless: ["words", "money", "stock", "unit", "whole", "recipe"],
    beside: bowl,
  },
  // "jar has 118 ml in it", "comes in 60 ml bottles"
  {
    is: "what the pack holds",
    marks: ["ml", "cl", " l"],
    words: containerWords,
    said: new RegExp(
      `(?:${clauseStart}|(?=\\()|,? )(?:(?:the|its|it's|my|this|and|a|that) )*${container}${told}? ${volume}${inIt}${clauseEnd}`,
      "g",
    ),
    unless: ["words", "money", "stock", "unit", "whole", "recipe"],
  },
  {
    is: "what the pack holds",
    marks: [" g", "oz", "kg", "kilo", "gr"],
    words: containerWords,
    said: new RegExp(
      `${clauseStart}(?:(?:the|its|it's|my|this|and|a|that) )*${container}${told}? ${weight}${inIt}${clauseEnd}`,
      "g",
    ),
    unless: ["words", "money", "stock", "unit", "whole", "recipe"],
    beside: bowl,
  },
  // "one jar of praline is 340 g"
  {
    is: "what the pack holds",
    marks: [" of "],
    words: containerWords,
    said: new RegExp(
      `${clauseStart}(?:(?:the|my|one|each|a|that|this) )*${container} of (?!(?:[a-z]+ ){0,2}(?:smbc|buttercream|ganache|filling|batter|frosting|macarons)\\b)(?:[a-z]+ ){1,3}?(?:is|has|holds|weighs|contains) (?:about |only )?(?:${weight}|${volume})${inIt}${clauseEnd}`,
      "g",
    ),
    unless: ["words", "money", "stock", "unit", "whole", "recipe"],
    beside: bowl,
  },
  // "this 30 ml hazelnut flavour": what the bottle holds
  {
    is: "what the pack holds",
    marks: ["ml", "cl"],
    said: new RegExp(
      `(?<=\\b(?:this|my|the|that|paid|for an?|bought an?) )${volume} (?=(?:[a-z]+ ){1,2}(?:flavou?r(?:ing)?|extract|essence|oil|concentrate|aroma|paste|liqueur)\\b)`,
      "g",
    ),
    unless: ["words", "stock", "whole"],
    beside: bowl,
  },
  // "rum, the 54 percent stuff", "amaretto, 28% vol"
  {
    is: "how strong it is",
    marks: ["%", "percent", "per cent", "pct", "proof"],
    said: new RegExp(
      `,? ?\\(?(?:\\b(?:the|its|it's|it is|thats|that's|a|at|with) )*(?<!\\d)(?:${percent},? ?(?:stuff|abv|alc(?:ohol)?(?: (?:by )?vol(?:ume)?)?|vol(?:ume)?|strength|proof)|${number} proof)\\b(?: one| stuff| bottle)?\\)?`,
      "g",
    ),
    unless: ["words"],
  },
  // "the 38 % rum", "with 40 % kirsch"
  {
    is: "how strong it is",
    marks: ["%", "percent", "per cent", "pct"],
    said: new RegExp(`(?<=\\b(?:the|my|this|our|of|with|usual) )${strong} (?=(?:[a-z]+ )?${spirit}\\b)`, "g"),
    unless: ["words"],
  },
  // "kirsch for 240 g, its 40 percent", "bottle is 40 %", "rum (38 %)"
  {
    is: "how strong it is",
    marks: ["%", "percent", "per cent", "pct"],
    said: new RegExp(
      `(?:,|\\(|(?<=^|[.;!?] ?)) ?(?:(?:the|my|and|but|a) )*(?:its|it's|it is|it says|thats|that's|${container}(?:'?s| is| says?| reads| has)|(?<=\\()(?=\\d)|label says|mine is|mine's)(?: at| only| just| about)? ?${strong}(?: on the (?:label|bottle))?\\)?${clauseEnd}`,
      "g",
    ),
    unless: ["words"],
    beside: ofSpirit,
  },
  // "limoncello 30% for 220 g", "overproof rum, 63 %, how much", "cognac - 40 percent -", "kirsch at 45 %"
  {
    is: "how strong it is",
    marks: ["%", "percent", "per cent", "pct"],
    said: new RegExp(
      `(?<=\\b${spirit})(?: -|,| at| of| with| has| is|'s| says)? ?\\(?${strong}\\)?(?: -)?(?= ?(?:[,.;:!?)-]|$)| (?:for|in|into|to|how|and)\\b)`,
      "g",
    ),
    unless: ["words", "shares"],
  },
  // "with 35 % cream", "of the 70 % chocolate", "its made with 70% chocolate": which it is
  {
    is: "which chocolate or cream it is",
    marks: ["%", "percent", "per cent", "pct"],
    said: /(?<=\b(?:with|of|the|my|this|from|using|use|a|in) )(?<!\b(?:ganache|mix|filling) (?:with|of|from|in) )(?:(?:[3-9]\d|100)(?:[.,]\d+)? ?(?:%|percent|per cent|pct)) (?:(?:cocoa|cacao|fat) )?(?=(?:(?:dark|plain|bittersweet|whipping|double|heavy|single|milk|white|couverture) )?(?:choc|chocolate|couverture|cream|cocoa|ganache)\b)/g,
    unless: ["words", "keeping", "shares"],
  },
  // "(it says 35 % on the pot)", "33 percent fat it says", "its 100% nuts", "my chocolate is 54 %"
  {
    is: "which chocolate or cream it is",
    marks: ["%", "percent", "per cent", "pct"],
    said: new RegExp(
      `,? ?\\(?(?:\\b(?:it|its|it's|the|and|is|says|which|at|of|with|a|that|thats) )*(?:\\b${container}(?: says| is|:)? )?(?<!\\d[.,]?)(?:(?<!\\b(?:with|of|at) )${percent} (?:milk ?)?fat|${percent} (?:cocoa(?: solids)?|cacao|nuts|pure|fruit)|(?<!${ofFlavor})${percent} on the (?:pot|tub|carton|label|pack|packet|wrapper|bar|lid))\\b(?! (?!(?:it says|content|on the)\\b)[a-z])(?: (?:it says|content|on the (?:pot|tub|carton|label|pack)))*\\)?`,
      "g",
    ),
    unless: ["words", "keeping", "shares"],
  },
  {
    is: "which cream it is",
    marks: ["%", "percent", "per cent", "pct"],
    said: new RegExp(
      `(?:,|\\(|(?<=^|[.;!?] ?)) ?(?:(?:the|my|and|but) )*(?:${container}|label|wrapper|bar)(?:'?s| is| says?| reads| has)(?: about| only| just)? ?(?:[3-9]\\d)(?:[.,]\\d+)? ?(?:%|percent|per cent|pct)\\)?${clauseEnd}`,
      "g",
    ),
    unless: ["words", "keeping", "shares"],
    beside: /\bcream\b|\bchocolate\b|\bchoc\b/,
  },
];
