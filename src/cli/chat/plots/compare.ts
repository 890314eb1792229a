/** Two batches side by side: what was done, what came of it, and by how much it changed. */
import type { Answer, Item } from "../../../tools/contract/index.ts";
import { plain, weight } from "../../../tools/lib/show.ts";
import { inAscii } from "../../ascii.ts";
import { factText } from "../items.ts";
import { shortDay } from "../moments.ts";
import { ascii, type Signs } from "../signs.ts";
import { padded, printable, shortened, width } from "../text.ts";
import { leastPlot } from "./bars.ts";
import { sharedFlavor } from "./ratings.ts";

const indent = "  ";
/** From here on, the change has a column. */
const roomForChange = 38;
const rows: readonly { key: string; name: string; unit?: string }[] = [
  { key: "rating", name: "rating" },
  { key: "macarons", name: "macarons" },
  { key: "shells", name: "shells" },
  { key: "trays", name: "trays" },
  { key: "diameter_mm", name: "size", unit: " mm" },
  { key: "oven_c", name: "oven", unit: " °C" },
  { key: "bake_min", name: "bake", unit: " min" },
  { key: "rest_min", name: "rest", unit: " min" },
  { key: "mature_h", name: "mature", unit: " h" },
  { key: "batter_g", name: "batter", unit: " g" },
  { key: "filling_g", name: "filling", unit: " g" },
  { key: "doses", name: "dose" },
  { key: "problems", name: "faults" },
];

const inOrder = (one: string, other: string): number => (one === other ? 0 : one > other ? 1 : -1);

/** A table of two batches of one flavor, the later one first; none for any other list. */
export function comparison({ tool, items = [] }: Answer, columns: number, signs: Signs): string[] {
  if (tool !== "recall" || items.length !== 2 || columns < leastPlot) return [];
  // written as years, months and days, they are in the order of their letters
  const [late, early] = [...items].sort((a, b) => inOrder(String(b.date), String(a.date)));
  if (!late || !early) return [];
  if (!sharedFlavor(items) || typeof late.date !== "string" || typeof early.date !== "string") return [];
  const days = [shortDay(late.date), shortDay(early.date)];
  const table = rows.flatMap(({ key, name, unit = "" }) => {
    const [now, before] = [late[key], early[key]];
    if (isNothing(now) && isNothing(before)) return [];
    return [[name, cellOf(key, now, unit), cellOf(key, before, unit), changeOf(now, before, unit)]];
  });
  if (table.length === 0) return [];
  const title = days[0] === days[1] ? ["", "later", "earlier", ""] : ["", ...days, ""];
  // before it is aligned: some signs take more room in ASCII, some less
  const cells = [title, ...table].map((row) => (signs === ascii ? row.map(inAscii) : row));
  return aligned(cells, columns, signs);
}

const isNothing = (value: Item[string]) =>
  value === undefined || (Array.isArray(value) && value.length === 0);

/** What isn't noted is left open; a fault that isn't noted was none. */
function cellOf(key: string, value: Item[string], unit: string): string {
  if (key === "problems" && isNothing(value)) return "none";
  if (value === undefined || isNothing(value)) return "-";
  if (typeof value === "number") return `${unit === " g" ? weight(value) : plain(value, 1)}${unit}`;
  return printable(factText(key, value));
}

function changeOf(now: Item[string], before: Item[string], unit: string): string {
  if (typeof now !== "number" || typeof before !== "number") return "";
  const change = now - before;
  if (Math.abs(change) < 0.05) return "same";
  return `${change > 0 ? "+" : "-"}${plain(Math.abs(change), 1)}${unit}`;
}

/** Columns of the table; a long one is shortened, and where there is no room the change goes. */
function aligned(table: readonly string[][], columns: number, signs: Signs): string[] {
  const count = columns >= roomForChange ? 4 : 3;
  const most = Math.floor((columns - indent.length - 10) / (count - 1)) - 2;
  const sizes = [0, 1, 2, 3].map((at) =>
    Math.min(at === 0 ? 10 : most, Math.max(...table.map((row) => width(row[at] ?? "")))),
  );
  return table.map((row) =>
    (
      indent +
      row
        .slice(0, count)
        .map((cell, at) => padded(shortened(cell, sizes[at] ?? 0, signs.gap), sizes[at] ?? 0))
        .join("  ")
    ).trimEnd(),
  );
}
