/** What is left out of a bill that had it: packaging and hours, a discount, tax or fee that holds no longer. */
import type { Reading } from "../contract/index.ts";
import type { Draft } from "./draft.ts";

const off =
  "(?:no|without(?: the| any| my)?|forget(?: the| that)?|drop(?: the)?|leave out(?: the)?|skip(?: the)?|take away the|cancel the)";
const gone = [
  [
    "discount_percent",
    new RegExp(
      `\\b(?:(?:back to|at|to) (?:the |my )?(?:full|normal|usual|old|regular) price|full price(?: again)?$|${off} (?:discount|reduction|rebate))\\b`,
    ),
  ],
  ["tax_percent", new RegExp(`\\b${off} (?:vat|gst|tax|taxes)\\b`)],
  ["fee_percent", new RegExp(`\\b${off} (?:fees?|commission)\\b`)],
] as const;

/** "back to full price", "no discount"; and a discount off a price that gave way to a margin. Pure. */
export function withoutExtras(now: Draft, said: Draft, before: Draft, { text }: Reading): Draft {
  const ofOldPrice =
    before.price !== undefined && now.price === undefined && said.discount_percent === undefined;
  return Object.fromEntries(
    Object.entries(now).filter(
      ([key]) =>
        !(key === "discount_percent" && ofOldPrice) &&
        !gone.some(([name, words]) => name === key && said[name] === undefined && words.test(text)),
    ),
  );
}

const withoutPackaging =
  /\b(?:without|leave out|forget|minus|no) (?:the |any )?(?:boxes|box|packaging|bags|ribbons?)\b/;
/** "and without my hours", "leave the labour out". */
const withoutWork =
  /\b(?:(?:without|leave out|forget|minus|not counting) (?:the |my |any )?(?:hours?|time|work|labou?r|wages?)|leave (?:the |my )?(?:hours?|time|work|labou?r|wages?) out)\b/;

/** Packaging and hours at nothing, where they were counted before. */
export function leftOut({ text }: Reading, before: Draft): Draft {
  const [packed, worked] = [withoutPackaging.test(text), withoutWork.test(text)];
  return {
    ...(packed && (before.packaging ?? before.box_packaging) !== undefined ? { packaging: 0 } : {}),
    ...(worked && before.labor_min !== undefined ? { labor_per_h: 0 } : {}),
    ...(worked && before.labor !== undefined ? { labor: 0 } : {}),
  };
}
