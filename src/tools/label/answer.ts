/** Puts a label together, or says which allergens to declare. It never claims to be complete where it isn't. */
import { euSource, mixAllergens, usSource } from "../../../data/rules/allergens.ts";
import { inFridge } from "../../../data/rules/keeping.ts";
import { type Market, netSource, orderSource } from "../../../data/rules/labels.ts";
import type { Item, Outcome, Rule, World } from "../contract/index.ts";
import { allergenCaution, sellingCaution } from "../lib/care.ts";
import { plusDays, shortDay } from "../lib/days.ts";
import { listed } from "../lib/show.ts";
import { ahead, behind } from "../lib/when.ts";
import { type Brings, bringsOf, gather, tasteBrings } from "./allergens.ts";
import type { LabelInputs } from "./label.ts";
import { compounds, declared, type Ingredient, ingredientLine, inOrder, netWeight } from "./lines.ts";

interface Dates {
  bestBy: string;
  useBy: string;
}

/** @throws never: what is missing comes back as `asking`. */
export function answerLabel(inputs: LabelInputs, world: World): Outcome {
  const market: Market = inputs.market ?? world.bench.market ?? "us";
  const dates = datesOf(inputs, world);
  if (dates && "status" in dates) return dates;
  if (inputs.want === "dates") return datesAlone(dates);
  const lines = inputs.lines ?? linesOf(inputs, world);
  const ingredients = lines?.map((each) => ({ ...each, brings: bringsOf(each.name, each.taste, world.bottles) }));
  if (!ingredients?.length) {
    if (inputs.mixes || inputs.named) return allergensOf(described(inputs, world), inputs, market);
    const question = "What is in it? Each ingredient with its weight in grams, please.";
    return { status: "asking", headline: question, question, slot: "lines" };
  }
  const brings = gather(ingredients.map((each) => each.brings));
  if (inputs.want === "allergens") return allergensOf({ ...brings, from: ingredients.flatMap((each) => each.brings.sure.map((id) => ({ allergen: id, from: each.name }))) }, inputs, market);
  return wholeLabel(ingredients.map(({ name, grams, brings: own }) => ({ name, grams, allergens: own.sure })), brings, inputs, dates, market);
}

function linesOf(inputs: LabelInputs, world: World): LabelInputs["lines"] {
  return inputs.formulas?.flatMap((name) => world.formulas.find((each) => each.name.toLowerCase() === name.toLowerCase())?.lines ?? []);
}

/** Day 5 and day 7 of the day of making. */
function datesOf(inputs: LabelInputs, world: World): Dates | Outcome | undefined {
  if (!inputs.made) return undefined;
  const past = behind(inputs.made, world.now_ms);
  const made = past.ok ? past : ahead(inputs.made, world.now_ms);
  if (!made.ok) return { status: "impossible", headline: made.why };
  return { bestBy: plusDays(made.day, inFridge.best - 1), useBy: plusDays(made.day, inFridge.days - 1) };
}

const named = (day: string) => `${shortDay(day)} (${day})`;

function datesAlone(dates: Dates | undefined): Outcome {
  if (!dates) {
    const question = "Which day were they made?";
    return { status: "asking", headline: question, question, slot: "made" };
  }
  return {
    status: "answered",
    headline: `Best by ${named(dates.bestBy)}, use by ${named(dates.useBy)}`,
    rule: { text: "best by on day 5 (from memory), use by on day 7, the day of making counted as day 1", basis: "published", source: inFridge.source },
    items: [{ line: "best by", text: dates.bestBy }, { line: "use by", text: dates.useBy }],
    cautions: ["Both hold for filled macarons kept at 5 °C (41 °F) or below.", sellingCaution],
  };
}

interface Found extends Brings {
  from: { allergen: string; from: string }[];
}

/** Allergens of a description: shells and mixes by what they are made of, the rest by the tables. */
function described(inputs: LabelInputs, world: World): Found {
  const mixes = (inputs.mixes ?? []).flatMap((base) => mixAllergens.find((row) => row.base === base) ?? []);
  const parts = [
    ...mixes.map((row) => ({ from: row.brings.map((each) => ({ allergen: each.allergen, from: `${row.base} (${each.from})` })), unsure: row.unsure ? [`${row.base}: ${row.unsure}`] : [] })),
    ...(inputs.named ?? []).map(({ name, taste }) => {
      const own = taste ? world.bottles.findLast((each) => each.taste === taste && each.allergens)?.allergens : undefined;
      const shellsOwn = taste === "almond" && inputs.mixes?.includes("shells");
      const brings = own ? { sure: own, unsure: [] } : shellsOwn ? { sure: ["almond"], unsure: [] } : taste ? tasteBrings(taste, taste) : bringsOf(name, undefined, world.bottles);
      return { from: brings.sure.map((allergen) => ({ allergen, from: name })), unsure: brings.unsure };
    }),
  ];
  const from = parts.flatMap((each) => each.from);
  const noFilling = inputs.mixes?.includes("shells") && inputs.mixes.length === 1 && !inputs.named?.some((each) => each.taste !== "almond");
  // a ganache's chocolate is named once, by its own kind
  const chocolate = inputs.named?.some((each) => / chocolate$/.test(each.name));
  const unsure = parts.flatMap((each) => each.unsure).filter((text) => !(chocolate && text.startsWith("ganache:")));
  return { from, sure: [...new Set(from.map((each) => each.allergen))], unsure: [...new Set([...unsure, ...(noFilling ? ["the filling: not said what it is"] : [])])] };
}

