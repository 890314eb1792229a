/**
 * "bought 500 ml cream and 180 g dark chocolate, using all the chocolate, how much of the cream": of the chocolate and the
 * cream the one goes in whole, the other is what there is of it, and is asked for.
 */
import type { Thing } from "../../../tools/contract/index.ts";
import { textOf, wordOf } from "../../found/items.ts";
import type { Item } from "../../found/scan.ts";
import { aimSaid, amountAt, holdsOther, type Part, partOf, thingAt, thingOf } from "./telling.ts";

const whole = new Set("all whole entire every lot everything".split(" "));
/** "want to use it completely", "gets used up". */
const usedUp =
  /\b(?:us(?:e|es|ed|ing)(?: it| the \w+)? up|completely|entirely|in full|gets? used|must go|has to go|all in|all goes|goes in whole|to the last)\b/;

/** What of the two goes in whole. */
function allOf(items: readonly Item[], text: string): Part | undefined {
  for (let at = 0; at < items.length; at++) {
    if (!whole.has(wordOf(items[at])) && !/^(?:all|whole)\b/.test(textOf(items[at] as Item))) continue;
    // "all the chocolate", "every bit of the chocolate", "all of my 240 g dark chocolate"
    for (let next = at + 1; next < Math.min(items.length, at + 7); next++) {
      const item = items[next];
      if (item?.is === "sign") break;
      const part = item?.is === "thing" ? partOf(item.thing) : undefined;
      if (part) return part;
    }
    // "the cream all goes in", "chocolate all in"
    const before = items[at - 1];
    const part = before?.is === "thing" ? partOf(before.thing) : undefined;
    if (part) return part;
  }
  const found = usedUp.exec(text);
  if (!found) return undefined;
  const near = items.flatMap((item) => {
    const part = item.is === "thing" ? partOf(item.thing) : undefined;
    if (!part || item.is !== "thing") return [];
    const clause = text.slice(
      Math.min(item.thing.at[1], found.index),
      Math.max(item.thing.at[0], found.index),
    );
    const far = Math.abs(item.thing.at[0] - found.index);
    return /[.;]/.test(clause) && !/^ ?(?:it|that)\b/.test(clause) ? [] : [{ part, far }];
  });
  return near.sort((a, b) => a.far - b.far)[0]?.part;
}

/** "how much of the 500 ml cream", "how much of my cream", "cream?" at the end. */
function asked(items: readonly Item[]): Part | undefined {
  const at = items.findIndex(
    (item, place) => wordOf(item) === "how" && /^(?:much|many)$/.test(wordOf(items[place + 1])),
  );
  const from = at < 0 ? -1 : at + 2;
  for (let next = from; from >= 0 && next < Math.min(items.length, from + 5); next++) {
    const item = items[next];
    if (item?.is === "sign") break;
    const part = item?.is === "thing" ? partOf(item.thing) : undefined;
    if (part) return part;
  }
  const parts = items.flatMap((item, place) => (item.is === "thing" && partOf(item.thing) ? [place] : []));
  const last = parts.at(-1);
  const item = last === undefined ? undefined : items[last];
  const isBare = last !== undefined && amountAt(items, last - 1) === undefined;
  return from < 0 && isBare && item?.is === "thing" ? partOf(item.thing) : undefined;
}

/** The order put so; undefined where the turn tells nothing of the kind. */
export function allOfOne(text: string, items: readonly Item[]): string | undefined {
  if (holdsOther(items)) return undefined;
  const said = items.flatMap((_, at) => {
    const amount = amountAt(items, at);
    const part = amount && partOf(thingOf(items, at) ?? behindIts(items, at));
    return amount && part && (amount.dim === "weight" || amount.dim === "volume")
      ? [{ at, part, amount }]
      : [];
  });
  const has = (part: Part) => said.filter((each) => each.part === part);
  const [chocolate, cream] = [has("chocolate"), has("cream")];
  if (chocolate.length !== 1 || cream.length !== 1 || !/\bhow much\b|\?|\bcream$|\bchocolate$/.test(text))
    return undefined;
  const wanted = asked(items);
  if (!wanted || /\btoo (?:runny|thin|stiff|firm|thick)\b|\bsplit\b|\bleft\b/.test(text)) return undefined;
  const isOfStock = new RegExp(`\\bhow much (?:of )?(?:the|my|that|this|our)?[^,.?]{0,14} ?${wanted}`).test(
    text,
  );
  const used: Part = wanted === "cream" ? "chocolate" : "cream";
  if (allOf(items, text) !== used && !(isOfStock && /\bhow much of\b/.test(text))) return undefined;
  const whole = used === "chocolate" ? chocolate[0] : cream[0];
  if (!whole) return undefined;
  const kind = items.flatMap((item) =>
    item.is === "thing" && item.thing.chocolate ? [item.thing.chocolate] : [],
  )[0];
  const what = used === "chocolate" ? `${kind ? `${kind} ` : ""}chocolate` : "cream";
  const ask = used === "chocolate" ? "cream" : `${kind ? `${kind} ` : ""}chocolate`;
  return `${whole.amount.text} ${what}, how much ${ask}${aimSaid(text)} ganache`;
}

/** "180 g on the counter": no; "cream 500 ml": the thing in front. */
function behindIts(items: readonly Item[], at: number): Thing | undefined {
  // "a 250 ml tub of cream"
  for (let next = at + 1; next < Math.min(items.length, at + 4); next++) {
    const item = items[next];
    if (item?.is === "sign" || item?.is === "amount" || /^(?:and|with|for)$/.test(wordOf(item))) break;
    if (item?.is === "thing" && partOf(item.thing)) return item.thing;
  }
  return thingAt(items, at - 1);
}
