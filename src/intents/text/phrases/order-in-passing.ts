/** What the macarons are for, told with a day and no hour, where only the weights are asked: no plan of the day. */
import type { Phrase } from "./phrase.ts";

const lead = "((?:(?:ok|okay|and|now|so|right|hi|hey|hello|well|oh|also),? )*)";
const day =
  "(?:(?:on |this |next |coming |for |is |its |it's )*(?:mon|tues|wednes|thurs|fri|satur|sun)day|tomorrow|tonight|today|(?:this |next |at the |on the )*(?:week|weekend))(?: (?:week|morning|afternoon|evening|night|lunch))?";
const what = "(?:[a-z']+ ){1,5}?(?:is |on )?";
const who = "(?:i'?m|im|i am|i'?ve|ive|i have|i|we|we'?re|we'?ve|they|she|he|it)";
/** What the weights of shells are asked by. */
const weights =
  "(?=[^?]*\\b(?:weights?|ingredients?|grams|recipe|weigh|amounts|quantities|of everything|almond flour|whites)\\b)(?=[^?]*\\b(?:shells?|batter)\\b)(?![^?]*\\b(?:plan|schedule|start|when|timeline|timetable|time|backwards|ready)\\b)";

export const orderInPassing = (): readonly Phrase[] => [
  // "60 macarons, which are being picked up on wednesday at 5 pm"
  {
    marks: ["picked up", "collected", "fetched"],
    from: /(?<=\d{1,3} (?:macarons?|macs|of them)),? (?:(?:which|that|they|and) )?(?:are|is|will be|get|have to be|need to be) (?:being |to be )?(?:picked up|collected|fetched)(?: by (?:her|him|them|us))? (?=on |by |at |this |next |tomorrow|today|(?:mon|tues|wednes|thurs|fri|satur|sun)day)/g,
    to: " to be picked up ",
  },
  // "plan: 48 for sunday 11 am"
  {
    marks: ["plan", "order"],
    from: /^(?:(?:bake|baking|new|the|my|a) )*(?:plan|order)(?: for)?(?::| -) (?=\d{1,3} (?:macarons? |macs )?(?:for|by|on)\b)/g,
    to: "",
  },
  // "list what goes in the shells by weight"
  {
    marks: [" goes in"],
    from: /\b(?:(?:list|tell me|give me|show me) )?(?:what|everything (?:that )?|all (?:that )?) ?goes (?:in|into) (?:the |my )?shells,? (?:by weight|in grams|by the gram)(?= ?[?.!]*$)/g,
    to: "list the weights for the shells",
  },
  // "christening on sunday, im down for 60 macarons, list the weights for the shells"
  {
    marks: ["day", "tomorrow", "tonight", "week"],
    from: new RegExp(
      `^${lead}${what}${day}(?:,|;|\\.| -)?(?: and| so)? (?:${who} )?(?:(?!for\\b)[a-z']+ ){0,4}(?:for )?(\\d{1,3}) (macarons?|macs)(?: (?:of (?:me|us)|for it|needed|wanted|to make|to bring|please|all told))*(?:,|;|\\.| -| and| so)+ (?=[a-z])${weights}`,
      "g",
    ),
    to: "$1$2 $3, ",
  },
  // "60 macarons for sunday, shell weights"
  {
    marks: ["day", "tomorrow", "tonight", "week"],
    from: new RegExp(
      `^${lead}(?:(?:i |we )?(?:need|want|have|make|making) )?(\\d{1,3}) (macarons?|macs) (?:(?:are|is|needed|wanted|due) )*(?:for|on|by) (?:the )?${day}(?:,|;|\\.| -| and| so)+ (?=[a-z])${weights}`,
      "g",
    ),
    to: "$1$2 $3, ",
  },
];
