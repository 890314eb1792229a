/**
 * The thing is said first and what is asked or told of it behind: "almond flour i own 90 g of", "batter how much and
 * filling how much", "a shell batter of 650 g", "75 g whites left over. meringue buttercream out of it".
 */
import { tastes } from "../../../../data/words/flavors.ts";
import type { Phrase } from "./phrase.ts";
import { count } from "./spelt.ts";

const weight = `(?:${count} ?(?:g|gr|grams?|kg|kilos?|oz|ounces?|lbs?|pounds?))`;
const start = "(?<=^|[.,;:!?] |\\band |\\bbut |\\bso )";
const stop = "(?= ?(?:[.,;:!?)]|$)| and| so| but| left| here| for| please| pls| then)";
/** What is asked for by the gram. */
const part =
  "(?:(?:egg |the |heavy |double (?=cream)|dark |milk |white |powdered |icing |caster |granulated |almond |ground |shell |plain |ring |center |centre )*(?:batter|filling|cream|butter|sugar|whites|chocolate|choc|flour|almonds|ganache|butter ?cream|ring|center|centre|flavou?r(?:ing)?))";
const mix =
  "(?:(?:(?:shell|macaron|macarons|dark|milk|white|plain|vanilla|swiss|meringue|chocolate) )*(?:batter|ganache|butter ?cream|smbc|filling))";

const known = new Set(tastes.map(({ taste }) => taste));

export const thingFirst = (): readonly Phrase[] => [
  // "Guava. 17 g concentrate. 340 g ganache.": what it tastes of stands by itself, and what it is behind its weight
  {
    marks: ["flavo", "concentrate", "extract", "paste", "powder", " oil", "zest", "essence"],
    from: /^((?:(?:ok|so|and|now),? )*)([a-z]+(?: [a-z]+)?)[.:,] (\d+(?:\.\d+)? ?(?:g|grams?)) (?:of )?(flavou?r(?:ing)?|concentrate|extract|paste|powder|oil|zest|essence)(?=[.,;]| (?:in|into|for) )/g,
    to: (said, before = "", taste = "", grams = "", what = "") =>
      known.has(taste) ? `${before}${grams} ${taste} ${what}` : said,
  },
  // "a splash of kirsch in 355 g ganache, how big a splash"
  {
    marks: [" how big a "],
    from: /(?<=\b(splash|glug|dash|drop|spoonful|pinch|dollop) of .*),? (?:so |and )?how (?:big|large|small) (?:a |the |is the |is that )?\1(?= ?[?.!]*$)/g,
    to: ", how much",
  },
  // "almond flour i own 90 g of", "the brown butter that i've only got 100 g of"
  {
    marks: [" of"],
    from: new RegExp(
      `${start}(?:of )?(?:the |my )?((?!(?:how|what|which|so|and|but|if|when|that|then|all|is|it)\\b)[a-z]+(?: (?!(?:that|which|is|and|i|we)\\b)[a-z]+){0,2}),?(?: that| which)? (?:i|we|i'?ve|we'?ve) (?:only |just |still )*(?:have|own|got|possess|hold)(?: got)? (?:only |just |about |around |exactly )*(${weight}) of${stop}`,
      "g",
    ),
    to: "i have $2 $1",
  },
  // "batter how much and filling how much do i make", "sugar and butter how much"
  {
    marks: [" how much", " how many"],
    from: new RegExp(
      `${start}(?:of )?(${part}(?:(?:,| and|, and) ${part})*) how (?:much|many grams?|many g)(?= ?(?:[.,;:!?)]|$)| and| do (?:i|we)\\b| should i\\b| is (?:it|that)\\b| please| pls| then)`,
      "g",
    ),
    to: "how much $1",
  },
  // "which four weights give me ..."
  {
    marks: ["weights "],
    from: /\b(?:which|what) (?:(?:four|4|three|3|all) )?weights (?:would |will |do |could )?(?:give|gives|make|get|yield|make up|add up to|come to|bring)(?: me| us)? /g,
    to: "what weights for ",
  },
  // "a shell batter of 650 g"
  {
    marks: [" of "],
    from: new RegExp(`\\b(?:a |the )?(${mix}) of (?:about |exactly |around )?(${weight})${stop}`, "g"),
    to: "$2 of $1",
  },
  // "75 g whites left over. meringue buttercream out of it": what it is made of stands before it
  {
    marks: [" out of ", " from ", " with "],
    from: new RegExp(
      `^((?:i have |i'?ve got |i'?ve |got |there'?s |there are )?${weight} (?:of )?(?:egg )?(?:whites|butter|cream|(?:dark |milk |white )?chocolate))(?: (?:left over|left|here|over|spare|to use up|that need using|from [a-z ]{2,30}|in the [a-z]+))*[.,;] (?:and |so |now )*(?:i )?(?:want |make |making |need |making a |lets make )*(?:a |an |some )?(${mix}) (?:out of|from|with|of) (?:it|that|them|those|these|all of it|all that)(?=[.,;?!]| and| how|$)`,
      "g",
    ),
    to: "$2 from $1",
  },
  // "plain buttercream, 285 g, is what's in the bowl"
  {
    marks: [" is what", " is in ", " are in ", " stand", " sit"],
    from: new RegExp(
      `${start}(?:the |my )?(${mix}), (${weight})(?: of it)?, (?:is|are) (?:what'?s|what is|what i have|what i'?ve got|all i have|all there is|all that is)?(?: ?(?:in|on) (?:the|my) (?:bowl|scale|mixer|tub))?(?=[.,;!]|$)`,
      "g",
    ),
    to: "i have $2 $1",
  },
  // "five percent of the finished filling, that is what the almond flavor should come to"
  {
    marks: ["finished "],
    from: new RegExp(
      `(?<=^|[.;!] )(?:i want |i'?d like )?(${count} ?(?:%|percent|per cent)) of the (finished (?:filling|weight|mix|butter ?cream|ganache|bowl)),? (?:and )?(?:that'?s|that is|is|this is|thats) what (?:the |my |i want (?:the |of )?)?((?:[a-z]+ ){0,2}(?:flavou?r(?:ing)?|extract|paste|purée|zest)) (?:should|shall|is to|must|has to|ought to|needs to|to) (?:come to|be|make up|make|reach|amount to)`,
      "g",
    ),
    to: "$3 at $1 of the $2",
  },
  // "i have 100 g brown butter, how does nut cream come out with that"
  {
    marks: [" come out", " turn out", " work out"],
    from: new RegExp(
      `^((?:ok |so |and |but |right |now )*)i (?:only |just )?(?:have|got) (${weight}) (?:of )?([a-z]+(?: [a-z]+)?)[.,;]? (?:so |and |then )?(?:how|what) (?:does|do|would|will|should) (?:the |my )?([a-z]+(?: [a-z]+){0,3}?) (?:come|turn|work) out(?: like)?(?: (?:with|for|from) (?:that|it|so much|so little|only that|this))?(?= ?[?.!]*$)`,
      "g",
    ),
    to: "$1$4 with $2 $3",
  },
];
