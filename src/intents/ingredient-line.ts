/**
 * One line of a recipe, read: what it weighs, or why it has no weight. Pure. Lines come in many hands: the amount first
 * or last, a range, two units, notes behind commas and in brackets, bullets and numbering before it.
 */
import {
  besideNames,
  byThePiece,
  methodVerbs,
  sections,
  unweighable,
} from "../../data/words/recipe-words.ts";
import type { Amount, IngredientLine, Reading, Thing } from "../tools/contract/index.ts";
import { each_g, mostCounted, nameOf } from "../tools/lib/lines.ts";
import { gramsOfVolume } from "../tools/lib/portions.ts";
import { listed, plain } from "../tools/lib/show.ts";
import { inBase } from "../tools/lib/units.ts";
import { normalise, sanitise } from "./normalise.ts";
import { itemsOf, type Reader, readingOf } from "./read.ts";

/** A bare number below this is no weight in grams that anyone leaves the unit off. */
const leastBare = 5;
const bareGrams = "numbers without a unit as grams";
/** Two weights may differ by a kitchen's rounding ("1 oz / 30 g"); a cup or a number of eggs by more. */
const pairTolerance = { weight: 0.06, estimate: 0.25 };
/** Above a tonne a line is a slip, and the record takes no more. */
const most_g = 1_000_000;

/** Bullets, boxes, numbering, table bars and dotted leaders taken off. */
export function cleanLine(said: string): string {
  return normalise(sanitise(said.replaceAll("\t", " ")))
    .replace(/\|/g, " ")
    .replace(/\.{3,}|…|·{3,}|_{3,}/g, " ")
    .replace(/^\s*(?:[-*+•◦▪‣·○●☐☑✓>]|\[[ x]?\])+\s+/, "")
    .replace(/^\s*\d{1,2}[.)]\s+(?=\S)/, "")
    .replace(/^\*+|\*+$|(?<=[a-z])\*+/g, "")
    .replace(/[~≈]\s*/g, "about ")
    .replace(/(\d)\s*(?:or|to)\s+(?=\d)/g, "$1-")
    .replace(/\bx\s*(\d+)\s*$/, "$1")
    .replace(/^(\d+)\s*x\s+(?=[a-z])/, "$1 ")
    .replace(
      /\b(?:egg )?(whites?|yolks?) (?:of|from) (\S+) (?:(?:large|medium|small|fresh) )?eggs?\b/,
      "$2 egg $1",
    )
    .replace(/^(\S+) (?:large |medium |small )?eggs?,? (whites?|yolks?) only\b/, "$1 egg $2")
    .replace(/\bzest of (?:an?|one|\d+) (lemon|lime|orange)s?\b/, "a little $1 zest to taste")
    .replace(/\s+/g, " ")
    .trim();
}

