/** The signs of a dose question, of one that goes on from it, and of one behind another answer. */

import { bringsItDown, neededFor } from "../../../data/words/mending-talk.ts";
import { otherColorants } from "../../../data/words/not-food.ts";
import { opening } from "../../../data/words/openers.ts";
import { wentWords } from "../../../data/words/putting.ts";
import { vessel } from "../../../data/words/vessels.ts";
import { cues } from "../lib/cue.ts";

const nameless = "(?!(?:of|more|extra|less|left|each|plain|in|into|to|too) )[a-z]+(?: [a-z]+)?";

/** "how much batter fixes it", "batter to fix that": plain mix, for what holds too much. */
const toMend = [
  "(?:how|hw) (?:much|many)(?: g| grams)?(?: of)? (?:more |plain |extra |the |my )*{base} (?:(?:do|should|must|would|will|can|to|i|need|it|takes|take|that|could) )*(?:fix(?:es)?|mends?|saves?|rescues?|dilutes?|corrects?|cures?|sorts?)",
] as const;

/** What makes one bowl of several weights. */
const mixedUp =
  "(?:\\S*(?:whipped|whisked|beaten|blended|creamed|mixed|stirred|combined|folded|melted|worked)\\S*|whipped_up\\S*)(?: (?:up|together|in|into one|as one|smooth|until smooth|fluffy))*";

/** One weight, one mix and one flavor, and nothing of money, time, shares of a bowl or the record. */
const inParts =
  "^(?!.*(?:<(?:money|time|temperature|length|volume)|count=(?!bowls)|<when|base=batter|remainder|fraction| rest |split|divide|share|half|other way|note|save|label says|bottle says|directions|recipe|cost|fat|sugar|water))(?!.*<weight>.*<weight>)(?!.*<percent>.*<percent>)(?!.*<number)(?=.*<weight>)(?=.*<(?:[^>]*,)?base=)(?=.*<(?:[^>]*,)?(?:taste|dose)=)";

