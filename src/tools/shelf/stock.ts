/** Ingredients in stock: put there, used, priced. */
import type { Effect, Figure, Outcome, Stock, World } from "../contract/index.ts";
import { asking } from "../lib/asking.ts";
import { each_g, sameIngredient } from "../lib/lines.ts";
import { moneyText } from "../lib/money.ts";
import { capital, counted, listed, plain, weight } from "../lib/show.ts";
import type { ShelfInputs } from "./shelf.ts";

type Entry = NonNullable<ShelfInputs["entries"]>[number];

export const stockOf = (world: World, name: string): Stock | undefined =>
  world.stock.findLast((each) => each.name === name) ??
  world.stock.findLast((each) => sameIngredient(each.name, name));
export const g = (grams: number, world: World) => `${weight(grams, world.bench.scale_g)} g`;

/** g of the same that were counted just before, where this puts that right; of what changed nothing none. */
const takenBack = ({ instead_g }: Entry, { last }: World): number =>
  last?.tool === "shelf" && last.answer.status === "answered" ? (instead_g ?? 0) : 0;

const egg_g = each_g.egg ?? 50;
/** " (7 eggs)" behind what there is of eggs, where it comes to whole ones; else nothing. */
export const eggsText = (name: string, grams: number): string =>
  name === "egg" && grams > 0 && Number.isInteger(grams / egg_g) ? ` (${counted(grams / egg_g, "egg")})` : "";
/** Whole eggs, which were told by their number. */
const inEggs = ({ name, grams = 0 }: Entry): boolean => name === "egg" && Number.isInteger(grams / egg_g);

export function put({ does, entries }: ShelfInputs, world: World): Outcome {
  if (!entries?.length) return asking("What is it, and how many grams?", "entries");
  const bare = entries.find((each) => each.grams === undefined);
  if (bare) return asking(`How many grams of ${bare.name}?`, "entries");
  const done = entries.map((entry) => {
    const known = stockOf(world, entry.name);
    const held = (known?.grams ?? 0) - takenBack(entry, world);
    const grams = (entry.grams ?? 0) + (does === "add" ? held : 0);
    const currency = entry.currency ?? usualCurrency(world) ?? "USD";
    const pack = {
      ...(entry.pack_g !== undefined ? { pack_g: entry.pack_g } : {}),
      ...(entry.price_per_g !== undefined ? { price_per_g: entry.price_per_g, currency } : {}),
    };
    const cost =
      entry.price_per_g !== undefined ? `, ${moneyText(entry.price_per_g * 1000, currency)} a kilo` : "";
    const effect: Effect = known
      ? { do: "change", list: "stock", id: known.id, patch: { grams, ...pack } }
      : { do: "add", list: "stock", entry: { name: entry.name, grams, ...pack } };
    const sum =
      known && held > 0
        ? does === "add"
          ? ` (${g(held, world)} + ${g(entry.grams ?? 0, world)})`
          : ` (it was ${g(known.grams, world)})`
        : "";
    return {
      effect,
      figure: { name: entry.name, value: grams, unit: "g" },
      text: `${entry.name} ${g(grams, world)}${eggsText(entry.name, grams)}${sum}${cost}`,
    };
  });
  return {
    status: "answered",
    headline: `On the shelf: ${listed(done.map((each) => each.text))}`,
    figures: done.map((each) => each.figure),
    effects: done.map((each) => each.effect),
    ...(entries.some(inEggs)
      ? { assumed: [`an egg counts as ${plain(egg_g)} g (a large one's, USDA SR)`] }
      : {}),
    change: `${listed(entries.map((each) => `${g(each.grams ?? 0, world)} ${each.name}`))} on the shelf`,
    ...leave(
      entries,
      done.map((each) => each.figure),
    ),
  };
}

/** The bench's currency, or the one that all prices so far are in, or that of the sum just before. */
function usualCurrency({ bench, stock, last }: World): string | undefined {
  const spoken =
    last?.tool === "cost" ? last.answer.figures?.find(({ unit }) => /^[A-Z]{3}$/.test(unit)) : undefined;
  const used = new Set(
    stock.flatMap((each) => (each.price_per_g === undefined ? [] : (each.currency ?? "USD"))),
  );
  return bench.currency ?? (used.size === 1 ? [...used][0] : used.size === 0 ? spoken?.unit : undefined);
}

/** One thing spoken of lies on the table: "scale it", "how much of it". */
export const leave = (entries: readonly Entry[], figures: readonly Figure[]) => {
  const [entry, figure] = [entries[0], figures[0]];
  return entries.length === 1 && entry && figure?.value
    ? { leaves: { mass: { grams: figure.value, thing: entry.name } } }
    : {};
};

