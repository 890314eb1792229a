/** Reads how a bowl is to be split: each way to say it in its order, the narrower before the wider. */
import type { Memory, Reading } from "../contract/index.ts";
import { bareNumbers } from "../lib/find.ts";
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
import { type Draft, saidOf } from "./said.ts";

const ways = [
  othersEqual,
  onlyShareChanged,
  partChanged,
  related,
  grown,
  inOrder,
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
