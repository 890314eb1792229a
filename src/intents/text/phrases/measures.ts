/** Amounts, spoons and shares said in other ways. */
import { smallNumbers } from "../../../../data/words/numbers.ts";
import type { Phrase } from "./phrase.ts";

const parts: Readonly<Record<string, number>> = { quarters: 4, thirds: 3, eighths: 8 };

export const measures = (): readonly Phrase[] => [
  // "powder in place of the gel"
  { marks: ["in place of "], from: /\bin place of (?=\S)/g, to: "instead of " },
  // "once and a half"
  {
    marks: ["once and a "],
    from: /\bonce and a (half|third|quarter)\b(?: times)?/g,
    to: "one and a $1 times",
  },
  // "two parts to one"
  {
    marks: ["parts to ", "part to "],
    from: /\b(\d+|one|two|three|four|five|six) parts? to (\d+|one|two|three|four|five|six)(?! ?(?:parts?|%|percent|g|grams?|min)\b)(?= ?(?:[,.?!]|$)| (?:please|pls|thanks|thank you|ta|cheers|then|now)\b)/g,
    to: "$1 to $2",
  },
  // "split 1/2/2", "3/1 pink and white": a ratio, and neither a date nor a half
  {
    marks: ["batter", "split", "divid", "ratio", "bowl"],
    from: /(?<!\b(?:frozen|since|from|filled|made|baked|dated|on)\b.*)(?<=\b(?:batter|split|divided?|dividing|ratio)\b.*)(?<![\d/.])(\d{1,2})\/(\d{1,2})(?:\/(\d{1,2}))?(?:\/(\d{1,2}))?(?![\d/.]| ?(?:cup|tsp|tbsp|of\b))/g,
    to: (said = "", ...sizes) => {
      const parts = sizes
        .slice(0, 4)
        .filter((each): each is string => each !== undefined && /^\d+$/.test(each));
      const [first = 0, second = 0] = parts.map(Number);
      return parts.length > 2 || (first > second && first + second < 20) ? parts.join(":") : said;
    },
  },
  // "50/50 then", "make it even", "an even split instead": of what is split, and no sum
  {
    marks: ["50/50", "50 / 50", "even", "half each"],
    from: /^((?:(?:no|ok|okay|so|and|then|actually|well|hm|oh|just|sorry),? )*)(?:(?:make|do|keep|split|have|call) (?:it|that|them) |go )?(?:50 ?\/ ?50|even(?:ly)?|(?:an |a )?(?:even|50 ?\/ ?50) split|half each)((?: (?:then|instead|please|pls|now|for both))*)(?= ?[?.!]?$)/g,
    to: "$1equal parts each$2",
  },
  // "half a pound of icing sugar, g": the unit that is wanted stands alone
  {
    marks: [", g", ",g", " gr"],
    from: /(\b(?:pounds?|lbs?|ounces?|oz|kilos?|kg|cups?|sticks?|tablespoons?|tbsp|teaspoons?|tsp)\b[^,?]*),? ?(?:(?<=,|, )g|(?<=,|, | )gr|(?<=,|, )gms?)(?=(?: (?:please|pls))?[ ?.]*$)/g,
    to: "$1 in g",
  },
  // "three quarters of cup of honey"
  {
    marks: [" of cup", " of a cup", " of teaspoon", " of tablespoon", " of tsp", " of tbsp"],
    from: /\b(half|quarters?|thirds?) of (?=(?:cup|teaspoon|tablespoon|tsp|tbsp)\b)/g,
    to: "$1 ",
  },
  // "one of those american sticks of butter"
  {
    marks: ["sticks of"],
    from: /\bone of (?:those|the|these|your|them) (?:american |us )?(?=sticks of\b)/g,
    to: "1 ",
  },
  // "scale says 9.5 oz": what lies on it, and nothing to be scaled
  {
    marks: ["scale say", "scales say", "scale read", "scales read", "scale show", "scales show"],
    from: /\b(?:the |my )?(?:kitchen )?scales? (?:says?|reads?|shows?|is showing|are showing) (?!\S+ ?(?:g|grams?|oz)? ?(?:steps?|divisions?|increments?|and)\b)(?=\d{2}|\d+(?:\.\d+)? ?(?:oz|ounces|lb|kg|cups)\b|[a-z]+ (?:hundred|g|oz|grams|ounces)\b)/g,
    to: "",
  },
  // "R96": the sign of the rand stands before its number
  { marks: ["r1", "r2", "r3", "r4", "r5", "r6", "r7", "r8", "r9"], from: /(?<=^|[ (])r(?=\d)/g, to: "zar " },
  // "same cups of almond flour": as many of them
  {
    marks: ["same "],
    from: /\bsame (?:number of )?(?:cups|spoons|tablespoons|teaspoons|ounces) of /g,
    to: "same amount of ",
  },
  { marks: ["all told", "all up"], from: /\ball (?:told|up)\b/g, to: "in total" },
  // "what if its the powdered stuff": no sugar
  {
    marks: ["powdered "],
    from: /\bpowdered (?=(?:stuff|kind|one|sort|type|version)\b(?! (?:of )?sugar))/g,
    to: "powder ",
  },
  // two shells are a macaron
  { marks: ["pairs"], from: /\b(\d+) (?:good |matched |matching |even )?pairs\b/g, to: "$1 macarons" },
  {
    marks: ["without counting"],
    from: /,? without counting (?:the )?(?:flavou?r\w*|colou?r\w*)/g,
    to: "",
  },
  // "EW 95 AF 125 PS 120 GS 90": grams are said nowhere else before a number
  {
    marks: [" gs "],
    from: /(\b(?:ew|af|ps)\b.*) gs (?=\d)/g,
    to: "$1 granulated sugar ",
  },
  // "6 eggs in grams, whites only"
  {
    marks: ["whites only", "just the whites", "only the whites", "just whites", "only whites"],
    from: /\b(\d+) (?:large )?eggs\b(.*?),? (?:whites only|(?:just|only) (?:the )?whites)\b/g,
    to: "$1 egg whites$2",
  },
  {
    marks: ["something percent", "something %", "odd percent", "ish percent"],
    from: /(\d)[ -]?(?:something|odd|ish) (percent|%)/g,
    to: "$1 $2",
  },
  {
    marks: ["sift it", "sift them", "sift that"],
    from: /\bif i sift (?:it|them|that)(?: first)?\b/g,
    to: "if its sifted",
  },
  // "60 40": shares of a whole
  {
    marks: ["0 1", "0 2", "0 3", "0 4", "0 5", "0 6", "0 7", "0 8", "0 9"],
    from: /\b([1-9]0) ([1-9]0)\b(?! ?(?:g|%|min|c|f|mm|ml))/g,
    to: (whole = "", a, b) => (Number(a) + Number(b) === 100 ? `${a}/${b}` : whole),
  },
  // "3 quarters of a cup"
  {
    marks: Object.keys(parts),
    from: /\b(\d) (quarters|thirds|eighths)\b/g,
    to: (_whole, number, part = "") => `${number}/${parts[part]}`,
  },
  // "already got 10 in" is no length
  {
    marks: [" in"],
    from: /\b(got|put|have|added|dropped|tipped) (\d+(?:\.\d+)?) in(?= ?[?.!]*$)/g,
    to: "$1 $2 inside",
  },
  {
    marks: ["in to "],
    from: /\bin to (?=(?:\d|two|three|four|five|six|equal|halves|thirds|bowls)\b|\d)/g,
    to: "into ",
  },
  // "3 eggs whites", "the whites of 4 eggs": whites, and no whole eggs
  { marks: ["eggs w", "eggs y"], from: /\beggs (?=(?:whites?|yolks?)\b)/g, to: "egg " },
  {
    marks: ["whites of", "yolks of", "whites from", "yolks from"],
    from: new RegExp(
      `\\b(?:the )?(?:egg )?(whites|yolks) (?:of|from) (\\d+|${Object.keys(smallNumbers).join("|")}) (?:large )?eggs\\b`,
      "g",
    ),
    to: "$2 egg $1",
  },
  { marks: ["a whole one"], from: /\ba whole one\b/g, to: "1" },
  // "94 g whites / 122 g almond flour"
  { marks: [" / "], from: /(?<=[a-z]) \/ (?=\d)/g, to: ", " },
  // "12/15 min" is from twelve to fifteen
  {
    marks: ["/"],
    from: /\b(\d{1,2})\/(\d{2}) ?(?=(?:min|mins|minutes?)\b)/g,
    to: (whole = "", from, to) => (Number(from) >= 5 && Number(from) < Number(to) ? `${from}-${to} ` : whole),
  },
  // "10ish min"
  { marks: ["ish"], from: /(?<=\d) ?-?ish\b/g, to: "" },
];
