/** What is told of somebody: how old, how tall, how good. */
import { people } from "../../../../data/words/people.ts";
import { praised, somebody, somebodyWords } from "../../../../data/words/told-beside.ts";
import { bare, clauseEnd, number, spoken, whole } from "./pieces.ts";
import type { ToldBeside } from "./told-beside.ts";

/** "he is", "my son turns", "shes nearly". */
const becomes =
  "(?:'?s| is|(?<=twins) are| was| will be| would be| would have been| just| only| nearly| almost| already| about| about to be| going to be| gonna be| turning| turns?| turned| hits?| reaches| reached| has reached)";

export const peopleTold: readonly ToldBeside[] = [
  // "my 2 year old oven", "a 10 year old recipe"
  {
    is: "how old it is",
    marks: ["year", "yr"],
    said: new RegExp(
      `\\b(?:a |an )?${spoken}[- ]?(?:years?|yrs?)[- ]olds? (?=(?:fan |gas |electric |cook)?(?:ovens?|mixers?|scales?|books?|cards?|recipes?|machines?|processor|bottles?|jars?)\\b)`,
      "g",
    ),
    leaves: "old ",
    asTyped: true,
    unless: ["words", "keeping"],
  },
  // "my 7 year old", "a 5yo", "two 8 year olds"
  {
    is: "an age",
    marks: ["year", "yr", "yo", "y/o", "y.o", "yro"],
    said: new RegExp(
      `\\b(?:an? |(?=${spoken}))${spoken}(?:[- ]and[- ]a[- ]half)?[- ]?(?:(?:years?|yrs?|yeer|yaer)[- ]?olds?|yos?|y[/.]o\\.?|yrolds?)(?![a-z])(?! (?:macarons?|shells?|whites|batter|ganache|buttercream|filling|paste|extract|flavou?r|vanilla|cream|butter|chocolate))`,
      "g",
    ),
    leaves: "child",
    asTyped: true,
    unless: ["words"],
  },
  {
    is: "an age",
    marks: ["aged ", "age "],
    said: new RegExp(
      `\\bage[ds]? (?:of )?${spoken}(?:(?:,| and| to| ?-) ?${spoken})*${bare}(?: months?| years?)?`,
      "g",
    ),
    unless: ["words"],
  },
  // "he turns 8 on tuesday", "my granny is 91", "the twins are 4"
  {
    is: "an age",
    marks: [" is ", "s ", "turn", " are ", " be "],
    words: somebodyWords,
    said: new RegExp(
      `\\b(${somebody})(?:${becomes})+ ${spoken}(?: years?(?: old)?| yrs?(?: old)?)?${whole}(?: (?:today|tomorrow|now|soon|already|(?:on |this |next )(?:mon|tues|wednes|thurs|fri|satur|sun)day|(?:next|this|last) (?:week|month|year)|in (?:january|february|march|april|may|june|july|august|september|october|november|december)))*${clauseEnd}`,
      "g",
    ),
    leaves: "$1",
    unless: ["words"],
  },
  // "my niece (12)", "mum, 73, asks"
  {
    is: "an age",
    marks: ["(", ","],
    words: somebodyWords,
    said: new RegExp(
      `(?<=\\b${somebody}) ?(?:\\( ?\\d{1,2}(?: ?(?:yo|y\\/o|years?(?: old)?))? ?\\)|, ?\\d{1,2},(?= (?:asks?|wants?|says|helps?|is|has|loves|made|piped|just|and (?:she|he))\\b))`,
      "g",
    ),
    leaves: " ",
    unless: ["words"],
  },
  // "lemon flavor for that? and my son is 38.5 should i worry"
  {
    is: "how warm somebody is",
    marks: ["worr", "doctor", "fever", "normal", "poorly", "ill", "give h"],
    words: somebodyWords,
    said: new RegExp(
      `([.?!,;]) ?(?:(?:and|but|also|oh|btw|by the way),? )*${somebody}(?:${becomes})+(?: at| got| running)* (?:3[5-9]|4[0-2])(?:[.,]\\d)?(?: ?(?:c|degrees))?,? [^.?!;\\d]{3,50}[?.!]*$`,
      "g",
    ),
    leaves: "$1",
    unless: ["words"],
  },
  // "her 40th birthday", "birthday number 7"
  {
    is: "a birthday",
    marks: ["birthday", "bday", "anniversary", "jubilee"],
    said: /\b\d{1,3}(?:st|nd|rd|th) (?=(?:wedding )?(?:birthday|bday|anniversary|jubilee)\b)/g,
    unless: ["words"],
  },
  // "its my 50th", "for mums 70th on sunday"
  {
    is: "a birthday",
    marks: ["th", "st", "nd", "rd"],
    said: /(?<=\b(?:her|his|my|our|their|(?:mum|mom|dad|nan|gran|granny|grandma|grandad|grandpa|aunt|uncle|sister|brother|friend|boss)'?s)) [1-9]\d(?:st|nd|rd|th)(?= ?(?:[,.;:!?)-]|$)| (?:and|so|on|this|next|today|tomorrow|party|bash|do|tonight)\b)/g,
    leaves: " birthday",
    unless: ["words"],
  },
  // "im 1.80 m tall", "hes 6 ft 2"
  {
    is: "a height",
    marks: ["tall", "ft", "foot", "feet", "cm"],
    said: new RegExp(
      `\\b(?:${somebody}|i|im|i'm|hes|shes)(?:'?s| is| am|'m)? (?:only |just |about |nearly |over |under )?(?:${number} ?(?:m|cm|ft|feet|foot|metres?|meters?)(?: ?\\d{1,2}(?: ?(?:in|inch|inches))?)? tall|(?:1[2-9]\\d|20\\d) ?cm(?= ?(?:[,.;:!?)]|$)| (?:and|so|but)\\b)|\\d ?(?:ft|foot|feet)(?: ?\\d{1,2}(?: ?(?:in|inch|inches))?)?)(?![.,]?\\d| ?[a-z]*(?:macarons?|shells?))\\b`,
      "g",
    ),
    unless: ["words"],
  },
  // "24 macarons for 30 guests"
  {
    is: "how many come",
    marks: ["for ", "feeding ", "serving "],
    words: people,
    said: new RegExp(
      `,? ?\\b(?:for|feeding|serving|theres|there are) (?:about |around |some |my |all |the )*${spoken} (?:(?!macarons|shells)[a-z]+ )?(?:${[...people].join("|")})(?: (?:on|this|next|coming|are coming|tomorrow|tonight|today) ?(?:mon|tues|wednes|thurs|fri|satur|sun)?(?:day)?)*${clauseEnd}`,
      "g",
    ),
    unless: ["words", "each"],
    beside: /\d+ ?(?:[a-z]+ )?(?:macarons?|macs|macaroons?|shells?|g|gr|grams?|oz|kg|trays?)\b/,
  },
  // "ta, youre a 10", "100 points to you"
  {
    is: "a mark for the answer",
    marks: ["a 1", "an 1", "10", "11", "points", "stars", "give you", "rate you"],
    said: new RegExp(
      `\\b${praised} (?:solid |perfect |total |clear )?(?:10|11|100|ten|eleven)(?: ?(?:/|out of) ?(?:10|100|ten))?(?: (?:from me|in my book|for me))?(?= ?(?:[.,!;)]|$))|^(?:i'?d|i would|i'?ll|i will|ill) (?:give|rate) (?:you|u|that answer) (?:an? )?(?:\\d{1,3})(?: ?(?:/|out of) ?\\d+)?(?: stars| points| marks)?(?= ?[.!]*$)|^100 ?% (?=(?:agree|agreed|right|true|yes|sure|correct|perfect|great|with you)\\b)|^(?:(?:thanks|ta|thx|cheers|ok|great|nice|lovely),? )*(?:10|11|100|ten|full|5|five) ?(?:(?:/|out of) ?(?:10|100|5|ten|five)|points|stars|marks)(?:,? (?:to|for|from) (?:you|that|me)|,? would \\w+ again|,? (?:again|thanks|thank you))*(?= ?[.!]*$)`,
      "g",
    ),
    leaves: "thanks",
    unless: ["words"],
  },
];
