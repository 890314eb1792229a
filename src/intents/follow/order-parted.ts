/**
 * "they dropped the lemon", "leave out the coffee", "only the party ones first", "put the usual spares back in": an order
 * without one of its kinds, one part of it alone, or with its spares again.
 */
import type { Reading, Thing } from "../../tools/contract/index.ts";
import { numberSaid } from "./number-said.ts";
import { type Kind, type Order, orderBefore, otherMatter, saidAnew } from "./order-said.ts";
import { spaced } from "./spaced.ts";
import type { State, Topic } from "./state.ts";

interface Parted {
  text: string;
  topic: Topic;
}

const drops =
  /\b(?:drop(?:s|ped|ping)?|cancel(?:s|l?ed|l?ing)?|called off|without|leave (?:out|off)|left out|leaving out|skip(?:ping|ped)?|forget|scrap(?:ped)?|no|minus|take (?:out|off)|took (?:out|off)|lose|(?:dont|doesnt|don't|doesn't|do not|does not|no longer) (?:want|need)s?|not (?:want|need)ing|(?:is|are|'s) off)\b/;
/** "i dropped the lemon ones": they were made, and are still wanted. */
const isMishap = /\b(?:why|floor|broke|cracked|stuck|(?:i|we|he|the (?:dog|cat|kids?)) (?:just )?dropped)\b/;
const keeps =
  /^(?:(?:and|so|ok|then|now|but|well|actually|no|sorry|lets do|do|make|for now) ?,? )*(?:only|just)(?: do| make| the)* (.+?)(?: ones?| macarons| macs| lot| order| part)?(?: ,)?(?: (?:first|for now|then|now|today|please|pls|this time|to start with|to begin with|actually|after all|instead))*[ ?.!]*$/;
const says = /^(?:the |my |those |for )*/;

/** What a kind is called by a thing that was said. */
const isKind = ({ taste, color, text, dose, base }: Thing, { name }: Kind): boolean =>
  !dose && !base && [taste, color, text].includes(name);

/** The kinds that are left, put so that each calculator reads them. */
function listed(kinds: readonly Kind[]): string {
  const sum = kinds.reduce((all, { count }) => all + count, 0);
  return kinds.length < 2
    ? `${sum} macarons`
    : `${sum} macarons, ${kinds.map(({ name, count }) => `${count} ${name}`).join(" and ")}`;
}

const bare = ({ topic }: Order): Topic => {
  const { shares: _shares, ...inputs } = topic.inputs;
  return { ...topic, inputs };
};

/** "they dropped the lemon". */
function withoutKind({ text, things, amounts }: Reading, order: Order): Parted | undefined {
  if (amounts.length > 0 || !drops.test(text) || isMishap.test(text) || things.some((each) => each.symptom))
    return undefined;
  const named = order.kinds.filter((kind) => things.some((each) => isKind(each, kind)));
  const others = order.kinds.filter((kind) => !named.includes(kind));
  const isOther = things.some(
    (each) => (each.taste ?? each.color ?? each.dose) && !named.some((kind) => isKind(each, kind)),
  );
  if (named.length === 0 || others.length === 0 || isOther) return undefined;
  return { text: saidAnew(order, listed(others), text), topic: bare(order) };
}

const partTold =
  /\b(\d{1,3}|[a-z]+) (?:of (?:them|those|which|these)|macarons|macs|are|ones)(?: (?:are|is|go|going|meant|to go|being))*(?: for| to)?((?: (?!and |but |the rest|,)[a-z']+){1,5})/g;

/** "only the party ones", of an order of which so many were for it. */
function onlyPart(
  { text, amounts, things }: Reading,
  order: Order,
  { turn, past = [] }: State,
): Parted | undefined {
  const [, said = ""] = amounts.length > 0 ? [] : (keeps.exec(spaced(text)) ?? []);
  const word = said.replace(says, "").replace(/ (?:one|macaron)s$/, "");
  if (word === "" || /\b(?:one|ones|that|those|them|it)\b/.test(word)) return undefined;
  const kind = order.kinds.find((each) => each.name === word || things.some((thing) => isKind(thing, each)));
  const told = kind
    ? []
    : [
        turn?.said ?? "",
        past.findLast(({ inputs }) => inputs.macarons === order.macarons)?.text ?? "",
      ].flatMap((each) => [...each.toLowerCase().matchAll(partTold)]);
  const part = told.find(([, , of = ""]) => of.includes(` ${word}`) || of.includes(` ${word}'s`));
  const count = kind?.count ?? numberSaid(part?.[1] ?? "");
  return count > 0 && count < order.macarons
    ? { text: saidAnew(order, `${count} macarons`, text.replace(word, "")), topic: bare(order) }
    : undefined;
}

const ofEach =
  /^(?:[a-z ',]+ )?(?:of each|each|a flavou?r|per flavou?r|of every one|of each (?:kind|flavou?r|colou?r|sort|one))(?: (?:instead|then|now|please|pls|this time|rather|for \w+))*[ ?.!]*$/;
const leadsEach =
  /^(?:(?:and|so|ok|then|now|but|for|if|what|about|how|make|it|that|they|she|he|we|i|want|wants|want|would|like|need|needs|its|only|just|actually|no|sorry|this|next|time|week|the|easter|christmas|party|wedding|,|say|do|with|have|had) ?)*$/;

/** "ten of each instead", of an order in so many kinds, each as many as another. */
function eachAnew({ text, amounts }: Reading, order: Order): Parted | undefined {
  const [only, ...others] = amounts;
  const isCount = only?.dim === "number" && only.unit === "" && !only.fraction && others.length === 0;
  const { ways, kinds } = order;
  const isEven = kinds.every(({ count }) => count === kinds[0]?.count);
  if (!isCount || ways === undefined || !isEven || order.macarons % ways !== 0) return undefined;
  if (!ofEach.test(text.slice(only.at[1]).trim()) || !leadsEach.test(text.slice(0, only.at[0])))
    return undefined;
  // a filling that is told in so many flavors says itself what each takes
  if (order.topic.tool === "fill") return undefined;
  return { text: saidAnew(order, `${only.value * ways} macarons`, ""), topic: order.topic };
}

const ofWhole =
  /^(?:(?:and|so|ok|then|now|what|about|how|much|many|whats|do i need|the) )*(batter|filling|trays|shells|(?:egg )?whites|eggs)(?: (?:to (?:buy|get|crack|separate|mix|make|weigh(?: out)?)|needed|do i (?:need|buy|get|crack|separate|mix|make)))?(?: for (?:both|both orders|the both|them all|all of (?:them|it|that)|that lot|the lot|(?:that|the|this) order|the two|those two|all|those|that|them))?(?: (?:in all|altogether|together|then|please|pls|in total))*[ ?.!]*$/;

/** "the batter for both?", behind a plan; "egg whites to buy?", behind shells. */
function ofOrder({ text, amounts }: Reading, order: Order, { last }: State): Parted | undefined {
  const found = amounts.length === 0 ? ofWhole.exec(spaced(text)) : null;
  if (!found) return undefined;
  if (last?.tool === "shells" && /\b(?:whites|eggs) to (?:buy|get)\b/.test(text))
    return { text: "how many egg whites", topic: order.topic };
  return last?.tool === "day"
    ? { text: saidAnew(order, `${order.macarons} macarons`, found[1] ?? ""), topic: order.topic }
    : undefined;
}

const usual = "(?:usual|normal|standard|regular|ordinary)";
const spareBack: readonly RegExp[] = [
  new RegExp(`\\b(?:the|my|with|with the|some)? ?${usual} (?:\\w+ )?(?:spares?|extras?)\\b`),
  /\b(?:put|add|bring|have|count|include)(?: back)?(?: in)? (?:the |my |some )?(?:spares?|extras?)\b/,
  /\b(?:spares?|extras?) (?:are |is )?(?:back|again|after all)\b/,
  /^(?:(?:and|so|ok|then|now|no|but|actually|well|make it|do it) ,? ?)*with (?:the |my )?(?:spares?|extras?)(?: (?:then|this time|again|after all|please|now))*[ ?.!]*$/,
];

/** "put the usual spares back in", of shells that were counted without them. */
function withSpares({ text, amounts }: Reading, order: Order): Parted | undefined {
  const { spare_percent, spare_more, spare_less, spares, ...inputs } = order.topic.inputs;
  const isSet = [spare_percent, spare_more, spare_less, spares].some((each) => each !== undefined);
  if (order.topic.tool !== "shells" || !isSet || amounts.length > 0) return undefined;
  if (!spareBack.some((each) => each.test(spaced(text)))) return undefined;
  return { text: `make it ${order.macarons} macarons`, topic: { ...order.topic, inputs } };
}

/** Undefined where nothing is said of a part of the order. Pure. */
export function orderParted(reading: Reading, state: State): Parted | undefined {
  const order = orderBefore(state);
  if (!order || reading.whens.length > 0) return undefined;
  const whole = ofOrder(reading, order, state);
  if (whole) return whole;
  if (otherMatter.test(reading.text)) return undefined;
  return (
    eachAnew(reading, order) ??
    withoutKind(reading, order) ??
    onlyPart(reading, order, state) ??
    withSpares(reading, order)
  );
}
