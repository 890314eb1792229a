/** Ingredient lines in a sentence: what each weighs, and what couldn't be read, by its own words. */
import { ingredients } from "../../../data/words/ingredients.ts";
import type { Amount, Reading, Span, Thing } from "../contract/index.ts";
import { type Weighed, weighed } from "./find.ts";
import { gramsOfVolume } from "./portions.ts";
import { plain } from "./show.ts";
import { inBase } from "./units.ts";

export interface Line {
  name: string;
  grams: number;
}

export interface LinesRead {
  lines: (Line & { at: Span; thing?: Thing })[];
  /** Pieces that name or weigh something and can't be read as a line: shown, never dropped. */
  unread: string[];
  /** How a range, a cup or a number of whites was taken. */
  taken: string[];
}

/** What one of them weighs when it is counted. Source: USDA SR28, file WEIGHT, "large", NDB 01124, 01123, 01125. */
export const each_g: Readonly<Record<string, number>> = {
  whites: 33,
  "pasteurised whites": 33,
  egg: 50,
  "egg yolk": 17,
};
/** Above this a bare number beside eggs is grams. */
export const mostCounted = 24;

const joints = /[,;:+&]|\band\b|\bplus\b/g;
const filler =
  /\b(?:of|the|a|an|some|and|about|approx\w*|ca|roughly|my|g|in|with|for|to|then|please|pls|each|bags?|packs?|packets?|boxe?s?|tubs?|jars?|blocks?|total|all|altogether|it|them|that|is|are)\b/g;

/**
 * The lines of the part of a sentence from `from` to `to` (characters of reading.text). A range counts as its middle,
 * a volume by the portion table, eggs by number as large ones.
 */
export function readLines(reading: Reading, from = 0, to = reading.text.length): LinesRead {
  const found = weighed(reading);
  const out: LinesRead = { lines: [], unread: [], taken: [] };
  for (const [start, end] of paired(pieces(reading, from, to), reading)) {
    const inside = (at: Span) => at[0] >= start && at[1] <= end;
    const amounts = reading.amounts.filter((each) => inside(each.at));
    const before = out.lines.length;
    const [thing, ...others] = reading.things.filter((each) => inside(each.at) && isIngredient(each));
    const owner = amounts.length === 1 && others.length === 0 ? thing : undefined;
    for (const amount of amounts)
      addLine(out, reading, amount, found, owner, amounts.length === 1 ? reading.text.slice(start, end) : "");
    const words = reading.text
      .slice(start, end)
      .trim()
      .replace(/^[.\s]+|[.\s]+$/g, "");
    if (out.lines.length === before && /[a-z]{2}/.test(words)) out.unread.push(words);
  }
  return out;
}

/** "butter, 250 g", "butter: 250 g": a name alone and the weight alone behind it are one piece. */
function paired(cut: readonly Span[], reading: Reading): Span[] {
  const within = (at: Span, [start, end]: Span) => at[0] >= start && at[1] <= end;
  const amountsIn = (span: Span) => reading.amounts.filter((each) => within(each.at, span));
  const isWeightAlone = (span: Span, name: Span) => {
    const [amount, ...more] = amountsIn(span);
    return (
      amount !== undefined &&
      more.length === 0 &&
      (!amount.of || within(amount.of.at, name)) &&
      reading.text.slice(...span).trim() === reading.text.slice(...amount.at).trim()
    );
  };
  const isNameAlone = (span: Span) =>
    amountsIn(span).length === 0 &&
    reading.things.some((each) => isIngredient(each) && within(each.at, span));
  const out: Span[] = [];
  for (const span of cut) {
    const last = out.at(-1);
    if (last && isWeightAlone(span, last) && isNameAlone(last)) out[out.length - 1] = [last[0], span[1]];
    else out.push(span);
  }
  return out;
}

const isIngredient = (thing: Thing) =>
  Boolean(thing.ingredient || thing.chocolate || thing.taste || thing.dose);

