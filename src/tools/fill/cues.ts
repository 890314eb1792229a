/** The signs of a fill question, of one that goes on from it, and of one behind another answer. */
import { opening } from "../../../data/words/openers.ts";
import { sameIn } from "../convert/same-in.ts";
import { cues } from "../lib/cue.ts";
import { centerWord, ringWord } from "./places.ts";

/** "forget the jam, just buttercream in all 45", "no jam then, only ganache": one filling after all. */
const oneAfterAll = `^${opening}(?:forget|scrap|ditch|never ?mind|lose|skip|drop|leave out|without|no) (?:about )?(?:the |any |a )?(?:{ingredient}|{taste}|{chocolate}|{dose})(?: (?:then|now|after all))? (?:, )?(?:and |then |its |make it |do |use )*(?:just|only|all) (?:the |plain )?{base=(buttercream|ganache|filling)}`;

/** "15 w raspberry buttercream", "12 of them get lemon curd": so many with a mix. */
const soMany = (link: string) =>
  `{number} (?:{count=macarons} )?${link}(?:(?:a|the|my|some|plain) )*(?:\\S*<[^>]*(?:taste|chocolate)=[^>]*> ){0,2}{base=(buttercream|ganache|filling)}`;
const withIt = "(?:(?:of|them|those|with|w|in|as|are|is|get|gets|take|takes|want|filled|be|to) )";
const next = "(?:(?:,|and|plus|&|\\+|then|another|the|other) )*";
/** Nothing is weighed, and no flavor is asked for: the numbers are macarons. */
const onlyCounts =
  "(?!.*(?:<weight|<money|<percent|<time|<when|base=batter|how much (?:\\S+ ){0,3}?\\S*<[^>]*dose=|(?:^| )(?:note|log|split|save|label) ))";
/** What an order may be asked about besides its filling. */
const ofNothingElse =
  "(?!.*(?:(?:^| )(?:cost|costs|price|charge|sell|buy|shopping|plan|start|recipe|whites|margin)(?: |$)|count=(?:shells|trays|boxes)|<remember))";
const bothCounted = (link: string) => `${soMany(link)} ${next}${soMany(link)}`;
const flavorsNumbered = "{number} (?:(?:different|separate) )?(?:flavou?rs|tastes)<[^>]*>";

