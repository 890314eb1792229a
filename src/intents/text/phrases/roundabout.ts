/** A scene told, and in it what is to be noted, timed, kept in mind or counted, put plainly. */
import type { Phrase } from "./phrase.ts";
import { count } from "./spelt.ts";

const lead = "((?:(?:and|but|so|oh|ok|okay|right|now|also|then|well|please|just),? )*)";
const end = "(?= ?[?.!]?$)";
const book =
  "(?:log|logbook|log book|notes?|notebook|book|diary|journal|records?|baking (?:log|notes|diary))";
/** Who says that it isn't enough, or where it is read. */
const someone =
  "(?:(?:my|the|our|her|his) [a-z]+(?: [a-z]+)?|she|he|they|someone) (?:says?|said|reckons?|thinks?|insists?|tells me|told me|swears|warns me)(?: that)? ";
const base = "(?:buttercream|ganache|filling|batter|cream cheese (?:filling|frosting))";

/** Who is called on the telephone, and what no timer is called. */
const nobody =
  "(?:sister|brother|mum|mom|mother|dad|father|husband|wife|son|daughter|aunt|uncle|nan|gran|grandma|grandmother|friend|neighbou?r|boss|colleague|doctor|shop|bakery|police|vet|school|office|plumber|customer|client|supplier|landlord)\\b";
const noName =
  "(?:for|me|my|now|please|up|back|and|to|about|at|in|on|when|if|so|off|down|a|an|how|what|today|tonight|tomorrow|later|soon|instead|from|then|thank|thanks)\\b";

/** "in my notes, the lemon ones ..." tells where it stands; a colon, or where it goes, makes it an order. */
const told =
  "(?:(?= ?:)|(?<=(?:into|onto|goes in|this in|put it in|write in) (?:the|my|our) [a-z ]+)(?= ?[,;-]))";

/** Circles on a mat, whatever they are called. */
const outlined = "(?:macaron |printed |little |marked )*(?:circles|rings|rounds|outlines|spots)";
const mat = "(?:mats?|tray|sheet|template|liner|baking sheet)";
const bought =
  "(?:(?:i|we)(?:'ve| have|'m| am|ve| got)? ?(?:just |finally |now |only )?(?:treated (?:myself|ourselves) to|bought|got|been given|was given|ordered|picked up|invested in|found|been lent|splashed out on|switched to|moved to|using|own|bought myself|got myself)|there's|theres|there is|this is|here's|heres)";

