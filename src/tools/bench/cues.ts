/** What sounds like a setting of the bench, and what only looks like one. */
import { opening } from "../../../data/words/openers.ts";
import { cues } from "../lib/cue.ts";
import { lessonCues } from "./lessons-said.ts";

const end = "(?: (?:please|pls|now|remember|thanks|,|[.!?]))*$";
const mine = "(?:my|our|the)";
const habit = "(?:always|usually|normally|from now on|every time|by default)";
/** What a mat for macarons is printed with. */
const outlined = "circles|rings|rounds|outlines|spots";
const coins =
  "(?:\\S*(?:pounds?|euros?|dollars?|quid|francs?|usd|eur|gbp|chf|cad|aud)(?:<\\S*>)?|\\S*<unit=(?:USD|EUR|GBP|C[A-Z]+|AUD|PLN|SEK|NOK|DKK|HUF|RON|JPY|INR|KRW|MXN|BRL|ZAR|NZD|SGD|HKD|TRY|ILS)>)";

/** Told of what she has, and nothing asked or made with it. */
const told =
  "^(?!.*(?:^| )(?:how|what|whats|which|when|why|where|if|will|would|does|do|can|could|should|is it|batter|note|log|recipe|order|need|make|timer|[?])(?: |$))(?!.*(?:{macarons}|{count=macarons}|{number} {count=trays}|{base}|{taste}|{weight}|{symptom}))";
/** A size told, with nothing made or asked of it. */
const sized =
  "^(?!.*(?:^| )(?:how|what do|whats|which|when|why|if|will|would|does|can|could|should|timer|need|batter|[?])(?: |$))(?!.*(?:{count=macarons}|{weight}|{money}))";
const hers = "(?:my|our|the|new|this|these|those|mine|{count=trays} (?:here|i (?:use|have|got|own)))";
const gotIt =
  "(?:(?:i|we|ive|weve|just|have|has|finally) )*(?:got|bought|have|use|using|own|ordered|switching to|switched to|moving to|moved to)(?: (?:a|an|another|some))?";
const kept = `(?:,? ?(?:and |so |please )?(?:use|keep|save|remember|store|note|go with|work with|take|count (?:on|with)|set|plan with)(?: (?:it|that|this|them|those))?(?: (?:from now on|now|then|please|for good|in mind|always))*)`;
const please = "(?:(?:please|can you|could you|would you|id like to (?:know|see)|remind me(?: of)?) )*";
const known =
  "(?:(?:do|have|did|are) you (?:know|remember|got|have|hold|saved?|stored?|noted?|kept|keep|assume|assuming|using|going by|working with)|you (?:know|remember|have|hold|assume|use)|(?:have|did) i (?:told|tell|set|given?|saved?|said|say)(?: you)?|ive (?:told you|told|set|given you|saved)|(?:is |are )?(?:stored|saved|on file|on record|remembered|known|set down))";
const kitchen =
  "(?:(?:my|our) (?:own |whole )?(?:\\S+ )?(?:kitchen|setup|set up|gear|kit|equipment|habits|ways|workshop|bakery|preferences|defaults|details|oven|ovens|scales?|hours|{count=trays})(?: and (?:my )?(?:\\S+))?|me|us|my (?:baking|bench))";
const asking = "(?: (?:please|pls|then|now|so far|already|at the moment|right now|[?]))*";
const grid = `(?:{number}|{length}) (?:x|by) (?:{number}|{length})`;

/** The shells' size, without "my". */
const shellSize =
  "(?:(?:the|my|our) )?(?:shells?|\\S*<count=shells>|macarons?|\\S*<count=macarons>|size|diameter|shell)(?: (?:size|diameter))?";