export const fillCues = cues(
  // "fill 15 w raspberry buttercream 15 w pistachio ganache", "15 macarons lemon buttercream and 15 rose ganache"
  [
    12,
    `^${onlyCounts}.*(?:to_)?fill(?:ing|ed)?(?:<\\S+)? .*${bothCounted(`${withIt}*`)}`,
    `^${onlyCounts}.*${bothCounted(`${withIt}*`)} .*(?:filling|fill|to_fill)(?:<\\S+)?`,
    `^${onlyCounts}.*${bothCounted(`${withIt}+`)}`,
    `^${onlyCounts}.*{count=macarons}.* ${bothCounted(`${withIt}*`)}`,
    `^${onlyCounts}.*{number} {count=macarons} ${withIt}*(?:\\S*<[^>]*(?:taste|chocolate)=[^>]*> ){0,2}{base=(buttercream|ganache|filling)} ${next}${soMany(`${withIt}*`)}`,
    // "buttercream for 15 and ganache for 15"
    `^${onlyCounts}.*{base=(buttercream|ganache)} (?:(?:do|will|should|i|need|make|have|to|needed) )*for {number} (?:{count=macarons} )?(?:{taste} )?${next}(?:how much )?(?:{taste} )?{base=(buttercream|ganache)} (?:(?:do|will|should|i|need|make|have|to|needed) )*for {number}`,
    `^${onlyCounts}.*(?:{taste} )?{base=(buttercream|ganache)} {number} ${next}(?:{taste} )?{base=(buttercream|ganache)} {number} .*(?:filling|fill|to_fill|{count=macarons})`,
    // "12 each of lemon buttercream and dark ganache"
    `^${onlyCounts}.*{number} (?:{count=macarons} )?(?:of )?each .*{base=(buttercream|ganache)} (?:and|,|&|plus) (?:\\S+ ){0,4}?{base=(buttercream|ganache)}`,
  ],
  // "30 macarons, 2 flavors", "3 flavors 30 macarons 12 9 9"
  [
    9,
    `^${onlyCounts}${ofNothingElse}.*{number} {count=macarons} (?:\\S+ ){0,4}?${flavorsNumbered}`,
    `^${onlyCounts}${ofNothingElse}.*${flavorsNumbered} (?:\\S+ ){0,4}?{number} {count=macarons}`,
  ],
  // "fill 30, 5 g each, how much do i need"
  [
    9,
    "^(?!.*(?:{dose}|base=batter)).*(?:to_)?fill(?:ing)?(?:<\\S+)? (?:\\S+ ){0,2}?{number} (?:{count=macarons} )?(?:(?:,|with|at|and|of|by) )*{weight} (?:each|apiece|in each|a piece|per {count=macarons})",
    "^(?!.*(?:{dose}|base=batter)).*{weight} (?:each|apiece|in each|a piece|per {count=macarons}) .. (?:to_)?fill(?:<\\S+)? (?:\\S+ ){0,2}?{number}",
  ],
  // "how much is in one macaron", "what goes in each one"
  [
    5,
    "^(?!.*base=batter)(?:(?:and|so|ok|then|now) )*how much (?:(?:of it|of that) )?(?:is|goes|go|sits|do i put|should i put|do i pipe|will be|would be|should go|gets) (?:(?:in|into|inside|piped) )+(?:one|a|an|each|every|a single|one single|{number}) (?:single )?{count=macarons}",
  ],
  // no flavor to weigh, where they are counted
  [4.5, `^${onlyCounts}.*${flavorsNumbered}`],
  // "140 g buttercream and 90 g ganache, enough for 30"
  [
    8,
    "{weight} (?:of )?{base=(buttercream|ganache)} (?:(?:,|and|plus|&) )*(?:{weight}|{number}) (?:of )?{base=(buttercream|ganache)} .* ?(?:enough|cover|do|fill)(?: \\S+){0,2} {number}",
  ],
  // "55 macarons, 4.5 cm across, how much do i need to fill them"
  [
    9,
    "^(?!.*(?:<weight|<money|{percent})).*{number} (?:filled )?{count=macarons} (?:\\S+ ){0,20}?how much (?:filling<\\S+ )?(?:do|will|would|should|must) i (?:need|want|make|have to make) \\S*to_fill\\S* (?:them|those|these|it)",
    "^(?!.*(?:<weight|<money|{percent})).*how much (?:filling<\\S+ )?(?:do|will|would|should|must) i (?:need|want|make|have to make) \\S*to_fill\\S* (?:them|those|these|it) (?:\\S+ ){0,20}?{number} (?:filled )?{count=macarons}",
  ],
  // "filling for 552 g batter", "how much ganache do i need to fill them"
  [
    14,
    "{base=(filling|buttercream|ganache)} (?:\\S+ ){0,4}(?:for|from|with|to match|out of) (?:the |my |a )?(?:{count=(?:macarons|shells)} (?:from|of|out of) )?(?:the |my )?{weight} (?:of )?{base=batter}(?: [?])?$",
    "^(?:(?:and|so|ok|now|then) )*how much {base=(filling|buttercream|ganache)} (?:do|will|would|should|must) i (?:need|make|have to make) (?:to fill|\\S*to_fill\\S*|for) (?:them|those|these|it)(?: all)?(?: [?])?$",
  ],
  [
    9,
    "(?:how|hw) much {base=(filling|ganache|buttercream)} .. {number} (?:[a-z]+ )?minis",
    "{number} (?:[a-z]+ )?minis .. (?:how|hw) much {base=(filling|ganache|buttercream)}",
  ],
  [14, `${oneAfterAll} (?:in|for|into) (?:all|them|each|every|those|these|the lot)`],
  [
    9,
    "^(?:(?:and|so|ok|now) )*(?:whats|what is|what about|how about|how much is) (?:the |my )?{base=filling}(?: (?:then|now|for (?:that|them|those|it)))*(?: [?])?$",
  ],
  [
    9,
    "how many (?:of )?(?:them|these|those|{count=(macarons|shells)}) (?:will|can|could|would|do) (?:i|we|it|that) fill (?:with|from|out of)",
  ],
  [5, "^(?:(?:and|so|ok|then) )*{base=filling} for (?:those|the|these|all) {number}(?: [?])?$"],
  [
    9,
    "{number} {count=macarons} (?:\\S+ ){0,2}{weight} (?:of )?(?:{base} )?(?:each|apiece|in each)",
    "{weight} (?:of )?{base=(filling|ganache|buttercream)} (?:each|in each|apiece|per {count=macarons})",
    "{number} {count=macarons} .. {fraction} {base=(ganache|buttercream)} (?:and )?{fraction} {base=(ganache|buttercream)}",
    "how many {count=macarons} (?:will|can|does|would|do) (?:that|the|this|those) (?:{number}|{weight}) (?:fill|do|cover)",
  ],
  [
    9,
    "how many {count=macarons} (?:will|can|does|would|do) (?:all of (?:it|that|this)|it|that|this|all that|the (?:whole |entire |full )?(?:lot|thing)|the (?:whole|entire|full) (?:batch|{count=batches}|{count=bowls}|bowl)) (?:fill|do|stretch to|cover)",
  ],
  // "making macarons on sunday and no clue how much buttercream to make": nobody knows yet how many
  [
    6,
    "{count=macarons} .. (?:how|hw) much {base=(filling|buttercream|ganache)} (?:(?:do|should|shall|will|would|must) )?(?:i |we |to )(?:need to |have to )?(?:make|need|whip up|mix)",
    "(?:no|not a|havent a|any) (?:idea|clue) (?:how|hw) much {base=(filling|buttercream|ganache)} (?:i|we|to)",
  ],
  [12, "{base=(buttercream|ganache)} (?:as|for) (?:the |a )?(?:ring|border|dam) (?:around|round)"],
  [-14, "ring (?:my|her|him|me|them|up|back|someone)"],
  [
    5,
    "^(?:(?:and|so|ok|now|then) )*how much {base=(filling|buttercream|ganache)} (?:do|will|would) i (?:have|need) to (?:make|mix|whip)(?: for (?:that|them|those|these|it|this))?(?: [?])?$",
  ],
  [
    5,
    "{weight} .. {base=(filling|buttercream|ganache)} .. (?:fill|enough) .. how many",
    "{weight} .. {base=(filling|buttercream|ganache)} .. enough to fill",
    "how many .. {weight} .. {base=(filling|buttercream|ganache)} .. fill",
    "how many {count=macarons} (?:will|does|can|would|could) (?:that|it|this) fill",
    "how many .. {count=macarons} (?:will|does|can|would|could) (?:the |my )?{weight} fill",
  ],
  [
    6,
    "{weight} .. {base=(filling|buttercream|ganache)} .. (?:enough|plenty|do|cover|stretch|last|suffice) (?:for |to fill |to )?(?:\\S+ )?{number}",
    "enough {base=(filling|buttercream|ganache)} (?:for|to fill) {number}",
  ],
  [
    8,
    "{number} .. {count=macarons} .. {base=(filling|buttercream|ganache)} (?:per|for each|each|for every|a) {dose=flavor}",
  ],
  // "how far will a pound of ganache go, in macs"
  [
    8,
    "how fars? .. {weight} (?:of )?(?:the |my )?{base=(filling|buttercream|ganache)} (?:\\S+ ){0,5}(?:go|stretch|get me|take me)",
  ],
  [
    10,
    "(?:center|centre|middle)\\S* .. {base} (?:(?:piped|pipe|going|goes|all)\\S* )*(?:around|round|outside)",
  ],
  [
    8,
    `${ringWord} .. ${centerWord}`,
    `${centerWord} .. ${ringWord}`,
    // shells brown at the edge too
    `edge .. {base=(buttercream|ganache|filling)} .. ${centerWord}`,
    `{base=(buttercream|ganache|filling)} .. edge .. ${centerWord}`,
    `${centerWord} .. edge .. {base=(buttercream|ganache|filling)}`,
    `${centerWord} .. {base=(buttercream|ganache|filling)} .. edge`,
  ],
  [
    4,
    "(?:how|hw) much (?:more )?{base=(filling|buttercream|ganache)} .. {number} .. {count=(macarons|shells)}",
    "{number} .. {count=macarons} .. (?:how|hw) much (?:more )?{base=(filling|buttercream|ganache)}",
    "(?:how|hw) many .. {count=macarons} .. {weight} .. {base=(filling|buttercream|ganache)}",
    "{weight} .. {base=(filling|buttercream|ganache)} .. (?:how|hw) many .. {count=macarons}",
    "how much .. {number} .. {count=macarons} as (?:the |a )?(?:center|centre|ring)",
    "{base=filling} for {number}",
    "{base=(filling|buttercream|ganache)} (?:i |we )?(?:need |have )?to make for {number}",
    "{base=(buttercream|ganache|filling)} for .. {number} of (?:them|those|these)",
    "to_fill\\S* {number} .. {count=macarons} .. (?:how|hw) much (?:do|should|shall|must) i",
    "(?:how|hw) much (?:do|should|shall|must) i .. to_fill\\S* {number} .. {count=macarons}",
    "^(?:and )*(?:the )?fill for {number}",
    "^(?:(?:ok|so|and|now|right) )*(?:how|hw) much (?:do|should|shall|must) i (?:make|need|pipe) to_fill\\S* (?:these|them|those|it all)",
    "{count=macarons} .. (?:waiting|ready|there|baked|need|want|paired|matched) (?:for|to|a|some|their)? ?\\S*(?:filling|fill|filled)",
    "{count=macarons} .. {weight} .. {base=(filling|buttercream|ganache)} .. fill",
    "(?:how|hw) many .. (?:fill|filled) .. {weight}",
    "{weight} .. fill .. (?:how|hw) many",
  ],
  [
    3.5,
    "{base=filling} for (?:them|those|it|these|all|the (?:whole )?lot)",
    "(?:how|hw) much (?:more )?{base=filling}",
    "{base=filling} .. {number} .. {count=macarons}",
    "{base=filling} per {count=macarons}",
    "{base=filling} .. (?:one|each|a|every) {count=macarons}",
    "{count=macarons} .. {base=filling} (?:do|should|to)",
    "fill {number} .. {count=macarons}",
    "{weight} .. {base} .. enough .. {number} .. {count=macarons}",
    "enough {base=(filling|buttercream|ganache)} .. {number} .. {count=macarons}",
    "what .. {base=filling} .. {count=macarons}",
    "{number} .. {count=macarons} .. {base=filling}",
    "{weight} .. {base=filling} .. (?:how|hw) many",
    "{count=macarons} .. (?:how|hw) much .. (?:each|of each)",
  ],
  [2, "{base=filling}", "(?:ring|center|centre)", "fill"],
  [1, "{count=macarons}", "each"],
  [
    -4,
    "{dose}",
    "{base=batter}",
    "flavou?r",
    "(?:note|log) ",
    "timer",
    "(?:ready|due|by|for|until) {when}",
    "(?:how long|keep|counter|freeze|fridge)",
    "label",
    "split {weight}",
    "{percent}",
    "{symptom}",
    "buy",
    "(?:cost|margin|charge)",
    "(?:filled|made) .. {when}",
    "when (?:do|should)",
  ],
  [
    -3,
    "{base=(filling|buttercream|ganache)} .. {weight} .. (?:of )?{taste}",
    "save",
    "{ingredient=(chocolate|cream|whites|butter)} .. {base}",
    "{chocolate} .. {ingredient=cream}",
    "recipe",
  ],
  [-8, "(?:how|hw) much {dose} .. (?:for|in|into) (?:the |my )?(?:ring|center|centre)"],
  [-1.5, "{taste} .. {weight}"],
);

