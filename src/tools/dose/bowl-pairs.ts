/** "150 g buttercream that's lemon and 200 g ganache that's mint, flavor for each": a dose a bowl. */
import type { Reading, Thing } from "../contract/index.ts";
import { type Weighed, weighed } from "../lib/find.ts";
import type { Draft } from "./draft.ts";
import { isFlavor, nameOf } from "./flavor-said.ts";

/** @returns a draft for each bowl; undefined where there are no two, or where one of them has no flavor */
export function readPairs(reading: Reading): Draft[] | undefined {
  const bowls = bowlsOf(reading);
  if (bowls.length < 2 || reading.amounts.some((each) => each.dim === "percent")) return undefined;
  const tastes = reading.things.filter(isFlavor);
  const own = ownFlavors(bowls, tastes.filter(isParticular));
  const shared = sharedFlavors(tastes);
  if (own.some((each) => !each) && shared.length !== 1) return undefined;
  return bowls.map((bowl, at) => ({
    base_g: bowl.grams,
    ...(bowl.thing?.base ? { base: bowl.thing.base } : {}),
    ...nameOf((own[at] ?? shared[0]) as Thing, reading),
  }));
}

const isParticular = ({ taste, ingredient }: Thing) => Boolean(taste || ingredient);

/** "flavor for 200 g buttercream, 150 g ganache and 300 g batter": the batter gets its answer too, but no color of its own. */
function bowlsOf(reading: Reading): Weighed[] {
  const named = mixesOf(reading);
  return named.length > 1 ? named : sharesOf(reading);
}

/** "250 g with vanilla and 250 g with matcha": so much each of a mix that is known. */
const sharesOf = (reading: Reading): Weighed[] =>
  weighed(reading).filter(
    ({ amount, thing }) =>
      !thing?.base &&
      /^ (?:of (?:it|that|them|this) )?(?:with|gets?|getting|goes|becomes|turns?(?: into)?) /.test(
        reading.text.slice(amount.at[1]),
      ),
  );

function mixesOf(reading: Reading): Weighed[] {
  const withBatter = !reading.things.some((each) => each.color || /color/.test(each.dose ?? ""));
  return weighed(reading).filter(
    ({ thing, amount }) =>
      thing?.base &&
      (thing.base !== "batter" || withBatter) &&
      // "5 g in the ganache" is no bowl of it
      !/ (?:in|into|to) /.test(reading.text.slice(amount.at[1], thing.at[0])),
  );
}

/** The flavor of each bowl: named behind its weight where every bowl has one there, else before it. */
function ownFlavors(bowls: readonly Weighed[], flavors: readonly Thing[]): (Thing | undefined)[] {
  const behind = bowls.map(({ amount }, at) => {
    const from = at === 0 ? 0 : amount.at[0];
    const to = bowls[at + 1]?.amount.at[0] ?? Number.POSITIVE_INFINITY;
    return flavors.find((each) => each.at[0] >= from && each.at[0] < to);
  });
  if (behind.every((each) => each)) return behind;
  return bowls.map(({ amount }, at) => {
    const from = bowls[at - 1]?.amount.at[1] ?? 0;
    return flavors.findLast((each) => each.at[0] >= from && each.at[1] <= amount.at[0]);
  });
}

/** "vanilla in both", "flavor both: ..., almond extract": the one that is named, in the form that it has. */
function sharedFlavors(tastes: Thing[]): Thing[] {
  const formed = tastes.filter((each) => each.dose);
  const particular = formed.filter(isParticular);
  if (particular.length > 0) return particular;
  return formed.length === 0 && tastes.length === 1 ? tastes : formed;
}