/** Reads one line. Its own words stay with it, so that whatever isn't understood can be named. */
export function ingredientLine(line: string, reader: Reader): IngredientLine {
  const said = sanitise(line.replaceAll("\t", " "));
  const text = cleanLine(line);
  if (isHeading(said, text, reader))
    return { said, is: "heading", name: text.replace(/^#+\s*|:\s*$/g, "").trim() };
  const unread = (why: string): IngredientLine => ({ said, is: "unread", why });
  if (!/[a-z]/.test(text)) return unread("no words in it");
  if (methodVerbs.has(/^[a-z]+/.exec(text)?.[0] ?? "")) return unread("a step, no ingredient");
  const bracketed = [...text.matchAll(/[([]([^)\]]*)[)\]]/g)].map((match) => match[1] ?? "");
  const { main, qualified } = mainPart(text.replace(/[([][^)\]]*[)\]]/g, " ").replace(/\s+/g, " "), reader);
  const reading = readingOfText(main, reader);
  const aside = bracketed.map((each) => readingOfText(each, reader));
  const own = amountsIn(reading);
  const amounts = [...own, ...aside.flatMap(amountsIn)];
  const thing = ownerIn(reading, own);
  const name =
    qualified ??
    (thing && (thing.ingredient || thing.chocolate) ? nameOf(thing) : wordsOf(reading)) ??
    (thing && nameOf(thing));
  const weights = amounts.filter((each) => each.dim !== "number");
  if (unweighable.test(text) && !weights.some((each) => each.dim === "weight" || !/drops?/.test(text)))
    return name ? { said, is: "unweighed", name } : unread("no ingredient in it");
  if (!name) return unread("no ingredient in it");
  // "1 vanilla bean": a thing by number that no table weighs
  if (byThePiece.test(main) && amounts.length > 0 && weights.length === 0)
    return { said, is: "unweighed", name: wordsOf(reading) ?? name };
  if (amounts.length === 0) return unread("no amount");
  if (amounts.some((each) => each.value <= 0)) return unread("an amount of nothing");
  const others = reading.things.filter((each) => each.ingredient && each !== thing && nameOf(each) !== name);
  if (others.length > 0 && /\b(?:and|with)\b|&/.test(main)) return unread("two ingredients, one amount");
  const manner = reading.things.find((each) => each.manner)?.manner;
  const weighed = amounts.flatMap((amount) => weightOf(amount, name, manner) ?? []);
  const added = sumOf(weighed, main);
  const used =
    added ?? weighed.find(isMetric) ?? weighed.find((each) => each.amount.dim === "weight") ?? weighed[0];
  if (!used) {
    const counted =
      amounts.every((each) => each.dim === "number") && thing && !thing.ingredient && !thing.count;
    return counted
      ? { said, is: "unweighed", name }
      : unread(weights.length ? "no table row for that measure" : "no unit");
  }
  if (used.low > most_g) return unread("more than a tonne");
  const grams = (used.low + used.high) / 2;
  const doubts = added ? [] : weighed.flatMap((each) => (each === used ? [] : doubtOf(used, each)));
  return {
    said,
    is: "weighed",
    name,
    grams,
    ...(used.high > used.low ? { low_g: used.low, high_g: used.high } : {}),
    taken: [
      ...(used.high > used.low ? [`${used.amount.text} ${name}: the middle, ${plain(grams)} g`] : []),
      ...(used.how ? [used.how === bareGrams ? bareGrams : `${used.amount.text} ${name}: ${used.how}`] : []),
    ],
    ...(doubts.length ? { doubts } : {}),
  };
}

interface Weight {
  low: number;
  high: number;
  amount: Amount;
  how?: string;
}

const readingOfText = (text: string, reader: Reader): Reading => {
  const found = itemsOf(text, reader);
  return readingOf(text, found.text, found.items, found.mended, reader);
};

const amountsIn = (reading: Reading) =>
  reading.amounts.filter(
    (each) => ["weight", "volume"].includes(each.dim) || (each.dim === "number" && each.unit === ""),
  );
const isMetric = ({ amount }: Weight) => amount.dim === "weight" && ["g", "kg", "mg"].includes(amount.unit);
const isNamed = (thing: Thing) => Boolean(thing.ingredient || thing.chocolate);

function ownerIn(reading: Reading, amounts: readonly Amount[]): Thing | undefined {
  const owner = amounts.find((each) => each.of && isNamed(each.of))?.of;
  return (
    owner ??
    reading.things.find(isNamed) ??
    reading.things.find((each) => each.dose || each.taste || each.base || each.color || each.formula)
  );
}

