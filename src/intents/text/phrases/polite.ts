/** Questions and orders put indirectly: "I wonder whether you could ...", "might I ask ...", "..., would you say?". */
import type { Phrase } from "./phrase.ts";

/** Where one may begin: a turn, a sentence, what follows a comma or "and". */
const start = "(?<=(?:^|[.?!;:] |, |(?:^|[ ,])(?:and|so|now|then|but|well|please|kindly) ))";

const asWhat =
  "(?=(?:how|what|whats|what's|which|when|where|why|(?:at|by|in|for|of|to|on|until|from) (?:what|which|how|when))\\b)";

/** What is ordered of a helper, and asked of nobody as advice; "would you put salt in" asks what is good. */
const orders =
  "(?:set|start|begin|stop|cancel) (?:the|an?|my|it|that|this|those|them|both|all|me|another|two|three)\\b|wake|ring|remind|tell(?! (?:me|us),)|show|estimate|work out|work back|reckon up|divide|scale|write|note|record|save|list|draw up|plan|convert|undo|remember|judge|repeat|make (?:an? |me an? )?(?:quick |short )?note|make it|add (?:to (?:that|the|my|it)|that|this|it)\\b|put (?:it|this|that|them|those|these|all)|get (?:it|this|that) (?:noted|down)|bear in mind|keep (?:that|it|this)";

const politely = "(?:please |kindly |just |possibly |perhaps |now |also |then |be sure to )*";

/** What somebody may be asked not to mind doing. */
const doing: Record<string, string> = {
  setting: "set",
  starting: "start",
  stopping: "stop",
  cancelling: "cancel",
  canceling: "cancel",
  putting: "put",
  noting: "note",
  logging: "log",
  jotting: "jot",
  writing: "write",
  saving: "save",
  keeping: "keep",
  remembering: "remember",
  telling: "tell",
  reminding: "remind",
  showing: "show",
  giving: "give",
  adding: "add",
  taking: "take",
  making: "make",
  splitting: "split",
  dividing: "divide",
  scaling: "scale",
  converting: "convert",
  working: "work",
  doubling: "double",
  halving: "halve",
  undoing: "undo",
  planning: "plan",
  listing: "list",
  changing: "change",
  calling: "call",
  checking: "check",
  turning: "turn",
};

