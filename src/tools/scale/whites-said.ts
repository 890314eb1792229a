/** Whites and weights that were added to what was there, taken away from it or put on the scale. */
import type { Memory, Reading } from "../contract/index.ts";
import { says, white_g } from "../lib/find.ts";
import { mostCounted } from "../lib/lines.ts";
import { inBase } from "../lib/units.ts";
import type { Draft } from "./draft.ts";
import type { Line } from "./recipe-said.ts";

/** "got 30 g more whites on top of those two": what was there and what has come. */
export function moreOfLine(before: Draft | undefined, line: Line): Line {
  const had =
    before?.have?.find((each) => each.name === line.name)?.grams ??
    (line.name === "whites" && before?.whites_count !== undefined ? before.whites_count * white_g : 0);
  return { ...line, grams: had + line.grams };
}

/** "ive got 5 whites in the bowl, 172 g total": on the scale, so counted no more. */
export function weighedWhites(reading: Reading): number | undefined {
  const all = reading.amounts.filter((each) => each.dim === "weight");
  const [only] = all;
  const said = /^(?:in )?(?:total|all|altogether|all together)\b/;
  // "3 whites 98 g", "3 whites, 98 g"
  if (
    all.length === 1 &&
    only &&
    (!only.of || only.of.ingredient === "whites") &&
    /\bwhites ?,? ?(?:are |is |at |weigh(?:ing|s)? |that weigh )?$/.test(reading.text.slice(0, only.at[0]))
  )
    return inBase(only.value, only.unit);
  return all.length === 1 &&
    only &&
    !only.of &&
    said.test(reading.text.slice(only.at[1]).trim()) &&
    /(?:^| )(?:got|have|ive|in the bowl|cracked|separated)(?: |$)/.test(reading.text)
    ? inBase(only.value, only.unit)
    : undefined;
}

/** "and the icing sugar with four", behind six whites: so many of those, and no four grams of sugar. */
export function whitesInstead(
  { amounts, text }: Reading,
  memory: Memory,
  before: Draft | undefined,
): number | undefined {
  const [only, ...others] = amounts;
  if (!memory.follows || before?.whites_count === undefined || !only?.of?.ingredient || others.length > 0)
    return undefined;
  const isCount = only.dim === "number" && only.unit === "" && !only.fraction && only.value <= mostCounted;
  const lead = text.slice(only.of.at[1], only.at[0]);
  return isCount &&
    Number.isInteger(only.value) &&
    / (?:with|from|on|using|out of) (?:just |only )?$/.test(lead)
    ? only.value
    : undefined;
}

const howMany = "(?:\\d+|one|two|three|four|five|six|seven|eight|nine|ten|another|couple)";
const changed =
  "(?:more|extra|another|add|added|adding|plus|in|out|away|off|fewer|less|gone|broke|broken|lost|dropped|cracked)";
/** Words between what has changed and what that makes of it. */
const makesIt = new RegExp(
  `(?:\\b${howMany}\\b.*\\b${changed}\\b|\\b${changed}\\b.*\\b${howMany}\\b).*(?:[,.;:=]|\\bso\\b|\\bmak(?:es?|ing)\\b|\\bleav(?:es?|ing)\\b|\\bthat'?s\\b)(?: ?(?:so|that|thats|that's|which|it|its|it's|makes?|is|now|then|all|in|total|there|are|theres|i|have|ive|got|were|at|down|up|to|only|just|a|of))* ?$`,
);

/** "throw in two more so six whites", "take two out, so four whites": how many there are by then. */
const isTotal = ({ amounts, text }: Reading, number: number): boolean =>
  amounts.some((each) => each.value === number && makesIt.test(text.slice(0, each.at[0])));

const fell =
  /^(?:(?:oh|no|argh|ugh|and|so|well|sorry|,) )*\S*<number> (?:of (?:them|the) )?(?:\S*<[^>]*ingredient=(?:whites|egg)[^>]*> )?(?:just |have |has |got |went |were )*(?:dropped|broke|broken|lost|smashed|spoilt|spoiled|wasted|ruined|fell|slipped|rolled|cracked\S*) .*, (?:(?:so|now|its|theres|only|just|down to|i have|ive|got|left with|that leaves|leaves) )*\S*<number>(?: |$)/;

const isGone =
  /(?:^| )(?:went|gone|dropped|broke|broken|lost|smashed|spoilt|spoiled|wasted|ruined|fell|slipped|rolled|cracked|down|sink|floor|bin|drain|yolk|off|bad|ended|landed|binned|threw|thrown|minus|less|ate|stole)(?: |$)/;

/** "two eggs fell on the floor, four": the number behind is how many there are. */
export function leftOver({ mask, amounts }: Reading, had?: number): number | undefined {
  const [gone, left, ...more] = amounts.filter((each) => each.dim === "number" && !each.fraction);
  // "oh dear, two went down the sink. four then", of six: what is gone and what is left make what there was
  const isRest = gone && left && had !== undefined && gone.value + left.value === had;
  // "four eggs, i dropped two", of six: what is gone stands behind
  const [firstPart = ""] = mask.split(/ [,.;] /).filter((part) => /<number/.test(part));
  if (isRest && more.length === 0 && isGone.test(mask))
    return isGone.test(firstPart) ? left.value : gone.value;
  return fell.test(mask) && gone && left && more.length === 0 ? left.value : undefined;
}

/** "one more egg", "take two whites away": relative to the number before; else the number itself. */
export function moreOrFewer(
  reading: Reading,
  memory: Memory,
  before: Draft | undefined,
  number: number,
): number {
  if (!memory.follows || before?.whites_count === undefined || isTotal(reading, number)) return number;
  if (
    says(reading, /(?:take|minus|less|fewer|remove|drop|without|leave) .*<|<\S* (?:less|fewer|away|off|out)/)
  )
    return before.whites_count - number;
  return says(
    reading,
    /(?:^| )(?:more|extra|another|add|adding|added|plus|(?:throw|threw|chuck|chucked|toss|tossed|crack|cracked|sneak|sneaked|bung|pop|stick|slip)(?: in)?) |<\S* (?:(?:go|went|going|goes) )?(?:on top|extra|besides|as well)(?: |$)/,
  )
    ? before.whites_count + number
    : number;
}

const single =
  /\b(?:another|one more|1 more|an extra|one extra|a further|an additional|one additional) (?:egg )?white\b(?! choc)/;
const oneLess =
  /\b(?:take|leave|drop|minus|without|less|lose|lost|skip) (?:out )?(?:one|a|an|1|another) (?:egg )?white\b(?! choc)/;

/** "throw in another white", "lose a white": one more or one less than the number before. */
export function byOne({ text }: Reading, memory: Memory, before: Draft | undefined): number | undefined {
  const had = before?.whites_count;
  if (!memory.follows || had === undefined) return undefined;
  if (oneLess.test(text)) return had > 1 ? had - 1 : undefined;
  return single.test(text) ? had + 1 : undefined;
}
