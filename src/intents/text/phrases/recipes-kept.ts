/** An order to keep a recipe that begins elsewhere than with "save": "under the name pale shells i'd like saved: ...". */
import type { Phrase } from "./phrase.ts";

const keep =
  "(?:sav(?:e|ed)|stor(?:e|ed)|keep|kept|remember(?:ed)?|fil(?:e|ed)|record(?:ed)?|put (?:by|away))";
const polite = "(?:(?:please|pls|for me|for later|and|so|ok|now|also|this|that|it|as well|too),? )*";
/** Two to four words, none of which an order or a question is made of. */
const name =
  "((?!(?:how|what|when|which|why|this|that|it|them|me|you|note|notes|timer|price|prices|pantry|stock|bottle)\\b)[a-z][a-z'-]*(?: (?!(?:is|are|has|have|how|what|should|must|to|for|with|note|price|under|as|i|i'd|and|:)\\b)[a-z][a-z'-]*){0,3})";
const like =
  "(?:i(?:'d| would|d)? (?:like|want|love|wish|need)|i wanna|i'?ll|let me|can i|can you|could you|please|lets|let's)";
/** A list of weights begins here, and nothing is asked before it. */
const list = "(?= ?(?:\\d|(?:[a-z]+ ){1,3}\\d|(?:two|three|four|five|six|seven|eight) (?:egg )?whites))";
const recipes = "(?:my|the|our) (?:own )?(?:recipes?|recipe (?:book|list|collection)|collection|formulas)";
const marks = ["sav", "stor", "keep", "kept", "remember", "fil", "recipe", "record"];
/** So many weights make it a list. */
const leastWeights = 2;
const weights = /\d ?(?:g|grams?|oz|kg|ml)\b/g;

/** The text in the order that the others know, where a list of weights stands behind it. */
const named =
  (at: number) =>
  (whole: string, ...found: string[]): string => {
    const text = String(found.at(-1));
    return (text.match(weights)?.length ?? 0) >= leastWeights ? `save recipe ${String(found[at])}: ` : whole;
  };

/** What one white weighs at the least and at the most, in g: "4 egg whites, 132 g" is one line where it is of them. */
const [lightest, heaviest] = [25, 42];
const numbers = ["one", "two", "three", "four", "five", "six", "seven", "eight"];
const counted = (word: string): number => numbers.indexOf(word) + 1 || Number(word);

/** Weights stand first, and things behind: the other way round a name would be cut off before it. */
const beginsList = /^\d+(?:\.\d+)? ?(?:g|grams?|oz|ml|kg) (?:of )?[a-z]/;

