/** What she always does, told as it comes: "i rest mine 40 min, bake 15 min, always": from now on, and no timers. */
import type { Phrase } from "./phrase.ts";
import { count as digits } from "./spelt.ts";

/** "four" is no beginning of "fourteen". */
const count = `${digits}(?!t?een|t?y)`;

const lead = "(?:(?:ok|okay|and|so|oh|well|just|btw|fyi|remember|note|know|that|please|save),? )*";
const always =
  "(?:always|every (?:single )?time|each time|as a rule|usually|normally|generally|by default|as standard|as usual|without fail|from now on|always have|always do|always will|that never changes|its always)";
const who =
  "(?:(?:for me|with me|here|at mine|in my kitchen|round here),? )?(?:its |it's |it is )?(?:i|we|mine|ours|(?:my|our) (?:shells|macarons|macs|trays|batches|ones)|the shells|they)?";
const units = "(?: ?(?:minutes?|mins?|min|m|hours?|hrs?|h|days?))";
const steps = "rests?|resting|bakes?|baking|cools?|cooling|dry|dries|drying|matures?|maturing";
const what = "(?:mine|them|everything|all of them|it|my (?:shells|macarons|macs|trays|batches)|the shells)";
const habit = `(?:(?:${always} )?(?:i )?(?:let ${what} )?(?:${steps})(?: ${what})?(?: for| is| at)?(?: about)? (?:${count})(?:${units})?|(?:a |an |the )?(?:${count})(?:${units})? (?:of |to |in the |for (?:the )?)?(?:${steps}|oven))`;
const one = new RegExp(
  `\\b(${steps})(?: ${what})?(?: for| is| at)?(?: about)? (${count})(${units})?|(${count})(${units})? (?:of |to |in the |for (?:the )?)?(${steps}|oven)`,
  "g",
);
const stem = (said: string): string =>
  /^rest|^dr/.test(said) ? "rest" : /^cool/.test(said) ? "cool" : /^mat/.test(said) ? "mature" : "bake";

/** Her steps with their minutes, as they are set. */
function fromNowOn(said = ""): string {
  if (
    !/\d ?(?:m|min|mins|minutes?|h|hrs?|hours?|days?)\b|[a-z] (?:minutes?|mins?|min|hours?|days?)\b/.test(
      said,
    )
  )
    return said;
  const found = [...said.matchAll(one)].map(([, before, number, unit, first, behind, after]) => {
    const [step = "", many = "", length] = before ? [before, number, unit] : [after, first, behind];
    return `${stem(step)} ${many}${length ?? " min"}`;
  });
  return found.length === 0 ? said : `from now on i ${found.join(" and ")}`;
}

const joint = "(?:,? and |, (?:then )?|,? then | )";
const row = `${habit}(?:${joint}${habit}){0,2}`;
/** "..., remember it", "... keep that in mind": the order stands behind. */
const keeps =
  "(?:[,.;:]? (?:and |so |please |just |you should |do )*(?:remember|keep|note|save|store|know)(?: (?:it|that|this|them))?(?: (?:in mind|for me|down|as (?:my|a) (?:habit|rule|standard|default|setting)|for (?:next time|later|the future)))*)?";
const end = `${keeps}(?:,? (?:please|pls|thanks|for me|here|now))*[ .!]*$`;

export const habits = (): readonly Phrase[] => [
  // "i pipe 4.5 cm shells now, keep it so"
  {
    marks: ["keep it", "keep them", "leave it", "stay so", "stays so"],
    from: /^((?:(?:ok|okay|so|and|right),? )*(?:i|we|my|our|mine)\b[^\d]{0,60}\d.{0,60}?)[,.;]? ?(?:and |please |so )*(?:(?:keep|leave) (?:it|them|that) (?:so|that way|like that|like this|at that|from now on)|(?:and )?(?:it|that) stays so)(?: (?:please|pls|from now on|now|then))*(?= ?[.!]*$)/g,
    to: "$1, remember that",
  },
  {
    marks: [
      "always",
      "every",
      "each time",
      "as a rule",
      "usually",
      "normally",
      "generally",
      "by default",
      "as standard",
      "without fail",
      "as usual",
    ],
    from: new RegExp(
      `^${lead}(?:${always},? )?${who} ?(?:${always},? )?${row},? (?:i |thats |its |just )*${always}${end}`,
      "g",
    ),
    to: fromNowOn,
  },
  {
    marks: ["always", "as a rule", "usually", "normally", "generally", "by default", "without fail"],
    from: new RegExp(`^${lead}(?:${always},? ${who}|${who} ?${always},?) ?${row}${end}`, "g"),
    to: fromNowOn,
  },
  // "remember that i rest 40 min and bake 15"
  {
    marks: ["remember ", "note that i", "know that i", "save that i"],
    from: new RegExp(
      `^(?:(?:ok|okay|and|so|please),? )*(?:remember|note|save|you should know) (?:that )?i (?:${always} )?${row}${end}`,
      "g",
    ),
    to: fromNowOn,
  },
];
