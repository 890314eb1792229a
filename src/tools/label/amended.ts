/** "add 20 g hazelnut paste", "without the butter", "its salted butter": the label before, with that changed in it. */
import { nameOf, sameIngredient } from "../lib/lines.ts";
import { firstOf, type Way } from "../lib/ways.ts";
import { swapEnd } from "./swapped.ts";
import type { Draft, LabelTurn, LabelWay, Line } from "./turn.ts";

/** Words of a label of its own. */
const anotherLabel =
  /(?:^| )(?:us|eu|usa|european|american|new|another)? ?labels?(?: (?:for|of)|[^?]*:)|<count=macarons>|(?:^| )(?:recipe|batch)(?: |<|$)/;
const goes =
  /\b(?:without|no|minus|leave out|leaving out|skip|drop|remove|take out|forget) (?:the |any |that )?$/;
const comes =
  /^(?:(?:and|ok|oh|so|now|what|if|i|but|also|please) )*(?:add|put|with|plus|use|swap|there is|theres|it has|they have)\b/;
const isOwnName =
  /^(?:(?:and|oh|actually|but|sorry|no) )*(?:its|it is|it was|thats|the butter is|i used|used|with) /;
const isOnTop = /\b(?:add|more|another|extra|plus)\b/;

/** A change of one or two weights is an amendment; a longer list is a label of its own. */
const mostWeights = 2;

/** The general name of what is sold in kinds. Nut butters and cocoa butter are foods of their own, with other allergens. */
const general = (name: string): string =>
  name.replace(/^(?:un)?salted (?=butter$)|^(?:dark|milk|white) (?=chocolate$)/, "");

/** "salted butter" is a butter, "dark chocolate" a chocolate; dark is no milk chocolate. */
const isKind = (one: string, other: string): boolean =>
  sameIngredient(one, other) || sameIngredient(general(one), other) || sameIngredient(one, general(other));

/** The turn with the lines of the label before. */
type Amending = LabelTurn & { had: readonly Line[] };

/** "without the butter". */
const leftOut: Way<Amending, Draft> = ({ reading, foods, lines, had }) => {
  const gone = foods.filter(({ at }) => goes.test(reading.text.slice(0, at[0])));
  const kept = had.filter(({ name }) => !gone.some((each) => isKind(nameOf(each), name)));
  // what isn't in it can't be left out: that is about something else
  return gone.length > 0 && lines.length === 0
    ? kept.length < had.length
      ? { lines: kept }
      : {}
    : undefined;
};

/** "add 20 g hazelnut paste", "swap the butter for 40 g hazelnut paste", "10 g more butter". */
const weighedAnew: Way<Amending, Draft> = ({ reading, foods, lines, had }) => {
  if (lines.length === 0) return undefined;
  const end = swapEnd(reading) ?? 0;
  const swapped = foods.filter(({ at }) => at[0] < end);
  const stays = had.filter(({ name }) => !swapped.some((each) => isKind(nameOf(each), name)));
  const onTop = isOnTop.test(reading.text);
  const gramsOf = (name: string) => stays.find((each) => isKind(name, each.name))?.grams ?? 0;
  const now = lines.map((each) => (onTop ? { ...each, grams: each.grams + gramsOf(each.name) } : each));
  const others = stays.filter(({ name }) => !lines.some((each) => isKind(each.name, name)));
  return { lines: [...others, ...now] };
};

/** "its salted butter": the same line by its right name. */
const renamed: Way<Amending, Draft> = ({ reading, foods: [food, ...more], had }) => {
  if (!food || more.length > 0 || !isOwnName.test(reading.text)) return undefined;
  const own = had.filter(({ name }) => isKind(nameOf(food), name));
  return own.length === 1
    ? { lines: had.map((each) => (each === own[0] ? { ...each, name: nameOf(food) } : each)) }
    : undefined;
};

/** "which allergens if i use pistachio paste and cream in them": beside what is in them. */
const comesWithin =
  /\b(?:if|when|with|once) (?:(?:i|we|you|also|then|theres|there is) )*(?:put|putting|use|using|used|add|adding|added|mix|fold|swirl|pipe|fill|have|had)\b|(?:\b(?:with|plus) .*|^(?:and |with |also )*[a-z]+(?: [a-z]+)? )\bin(?:to)? (?:them|it|those|these|that)\b/;
const isInPlace = /\binstead\b|\bin place of\b|\brather than\b/;

/** "and with peanut butter": it counts for the allergens, and its weight is asked for. */
const addedUnweighed: Way<Amending, Draft> = ({ reading, before, lines, had, want, asked, ...turn }) => {
  const comesIn = comes.test(reading.text) || comesWithin.test(reading.text);
  // "any milk in them": asked about, and not put in
  const foods = turn.foods.filter((each) => !turn.isAsked(each) && !turn.isRefused(each));
  // the weights of several can't be asked for in one question
  const most = want === "allergens" ? Number.POSITIVE_INFINITY : 1;
  if (foods.length === 0 || foods.length > most || lines.length > 0) return undefined;
  if (!comesIn || isInPlace.test(reading.text)) return undefined;
  const fresh = foods.map(nameOf).filter((name) => !had.some((line) => sameIngredient(line.name, name)));
  return { also: [...new Set([...(before?.also ?? []), ...fresh])] };
};

const ways = [leftOut, weighedAnew, renamed, addedUnweighed];

/** Nothing where the sentence is about another label. */
export const amended: LabelWay = (turn) => {
  const { before, foods, lines, asked, common, reading, want } = turn;
  if (!before?.lines || foods.length === 0 || lines.length > mostWeights || anotherLabel.test(reading.mask))
    return undefined;
  const change = firstOf(ways, { ...turn, had: before.lines });
  if (!change || Object.keys(change).length === 0) return undefined;
  return {
    ...before,
    ...change,
    ...common,
    ...(asked.length > 0 ? { asked } : {}),
    want: asked.length > 0 || want === "allergens" ? "allergens" : before.want,
  };
};