export const doseCues = cues(
  // "which flavors do you know", "what goes with pistachio", "suggest a filling"
  [
    12,
    "^(?!.*(?:<(?:weight|volume|percent|money|when)|count=(?:trays|boxes)) ?)(?:(?:so|and|ok|hi|please|pls|can you|could you) )*(?:(?:what|which|how many) (?:\\S+ )?{dose=flavor} (?:(?:do|can|could|have) (?:you|u)|(?:can|could) (?:i|we)|(?:are|is) (?:there|in))|(?:list|show|tell) (?:me )?(?:(?:all|the|your|of) )*{dose=flavor}|what (?:can|could|do) i \\S*<dose=flavor>)",
    "^(?!.*<(?:weight|volume|percent|money|when|number) ?)(?:(?:so|and|ok|hi) )*(?:what|which) (?:(?:other|else|two|three) )?(?:(?:{dose=flavor}|{base}|tastes?|colou?rs?) )?(?:else )?(?:go|goes|pair|pairs|match|matches|works?|tastes?|suits?|fits?) (?:(?:well|nicely|best|good|great) )*(?:with (?:\\S+ ){0,3}?(?:{taste}|{ingredient}|{chocolate}|{base})|together(?: (?:well|nicely|best|in a box))*(?: [?])?$)",
    "^(?!.*<(?:weight|volume|percent|money|number) ?)(?:(?:so|and|ok|hi|please|pls|can you|could you|help me) )*(?:suggest|recommend|pick|choose|propose) (?:(?:me|us|a|an|some|any|the|nice|good|new|other|fun|seasonal) )*(?:{dose=flavor}|{base=filling}|combinations?|combo|pairings?)",
    "^(?!.*<(?:weight|volume|percent|money|number) ?)(?:(?:so|and|ok|hi|um|hm) )*(?:what|which) (?:other )?(?:{dose=flavor}|combinations?) (?:(?:should|shall|would|could|do) (?:i|we|you) (?:make|do|bake|choose|pick|go|take|recommend|suggest|like)|(?:is|are) (?:good|nice|best|popular|in season))",
  ],
  // "buttercream, 590 g; raspberry; 2.5 percent", "12 g of it left, 4 percent, how much ganache": told in its parts
  [
    9,
    `${inParts}(?=.*{percent}).*`,
    `${inParts}(?=.*(?:enough for|how far|how much (?:{base} )?(?:can|could|will|would|does)|what {base} (?:does|will))).*`,
  ],
  // "and vanilla extract in the same 195"
  [
    8,
    "^(?:(?:and|also|plus|ok|now|then|so) )*{dose} (?:in|into|for|to) (?:the |that |this )?same (?:{number}|{weight})(?: (?:please|pls|too|[?.]))*$",
  ],
  // what whitens or colors and has no row
  [
    9,
    "titanium (?:di)?oxide",
    "tio2|e171|e 171<number>",
    "(?:how much|for|in|into|is|can|and|use|add|with) .. whiten(?:er|ers|ing)",
    "^(?:(?:liquid|powder|gel|food)\\S* )*whitener",
  ],
  [4, `(?:${otherColorants})`],
  [-9, "(?:water|ingredient=water>) activity"],
  // "no oil, 450 g ganache": what is left out isn't dosed
  [
    -12,
    "^(?!.*(?:{dose}|{taste}) .*(?:{dose}|{taste}))(?!.*(?:how|hw) (?:much|many) )(?!.*(?:{percent}|{fraction}|instead|rather))(?:.* )?(?:no|without|minus|skip|forget|leave out|not) (?:any |the )?(?:{dose}|{taste})(?: (?:in it|in there|this time|today|please|pls|then|now|at all))*(?: [,.:;] .*|$)",
  ],
  [
    9,
    "(?:forget|no|not) .. (?:finished|total) .. {percent} of {number}",
    "^(?:(?:ok|no|just) )*plain {percent} of (?:{number}|{weight})",
  ],
  // "and for the 180 g bowl", past another topic too
  [9, "^(?:(?:ok|and|so|now|then) )*for the {weight} (?:one|bowl|batch|{count=bowls})(?: [?])?$"],
  [
    10,
    "{base} .. {weight} .. (?:should|shall|must|to|has to|needs to|supposed to|want it to) taste (?:of|like) {taste}",
    "{weight} .. {base} .. (?:should|shall|must|to|has to|needs to|supposed to|want it to) taste (?:of|like) {taste}",
    "{weight} .. {chocolate} .. {weight} .. {ingredient=cream} .. (?:like|want|add|put|adding|putting|with) .. {taste} (?:in|into) (?:it|that|this) .. how much",
  ],
  // "140 dark 112 cream, rum?", "ganache: 140 g dark, 112 g cream. adding orange liqueur, grams?": a flavor for what they make
  [
    12,
    "^(?!.*(?:ratio|recipe|scale|cost|label|allerg|declare|symptom=|save|note)).*{chocolate} .. {ingredient=cream} (?:(?:,|and|plus|with) (?:{weight}|{number}) (?:of )?{ingredient=(butter|glucose|honey)} )?(?:[,.;] )?(?:(?:and|then|adding|add|with|for|some|a bit of|a little|its|it is|i want|want|in|goes|plus) )*(?:{taste}|{dose=(flavor|extract|liqueur|zest|paste|salt|spirit)})(?: (?:in it|into it|in|to it))?(?: [,.;])?(?: (?:grams?|how much|how many grams|what weight|weight|amount|g|{unit=g}))*(?: [?])$",
  ],
  // "violet flavor, 160 g butter and 90 g cream cheese all whipped together": what was mixed is the bowl, no recipe
  [
    11,
    `^(?!.*(?:{ingredient=(almond_flour|whites)}|symptom=|recipe|scale|cost| weighs? | total|double|halve|twice|half|save))(?!(?:note|log))(?=.*{dose}).*{weight} (?:of )?{ingredient} .*{weight} (?:of )?{ingredient} (?:(?:all|both|just|now|then|well|i|we|which|ive|are|is|were|have|been|being|got|,|-) )*${mixedUp}`,
    `^(?!.*(?:{ingredient=(almond_flour|whites)}|symptom=|recipe|scale|cost| weighs? | total|double|halve|twice|half|save))(?!(?:note|log))(?=.*{dose}).*${mixedUp} (?:\\S+ ){0,3}?{weight} (?:of )?{ingredient} .*{weight} (?:of )?{ingredient}`,
  ],
  [-6, "{dose=color} (?:mixed |stirred |already )?in"],
  // "a colour in powder", "colour as a gel"
  [11, "{dose=color} (?:in|as|thats|that is|which is) (?:a )?{dose=(powder|gel_color|powder_color)}"],
  // "back to the shells, batter for those 40": what is piped, and nothing that goes into it
  [
    -6,
    "back to (?:the |my )?{count=(shells|macarons)}",
    "back to the {base=batter}",
    "^(?:[a-z]+ |, |\\S*<count=(?:shells|macarons)> )*{base=batter} (?:, )?for (?:the |those |these |all |my |that |same )+{number}(?: (?:then|again|please))*(?: [?])?$",
  ],
  // another thing that was looked at: neither a flavor nor a bowl
  [
    -6,
    "(?:checked|looked|watched|opened|measured|turned|set) .. (?:oven|fridge|freezer|thermometer|probe|thermostat|room|kitchen) .. {number}(?: (?:degrees|now|instead))*$",
    "(?:in|into|from|of) the (?:oven|fridge|freezer) (?:at|for|by|since|until|till) {number}$",
    "{number} (?:went|goes|go|are|is|was|were) (?:{step=bake}|(?:in|into) the (?:oven|fridge|freezer))",
    "(?:percent|percentage|share|{unit=%}) (?:of )?(?:the )?(?:fat|{ingredient=(sugar|water)})",
    "(?:weighed|checked|measured|cracked) (?:the |my |those |out )*{ingredient=(whites|egg|almond_flour|powdered_sugar|granulated_sugar)} .. (?:{weight}|{number})$",
  ],
  [4, "{unit=g} of {taste}(?: [?])?$"],
  // of a bowl that holds too much
  [
    4,
    "^(?:(?:and|ok|so|now) )*{color} (?:colou?r )?for (?:{weight} (?:of )?(?:the |my )?{base=batter}|that|it|this)(?: batter)?(?: [?])?$",
    "^(?:(?:so|and|ok|then|now) )*(?:how|hw) (?:much|many) (?:more |extra )?{color=plain} (?:do|should|must|to|shall|more|stuff) ",
  ],
  [-10, "{percent} (?:of (?:it|that|this) )?(?:{taste}|{color}) .. rest\\S*"],
  [-8, "{symptom=split_ganache}"],
  [
    3,
    "^(?:and |so |ok |then )*(?:whats |what is |give me )?(?:the |its )?(?:max|maximum|min|minimum)(?: dose| amount)?(?: [?])?$",
    "^(?:i |we |id |please |can you |ok |and )*(?:want|like|make|prefer) (?:it |them )?(?:a bit |much )?(?:stronger|weaker|milder)$",
    "^(?:a bit |much |ok |and )*(?:stronger|weaker|milder)(?: please| then)?$",
  ],
  [
    4,
    "{base} (?:\\S+ )?flavou?red (?:at|with|to) {percent}",
    "flavou?r (?:\\S+ )?{base} (?:at|with|to) {percent}",
  ],
  [
    10,
    "(?:for|in|into) (?:the )?other {fraction} (?:\\S+ ){0,3}(?:{dose}|{taste})",
    "(?:{dose}|{taste}) .. (?:for|in|into) the other {fraction}",
  ],
  // as many weights as bowls
  [
    9,
    "{number} {count=bowls} (?:of )?{base} (?:, )?{number} (?:, |and )?{number} .. (?:{dose}|{taste}) .. (?:each|every)",
  ],
  [-8, "{weight} each for {number}"],
  [-6, "{dose=flavor} .. split\\S* (?:even|equal|evenly|equally)"],
  [4, "(?:full|whole|entire)\\S* range for"],
  [-8, "how many \\S*min(?:utes?|s)?(?:<\\S+)? "],
  [-9, "{when} .. {number} {taste} .. {number} {taste}", "{number} {taste} {number} {taste}"],
  [-6, "(?:ok|okay|fine|good|work) as (?:a |the )?(?:center|centre|filling)"],
  [-8, "{base} between {number} {taste} .. {number} {taste}"],
  [
    6,
    "{base=(buttercream|ganache)} .. {number} .. (?:what|how much) (?:does|do|would|will|should) .. {taste} (?:come to|need|be)",
  ],
  [
    4,
    "^(?:(?:so|and|is|are|would|will) )*{weight} (?:in|into) {number} .*(?:ok|okay|enough|fine|alright|right|too)\\b",
    "(?:whats|what is) the (?:most|max|maximum|least|minimum) (?:i|we|one|you) (?:can|could|should|may) (?:add|put|use|go)",
    "how many {count=drops}",
    "{number} {count=drops}",
  ],
  [12, "{fraction} .. {taste} .. {fraction} .. {taste} .. (?:{dose=flavor}|how much|each)"],
  [5, "{dose} (?:for|in|into) (?:just |only )?{number} {count=bowls}"],
  [
    4,
    "how (?:much|many) .. {dose}",
    "{dose} .. {weight} .. {base}",
    "{percent} .. {dose}",
    "{dose} .. {percent}",
    "{percent} (?:of )?flavou?r",
    "{weight} .. {base} .. {dose}",
    "{dose} .. (?:what|how) .. {weight} .. {base}",
    "(?:what|which) (?:amount|quantity|weight) of {dose}",
    "amount of {taste} .. {base}",
    "{dose} for {weight} .. {base}",
    "{base=batter} .. {dose}",
    "(?:put|added|stirred|tipped|poured|dropped) .. {weight} .. {taste} .. {weight}",
  ],
  [6, "{base} .. {taste} .. {weight} .. how much {taste}", "{weight} .. {base} .. how much {taste}"],
  // "dark ganache, 260 g. rum?", "milk ganache 300 g, want kirsch in it": what there is, then what goes in
  [
    9,
    "^(?:(?:ok|so|and|hi|hey|i|have|ive|weve|got|theres|there is|my|the|a|bowl|batch|of|,) ){0,8}(?:\\S+ )?{base} (?:, |: |- )?(?:(?:about|roughly|its|thats|weighs|is|only|just) )*{weight} (?:[,.;:-] )?(?:(?:and|so|i|want|need|would like|id like|how about|what about|with|whats|what is|the|some|for|put|putting|adding|add|going in|is|now) ){0,6}(?:{dose}|{taste})(?: (?:in|into|for|to|it|that|there|please|pls|then|next|now|too))*(?: [?])?$",
  ],
  [
    4,
    "^{base} {weight} (?:, )?(?:{dose}|{taste})",
    "^{number} {base} (?:, )?(?:{dose}|{taste})",
    "^(?:and |now )?(?:{dose}|{taste}) for {number}(?: [?])?$",
    "{base} {weight} .. {taste} .. (?:how strong|how much|flavou?red|flavou?r)",
    "how strong (?:do|should|can|shall) (?:i|we) (?:go|make)",
    "(?:same|that) (?:{unit=%}|percentage|share|strength|dose)",
    "(?:what|which) (?:{unit=%}|percentage|share) (?:is|was|are|were) (?:that|it|this|in there|there|in it)",
    "what (?:{unit=%}|percentage|share) (?:is|are|would) {weight} .. (?:in|of|to|into) .. (?:{weight}|{number})",
    "what (?:percentage|percent|share) (?:is|am|are) (?:it|that|i|we|they) (?:at|now|sitting)",
    "{taste} .. {base} (?:it|that|this|they) (?:can|could|will|would)",
    "what (?:percentage|percent|share) (?:is|am|are) (?:it|that|i|we|they) .. (?:at|now)",
  ],
  [2.5, "{dose} (?:for|in|into) (?:the |my |that )?{weight}"],
  [3, "^(?:and |now |then )*{taste} for (?:the |my |that |those )?{weight}"],
  [
    3,
    "{dose} .. how much",
    "{dose} (?:for|in) (?:just |only )?(?:one|each|half|every)",
    "(?:{dose}|{taste}) .. (?:for|in|into) (?:it|that|all|the lot|the whole|this|them|each|half)",
    "{fraction} of (?:it|that|them) .. {taste}",
    "{taste} .. {weight} .. {base}",
    "{weight} .. {base} .. {taste}",
    "(?:how|hw) much .. {taste} .. (?:in|into|for|to|does|do|goes|should|with|per)",
    "{weight} .. {dose} .. {base}",
    "{dose} .. {base}",
    "{base} .. {dose}",
    "(?:how|hw) much {base} .. (?:can|will|does|do|would) .. (?:with|from|that|it|do|cover)",
  ],
  [
    2,
    "(?:how|hw) much .. {taste}",
    "{weight} .. {dose}",
    "{dose}",
    "too (?:strong|weak|much)",
    "over ?dosed?",
    "(?:strong|weak) enough",
    "{taste} .. {base}",
    "(?:tipped|dumped|poured|dropped|put|added|stirred|fell|spilt|spilled) .. {weight} .. (?:{dose}|{taste})",
    "{percent} .. {base}",
    "{base} .. {taste} .. how much",
  ],
  [1, "flavou?r", "enough", "{weight} .. {base}", "goes in(?:to)?"],
  [
    3,
    "(?:how|hw) much (?:more )?(?:plain )?(?:extra )?{base} .. (?:fix|rescue|save|dilute|correct|mend|bring|tone|balance|weaken|stretch)",
    "(?:tone|water|bring) (?:it )?down",
  ],
  [
    -3,
    "(?:note|log|record|jot|write) ",
    "timer",
    "(?:cost|costs|price|margin|label|allergens?)",
    "{unit} (?:in|to) {unit}",
    "remember",
    "(?<!(?:can i|could i|how do i|how to|to) )save (?:it|that|this|the)",
    "save$",
    "recipe",
  ],
  [
    -4,
    "{fraction} (?:of it |of that )?(?:{taste}|{color})",
    "{remainder}",
    "(?:ring|center|centre|middle) .. (?:ring|center|centre|middle)",
    "{count=macarons} .. (?:ring|center|centre)",
  ],
  [-2, "split", "divide", "batch(?:es)?"],
  [-6, "how long"],
  [-1, "bottle"],
  [-3, "{count=macarons} (?:with|for)"],
);

