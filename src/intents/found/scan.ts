/** One pass over the tokens: moments, amounts and things where they start, plain words and signs between them. */
import type { Amount, Span, Thing, When } from "../../tools/contract/index.ts";
import { readWhen } from "../clock/clock.ts";
import type { Token } from "../text/tokens.ts";
import { readUnit } from "./amounts/unit.ts";
import { readAmount } from "./amounts.ts";
import type { Facets, Lexicon } from "./lexicon.ts";

export type Item =
  | { is: "thing"; thing: Thing & { form?: string } }
  | { is: "amount"; amount: Amount }
  | { is: "when"; when: When }
  | { is: "word"; text: string; at: Span }
  | { is: "sign"; text: string; at: Span };

const text = (token: Token | undefined) => token?.text ?? "";

/** Finds everything in the tokens, left to right, the longest reading first at each place. */
export function scan(tokens: readonly Token[], lexicon: Lexicon): Item[] {
  const items: Item[] = [];
  for (let i = 0; i < tokens.length; ) {
    const token = tokens[i] as Token;
    const phrase = token.kind === "word" ? phraseAt(tokens, i, lexicon) : undefined;
    const said = (next: number) =>
      tokens
        .slice(i, next)
        .map((each, at) => (each.gap && at > 0 ? " " : "") + each.text)
        .join("");
    const span = (next: number): Span => [token.at[0], tokens[next - 1]?.at[1] ?? token.at[1]];
    const when = phrase && phrase.next - i > 1 ? undefined : readWhen(tokens, i);
    if (when && !isPriceOrShare(tokens, i)) {
      items.push({ is: "when", when: { ...when.when, text: said(when.next), at: span(when.next) } });
      i = when.next;
      continue;
    }
    const read = phrase && phrase.next - i > 1 ? undefined : readAmount(tokens, i);
    if (
      read &&
      !isPronounOne(tokens, i, read.amount, read.next, lexicon) &&
      !isSameTwo(tokens, i, read.amount)
    ) {
      items.push({ is: "amount", amount: read.amount });
      i = read.next;
      continue;
    }
    if (phrase) {
      items.push({
        is: "thing",
        thing: {
          ...(isRemainder(tokens, i, phrase.next) ? { id: "remainder" } : phrase.facets),
          text: said(phrase.next),
          at: span(phrase.next),
        },
      });
      i = phrase.next;
      continue;
    }
    const unit = isFoodInCups(tokens, i, items) ? undefined : bareUnit(tokens, i);
    if (unit) {
      items.push({
        is: "thing",
        thing: { id: unit.unit, unit: unit.unit, text: said(unit.next), at: span(unit.next) },
      });
      i = unit.next;
      continue;
    }
    items.push({ is: token.kind === "word" ? "word" : "sign", text: token.text, at: token.at });
    i += 1;
  }
  return items;
}

/** "what about the rest?": what is left of a recipe, not the rest before the oven. */
const isRemainder = (tokens: readonly Token[], i: number, next: number) =>
  text(tokens[i]) === "rest" &&
  next === i + 1 &&
  text(tokens[i - 1]) === "the" &&
  // "start the rest": the step
  !["start", "begin", "time"].includes(text(tokens[i - 2])) &&
  (!tokens[next] || tokens[next]?.kind === "sign");

/** Of them it is told how many days they are. */
const hours: ReadonlySet<string> = new Set(["h", "hr", "hrs", "hour", "hours", "minutes", "mins"]);

/** The longest phrase of the lexicon that starts at `i`. */
function phraseAt(
  tokens: readonly Token[],
  i: number,
  lexicon: Lexicon,
): { facets: Facets; next: number } | undefined {
  for (const { words, facets } of lexicon.get(text(tokens[i])) ?? [])
    if (words.every((word, at) => text(tokens[i + at]) === word)) return { facets, next: i + words.length };
  return undefined;
}

/** "at $16", "at 40 %", "sells at 12" are no moments. */
const isPriceOrShare = (tokens: readonly Token[], i: number) =>
  ["$", "€", "£"].includes(text(tokens[i - 1])) ||
  (text(tokens[i - 1]) === "at" &&
    tokens
      .slice(Math.max(0, i - 4), i - 1)
      .some((each) => /^(?:sells?|selling|sold|priced)$/.test(each.text)) &&
    !/^(?:am|pm|oclock|:)$/.test(text(tokens[i + 1])));

