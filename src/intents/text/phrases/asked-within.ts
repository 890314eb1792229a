/** Questions put within an order: "tell me what 15 percent of 640 is". */
import type { Phrase } from "./phrase.ts";

const count =
  "(?:\\d|an? (?:third|quarter|half|fifth|sixth|eighth|tenth|cup|stick|pound|ounce|kilo|tablespoon|teaspoon|spoonful|dozen)\\b|half\\b|one\\b|two\\b|three\\b|four\\b|five\\b|six\\b|seven\\b|eight\\b|nine\\b|ten\\b|twelve\\b|fifteen\\b|twenty\\b|thirty\\b|forty\\b|fifty\\b|sixty\\b|seventy\\b|eighty\\b|ninety\\b)";

/** What makes it a question within another one; a turn may begin with it. */
const asking =
  "(?:^|[.?!:;,] |\\b(?:tell(?:ing)? (?:me|us)|know|work(?:ing)? out|calculat(?:e|ing)|ask|say(?:ing)?|see|figur(?:e|ing) out|find(?:ing)? out|check(?:ing)?|show(?:ing)? (?:me|us)|remind(?:ing)? me|remember|wonder|wondering) )";

const comesTo =
  "(?:is|are|was|would be|will be|might be|should be|could be|ought to be|(?:(?:would|will|might|should|could) )?(?:comes?|works?|comes? out|works? out|amounts?) (?:to|at|as)|(?:would )?equals?)";

export const askedWithin = (): readonly Phrase[] => [
  // "in sticks, which we don't really do here.": said of what was named, and nothing of it
  {
    marks: [
      ", which i",
      ", which we",
      ", which you",
      ", which they",
      ", which nobody",
      ", which he",
      ", which she",
    ],
    from: /, which (?:i|we|you|they|she|he|nobody|no one)(?:'ve|'d|'ll)? (?:[a-z]+ )??(?:don't|dont|do not|didn't|never|can't|cant|cannot|couldn't|haven't|havent|have not|hardly|rarely|seldom|hate|detest|loathe|love|adore|like|find|always|forget)\b(?![^.?!]*(?:\bhow\b|\bwhat\b|\bso\b|\bor\b|\bbut\b))[^.?!,\d]*(?=[.?!,]|$)/g,
    to: "",
  },
  // "what 15 percent of 640 is", "what 350 f comes to in celsius": turned into the plain question
  {
    marks: ["what "],
    from: new RegExp(
      `(?<=${asking})what (${count}(?:(?!\\b(?:macarons?|shells|boxes|trays|is|are|would|will|do|does|should|can|could|went|goes|go|i|we|it|for)\\b)[^?.!,;]){0,80}?) ${comesTo}((?: (?:in|as|to) (?:[a-z°]+(?: [a-z]+)?))?)(?= ?(?:[?.!,;]|please\\b|pls\\b|then\\b|$))`,
      "g",
    ),
    to: "what is $1$2",
  },
  // "what have you got down for the tamarillo?": what is noted of it
  {
    marks: [" down ", " noted ", " on record ", " recorded ", " written "],
    from: /(?<=^|[.?!:;,] |\b(?:and|so|now|then|tell me|see) )(?:what|anything|is there anything|whatever) ?(?:(?:(?:else )?(?:have|do|did) (?:you|we|i)(?: have)?|(?:(?:i|you|we)(?:'ve| have)?)|is|'s) )?(?:got |have |put |keep |written |noted |wrote |note |record |recorded |kept )*(?:down|noted|recorded|written|on record)(?: down)?(?: (?:in|on) (?:the|my) (?:notes?|record|book|log))? (?:for|about|on|of|under|against) (?:the |my |that |our )?((?!it\b|that\b|this\b|me\b|us\b)[a-z]+(?: (?!notes?\b|batch|bake|ones?\b|one\b)[a-z]+)?)(?: (?:batch(?:es)?|bake|notes?|ones?))?(?= ?(?:[?.!,]|please\b|then\b|$))/g,
    to: (whole = "", name = "") =>
      /\b(?:timers?|oven|recipe|formula|bottle|shelf|pantry|cupboard|order|plan|price|cost|size|tray|settings?|bench|market|label|today|yesterday|week|month|monday|tuesday|wednesday|thursday|friday|saturday|sunday)\b/.test(
        name,
      )
        ? whole
        : `show me the ${name} notes`,
  },
  // "2 kg of sugar, could you put it in the pantry?": an order, and nothing asked
  {
    marks: ["pantry", "shelf", "larder", "cupboard", "stock"],
    from: /([.,;!]) (?:(?:and|so|please),? )*(?:(?:could|can|would|will|might) (?:you|i|we) )?(?:please |just |kindly )*(?:put|add|pop|stick|enter|note|log) (?:it|that|this|them|those|it all|them all) (?:down )?(?:in|on|to|into) (the|my) (pantry|shelf|larder|cupboard|stock)(?:,? please)? ?[?.!]*$/g,
    to: "$1 put it in $2 $3",
  },
  // "i might make 30 to be safe": why so many, and nothing of what is safe to eat
  {
    marks: ["to be safe", "the safe side", "for safety"],
    from: /(\d[^.?!]{0,60}?|\b(?:ten|twelve|twenty|thirty|forty|fifty|sixty|extra|spare|more|few)\b[^.?!]{0,60}?),? (?:just )?(?:to be (?:on the )?(?:extra )?safe(?: side)?|for safety's sake|for safety)(?=[.,?!]| (?:and|so|please)\b|$)/g,
    to: "$1",
  },
  // "put today's plum batch down as very tidy": an order to note it
  {
    marks: [" down as "],
    from: /^((?:(?:and|so|but|oh|now|then|also|ok|please|kindly),? )*(?:(?:could|can|would|will|might) (?:you|i|we) (?:please |just |kindly )*)?)(?:put|mark|set|pop|get|have) ((?:today's|yesterday's|this morning's|todays|yesterdays|the|my|our|that|this|last night's) (?:[a-z]+ ){0,3}(?:batch|bake|ones|macarons)) down as (?!\d)/g,
    to: "$1note $2 as ",
  },
  // "might we call tray a lilac shells instead?": an order; "may i call you when" and "call me" are none
  {
    marks: [" call ", " rename "],
    from: /^((?:(?:and|so|but|oh|now|then|also|actually|sorry|no|please),? )*)(?:(?:might|may|could|can|shall|should) (?:we|i|you)|would you(?: mind)?|i wonder (?:if|whether) (?:we|i|you) (?:might|may|could|can)|(?:i(?:'d| would| should)|we(?:'d| would)) (?:like|prefer|rather)(?: to)?|let's|let us|perhaps we (?:might|could|should)|i think (?:i'll|we'll|i will|we should|i should|we might|i might)) (?:(?:please|just|now|perhaps|also|rather) )*(call|rename|name)(?:ing)? (?!(?:me|us|you|him|her|them|the police|when|once|if|at|back)\b)(?=(?:it|that|this|tray|timer|oven|bake|rest|cool)\b|(?:the|my) (?:[a-z]+ )?(?:tray|timer|oven|bake|rest|cool|one|alarm|shells|ganache|syrup|first|second|last)\b)/g,
    to: "$1$2 ",
  },
];
