/** Words of talk in notes and in questions about them: none of them is a flavor, and none says which note is meant. */
const list = (words: string): ReadonlySet<string> => new Set(words.split(/\s+/).filter(Boolean));

/** They stand before "batch" or "ones" and name no flavor. */
export const batchTalk = list(`
you us please can could would should take leave a an the my our your this that these those some any all
every each last latest first second third next other another new old best worst good bad great big small
little whole half same which what how many much of in for with from to on and or but was were is are did
do had have i we it they them made make baked bake note log record show me today todays yesterday
yesterdays yestrdays mornings morning evenings plain filled finished few more previous recent most full
test tester trial sample saturday sunday monday tuesday wednesday thursday friday saturdays sundays
mondays tuesdays wednesdays thursdays fridays lovely perfect hollow cracked ever up out down notes noted logged written recorded not no none never only just even there here got get
gave rate rated forgot forgotten missed missing skipped find search look pull bring about again also yet so far nice pretty quick
`);

/** They ask about notes; any other word of a plain question has to stand in the note. */
export const recallTalk = list(`
higher lower
problem problems trouble troubles issue issues faults fault wrong
a an the my our your i ive im we it its they them that this these those one ones me us you do did does
done have has had was were is are be been am to of in on at for from with without by about and or but not
no yes so then than as if ever before again yet still already also too all any some every each everything
anything something which what whats who when whens where why how long many much often show see find list
get give tell look up pull bring read open check please pls can could would will should note notes noted
log logs record records batch batches macaron macarons macs shells bake baked baking make made making
makes pipe piped try tried time times last first latest recent next day days week weeks month months year
weekend morning night today yesterday turn turned out come came go went taste tasted like best worst good
bad great better nice lovely rated rate rating ratings score scored marks mark got gave over under above
below more less least most stars star usually normally usual now just only back remember remind recall
history past previous earlier far there here thing things temp temps temperature heat degrees flavor flavors flavour flavours shwo teh wat hey
ok okay oh entries entry written write wrote said say says recently lately ago happened happen happens
same other others another
`);

/** "for the wedding on saturday": the day of these isn't the day of the bake. */
export const events = list(
  "wedding party market order orders birthday stall shower delivery fair event christening show",
);

/** They turn a fault into one that wasn't there. */
export const negations = list(
  "no not none never without isnt wasnt werent arent didnt zero nothing hardly barely neither nor 0",
);

/** They may stand between a negation and its fault: "none of them were hollow". */
export const bridges = list(
  "a any at all of them were was are is single one the too so very really got get came out sign ever even that",
);

/** The book that she writes in, with what it is of: "baking log", "batch book". */
export const bookName =
  "(?:(?:\\S*batch\\S*|\\S*baking\\S*|\\S*bake\\S*|kitchen|macaron\\S*|little|own|big|daily) )*(?:book|notebook|log|logbook|diary|journal|records?)";

const book = "(?:diary|journal\\S*|logbook|notebook|entry|log|record|notes?)";

/** Who wants it written, before the order: "i want to make a note". */
const wishes =
  "(?:(?:hey|hi|okay|also|then|now|just|please|(?:(?:i|we|still|really) )?(?:want|wanted|need|needed|have|got|ought|meant|going) to|(?:i |we )?(?:should|must|wanna|gotta|gonna|better|can)|time to|(?:id|i would|wed) like to|let me|lets|i) )*";

/** "a note", "one more quick note". */
const aNote = "(?:(?:a|an|another|one|one more|quick|little|short|small|new) )*note(?! timer)";

/** The batch that is named before the order: "cherry batch from today, write down i give it 6 out of 10". */
export const noteBehindBatch =
  "(?!(?:how|what|whats|which|when|why|who|show|read|find|did|do|does|is|are|can|could|tell|give|scale|make|set|start|split|add|save|remind|time) )(?:[a-z]\\S* ){0,4}(?:\\S*<count=(?:batches|macarons)\\S*|ones?|\\S*<[^>]*taste=\\S*)(?: (?:from|of|on|this|that|is|was|done|finished|baked|today|now|again|too|out|\\S*<when>)){0,4} [,:] (?:please |pls |also |and |can you |could you |just )*(?:(?:write|note|jot|put|mark) (?:(?:this|that|it) )?down(?: (?:that|:))?|(?:note|write|record|log|jot)(?: that)?)";

