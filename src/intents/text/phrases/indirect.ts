/** How something is told or asked where it could be put straight: "what of a smaller bowl", "... is what i made", "i'd like a batch noted". */
import type { Phrase } from "./phrase.ts";

/** The unit that is asked for behind "come to". */
const inUnit =
  "(?= in (?:grams?|g|kg|kilos?|ounces|oz|pounds|lbs?|ml|millilit\\S+|tablespoons|teaspoons|cups|celsius|fahrenheit)\\b)";

/** A number that opens a measure. */
const count = "(?:\\d|an? |half |one |two |three |four |five |six |seven |eight |nine |ten |twelve )";

export const indirect = (): readonly Phrase[] => [
  // "what of a smaller bowl, 125 g?"
  {
    marks: ["what of "],
    from: /^((?:(?:and|so|now|then|but|well),? )*)what of (?=(?:an? |the |just |only |some )?(?:\d|(?:smaller|larger|bigger|second|other|half|double|little|big|small)\b))/g,
    to: "$1what about ",
  },
  // "150 g chocolate melted into 75 g cream is what i made": what was done, and then what is asked
  {
    marks: ["is what i", "are what i", "what i made", "what i've made", "what i have made", "what i mixed"],
    from: /(?<=^|[.?!] )(\d[^.?!]*? (?:into|and|in|with|to|on) \d[^.?!]*?),? (?:is|are|was|were) what i(?:'ve| have)? (?:just )?(made|mixed|used|melted|stirred|put in|did)(?=[.?!])/g,
    to: "i made $1",
  },
  {
    marks: ["what i made", "what i've made", "what i have made", "what i mixed"],
    from: /(?<=^|[.?!] )what i(?:'ve| have)? (?:just )?(?:made|mixed) (?:is|was|are|were) (?=\d)/g,
    to: "i made ",
  },
  // "to taste of coffee, by way of instant powder": the form that the taste comes in
  {
    marks: ["instant powder", "instant granules"],
    from: /\b(?:(coffee|espresso),? (?:by way of|in the (?:form|shape) of|in|as|from|being) )(?:an? |some |the )?instant (?:powder|granules)\b/g,
    to: "instant coffee",
  },
  {
    marks: ["by way of ", "the form of ", "the shape of "],
    from: /,? (?:by way of|in the (?:form|shape) of) (?:an? |some |the )?(?=(?:extract|oil|powder|paste|pur[eé]e|jam|zest|liqueur|flavou?ring)\b)/g,
    to: " ",
  },
  // "430 g of buttercream which is to taste of rum": told of the bowl, and no question
  {
    marks: [" which is ", " which are ", " which i "],
    from: /(?<=\b(?:buttercream|ganache|filling|batter|mascarpone|cream cheese)),? which (?:(?:is|are) (?=(?:to|for|meant|going|supposed|still|plain)\b)|(?=i (?:want|wish|mean|hope) to\b))/g,
    to: ", ",
  },
  // "would you set the ganache timer going"
  {
    marks: ["timer going", "timer running", "timer off", "timer ticking"],
    from: /\b(?:set|get|put) (?:off )?((?:the|a|my) (?:\w+ )?timer) (?:going|running|ticking)\b/g,
    to: "start $1",
  },
  // "i should like it called tray one": of a timer
  {
    marks: ["it called", "it named", "it labelled", "that called"],
    from: /^((?:(?:and|now|so|then|please),? )*)i(?:'d| would| should) (?:also )?(?:like|prefer|want) (?:it|that|this(?: one)?) (?:called|named|labelled) (?=[a-z])/g,
    to: "$1call it ",
  },
  // "the house recipe is what i use for shells": told, and not asked for
  {
    marks: ["is what i use", "is what i go by", "is what i work from"],
    from: /^((?:the|my) (?:house |usual |own )?(?:recipe|formula)) is what i (?:use|go by|work from)(?: (?:for|with) (?:the |my )?(?:shells|macarons|them))?[.;,] (?=.*(?:\d|\b(?:one|two|three|four|five|six|seven|eight|nine|ten|twelve|half|double|twice)\b))/g,
    to: "$1, ",
  },
  // "12 ounces and a half"
  {
    marks: ["s and a half", "s and a quarter", "s and three quarters"],
    from: /\b(\d+|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve) (ounces|pounds|cups|kilos|tablespoons|teaspoons|sticks|inches|litres|liters) and (a half|a quarter|three quarters)\b/g,
    to: "$1 and $3 $2",
  },
  // "what do 5 ounces of butter come to in grams": a measure, and no money
  {
    marks: ["come to in", "comes to in", "amount to in", "amounts to in", "came to in"],
    from: new RegExp(
      `\\bwhat (?:(?:do|does|would|will|might|did) )?(${count}[^?.!,]*?) (?:come|came|amount)s? to${inUnit}`,
      "g",
    ),
    to: "what is $1",
  },
  // "i should like to have a batch recorded: ...", "kindly put it on record that ..."
  {
    marks: ["noted", "recorded", "logged", "written down", "put down", "on record", "on paper", "in writing"],
    from: /^((?:(?:and|now|so|also|then|please|well),? )*)(?:(?:i(?:'d| would| should)? (?:like|want|wish|love)|(?:could|may|might|can) i have|please have|let me have) (?:to have |to see )?(?:an? |my |this |the |one |today's |another )*(?:new )?(?:batch|bake) (?:noted|recorded|logged|written down|put down|entered)(?: down)?(?: please)?(?: ?[:,.-])|(?:put|place|have|get) it (?:down )?on record that|i(?:'d| would| should) (?:like|want) it (?:noted|recorded|put down|written down|put on record) that|(?:it would be (?:nice|good|well|as well) to have|i(?:'d| would| should) like(?: to have)?|let's have|let me have) (?:this|it) (?:on paper|in writing|down in writing|written down|noted|noted down|recorded|on record|put down)[:,])(?= )/g,
    to: "$1note:",
  },
  {
    marks: ["it added", "it put in", "this added"],
    from: /^((?:(?:and|now|so|also|then|please),? )*)i(?:'d| would| should) (?:also )?(?:like|want) (?:it|this) (?:added|put in)(?: too)? that(?= )/g,
    to: "$1add that",
  },
  // "a small correction there: baked 17 min"
  {
    marks: ["correction"],
    from: /^((?:(?:and|now|so|also|then|oh),? )*)(?:(?:an?|one) )?(?:(?:small|slight|quick|little|minor|further) )*correction(?: (?:there|here|please))?(?=(?: (?:to|on|for) |[:,]))/g,
    to: "$1correction",
  },
  // "what would each weight come to?": of the recipe before it
  {
    marks: ["weight", "amount", "quantit", "measure"],
    from: /\bwhat (?:would|will|might|do|does|should) (?:each|every|the|all the|those|these) (?:of the )?(?:weights?|amounts?|quantit(?:y|ies)|measures?)(?: each)? (?:be|become|come to|come out (?:at|as|to)|amount to|run to|work out (?:at|as|to))(?= ?[?.!]|$)/g,
    to: "what are the weights",
  },
  // "twice and a half the recipe"
  {
    marks: ["twice and", "thrice and"],
    from: /\b(twice|thrice) and (?:an? |one )?(half|quarter|third)\b/g,
    to: (_whole, times, part = "") =>
      `${(times === "twice" ? 2 : 3) + (part === "half" ? 0.5 : part === "quarter" ? 0.25 : 1 / 3)} times`,
  },
  // "half as much again of the house recipe"
  {
    marks: ["half as ", "half again as "],
    from: /\b(?:half as (?:much|many|big|large) again|half again as (?:much|many|big|large))(?: (?:of|as))?(?= (?:the|my|our|that|this|it|for)\b)|(?<=\b(?:make|bake|do|want|need|to) (?:it |that |them )?)half as (?:much|many) again\b/g,
    to: "1.5 times",
  },
  // "the oven is sluggish, so allow it 3 minutes more": why a timer is to run on, and no name of it
  {
    marks: [", so "],
    from: /^(?!.*\b(?:timer|alarm)\b)(?:(?:and|well|oh|but),? )*(?:the|my|our|it|it's|this|that|they|they're|there's|i|i'm|we|we're) ?[^\d,.?!]*, so,? (?:(?:please|kindly|just|perhaps|i'd|i would|we'd|i'll|let's|better|you might) )*(?:allow|give|grant|spare|let (?:it|them) have|add)(?= (?:(?:it|them|me|her|him|that|those|us) )?(?:another |an extra |some |a further )?(?:\d+|[a-z]+) (?:(?:more|extra) )?(?:min|mins|minutes?)\b)/g,
    to: "give",
  },
  // "what directions you're holding for the violet bottle": what is saved of it
  {
    marks: ["directions"],
    from: /\b(?:what|which|whatever) directions? (?:(?:are|do|did|have) )?(?:you|i|we)(?:'re|'ve| are| have)? (?:(?:hold|holding|keep|keeping|have|has|got|stored?|saved?|gave|given?|told|tell|kept|noted|put)(?: (?:you|down))* )?(?:for|of|on|about|against|to) (?:the |my |that )?([a-z]+(?: [a-z]+)??)(?: (?:flavou?ring|flavou?r))?(?: bottle)?(?= ?[?.!,]|$)|\bwhat (?:did|have) i (?:tell|told|given?) you (?:of|about|for|as) (?:the |my )?([a-z]+(?: [a-z]+)??) bottle'?s directions?\b/g,
    to: (_whole, one, other) => `what does the ${one ?? other} bottle say`,
  },
  // "what does the rhubarb note say, in full?"
  {
    marks: [" in full", " in its entirety"],
    from: /(?<=\b(?:notes?|entry|batch|wrote|say|says|read)\b.*),? in (?:full|its entirety)(?=(?: please)? ?[?.!]|(?: please)?$)/g,
    to: "",
  },
  // "and it runs off the shell": of a ganache
  {
    marks: ["runs off", "slides off", "slips off", "ran off", "slid off"],
    from: /\b(?:runs|slides|slips|ran|slid) (?:right )?off (?:the|my|every) shells?\b/g,
    to: "is too runny",
  },
  // "should i have 45 macarons to fill, how much filling is that": on what condition it is asked
  {
    marks: ["should i ", "should we "],
    from: /^((?:(?:and|but|so|now),? )*)should (i|we) (?=(?:have|make|want|need|use|fill|bake) [^?.!]*\d[^?.!]*, (?:how|what|when|which)\b)/g,
    to: "$1if $2 ",
  },
  // "what does that come to in shells?"
  {
    marks: ["come to in", "amount to in", "works out to in", "work out to in"],
    from: /\bwhat (?:does|would|will|do|might) (?:that|it|this|they|those|these) (?:come|amount|work out) to in (shells|macarons|trays|whites|egg whites)\b/g,
    to: "how many $1 is that",
  },
  // "i'd rather it were 18 minutes"
  {
    marks: ["rather it", "rather that", "rather they", "sooner it", "prefer it", "prefer that"],
    from: /^((?:(?:and|but|so|now|no|oh|well|actually),? )*)i(?:'d| would) (?:rather|sooner|prefer) (?:it|that|they) (?:were|was|be|ran|took|had|to be) (?=\d)/g,
    to: "$1make it ",
  },
  // "may it go on the shelf?"
  {
    marks: [" go on ", " go in ", " go into ", " go onto "],
    from: /\b(?:may|might|could) (it|that|they|this|those|these) (?:please )?go (on|in|into|onto) ((?:the|my) (?:shelf|pantry|larder|cupboard))\b/g,
    to: (_whole, what, where, place) => `put ${what === "they" ? "them" : what} ${where} ${place}`,
  },
  // "take that last note back out", "take that note away again"
  {
    marks: ["last note back", "note back", "note away", "note out", "last note out", "note off"],
    from: /^((?:(?:and|but|so|now|no|oh|well|actually|please|can you|could you),? )*)(?:take|pull|lift|have|get) (?:that|this|the|my) (?:(?:last|latest|new) )?note (?:back|away|out|off)(?: (?:out|off|again))*(?=(?: (?:please|pls))? ?[?.!]?$)/g,
    to: "$1undo that",
  },
  // "the butter should sit out for 40 minutes. please time it": a timer, of what is timed
  {
    marks: ["time it", "time that", "time this", "time them"],
    from: /^(?:(?:and|so|ok|now|right),? )*(?:the|my|our|that|this) ([a-z]+(?: [a-z]+)??) (?:should|has to|have to|needs? to|must|will|ought to|is to|are to|wants to) [^.,;?!]*?(?:for )?(?:about |another )?(\d+(?:\.\d+)? ?(?:minutes?|mins?|min|hours?|h)\b|(?:(?:a |three )?quarters? of an|half an|(?<!\bof )an|one|two|three) hours?)[.,;]? (?:(?:so|and|please|kindly|would you|can you|could you|will you) )*time (?:it|that|this|them)(?: (?:please|pls|for me))*(?= ?[?.!]?$)/g,
    to: "$1 timer $2",
  },
  // "i'd like the last thing undone, please"
  {
    marks: ["undone", "taken back"],
    from: /^((?:(?:and|but|so|now|no|oh|well|actually),? )*)i(?:'d| would| should) (?:like|want|prefer|rather have) (?:it|that|this|the last (?:thing|change|one)) (?:undone|taken back)\b/g,
    to: "$1undo that",
  },
  // "two thirds of the buttercream, 360 g in all, is to be rose": the part of so much
  {
    marks: [" in all", " in total", " altogether", " all told"],
    from: /\bof (?:the|my|our|this|that) (buttercream|ganache|filling|batter),? (\d+(?:\.\d+)? ?(?:g|kg|grams|oz|ounces)) (?:in all|in total|altogether|all told)\b,?/g,
    to: "of my $2 $1",
  },
];
