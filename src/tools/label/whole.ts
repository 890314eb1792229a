/** A whole label, line by line; what isn't known is left blank and named. */
import { type Market, netSource, orderSource } from "../../../data/rules/labels.ts";
import type { Item, Outcome, World } from "../contract/index.ts";
import { allergenCaution, sellingCaution } from "../lib/care.ts";
import { listed } from "../lib/show.ts";
import type { Brings } from "./allergens.ts";
import { given, lawOf, openNames, shellsLeftOut } from "./declare.ts";
import type { LabelInputs } from "./label.ts";
import { compounds, declared, type Ingredient, ingredientLine, inOrder, netWeight } from "./lines.ts";
import { printed } from "./print.ts";

/** Best by on day 5, use by on day 7 of the day of making. */
export interface Dates {
  bestBy: string;
  useBy: string;
}

/** Every line that a label carries; what isn't known is left blank and named. */
export function wholeLabel(
  ingredients: readonly Ingredient[],
  brings: Brings,
  inputs: LabelInputs,
  dates: Dates | undefined,
  market: Market,
  world: World,
): Outcome {
  const contains = declared(brings.sure, market);
  const net =
    inputs.net_g !== undefined || inputs.net_oz !== undefined
      ? netWeight(inputs.net_g, inputs.net_oz, market)
      : undefined;
  const open = [
    ...brings.unsure,
    ...compounds(inOrder(ingredients, market)).map((name) => `${name}: copy its own list from the wrapper`),
    ...(inputs.unread ?? []).map((text) => `"${text}": not read, not on the label`),
  ];
  const blanks = [
    ...(inputs.by ? [] : ["name and address"]),
    ...(net ? [] : ["net weight"]),
    ...(dates ? [] : ["best-by date"]),
  ];
  const items: Item[] = [
    { line: "name of the food", text: inputs.title ?? "Macarons" },
    { line: "ingredients", text: ingredientLine(ingredients, market) },
    ...(market === "us"
      ? [
          {
            line: "allergens",
            text: contains.length
              ? `Contains: ${contains.join(", ")}`
              : // what isn't known may be one of them
                `Contains: ${brings.unsure.length > 0 ? "______" : "none of the nine"}`,
          },
        ]
      : [
          {
            line: "allergens",
            text: `in capitals in the list: ${contains.map((each) => each.toUpperCase()).join(", ") || "none"}`,
          },
        ]),
    { line: "net weight", text: net?.text ?? "______" },
    {
      line: "storage",
      text: market === "us" ? "Keep refrigerated at or below 41 °F (5 °C)" : "Keep at or below 5 °C",
    },
    {
      line: market === "us" ? "best by" : "best before",
      text: dates ? dates.bestBy : "______ (day 5, the day of making counted as day 1)",
    },
    { line: "use by", text: dates ? dates.useBy : "______ (day 7)" },
    { line: "name and address", text: inputs.by ?? "______" },
    { line: "home kitchen", text: "the statement that your local law asks for, if it does" },
    ...open.map((text): Item => ({ check: text })),
  ];
  const outcome: Outcome = {
    status: "answered",
    headline: `${market.toUpperCase()} label: contains ${listed(contains) || "no allergen that the tables know"}${net ? `; ${net.text}` : ""}; ${blanks.length ? `left blank: ${listed(blanks)}` : "every line filled in"}${open.length ? `; not complete, check ${openNames(open)}` : ""}`,
    ...(net
      ? {
          figures: [
            { name: "net weight", value: net.grams, unit: "g" },
            ...(market === "us" ? [{ name: "net weight", value: net.ounces, unit: "oz" }] : []),
          ],
        }
      : {}),
    rule: {
      text: `ingredients by weight, the heaviest first; ${lawOf(market).text}${net ? "; net weight rounded down" : ""}`,
      basis: "published",
      source: `${orderSource[market]}; ${lawOf(market).source}${net ? `; ${netSource[market]}` : ""}`,
    },
    ...given("assumed", [
      ...(inputs.market
        ? []
        : [
            market === "us"
              ? "a label for the United States"
              : "a label for the European Union, as your bench is set",
          ]),
      ...(inputs.from_table ? ["the recipe of the answer before"] : []),
    ]),
    items,
    cautions: [
      ...shellsLeftOut(brings.sure, inputs),
      allergenCaution,
      ...(open.length ? ["The label isn't complete while something on it isn't known."] : []),
      sellingCaution,
    ],
    working: inOrder(ingredients, market).map(({ name, grams }) => `${name} ${grams} g`),
    leaves: { recipe: ingredients.map(({ name, grams }) => ({ name, grams })), label: { ...inputs } },
  };
  if (!inputs.as_pdf) return outcome;
  return printed(
    outcome,
    {
      ingredients,
      contains,
      isOpen: brings.unsure.length > 0,
      net,
      dates,
      market,
      by: inputs.by,
      title: inputs.title,
      blanks,
      checks: open,
    },
    inputs,
    world,
  );
}
