/** The signs of a ganache question, of one that goes on from it, and of one behind another answer. */
import { cues } from "../lib/cue.ts";
import { leftPlain } from "../lib/left-plain.ts";
import { resizing } from "../lib/resizing.ts";
import { insteadOfGone } from "./kind-gone.ts";

/** "water activity", "a_w", "aw" as the mask has them. */
const activityWords = "(?:water\\S* activity|a _ w|a w|aw)";

export const ganacheCues = cues(
  // "450 g ganache, no oil"
  [14, ...leftPlain("ganache")],
  // "240 g milk chocolate to 120 g cream, what would you use that for"
  [
    14,
    "(?:{weight}|{number}) .. {ingredient=(cream|chocolate|dark_chocolate|milk_chocolate|white_chocolate)} .. (?:{weight}|{number}) .. {ingredient=(cream|chocolate|dark_chocolate|milk_chocolate|white_chocolate)} .. (?:what|whats) .. (?:use|used|using|good|suit|suits|suited|made|fit|right|do|make) .. for(?: [?])?$",
  ],
  [9, "what (?:is|are|was) {number} (?:and|to|:|with) {number} good for"],
  [
    14,
    `^(?:(?:whats|what|is|the|estimate|estimated|and|of|for) )*${activityWords} (?:of |for |: )?{weight} .. {weight}`,
  ],
  // what a mix is brought to, and what moves it
  [
    10,
    `(?:get|bring|take|lower|reduce|push|mend|adjust|move|raise|drop|cut|make|want|need) .. ${activityWords} .. {number}`,
    `(?:{chocolate} {base=ganache}|{base=ganache} .. {weight}|{weight} .. {base=ganache}|{weight} .. {chocolate}) .. ${activityWords} (?:of |at |to |is )*{number}`,
    `(?:what|how|anything|which|ways) .. (?:moves?|lowers?|raises?|changes?|affects?|reduces?|brings? down|drops?) .. ${activityWords}`,
    "{base=ganache} .. less perishable",
    "(?:lower|raise|bring|get|cut|reduce|take) (?:the |its |my )?(?:fat|(?:water|sugar)\\S*) .. {chocolate} .. (?:down |up )?to {percent}",
    `(?:happens to|effect on|do to|does to) .. ${activityWords}`,
    `^(?:(?:whats|what|is|the|estimate|estimated|and) )*${activityWords} (?:of|for) `,
    `^(?:(?:whats|what|is|the|its|estimate|estimated|and|so) )*${activityWords}(?: of (?:it|that|this|the {base=ganache}))?(?: [?])?$`,
  ],
  [-10, `${activityWords} (?:of|in|for) .. (?:is|was|came out at|reads?|measures?|measured) {number}`],
  [
    16,
    `(?:${activityWords}|composition|made of|how fatty|fat content) .. {base=buttercream}`,
    `{base=buttercream} .. (?:${activityWords}|composition|fat content)`,
    "(?:how much|percentage|percent|share) (?:of )?(?:the )?fat .. {base=buttercream}",
  ],
  [
    6,
    "{base=ganache} .. {percent} (?:of )?(?:fat|(?:water|sugar)\\S*)",
    "{percent} (?:of )?(?:fat|(?:water|sugar)\\S*) .. {base=ganache}",
    "(?:bring|get|take|push|lower|drop|reduce|move) (?:it|this|that|them|mine) .. 0[.][89]\\d*<number>",
    "(?:below|under) 0[.][89]\\d*<number>",
  ],
  [
    7,
    "(?:composition|water|ingredient=water>|fat|sugar|sugary?) .. (?:in|of|has|have) (?:my |the )?{formula}",
    "(?:water<\\S+|sugar<\\S+) .. (?:in|of) (?:my |the )?{formula}",
    "{formula} .. (?:composition|water activity|perishable)",
  ],
  [
    7,
    "(?:loosen|thicken|firm|soften|thin|stiffen) (?:it|this|that|them)",
    "(?:estimate|whats|what is) .. aw",
    "(?:^| )aw (?:of|for)",
  ],
  [
    7,
    "(?:percentage|percent|share|much|proportion) (?:of )?(?:the )?(?:fat|water\\S*|sugar\\S*) .. {base=ganache}",
    "{base=ganache} .. {symptom=(loose|stiff|split)_ganache} .. (?:{weight}|{number}) .. {ingredient}",
    "(?:{weight}|{number}) .. {ingredient=(cream|chocolate)} .. {symptom=(loose|stiff)_ganache}",
    "{base=ganache} .. (?:{weight}|{number}) .. {symptom=(loose|stiff|split)_ganache}",
    "{weight} .. {base=ganache} .. {symptom=(loose|stiff|split)_ganache}",
    "{base=ganache} .. {symptom=(loose|stiff|split)_ganache} .. {ingredient=(cream|chocolate)} .. (?:{weight}|{number})",
  ],
  // "150 white 60 cream ganache and it split": grams, with no unit
  [
    12,
    "{base=ganache} .. {symptom=split_ganache} .. {number} {ingredient} .. {number} {ingredient}",
    "{base=ganache} .. {symptom=split_ganache} .. {number} {color=white} .. {number} {ingredient}",
    "{number} {ingredient} .. {number} {ingredient} .. {symptom=split_ganache}",
    "{number} {color=white} .. {number} {ingredient} .. {symptom=split_ganache}",
  ],
  [
    10,
    "{number} / {number} .. {base=ganache} .. {symptom=(loose|stiff|split)_ganache}",
    "{symptom=(loose|stiff|split)_ganache} .. {number} / {number}",
  ],
  [4, "{number} / {number} {chocolate}", "{number} / {number} .. {base=ganache}"],
  [
    4,
    "{base=ganache} .. {weight} .. {ingredient}",
    "{weight} .. {chocolate} .. {ingredient=cream}",
    "{weight} .. {ingredient=cream} .. {chocolate}",
    "{weight} .. {ingredient=(cream|chocolate)} .. {base=ganache}",
    "(?:how|hw) much (?:of )?(?:the )?{ingredient=(cream|chocolate)}",
    "(?:how|hw) much (?:of )?(?:the )?{chocolate} .. {ingredient=cream}",
    "{chocolate} .. (?:how|hw) much .. {ingredient=cream}",
    "{ingredient=cream} .. (?:how|hw) much .. {chocolate}",
    "{ingredient=cream} .. (?:how|hw) much .. {ingredient=chocolate}",
    "{base=ganache} .. {symptom=(loose|stiff)_ganache}",
    "{symptom=(loose|stiff)_ganache} .. {base=ganache}",
    "(?:water|ingredient=water>) activity",
    "water<\\S+ activity",
    "a w of",
    "(?:water|fat|sugar)\\S* .. (?:water|fat|sugar)\\S* .. {base=ganache}",
    "{base=ganache} .. (?:water|fat|sugar)\\S* .. (?:water|fat|sugar)\\S*",
    "{weight} .. {base=ganache} .. {symptom=split_ganache}",
    "{symptom=split_ganache} .. {weight} .. {base=ganache}",
    "{base=ganache} .. {symptom=split_ganache} .. {weight}",
  ],
  [
    10,
    "{base=ganache} .. {symptom=split_ganache} .. {weight}",
    "{base=ganache} .. {symptom=split_ganache} .. (?:\\S+ ){0,9}{weight}",
  ],
  [
    3.5,
    "{weight} .. {chocolate} {base=ganache}",
    "{chocolate} {base=ganache} .. {weight}",
    "{chocolate} {base=ganache}",
    "{base=ganache} .. {use}",
    "{use} {base=ganache}",
    "{chocolate} .. {use}",
    "{use} .. {chocolate}",
    "{weight} .. {base=ganache} .. (?:what|how) .. weigh",
    "{color=white} {base=ganache}",
    "{ingredient=milk} {base=ganache}",
    "{base=ganache} recipe",
    "{number} .. {ingredient=(cream|chocolate)} .. {number} .. {ingredient=(cream|chocolate)}",
    "{number} .. {chocolate} .. {number} .. {ingredient=cream}",
    "{weight} .. {chocolate} .. {number} .. {ingredient=cream}",
    "composition .. {base}",
    "{ingredient=cream} .. {base=ganache}",
    "{base=ganache} .. {ingredient=cream}",
    "{base=ganache} for {number} .. {count=macarons}",
    "ratio .. {base=ganache}",
    "{base=ganache} .. ratio",
    "how (?:much|wet|fatty|rich) .. (?:fat|sugar|water)\\S* .. {base=ganache}",
    "{volume} .. {ingredient=cream} .. {chocolate}",
  ],
  [
    2,
    "{weight} .. {chocolate}",
    "{weight} .. {ingredient=cream}",
    "{symptom=(loose|stiff)_ganache}",
    "{base=ganache}",
    "what is it made of",
    "composition",
    "{chocolate} .. {ingredient=cream}",
    "ratio",
  ],
  // "cream for 150 g dark", "the chocolate for 120 g cream"
  [
    2,
    "^(?:(?:and|also|so|then|the|my|how much|whats|what) )*{ingredient=cream} (?:for|with|to go with|into|to) (?:the |my )?{weight} (?:of )?(?:{chocolate}|{color=white})(?! {base=ganache})",
    "^(?:(?:and|also|so|then|the|my|how much|whats|what) )*(?:{ingredient=chocolate}|{chocolate}) (?:for|with|to go with|to) (?:the |my )?{weight} (?:of )?{ingredient=cream}",
  ],
  [1, "{chocolate}", "{ingredient=cream}", "{use}", "{ingredient=chocolate}"],
  [
    -6,
    "{dose}",
    "{weight} .. {chocolate} {base=ganache} .. {taste}",
    "{taste} .. {weight} .. {chocolate} {base=ganache}",
  ],
  [
    -4,
    "(?:note|log) ",
    "timer",
    "(?:label|allergens?|contains)",
    "split {weight}",
    "divide",
    "{symptom=(no_feet|cracked_tops|hollow)}",
    "how (?:long|hot) ",
    "(?:freeze|keep|counter|shelf life|expire)",
    "temper",
    "save recipe",
    "(?:cup|cups|tbsp|tsp|stick|sticks)<unit",
    "in (?:grams|g|oz)<unit",
  ],
  [
    -3,
    "{base=(buttercream|batter)}",
    "{taste} .. {base=ganache} .. (?:how|hw) much$",
    "{count=macarons} with",
    "{percent} (?:of )?{taste}",
    "(?:cost|costs|price|margin)",
    "{ingredient=(mascarpone|cream_cheese)}",
    "enough flavor",
    "(?:halve|scale|double|times)",
    "{factor}",
    "{base=buttercream} .. {weight} .. {ingredient=butter}",
    "calendar",
    "{money}",
    "pantry",
  ],
  [-2, "when (?:do|did|should)", "{count=macarons} .. (?:ready|due|by) ", "{when}", "center"],
);

