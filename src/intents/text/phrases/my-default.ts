/** What she wants taken for good, told without a verb of keeping: "default diameter 42 mm for me please", "assume 42 mm". */
import type { Phrase } from "./phrase.ts";

const lead =
  "(?:(?:ok|okay|and|so|oh|right|also|please|just|now|can you|could you|would you|lets|let's|hey|remember|for me),? )*";
const please =
  "(?:,? (?:please|pls|thanks|thank you|ok|for me|for us|here|now|from here on(?: out)?|from now on|in future|for good|for ever|always|unless i (?:say|tell you|ask|note) (?:otherwise|different(?:ly)?|something else)|every time|each time|until i say (?:otherwise|different)))*(?:[ .!]*$|[.;!] |, (?:(?:and|so|then|now|ok) )*(?=(?:how|what|whats|batter|filling|macarons|for|\\d|i (?:need|want))\\b)| and (?=(?:how|what|whats|batter|filling)\\b))";
const forGood =
  "(?:from here on(?: out)?|from now on|in future|for good|for ever|unless i (?:say|tell you|ask) (?:otherwise|different(?:ly)?|something else)|until i say (?:otherwise|different)|every time|by default|as (?:my|the|a|our) (?:default|standard|usual|normal|rule))";
const usual = "(?:default|usual|standard|normal|regular|go-to|go to)";
const is = "(?:(?:is|are|=|:|to|at|of|as|should be|shall be|will be|be),? ?)*";
const length = "(\\d+(?:[.,]\\d+)? ?(?:mm|cm|millimet(?:er|re)s?|centimet(?:er|re)s?|inch(?:es)?))";
const size =
  "(?:(?:shell|shells|macaron|macarons|piping|piped) )?(?:size|diameter|width|shells?|macarons?|macs|ones?|discs?|rounds?)";
const wide = "(?: (?:shells?|macarons?|macs|ones|across|wide|in diameter|diameter|each))*";
const takes =
  "(?:use|assume|take|go with|stick to|stick with|keep to|stay with|stay at|reckon with|reckon on|count on|work with|plan with|always use|always take|always assume|have|make it|let it be)";
const sizeMarks = [" default", "usual", "standard", "normal", "regular", "go-to", "go to"];
const keptMarks = [
  "from here on",
  "from now on",
  "in future",
  "for good",
  "for ever",
  "unless i ",
  "until i say",
  "every time",
  "by default",
  "as my ",
  "as the ",
  "as a ",
  "as our ",
];
/** A full stop behind it: what is asked next is a question of its own, and is put as one. */
const shells = (whole = "", said = "", ...found: string[]): string => {
  const rest = String(found.at(-1)).slice(Number(found.at(-2)) + whole.length);
  return `from now on my shells are always ${said}. ${/^(?:batter|filling)\b/.test(rest) ? "how much " : ""}`;
};

const minutes = "(\\d+(?:[.,]\\d+)? ?(?:min|mins|minutes?|m|h|hrs?|hours?))";
const steps = "(rest(?:ing)?|dry(?:ing)?|bak(?:e|ing)|cool(?:ing)?|matur(?:e|ing))";
const stem = (said: string): string =>
  /^(?:rest|dry)/.test(said) ? "rest" : /^cool/.test(said) ? "cool" : /^matur/.test(said) ? "mature" : "bake";

/** How far the oven is off, and which way. */
const offBy = (_whole = "", number = "", scale = "", way = ""): string =>
  `my oven runs ${number} ${scale || "degrees"} ${/^(?:hot|over|high)/.test(way) ? "hot" : "cold"}. `;

