/** Timers ordered with one hand: "+ tmr 11m", "set 2 tmrs 12m bake 30m rest", "10 min tmr lids", "bake 15 go". */
import { smallNumbers } from "../../../../data/words/numbers.ts";
import type { Phrase } from "./phrase.ts";
import { count } from "./spelt.ts";

const time = "\\d+(?:[.,]\\d+)? ?(?:m|mins?|minutes?|h|hrs?|hours?|s|secs?|seconds?)";
const timer = "(?:tmr|timr|timer|alarm)";

/** "12m bake 30m rest": an order for each, where as many lengths stand there as timers were said, each with its name. */
function severalTimers(said = "", lead = "", many = "", list = ""): string {
  const number = Number(smallNumbers[many] ?? many);
  const chunks = list.split(/ ?[,;&+] ?| and | n /).filter(Boolean);
  const name = "((?!for\\b)[a-z]+(?: [a-z]+)?(?: \\d)?)";
  const first = new RegExp(`(${time})(?: for| on)? (?:the )?${name}(?= \\d|$)`, "g");
  const last = new RegExp(`${name},? (?:for )?(${time})(?= [a-z]|$)`, "g");
  const pairs = (whole: RegExp, isLengthFirst: boolean) => {
    const found = chunks.flatMap((each) => [...each.matchAll(whole)]);
    const taken = found.reduce((sum, [each]) => sum + each.length, 0);
    const all = chunks.reduce((sum, each) => sum + each.trim().length, 0);
    // nothing else may stand between them
    return found.length === number && taken + found.length >= all
      ? found.map(([, a = "", b = ""]) => (isLengthFirst ? [a, b] : [b, a]))
      : undefined;
  };
  const each = number > 1 ? (pairs(first, true) ?? pairs(last, false)) : undefined;
  return each ? `${lead}${each.map(([long, what]) => `set a ${long} timer for ${what}`).join(", ")}` : said;
}

export const oneHandedTimers = (): readonly Phrase[] => [
  // "tmr 11m", "11m tmr": beside so many minutes it is a timer, and no tomorrow
  {
    marks: ["tmr"],
    from: new RegExp(`\\btmr(?=(?: (?:for|of|at|set))? ${time}\\b)|(?<=\\b${time} )tmr\\b`, "g"),
    to: "timer",
  },
  // "set 2 tmrs 12m bake 30m rest": each by itself, as many as were said
  {
    marks: ["timers", "tmrs", "timrs"],
    from: new RegExp(
      `^((?:(?:ok|and|so|now|pls|please),? )*)(?:(?:set|start|run|put on|i need|need|give me) )?(${count}) (?:timers|tmrs|timrs)(?: (?:pls|please|on|going))?[,:.;]? (?:for )?((?=.*${time}).+?)(?: (?:pls|please))?(?= ?[.!]?$)`,
      "g",
    ),
    to: severalTimers,
  },
  // "10 min tmr lids", "tmr 10m pink tray": a name right behind it
  {
    marks: ["tmr ", "timer "],
    from: new RegExp(
      `^((?:(?:ok|and|so|now|set|start|a|put|pls),? )*)(?:(${time}) (?:tmr|timer)|(?:tmr|timer) (${time})) (?!(?:for|please|pls|plz|on|go|now|set|start|off|up|too|also|and|then|when|until|till|at|in|of|is|was|left|more|less|running|with|to|from|the|my|a|an|again|instead|thanks|thx|ta|or|n|but|as|not|no|so|ok|if|how|what|longer|extra|timer|tmr|each|both|called|named|name|call|by|starting|ago)\\b)([a-z]+(?: tray| batch| shells| one)?)(?= ?[.!]?$)`,
      "g",
    ),
    to: (_said, lead = "", one, other, name = "") => `${lead}${one ?? other} timer for ${name}`,
  },
  // "4% mint flvr in 210 bc + tmr 11m", "... + 11m bake timer": two things wanted, and no sum
  {
    marks: ["+"],
    from: new RegExp(
      ` ?\\+ ?(?=(?:(?:also|then|set|start|put|a|an|my|another|on|the) )*(?:${time} )?(?:(?!timer|tmr|timr|alarm)[a-z]+ ){0,2}${timer}\\b)`,
      "g",
    ),
    to: " and ",
  },
  // "tmr 11m + 4% mint flvr in 210 bc": what stands behind has another measure
  {
    marks: ["+"],
    from: new RegExp(
      ` ?\\+(?<=(?:\\b${timer}\\b[^+]*\\b${time}(?: [a-z]+)?|\\b${time} (?:[a-z]+ )?${timer}) ?\\+) ?(?=\\d+(?:[.,]\\d+)? ?(?:%|g\\b|gr\\b|grams?\\b|oz\\b|c\\b|f\\b|cups?\\b|tbsp\\b|tsp\\b|macs?\\b|macarons\\b)|[a-z])`,
      "g",
    ),
    to: " and ",
  },
  // "bake 15 go": minutes, of the step
  {
    marks: [" go", " start"],
    from: /^(bake|rest|cool|chill|ganache) (\d{1,3}) (?:go|start)(?= ?[.!]*$)/g,
    to: "start a $1 timer for $2 min",
  },
];
