/** Carries an order on the shelf out as changes to the record, and answers what is there. */
import type { Bottle, Effect, Figure, Item, Outcome, Stock, World } from "../contract/index.ts";
import { sameIngredient } from "../lib/lines.ts";
import { moneyText } from "../lib/money.ts";
import { capital, listed, percent, plain, weight } from "../lib/show.ts";
import type { ShelfInputs } from "./shelf.ts";

type Entry = NonNullable<ShelfInputs["entries"]>[number];

const asking = (question: string, slot: string): Outcome => ({ status: "asking", headline: question, question, slot });
const stockOf = (world: World, name: string): Stock | undefined => world.stock.findLast((each) => each.name === name) ?? world.stock.findLast((each) => sameIngredient(each.name, name));
const g = (grams: number, world: World) => `${weight(grams, world.bench.scale_g)} g`;

/** @throws never: an order that can't be carried out comes back as `asking` or `impossible`, with nothing changed. */
export function answerShelf(inputs: ShelfInputs, world: World): Outcome {
  switch (inputs.does) {
    case "bottle":
      return bottle(inputs, world);
    case "add":
    case "set":
      return put(inputs, world);
    case "use":
      return use(inputs, world);
    case "ask":
      return ask(inputs, world);
    case "price":
      return price(inputs, world);
    case "forget":
      return forget(inputs, world);
    default:
      return list(world);
  }
}

/** A bottle's own directions; a second bottle of the same taste and form replaces the first. */
function bottle({ taste, form, low_percent, high_percent, allergens, unweighable }: ShelfInputs, world: World): Outcome {
  if (!taste) return asking("Which flavor is the bottle?", "taste");
  const name = `${taste}${form && form !== "flavor" ? ` ${form}` : ""} bottle`;
  if (unweighable) return { status: "declined", headline: `I can't save "${unweighable}": a bottle's directions are kept as a percentage of the weight. What does it say in percent?` };
  if (low_percent === undefined && allergens === undefined) return asking(`What does the ${name} say, in percent of the weight?`, "low_percent");
  const known = world.bottles.findLast((each) => each.taste === taste && each.form === form);
  const directions = low_percent !== undefined ? { low_percent, high_percent: high_percent ?? low_percent } : {};
  const patch = { ...directions, ...(allergens ? { allergens } : {}) };
  const effect: Effect = known ? { do: "change", list: "bottles", id: known.id, patch } : { do: "add", list: "bottles", entry: { taste, ...(form ? { form } : {}), ...patch } };
  const range = low_percent !== undefined ? percent(low_percent, high_percent ?? low_percent) : undefined;
  return {
    status: "answered",
    headline: `Saved: ${name}${range ? `, ${range} of the weight` : ""}${allergens ? `, ${allergens.length ? `contains ${listed(allergens)}` : "no allergens"}` : ""}${known ? "; it replaces what was saved before" : ""}`,
    ...(range ? { figures: [low_percent === high_percent || high_percent === undefined ? { name: taste, value: low_percent, unit: "%" } : { name: taste, low: low_percent, high: high_percent, unit: "%" }], rule: { text: `${range}, from your ${taste} bottle`, basis: "your bench" as const } } : {}),
    effects: [effect],
    change: `the ${name}`,
  };
}

function put({ does, entries }: ShelfInputs, world: World): Outcome {
  if (!entries?.length) return asking("What is it, and how many grams?", "entries");
  const bare = entries.find((each) => each.grams === undefined);
  if (bare) return asking(`How many grams of ${bare.name}?`, "entries");
  const done = entries.map((entry) => {
    const known = stockOf(world, entry.name);
    const grams = (entry.grams ?? 0) + (does === "add" ? (known?.grams ?? 0) : 0);
    const pack = entry.pack_g !== undefined ? { pack_g: entry.pack_g } : {};
    const effect: Effect = known ? { do: "change", list: "stock", id: known.id, patch: { grams, ...pack } } : { do: "add", list: "stock", entry: { name: entry.name, grams, ...pack } };
    const sum = known && does === "add" && known.grams > 0 ? ` (${g(known.grams, world)} + ${g(entry.grams ?? 0, world)})` : "";
    return { effect, figure: { name: entry.name, value: grams, unit: "g" }, text: `${entry.name} ${g(grams, world)}${sum}` };
  });
  return {
    status: "answered",
    headline: `On the shelf: ${listed(done.map((each) => each.text))}`,
    figures: done.map((each) => each.figure),
    effects: done.map((each) => each.effect),
    change: `${listed(entries.map((each) => `${g(each.grams ?? 0, world)} ${each.name}`))} on the shelf`,
    ...leave(entries, done.map((each) => each.figure)),
  };
}

/** One thing spoken of lies on the table: "scale it", "how much of it". */
const leave = (entries: readonly Entry[], figures: readonly Figure[]) => {
  const [entry, figure] = [entries[0], figures[0]];
  return entries.length === 1 && entry && figure?.value ? { leaves: { mass: { grams: figure.value, thing: entry.name } } } : {};
};

/** Never below nothing: more used than there is changes nothing, unless she said to go to zero. */
function use({ entries, to_zero }: ShelfInputs, world: World): Outcome {
  if (!entries?.length) return asking("What did you use, and how many grams?", "entries");
  const effects: Effect[] = [];
  const figures: Figure[] = [];
  const said: string[] = [];
  for (const entry of entries) {
    const known = stockOf(world, entry.name);
    if (!known) return { status: "impossible", headline: `There is no ${entry.name} on the shelf to take from. Say "pantry: 500 g ${entry.name}" first.` };
    const used = entry.grams ?? known.grams * (entry.part ?? 1);
    if (used > known.grams + 1e-9 && !to_zero) return { status: "impossible", headline: `There are only ${g(known.grams, world)} ${entry.name} on the shelf; ${g(used, world)} is more. Nothing is changed; say "to zero" to take it all.` };
    const left = Math.max(0, known.grams - used);
    effects.push({ do: "change", list: "stock", id: known.id, patch: { grams: left } });
    figures.push({ name: `${entry.name} left`, value: left, unit: "g" });
    said.push(`${g(left, world)} ${entry.name} left`);
  }
  return {
    status: "answered",
    headline: capital(listed(said)),
    figures,
    effects,
    change: `using ${listed(entries.map((each) => each.name))}`,
  };
}

