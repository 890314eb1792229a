/** Lists that are more than rows of facts: causes of a fault, things to say. Everything else is a plain list. */
import type { Item } from "../../tools/contract/index.ts";
import { itemLines } from "./items.ts";
import { printable } from "./text.ts";
import type { Line, Tone } from "./tones.ts";
import { wrapped } from "./wrap.ts";

/** The lines of a list, by what its items are. */
export function listLines(items: readonly Item[], columns: number): Line[] {
  const causes = items.filter(isCause);
  const sayings = items.filter(isSaying);
  // what differs in her own batches is said in the headline
  const rest = items.filter((item) => !isCause(item) && !isSaying(item) && item.differs === undefined);
  return [
    ...causes.flatMap((item) => causeLines(item, columns)),
    ...sayings.flatMap((item) => sayingLines(item, columns)),
    ...itemLines(rest, columns).map((text): Line => ({ text, tone: "item" })),
  ];
}

const isCause = (item: Item) =>
  typeof item.cause === "string" && typeof item.change === "string" && typeof item.check === "string";
const isSaying = (item: Item) => typeof item.say === "string";

/** True where the list already says the rule, cause by cause. */
export const saysRule = (items: readonly Item[]): boolean => items.some(isCause);

/** "1. the oven was too hot", and below it how to tell and what to change, in a column of their own. */
function causeLines({ order, cause, check, change }: Item, columns: number): Line[] {
  const number = `${order ?? "-"}. `;
  const under = " ".repeat(2 + number.length);
  const part = (name: string, text: Item[string], tone: Tone) =>
    lines(String(text), columns, `${under}${name}`, `${under}${" ".repeat(name.length)}`, tone);
  return [
    ...lines(String(cause), columns, `  ${number}`, under, "item"),
    ...part("check   ", check, "quiet"),
    ...part("change  ", change, "item"),
  ];
}

/** What can be typed as it stands, and what it is for below it. */
function sayingLines({ say, text }: Item, columns: number): Line[] {
  return [
    ...lines(`"${say}"`, columns, "  ", "   ", "item"),
    ...(typeof text === "string" ? lines(text, columns, "    ", "    ", "quiet") : []),
  ];
}

const lines = (text: string, columns: number, first: string, rest: string, tone: Tone): Line[] =>
  wrapped(printable(text), columns, { first, rest }).map((line) => ({ text: line, tone }));