/** Told as a habit or as an order to keep it, without the word "default". */
const alwaysSo = (): readonly Phrase[] => [
  // "i only ever pipe 42 mm", "i never pipe anything but 42 mm"
  {
    marks: [" only", " never", "exclusively", "strictly"],
    from: new RegExp(
      `^${lead}(?:i|we) (?:(?:only ever|exclusively|strictly) (?:pipe|make|do|bake|use)|never (?:ever )?(?:pipe|make|do|bake|use) (?:anything|any size|any|sizes?|ones?|other(?: sizes?)?)? ?(?:but|other than|except|bar|besides|than))(?: (?:mine|them|at|to|my (?:shells|macarons)))* ${length}${wide}${please}`,
      "g",
    ),
    to: shells,
  },
  // "permanently 42 mm", "as default id like 42 mm", "save my diameter as 42 mm"
  {
    marks: ["permanently", "as default", "as my default", "as a default", "by default", "as standard"],
    from: new RegExp(
      `^${lead}(?:permanently|(?:as|by) (?:(?:a|my|the) )?(?:default|standard|rule)),? (?:(?:i|we)(?:'d| would)? (?:want|like|take|use|need|have)|id like|use|take|its|it's|make it|go with|set)? ?${length}${wide}${please}`,
      "g",
    ),
    to: shells,
  },
  {
    marks: [" size", "diameter"],
    from: new RegExp(
      `^${lead}(?:save|store|keep|set|put|remember|record|fix|note) (?:down )?(?:my|our) (?:${usual} )?(?:(?:shell|macaron) )?(?:size|diameter)(?: down)? (?:as|at|to|of|:|=|is) ${length}${wide}${please}`,
      "g",
    ),
    to: shells,
  },
  // "my template circles are 42 mm, remember"
  {
    marks: ["template", "stencil", "guide"],
    from: new RegExp(
      `^${lead}(?:my|our) (?:piping )?(?:template|stencil|guide)s?(?:'s)?(?: (?:circles|rings|rounds|discs|spots))? (?:(?:is|are|has|have|measures?|at|of) )+${length}${wide}(?:,? (?:remember|keep|save|note)(?: (?:it|that|this))?)?${please}`,
      "g",
    ),
    to: shells,
  },
  // "let my rest be 45 min always", "put my rest down as 45 min", "make 45 min my usual rest"
  {
    marks: ["always", "for good", "from now on", "by default", " down as", " down at", "unless i"],
    from: new RegExp(
      `^${lead}(?:let|make|put|set|keep|have|save) (?:my|our|the) ${steps}(?: time)?(?: (?:be|at|to|as|for))* (?:down (?:as|at) )?${minutes},? (?:always|${forGood})${please}`,
      "g",
    ),
    to: (_, step = "", time = "") => `from now on i ${stem(step)} ${time}. `,
  },
  {
    marks: [" down as", " down at"],
    from: new RegExp(
      `^${lead}(?:put|note|mark|have|write|set) (?:my|our) ${steps}(?: time)? down (?:as|at) ${minutes}${please}`,
      "g",
    ),
    to: (_, step = "", time = "") => `from now on i ${stem(step)} ${time}. `,
  },
  {
    marks: sizeMarks,
    from: new RegExp(
      `^${lead}(?:make|let|have|use|take|set|keep) ${minutes} (?:be )?(?:as )?(?:my|our|the) ${usual} ${steps}(?: time)?${please}`,
      "g",
    ),
    to: (_, time = "", step = "") => `from now on i ${stem(step)} ${time}. `,
  },
  // "i always dry them 50 min before the oven": a habit, and no timer
  {
    marks: ["always", "usually", "normally", "generally"],
    from: new RegExp(
      `^${lead}(?:(?:i|we) (?:always|usually|normally|generally)|(?:always|usually|normally|generally),? (?:i|we)) (?:let )?(?:(?:them|mine|the shells|my shells|everything) )?${steps}(?: (?:them|mine|the shells|my shells|the trays|everything))?(?: for)?(?: about)? ${minutes} (?:before (?:the oven|baking|i bake|they go in|i bake them|they bake)|first|beforehand|on the (?:rack|counter|tray|side)|in the (?:fridge|open|air))${please}`,
      "g",
    ),
    to: (_, step = "", time = "") => `from now on i ${stem(step)} ${time}. `,
  },
  // "i bake at 150 c for good"
  {
    marks: [" bake"],
    from: new RegExp(
      `^${lead}(?:(?:i|we) )?(?:will |shall )?bake(?: (?:mine|them|everything|my shells))? at (\\d+) ?(?:°|degrees? )?(c|f|celsius|fahrenheit) ${forGood}${please}`,
      "g",
    ),
    to: "my oven setting is $1 $2. ",
  },
  // "usually i bake at 150 for 14 min": shells bake at 130 to 170 °C, 265 to 340 °F, so that the number says its scale
  {
    marks: ["always", "usually", "normally", "generally"],
    from: new RegExp(
      `^(?!.*\\b(?:how|what|when|which)\\b)${lead}(?:(?:i|we) (?:always|usually|normally|generally)|(?:always|usually|normally|generally),? (?:i|we)) bake(?: (?:them|mine|the shells|my shells|everything))? at (\\d+) ?(?:°|degrees? )?(c|f|celsius|fahrenheit)? (?:for )?${minutes}${please}`,
      "g",
    ),
    to: (_, heat = "", scale = "", time = "") =>
      `from now on i bake at ${heat} ${scale || (Number(heat) < 240 ? "c" : "f")} for ${time}. `,
  },
  // "my oven is off by 10 c, it runs hot", "my oven overheats by 10 c", "oven always 5 c too cold here"
  {
    marks: ["oven"],
    from: new RegExp(
      `^${lead}(?:my |our |the )?oven(?:'s|s)? (?:(?:is|always|out|off|runs?|wrong|gets|heats|usually) )*by (?:about )?(\\d+) ?(?:°|degrees? )?(c|f|celsius|fahrenheit)?,? (?:(?:and |but )?(?:it|its|it's|it is) ?)?(?:(?:runs?|gets|is|bakes|too|always) )*(hot|hotter|over|cold|colder|cool|cooler|under|low|high)${please}`,
      "g",
    ),
    to: offBy,
  },
  {
    marks: ["oven"],
    from: new RegExp(
      `^${lead}(?:my |our |the )?oven(?:'s|s)? (?:(?:is|always|usually) )*(?=overheat|overshoot|underheat|undershoot|runs|is)(?:overheats|overshoots|underheats|undershoots) (?:by )?(?:about )?(\\d+) ?(?:°|degrees? )?(c|f|celsius|fahrenheit)?${please}`,
      "g",
    ),
    to: (whole = "", number = "", scale = "") =>
      offBy(whole, number, scale, /\bover(?:heat|shoot)/.test(whole) ? "hot" : "cold"),
  },
  {
    marks: ["oven always", "oven is always", "ovens always", "oven's always"],
    from: new RegExp(
      `^${lead}(?:my |our |the )?oven(?:'s|s)? (?:is )?always (?:about )?(\\d+) ?(?:°|degrees? )?(c|f|celsius|fahrenheit)? (?:too )?(hot|hotter|over|cold|colder|cool|cooler|under|low|high)${please}`,
      "g",
    ),
    to: offBy,
  },
  // "one tray of mine takes 35 shells"
  {
    marks: [" of mine"],
    from: new RegExp(
      `^${lead}(?:one|each|a|every) (?:tray|sheet|mat|baking sheet|baking tray) of mine (?:takes|holds|fits|has|does) (\\d+)(?: (?:shells|circles|rings))?${please}`,
      "g",
    ),
    to: "my tray holds $1 shells. ",
  },
];

