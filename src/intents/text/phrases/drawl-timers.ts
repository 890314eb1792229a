/** Timers in everyday American talk: "gimme fifteen on the shells thats bakin", "holler in ten", "cut off the oven one". */
import type { Phrase } from "./phrase.ts";
import { count } from "./spelt.ts";

/** What is being done to the thing that a timer is for: "thats comin up to room temp", "that are restin". */
const underWay =
  "(?:(?:that|which) (?:just )?went in(?:to the [a-z]+)?|(?:that )?(?:i|we) (?:just )?(?:put|stuck|slid) in|(?:that'?s|that are|that'?re|which is|which are) (?:(?:just|still|now) )?[a-z]+in(?:g|')?(?: (?:off|down|out|up|over|away|along))?(?: (?:to|at) (?:the )?(?:room )?temp(?:erature)?)?(?: (?:in|on) the (?:oven|fridge|freezer|counter|stove|rack|tray))?)";
const length = `(?!(?:one|zero|nil) (?:more )?(?:on|for)\\b)(?:half an hour|an? hour|${count}(?: ?(?:hours?|hrs?|h|minutes?|mins?|min))?)(?: and (?:a half|a quarter|half|${count}))?(?: ?(?:hours?|hrs?|minutes?|mins?|min))?`;
const moreOnThing = new RegExp(
  `(, and |,? and |, )(?:another )?(?:for )?(${length}) (?:more )?(?:on|for) ((?:the|my|those|these|that) (?:[a-z]+ ?){1,3}?)(?:${underWay})?(?=$|,|[.!?]| and )`,
  "g",
);
const onThing = `(${length}) (?:more )?(?:on|for) ((?:the|my|those|these|that) (?:[a-z]+ ){1,3}?)${underWay}`;
/** "fifteen" alone, or behind an hour: minutes. A number by itself is left to the timers, who say that they took it so. */
const inMinutes = (said: string): string =>
  /(?:h|hours?|hrs?|minutes?|mins?|min|half|quarter)$/.test(said) ? said : `${said} min`;
const isNumber = new RegExp(`^${count}$`);

/** An order for the first timer and what is said behind it, of more timers. */
const orderOf = (lead: string, long: string, thing: string, more = "", each = moreOnThing): string => {
  const others = more.replace(
    each,
    (_said: string, joint: string, other: string, what: string) =>
      `${joint}${inMinutes(other)} for ${what.trim()}`,
  );
  const first = isNumber.test(long) && others === "" ? long : inMinutes(long);
  return `${lead}set a timer for ${first} for ${thing.trim()}${others}`;
};

export const drawlTimers = (): readonly Phrase[] => [
  // "gimme a heads up in twenty"
  {
    marks: [
      "heads up",
      "headsup",
      "gimme a holler",
      "gimme a shout",
      "gimme a yell",
      "gimme a ring",
      "gimme a buzz",
    ],
    from: /\b(?:gimme|give (?:me|us)) an? (?:heads ?up|holler|shout|yell|ring|buzz)\b/g,
    to: "give me a shout",
  },
  // "gimme fifteen on the shells thats bakin", "put 12 on the tray that's in and 45 on the ganache that's coolin off"
  {
    marks: [
      "thats",
      "that's",
      "that are",
      "that're",
      "which is",
      "which are",
      "went in",
      "put in",
      "stuck in",
      "slid in",
    ],
    from: new RegExp(
      `^((?:(?:ok|okay|and|now|so|hey|please|then|also),? )*)(?:gimme|give (?:me|us|it)|put|stick|slap|throw|set|start) (?:me )?${onThing}((?:,? and |, ).*)?$`,
      "g",
    ),
    to: (_whole, lead = "", first = "", thing = "", more = "") => orderOf(lead, first, thing, more),
  },
  // "start me fifteen for the oven and thirty for the shells"
  {
    marks: ["start me ", "gimme ", "set me ", "give me "],
    from: new RegExp(
      `^((?:(?:ok|okay|and|now|so|hey|please|then|also),? )*)(?:start|set|gimme|give) (?:me )?(${length}) (?:on|for) ((?:the|my) (?:[a-z]+ ?){1,3}?)((?:,? and |, )(?:another )?(?:for )?${length} (?:on|for) (?:the|my) .*)$`,
      "g",
    ),
    to: (_whole, lead = "", first = "", thing = "", more = "") => orderOf(lead, first, thing, more),
  },
  // "set one for the ganache, 50 minutes, and another for 12 on the shells": a timer, and not one minute
  {
    marks: [" one for", " one on"],
    from: new RegExp(
      `^((?:(?:ok|okay|and|now|so|hey|please|then|also),? )*)(?:set|start|run|gimme|give me)(?: me)? one (?:for|on) ((?:the|my) (?:[a-z]+ ){0,2}?[a-z]+)(?: ${underWay})?,? (?:for |at )?(${length})(,? and .*)?$`,
      "g",
    ),
    to: (_whole, lead = "", thing = "", first = "", more = "") => orderOf(lead, first, thing, more),
  },
  // "holler at me in ten", "give me a shout in twenty for the tray": minutes
  {
    marks: ["holler", "shout", "yell", "buzz", "ping", "beep", "nudge", "poke", "lemme know", "let me know"],
    from: new RegExp(
      `^((?:(?:ok|okay|and|now|so|hey|please|then|also|can you|could you),? )*)(?:(?:holler|shout|yell|buzz|ping|beep|nudge|poke)(?: (?:at|out to))? ?(?:me|us)?|give me a shout|(?:lemme|let me) know) in (?:about |like |another )?(${count})(?= ?$|[.!]| (?:for|on|so|when|please) )(?: (?:on|for) (?=the |my )|(?= ?$|[.!]| ))`,
      "g",
    ),
    to: (whole = "", lead = "", number = "") =>
      `${lead}set a timer for ${number}${/ (?:on|for) $/.test(whole) ? " for " : ""}`,
  },
  // "tack on another five", behind a timer
  {
    marks: ["tack "],
    from: new RegExp(
      `^((?:(?:ok|okay|and|now|so|please|then|also),? )*)tack (?:on )?(?:another |an extra )?(${count})(?: (?:more|extra))?( min(?:ute)?s?)?(?: more| extra)?(?: on)?(?: (?:please|there))?$`,
      "g",
    ),
    to: (_whole, lead = "", number = "", unit = "") => `${lead}add ${number}${unit} more`,
  },
  // "cut off the oven one", "shut that tray timer down": a timer, and nothing is cut
  {
    marks: ["cut ", "shut ", "kill ", "scratch ", "ax ", "nix ", "lose ", "can "],
    from: /^((?:(?:ok|okay|and|now|so|please|then|go ahead and|you can),? )*)(?:(?:cut|shut|kill) (?:off|down|out) (?:the |that |my )?((?:[a-z]+ ){0,3}(?:one|timer|alarm))|(?:scratch|ax|nix|lose|can) (?:the |that |my )((?:[a-z]+ ){0,3}(?:timer|alarm))|(?:cut|shut) (?:the |that |my )?((?:[a-z]+ ){0,3}(?:one|timer|alarm)) (?:off|down))(?=$|[ .!,])/g,
    to: (_whole, lead = "", first, second, third) => `${lead}stop the ${first ?? second ?? third ?? ""}`,
  },
];