export const ganacheGoesOn = cues(
  resizing,
  // "changed my mind, the one with butter"
  [
    9,
    "^(?:(?:ok|okay|no|so|and|then|actually|changed my mind|i changed my mind|on second thought|,|i|we|ill|take|want|lets|make|do|have|it|rather|please|give me) )*(?:(?:the|that) (?:one|version|way) (?:set )?)?(?:with|without|no) (?:the |any )?{ingredient=butter}(?: (?:then|please|after all|instead|now|in|in it))*(?: [.?])?$",
    "^(?:(?:ok|okay|no|so|and|then|actually|changed my mind|,|ill|i|take|want|lets|do) )*the {ingredient=butter} (?:one|version|way)(?: (?:then|please|after all|instead|now))*(?: [.?])?$",
  ],
  [14, ...insteadOfGone],
  // "and 40 g unsalted butter on top of that"
  [
    6,
    "^(?:(?:and|plus|also|then|with|so|if|what) )*(?:{weight}|{number}) (?:of )?(?:[a-z]+ )?{ingredient} (?:(?:went|goes|going|gone|put|stirred|melted)(?:<\\S+)? )?(?:on top|as well|too|in (?:it|that|there|as well|too)|besides|added|also)",
  ],
  // "its too hard now", "it came out rock solid", of the ganache that was spoken of
  [
    6,
    "^(?:(?:and|but|so|oh|no|ok|now|hm|sorry|,) )*(?:its|it|thats|that|this) (?:(?:is|has|was|came|turned|set|all|gone|out|way|far|really|still|now|a|bit|much) )*(?:too[_ ]|rock[_ ])(?:hard|solid|stiff|thick|firm|soft|loose|thin|runny|wet|slack)",
  ],
  // "if id used 200 g chocolate"
  [
    6,
    "^(?:(?:and|so|but|or|what) )*(?:if|suppose|say|had) .. (?:{weight}|{number}) (?:of )?(?:the )?(?:{chocolate}|{ingredient=(chocolate|cream)})",
  ],
  // "set hard enough to cut i mean": for another use
  [
    6,
    "(?:^|\\S+ )enough (?:to|for|so) .. {use}",
    "{use} (?:i mean|i meant|sorry|rather|instead|actually|though)(?: [?])?$",
  ],
  // "still split", behind one that is being brought back
  [
    14,
    "^(?:(?:and|but|oh|no|ugh|argh|now|ok|well|hm|its|it|is|the|my|all|{base=ganache}) (?:, )?)*still (?:all |a bit |so |quite )*(?:split|broken|greasy|oily|separated)(?:<\\S*>)?(?: (?:now|though|help))*(?: [?])?$",
  ],
  // behind one that split: what was stirred in
  [
    8,
    "(?:added|stirred|put|poured|used) (?:in )?(?:another )?(?:{number}|{weight}) .. still (?:split|broken|grainy)\\S*",
  ],
);

export const ganacheAfter = {
  // "milk chocolate ganache for 20 macarons of 4 cm", behind their batter: what fills them
  shells: cues([
    12,
    "^(?:(?:and|also|plus|then|how much|the|some|my|ok|so|now) )*(?:{chocolate}|{ingredient=milk}) {base=ganache} (?:do i need )?for (?:the |those |these )?{number} {count=macarons}",
  ]),
  fill: cues([
    12,
    "(?:make|do|have|in) (?:that|it|all of it|all that|them)?(?: in| as| a)? ?{chocolate} {base=ganache}",
    // "make that filling a dark ganache"
    "(?:make|turn|have|do) (?:that|the|my|this) {base=filling} (?:(?:an?|into|in|all|be|as|of|from|nice|plain|simple) )*{chocolate} {base=ganache}(?!.* {number} )",
  ]),
  split: cues([12, "{chocolate} .. {base=ganache} (?:half|part|one|bowl|bit|share|third|quarter)\\S*"]),
};
