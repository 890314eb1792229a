/** "the ganache looks very loose so give it two hours, put a timer on": the time is said ahead of the order for it. */
import type { Phrase } from "./phrase.ts";

const time =
  "(?:\\d[\\d./ ]{0,6}|(?:[a-z]+ ){1,5}?)(?:h|hrs?|hours?|mins?|minutes?)(?: and (?:a half|a quarter|\\d+ ?min(?:s|utes)?)| \\d+ ?min(?:s|utes)?)?";
const thing = "(?:ganache|buttercream|shells?|curd|batter|filling|caramel|tray|macarons?|meringue|jam|dough)";
const gives =
  "(?:give|giving|leave|leaving|chill|chilling|rest|resting|let|letting|allow) (?:it|them|this|these|(?:the|my) [a-z]+)(?: (?:sit|set|rest|chill|cool|stand|for|another))*";
const timer =
  "(?:(?:put|set|start|stick|pop|run|get|whack|bung) (?:me )?(?:a|the) timer(?: (?:on|going|running))?(?: for (?:it|that|them|this))?|timer on|(?:put|stick|pop) (?:that|it) on a timer)";

const asked =
  /^(?:(?:and|so|but|ok) )*(?:is|are|do|does|did|can|could|may|should|shall|will|would|how|what|when|which|why|note|log|jot|write|record)\b|\b(?:how|what|when|why|should|can|could|shall) (?:i|we|long|much|many|do|does|is|it|they)\b|\bis it (?:ok|okay|safe|fine)\b/;

export const givenTime = (): readonly Phrase[] => [
  // "remind me in 45 to take the butter out", "in 20 remind me about the ganache", "ring in 10": minutes
  {
    marks: [" in "],
    from: /^((?:(?:ok|okay|and|so|now|please|pls|can you|could you|hey|oh|then),? )*(?:(?:remind|ring|buzz|nudge|ping|alert|wake|beep|warn|shout at|poke)(?: (?:me|us))?)(?: (?:again|about|of|to|for)(?: [a-z']+){1,5})?) in (\d{1,3})(?= ?(?:$|[.!?,](?!\d)| (?:to|about|for|that|so|because|please|pls|then|again)\b))/g,
    to: "$1 in $2 min",
  },
  {
    marks: ["in "],
    from: /^((?:(?:ok|okay|and|so|now|please|pls|then),? )*)in (\d{1,3}),? (?=(?:please |can you |could you )?(?:remind|ring|buzz|nudge|ping|alert|wake|beep|warn)\b)/g,
    to: "$1in $2 min ",
  },
  {
    marks: ["timer"],
    from: new RegExp(
      `^((?:[^?\\d]{0,90}[, ])?)(${gives}) (${time}),? (?:(?:and|so|then|please) )*${timer}(?:,? please| for me)?(?= ?[.!]?$)`,
      "g",
    ),
    to: (whole = "", lead = "", order = "", length = "") => {
      // what is told of running timers is meant for them; what is asked or noted ahead stays
      if (/\btimers?\b/.test(lead) || asked.test(lead)) return whole;
      const named = new RegExp(`\\b${thing}\\b`).exec(order) ?? new RegExp(`\\b${thing}\\b`).exec(lead);
      // "let it rest 40 min, timer on": the rest is its name, as it stands
      if (!named && /\b(?:rest|cool|chill)/.test(order)) return whole;
      return `set a ${named ? `${named[0]} ` : ""}timer for ${length.trim()}`;
    },
  },
];
