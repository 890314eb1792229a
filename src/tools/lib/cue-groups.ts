/** Groups in a cue's pattern: where one closes, and what it may be. */

/** Where the bracket opened at `open` closes; the pattern's length when it doesn't. */
export function closing(pattern: string, open: number): number {
  let depth = 0;
  for (let at = open; at < pattern.length; at++) {
    if (pattern[at] === "(") depth += 1;
    if (pattern[at] === ")" && --depth === 0) return at;
  }
  return pattern.length;
}

/** The alternatives at the pattern's own level: "a|(b|c)" has two. */
export function alternatives(pattern: string): string[] {
  const parts = [""];
  let depth = 0;
  for (const letter of pattern) {
    if (letter === "(" || letter === "{") depth += 1;
    if (letter === ")" || letter === "}") depth -= 1;
    if (letter === "|" && depth === 0) parts.push("");
    else parts[parts.length - 1] += letter;
  }
  return parts;
}
