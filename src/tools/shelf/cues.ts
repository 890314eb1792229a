/** The words by which an order on the shelf, or a question about it, is known. */
import { cues } from "../lib/cue.ts";
import { goneWord } from "./moves.ts";
import { stillHave } from "./still-have.ts";

const place = "(?:pantry|larder|cupboard|shelf|stock|stores?|store cupboard|kitchen)";
const listPlace = "(?:pantry|larder|cupboard|cupboards|shelf|shelves|stock|inventory|store cupboard)";
const save = "(?:save|remember|keep|store|note|put|add|log|record)";

/** Told, and nothing made of it: a weight beside an ingredient is a recipe's anywhere else. */
const told =
  "^(?!.*(?:^| )(?:how|what|whats|which|can|could|should|recipe|weights|need|for|use|make|note|log|timer|if|[?])(?: |$))(?!.*(?:{base}|{percent}|{money}|{taste} flavou?r|{macarons}|{count=(?:shells|macarons|batches)}))";
const sack =
  "(?:bag|box|packet|pack|tub|jar|carton|block|sack|tin|brick|stick|pot|pouch|bucket|case|delivery|lot|load)s?";
const came =
  "(?:arrived|came|has arrived|has come|have come|was delivered|were delivered|got delivered|delivered|turned up|is here|is in)";
const fetched =
  "(?:bought|picked up|received|opened|fetched|collected|brought home|brought in|brought|restocked|stocked up on|topped up|refilled|replenished|took delivery of|just got|had)";
const whose =
  "(?:(?:i|we|ive|weve|just|have|has|today|finally|also|and|so|ok|yesterday|another|a|an|some|more|the|my|our|new|fresh) )*";

