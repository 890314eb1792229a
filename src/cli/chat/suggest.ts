/** The likely end of the line being written: from what was asked before, then from examples that work. */

/** Fewer letters than this fit too much. */
const least = 3;

/**
 * What would follow `text`, "" for nothing. Lines asked before go first, the latest before older ones. A line with
 * other numbers is gone on with only where the rest has none: a number that she didn't say must not slip in.
 * @param history lines asked before, the oldest first
 * @param examples sentences that work
 */
export function likelyEnd(text: string, history: readonly string[], examples: readonly string[]): string {
  if (text.trim().length < least) return "";
  const lines = [...[...history].reverse(), ...examples];
  const same = lines.find((line) => line.length > text.length && startsAlike(line, text));
  if (same !== undefined) return same.slice(text.length);
  if (!/\d/.test(text)) return "";
  const shape = new RegExp(`^${escaped(text.trimEnd())}`, "i");
  for (const line of lines) {
    const [begun] = shape.exec(line) ?? [];
    const rest = begun === undefined ? "" : line.slice(begun.length);
    if (rest.trim() === "" || /\d/.test(rest)) continue;
    // "300" could go on as a number; a word that is whole is followed by a space
    return /\s$/.test(text) ? rest.trimStart() : rest;
  }
  return "";
}

const startsAlike = (line: string, text: string) =>
  line.slice(0, text.length).toLowerCase() === text.toLowerCase();

/** The text as a pattern in which any number stands for any other. */
const escaped = (text: string): string =>
  text
    .split(/(\d+(?:[.,]\d+)?)/)
    .map((piece, at) =>
      at % 2 === 1 ? "\\d+(?:[.,]\\d+)?" : piece.replace(/[^\p{L}\p{N}\s]/gu, "\\$&").replace(/\s+/g, "\\s+"),
    )
    .join("");
