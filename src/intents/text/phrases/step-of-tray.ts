/** A step of one tray with its minutes, in whatever order: "rest 35 tray 2", "bake tray 1 for 14", "rest 30 min tray 1". */
import { leadingText } from "../../../../data/words/openers.ts";
import type { Phrase } from "./phrase.ts";

const steps: Readonly<Record<string, string>> = {
  rest: "rest",
  resting: "rest",
  dry: "rest",
  drying: "rest",
  bake: "bake",
  baking: "bake",
  cool: "cool",
  cooling: "cool",
  chill: "chill",
  chilling: "chill",
};
const step = `(${Object.keys(steps).join("|")})`;
const tray = "(?:the |my )?((?:tray|sheet|mat|batch) (?:\\d{1,2}|[a-d]))";
/** Two digits are minutes: a heat has three. With a unit any number is. */
const minutes = "(\\d{1,2}(?! ?[.,]?\\d)|\\d+(?:[.,]\\d+)? ?(?=m|h))(?: ?(m|mins?|minutes?|h|hrs?|hours?))?";
const lead = `^(${leadingText("start", "set", "timer")})`;
const end = "(?: (?:please|pls|now|then))*(?= ?[.!]*$)";
const on = "(?:(?:for|on|of) )?";

const timerOf = (lead: string, what: string, which: string, many: string, unit = "min") =>
  // the order is said anew
  `${lead.replace(/\b(?:start|set|timer)\b,? ?/g, "")}set a ${many.trim().replace(",", ".")} ${unit} timer for ${which} ${steps[what] ?? what}`;

const marks = ["tray ", "sheet ", "mat ", "batch "];

export const stepOfTray = (): readonly Phrase[] => [
  // "rest 35 tray 2", "rest 30 min for tray 1"
  {
    marks,
    from: new RegExp(`${lead}${step} (?:for )?${minutes} ${on}${tray}${end}`, "g"),
    to: (_said, ahead = "", what = "", many = "", unit, which = "") =>
      timerOf(ahead, what, which, many, unit),
  },
  // "rest tray 1 for 35", "bake tray 2 14"
  {
    marks,
    from: new RegExp(`${lead}${step} ${on}${tray} (?:for )?${minutes}${end}`, "g"),
    to: (_said, ahead = "", what = "", which = "", many = "", unit?: string) =>
      timerOf(ahead, what, which, many, unit),
  },
  // "35 rest tray 2", "14 min bake for tray 1"
  {
    marks,
    from: new RegExp(`${lead}${minutes} (?:of )?${step} ${on}${tray}${end}`, "g"),
    to: (_said, ahead = "", many = "", unit?: string, what = "", which = "") =>
      timerOf(ahead, what, which, many, unit),
  },
  // "bake 14 at 150": minutes stand with the bake, and the heat with "at"
  {
    marks: ["bake "],
    from: new RegExp(
      `${lead}bake (?:(?:it|them|these|those) )?(?:for )?([1-5]?\\d)(?= (?:at|@) ?\\d{3} ?(?:°|degrees?|c|f)?${end})`,
      "g",
    ),
    to: (_said, ahead = "", many = "") => `${ahead}bake ${many} min`,
  },
];