export const shelfCues = cues(
  // told by the piece: "eggs cost $3.60 for 12 of them"
  [16, "{ingredient} cost {money} for (?:{number}|one) of them$"],
  // what came into the house: "opened a new bag of powdered sugar, 1 kg", "butter arrived, 500 g"
  [
    9,
    `${told}${whose}${fetched} (?:(?:another|a|an|some|more|the|my|our|new|fresh|of|${sack}) )*{ingredient} (?:(?:today|yesterday|again|by|with|of|,|:|-|is|another) )*{weight}`,
    `${told}${whose}${fetched} (?:(?:another|a|an|some|more|the|my|our|new|fresh) )*{weight} (?:(?:of|more|${sack}|the|my) )*{ingredient}`,
    `${told}(?:(?:theres|there is|ive got|i have|got|have|its|the|my|our|a|an|another) )*(?:new|fresh|another|second) ${sack} (?:of )?{ingredient} (?:(?:is|holds|has|of|weighs|,|:|-|in it) )*{weight}`,
    `${told}(?:(?:theres|there is|ive got|i have|got|have|its|the|my|our|a|an|another) )*(?:new|fresh|another|second) {weight} ${sack} (?:of )?{ingredient}`,
    `${told}(?:(?:the|my|our|new|fresh|more|order of|${sack}|of) )*{ingredient} ${came} (?:(?:today|yesterday|just now|now|this morning|\\S*<when>|,|:|-|it is|its) )*{weight}`,
    `${told}(?:(?:the|my|our|new|fresh|more|just|got|i|we|a|an) )*{weight} (?:(?:of|new|fresh|more) )*{ingredient} ${came}`,
  ],
  // "pistachio paste: 60 g left, cost 9.80 for 200 g": both are told
  [
    14,
    "^(?:(?:the|my|our|and|ok) )*(?:{ingredient}|{chocolate}) .. {weight} (?:left|in stock|remaining|on the shelf|there|in it) .. (?:{money}|{number})(?: (?:for|per|a|an|the) {weight})?(?: [.])?$",
    "^(?:(?:the|my|our|and|ok) )*(?:{ingredient}|{chocolate}) .. (?:{money}|{number})(?: (?:for|per|a|an|the) {weight})? .. {weight} (?:left|in stock|remaining|on the shelf|there|in it)(?: [.])?$",
  ],
  // "butter 2.79 per 250 g"
  [
    5,
    "^(?:(?:the|my|our|and|ok) )*(?:{ingredient}|{chocolate}) (?:: )?{money}(?: (?:for|per) {weight})?(?: [.])?$",
  ],
  [7, ...stillHave],
  // "shelf", "my cupboard?", "bottles?": all that is there
  [
    9,
    `^(?:(?:my|the|our|show|open|whole|list|see|check) )*${listPlace}(?: (?:list|contents|please|pls))*(?: [?])?$`,
    "^(?:(?:and|my|the|our|show|list|what|which|all|see|saved) )*bottles(?: (?:list|please|pls|saved))*(?: [?])?$",
  ],
  // "how much is left of the pistachio", whatever was dosed before
  [
    12,
    "^(?:(?:and|so|ok|now) )*(?:how (?:much|many)|whats|what is|what|is anything|is there anything|anything|is any|is there any|any) (?:(?:is|have i|do i have|i have|i got|have|got|have we|still|there|now|is there) )*left (?:over )?(?:of|from) (?:(?:the|my|our) )*(?:{ingredient}|{taste}|{dose})(?: (?:now|then|please|pls|bottle|flavou?r|paste|jar))*(?: [?])?$",
    "^(?:(?:and|so|ok|now) )*how (?:much|many) (?:of )?(?:(?:the|my|our) )*(?:{ingredient}|{taste}|{dose}) (?:(?:is|do|have|i|we|there|still|now|got) )*(?:left|remaining|in stock)(?: (?:now|then|please|pls))*(?: [?])?$",
  ],
  // "pistachio paste says 5 to 8 percent": nobody else's directions
  [
    11,
    "^(?:(?:the|my|our|ok|so|and|new|a|this) )*(?:{dose}|{taste})(?: (?:bottle|jar|label|tube|tub|packet))* (?:says|said|reads|states|recommends|wants) (?:(?:to|use|max|maximum|at|most|up|about|between|dose|it|at) )*{percent}(?: (?:of (?:the )?(?:weight|base|filling)|by weight|please|ok))*(?: [.])?$",
  ],
  // "i stocked up: 310 g cream, 230 g whites"
  [
    9,
    `${told}${whose}(?:stocked up|went shopping|did a shop|did the shopping|been shopping|been to the shops?)(?: (?:again|today|yesterday|on|and got|and bought))* [:,.-]? ?{weight} (?:of )?{ingredient}`,
  ],
  // "how are we for butter", "check the almond flour": what is there of it
  [
    9,
    "^(?:(?:and|so|ok|now|please|can you) )*(?:how (?:are|am) (?:we|i) (?:doing )?(?:for|on|with)|check (?:on |up on )?|hows (?:the|my|our) supply of) ?(?:(?:the|my|our|stock|of) )*{ingredient}(?: (?:stock|situation|supply|level|then|now|please|pls))*(?: [?])?$",
  ],
  [14, "^(?:my |the )?prices? (?:are |is )?: .*{ingredient} .*{money}"],
  [
    7,
    "^(?:(?:and|so|ok) )*what (?:all )?(?:do|have) i (?:have|got)(?: left| in| in stock| at home| here)?(?: [?])?$",
  ],
  [
    12,
    "^(?:my|this|our) (?:{taste}|{dose}) (?:says|said|reads) (?:{weight}|{volume}) (?:per|to|for|in|into) {weight}",
  ],
  [
    12,
    "(?:what|how much|how many) .. (?:did|does|do) (?:the|my|that) (?:{taste} )?bottle (?:say|read|tell|want|need)",
  ],
  [
    -8,
    "(?:can|could|should|may|might|would|do) (?:i|we|you) (?:still |also |just )?(?:use|swap|replace|substitute)",
    "(?:if|when|suppose) (?:i|we|you) (?:only |just )?(?:used|took|had|use)",
    "{ingredient} (?:is|looks|feels|seems) (?:\\S+ )?(?:coarse|stale|old|lumpy|clumpy|damp|rough|too|off)",
  ],
  [-5, "^{taste} (?:then|instead) .. out of {ingredient}"],
  [
    9,
    `^(?:(?:please|pls|ok|can you) )*${save} (?:my|this|our|a|the) (?:new )?(?:{dose}|{taste})(?! .. {base}) .. {percent}`,
  ],
  [
    -14,
    "weighed .. left in the bottle",
    "another (?:bottle|jar|tube|bag|pot) (?:, )?(?:so )?{weight} (?:in all|in total|altogether)",
  ],
  [-14, "(?:ran|run|runs) (?:out|dry|empty) (?:after|at|with) (?:{weight}|{number})"],
  [
    10,
    "(?:my|the|our|this) (?:{color} )?{dose} (?:says|said|reads) (?:max |maximum |at most |up to )?{percent}",
  ],
  [5, "bottle .. directions? .. {percent}", "^(?:a |my )?new bottle .. {percent}"],
  [
    8,
    "^(?:and |my |the |our )*{ingredient} (?:costs?|cost me|is|are|was|comes? at) {money}(?: (?:now|each))?$",
    "^(?:and |my |the |our )*{ingredient} (?:at |for )?{number} (?:per|a) {unit=kg|lb}$",
  ],
  [
    -4,
    "(?:used|put|bought) {weight} .. (?:in|into) (?:that|it|there|this) ",
    "(?:enough|too much|too little|too strong|too weak)(?: \\?)?$",
  ],
  [
    10,
    "{weight} .. {ingredient} in (?:stock|the (?:pantry|cupboard|larder)) .. (?:write|note|remember|save|put)",
  ],
  [4, "^(?:i |ive |we )*used (?:up )?(?:{weight}|{number}) (?:of )?(?:the |my )?{ingredient}$"],
  [
    5,
    "(?:took|used|taken) {weight} .. (?:out|from|for)",
    "^(?:(?:and|so|ok|the|my) )*{ingredient} (?:left|remaining)(?: (?:over|now|then))*(?: [?])?$",
    "{ingredient} (?:left|remaining) [?]",
  ],
  [
    6,
    "bottle .. (?:contains?|has) .. (?:{ingredient}|{taste}|soy|gluten|wheat|nuts?|allergens?|sul(?:ph|f)ites?|lupine?|celery|mustard|(?:crustacean|mollus[ck]|shellfish|rye|barley|oat|fish)s?)",
    "what .. bottle .. (?:say|says)",
    "{ingredient} .. (?:comes?|is sold|are sold|sold|sells|packed) in .. {weight}",
  ],
  [
    8,
    "(?:bottle|label|directions) .. (?:{weight}|{volume}) (?:per|a|an|for (?:a|each|every|one)|to (?:a|the|each)|in (?:a|each)|for|in|/) (?:{unit}|(?:{weight}|{volume}))",
    "label on (?:my|the) .. (?:says|said|reads) .. (?:{weight}|{percent})",
    "what (?:does|did|do) (?:my|the) {taste} (?:label|bottle) say",
    "bottle .. (?:{weight}|{volume}) (?:left|remaining|in it)$",
    "(?:{weight}|{volume}) (?:is )?left (?:in |of )?(?:my |the )?\\S+ bottle$",
    "bottle (?:is|has|holds) (?:still |about |now |only |a )*(?:{weight}|{volume})$",
    "bottle .. (?:strength|as strong)",
    "(?:how much|whats|what is) .. left in .. bottle",
    "(?:take|took|deduct|subtract|book) (?:it|that|them|this|those|all|everything|these) .. (?:off|from|out of) (?:(?:of|the|my) )*(?:shelf|stock|pantry|larder|cupboard)",
  ],
  [
    5,
    `^(?:(?:my|the|add to|to|for) )*${place} : `,
    "(?:used|using|took|finished) .. {fraction} .. {ingredient}",
    "(?:is|are) there (?:any |still |some )*{ingredient} (?:left|in stock)",
    // "so almond flour in stock is?"
    "^(?:(?:and|so|ok|now|then|right|the|my|our) )*{ingredient} (?:(?:in stock|on the shelf|left|remaining|in the (?:pantry|larder|cupboard)) (?:is|are|now|then|comes to|would be)|(?:is|are) (?:now |at |down to )?(?:how much|what|at|down to))(?: (?:now|then|what|how much|at))*(?: [?])?$",
    "any {ingredient} left",
    `(?:put|add|adding|stick|chuck|bung|pop|got|bought|have|ive|keep|save) .. {ingredient} .. ${place}`,
    `{ingredient} .. ${place} .. ${save}`,
    `${save} .. ${place}`,
    `{weight} .. {ingredient} .. ${place}`,
    "{taste} .. bottle .. {percent}",
    "{dose} .. bottle .. {percent}",
    "bottle .. (?:says|said|reads) .. {percent}",
    "label (?:says|said|reads) .. (?:{percent}|{weight})",
    `(?:whats|what is|what|show|list) .. (?:on|in) (?:my |the )?${place}`,
    "{ingredient} .. {money} .. (?:remember|save|note|keep)",
    "{money} .. {ingredient} .. (?:remember|save|note|keep)",
    "(?:paid|pay) .. {money} .. {ingredient} .. (?:remember|save|note|keep)",
    "(?:remember|save|note) .. {ingredient} .. {money}",
    "bottle .. {percent} .. (?:save|remember)",
  ],
  [
    4,
    "(?:used|use|using|took|finished|gone through|got through|spilt|spilled|threw away|binned) .. {weight} .. {ingredient}",
    "(?:how much|how many) (?:{unit} )?(?:of )?(?:the |my )?{ingredient} .. (?:have i|do i have|have we|is there|is left|ive|i have|i got|got|left)",
    "(?:bought|buying|picked up) .. {weight} .. {ingredient}",
    "{ingredient} .. (?:used up|run out|ran out|is gone|is finished|all gone|finished)",
    "(?:used up|all out of|ran out of|run out of|finished) (?:(?:the|my|all|of) )*{ingredient}",
    "used (?:another |a further )?{weight}",
    `${goneWord} (?:(?:about|another|the|my|some|of) )*{weight} (?:of )?(?:the |my )?{ingredient}`,
    `(?:stock|pantry|shelf)`,
    "(?:do i (?:still )?have(?! to)|have i (?:still )?got(?! to)|have we (?:still )?got(?! to)) .. {ingredient}",
    "save (?:that|the) price",
    "forget .. (?:bottle|stock|price)",
    "what bottles",
    "{weight} .. {ingredient} .. in stock",
    "{ingredient} .. {money} .. (?:a|per) ",
  ],
  [
    3,
    "how much (?:is|have i got|do i have) (?:left|there)(?: now| still)?",
    "(?:were|im|am|are|is|now) (?:all )?out of (?:the |my )?{ingredient}",
    "{ingredient} (?:costs?|is|are) .. {money}",
    "{ingredient} (?:costs?|cost me) {number}",
    "(?:left|remaining) of .. {ingredient}",
    "bottle .. (?:says|said)",
    "{weight} .. {ingredient} left",
  ],
  // "set hard, i used 350 g chocolate and 130 g cream": what went wrong, and of what it was made
  [-9, "{symptom} .. (?:used|using|took|had) .. {weight} .. {weight}"],
  [2, "(?:pantry|larder|cupboard|in stock)", "(?:used|bought)", "bottles?"],
  [1, "{ingredient}", `${save}`],
  // what a batch took, each with its price, is a bill
  [
    -8,
    "(?:took|takes|used|uses|needed|needs) .. {weight} {ingredient} (?:at|for|@) {money} .. {weight} {ingredient}",
  ],
  [
    -6,
    "(?:margin|markup|charge|timer|alarm|allergens?)",
    "shelf[ -]stable",
    "^(?:(?:please|pls|ok|so|and|can|could|you) )*(?:note|log|jot)",
    "(?:save|remember) .. recipe",
    "formula",
    "(?:what|whats) .. (?:buy|shopping)",
    "need to buy",
    "how (?:big|many) .. (?:batch|{count})",
    "house (?:batch|recipe)",
  ],
  [
    -4,
    "what .. (?:come to|cost|run me)",
    "(?:how|hw) much .. cost",
    "(?:how|hw) much {dose} .. {base}",
    "{number} .. {count=macarons}",
    "{base} .. {weight} .. {dose}",
    "rest of (?:it|the)",
    "{remainder}",
    "what (?:do|should) i weigh",
    "how (?:long|hot|cold)",
    "(?:how|hw) much (?:can|could) i make",
    "{unit} (?:in|to) {unit}",
  ],
  [
    -3,
    "in grams",
    "(?:goes|go) (?:in|into)",
    "{weight} .. {base}",
    "{base=(ganache|buttercream|batter)} .. {weight}",
    "(?:what|how much) .. other",
  ],
);
