/** A table in markdown. Cells are plain text. */
export function table(head: readonly string[], rows: readonly (readonly string[])[]): string[] {
  const line = (cells: readonly string[]) => `| ${cells.map(plain).join(" | ")} |`;
  return [line(head), line(head.map(() => "---")), ...rows.map(line)];
}

/** What markdown would read as more than text is kept from it. */
const plain = (text: string) => text.replace(/\s+/g, " ").replace(/[|<*_]/g, "\\$&");
