/**
 * An order to keep a recipe, in whatever words and order it is told: somewhere a list of ingredients with their weights,
 * around it a word of keeping, and what is left of the words is the name. "call this cloud shells: ...",
 * "..., please save that as cloud shells", "my cloud shells are ..., keep it".
 */
import { ingredients } from "../../../../data/words/ingredients.ts";
import type { Phrase } from "./phrase.ts";

const number = "\\d+(?:[.,/]\\d+)?";
const unit = "(?:g|gr|grams?|kg|oz|ounces?|ml)";
const joint = "(?: ?[,;+&] ?(?:and )?| and | (?=\\d))";

/** Three ingredients and more, each with its weight. */
function listOf(): RegExp {
  const things = ingredients
    .flatMap(({ words }) => words)
    .filter((word) => /^[a-z][a-z' -]+$/.test(word))
    .sort((a, b) => b.length - a.length)
    .join("|");
  const line = `(?:\\d+ (?:egg )?whites weighing ${number} ?${unit}|${number} ?${unit}?(?: of)? (?:${things})s?\\b(?! (?:shells?|flavou?r|ganache|buttercream))|(?:${things})s?:? ${number}(?: ?${unit}\\b)?)`;
  return new RegExp(`(?:^|(?<=[\\s:,.(-]))${line}(?:${joint}${line}){2,}(?![a-z\\d])`);
}

/** Made when it is first looked for: hardly a sentence is a recipe. */
let list: RegExp | undefined;
const listIn = (text: string) => {
  list ??= listOf();
  return list.exec(text);
};

const keeps =
  /\b(?:sav(?:e|ed|ing)|stor(?:e|ed|ing)|keep|kept|keeping|remember(?:ed)?|filed?|record(?:ed)?|put (?:by|away|down)|put (?:my|the|our|this)\b.*\b(?:away|by)|(?:write|written|jot|take|taken|get) down|hold on to|hang on to|call(?:ed)? (?:it|this|that|these|them)|name (?:it|this|that)|new recipe|(?:in|into|to|among|with) (?:my|the|our) (?:own )?recipes)\b/;
/** Told of something else than a recipe to be kept: stock, a note, a price, a question, a size. */
const isOther =
  /\b(?:pantry|stock|cupboards?|larder|shelf|fridge|notes?|bottle|prices?|costs?|labels?|how|what|when|which|why|where|timers?|have|ive|got|left|today|tonight|only|but|scale|double|halve|half|times|batch of|instead|enough|macarons|again|once more|anew|undo|forget|delete|change|correct|now|if|not|dont|don't)\b|[?$€£%\d]/;

const isStock =
  /\b(?:pantry|stock|cupboards?|larder|shelf|fridge|notes?|bottle|prices?|costs?|labels?|how|when|which|why|timers?|again|once more|anew|undo|forget|delete|change|correct)\b|[?$€£%\d]/;
const keepsAs =
  /\b(?:save|store|keep|remember|file|record) (?:it|this|that|these|them|those|the lot|the recipe|my recipe) (?:as|under) /;

/** Behind one of these stands the name. */
const called =
  /\b(?:as|under(?: the (?:name|title)(?: of)?)?|by the (?:name|title)(?: of)?|called|named|call(?:ed)? (?:it|this|that|these|them)|name (?:it|this|that)|(?:the |its |it's )?name (?:is|shall be|should be|will be)) (?!(?:a|my|the|one|an?other|new) (?:new |own )?(?:recipe|formula)\b)([a-z][a-z' -]*)/;
const filler = new Set(
  "please pls plz can could would will shall should might you i id i'd we like want wanna need let lets to be have save saved saving store stored storing keep kept keeping remember remembered file filed record recorded put this that it them these those my our the a an new own one recipe recipes formula formulas is are was goes go takes take uses use has contains for me us later here heres here's so ok okay and also with of made from list down away by write written jot taken get add added in into on up hold hang its it's thats that's called named call name under as hi hello thanks thank ta cheers down hand next time go going".split(
    " ",
  ),
);
const mostWords = 4;

/** The words that are neither an order nor talk, where they stand together. */
function restOf(text: string): string | undefined {
  const runs: string[][] = [[]];
  for (const word of text.replace(/\bgood (?:day|morning|evening)\b/g, " ").split(/\s+/)) {
    const bare = /[a-z]/.test(word) ? word.replace(/[^a-z'-]/g, "") : "";
    if (bare !== "" && !filler.has(bare)) runs.at(-1)?.push(bare);
    if ((bare === "" || filler.has(bare) || /[,.;:!-]$/.test(word)) && runs.at(-1)?.length) runs.push([]);
  }
  const [only, ...more] = runs.filter((run) => run.length > 0);
  return only && more.length === 0 && only.length <= mostWords ? only.join(" ") : undefined;
}

/** What a list is headed by. */
const title =
  /^(?:(?:so|ok|and|here|heres) )*(?:(?:my|our|the) )?((?!(?:my|our|the|a|have|got|for|scale|batch|recipe|new|save|label|cost)\b)(?:[a-z'-]+ ){1,3}?(?:shells|macarons|mix|batter))(?: recipe| formula)? ?[:=]$/;

const isTitled = /\b(?:shells|macarons|mix|batter)(?: recipe| formula)? ?[:=]/;

/** What is asked, ordered or reckoned with a list behind it; and what any list is called. */
const isNoName =
  /\b(?:for|in|of|out|with|to|these|those|this|todays?|today's|tonights?|tomorrows?|yesterdays?|needs?|weigh\w*|weights?|totals?|sums?|water|shopping|buy|check|split|grams|percent|ratio|dry|wet|whole|half|double|next|last|first|second|other|macarons?|macs|shells?|batter|almond|ingredients?|amounts?)\b/;
const isName = (said: string): boolean => {
  const front = said.replace(/ \S+$/, "");
  return !isOther.test(front) && !isNoName.test(front);
};

const trimmed = (name: string): string | undefined => {
  const said = restOf(name);
  return said && said.length > 2 ? said : undefined;
};

/** Nothing else than an order to keep, or a title before the list, makes a recipe of one. */
const mayBeKept = (text: string): boolean => keeps.test(text) || isTitled.test(text);

function named(text: string): string {
  const found = listIn(text);
  if (!found) return text;
  const before = text.slice(0, found.index).trim();
  const behind = text.slice(found.index + found[0].length).trim();
  const around = `${before} | ${behind}`;
  // "my garden shells: 110 g whites, ...", and no more: told to be kept
  const titled = /^[.!]?$/.test(behind) ? title.exec(before)?.[1] : undefined;
  if (titled && isName(titled)) return `save recipe ${titled}: ${found[0].trim()}`;
  // told with its name, it may be told of at length: "my sister's shells are what i make most, ..., save them under ..."
  const isOrdered = [before, behind].some((side) => keepsAs.test(side));
  if (!keeps.test(around) || (isOrdered ? isStock : isOther).test(around)) return text;
  const said = [behind, before].flatMap((side) => called.exec(side)?.[1] ?? []);
  const name = said.length > 0 ? said.map(trimmed).find(Boolean) : restOf(around);
  return name ? `save recipe ${name}: ${found[0].trim()}` : text;
}

export const listKept = (): readonly Phrase[] => [
  {
    marks: [
      "sav",
      "stor",
      "keep",
      "kept",
      "remember",
      "file",
      "record",
      "put ",
      "down",
      "hold",
      "call",
      "name",
      "recipe",
      ":",
      "=",
    ],
    only: mayBeKept,
    from: /^(?=(?:[^\d]*\d+){3}).*$/gs,
    to: named,
  },
];