/** What is done to a bowl or a part of it. */
const flavoring =
  "(?:flavou?r|colou?r|tint|dye|dose|season|spike|infus)(?:e|ing|ed|s|es)?(?:<\\S+)?|doing|using|taking|do|use|take";

export const doseGoesOn = cues(
  // "how much should have gone in", "same question for 200 g dark ganache"
  [
    9,
    "^(?:(?:so|and|ok|hm|then) )*(?:how much|what)(?: of it)? should(?:ve| have)? (?:gone|been)(?: (?:in|put|there|it))*(?: [?])?$",
    "^(?:(?:so|and|ok|now) )*(?:the )?same (?:question|thing|sum|again) (?:for|with|in|but|of) .. {base}(?: [?])?$",
  ],
  // "plain buttercream needed to tame it", "how much plain then", "what gets it back down"
  [
    9,
    `(?:{base}|{color=plain}|plain|unflavou?red) ${neededFor}`,
    "{color=plain} (?:{base} )?(?:that )?i (?:have to|need to|must|should)",
    "(?:how|hw) (?:much|many) (?:of )?(?:more |extra |the |my |some )*{color=plain}",
    `(?:what|whats|how much|needed) (?:\\S+ ){0,6}${bringsItDown}`,
  ],
  // "and if i leave the butter out", of a bowl that was summed from its parts
  [
    9,
    "^(?:(?:and|so|but|or|ok|what|how|about|if|i|we|id|ive|say|suppose|actually|no|sorry|,) )*(?:without|minus|skip\\S*|drop\\S*|omit\\S*|forgot|leave|leaving|left|take|taking|took|miss|missed) (?:out )?(?:the |my |any |that )*(?!\\S*<[^>]*(?:dose|taste)=){ingredient}(?: out| in there| (?:then|altogether|instead|now|of it))*(?: [?])?$",
  ],
  // "im only tinting half the batter", "just 180 of it gets flavor"
  [
    9,
    `(?:only|just|actually|gonna|going|rather|instead|if|i|im|ill|will|lets) (?:\\S+ ){0,3}?(?:${flavoring}) (?:only |just |about |up )*(?:{weight}|{number}|{fraction}) (?:of )?(?:it|that|this|them|(?:the|my) (?:{base}|{count=(bowls|batches)}|bowl|mix|lot|batch))`,
    "(?:only|just) (?:{weight}|{number}|{fraction}) (?:of )?(?:it|that|this|them|the (?:{base}|bowl|mix|lot|batch)) (?:gets?|is|will|goes|needs?|being|to)",
  ],
  // "just weighed the bottle and its 8": another weight of what was weighed before
  [
    9,
    "^(?:(?:i|ive|we|just|and|oh|hm|so|ok|no|sorry|actually|wait|the|my|,) )*(?:weighed|reweighed|remeasured|checked|measured|scales?|misread|looked) (?:(?:the|my|it|that|this|bottle|jar|tube|vial|pot|tub|bowl\\S*|scales?|again|properly|once|more|better|carefully|with|on|and|but|now|same|wrong|was|off|,|:) )*?(?:its|it is|it was|was|theres|there is|there was|says?|said|reads?|shows?|has|holds|:|more like|closer to|nearer|only|really|actually) (?:only |really |actually |just |more like |closer to |nearer |in fact )*(?:{weight}|{number})(?: (?:g|in it|in there|of it|really|actually|not \\S+))*(?:$| ,)",
  ],
  // "i put another 4 in", of what was put in
  [
    9,
    "^(?:(?:and|then|so|ok|right|,) )*(?:i|ive|we|weve) (?:(?:just|then|have|now) )*(?:put|added|add|tipped|poured|dropped|stirred|squeezed) (?:in )?(?:another|a further) {number}(?: (?:in|into it|now|more|too|to it))*(?: [?.,]| (?:now|ok|enough))*$",
  ],
  // "12 g slipped in", of the flavor
  [
    6,
    `(?:{weight}|{number}) (?:(?:that|which|has|had|have|of it) )*(?:${wentWords}) (?:in|into)`,
    "(?:grams|amount|weight|quantity)\\S* of (?:the |more |extra )*{color=plain}",
  ],
  // "id rather stick with the powder"
  [
    4,
    "(?:stick|stay|stick|go|going|rather|prefer|keep|return|back|use) (?:back )?(?:with |to |for )?(?:the |my )?{dose}(?: (?:then|please|after all|now))*",
    "{dose} (?:after all|it is|then after all)",
  ],
  // "and the minimum and the maximum?"
  [
    6,
    "^(?:(?:and|so|ok|whats|what|is|are|give|me|the) )*(?:min\\S*|least|lowest|smallest|max\\S*|most|highest|largest|biggest) (?:and|to|or) (?:the )?(?:min\\S*|least|lowest|smallest|max\\S*|most|highest|largest|biggest)",
    "turn (?:it |that |this )?(?:a?round|about|over)",
    "other way (?:about|over)",
  ],
  // "what percent am i sitting at", of the bowl
  [
    9,
    "^(?!.*(?:<(?:weight|number|percent|money|time|volume)|\\b(?:should|range|supposed|meant|ought|usual|max\\S*|min\\S*|fat|water|sugar|margin|markup|profit|costs?|price|discount|vat|tax)\\b))(?:\\S+ ){0,8}(?:{unit=%}|percentage|percent)(?: \\S+){0,6}$",
    "^(?:(?:and|so|ok|hm|but) )*how strong (?:is|am|are) (?:it|that|this|i|we)",
    "^(?:(?:and|so|ok|hm|but) )*(?:whats|what is|is there) (?:the|a|any) (?:fix|remedy|cure|solution|way out)(?: for (?:it|that|this))?(?: [?])?$",
  ],
  // "oh no, its 275 g of dark chocolate ganache": another bowl for the same flavor
  [
    9,
    `^${opening}(?:(?:its|it is|thats|that is|it was|make it|make that|in|into) )(?:(?:about|roughly|just|only|more like) )*{weight} (?:of )?(?:the |my )?(?:\\S+ )?{base=(buttercream|ganache|batter|filling)}(?: (?:though|then|actually|sorry|please|instead|in all|in there))*$`,
  ],
  // "and what would the right amount be in grams", of a bowl with something in it
  [
    16,
    "^(?:(?:and|so|but|ok|hm|then|well) )*(?:what|whats|how much|which) (?:would|should|is|are|was|does)?(?: be)?(?: )?(?:the |a |my )*(?:right|correct|proper|usual|normal|ideal|recommended|actual) (?:amount|dose|quantity|weight|number|one|range)",
    "^(?:(?:and|so|but|ok|hm|then|well) )*(?:what|how much|which)(?: (?:amount|dose|quantity|weight))? (?:would|should) (?:have been|be|it have been|that have been) (?:right|correct|enough|ok|okay|fine)",
  ],
  [24, "^(?:(?:and|so|ok) )*(?:whats|what is|what are|how much is) (?:that|it|those) in {unit=g}(?: [?])?$"],
  [9, ...toMend],
  [6, "(?:{factor}|\\S*<number,fraction>) (?:as much|the amount of|the dose of) (?:the )?(?:{dose}|{taste})"],
  [9, "^(?:(?:so|and|ok|then) )*{base} to (?:add|put in)(?: [?])?$"],
  // "how much batter do i add then", of a bowl that is overdone: plain batter, and nothing to pipe
  [
    12,
    `^${opening}(?:how (?:much|many)|what (?:weight|amount) of|what)(?: (?:more|plain\\S*|extra|uncolou?red))* {base=batter}(?: (?:do|should|must|can|shall|would|have|i|we|to|need|needs|get|gets))* (?:(?:add|stir in|put in|mix in|fold in|go in|goes in|added)(?:<\\S*)?)(?: (?:then|now|please|it|that|in|to (?:fix|save|rescue|mend)))*(?: [?])?$`,
  ],
  [
    14,
    "weighed .. (?:bottle|drops|jar|tube|{count=drops}) .. {weight}",
    "(?:found|got|have|theres|bought|opened) (?:another|a second|a third|one more|a further|some more|a bit more|more)(?: (?:little |small |whole |full )?(?:bottle|jar|tube|bag|pot|vial|flask|phial|sachet|one|of it|in the (?:drawer|cupboard|back)))* (?:, )?(?:(?:so|and|its|it is|thats|that is|makes|makes it|making|now|i have|ive got|i got|got|up to|it comes to|coming to) )*(?:{weight}|{number})(?: (?:g|of it|in all|in total|altogether|all told|all in|now|together|total|between them))*$",
  ],
  [
    12,
    "{weight} (?:of it |of that )?(?:spare|left|to spare|more|plain)? .. if i add (?:that|it|them|all)",
    "^(?:(?:and|so|ok|or|what) )*if i (?:add|put(?: in)?|stir in) (?:only |just )?{weight}(?: (?:more|instead|then|plain|of it|in))*(?: [?])?$",
  ],
  [6, "(?:i|ive) (?:went|gone) with (?:{weight}|{volume}|{number})(?! (?:of )?{base})"],
  [14, "(?:ran|run|runs) (?:out|dry|empty) (?:after|at|with) (?:{weight}|{number})"],

  [
    9,
    "^(?:(?:so|and|ok|hm|then) )*(?:what|how much) (?:should|ought) (?:it|that|there|i|to) (?:have (?:been|had|put|used|gone in)|be)",
  ],
  [14, "how (?:much|many) of (?:it|that|the same|this) (?:for|in|into) {weight}"],
  // "teaspoons for 260 g?": of the flavor before
  [
    14,
    "^(?:(?:and|so|ok|how many|how much in|the) )*{unit=(tsp|tbsp|ml)} (?:for|in|into) (?:the )?{weight}(?: (?:of )?(?:it|that|{base}))?(?: (?:then|please|now))*(?: [?.])?$",
  ],
  [12, "\\S*<number,fraction> .. (?:staying|stays|kept|left) \\S*plain\\S* .. (?:needs?|what|how much)"],
  // "half of it stays plain, so for the other half?"
  [
    20,
    "\\S*<number,fraction> .. (?:staying|stays?|kept|left|remains?) \\S*plain\\S* (?:, )?(?:so |and |then |what |how |much |about )*(?:for|in) (?:just )?(?:the )?(?:other|rest|remaining|second)",
  ],
  [8, "^(?:(?:so|and|ok|oh) )*what (?:do|should|can|must) i (?:add|do)(?: so| then| now)*(?: [?])?$"],
  [
    3,
    "(?:full|whole|entire)\\S* range",
    "^(?:\\S+ ){0,3}(?:in )?{weight} (?:in )?(?:, )?(?:over|too much|enough|ok|okay|alright)(?: [?])?$",
    "other way a?round",
    "how (?:much|many) (?:more|extra|plain) (?:\\S+ )?{base}(?: [?])?$",
  ],
  [
    6,
    "{weight} (?:altogether|in total|in all) .. (?:still|again|all) (?:for|in|into) (?:the |my )?{base}",
    "^(?:\\S+ ){0,4}(?:its|thats|there is|theres|it is) {weight} (?:altogether|in total|in all|in it|in there|now)",
    "(?:the|my) (?:most|max|maximum|least|minimum) (?:i|we|one|you) (?:can|could|should|may) (?:add|put|use|go)",
    "(?=.*<[^>]*base=).*\\b(?:instead|same (?:weight|amount|quantity)|(?:that|as) much|(?:suppose|if|when|say) (?:i|we) (?:use|put|used) (?:it|that|this) (?:in|for))",
  ],
);

