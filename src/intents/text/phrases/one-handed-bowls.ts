/** Bowls, recipes and counts typed with one hand: "300 bc to 4 equal bowls, ...", "shellbatter 520 want, weigh out what". */
import { ganache } from "./one-handed.ts";
import type { Phrase } from "./phrase.ts";
import { count } from "./spelt.ts";

const mix =
  "(?:smbc|imbc|bc|b[u]?tt?e?rcre?a?m|buttercream|ganache|gnache|filling|fillng|batter|battr|icing|frosting)";
const batter = "(?:batter|battr|batr|battter)";
const vessel = "(?:bowls?|parts?|tubs?|jars?|bags?|portions?|ways)";
const ofOne = "(?:for|in|into|per|to) (?:just |only )?(?:(?:one|each|every|1|a)\\b|bowl|part|tub|jar|bag)";

/** Three lines of a recipe at least, and nothing that is bought, used or noted. */
const listsRecipe = (before: string): boolean =>
  (before.match(/\d+ ?(?:g|gr)? ?[a-z]/g) ?? []).length >= 3 &&
  !/\b(?:used|bought|stock|pantry|label|labl|save|note|log)\b/.test(before);

export const oneHandedBowls = (): readonly Phrase[] => [
  // "300 bc to 4 equal bowls, matcha powdr for one bowl", "600 bc 3 bowls even, ...": the bowl is parted first
  {
    marks: [" bowl", " part", " tub", " jar", " ways", " each", " one"],
    from: new RegExp(
      `^((?:(?:ok|so|and|now),? )*)(?:(?:split|divide|part|share) )?(?:(\\d{2,4}) ?(?:g |gr |grams? )?(?:of )?(${mix})|(${mix}) (\\d{2,4})(?: ?(?:g|gr|grams?)\\b)?)(?: (?:split|parted|divided))?(?: (?:to|into|in|between|over|across))? (${count})(?: (?:equal|even|same|equally|evenly))?(?: ${vessel})?(?: (?:even|evenly|equal|equally))?(?=(?:[,.;]| and| then) .*\\b${ofOne})`,
      "g",
    ),
    to: (_said, lead = "", weight, what, first, behind, many = "") =>
      `${lead}split ${weight ?? behind} g ${what ?? first} into ${many} bowls`,
  },
  // "420 smbc coffee n lemon two to one, flavor for each how much": parted first
  {
    marks: [" to ", ":"],
    from: new RegExp(
      `^(\\d{2,4}) ?(?:g |gr |grams? )?(?:of )?(${mix}),? ([a-z]+(?: [a-z]+)?)(?:,| and| n| &| \\+) ([a-z]+(?: [a-z]+)??),? (${count}) ?(?:to|:) ?(${count})(?=,? .*\\b(?:flavou?r|flvr|flavr|colou?r|gel|powder)\\b.*\\beach\\b|,? .*\\beach\\b.*\\b(?:flavou?r|flvr|flavr)\\b)`,
      "g",
    ),
    to: "split $1 g $2 $3 and $4 $5 to $6",
  },
  // "..., matcha powdr for one bowl hwmuch": asked for behind it
  {
    marks: ["how much", "hw much", "how mch", "hw mch", "hw mucb", "per "],
    from: /^(.+(?:[,.;]| and) ?)((?:[a-z]+ ){1,4}?)(?:(?:for|in|into|per) (?:just |only )?(one|each|every|1|a)(?: (?:bowl|part|tub|jar|bag|one))?(?: of (?:them|em|those|these|the bowls))?,? (?:how|hw) mu?ch|per (?:bowl|part|tub|jar|bag)(?:,? (?:how|hw) mu?ch)?)(?= ?[?.!]?$)/g,
    to: (_said, before = "", what = "", which = "each") =>
      /\b(?:how|what|hw)\b/.test(what)
        ? _said
        : `${before}how much ${what.trim().replace(/^(?:and|then) /, "")} for ${which === "one" || which === "1" || which === "a" ? "one" : "each"} bowl`,
  },
  // "shellbatter 520 want, weigh out what", "need 350 battr. what do i weigh out": what it is made of
  {
    marks: ["batter", "battr", "batr"],
    from: new RegExp(
      `^((?:(?:ok|so|and|now|hi|pls|please),? )*)(?:(?:i|we|id|ill)? ?(?:need|want|would like|like|make|making|have to make|gotta make|after|to make|go for|for)(?: to make)? )?(?:(?:shell|mac|macaron) )?(?:${batter} (?:about )?(\\d{2,4}) ?(?:g|gr|grams?)?|(\\d{2,4}) ?(?:g|gr|grams?)? ?(?:of )?(?:(?:shell|mac|macaron) )?${batter})(?: (?:i )?(?:wanted|want|needed|need|to make|in all|total|for shells|is what i (?:want|need)))*(?:[,.;:?]|(?= ))+ ?(?:so |and )?(?:weigh(?:ing)?(?: out| up| in)? (?:what|wht|everything|evrything|all|whites\\b.*)|(?:what|wht|how much)(?: of (?:each|what|everything))?(?: (?:do|should|must|shall|to|i|we|have))* (?:weigh|measure)(?: (?:out|up|in))?|weights?|ingredients?|amounts?|whats in|what goes in|what weights)(?: (?:of (?:each|everything|all)|please|pls|then|each|for (?:it|that)))*(?= ?[?.!]*$)`,
      "g",
    ),
    to: (_said, lead = "", one, other) => `${lead}recipe weights for ${one ?? other} g of shell batter`,
  },
  // "recipe 90 whites 120 almond ..., whites in the bowl only 60": what there is of one of them
  {
    marks: [" in ", " on ", " left", " here"],
    from: /(?:[,.;]| but| and)? ?\b((?:egg |almond |icing |powdered |granulated |caster )?(?:whites|almond|almonds|flour|sugar|icing|powdered|butter|cream)) (?:(?:i have|ive|i've|left|still|here|there|that i have|over) ?)*(?:(?:in|on) (?:the |my )?(?:bowl|jug|cupboard|fridge|bag|jar|pantry|tub|box|kitchen|counter|house|shelf|packet|pack|bench) ?)?(?:(?:is|are|there's|theres|its|it's) )?(only |just |but |no more than )?(\d+(?:\.\d+)?)(?: ?(?:g|gr|grams?))?(?=(?:,? (?:thats it|that's it|thats all|that's all|left|today|now|though))* ?[.!?]*$)/g,
    to: (...found) => {
      const [said = "", what = "", only = "", many = ""] = found;
      const isSaid = only !== "" || / (?:left|here|in|on) /.test(said);
      const before = String(found.at(-1)).slice(0, Number(found.at(-2)));
      return isSaid && listsRecipe(before) ? `. i only have ${many} g ${what}` : said;
    },
  },
  // "hw much kirsch 4 200 bc": for that bowl, and no 4 g of it
  {
    marks: [" 4 "],
    from: new RegExp(
      `(?<=[a-z] )4 (?=\\d{1,4} ?(?:g |gr |grams? )?(?:of )?(?:${mix}|macs?|macarons|macaroons|shells)\\b)(?:(?<=\\b(?:how|hw) (?:much|mch|many|mny)\\b.*)|(?=.*\\b(?:how|hw) (?:much|mch|many|mny)\\b))`,
      "g",
    ),
    to: "for ",
  },
  // "bc 260 hzlnut flvr at 4%": the bowl and its weight, and no 260 of flavor
  {
    marks: ["bc ", "buttercr", "bttercr", "gnache ", "ganache ", "batter ", "battr "],
    from: new RegExp(
      `^((?:(?:ok|and|so|now|pls|please|for|in|into),? )*)(smbc|imbc|bc|b[u]?tt?e?rcre?a?m|buttercream|${ganache}|${batter}) (\\d{2,4})(?: ?(?:g|gr|grams?)\\b)?,? (?!(?:ch?oc|cre?a?m|dark|milk|white|dk|mlk|wht|butter|sugar|whites|almond|of|in|into|oz|split|macs|shells|to|for|and|n|is|was|from|with|w|or|lb|ml|min|cup|all|total|want|need|how|what|gives?|makes?|does|bowls?)\\b)(?=[a-z].*\\b(?:fla?vo?u?rs?|flvrs?|flavr|extract|paste|oil|powde?r|pwdr|puree|jam|zest|gel|colou?r|clr|salt)\\b)`,
      "g",
    ),
    to: "$1$3 g $2, ",
  },
  // "third choc rest plain 540 bc": a third
  { marks: [" rest"], from: /^(third|quarter|fifth) (?=[a-z]+,? (?:and |the )*rest\b)/g, to: "a $1 " },
  // "macs 45 battr?": the count behind its word
  {
    marks: ["mac"],
    from: new RegExp(
      `^((?:(?:ok|and|so|now|pls|please),? )*)(macs|macarons|macaroons|shells) (\\d{1,4}),? (?:how much |hw much |what )?(${batter}|${mix})(?= ?[?.!]*$)`,
      "g",
    ),
    to: "$1$4 for $3 $2",
  },
  // "250 gnache SPLIT", "my 400 dark ganache has split": so many grams of it
  {
    marks: ["split", "seperated", "separated", "broke", "curdled", "greasy", "oily", "oil "],
    from: new RegExp(
      `(?<![\\d.,/:] ?)\\b(\\d{2,4}) (?:of )?(?=(?:(?:my|the|dark|dk|milk|mlk|white|wht|piping|choc) )*${ganache}\\b[^\\d]*\\b(?:split|seperated|separated|broken?|curdled|greasy|oily|oil)\\b[^\\d]*$)`,
      "g",
    ),
    to: "$1 g ",
  },
];
