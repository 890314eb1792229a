/** Small windows on single steps of reading, and their results written so that a table of them can be read. */

import { readWhen } from "../../src/intents/clock/clock.ts";
import { readAmount } from "../../src/intents/found/amounts.ts";
import { readNumber } from "../../src/intents/found/numbers.ts";
import { itemsOf, readingOf } from "../../src/intents/read.ts";
import { normalise } from "../../src/intents/text/normalise.ts";
import { tokenise } from "../../src/intents/text/tokens.ts";
import { understanding } from "../../src/intents/understanding.ts";
import type { Amount, Reading, Thing, When } from "../../src/tools/contract/index.ts";
import { tools } from "../../src/tools/registry.ts";

/** The program's own understanding, compiled once a test file. */
export const understood = understanding(tools);

/** Twelve digits: what binary arithmetic leaves behind is no difference. */
export const rounded = (value: number) => Number(value.toPrecision(12));

export const tokens = (said: string) => tokenise(normalise(said));

/** The number at the start of a phrase, which has to take the whole phrase. */
export function wholeNumber(said: string): number | undefined {
  const all = tokens(said);
  const read = readNumber(all, 0);
  return read && read.next === all.length ? rounded(read.value) : undefined;
}

/** "230 g", "3-5 %", "16 USD per 1 kg", "1.5 times", "24". */
export const shown = ({ value, high, unit, per }: Amount): string =>
  `${rounded(value)}${high === undefined ? "" : `-${rounded(high)}`} ${unit}${per ? ` per ${per.value} ${per.unit}` : ""}`.trim();

/** The amount at the start of a phrase, which has to take the whole phrase. */
export function wholeAmount(said: string): string | undefined {
  const all = tokens(said);
  const read = readAmount(all, 0);
  return read && read.next === all.length ? shown(read.amount) : undefined;
}

/** A moment at the start of a phrase, which has to take the whole phrase, without its place. */
export function wholeWhen(said: string): Omit<When, "text" | "at"> | undefined {
  const all = tokens(said);
  const read = readWhen(all, 0);
  return read && read.next === all.length ? read.when : undefined;
}

/** A sentence as one reading, not split into questions. */
export function read(said: string): Reading {
  const { text, items, mended } = itemsOf(said, understood.reader);
  return readingOf(said, text, items, mended, understood.reader);
}

export const amounts = (said: string): string[] => read(said).amounts.map(shown);

/** What an amount belongs to, by the most telling name. */
const owner = (thing: Thing | undefined) =>
  thing?.count ?? thing?.base ?? thing?.dose ?? thing?.ingredient ?? thing?.id ?? "nothing";

/** "230 g of buttercream"; "nothing" where an amount stands alone. */
export const bound = (said: string): string[] =>
  read(said).amounts.map((amount) => `${shown(amount)} of ${owner(amount.of)}`);

/** Moments without text and place. */
export const whens = (said: string): Omit<When, "text" | "at">[] =>
  read(said).whens.map(({ text: _text, at: _at, ...when }) => when);
