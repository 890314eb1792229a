/** Names of the baker's own recipes in a sentence, so that cues can see them: "show me <formula>". */
import type { Reading, Thing } from "../tools/contract/index.ts";
import { type Piece, pieces } from "../tools/lib/pieces.ts";
import { wordsOf } from "./found/lexicon.ts";

/** Beside these a name that the word tables know too ("mint buttercream") is what it says, not a recipe. */
const ofBowls =
  /(?:^| )(?:note|notes|log|batch\S*|timer|(?:how|hw) (?:much|many))(?: |$)|<(?:[^>\s]*,)?dose=/;

/**
 * The reading with each saved recipe's name as one thing, `formula` set. A name made of known words only is left as
 * those words where the sentence is about a bowl of it: a dose, a note, an amount before it.
 */
export function withNames(reading: Reading, formulas: readonly string[]): Reading {
  if (formulas.length === 0) return reading;
  const spelt = formulas
    .map((name) => ({ name, words: wordsOf(name).join(" ") }))
    .sort((a, b) => b.words.length - a.words.length);
  let list = pieces(reading);
  const tags = reading.mask.split(" ").filter(Boolean);
  let masks = tags;
  for (const { name, words } of spelt) {
    const run = find(list, words);
    if (!run) continue;
    const [from, to] = run;
    const known = list.slice(from, to).every((each) => each.thing);
    const around = [...masks.slice(0, from), ...masks.slice(to)].join(" ");
    if (words === "" || (known && (ofBowls.test(around) || isWeight(list[from - 1])))) continue;
    const taken = list.slice(from, to).flatMap((each) => each.thing ?? []);
    const at = spanOf(list.slice(from, to), reading, words);
    const thing: Thing = { id: name, formula: name, text: words, at };
    const slug = words.replaceAll(" ", "_");
    list = [...list.slice(0, from), { text: words, thing }, ...list.slice(to)].map((each) =>
      freed(each, taken),
    );
    masks = [
      ...masks.slice(0, from),
      `${slug}<formula=${name.replaceAll(/[\s<>=,]+/g, "_")}>`,
      ...masks.slice(to),
    ];
  }
  return masks === tags ? reading : { ...reading, mask: masks.join(" "), ...finds(list) };
}

/** "200 g honey filling" is that much of it; "half of honey filling" is of the recipe. */
const isWeight = (piece: Piece | undefined): boolean =>
  piece?.amount !== undefined && !piece.amount.fraction && piece.amount.unit !== "times";

/** The pieces whose words make the name, without a number among them. */
function find(list: readonly Piece[], words: string): [from: number, to: number] | undefined {
  for (let from = 0; from < list.length; from++) {
    let text = "";
    for (let to = from; to < list.length && text.length < words.length; to++) {
      if (list[to]?.thing?.formula) break;
      text += `${text ? " " : ""}${list[to]?.text}`;
      if (text === words) return [from, to + 1];
    }
  }
  return undefined;
}

/** A weight that was thought to be of a word inside the name is of nothing yet. */
const freed = (piece: Piece, taken: readonly Thing[]): Piece =>
  piece.amount?.of && piece.amount.dim !== "number" && taken.includes(piece.amount.of)
    ? { ...piece, amount: { ...piece.amount, of: undefined } }
    : piece;

function spanOf(some: readonly Piece[], reading: Reading, words: string): Thing["at"] {
  const at = some.find((each) => each.thing)?.thing?.at[0] ?? reading.text.indexOf(words);
  const start = reading.text.lastIndexOf(words.split(" ")[0] ?? "", Math.max(0, at));
  return [Math.max(0, start), Math.max(0, start) + words.length];
}

const finds = (list: readonly Piece[]): Pick<Reading, "amounts" | "things" | "whens"> => ({
  amounts: list.flatMap((each) => each.amount ?? []),
  things: list.flatMap((each) => each.thing ?? []),
  whens: list.flatMap((each) => each.when ?? []),
});