/** The words of a line that are no amount and no remark: an ingredient that no table knows. */
function wordsOf(reading: Reading): string | undefined {
  let text = reading.text;
  for (const { at } of [...reading.amounts].sort((a, b) => b.at[0] - a.at[0]))
    text = `${text.slice(0, at[0])} ${text.slice(at[1])}`;
  const words = text
    .replace(new RegExp(unweighable.source, "g"), " ")
    .replace(/[^a-z' ]+/g, " ")
    .split(/\s+/)
    .filter((word) => word.length > 1 && !besideNames.has(word));
  const numbered =
    reading.amounts.some((each) => each.dim !== "number") || reading.things.some((each) => !each.count);
  return words.length > 0 && words.length <= 5 && (numbered || unweighable.test(reading.text))
    ? words.join(" ")
    : undefined;
}

/** The line without its remarks; a name written backwards ("sugar, powdered") put right. */
function mainPart(text: string, reader: Reader): { main: string; qualified?: string } {
  const segments = text
    .replace(/\b(?:plus|and) (?:extra|more|some)\b.*$/, "")
    .replace(/(?<=[a-z\d] )[-:=] (?=[a-z])(?!.*\d).*$/, "")
    .replace(/(?<=[a-z\d ])\bfor (?:the|a|your)\b.*$/, "")
    .split(/,(?!\d)|,(?=\d{4,})/)
    .map((each) => each.trim())
    .filter(Boolean);
  const [first = "", ...rest] = segments;
  const has = (segment: string) => amountsIn(readingOfText(segment, reader)).length > 0;
  const isName = (segment: string) => /[a-z]{3}/.test(wordsOf(readingOfText(segment, reader)) ?? "");
  if (has(first)) {
    const alone = isName(first) || readingOfText(first, reader).things.some(isNamed) || rest.length === 0;
    return { main: alone ? first : `${first} ${rest[0]}` };
  }
  const at = rest.findIndex(has);
  const forward = (words: string) =>
    readingOfText(words, reader).things.find((each) => isNamed(each) && each.text === words);
  const turned = (at < 0 ? [] : rest.slice(0, at + 1)).flatMap((segment) => {
    const qualifier = wordsOf(readingOfText(segment, reader));
    const row = qualifier ? forward(`${qualifier} ${first}`) : undefined;
    return row ? [nameOf(row)] : [];
  })[0];
  if (at < 0) {
    // "chocolate, dark: 200 g" has its amount in no segment of its own only when there is none at all
    return { main: first };
  }
  return { main: `${first} ${rest[at]}`, ...(turned ? { qualified: turned } : {}) };
}

function isHeading(said: string, text: string, reader: Reader): boolean {
  if (/^\s*#+\s*[a-z]/i.test(said)) return true;
  const plainText = text.replace(/[([][^)\]]*[)\]]/g, "").trim();
  if (sections.has(plainText.replace(/:$/, "").trim())) return true;
  const amounts = amountsIn(readingOfText(plainText, reader));
  return (
    amounts.length === 0 &&
    (/:$/.test(plainText) || (/^for the [a-z ]+$/.test(plainText) && !/dusting|rolling|top$/.test(plainText)))
  );
}

function weightOf(amount: Amount, name: string, manner: string | undefined): Weight[] | undefined {
  const high = amount.high ?? amount.value;
  if (amount.dim === "weight")
    return [{ low: inBase(amount.value, amount.unit), high: inBase(high, amount.unit), amount }];
  if (amount.dim === "volume") {
    const [low, top] = [amount.value, high].map((value) => gramsOfVolume(name, value, amount.unit, manner));
    return low && top
      ? [{ low: low.grams, high: top.grams, amount, how: `${low.row}, by the portion table` }]
      : undefined;
  }
  const one = amount.value <= mostCounted ? each_g[name] : undefined;
  if (one !== undefined)
    return [{ low: amount.value * one, high: high * one, amount, how: `${one} g each, large` }];
  if (
    amount.fraction ||
    amount.value < leastBare ||
    !(isKnown(name) || amount.of?.ingredient || amount.of?.chocolate)
  )
    return undefined;
  return [{ low: amount.value, high, amount, how: bareGrams }];
}

const isKnown = (name: string) => / chocolate$/.test(name);

/** "90 g + 10 g sugar": one line of both. */
function sumOf(weights: readonly Weight[], main: string): Weight | undefined {
  const [first, second] = weights;
  if (
    weights.length !== 2 ||
    !first ||
    !second ||
    first.amount.dim !== "weight" ||
    second.amount.dim !== "weight"
  )
    return undefined;
  const between = main.slice(first.amount.at[1], second.amount.at[0]).trim();
  if (!/^(?:\+|plus|and)$/.test(between)) return undefined;
  return { low: first.low + second.low, high: first.high + second.high, amount: first.amount };
}

/** What the other amount of a pair comes to, where it is not the same. */
function doubtOf(used: Weight, other: Weight): string[] {
  const both = [used, other].every((each) => each.amount.dim === "weight");
  const middle = (other.low + other.high) / 2;
  const apart =
    used.low > other.high ? used.low / other.high - 1 : other.low > used.high ? other.low / used.high - 1 : 0;
  if (apart <= (both ? pairTolerance.weight : pairTolerance.estimate)) return [];
  return [
    `${listed([used.amount.text, other.amount.text], "and")} don't agree: ${other.amount.text} is ${plain(middle)} g; ${used.amount.text} is used`,
  ];
}
