/**
 * "half of it dark and half white. dark half first", "now the white half", behind a filling or a ganache that was weighed:
 * half of its grams of that chocolate, and never half of a half.
 */
import type { Reading } from "../../tools/contract/index.ts";
import { wordsWithout } from "./part-gets.ts";
import type { State } from "./state.ts";

const talk: ReadonlySet<string> = new Set(
  (
    "no not actually wait sorry ok okay so and then now well right but also please pls the a an of it that this all both each half halves " +
    "one other second first next with is are be will should want i id i'd we lets do make made chocolate choc ganache filling what goes in " +
    "into how much many cream whats does take need needed for to part bowl instead rather oh hm as get gets weigh out grams g just too"
  ).split(" "),
);
const kindsOf: ReadonlySet<string> = new Set(["dark", "milk", "white"]);

/** The chocolates that a half is said of, in their order, the one that is wanted first before them. */
function kindsSaid(words: readonly string[]): string[] {
  const named = words.filter((word) => kindsOf.has(word));
  const first = words.lastIndexOf("first");
  // "dark half first", "first the dark half", "the dark one first"
  const near =
    first < 0 ? [] : [...words.slice(0, first).reverse().slice(0, 3), ...words.slice(first + 1, first + 3)];
  const wanted = near.find((word) => kindsOf.has(word));
  return wanted && named.length > 1 ? [wanted] : [...new Set(named)];
}

/** What lies there is one half already: the other one weighs as much. */
const isHalved = ({ last, turn }: State): boolean =>
  last?.tool === "ganache" && /\bhal(?:f|ves)\b/.test(turn?.said ?? "");

/** What a half of it weighs, g. */
function halfOf(state: State): number | undefined {
  const { last, table } = state;
  const total = last?.tool === "ganache" ? (last.inputs.total_g ?? table.mass?.grams) : table.mass?.grams;
  if (typeof total !== "number") return undefined;
  return isHalved(state) ? total : total / 2;
}

/** "dark for half that chocolate": so much less of one part of it. */
const ofPart = /\bhalf (?:of )?(?:the |that |this |my |as much )?(?:chocolate|choc|cream)\b/;

/** Undefined where it isn't said so. Pure. */
export function halfOfKind({ text, amounts, things, said }: Reading, state: State): string | undefined {
  const { last, table } = state;
  const isMix =
    last?.tool === "ganache" ||
    (last?.tool === "fill" && /^(?:filling|ganache)$/.test(table.mass?.thing ?? ""));
  if (
    !isMix ||
    ofPart.test(text) ||
    !/\bhal(?:f|ves)\b/.test(text) ||
    things.some(({ dose, taste }) => dose ?? taste)
  )
    return undefined;
  const words = wordsWithout(text, []);
  if (!words.every((word) => talk.has(word) || kindsOf.has(word))) return undefined;
  const isHalves = amounts.every(({ dim, value }) => dim === "number" && [0.5, 1, 2].includes(value));
  const grams = halfOf(state);
  if (!isHalves || grams === undefined) return undefined;
  const [kind, other, ...more] = kindsSaid(words);
  // one kind for a half, and no word of the other: that leaves a rest to speak of
  if (!isHalved(state) && new Set(wordsWithout(said, []).filter((word) => kindsOf.has(word))).size < 2)
    return undefined;
  const use = last.tool === "ganache" && typeof last.inputs.use === "string" ? ` for ${last.inputs.use}` : "";
  if (!kind || more.length > 0 || !/\bhal/.test(said)) return undefined;
  const one = (name: string) => `${grams} g ${name} ganache`;
  return other
    ? `${one(kind)} and ${one(other)}${use}, what goes in each`
    : `${one(kind)}${use}, what goes in`;
}
