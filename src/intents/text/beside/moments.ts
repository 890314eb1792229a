/** Hours, heats and jobs that are told beside a question: "party is at 5", "its 19 degrees in here", "12 trays done". */
import { events, eventWords, somebody } from "../../../../data/words/told-beside.ts";
import { clauseEnd, clauseStart, hour, number, spoken, whole } from "./pieces.ts";
import type { ToldBeside } from "./told-beside.ts";

const degrees = `${number} ?(?:°|degrees?|deg|c\\b|f\\b|celsius\\b|fahrenheit\\b)(?: ?(?:c|f|celsius|fahrenheit)\\b)?`;
const here =
  "(?:in here|in (?:this|our|my) (?:kitchen|room|house|flat)|in the (?:kitchen|room|house|flat)|inside|outside|out there|out|at my place|here)";
const about = "(?: (?:at|about|around|only|just|already|a|like|over|under|nearly|still|roughly))*";
/** What is asked has an amount of its own. */
const measured = /\d|\b(?:how much|how many)\b/;
const amountAsked =
  /\b(?:how (?:much|many)|number of|grams|what to weigh|to make for|to fill|for filling|filling (?:to make )?for|batter for|buttercream for|flavou?r)\b/;

/** When they are to be ready is said, to the hour, and when to start is asked. */
const planned =
  /^(?=[\s\S]*\b(?:when|what time|start|begin)\b)(?=[\s\S]*\b(?:ready|by|for)\b[^.?!;]{0,24}?(?:\d ?(?:am|pm|o'?clock)|\d[:.]\d\d|\d in the (?:morning|afternoon|evening)|noon|midday))/;
const came = "(?:(?!(?:how|what|ready|for|when|want|wants|need|i)\\b)[a-z']+ ){0,4}?";
/** A weight, and no other heat that is asked about. */
const weighedCold =
  /^(?![\s\S]*\b(?:fan|hotter|cooler|convert|gas|fahrenheit|celsius|in f|temp\w*|heat)\b)[\s\S]*\d ?(?:g|gr|grams?|kg|oz)\b/;
const weighed = /\d ?(?:g|gr|grams?|kg|oz)\b/;

export const moments: readonly ToldBeside[] = [
  // "24 macarons ready sunday 2 pm, guests only turn up at 4, when do i start"
  {
    is: "another hour",
    marks: [" at ", " from ", " by ", " till ", " until ", " before "],
    words: eventWords,
    said: new RegExp(
      `(?:${clauseStart}| (?=although |though |while ))(?:(?:although|though|because|since|as|while|the|my|our|her|his|a|but|and) )*(?:[a-z]+ )??(?:${events}|${somebody}|kids|folks|friends|people|everyone|everybody|they|shop|store|bakery|library|post office)(?:'?s|'?re| is| are)? ${came}(?:at|from|by|till|until|before|after) ${hour}(?: (?:today|tonight|tomorrow|sharp|though|anyway))*${clauseEnd}`,
      "g",
    ),
    unless: ["words"],
    beside: planned,
  },
  // "..., i leave for church at 9, ..."
  {
    is: "another hour",
    marks: ["leave for ", "go to ", "pick up ", "fetch ", "off to "],
    said: new RegExp(
      `${clauseStart}(?:(?:and|but|though|i|we|i'?m|have|must|to|am) )*(?:leave for|go to|pick up|fetch|off to) (?:[a-z]+ ){1,4}?at ${hour}${clauseEnd}`,
      "g",
    ),
    unless: ["words"],
    beside: new RegExp(`${planned.source}|^[^a-z]*(?:ty|thx|cheers|thanks|thank you|ok|right|bye)[^a-z]*$`),
  },
  // "300 g dark ganache for piping, oven's on at 150"
  {
    is: "what the oven is at",
    marks: ["oven", "preheat"],
    said: new RegExp(
      `(?:,|${clauseStart}) ?(?:(?:and|the|my|our|i|i've|ive|i'm|we've|we|got|have|with|already|just) )*(?:oven(?:'?s| is| was)?|preheated|preheating|heated)(?: (?:is|on|heating|preheating|heated|preheated|warming|hot|going|set|at|to|up|already|now|all))* 1[2-9]\\d(?: ?(?:°|c|degrees?|deg))?(?: ?c)?(?: (?:already|now))*${clauseEnd}`,
      "g",
    ),
    unless: ["words", "baking"],
    beside: weighedCold,
  },
  // "..., theres 24 people coming", "we're 24 people"
  {
    is: "how many come",
    marks: ["people", "guest", "folks", "of us", "visitors", "friends", "kids"],
    said: new RegExp(
      `(?:,|${clauseStart}) ?(?:(?:and|with|theres|there's|there are|there is|there'll be|we're|were|we are|we have|i have|i've got|i'?m|i am|having|expecting|got|about|around|so) )*${spoken} (?:people|guests|folks|of us|visitors|friends|kids)(?: (?:are|is|will|be|coming|come|on|their|the|way|over|here|tonight|today|tomorrow|arriving|invited|later))*${clauseEnd}`,
      "g",
    ),
    unless: ["words", "each"],
    beside: weighed,
  },
  // "its 19 degrees in here", "26 c in the kitchen"
  {
    is: "how warm the room is",
    marks: [" in here", " in the ", " outside", " inside", " here", " out"],
    said: new RegExp(
      `(?:,|${clauseStart}) ?(?:(?:and|but|its|it's|it is|theres|there's|thats|with|we have|we've got|(?:the |my )?thermometer (?:says|reads|shows|is at)) )*(?:${about} )?${degrees} ${here}(?: (?:today|now|already))*${clauseEnd}`,
      "g",
    ),
    unless: ["words", "heat", "out"],
    beside: measured,
  },
  // "kitchen is at 24 c", "room temp 23"
  {
    is: "how warm the room is",
    marks: ["room", "kitchen", "outside"],
    said: new RegExp(
      `(?:,|${clauseStart}) ?(?:(?:and|but|the|my|our) )*(?:room(?:'?s)?(?: temp(?:erature)?)?|kitchen(?:'?s)?(?: temp(?:erature)?)?|temp(?:erature)? in (?:here|the kitchen|the room))(?: is| was| has|:|${about})* ?(?:${degrees}|${number}${whole})(?: (?:today|now|in here))*${clauseEnd}`,
      "g",
    ),
    unless: ["words", "heat", "out"],
    beside: measured,
  },
  // "outside its minus 4, inside 19"
  {
    is: "how warm the room is",
    marks: ["outside", "inside"],
    said: new RegExp(
      `${clauseStart}(?:(?:and|but) )*(?:outside|inside|indoors|outdoors)(?: its| it's| it is|'?s| is)?${about} ?(?:minus |- ?)?(?:${degrees}|${number}${whole})${clauseEnd}`,
      "g",
    ),
    unless: ["words", "heat", "out"],
    beside: measured,
  },
  // "party is at 5", "guests come at 6", "school run at 3.15"
  {
    is: "another hour",
    marks: [" at ", " from ", " by ", " till ", " until "],
    words: eventWords,
    said: new RegExp(
      `${clauseStart}(?:(?:the|my|our|her|his|a|with|kids?'?s?) )*(?:[a-z]+ )??(?:${events}|${somebody}|kids|friends|people|everyone|they)(?:'?s|'?re)?(?: (?!(?:how|what|ready|for|want|wants|need)\\b)[a-z]+){0,3}? (?:at|from|by|till|until) ${hour}(?: (?:today|tonight|tomorrow|sharp|on (?:mon|tues|wednes|thurs|fri|satur|sun)day))*${clauseEnd}`,
      "g",
    ),
    unless: ["words", "clock"],
    beside: amountAsked,
  },
  // "its nearly 11 at night", "its 8 am"
  {
    is: "what time it is",
    marks: [" at night", " in the ", "am", "pm", "clock", "midnight"],
    said: new RegExp(
      `${clauseStart}(?:its|it's|it is)(?: (?:nearly|almost|already|gone|past|only|just|about|half past|quarter past|quarter to))* \\d{1,2}(?:[:.]\\d\\d)?(?: ?(?:am|pm|o'?clock))?(?: (?:at night|in the (?:morning|evening|night|afternoon)|already|and (?=i\\b|im\\b)))+${clauseEnd}`,
      "g",
    ),
    unless: ["words", "clock"],
    beside: amountAsked,
  },
  // "been baking 15 years"
  {
    is: "how long it has been",
    marks: [" years", " yrs"],
    said: new RegExp(
      `(?:,|${clauseStart}) ?(?:(?:i've|ive|i|we've|weve|have|after|in|for|with|its|all|these) )*(?:been [a-z]+ing(?: (?:these|macarons|this|them|macs))?(?: for)?|after|in|for) (?:over |about |nearly |almost )?${spoken} (?:years?|yrs)(?: (?:of (?:this|baking|it|macarons)|now|already|straight))*${clauseEnd}`,
      "g",
    ),
    unless: ["words", "keeping"],
    beside: measured,
  },
  // "my phone has 12 percent left", "my oven has 8 programs"
  {
    is: "what a thing in the house has",
    marks: ["phone", "battery", "tablet", "laptop", "ipad", "oven has", "mixer has", "radio", "channel"],
    said: new RegExp(
      `${clauseStart}(?:(?:my|the|our|her|his|this|got|only) )*(?:(?:phones?|battery|batteries|tablet|laptop|ipad)(?:'?s)?(?: [a-z]+){0,3} ${number} ?(?:%|percent|per cent|pct)(?: (?:left|battery|charge|charged|only))*|(?:oven|mixer|scales?)(?:'s got| has| have)(?: got)? ${spoken} (?:programs?|programmes?|settings|speeds?|buttons|shelves|racks|levels|legs|feet))${clauseEnd}`,
      "g",
    ),
    unless: ["words"],
  },
  // "how much filling for 28 macarons, ready by 6"
  {
    is: "by when it is wanted",
    marks: [" by ", " for ", " at "],
    words: new Set("ready due needed wanted done finished door table collected picked delivered".split(" ")),
    said: new RegExp(
      `,? ?\\b(?:(?:to be|its|it's|they're|theyre|and|needs? to be|must be|all) )*(?:ready|due|needed|wanted|done|finished|out the door|on the table|collected|picked up|delivered) (?:by|at|for) ${hour}(?: (?:today|tonight|sharp))*${clauseEnd}`,
      "g",
    ),
    unless: ["words", "clock"],
    beside: amountAsked,
  },
  // "12 trays done, last job: ...", "6 boxes packed already"
  {
    is: "what is done already",
    marks: [
      "done",
      "cooling",
      "resting",
      "drying",
      "in the ",
      "baking",
      "down",
      "finished",
      "packed",
      "behind",
      "baked",
      "boxed",
      "sold",
      "out",
      "gone",
      "picked up",
      "delivered",
      "shipped",
      "in the b",
    ],
    words: new Set(
      "tray trays batch batches box boxes bowl bowls lot lots load loads round rounds job jobs order orders dozen".split(
        " ",
      ),
    ),
    said: new RegExp(
      `${clauseStart}(?:(?:ok|right|so|phew|and|got|ive|i've|we've|weve|the) )*${spoken} (?:dozen ?)?(?:trays?|batche?s?|box(?:es)?|bowls?|lots?|loads?|rounds?|jobs?|orders?|dozen|(?<=dozen ))(?: (?:of \\w+|are|is|were|all|now|already|in the oven and))*? ?(?:done|cooling(?: down)?|resting|drying|in the (?:oven|freezer|fridge)|baking|down|out the door|out|gone|picked up|delivered|shipped|in the bin|in the bag|finished|packed|behind (?:me|us)|boxed(?: up)?|sold|out of the way)(?: (?:already|now|and dusted|so far|today))*(?:,? ?(?:and )?(?:one|two|a few|\\d+) (?:more )?(?:to go|left))?(?:[,.;:!] ?| so | and )(?=[^?]*\\d)`,
      "g",
    ),
    unless: ["words", "counted"],
    beside: measured,
  },
  // "after 5 hours on my feet", "10 hours in"
  {
    is: "how long it has been",
    marks: [
      " on my feet",
      " of sleep",
      " of this",
      " of baking",
      " of standing",
      " in the kitchen",
      " no sleep",
      " on the go",
    ],
    said: new RegExp(
      `(?:,|${clauseStart}) ?(?:(?:after|on|with|its been|it's been|been|i've been|ive been|and|only|just) )*${spoken} ?(?:hours?|hrs?|days?|weeks?|minutes) (?:on my feet|of sleep|of this|of baking|of standing|in the kitchen|of no sleep|on the go)${clauseEnd}`,
      "g",
    ),
    unless: ["words", "clock"],
    beside: measured,
  },
  // "520 g of batter, rests 40 min, bakes at 150: number of macs?"
  {
    is: "how they are baked",
    marks: ["bake", "baking", "rest", "dries", "dry", "oven"],
    said: new RegExp(
      `,? ?(?:(?:and|then|i|we|they|theyre|they're|it|shells|which|my|the) )*\\b(?:(?:rests?|rested|resting|dry|dries|dried)(?: them| it)?(?: for)? ${number} ?(?:min|mins|minutes|m|h|hours?)|oven(?:'?s| is)? (?:at|on|set to|set at) 1[2-9]\\d(?: ?(?:°|c|degrees?|deg))?(?: ?c)?|(?:bakes?|baked|baking)(?: them| it| the shells)?(?: (?:at|on|for))? (?:1[2-9]\\d(?: ?(?:°|c|degrees?|deg))?(?: ?c)?(?: fan)?(?:,? (?:for )?\\d{1,2} ?(?:min|mins|minutes|m))?|\\d{1,2} ?(?:min|mins|minutes|m)(?: at 1[2-9]\\d(?: ?(?:°|c|degrees?|deg))?(?: ?c)?)?))(?![\\d.,]\\d|[a-z])`,
      "g",
    ),
    unless: ["words", "heat", "baking"],
    beside:
      /\d ?(?:g|grams?|kg|oz|macarons?|macs|shells?)\b[\s\S]*\b(?:how (?:much|many)|number of|what)\b|\b(?:how (?:much|many)|number of|what)\b[\s\S]*\d ?(?:g|grams?|kg|oz|macarons?|macs|shells?)\b/,
  },
];