export const myDefault = (): readonly Phrase[] => [
  // "default diameter 42 mm", "standard size for me is 42 mm", "the usual for me is 42 mm"
  {
    marks: sizeMarks,
    from: new RegExp(
      `^${lead}(?:(?:my|our|the|a|your) )?${usual}(?: ${size})?(?:,? (?:for|with) (?:me|us|mine|my (?:shells|macarons)))?,? ${is}${length}${wide}${please}`,
      "g",
    ),
    to: shells,
  },
  // "let 42 mm be the default size", "make it 42 mm by default"
  {
    marks: sizeMarks,
    from: new RegExp(
      `^${lead}(?:let|make|have|set|take|use|put) ${length}${wide} (?:be )?(?:as |for )?(?:(?:my|our|the|a) )?${usual}(?: ${size})?(?: (?:for|with) (?:me|us|mine))?${please}`,
      "g",
    ),
    to: shells,
  },
  // "go with 42 mm unless i say otherwise", "stick to 42 mm for good"
  {
    marks: keptMarks,
    from: new RegExp(`^${lead}${takes} ${length}${wide} ${forGood}${please}`, "g"),
    to: shells,
  },
  // "unless i say otherwise use 42 mm"
  {
    marks: keptMarks,
    from: new RegExp(`^${lead}${forGood},? (?:please )?${takes} ${length}${wide}${please}`, "g"),
    to: shells,
  },
  // "i want 42 mm as my standard", "i make mine 4 cm as standard", "consider 42 mm my size"
  {
    marks: [
      "as my ",
      "as the ",
      "as a ",
      "as our ",
      "as standard",
      " my size",
      " my usual",
      "my default",
      "my standard",
    ],
    from: new RegExp(
      `^${lead}(?:(?:i|we)(?:'d| would)? (?:want|need|like|prefer|make|pipe|do|have|use)|id like|consider|treat|count|regard|call|take|see) (?:(?:mine|them|my (?:shells|macarons)|shells|to have) )?(?:at )?${length}${wide} (?:(?:as|for|to be) )?(?:(?:my|our|the|a) )?(?:(?:${usual}|rule)(?: ${size})?|size|diameter)${please}`,
      "g",
    ),
    to: shells,
  },
  // "assume 42 mm shells for me": whose they are says that it is for good
  {
    marks: [" for me", " for us"],
    from: new RegExp(
      `^${lead}(?:assume|always (?:use|take|assume)|reckon with|count on) ${length}${wide} (?:for|with) (?:me|us)${please}`,
      "g",
    ),
    to: shells,
  },
  // "my default rest is 45 min", "default resting time 45 min for me"
  {
    marks: sizeMarks,
    from: new RegExp(
      `^${lead}(?:(?:my|our|the|a) )?${usual} ${steps}(?: time| length)?(?:,? (?:for|with) (?:me|us|mine))?,? ${is}${minutes}${please}`,
      "g",
    ),
    to: (_, step = "", time = "") => `from now on i ${stem(step)} ${time}. `,
  },
  // "rest 45 min unless i say otherwise"
  {
    marks: keptMarks,
    from: new RegExp(
      `^${lead}(?:(?:always|let them|let mine|i) )*${steps}(?: time)?(?: (?:for|at|of|is|them|mine))* ${minutes},? (?:unless i (?:say|tell you) (?:otherwise|different(?:ly)?|something else)|by default|as (?:my|the|a|our) (?:default|standard|usual|rule))${please}`,
      "g",
    ),
    to: (_, step = "", time = "") => `from now on i ${stem(step)} ${time}. `,
  },
  // "default spare 15 percent", "my standard extra is 15 %"
  {
    marks: sizeMarks,
    from: new RegExp(
      `^${lead}(?:(?:my|our|the|a) )?${usual} (?:spares?|extras?|spare shells|allowance|overage)(?:,? (?:for|with) (?:me|us|mine))?,? ${is}(\\d+(?:[.,]\\d+)?) ?(?:%|percent|per cent|pct)${please}`,
      "g",
    ),
    to: "from now on $1 % spare shells. ",
  },
  // "default oven 5 c hot": how far it is off
  {
    marks: sizeMarks,
    from: new RegExp(
      `^${lead}(?:(?:my|our|the) )?${usual} oven(?: offset)?,? ${is}(?:runs |running )?(\\d+) ?(?:degrees? )?(c|f|celsius|fahrenheit)? ?(?:degrees? )?(?:too )?(hot|cold|hotter|colder|cool|over|under)${please}`,
      "g",
    ),
    to: offBy,
  },
  // "default oven 150 c": what she bakes at
  {
    marks: sizeMarks,
    from: new RegExp(
      `^${lead}(?:(?:my|our|the) )?${usual} (?:oven|baking|bake)(?: (?:temp|temperature|heat|setting))?(?:,? (?:for|with) (?:me|us))?,? ${is}(\\d+) ?(?:°|degrees? )?(c|f|celsius|fahrenheit)${please}`,
      "g",
    ),
    to: "my oven setting is $1 $2. ",
  },
  // "default currency euros", "default market eu", "default paper a4", "default cup 240 ml", "default units ounces"
  {
    marks: [" default", "standard"],
    from: new RegExp(
      `^${lead}(?:(?:my|our|the) )?(?:default|standard) (currency|money|market|paper|paper size|cup|cups|cup size|units?|weight unit|weights?)(?:,? (?:for|with) (?:me|us))?,? ${is}(euros?|pounds?|dollars?|usd|eur|gbp|eu|us|usa|a4|letter|\\d+ ?ml|ounces?|oz|grams?|g)${please}`,
      "g",
    ),
    to: (whole = "", what = "", value = "") => {
      const kind = /^(?:currency|money)/.test(what)
        ? `my currency is ${value}`
        : /^paper/.test(what)
          ? `my paper is ${value}`
          : /^cup/.test(what)
            ? `my cup is ${value}`
            : what === "market"
              ? `my market is ${value}`
              : /^(?:ounces?|oz|grams?|g)$/.test(value)
                ? `i weigh everything in ${value}`
                : whole;
      return kind === whole ? whole : `${kind}. `;
    },
  },
  // "default trays at once 2"
  {
    marks: sizeMarks,
    from: new RegExp(
      `^${lead}(?:(?:my|our|the) )?${usual} trays at (?:once|a time),? ${is}(\\d+|one|two|three|four)${please}`,
      "g",
    ),
    to: "my oven takes $1 trays at once. ",
  },
  ...alwaysSo(),
];
