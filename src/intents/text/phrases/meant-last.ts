/** A slip put right with the word for it behind: "for 310 g, sorry 210 i mean". */
import type { Phrase } from "./phrase.ts";
import { spelt } from "./spelt.ts";

const number = `(?:\\d+(?:[.,]\\d+)?|(?:${spelt})(?:[ -](?:${spelt}))?)`;
/** The number with what it counts. */
const measured = `((?:about |only |just )?${number}(?: ?%| ?(?:g|gr|grams?|kg|oz|ml|cm|mm|mins?|minutes?|hours?|percent|c|f|cups?|tbsp|tsp|sticks?|macarons|macs|shells|trays|parts|bowls|boxes|of them))?)`;

export const meantLast = (): readonly Phrase[] => [
  {
    marks: [" i mean", " i meant", " i should say"],
    from: new RegExp(
      `(?:[,;]| -|[.]{1,3}) (?:(?:sorry|oops|whoops|no|nope|wait|er|erm|ah|oh|argh|rather|actually|not that),? )*${measured},? (?:i mean|i meant|i should say|i meant to (?:say|type|write)|is what i (?:mean|meant))(?= ?(?:[?.!,]|$))`,
      "g",
    ),
    to: ", sorry i mean $1",
  },
];
