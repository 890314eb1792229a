/** "alert me at 10:30 plus in 20 minutes", "buzz me at quarter to eleven and then in two hours": a timer for each of them. */
import type { Phrase } from "./phrase.ts";

const lead = "((?:(?:ok|okay|and|now|so|right|then|also|please|can you|could you|will you|would you),? )*)";
const verb =
  "(?:(?:alert|buzz|ping|remind|ring|wake|nudge|poke|beep|warn|tell|call|ding|notify)(?: (?:at )?(?:me|us))|(?:give|send) me a (?:shout|buzz|ping|ring|nudge|beep|call|reminder|alert)|(?:set |start |i need |i want )?(?:me )?(?:a |an |the )?(?:timers?|alarms?|reminders?|alerts?))";
const number =
  "(?:\\d{1,3}(?:[.:]\\d{1,2})?|an?|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|fifteen|twenty|thirty|forty|forty five|fifty|half an|half a|quarter of an|three quarters of an)";
const clock = `at (?:about )?(?:(?:quarter|half|five|ten|twenty|twenty five)(?: past| to)? )?${number}(?: ?(?:am|pm|o'?clock|sharp|thirty|fifteen|forty five))?`;
const long = `(?:in|for) (?:about )?${number} ?(?:minutes?|mins?|min|hours?|hrs?|h)(?: (?:and a half|from now))?`;
/** "one for 10:30". */
const colon = "for \\d{1,2}:\\d{2}(?: ?(?:am|pm))?";
const ring = `(?:${clock}|${colon}|${long})`;
const joint =
  "(?:,? (?:and|plus|&)(?: (?:then|again|also|another(?: one)?|one|once more|one more))*|,? then(?: again)?|,)";
const rows = new RegExp(`${clock}|${colon}|${long}`, "g");
const end = "(?: (?:please|pls|thanks|ta|too|as well))*[ .!]*$";

const sameWords = (_said: string, before = "", row = ""): string => {
  const each = row.match(rows) ?? [];
  return `${before}remind me ${each.map((one) => one.replace(/^for (?=\d+:)/, "at ").replace(/^for /, "in ")).join(" and ")}`;
};

export const ringsInARow = (): readonly Phrase[] => [
  {
    marks: [" me", " us", "timer", "alarm", "reminder", "alert"],
    // one word of them in a row is no row
    only: (text) => (text.match(/\b(?:at|in|for) /g)?.length ?? 0) > 1,
    from: new RegExp(`^${lead}${verb} (${ring}(?:${joint} ${ring}){1,5})${end}`, "g"),
    to: sameWords,
  },
];
