/** How the batches of a flavor were rated, one bar a batch, the oldest first. */
import type { Answer, Item } from "../../../tools/contract/index.ts";
import { plain } from "../../../tools/lib/show.ts";
import { shortDay } from "../moments.ts";
import type { Signs } from "../signs.ts";
import { padded, printable, width } from "../text.ts";
import { leastPlot } from "./bars.ts";

const indent = "  ";
/** Ratings are out of ten. */
const full = 10;
/** So many batches are drawn, the latest; the list has them all. */
const most = 12;

/** A bar for each rated batch of a list that is about one flavor; none for fewer than three, or all rated alike. */
export function ratingsPlot({ tool, items = [] }: Answer, columns: number, signs: Signs): string[] {
  if (tool !== "recall" || columns < leastPlot || !sharedFlavor(items)) return [];
  const rated = items.flatMap(({ date, rating }) =>
    typeof date === "string" && typeof rating === "number" ? [{ date, rating }] : [],
  );
  if (rated.length < 3 || rated.every((each) => each.rating === rated[0]?.rating)) return [];
  const shown = rated.slice(0, most).reverse();
  const days = shown.map(({ date }) => printable(shortDay(date)));
  const size = Math.max(...days.map(width));
  return shown.map(({ rating }, at) => {
    const cells = Math.max(0, Math.min(full, Math.round(rating)));
    const bar = signs.full.repeat(cells) + signs.empty.repeat(full - cells);
    return `${indent}${padded(days[at] ?? "", size)}  ${bar}  ${plain(rating)}`;
  });
}

/** The flavor that every one of the notes has. */
export function sharedFlavor(items: readonly Item[]): string | undefined {
  const [first, ...rest] = items.map(({ flavors }) => (Array.isArray(flavors) ? flavors : []));
  return first?.find((flavor) => rest.every((flavors) => flavors.includes(flavor)));
}