/** Never below nothing: more used than there is changes nothing, unless she said to go to zero. */
export function use({ entries, to_zero }: ShelfInputs, world: World): Outcome {
  if (!entries?.length) return asking("What did you use, and how many grams?", "entries");
  const bare = entries.find((each) => each.grams === undefined && each.part === undefined);
  if (bare) return asking(`How many grams of ${bare.name}?`, "entries");
  const effects: Effect[] = [];
  const figures: Figure[] = [];
  const said: string[] = [];
  for (const entry of entries) {
    const known = stockOf(world, entry.name);
    const flask = known
      ? undefined
      : world.bottles.findLast((each) => each.taste === entry.name && each.left_g !== undefined);
    if (flask) {
      const held = flask.left_g ?? 0;
      const out = entry.grams ?? held * (entry.part ?? 1);
      if (out > held + 1e-9 && !to_zero)
        return {
          status: "impossible",
          headline: `There are only ${g(held, world)} in the ${flask.taste} bottle; ${g(out, world)} is more. Nothing is changed; say "to zero" to take it all.`,
        };
      const rest = Math.max(0, held - out);
      effects.push({ do: "change", list: "bottles", id: flask.id, patch: { left_g: rest } });
      figures.push({ name: `${entry.name} left`, value: rest, unit: "g" });
      said.push(`${g(rest, world)} left in the ${flask.taste} bottle`);
      continue;
    }
    if (!known)
      return {
        status: "impossible",
        headline: `There is no ${entry.name} on the shelf to take from. Say "pantry: 500 g ${entry.name}" first.`,
      };
    const held = known.grams + takenBack(entry, world);
    const used = entry.grams ?? held * (entry.part ?? 1);
    if (used > held + 1e-9 && !to_zero)
      return {
        status: "impossible",
        headline: `There are only ${g(held, world)} ${entry.name} on the shelf; ${g(used, world)} is more. Nothing is changed; say "to zero" to take it all.`,
      };
    const left = Math.max(0, held - used);
    effects.push({ do: "change", list: "stock", id: known.id, patch: { grams: left } });
    figures.push({ name: `${entry.name} left`, value: left, unit: "g" });
    said.push(`${g(left, world)} ${entry.name} left${eggsText(entry.name, left)}`);
  }
  return {
    status: "answered",
    headline: capital(listed(said)),
    figures,
    effects,
    change: `using ${listed(entries.map((each) => each.name))}`,
  };
}

export function price(inputs: ShelfInputs, world: World): Outcome {
  const { entries } = inputs;
  const entry = entries?.[0];
  if (!entry) return asking("The price of what?", "entries");
  if (entries.length > 1) {
    const all = entries.map((each) => price({ ...inputs, entries: [each] }, world));
    const unsaid = all.find((each) => each.status !== "answered");
    const assumed = [...new Set(all.flatMap((each) => each.assumed ?? []))];
    return (
      unsaid ?? {
        ...(all[0] as Outcome),
        headline: `Saved: ${listed(all.map((each) => each.headline.replace(/^Saved: /, "")))}`,
        figures: all.flatMap((each) => each.figures ?? []),
        ...(assumed.length ? { assumed } : {}),
        effects: all.flatMap((each) => each.effects ?? []),
        change: `the prices of ${listed(entries.map((each) => each.name))}`,
      }
    );
  }
  if (entry.price_per_g === undefined)
    return asking(`What does ${entry.name} cost, and for how much: a kilo, a pound, a 500 g bag?`, "entries");
  const known = stockOf(world, entry.name);
  const currency = entry.currency ?? usualCurrency(world) ?? "USD";
  const { each_g: one_g } = entry;
  const assumed = [
    ...(one_g === undefined ? [] : [`${plain(one_g)} g in one, a large egg's (USDA SR)`]),
    ...(entry.as_before ? [`for ${g(entry.per_g ?? 0, world)}, as the price before`] : []),
    ...(entry.currency || world.bench.currency
      ? []
      : [usualCurrency(world) ? `${currency}, as your other prices` : "US dollars"]),
  ];
  const patch = {
    price_per_g: entry.price_per_g,
    currency,
    ...(entry.pack_g !== undefined ? { pack_g: entry.pack_g } : {}),
  };
  const effect: Effect = known
    ? { do: "change", list: "stock", id: known.id, patch }
    : { do: "add", list: "stock", entry: { name: entry.name, grams: 0, ...patch } };
  return {
    status: "answered",
    headline: `Saved: ${entry.name} at ${one_g === undefined ? "" : `${moneyText(entry.price_per_g * one_g, currency)} each, `}${moneyText(entry.price_per_g * 1000, currency)} a kilo`,
    figures: [{ name: `${entry.name} a kilo`, value: entry.price_per_g * 1000, unit: currency }],
    rule: { text: "your own price; costs go by it from now on", basis: "your bench" },
    ...(assumed.length > 0 ? { assumed } : {}),
    effects: [effect],
    change: `the price of ${entry.name}`,
  };
}
