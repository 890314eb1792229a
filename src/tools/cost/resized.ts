/** "and a box of 6", "for 12", "for 5 orders", behind what a batch costs: the same sums for fewer or more of them. */
import type { Reading } from "../contract/index.ts";
import type { Draft } from "./draft.ts";
import { scaled, spentInAll } from "./scaled.ts";

const talk =
  "(?:and|price|cost|charge|ok|so|now|then|what|about|how|if|a|the|or|its|just|only|say|it|per|would|be)";
const ofBox = new RegExp(
  `^(?:${talk} )*(?:for )?(?:a )?\\S*<count=boxes> of \\S*<number>(?: \\S*<count=macarons>)?(?: [?])?$`,
);
const forMany = new RegExp(
  `^(?:${talk} )*for (?:all )?\\S*<number>(?: (?:of (?:them|those)|\\S*<count=macarons>|only|instead|then))*(?: [?])?$`,
);
const ofThem = new RegExp(`^(?:${talk} )*\\S*<number> of (?:them|those|these)(?: [?])?$`);
const forOne = new RegExp(
  `^(?:${talk} )*for (?:just )?(?:one|each|a single one|one_?\\S*<number>)(?: [?])?$`,
);
const forOrders = new RegExp(
  `^(?:${talk} )*for \\S*<number> (?:orders?|parties|customers?|\\S*<count=(?:boxes|batches)>|of those|such)(?: [?])?$`,
);

/** "no 12", "12 instead", behind a box of 6. */
const otherBox =
  /^(?:(?:no|nope|sorry|i|mean|meant|make|it|that|ok|and|or|what|about|how|actually|wait|rather|say|if|its|boxes|a|the) )*\S*<number>(?: (?:instead|then|sorry|please|rather|\S*<count=macarons>|in it|(?:in|to|into) (?:a|each|the) box(?:<count=boxes>)?))*(?: [?.])?$/;

/** "12 in a box" is no margin. */
const inABox = /<number>(?: \S*<count=macarons>)? (?:in|to|into) (?:a|each|the) box/;

/** "for 40", behind a box that sells at 8: nobody puts a price up or down so far; so many macarons. From memory. */
const mostTimes = 3;
const isNear = (number: number | undefined, price: number): boolean =>
  number === undefined || (number <= price * mostTimes && number >= price / mostTimes);

/** The bill of before for another number of macarons; undefined where no other number is said. */
export function resized({ amounts, mask }: Reading, before: Draft): Draft | undefined {
  const [only, ...others] = amounts;
  const priced = [...spentInAll, "box_packaging" as const].some((key) => before[key] !== undefined);
  if (!priced || others.length > 0 || (only && only.dim !== "number")) return undefined;
  const batch = before.part_of ?? before.cost_for ?? before.macarons;
  const times = only && forOrders.test(mask) ? only.value : undefined;
  if (times === undefined && batch === undefined) return undefined;
  // a number behind what one box costs is another box; behind a price or a margin it may be that
  const isOther =
    before.box_of !== undefined &&
    before.box_of === before.macarons &&
    before.price === undefined &&
    ((before.margin_percent === undefined && before.markup_percent === undefined) || inABox.test(mask)) &&
    only?.unit === "" &&
    only.value >= 2 &&
    otherBox.test(mask);
  const isBox = ofBox.test(mask) || isOther;
  const isPrice =
    before.price !== undefined && before.price_for !== 1 && !isBox && isNear(only?.value, before.price);
  const number =
    times !== undefined && batch !== undefined
      ? batch * times
      : forOne.test(mask)
        ? 1
        : only &&
            Number.isInteger(only.value) &&
            (isBox || ofThem.test(mask) || (forMany.test(mask) && !isPrice))
          ? only.value
          : undefined;
  const [many, of] = times === undefined ? [number, batch] : [times, 1];
  if (many === undefined || of === undefined || many === of) return undefined;
  const whole = before.price !== undefined && before.price_for !== 1;
  const { part_of: _all, ...kept } = before;
  return {
    ...kept,
    ...scaled(before, spentInAll, many, of),
    // a box of six sold for 8, of 24 that cost 9: each side by its own number
    ...(whole ? scaled(before, ["price"], many, times === undefined ? (before.price_for ?? of) : of) : {}),
    ...(number === undefined ? {} : { macarons: number, cost_for: number }),
    ...(isBox && number !== undefined ? { box_of: number } : {}),
    // "for 5 orders", each in a box of its own
    ...(times !== undefined && before.box_packaging !== undefined && before.box_of === undefined
      ? { boxes: times * (before.boxes ?? 1) }
      : {}),
    ...(number !== undefined && before.price_for !== undefined && before.price_for !== 1
      ? { price_for: number }
      : {}),
  };
}
