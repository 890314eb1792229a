/** "the left ones cracked the right are fine": two parts of a tray, told without a stop between them. */
import type { Phrase } from "./phrase.ts";

const part = "(?:the )?(?:left|right|back|front|top|bottom|middle|outer|inner|others?|rest|edge)";
const fine =
  "(?:are|were|is|was|look|looks|looked|came out|seem|turned out)(?: all| just| still| quite)* (?:fine|ok|okay|good|perfect|alright|great|lovely|pale|right)";

export const someAreFine = (): readonly Phrase[] => [
  {
    marks: [
      "cracked ",
      "browned ",
      "burnt ",
      "hollow ",
      "lopsided ",
      "wrinkled ",
      "flat ",
      "cracking ",
      "feet ",
    ],
    from: new RegExp(
      `\\b(cracked|cracking|browned|burnt|hollow|lopsided|wrinkled|flat|no feet)(?:,)? (?=${part}(?: (?:ones?|side|half|row|shells|tray))? ${fine}\\b)`,
      "g",
    ),
    to: "$1, ",
  },
];
