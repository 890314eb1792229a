/** Turns that say nothing but another thing, or how it was measured: "same question for honey", "but i sifted it". */
import { opening } from "../../../data/words/openers.ts";
import type { Reading, Thing } from "../contract/index.ts";
import type { ConvertInputs } from "./convert.ts";
import { mannerIn, siftingTold } from "./named.ts";
import { askingAgain } from "./words.ts";

const list = (words: string): ReadonlySet<string> => new Set(words.split(/\s+/));

const turnWords = list(
  `weight amount volume quantity measure and or but what whats about how if its it is for with the a of in to as same
  now then instead not no sorry actually make that so ok oh only use try say please pls them they were was i mean meant
  by both tho though when once after being been would be says said mine should have again well also too just question
  ? , . & number many spoon spoons spoonful spoonfuls cupful cupfuls`,
);

/** Words around how it was measured: "but i already sifted it", "its packed down". */
const mannerWords = list(
  `did do does done had has ive id always sift sifting sieve sieving measuring measured scooping first before beforehand
  already earlier way forgot mention wait hang on until till because since isnt wasnt arent didnt dont never havent
  hasnt without still were theyre there down my some from packet bag kind sort type stuff one put through ran pass passed used`,
);

/** "same question for", "can you do that for", "repeat it with": nothing of them asks for anything else. */
const sameFor = new RegExp(
  `^${opening}(?:(?:${askingAgain}) )*(?:(?:that|it|this|same|again|repeat|once more)(?: (?:again|[a-z]+))? (?:for|with|of|but|using|only) (?:for |with )?|same(?: [a-z]+)? (?:but|,) )`,
);

const isTurn = (mask: string, words: (word: string) => boolean): boolean =>
  mask.split(" ").every((word) => word === "" || /<[^>]*>$/.test(word) || words(word));

/** "icing suger": a sugar's name behind its kind is the same sugar, and no second thing. */
const sugarKind = /(?:^| )(?:powdered|granulated) sugar$|^(?:light |dark )?brown sugar$/;

/** The ingredients of a turn, each once. */
export const ingredientsOf = (things: readonly Thing[]): Thing[] => {
  const named = things.filter((each) => each.ingredient);
  return named.filter((each, at) => {
    const before = named[at - 1];
    const isTail =
      each.ingredient === "sugar" &&
      before !== undefined &&
      each.at[0] - before.at[1] <= 1 &&
      sugarKind.test(before.ingredient ?? "");
    return !isTail;
  });
};

/** Nothing but the new thing and words of turning to it: "what about honey", "same question for honey". */
export function turnsTo({ mask, text, things }: Reading): boolean {
  if (things.some((each) => each.base || each.count)) return false;
  // "white chocolate for this cream" is about both
  const named = ingredientsOf(things).length;
  if (named > 1 && !/\b(?:not|instead of)\b/.test(text)) return false;
  // "is it ok with sugar", "i have no sugar": nothing is turned into anything
  if (named > 0 && /^(?:and |so |but )*(?:is|are) (?:it|that|this|they) |\b(?:have|got) no\b/.test(text))
    return false;
  return isTurn(
    mask.replace(sameFor, "same ").replace(/(?:^| )as much of /, " of "),
    (word) => turnWords.has(word) || (named === 0 && mannerWords.has(word)),
  );
}

/** "oh wait the sugar was sifted", behind powdered sugar: the same one, by its short name. */
export function tellsOfIt(reading: Reading, before: Pick<ConvertInputs, "ingredient">): boolean {
  const [thing, ...others] = reading.things.filter((each) => each.ingredient);
  const short = thing?.text.replace(/^(?:the|my) /, "");
  return (
    others.length === 0 &&
    (short === undefined ? reading.amounts.length === 0 : (before.ingredient ?? "").endsWith(` ${short}`)) &&
    isTurn(reading.mask, (word) => turnWords.has(word) || mannerWords.has(word)) &&
    (mannerIn(reading, undefined) ?? siftingTold(reading)) !== undefined
  );
}

/** "and of honey and of butter": several things, for each of which it is asked. */
export function turnsToEach({ mask, things, amounts }: Reading): Thing[] {
  const named = ingredientsOf(things);
  const isPlain =
    amounts.length === 0 &&
    things.every((each) => each.ingredient && !each.base && !each.count) &&
    !/(?:^| )(?:not|instead|or|in|to|with|without)(?: |$)/.test(mask);
  return named.length > 1 && isPlain && isTurn(mask.replace(sameFor, "same "), (word) => turnWords.has(word))
    ? named
    : [];
}
