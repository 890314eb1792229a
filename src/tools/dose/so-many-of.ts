/** "and for two of them", behind one part of a split or a bowl: so many of those, and no bowl of 2 g. */
import type { Reading } from "../contract/index.ts";
import { says } from "../lib/find.ts";
import { type BaseWay, taken } from "./base-turn.ts";

/** More bowls than these nobody counts out by hand. */
const mostBowls = 12;

const soMany =
  /(?:^| )(?:for|in|into) (?:just |only |about )?\S*<number> of (?:them|those|these|the (?:\S*<count=bowls[^>]*>|bowls|parts|portions))(?: (?:then|now|please|too|instead))*(?: [?])?$/;

/** So many bowls are meant, of whatever weight. */
export const saysSoMany = (reading: Reading): boolean => says(reading, soMany);

export const soManyOf: BaseWay = (turn) => {
  const { reading, memory, before } = turn;
  const [only, ...others] = reading.amounts;
  if (only?.dim !== "number" || only.fraction || others.length > 0) return undefined;
  if (!Number.isInteger(only.value) || only.value < 2 || only.value > mostBowls) return undefined;
  const { part, mass } = memory.table;
  const one_g = memory.last?.tool === "split" ? part?.grams : before?.base_g;
  if (one_g === undefined || before?.flavor_g !== undefined || !saysSoMany(reading)) return undefined;
  return taken(one_g * only.value, turn, before?.base ?? part?.thing ?? mass?.thing);
};
