/** What sounds like a conversion or a sum, and what only looks like one. */
import { opening } from "../../../data/words/openers.ts";
import { cues } from "../lib/cue.ts";
import { weighing } from "../lib/ounces.ts";
import { sameIn } from "./same-in.ts";
import { shareTurn } from "./share-again.ts";
import { stepTurns } from "./step-said.ts";
import { askingAgain, unitsOf } from "./words.ts";

const weights = `{unit=${unitsOf("weight")}}`;
const volumes = `{unit=${unitsOf("volume")}}`;
const lengths = `{unit=${unitsOf("length")}}`;
const heats = `{unit=${unitsOf("temperature")}}`;
const times = "{unit=s|min|h|d|week}";
/** A weight that isn't in grams: "300 g ganache, how many grams" asks for no conversion. */
const notGrams =
  "(?=\\S*_?(?:oz|ounces?|lbs?|pounds?|kg|kilos?|kilograms?|mg|milligrams?)(?:_\\S*)?<){weight}";
const inches = '(?=\\S*(?:in|inch|inches|")(?:_\\S*)?<){length}';
const heavy = "{unit=oz|lb|kg|mg}";
const into = "(?:in|to|into|as|is how many|is|are|equals?|=|makes?|how many)";
const end = "(?: (?:[?=]|please|pls|exactly|again))*$";
const ask = "(?:whats|what is|how much is|how much would|calculate|work out|compute|wats)";
const value = "(?:\\x28 )*{number}(?: \\x29)*";
const op = "(?:[*x+/^-]|times|plus|minus|over|less)";
const oven = "(?:fan|convection|conventional|static|(?:regular|normal|ordinary|standard) oven)";
/** A few more words than ".." lets by. */
const far = "(?:\\S+ )?(?:\\S+ )?(?:\\S+ )?(?:\\S+ )?";
const egg = "{number} (?:\\S+ )?{ingredient=whites|egg|egg_yolk}";
/** What a spoon holds: most ingredients are flavors too, and their weight is asked for, not a bowl for them. */
const something = "(?:of )?(?:(?:[a-z]+|{manner}) )?(?:[a-z]+ )?(?:{ingredient}|{dose}|{taste}|{chocolate})";
const manner = "(?:, )?(?:{manner} )?";
const either = `(?:${weights}|${volumes})`;
const weighs = `weighs?(?: in at)?(?: (?:in|about) ${weights})?`;
const comesTo = "(?:comes?|come out|comes out) (?:to|at|as)";
const anyKind = `(?:${notGrams}|{volume}|{length}|{temperature})`;
/** What a weight of something does to spoons and cups. */
const fills =
  "(?:(?:be|fills?|makes?|gives?|takes?|takes? up|needs?|measures?|measures? out|equals?|yields?|amounts? to|comes? to|comes? out (?:at|as|to)|works? out (?:at|as|to)|adds? up to)(?: (?:up|out|to|in all|about|me|us))?)";
/** "how much gram is it", "how many pounds would that be": which unit, and nothing else. */
const isIt =
  "(?: (?:is|are|would|will|does|do|makes?|be|it|that|this|they|there|all|comes?|to|then|now|about|roughly))*";

/** What leads up to a sum and what ends it: "what would ... be", "... is how much", "... comes to what". */
const sumLead =
  "(?:(?:and|so|ok|then|now|quick|quickly|um|hm|hmm|oh|well|also|plus|hey|what|whats|how much|how many|is|are|does|do|did|would|will|calculate|work out|compute|tell me|give me|you|i|we|get|if|when|multiply|divide|add|take) )*";
const sumEnd =
  "(?: (?:is|are|be|makes?|give|gives|equals?|comes?|to|out|at|what|how|much|then|again|exactly|please|pls|now|[?=]))*$";
const unitLead = "(?:(?:and|also|so|ok|then|plus|now|please|pls|oh|hm|um|tell me|,) ){0,6}";

/** "a spoon of cream": which spoon is asked. */
const spoons = "(?:(?:a|an|one|each|the|per|{number}) )?(?:\\S+ )?spoon(?:ful)?s?";

