/**
 * "My husband pinched two for an omelette, so make it four", "I've only 88 g of whites, so scale it to 88 g whites":
 * what is told before an order or a question that says all there is to say.
 */
import { people } from "../../../data/words/people.ts";
import { wordOf } from "../found/items.ts";
import type { Item } from "../found/scan.ts";
import { asks, type Ear, longest, opens, type Part } from "./part.ts";

/** The items without such a lead; all of them where there is none. Pure. */
export function withoutSettledLead(items: Part, ear: Ear): Part {
  if (items.length > longest) return items;
  for (let at = items.length - 1; at > 1; at--) {
    const length = jointAt(items, at);
    if (length === 0) continue;
    const [lead, rest] = [items.slice(0, at), items.slice(at + length)];
    if (rest.length === 0 || !tells(lead, ear)) continue;
    const final = settled(lead, rest, ear);
    if (final) return final;
    if (isRepeated(lead, rest, ear) || isOfPeople(lead, rest, ear)) return rest;
  }
  return items;
}

/** ", so", ". so", ", please", a full stop: how many items it takes; none where there is none. */
function jointAt(items: Part, at: number): number {
  const item = items[at];
  if (wordOf(item) === "so") return 1;
  if (item?.is !== "sign" || !/^[,.!;-]$/.test(item.text)) return 0;
  let to = at + 1;
  while (["so", "please", "now", "then", "right", "ok"].includes(wordOf(items[to]))) to += 1;
  return item.text === "," && to === at + 1 && !asked.has(wordOf(items[to])) ? 0 : to - at;
}
const asked = new Set("how what whats make call lets scale split".split(" "));

const tells = (lead: Part, ear: Ear): boolean =>
  !asks(lead, ear) &&
  !opens(lead, ear) &&
  statement.test(`${ear.mask(lead)} `) &&
  !withheld.test(` ${ear.mask(lead)} `);

/** Somebody did or has something. An order or a list of what is in a bowl is none. */
const subjects =
  "(?:i|im|ive|id|ill|we|weve|were|my|our|his|her|he|hes|she|shes|it|its|they|theyve|theyre|the|there|theres|this|that|aunt|auntie|uncle|all|everyone|number|only|both|\\S*<number>)";
const statement = new RegExp(
  `^(?:(?:and|so|but|well|oh|sorry|as|now) )*${subjects} \\S+ \\S|^(?:ive|theres) \\S`,
);
/** What may make another sum of it. */
const withheld = / (?:if|instead|recipe|formula|note|log|not|without) /;
const shared = / (?:each|per|apiece|a head|a piece|everyone|everybody|plus|minus|extra|more) /;

/** "so make it four egg whites": what holds now, whatever became of the rest. */
const settles =
  /^(?:(?:please|just|better|we|i|ill|well|id|should|could|you|can|had) )*(?:make|call|lets (?:say|make|call)|say|do) (?:it|that|this|them|only|just) (?:only |just |about )*(?:an? )?\S*<(?:number|weight|time|percent|length|temperature)>|^(?:its|it is|thats|that is|that leaves|leaves|that makes|theres|there are|im down to|were down to|we are|im left with|i have|ive got) (?:only |just |now |about |down to )*\S*<(?:number|weight)>(?: \S+){0,3}$/;

/** "i ate 20 g of the chocolate": of that there is less. */
const taken =
  /(?:^| )(?:ate|eaten|threw|thrown|took|taken|spilt|spilled|dropped|lost|nicked|pinched|stole|stolen|gave|given|licked|scoffed|knocked|wasted|ruined|scraped|sneaked|swiped|helped|had) /;
/** "i added 50 g of cream": the bowl holds more, whatever went in. */
const stirredIn = /(?:^| )(?:added|tipped|poured|stirred|mixed|folded|beat|whisked|put) /;

