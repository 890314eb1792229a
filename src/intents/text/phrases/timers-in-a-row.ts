/** Timers told in a row without the word: "tray one twelve minutes tray two fourteen", "bake one 14, cool one 30". */
import type { Phrase } from "./phrase.ts";
import { count as digits } from "./spelt.ts";

/** "four" is no beginning of "fourteen". */
const count = `${digits}(?!t?een|t?y)`;

const lead = "((?:(?:ok|okay|and|now|so|right|then|also|plus|please),? )*)";
const polite = "(?:,? (?:please|pls|thanks|thank you|thx|ta|cheers|love))*";
const minutes = "(?: ?(?:minutes?|mins?|min|m))";
const places =
  "first|second|third|fourth|fifth|last|top|middle|bottom|left|right|front|back|upper|lower|other";
const tray =
  "(?:(?:the )?(?:tray|sheet|batch) (?:number |no )?(?:\\d|one|two|three|four|five|six|[abc])|" +
  `(?:the )?(?:${places}) (?:tray|sheet|one))`;
const each = `(${tray}),?(?: (?:is|gets|needs|for|at|in for|takes))? (${count})(${minutes})?(?! ?(?:g|c|f|mm|cm|shells?|macarons?|macs|%|percent))`;
const joint = "(?:,? and |, ?| plus | then )";
/** Longer than this no tray bakes, and shorter than this it counts something else. */
const [least, most] = [5, 40];

const spelled =
  "one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen twenty".split(
    " ",
  );
const numberOf = (said: string): number => {
  const [first = "", second] = said.split(/[ -]/);
  const one = spelled.indexOf(first) + 1 || Number(first);
  const tens = { twenty: 20, thirty: 30, forty: 40 }[first];
  return tens === undefined ? one : tens + (second ? spelled.indexOf(second) + 1 : 0);
};

/** Rows are followed one by one: a pattern of all of them together takes longest of all to compile. */
const all = /^.*$/g;
const start = new RegExp(`^${lead}`);
const timersFor = /^(?:(?:set |start )?(?:the |a )?timers?:? )?/;
const oneTray = new RegExp(`^${each}(?:${joint}|[ ])?`);
const rowEnds = new RegExp(`^${polite}[ .!]*$`);

/** What stands in a row from here to the end, each found by one pattern; none where anything else is said. */
function rowsOf(text: string, one: RegExp, most: number): RegExpExecArray[] {
  const found: RegExpExecArray[] = [];
  for (let rest = text; ; ) {
    const next = one.exec(rest);
    if (!next) return found.length > 1 && found.length <= most && rowEnds.test(rest) ? found : [];
    found.push(next);
    rest = rest.slice(next[0].length);
  }
}

/** Whether a row can be there at all: it names two of its kind at least. */
const twice = (text: string, kind: RegExp): boolean => (text.match(kind)?.length ?? 0) > 1;
const trays = /\b(?:tray|sheet|batch|one)\b/g;
const stepsNamed = /\b(?:bak|oven|rest|cool|chill|ganache|matur)/g;

/** Every tray with its minutes; as it was said where no unit stands anywhere and the numbers could be something else. */
function traysInARow(said = ""): string {
  if (!twice(said, trays)) return said;
  const before = start.exec(said)?.[0] ?? "";
  const order = timersFor.exec(said.slice(before.length))?.[0] ?? "";
  const found = rowsOf(said.slice(before.length + order.length), oneTray, 6);
  const isTold = order !== "" || found.some(([, , , unit]) => unit);
  const values = found.map(([, , number = ""]) => numberOf(number));
  const can = isTold || values.every((value) => value >= least && value <= most);
  if (found.length < 2 || !can) return said;
  const rows = found.map(([, name = "", number = ""], i) => {
    const tray = name
      .replace(/^the /, "")
      .replace(/ (one|two|three|four|five|six)$/, (_all, which: string) =>
        /^(?:tray|sheet|batch)/.test(name.replace(/^the /, "")) ? ` ${spelled.indexOf(which) + 1}` : "",
      );
    return `${tray} ${Number.isNaN(values[i]) ? number : values[i]} min`;
  });
  return `${before}timers: ${rows.join(", ")}`;
}

const steps = "bake|baking|oven|rest|resting|cool|cooling|chill|chilling|ganache|mature|maturing";
const step = `(?:the )?(${steps})(?: (?:one|timer|for))?`;
const oneStep = new RegExp(
  `^(?:one for (?:the )?(${steps})|${step}),? (?:for |at )?(${count})(${minutes})?(?:${joint}|[ ])?`,
);

