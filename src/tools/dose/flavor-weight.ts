/** The weight of a flavor that was said: weighed, by the spoon, or counted and so not to be weighed. */
import { doseRows } from "../../../data/rules/doses.ts";
import type { Amount, Reading, Thing } from "../contract/index.ts";
import type { Weighed } from "../lib/find.ts";
import { inBase } from "../lib/units.ts";
import type { Draft } from "./draft.ts";

export function readFlavorWeight(reading: Reading, weights: readonly Weighed[], target: Thing): Draft {
  // "2 vanilla beans", "zest of 1 lemon": they are counted, and no two weigh the same
  const pieces = reading.amounts.find(
    (each) => each.dim === "number" && each.of && (each.of === target || each.of.id === target.id),
  );
  const counts =
    target.dose === "zest" || /(?:beans?|pods?|bags?|sachets?|shots?|capsules?)$/.test(target.text);
  if (counts && pieces) return { unweighable: `${pieces.text} ${target.text}` };
  const own = weights.find(
    (each) =>
      each.thing &&
      !each.thing.base &&
      (each.thing === target || (each.thing.id === target.id && each.thing.taste === target.taste)) &&
      // "230 g buttercream and 150 g how much flavor": what is asked for wasn't weighed
      !/\bhow (?:much|many)\b/.test(reading.text.slice(each.amount.at[1], target.at[0])),
  );
  // a spoon of a liquid flavor counts as water, whatever else the tables know of it
  if (own?.estimate && liquidRows.has(target.dose ?? "flavor")) return byVolume(own.amount);
  if (own) return { flavor_g: own.grams };
  const said = reading.amounts.find(
    (each) =>
      ["volume", "number"].includes(each.dim) &&
      each.of &&
      (each.of === target || each.of.id === target.id) &&
      // "2 of them lemon" counts bowls
      !/^ of (?:them|those|these) /.test(reading.text.slice(each.at[1])) &&
      // "the first one mint" is the first bowl
      !(each.text === "one" && whichOne.test(reading.text.slice(0, each.at[0]))),
  );
  if (said?.dim === "volume" && !liquidRows.has(target.dose ?? "flavor"))
    return { unweighable: `${said.text} of ${target.text}` };
  // "2 oranges" are no grams
  if (said?.dim === "number" && target.dose === "flavor" && !target.taste) return {};
  if (said?.dim === "number" && /(?:s|ies)$/.test(target.text) && !/(?:ss|us|is)$/.test(target.text))
    return { unweighable: `${said.text} ${target.text}` };
  return said ? byVolume(said) : {};
}

const whichOne = /\b(?:first|second|third|fourth|last|next|other|this|that|big|bigger|small|smaller) $/;

export const liquidRows = new Set(doseRows.filter((row) => row.liquid).map((row) => row.id));

export function byVolume(amount: Amount): Draft {
  if (amount.dim === "volume")
    return { flavor_g: inBase(amount.value, amount.unit), by_volume: true, flavor_unit: amount.unit };
  return amount.unit === "" && !amount.fraction && amount.value > 0 ? { flavor_g: amount.value } : {};
}