/** "two flavors: raspberry and pistachio", of what was just worked out. */
const inFlavors = `^${opening}(?:(?:in|make|it|them|that|its|with|for|as) )*${flavorsNumbered}(?: (?:[:,-]|and|each|please|pls|{taste}))*(?: [?])?$`;

/** "half of them raspberry, the other half pistachio", of the macarons that a recipe was made for. */
const inShares = `^${opening}(?:(?:make|its|with|want|i|we|do|she|he|they|wants) )*{fraction} (?:(?:of|them|it|those|the|is|are|be|in|as|to) )*{taste} (?:(?:,|and|the|other) )*(?:{fraction}|rest|remainder\\S*) (?:(?:of|them|it|those|the|is|are|be|in|as|to) )*{taste}(?: (?:please|pls|then))*(?: [?])?$`;

export const fillGoesOn = cues(
  [14, inFlavors],
  [14, ...sameIn("{unit=oz}")],
  [
    12,
    oneAfterAll,
    "(?:just|only|all) (?:the |plain )?{base=(buttercream|ganache|filling)} (?:in|for|into) (?:all|them|each|every|those|these)",
    `^${opening}(?:bump|push|bring|take|put|raise|up|lift|drop|cut) (?:that|it|them|the number|the count|those) ?(?:up |down )?to {number}(?: (?:please|pls|then|instead|{count=macarons}))*(?: [?])?$`,
    "(?:other way|way round|way about) .. {base=(filling|buttercream|ganache)} .. for {number}",
    "^(?:(?:and|the|my|but|oh) )*{count=shells} (?:came out|are|turned out|ended up|were|piped|baked) (?:at |to )?{length}(?: wide| across)?(?: [?])?$",
  ],
);

