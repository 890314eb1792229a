/** Faults that a turn names, and which of them it denies: "did not split", "not one was hollow", "no cracks". */
import { praise } from "../../../../data/words/symptoms.ts";
import { textOf, wordOf } from "../../found/items.ts";
import type { Item } from "../../found/scan.ts";

export interface Fault {
  /** Where it stands among the items. */
  at: number;
  isDenied: boolean;
  /** Where the word that denies it stands. */
  from: number;
}

const denying = new Set(
  `not no never nor none neither without zero nothing didnt doesnt dont isnt arent wasnt werent hasnt havent hadnt wont cant
  wouldnt couldnt aint`
    .trim()
    .split(/\s+/),
);
/** Behind a "not" these make no denial of a fault: "not sure why they cracked", "not only hollow", "wont stop cracking". */
const turning = new Set(
  `sure know get understand see think want like only just again stop quit matter idea clue wonder surprised sift sifted
  enough why how mind they it my the i its we these theyre and but`
    .trim()
    .split(/\s+/),
);
const pronouns = new Set("they it my the i its we these theyre mine".split(" "));
const ends = new Set(
  "but and yet so because since though although then while just its theyre im ive thats".split(" "),
);
/** What may stand between "didnt" and the fault; any other verb is what is denied: "wont pipe, too stiff". */
const between = new Set(
  `get got getting go gone come came coming out turn turned look looking looks be been being even once ever all any
  anything or nor too very so really at a an one single bit the of this time today it they seem seems
  quite that as either both completely fully more have had has do does did once always usually`
    .trim()
    .split(/\s+/),
);
/** The same between "no" and the fault. */
const few = new Set("more single signs sign hint of real big small trace such proper visible".split(" "));
/** "none of the 48 shells cracked", "not one of them was hollow": of whatever is counted. */
const counting = new Set("one a any all".split(" "));
/** No subject, no telling: "dont split it". */
const farthest = 8;

export function faultsIn(items: readonly Item[]): Fault[] {
  return items.flatMap((item, at): Fault[] => {
    if (item.is !== "thing" || !item.thing.symptom || praise.includes(item.thing.symptom)) return [];
    // "wont come to stiff peaks": that there are none is the fault
    const next = items[at + 1];
    const isPeak = /peak/.test(`${item.thing.symptom} ${next ? textOf(next) : ""}`);
    // "isnt stiff enough": the other fault
    const isLack = next !== undefined && wordOf(next) === "enough";
    const from = isPeak || isLack ? undefined : deniedFrom(items, at);
    return [{ at, from: from ?? at, isDenied: from !== undefined || isTakenBack(items, at) }];
  });
}

/** Where the word stands that denies it, within its clause. */
function deniedFrom(items: readonly Item[], at: number): number | undefined {
  for (let place = at - 1; place >= Math.max(0, at - farthest); place--) {
    const item = items[place];
    const word = wordOf(item);
    if (item?.is === "sign" || ends.has(word)) return undefined;
    if (!denying.has(word)) continue;
    const next = plainWord(items[place + 1]);
    if (turning.has(next) && !(pronouns.has(next) && /^(?:none|not|neither)$/.test(word))) return undefined;
    if (/^(?:dont|not)$/.test(word) && isOrder(items, place)) return undefined;
    const isWide =
      /^(?:none|neither|without|nothing|zero)$/.test(word) || (word === "not" && counting.has(next));
    const allowed = word === "no" ? few : between;
    const isNear = items
      .slice(place + 1, at)
      .every((each) => (each.is === "thing" ? Boolean(each.thing.symptom) : allowed.has(plainWord(each))));
    return isWide || isNear ? place : undefined;
  }
  return undefined;
}

/** "one" of "not one cracked" was read as a number. */
const plainWord = (item: Item | undefined): string =>
  item?.is === "amount" && item.amount.text === "one" ? "one" : wordOf(item);

/** "dont split it", "please do not crack them": told to somebody. */
function isOrder(items: readonly Item[], at: number): boolean {
  const before = items[at - 1];
  if (wordOf(items[at]) === "not") return wordOf(before) === "do" && (at < 2 || items[at - 2]?.is === "sign");
  return (
    before === undefined ||
    before.is === "sign" ||
    /^(?:please|pls|and|but|so|ok|i|we|you)$/.test(wordOf(before))
  );
}

/** "i thought it would split but it didnt". */
function isTakenBack(items: readonly Item[], at: number): boolean {
  const said = items.slice(at + 1, at + 6).map((item) => wordOf(item) || ",");
  return /^(?:(?:on me|today|again|,) )*(?:but|and) (?:it|they|that|none|,) ?(?:didnt|hasnt|doesnt|wasnt|havent|dont|did not|has not)\b/.test(
    said.join(" "),
  );
}
