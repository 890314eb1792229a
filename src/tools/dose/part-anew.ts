/** "only the cream changes: 80 g", behind a bowl that was summed from its parts: that part weighs so much, the others what they did. */
import type { Thing } from "../contract/index.ts";
import { gramsOf } from "../lib/units.ts";
import { type BaseWay, summed } from "./base-turn.ts";

/** What may stand between the part and its weight. */
const between = new Set(
  "changes change changed changing is are was were now its it to will be goes go went up down different another other alone only just at about instead becomes gets the one that by weight rises drops comes".split(
    " ",
  ),
);
const adds = /\b(?:more|extra|add|added|adding|less|fewer|another \d)\b/;

const isOf = (part: string, { ingredient, chocolate, text }: Thing): boolean =>
  part === ingredient || ((chocolate !== undefined || /^choc/.test(text)) && / ?chocolate$/.test(part));

export const partAnew: BaseWay = ({ reading, memory, before }) => {
  const { amounts, things, text } = reading;
  const [only, ...others] = amounts;
  if (!memory.follows || !before?.parts || !only || others.length > 0 || only.fraction || adds.test(text))
    return undefined;
  if (only.dim !== "weight" && !(only.dim === "number" && only.unit === "")) return undefined;
  const stuff = things.filter((each) => each.ingredient ?? each.chocolate ?? each.base);
  const [thing, ...more] = stuff.filter(({ dose }) => dose === undefined);
  const part = thing && before.parts.filter(({ name }) => isOf(name, thing));
  if (!thing || more.length > 0 || part?.length !== 1 || thing.at[1] > only.at[0]) return undefined;
  const words = text.slice(thing.at[1], only.at[0]).match(/[a-z]+/g) ?? [];
  if (!words.every((word) => between.has(word))) return undefined;
  const grams = gramsOf(only);
  return summed(before.parts.map((each) => (each === part[0] ? { ...each, grams } : each)));
};