/**
 * "got 43 macarons, cracked. note: 13 min at 160": how it went, told in front of the order. Nothing is asked there, weighed
 * for a bowl, or set to ring.
 */
export const noteBehindFacts =
  "(?!.*(?:^| )(?:how|what|whats|which|why|when|who|timer|alarm|remind|set|start|need|want|if|can|could|should|recipe|cost|price|\\?)(?: |$))(?!.*<(?:weight|money|percent|volume))(?=(?:\\S+ ){0,30}?(?:\\S*<[^>]*(?:symptom|taste)=|\\S*<count=macarons>|stars?|(?:rested|baked|yield|rated)\\S* ))(?:\\S+ ){1,30}?[.;,-] (?:please |pls )?(?:(?:make|add) a note|note)(?: (?:this|that|it))?(?: down)?(?: (?:please|pls))?(?: :| ,| ;| [.])(?= \\S)";

/** "put the cherry batch down too, tops cracked", "stick the walnut one in there too, bottoms stuck". */
const batchDown =
  "(?:put|write|mark|jot|note|log|get|take) (?:the |my |that |this )(?:\\S+ ){0,3}(?:\\S*<count=batches\\S*|ones?) down(?: (?:too|as well|also|in there))*(?: [,:;-]| as(?= \\S*<number))|(?:put|stick\\S*|pop|add|throw|write|get|log|toss) (?:the |my )(?:\\S+ ){0,2}(?:\\S*<count=batches\\S*|ones?) in (?:there|the (?:book|log|notes?))(?: (?:too|as well|also))* [,:;-](?= (?:\\S+ )*(?:\\S*<[^>]*symptom=|\\S*<number,fraction>|\\S*<number> out of ))";

/** How a note is opened, at the head of what she says, by an order: "note that", "write this down", "jot". */
export const noteOrdered = `${wishes}(?:(?:make|take|save|add|put|set|write|leave|keep|start|create|enter|do) (?:me )?(?:down )?${aNote}(?: down)?(?: that)?|(?:note|jot) (?:it |this |that )?down|(?:write|note|jot|take|put|get) (?:something|one thing|a thing|a few things|a couple of things) down|(?:put|set|get|take) this down(?! (?:to|by|from) )|put (?:it )?down (?:that|:)|(?:another|one more) note|jot|remember this(?: \\S*batch\\S*)?|write up|type up|(?:(?:write|type|scribble|jot|pen|note|log) (?:this|that|it|these|the following)(?: (?:one|batch|lot))?(?: (?:up|down|in))?|(?:put|mark|book|file) (?:this|that|it|these|the following)(?: (?:one|batch|lot))? (?:up|down|in))(?: (?:for me|for us|please|pls))* :|write (?:this |that |it )?down)`;

/** By what it is: "batch log:", "journal today:", "this is a note for", "save this one: lemon batch". */
export const noteHeaded = `${wishes}(?:(?:(?:my|the|todays|a|new) )?(?:\\S*batch\\S* |baking |bake\\S* |kitchen )?${book}(?: \\S*<when\\S*)?(?: :)?|(?:this|here|that) is (?:a|another|my|the|one) note(?: (?:for|about|on|from|of))?|heres (?:a|another|my|the|one) note(?: (?:for|about|on|from|of))?|(?:save|keep|log|store) this (?:one )?(?::|,)(?= (?:the |my |todays |this |a )?\\S*<[^>]*taste=\\S* (?:\\S*<[^>]*count=(?:batches|macarons)|ones)))`;

/** By the book it goes into: "put this in my notes", "one for the book:", "put the cherry batch down too". */
export const noteEntered = `${wishes}(?:(?:write|put|save|keep|get|stick|pop|bung|enter|file|log|record) (?:it |this |that |this one |that one )?(?:down |up )?(?:in|into|to|under) (?:my|the) (?:notes?|${bookName})(?: that)?|(?:add|append) (?:(?:it|this|that|a line|an entry|a batch|one) )?(?:in|into|to) (?:my|the) ${bookName}(?= (?:[:,;-]|\\S*<))|(?:one|new one|another one|a new one|another|next one) (?:in|into|to) (?:the|my) ${book} (?:: |, )|(?:(?:one|another|a|next|last|new|more|quick|thing|entry|\\S*<count=batches\\S*) )*for (?:the|my) ${book}(?: :| ,)?|${batchDown})`;

