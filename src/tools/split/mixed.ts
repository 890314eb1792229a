/**
 * Parts told in two ways at once: "a quarter green, 50 g brown, rest plain", "120 g pink, the rest half green, half
 * white", "80 g grey, the rest in two bowls". Each is turned into grams of the bowl, so that none of them is lost.
 */
import type { Amount, Reading } from "../contract/index.ts";
import { gramsOf } from "../lib/units.ts";
import { nameFrom, restName, shareOf } from "./names.ts";
import type { Draft, Said } from "./said.ts";

type Share = { name?: string; size: number };

const left = "(?:rest|remainder|remaining|what(?: i|')?s left(?: over)?|what remains|leftover)";
const leftOver = new RegExp(`\\b(?:the )?${left}\\b`, "g");
const ofRest = new RegExp(`^ (?:of |from )(?:the )?${left}\\b`);
/** Between "the rest" and what it is shared out in. */
const sharedOut =
  /^[,:]?(?: (?:is|are|be|to|will|should|gets?|goes|go|in|into|over|between|among|for|split|divided?|shared?|cut|halved|equal|equally|evenly|even|just|again|of|the|batter|buttercream|ganache|filling|mix|it)|[,:])* $/;
const inEqual =
  /\b(?:equal(?:ly)?|even(?:ly)?|alike|halved|half and half|half half|the same(?: each)?|each)\b/;

/** "50 brown": more than any number of bowls (from memory), with a name right behind it, is a weight. */
const isHeavy = ({ text, things }: Reading, each: Amount): boolean =>
  each.dim === "number" &&
  each.unit === "" &&
  !each.fraction &&
  each.value > 40 &&
  things.some((thing) => Boolean(thing.color) && text.slice(each.at[1], thing.at[0]) === " ");

const isShare = (each: Amount): boolean =>
  each.dim === "percent" || (each.dim === "number" && each.fraction !== undefined && each.value < 1);
const partOf = (each: Amount): number => (each.dim === "percent" ? each.value / 100 : each.value);

/** Where what is left over is spoken of, but for "half of the rest". */
const restsIn = (text: string) =>
  [...text.matchAll(leftOver)].filter(({ index }) => !/\b(?:of|from) $/.test(text.slice(0, index)));

/** The name of a part; in "a third of the rest red" it stands behind what it is a third of. */
function nameOf({ reading, named }: Said, each: Amount): string | undefined {
  const { text, things } = reading;
  const lead = ofRest.exec(text.slice(each.at[1]))?.[0];
  if (lead === undefined) return named(each);
  const from = each.at[1] + lead.length;
  const thing = things.find((one) => Boolean(one.color ?? one.taste) && one.at[0] >= from);
  return thing && sharedOut.test(text.slice(from, thing.at[0])) ? nameFrom(thing) : undefined;
}

export function mixed(said: Said): Draft | undefined {
  const { reading, bowl } = said;
  if (!bowl) return undefined;
  const { text, amounts } = reading;
  const total = gramsOf(bowl);
  const named = (each: Amount) => nameOf(said, each);
  const weights = amounts.filter(
    (each) => each !== bowl && !each.of?.base && (each.dim === "weight" || isHeavy(reading, each)),
  );
  const [rest] = restsIn(text);
  const from = rest ? rest.index + rest[0].length : text.length;
  const isBehind = (each: Amount) => rest !== undefined && sharedOut.test(text.slice(from, each.at[0]));
  const shares = amounts.filter(isShare);
  const isOfRest = (each: Amount) => ofRest.test(text.slice(each.at[1])) || isBehind(each);
  const firstOfRest = shares.find(isOfRest);
  const pieces = shares.filter(
    (each) =>
      isOfRest(each) ||
      // "half of the rest red, the other half white", "the rest half green half white"
      (firstOfRest !== undefined &&
        each.at[0] > firstOfRest.at[0] &&
        (isBehind(firstOfRest) || /\bother $/.test(text.slice(0, each.at[0])))),
  );
  const whole = shares.filter((each) => !pieces.includes(each));
  if ([...whole, ...pieces].some((each) => named(each) === undefined)) return undefined;
  if (weights.some((each) => named(each) === undefined)) return undefined;
  const told: { at: number; share: Share }[] = [
    ...weights.map((each) => ({ at: each.at[0], share: shareOf(gramsOf(each), named(each)) })),
    ...whole.map((each) => ({ at: each.at[0], share: shareOf(total * partOf(each), named(each)) })),
  ];
  const remaining = total - told.reduce((sum, { share }) => sum + share.size, 0);
  const ofIt =
    pieces.length > 0
      ? pieces.map((each) => ({
          at: each.at[0],
          share: shareOf(remaining * partOf(each), named(each)),
        }))
      : inBowls(reading, from, remaining, [...weights, ...whole]);
  const isMixed = weights.length > 0 && whole.length > 0;
  if (told.length === 0 || remaining <= 0 ? !isMixed : !isMixed && ofIt.length === 0) return undefined;
  const sizes = [...told, ...ofIt].sort((a, b) => a.at - b.at).map(({ share }) => share);
  return {
    weights: sizes,
    by: reading.said,
    ...(ofIt.length === 0 || pieces.length > 0 ? restName(reading) : {}),
  };
}

/** "the rest in two equal bowls", "the rest green and white, equally": what is left over, alike in each. */
function inBowls(
  { text, amounts, things }: Reading,
  from: number,
  remaining: number,
  told: readonly Amount[],
): { at: number; share: Share }[] {
  if (from >= text.length || remaining <= 0) return [];
  const end = Math.min(...told.filter((each) => each.at[0] >= from).map((each) => each.at[0]), text.length);
  const names = things.filter(
    (each) =>
      (each.color || each.taste) && !each.base && !each.dose && each.at[0] >= from && each.at[1] <= end,
  );
  const ways = amounts.find(
    (each) =>
      each.dim === "number" &&
      !each.fraction &&
      each.at[0] >= from &&
      sharedOut.test(text.slice(from, each.at[0])),
  );
  const halved = /^[,:]?(?: (?:is|in|into|split|cut))* (?:halves|half and half|halved)\b/.test(
    text.slice(from),
  );
  const count = ways?.value ?? (names.length > 1 ? names.length : halved ? 2 : 0);
  if (count < 2 || count > 100 || !Number.isInteger(count)) return [];
  if (names.length > 1 && !ways && !halved && !inEqual.test(text.slice(from, end))) return [];
  if (names.length > 0 && names.length !== count) return [];
  return Array.from({ length: count }, (_, at) => ({
    at: from + at / 1000,
    share: shareOf(remaining / count, names[at] ? nameFrom(names[at]) : undefined),
  }));
}
