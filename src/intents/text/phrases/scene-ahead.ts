/**
 * What is told ahead of a question and changes nothing in it: the scale that died, a list that is being written, a
 * memory that fails, who is coming. In the way of patterns that begin with the question, it goes; nothing with a number
 * of its own does.
 */
import type { Phrase } from "./phrase.ts";

/** A clause without a number or a question in it. */
const some = (most: number) => `[^?\\d,:.;]{0,${most}}`;

/** Where a car, a room or a stall stands for the air in it. */
const place = "(?:car|cab|van|boot|room|kitchen|bus|train|tent|stall|flat|garden|garage|hall|marquee|lorry)";
const degrees = "\\d+(?:\\.\\d+)? ?(?:°|degrees?|deg|c\\b|f\\b|celsius\\b|fahrenheit\\b)(?: ?(?:c|f)\\b)?";
const only = "(?:(?:only|just|more like|about|around|at) )*";

export const sceneAhead = (): readonly Phrase[] => [
  // "battery in the scale has died on me, whats that in teaspoons"
  {
    marks: ["scale", "batter"],
    from: new RegExp(
      `^${some(30)}\\b(?:scales?|battery|batteries)\\b${some(30)}\\b(?:died|dead|gone|broken?|flat|packed (?:up|in)|(?:given|gave) up|bust(?:ed)?|knackered|kaput|conked out|on the blink|playing up|empty)\\b${some(20)}[,:.] ?(?:so )?(?=[a-z])`,
      "g",
    ),
    to: "",
  },
  // "i'm writing the next shopping list, how much icing sugar have i got left": asked of what is there
  {
    marks: ["shop", "supermarket", "grocer"],
    from: new RegExp(
      `^${some(30)}\\b(?:shopping|shops?|supermarket|grocer(?:y|ies)|grocers)\\b${some(30)}[,:.] ?(?=(?:so |and )?(?:how much|how many|what|whats|what's|have i|do i)\\b[^?]{0,80}\\b(?:left|have i got|do i have|still (?:have|got)|remains?)\\b)(?!.*\\bfor \\d)`,
      "g",
    ),
    to: "",
  },
  // "my memory's shot after nights, what was i baking last saturday"
  {
    marks: ["memory", "head like", "brain", "mind"],
    from: new RegExp(
      `^${some(30)}\\b(?:memory|head like a sieve|brain|mind)\\b${some(40)}[,:.] ?(?:so )?(?=(?:what|which|when|how|did|have)\\b)`,
      "g",
    ),
    to: "",
  },
  // "my aunt says 75 are coming, so eggs for 75": the number is said again where it is asked of
  {
    marks: [" coming", " expected", " invited", " turning up", " confirmed"],
    from: new RegExp(
      `^${some(40)}\\b(\\d+)(?: (?:people|guests|folks?|of them|of us|kids|heads))? (?:(?:are|is|will be|have|now) )*(?:coming|expected|invited|turning up|confirmed)\\b${some(30)}[,.] ?(?:so |and )?(?=[^,?]{0,60}\\bfor \\1\\b(?![.,]\\d))`,
      "g",
    ),
    to: "",
  },
  // "order up: 575 g macaron batter"
  { marks: ["order up"], from: /^(?:(?:ok|right|so),? )?order up ?[:,!.-] ?(?=\S)/g, to: "" },
  // "ach, plus 5 after all", "+5 after all": so much more
  { marks: ["ach", "och"], from: /^(?:ach|och),? (?=\S)/g, to: "" },
  { marks: ["+"], from: /^\+ ?(\d+)(?= (?:after all|then|please|again)[ .!]*$)/g, to: "plus $1" },
  // "and had it been 20 c in the car", "but if the car was only 20 c": another warmth supposed
  {
    marks: [...place.slice(3, -1).split("|")].map((each) => ` ${each}`),
    from: new RegExp(
      `^(?:(?:and|but|so|or|ok|well),? )*(?:(?:had|were|suppose|if|say|what if|imagine) )(?:(?:it|that|(?:the|my) ${place}) ${only}(?:(?:had|been|was|were|be) )*${only}(${degrees})(?: (?:in|inside|on) (?:the|my|our) ${place}|(?: inside| in there)?(?<=\\b${place}\\b.{0,60})))(?: then| instead)?(?= ?[?.]?$)`,
      "g",
    ),
    to: "what if it had been $1",
  },
];
