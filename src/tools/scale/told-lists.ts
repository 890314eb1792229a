/** A recipe told line by line together with what sets its size: a list of what there is, or how much it is to make. */
import type { Amount, Reading } from "../contract/index.ts";
import type { Weighed } from "../lib/find.ts";
import { gramsOf } from "../lib/units.ts";
import type { Draft } from "./draft.ts";
import { isFromSource } from "./source-said.ts";

const nameOf = ({ thing }: Weighed): string =>
  thing?.chocolate ? `${thing.chocolate} chocolate` : (thing?.ingredient ?? thing?.text ?? "");
/** Plain sugar in the one list is the granulated of the other. */
const kindOf = (each: Weighed): string => (nameOf(each) === "granulated sugar" ? "sugar" : nameOf(each));
const lineOf = (each: Weighed) => ({ name: nameOf(each), grams: each.grams });

/** What stands before a list, or right behind one, and says that it is there to be used. */
const isStock =
  /\b(?:in (?:the|my|our) (?:house|cupboards?|pantry|larder|fridge|kitchen|shop|store|stock|jars?|tins?|tubs?)|on (?:the|my|our) (?:shelf|shelves|counter|bench|table)|(?:at|from) home|cupboards?|pantry|larder|fridge|shelf|stock|to hand|at hand|on hand|at my disposal|(?:i|we|ive|weve|i ve|we ve)(?: (?:have|got|still|only|just|had|found|own|bought|ve|now|also|do))*(?: (?:have|got|own|bought|found))|ive|weve|(?:have|has) got|left ?overs?|left|what(?:s|'s| is) (?:there|here)|there(?:s|'s| is| are)|(?:i|we) (?:only |just )?(?:have|got)|supplies)\b/;
/** ... that it is a recipe: "one go takes", "for a batch i use". */
const isRecipe =
  /\b(?:(?:one|a|an|each|every|per|single|whole|full) (?:single |whole |full )?(?:go|batch|lot|round|time|run|set|mix|recipe|portion|bowl|bake)|recipe|formula|list|card|takes?|needs?|wants?|calls? for|asks? for|goes|uses?|use|mine (?:is|are)|requires?|made (?:of|from|with))\b/;

/** "and found another 20 g of each": more of the same, and no second list. */
const addsUp =
  /\b(?:more|another|extra|further|again|also|spilt|spilled|dropped|lost|plus|added|add|as well|too|second|later)\b/;

const startOf = ({ amount, thing }: Weighed): number =>
  Math.min(amount.at[0], thing?.at[0] ?? Number.POSITIVE_INFINITY);
const endOf = ({ amount, thing }: Weighed): number => Math.max(amount.at[1], thing?.at[1] ?? 0);

/** "one go takes 100 g whites, ...; in the house i have 140 g whites, ...": a recipe, and a list of what there is. */
export function besideStock({ text }: Reading, weights: readonly Weighed[]): Draft | undefined {
  if (weights.length < 4) return undefined;
  const names = weights.map(kindOf);
  const cut = names.findIndex((name, at) => names.indexOf(name) < at);
  const [first, second] = [weights.slice(0, cut), weights.slice(cut)];
  const [begin, middle] = [first[0], second[0]];
  if (cut < 2 || second.length < 2 || !begin || !middle) return undefined;
  const [left, right] = [names.slice(0, cut), names.slice(cut)];
  const [few, many] = left.length < right.length ? [left, right] : [right, left];
  if (new Set(right).size < right.length || !few.every((name) => many.includes(name))) return undefined;
  const before = text.slice(0, startOf(begin));
  const between = text.slice(endOf(first.at(-1) ?? begin), startOf(middle));
  if (addsUp.test(between)) return undefined;
  // "..., 90 g sugar is one lot; the cupboard says 140 g whites": what is behind a list is of that one
  const [behindFirst = "", beforeSecond = ""] = splitAtJoint(between);
  const order = orderOf([before, behindFirst], beforeSecond);
  if (!order) return undefined;
  const [recipe, stock] = order === "recipe first" ? [first, second] : [second, first];
  return { lines: recipe.map(lineOf), have: stock.map(lineOf) };
}

function splitAtJoint(between: string): string[] {
  const joint = between.search(/[.;:,](?=[^.;:,]*[a-z])/);
  return joint < 0 ? ["", between] : [between.slice(0, joint), between.slice(joint)];
}

