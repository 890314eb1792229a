/**
 * What a correction says twice over, or with what stays: "sorry no butter in that, its a dark ganache, weight is right",
 * "half of it please (half the house one)".
 */
import type { Phrase } from "./phrase.ts";

const lead =
  "((?:(?:oh|ah|um|er|hm|ok|okay|so|well|no|nope|wait|sorry|oops|whoops|actually|hang on|hold on|my mistake|my bad|and|but),? )*)";
const its = "(?:it'?s|it is|that'?s|that is|this is|they'?re|i'?ve got|it was|its all)";
const mix = "(?:butter ?cream|smbc|ganache|filling|batter|butter|cream|chocolate|choc)";
const share = "(half|a third|a quarter|two thirds|three quarters|twice|double|triple|three times)";

export const saidTwice = (): readonly Phrase[] => [
  // "there's no butter in that, it's ganache", "it's not buttercream, it's ganache", "that isn't buttercream but ganache"
  {
    marks: [" in that", " in it", " in there", " in this", "not ", "isn't ", "isnt "],
    from: new RegExp(
      `^${lead}(?:(?:there'?s |there is |it has |it'?s got )?no ${mix} in (?:that|it|there|this)(?: one| bowl)?|(?:${its} not|(?:it|that|this) isn'?t) (?:a |any |the )?${mix}(?: at all)?)(?:,|;|\\.| -| but|, but|, because| because| as|, as|, and)? (?:${its} )?(?=(?:a |all |some )?(?:dark |milk |white |plain )*(?:butter ?cream|smbc|ganache)\\b)`,
      "g",
    ),
    to: "no, its ",
  },
  // "..., weight is right", "the grams stay the same"
  {
    marks: ["weight", "grams", "amount", "number"],
    from: /(?:,|;|\.| -| but| and|, but|, and) (?:the |my |that )?(?:weights?|grams|amounts?|numbers?) (?:is|was|are|were|stays?|remains?|still) (?:still |all |of course )?(?:right|correct|fine|ok|okay|good|true|unchanged|as (?:it was|before|said)|(?:the )?same)(?= ?[.!?]*$)/g,
    to: ", same weight",
  },
  // "half of it please (half the house one)": what "it" was is said behind it
  {
    marks: ["half", "third", "quarter", "twice", "double", "triple", "times"],
    from: new RegExp(
      `^${lead}${share} (?:of )?(?:it|that|this)(?: please| pls| then)?,? ?[(-]? ?(?:,|i mean|that is|meaning|so|as in| )*${share} (?:of )?(?:the|my) (house|original|full|card|usual) (?:one|recipe|formula|batch|mix|amount)\\b ?\\)?`,
      "g",
    ),
    to: "$1$3 the $4 recipe",
  },
];