/** A list only where there is something in it. */
const given = (key: "assumed", list: string[]) => (list.length > 0 ? { [key]: list } : {});

const lawOf = (market: Market): Rule =>
  market === "us"
    ? { text: "the nine major allergens by name, a tree nut by its own name", basis: "published", source: usSource }
    : { text: "the fourteen allergens of Annex II, emphasised in the list of ingredients", basis: "published", source: euSource };

function allergensOf(found: Found, inputs: LabelInputs, market: Market): Outcome {
  const names = declared(found.sure, market);
  const open = [...found.unsure, ...(inputs.unread ?? []).map((text) => `"${text}": not read`)];
  const lead = inputs.asked?.length ? `${answerTo(found, inputs.asked, open.length > 0)} ` : "";
  return {
    status: "answered",
    headline: lead + (names.length
      ? `Declare ${listed(names)}${open.length ? `; not complete until you have checked ${listed(open.map((text) => text.split(":")[0] ?? text))}` : ""}`
      : `None that the tables know${open.length ? `, but check ${listed(open.map((text) => text.split(":")[0] ?? text))}` : ""}`),
    rule: lawOf(market),
    ...given("assumed", [...(inputs.market ? [] : [market === "us" ? "United States law" : "European Union law, as your bench is set"]), ...(inputs.mixes?.includes("shells") && !inputs.lines ? ["shells of almond flour and egg whites"] : [])]),
    items: [...found.from.map(({ allergen, from }): Item => ({ allergen, from })), ...open.map((text): Item => ({ check: text }))],
    cautions: [allergenCaution, ...(open.length ? ["I can't call the list complete while something in it isn't known."] : [])],
  };
}

/** What was asked about, never as a yes or a no: "are they nut-free" and "do they contain nuts" turn it round. */
function answerTo(found: Found, asked: readonly string[], isOpen: boolean): string {
  const hits = found.from.filter((each) => asked.includes(each.allergen));
  if (hits.length > 0) return `They contain ${listed([...new Set(hits.map((each) => `${each.allergen}, from the ${each.from}`))])}.`;
  return `The tables know of none of that in them${isOpen ? ", but that isn't sure" : "; traces are for you to rule out"}.`;
}

/** Every line that a label carries; what isn't known is left blank and named. */
function wholeLabel(ingredients: readonly Ingredient[], brings: Brings, inputs: LabelInputs, dates: Dates | undefined, market: Market): Outcome {
  const contains = declared(brings.sure, market);
  const net = inputs.net_g !== undefined || inputs.net_oz !== undefined ? netWeight(inputs.net_g, inputs.net_oz, market) : undefined;
  const open = [...brings.unsure, ...compounds(inOrder(ingredients, market)).map((name) => `${name}: copy its own list from the wrapper`), ...(inputs.unread ?? []).map((text) => `"${text}": not read, not on the label`)];
  const blanks = ["name and address", ...(net ? [] : ["net weight"]), ...(dates ? [] : ["best-by date"])];
  const items: Item[] = [
    { line: "name of the food", text: "Macarons" },
    { line: "ingredients", text: ingredientLine(ingredients, market) },
    ...(market === "us" ? [{ line: "allergens", text: contains.length ? `Contains: ${contains.join(", ")}` : "Contains: none of the nine" }] : [{ line: "allergens", text: `in capitals in the list: ${contains.map((each) => each.toUpperCase()).join(", ") || "none"}` }]),
    { line: "net weight", text: net?.text ?? "______" },
    { line: "storage", text: market === "us" ? "Keep refrigerated at or below 41 °F (5 °C)" : "Keep at or below 5 °C" },
    { line: market === "us" ? "best by" : "best before", text: dates ? dates.bestBy : "______ (day 5, the day of making counted as day 1)" },
    { line: "use by", text: dates ? dates.useBy : "______ (day 7)" },
    { line: "name and address", text: "______" },
    { line: "home kitchen", text: "the statement that your local law asks for, if it does" },
    ...open.map((text): Item => ({ check: text })),
  ];
  return {
    status: "answered",
    headline: `${market.toUpperCase()} label: contains ${listed(contains) || "no allergen that the tables know"}${net ? `; ${net.text}` : ""}; left blank: ${listed(blanks)}${open.length ? `; not complete, check ${listed([...new Set(open.map((text) => text.split(":")[0] ?? text))])}` : ""}`,
    ...(net ? { figures: [{ name: "net weight", value: net.grams, unit: "g" }, ...(market === "us" ? [{ name: "net weight", value: net.ounces, unit: "oz" }] : [])] } : {}),
    rule: { text: `ingredients by weight, the heaviest first; ${lawOf(market).text}${net ? "; net weight rounded down" : ""}`, basis: "published", source: `${orderSource[market]}; ${lawOf(market).source}${net ? `; ${netSource[market]}` : ""}` },
    ...given("assumed", [...(inputs.market ? [] : [market === "us" ? "a label for the United States" : "a label for the European Union, as your bench is set"]), ...(inputs.from_table ? ["the recipe of the answer before"] : []), ...((inputs.formulas?.length ?? 0) > 1 ? ["each recipe whole, as it is saved"] : [])]),
    items,
    cautions: [allergenCaution, ...(open.length ? ["The label isn't complete while something on it isn't known."] : []), sellingCaution],
    working: inOrder(ingredients, market).map(({ name, grams }) => `${name} ${grams} g`),
    leaves: { recipe: ingredients.map(({ name, grams }) => ({ name, grams })) },
  };
}

