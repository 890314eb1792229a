/** Reads how a bowl is to be split: each way to say it in its order, the narrower before the wider. */
import type { Memory, Reading } from "../contract/index.ts";
import { bareNumbers } from "../lib/find.ts";
import { gramsOf } from "../lib/units.ts";
import { firstOf } from "../lib/ways.ts";
import { asksScale, bowlOf, emptyBowl, newTotal } from "./bowl.ts";
import {
  byCount,
  byParts,
  byRatio,
  changedShare,
  equally,
  fractions,
  halves,
  inOrder,
  inTwo,
  oneOfEqual,
  onlyShareChanged,
  partChanged,
  percents,
  related,
  someOfThem,
} from "./by-share.ts";
import { changedWeight, grown, heavyParts, listedWeights, othersEqual, portions } from "./by-weight.ts";
import { mixed } from "./mixed.ts";
import { othersAlike } from "./others-alike.ts";
import { partTold } from "./part-told.ts";
import { type Draft, saidOf } from "./said.ts";

const ways = [
  othersEqual,
  othersAlike,
  partTold,
  onlyShareChanged,
  partChanged,
  related,
  grown,
  inOrder,
  mixed,
  halves,
  percents,
  portions,
  listedWeights,
  changedShare,
  changedWeight,
  heavyParts,
  fractions,
  inTwo,
  someOfThem,
  byCount,
  byParts,
  byRatio,
  oneOfEqual,
  equally,
];

export function readShares(reading: Reading, memory: Memory): Draft {
  // "525", where the weight of the bowl was asked for
  const bare = bareNumbers(reading)[0];
  if (memory.slot === "total_g" && reading.amounts.length === 1 && bare) return { total_g: bare.value };
  const before = memory.last?.tool === "split" ? (memory.last.inputs as Draft) : undefined;
  const bowl_g = emptyBowl(reading);
  // "what does each bowl read if the bowls weigh 120 g"
  if (before?.total_g !== undefined && bowl_g !== undefined)
    return asksScale(reading) ? { ...before, bowl_g } : {};
  const settled = memory.slot === "unclear" ? ofTheBowl(reading, memory, before) : undefined;
  if (settled) return settled;
  const unclear = ofWhat(reading);
  if (before && unclear) return { ...before, unclear };
  const total = newTotal(reading, memory);
  if (total !== undefined) return { total_g: total };
  const bowl = bowlOf(reading, memory);
  const shares = firstOf(ways, saidOf(reading, memory, bowl.amount));
  return { ...sameBowl(shares, before), ...ofEach(bowl, shares, reading), ...shares };
}

/** "half rose half plain, 200 g each": so much in every part. */
function ofEach({ draft, amount }: ReturnType<typeof bowlOf>, shares: Draft | undefined, reading: Reading) {
  const parts = shares?.percents ?? shares?.parts ?? [];
  const isEach = amount && /^ ?(?:each|apiece)\b/.test(reading.text.slice(amount.at[1]));
  const alike = parts.length > 1 && parts.every(({ size }) => size === parts[0]?.size);
  return isEach && alike && !shares?.rest && draft.total_g !== undefined
    ? { ...draft, total_g: draft.total_g * parts.length }
    : draft;
}

/** "blue is 60, the rest pink", behind pink and blue parts: of the bowl that was split into them. */
function sameBowl(shares: Draft | undefined, before: Draft | undefined): Draft {
  const names = (draft: Draft | undefined) =>
    (draft?.weights ?? draft?.parts ?? draft?.percents ?? []).flatMap(({ name }) => name ?? []);
  const [now, was] = [names(shares), names(before)];
  return before?.total_g !== undefined && now.length > 0 && now.every((each) => was.includes(each))
    ? { total_g: before.total_g, ...(before.thing ? { thing: before.thing } : {}) }
    : {};
}

/** "40 g of what in the lemon". */
function ofWhat({ text, amounts }: Reading): Draft["unclear"] {
  const [only] = amounts;
  const name = /^\S+ ?\S* of what in the ([a-z ]+)$/.exec(text)?.[1];
  return name && only?.dim === "weight" ? { name, grams: gramsOf(only) } : undefined;
}

/** "of the buttercream", where it was asked what was put there: that part weighs so much, the others share the rest. */
function ofTheBowl({ text }: Reading, { table }: Memory, before: Draft | undefined): Draft | undefined {
  const { unclear, total_g, thing } = before ?? {};
  const isBowl = /\b(?:buttercream|batter|ganache|filling|bowl|mix|itself|it|that|plain)\b/.test(text);
  const flavored = /\b(?:flavou?r\w*|extract|oil|paste|powder|gel|colou?r)\b/.test(text);
  if (!unclear || total_g === undefined || !isBowl || flavored) return undefined;
  const others = (table.parts ?? []).filter(({ name }) => name !== unclear.name);
  const sum = others.reduce((all, { grams }) => all + grams, 0);
  const left = total_g - unclear.grams;
  return {
    // what was asked is settled
    unclear: undefined,
    total_g,
    ...(thing ? { thing } : {}),
    weights: [
      { name: unclear.name, size: unclear.grams },
      ...others.map(({ name, grams }) => ({ name, size: (left * grams) / sum })),
    ],
  };
}
