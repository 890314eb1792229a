/** The lines of a recipe in a text: one a row, or several in one sentence with commas between. Pure. */
import { takesBack, takingBack } from "../../../data/words/openers.ts";
import { unweighable } from "../../../data/words/recipe-words.ts";
import type { IngredientLine, RecipeRead } from "../../tools/contract/index.ts";
import { spanOf } from "../found/items.ts";
import type { Item } from "../found/scan.ts";
import { itemsOf, type Reader } from "../read.ts";
import { normalise } from "../text/normalise.ts";
import { cleanLine } from "./clean-line.ts";
import { ingredientLine } from "./ingredient-line.ts";

/** Rows end at a line break or a semicolon. */
const rowEnds = /[\r\n;]+/;
const spelt = "one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve";
/** Where one line may end and the next begin, outside brackets and numbers. */
const joint = new RegExp(
  `,(?!\\d)|(?<!\\d),|(?<!hundred |thousand )\\b(?:and|plus)\\s+(?=(?:a )?pinch|\\d+(?!\\s*/)|(?:${spelt})\\b)|&`,
  "g",
);

/** Reads a text as a recipe. What can't be read is kept by its own words. Linear in the text but for each row's read. */
export function recipeLines(text: string, reader: Reader): RecipeRead {
  return collected(
    text
      .split(rowEnds)
      .filter((row) => /\S/.test(row))
      .flatMap((row) => linesIn(row, reader)),
  );
}

/** Every line of one row, in order. */
export function linesIn(row: string, reader: Reader): IngredientLine[] {
  return meant(pieces(row, reader)).map((piece) => ingredientLine(piece, reader));
}

const takenBack = new RegExp(`^\\s*${takesBack}`, "i");
/** "120, no hang on": the words that take it back were left with it. */
const takenBackBehind = new RegExp(`,\\s*(?:(?:${takingBack})[ ,]*)+$`, "i");

/** "2 eggs, no wait 3 eggs", "120, no hang on, 140 g sugar": the line said last, and not the one before it. */
function meant(said: readonly string[]): string[] {
  const out: string[] = [];
  for (const piece of said) {
    if (takenBackBehind.test(piece)) continue;
    const rest = `${piece} `.replace(takenBack, "").trim();
    if (rest === piece.trim()) out.push(piece);
    else {
      out.pop();
      if (rest) out.push(rest);
    }
  }
  return out;
}

/** One line an ingredient; amounts of the same add up, as "90 g sugar" for the shells and 10 g for the top do. */
export function collected(lines: readonly IngredientLine[]): RecipeRead {
  const out: RecipeRead = { lines: [], unread: [], unweighed: [], taken: [], doubts: [] };
  for (const line of lines) {
    if (line.is === "unread") out.unread.push(line.said.trim());
    if (line.is === "unweighed") out.unweighed.push(line.said.trim());
    out.taken.push(...(line.taken ?? []).filter((each) => !out.taken.includes(each)));
    out.doubts.push(...(line.doubts ?? []));
    if (line.is !== "weighed" || line.name === undefined || line.grams === undefined) continue;
    const { name, grams } = line;
    const ends = line.low_g !== undefined ? { low_g: line.low_g, high_g: line.high_g ?? grams } : {};
    const at = out.lines.findIndex((each) => each.name === name);
    const before = out.lines[at];
    if (!before) out.lines.push({ name, grams, ...ends });
    else
      out.lines[at] = {
        name,
        grams: before.grams + grams,
        ...(before.low_g !== undefined || line.low_g !== undefined
          ? {
              low_g: (before.low_g ?? before.grams) + (line.low_g ?? grams),
              high_g: (before.high_g ?? before.grams) + (line.high_g ?? grams),
            }
          : {}),
      };
  }
  return out;
}

const isAmount = (item: Item) =>
  item.is === "amount" &&
  (["weight", "volume"].includes(item.amount.dim) ||
    (item.amount.dim === "number" && item.amount.unit === ""));
const isIngredient = (item: Item) =>
  item.is === "thing" && Boolean(item.thing.ingredient || item.thing.chocolate);
const hasWords = (text: string) => /[a-z]{3}/.test(text.replace(/\b(?:and|plus|grams?|each)\b/g, ""));

