/** "2 tbsp of a liqueur by its trade name": of a name that no table has. It is never what was spoken of before. */
import type { Amount, Memory, Reading } from "../contract/index.ts";
import { inBase } from "../lib/units.ts";
import { mixOf } from "./base-turn.ts";
import { type Draft, doseBefore } from "./draft.ts";
import { byVolume } from "./flavor-weight.ts";
import { ofTurn } from "./of-turn.ts";

/** Measures by eye: none of them has a weight. */
const byEye =
  "shots?|splash(?:es)?|glass(?:es)?|capfuls?|caps?|glugs?|dash(?:es)?|nips?|jiggers?|measures?|drops?|squirts?|pinch(?:es)?|drizzles?|scoops?|pumps?";

const intoIt = /\b(?:in|into|for|to|of|from|makes?|total|plus|another) (?:the |my |a |about |only |just )*$/;

/** Words behind a weight that name nothing. */
const talk =
  /^(?:more|extra|less|left|too|in|into|to|for|on|is|was|it|that|this|then|now|ok|okay|and|or|each|please|pls|plain|with|if|at|per|so|but|went|goes|gone|already|over|under|total|altogether|enough|instead|from|has|have|by|as|the|a|my|some|of|not|about|again|maybe|tops|max|spare|here|there|can|do|does|will|would|should|i|how|what|yes|no|just|only|sachets?|packets?|pouch(?:es)?|vials?|tubes?|jars?|bottles?|bags?|tins?|pots?|tubs?|bowls?|box(?:es)?)$/;

/** @returns the name with what was said of it; undefined where every name is known */
export function unknownWeighed(reading: Reading): Draft | undefined {
  // hardly a word of it is understood: no name to ask about
  if (reading.unknown.length > 2) return undefined;
  for (const amount of reading.amounts) {
    if (!["weight", "volume", "number"].includes(amount.dim) || amount.of || amount.fraction) continue;
    if (intoIt.test(reading.text.slice(0, amount.at[0]))) continue;
    const [eye] = new RegExp(`(?<=^ ?)(?:${byEye})\\b`).exec(reading.text.slice(amount.at[1])) ?? [];
    const name = nameAt(reading, amount.at[1] + (eye ? eye.length + 1 : 0), eye !== undefined);
    if (!name) continue;
    if (eye) return { unweighable: `${amount.text} ${eye} of ${name}`, unknown: name };
    const measured = weightOf(amount);
    if (measured) return { ...measured, unknown: name };
  }
  return byEyeAlone(reading) ?? namedFirst(reading);
}

const byEyeSaid = new RegExp(`\\b(?:a|an|some|one|another|little) (?:\\w+ )?(${byEye})\\b`);
const measuredByEye = ofTurn((text) => byEyeSaid.exec(text));

/** "a splash of" something in 400 g buttercream. */
function byEyeAlone(reading: Reading): Draft | undefined {
  const found = measuredByEye(reading.text);
  if (!found) return undefined;
  const name = nameAt(reading, found.index + found[0].length, true);
  return name ? { unweighable: `a ${found[1]} of ${name}`, unknown: name } : undefined;
}

/** The name before its weight, nothing else said: "and" that one "15 g". */
function namedFirst({ text, amounts, unknown }: Reading): Draft | undefined {
  const [only, ...others] = amounts;
  if (!only || others.length > 0 || only.of || unknown.length > 2) return undefined;
  const [, lead] =
    /^(?:(?:and|with|plus|ok|so|now|then|also|the|my|some|i|put|have|add|added|for) )*([a-z]+(?: [a-z]+)?),? $/.exec(
      text.slice(0, only.at[0]),
    ) ?? [];
  const isName = lead !== undefined && unknown.some((each) => lead === each || lead.endsWith(` ${each}`));
  const measured = isName ? weightOf(only) : undefined;
  // "glugged 12 g in", "only dyeing 200 g of it" tell what is done
  const names = lead && !/\b(?:already|just|only)\b|(?:ed|ing)$/.test(lead) && !talk.test(lead);
  return measured && names ? { ...measured, unknown: lead } : undefined;
}

/**
 * One or two words from there on that no table knows: one of them a word that nobody knows, or both what goes "in it".
 * @param measured behind a measure by eye any word is a name
 */
function nameAt(reading: Reading, from: number, measured: boolean): string | undefined {
  const lead = /^ ?(?:of )?(?:the |my |some )?/.exec(reading.text.slice(from))?.[0] ?? "";
  const start = from + lead.length;
  const [, first, second] = /^([a-z']+)(?: ([a-z']+))?/.exec(reading.text.slice(start)) ?? [];
  const isPlain = (word: string | undefined, at: number): word is string =>
    word !== undefined &&
    !talk.test(word) &&
    ![...reading.things, ...reading.amounts, ...reading.whens].some(
      (each) => each.at[0] <= at && at < each.at[1],
    );
  if (!isPlain(first, start)) return undefined;
  const name = isPlain(second, start + first.length + 1) ? `${first} ${second}` : first;
  const isUnknown = name.split(" ").some((each) => reading.unknown.includes(each));
  const goesIn = /^ (?:in|into) (?:it|that|this|there|the|my|\d)/.test(
    reading.text.slice(start + name.length),
  );
  return isUnknown || measured || goesIn ? name : undefined;
}

function weightOf(amount: Amount): Draft | undefined {
  if (amount.dim === "weight") return { flavor_g: inBase(amount.value, amount.unit) };
  return amount.dim === "volume" ? byVolume(amount) : undefined;
}

/** The bowl that it goes into where the sentence names none: the one spoken of, or the mix worked out just now. */
export function bowlBefore(memory: Memory): Draft {
  const { last, table } = memory;
  const before = doseBefore(memory);
  const mix = ["ganache", "buttercream", "fill"].includes(last?.tool ?? "")
    ? mixOf(table.mass?.thing)
    : undefined;
  const base_g = before?.base_g ?? (mix ? table.mass?.grams : undefined);
  const base = before?.base ?? mix;
  return base_g === undefined ? {} : { base_g, ...(base ? { base } : {}) };
}

/** "how much zibbelmus for 300 g buttercream": a word that no table has where the flavor stands. */
export const unknownAsked = ({ unknown, text, mask }: Reading): string | undefined =>
  unknown.find(
    (word) =>
      new RegExp(`how (?:much|many)(?: g| grams)?(?: of)?(?: the| my| this)? ${word}(?: |$|[?,.])`).test(
        text,
      ) ||
      // "xanthan gum for 300 g buttercream how much"
      new RegExp(
        `^(?:${word}(?: [a-z]+)?|[a-z]+ ${word}) (?:for|in|into) \\S*<weight> (?:of )?\\S*<[^>]*base=`,
      ).test(mask),
  );