export const benchCues = cues(
  // "set shells back to 38"
  [
    9,
    `^(?:(?:please|pls|ok|and|so|now) )*(?:set|put|change|switch|reset) ${shellSize} (?:back )?to (?:{length}|{number})${end}`,
    `^(?:(?:please|pls|ok|and|so|now) )*${shellSize} back to (?:{length}|{number})${end}`,
  ],
  // what a mat is printed with, in whatever order: "new silicone mat: twenty circles on it, use that"
  [
    8,
    `${told}(?=.*(?:^| )(?:${hers}|${gotIt}) )(?:\\S+ ){0,6}?{count=trays} (?:\\S+ ){0,5}?{number} \\S*(?:${outlined})\\S*`,
    `${told}(?=.*(?:^| )(?:${hers}|${gotIt}) )(?:\\S+ ){0,5}?{number} \\S*(?:${outlined})\\S* (?:\\S+ ){0,5}?{count=trays}`,
    `${told}(?:\\S+ ){0,6}?{count=trays} (?:\\S+ ){0,5}?{number} \\S*(?:${outlined})\\S* (?:\\S+ ){0,4}?${kept}$`,
  ],
  // "what do you know about my kitchen", "whats stored about my gear", "hows my kitchen set up"
  [
    9,
    `^${opening}${please}(?:(?:tell|show) me )?(?:what|whats|which|anything|everything|all|list)(?: (?:\\S+ ){0,4}?|.* )${known} (?:(?:down|so far|already|now|at all|saved|stored|noted|set|anything|everything|that|is|there|on file|on record) )*(?:(?:about|of|for|on|regarding|as|with) )?${kitchen}${asking}$`,
    `^${opening}${please}do you (?:know|remember|have)(?: (?:anything|something|much|any details?|notes?))? (?:about|of|on) ${kitchen}${asking}$`,
    `^${opening}(?:how is|hows|how are|how have you got|whats|what is) (?:my|our) (?:kitchen|setup|gear|kit|equipment|workshop|bakery)(?: (?:set|set up|configured|stored|saved|down as))*${asking}$`,
    `^${opening}${please}(?:list|show|see|read|recite|repeat|go through)(?: (?:me|out|back|over))* (?:all )?(?:of )?(?:my|our) (?:kitchen|setup|gear|kit|equipment|workshop|bakery)(?: (?:details|settings|figures|data|setup|set up|info|list))*(?: back)?${asking}$`,
  ],
  // how big a tray is: "my sheet pan measures 450 x 350 mm", "i bake on trays 45 x 35 cm"
  [
    8,
    `${told}(?=.*(?:^| )(?:${hers}|${gotIt}|(?:i|we) bake\\S* on) )(?:\\S+ ){0,6}?{count=trays} (?:\\S+ ){0,5}?${grid}`,
    `${told}(?:\\S+ ){0,6}?{count=trays} (?:\\S+ ){0,5}?${grid} (?:\\S+ ){0,4}?${kept}$`,
  ],
  // asked or supposed, and nothing to be kept
  [
    -9,
    "^(?:(?:and|so|but|ok|what) )*(?:can|will|does|would|could|if|is|when|should) (?:my|the|our|i|it) .. {count=trays}",
  ],
  [-16, "^(?:(?:and|so|but|ok) )*(?:are|is) there .. {count=trays}"],
  // "my oven wont take 3 trays" says what isn't; "wont take more than 2" what is
  [
    -16,
    "(?:wont|cant|doesnt|dont|isnt|couldnt|wouldnt|(?:does|do|will|would|could|can|is) not|cannot|never) (?:\\S+ )?(?:take|takes|fit|fits|hold|holds|have|do|get|bake|manage)(?! (?:more|any more|over) )(?: \\S+)? {number}",
  ],
  ...lessonCues,
  [
    8,
    `${mine} (?:\\S+ )?{count=trays} (?:i (?:use|have|got|own|(?:pipe|bake|work|{use=piping}|{step=bake}) (?:on|with)) |here )?(?:has|holds|comes with|is|got) {number} \\S*(?:${outlined})\\S*`,
    `{count=trays} (?:i use |i have |i bought |i got |of mine |here )?(?:has|comes with|got|shows|(?:is |are |comes? )?(?:printed|marked) (?:with|for)) {number} \\S*(?:${outlined})\\S*`,
    `{count=trays} (?:has|have|comes? with|got|(?:is |are |comes? )?(?:printed|marked) with) {number} (?:rows|lines|columns) of {number}`,
    `^(?!.*count=macarons)(?:\\S+ ){0,5}{number} \\S*(?:${outlined})\\S* (?:\\S+ ){0,3}on (?:${mine}|each|every) (?:\\S+ ){0,2}{count=trays}`,
    `(?:changed|switched|swapped|got|bought|have|using|on) (?:(?:a|an|to|my|the|different|another|other|over|new) )*{count=trays} (?:now )?(?:, |and |with |its |it |has |is |theres )*{number} \\S*(?:${outlined})\\S*(?: (?:on|in|to) (?:this|that|it|each|the new one|the other)(?: one)?)?${end}`,
    `new (?:\\S+ )?{count=trays} (?:, |with |has |it has |its |it is |theres |there is |there are |thats )*{number} \\S*(?:${outlined})\\S*`,
  ],
  [
    9,
    "thermometer .. (?:{temperature}|{number}) .. (?:dial|set|knob|display|control|oven) .. (?:{temperature}|{number})",
    "(?:dial|set|knob|display|control|oven) .. (?:{temperature}|{number}) .. thermometer .. (?:{temperature}|{number})",
  ],
  [
    9,
    "(?:im|i am|i work|i bake) .. from {when} (?:till|til|until|to|-) {when}",
    "(?:set|save|keep) (?:that|this|those|these|them) (?:as|for) my (?:hours|bench|times|day)",
    // "my oven setting is 145 c": what she bakes at
    `^${opening}(?:remember |save |note )?(?:my|the|our) (?:(?:usual|normal|standard|own) )*(?:oven (?:setting|temp\\S*|heat)|oven_setting|oven_temp\\S*|oven setting<\\S*|baking temp\\S*)\\S* (?:is|=|:|of) {temperature}`,
  ],
  [
    12,
    "^(?!.*count=macarons).*(?:save|set|keep|remember|store|use|take|make|note) (?:that|this|it)(?: one| size)? (?:(?:as|for|to be) )?(?:(?:my|the|our) )?(?:(?:usual|standard|normal|default|own|new|shell|macaron|{count=shells}) )*(?:size|diameter)",
    // "make 4.5 cm my usual shell size", "make my usual size 4.5 cm"
    "^(?!.*count=macarons).*(?:make|set|save|keep|use|take|put) {length} (?:as |for |to be |be )?(?:my|the|our) (?:(?:usual|standard|normal|default|own|new|shell|macaron|{count=shells}) )+(?:size|diameter)?",
    "^(?!.*count=macarons).*(?:make|set|save|put|change) (?:my|the|our) (?:(?:usual|standard|normal|default|own|shell|macaron|{count=shells}) )+(?:size|diameter) (?:to |as |be )?{length}",
    // "45 mm is my shell size, store that as the default", "store 45 mm as my shell size", "default shell size 45 mm"
    `${sized}(?:\\S+ ){0,8}?{length} .. (?:save|set|keep|remember|store|use|take|make|put|stick with) (?:that|this|it|them)(?: down| in)?(?: (?:as|for|to be|by))? (?:(?:my|the|our|a) )?(?:usual|standard|normal|default|regular)(?: (?:one|size|diameter|setting|from now on|please|pls|then))*$`,
    `${sized}(?:\\S+ ){0,5}?(?:store|remember|have|log|record|note|put down) {length} (?:down )?(?:as|for|to be) (?:my|the|our) (?:(?:usual|standard|normal|default|own|new|shell|macaron|{count=shells}) )+(?:size|diameter)`,
    `^${opening}(?:(?:my|our|the) )?(?:usual|standard|normal|default|regular) (?:(?:shell|macaron|{count=shells}) )?(?:size|diameter) (?:is |= |: |, |at )?{length}${end}`,
    `^${opening}{length} (?:(?:is|are|{count=shells}|shells?|across) )+(?:my|our) (?:(?:own|usual|standard|normal|default|regular|shell|macaron|{count=shells}) )*(?:size|diameter)(?: .*(?:default|standard|usual|store|save|keep|remember)\\S*.*)?$`,
    "(?:switch|switching|switched|change|changing|changed|move|moving|moved|going|gone) (?:over )?to {length} .. (?:for good|from now on|permanently|always|for ever|forever)",
  ],
  [6, "^i (?!piped)\\S*pipe\\S* (?:all (?:of )?)?(?:mine|them|everything|all|my \\S+) (?:at |to )?{length}"],
  // the hours of another job, in which nobody bakes
  [
    -16,
    "(?:im|i am|i) \\S*work\\S* .. {when} .. (?:in|at|for) (?:the |my |an? )?(?:office|shop|school|hospital|day job|job|store|factory|bank|college|library|call cent\\S+)",
    "(?:office|day job|shift|my job) .. from {when}",
  ],
  // a question sets nothing
  [
    -16,
    "^(?:(?:so|and|but|ok) )*(?:can|could|should|may|shall|do|does|is it (?:ok|okay|fine|safe)) (?:i|we|you|to) (?:\\S+ ){0,2}(?:bake|\\S*<step=bake>|put|do|use|rest|pipe)",
  ],
  // a printer is of another world otherwise
  [
    8,
    `^(?:ok |please |go )?back to {unit=g|oz}${end}`,
    `^(?:(?:and|ok|so|note|remember|that|,) )*${mine} (?:\\S+ )?oven (?:only )?(?:takes|holds|fits|has room for) (?:only )?{number} {count=trays}${end}`,
    `(?:oven|i|we) (?:takes?|holds?|fits?|bakes?|can bake|do|can do|bake|\\S*<step=bake>) {number} {count=trays} (?:at once|at a time|at the same time|together)`,
    `^(?:i|we) (?:always |usually |normally )?(?:rest|bake|cool|mature|\\S*<step=(?:rest|bake|cool|mature)>) (?:mine|them|my \\S+|the shells|everything) (?:for )?{time}${end}`,
  ],
  // a printer is of another world otherwise
  [
    6,
    `${mine} (?:printers? |print )?(?:paper|printer) (?:size )?(?:is|uses|takes|has|=|:|prints(?: on)?) .. (?:a 4\\S*|letter)`,
    `(?:i|we) (?:always |only |usually )?print (?:everything |it all |them )?on .. (?:a 4\\S*|letter)`,
    `(?:use|switch to|set) (?:${mine} )?(?:paper (?:size )?(?:to )?)?(?:us )?(?:a 4\\S*|letter) paper${end}`,
  ],
  [
    4,
    `${mine} (?:\\S+ )?{count=trays} (?:has|have|holds?|does|do|takes?|fits?|is|are|makes?|got|only|can|will) .. (?:{number}|{length})`,
    `i (?:can |usually |always |only )?(?:get|fit|put|pipe) {number} .. (?:on|to|per|in) .. {count=trays}`,
    `{number} (?:{count=shells} )?(?:fits?|go|to|on|per) .. ${mine} {count=trays}`,
    // "scale reads 0.5 g steps": whose it is goes without saying
    "^(?:(?:the|my|our|so|and|well) )*(?:kitchen |digital )?scales? (?:only )?(?:reads?|goes|shows?|does|is|steps?|measures?|has|works|counts?) (?:up )?(?:in |to |by )?{weight} (?:steps?|divisions?|increments?)",
    `${mine} (?:kitchen |digital |little |new )?scales? (?!.* (?:how|what|whats|which) )(?:reads?|weighs|goes|shows?|does|is|only|steps?|measures?|has|works) .. (?:{weight}|{unit=g|oz})`,
    `ovens? (?:runs?|is|reads?|bakes?|gets?) .. (?:{temperature}|{number}) (?:degrees )?(?:\\S+ )?(?:hot|hotter|cold|colder|cool|cooler|high|low|over|under|off|warm|warmer)`,
    `(?:${mine} oven is|${mine} ovens|${mine} oven has|i have|ive got|i got|i use|i bake (?:in|with)|its|mine is|we have|i own) (?:an? )?(?:\\S+ )?(?:fan|convection|conventional|static|(?:normal|regular|ordinary) oven)(?: oven)?(?: , \\S+(?: \\S+)?)?(?: (?:save|remember|note|keep) (?:it|that|this))?${end}`,
    `^${opening}i (?:dont|do not|havent|have not) (?:have|got|own|use) (?:an? |any |the )?fan oven${end}`,
    `${mine} oven (?:has|hasnt|doesnt have|is without|comes with) (?:an? |no |any )?fan${end}`,
    `i ${habit} (?:{use=piping}|{step}|pipe|make|bake|rest|cool|mature|do|preheat|set) .. (?:{length}|{temperature}|{time}|{number})`,
    `(?:{length}|{time}|{temperature}) .. (?:from now on|by default|every time)`,
    `(?:from today|tray =|{count=trays} =|{count=trays} :)\\S* .. (?:{length}|{time}|{temperature})`,
    `(?:as a rule|my usual size|my usual|my standard|by default) .. (?:remember|save|store|keep|note)`,
    `{count=shells} (?:are|is) {length} .. (?:remember|save|store|keep|as a rule|always|from now)`,
    `(?:all|each|every one) (?:of )?(?:my|our) {count=macarons} (?:are|is|come out|measure) {length} .. (?:remember|save|store|keep)`,
    `{length} .. {length} .. (?:save|remember|keep)`,
    `{count=trays} .. {number} x {length} .. (?:save|remember|keep)`,
    `from now on .. {volume}`,
    `i (?:use|have|bake on|work with|got) (?:an? )?{count=trays} (?:with|of|for|that has|has|takes|holds) {number}`,
    `{count=trays} (?:with|of) {number} {count=shells}`,
    `(?:a_cup|my cup|cups?|1_cup)\\S* .. {volume} .. (?:remember|from now on|save)`,
    `from now on .. (?:{length}|{time}|{temperature}|{percent}|{unit}|{money})`,
    `(?:i|we) (?:get up|wake up|wake|go to bed|go to sleep|am up|am in bed|sleep|turn in|start work|stop work) .. {when}`,
    `(?:im|i am) (?:up|awake|in bed|asleep) .. {when}`,
    `(?:i|we|im|i am) (?:sleep|asleep|work|bake|awake|up|in bed) (?:from |between )?{number} (?:to|till|until|and|-) {number}${end}`,
    `${mine} currency`,
    `^currency ${coins}${end}`,
    `(?:use|work in|reckon in|count in|prices?(?: \\S+){0,2} in|sell in|charge in|money(?: \\S+)? in) ${coins}`,
    `currency (?:to|is|in|should be|as) ${coins}`,
    `(?:i (?:sell|charge|price|pay|work)|prices?|show prices|use|switch to) (?:in )?${coins}${end}`,
    `(?:${mine} )(?:time|labou?r|hourly rate|wage|work) (?:is|costs?|=|should be|to) .. {money}`,
    `i (?:pay myself|charge myself|earn|count my time at) .. {money}`,
    `${mine} (?:measuring )?{unit=cup} (?:is|are|holds?|has|measures?|=) .. {volume}`,
    `use (?:an? |my )?{volume} {unit=cup}`,
    `^(?:for me|here|with me|for us|at home)(?: ,)? (?:a_cup|my cup|1_cup|one_cup|cups?|an?_cup)\\S* (?:is|are|means?|holds?|=) {volume}`,
    `(?:use|i use|i have|my cups are|switch to|set) (?:to )?metric (?:{unit=cup}|cups?)${end}`,
    `${mine} (?:market|labels?) (?:is|are|for|go|should be|to) .. (?:us|usa|eu|europe|america|american|european)`,
    `i sell (?:in|to) (?:the )?(?:us|usa|eu|europe|america)${end}`,
    `(?:plan|make|pipe|add|use|do|i (?:make|plan|pipe)|with) (?:always )?(?:{percent}|no|zero) (?:extra|spares?)`,
    `{percent} (?:\\S+ )?(?:spares?|extra|extras) .. (?:always|from now on|please|{count=shells})`,
    `(?:show|give|weigh|work|answer|think|prefer|use|switch to|set) .. (?:everything |weights |it all )?(?:in )?{unit=g|oz} .. (?:always|from now on|by default)`,
    `(?:i (?:use|weigh in|work in|prefer|think in|weigh everything in)|switch to|show (?:weights|everything|all weights|me weights) in|use) {unit=g|oz}${end}`,
    `(?:oven|i) (?:takes?|holds?|fits?|bakes?|can bake|do|can do|bake) {number} {count=trays} .. (?:at once|at a time|at the same time|together)`,
    `i (?:use|do|always use) (?:the |a )?no {step=rest}`,
    `set ${mine} (?:\\S+ )?(?:{count=trays}|{count=shells}|currency|oven|mat|size|scale|bench|market|cups?|{unit=cup}|hours|labou?r|wage|spares?|units?|diameter)`,
    `{use=piping} takes (?:me )?{time}`,
    `(?:how is|hows|how are|what is|whats|show(?: me)?|see|list|tell me) (?:\\S+ )?(?:my |the )?(?:bench|settings|setup)`,
    `^(?:my )?(?:bench|settings|setup)${end}`,
    // "how my bench is set just now"
    "^(?:(?:and|so|ok|tell me|show me) )*how (?:my|the) (?:bench|settings|setup) (?:is|are|stands?|looks?)(?: set| set up)?(?: \\S+){0,3}$",
    `(?:what|whats|what is|what are|which|how big (?:is|are)|how wide (?:is|are)|show(?: me)?) (?:is |are )?my (?:\\S+ )?(?:{count=trays}|oven|ovens|scale|scales|currency|market|{unit=cup}|hours|units|spares|diameter|shell size|size|{count=shells} size|labou?r)(?: (?:set|setting|size))?(?: (?:to|at|right now))?${end}`,
    `(?:forget|reset|clear|unset|drop) (?:about )?(?:my|the) (?:\\S+ )?(?:{count=trays}|bench|settings|setup|oven|ovens|scale|scales|currency|market|cups?|{unit=cup}|hours|units?|spares?|size|diameter|{count=shells}|labou?r|{step}|offset)`,
    `(?:use|go by|follow|back to) the book(?:s)?`,
    `back to (?:the )?(?:usual|default|standard) .. (?:size|oven|{count=trays}|{count=shells}|settings)`,
    `reset (?:everything|all my settings|to the book)`,
  ],
  // "i will certainly forget the oven": what may happen, and no order
  [
    -12,
    "(?:will|might|may|ill|always|never|sometimes|often|usually|going to|gonna|bound to|tend to|sure to|certain to|liable to|apt to|likely to|keep) (?:(?:i|we|certainly|probably|surely|definitely|just|only|easily|completely|totally|never) )*(?:forget|forgetting)",
    "(?:dont|do not|cant|mustnt|not|wont|to|id|would|i|we|lest i|in case i|before i|if i|so i dont|hope i dont) forget (?:about )?(?:the|my) (?:oven|{count=trays}|{count=shells}|{step})(?: (?:is on|on|again|if|when|otherwise|and|altogether|completely|entirely))?(?: .*)?$(?<!(?:setting|settings|offset)s?)",
  ],
  // told of a bake that is over
  [
    6,
    `^(?:(?:and|but|so|well|oh|no|yes|ok) )*(?:i|we) (?:just |only |had )?baked<\\S* (?:(?:them|it|mine|these|those|my \\S+|the \\S+|everything) )?(?:at (?:{temperature}|{number}) (?:and )?)?for {time}${end}`,
  ],
  [
    3,
    `i (?:always |usually )?(?:{step=bake}|bake) (?:mine |them |my shells |everything )?at (?:{temperature}|{number}|{when})${end}`,
    `^no spares?${end}`,
  ],
  [
    3,
    `make (?:my|our) (?:{count=shells} |shell |macaron )?(?:size|diameter) {length}`,
    `${mine} {count=shells|macarons} (?:are|is) (?:always |all )?{length}${end}`,
    `${mine} (?:{count=shells} |shell |macaron |usual |default |normal )*(?:size|diameter) (?:is|to|should be|=) .. {length}`,
  ],
  [
    2,
    `{length} .. (?:remember|keep (?:that|it|this) in mind|dont forget|save that)`,
    `remember .. (?:{length}|{count=trays})`,
    "settings",
  ],
  [1, "remember", habit, "my oven", "keep .. mind"],
  [
    -4,
    "(?:how|hw) (?:much|many)",
    "^(?:and |please |pls )*(?:note|log|record|jot)",
    "(?:timer|timers|alarm|remind|ping|wake me|countdown)",
    "(?:recipe|recipes|book) says",
    "when (?:do|should|must) i",
    "(?:bottle|stock|pantry|cupboard|shelf)",
    "{symptom}",
    "(?:price|margin|markup|ingredients|ingrediants)",
    "(?:last|best|usually) .. (?:ones|batch|batches)",
  ],
  [
    -2,
    "^(?:and |but )?(?:what )?if",
    "what (?:do|should) i",
    "{base=batter|buttercream|ganache|filling}",
    "need|needs|want|wanted",
  ],
);
