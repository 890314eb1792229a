/** What a paste of several lines is: turns, one a line, and lists of ingredients, each heard as one. */

export interface Pasted {
  /** Turns that were ended, in order. A recipe is one, its line ends kept. */
  turns: string[];
  /** What was begun and not ended: it waits in the line. */
  rest: string;
}

/** "130 g almond flour", "- almond flour: 130g", "2 egg whites", "1/2 tsp salt", "a pinch of salt". */
const ingredient =
  /^\s*(?:[-*•]\s*)?(?:(?:\d+(?:[.,/]\d+)?|[¼½¾⅓⅔])\s*(?:[-–]\s*\d+(?:[.,]\d+)?\s*)?\S+|(?:a )?pinch\b|.*[:,\s]\d+(?:[.,]\d+)?\s*(?:g|kg|oz|lb|ml|grams?)\.?\s*$)/i;
/** What asks or orders something is a turn, even where it begins with a weight. */
const turn =
  /\?\s*$|\b(?:how|hw|what|whats|which|when|why|timer|in (?:grams|cups|ounces|oz|g)|(?:in|into) (?:the |my |a )?\d\S*|for \d+|to \S+)\b|^\W*\d+(?:[.,]\d+)?\s*(?:s|secs?|seconds?|min|mins|minutes?|h|hrs?|hours?|°|[cf]\b|degrees|macs?|macarons?|shells?|trays?|box(?:es)?)\b/i;
const heading = /\b(?:recipe|formula)\b|:\s*$/i;
const asks =
  /^\W*(?:(?:and|so|ok|please|pls|hey)[ ,]+)*(?:how|hw|what|whats|what's|which|can|could|is|are|will|would|does)\b/i;

const isIngredient = (line: string) => ingredient.test(line) && !turn.test(line);
const isBlank = (line: string) => line.trim() === "";

/**
 * Cuts pasted text at its line ends, after what stood in the line before it. Ingredients below one another are a list,
 * which is one turn, so that no line of it is taken for a question: a recipe where there are three of them, or two under
 * a heading. A question right above a list is asked behind it. Blank lines are nothing.
 */
export function pasted(before: string, text: string): Pasted {
  const rows = (before + text).split("\n");
  const open = rows.length - 1;
  const turns: string[] = [];
  let rest = "";
  for (let at = 0; at < rows.length; ) {
    const row = rows[at] ?? "";
    const own = isIngredient(row);
    const list = listFrom(rows, own ? at : at + 1);
    const isHeaded = !own && !isBlank(row) && heading.test(row) && list.rows.length >= 2;
    // two weights aren't a recipe yet: what of them isn't ended waits
    if (own && list.rows.length === 2 && list.end > open) rest = asList(list.rows);
    else if (own && list.rows.length >= 2) turns.push(asList(list.rows));
    else if (isHeaded && asks.test(row)) turns.push(asList(list.rows), row.replace(/\s*:\s*$/, ""));
    else if (isHeaded) turns.push([order(row), ...list.rows].join("\n"));
    else {
      if (at === open) rest = row;
      else if (!isBlank(row)) turns.push(row);
      at += 1;
      continue;
    }
    at = list.end;
  }
  return { turns, rest };
}

/** The ingredients from a row on, blank lines between them left out, and the row behind the last one. */
function listFrom(rows: readonly string[], from: number): { rows: string[]; end: number } {
  const found: string[] = [];
  let end = from;
  for (let at = from; at < rows.length; at++) {
    const row = rows[at] ?? "";
    if (isBlank(row)) continue;
    if (!isIngredient(row)) break;
    found.push(row);
    end = at + 1;
  }
  return { rows: found, end };
}

/** Two weights alone may be a ganache as well as a bowl: they are heard as they would be in one line. */
const asList = (rows: readonly string[]): string =>
  rows.length > 2 ? ["save recipe:", ...rows].join("\n") : rows.map((row) => row.trim()).join("; ");

/** "Snowy shells:" as the order to save it under that name; what is an order already stays as it is. */
function order(title: string): string {
  if (/^\W*(?:(?:please|save|remember|new|my|the|a) )*(?:recipe|formula)\b/i.test(title)) return title;
  const name = title.replace(/\b(?:recipe|formula)\b/gi, " ").replace(/[^\p{L}\p{N}'’ -]+/gu, " ");
  return `save recipe ${name.replace(/\s+/g, " ").trim()}:`;
}
