/** Digits made of blocks, at any whole size. Our own: five rows, three cells wide, strokes one cell thick. */

const rows = 5;
const shapes: Readonly<Record<string, readonly string[]>> = {
  "0": ["###", "# #", "# #", "# #", "###"],
  "1": [" # ", "## ", " # ", " # ", "###"],
  "2": ["###", "  #", "###", "#  ", "###"],
  "3": ["###", "  #", " ##", "  #", "###"],
  "4": ["# #", "# #", "###", "  #", "  #"],
  "5": ["###", "#  ", "###", "  #", "###"],
  "6": ["###", "#  ", "###", "# #", "###"],
  "7": ["###", "  #", " # ", " # ", " # "],
  "8": ["###", "# #", "###", "# #", "###"],
  "9": ["###", "# #", "###", "  #", "###"],
  ":": [" ", "#", " ", "#", " "],
  h: ["#  ", "#  ", "###", "# #", "# #"],
};

/** How often a cell of a shape is repeated across and down. */
export interface DigitSize {
  across: number;
  down: number;
}

const shapesOf = (text: string) => [...text].map((letter) => shapes[letter] ?? shapes["0"] ?? []);

/** Cells of a text's shapes before they are made larger. */
const span = (text: string): number =>
  shapesOf(text).reduce((sum, shape) => sum + (shape[0]?.length ?? 0), 0) + Math.max(0, text.length - 1);

/**
 * The largest size at which the longest of the texts fits. A cell of a terminal is about twice as high as wide, so a
 * shape is stretched twice as far across, where there is room.
 */
export function largest(texts: readonly string[], columns: number, lines: number): DigitSize {
  const cells = Math.max(1, ...texts.map(span));
  const across = Math.max(1, Math.floor(columns / cells));
  const down = Math.max(1, Math.min(Math.floor(lines / rows), Math.ceil(across / 2)));
  return { across: Math.min(across, 2 * down + 1), down };
}

/** Digits, a colon and an "h" as lines of blocks. */
export function digitLines(text: string, { across, down }: DigitSize, block: string): string[] {
  const glyphs = shapesOf(text);
  return Array.from({ length: rows }, (_, row) =>
    glyphs
      .map((shape) =>
        [...(shape[row] ?? "")].map((cell) => (cell === "#" ? block : " ").repeat(across)).join(""),
      )
      .join(" ".repeat(across))
      .trimEnd(),
  ).flatMap((line) => Array.from({ length: down }, () => line));
}