function orderOf(first: readonly string[], second: string): "recipe first" | "stock first" | undefined {
  const stock = [first.some((each) => isStock.test(each)), isStock.test(second)];
  const recipe = [first.some((each) => isRecipe.test(each)), isRecipe.test(second)];
  if (stock[0] !== stock[1]) return stock[1] ? "recipe first" : "stock first";
  if (recipe[0] !== recipe[1]) return recipe[0] ? "recipe first" : "stock first";
  return undefined;
}

const asksIfEnough =
  /^(?:(?:so|ok|and|hi|hey|well) ,? ?)*(?:is|are|will|would|do|does|have|has) .*\benough\b|\b(?:is (?:that|this|it|there)|are (?:they|these|those|there)|(?:do|have) (?:i|we)(?: have| got)?|will (?:that|this|it|they)|does (?:that|this|it)|would (?:that|this|it)) (?:\w+ ){0,2}?(?:enough|do|suffice|stretch|reach)\b|\bhow many\b/;

/** A weight of all of it, by what stands before or behind: "600 g of batter is what i want". */
const wantsBefore =
  /\b(?:want|need|after|like|make|makes|making|get|fill|fills|to|into|at|of|for|scaled?|be|become|becomes|come|total|as|give|gives|weigh|weighs|is|exactly|about|around|roughly|want is|batter|mix|mixture) $/;
const wantsBehind =
  /^(?: of)?(?: it| that| batter| mix| mixture| shell batter)?(?: (?:please|pls|in all|in total|total|altogether|all told|all together|is what|is (?:the|my)|thats what|worth|wanted|needed|i (?:want|need)))/;

function sizeIn(reading: Reading, weights: readonly Weighed[]): Draft | undefined {
  const { amounts, text } = reading;
  const others = amounts.filter(
    (each) => weights.every(({ amount }) => amount !== each) && each.dim !== "length" && !isItsCount(each),
  );
  const [only, ...more] = others;
  if (!only || more.length > 0 || only.fraction) return undefined;
  if (only.dim === "number" && only.of?.count === "macarons") return { macarons: only.value };
  if (only.dim === "number" && only.of?.count === "shells") return { shells: only.value };
  if (only.dim !== "weight") return undefined;
  const wanted = wantsBefore.test(text.slice(0, only.at[0])) || wantsBehind.test(text.slice(only.at[1]));
  return only.of?.base === "batter" || (!only.of && wanted) ? { total_g: gramsOf(only) } : undefined;
}

/** "one list", "a batch": no size. */
const isItsCount = ({ dim, value, of }: Amount): boolean =>
  dim === "number" && value === 1 && (!of || of.count === "batches");

/** "enough for 40 macarons out of this: 100 g whites, ...": a list, and how much it is to make. */
export function toMake(reading: Reading, weights: readonly Weighed[]): Draft | undefined {
  const [first] = weights;
  const names = weights.map(kindOf);
  if (!first || weights.length < 3 || new Set(names).size < names.length) return undefined;
  if (weights.some(({ thing }) => !thing?.ingredient && !thing?.chocolate)) return undefined;
  const lead = reading.text.slice(0, startOf(first));
  if (!isFromSource(reading, startOf(first)) && hasIt.test(lead)) return undefined;
  if (asksIfEnough.test(reading.text)) return undefined;
  const size = sizeIn(reading, weights);
  return size && { lines: weights.map(lineOf), ...size };
}

/** Only what is told right before the list makes stock of it: "i have", "pantry:". */
const hasIt =
  /\b(?:(?:i|we) (?:still |only |just )?(?:have|got|had|found|bought)|ive|weve|theres|there is|there are|pantry|cupboard|larder|fridge|shelf|stock|at home|left|got)\b/;

/** "what i always do is 95 g whites, ... today its the whites of 3 eggs": behind a list that has its whites already. */
export function isApartFrom(
  { text }: Reading,
  weights: readonly Weighed[],
  count: Amount | undefined,
): boolean {
  const [first, last] = [weights[0], weights.at(-1)];
  const names = weights.map(kindOf);
  if (!count || !first || !last || new Set(names).size < names.length) return false;
  const [lead, between] = [text.slice(0, startOf(first)), text.slice(endOf(last), count.at[0])];
  return count.at[0] > endOf(last) && !hasIt.test(lead) && isNow.test(between) && !addsUp.test(between);
}
const isNow =
  /\b(?:today|tonight|now|this time|i(?:'ve| have|ve)?(?: only| just)? (?:have|got)|ive|theres|there are|only|it'?s|out of|from|with|but)\b/;
