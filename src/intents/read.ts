/** From a sentence to its reading: every find with its span, and the mask that cues are matched against. */

import { symptoms } from "../../data/words/symptoms.ts";
import type { Amount, Beside, Reading, Thing } from "../tools/contract/index.ts";
import { withBareKinds } from "./found/bare-kinds.ts";
import { bind } from "./found/bind.ts";
import { spreadEach } from "./found/each.ts";
import { joinFlavors } from "./found/flavors.ts";
import { plainGrades } from "./found/grade.ts";
import type { Lexicon } from "./found/lexicon.ts";
import { type Item, scan } from "./found/scan.ts";
import { withBothBowls } from "./meant/both-bowls.ts";
import { bowlsEach } from "./meant/bowls-each.ts";
import { withChange } from "./meant/changed-by.ts";
import { withCountedEach } from "./meant/counted-each.ts";
import { withMeasuresAdded } from "./meant/measures-added.ts";
import { withPacks } from "./meant/packs.ts";
import { ratioTold } from "./meant/ratio-told.ts";
import { withoutRefused } from "./meant/refused.ts";
import { withServings } from "./meant/served.ts";
import { withSums } from "./meant/summed-up.ts";
import { withoutTakenBack } from "./meant/taken-back.ts";
import { withoutBowl } from "./meant/tare.ts";
import { withoutTooMuch } from "./meant/too-much.ts";
import { withUnsigned } from "./meant/unsigned.ts";
import { withWeighed } from "./meant/weighs-so.ts";
import { ownAmounts } from "./meant/whose/whose.ts";
import { withoutBeside, withoutShortForms } from "./text/beside/beside.ts";
import type { Mender } from "./text/mend.ts";
import { mendAll, mendText } from "./text/mended.ts";
import { withNamesWhole } from "./text/names-whole.ts";
import { folded, plain } from "./text/normalise.ts";
import { type Token, tokenise } from "./text/tokens.ts";

const faultOf = new Map<string, string | undefined>(symptoms.map((row) => [row.id, row.of]));

export interface Reader {
  lexicon: Lexicon;
  mender: Mender;
}

/**
 * The items of a sentence, flavors joined, amounts not yet bound; splitting a turn works on these.
 * @param isTurn it was said to us: then it may hold numbers that belong to something else
 * @param formulas names of recipes: a number in one of them is no amount
 */
export function itemsOf(
  said: string,
  reader: Reader,
  own?: ReadonlySet<string>,
  isTurn = false,
  formulas: readonly string[] = [],
): { text: string; items: Item[]; mended: Reading["mended"]; beside: readonly Beside[] } {
  const { mender } = reader;
  // typos first: turns of phrase are looked for in right words
  const typed = isTurn ? withoutShortForms(folded(said), own) : { text: folded(said), beside: [] };
  const right = mendText(typed.text, mender, own);
  const asked = isTurn ? withoutBeside(right.text, own) : { text: right.text, beside: [] };
  const put = plain(asked.text);
  const { tokens, mended } = mendAll(withNamesWhole(tokenise(put), formulas), mender, own);
  const found = joinedIn(tokens, reader);
  // what is somebody else's, lies unused or isn't so in truth is no part of what is asked
  const text =
    (isTurn ? (bowlsEach(found) ?? ratioTold(put, found) ?? ownAmounts(put, found)) : undefined) ?? put;
  const joined =
    text === put
      ? found
      : joinedIn(mendAll(withNamesWhole(tokenise(text), formulas), mender, own).tokens, reader);
  return {
    text,
    beside: [...typed.beside, ...asked.beside],
    items: withBothBowls(
      withServings(
        withWeighed(
          withUnsigned(
            withChange(
              withSums(
                withoutBowl(
                  withoutTooMuch(
                    withoutRefused(
                      withoutTakenBack(withPacks(spreadEach(withCountedEach(withMeasuresAdded(joined))))),
                    ),
                  ),
                ),
              ),
            ),
          ),
        ),
      ),
    ),
    mended: [...right.mended, ...mended.filter(({ either }) => !either)],
  };
}

/** What stands in the tokens, flavors joined. */
const joinedIn = (tokens: readonly Token[], { lexicon, mender }: Reader): Item[] =>
  joinFlavors(withBareKinds(plainGrades(plainVerbs(scan(tokens, lexicon)))), mender);

/** A reading of some items that belong to one question. */
export function readingOf(
  said: string,
  text: string,
  items: readonly Item[],
  mended: Reading["mended"],
  { mender }: Reader,
  beside: readonly Beside[] = [],
): Reading {
  bind(items);
  settleSymptoms(items);
  return {
    said,
    text,
    mask: items.map(maskOf).join(" "),
    amounts: items.flatMap((item) => (item.is === "amount" ? [item.amount] : [])),
    things: items.flatMap((item) => (item.is === "thing" ? [item.thing] : [])),
    whens: items.flatMap((item) => (item.is === "when" ? [item.when] : [])),
    unknown: items.flatMap((item) =>
      item.is === "word" && item.text.length > 2 && !mender.knows(item.text) ? [item.text] : [],
    ),
    mended: [...mended],
    ...(beside.length > 0 ? { beside } : {}),
  };
}

