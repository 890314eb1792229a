/** One of it said shortly: "single is fine" behind a doubled recipe, "the dog ate one" behind a number of macarons. */
import type { Phrase } from "./phrase.ts";

const lead =
  "(?:(?:ok|okay|and|so|oh|well|right|no|nah|nope|actually|hm|sorry|but|then|ugh|argh|wait|ha),? )*";
const will =
  "(?: (?:is|'s|will|would|should|be|do|does|fine|enough|plenty|ok|okay|good|then|please|pls|now|instead|after all|thanks|it|again|to be))*";
const who =
  "(?:i|we|he|she|they|somebody|someone|(?:the|my|our|his|her) (?:[a-z]+ )?(?:dog|cat|son|daughter|kids?|boy|girl|toddler|husband|wife|mum|mom|dad|sister|brother|neighbou?r|baby|child|children|puppy|mouse|bird|hens?))";
const took =
  "(?:(?:just|has|have|had|'ve|already|then|also) )*(?:ate|eaten|had|got|stole|nicked|pinched|took|scoffed|dropped|broke|smashed|crushed|lost|squashed|ruined|wasted|licked|sat on)";
const gone =
  "(?:(?:has|have|was|is|just|already|got|been|went) )*(?:eaten|broken|broke|dropped|smashed|crushed|lost|squashed|ruined|missing|fell(?: down| on the floor)?|fallen|stolen|gone)";
const tail =
  "(?: of (?:them|those|these|the macarons|the macs))?(?:,? (?:already|again|now|sorry|lol|sadly|haha|ugh|too))*";

export const oneOfIt: readonly Phrase[] = [
  {
    marks: ["single"],
    from: new RegExp(
      `^${lead}(?:(?:just|only|make it|do|do it|back to|take|the|a|i'll do|keep it) )*single(?: (?:batch|recipe|one|lot|quantity|amount))?${will}[ .!]*$`,
      "g",
    ),
    to: "a single batch will do",
  },
  // one of them, and no "one" of something else
  {
    marks: [" one"],
    from: new RegExp(
      `^(${lead}${who} ${took}) (?:one|a macaron|another one|another)${tail}(?= ?[.!]*$)`,
      "g",
    ),
    to: "$1 1",
  },
  {
    marks: ["one "],
    from: new RegExp(
      `^(${lead})one(?: of (?:them|those|these|the macarons))? (${gone})(?:,? (?:already|again|now|sorry|lol|sadly))*(?= ?[.!]*$)`,
      "g",
    ),
    to: "$11 $2",
  },
];
