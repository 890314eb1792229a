/** Plain tables for the terminal: the first column to the left, the others to the right. */
export function table(head: readonly string[], rows: readonly (readonly (string | number)[])[]): string {
  const all = [head, ...rows].map((row) => row.map(String));
  const widths = head.map((_, at) => Math.max(...all.map((row) => row[at]?.length ?? 0)));
  return all
    .map((row) =>
      row
        .map((cell, at) => (at === 0 ? cell.padEnd(widths[at] ?? 0) : cell.padStart(widths[at] ?? 0)))
        .join("  ")
        .trimEnd(),
    )
    .join("\n");
}

export const percent = (part: number, whole: number): string =>
  whole === 0 ? "" : ((100 * part) / whole).toFixed(1);
