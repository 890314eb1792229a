/** A batch told for the notes, and what it was like: "third lime batch for the notes, this one rested 50 min". */
import type { Phrase } from "./phrase.ts";

const lead = "(?:(?:ok|okay|and|so|oh|well|right|now|also|please),? )*";
const book =
  "(?:for|in|into|in to) (?:the |my |our )?(?:notes?|notebook|note book|record|records|log|logbook|diary|journal|book)";
const down = "(?:to (?:write|note|jot|put) down|to (?:note|log|record))";
const nth =
  "(?:first|second|third|fourth|fifth|sixth|another|new|last|todays|this|latest|\\d+(?:st|nd|rd|th)?|one|two|three|four|five)";
const batch = `(?:(?:the |a |my )?(?:${nth} )?(?:[a-z]+ ){0,3}batch(?: (?:\\d+|one|two|three|four|five|six))?(?: of [a-z]+(?: [a-z]+)?)?)`;

export const forTheNotes = (): readonly Phrase[] => [
  // "and the rest was 40 min": no remainder
  {
    marks: ["the rest was "],
    from: /\bthe rest was (?=\d+ ?(?:min|mins|minutes?|h|hours?)\b)/g,
    to: "rested ",
  },
  {
    marks: [
      " for the ",
      " for my ",
      " for our ",
      " in the ",
      " in my ",
      " into ",
      " to write",
      " to note",
      " to jot",
      " to log",
      " to record",
      " to put",
    ],
    from: new RegExp(
      `^${lead}(${batch}) (?:${book}|${down})(?:,|:| -)? (?!how |what |which |when |why |is |was it )(?=[a-z])`,
      "g",
    ),
    to: "note: $1, ",
  },
  {
    marks: [" in the ", " in my ", " for the ", " for my "],
    from: new RegExp(
      `^${lead}(?:this|this one|that|these) (?:goes|belongs|is|should go|can go)(?: down)? ${book}(?:,|:)? (?=[a-z\\d])`,
      "g",
    ),
    to: "note: ",
  },
  // "put this under wednesday: lavender, tops wrinkled"
  {
    marks: ["put this under", "file this under", "put it under", "put that under"],
    from: /^(?:please )?(?:put|file|log|write) (?:this|it|that) (?:down )?under (yesterday|today|(?:last )?(?:mon|tues|wednes|thurs|fri|satur|sun)day)(?=:| -)/g,
    to: "note for $1",
  },
];
