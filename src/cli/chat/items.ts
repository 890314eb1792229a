/** Lists of an answer: one row an item, its short facts aligned, what the baker wrote at length below. */
import type { Item } from "../../tools/contract/index.ts";
import { lengthText } from "../../tools/lib/days.ts";
import { plain, weight } from "../../tools/lib/show.ts";
import { dayOf, timeOf } from "./moments.ts";
import { padded, printable, width } from "./text.ts";
import { wrapped } from "./wrap.ts";

const indent = "  ";
const deeper = "    ";
/** From here on a text is a sentence and not a fact for a column. */
const longFact = 32;
const moment = /^\d{4}-\d\d-\d\dT\d\d:\d\d/;

interface Row {
  facts: Map<string, string>;
  texts: string[];
}

/** The lines of a plain list; aligned where all rows fit, else each item wrapped by itself. */
export function itemLines(items: readonly Item[], columns: number): string[] {
  const rows = items.map(rowOf);
  const names = [...new Set(rows.flatMap((row) => [...row.facts.keys()]))];
  const sizes = names.map((name) => Math.max(...rows.map((row) => width(row.facts.get(name) ?? ""))));
  const aligned = rows.map((row) =>
    (
      indent + names.map((name, at) => padded(row.facts.get(name) ?? "", sizes[at] ?? 0)).join("  ")
    ).trimEnd(),
  );
  const fits = aligned.every((line) => width(line) <= columns);
  return rows.flatMap((row, at) => [
    ...(row.facts.size === 0
      ? []
      : fits
        ? [aligned[at] ?? ""]
        : wrapped([...row.facts.values()].join(", "), columns, { first: indent, rest: deeper })),
    ...row.texts.flatMap((text) =>
      wrapped(
        text,
        columns,
        row.facts.size ? { first: deeper, rest: deeper } : { first: indent, rest: deeper },
      ),
    ),
  ]);
}

function rowOf(item: Item): Row {
  const row: Row = { facts: new Map(), texts: [] };
  for (const [name, value] of Object.entries(item)) {
    // the words of a rating say more than its number
    if (value === undefined || name === "id" || (name === "rating" && item.rating_said)) continue;
    const text = printable(factText(name, value));
    if (text === "") continue;
    if (name === "text" || width(text) > longFact) row.texts.push(text);
    else row.facts.set(name, text);
  }
  return row;
}

/** A fact that is clear without a heading: numbers carry their name. */
export function factText(name: string, value: string | number | boolean | string[]): string {
  if (Array.isArray(value)) return value.join(", ");
  if (typeof value === "boolean") return value ? name : `not ${name}`;
  if (typeof value === "string") return moment.test(value) ? `${dayOf(value)} ${timeOf(value)}` : value;
  if (name === "grams") return `${weight(value)} g`;
  // as the sentence above it has it
  if (name === "left") return `${lengthText(value)} left`;
  if (name === "order") return `${value}.`;
  const [, plainName = name, unit = ""] = /^(.*)_(g|mm|min|h|c|percent)$/.exec(name) ?? [];
  return `${plainName.replaceAll("_", " ")} ${plain(value)}${unit ? ` ${unitSigns[unit] ?? unit}` : ""}`;
}

/** Units in a fact's name, as they are written: "oven_c" is "oven 148 °C". */
const unitSigns: Readonly<Record<string, string>> = { c: "°C", percent: "%" };
