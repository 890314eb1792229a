/** Bottles with their own directions. */
import type { Bottle, Effect, Figure, Item, Outcome, World } from "../contract/index.ts";
import { asking } from "../lib/asking.ts";
import { listed, percent, plain } from "../lib/show.ts";
import type { ShelfInputs } from "./shelf.ts";

/** A bottle's own directions; a second bottle of the same taste and form replaces the first. */
export function bottle(inputs: ShelfInputs, world: World): Outcome {
  const { taste, low_percent, high_percent, strength, left_g, taken, allergens, unweighable } = inputs;
  if (!taste) return asking("Which flavor is the bottle?", "taste");
  const known = knownBottle(inputs, world);
  const form = known?.form ?? inputs.form;
  const name = `${bottleName({ taste, form })} bottle`;
  if (unweighable)
    return {
      status: "declined",
      headline: `I can't save "${unweighable}": a bottle's directions are kept as a percentage of the weight. What does it say in percent?`,
    };
  if ([low_percent, allergens, strength, left_g].every((each) => each === undefined))
    return asking(`What does the ${name} say, in percent of the weight?`, "low_percent");
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
  const isOther =
    known?.low_percent !== undefined &&
    low_percent !== undefined &&
    (known.low_percent !== low_percent || known.high_percent !== (high_percent ?? low_percent));
  const bowl = low_percent === undefined ? undefined : inBowl(inputs, low_percent);
  return {
    status: "answered",
    headline: `Saved: ${name}${range ? `, ${range} of the weight` : ""}${allergens ? `, ${allergens.length ? `contains ${listed(allergens)}` : "no allergens"}` : ""}${strengthText(strength)}${left_g !== undefined ? `, ${plain(left_g)} g left` : ""}${isOther ? "; it replaces what was saved before" : ""}${bowl ? `. ${bowl.text}` : ""}`,
    ...(taken ? { assumed: [taken] } : {}),
    ...(range
      ? {
          figures: [
            low_percent === 0
              ? { name: taste, value: high_percent ?? 0, high: high_percent ?? 0, unit: "%" }
              : low_percent === high_percent || high_percent === undefined
                ? { name: taste, value: low_percent, unit: "%" }
                : { name: taste, low: low_percent, high: high_percent, unit: "%" },
            ...(bowl ? [bowl.figure] : []),
          ],
          rule: { text: `${range}, from your ${taste} bottle`, basis: "your bench" as const },
        }
      : {}),
    effects: [effect],
    change: `the ${name}`,
  };
}

/** The saved one of this taste and form; where a dose is put right, the only one of the taste. */
function knownBottle({ taste, form, bowl_g }: ShelfInputs, { bottles }: World): Bottle | undefined {
  const own = bottles.filter((each) => each.taste === taste);
  const exact = own.findLast((each) => each.form === form);
  return exact ?? (bowl_g !== undefined && own.length === 1 ? own[0] : undefined);
}

/** What that makes of the bowl that was spoken of, g; a limit has no dose of its own. */
function inBowl({ bowl_g, high_percent, taste = "flavor" }: ShelfInputs, low_percent: number) {
  if (!bowl_g || low_percent === 0) return undefined;
  const [low, high] = [low_percent, high_percent ?? low_percent].map((share) => (bowl_g * share) / 100);
  if (low === undefined || high === undefined) return undefined;
  const grams = low === high ? plain(low, 3) : `${plain(low, 3)} to ${plain(high, 3)}`;
  const figure: Figure =
    low === high ? { name: "flavor", value: low, unit: "g" } : { name: "flavor", low, high, unit: "g" };
  return { figure, text: `For the ${plain(bowl_g)} g that is ${grams} g ${taste}` };
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
