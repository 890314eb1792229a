/** A timer of a step, ordered or asked about in passing: "on its usual timer", "ganache timer on too", "left to rest". */
import type { Phrase } from "./phrase.ts";
import { count } from "./spelt.ts";

export const timersInPassing = (): readonly Phrase[] => [
  // "need a timer going": one that is to be set
  {
    marks: ["timer going", "timer running", "timer on"],
    from: /^((?:(?:ok|so|and|i|we|just|also|please) )*(?:need|want|get me|lets have|lets get) )(?:a|the) timer (?:going|running|on)(?= ?[.!]*$)/g,
    to: "$1a timer",
  },
  // "14 min for tray 1, and the next tray wants 35 to rest": minutes, as the others are
  {
    marks: [" to rest", " to chill", " to cool", " to dry", " to bake", " resting"],
    from: new RegExp(
      `(?<=\\b(?:min|mins|minutes?|timers?|alarm|set|start)\\b.*\\b(?:wants?|needs?|gets?|takes?|has|and|for|then)(?: about| another)?) (${count}) (?=(?:to (?:rest|chill|cool|dry)|resting)\\b)(?!0|[1-4] )`,
      "g",
    ),
    to: " $1 min ",
  },
  // "put the ganache on its usual timer"
  {
    marks: ["usual timer", "normal timer", "standard timer", "regular timer"],
    from: /\b(?:put|set|get|stick|pop|start|have) (?:the |my |that )?([a-z]+(?: [a-z]+)?) (?:on|onto|to|with) (?:its|the|their|a|my) (?:usual|normal|standard|regular) timer\b/g,
    to: "start the $1 timer",
  },
  // "how long do they have left to rest": of the timer
  {
    marks: ["left to rest", "left to bake", "left to cool", "left to set", "to go resting", "still to rest"],
    from: /^((?:(?:and|so|ok),? )*)how (?:long|much longer|many minutes|much time) (?:do|does|have|has|is|are) (?:they|it|the \w+|my \w+) (?:have |got )?(?:left|still)(?: got)? to (rest|bake|cool|set)(?=\W*$)/g,
    to: "$1how long left on the $2 timer",
  },
  // "..., cream for piping. ganache timer."
  {
    marks: ["ganache timer", "buttercream timer"],
    from: /([.;!] ?)(ganache|buttercream) timer(?= ?[.!]*$)/g,
    to: "$1start the $2 timer",
  },
  // "..., ganache timer on too"
  {
    marks: ["timer on", "timer going", "timer running"],
    from: /(?:,|\band|\bplus|\bwith|&) (?:the )?(ganache|rest|bake|cooling|buttercream) timer (?:on|going|running)(?: too| as well| also| please| pls)*(?= ?[.!]*$)/g,
    to: ", and start the $1 timer",
  },
  // "log peach batch, good feet. and a timer, 20 min"
  {
    marks: [" a timer,"],
    from: /\b(and|plus|also) (?:set )?a timer, (\d+(?:[.,]\d+)? ?(?:m|mins?|minutes?|h|hours?))\b/g,
    to: "$1 set a timer for $2",
  },
  // "five minutes longer it is damp in here": why, and no timer's name; "5 minutes more, it's the ganache one" says which
  {
    marks: ["longer", "more", "less", "shorter", "extra"],
    from: /(?<=^(?:(?:and|ok|so|no|oh|give it|make it|another|please),? )*(?:\d+|five|ten|fifteen|twenty|two|three|four|six|eight) ?(?:minutes?|mins?) (?:longer|more|less|shorter|extra)),? (?:because |as |since |cos )?(?:it is|it's|its|they are|they're|theyre|(?:the|my) (?:kitchen|room|air|weather|day|house|flat) (?:is|feels)|(?:the|my) shells are)(?: (?:so|very|really|quite|rather|too|still|a bit|a little|just|not|all|pretty|awfully|that))* (?:damp|wet|humid|muggy|moist|cold|cool|chilly|warm|hot|raining|rainy|pouring|foggy|steamy|stuffy|sticky|tacky|dry|soft|pale|raw|done|ready|set)(?: (?:in here|here|today|tonight|outside|in the kitchen|in this kitchen|yet|now|still|out|enough))*(?= ?[.!]*$)/g,
    to: "",
  },
];
