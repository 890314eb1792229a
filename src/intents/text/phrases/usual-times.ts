/** "is cooling usually 30 min", "then rest for the normal time": the usual time of a step, asked for or ordered. */
import type { Phrase } from "./phrase.ts";

const lead = "(?:(?:and|so|ok|okay|but|hm|hmm|wait|oh|sorry|then|now|er|um),? )*";
const step = "(?:the )?(cool|rest|bak|matur|dry)(?:e|ing)?(?: time)?";
const time = "((?:\\d[\\d.]*|an?|half an|[a-z]+(?:[ -][a-z]+)?) ?(?:min|mins|minutes|h|hrs?|hours?))";
const usual =
  "(?:usually|normally|typically|generally|ordinarily|supposed to|meant to|the usual|the normal|the standard|normal|usual|standard|typical|right|correct|as a rule)";
const loose = "(?:for|about|around|roughly|be|take|takes|last|really|still|always|the|time|just|long)";
const end = "(?: (?:them|it|shells|the shells|macarons|or not|then|though|or (?:more|less|longer)))* ?[?.]*$";

/** The question that it is; of resting and baking so long is judged. */
function asked(stem = "", length = ""): string {
  if (stem === "bak") return `is ${length} of baking ok`;
  if (stem === "rest" || stem === "dry") return `is ${length} of resting ok`;
  return stem === "cool" ? "how long does cooling take" : "how long do macarons mature";
}

const marks = ["usual", "normal", "typical", "general", "standard", "ordinar", "regular"];
const isAsked = (text: string): boolean =>
  text.length < 90 && /^[a-z, ]*\b(?:is|are|do|does|isnt|would)\b/.test(text);

export const usualTimes = (): readonly Phrase[] => [
  // "is cooling usually 30 min", "do they normally rest 30 min"
  {
    marks: [...marks, "supposed", "meant to", " right", "correct", "as a rule"],
    only: isAsked,
    from: new RegExp(
      `^(?=.*\\b${usual}\\b)${lead}(?:(?:is|isnt|are|would|does)|do(?= they| the shells| shells| macarons)) (?:(?:it|to|they|shells|the shells|macarons|${usual}|${loose}) )*(?:${usual} )?${step}(?: (?:${usual}|${loose}))* ${time}(?: ${usual})?${end}`,
      "g",
    ),
    to: (_, stem, length) => asked(stem, length),
  },
  // "is 30 min right for cooling", "is it usually 30 min for cooling"
  {
    marks: [...marks, " right", "correct"],
    only: isAsked,
    from: new RegExp(
      `^(?=.*\\b${usual}\\b)${lead}(?:is|isnt|are|would) (?:it )?(?:(?:${usual}|${loose}) )*${time}(?: (?:${usual}|${loose}|a|length))*(?: (?:for|to|of))? ${step}${end}`,
      "g",
    ),
    to: (_, length, stem) => asked(stem, length),
  },
  // "does cooling take 30 min"
  {
    marks: ["does "],
    only: isAsked,
    from: new RegExp(
      `^${lead}does ${step} (?:${loose} )*(?:take|last)(?: (?:about|around|roughly))? ${time}${end}`,
      "g",
    ),
    to: (_, stem, length) => asked(stem, length),
  },
  // "then rest for the normal time"
  {
    marks,
    only: (text) => text.length < 70 && /\b(?:rest|cool|bake|mature)\b/.test(text),
    from: /^(?:(?:and|so|ok|okay|then|now|next|after that|please|pls),? )*(?:let (?:it|them|the shells) )?(?:(?:set|start|run|do) (?:a |the )?)?(rest|cool|bake|mature)(?: (?:them|it|those|the shells|timer))? (?:for )?(?:the|its|their) (?:normal|usual|standard|regular|ordinary)(?: (?:time|times|length|amount of time|while|minutes))?(?: (?:please|pls|then))*[ .!]*$/g,
    to: "start the $1 timer",
  },
];
