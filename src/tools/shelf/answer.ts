/** Carries an order on the shelf out as changes to the record, and answers what is there. */
import type { Effect, Figure, Item, Outcome, Stock, World } from "../contract/index.ts";
import { asking } from "../lib/asking.ts";
import { moneyText } from "../lib/money.ts";
import { capital, listed, plain } from "../lib/show.ts";
import { bottle, bottleItem, bottlesOf, bottleText } from "./bottles.ts";
import type { ShelfInputs } from "./shelf.ts";
import { eggsText, g, leave, price, put, stockOf, use } from "./stock.ts";
import { pack, takeWhole } from "./taking.ts";

/** @throws never: an order that can't be carried out comes back as `asking` or `impossible`, with nothing changed. */
export function answerShelf(inputs: ShelfInputs, world: World): Outcome {
  if (inputs.loose_g !== undefined)
    return asking(
      `Of which: ${listed(
        (inputs.entries ?? []).map((each) => each.name),
        "or",
      )}?`,
      "entries",
    );
  switch (inputs.does) {
    case "bottle":
      return bottle(inputs, world);
    case "add":
    case "set":
      return put(inputs, world);
    case "use":
      return inputs.whole ? takeWhole(inputs, world) : use(inputs, world);
    case "ask":
      return ask(inputs, world);
    case "pack":
      return pack(inputs, world);
    case "price":
      return price(inputs, world);
    case "forget":
      return forget(inputs, world);
    case "unsure":
      return unsure(inputs, world);
    case "none":
      return {
        status: "declined",
        headline:
          'Nothing is changed on the shelf. What goes into a bowl is asked like this: "20 g rum in 200 g buttercream, too much?"',
      };
    default:
      return list(inputs.bottles_only ? { ...world, stock: [] } : world, inputs.bottles_only);
  }
}

/** No word said which way it went: stock that is only guessed would be wrong from then on. */
function unsure({ entries }: ShelfInputs, world: World): Outcome {
  if (!entries?.length || entries.every((each) => each.grams === undefined))
    return asking("What is it, how many grams, and was it put on the shelf or taken off it?", "entries");
  const what = listed(
    entries.map(({ name, grams }) => (grams === undefined ? name : `${g(grams, world)} ${name}`)),
  );
  return asking(
    `Nothing is changed yet. ${what}: put on the shelf, taken off it, or is that all there is?`,
    "does",
  );
}

function ask({ entries, taste }: ShelfInputs, world: World): Outcome {
  const only = entries?.length === 1 ? entries[0]?.name : undefined;
  if (only && !stockOf(world, only) && world.bottles.some((each) => each.taste === only))
    return bottlesOf(only, world);
  if (!entries?.length) return taste ? bottlesOf(taste, world) : list(world);
  const found = entries.map(({ name }) => ({ name, stock: stockOf(world, name) }));
  const figures = found.flatMap(({ name, stock }): Figure[] =>
    stock ? [{ name, value: stock.grams, unit: "g" }] : [],
  );
  return {
    status: "answered",
    headline: capital(
      listed(
        found.map(({ name, stock }) =>
          stock
            ? `${g(stock.grams, world)} ${name}${eggsText(name, stock.grams)}`
            : `no ${name} on the shelf`,
        ),
      ),
    ),
    ...(figures.length ? { figures } : {}),
    items: found.flatMap(({ stock }) => (stock ? [stockItem(stock)] : [])),
    ...(figures.length
      ? {
          rule: {
            text: "what you put on the shelf less what you said you used",
            basis: "your bench" as const,
          },
        }
      : {}),
    ...leave(entries, figures),
  };
}

function forget({ entries, taste }: ShelfInputs, world: World): Outcome {
  const stock = (entries ?? []).flatMap(({ name }) => stockOf(world, name) ?? []);
  // what is in stock by that name comes first
  const bottles = taste && stock.length === 0 ? world.bottles.filter((each) => each.taste === taste) : [];
  const what =
    taste && stock.length === 0 ? `${taste} bottle` : listed((entries ?? []).map((each) => each.name));
  if (bottles.length + stock.length === 0)
    return what
      ? { status: "impossible", headline: `Nothing to forget: no ${what} on the shelf.` }
      : asking("Forget what: which bottle or ingredient?", "entries");
  return {
    status: "answered",
    headline: `Forgotten: ${what}`,
    effects: [
      ...bottles.map((each): Effect => ({ do: "remove", list: "bottles", id: each.id })),
      ...stock.map((each): Effect => ({ do: "remove", list: "stock", id: each.id })),
    ],
    change: `forgetting ${what}`,
  };
}

const stockItem = (each: Stock): Item => ({
  name: each.name,
  grams: each.grams,
  ...(each.price_per_g !== undefined
    ? { price_a_kilo: each.price_per_g * 1000, currency: each.currency ?? "USD" }
    : {}),
  ...(each.pack_g !== undefined ? { pack_g: each.pack_g } : {}),
});

function list(world: World, isBottles = false): Outcome {
  const { stock, bottles } = world;
  const items = [...stock.map(stockItem), ...bottles.map(bottleItem)];
  if (items.length === 0)
    return {
      status: "answered",
      headline: isBottles ? "No bottles are saved" : "The shelf is empty: no stock and no bottles are saved",
      items: [],
    };
  const priced = stock.filter((each) => each.grams === 0 && each.price_per_g !== undefined);
  const held = stock.filter((each) => !priced.includes(each));
  const parts = [
    ...held.map((each) => `${each.name} ${g(each.grams, world)}${eggsText(each.name, each.grams)}`),
    ...priced.map(
      (each) => `${each.name} ${moneyText((each.price_per_g ?? 0) * 1000, each.currency ?? "USD")} a kilo`,
    ),
    ...bottles.map((each) => `${bottleText(each)} (bottle)`),
  ];
  return {
    status: "answered",
    headline: `${plain(items.length)} on the shelf: ${parts.join(", ")}`,
    figures: held.map((each) => ({ name: each.name, value: each.grams, unit: "g" })),
    items,
  };
}