/** The sentence cut at commas and "and", but not inside a number or a name ("1,5 g", "half and half"). */
function pieces(reading: Reading, from: number, to: number): Span[] {
  const solid = [...reading.amounts.map((each) => each.at), ...reading.things.map((each) => each.at)];
  const cuts = [...reading.text.matchAll(joints)].filter(
    ({ index, 0: sign }) =>
      index >= from && index < to && !solid.some(([a, b]) => index >= a && index + sign.length <= b),
  );
  const out: Span[] = [];
  let start = from;
  for (const cut of cuts) {
    out.push([start, cut.index]);
    start = cut.index + cut[0].length;
  }
  return [...out, [start, to]];
}

function addLine(
  out: LinesRead,
  reading: Reading,
  amount: Amount,
  found: readonly Weighed[],
  owner: Thing | undefined,
  alone: string,
): void {
  const known = found.find((each) => each.amount === amount);
  // "200 g melted white chocolate": a word between them doesn't part the only weight from the only name
  const thing = amount.of ?? (amount.dim === "weight" ? owner : undefined);
  const name = thing ? nameOf(thing) : unknownName(alone, amount, reading);
  const one =
    amount.dim === "number" && amount.unit === "" && amount.value <= mostCounted
      ? each_g[amount.of?.ingredient ?? ""]
      : undefined;
  const grams = one !== undefined ? amount.value * one : known?.grams;
  if (grams === undefined || name === undefined) return;
  const high = amount.high === undefined || one !== undefined ? undefined : highOf(amount);
  const taken = high === undefined ? grams : (grams + high) / 2;
  if (high !== undefined) out.taken.push(`${amount.text} ${name}: the middle, ${plain(taken)} g`);
  if (known?.estimate) out.taken.push(`${amount.text} ${name}: ${plain(grams)} g by the portion table`);
  if (one !== undefined) out.taken.push(`${plain(amount.value)} ${name}: ${one} g each`);
  out.lines.push({ name, grams: taken, at: amount.at, ...(thing ? { thing } : {}) });
}

function highOf(amount: Amount): number | undefined {
  const high = amount.high ?? amount.value;
  if (amount.dim === "weight") return inBase(high, amount.unit);
  if (amount.dim === "volume" && amount.of?.ingredient)
    return gramsOfVolume(amount.of.ingredient, high, amount.unit)?.grams;
  return high;
}

/** An ingredient's own name; a flavor, a color or a mix as it was said. */
export function nameOf(thing: Thing): string {
  if (thing.chocolate) return `${thing.chocolate} chocolate`;
  return thing.ingredient ?? thing.text;
}

/** An ingredient that no table knows still has a weight and a name: "8 g glimmer dust". */
function unknownName(piece: string, amount: Amount, reading: Reading): string | undefined {
  if (amount.dim !== "weight" || piece === "") return undefined;
  const said = reading.text.slice(amount.at[0], amount.at[1]);
  const words = piece
    .replace(said, " ")
    .replace(filler, " ")
    .replace(/[^a-z' -]/g, " ")
    .replace(/\s+/g, " ")
    .trim();
  return words.length > 1 ? words : undefined;
}

/** One line an ingredient, in the order in which they were first named. */
export function merged(lines: readonly Line[]): Line[] {
  const byName = new Map<string, number>();
  for (const { name, grams } of lines) byName.set(name, (byName.get(name) ?? 0) + grams);
  return [...byName].map(([name, grams]) => ({ name, grams }));
}

const sugars = ["sugar", "granulated sugar"];

/** "sugar" and "granulated sugar" are one thing on a shelf; so are whole and ground almonds not. */
export const sameIngredient = (a: string, b: string): boolean =>
  a === b || (sugars.includes(a) && sugars.includes(b));

/** The row of an ingredient by its name. */
export const ingredientNamed = (name: string) => ingredients.find((row) => row.name === name);