/** What is left where what is told names nothing but what is told again, and amounts of its kind. */
function settled(lead: Part, rest: Part, ear: Ear): Part | undefined {
  if (!settles.test(ear.mask(rest)) || rest.length > 9) return undefined;
  const amounts = rest.filter(isAmount);
  if (amounts.length !== 1) return undefined;
  const [kept] = amounts;
  const isBare = (amount: AmountItem["amount"] | undefined) => amount?.dim === "number" && amount.unit === "";
  const like = lead.filter(isAmount).every(
    ({ amount }) =>
      amount.dim === kept?.amount.dim ||
      isBare(amount) ||
      // a size, a heat or a share is another matter than how many
      (isBare(kept?.amount) && ["time", "weight"].includes(amount.dim)),
  );
  const own = lead.filter((item) => item.is === "thing" && !isSaidIn(item, rest) && !isPlain(item));
  if (!like) return undefined;
  if (own.length === 0) return lead.some(isAmount) ? rest : undefined;
  const told = `${ear.mask(lead)} `;
  if (own.some((item) => item.is === "thing" && (item.thing.symptom || item.thing.formula))) return undefined;
  if (own.length === 1 && stirredIn.test(told)) return rest;
  // "..., so make it 180 g": of the chocolate that was spoken of
  return taken.test(told) && lead.some(isAmount)
    ? rest.flatMap((item) => (item === kept ? [item, ...own] : [item]))
    : undefined;
}

/** Every weight or count of it stands in the rest again, of the same thing. */
function isRepeated(lead: Part, rest: Part, ear: Ear): boolean {
  const told = lead.filter(isAmount);
  return (
    told.length > 0 &&
    !shared.test(` ${ear.mask(lead)} `) &&
    (opens(rest, ear) || /^\S+ (?:the|my|a|\S*<)/.test(ear.mask(rest))) &&
    asks(rest, ear) &&
    told.every((item) => repeats(item, lead, rest)) &&
    lead.every((item) => item.is !== "thing" || isSaidIn(item, rest) || isPlain(item))
  );
}

function repeats({ amount }: AmountItem, lead: Part, rest: Part): boolean {
  if (amount.fraction || amount.unit === "times") return false;
  const own = thingBehind(lead, amount.at[1]);
  return rest.some(
    (item) =>
      isAmount(item) &&
      item.amount.value === amount.value &&
      item.amount.unit === amount.unit &&
      own !== undefined &&
      own === thingBehind(rest, item.amount.at[1]),
  );
}

/** What an amount is of: the thing right behind it. */
function thingBehind(items: Part, from: number): string | undefined {
  const next = items.find(
    (item) => !(item.is === "word" && /^(?:of|the|my|plain)$/.test(item.text)) && startOf(item) >= from,
  );
  return next?.is === "thing" ? keyOf(next) : undefined;
}

const startOf = (item: Item): number =>
  item.is === "thing"
    ? item.thing.at[0]
    : item.is === "amount"
      ? item.amount.at[0]
      : item.is === "when"
        ? item.when.at[0]
        : item.at[0];

type AmountItem = Extract<Item, { is: "amount" }>;
type ThingItem = Extract<Item, { is: "thing" }>;
const isAmount = (item: Item): item is AmountItem => item.is === "amount";
const keyOf = ({ thing }: ThingItem) =>
  [thing.base, thing.ingredient, thing.chocolate, thing.taste, thing.dose, thing.count].join(",");
const isSaidIn = (item: ThingItem, rest: Part) =>
  rest.some((other) => other.is === "thing" && keyOf(other) === keyOf(item));
/** A thing that stands for no weight and no flavor: "the tray", "yellow". */
const isPlain = ({ thing }: ThingItem) =>
  !(
    thing.base ||
    thing.ingredient ||
    thing.taste ||
    thing.dose ||
    thing.chocolate ||
    thing.symptom ||
    thing.formula
  );

/** Where they live, how old they are: "number nine", "our tenth". */
const addresses = new Set(
  "number no nr flat room house apartment unit bus page chapter channel age aged".split(" "),
);
const ages = new Set("turning turns turned".split(" "));

/** Numbers of people, houses and years before a question that brings its own. */
function isOfPeople(lead: Part, rest: Part, ear: Ear): boolean {
  const told = lead.flatMap((item, at) => (isAmount(item) ? [{ item, at }] : []));
  return (
    told.length > 0 &&
    opens(rest, ear) &&
    rest.some((item) => isAmount(item) && (item.amount.dim === "number" || item.amount.dim === "weight")) &&
    !shared.test(` ${ear.mask(rest)} `) &&
    lead.every((item) => item.is !== "thing" || isPlain(item)) &&
    lead.every((item) => item.is !== "when") &&
    told.every(({ item, at }) => {
      const { dim, unit, fraction } = item.amount;
      if (dim !== "number" || unit !== "" || fraction) return false;
      const before = wordOf(lead[at - 1]);
      return (
        addresses.has(before) ||
        ages.has(before) ||
        lead.slice(at + 1, at + 5).some((each) => people.has(wordOf(each)))
      );
    })
  );
}
