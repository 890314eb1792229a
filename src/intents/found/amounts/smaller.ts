/** A smaller unit of the same kind behind an amount: it adds up. */
import type { Amount } from "../../../tools/contract/index.ts";
import { inBase } from "../../../tools/lib/units.ts";
import type { Token } from "../../text/tokens.ts";
import { readNumber } from "../numbers.ts";
import { addCents, spokenCents } from "./money.ts";
import { type AmountRead, made, text } from "./parts.ts";
import { readUnit } from "./unit.ts";

/** What may stand behind "1 hour 15" for the fifteen to be its minutes and no count of something. */
const endsTime = new Set([
  "",
  ",",
  ".",
  "?",
  "!",
  ";",
  "for",
  "please",
  "pls",
  "on",
  "from",
  "timer",
  "thanks",
  // "is 2 hours 30 ok unrefrigerated"
  ..."ok okay safe fine alright too out outside unrefrigerated at in to now left long ago already then".split(
    " ",
  ),
]);

/** "1 lb 4 oz", "1 hour and 20 minutes", "1h30": a smaller unit of the same kind adds up. */
export function addSmaller(tokens: readonly Token[], read: AmountRead): AmountRead {
  const { amount } = read;
  if (amount.dim === "money") return addCents(tokens, read);
  const paid = amount.unit === "lb" ? spokenCents(tokens, read) : undefined;
  if (paid) return paid;
  const shared = amount.fraction && amount.dim !== "volume";
  if (!["weight", "time", "volume"].includes(amount.dim) || amount.high !== undefined || shared) return read;
  const at = ["and", "+", "plus"].includes(text(tokens[read.next])) ? read.next + 1 : read.next;
  const number = readNumber(tokens, at);
  if (!number) return read;
  if (
    amount.unit === "h" &&
    at === read.next &&
    (tokens[at]?.gap === false || endsTime.has(text(tokens[number.next]))) &&
    number.value < 60 &&
    Number.isInteger(number.value) &&
    !readUnit(tokens, number.next, number.value)
  )
    return made(amount.value * 60 + number.value, "min", "time", number.next);
  // "an hour and ten": minutes, where nothing else follows that they could be
  const loose = tokens[number.next];
  const endsThere =
    !loose ||
    loose.kind === "sign" ||
    ["for", "on", "in", "please", "pls", "timer", "to", "till"].includes(loose.text);
  if (
    amount.unit === "h" &&
    at > read.next &&
    // in digits only where it is a time that bakers set: "an hour and 20 for the ganache"
    (number.spelt || number.value % 5 === 0) &&
    number.value >= 5 &&
    number.value < 60 &&
    endsThere
  )
    return made(amount.value * 60 + number.value, "min", "time", number.next);
  // "3 pounds 12 in grams": ounces, as nobody says of pounds of money
  const asWeight =
    text(tokens[number.next]) === "in" &&
    /^(?:g|grams?|kg|kilos?|oz|ounces)$/.test(text(tokens[number.next + 1]));
  if (amount.unit === "lb" && at === read.next && number.value < 16 && asWeight && !number.fraction)
    return made(amount.value * 16 + number.value, "oz", "weight", number.next);
  const unit = readUnit(tokens, number.next, number.value);
  const pairs: Record<string, string[]> = {
    lb: ["oz"],
    kg: ["g"],
    h: ["min", "s"],
    min: ["s"],
    d: ["h"],
    cup: ["tbsp", "tsp"],
    tbsp: ["tsp"],
  };
  if (!unit || !pairs[amount.unit]?.includes(unit.unit)) return read;
  const total = inBase(amount.value, amount.unit) + inBase(number.value, unit.unit);
  // spoons beside a cup stay parts of it: what fills a cup is weighed by the cup
  const as = amount.unit === "cup" ? amount.unit : unit.unit;
  const joined = made(total / inBase(1, as), as, amount.dim, unit.next);
  if (amount.dim !== "volume") return addSmaller(tokens, joined);
  const before = partsOf(amount) ?? [{ value: amount.value, unit: amount.unit }];
  const parts: Measured = { ...joined.amount, parts: [...before, { value: number.value, unit: unit.unit }] };
  return addSmaller(tokens, { ...joined, amount: parts });
}

interface Measure {
  value: number;
  unit: string;
}
type Measured = Amount & { parts?: readonly Measure[] };

/** What a volume was added up from, measure by measure; undefined where it was told in one. */
export const partsOf = (amount: Amount): readonly Measure[] | undefined => (amount as Measured).parts;
