/** Years and best-before dates: "card from 1998", "a 2011 model", "expires 09/2027". */
import type { ToldBeside } from "./told-beside.ts";

const year =
  "(?:19\\d\\d|20[0-4]\\d)(?![\\d.,:/]\\d| ?(?:g|gr|grams?|kg|ml|oz|mm|macarons?|shells?|kcal)\\b)";
const month =
  "(?:jan(?:uary)?|feb(?:ruary)?|mar(?:ch)?|apr(?:il)?|may|june?|july?|aug(?:ust)?|sept?(?:ember)?|oct(?:ober)?|nov(?:ember)?|dec(?:ember)?)";
const date = `(?:20\\d\\d[./-]\\d{1,2}(?:[./-]\\d{1,2})?|\\d{1,2}[./ -]\\d{1,2}[./ -](?:20)?\\d\\d|\\d{1,2}[./-](?:20)?\\d\\d|(?:\\d{1,2}(?:st|nd|rd|th)? )?${month}\\.? ?'?(?:20)?\\d\\d|${year})(?![\\d/])`;

export const dated: readonly ToldBeside[] = [
  {
    is: "a date on the pack",
    marks: [
      "exp",
      "best before",
      "bb",
      "use by",
      "use-by",
      "good until",
      "good till",
      "sell by",
      "best by",
      "dated",
    ],
    said: new RegExp(
      `(?:\\b(?:the |its |it |and |it's )*(?:jar|bottle|tub|pack|packet|label|lid|tin|box|bag) (?:says?|is|reads)?:? ?)?\\b(?:expir(?:es|ed|y|ing)(?: date)?|exp\\.?|best before(?: end)?|bb[ed]?|use[- ]by|good (?:until|till)|sell[- ]by|best[- ]by|dated)(?: date)?(?: is| was| in| on| of| the| end| says|:)* ?${date}(?: (?:it says|i think|on the (?:lid|label|jar|bottle|pack)))*`,
      "g",
    ),
    asTyped: true,
    unless: ["words", "keeping", "stock"],
  },
  // "card from 1998", "since 2004"
  {
    is: "a year",
    marks: ["19", "20"],
    said: new RegExp(
      `,? ?\\b(?:from|since|of|in|anno|circa|around|dated|model|edition|vintage|version|back in)(?: the)?(?: year)? ${year}s?(?= |[,.;:!?)]|$)(?! (?:i want|macarons))`,
      "g",
    ),
    unless: ["words"],
  },
  // "a 1950s recipe", "opened in march 2025"
  {
    is: "a year",
    marks: ["0s"],
    said: /\b(?:from the |an? |in the )?(?:early |late |mid )?(?:19|20)\d0'?s(?: |$)/g,
    leaves: " ",
    unless: ["words"],
  },
  {
    is: "a date on the pack",
    marks: ["open", "bought", "made", "filled", "from "],
    said: new RegExp(
      `,? ?\\b(?:i |we )?(?:opened|bought(?: it)?|from)(?: it| this)? (?:in |on |back in |since )*(?:${month} (?:20)?\\d\\d|\\d{1,2}[./]20\\d\\d)\\b`,
      "g",
    ),
    unless: ["words", "keeping", "stock"],
  },
  // "a 2011 model", "my 2015 oven"
  {
    is: "a year",
    marks: ["19", "20"],
    said: new RegExp(
      `\\b${year} (?=(?:model|edition|vintage|version|harvest|book|cookbook|card|recipe|oven|fan oven|gas oven|mixer|machine|calendar|diary|copy|one)\\b)`,
      "g",
    ),
    unless: ["words"],
  },
];
