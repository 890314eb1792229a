/** The signs of a cost question, of one that goes on from it, and of one behind another answer. */
import { cues } from "../lib/cue.ts";
import { lineOutTurns } from "./line-out.ts";

/** A line of a bill: so much of a thing, and its price. */
const priced =
  "{weight} (?:of )?(?:the |my )?(?:{ingredient}|{chocolate}) (?:(?:at|for|@|costs?|costing|is|are|which|that|,|[(]) )*{money}";

const joined = "(?:(?:,|;|and|plus|with|[+]) )*";
/** What was bought goes on the shelf, with its price. */
const asBill =
  "^(?!.*(?:^| )(?:bought|pantry|shelf|stock|cupboard|remember|save|label|what else|the rest|goes in|goes into)(?: |$))";
const totalAsked =
  "(?:costs?|costing|expensive|pricey|dear|totals?|come to|comes to|came to|(?:set|sets|run|runs) me|altogether|all together|in all|how much|price|spen[dt]|pay|margin|charge|bill|worth|=)";

/** "24 at 0.50 each, a box of six?": so much each, and how many are asked about. */
const eachSaid =
  "(?:each|apiece|a piece|per piece|a macaron|per macaron|per {count=macarons}|a {count=macarons})";

export const costCues = cues(
  [
    9,
    `^(?!.*(?:^| )(?:sell|sells|sold|selling|fill|filling|weigh|grams)(?: |$)).*(?:^| )(?:{money}|{number}) ${eachSaid} (?:(?:,|and|so|what|whats|how much|how about|what about|is|are|does|would|then|for|in|a|an|one|the|per|each) )*{count=boxes} of {number}(?: (?:is|be|cost|costs|then|come to|what|please|pls|{count=macarons}))*(?: [?])?$`,
    "^(?:(?:and|so|ok|if|say) )*(?:each|every|one) (?:one |{count=macarons} )?(?:is|costs?|comes to) (?:me |about )*(?:{money}|{number}) (?:(?:,|and|so|what|whats|how much|how about|what about|is|are|does|would|then|for|in|a|an|one|the|per) )*{count=boxes} of {number}(?: (?:is|be|cost|costs|then|come to|what|please|pls|{count=macarons}))*(?: [?])?$",
  ],
  // weights each with its price are a bill, whatever is made of them; alone it waits for what is asked of it
  [2.4, `${asBill}.*${priced} (?:[)] )?${joined}${priced}`],
  [
    12,
    `${asBill}.*${priced} (?:[)] )?${joined}${priced}(?= ).* ${totalAsked}`,
    `${asBill}.*${totalAsked} .*${priced} (?:[)] )?${joined}${priced}`,
  ],
  [
    5,
    "how (?:expensive|pricey|costly|dear) (?:was|is|were|are|would|will|did|does|do) (?:\\S+ ){0,3}(?:{count=(batches|macarons|boxes|shells)}|{base}|it|that|this|those|these|they)",
  ],
  [
    6,
    "(?:pays?|paid|offers?|offered|gives?|gave) (?:me )?{number} (?:a|per|each|for an?|for each) {count=(boxes|macarons)}",
    "(?:am i|are we) (?:making|losing) (?:any |some )?money",
  ],
  [-12, "come to in {base=batter}"],
  // "only 120 g butter, what does the rest come to": weights, where no money is spoken of
  [
    -12,
    "^(?!.*(?:<money|cost|price|pay|charge|spen[dt])).*(?:the|my) (?:rest\\S*|others?|remainder|other (?:weights|amounts|ingredients|things|bits)) (?:then )?come to",
  ],
  // "right, forget money": the talk turns to something else
  [
    -12,
    "^(?:(?:ok|okay|so|right|now|and|well|but|alright|lets|,) )*(?:forget|never mind|nevermind|skip|leave|drop|enough|no more|thats enough|done|im done|stop)(?: (?:about|of|with|on|talk))*(?: (?:all|the|this|that))* (?:money|costs?|prices?|pricing|sums|selling|business)(?: (?:talk|stuff|side|aside|now|for now|then))*$",
  ],
  [
    10,
    "^(?:(?:my|the|all|ok|so) )*(?:costs?|spent|bills?|receipts?|shopping)(?: so far| was| were| today| in all)?(?: :)? .*{ingredient} {number} .*{ingredient} {number}",
  ],
  [
    8,
    "^(?:(?:and|plus|add|also|with) )*{time} (?:of )?(?:my time|work|labou?r) (?:at|for) (?:{number}|{money})",
  ],
  [8, "(?:i|we|ive) (?:spent|paid) (?:about |around |roughly )?(?:{number}|{money}) (?:on|for) "],
  [
    6,
    "{money} .. (?:what|how much) (?:is|are|do|does|did|was|were|would|will) (?:just |only )?(?:the|that|those|these|my) (?:{ingredient}|{chocolate})",
  ],
  [
    5,
    "(?:cost|price) of {weight} .. {ingredient}",
    "how much (?:does|do|is|are|would) {weight} .. {ingredient} cost",
    "what (?:does|do) {weight} .. {ingredient} cost",
  ],
  [
    6,
    "{weight} .. {ingredient} .. (?:what|how much) .. (?:cost|costs|run me)",
    "{money} .. {ingredient} .. (?:what|how much) .. come to",
    "(?:what|how much) .. {weight} .. {ingredient} .. (?:cost|costs|come to)",
  ],
  [
    9,
    "{money} .. {weight} (?:of (?:it|that)|.. ) ?.*(?:how much|what) .. costs?",
    "{money} .. (?:i|we|ive|it) (?:have |has )?(?:used?|needs?|took|takes|put) {weight} .. (?:how much|what) .. (?:cost|costs|come to)",
  ],
  [6, "{ingredient} (?:is |costs |at |@ )?{money} , {weight}(?: of (?:it|that))?(?: [?])?$"],
  // "butter is €0.95 per 100 g ... i took 150 g of the butter, what is that in money"
  [
    14,
    "^(?=.*{money})(?=.*{weight}).*(?:in money|how much money|what (?:do|did|must|would|will|should) (?:i|we) (?:have to )?(?:pay|owe)|worth of (?:stuff|ingredients))",
  ],
  [
    4,
    "(?:margin|markup|mark up|food cost|profit)",
    "{money} .. (?:charge|price)",
    "(?:charge|price) .. {money}",
    "(?:what|how much) .. (?:charge|sell .. for)",
    "(?:what|whats|how much) .. {count=(batches|boxes|macarons)} .. (?:cost|costs|come to|run me|set me back)",
    "(?:what|whats|how much) .. (?:cost|costs|cost me|come to|run me)",
    "(?:whats|what is|calculate|work out) .. (?:cost|costs) (?:of|per|for)",
    "what (?:price|should i charge|do i charge|to charge)",
    "cost (?:per|a|of one|of each) {count=(macarons|boxes|batches)}",
  ],
  [
    6,
    "(?:price ?list|prices|menu) (?:: |are )?(?:{count=boxes} of {number}|{number} (?:packs?|for|{count=boxes})) .. {number}",
  ],
  [
    3,
    "{money} .. (?:each|apiece|a piece|per {count=macarons})",
    "price .. {percent}",
    "(?:worth|break even)",
  ],
  [2, "(?:sell|sells|selling|sold) .. (?:at|for) {number}", "{money}"],
  [-4, "(?:had|theyd|theyve|they|it|eggs|{ingredient}) (?:have )?come to {number}"],
  [
    7,
    "{percent} .. (?:discount|off|vat|gst|tax|fees?|commission)",
    "(?:discount|vat|gst|tax|fees?|commission) .. {percent}",
  ],
  [6, "(?:cost|price) (?:of|for) (?:making )?{number} (?:\\S+ ){0,2}{count=macarons}"],
  [
    4,
    "how much (?:is|are|was|were|would) (?:the|that|those|these|my) (?:{ingredient}|{chocolate}) .. {money}",
    "^(?:(?:and|so|ok|but|just|only) )*(?:the|that|those|these|my) (?:{ingredient}|{chocolate}) (?:alone |in (?:it|that|there) )?(?:comes?|came|costs?) (?:to )?(?:(?:how much|what) ?)?(?:[?])?$",
    "(?:what|how much) (?:did|do|have|will|would) (?:i|we) (?:spend|spent|pay|paid) (?:on|for) .. (?:{ingredient}|{chocolate})",
  ],
  [3, "(?:cost|price) of (?:it|that|this|them|those|these)"],
  [1.9, "(?:cost|costs|charge|price)"],
  [
    1,
    "{percent}",
    "(?:packaging|boxes|ribbon|labou?r|wages?|ingredients)",
    "to make",
    "(?:sell|sells|selling|sold)",
  ],
  [
    -6,
    "(?:remember|save|store|note) (?:that|this|it|the)(?: price)?",
    "keep (?:that|this|it|the price)(?: in mind| on file)?(?: (?:please|pls))?$",
    "{money} .. (?:remember|save|note)",
    "^(?:(?:please|pls|ok|so|and|can|could|you) )*(?:note|notes|log|record|jot|set|remember|save)",
  ],
  [
    -4,
    "(?:currency|labor rate|labour rate)",
    "(?:pantry|larder|stock|shelf|cupboard)",
    "label",
    "allergens?",
    "(?:bought|paid) .. {money}",
    "{dose=flavor} .. {percent}",
    "{percent} .. {dose}",
    "{percent} .. {base}",
    "timer",
  ],
);

