/** Weights, shares and prices asked for in a roundabout way, put plainly. */
import type { Phrase } from "./phrase.ts";
import { count } from "./spelt.ts";

const lead = "((?:(?:and|but|so|oh|ok|okay|right|now|also|then|well|please|just),? )*)";
const end = "(?= ?[?.!]?$)";
const grams = "\\d+(?:[.,]\\d+)? ?(?:g|grams?|kg|kilos?|oz|ounces?|lb|lbs|pounds?)\\b";
const base = "(?:buttercream|ganache|filling|batter|cream cheese (?:filling|frosting))";
const came =
  "(?:came|comes|come|weighed|weighs|weighing|coming|came out|comes out|worked out|amounts|amounted|turned out|scaled|tipped the scales?)(?: in)?(?: (?:to|at|as))?(?: be)?";
const share = "(\\d+(?:\\.\\d+)?) ?(?:%|per ?cent\\b)";
const money = "(?:[£$€]\\d+(?:\\.\\d+)?|\\d+(?:\\.\\d+)? ?(?:pounds?|quid|euros?|dollars?|gbp|eur|usd))";
const hours =
  "(?:an hour and a (?:half|quarter)|half an hour|(?:an|one|two|three|four|five|\\d+(?:\\.\\d+)?)(?: and a (?:half|quarter))? (?:hours?|hrs?)|\\d+(?:\\.\\d+)? ?(?:h|hrs?|hours?|min|mins|minutes))";
const each = "(?:an hour|per hour|/ ?h(?:our)?|hourly|the hour|an hr)";