/** Verbs that are faults elsewhere: "split it in three", "I have cracked five egg whites", "just cracked one more". */
function plainVerbs(items: readonly Item[]): Item[] {
  return items.map((item, at) => {
    // "cool, ganache timer please": a word of agreement
    if (at === 0 && item.is === "thing" && item.thing.text === "cool" && isComma(items[1]))
      return { is: "word", text: "ok", at: item.thing.at };
    // "the date of the last batch": a day, and no fruit
    if (item.is === "thing" && item.thing.text === "date" && isDay(items[at - 1], items[at + 1]))
      return { is: "word", text: "date", at: item.thing.at };
    // "tastes too weak": what it does, and no flavor
    if (item.is === "thing" && /^tastes?$/.test(item.thing.text) && tastesSo(items[at + 1]))
      return { is: "word", text: item.thing.text, at: item.thing.at };
    if (
      item.is !== "thing" ||
      !item.thing.symptom ||
      !/^(?:split|splitting|cracked|broken?|separated?|spread)$/.test(item.thing.text)
    )
      return item;
    const [before, next] = [items[at - 1], items[at + 1]];
    // "whats the split": the proportions
    if (item.thing.text === "split" && before?.is === "word" && before.text === "the")
      return { is: "word", text: "split", at: item.thing.at };
    const acted =
      (before?.is === "thing" && /^(?:whites|egg)$/.test(before.thing.ingredient ?? "")) ||
      next?.is === "amount" ||
      (next?.is === "thing" && Boolean(next.thing.ingredient || next.thing.base)) ||
      (next?.is === "word" &&
        actedOn.has(next.text) &&
        !(before?.is === "word" && ["has", "just", "is", "had"].includes(before.text)));
    return acted ? { is: "word", text: item.thing.text, at: item.thing.at } : item;
  });
}

const isComma = (item: Item | undefined) => item?.is === "sign" && item.text === ",";

const isDay = (before: Item | undefined, next: Item | undefined) =>
  (next?.is === "word" && /^(?:of|for|is|was|did)$/.test(next.text)) ||
  (before?.is === "word" && /^(?:what|which|whats|best|use|the|by|sell|due)$/.test(before.text));

const tastesSo = (next: Item | undefined) =>
  next?.is === "word" &&
  /^(?:too|very|so|really|quite|pretty|like|of|weak|strong|flat|bland|good|great|nice|fine|lovely|awful|amazing)$/.test(
    next.text,
  );

const actedOn = new Set(
  "it this that them my the into in between up even equal equally evenly one another some a out over".split(
    " ",
  ),
);

const isChocolateAndCream = (items: readonly Item[]): boolean =>
  [/chocolate$/, /^cream$/].every((part) =>
    items.some((item) => item.is === "thing" && part.test(item.thing.ingredient ?? "")),
  );

/** "split" with a ganache in the sentence is the ganache's fault; with none named, a shell's or the first known. */
function settleSymptoms(items: readonly Item[]): void {
  const named = new Set<string | undefined>(
    items.flatMap((item) => (item.is === "thing" && item.thing.base ? [item.thing.base] : [])),
  );
  // "150 dark chocolate and 200 cream and it is soup": a ganache, by what is in it
  if (named.size === 0 && isChocolateAndCream(items)) named.add("ganache");
  for (const item of items) {
    if (item.is !== "thing" || !item.thing.symptom) continue;
    const ids = item.thing.symptom.split("|");
    const curdles = /^curdl/.test(item.thing.text) ? "curdled buttercream" : undefined;
    const found =
      ids.find((id) => named.has(faultOf.get(id))) ?? ids.find((id) => !faultOf.get(id)) ?? curdles;
    // "separated", "thin": with no mix named it is just a word; "too thin" says that something is wrong
    if (found || / /.test(item.thing.text)) item.thing.symptom = found ?? ids[0];
    else delete item.thing.symptom;
  }
}

const slug = (text: string) => text.replaceAll(" ", "_");

const facetNames = [
  "base",
  "ingredient",
  "dose",
  "taste",
  "chocolate",
  "use",
  "count",
  "step",
  "symptom",
  "color",
  "unit",
  "manner",
] as const;

/** One item as it stands in the mask. */
export function maskOf(item: Item): string {
  if (item.is === "amount") return `${amountTag(item.amount)}`;
  if (item.is === "when") return `${slug(item.when.text)}<when>`;
  if (item.is === "thing") return `${slug(item.thing.text)}<${facets(item.thing)}>`;
  return item.text;
}

const amountTag = (amount: Amount) =>
  `${slug(amount.text).replace(/[<>]/g, "")}<${amount.unit === "times" ? "factor" : amount.dim}${amount.fraction ? ",fraction" : ""}>`;

function facets(thing: Thing): string {
  const said = facetNames.flatMap((name) => (thing[name] ? [`${name}=${slug(thing[name])}`] : []));
  return said.length ? said.join(",") : slug(thing.id);
}
