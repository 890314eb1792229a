/** A timer by another name: "start the maturing clock", and one that is dropped: "scrap that timer". */
import type { Phrase } from "./phrase.ts";

const step = "(cooling|maturing|maturation|resting|baking|drying|setting|cool|mature|rest|bake|ganache|oven)";
const stem = (said: string): string =>
  ({
    cooling: "cool",
    maturing: "mature",
    maturation: "mature",
    resting: "rest",
    drying: "rest",
    baking: "bake",
    oven: "bake",
    setting: "ganache",
  })[said] ?? said;
const starts =
  "(?:start|begin|set|run|get|put|kick off|kick|fire up|put on|switch on|turn on|set off|launch)";
const tail =
  "(?: (?:going|running|off|on|now|ticking|please|pls|for me|for (?:it|them|that)|then))*(?= ?[.!]*$)";
const lead =
  "((?:(?:ok|okay|and|now|so|right|no|nah|actually|oh|please|wait|hm|well|sorry|on second thoughts?),? )*)";

export const clockStarted = (): readonly Phrase[] => [
  {
    marks: [" clock", "stopwatch", "kick off", "fire up"],
    from: new RegExp(
      `(^|[,.;:-] |\\band |\\bso |\\bplease |\\bthen |\\bnow )${starts} (?:the |a |my )?${step} (?:clock|timer|stopwatch|countdown)${tail}`,
      "g",
    ),
    to: (_said, before = "", name = "") => `${before}start the ${stem(name)} timer`,
  },
  // "clock starts now for maturing"
  {
    marks: ["clock start", "clock is", "clocks "],
    from: new RegExp(
      `(^|[,.;:-] |\\band )(?:the )?clock (?:starts|is starting|is on|is running|begins)(?: now| from now)? (?:for|on) (?:the |their )?${step}(?: now)?(?= ?[.!]*$)`,
      "g",
    ),
    to: (_said, before = "", name = "") => `${before}start the ${stem(name)} timer`,
  },
  // "actually scrap that timer", "lose that timer, dont need it"
  {
    marks: ["timer", "alarm", "countdown"],
    from: new RegExp(
      `^${lead}(?:can you |you can |lets |let's |just )*(?:scrap|junk|trash|dump|lose|bin|ditch|drop|chuck|axe|scratch|nix|stop|cancel|kill|end|forget|get rid of|do away with|knock off|turn off) ((?:that|the|this|my) (?:last |first |second |new |other )?)(?:timer|alarm|countdown)(?: (?:please|pls|again|then|now|altogether|for me|after all))*(?:,? (?:(?:i|we) )?(?:dont|don't|do not|no longer) (?:need|want) (?:it|that|one|this)(?: (?:anymore|any more|now|after all))*)?(?= ?[.!]*$)`,
      "g",
    ),
    to: (_said, _before = "", which = "") => `stop ${which}timer`,
  },
];
