/** "twelve boxes of four. shell count incl spares.", "30 of them, total trays": a count that is asked for by its name alone. */
import type { Phrase } from "./phrase.ts";

const name = "(shells?|trays?|egg whites?|whites?)";
const spares =
  "(?: (?:incl|incl\\.|including|inc|with|plus|and) (?:(?:the|my|usual|all|some|a few) )*(?:spares?|extras?)(?: included)?)?";
const end = "(?:,? (?:please|pls|needed|then|in all|altogether|in total))*(?=[ ?.!]*$)";
const plural = (what: string): string => (what.endsWith("s") ? what : `${what}s`);
const marks = ["shell", "tray", "white"];
/** An order stands ahead of it. */
const behind =
  "(?<=(?:\\d|dozen|boxes|macarons|two|three|four|five|six|seven|eight|nine|ten|twelve)\\b.*(?:^|[,.;:] | - ))";

export const countAsked = (): readonly Phrase[] => [
  {
    marks,
    from: new RegExp(
      `${behind}(?:so |and |the |whats the |what's the |just the )*(?:(?:total|number of) ${name}|${name} (?:count|total|number|tally))${spares}${end}`,
      "g",
    ),
    to: (_said, ...found) => `how many ${plural(found[0] ?? found[1] ?? "")}`,
  },
];
