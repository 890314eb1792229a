/** Hours and days said in other ways. */
import type { Phrase } from "./phrase.ts";

/** An hour of the afternoon, or one that "at" or "by" says is none of the clock's lengths; others stay lengths. */
const clockOf = (whole = "", lead = "", hour = "", minute: string | undefined = undefined): string =>
  Number(hour) < 24 && ((Number(hour) > 12 && minute) || /^(?:at|by|until|till)/.test(lead))
    ? `${lead}${hour}:${minute ?? "00"}`
    : whole;

/** "14h", "8 h". */
const hours = [..."0123456789"].flatMap((digit) => [`${digit}h`, `${digit} h`]);

const length = "\\d+(?:\\.\\d+)? ?(?:m|mins?|minutes?|h|hrs?|hours?|s|secs?|seconds?)\\b";
/** Where several lengths stand behind a dash each, of timers: the dash takes nothing off. */
const dashedRow = new RegExp(
  `^(?=.*\\b(?:timers?|alarms?|set|start)\\b|(?:.*[a-z] - ${length}){3}).*[a-z] - ${length}.*(?:,|;|\\band\\b).*[a-z] - ${length}.*$`,
  "g",
);
const dashes = new RegExp(`(?<=[a-z]) - (?=${length})`, "g");

export const clockSaid = (): readonly Phrase[] => [
  // "three timers - 8 min oven, 35 min rest"
  {
    marks: ["timers - ", "alarms - ", "timers please - ", "timers pls - ", "timers needed - "],
    from: /\b((?:timers|alarms)(?: please| pls| needed)?) - (?=.*(?:,| and ))/g,
    to: "$1: ",
  },
  // "timers: oven - 10 min, rest - 35 min"
  { marks: [" - "], from: dashedRow, to: (whole = "") => whole.replace(dashes, " ") },
  // "rested a full hour", "the whole 30 minutes"
  {
    marks: ["full ", "whole ", "solid ", "entire "],
    from: /\b(a|an|one|another|the|two|three|for|\d+)( \d+)? (?:full|whole|solid|entire) ((?:\d+ )?(?:hours?|hrs?|minutes?|mins?))\b/g,
    to: (_whole, lead = "", more = "", length = "") =>
      `${lead === "a" && /^h/.test(length) ? "an" : lead}${more} ${length}`,
  },
  // "an even three hours", "a round 45 minutes": so long, and no timer of that name
  {
    marks: ["even ", "round ", "straight ", "exact ", "good "],
    from: /\b(?:an?|the) (?:even|round|straight|exact|good) (?=(?:\d+(?:\.\d+)?|[a-z]+(?: [a-z]+)?) (?:hours|hrs|minutes|mins)\b)/g,
    to: "",
  },
  // "alarm ten to eleven": no range
  {
    marks: [" to ", " past "],
    from: /\b(alarm|ring|buzz|beep|wake me|(?:remind|call|ping) me),? (?:for )?(?=(?:an? )?(?:five|ten|twenty|twenty five|quarter|half|5|10|20|25) (?:to|past) (?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|1[0-2]|[1-9])\b(?! ?(?:min|h|sec|%|g\b|c\b)))/g,
    to: "$1 at ",
  },
  // "ten to ten, ring me"
  {
    marks: [" to ", " past "],
    from: /^((?:(?:at|ok|and|so),? )*)((?:five|ten|twenty|twenty five|quarter|half|5|10|20|25) (?:to|past) (?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|1[0-2]|[1-9]))(?: please)?,? (?=(?:ring|buzz|beep|wake me|remind me|call me|ping me|alarm|give me a (?:shout|ring))\b)/g,
    to: "at $2, ",
  },
  {
    marks: ["a week on "],
    from: /\ba week on (monday|tuesday|wednesday|thursday|friday|saturday|sunday)\b/g,
    to: "$1 week",
  },
  // "14h30", "at 9h": the clock as it is written in French
  {
    marks: hours,
    from: /\b((?:at|by|until|till|for) )?(\d{1,2}) ?h ?([0-5]\d)?\b(?! ?(?:\d|min))/g,
    to: clockOf,
  },
  // "this morning 11h", "8h30 this morning"
  {
    marks: hours,
    from: /\b((?:this |tomorrow |today )(?:morning |afternoon |evening |noon )?)(\d{1,2})h([0-5]\d)?\b/g,
    to: (_whole, lead = "", hour = "", minute) => `${lead}at ${hour}:${minute ?? "00"}`,
  },
  {
    marks: hours,
    from: /\bfor (\d{1,2})h([0-5]\d)?(?= this (?:morning|afternoon|evening)\b)/g,
    to: (_whole, hour = "", minute) => `at ${hour}:${minute ?? "00"}`,
  },
  // "36 macarons for 14h tomorrow": an hour, where no step takes so long
  {
    marks: hours,
    from: /^((?:(?!timer|alarm|rest|matur|chill|set|bake|cool|fridge|leave|wait)[^.])*\bmac(?:aron|s)[^.]*)\bfor (\d|1\d|2[0-3])h([0-5]\d)?(?= (?:this (?:morning|afternoon|evening)|today|tonight|tomorrow)\b)/g,
    to: (_whole, before = "", hour = "", minute) => `${before}at ${hour}:${minute ?? "00"}`,
  },
  { marks: ["from here on"], from: /\bfrom here on(?: out| in)?\b/g, to: "from now on" },
  { marks: ["from now"], from: /\b(hours?|h|hrs?|min|mins|minutes|days?) from now\b(?! on)/g, to: "$1" },
];
