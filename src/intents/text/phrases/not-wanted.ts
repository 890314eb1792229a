/** What isn't wanted, beside what is: "don't set a timer, just say how long", "I don't need salt this time, only vanilla extract". */
import type { Phrase } from "./phrase.ts";

/** Where it may begin: a turn, a sentence, or behind a comma, a dash or "and". */
const start =
  "(?<=^|[.?!;:,] ?| - )(?:(?:and|but|so|ok|please|just|oh|well|no),? )*(?:i |we |i'?m |we'?re |i am |we are )?";
const notAsked =
  "(?:no need (?:to|for)|(?:do not|don'?t) (?:need|want|bother)|never ?mind|skip|forget|leave)";
const refusing =
  "(?:(?:do not|don'?t|will not|won'?t|would not|wouldn'?t|shan'?t|not) (?:need(?:ing)?|want(?:ing)?|bother(?:ing)? with|us(?:e|ing)|be (?:using|needing|adding|wanting)|add(?:ing)?|put(?:ting)? in|care (?:about|for))|no need (?:for|of)|never ?mind(?: about)?|forget(?: about)?|leave (?:off|out)|skip)";
/** What may stand behind it. */
const tail =
  "(?: (?:in it|in there|in this|in these|this time|this one|today|tonight|now|at all|for now|after all|please|pls|or anything|anymore|any more|yet|either))*";
const asks = "\\b(?:how|what|whats|what's|which|when|why|where|who|whose)\\b";

const asksWhy = /\b(?:rule|why|how come|basis|source|reason|come from|where|formula)\b/;

/** Words for nothing that could be left out of a bowl. */
const thing =
  "(?!(?:it|them|that|this|those|these|to|a|an|any|anything|more|another|much|many|timers?|alarms?|notes?|numbers?|figures?|help|you|your|me|so|too|half|all|both|either|one|ones|finished|everything|nothing|what|how|last|first|previous|about|labou?r|\\d)\\b)[a-z]+";
const named = `((?:(?:milk|dark|white|gel|powder|lemon|orange|vanilla|almond|rose|coffee|mint|cream|sea|food|egg) )?${thing})`;
/** Something else is wanted in the same breath. */
const wanted = `(?:[,.;:!]+|(?= (?:but|only|just)\\b)| -)(?=[^]*(?:\\d|\\binstead\\b|${asks}))`;

/** Something is asked behind it, or turned into another unit. */
const asked = `(?:${asks}|\\d[^]* (?:in|to|into) (?:g|gr|grams?|ml|oz|ounces|cups?|tbsp|tsp|c|f|celsius|fahrenheit|mm|cm|inch(?:es)?|h|hours|min|minutes)\\b)`;
const turned = `(?=[^]*?${asked})`;

const timer =
  "(?:(?:me )?(?:a|an|the|any|another|one) )?(?:timers?|alarms?|countdown|clock)(?: for (?:it|that|this|them|me))?";

const filling = "(?:curd|jam|ganache|buttercream|caramel|compote|marmalade|cent(?:re|er)|ring|filling)";
const noFilling = `(?:no|without)(?: the| any| more)? (?:[a-z]+ )?${filling}${tail}`;
/** Macarons are to be filled, or filling made for them. */
const fills = (text: string): boolean => /\bhow (?:many|much|far)\b/.test(text) && /fill|mac/.test(text);