export const convertCues = cues(
  // "four of the whites, rest of the recipe in grams"
  [-4, "{remainder} (?:by weight )?in {unit=g|oz}"],
  [
    9,
    `^${unitLead}how (?:much|heavy) (?:does|is|are|do) ${spoons} (?:of )?(?:the )?{ingredient}(?: (?:weigh|is|in {unit=g|oz}))*${end}`,
    `^${unitLead}(?:how many|what) ${weights} (?:is|are|does|do|in|has) ${spoons} (?:of )?(?:the )?{ingredient}(?: (?:weigh|have|make))*${end}`,
    `^${unitLead}(?:(?:what|whats|what is|convert|weight of|the weight of) )?${spoons} (?:of )?(?:the )?{ingredient} (?:in|to|into|as) ${weights}${end}`,
  ],
  // "so the old tin holds 14oz, grams?"
  [4, `^(?!.*{base} )(?:\\S+ ){0,6}${notGrams} , ${weights}${end}`],
  // "and how many grams is 3 oz", "what is 7 oz in grams": nothing but the other unit, behind a bowl too
  [
    9,
    `^${unitLead}how many ${weights} (?:(?:is|are|in|does|do|would) ){1,2}${notGrams}(?: (?:make|makes|come to|be))?${end}`,
    // "grams in 3 oz?"
    `^${unitLead}${weights} in ${notGrams}${end}`,
    `^${unitLead}${times} in {time}${end}`,
    `^${unitLead}(?:what|whats|convert|turn) (?:(?:is|are|does|do|would) ){0,2}${notGrams} (?:in|to|into|as|make|makes) ${weights}${end}`,
  ],
  // "three quarters of 340 is what"
  [9, `^${sumLead}{fraction} of {number}(?: (?:is|are|makes?|gives?|equals?|comes?|be|=))${sumEnd}`],
  // nothing but a sum and what asks for it, "is what" behind it too
  [
    9,
    `^${sumLead}${value} ${op} ${value}${sumEnd}`,
    `^${sumLead}{factor} ${value}${sumEnd}`,
    `^${sumLead}${value} minus_\\S*<number>${sumEnd}`,
    `^${sumLead}${value} (?:divided|multiplied) by (?:${value}|{when})${sumEnd}`,
    `^${sumLead}${value} off ${value}${sumEnd}`,
    `^(?:(?:and|so|ok|then|now) )*(?:whats|what is|how much is|calculate|work out) ${value} by (?:${value}|{when})${sumEnd}`,
    `^(?:(?:and|so|ok|then|now) )*${value} by ${value} (?:is|comes to|makes|equals) (?:what|how much)${sumEnd}`,
  ],
  // its own question, whatever was flavored before
  [
    12,
    `^(?:(?:and|so|ok|also) )*(?:whats|what is|how much is|what are) {volume} (?:of )?(?:\\S+ )?{ingredient} in {unit}${end}`,
  ],
  // "how much does 1 tsp salt weigh": its weight, and no flavor
  [
    9,
    `(?:how (?:much|heavy|many \\S+)|what|whats) (?:(?:does|do|did|would|will|can|is|are|should) )*{volume} ${something} ${manner}${weighs}${end}`,
    `(?:how (?:much|heavy|many \\S+)|what|whats) (?:(?:does|do|would|will) )*{volume} ${something} ${manner}${comesTo} (?:in )?${either}${end}`,
    `(?:how (?:much|many \\S+)|what|whats) (?:(?:does|do|would|will) )*{volume} of (?:it|that|this) (?:${weighs}|${comesTo} (?:in )?${either})${end}`,
    `^${opening}how heavy (?:is|are|would) {volume} ${something}(?: be)?${end}`,
    `(?:the )?weight of {volume} ${something}${end}`,
    `{volume} ${something} (?:, |and )?(?:how (?:much|heavy)|what) (?:does|do|is|would|will) (?:that|it|this|they)(?: weighs?)?(?: in ${weights})?${end}`,
    `(?:how much|what|whats) (?:is |are |does )?{volume} ${something} (?:in|by) weight${end}`,
    `(?:how (?:much|heavy|many \\S+)|what) (?:do|does|would|will|is|are) (?:the |my )?${egg} (?:\\S+ )?(?:weighs?|come to)${end}`,
    `(?:how (?:much|many \\S+)|what|whats) (?:(?:does|do|would|will) )*{weight} ${something} ${comesTo} (?:in )?(?:${volumes}|${heavy})${end}`,
    `how (?:many|much) (?:level |heaped |heaping |rounded |flat |full |whole )?(?:measuring )?${volumes}(?: ,)? (?:(?:is|are|in|does|do|did|would|will|should|can|could|there|it|i|we|you|one|get|gets|out|of|from|to|with|for|about|exactly) )*(?:the |my |these |those )?{weight} ${something}(?: ${fills})?${end}`,
    `{weight} ${something} (?:, )?(?:${fills}|is|are|in) how (?:many|much) (?:level )?${volumes}${end}`,
  ],
  [6, `^${opening}what (?:does|do|would|will) {volume} ${something} ${comesTo.replace("|as", "")}${end}`],
  // "1.5 lb butter, g", "250 g caster sugar, cups"
  [
    9,
    `^${opening}(?:${notGrams}|{volume}) ${something} ${manner}(?:, )?(?:in |into |to |as )?${weights}${end}`,
    // "12 oz macarons, grams please": their weight, and no filling
    `^${opening}${notGrams} (?:of )?(?:the |my )?{count=macarons} (?:, )?(?:in |into |to |as )?${weights}${end}`,
    `^${opening}{weight} ${something} ${manner}(?:, )?(?:in |into |to |as )?(?:${heavy}|${volumes})${end}`,
  ],
  // "the packet says 6 oz, how much gram is it", "how much pounds is 500 g"
  [
    6,
    `${anyKind} (?:\\S+ ){0,4}(?:, )?(?:is |are |its |thats )?how (?:much|many) {unit}${isIt}${end}`,
    `{weight} (?:\\S+ ){0,4}(?:, )?(?:is |are |its |thats )?how (?:much|many) (?:${heavy}|${volumes})${isIt}${end}`,
    `how much {unit} (?:(?:is|are|in|does|do|makes?|there|the|my) )+${anyKind}(?: ${something})?(?: (?:make|makes|have|be|weigh|come to))?${end}`,
    `how much (?:${heavy}|${volumes}) (?:(?:is|are|in|does|do|makes?|there|the|my) )+{weight}(?: ${something})?(?: (?:make|makes|have|be|weigh|come to))?${end}`,
    `(?:${notGrams}|{volume}) (?:of )?{ingredient} (?:, )?how (?:much|many) ${weights} (?:(?:do|would|should|that|it|is|does) )*(?:i|we) (?:need|use|take|want)${end}`,
  ],
  // refused, and no cost
  [
    12,
    "^(?:(?:whats|what is|convert|turn|how much is|and) )*{money} (?:in|to|into|as) {unit=(USD|EUR|GBP|MXN|CAD|AUD|CHF|JPY|INR)}",
  ],
  [
    9,
    "{unit=cup|tbsp|tsp} (?:of )?{ingredient} (?:for|in|from) {weight}(?: [?])?$",
    "^how many {unit=cup|tbsp|tsp} (?:is|are|in|for) {weight}(?: [?])?$",
  ],
  [5, `^(?:${ask} )?(?=0[.,]\\d){number} of {number}${end}`],
  [
    12,
    "^(?:(?:please|ok|so|and|now|can you) )*(?:put|turn|give me) (?:that|the) {ingredient} (?:in|into|as) {unit}",
  ],
  [8, `{percent} of {number}${end}`],
  [
    9,
    "^(?:(?:and|so|ok|whats|what is|how much is) )*(?:that |the )?(?:{ingredient=(butter|sugar|whites|almond_flour|powdered_sugar|granulated_sugar|cream)}) in {unit=oz|lb|cup|kg|tbsp}(?: [?])?$",
    "^(?:(?:so|ok|and) )*(?:thats|that is) (?:in )?{unit=g} .* in {unit=oz|lb|kg}",
  ],
  [
    9,
    "^(?:(?:and|so|ok) )*how (?:much|heavy|many \\S+) (?:does|is|are|weighs?) (?:the )?(?:an? |one |{number} )(?:single |large )?(?:{color=white}|{ingredient=whites})(?: weigh| weight)?(?: [?])?$",
  ],
  [
    -9,
    "^(?:(?:so|and|hm|ok|but) )*(?:is|would|will) (?:that|it|this) (?:be )?(?:too (?:much|little)|enough|ok|okay|fine|right) .. {weight} .. {base}",
  ],
  [5, `${ask} (?:that|the|this|all that) {base} in {unit}${end}`],
  // "mines a fan oven, so 150 conventional is?": a number beside the one oven, behind the other, is a heat
  [
    9,
    "(?:fan|convection|blower) .. {number} (?:(?:in|on|for|a|degrees?) )*(?:conventional|static)",
    "(?:conventional|static) .. {number} (?:(?:in|on|for|a|degrees?) )*(?:fan|convection|blower)",
  ],
  // Against the "-3" of money below: exchange is asked of a converter, and refused by it.
  [
    8,
    `{money} .. (?:in|to|into) (?:\\S*(?:dollars|euros|pounds|francs|usd|eur|gbp|chf|cad|aud)(?:<\\S*>)?)${end}`,
  ],
  [5, `{factor} {number}${end}`],
  [-6, "gas .. {time} on the clock", "gas .. (?:timer|alarm)"],
  [
    4,
    `^(?:and |what about |now )*(?:the )?same (?:weight|amount|volume|quantity|measure|number of cups|{unit=(?:cup|tbsp|tsp|oz)}) of {ingredient}${end}`,
  ],
  [4, "gas (?:mark )?(?:{number}|{fraction})"],
  [
    7,
    "{temperature} .. gas(?: marks?)?",
    "(?:what|which) gas mark .. (?:{temperature}|{number})",
    "{number} .. (?:in|to|as) (?:a )?gas(?: marks?)?",
    "gas marks? .. (?:{temperature}|{number})",
  ],
  [
    7,
    "(?:oven|mine|dial) .. {unit=°F|°C} .. (?:recipe|book|card) .. (?:{number}|{temperature})",
    "(?:recipe|book|card) .. (?:{number}|{temperature}) .. (?:oven|mine|dial) .. {unit=°F|°C}",
  ],
  // "ovens stuck in f it says 310 whats that in c"
  [
    9,
    "(?:ovens?|mine|dial|thermometers?|probe|display|thermostat) .. {unit=°F|°C} .. {number} .. {unit=°F|°C}(?: (?:please|pls|then|instead))*(?: [?])?$",
  ],
  [-3, "gas (?:bill|price|cost|station|tank|cooker broke)"],
  [
    4,
    `(?:add|subtract|take|multiply|divide) {number} (?:by|to|from|and|with) (?:{number}|{when})${end}`,
    `(?:\\x29|{weight}|{number}) x_\\S*<factor>${end}`,
    `{number} minus_\\S*<number>${end}`,
    `{volume} .. ${into} (?:how many |what )?${weights}`,
    `{volume} .. ${into} (?:how many |what )?${volumes}`,
    `{weight} .. ${into} (?:how many |what )?${volumes}`,
    `${notGrams} .. ${into} (?:how many |what )?${weights}`,
    `{weight} .. ${into} (?:how many |what )?${heavy}`,
    `${volumes} and (?:an? )?{fraction} .. ${into} (?:how many |what )?${weights}`,
    `{volume} .. {volume} .. ${far}weighs?`,
    `{volume} (?:\\S+ )?(?:\\S+ )?weighs? (?:how much|what|wat)`,
    `{length} .. ${into} (?:how many |what )?${lengths}`,
    `{temperature} .. ${into} (?:how many |what )?${heats}`,
    `(?:hows?|how) many ${weights} .. {volume}`,
    `how many ${volumes} .. (?:{volume}|{weight})`,
    `how many ${heavy} .. {weight}`,
    `how many ${weights} .. ${notGrams}`,
    `how many ${weights} (?:is|are|in|do|does|for) ${egg}`,
    `{temperature} .. ${oven}`,
    `${oven} .. {number} .. (?:what|whats) .. ${oven}`,
    `${oven} (?:recipe|recipes|book|card) .. {number}`,
    `{number} .. (?:no|without a|hasnt a|doesnt have a|isnt a) fan`,
    `{number} (?:(?:in|on|with) (?:an? |the )?)?${oven} .. (?:set|mine|my|oven|in|to)`,
    `${oven} .. {temperature}`,
    `${value} ${op} ${value}${end}`,
    `${value} (?:divided|multiplied) by (?:${value}|{when})${end}`,
    `${ask} ${value} ${op} ${value}`,
    `{fraction} of {number}${end}`,
    `(?:tip|tips|nozzle|nozzles) .. ${inches}${end}`,
  ],
  [
    3,
    `{volume} .. ${weights}`,
    `${weights} .. {volume}`,
    `{volume} .. ${far}weighs?`,
    `weighs? .. {volume}`,
    `weight of .. {volume}`,
    `heavy .. {volume}`,
    `{temperature} .. ${heats}`,
    `${heats} .. {temperature}`,
    `{number} (?:degrees )?(?:in|to|into) ${heats}`,
    `{length} .. ${lengths}`,
    `${lengths} .. {length}`,
    `{weight} .. ${volumes}`,
    `${notGrams} (?:{base} |{ingredient} )?${weights}`,
    `${egg} .. ${weights}`,
    `(?:weight|heavy) .. ${egg}${end}`,
    `how many ${times} .. {time}`,
    `{time} (?:in|to|into|as) ${times}`,
    `{time} (?:is|are|makes?|equals?|=) (?:how many|what in) ${times}`,
    `(?:what|whats) .. {time} in ${times}`,
    `convert .. (?:{weight}|{volume}|{length}|{temperature}|{time}|{number})`,
    `${ask} ${notGrams}${end}`,
    `${ask} {temperature}${end}`,
    `{percent} of {weight}${end}`,
    `{fraction} of (?:{weight}|{volume})${end}`,
    `{weight} ${op} (?:{weight}|{number})${end}`,
    `(?:thats|that|it|this) (?:in|to|into) (?:${weights}|${volumes}|${heats}|${lengths})`,
    `(?:^|whats |what is |calculate |work out )\\d\\d+_?/_?\\d+<number,fraction>${end}`,
    `^(?:and|then|also) \\d\\d+_/_\\d+<number,fraction>${end}`,
    `(?:whats|what is|calculate|work out) \\d+_?[-/]_?\\d+<number(?:,fraction)?>${end}`,
    `(?:{time}|{length}|{temperature}) (?:in|to|into) (?:${weights}|${volumes})`,
    `{weight} (?:in|to|into) (?:${lengths}|${heats}|${times})`,
    `{number} (?:fan|conventional|convection) .. (?:fan|conventional|convection)`,
  ],
  [
    2,
    "convert",
    "conversion",
    `^(?:and |so |um )*{volume} (?:of )?(?:\\S+ )?{ingredient}${end}`,
    `${ask} {volume} .. {ingredient}${end}`,
    `{volume} .. {ingredient} .. {manner}`,
    `{volume} of \\S+ (?:\\S+ )?in`,
  ],
  [
    1,
    "{volume}",
    "{temperature}",
    "(?:tip|nozzle) .. {length}",
    "{length} .. (?:tip|nozzle)",
    `(?:in|to) (?:${weights}|${volumes}|${heats}|${lengths})`,
  ],
  [
    -3,
    "how (?:much|many) (?:\\S*<unit[^>]*> )?(?:of )?(?:\\S+ )?(?:\\S+ )?{dose} .. (?:for|in|into|to|does|do|goes|should|can) (?!\\S*<volume)",
    `${volumes} of (?:\\S+ )?{dose} .. (?:for|in|into) .. {weight}`,
    "{money}",
    "(?:what else|whats left|the rest|everything else|the others|use it (?:all )?up|use up)",
    "(?:timer|timers|alarm|remind|ping|countdown)",
    "^(?:and |please |pls )*(?:note|log|record|jot)",
    "(?:split|divide|share out) .. (?:into|between|equal)",
    "my (?:measuring )?(?:\\S*<unit=cup>|cup|cups)",
    "(?:remember|from now on|always|in stock|pantry|cupboard|used)",
    "{weight} .. {base} .. {dose}",
    "{dose} .. {weight} .. {base}",
    "when .. {count=macarons}",
  ],
  [-7, "{base} .. (?:equally|evenly|between|split|divided?)", "house (?:recipe|formula|shells|weights)"],
  [-2, "{count=shells|macarons|batches|trays}"],
);

