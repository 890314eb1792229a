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
} from "../../../data/words/recipe-words.ts";
import type { Amount, IngredientLine, Reading, Thing } from "../../tools/contract/index.ts";
import { nameOf } from "../../tools/lib/lines.ts";
import { plain } from "../../tools/lib/show.ts";
import { itemsOf, type Reader, readingOf } from "../read.ts";
import { sanitise } from "../text/normalise.ts";
import { cleanLine } from "./clean-line.ts";
import { bareGrams, doubtOf, isMetric, sumOf, weightOf } from "./line-weight.ts";

/** Above a tonne a line is a slip, and the record takes no more. */
const most_g = 1_000_000;

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
    (thing && (thing.ingredient || thing.chocolate) && !isOfMix(thing, reading)
      ? nameOf(thing)
      : wordsOf(reading)) ??
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

/** A line's pieces are looked at again and again: so many are remembered. */
const kept = 64;
const known = new WeakMap<Reader, Map<string, Reading>>();

function readingOfText(text: string, reader: Reader): Reading {
  const own = known.get(reader) ?? new Map<string, Reading>();
  known.set(reader, own);
  const before = own.get(text);
  if (before) return before;
  if (own.size >= kept) own.clear();
  const found = itemsOf(text, reader);
  const reading = readingOf(text, found.text, found.items, found.mended, reader);
  own.set(text, reading);
  return reading;
}

const amountsIn = (reading: Reading) =>
  reading.amounts.filter(
    (each) => ["weight", "volume"].includes(each.dim) || (each.dim === "number" && each.unit === ""),
  );
const isNamed = (thing: Thing) => Boolean(thing.ingredient || thing.chocolate);

/** "pistachio ganache", "walnut cream": the taste of a mix, and no ingredient by itself; its whole name is kept. */
const isOfMix = (thing: Thing, { things, text }: Reading): boolean =>
  things.some(
    (each) =>
      each.at[0] >= thing.at[1] &&
      (each.base !== undefined
        ? !/\b(?:for|in|into|to|and|with)\b/.test(text.slice(thing.at[1], each.at[0]))
        : thing.taste !== undefined &&
          !thing.dose &&
          each.ingredient !== undefined &&
          each.ingredient !== thing.ingredient &&
          text.slice(thing.at[1], each.at[0]) === " "),
  );

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
