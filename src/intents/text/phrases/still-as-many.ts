/** Who can't come, and as many are made: "8 of them cant come but i still need the 30, an hour later". */
import type { Phrase } from "./phrase.ts";
import { count } from "./spelt.ts";

const lead = "(?:(?:ok|okay|and|so|oh|well|right|no|but|hm|sorry|actually),? )*";
const who = "(?:(?: of (?:them|us|the [a-z]+|my [a-z]+))| guests?| people| friends?| kids| heads)";
const out = `(?:${count}|some|a few|a couple)${who}? (?:(?:have|has|just|now|are|is|will|all) )*(?:(?:can'?t|cannot|can not|couldn'?t|won'?t|aren'?t|are not|isn'?t|not|don'?t) (?:be )?(?:come|coming|make it|there|turn(?:ing)? up|show(?:ing)? up)(?: now| after all| any ?more)?|cancell?ed|dropped out|bailed(?: out)?|called off|pulled out|backed out|fell ill|(?:are |is )?(?:ill|sick|out(?! of)))`;
const joint = "(?:,|;|\\.| -)?(?: (?:but|and|yet|though|still|anyway))*";
const stays = `(?: ?(?:i|we)(?:'ll| will| do)?)?(?: (?:still|keep|make|need|want|do|have|bake|take|leave|stick with|stay with)(?: (?:need|want|do|have|make|bake|it|at|on|all|of|as))*)(?: the)? (${count})(?: (?:macarons|macs|of them|anyway|though|please|still|pls|all the same|as planned))*`;
const same =
  " (?:the number|the amount|it all|everything|as many|the rest) (?:stays?|is the same|remains|doesn'?t change)(?: as (?:it is|is|planned)| the same)?";
const end =
  "(?:[,.;]? ?(?:and |but |only |just |make it (?=.*(?:later|earlier|sooner)))*(?=\\S)|(?= ?[.!?]*$))";

const numbered = new RegExp(`(?:^| )(?!one of )${count}(?= )`);

export const stillAsMany = (): readonly Phrase[] => [
  {
    marks: [
      " come",
      " coming",
      "make it",
      " there",
      "turn up",
      "show up",
      "turning up",
      "cancel",
      "dropped out",
      "bailed",
      "called off",
      "pulled out",
      "backed out",
      " ill",
      " sick",
      " out",
    ],
    from: new RegExp(`^${lead}${out}${joint}${stays}${end}`, "g"),
    to: (...found) => {
      const [said = "", many = ""] = found;
      const rest = String(found.at(-1))
        .slice(said.length)
        .replace(/[ .!?]+/g, "");
      if (rest === "") return `make it ${many}`;
      return /later|earlier|sooner/.test(rest) ? `make it ${many}, ` : `${many} macarons, `;
    },
  },
  {
    marks: [" stay", " same", " remains", "change"],
    from: new RegExp(`^${lead}${out}${joint}${same}(?:[,.;]? ?(?:and |but |only |just )*(?=\\S))`, "g"),
    to: "",
  },
  // "6 people cancelled, an hour later": how many macarons that leaves nobody said
  {
    marks: [
      " come",
      " coming",
      "cancel",
      "dropped out",
      "bailed",
      "pulled out",
      "backed out",
      " ill",
      " sick",
    ],
    from: new RegExp(
      `^${lead}${out}(?:(?:,|;|\\.| -)? ?(?:and |so |but |only )*(?:make it )?(?=(?:an?|half an|\\d+) (?:hours?|min\\w*|half) (?:later|earlier|sooner))|(?= ?[.!]*$))`,
      "g",
    ),
    to: (...found) => {
      const [said = ""] = found;
      // with another order behind it, a number that was told is not to be lost: "6 people cancelled, half an hour later"
      const isAlone = String(found.at(-1)).length <= said.length + 2;
      return isAlone ? "some cancelled" : numbered.test(said) ? "some cancelled. " : "";
    },
  },
  // "8 of them can't come, so 22"
  {
    marks: [" so "],
    from: new RegExp(
      `^${lead}${out}(?:,|;|\\.| -)? so (?:(?:it'?s|that'?s|make it|make|only|just|now|then|we need|i need|down to) )*(${count})(?: (?:macarons|macs|now|then|please|of them|will do|is enough))*(?= ?[.!?]*$|,? (?:and )?(?:an?|half an|\\d+) (?:hours?|min\\w*|half) (?:later|earlier|sooner))`,
      "g",
    ),
    to: "make it $1",
  },
  // "an hour later please, still 30"
  {
    marks: [" still "],
    from: new RegExp(
      `(?<=\\b(?:later|earlier|sooner)\\b[^\\d]{0,20}),? (?:and |but )*still (?:(?:need|want|make|do|for|the|all|of) )*(${count})(?: (?:macarons|macs|of them|please|though|pls|anyway))*(?= ?[.!?]*$)`,
      "g",
    ),
    to: ", $1 macarons",
  },
];
