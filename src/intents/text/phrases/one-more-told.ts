/** One more for the notes or for the shelf, told as it comes: "one more to log, ...", "stocked up, 1.5 kg went on the shelf". */
import type { Phrase } from "./phrase.ts";

const lead =
  "(?:(?:ok|okay|and|now|so|right|oh|well|also|then|here'?s|here is|got|i'?ve got|i have|there'?s|there is),? )*";
const one =
  "(?:(?:just )?(?:one|1|another|another one|a second|a third|a further|two|2|three|next(?: one)?|a new one|an extra|the next|the last|last)(?: (?:more|other|batch|further|new|thing|entry)){0,2})";
const write = "(?:log|note|record|write|jot|enter|scribble|put(?= down))(?: (?:down|in|up))?";
const place = "(?:pantry|larder|cupboard|shelf|store cupboard|stock|fridge|freezer)";
/** So much of something, by weight or counted; then it may go on. */
const goods =
  "((?:another |a |an |some |the |my )?\\d+(?:[.,]\\d+)? ?(?:kg|kilos?|g|grams?|lbs?|oz|l|ml|eggs?|whites|vanilla)\\b(?:[^?;:.]|\\.(?=\\d)){0,120}?)";
const shopped =
  "(?:(?:i|i've|ive|we|we've|weve|just|been|have|had|went|got) )*(?:stocked up|restocked|re-stocked|shopping|to the shops?|to the (?:wholesaler|market|supermarket)|shopping done|stock (?:came|arrived|is in)|delivery (?:came|arrived)|new (?:bag|stock|delivery|sack|pack))(?: (?:today|just now|again|earlier|this morning|yesterday|came|arrived|on things))*";
const wentOn =
  "(?:(?:has|have|is|are|just|all|now|it|that|which) )*(?:went|gone|going|goes|put|landed|sits?|is|are|stands?)?";

export const oneMoreTold = (): readonly Phrase[] => [
  // "one more to log, speculoos batch, 40 min rest"
  {
    marks: [" to log", " to note", " to record", " to write", " to jot", " to enter", " to put", " to add"],
    from: new RegExp(
      `^${lead}${one} (?:i (?:want|need|have) )?to ${write}(?: (?:for me|in the (?:book|log|notes|diary)|please))*(?:,|:|;|\\.| -) (?=[a-z\\d])(?!.*\\?)(?!.*\\b(?:timer|recipe|pantry|shelf|price)\\b)`,
      "g",
    ),
    to: "note: ",
  },
  // "one more timer 40 min rest"
  {
    marks: ["one more timer", "another timer", "1 more timer"],
    from: /^((?:(?:ok|okay|and|now|so|then|please),? )*)(?:one|1|another)(?: more)? timer,? (?=\d+ ?(?:min|mins|minutes?|h|hours?)\b)/g,
    to: "$1set another timer for ",
  },
  // "how long do my speculoos ones rest as a rule": "rest as" is no remainder
  {
    marks: [" as a rule", " on average"],
    from: /^((?:(?:ok|okay|and|now|so|well),? )*(?:how|what) [a-z ]{5,60}?) (?:as a rule|on average)(?= ?[?.]*$)/g,
    to: "$1 usually",
  },
  // "stocked up, 1.5 kg icing sugar went on the shelf"
  {
    marks: ["stock", "shop", "deliver", "new bag", "new sack", "new pack", "wholesaler", "market"],
    from: new RegExp(
      `^${lead}${shopped}(?:,|:|;|\\.| -| and| so)+ (?:so )?${goods} ${wentOn} ?(?:up |straight |right )*(?:in|into|on|onto|to|on to|in to) (?:the|my|our) ${place}(?: (?:now|today|already|please|just now))*(?= ?[.!]*$)`,
      "g",
    ),
    to: "put $1 on the shelf",
  },
  // "went shopping and got 2 kg icing sugar"
  {
    marks: ["stocked up", "restocked", "shopping"],
    from: new RegExp(
      `^${lead}${shopped}(?:,|:|;|\\.| -| and| so)+ (?:i |ive |i've |we )?(?:got|bought|picked up|came back with|came home with|brought home|brought back|found|have) ${goods}(?: (?:in|today|again|just now))*(?= ?[.!]*$)`,
      "g",
    ),
    to: "bought $1",
  },
  // "1.5 kg icing sugar has gone on the shelf": what goes there comes
  {
    marks: [" on the shelf", " onto the shelf", " on my shelf", " on to the shelf"],
    from: new RegExp(
      `^${lead}${goods} (?:(?:has|have|just|all|now) )*(?:went|gone) (?:up |straight |back )*(?:on|onto|on to) (?:the|my|our) shelf(?: (?:now|today|already|just now))*(?= ?[.!]*$)`,
      "g",
    ),
    to: "put $1 on the shelf",
  },
];
