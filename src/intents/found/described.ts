/** "325 g soft beurre", "110 g gemahlene Mandeln": what only says how a thing is stands between it and its weight. */
import { isWord } from "./items.ts";
import type { Item } from "./scan.ts";

/** How things of a kitchen are, in the languages that they are named in; none of these is done or asked. */
const describing = new Set(
  [
    "good quality high top best better proper decent lovely cheap cheaper organic local real actual old regular",
    "full fat low free range european style irish french sweet salted lightly very hard harder dry dried wet",
    "creamy smooth thick cubed diced blanched ground spare remaining tempered unbleached superfine granulated",
    "gemahlene gemahlener gemahlenen weiche weicher weichen kalte kalter kalten warme frische frischer frisches",
    "gute guter gesalzene ungesalzene flussige geschmolzene fein feine feiner feinen ganze",
    "doux douce mou molle frais fraiche froid froide fondu fondue pommade sale demi bon bonne fin fine chaud chaude",
    "blanda blando fria frio fresca fresco fundida derretida salada buena bueno molida caliente",
    "morbido fuso freddo fredda buono buona",
  ].flatMap((line) => line.split(" ")),
);

const isOwner = (item: Item | undefined): boolean =>
  item?.is === "thing" &&
  Boolean(item.thing.ingredient || item.thing.base || item.thing.chocolate || item.thing.dose);

/** A fault's or a use's word by itself, with nothing else to it: "soft", "melted", "firm". */
const isPlainly = (item: Item): boolean =>
  item.is === "thing" &&
  Boolean(item.thing.symptom || item.thing.use) &&
  !isOwner(item) &&
  /^[a-z]+$/.test(item.thing.text);

/** What stands at `at` describes the thing that comes right behind it, or behind more of the same. */
export function describes(items: readonly Item[], at: number): boolean {
  const item = items[at];
  if (item === undefined || !(isPlainly(item) || (item.is === "word" && describing.has(item.text))))
    return false;
  const joined = isWord(items[at + 1], "and") || isWord(items[at + 1], "-") ? at + 2 : at + 1;
  return isOwner(items[joined]) || describes(items, joined);
}
