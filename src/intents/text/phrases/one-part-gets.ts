/** What goes into one part of a bowl, asked in a roundabout order: "in only one portion shall come lemon zest, how much of it". */
import type { Phrase } from "./phrase.ts";

const bowls =
  "(?:portion|part|bowl|share|quarter|third|fifth|batch|of (?:them|those|the (?:four|three|five|six|parts|portions|bowls)))";
const one = `(?:(?:only|just|but) )*(?:one|a single|1)(?: (?:single|only))?(?: ${bowls})?(?: (?:only|alone))?`;
const goes =
  "(?:(?:shall|should|will|must|is to|has to|does|do) )*(?:come|comes|go|goes|get|gets|have|has|be|want|wants|take|takes)";
/** What it gets: a thing with a dose, by its name. */
const thing = "((?!(?:how|what|the|it|that|one)\\b)[a-z]+(?: (?!(?:how|what|in|into|to)\\b)[a-z]+){0,2})";
const asks =
  "(?:,|;|\\.| -|,? and|,? so)? ?how (?:much|many grams)(?: (?:of (?:it|that|this|the [a-z]+)|is that|do i need|zest|extract|paste|powder|flavou?r|gel|colou?r))*(?= ?[?.!]*$)";
/** There is a bowl that is split. */
const split =
  "(?<=\\b(?:split|divid|divide|divided|part|parted|portion|portions|share|bowls|parts|ways|in (?:two|three|four|five|six|\\d))\\b[^]*)";
const start = "(?:,|;|\\.| -)(?: and| but| then)? ";

export const onePartGets = (): readonly Phrase[] => [
  {
    marks: [" one", " a single", " 1 "],
    from: new RegExp(`${split}${start}(?:in|into|to|for) ${one} (?:${goes} )?(?:of )?${thing}${asks}`, "g"),
    to: "; how much $1 for one of them",
  },
  {
    marks: [" one", " a single", " 1 "],
    from: new RegExp(`${split}${start}${one} ${goes} ${thing}${asks}`, "g"),
    to: "; how much $1 for one of them",
  },
  {
    marks: [" one", " a single", " 1 "],
    from: new RegExp(`${split}${start}${thing} (?:(?:${goes}) )?(?:in|into|to|for) ${one}${asks}`, "g"),
    to: "; how much $1 for one of them",
  },
  // "i split it in three; how much rum for one of them": two orders, whoever does it
  {
    marks: ["i ", "we "],
    from: /^(?:i|we)(?:'ll| will| want to| would like to| am going to)? (?=(?:split|divide|part|share|portion) .*; how much [a-z ]+ for one of them$)/g,
    to: "",
  },
];
