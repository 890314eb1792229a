/** A discount, tax or fee that holds no longer. */
import type { Reading } from "../contract/index.ts";
import type { CostInputs } from "./cost.ts";

type Draft = Partial<CostInputs>;

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
