/** Where the cursor has got to in a window that was made narrower: most terminals break what stands in it anew. */
import { width } from "./text.ts";

/** What was drawn last, and where in it the cursor was left. */
export interface Drawn {
  lines: readonly { text: string }[];
  cursor: { x: number; y: number };
}

/**
 * How many rows the cursor is below the first line of what was drawn. Lines above the cursor's are taken to be broken at
 * the new width. Of the cursor's own line terminals differ: some leave it alone, so where they say the cursor is decides.
 * @param column where the terminal says that the cursor is now, from 0; undefined where it doesn't say
 */
export function rowsAbove({ lines, cursor }: Drawn, columns: number, column: number | undefined): number {
  const rows = (text: string) => Math.max(1, Math.ceil(width(text) / columns));
  const above = lines.slice(0, cursor.y).reduce((sum, { text }) => sum + rows(text), 0);
  const broken = Math.floor(cursor.x / columns);
  // rather a row too few: what is above is finished, and isn't drawn again
  return above + (column === cursor.x % columns ? broken : 0);
}

/** Takes away what was drawn, and leaves empty rows in its place with the cursor where it was among them. */
export function wiped(drawn: Drawn, columns: number, column: number | undefined): string {
  const up = rowsAbove(drawn, columns, column);
  const below = drawn.lines.length - 1;
  const back = below - drawn.cursor.y;
  return [
    up > 0 ? `\u001b[${up}A` : "",
    "\r\u001b[J",
    "\n".repeat(below),
    back > 0 ? `\u001b[${back}A` : "",
    drawn.cursor.x > 0 ? `\u001b[${Math.min(drawn.cursor.x, columns - 1)}C` : "",
  ].join("");
}
