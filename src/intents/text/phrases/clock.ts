/** Hours and days said in other ways. */
import type { Phrase } from "./phrase.ts";

/** An hour of the afternoon, or one that "at" or "by" says is none of the clock's lengths; others stay lengths. */
const clockOf = (whole = "", lead = "", hour = "", minute: string | undefined = undefined): string =>
  Number(hour) < 24 && ((Number(hour) > 12 && minute) || /^(?:at|by|until|till)/.test(lead))
    ? `${lead}${hour}:${minute ?? "00"}`
    : whole;

/** "14h", "8 h". */
const hours = [..."0123456789"].flatMap((digit) => [`${digit}h`, `${digit} h`]);

export const clockSaid: readonly Phrase[] = [
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