export const fillAfter = {
  // "filling to go with it", "how much filling would they need", behind the weights of a batter
  scale: cues([
    14,
    inFlavors,
    inShares,
    `^${opening}(?:(?:how|hw) much |the |and |what |some |whats the )*{base=(?:filling|buttercream|ganache)} (?:(?:do|does|would|will|should|is|to|needed|needs|that|they|it|this|i|go|goes|need|take|want|make|for|with|fill|\\S*to_fill\\S*|them|those|these|all) ?)*(?: [?])?$`,
  ]),
  // "ok now just the filling, for 20 of those"
  shells: cues([
    14,
    inFlavors,
    `^${opening}(?:(?:now|and|then|so|just|only|also|do|tell me|what about|how about|how much|the|my) )*{base=filling} (?:, )?(?:(?:for|if|with|just|only|about) )+(?:the |those |these )?{number}(?: (?:of (?:them|those|these)|{count=macarons}|then|please|pls|instead))*(?: [?])?$`,
    // "buttercream for 20 macarons of 4 cm", behind their batter
    `^${opening}(?:(?:also|plus|then|now|how much|some|the|my) )*{base=(?:buttercream|filling)} (?:do i need )?for (?:the |those |these )?{number} {count=macarons}(?: (?:of|at|with) {length})?(?: (?:please|pls|then|too))*(?: [?])?$`,
  ]),
  buttercream: cues([
    14,
    "(?:(?:is|will|would) (?:it|that|this) (?:be )?)?(?:enough|plenty) (?:for|to fill) {number}",
    "(?:is|will|would) (?:it|that|this) do (?:for )?{number}",
    "^(?:(?:and|so|ok|now) )*how much (?:of (?:it|that) )?(?:do i need |will i need |is that )?for {number} {count=macarons}(?: [?])?$",
  ]),
  // "no, make it buttercream", behind a ganache for so many
  ganache: cues([
    14,
    "^(?:(?:and|so|ok|now) )*how much (?:of (?:it|that) )?(?:do i need |will i need |is that )?for {number} {count=macarons}(?: [?])?$",
    "(?:(?:is|will|would) (?:it|that|this) (?:be )?)?(?:enough|plenty) (?:for|to fill) {number}",
    "(?:is|will|would) (?:it|that|this) do (?:for )?{number}",
    `^${opening}(?:(?:make|do) (?:it|that|them|this) |with |use |i want |lets (?:do|use) )+(?:\\S+ )?{base=buttercream}(?: (?:instead|then|rather|please))*(?: [?])?$`,
  ]),
  day: cues([
    14,
    "^(?:(?:and|so|ok|how much|weight of|the) )*{base=filling} (?:for (?:it|that|them|those|this|(?:the|those|these|all) {number})|(?:do i need|is that|is it))(?: then)?(?: [?])?$",
  ]),
};