export const costGoesOn = cues(
  // "and without the butter"
  [14, ...lineOutTurns],
  [
    9,
    // "thats 24 macarons, how much each"
    "^(?:(?:and|so|ok|if|for|thats|that is|it|its|makes|made|there are|there were|say|i get|i got|got|its for) )*{number}(?: {count=(?:macarons|boxes)}| of them)? , (?:(?:so|and|then|whats|what is|what does|how much is|how much|what) )*(?:that |it |they |is )*(?:for )?(?:each|apiece|a piece|per piece|one|per {count=macarons}|a {count=macarons}|per macaron|a macaron)(?: (?:cost|come to|then|one))*(?: [?])?$",
    "^(?:(?:and|or|at|for|say|if|its|no|now|then) )*(?:{number}|{money}) (?:each|apiece|a piece)(?: [?])?$",
    // "how much of that is the almonds", "cost of the butter alone"
    "^(?:(?:and|so|ok|but) )*(?:how much|what|whats|(?:cost|price|share) of) (?:(?:of|that|it|this|is|are|was|were|did|does|do|would|for|the|those|these|my|just|only) )*(?:{ingredient}|{chocolate})(?: (?:alone|only|cost|costs|come to|in it|in there|by itself|on its own|then))*(?: [?])?$",
    "(?:my time|labou?r|work|wages?) (?:(?:is|was|of|:|=|took) )*{time} (?:(?:at|x|@|times|for|paid at|,) ?(?:{number}|{money}|{when})|{factor})",
    "^(?:(?:and|plus|add|also|with|ok|so) )*{time} (?:of (?:my time|work|labou?r) |my time |work |labou?r )?(?:(?:at|x|@|times) (?:{number}|{money}|{when})|{factor})",
    "^(?:(?:and|plus|add|also|with|the) )*(?:{count=boxes}|ribbon|sticker) (?:(?:is|are|was|costs?) )?(?:{number}|{money})",
    // "minus 10%", behind a price
    "^(?:(?:and|then|ok|with|now|so|but) )*(?:minus_|less_)?\\d+(?:[.,]\\d+)?_?(?:%|percent)<factor>$",
    "(?:customers?|clients?|she|he|they|someone|somebody|friend|lady|shop|caf[eé]) (?:now |only |just )?(?:wants?|needs?|orders?|ordered|asks for|asked for) {number}(?: (?:of them|{count=macarons}))?$",
    "(?:give|gave|giving|donate|donated) (?:away )?{number}(?: {count=boxes})?(?: (?:away|free|for free|for nothing))?(?: [?])?$",
    "{number}(?: {count=boxes}| of them)? (?:free|unsold|for nothing|go unsold)(?: [?])?$",
    "back to (?:the |my )?(?:full|normal|usual|old) price",
    "(?:an_hour|hour)\\S* (?:of (?:my time|work|labou?r) )?(?:is|costs|is worth|counts as) (?:worth )?(?:{number}|{money}|{when})",
  ],
  [
    4,
    // "i might go down to 24", "and if i only get 20"
    "^(?:(?:and|what about|how about|or|so|ok|no|then|what if|if|say|suppose|now|but) )*(?:i|we) (?:(?:only|just|might|may|could|can|should|would|have to|had to|must) )*(?:(?:go|went|drop|dropped|come|came) (?:(?:back|right|up|down) )*(?:to|as (?:low|high) as|for|at)|get|got|take|took|ask|asked) (?:{number}|{money})(?: (?:instead|then|each|(?:a|per) (?:box|{count=boxes})))?(?: [?])?$",
    "^(?:(?:and|what about|how about|or|so|ok|no|then|what if|if|its|say|only|just) )*(?:at|for) {number}(?: (?:instead|then|each|apiece|a piece|(?:a|per) (?:box|{count=boxes})))?(?: [?])?$",
  ],
);