/** A row cut into its lines; a row that holds one amount is one line, whatever commas it has. */
function pieces(row: string, reader: Reader): string[] {
  const parts = cut(row);
  const seen = parts.map((part) => {
    const { items } = itemsOf(cleanLine(part), reader);
    const amount = items.some(isAmount) || unweighable.test(normalise(part).replace(/\bfor .*$/, ""));
    const words = hasWords(
      items
        .map((item) =>
          item.is === "amount"
            ? ""
            : item.is === "thing"
              ? item.thing.text
              : item.is === "word"
                ? item.text
                : "",
        )
        .join(" "),
    );
    return {
      part,
      amount,
      words,
      ingredient: items.some(isIngredient),
      share: items.some((item) => item.is === "amount" && item.amount.dim === "percent"),
    };
  });
  if (seen.filter((each) => each.amount).length <= 1)
    return ofRun(
      eachOf(
        row,
        seen.map((each) => each.part),
        reader,
      ),
      reader,
    );
  const out: string[] = [];
  let open: string | undefined; // a name that waits for its amount
  for (const { part, amount, words, ingredient, share } of seen) {
    if (amount && !words && open !== undefined) {
      out.push(`${open}, ${part.trim()}`);
      open = undefined;
    } else if (amount) {
      if (open !== undefined) out.push(open);
      open = undefined;
      if (!words || out.length === 0 || hasWords(out.at(-1) ?? "")) out.push(part.trim());
      else out.push(`${out.pop()} ${part.trim()}`);
    } else if (ingredient && !share) {
      if (open !== undefined) out.push(open);
      open = part.trim();
    } else if (open !== undefined) open = `${open}, ${part.trim()}`;
    else if (out.length > 0) out.push(`${out.pop()}, ${part.trim()}`);
    else open = part.trim();
  }
  if (open !== undefined) out.push(open);
  return out.flatMap((piece) => ofRun([piece], reader));
}

/** At the joints that stand outside brackets. */
function cut(row: string): string[] {
  const out: string[] = [];
  let from = 0;
  for (const match of row.matchAll(joint)) {
    const before = row.slice(0, match.index);
    const inside = (before.match(/[([]/g) ?? []).length > (before.match(/[)\]]/g) ?? []).length;
    if (inside) continue;
    out.push(row.slice(from, match.index));
    from = match.index + match[0].length;
  }
  return [...out, row.slice(from)].filter((part) => /\S/.test(part));
}

/** "whites and sugar, 100 g each": the amount belongs to every name. */
function eachOf(row: string, parts: readonly string[], reader: Reader): string[] {
  const text = cleanLine(row);
  const each = /^(.*?)[,:]? +(\S+ ?[a-z]+) (?:each|of each)$/.exec(text) ?? undefined;
  const ahead = /^(\S+ ?[a-z]+) (?:each|each of|each:)(?: of)? (.*)$/.exec(text) ?? undefined;
  const [names, amount] = each ? [each[1], each[2]] : ahead ? [ahead[2], ahead[1]] : [];
  if (!names || !amount || !itemsOf(amount, reader).items.some(isAmount))
    return parts.length > 0 ? [row] : [];
  return names.split(/,| and | & /).flatMap((name) => (/\S/.test(name) ? [`${amount} ${name.trim()}`] : []));
}

/** "100 g whites 130 g almond flour": amounts and names in turn, cut before each amount, or behind it. */
function ofRun(some: readonly string[], reader: Reader): string[] {
  return some.flatMap((piece) => {
    const { text, items } = itemsOf(cleanLine(piece.replace(/[([][^)\]]*[)\]]/g, " ")), reader);
    const parts = items.filter((item) => isAmount(item) || isIngredient(item));
    const names = parts.filter(isIngredient);
    if (names.length < 2 || parts.length !== names.length * 2) return [piece];
    const first = parts[0] as Item;
    if (!parts.every((item, at) => isAmount(item) === (at % 2 === 0 ? isAmount(first) : !isAmount(first))))
      return [piece];
    const starts = parts.filter((_, at) => at % 2 === 0).map((item) => spanOf(item)[0]);
    return starts.map((start, at) =>
      text
        .slice(at === 0 ? 0 : start, starts[at + 1])
        .replace(/\b(?:and|plus)\s*$/, "")
        .trim(),
    );
  });
}
