/** An order that comes wrapped up, wherever it stands in the turn: "..., and you could set off the timer too". */
import type { Phrase } from "./phrase.ts";

/** What is ordered of a helper and asked of nobody: a timer and a note. "you could add butter" is advice. */
const ordered =
  "(?:(?:set|start|kick|fire|begin|run|stick|put|get|pop)(?: me)?(?: off| up| on)? (?:(?:the|an?|my|another|that|its|\\d+|[a-z]+ ?min(?:ute)?s?) )?(?:[a-z0-9-]+ ){0,3}?(?:timers?|alarms?|countdown|clock)\\b|(?:ping|ring|buzz|nudge|alert|wake|warn) me\\b|note (?:that|down|it)|jot (?:that|down|it)|log (?:that|it|this)|remind me|remember that)";
const wrap = [
  "you (?:might|may|could|can|should)(?: as well| just| also| now| please| then| perhaps)*",
  "you(?:'d| had)? (?:better|best)(?: just| also)?",
  "(?:we |i )?(?:might|may) as well(?: just| also)?",
  "(?:do )?feel free to(?: just| also)?",
  "(?:please )?go ahead and(?: just| also)?",
  "be (?:a (?:dear|love|star|pal|angel)|so kind|so good)(?: as)?(?: and| to)",
  "do me a favou?r and",
  "while (?:you'?re|you are|we'?re|im|i'm|youre) (?:at it|there|about it),?(?: (?:just|also|please|you could|you can|could you|can you))*",
  "(?:kindly|if you (?:would|like|please|could|will|dont mind|don't mind),?)(?: (?:also|just|please))*",
  "(?:oh and )?you(?:'re| are|re) (?:more than )?welcome to(?: just| also)?",
  "you(?:'d| would|d)? be (?:a (?:star|love|dear|gem|angel|pal|treasure)|kind|so kind) (?:to|and|if you)",
  "if you (?:wouldn'?t|would not|don'?t|do not) mind,?(?: (?:just|also|please))*",
  "(?:could|can|would|will|might) you (?:perhaps|possibly|maybe|kindly|be so kind as to|be a dear and|be a love and)",
  "it (?:would|wouldn'?t) (?:be (?:good|nice|great|lovely|handy|helpful) (?:to|if you(?:'d| would| could)?)|hurt to)",
  "why (?:don'?t|not) you(?: just| also)?",
].join("|");
const doing: Record<string, string> = {
  setting: "set",
  starting: "start",
  kicking: "start",
  noting: "note",
  putting: "set",
};

export const wrappedOrder = (): readonly Phrase[] => [
  {
    marks: [
      "timer",
      "alarm",
      "countdown",
      "clock",
      "note ",
      "jot ",
      "log ",
      "remind me",
      "remember that",
      " me in ",
      " me at ",
      " me when ",
    ],
    from: new RegExp(
      `(?<=^|[,.;:!?] |\\band |\\bthen |\\balso |\\bso |\\bplus |\\boh )(?:${wrap}) (?=${ordered})`,
      "g",
    ),
    to: "",
  },
  // "no harm in setting the timer too", "how about starting the ganache timer"
  {
    marks: ["setting ", "starting ", "kicking ", "putting "],
    from: /(?<=^|[,.;:!?] |\band |\bthen |\balso )(?:(?:there(?:'s| is|s) )?no harm in|how about|what about|you could try|no objections? to|would you mind|thanks for|nothing against) (setting|starting|kicking|putting)(?: off| up| on)? (?=(?:(?:the|an?|my|another) )?(?:[a-z0-9-]+ ){0,3}?(?:timer|alarm|countdown)\b)/g,
    to: (whole = "", verb = "") => `${doing[verb] ?? whole} `,
  },
  // "set off the ganache timer", "kick off the rest timer", "get the ganache timer going": started
  {
    marks: ["set off ", "kick off ", "fire up ", "start up ", "start off "],
    from: /\b(?:set|kick|fire|start) (?:off|up) (?=(?:the|an?|my|another) (?:[a-z]+ ){0,2}?(?:timer|alarm|countdown)\b)/g,
    to: "start ",
  },
  {
    marks: ["timer going", "timer running", "timer on ", "timer ticking"],
    from: /\b(?:get|set|have|put) ((?:the|an?|my|another) (?:[a-z]+ ){0,2}?timer) (?:going|running|ticking)\b/g,
    to: "start $1",
  },
  // "..., ganache timer too please": ordered with nothing but its name
  {
    marks: [" timer too", " timer as well", " timer also"],
    from: /(?<=\d[^?]{0,80}), (?:and |plus )?(?:the |a |my )?(ganache|rest|bake|cool|cooling|resting|baking|fridge) timer (?:too|as well|also)(?:,? please)?(?= ?[.!]*$)/g,
    to: ", and start the $1 timer",
  },
  // "batter for 40 macarons, you might as well give me the filling too"
  {
    marks: [" filling", " batter"],
    from: new RegExp(
      `(?<=macarons?|macs),?(?: and)? (?:${wrap}) (?:give|tell|show|add|do|work out|throw in|include|get|calculate|figure out)(?: me| us| in)? (?:how much |the |their )*(filling|batter)(?: (?:too|as well|also|for (?:them|those|it|these)|please))*(?= ?[.!?]*$)`,
      "g",
    ),
    to: " and how much $1 for them",
  },
];
