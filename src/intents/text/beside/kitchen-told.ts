/** What is told of the kitchen and of who comes: "mixer is 500 watts", "oven already at 150", "20 people coming". */
import { people } from "../../../../data/words/people.ts";
import { clauseEnd, clauseStart, number, spoken, whole } from "./pieces.ts";
import type { ToldBeside } from "./told-beside.ts";

const weighed = /\d ?(?:g|gr|grams?|kg|oz|ounces?)\b/;
/** Another number is there to work with, and something is asked of it. */
const asked =
  /(?:\d|\b(?:a|half|twice|double|two|three)\b)[\s\S]*\b(?:how|what|scale|weights?|whites|batter|macarons?|shells?|recipe)\b|\b(?:how|what|scale|whites|batter|recipe|shells?)\b[\s\S]*(?:\d|\b(?:half|twice|double|two|three)\b)/;

export const kitchenTold: readonly ToldBeside[] = [
  // "mixer is 500 watts", "with my 800 w mixer"
  {
    is: "how strong a machine is",
    marks: ["watt", " w", "rpm", "volt"],
    said: new RegExp(
      `(?:(?:,|;|\\.)? ?(?:(?:the|my|our|this|and|with|a) )*(?:mixer|blender|microwave|whisk|processor|oven|hob)(?:'?s| is| has| runs at| does| at)*(?: (?:only|just|about))? ${number} ?(?:watts?|w|rpm|volts?)\\b|\\b${number} ?(?:watts?|w|rpm)\\b(?= (?:hand )?(?:mixer|blender|microwave|oven)))`,
      "g",
    ),
    unless: ["words", "timers"],
  },
  // "in the blue bowl with the 2 l mark"
  {
    is: "how much a bowl holds",
    marks: [" mark", " line"],
    said: new RegExp(
      `(?<=\\b(?:bowl|jug|tub|pot|pan)) with (?:the|a|its) ${number} ?(?:l|litres?|liters?|ml|cl|pints?) (?:mark|line|marking|label)s?\\b`,
      "g",
    ),
    unless: ["words"],
    beside: weighed,
  },
  // "oven already at 150", "oven 150"
  {
    is: "how hot the oven is",
    marks: ["oven"],
    said: new RegExp(
      `${clauseStart}(?:(?:the|my|and|got) )*oven(?:'?s)?(?: (?:is|already|at|on|to|set|hot|preheated|heated|up|now|was|still))* (?:1[2-9]\\d|2[0-4]\\d|2[5-9]\\d|3\\d\\d)${whole}(?: ?(?:°|degrees?|deg))?(?: ?[cf]\\b)?(?: (?:already|now|by now))?${clauseEnd}`,
      "g",
    ),
    unless: ["words", "heat", "baking", "clock", "timers"],
    beside: asked,
  },
  // "15 min each tray", told beside how many come of a batter
  {
    is: "how long a tray bakes",
    marks: [" tray"],
    said: new RegExp(
      `${clauseStart}(?:baked? (?:for )?)?${spoken} ?(?:min|mins|minutes) (?:each|a|per|for each|every) tray${clauseEnd}`,
      "g",
    ),
    unless: ["words", "baking", "clock", "timers"],
    beside: /\d ?(?:g|gr|grams?)\b[\s\S]*\bhow many\b|\bhow many\b[\s\S]*\d ?(?:g|gr|grams?)\b/,
  },
  // "its my husbands 45th so ..."
  {
    is: "a birthday",
    marks: ["th", "st", "nd", "rd"],
    said: /(?<=\b(?:my|our|her|his|the) (?:[a-z]+ )?[a-z]+s(?:'s|')?|\b(?:my|our|her|his) [a-z]+'s) [1-9]\d(?:st|nd|rd|th)(?= ?(?:[,.;:!?)-]|$)| (?:and|so|on|this|next|today|tomorrow|party|bash|do|tonight)\b)/g,
    leaves: " birthday",
    unless: ["words", "keeping"],
    beside: weighed,
  },
  // "20 people coming", "6 for dinner, so ..."
  {
    is: "how many come",
    marks: [
      " coming",
      " invited",
      " expected",
      " for dinner",
      " for tea",
      " for lunch",
      " for supper",
      " for brunch",
    ],
    said: new RegExp(
      `${clauseStart}(?:(?:there are|theres|we'?re|we are|i have|ive got|with) )?(?:about |around )?${spoken} (?:(?:${[...people].join("|")}|people|guests|friends|of us|of them|kids) (?:(?:are|is|all|now) )*(?:coming|invited|expected)(?: (?:round|over|today|tomorrow|tonight))?|(?:of us )?for (?:dinner|tea|lunch|supper|brunch))(?:,? so\\b)?(?= ?(?:[,.;:!?)]|$)| (?:and|but|so)\\b| ${number} ?%| \\d)`,
      "g",
    ),
    unless: ["words", "each"],
    beside: /\d ?(?:g|gr|grams?|kg|oz|ounces?|macarons?|macs)\b/,
  },
  // "6 friends 2 trays 1 bowl: 240 g of ..."
  {
    is: "how things stand",
    marks: [":"],
    said: new RegExp(
      `^(?:${spoken} (?!(?:g|gr|grams?|kg|oz|ml|l|min|mins|minutes|macarons?|macs|shells|eggs?|whites|cups?|hours?|percent|c|f|cm|mm|timers?)\\b)[a-z]+[, ]+(?:and )?){1,4}${spoken} (?!(?:g|gr|grams?|kg|oz|ml|l|min|mins|minutes|macarons?|macs|shells|eggs?|whites|cups?|hours?|percent|c|f|cm|mm|timers?)\\b)[a-z]+ ?: (?=\\d)`,
      "g",
    ),
    unless: ["words", "each", "timers"],
    beside: weighed,
  },
];