/** "and with 20 g of a liqueur by its trade name in it": no table knows the name, and no part of the mix is meant. */
const namelessInMix = [
  `{weight} (?:of )?${nameless} (?:in|into) (?:it|that|this|there)`,
  `{volume} (?:of )?${nameless} (?:in|into) (?:it|that|this|there)`,
];

/** "and banana for that", behind the mix that was worked out. */
const ofTheMix = cues(
  [
    12,
    "^(?:(?:and|so|ok|now|then) )*{taste} (?:for|in|into) (?:that|it|this|the lot|all of (?:it|that)|this lot|(?:the|my|this|that) (?:whole |full )?(?:{count=(batches|bowls)}|mix|mixture|pot))(?: then| please| too)*(?: [?])?$",
  ],
  [14, ...namelessInMix],
);

export const doseAfter = {
  // "rum for the ganache", "what rum does that ganache take", with a timer between: no timer for it
  timer: cues([
    14,
    "^(?:(?:and|so|ok|now|then|how much|what|which|some|the|any) )*(?:{taste}|{dose}) (?:for|in|into) (?:the|that|this|my) (?:{chocolate} )?{base=(buttercream|ganache|filling|batter)}(?: (?:then|now|please|pls|too))*(?: [?])?$",
    "^(?:(?:and|so|ok|now|then) )*(?:how much|what|which) (?:{taste}|{dose}) (?:does|can|will|would|could) (?:the|that|this|my) {base=(buttercream|ganache|filling|batter)} (?:take|hold|need|want|stand)(?: (?:then|now))*(?: [?])?$",
  ]),
  buttercream: ofTheMix,
  ganache: ofTheMix,
  fill: ofTheMix,
  // "and the rum for one of those", behind a bowl that was parted
  split: cues([
    10,
    // "gel for two of them"
    "^(?:(?:and|so|ok|now) )*(?:(?:how much|the) )*(?:{taste}|{dose}) (?:for|in|into) (?:just )?{number} of (?:those|these|them|the (?:{count=bowls}|parts))(?: then| please)*(?: [?])?$",
    "^(?:(?:and|so|ok|now) )*(?:(?:how much|the) )*(?:{taste}|{dose}) (?:for|in|into) (?:just )?(?:one|each|every one) of (?:those|these|them)(?: [?])?$",
    // "rum for one jar", "and per tub"
    `^(?:(?:and|so|ok|now) )*(?:(?:how much|the) )*(?:{taste}|{dose}) (?:for|in|into|per) (?:just )?(?:(?:one|each|every|a|the other|another|that)(?:<\\S+)? )?(?:single )?(?:${vessel}|{count=(bowls|boxes)})(?: then| please)*(?: [?])?$`,
  ]),
  // "mint for 250 g", behind its bottle: the dose, and nothing put on the shelf
  shelf: cues([
    14,
    "^(?:(?:and|so|ok|now|then) )*(?:{taste}|{dose}) (?:(?:for|in|into) )?(?:the |my )?(?:{weight}|(?={number} (?:of )?\\S*<base){number})(?: (?:of )?\\S*<base\\S*| then| please| now| pls)*(?: [?])?$",
    "^(?:(?:and|so|ok|now|then) )*(?:{weight}|{number}) (?:of )?{base} (?:, )?(?:{taste}|{dose})(?: then| please| now| pls)*(?: [?])?$",
  ]),
  convert: cues([
    12,
    "(?:put|added|used|have|stirred) (?:those|the|that|these) {weight} (?:in|into) (?:my |the )?{weight} .. {base}",
    "^(?:(?:so|and|hm|ok|but) )*(?:is|would|will) (?:that|it|this) (?:be )?(?:too (?:much|little|strong|weak)|enough|ok|okay|fine|right|alright) .. {weight} .. {base}",
  ]),
};
