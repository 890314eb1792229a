/**
 * What there was or would be, told ahead of what there is: "bar was 250 g, kids got at it, 210 g left", "if i had half a
 * litre of cream ... but theres just 180 g", "last month with 100 g whites. today i have 85". Only the last counts.
 */
import type { Phrase } from "./phrase.ts";

const weight = "\\d+(?:[.,]\\d+)? ?(?:g|gr|grams?|kg|oz)";
const much = `(?:${weight}|\\d+ ?(?:ml|l|litres?|liters?|cups?|kilos?)|half a (?:litre|liter|kilo|pound|cup)|a (?:litre|liter|kilo|pound|cup|ton|load|whole [a-z]+))`;
const stuff =
  "(?:egg |almond |powdered |icing |dark |milk |white )?(?:cream|whites|butter|chocolate|choc|almond flour|almonds|flour|sugar|buttercream|ganache|filling|batter)";
const there =
  "(?:there'?s|there is|there are|theres|i have|i'?ve(?: got)?|ive(?: got)?|i got|all i have is|all ive got is|we have|we'?ve got|it'?s|its)";
const only = "(?: (?:only|just|but|about|now|actually|left))*";

export const whatIsLeft = (): readonly Phrase[] => [
  // "bar was 250 g, kids got at it, 210 g left"
  {
    marks: [" left", "remain"],
    from: new RegExp(
      `^(?:the |my |our |this )?(?:bar|block|bag|pack|packet|tub|carton|jar|slab|box)(?: of (${stuff}))? (?:was|were|had|held|weighed|used to be|started (?:at|as)) ${weight}(?: (?:once|before|originally|full|to start with))?(?:,|;|\\.| but| and)+ [^\\d?]{0,50}?(?:${there}${only} )?(${weight}) (?:of it )?(?:is |are )?(?:left|remaining|remains?)(?: now| of it)?`,
      "g",
    ),
    to: (_said, of, left) => `i have ${left}${of ? ` ${of}` : ""}`,
  },
  // "if i had half a litre of cream id make loads but theres just 180 g"
  {
    marks: ["if i ", "if we ", "wish i ", "wish we "],
    from: new RegExp(
      `^(?:and |so |oh )*(?:if (?:only )?(?:i|we)(?: only)? had|(?:i )?wish (?:i|we) had) ${much} (?:of )?(${stuff})[^\\d?]{0,50}?(?:,| )(?:but|sadly|alas) ${there}${only} (${weight})`,
      "g",
    ),
    to: "i have $2 $1",
  },
  // "last month i made it with 100 g whites. today i have 85"
  {
    marks: ["last ", "usually", "normally", "yesterday", "before"],
    from: new RegExp(
      `^(?:last (?:month|week|time|year|batch)|yesterday|usually|normally|the last time|before)(?: (?:i|we))? (?:made|did|do|used|make|use|had|baked|bake)(?: (?:it|them|these|this|a batch))?(?: (?:with|from|of))? \\d+(?:\\.\\d+)? ?(g|gr|grams?|oz) (?:of )?(${stuff})[.,;] (?:but |and |so )*(?:today|now|this time|here)?,? ?(?:${there})?${only} (\\d+(?:\\.\\d+)?)(?: ?(?:g|gr|grams?|oz))?(?: (?:of )?(?:it|them|those|whites))?(?= ?[,.;?]|$| so| and)`,
      "g",
    ),
    to: "i have $3 $1 $2",
  },
  // "sold 14 boxes for 210 at the fair, forget that. today ...": it is taken back as soon as it is told
  {
    marks: ["forget that", "never mind that", "forget it", "ignore that", "scrap that"],
    from: /^(?=[^.?!]*\d)[^.?!;]{3,90}?(?:,| -|\.) (?:but |oh |no |well |just |ok )*(?:forget|never ?mind|ignore|scrap) (?:that|it|those|all that)(?:[.,;]| -) (?:so |now |and )*(?=[^?]*(?:\d|\bhow\b|\bwhat\b))/g,
    to: "",
  },
  // "right i never set it. 25 min, caramel": "never set" is no name
  {
    marks: ["never set it", "never started it", "didn't set it", "didnt set it", "forgot to set it"],
    from: /^(?:(?:right|ok|oh|ah|so|well|damn|and|no),? )*(?:i|we) (?:never|didn'?t|forgot to|didn't even) (?:set|start|started) (?:it|that|the timer|that one)[.,;] (?=(?:[a-z ]+ )?\d)/g,
    to: "timer ",
  },
  // "can you shrink it to a third, 180 g butter 90 g honey 45 g cream"
  {
    marks: ["shrink ", "cut it ", "bring it ", "take it ", "knock it ", "scale it ", "make it "],
    from: /^((?:(?:can|could|would|will) you |please |ok |and |so |i want to |i need to )*)(?:shrink|cut|bring|take|knock|scale|make) (?:it|this|that|them|the recipe)(?: down| up| back)? (?:to|by) (a third|a quarter|a half|half|two thirds|three quarters|a fifth)[,:;.]? (?=\d+(?:\.\d+)? ?(?:g|grams?|oz) [a-z ]+,? (?:and )?\d+(?:\.\d+)? ?(?:g|grams?|oz) [a-z])/g,
    to: "$2 of this recipe: ",
  },
];