/** "same question for powdered sugar", "can you do that for honey too", "and in cups?": of what was turned before. */
export const convertGoesOn = cues(
  // "a spoon of it", "and per spoonful"
  [
    9,
    `^${opening}(?:(?:what about|how about|and|whats|what is|what does|how much does|how much is|for|in) )*${spoons}(?: (?:of )?(?:it|that|this|{ingredient}))?(?: (?:weigh|then|in {unit=g|oz}))*${end}`,
  ],
  // "as much of icing sugar", "an of icing sugar"
  [
    8,
    `^${opening}(?:an |or |same |as much |the same |for )*of (?:the )?(?:{manner} )?{ingredient}(?: (?:too|then|please|pls|instead|and of {ingredient}))*(?: [?])?$`,
  ],
  // "powdered sugar, same cups", "cream, same spoons"
  [
    9,
    `^${opening}(?:the )?(?:{manner} )?{ingredient} (?:, )?(?:the |also |and )*same (?:cups?|spoons?|spoonfuls?|cupfuls?|measures?|grams?|ounces?|{unit})(?: (?:please|pls|too|again|as well))*(?: [?])?$`,
  ],
  // "take 50 off that", "plus 25"
  [16, ...stepTurns],
  // "half of that, in ounces"
  [
    13,
    `^${opening}(?:(?:whats|what is|how much is|make it|just|only|give me) )*\\S*<(?:factor|number,fraction)> (?:of )?(?:that|it|this)(?: ,)?(?: (?:in|as|into|to))? {unit}(?: (?:please|pls|then|instead))*(?: [?])?$`,
  ],
  // "fan?", "divide by 3"
  [
    13,
    shareTurn,
    "^(?:and |in |with |for )*(?:an? |my )?(?:fan|convection)(?: oven)?(?: [?])?$",
    "^(?:(?:and|then|now|ok) )*(?:divided? by|times|multipl\\S+ by) {number}(?: [?])?$",
    "^(?:(?:and|then|now|ok) )*(?:take|minus|subtract|less|plus|add) {number}(?: (?:off|from|to|on))?(?: (?:that|it|this))?(?: [?])?$",
    "^(?:(?:and|or|what about|whats|make it|ok|now|so|then) )*\\S*<(?:factor|number,fraction)>(?: of)?(?: (?:that|it|this))?(?: [?])?$",
  ],
  [
    8,
    `^${opening}(?:(?:${askingAgain}|whats|what about|how about|make) )*(?:that|it|this|same|again|repeat|once more)(?: (?:again|\\S+))? (?:for|with|of|but|but for|but with|only|,) (?:the |some |my )?(?:{manner} )?{ingredient}(?: (?:,|{manner}|too|also|as well|please|pls|instead|now|then|though))*(?: [?])?$`,
  ],
  [
    6,
    `^${opening}(?:thats|that is|that|its|it) (?:in )?{unit} (?:{manner} )?(?:is )?how (?:many|much)(?: [?])?$`,
  ],
);

/** Behind weights to weigh out: all of them. */
const allIn = (units: string) =>
  cues([
    14,
    ...sameIn(`{unit=${units}}`),
    `^${opening}(?:in|as) {unit=lb|kg}(?: (?:please|pls|then|instead|now|too))*(?: [?])?$`,
  ]);
const inAny = allIn("oz|lb|kg");
/** A filling and a flavor say their ounces themselves, and stay what is spoken of. */
const inOther = allIn("lb|kg");

export const convertAfter = Object.fromEntries(
  [...weighing].map((tool) => [tool, tool === "fill" || tool === "dose" ? inOther : inAny]),
);