export const polite = (): readonly Phrase[] => [
  // "now divide 500 by 8 for me"
  {
    marks: [" for me"],
    from: /^((?:(?:ok|and|now|so|then|please|can you|could you|would you),? )*(?:divide|multiply|add|subtract|work out|calculate|double|halve|convert|turn) [^?]*?\d[^?]*?),? for me(?= ?[.!?]*$)/g,
    to: "$1",
  },
  // "would you mind setting me a timer": an order; "setting" alone is a ganache's
  {
    marks: ["you mind ", "you terribly mind", "you awfully mind"],
    from: new RegExp(
      `${start}(?:would|do) you (?:terribly |awfully )?mind (?:awfully |terribly |very much |please |just |possibly )*(${Object.keys(doing).join("|")})(?= [a-z0-9£$€½¼¾])`,
      "g",
    ),
    to: (whole = "", verb = "") => doing[verb] ?? whole,
  },
  // "i wonder whether you could tell me", "would you be so good as to", "i'd be obliged if you would"
  {
    marks: [
      " i wonder",
      " wondering",
      "might you ",
      " may i ",
      " could i ",
      "perhaps you",
      "so good as",
      "so kind as",
      "good enough to",
      "kind enough to",
      "if you",
      "ask you to",
    ],
    from: new RegExp(
      `${start}(?:i (?:do |just )?wonder(?:ed)? (?:whether|if) (?:you(?:'d| could| can| might| would| may| will)|i (?:could|might|may) (?:trouble|ask) you to)|i (?:was|am) (?:just )?wondering (?:whether|if) you(?:'d| could| can| might| would)|i'm (?:just )?wondering (?:whether|if) you(?:'d| could| can| might| would)|might you|(?:may|could|might) i (?:trouble|ask) you to|perhaps you(?:'d| would| could| might)|(?:(?:would|could|will) you )?be (?:so |very )?(?:good|kind)(?: enough)?(?: as)? to|i(?:'d| would| should) be (?:most |very |so |much )?(?:glad|grateful|obliged|pleased|happy) if you(?:'d| would| could| might)|i(?:'d| would) ask you to) ${politely}(?:tell me, )?(?=[a-z])`,
      "g",
    ),
    to: "",
  },
  // "kindly put it on record": an order
  {
    marks: [" kindly ", " pray "],
    from: /^((?:(?:and|now|so|then|also|please),? )*)(?:kindly|pray),? (?=[a-z])/g,
    to: "$1",
  },
  // "you might stop it now": an order
  {
    marks: ["you might ", "you may ", "you'd better "],
    from: new RegExp(
      `^((?:(?:and|now|so|then|well|ok|yes),? )*)you (?:might|may|could)(?: as well| just| now)? (?=(?:${orders})\\b)`,
      "g",
    ),
    to: "$1",
  },
  // "might i ask how much ...", "i was hoping to learn what ...", "would you know which ..."
  {
    marks: [
      "i wonder",
      "wondering",
      "might i ",
      "may i ",
      "to know",
      "to learn",
      "to hear",
      "to ask",
      "find out",
      "you know",
      "you say",
      "you happen",
      "any notion",
      "any idea",
    ],
    from: new RegExp(
      `${start}(?:i (?:do |just )?wonder(?:ed)?|i(?:'m| am| was) (?:just )?wondering|(?:might|may) i (?:just |kindly )?(?:ask|know|learn|hear|enquire|inquire)(?: you)?|i (?:was|am|had been) (?:hoping|wanting|wishing|meaning) to (?:learn|know|ask|find out|hear)|i(?:'d| would| should) (?:(?:rather )?like|love|be (?:glad|pleased|curious|interested|keen|happy)) to (?:know|learn|hear|ask|find out)|(?:would|might|could) you (?:happen to )?(?:know|say)|(?:would|do|might) you have any (?:idea|notion)|have you any (?:idea|notion))(?:,? (?:too|also|as well|further|besides|then))?,? ${asWhat}`,
      "g",
    ),
    to: "",
  },
  // "what almond flour have i left, might i ask?", "how long, may i ask, should they rest"
  {
    marks: [
      ", i wonder",
      ", may i",
      ", might i",
      ", if i m",
      ", do you",
      ", would you",
      ", can you say",
      ", could you say",
      "afraid",
      "sorry to say",
      ", if you",
    ],
    from: /, (?:i wonder|(?:may|might|if) i (?:may |might )?(?:just )?(?:ask|enquire|inquire|be so bold)|do you (?:think|suppose|reckon|know)|(?:would|could|can) you (?:say|think|suppose|reckon|know|guess)|i(?:'m| am) (?:afraid|sorry to say)|(?:would|will|could) you(?: please)?(?= ?[?.!]|$)|if you (?:would|could|will|please)(?: be so (?:kind|good))?)(?:,(?= [a-z])|(?= ?[?.!]|$))/g,
    // "one was cracked, i'm afraid, so its five whites": two things told, as before
    to: (whole = "") => (/^, i.*(?:afraid|sorry).*,$/.test(whole) ? "," : ""),
  },
  // "would you kindly divide 600 g into four": an order
  {
    marks: ["would you ", "could you ", "will you "],
    from: new RegExp(`${start}(?:would|could|will) you ${politely}(?=(?:${orders})\\b)`, "g"),
    to: "",
  },
  // "might i see the quince note?"
  {
    marks: ["might i ", "may i ", "let me see"],
    from: new RegExp(
      `${start}(?:might|may) i (?:please |just )?(?:see|look at|have a (?:look|peek) at|read)(?= (?!if\\b|whether\\b))`,
      "g",
    ),
    to: "show me",
  },
];
