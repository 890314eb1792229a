/** Bottles with their own directions. */
import type { Bottle, Effect, Item, Outcome, World } from "../contract/index.ts";
import { asking } from "../lib/asking.ts";
import { listed, percent, plain } from "../lib/show.ts";
import type { ShelfInputs } from "./shelf.ts";

/** A bottle's own directions; a second bottle of the same taste and form replaces the first. */
export function bottle(
  { taste, form, low_percent, high_percent, strength, left_g, taken, allergens, unweighable }: ShelfInputs,
  world: World,
): Outcome {
  if (!taste) return asking("Which flavor is the bottle?", "taste");
  const name = `${bottleName({ taste, form })} bottle`;
  if (unweighable)
    return {
      status: "declined",
      headline: `I can't save "${unweighable}": a bottle's directions are kept as a percentage of the weight. What does it say in percent?`,
    };
  if ([low_percent, allergens, strength, left_g].every((each) => each === undefined))
    return asking(`What does the ${name} say, in percent of the weight?`, "low_percent");
  const known = world.bottles.findLast((each) => each.taste === taste && each.form === form);
  const directions =
    low_percent !== undefined ? { low_percent, high_percent: high_percent ?? low_percent } : {};
  const patch = {
    ...directions,
    ...(strength !== undefined ? { strength } : {}),
    ...(left_g !== undefined ? { left_g } : {}),
    ...(allergens ? { allergens } : {}),
  };
  const effect: Effect = known
    ? { do: "change", list: "bottles", id: known.id, patch }
    : { do: "add", list: "bottles", entry: { taste, ...(form ? { form } : {}), ...patch } };
  const range =
    low_percent !== undefined ? directionsText(low_percent, high_percent ?? low_percent) : undefined;
  return {
    status: "answered",
    headline: `Saved: ${name}${range ? `, ${range} of the weight` : ""}${allergens ? `, ${allergens.length ? `contains ${listed(allergens)}` : "no allergens"}` : ""}${strengthText(strength)}${left_g !== undefined ? `, ${plain(left_g)} g left` : ""}${known && low_percent !== undefined ? "; it replaces what was saved before" : ""}`,
    ...(taken ? { assumed: [taken] } : {}),
    ...(range
      ? {
          figures: [
            low_percent === 0
              ? { name: taste, value: high_percent ?? 0, high: high_percent ?? 0, unit: "%" }
              : low_percent === high_percent || high_percent === undefined
                ? { name: taste, value: low_percent, unit: "%" }
                : { name: taste, low: low_percent, high: high_percent, unit: "%" },
          ],
          rule: { text: `${range}, from your ${taste} bottle`, basis: "your bench" as const },
        }
      : {}),
    effects: [effect],
    change: `the ${name}`,
  };
}

const strengthText = (strength: number | undefined) =>
  strength === undefined ? "" : `, ${plain(strength)} × the usual strength`;

export function bottlesOf(taste: string, world: World): Outcome {
  const found = world.bottles.filter((each) => each.taste === taste);
  return {
    status: "answered",
    headline: found.length ? listed(found.map(bottleText)) : `No ${taste} bottle is saved`,
    items: found.map(bottleItem),
  };
}

/** A bottle's range; one without a lower end is a limit. */
const directionsText = (low: number, high: number): string =>
  low === 0 ? `at most ${percent(high)}` : percent(low, high);

/** "mint", "lemon oil", "red gel color": the form once. */
const bottleName = ({ taste, form }: { taste: string; form?: string | undefined }): string =>
  form && form !== "flavor" && !taste.endsWith(form) ? `${taste} ${form}` : taste;

export const bottleText = (each: Bottle) =>
  `${bottleName(each)} ${each.low_percent !== undefined ? directionsText(each.low_percent, each.high_percent ?? each.low_percent) : "without directions"}${strengthText(each.strength)}${each.left_g !== undefined ? `, ${plain(each.left_g)} g left` : ""}`;
export const bottleItem = (each: Bottle): Item => ({
  bottle: each.taste,
  ...(each.form ? { form: each.form } : {}),
  ...(each.low_percent !== undefined
    ? { low_percent: each.low_percent, high_percent: each.high_percent ?? each.low_percent }
    : {}),
  ...(each.strength !== undefined ? { strength: each.strength } : {}),
  ...(each.left_g !== undefined ? { left_g: each.left_g } : {}),
  ...(each.allergens ? { contains: each.allergens } : {}),
});
