/** Finds the entries in a text that is no JSON any more: cut short, a bit flipped, a comma lost while editing. */

const headers =
  /(?<!\\)"(version|last_ids|saved_ms|sealed|bench|timers|notes|bottles|stock|formulas|plans|changes)"\s*:\s*([[{]|\d+)/g;

/**
 * A record as far as the text yields one, to be checked like any other: each list with those of its entries that are
 * JSON by themselves. Takes time in proportion to the text's length. The undo history is left out: with its last
 * entries missing it would take back the wrong change.
 */
export function salvageText(text: string): Record<string, unknown> {
  const found: Record<string, unknown> = {};
  const ends = closingBraces(text);
  // Objects inside of objects are read again each time that the outer one fails. A text made to do that ends here.
  let budget = 8 * text.length + 10_000;
  const parts = [...text.matchAll(headers)];
  for (const [n, part] of parts.entries()) {
    const [whole, name = "", opening = ""] = part;
    if ((name === "version" || name === "saved_ms") && /^\d/.test(opening)) found[name] ??= Number(opening);
    if (name === "changes" || (opening !== "[" && opening !== "{")) continue;
    const list: unknown[] = [];
    const until = parts[n + 1]?.index ?? text.length;
    let at = part.index + whole.length - (opening === "{" ? 1 : 0);
    for (at = text.indexOf("{", at); at >= 0 && at < until && budget > 0; at = text.indexOf("{", at)) {
      const end = ends.get(at);
      const value = end === undefined ? undefined : parsed(text.slice(at, end + 1));
      budget -= end === undefined ? 0 : end - at;
      if (value !== undefined) list.push(value);
      at = value !== undefined && end !== undefined ? end + 1 : at + 1;
    }
    if (opening === "[") found[name] ??= list;
    else if (list.length) found[name] ??= list[0];
  }
  return found;
}

/** For each opening brace the one that closes it. A string ends with its line at the latest, as JSON has it. */
function closingBraces(text: string): Map<number, number> {
  const ends = new Map<number, number>();
  const open: number[] = [];
  let inString = false;
  for (let at = 0; at < text.length; at++) {
    const letter = text[at];
    if (letter === "\n") inString = false;
    else if (inString && letter === "\\" && text[at + 1] !== "\n") at++;
    else if (letter === '"') inString = !inString;
    else if (!inString && letter === "{") open.push(at);
    else if (!inString && letter === "}") {
      const start = open.pop();
      if (start !== undefined) ends.set(start, at);
    }
  }
  return ends;
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
