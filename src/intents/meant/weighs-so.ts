/** "for my buttercream, it weighs 290", "there's 350 of it", "240 on the scale": grams that nobody says to be grams. */
import { wordOf } from "../found/items.ts";
import type { Item } from "../found/scan.ts";

/** Lighter than this no bowl is, and a bare number may count something. */
const lightest = 20;

const weighs =
  /(?:^| )(?:weighs|weigh|weighed|weighing)(?: (?:in|at|out|about|around|roughly|only|just|now|exactly|almost|nearly))*$/;
const reads =
  /(?:^| )(?:scales?|display) (?:says?|said|reads?|shows?|showed|is at|stops at|stopped at)(?: (?:about|around|only|just|now))*$/;
/** What there is of a mix that was named. */
const thereIs =
  /(?:^| )(?:theres|there is|there are|ive got|i have|ive|i got|got|have|came to|comes to|come to|its|it is|it was)(?: (?:about|around|roughly|only|just|now|exactly))*$/;
const behindScale = /^(?:on|by) (?:the |my )?scales?\b/;
const behindMix =
  /^(?:of (?:it|that|this)|here|in (?:the|my) bowl|in (?:there|it|here)|in all|in total|all told)\b/;

/** "if the bowl was 260 instead": so much of a bowl is its weight. */
const bowlIs =
  /(?:^| )(?:bowl|bowlful)(?: (?:is|was|were|has|had|holds|held|weighed|be|came to|comes to|at|only|just|about|really|actually|now))+$/;
const inBowl = /^in (?:the|my|that) bowl\b/;
const thereWas =
  /(?:^| )(?:theres|there is|there are|there was|there were|ive got|i have|i had|ive|i got|got|have)(?: (?:about|around|roughly|only|just|now|exactly))*$/;
/** A bowl of less is none: fewer grams may be what went in. */
const lightestBowl = 60;

const behindNamed = /^of (?:it|that|this)\b/;

/** "kirsch into buttercream, 150 of it": said of what was named right before. */
function isOfNamed(items: readonly Item[], at: number): boolean {
  const lead = items[at - 1];
  const named = lead?.is === "sign" ? items[at - 2] : lead;
  return named?.is === "thing" && Boolean(named.thing.base);
}

const words = (items: readonly Item[]): string =>
  items
    .map((item) => wordOf(item) || (item.is === "thing" ? item.thing.text : item.is === "sign" ? "" : "#"))
    .join(" ")
    .trim();

/** A mix is spoken of, and nothing that would be counted. */
const isOfMix = (items: readonly Item[]): boolean =>
  items.some((item) => item.is === "thing" && item.thing.base) &&
  !items.some(
    (item) => item.is === "thing" && (item.thing.count === "macarons" || item.thing.count === "shells"),
  );

/** "150 g of buttercream gets rum and the other's two hundred and gets mint": the second bowl, without its grams. */
function isOtherBowl(items: readonly Item[], at: number): boolean {
  const weighed = items
    .slice(0, at)
    .findLast(
      (item) => item.is === "amount" && item.amount.dim === "weight" && item.amount.value >= lightest,
    );
  if (weighed?.is !== "amount" || weighed.amount.unit !== "g") return false;
  const item = items[at];
  const isAlike = item?.is === "amount" && item.amount.value >= weighed.amount.value / 10;
  const before = words(items.slice(Math.max(0, at - 5), at));
  const [goes, flavor] = [words(items.slice(at + 1, at + 4)), items.slice(at + 1, at + 6)];
  return (
    isAlike &&
    otherBowl.test(before) &&
    /^(?:(?:and|that|it|which) )*(?:for|with|gets|wants|needs|takes|is for|to be) /.test(`${goes} `) &&
    flavor.some((each) => each.is === "thing" && Boolean(each.thing.dose ?? each.thing.taste))
  );
}
const otherBowl =
  /(?:^| )and$|(?:^| )(?:others?|second|seconds|next|ones?|bigger|smaller|big|small|little|bowls?|bowls) (?:(?:is|has|holds|weighs|at|one|ones|bowl) )*$|(?:^| )(?:ones|others|seconds|one is|other is|second is|bowl is|other one is|second one is)$/;

/** The items with such numbers as grams. Pure. */
export function withWeighed(items: readonly Item[]): Item[] {
  const isCandidate = (item: Item) =>
    item.is === "amount" &&
    item.amount.dim === "number" &&
    item.amount.unit === "" &&
    !item.amount.fraction &&
    item.amount.value >= lightest;
  if (!items.some(isCandidate)) return [...items];
  return items.map((item, at) => {
    if (item.is !== "amount" || !isCandidate(item)) return item;
    const next = items[at + 1];
    // "weighs 290 grams" and "45 macarons" say of what
    if (next && next.is !== "sign" && next.is !== "word") return item;
    const before = words(items.slice(Math.max(0, at - 6), at));
    const behind = words(items.slice(at + 1, at + 5));
    const said =
      weighs.test(before) ||
      reads.test(before) ||
      behindScale.test(behind) ||
      isBowl(items, item.amount.value, before, behind) ||
      (isOfMix(items) && behindNamed.test(behind) && isOfNamed(items, at)) ||
      (isOfMix(items) && isOtherBowl(items, at)) ||
      (isOfMix(items) && thereIs.test(before) && (behindMix.test(behind) || isAfterMix(items, at)));
    return said ? { ...item, amount: { ...item.amount, dim: "weight", unit: "g" } } : item;
  });
}

/** "and the lemon if the bowl was 260", "suppose there was 260 in the bowl": nothing that is counted is spoken of. */
function isBowl(items: readonly Item[], value: number, before: string, behind: string): boolean {
  const said = bowlIs.test(before) || (inBowl.test(behind) && thereWas.test(before));
  return (
    said &&
    value >= lightestBowl &&
    !/^(?:of |each|per|percent|min|degrees)/.test(behind) &&
    !items.some(
      (item) =>
        item.is === "thing" &&
        (item.thing.count === "macarons" || item.thing.count === "shells" || item.thing.count === "trays"),
    )
  );
}

/** "coffee flavor for the buttercream. it came to 510": said of it in a sentence that ends with the number. */
function isAfterMix(items: readonly Item[], at: number): boolean {
  const next = items[at + 1];
  const lead = words(items.slice(Math.max(0, at - 4), at));
  const mixed = items.slice(0, at).some((item) => item.is === "thing" && item.thing.base);
  return mixed && /(?:came|comes|come) to(?: \S+)?$/.test(lead) && (!next || next.is === "sign");
}
