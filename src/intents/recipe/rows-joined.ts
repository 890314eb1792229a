/** A recipe of several rows in one turn: "recipe snowy shells:" and its lines below. Other turns stay as they are. */
export const rowsJoined = (line: string): string =>
  /^[^\r\n]*\b(?:recipe|formula)\b[^\r\n]*[\r\n]/i.test(line)
    ? line
        .trim()
        .replace(/:?\s*[\r\n]+/, ": ")
        .replace(/\s*[\r\n]+\s*/g, "; ")
    : line;
