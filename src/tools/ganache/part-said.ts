/** Of which part of a ganache each weight of a sentence is: of its chocolate, its cream or the whole. */
import type { Memory, Reading, Thing } from "../contract/index.ts";
import { says, type Weighed } from "../lib/find.ts";
import { describes, isChocolate, isChocolateHere } from "./kind-said.ts";
import { type Draft, ganacheBefore } from "./turn.ts";
import { inAll, loosePart, type Part } from "./weights-bare.ts";

const namesGanache = /<[^>]*base=ganache/;
/** Firm, piping or loose: only a ganache is. */
const namesUse = /<[^>]*use=/;

/** "white chocolate in hand: 300 g. i want a filling ganache", "cream: 120 g, ...": a part of it, told before the order. */
const toldFirst =
  /^(?:(?:the|my|some|only|just|with|i|ive|have|got|in|on|shelf|fridge|here|so|ok|[,:]) )*\S*<[^>]*ingredient=(\w*chocolate|cream)[^>]*> (?:(?:i|ive|we|have|got|in|on|the|my|hand|shelf|house|pantry|stock|here|left|there|is|at|home|a|bag|cupboard|fridge|weighs?|weighing|only|just|about|all|of|it) |[:=] )+\S*<weight>(?: (?:in|on|the|my|hand|shelf|house|here|left|there|is|all|i|have|at|home|of|it|fridge|cupboard|stock))*(?: [,.;-])? .*(?:base=ganache|use=)/;
/** "ganache, white, 420 g": the kind of what is ordered, and no chocolate that is weighed. */
const kindOfWhole =
  /base=ganache[^>]*> (?:[,.;:-] )*\S*<[^>]*(?:chocolate=|color=white)[^>]*> (?:[,.;:-] )*\S*<weight>(?! (?:of )?(?:chocolate|\S*<[^>]*ingredient))/;

/** The one weight of an order that is told in pieces. */
function toldInPieces(reading: Reading, [only, ...more]: readonly Weighed[]): Draft | undefined {
  if (!only || more.length > 0 || only.amount.dim !== "weight") return undefined;
  const part = toldFirst.exec(reading.mask)?.[1];
  if (part && !says(reading, inAll)) return { [part === "cream" ? "cream_g" : "chocolate_g"]: only.grams };
  const isKind = says(reading, kindOfWhole) && !says(reading, asksCream) && !/\bchoc/.test(reading.text);
  return isKind ? { total_g: only.grams } : undefined;
}

/** The first weight of each part; chocolate and cream together make the whole. */
export function weightsByPart(reading: Reading, memory: Memory, weights: readonly Weighed[]): Draft {
  const pieces = toldInPieces(reading, weights);
  if (pieces) return pieces;
  const out: Draft = {};
  const isTotal = weights.length === 1 && says(reading, inAll);
  for (const { grams, thing: named, amount, estimate } of weights) {
    // "for between the shells, 420 g in total": shells are counted
    const thing = named?.count && amount.dim === "weight" ? undefined : named;
    const part = thing
      ? partOf(thing, reading, memory, isTotal)
      : (partMeant(reading, memory) ??
        (Object.keys(out).length > 0 ? undefined : isTotal ? "total_g" : partUnnamed(reading, memory)));
    if (!part) continue;
    out[part] ??= grams;
    if (part === "cream_g" && thing && estimate) out.by_volume = true;
  }
  if (out.chocolate_g !== undefined && out.cream_g !== undefined) delete out.total_g;
  return out;
}

function partOf(thing: Thing, reading: Reading, memory: Memory, isTotal: boolean): Part | undefined {
  // "630 g dark ganache": the kind of the whole
  const isKind =
    describes(reading, thing) ||
    (isTotal && (memory.follows || says(reading, namesGanache))) ||
    // "firm dark, 300 g in all"; "160 g dark chocolate for piping, and the total" asks for it
    (isTotal && says(reading, namesUse) && !/choc/.test(thing.text)) ||
    namesKind(reading, thing, memory);
  const isHere = isChocolateHere(reading, thing);
  if ((thing.chocolate || isHere) && isKind) return "total_g";
  if (isChocolate(thing) || isHere) return "chocolate_g";
  if (thing.ingredient === "cream" || thing.ingredient === "light whipping cream") return "cream_g";
  return thing.base === "ganache" || thing.base === "filling" ? "total_g" : undefined;
}

/** "700 of dark", "the 350 in dark chocolate", behind a ganache that was built by its whole weight: another whole. */
function namesKind(reading: Reading, thing: Thing, memory: Memory): boolean {
  const { total_g, macarons, chocolate_g, cream_g } = (memory.follows && ganacheBefore(memory)) || {};
  const byWhole = (total_g ?? macarons) !== undefined && chocolate_g === undefined && cream_g === undefined;
  const isKind =
    !/choc|couverture/.test(thing.text) || /\b(?:in|as) (?:the )?$/.test(reading.text.slice(0, thing.at[0]));
  return byWhole && isKind && !says(reading, hasSome) && !says(reading, asksCream);
}

const hasSome =
  /(?:i have|ive got|i got|got|theres|there is|with) (?:only |just |about )?\S*<(?:weight|number)>/;
const withOfIt = /(?:^| )with (?:only |just )?\S*<weight> of (?:it|that)(?: |$)/;

/** The part that a weight of nothing named is of by what was asked or said before. */
function partMeant(reading: Reading, memory: Memory): Part | undefined {
  // "its milk chocolate, i have 300 g": of the chocolate that was asked for
  if (
    memory.slot === "chocolate" &&
    reading.things.some((each) => each.chocolate) &&
    !says(reading, namesGanache) &&
    says(reading, hasSome)
  )
    return "chocolate_g";
  // "and with 210 g of it", behind so much cream
  const { chocolate_g, cream_g } = (memory.follows && ganacheBefore(memory)) || {};
  return chocolate_g !== undefined && cream_g !== undefined && says(reading, withOfIt)
    ? "cream_g"
    : undefined;
}

/** "175 g chopped": what is chopped is chocolate. */
const isChopped = /(?:^| )(?:chop|chopped|chopping)(?:<| |$)|<weight>[^?]* (?:melted|broken up)(?:<| |$)/;
const asksCream =
  /how (?:much|many) (?:heavy |whipping )?\S*<[^>]*ingredient=cream|<ingredient=cream> \?$|the \S*<ingredient=cream>(?: for \S+)? (?:would be|is|comes to|should be) (?:what|how)/;
const speaksOfWhole = /<[^>]*base=ganache|(?:^| )(?:total|altogether|in all)(?: |$)/;

function partUnnamed(reading: Reading, memory: Memory): Part {
  if (says(reading, isChopped)) return "chocolate_g";
  // "dark chocolate 70% 200 g, how much cream": of the chocolate, since cream is asked for and no whole is spoken of
  const namesChocolate = reading.things.some(
    (each) => (each.chocolate || each.ingredient === "chocolate") && /choc/.test(each.text),
  );
  return namesChocolate && says(reading, asksCream) && !says(reading, speaksOfWhole)
    ? "chocolate_g"
    : loosePart(memory);
}
