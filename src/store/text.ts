/** The record as text: JSON with an entry a line, so that it can be read by eye and saved entry by entry. */

export function textOf(record: object): string {
  const parts = Object.entries(record).map(([name, part]) => `${JSON.stringify(name)}: ${partText(part)}`);
  return `{\n${parts.join(",\n")}\n}\n`;
}

function partText(part: unknown): string {
  if (!Array.isArray(part) || part.length === 0) return JSON.stringify(part);
  return `[\n${part.map((entry) => JSON.stringify(entry)).join(",\n")}\n]`;
}