export const roundaboutSums = (): readonly Phrase[] => [
  // "they want 48 by tomorrow. how much filling is that?": of macarons, what else
  {
    marks: [
      "want",
      "need",
      "order",
      "promised",
      " after ",
      "asked",
      "bring",
      "taking",
      "to take",
      "making",
      "to make",
      "doing",
    ],
    from: new RegExp(
      `\\b((?:wants?|wanted|needs?|needed|ordered|promised|after|asked (?:me |us )?for|bringing|to bring|taking|to take|making|to make|doing)(?: (?:them|me|us|her|him|you|about|around|at least|only|just|another|all of))* )(${count}|(?:two|three|four|five|six|seven|eight) dozen)(?= (?:for|by|on|in time|at|this|next|from me)\\b[^?\\d]{0,50}|[.,;!] )(?=[^\\d?]{0,150}\\bhow (?:much|many) (?:batter|filling|shells|trays|egg whites|whites|mix)\\b)(?![^?]{0,200}\\b(?:macarons?|macs|guests|people)\\b)`,
      "g",
    ),
    to: "$1$2 macarons",
  },
  // "there is a bowl of plain buttercream on my counter which came to 340 g. might i ask how much raspberry ..."
  {
    marks: [
      "came ",
      "come",
      "weighed",
      "weighs",
      "weighing",
      "coming",
      "worked out",
      "amount",
      "turned out",
      "scale",
    ],
    from: new RegExp(
      `^${lead}(?:there(?:'s| is| was|s)|i(?:'ve| have|ve)?(?: got)?|we(?:'ve| have)?(?: got)?|here(?:'s| is)|this is|standing here is|before me is|in front of me is) (?:(?:a|the|one|my) (?:\\w+ )?(?:bowl(?:ful)?|batch|tub|pot|lot|jug|basin|bag) of |some |my |the )?(?:(?:plain|lovely|fresh|nice|soft|unflavou?red|smooth) )*(${base})(?: (?:sitting|standing|waiting|ready|made|done|here))*(?: (?:on|in|by|beside) (?:my|the|our|a) \\w+(?: \\w+)?)?(?:,? (?:which|that|and it|and that|it)(?: all)?|,)? (?:has |just |only )?${came} (?:about |just |exactly |roughly )?(${grams})(?: on (?:the|my) scales?| exactly| in all| altogether| in total| all told)*(?:[.,;] (?:and |so )?|,? and |,? so )`,
      "g",
    ),
    to: "$1i have $3 of $2, ",
  },
  // "... would sooner have it in a ganache. what would the same weight of that want?"
  {
    marks: ["sooner ", "rather ", "prefer", " like "],
    from: new RegExp(
      `^${lead}(?:[^?.!\\d]{0,60}?\\b)?(?:would|'d|will|might|'ll) (?:much )?(?:sooner|rather|prefer(?: to)?|like(?: to)?) (?:have |see |eat |taste |make |use |do |put )?(?:it |that |them |this )?(?:in |into |with |as |to be )?(?:an? |the |some |my )?((?:(?:dark|milk|white)(?: chocolate)? )?(?:ganache|buttercream))(?: instead)?(?:[.,;!] (?:and |so |then )*(?:how much |what )(?:would|does|will|do|should|might) (?:the same (?:weight|amount|quantity)(?: of (?:that|it|ganache|buttercream))?|that|it|as much of that|the same)(?: (?:want|need|take|require|call for|get|be|ask for|come to))(?: then| instead| of flavou?r(?:ing)?)?)${end}`,
      "g",
    ),
    to: "$1what about the same weight of $2",
  },
  // "the reading group meets on monday and i promised them 30 macarons. could i have the weights for the shells?"
  {
    marks: ["macarons", "macs"],
    from: new RegExp(
      `^[^?!\\d]{0,120}?\\b(?:promised|owe|need|want|said|making|bringing|bring|make|asked (?:me )?for|ordered|like|after|expect(?:ing|s)?|wants?|offered|told|due)\\b[^?.!\\d;:]{0,30}? (${count}) (macarons|macs)(?: (?:from me|for it|for them|of me|each|in all|altogether|for (?:the|my|a) \\w+(?: \\w+)?|(?:for|on|by|this|next|this coming) (?:mon|tues|wednes|thurs|fri|satur|sun)day|tomorrow|(?:for|at|this|by) the weekend))*[.,;!] (?:so |and )*(?:(?:could|can|may|might) (?:i|you|we) (?:please |kindly )?(?:have|get|see|give me|show me|let me have|list|tell me|work out)|(?:give|show|tell|list) (?:me )?|what (?:are|would be|will be)|what's|i'd like|i would like|i need)(?: me)? ?(?:the |all the |my )?(?:shell )?(?:weights|amounts|quantities|ingredients|measures|grams|recipe|figures)(?: (?:of|for) (?:everything|each|all|what goes)(?: in| into)?)?(?: (?:for|in|of) (?:the|those|their|my|all the) (?:shells?|batter))?(?:,? (?:please|then|if you would|by weight|in grams))*${end}`,
      "g",
    ),
    to: (whole = "", number = "", what = "") =>
      /\bshells?\b|\bbatter\b|\brecipe\b|\bingredients\b/.test(whole) &&
      !/\bfilling\b|\bganache\b|\bcost|\bbuttercream/.test(whole)
        ? `shell weights for ${number} ${what}`
        : whole,
  },
  // "this makes far too much: 260 g cream cheese, 90 g icing sugar and 50 g butter. could i ask you to cut it in half?"
  {
    marks: [" half", "halve", "double", "treble", "triple", "third", "quarter"],
    from: new RegExp(
      `^(?:[^:?.\\d]{0,80}[:.] )?((?:${grams} (?:of )?[a-z]+(?: [a-z]+){0,2}(?:, and |, | and |; | plus )){1,8}${grams} (?:of )?[a-z]+(?: [a-z]+){0,2})[.;!] (?:so |and |now |please )*(?:(?:could|can|would|will|might|may) (?:i|you|we) (?:please |kindly |just )?(?:(?:ask|trouble|beg|get) you to )?|i(?:'d| would) like (?:you to |to )?|please |i(?:'d| would) be (?:glad|grateful|obliged) if you (?:would|could|might) |let's |how (?:do|would) i )?(?:(?:cut|bring|take|scale|reduce|get|chop|divide|knock) (?:it|that|this|them|the lot|everything|all of it|those)(?: (?:all|down|back))* ?(?:in|to|by|into) (?:a |one )?(half|third|quarter)|(halve|double|treble|triple) (?:it|that|this|them|the lot|everything|all of it|those)|(?:make|give me|have|do) (half|double) (?:of )?(?:it|that|this|the lot|the amount|as much)?)(?: (?:for me|all|please|if you would|then))*${end}`,
      "g",
    ),
    to: (whole = "", list = "", part = "", factor = "", other = "") => {
      // "cut it by a third" leaves two thirds
      if (/ by (?:a |one )?(?:third|quarter)/.test(whole)) return whole;
      const how = part || factor || other;
      const said: Record<string, string> = { half: "halve ", third: "a third of ", quarter: "a quarter of " };
      return `${said[how] ?? `${how} `}${list}`;
    },
  },
  // "the book gives the oven as 375 f, which means nothing to me. what would it be in celsius?"
  {
    marks: [
      "which means",
      "which is",
      "which tells",
      "which says",
      "means nothing",
      "greek to",
      "no good to",
      "no use to",
      "no idea what",
    ],
    from: /,? (?:(?:which|that|and that|and it|but that|but it) (?:means|is|tells|says|conveys|might as well be|may as well be) (?:absolutely |very |quite |all |just |pretty |of )*(?:nothing|little|greek|double dutch|gibberish|no (?:use|good|help)|useless|not much use|meaningless|a mystery|foreign)(?: (?:to|for) (?:me|us))?(?: at all| whatsoever| i'm afraid)?|(?:which|and) i (?:can't|cannot|don't|do not|have no idea how to|couldn't) (?:read|understand|think in|follow|picture|make sense of|work with|use))(?=[.,;!?])/g,
    to: "",
  },
  // "... speaks of 12 oz, which is the buttercream, i believe. what is 12 oz in grams?": told, then asked
  {
    marks: [
      " in grams",
      " in g",
      " in oz",
      " in ounces",
      " in ml",
      " in cups",
      " in celsius",
      " in c",
      " in kg",
      " to grams",
    ],
    from: new RegExp(
      `^[^?!\\d]{0,90}?\\b(\\d+(?:[.,/]\\d+)? ?(?:oz|ounces?|lb|lbs|pounds?|g|grams?|kg))(?: (?:of )?[^?!.\\d]{0,70})?(?:,[^?!.\\d]{0,70})?[.;!] (?=(?:so |and |now |please )*(?:(?:what|how much) (?:is|are|would|does|makes?)|what's|whats|(?:could|can|would) you (?:tell me|convert|work out)(?: what)?|convert|tell me what|turn|put) (?:the )?\\1(?: be| come to| is| comes to| makes)? (?:in|to|into|as) [a-z]+(?:,? (?:please|then|if you would))*${end.replace("(?=", "(?:")})`,
      "g",
    ),
    to: "",
  },
  // "could you remind me what two fifths of 350 comes to?": asked, and nobody is to be reminded
  {
    marks: ["remind me", "my memory", "recall", "remember"],
    from: new RegExp(
      `^${lead}(?:(?:could|can|would|will|do) you )?(?:please |kindly |just )?(?:remind me(?: again)?|(?:jog|refresh) my memory(?: as to| about| on)?|(?:happen to )?(?:recall|remember)|i (?:can't|cannot|never can|can never|don't) (?:recall|remember)),? (?=what (?:is )?(?:\\d|half|an? (?:third|quarter|fifth|sixth|eighth|tenth)|(?:one|two|three|four|five|seven|nine|ten)[ -]))`,
      "g",
    ),
    to: "",
  },
  // "take 15 percent off 340", "340 minus 15 percent", "knock 15 % off of 340": what is left of it
  {
    marks: ["percent", "per cent", "%"],
    from: new RegExp(
      `^${lead}(?:(?:what(?:'s| is|s)|how much is|work out|calculate|tell me|can you|could you|would you|if i|whats|please|i need to|i want to|now|we|i) )*(?:(?:take|taking|knock|knocking|subtract|deduct|cut|shave|get|lose|lop|with|minus|less) )?${share} (?:off(?: of)?|from|away from|less than|taken off|taken from|knocked off|off from|under|below) (\\d+(?:[.,]\\d+)?)( ?(?:g|grams?|ml|oz))?(?: (?:is|what|to|leaves|what's|makes|would be|comes|how much|please|then|be|left|is what|what is left))*${end}`,
      "g",
    ),
    to: (whole = "", before = "", percent = "", number = "", unit = "") =>
      off(whole, before, percent, number, unit),
  },
  {
    marks: ["percent", "per cent", "%"],
    from: new RegExp(
      `^${lead}(?:(?:what(?:'s| is|s)|how much is|work out|calculate|tell me|whats|please|now) )*(\\d+(?:[.,]\\d+)?)( ?(?:g|grams?|ml|oz))?,? (?:(?<=\\d{3}[ g]*)-|minus|less|take away|takeaway|take off|reduced by|lowered by|cut by|down by|subtract|knock off|drop by|dropped by|decreased by) ${share}(?: (?:taken |knocked |lopped |cut )?(?:off|less|of it|away))?(?: (?:is|what|to|leaves|what's|makes|would be|comes|how much|please|then|be|left))*${end}`,
      "g",
    ),
    to: (whole = "", before = "", number = "", unit = "", percent = "") =>
      off(whole, before, percent, number, unit),
  },
  {
    marks: ["percent", "per cent", "%"],
    from: new RegExp(
      `^${lead}(?:(?:what(?:'s| is|s)|how much is|work out|calculate|tell me|whats|please|now) )*(?:add ${share} (?:to|on to|onto|on) (\\d+(?:[.,]\\d+)?)( ?(?:g|grams?|ml|oz))?|(\\d+(?:[.,]\\d+)?)( ?(?:g|grams?|ml|oz))?,? (?:\\+|plus|and another|increased by|raised by|up by|add|with another) ${share}(?: (?:more|on top|extra|added))?)(?: (?:is|what|to|leaves|what's|makes|would be|comes|how much|please|then|be))*${end}`,
      "g",
    ),
    to: (
      whole = "",
      before = "",
      share1 = "",
      number1 = "",
      unit1 = "",
      number2 = "",
      unit2 = "",
      share2 = "",
    ) => more(whole, before, share1 || share2, number1 || number2, unit1 || unit2),
  },
  // "i spent £12 on ingredients and £3 on packaging, and put in an hour and a half of work at £14 an hour. what price ..."
  {
    marks: ["£", "$", "€", "pounds", "quid", "euros", "dollars"],
    from: new RegExp(
      `^${lead}(?:(?:i|we)(?:'ve| have)? ?(?:spent|paid|laid out|put out|forked out)|it cost(?: me)?|that's|thats) (${money}) (?:on|for|in) (?:the |my )?(ingredients|materials|stuff|food)(?:,| and|, and)? (?:(?:i |another |a further |plus |spent |paid )*(${money}) (?:on|for|in) (?:the |my )?(packaging|boxes|ribbons?|packing|labels))?(?:,| and|, and|, plus| plus|[.;])? (?:(?:i|we)(?:'ve| have)? )?(?:then )?(?:put in|worked|spent|did|gave it|work for|was at it for|plus|it took(?: me)?|took(?: me)?|needed|invested)? ?(${hours})(?: of (?:work|my time|labou?r|time|baking)| work| labou?r| of it)?,? (?:(?:which|and|that) (?:i|we) (?:charge|count|value|reckon|price|pay myself)(?: (?:it|that))? )?(?:at|for|@|paid at|charged at) (${money}) ${each}[.,;!]`,
      "g",
    ),
    to: (_whole, before = "", food = "", _food = "", box = "", _box = "", time = "", wage = "") =>
      `${before}ingredients ${food}${box ? `, packaging ${box}` : ""}, ${time
        .replace(/^an hour and a half$/, "1.5 hours")
        .replace(/^an hour and a quarter$/, "1.25 hours")
        .replace(/^half an hour$/, "0.5 hours")} of work at ${wage} an hour.`,
  },
  // "what price would leave me a 25 per cent margin?"
  {
    marks: ["margin", "markup", "mark-up"],
    from: /(?:what|which) (?:price|figure|charge) (?:would|will|should|do|does|might|is it that|must i ask to) ?(?:i )?(?:leave|leaves|give|gives|get|bring|earn|yield|allow|make|land|net)(?: me| us)?(?: with| out with)? (?:a |an )?(\d+(?:\.\d+)?) ?(?:%|per ?cent) (margin|markup|mark-up)/g,
    to: "what price for a $1 percent $2",
  },
];

/** "340 g less 10 percent" behind a bowl is the bowl anew: only a question or an order makes a sum of a weight. */
const asked = /\b(?:what|whats|how much|work out|calculate|tell me|take|knock|subtract|deduct)\b/;

/** What is left of a number of which a share is taken off: a share of it that can be worked out. */
function off(whole: string, before: string, percent: string, number: string, unit: string): string {
  const left = 100 - Number(percent);
  if (left <= 0) return whole;
  if (unit && !asked.test(whole)) {
    const grams = (left / 100) * Number(number.replace(",", "."));
    return `${before}${Number(grams.toPrecision(12))}${unit}`;
  }
  return `${before}${Number(left.toPrecision(12))} percent of ${number}${unit}`;
}

/** A share on top. Below ten percent "add 4 percent to 300" may be so much flavor. */
function more(whole: string, before: string, percent: string, number: string, unit: string): string {
  if (Number(percent) < 10 || (unit && !/\bwhat|how much|work out|calculate/.test(whole))) return whole;
  return `${before}${Number((100 + Number(percent)).toPrecision(12))} percent of ${number}${unit}`;
}
