/** Splits asked twice over: "split 500 g in five, how much for one fifth" asks for what each part gets. */
import type { Phrase } from "./phrase.ts";

const ways = ["two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"];
const shares = ["half", "third", "quarter", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth"];

/** The share is one of as many as the bowl is split into. */
function each(said = "", split = "", many = "", share = ""): string {
  const at = ways.indexOf(many) >= 0 ? ways.indexOf(many) : Number(many) - 2;
  const isPart = !shares.includes(share) || shares.indexOf(share) === at;
  return isPart ? `${split.replace(/ by (?=\S+$)/, " into ")}, how much each` : said;
}

export const splitAsked = (): readonly Phrase[] => [
  {
    marks: ["split ", "divide ", "share ", "portion ", "cut "],
    from: new RegExp(
      `((?:split|divide|share|portion|cut) [a-z0-9 .]{1,40}? (?:in|into|by|between) (${ways.join("|")}|\\d{1,2})(?: (?:parts|ways|bowls|equal parts))?)(?:,|;|\\.| and| -)? (?:so |then |and )?(?:how much|what|whats|what's)(?: (?:is|for|in|goes in|goes into|does|would|will|do i put in))*(?: (?:for|in))? (?:one|a|each|every|1|an)(?: of the)? (${shares.join("|")}|part|share|portion|bowl)(?: (?:weigh|get|come to|be|is|then|each))*(?= ?[?.!]?$)`,
      "g",
    ),
    to: each,
  },
  // "cut 360 g in six": nothing else is cut by weight
  {
    marks: ["cut "],
    from: /^((?:(?:ok|okay|and|now|so|please|can you),? )*)cut (?=(?:the |my |these |those )?\d+(?:\.\d+)? ?(?:g|grams?|kg|oz) (?:of [a-z]+ )?(?:in|into|between) (?:\d|two|three|four|five|six|seven|eight|nine|ten))/g,
    to: "$1split ",
  },
  // "split me that into chocolate and cream": for whom changes nothing
  {
    marks: ["split me ", "divide me ", "break me "],
    from: /\b(split|divide|break) me (?=that|this|it|those|them|up|down)/g,
    to: "$1 ",
  },
];