export const notWanted = (): readonly Phrase[] => [
  // "last saturday, i mean": what is meant, in place of what was said
  {
    marks: [" i mean"],
    from: /^((?:(?:the|on|at|from|no|sorry),? )*(?:\d|last |next |this |yesterday|today|tomorrow|(?:mon|tues|wednes|thurs|fri|satur|sun)day|(?:jan|febr)uary|march|april|may |june|july|august|(?:sept|nov|dec)ember|october)[\w.:'% -]{0,24}?),? i mean(?:t)?[.!?]*$/g,
    to: "i meant $1",
  },
  // "i forgot the salt, flavor for 230 g buttercream": told, where something else is asked for behind it
  {
    marks: ["forgot"],
    from: /^(?:(?:oh|damn|no|argh|ugh|sorry|so|and),? )*(?:i|we) (?:totally |just |completely )?forgot (?:to (?:add|put in|put) )?(?:the |my |any |all the )?([a-z]+(?: [a-z]+)?)(?: in it| in there| this time| again)?[,.;:!]+ ?(?=.*\b(?:flavou?r|flavou?ring|extract|paste|zest|powder|how much (?!(?:do|should|for|in|of (?:it|that))\b))\b.*\d)(?!.*\b\1\b)/g,
    to: "",
  },
  // "set 30 min rest, no wait not yet, first whats 300 f in c"
  {
    marks: [" not yet"],
    from: /^.{3,80}?,? (?:(?:oh|no|hang on|hold on|wait|actually|sorry),? )+not yet,? (?:(?:first|tell me|just) )*(?=(?:how|what|whats|what's|which|when|why)\b)/g,
    to: "",
  },
  // "36 hours is how many days, dont set anything"
  {
    marks: ["set anything", "start anything", "set one", "start one"],
    from: /[,.;] (?:but |and |so |please )*(?:do not|don'?t|no need to) (?:set|start) (?:anything|one)(?: (?:please|pls|yet|now))*[.!]*$/g,
    to: "?",
  },
  // "no need for a timer, how long do the shells rest"
  {
    marks: ["timer", "alarm", "countdown", "clock"],
    from: new RegExp(
      `${start}(?:(?:(?:do not|don'?t|not|no need to) (?:set|setting|start|starting|run|put on|make|bother with)|${notAsked}|without|not|no) )(?:set |setting |start |starting )?${timer}${tail}(?:[,.;:!]+ ?| -+ | but | only | just | )(?:(?:first|just|only|tell me)(?: of all)?,? )*(?!to\\b|is\\b|was\\b|has\\b)${turned}`,
      "g",
    ),
    to: "",
  },
  // "how long do shells rest, don't start a timer"
  {
    marks: ["timer", "alarm", "countdown"],
    from: new RegExp(
      `(?<=${asked}[^]*?)[,.;!?]? (?:and |but |so |please )*(?:i )?(?:(?:do not|don'?t|not|no need to) (?:set|setting|start|starting|run|put on|make|bother with)|${notAsked}|without|no) (?:set |setting |start |starting )?${timer}${tail}(?:,? (?:and |but )?(?:just|only) (?:(?:give me|tell me|want|the|a) )*(?:numbers?|answer|sum|figure|result|hours|minutes|time))?[.!?]*$`,
      "g",
    ),
    to: "?",
  },
  // "no rest today so only start the bake timer": told, and the order behind it
  {
    marks: ["timer"],
    from: /^((?:(?:ok|okay|so|and|well|right),? )*)(?:no|skipping(?: the)?|not|without(?: the| a)?|i'?m skipping(?: the)?|i skip(?: the)?) (?:rest|resting|bake|baking|cooling|maturing)(?: (?:today|this time|for (?:these|them|this batch|now)|tonight|now|needed|at all))*[,.;:-]? ?(?:so |and |then )?(?:just |only |please )*(?=(?:start|set|run|put|begin)\b.*\btimer)/g,
    to: "$1",
  },
  // "tray 2 goes in later, no timer for that": told, and nothing to time
  {
    marks: [" no timer", "timer for that", "timer for it", "timer for those"],
    from: /^(?!.*(?:\d ?(?:min|h|sec)|\?|\b(?:how|what|when|set|start)\b)).*[,.;] (?:so |and |but )?no timers? (?:needed |wanted )?(?:for|on) (?:that|it|this|those|them)(?: one)?(?: (?:yet|please|pls|though|now))*[.!]*$/g,
    to: "ok",
  },
  // "no timer, log: 24 macarons, rested 30 min": what is ordered stands behind it
  {
    marks: ["no timer", "no alarm"],
    from: /^(?:(?:ok|okay|so|and|please),? )*(?:(?:set |start |need |want )?no (?:timers?|alarms?)|without (?:an? )?(?:timers?|alarms?))(?: (?:needed|wanted|please|pls|today|now|this time))*[,.;:-]+ ?(?:just |only |please )*(?=(?:log|note|save|write|record|put|jot|plan|label|price|scale|split|weigh)\b)/g,
    to: "",
  },
  // "set no timer, rest was 30 min and bake 14 min": told, and nothing to time
  {
    marks: ["no timer", "no alarm"],
    from: /^(?!.*(?:\?|\b(?:how|what|whats|when|which|set (?!no\b)|start (?!no\b)|remind|but)\b))(?:(?:ok|okay|so|and|please),? )*(?:set |start |need |want )?no (?:timers?|alarms?)(?: (?:needed|wanted|please|pls|today|now|this time))*[,.;:-]+ ?(?=.*\b(?:was|were|took|rested|baked|cooled|dried|chilled|did|had)\b).*$/g,
    to: "ok",
  },
  // "don't want another number, what rule was that"
  {
    marks: ["number", "figure", "sums", "maths"],
    from: /(?:(?<=^|[,.;:!?-] ?)|[,.;:!-]? )(?:(?:and|but|so|please|just) )*(?:i )?(?:(?:do not|don'?t) (?:want|need|give me)|no need (?:for|of)|not|no|without|never mind) (?:any |another |a |more |new |other |the |me )*(?:numbers?|figures?|sums)(?: (?:again|this time|please|pls|now|thanks))*(?:[,.;:!] ?| - |$| but | only | just )/g,
    to: (...found) => (asksWhy.test(String(found.at(-1))) ? ", " : String(found[0])),
  },
  {
    marks: [", "],
    from: /(?<=\brule .*), $/g,
    to: "",
  },
  // "i don't need salt this time only vanilla extract": the turn goes on with what is wanted
  {
    marks: ["n't ", "nt ", "not ", "no need", "never", "forget", "leave ", "skip "],
    from: new RegExp(`${start}${refusing} (?:any |the |my |more )?${named}${tail}${wanted}`, "g"),
    to: "no $1,",
  },
  // "vanilla extract for 340 g, don't bother with salt"
  {
    marks: ["n't ", "nt ", "not ", "no need", "never", "forget", "leave ", "skip "],
    from: new RegExp(
      `(?<=\\d[^]*[,.;:!-] ?)${start}${refusing} (?:any |the |my |more )?${named}${tail}[.!]*$`,
      "g",
    ),
    to: "no $1",
  },
  // "forget the 12 min timer, set 15 min"
  {
    marks: ["timer"],
    from: /^((?:(?:no|ok|oh|actually|so|and|please),? )*)(?:forget(?: about)?|never ?mind|scrap|ditch|drop|skip) ((?:the|that|my) (?:\d+ ?(?:min\w*|h|hours?|sec\w*) )(?:\w+ )?timer)/g,
    to: "$1cancel $2",
  },
  // "don't set 10 min, set 12": what isn't meant, before what is
  {
    marks: ["n't ", "nt ", "not "],
    from: /(?<=^|[,.;:!] ?|\b(?:and|so|no|ok|please) )(?:i )?(?:do not|don'?t) (?:set|make|do|use|put|take|want|need) (?:it (?:to |for )?|a |the |for |me )*\d[\d.,]*(?:\.\d+)? ?(?:g|grams?|kg|oz|min|mins|minutes|hours?|h|%|percent|c|f|macarons|macs|shells|trays)?(?:,| -| but)+ ?(?=(?:set |make |do |use |put |take |want |need |only |just |it |to |for |a |i |only )*\d)/g,
    to: "",
  },
  // "vanilla extract for 340 g, leave the salt out", "..., salt's not needed"
  {
    marks: [" out", "needed", "wanted", "required", "necessary"],
    from: new RegExp(
      `(?<=[a-z0-9][,.;:!-]? )(?:(?:and|but|so|please|just) )*(?:(?<!\\b(?:i|we|you|to) )leave (?:the |any )?${named} out|(?:the )?${named}(?:s|'s| is| are|'re)? (?:not|isn'?t|aren'?t|never) (?:needed|wanted|required|necessary))${tail}[.!]*$`,
      "g",
    ),
    to: (_, out, isNot) => `no ${out ?? String(isNot).replace(/(?<=[^s])s$/, "")}`,
  },
  // "leave the salt out, ..."
  {
    marks: [" out"],
    from: new RegExp(`${start}leave (?:the |any )?${named} out${tail},?${wanted}`, "g"),
    to: "no $1,",
  },
  // "no curd just 200 g buttercream, how many can i fill": one filling alone; "no ganache, 30" may be another order
  {
    marks: ["no ", "without "],
    only: fills,
    from: new RegExp(
      `(?<=^|[,.;:] ?|\\b(?:so|and|but) )${noFilling}[,.;:]? ?(?:(?:so|and|but),? )?(?=(?:(?:just|only|all|it'?s|i'?ve|i have|there'?s)[^]* |\\d[\\d.]* ?(?:g|gr|grams|oz) (?:of )?(?:the )?)${filling}\\b)`,
      "g",
    ),
    to: "",
  },
  // "45 macs, no ganache, just buttercream", "no ganache left, ..."
  {
    marks: ["no ", "without "],
    only: fills,
    from: new RegExp(`(?:(?<=[a-z0-9][,.;:] ?)${noFilling}|(?<=^)${noFilling} left)(?=[,.;:?]|$)`, "g"),
    to: "",
  },
];
