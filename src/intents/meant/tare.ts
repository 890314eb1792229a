/** "the bowl is 540 empty and 842 with the buttercream in": what is in it is the difference. */
import type { Amount } from "../../tools/contract/index.ts";
import { inBase } from "../../tools/lib/units.ts";
import { textOf } from "../found/items.ts";
import type { Item } from "../found/scan.ts";

type AmountItem = Item & { is: "amount" };

const vessel = "(?:bowl|jug|pan|pot|tub|tare|container|dish|jar|basin)";
const empty = `(?:empty |bare |clean |weight of the )*${vessel}`;
const verb = "(?: (?:is|was|weighs|weight|weighed|itself|alone|empty|by itself|on its own|=|:|,))*";

/** Words that say which of two weights is the vessel's; § stands for that weight, # for the other. */
const tares = [
  new RegExp(`\\btare(?: weight)?${verb} §`),
  new RegExp(`\\b(?:empty|bare|clean) ${vessel}${verb} §`),
  new RegExp(`\\b${vessel}(?: is| weighs| was)* (?:empty|alone|itself|by itself|on its own)${verb} §`),
  new RegExp(
    `\\b${vessel}${verb} § (?:empty|alone|by itself|on its own|without (?:it|anything|the \\S+)|with nothing)`,
  ),
  new RegExp(
    `§ (?:empty|(?:is |was )?(?:of (?:that|it|which) )?(?:is |was )?(?:just |only )?(?:the|my) ${empty}\\b)`,
  ),
];
/** The bowl's weight said plainly counts as that only beside a weight with something in it. */
const plain = new RegExp(`\\b${vessel}${verb} §`);
const gross =
  /(?:bowl|jug|pan|tub|pot)(?: (?:with|and|full of)) [a-z_ ]+ #|[a-z_]+ in (?:the |a |my )?(?:bowl|jug|pan|tub|pot)(?: (?:it|is|reads|weighs|says|shows|at|now|=|:|,))* #|# (?:\S+ ){0,2}(?:with (?:the |my |that )?(?:bowl|it in|\S+ in)|gross|full|in total|total|altogether|all together|bowl and all|including|incl|on the scale)|(?:gross|full|scale (?:says|reads|shows)|with [a-z_ ]+ in(?: it)?|altogether|together|total|with the bowl)(?: (?:it|is|its|that|weighs|weight|at|now|of|=|:|,))* #/;

/**
 * The items with the two weights made one: what the bowl holds, in g. They stay as they are unless there are just two,
 * one said to be the vessel's, the other the larger. Pure.
 */
export function withoutBowl(items: readonly Item[]): Item[] {
  const [one, other, ...more] = items.filter(isWeight);
  if (!one || !other || more.length > 0) return [...items];
  const [large, small] = grams(one) > grams(other) ? [one, other] : [other, one];
  const said = items.map((item) => (item === small ? "§" : item === large ? "#" : textOf(item))).join(" ");
  const named = tares.some((pattern) => pattern.test(said)) || (plain.test(said) && gross.test(said));
  if (!named || grams(large) <= grams(small)) return [...items];
  const held_g = grams(large) - grams(small);
  const held: Amount = {
    ...large.amount,
    dim: "weight",
    unit: "g",
    value: held_g,
    taken: `${shown(held_g)} g in the bowl: ${large.amount.text} less the ${small.amount.text} that it weighs empty`,
  };
  return items.flatMap((item) =>
    item === small || isVessel(item) ? [] : item === large ? [{ ...large, amount: held }] : [item],
  );
}

/** Below this a bare number is no weight of a bowl: "2 bowls". */
const lightest = 20;

const isWeight = (item: Item): item is AmountItem =>
  item.is === "amount" &&
  !item.amount.fraction &&
  item.amount.high === undefined &&
  (item.amount.dim === "weight" ||
    (item.amount.dim === "number" && item.amount.unit === "" && item.amount.value >= lightest));

const grams = ({ amount }: AmountItem): number =>
  amount.unit === "" ? amount.value : inBase(amount.value, amount.unit);

const shown = (value: number) => Math.round(value * 10) / 10;

const isVessel = (item: Item) =>
  (item.is === "thing" && item.thing.count === "bowls") ||
  (item.is === "word" && /^(?:tare|gross|jug|pan|tub|container|dish|jar|basin)$/.test(item.text));
