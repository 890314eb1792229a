/** The same with another number, said in passing: "nvm 20", "doubling it, 370", "bowls bigger, 260", "my bad". */
import { openingText } from "../../../../data/words/openers.ts";
import type { Phrase } from "./phrase.ts";

const lead = `(${openingText()})`;

export const changedAgain = (): readonly Phrase[] => [
  // "nvm 20"
  {
    marks: ["nvm", "nevermind"],
    from: /^(?:nvm|nevermind),? (?:(?:make it|go with|its|it's|do|say|just) )*(?=\d[^?]{0,12}$)/g,
    to: "make it ",
  },
  // "doubling it, 370"
  {
    marks: ["doubling ", "halving ", "tripling "],
    from: /^((?:(?:so|ok|and|right|now|im|i'm|i am),? )*)(doubl|halv|tripl)ing (it|that|them|everything)(?=,? (?:to |so )?\d|$)/g,
    to: (_said, before = "", what = "", it = "") => `${before.replace(/i'?m,? |i am,? /, "")}${what}e ${it}`,
  },
  // "bowls bigger actually, 260"
  {
    marks: ["bigger", "smaller", "fuller", "larger", "heavier", "lighter"],
    from: new RegExp(
      `^${lead}(?:(?:the|my|this) )?bowl(?:s|'s| is| was)? (?:(?:a bit|a little|much|rather|quite) )?(?:bigger|smaller|fuller|larger|heavier|lighter)(?: (?:actually|really|now|in fact|after all|than i (?:thought|said)|than that))*,? (?:(?:its|it's|it is|more like|nearer|about|at) )*(?=\\d)`,
      "g",
    ),
    to: "$1the bowl is actually ",
  },
  // "wait its white choc ganache my bad"
  {
    marks: [" my bad", " my mistake", " my fault"],
    from: /(?<=[a-z\d%])[,. ]+(?:(?:sorry|oops|thats|that's|that is|its) )?my (?:bad|mistake|fault)(?= ?[.!]*$)/g,
    to: "",
  },
  // "chickened out and used half a gram of that", of what was worked out
  {
    marks: ["used "],
    from: /(^|,? (?:and|so|but) |, )(?:i |we )?(?:only |just )?used (\d+(?:[.,]\d+)? ?(?:g|grams?)|half a gram|a gram) of (?:that|it)(?= ?[.!?]*$)/g,
    to: "$1i used $2",
  },
];
