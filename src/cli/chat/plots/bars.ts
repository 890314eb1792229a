/** What the plots share: how wide one may be, and how a whole is cut into cells. */

/** Below this many columns a plot says nothing; the numbers in the text do. */
export const leastPlot = 32;
const widest = 48;

/** Cells for a bar beside `taken` cells of text, the indent among them. */
export const barCells = (columns: number, taken: number): number =>
  Math.max(8, Math.min(widest, columns - taken - 1));

/**
 * Cuts `cells` into whole numbers in proportion to `shares`: their sum is kept, and what isn't nothing has a cell where
 * there are enough. The largest remainders are rounded up.
 */
export function cut(shares: readonly number[], cells: number): number[] {
  const whole = shares.reduce((sum, share) => sum + share, 0);
  if (whole <= 0) return shares.map(() => 0);
  const exact = shares.map((share) => (share / whole) * cells);
  const parts = exact.map((each, at) => (shares[at] && each < 1 ? 1 : Math.floor(each)));
  const byRest = exact.map((each, at) => ({ at, rest: each - (parts[at] ?? 0) }));
  byRest.sort((a, b) => b.rest - a.rest);
  let left = cells - parts.reduce((sum, part) => sum + part, 0);
  for (const { at } of byRest) {
    if (left <= 0) break;
    parts[at] = (parts[at] ?? 0) + 1;
    left -= 1;
  }
  // a cell given to something tiny is taken from the largest
  for (; left < 0; left++) {
    const at = parts.indexOf(Math.max(...parts));
    parts[at] = (parts[at] ?? 0) - 1;
  }
  return parts;
}
