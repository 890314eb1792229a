/** "what does the chocolate in it cost": one ingredient of the recipe that lies on the table, or of the bill before. */
import type { Reading, Thing } from "../contract/index.ts";
import { says } from "../lib/find.ts";
import { nameOf, sameIngredient } from "../lib/lines.ts";
import type { Draft, Lines, Told } from "./draft.ts";

/** Between the question and the ingredient nothing that points at all of it: "what does it cost with butter at 9". */
const asked =
  /(?:^|[ ,])(?:whats|what|how much|(?:cost|price|share) of)(?: (?:do|does|did|would|will|is|are|was|were|be|the|those|these|that|my|this|all|just|only|of|for|then|about|amount|cost|costs|price|i|spend|spent|pay|paid|on))* $/;
const alone =
  /^ (?:(?:in|inside) (?:it|there|that|this|them|the \w+) )?(?:alone|only|by itself|on its own|by themselves|on their own)\b|^ (?:in (?:it|there|that) )?(?:comes?|came|costs?)(?: me)?(?: to)?(?: how much| what)? ?\?/;

const askedThing = ({ things, text }: Reading): Thing | undefined =>
  things.findLast(
    (each) =>
      (each.ingredient || each.chocolate) &&
      (asked.test(text.slice(0, each.at[0])) || alone.test(text.slice(each.at[1]))),
  );

/** "chocolate" is the one there is, whatever its kind. */
export const isOf = (name: string, line: string): boolean =>
  sameIngredient(name, line) || (name === "chocolate" && line.endsWith(" chocolate"));

/** "the sugars at 2 a kilo": all there are. */
function sugarsOf(lines: Lines, { prices = [] }: Draft): Lines | undefined {
  const all = lines.filter((each) => /\bsugar$/.test(each.name));
  const price = prices.length === 1 ? prices[0] : undefined;
  return all.length > 0
    ? all.map((each) => ({ ...each, ...(price ? { price_per_g: price.price_per_g } : {}) }))
    : undefined;
}

/** "and the sugar at 2 a kilo", behind what the butter of it cost. */
const another = ({ things }: Reading, { prices = [] }: Draft, [one, ...others]: Lines): Thing | undefined =>
  prices.length === 1 && one && others.length === 0 && !isOf(prices[0]?.name ?? "", one.name)
    ? things.find((each) => nameOf(each) === prices[0]?.name)
    : undefined;

const spoken = /cost|come to|comes to|run me|set me back|price|spend|spent/;

export function oneLine({
  reading,
  memory: { table, last, follows },
  draft,
  before,
}: Told): Lines | undefined {
  const bill = last?.tool === "cost" ? before.lines : undefined;
  if (draft.lines || draft.cost !== undefined || draft.ingredients !== undefined) return undefined;
  if (draft.macarons !== undefined || reading.amounts.some(({ dim }) => dim === "weight")) return undefined;
  if (!draft.prices && !bill && !says(reading, spoken)) return undefined;
  const thing = askedThing(reading) ?? (follows && bill ? another(reading, draft, bill) : undefined);
  if (!thing) return undefined;
  const name = nameOf(thing);
  if (thing.text === "sugars") return sugarsOf(bill ?? table.recipe ?? [], draft);
  const named = (lines: Lines) => lines.filter((each) => isOf(name, each.name));
  const own = named(bill ?? []);
  const [line, ...others] = own.length > 0 ? own : named(table.recipe ?? []);
  if (!line || others.length > 0) return undefined;
  const price =
    draft.prices?.find((each) => isOf(each.name, line.name)) ??
    before.prices?.find((each) => bill && isOf(each.name, line.name));
  return [{ ...line, ...(price ? { price_per_g: price.price_per_g } : {}) }];
}
