/** Which allergens a thing brings, from the tables and the baker's bottles; never from how its name looks. */
import { allergens, tasteAllergens } from "../../../data/rules/allergens.ts";
import { tastes } from "../../../data/words/flavors.ts";
import type { Bottle } from "../contract/index.ts";
import { ingredientNamed } from "../lib/lines.ts";
import { isPlainly, partsAt } from "./composite.ts";

export interface Brings {
  /** Allergen ids that are in it for certain. */
  sure: string[];
  /** What only a wrapper can tell, with the thing that it is about. */
  unsure: string[];
}

/** Every allergen id that a table may name. */
export const allergenNamed = (id: string) => allergens.find((row) => row.id === id);

/** What the saved bottle of a taste says that it brings. */
export const bottleList = (taste: string | undefined, bottles: readonly Bottle[]): string[] | undefined =>
  taste ? bottles.findLast((each) => each.taste === taste && each.allergens)?.allergens?.slice() : undefined;

/**
 * What a line of a recipe brings. A thing that no table knows brings nothing for certain and is named as not known.
 * @param taste set for a flavor: the saved bottle's own list decides, else it is named as to be checked
 */
export function bringsOf(name: string, taste: string | undefined, bottles: readonly Bottle[]): Brings {
  const own = bottleList(taste, bottles);
  if (own) return { sure: own, unsure: [] };
  const row = ingredientNamed(name);
  if (row)
    return {
      sure: [...row.allergens],
      unsure: row.unsure ? [`${name}: read its wrapper for ${row.unsure}`] : [],
    };
  // "lemon curd" is more than its taste, "peanut buttercream" more than its base
  if (taste) return gather([tasteBrings(taste, name), { ...ofParts(name, bottles), unsure: [] }]);
  // a line of a saved recipe keeps its name alone: "mint flavor"
  const named = tastes
    .map((each) => each.taste)
    .filter((each) => name === each || name.startsWith(`${each} `));
  const [longest] = [
    ...named,
    ...bottles.map((each) => each.taste).filter((each) => name.startsWith(`${each} `)),
  ].sort((a, b) => b.length - a.length);
  if (longest && partsAt(name).length < 2) return bringsOf(name, longest, bottles);
  return ofParts(name, bottles);
}

/** Every part of a name that a table knows is declared; the rest of it stays open. */
function ofParts(name: string, bottles: readonly Bottle[]): Brings {
  const parts = partsAt(name);
  if (parts.length === 0)
    return { sure: [], unsure: [`${name}: not in the table, its allergens aren't known`] };
  const sure = [...new Set(parts.flatMap((each) => bottleList(each.taste, bottles) ?? each.sure))];
  if (isPlainly(name)) return { sure, unsure: [] };
  const open = [...new Set(parts.flatMap((each) => each.unsure ?? []))];
  const look = open.length > 0 ? `; look for ${open.join(", ")}` : "";
  return {
    sure,
    unsure: [`${name}: what it is made of belongs behind it in brackets, and may bring more${look}`],
  };
}

/** A taste by name. Nut tastes declare their nut: a flavor of them may be made from it. */
export function tasteBrings(taste: string, name = `${taste} flavor`): Brings {
  const parts = partsOf(taste);
  if (parts.length > 1) return gather(parts.map((part) => tasteBrings(part, name)));
  const own = tasteAllergens.find((row) => row.taste === taste);
  const nut = tastes.find((row) => row.taste === taste)?.nut;
  const sure = own?.brings ?? (nut && nut !== "unknown" ? [nut] : []);
  const unsure =
    own?.unsure ??
    (nut === "unknown" ? "which nuts it is made of" : "the bottle's or the wrapper's own list");
  return { sure: [...sure], unsure: [`${name}: ${unsure}`] };
}

/** "hazelnut praline" is no taste that a table knows, but both of its parts are. */
function partsOf(taste: string): string[] {
  if (tastes.some((row) => row.taste === taste)) return [taste];
  const found = tastes
    .map((row) => row.taste)
    .filter((each) => new RegExp(`(?:^| )${each}(?: |$)`).test(taste));
  return found.filter((each) => !found.some((other) => other !== each && other.includes(each)));
}

/** Gathers several, each once. */
export function gather(list: readonly Brings[]): Brings {
  return {
    sure: [...new Set(list.flatMap((each) => each.sure))],
    unsure: [...new Set(list.flatMap((each) => each.unsure))],
  };
}