/** "bake one 14, cool one 30": a step each with its minutes; no heat, which has three figures. */
function stepsInARow(said = ""): string {
  if (!twice(said, stepsNamed)) return said;
  const before = start.exec(said)?.[0] ?? "";
  const found = rowsOf(said.slice(before.length), oneStep, 5);
  if (found.length < 2 || /\d{3}/.test(said.slice(before.length))) return said;
  return `${before}timers: ${found.map(([, one, other, number = "", unit = ""]) => `${one ?? other ?? ""} ${number}${unit}`).join(", ")}`;
}

const usual =
  "(?:the |my |as |at |for |to )*(?:usual|normal|standard|regular|same as (?:always|ever|usual|before)|default)(?: (?:one|time|length|minutes))?";

export const timersInARow = (): readonly Phrase[] => [
  { marks: ["tray", "sheet", "batch", "first one", "the other one"], from: all, to: traysInARow },
  { marks: ["bak", "oven", "rest", "cool", "chill", "matur"], from: all, to: stepsInARow },
  // "trays in, 14 min each, two of them", "both trays are in, 15 min each"
  {
    marks: [" each"],
    from: new RegExp(
      `^${lead}(?:the |my |all )?trays?(?: (?:are|is|just|went|now))* in(?: the oven)?,? (${count}${minutes}) (?:each|apiece),? (?:all |there are |theres )?(\\d|two|three|four|five|six)(?: of (?:them|those))?${polite}[ .!]*$`,
      "g",
    ),
    to: "$1$3 trays in, $2 each",
  },
  {
    marks: ["both trays"],
    from: /\b(?:both|both the|both my|both of the) trays\b(?=.* each)/g,
    to: "two trays",
  },
  // "put two timers on, 14 min each"
  {
    marks: ["timers"],
    from: new RegExp(
      `^${lead}(?:(?:put|set|start|get|pop|run|i need|i want|need) )?(\\d|two|three|four|five|six) timers(?: (?:on|going|up|running|please))*,? (?:for |of |at )?(${count}${minutes}) (?:each|apiece)${polite}[ .!]*$`,
      "g",
    ),
    to: "$1set $2 timers of $3",
  },
  // "another timer of 40", "new timer, 40", "one more timer of 30"
  {
    marks: ["timer"],
    from: new RegExp(
      `^${lead}(?:set |start |run |give me |i need |need )?(?:a|an|another|one more|a new|new|a further|an extra|a second|a third)? ?timer(?: of|,|:) (${count})(${minutes}?)${polite}[ .!]*$`,
      "g",
    ),
    to: "$1set a timer for $2$3",
  },
  {
    marks: ["one more timer", "1 more timer", "a further timer"],
    from: new RegExp(`^${lead}(?:one|1|a) (?:more|further) timer (?=for ${count})`, "g"),
    to: "$1set another timer ",
  },
  // "18 on the clock", "stick 15 on the clock": minutes
  {
    marks: ["on the clock"],
    from: new RegExp(
      `^${lead}(?:(?:stick|pop|bung|whack|put|chuck|slap|get|set|run) )?(${count}) on the clock${polite}[ .!]*$`,
      "g",
    ),
    to: "$1set a timer for $2",
  },
  // "bake timer, the usual, thanks": the step's own time
  {
    marks: ["usual", "normal", "standard", "regular", "same as", "default"],
    from: new RegExp(
      `^${lead}(?:set |start |put |run )?(?:a |the |my )?(bak(?:e|ing)|oven|rest(?:ing)?|cool(?:ing)?|ganache|matur(?:e|ing)) timer(?: on)?(?:${polite},?| to| for) ${usual}${polite}[ .!]*$`,
      "g",
    ),
    to: "$1start the $2 timer",
  },
  {
    marks: ["usual ", "normal ", "standard ", "regular "],
    from: new RegExp(
      `^${lead}(?:set |start |put |run )?(?:the |my |a )?(?:usual|normal|standard|regular) (bak(?:e|ing)|oven|rest(?:ing)?|cool(?:ing)?|ganache|matur(?:e|ing)) timer(?: on)?${polite}[ .!]*$`,
      "g",
    ),
    to: "$1start the $2 timer",
  },
];
