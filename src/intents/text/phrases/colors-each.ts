/** "150 g batter pink 300 green, gel in each": bowls that are weighed with their colors, and one dye for all of them. */
import { leadingText } from "../../../../data/words/openers.ts";
import { colors } from "../../../../data/words/things.ts";
import type { Phrase } from "./phrase.ts";

// white and plain batter take no dye
const color = `(?:light |dark |pale |bright |deep )?(?:${colors.filter((each) => !/^(?:plain|natural|uncolou?red)/.test(each)).join("|")})`;
const bowl = `(\\d+(?:\\.\\d+)?) ?(?:(?:g|gr|grams?)\\b)? ?(?:of )?(?:the )?(batter |mix )?(?:is |in |for |to be |goes |going )?(${color})\\b(?: (batter|mix|bowl|half|part|one))?`;
const joint = "(?:,? and |, ?| \\+ | & | plus | )";
const dye =
  "((?:gel|powder|powdered|paste)(?: (?:food )?(?:colou?rs?|colou?ring|dye))?|(?:food )?(?:colou?ring|dye))";
const each =
  "(?:each|both|either|every one|each one|each bowl|each of (?:them|those|the two)|all(?: three)?)";
const lead = `(${leadingText("i have", "ive got", "i've got", "i've", "ive", "got", "with", "theres", "there is")})`;

const bowls = new RegExp(bowl, "g");
const isDye = new RegExp(`^${dye}$`);

export const colorsEach = (): readonly Phrase[] => [
  {
    marks: [" each", " both", " either", " every", " all"],
    from: new RegExp(
      `^(?=.{0,300}$)${lead}(${bowl}(?:${joint}${bowl})+)(?:,|\\.|;|:| -)? (?:so |and |then )*(?:how much |what |amount of )?${dye} ?(?:(?:in|for|into|per|to|do|i|need|needed|goes|does|should|go|want|wants|get|gets|take|takes) )*${each}(?: (?:need|needs|get|gets|take|takes|want|wants|please|pls))* ?[?.!]*$`,
      "g",
    ),
    to: (said, ...found) => {
      const [before = "", list = ""] = found;
      const what = found.slice(2).find((part) => typeof part === "string" && isDye.test(part));
      const all = [...list.matchAll(bowls)];
      // nothing says that it is batter: 2 pink ones are macarons
      const isBatter = /\b(?:batter|mix)\b|\d ?(?:g|gr|grams?)\b/.test(list);
      if (!what || all.length < 2 || !isBatter) return said;
      return `${before}${all.map(([, grams, , name]) => `${name} ${what} for ${grams} g batter`).join(" and ")}`;
    },
  },
];
