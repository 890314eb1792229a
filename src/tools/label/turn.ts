/** What every way of asking for a label looks at, worked out once. */

import type { Memory, Reading, Thing } from "../contract/index.ts";
import { readLines } from "../lib/lines.ts";
import { inBase } from "../lib/units.ts";
import type { Way } from "../lib/ways.ts";
import { day_min } from "../lib/when.ts";
import { placeless } from "../lib/when-said.ts";
import { asTyped } from "./as-typed.ts";
import { askedSpans, asksAbout } from "./asked-said.ts";
import { foodsSaid, looseIn, withFoods } from "./foods-said.ts";
import type { LabelInputs } from "./label.ts";
import { makerSaid, within } from "./maker-said.ts";
import { marketSaid } from "./market-said.ts";
import { netSaid } from "./net-said.ts";
import { printSaid } from "./print-said.ts";
import { isRefusedAt } from "./refused-said.ts";
import { wantSaid } from "./want-said.ts";
import { wholeName } from "./whole-name.ts";

export type Draft = Partial<LabelInputs>;
export type Line = NonNullable<LabelInputs["lines"]>[number];
export type LabelWay = Way<LabelTurn, Draft>;

export interface LabelTurn {
  reading: Reading;
  memory: Memory;
  /** The label before, without the weight of which it was asked what it is of. */
  before: Draft | undefined;
  want: LabelInputs["want"];
  /** The weighed ingredients of the sentence, and its pieces that couldn't be read as one. */
  lines: Line[];
  unread: readonly string[];
  /** Where the maker's name stands. */
  isMaker: (thing: Thing) => boolean;
  /** What there is to eat in the sentence; the maker's name is none of it: "add address: Anna Baker". */
  foods: Thing[];
  /** All that the sentence names, with the foods of the allergens' tables among it. */
  things: Thing[];
  /** Ids of the allergens that are asked about. */
  asked: string[];
  /** What is asked about, and is not said to be in it: "is there peanut in my pistachio macarons". */
  isAsked: (thing: Thing) => boolean;
  /** What is said not to be in it. */
  isRefused: (thing: Thing) => boolean;
  /** A net weight, a maker, paper were said. */
  hasNet: boolean;
  hasMaker: boolean;
  /** Whatever may stand beside anything else: market, dates, net weight, paper, who makes it. */
  common: Draft;
}

export const isFood = (each: Thing): boolean => Boolean(each.ingredient || each.chocolate || each.taste);

/** A filling or an ingredient in the sentence: another label than the one before. */
export const namesFood = ({ things }: LabelTurn): boolean =>
  things.some((each) => isFood(each) || each.base || each.formula);

export function labelTurn(given: Reading, memory: Memory): LabelTurn {
  const reading = asTyped(given);
  const things = foodsSaid(reading);
  const spans = askedSpans(reading.text);
  const before: Draft | undefined =
    memory.last?.tool === "label" ? { ...(memory.last.inputs as Draft), bare_g: undefined } : undefined;
  const want = wantSaid(reading) ?? (memory.follows ? before?.want : undefined);
  const net = netSaid(reading);
  const maker = makerSaid(reading);
  const print = printSaid(reading);
  // "use by in 5 days": that day itself, and no day of making
  const isUseBy = ({ at }: { at: readonly [number, number] }) =>
    /\b(?:use|best|sell) (?:by|before)(?: date)?(?: (?:is|in|on|the|=|:))* ?$/.test(
      reading.text.slice(0, at[0]),
    );
  const made = reading.whens.find((each) => !isUseBy(each));
  const useBy = reading.whens.find(isUseBy);
  // "in 5 days", "5 days"
  const useIn = reading.amounts.find((each) => each.dim === "time" && isUseBy(each));
  const useDays = useIn ? Math.round(inBase(useIn.value, useIn.unit) / day_min) : undefined;
  const isMaker = ({ at }: Pick<Thing, "at">) => maker !== undefined && within(maker, at);
  const read = readLines(withFoods(reading, things));
  const lines = read.lines.filter((each) => each.at[0] !== net?.at && !isMaker(each));
  return {
    reading,
    memory,
    before,
    want,
    lines: lines.map(({ grams, thing, ...line }) => {
      const name = wholeName(reading, { ...line, thing });
      const isTaste = name === line.name && thing?.taste && !thing.ingredient;
      return { name, grams, ...(isTaste ? { taste: thing.taste } : {}) };
    }),
    unread: [...read.unread, ...looseIn(reading, read)],
    foods: things.filter((each) => isFood(each) && !isMaker(each)),
    things,
    asked: asksAbout(reading),
    isAsked: ({ at }) => spans.some((span) => at[0] < span[1] && span[0] < at[1]),
    isRefused: ({ at }) => isRefusedAt(reading.text, at),
    isMaker,
    hasNet: net !== undefined,
    hasMaker: maker !== undefined,
    common: {
      ...(maker ? { by: maker.name } : {}),
      ...(want || print.as_pdf ? { want: print.as_pdf && want !== "dates" ? "label" : want } : {}),
      ...print,
      ...marketSaid(reading),
      ...net?.input,
      ...(made ? { made: placeless(made) } : {}),
      ...(useBy ? { use_by: placeless(useBy) } : useDays ? { use_by: { days: useDays } } : {}),
    },
  };
}