export const roundabout = (): readonly Phrase[] => [
  // "into the log: fig batch, every top cracked", "log entry: ...", "one last note: ..."
  {
    marks: ["the log", "my log", "log ", "log:", "note", "book", "diary", "journal", "record", "entry"],
    from: new RegExp(
      `^${lead}(?:(?:(?:this (?:one |is )?|that |here's one |heres one |one |one more |another |another one |goes |going |straight |down |pop this |put this |put it |get this |stick this |write this |write )*(?:goes |is )?(?:in|into|for|to|onto) (?:the|my|our) ${book}${told}|(?:new |another |a )*(?:log|logbook|diary|journal|book|record|note) entry|(?:(?:and|one|a|another|my|the) )+(?:(?:last|final|more|further|other|extra|quick|short|little|new) )+(?:note|entry)|another (?:note|entry)|(?:log|diary|journal|notebook|logbook)|for the record(?= ?:)|(?:new|quick|last|final) (?:note|entry))(?: (?:please|pls|then|now|for me|today|again|too))*)(?:, (?:please|if you (?:would|will|like|please|don't mind)))? ?[:,;-] ?(?=[a-z0-9])(?!(?:how|what|which|when|where|why|who|is|are|did|do|can|could|should)\\b)(?!.*\\?)`,
      "g",
    ),
    to: "note: ",
  },
  // "enter yesterday's batch in the book: fig, feet uneven"
  {
    marks: ["enter ", "put ", "write ", "record ", "jot ", "pop ", "get "],
    from: new RegExp(
      `^${lead}(?:(?:could|can|would|will) you )?(?:please |kindly )?(?:enter|put|write|record|jot|pop|get) ((?:(?:yesterday|today|last night|this morning|(?:mon|tues|wednes|thurs|fri|satur|sun)day)(?:'s|s)? |this |the last |the latest |my |the |a |another |one more )(?:[a-z]+ )?(?:batch|bake|lot|one|ones))(?: (?:up|down))? (?:in|into|to|on) (?:the|my|our) ${book}(?: (?:please|as|for me))* ?[:,;-] ?(?=[a-z0-9])(?!.*\\?)`,
      "g",
    ),
    to: "note: $2, ",
  },
  // "new mat, its got 24 circles", "i've treated myself to a silicone mat, and it has 24 circles on it"
  {
    marks: [" mat", " sheet", " template", " liner", " tray"],
    from: new RegExp(
      `^${lead}(?:${bought} )?(?:a |an |my |the |one of those )?((?:brand )?(?:new |bigger |smaller |different |replacement ))?(?:(?:silicone|silicon|baking|macaron|printed|teflon|big|small|lovely|nice|fancy) )*(${mat})(?: (?:now|today|arrived|came|has arrived|in the post|here))*(?:,| -|;|:|[.])? (?:(?:and|which|that|with|it|it's|its|it'll|has|have|holds|got|comes?|there's|theres|there are|are|printed|marked|fits|shows) )*(?:for )?(${count}) ${outlined}(?: (?:on|to|per|printed|marked|in) (?:it|each|a sheet|the mat|a mat|each one|one)| printed| marked| on)*(?:[,.;!?] ?(?:and |so )*(?:(?:could|would|can|will) you )?(?:please )?(?:(?:bear|keep|remember|note|save|store|make|take)(?: a)? (?:that|this|it|note)?(?: in mind| of (?:that|it|this)| for (?:me|next time|later))*|thanks|thank you|ok)(?:,? please)?)?${end}`,
      "g",
    ),
    to: (whole = "", before = "", fresh = "", thing = "", number = "") =>
      // "a tray with 24 circles" is what one has; only what is new, or had by her, is kept
      fresh || /\b(?:i|i've|we|we've|ive|my|it's|its)\b/.test(whole)
        ? `${before}my ${thing} has ${number} circles`
        : whole,
  },
  // "set tray a for 12 min, tray b for 14 min, then tell me 300 f in c": a question of its own
  {
    marks: ["then ", "after that", "afterwards", "also"],
    from: /(?<=\b(?:min|mins|minutes?|hours?|hrs?|h|timers?)),? (?:and )?(?:then|after that|afterwards|and also|also) (?:(?:can|could|would) you )?(?:please )?(?:(?:tell|give|show) me|work out|convert) (?=(?:how (?:much|many|hot)|what\b|(?:\d|half|a |one |two |three )(?!.{0,14}\b(?:min|mins|minutes?|hours?|hrs?) (?:later|after|before|in advance)).*\b(?:in|to|into|of|as)\b))/g,
    to: ". ",
  },
  // "my sister says that is not nearly enough. please add another 45 minutes to it": why it is more
  {
    marks: [
      "enough",
      "never do",
      "too short",
      "too little",
      "too long",
      "too much",
      "won't do",
      "wont do",
      "not be long",
    ],
    from: new RegExp(
      `^${lead}(?:${someone})?(?:that(?:'s)?|it(?:'s)?|this|thats|its|they) ?(?:(?:is|was|will|will|won't|wont|isn't|isnt|would|wouldn't|be|not|never|nearly|nowhere|near|quite|really|far|still|just|going|to|anything|like|hardly|by|long|a bit|a little|much|surely|will not|probably|perhaps|way) ?)*(?:enough|too (?:short|little|long|much)(?: a time)?|do)(?: time)?(?:[.,;!]| so| -) (?:so |please |then )*(?=(?:please )?(?:add|give|put|take|knock|make|set|another|extend|shorten|let)\\b.*\\b(?:min|mins|minutes?|hours?|hrs?|hour|time|seconds)\\b)`,
      "g",
    ),
    to: "$1",
  },
  // "i think i would rather call the pink tray rose shells, if that can be done"
  {
    marks: ["call", "nam"],
    from: new RegExp(
      `^${lead}(?:(?:i think|actually|perhaps|maybe|if you (?:would|don't mind|wouldn't mind)),? )?(?:(?:i|we)(?:'d| would| should|'ll| will)? ?(?:(?:rather|sooner|prefer|like|now|want|love|much|very) )+(?:to |you to |you |we )?|let's |lets |let us |(?:could|can|would|may|might|shall|will) (?:you|we|i)(?: please| kindly| perhaps| just| possibly| instead)* |would you mind |please )(?:re)?(?:call|called|calling|nam(?:e|ed|ing)|renam(?:e|ed|ing)) (the|my|that(?= (?:[a-z0-9]+ )?(?:tray|timer|one|batch|alarm)\\b)) (?!${nobody})([a-z0-9]+(?: (?:tray|shells|batch|one|timer|[0-9a-e]))?)(?: timer)? (?:(?:to|as|into|by the name of) )?(?:the )?(?!${noName})([a-z]+(?: (?!${noName})[a-z]+)?)(?:,? (?:if (?:that|it) (?:can be|may be|could be|is|'s) (?:done|possible|all right|allowed|ok|okay)|if (?:that's|thats|its|it's) (?:possible|all right|ok|okay|allowed)|if (?:i|you|we) (?:may|might|can|could|please|will|would|don't mind)|instead|please|from now on|now|for me|thank you|thanks))*${end}`,
      "g",
    ),
    to: "$1rename $2 $3 to $4",
  },
  // "how much icing sugar does that leave me with?", "what does that leave me in the way of icing sugar"
  {
    marks: ["leave"],
    from: new RegExp(
      `^${lead}(?:how much|what weight of|what quantity of) (?:of the |of my |of )?((?!(?:money|profit|time|space|room|batter|${base})\\b)[a-z]+(?: [a-z]+)?) (?:does|would|will|do|did|has) (?:that|this|it|which) (?:leave|left)(?: me| us)?(?: (?:with|now|over|then|in (?:the|my) (?:pantry|cupboard|stock|larder|jar|bag)|in stock|in hand|to play with|to work with))*${end}`,
      "g",
    ),
    to: "$1how much $2 do i have left",
  },
  {
    marks: ["leaves me", "leave me", "leave us", "leaves us", "left me"],
    from: new RegExp(
      `^${lead}(?:what|so what|(?:and )?(?:that|which|it) leaves? (?:me|us) with how much) ?(?:does|would|will|did)? ?(?:(?:that|this|it) (?:leave|leaves)(?: me| us)? ?(?:with )?(?:by way of|in the way of|of|for))? ?(?:the |my )?((?!(?:money|profit|time|space|room)\\b)[a-z]+(?: (?:sugar|flour|almonds?|cheese|chocolate|cream|butter|paste|powder|whites))?)${end}`,
      "g",
    ),
    to: (whole = "", before = "", thing = "") =>
      /\bleaves? (?:me|us)\b/.test(whole) ? `${before}how much ${thing} do i have left` : whole,
  },
  // "remaining stock 8.5 g rhubarb concentrate. what quantity of buttercream will that flavor?"
  {
    marks: ["stock", "left", "down to", "remain", "last of", "all i have", "only "],
    from: new RegExp(
      `^${lead}(?:(?:my )?(?:remaining|current|present|last of the) (?:stock|supply|amount)(?: is| of)?|(?:stock|supply) (?:remaining|left|in hand)(?: is)?|(?:left|remaining)(?: in (?:stock|the bottle|the jar))?(?: is)?|(?:i'm |im |we're |i am )?down to(?: (?:my|the) last)?|all (?:that's|thats|that is|i have|i've|there is) (?:left )?(?:is )?|only)[:,]? (?:just |only |about )?(\\d+(?:[.,]\\d+)? ?(?:g|grams?|ml)) (?:of )?([a-z]+(?: [a-z]+){0,2}?)(?: (?:left|remaining|remains|in the bottle|in stock))*[.,;]? (?:so |and )?(?:how much|what quantity of|what (?:weight|amount) of|how many grams? of) (${base}) (?:will|would|can|could|does|might|ought) (?:that|it|this|i|they)(?: be)?(?: (?:flavou?r|do|stretch to|cover|serve|last|be enough for|suffice for|see to))${end}`,
      "g",
    ),
    to: "$1i have $2 $3, how much $4 will that flavor",
  },
  // "i'm scraping the last 7.5 g out of the hazelnut flavouring bottle, what weight of buttercream would that see to?"
  {
    marks: ["the last ", "the final "],
    from: new RegExp(
      `^${lead}[^\\d?]{0,50}?\\bthe (?:last|final) (\\d+(?:[.,]\\d+)? ?(?:g|grams?|ml)) (?:(?:out )?of|from|in|left (?:of|in)) (?:the |my |our |a |this )?([a-z]+(?: [a-z]+){0,2}?)(?: (?:bottle|jar|tub|pot|tube|vial))?[.,;]? (?:so |and )?(?:how much|what quantity of|what (?:weight|amount) of|how many grams? of) (${base}) (?:will|would|can|could|does|might|ought) (?:that|it|this|i|they)(?: be)?(?: (?:flavou?r|do|stretch to|cover|serve|last|be enough for|suffice for|see to|manage))${end}`,
      "g",
    ),
    to: "$1i have $2 $3, how much $4 will that flavor",
  },
  // "one rolled off the counter. five": what is left counts
  {
    marks: [
      "rolled",
      "fell",
      "broke",
      "cracked",
      "dropped",
      "smashed",
      "slipped",
      "burst",
      "splatted",
      "went ",
      "bad",
      "yolk",
      "lost",
      "ate ",
      "wasted",
      "ruined",
    ],
    from: new RegExp(
      `^${lead}(?:(?:i|we|he|she|the (?:cat|dog)) (?:just |then |have |'ve )?(?:dropped|broke|smashed|cracked|lost|wasted|ruined|ate|knocked) (?:one|a|an|another|two|three)(?: \\w+)?|(?:one|a|an|another|two|three)(?: of (?:them|the \\w+))?(?: (?:egg|white))? (?:has |have |just |then |'s )*(?:rolled|fell|fallen|broke|broken|cracked|dropped|smashed|slipped|burst|splatted|went|was|were|got|had|turned out)(?: \\w+){0,4}?)(?: (?:off|on|onto|from|down|over|in|into|out|through)(?: (?:the|my) \\w+)?)?(?:[.,;!]| -| so) (?:so |now |its |it's |that's |thats |only |just |make (?:it|that) |leaves |leaving |call it |say )*(${count})(?:((?: egg)? whites)| eggs)?(?: (?:then|now|left|it is|please))*${end}`,
      "g",
    ),
    // a size or a time is no number of eggs
    to: "$1$2$3",
  },
  // "how do you come to say so?", "what makes you say that"
  {
    marks: [
      " say so",
      "say that",
      "say this",
      "to that",
      "think so",
      "think that",
      "tell that",
      "so sure",
      "go on",
      "you know",
      "going on",
      "go by",
      "going by",
      "grounds",
      "reason",
      "basis",
      "you that",
      "you this",
      "you so",
      "warrant",
      "authority",
    ],
    from: new RegExp(
      `^${lead}(?:(?:how|why|what) (?:do|did|can|could|would|is it|has|have) ?(?:that )?(?:you|it) (?:come|came|bring|brought)? ?(?:to )?(?:you )?(?:to )?(?:say|claim|think|know|tell|be so sure of|arrive at|reach|conclude) (?:so|that|this|it)|what (?:makes|made|leads|led|has you|brings|brought|lets|allows) you (?:to )?(?:say|think|claim|believe|saying|thinking|conclude|suppose) (?:so|that|this|it)|(?:what|which) (?:grounds|reasons?|basis|authority|warrant) (?:do|have) you(?: have)? (?:for|of) (?:saying |thinking )?(?:so|that|this|it)|on what (?:do you|did you|are you) bas(?:e|ing) (?:that|this|it)|what are you going (?:on|by)(?: there)?|what do you go (?:on|by)(?: there)?|who told you (?:so|that|this)|how (?:do|did|can|could|would) you know)${end}`,
      "g",
    ),
    to: "$1how did you get that",
  },
  // "you've been a great help this morning": no day that anything is for
  {
    marks: [" been "],
    from: /\b((?:you'?ve|you have|youve) been (?:a |an |so |such a |very |really )*(?:great |big |huge |real |good |wonderful )?(?:help|helpful|lifesaver|star|treat|patient|kind))(?: to me)? (?:this (?:morning|afternoon|evening|week)|today|tonight)(?= ?[.!,]*$)/g,
    to: "$1",
  },
  // "many thanks to you", "thanks ever so", "much obliged": thanks
  {
    marks: ["thank", "obliged", "grateful", "appreciate", "good of you", "kind of you", "indebted"],
    from: new RegExp(
      `^${lead}(?:(?:many|my|warm|warmest|a thousand|a million|best|kindest|heartfelt|sincere|all my|much) )*(?:thanks|thank you|thankyou)(?: (?:to you|ever so(?: much)?|very much|so much|kindly|indeed|all the same|once (?:more|again)|again|for (?:that|this|it|all that|everything|your (?:help|trouble|time|patience)|the help)|very kindly|awfully|a (?:lot|million|bunch)|most (?:kindly|sincerely)|my dear|anyway))*(?:[,.;!] (?:that's|thats|that is|that was|you're|youre|you are|it's|you've been) (?:\\w+ ){1,4}(?:of you|kind|good|helpful|help|gem|star|dear|marvel))?${end}|^${lead}(?:(?:i'm|im|i am|we're) )?(?:much|most|very much|very|ever so|so|greatly|deeply|truly) (?:obliged|grateful|appreciated|indebted)(?: (?:to you|for (?:that|this|it|your help)|indeed))*${end}|^${lead}(?:i|we) (?:do |really |very much |much |truly )*appreciate (?:it|that|this|your help|the help)(?: (?:very much|a lot|so much))?${end}|^${lead}(?:that's|thats|that is|that was|how) (?:very |most |awfully |so |terribly |really )?(?:good|kind|nice|decent|sweet) of you${end}`,
      "g",
    ),
    to: "thanks",
  },
];
