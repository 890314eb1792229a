/** The signs of a label question, of one that goes on from it, and of one behind another answer. */
import { cues } from "../lib/cue.ts";

export const labelCues = cues(
  [
    9,
    "(?:safe|ok|okay|fine|suitable|alright|can|for) .. (?:allerg\\S*|intoleran\\S*|coeliac|celiac)",
    "(?:allerg\\S*|intoleran\\S*|coeliac|celiac) .. (?:kid|kids|child|guest|friend|customer|person|eat|have|instead|safe|ok)",
  ],
  [
    7,
    "(?:print|printed|printable|pdf|pdfs) .. labels?",
    "labels? .. (?:pdf|pdfs|print|printed|printing|printable|paper)",
    "(?:sheets?|pages?)\\S* (?:of|with|full of) .. (?:labels?|stickers)",
    "label sheets?\\S*",
    "^(?:and |as |make it |in |print )*(?:a |one )?sheet\\S* of {number}(?: of (?:them|those|these))?(?: (?:please|pls))?$",
  ],
  [4, "{number} (?:\\S+ )?labels?"],
  [9, "what (?:do|should|must|shall) (?:i|we) declare"],
  [
    2,
    "(?:as|to|in) (?:a |an )?pdfs?",
    "pdfs?",
    "^(?:(?:and|can|could|you|please|ok|now) )*print",
    "{number} copies",
  ],
  [
    5,
    "(?:allergens?|allergen|allergies)",
    "(?:us|usa|u s|american|eu|e u|european|uk) labels?",
    "labels? .. {ingredient} .. {weight}",
    "labels? .. {weight} .. {ingredient}",
  ],
  [
    4,
    "labels?",
    "(?:contains|contain) (?:line|statement)",
    "(?:declare|declaration)",
    "ingredients? (?:list|line|statement)",
    "best (?:by|before) date",
    "(?:nuts?|gluten|dairy|eggs?|milk|soy|soya|lactose|wheat|peanuts?) ?free",
    "{ingredient=(egg|milk)} free",
    "free (?:of|from) (?:any |all )?(?:tree )?(?:nuts?|gluten|soya?|dairy|lactose|wheat|{ingredient=(egg|milk|almonds|peanuts|hazelnuts|pistachios)})",
    "{count=(macarons|shells)} .. (?:contain|contains)",
    "(?:does|do) .. {count=(macarons|shells)} (?:have|include) (?:any )?(?:nuts?|gluten|soya?|dairy|lactose|wheat|{ingredient})",
    "(?:does|do) .. {base} (?:have|include) (?:any )?(?:nuts?|gluten|soya?|dairy|lactose|wheat|{ingredient})",
    "{base} .. (?:contain|contains)",
    "{chocolate} .. (?:contain|contains)",
    "(?:contain|contains) (?:any )?(?:nuts?|gluten|soy|soya|dairy|lactose|wheat|{ingredient})",
    "(?:is|are) there (?:any )?(?:nuts?|gluten|soy|soya|dairy|lactose|wheat|{ingredient}) in .. (?:{base}|{count=(macarons|shells)})",
    "allergic",
    "allergy",
    "(?:coeliac|celiac|lactose intolerant)",
    "any (?:nuts?|peanuts?|gluten|soya?|dairy|lactose|wheat|eggs?|milk|{ingredient=(egg|milk|almonds|peanuts)}) in (?:them|these|it|those|{count=(macarons|shells)})",
  ],
  [1, "net (?:weight|wt)", "{weight} .. {ingredient}", "(?:contains|contain)"],
  [
    -6,
    "bottle .. contains?",
    "(?:bottle|flavor|flavour|oil|extract) label",
    "label (?:says|said|reads|on (?:my|the) bottle)",
    "(?:timer|alarm)",
    "^(?:(?:please|pls|ok|so|and|can|could|you) )*(?:note|log|record|jot)",
    "label it",
    "label (?:the|that|this) timer",
  ],
  [-4, "(?:cost|costs|price|charge|margin|markup)", "box and label", "time to label"],
);

export const labelGoesOn = cues(
  // "label it as 90g box use by in 5 days"
  [
    24,
    "^(?:(?:and|ok|so|please|now|then) )*label (?:it|them|this|that|those) (?:(?:as|for|with|a|an|in) )*(?:{weight}|use by|best by|best before|net)",
  ],
  [
    16,
    "^(?:(?:and|ok|so|please|the|its|with) )*(?:use|best|sell) (?:by|before)(?: date)? (?:is |in |on |= )?(?:{when}|{time})",
  ],
  // "uk instead"
  [
    12,
    "^(?:(?:and|no|or|now|the|a|an|make it|for|in|ok) )*(?:us|usa|eu|uk|europe|european?|america|american|british|english|german|germany|french|france|irish|ireland|canadian|canada|australian|australia|swiss)(?: (?:one|label|form|version|instead|please|pls|then|now))*(?: [?])?$",
  ],
  [
    20,
    "^(?:please |ok |and |now )*print (?:it|that|them|this)(?: please)?$",
    "^(?:and |ok |please )*{number} of (?:them|those|it)(?: please)?$",
    "^(?:please |ok |and )*(?:call|name|title) (?:it|them|this) ",
  ],
  [
    4,
    "(?:if|when) (?:theres|there is|there are|it has|they have|i|we) (?:put|use|add|swap|swapped|used|added|make|fill)",
    "^(?:and |what about )*with (?:\\S+ )+in (?:it|them)(?: too| as well)?",
  ],
  [
    8,
    "(?:does|do|has|have) (?:it|they|that|these|those|this) (?:have|contain|got|hold|include) (?:any )?(?:nuts?|gluten|soya?|dairy|lactose|wheat|eggs?|milk|allergens?|{ingredient})",
    "any (?:nuts?|gluten|soya?|dairy|lactose|wheat|eggs?|milk|allergens?|{ingredient})(?: in (?:it|them|that|there))?(?: at all)?(?: [?])?$",
  ],
  [
    12,
    "(?:my|our) (?:name|address)",
    "name and address",
    "^(?:(?:and|ok|please) )*(?:add|put|with) (?:the |an? |my )?(?:name|address)",
  ],
  [12, "^(?:(?:and|the|what|whats|about|which) )*(?:best|use) (?:before|by)(?: date)?(?: [?])?$"],
  [16, "^(?:(?:and|the|its|ok) )*net (?:weight|wt) (?:is |of |= )?(?:{weight}|{number})"],
  [
    12,
    "^(?:(?:and|what|so|ok|but) )*(?:if )?(?:theres|there is|it has|they have|i add|i put) {weight} (?:of )?(?:\\S+ )?in (?:it|them)(?: too| as well)?(?: [?])?$",
  ],
  [-8, "{number}", "{weight}", "{volume}", "{percent}"],
);
