/** "300 g white chocolate ganache to pipe, 300 is the chocolate alone, cream?": of one part, where the whole seemed meant. */
import { wordOf } from "../../found/items.ts";
import type { Item } from "../../found/scan.ts";
import { aimSaid, amountAt, holdsOther, partOf, sizeOf, thingOf } from "./telling.ts";

const asks = new Set("how much what whats".split(" "));
const pointing = new Set("thats being".split(" "));
const sharing = /\b(?:split|divide|divided|into|total|in all|each|both)\b/;

/** From sign to sign. */
function clausesOf(items: readonly Item[]): [number, number][] {
  const out: [number, number][] = [];
  let from = 0;
  items.forEach((item, at) => {
    if (item.is !== "sign") return;
    if (at > from) out.push([from, at]);
    from = at + 1;
  });
  if (items.length > from) out.push([from, items.length]);
  return out;
}

/** The order said so; undefined where the whole is meant. */
export function partAlone(text: string, items: readonly Item[]): string | undefined {
  const amounts = items.flatMap((_, at) => {
    const amount = amountAt(items, at);
    return amount && (amount.dim === "weight" || (amount.dim === "number" && amount.unit === ""))
      ? [amount]
      : [];
  });
  if (holdsOther(items)) return undefined;
  const whole = amounts.find(({ dim }) => dim === "weight");
  const isGanache = items.some((item) => item.is === "thing" && item.thing.base === "ganache");
  if (!whole || !isGanache || amounts.some((each) => sizeOf(each) !== sizeOf(whole))) return undefined;
  const weighed = new Set(
    items.flatMap((_, at) => {
      const thing = amountAt(items, at) && thingOf(items, at);
      return (thing && partOf(thing)) || [];
    }),
  );
  const isFaulty = items.some((item) => item.is === "thing" && item.thing.symptom);
  // a total that is said not to be meant: "300 is chocolate, not the total"
  if (weighed.size > 1 || isFaulty || sharing.test(text.replace(/\bnot (?:the |in )?total\b/, "")))
    return undefined;
  for (const [from, to] of clausesOf(items).slice(1)) {
    const own = items.slice(from, to);
    if (own.some((item) => asks.has(wordOf(item)) || (item.is === "thing" && item.thing.base))) continue;
    const at = own.findIndex((item) => item.is === "thing" && partOf(item.thing));
    const item = own[at];
    const named = item?.is === "thing" ? partOf(item.thing) : undefined;
    // "that's without the cream": the other one
    const isLeftOut = own.slice(0, at).some((each) => /^(?:without|before|minus)$/.test(wordOf(each)));
    const part = named && isLeftOut ? (named === "cream" ? "chocolate" : "cream") : named;
    if (!part || own.slice(0, at).some((each) => wordOf(each) === "not")) continue;
    const isSaid = own.some(
      (each) =>
        pointing.has(wordOf(each)) ||
        (wordOf(each) === "that" && own.some((word) => wordOf(word) === "is")) ||
        each.is === "amount",
    );
    // "no butter, 300 g chocolate" tells of no part alone unless the weight was said of the ganache before
    const isSecond = items.slice(0, from).some((each) => each.is === "amount");
    if (!isSaid || !isSecond) continue;
    const [said] = /\b(?:dark|milk|white)\b/.exec(text) ?? [];
    const kind = said ? `${said} ` : "";
    const butter = /\bno butter\b/.test(text) ? ", no butter" : "";
    return part === "chocolate"
      ? `${whole.text} ${kind}chocolate, how much cream${aimSaid(text)} ganache${butter}`
      : `${whole.text} cream, how much ${kind}chocolate${aimSaid(text)} ganache${butter}`;
  }
  return undefined;
}
