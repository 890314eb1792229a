/** What is wanted by the spoon or on its usual timer, named first: "tsp of flavor for 315 g buttercream". */
import type { Phrase } from "./phrase.ts";

const lead = "((?:(?:ok|okay|and|so|now|hm|then|also|please),? )*)";
/** A spoonful that went in, or is asked about, is one of them. */
const isOne =
  "(?!.*\\b(?:ok|okay|alright|fine|enough|too|much|many|right|went|fell|added|add|put|used|left|went in|is|was|grams?|g\\?)\\b)";

export const unitFirst: readonly Phrase[] = [
  {
    marks: ["tsp", "teaspoon", "tbsp", "tablespoon"],
    from: new RegExp(
      `^${lead}(tsps?|teaspoons?|tbsps?|tablespoons?) (?:of )?(?=[a-z][^\\d?]* \\d)${isOne}`,
      "g",
    ),
    to: "$1how many $2 ",
  },
  // "put the ganache on its usual timer"
  {
    marks: ["usual timer", "normal timer", "standard timer", "regular timer"],
    from: /\b(?:put|set|get|stick|pop|start|have) (?:the |my |that )?([a-z]+(?: [a-z]+)?) (?:on|onto|to|with) (?:its|the|their|a|my) (?:usual|normal|standard|regular) timer\b/g,
    to: "start the $1 timer",
  },
  // "every last one has a peak": all of them, and none that was the last
  {
    marks: ["every last", "every single"],
    from: /\bevery (?:last|single) (one|shell|macaron|batch|tray)\b/g,
    to: "every $1",
  },
];
