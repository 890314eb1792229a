/** A label whose ingredients were weighed, with what stands among them and can't be read. */
import { plainQualifiers } from "../../../data/words/plain-qualifiers.ts";
import type { Memory, Reading, Thing } from "../contract/index.ts";
import type { Draft, LabelWay } from "./turn.ts";
import { besideLines } from "./whole-name.ts";

/** More of what is in it. */
export const asksToAdd =
  /^(?:(?:and|ok|oh|also|now|please) )*(?:add|plus|with|put) |\bas well\b|(?:to|on|in) the (?:ingredients|list|label)\b/;

/** "130 g almond flour, 100 g egg whites, ...". */
export const byWeight: LabelWay = ({
  reading,
  things,
  memory,
  before,
  lines,
  unread,
  common,
  isMaker,
  isAsked,
}) => {
  if (lines.length === 0) return undefined;
  // "add 40 g pistachio paste to the ingredients"
  const kept = memory.follows && asksToAdd.test(reading.text) ? (before?.lines ?? []) : [];
  const spoons = reading.amounts.filter((each) => each.dim === "volume");
  const open = unread.filter(
    (each) =>
      isInIt(each, things) || isStrange(each, reading) || spoons.some((amount) => each.includes(amount.text)),
  );
  const isLeft = (each: Thing) => isMaker(each) || isAsked(each);
  const weighed = [...kept, ...lines].map(({ name }) => name);
  const beside = besideLines(reading.text, things, weighed, isLeft).filter(
    (name) => !open.some((each) => each.includes(name)),
  );
  return {
    want: "label",
    ...common,
    lines: [...kept.filter(({ name }) => !lines.some((each) => each.name === name)), ...lines],
    // "label for lazy sunday with 40 g pistachio paste": both
    ...withSaved(reading, memory),
    ...(open.length > 0 ? { unread: open } : {}),
    ...(beside.length > 0 ? { beside } : {}),
  };
};

/** A piece without a weight that still names something to eat: it can't be dropped. Talk around the list can. */
const isInIt = (piece: string, things: readonly Thing[]): boolean =>
  things.some(
    (each) =>
      piece.includes(each.text) &&
      (each.ingredient || each.taste || each.dose || each.chocolate || each.base),
  ) && !/\blabels?\b|\ball?erg/.test(piece);

/** "60 g butter, some zorp, 30 g sugar": nobody knows what that is, and it stands in the list. */
const isStrange = (piece: string, { text, unknown, amounts }: Reading): boolean =>
  piece.split(" ").every((word) => unknown.includes(word) || plainQualifiers.has(word)) &&
  piece.split(" ").some((word) => unknown.includes(word)) &&
  text.indexOf(piece) > (amounts.find(({ dim }) => dim === "weight")?.at[0] ?? text.length);

/** The saved recipes that are named. */
export const withSaved = ({ text }: Reading, { names }: Memory): Pick<Draft, "formulas"> => {
  const formulas = names.formulas.filter((name) => text.includes(name.toLowerCase()));
  return formulas.length > 0 ? { formulas } : {};
};
