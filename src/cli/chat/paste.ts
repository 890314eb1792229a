/** What a paste of several lines is: turns, one a line, or one recipe. */

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
  /\?\s*$|\b(?:how|what|whats|which|when|why|timer|in (?:grams|cups|ounces|oz|g)|for \d+|to \S+)\b/i;
const heading = /\b(?:recipe|formula)\b|:\s*$/i;

const isIngredient = (line: string) => ingredient.test(line) && !turn.test(line);

/**
 * Cuts pasted text at its line ends, after what stood in the line before it. Where it is a heading with at least two
 * ingredients below it, or at least three ingredients, all of it is one turn, so that no line is taken for a question.
 */
export function pasted(before: string, text: string): Pasted {
  const rows = (before + text).split("\n");
  const full = rows.filter((row) => row.trim() !== "");
  const [first = "", ...others] = full;
  const headed = !isIngredient(first) && heading.test(first) && others.length >= 2;
  if (full.length >= 3 && (headed ? others : full).every(isIngredient))
    return {
      turns: [[headed ? order(first) : "save recipe:", ...(headed ? others : full)].join("\n")],
      rest: "",
    };
  return { turns: rows.slice(0, -1), rest: rows.at(-1) ?? "" };
}

/** "Snowy shells:" as the order to save it under that name; what is an order already stays as it is. */
function order(title: string): string {
  if (/^\W*(?:(?:please|save|remember|new|my|the|a) )*(?:recipe|formula)\b/i.test(title)) return title;
  const name = title.replace(/\b(?:recipe|formula)\b/gi, " ").replace(/[^\p{L}\p{N}'’ -]+/gu, " ");
  return `save recipe ${name.replace(/\s+/g, " ").trim()}:`;
}