/** Any of them. */
export const noteOpeners = `(?:${noteOrdered}|${noteHeaded}|${noteEntered}|${noteBehindBatch}|${noteBehindFacts})`;

/** How one is made of all that was said before: "keep that as a note", "write it down". */
export const noteClosers =
  "(?:(?:keep|store|leave|remember|hang on to|hold on to|hang onto|hold onto|drop|tuck) (?:that|this|it|all that|all this|them|that one|this one|that lot)(?: all)? (?:down |up )?(?:in|into|to|under) (?:the|my) (?:batch |baking )?(?:notes?|log\\S*|book|notebook|diary|journal|records?)|(?:keep|make|take|save|leave|store|file) (?:it |this |that |all that )?(?:as |for )?(?:an? |the |my )?notes?|(?:write|jot|note|log|record) (?:that|this|it)(?: all)?(?: down)?|(?:write|type) (?:that|this|it|them|all that|all this)(?: all)? up|get (?:that|this|it|them) (?:all )?(?:written|noted|logged|recorded|jotted|typed)(?: (?:down|up))?|(?:put|save|add|write|get|stick|pop|bung|enter|file|note|record|jot|log) (?:that|this|it|all that|all this|them|that one|this one|that lot)(?: all)? (?:down |up )?(?:in|into|to|under) (?:the|my) (?:batch |baking )?(?:notes?|log\\S*|book|notebook|diary|journal|records?))(?: (?:for me|for us|for later|for next time|too|as well|please|pls|thanks|thank you|cheers|now|then|ok|(?:will|would|can|could) you))*";

/** A batch that is told and ends with where it is to stand: "..., that goes in my notes", "could the notes have that". */
const bookOf = "(?:the|my) (?:batch |baking )?(?:notes?|log|logbook|book|notebook|diary|journal|records?)";
const thatOne = "(?:that|this|it|all that|all this|all of (?:that|it)|that one|this one|the lot)";
export const belongsInNotes = `(?!.*(?:^| )(?:how|what|whats|which|why|where|who|show|find|read|recipe|timer|alarm|flavou?r for|[?])(?: |$)).*(?:^| )(?:(?:(?:thats|its|that is|this is|it is) (?:all |another |one |a note )*|${thatOne} (?:(?:should|must|has|have|needs?|could|can|might|may|will|would|to|ought|all|please) )*(?:be|goes|go|belongs|belong|stands?|gets?) (?:down )?|i(?:d like| want| need) ${thatOne} (?:to (?:be|go|stand) )?|make sure (?:that |its |it is |thats |this is )+)(?:in|into|for) ${bookOf}|(?:can|could|let|may|should) ${bookOf} (?:have|get|hold|know) ${thatOne})(?: (?:please|pls|too|as well|now|then|thanks|thank you|cheers|for (?:me|us|later|next time)))*(?: [.!])*$`;

/** A batch that is told, and the order at its end that has no word of notes: "..., eight out of ten, save that please". */
export const savesTold =
  "(?:save|keep|remember|store|log|record|file|note|jot|write) (?:that|this|it)(?: (?:one|batch|down|up|away))?(?: (?:please|pls|for me|for later|thanks|thank you|ta|cheers|too|will you|would you))*(?: [.!])*$";

/** A batch that is told in the past tense, with how it came out or what it was of, and kept by the order at its end. */
const nothingAsked =
  "(?!.*(?:^| )(?:how|what|whats|which|why|when|where|who|recipe|formula|timer|costs?|prices?|sells?|sold|\\?)(?: |$))(?!.*<(?:percent|money)>)(?!.*<weight>.*<weight>)";
const doneAndOutcome =
  "(?:\\S+ ){0,60}(?:made|did|baked|piped|finished)(?:<\\S*)? (?:\\S+ ){0,60}(?:\\S*<[^>]*(?:taste=|symptom=|count=(?:batches|macarons|trays))\\S*|out of \\S+)";
