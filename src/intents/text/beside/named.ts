/** Numbers by which something is called: "order #311", "tray no 2", "batch 14 in my book", "page 12". */
import { countedToo, countedTooWords, numbered, numberedWords } from "../../../../data/words/told-beside.ts";
import { bareName, clauseStart, whole } from "./pieces.ts";
import type { ToldBeside } from "./told-beside.ts";

const count = `(?<!\\d[.,]?)\\d{1,6}[a-d]?${whole}`;
const digits = `${count}${bareName}`;
/** What it does there: nothing that a number is needed for. */
const does =
  "(?:'?s| is| was| are| looks?| came| comes| went| has| had| says| said| reads| wants?| wanted| needs| got| gets| asks?(?: for)?| orders| ordered| booked| stuck| broke| bought| now| again| please| of (?:my|the|this) \\w+| (?:in|on) (?:my|the|this|her|our) (?:list|sheet|plan|menu|board|book|notebook|folder|file|list|binder|series|pile|stack|album|oven|freezer|fridge)| out| on the go)";
const of = `(?: ?(?:of|/) ?\\d{1,4}${bareName})`;
const says = "(?: (?:says|said|reads|asks for|calls for|wants)(?=:? \\d):?)?";

export const named: readonly ToldBeside[] = [
  // "order #311", "tray no 2", "the lady at number 15"
  {
    is: "a number that names something",
    marks: ["#", "no.", "nr", "num", "no ", "№"],
    said: new RegExp(
      `(?:\\b(?:(?:${numbered}|${countedToo}) )|\\b(?:at|from|in|by|for|to) (?=no |no\\. ?\\d|nr|num|#))(?:(?:no|nr|num|number)\\.? ?|# ?)+${digits}${of}?${says}|(?<=^|[ (])# ?${digits}|(?<!\\b(?:what|which|the|a|any|this|that|right|wrong|same|total|round) )\\b(?:number|no\\.) ?${digits}(?=${does})`,
      "g",
    ),
    unless: ["words", "timers"],
  },
  // "page 12 of my book", "order 88 says"
  {
    is: "a number that names something",
    marks: numberedWords,
    numbered: new Set(numberedWords.flatMap((word) => [word, `${word}s`])),
    said: new RegExp(
      `${clauseStart}(?:(?:its|it's|this is|thats|that's|im|i'm|we're|were|now|up|to|from|in|on|see|for|the|at) )*${numbered} ${digits}(?: (?:of|in|from) (?:my|the|this|that|her|his) (?:\\w+ )?(?:book|cookbook|folder|list|binder|recipe|series))?${says}(?=${does}| ?(?:[:,.;!?)-]|$)| \\d|(?<=(?:says|said|reads|for|wants):?))`,
      "g",
    ),
    unless: ["words", "called"],
  },
  // "take 2: 260 g buttercream"
  {
    is: "a number that names something",
    marks: ["take ", "attempt ", "try ", "step ", "round ", "part ", "stage ", "batch ", "lot "],
    said: new RegExp(
      `^(?:(?:ok|right|so|and|now|on to|this is|its|it's),? )*(?:take|attempt|try|step|round|part|stage|batch|lot) ${digits} ?[:-] ?(?!.*\\b(?:take|attempt|try|step|round|part|stage|batch|lot) \\d)`,
      "g",
    ),
    unless: ["words", "timers"],
  },
  // "show me summer 8": what something is called
  {
    is: "a number that names something",
    marks: ["show ", "open ", "load ", "print ", "find "],
    said: /(?<=\b(?:show|open|load|find|print)(?: (?:me|us|my|the|up|out))* (?!(?:timer|timers|note|notes|day|step|batch|plan|tray|label|batter|filling|macarons|macs|shells|cream|buttercream|ganache|price|cost|shopping|list|for|last|these|those|first)\b)[a-z]{3,}) \d{1,4}(?= ?[.?!]?$)/g,
    unless: ["words", "timers"],
  },
  {
    is: "a page",
    marks: ["p.", "pp."],
    said: new RegExp(`(?:\\b(?:see|on|from) )?\\bpp?\\. ?${digits}`, "g"),
  },
  // "box 4 of 6", "tray 2 of 3"
  {
    is: "a number that names something",
    marks: [" of ", "/"],
    numbered: new Set(countedTooWords),
    said: new RegExp(
      `(?:\\b(?:its|it's|this is|now|from|in|on|for|at|the) )*\\b${countedToo} ${count}${of}`,
      "g",
    ),
    unless: ["words", "called"],
  },
  // "batch 14 in my book", "tray 2 is bent", "step 3 now"
  {
    is: "a number that names something",
    marks: countedTooWords,
    numbered: new Set(countedTooWords),
    said: new RegExp(
      `${clauseStart}((?:(?:its|it's|this is|thats|that's|now|from|in|on|for|at|the|with) )*\\b${countedToo}) ${digits}(?=${does}(?: |[,.;:!?)]|$))`,
      "g",
    ),
    leaves: "$1",
    unless: ["words", "called"],
  },
];