function ask({ entries, taste }: ShelfInputs, world: World): Outcome {
  if (!entries?.length) return taste ? bottlesOf(taste, world) : list(world);
  const found = entries.map(({ name }) => ({ name, stock: stockOf(world, name) }));
  const figures = found.flatMap(({ name, stock }): Figure[] => (stock ? [{ name, value: stock.grams, unit: "g" }] : []));
  return {
    status: "answered",
    headline: capital(listed(found.map(({ name, stock }) => (stock ? `${g(stock.grams, world)} ${name}` : `no ${name} on the shelf`)))),
    ...(figures.length ? { figures } : {}),
    items: found.flatMap(({ stock }) => (stock ? [stockItem(stock)] : [])),
    ...(figures.length ? { rule: { text: "what you put on the shelf less what you said you used", basis: "your bench" as const } } : {}),
    ...leave(entries, figures),
  };
}

function bottlesOf(taste: string, world: World): Outcome {
  const found = world.bottles.filter((each) => each.taste === taste);
  return { status: "answered", headline: found.length ? listed(found.map(bottleText)) : `No ${taste} bottle is saved`, items: found.map(bottleItem) };
}

function price({ entries }: ShelfInputs, world: World): Outcome {
  const entry = entries?.[0];
  if (!entry) return asking("The price of what?", "entries");
  if (entry.price_per_g === undefined) return asking(`What does ${entry.name} cost, and for how much: a kilo, a pound, a 500 g bag?`, "entries");
  const known = stockOf(world, entry.name);
  const currency = entry.currency ?? world.bench.currency ?? "USD";
  const patch = { price_per_g: entry.price_per_g, currency, ...(entry.pack_g !== undefined ? { pack_g: entry.pack_g } : {}) };
  const effect: Effect = known ? { do: "change", list: "stock", id: known.id, patch } : { do: "add", list: "stock", entry: { name: entry.name, grams: 0, ...patch } };
  return {
    status: "answered",
    headline: `Saved: ${entry.name} at ${moneyText(entry.price_per_g * 1000, currency)} a kilo`,
    figures: [{ name: `${entry.name} a kilo`, value: entry.price_per_g * 1000, unit: currency }],
    rule: { text: "your own price; costs go by it from now on", basis: "your bench" },
    ...(entry.currency || world.bench.currency ? {} : { assumed: ["US dollars"] }),
    effects: [effect],
    change: `the price of ${entry.name}`,
  };
}

function forget({ entries, taste }: ShelfInputs, world: World): Outcome {
  const bottles = taste ? world.bottles.filter((each) => each.taste === taste) : [];
  const stock = (entries ?? []).flatMap(({ name }) => stockOf(world, name) ?? []);
  const what = taste ? `${taste} bottle` : listed((entries ?? []).map((each) => each.name));
  if (bottles.length + stock.length === 0) return what ? { status: "impossible", headline: `There is no ${what} on the shelf to forget.` } : asking("Forget what: which bottle or ingredient?", "entries");
  return {
    status: "answered",
    headline: `Forgotten: ${what}`,
    effects: [...bottles.map((each): Effect => ({ do: "remove", list: "bottles", id: each.id })), ...stock.map((each): Effect => ({ do: "remove", list: "stock", id: each.id }))],
    change: `forgetting ${what}`,
  };
}

const bottleText = (each: Bottle) => `${each.taste}${each.form ? ` ${each.form}` : ""} ${each.low_percent !== undefined ? percent(each.low_percent, each.high_percent ?? each.low_percent) : "without directions"}`;
const bottleItem = (each: Bottle): Item => ({ bottle: each.taste, ...(each.form ? { form: each.form } : {}), ...(each.low_percent !== undefined ? { low_percent: each.low_percent, high_percent: each.high_percent ?? each.low_percent } : {}), ...(each.allergens ? { contains: each.allergens } : {}) });
const stockItem = (each: Stock): Item => ({ name: each.name, grams: each.grams, ...(each.price_per_g !== undefined ? { price_a_kilo: each.price_per_g * 1000, currency: each.currency ?? "USD" } : {}), ...(each.pack_g !== undefined ? { pack_g: each.pack_g } : {}) });

function list(world: World): Outcome {
  const { stock, bottles } = world;
  const items = [...stock.map(stockItem), ...bottles.map(bottleItem)];
  if (items.length === 0) return { status: "answered", headline: "The shelf is empty: no stock and no bottles are saved", items: [] };
  const priced = stock.filter((each) => each.grams === 0 && each.price_per_g !== undefined);
  const held = stock.filter((each) => !priced.includes(each));
  const parts = [...held.map((each) => `${each.name} ${g(each.grams, world)}`), ...priced.map((each) => `${each.name} ${moneyText((each.price_per_g ?? 0) * 1000, each.currency ?? "USD")} a kilo`), ...bottles.map((each) => `${bottleText(each)} (bottle)`)];
  return {
    status: "answered",
    headline: `${plain(items.length)} on the shelf: ${parts.join(", ")}`,
    figures: held.map((each) => ({ name: each.name, value: each.grams, unit: "g" })),
    items,
  };
}