/** "lime batch: 38 of them, rested 35 minutes. save that": its name stands first, and how it went behind. */
const namedAndOutcome =
  "(?:(?:the|my|this|todays|a|second|third|another|new) )*\\S*<[^>]*taste=\\S* (?:\\S*<[^>]*count=(?:batches|macarons)\\S*|ones|today) (?:\\S+ ){0,60}(?:\\S*<(?:number|time|temperature|[^>]*symptom=)\\S*)";
/** "yesterday was 48 hazelnut ones and i burnt the last tray, 8 out of 10, keep that": its day stands first. */
const dayAndOutcome =
  "(?:(?:so|ok|well|and|oh|right|on) )*\\S*<when\\S* (?:(?:,|:|was|were|it|we|i|had|made|did) )*\\S*<number\\S* (?:\\S+ ){0,60}(?:\\S*<[^>]*symptom=\\S*|out of \\S+)";
export const toldAndSaved = `^${nothingAsked}(?:${doneAndOutcome}|${namedAndOutcome}|${dayAndOutcome}) (?:\\S+ ){0,60}${savesTold}`;

/** "before i forget: did 30 vanilla, a couple cracked, 8/10": told in haste, with how it came out, and nothing asked. */
export const toldInHaste =
  "^(?!.*(?:^| )(?:how|what|whats|which|why|when|where|timer|alarm|remind|set|\\?)(?: |$))(?:\\S+ ){0,4}(?:before|in case) i forget(?: (?:it|this|again))? (?:[:,;-] )?(?:\\S+ ){0,60}(?:made|did|baked|piped|batch|were|was|had|got|came)(?:<\\S*)? (?:\\S+ ){0,60}(?:\\S*<[^>]*symptom=\\S*|\\S*<number,fraction>|\\S*<number> out of \\S+)";

const itsNote =
  "(?:it|that|this|there|them|those|the (?:end|bottom)(?: of (?:it|that))?|(?:that|this|the same|the last|the latest|my last|the|my) (?:\\S+ )?(?:one|note|entry|batch\\S*|ones))";

/** More of a note by what it is put on to, with the words behind a colon: "tack this onto it: no cracks". */
export const ontoNote = `(?:tack|stick\\S*|pop|add|append|put|write|scribble|throw|include|attach|bung|chuck|jot|slip) (?:(?:this|that|these|the following|something|one more thing|one thing|one more|another thing|a line|a bit|a word|more)(?: bit| too| down)? )?(?:onto|on to|on|to|into|in|under|at the (?:end|bottom) of|in with) ${itsNote}(?: (?:too|as well|please|pls))*`;

const says = "(?:put|add|write|note|say|mention|stick|pop|jot|include|log|record)";
const also = "(?: (?:too|as well|also))*";
const itsPlace =
  "(?:there|it|them|that one|this one|the same (?:one|note)|that note|this note|the (?:last )?note|the last one|that)";
/** What leads over to the words: "that", a colon, or the words themselves. */
const words = `(?: (?:that|:|,)|(?= (?:the|they|theyre|it|its|i|we|some|all|most|none|tops|bottoms|shells|feet|a few|a couple|half) ))`;

/** More of the note that was just made: "also put in there that the tops were dark", "put with it that it was sweet". */
export const intoNote = `(?:${[
  `${says} (?:(?:it|this|down|also) )*(?:onto|on to|in|on|to|into|under|with|beside|next to|alongside|by) ${itsPlace}${also}${words}`,
  // "put there too that", "write in also that"
  `${says} (?:down )?(?:(?:in |on )?there|alongside|beside|(?:in|on) (?:also|too|as well))${also} (?:that|:|,)`,
  // "let it also say that", "it should say too that"
  `(?:(?:let|have|make) (?:it|that|this|the note|that note|that one)${also}|(?:it|that|this|the note|that note|that one) (?:should|must|has to|needs to|ought to)${also}) (?:say|mention|read)${also} (?:that|:|,)`,
].join("|")})`;

/** "with that goes: tasted of soap", "mention the bottoms were soft": only right behind a note. */
export const besideNote = `(?:(?:along |together )?with (?:that|it|this|that one|this one)(?: (?:goes|comes|belongs))?${also} (?::|,)|mention${also}(?= (?:the|they|theyre|it|its|i|we|some|all|most|none|tops|bottoms|shells|feet|a few|a couple|half) ))`;