/** "the same two for 260": the two that were spoken of, no weight and no count. */
const isSameTwo = (tokens: readonly Token[], i: number, { value, dim }: Amount): boolean =>
  dim === "number" &&
  (value === 2 || value === 3) &&
  text(tokens[i - 1]) === "same" &&
  (!tokens[i + 1] || /^(?:for|in|into|with|again|at|but|please|[?.,])$/.test(text(tokens[i + 1])));

/** "another one", "the bake one", "one of them": a pronoun, not the number. */
function isPronounOne(
  tokens: readonly Token[],
  i: number,
  amount: Amount,
  next: number,
  lexicon: Lexicon,
): boolean {
  if (text(tokens[i]) !== "one" || amount.value !== 1 || amount.dim !== "number" || next !== i + 1)
    return false;
  if (inRatio(tokens, i, -1) || inRatio(tokens, i, 1)) return false;
  // "one more bowl"
  const at = /^(?:more|less|fewer|extra)$/.test(text(tokens[next])) ? next + 1 : next;
  const follows = phraseAt(tokens, at, lexicon);
  return !follows || ["the", "that", "this", "which", "other"].includes(text(tokens[i - 1]));
}

/** "two to one", "one to two": a number stands on the other side. */
const inRatio = (tokens: readonly Token[], i: number, step: 1 | -1) =>
  ["to", ":"].includes(text(tokens[i + step])) &&
  (tokens[i + 2 * step]?.kind === "number" ||
    /^(?:one|two|three|four|five|six)$/.test(text(tokens[i + 2 * step]))) &&
  !["this", "that", "which", "other", "the"].includes(text(tokens[i - 1]));

const cup = /^cups?$/;
const labelWord = /^(?:labels?|allerg\w+|ingredients?|declare)$/;

/** "label: ..., 30 g peanut butter cups": a food on a list, which has its weight already. */
function isFoodInCups(tokens: readonly Token[], i: number, items: readonly Item[]): boolean {
  if (!cup.test(text(tokens[i])) || !tokens.slice(0, i).some((each) => labelWord.test(each.text)))
    return false;
  const [amount, food] = items.slice(-2);
  return (
    amount?.is === "amount" &&
    amount.amount.dim === "weight" &&
    food?.is === "thing" &&
    Boolean(food.thing.ingredient || food.thing.chocolate || food.thing.taste)
  );
}

/** A unit with no number before it: "in grams", "how many teaspoons". Single letters only behind in, to, into. */
function bareUnit(tokens: readonly Token[], i: number): { unit: string; next: number } | undefined {
  const token = tokens[i] as Token;
  const lead = text(tokens[i - 1]);
  if (token.text === "%" || token.text === "$" || token.text === "€" || token.text === "£")
    return { unit: token.text === "%" ? "%" : "", next: i + 1 };
  if (token.kind !== "word" && token.text !== "°") return undefined;
  // "1/4 cup honey g"
  const closes =
    tokens[i + 1] === undefined &&
    token.text === "g" &&
    tokens.some((each) =>
      [
        "cup",
        "cups",
        "tbsp",
        "tsp",
        "tablespoons",
        "tablespoon",
        "teaspoon",
        "teaspoons",
        "oz",
        "stick",
        "sticks",
      ].includes(each.text),
    );
  if (token.text.length === 1 && !closes && !["in", "to", "into", "as", "many", "much"].includes(lead))
    return undefined;
  // "36 hours in days", "how many days is 36 hours": one length of time in another, and no day
  const isDays =
    token.text === "days" &&
    ["in", "into", "many"].includes(lead) &&
    tokens.some((each, at) => hours.has(each.text) && tokens[at - 1]?.kind === "number");
  if (!isDays && ["second", "day", "in", "mil", "gs", "ins", "days"].includes(token.text)) return undefined;
  const unit = readUnit(tokens, i, 100);
  if (unit) return unit;
  if (!["in", "to", "into", "as"].includes(lead)) return undefined;
  return { c: { unit: "°C", next: i + 1 }, f: { unit: "°F", next: i + 1 } }[token.text];
}
