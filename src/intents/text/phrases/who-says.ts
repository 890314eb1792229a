/**
 * Who a number is from: "who decided 1.25", "whose idea is that", "says who, 7 days", "is the 71 official". All are a
 * question for the rule behind it; the heat of whites has a rule of its own.
 */
import type { Phrase } from "./phrase.ts";

const lead = "(?:(?:and|but|so|ok|hm|right|well|oh|now),? )*";
const told =
  "(?:decided|decides|came up with|invented|made up|makes? (?:up )?the rules? about|picked|chose|set|sets|fixed|says|said|told you|wants|insists on|thought of|wrote)";
/** What it is asked of: a number or "that", and words of no other matter. */
const word =
  "(?:the|that|those|this|it|its|they|your|has|have|had|to|be|been|must|needs?|needed|number|figure|rule|ratio|limit|of|for|on|whites?|egg|sugar|degrees?|deg|c|f|celsius|cooked|heated|brought|reach|get|at|in|up|about|is|should|days?|hours?|months?|exactly|\\d+(?:\\.\\d+)?(?:°|c|f)?)";
const rest = `(${word}(?: ${word}){0,9})`;
const end = "(?= ?[?!.]*$)";
const and = "(?:,? (?:and )?(?:not|rather than|instead of) \\d+(?:\\.\\d+)?)?";

const hasNumber = /\d/;
/** The heat that whites are cooked to, in °C and in °F. */
const heat = /(?<![\d.])(?:71|160)(?![\d.])/;
const span = /\d+ (?:days?|hours?|months?)/;

/** @param of what it is asked of */
function asked(whole: string, of: string): string {
  if (heat.test(of)) return "which temperature do the whites need in swiss buttercream";
  const kept = span.exec(of)?.[0];
  if (kept) return `who says ${kept}`;
  return hasNumber.test(of) ||
    /^(?:that|this|it|the (?:number|figure|rule|ratio|limit)|that (?:number|figure))$/.test(of)
    ? "whose rule is that"
    : whole;
}

const to: Phrase["to"] = (whole, of) => asked(String(whole), String(of));

export const whoSays = (): readonly Phrase[] => [
  {
    marks: [" who"],
    from: new RegExp(`^${lead}(?:and )?who(?: the hell| on earth)? ${told} ${rest}${end}`, "g"),
    to,
  },
  {
    marks: [" whose"],
    from: new RegExp(
      `^${lead}(?:by |on )?whose (?:idea|rule|number|invention|decision|authority)(?: (?:is|was))? ${rest}${end}`,
      "g",
    ),
    to,
  },
  {
    marks: ["says who", "who says", "according to who", "whose authority"],
    from: new RegExp(
      `^${lead}(?:says who|according to whom?|on whose authority),? (?:that )?${rest}${end}`,
      "g",
    ),
    to,
  },
  {
    marks: ["says who", "who says", "according to who", "whose authority"],
    from: new RegExp(
      `^${lead}${rest},? (?:says who|who says(?: so)?|according to whom?|on whose authority)${end}`,
      "g",
    ),
    to,
  },
  {
    marks: ["based on"],
    from: new RegExp(`^${lead}what(?:'?s| is| are|re) ${rest} based on${end}`, "g"),
    to,
  },
  {
    marks: ["official", "made up", "invented", "real rule"],
    from: new RegExp(`^${lead}is ${rest} (?:official|made up|invented|a real rule)${end}`, "g"),
    to,
  },
  {
    marks: ["source", "basis", "reference"],
    from: new RegExp(`^${lead}is there (?:a |any )?(?:source|basis|reference|reason) for ${rest}${end}`, "g"),
    to,
  },
  {
    marks: ["where"],
    from: new RegExp(`^${lead}where(?:'?s| is| does| do| did you get) ${rest} (?:come )?from${end}`, "g"),
    to,
  },
  {
    marks: ["why "],
    from: new RegExp(
      `^${lead}why (?:do |does |is |are |must |should )?(?:(?:exactly|only) )?${rest}${and}${end}`,
      "g",
    ),
    to: (whole, of) =>
      heat.test(String(of)) || /(?:not|rather than|instead of) \d+(?:\.\d+)?$/.test(String(whole))
        ? asked(String(whole), String(of))
        : String(whole),
  },
];
