/** A question of a step in few words: "minutes per tray?", "bake at 300 f how long", "syrup temp for italian". */
import { openingText } from "../../../../data/words/openers.ts";
import type { Phrase } from "./phrase.ts";

const lead = `(${openingText()})`;
const end = "(?:,? (?:please|pls|then|now))* ?[?.!]*$";
const size = "(?: (?:at|of|for|with) (\\d+(?:\\.\\d+)? ?(?:mm|cm)))?";
const heat = "(\\d{2,3} ?(?:°? ?[cf]\\b|degrees?)?)";

export const askedShort = (): readonly Phrase[] => [
  // "how heavy is a shell", "what does an egg white weigh": one of them
  {
    marks: ["how heavy is ", "what does an egg white weigh", "how much does an egg white weigh"],
    from: new RegExp(
      `^${lead}(?:how heavy is (?:an?|one|each|a single)|(?:what|how much) does an(?= egg white)) (macaron|shell|egg white|egg)(?: weigh)?${end}`,
      "g",
    ),
    to: "$1what does one $2 weigh",
  },
  // "how many minutes per tray at 38 mm": in the oven, and not how many shells
  {
    marks: [" per tray", " a tray", " each tray"],
    from: new RegExp(
      `^${lead}(?:how many (?:minutes|mins)|how long|minutes|mins|what time|time)(?: (?:do i bake|in the oven|to bake|baking))? (?:per|a|for each|for a|each) tray${size}${end}`,
      "g",
    ),
    to: (_said, before = "", of = "") =>
      /^\d/.test(of) ? `${before}how long do i bake ${of} shells` : `${before}how long do i bake a tray`,
  },
  // "oven 300f how long", "how long per tray at 150"
  {
    marks: ["how long", "how many min"],
    from: new RegExp(
      `^${lead}(?:(?:the )?oven|bak(?:e|ing)|baked)(?: (?:is|at|to|on|set to|them at|in|oven at))* ${heat},? (?:so |and |for )?how (?:long|many min(?:ute)?s)(?: (?:for|do|them|the|shells|i|bake|in))*${end}`,
      "g",
    ),
    to: "$1how long do i bake shells at $2",
  },
  {
    marks: [" per tray at "],
    from: new RegExp(`^${lead}how (?:long|many min(?:ute)?s) per tray at ${heat}${end}`, "g"),
    to: "$1how long do i bake shells at $2",
  },
  // "syrup temperature for italian", "what temp sugar syrup"
  {
    marks: ["syrup"],
    from: new RegExp(
      `^${lead}(?:what(?:'s|s| is)? (?:the )?)?(?:(?:temp|temperature|heat) (?:of|for|should be)? ?(?:the )?(?:sugar )?syrup|(?:sugar )?syrup (?:temp|temperature|heat))(?: (?:for|in) (?:the )?(?:italian|meringue|italian meringue|shells))?${end}`,
      "g",
    ),
    to: "$1how hot the syrup for italian meringue",
  },
  // "ship by post in summer ok?"
  {
    marks: ["ship", "post", "mail"],
    from: new RegExp(
      `^${lead}(?:is )?(?:ship|shipping|posting|mailing|sending) (?:them )?(?:by|in|through) (?:the )?(?:post|mail|courier)(?: (?:in|when|while) (?:the )?(?:summer|heat|it's hot|its hot|hot weather))?,? (?:ok|okay|safe|fine|possible|alright)${end}`,
      "g",
    ),
    to: "$1can i ship them by post",
  },
];