export const recipesKept: readonly Phrase[] = [
  {
    marks: ["whites, ", "whites: ", "whites ("],
    from: /\b(\d{1,2}|one|two|three|four|five|six|seven|eight) (egg )?whites(?:, | ?: | \()(\d+(?:\.\d+)?) ?(g|grams?)\b\)?(?=[,.;]| and )/g,
    to: (whole, ...found) => {
      const [many = "", egg = "", grams = ""] = found;
      const each = Number(grams) / counted(many);
      return each >= lightest && each <= heaviest ? `${many} ${egg ?? ""}whites weighing ${grams} g` : whole;
    },
  },
  // "under the name pale shells i would like saved: ...", "as pale shells i want this kept: ..."
  {
    marks,
    from: new RegExp(
      `^${polite}(?:under|by|with|as) (?:the (?:name|title) (?:of )?)?${name},? ${like}(?: to)?(?: have)? ${polite}(?:this |that |it |these )?${keep} ?[:,-]${list} ?`,
      "g",
    ),
    to: named(0),
  },
  // "i would like pale shells saved: ...", "please have pale shells kept: ..."
  {
    marks,
    from: new RegExp(
      `^${polite}${like}(?: to)?(?: have| see)? (?:my |the |a recipe (?:called |named )?)?${name} (?:saved|stored|kept|remembered|filed|recorded)(?: (?:please|for me|for later|as a recipe))* ?[:,-]${list} ?`,
      "g",
    ),
    to: named(0),
  },
  // "pale shells should go into my recipes: ...", "to be saved as pale shells: ..."
  {
    marks,
    from: new RegExp(
      `^${polite}(?:my |the )?${name} (?:should|must|can|is to|are to|needs? to|has to|have to|shall|goes?|belongs?)(?: (?:go|be|be put|get|be added|be written))? (?:in|into|to|with|among) ${recipes} ?[:,-]${list} ?`,
      "g",
    ),
    to: named(0),
  },
  {
    marks,
    from: new RegExp(
      `^${polite}to (?:be )?(?:saved|stored|kept|remembered|filed|save|store|keep|remember) ${polite}(?:as|under)(?: the name(?: of)?)? ${name} ?[:,-]${list} ?`,
      "g",
    ),
    to: named(0),
  },
  {
    marks,
    from: new RegExp(
      `^${polite}(?:put|file|enter|write|add|store|save) (?:this|that|it|these) (?:in|into|to|with|among) ${recipes} (?:under|as)(?: the name(?: of)?)? ${name} ?[:,-]${list} ?`,
      "g",
    ),
    to: named(0),
  },
  // "save tangy cream as a recipe - ...", "hold on to this recipe, salty caramel: ..."
  {
    marks: ["as a recipe", "as recipe", "as a formula", "as my recipe"],
    from: new RegExp(
      `^${polite}(?:save|store|keep|remember|file) (?:my |the )?${name} as (?:(?:a|my|another|new|own) )*(?:recipe|formula) ?[:,-]${list} ?`,
      "g",
    ),
    to: named(0),
  },
  {
    marks: ["this recipe", "a recipe", "my recipe", "the recipe", "new recipe"],
    from: new RegExp(
      `^${polite}(?:hold on to|hang on to|keep hold of|look after|tuck away|put by|keep|save|store|file|take down) (?:(?:this|my|the|a|another|new) )*recipe ?[,:]? (?:(?:called|named|its|it's|for) )?${name} ?[:-]${list} ?`,
      "g",
    ),
    to: named(0),
  },
  // "keep this for me as garden shells: ...", "put my recipe for lime curd away. ..."
  {
    marks: ["keep", "save", "store", "remember", "put ", "file"],
    from: new RegExp(
      `^${polite}(?:(?:sav|stor|fil)e|keep|remember|put (?:by|away)) (?:(?:this|that|it|these|one) )(?:(?:for me|for us|please|pls|for later|away|down|here),? )*(?:as|under)(?: the name(?: of)?)? ${name} ?[:,.-]${list} ?`,
      "g",
    ),
    to: named(0),
  },
  {
    marks: ["put my", "put the", "put our", "file ", "store ", "keep "],
    from: new RegExp(
      `^${polite}(?:put|file|store|keep|tuck) (?:my|the|our|this) recipe (?:for|of|called) ${name.replace("this|that", "away|this|that")} (?:away|by|down|on file|in the book|with the others)(?: (?:please|pls|for me))* ?[:,.-]${list} ?`,
      "g",
    ),
    to: named(0),
  },
  // "save the recipe green ring once more, this time with butter 230 g": the same name, and a list anew
  {
    marks,
    from: new RegExp(
      `^(${polite}(?:save|store|keep|remember|file) (?:the |my |our )?(?:recipe |formula )?(?:for |called )?[a-z][a-z'-]*(?: [a-z][a-z'-]*){0,3}?),? (?:again|anew|once more|once again|a second time|another time|over|afresh)(?:,? (?:but|only|and|now|this time|with|as|changed to|at|having|like this|like so|it has|using|of)(?![a-z]))*(?: ?[:,-])?${list} ?`,
      "g",
    ),
    to: "$1: ",
  },
  // "132 g whites, 170 g almond flour, ... . keep that under the name pale shells", "..., please save pale shells"
  {
    marks: ["name", "under", "save", "keep", "store"],
    from: new RegExp(
      `^(?!.*(?:pantry|stock|cupboard|shelf|note|how |what (?!i |we )|\\?))(?:with |[a-z][^?\\d]{0,80}?[,:] ?|(?:my |the |our )?[a-z][a-z' -]{1,30}? ?(?:is|are|goes|go|takes?|has|have|uses?|needs?|wants?|contains?) )?(\\d[^?]{10,300}?\\d ?(?:g|grams?|oz|ml) [a-z ]{2,30}?)[.,;:]? (?:and )?${polite}(?:${keep} (?:it|that|this|them|these|the lot|(?:this|that|the|my) (?:recipe|formula|list|one))? ?(?:in my recipes )?(?:under|as|by)(?: the (?:name|title)(?: of)?)?|(?:save|store|keep) (?=[a-z]+ (?:shells?|ring|mix|recipe|middle|filling|batter|caramel|cream)\\b)) ?${name}[.!]?$`,
      "g",
    ),
    to: (whole, ...found) => {
      const [lines, said] = found;
      return beginsList.test(lines ?? "") && (lines?.match(weights)?.length ?? 0) >= leastWeights
        ? `save recipe ${said}: ${lines}`
        : whole;
    },
  },
  // "my shells: whites 98 g, almond flour 126 g, sugar 91 g, save them under blue shells"
  {
    marks: ["under", "save", "keep", "store"],
    from: new RegExp(
      `^(?!.*(?:pantry|stock|cupboard|shelf|note|how |what (?!i |we )|\\?))(?:[a-z][^?\\d:]{0,80}?: ?)?((?:[a-z]+ ){1,3}\\d[^?]{8,300}?\\d ?(?:g|grams?|oz|ml))[.,;:]? (?:and )?${polite}${keep} (?:it|that|this|them|these|the lot|(?:this|that|the|my) (?:recipe|formula|list|one)) (?:in my recipes )?(?:under|as)(?: the (?:name|title)(?: of)?)? ${name}[.!]?$`,
      "g",
    ),
    to: (whole, ...found) => {
      const [lines, said] = found;
      return (lines?.match(weights)?.length ?? 0) >= leastWeights ? `save recipe ${said}: ${lines}` : whole;
    },
  },
  // "200 g butter, 160 g condensed milk, that's toffee cream, save the recipe please"
  {
    marks: ["save", "keep", "store", "remember"],
    from: new RegExp(
      `^(?!.*(?:pantry|stock|cupboard|shelf|note|how |what (?!i |we )|\\?))(\\d[^?]{10,300}?\\d ?(?:g|grams?|oz|ml) [a-z ]{2,30}?)[.,;:] (?:that's|thats|that is|this is|it's|its|makes|makes my|called|we call it|i call (?:it|that|this)) (?:the |my )?${name}[.,;] (?:and )?${polite}(?:save|keep|store|remember)(?: (?:it|that|this|them|the recipe|the formula|my recipe))?(?: (?:please|pls|for me|for later))*[.!]?$`,
      "g",
    ),
    to: (whole, ...found) => {
      const [lines, said] = found;
      return beginsList.test(lines ?? "") && (lines?.match(weights)?.length ?? 0) >= leastWeights
        ? `save recipe ${said}: ${lines}`
        : whole;
    },
  },
  // "pale shells: 132 g whites, ... . save it please"
  {
    marks: [
      "save it",
      "keep it",
      "store it",
      "save that",
      "keep that",
      "remember it",
      "save this",
      "save them",
    ],
    from: new RegExp(
      `^${polite}(?!.*(?:pantry|stock|cupboard|shelf|note|bottle|price|label|how |what |\\?))(?:my |the )?${name} ?: ?(\\d[^?]{10,300}?\\d ?(?:g|grams?|oz|ml) [a-z ]{2,30}?)[.,;] (?:and )?${polite}(?:save|keep|store|remember) (?:it|that|this|them)(?: (?:please|pls|for me|for later))*[.!]?$`,
      "g",
    ),
    to: (whole, ...found) => {
      const [said, lines] = found;
      return (lines?.match(weights)?.length ?? 0) >= leastWeights ? `save recipe ${said}: ${lines}` : whole;
    },
  },
];
