/** Splits a turn into its questions and orders. A part that asks nothing belongs to the one that does. */
import type { Tool } from "../tools/contract/index.ts";
import { score, stands } from "./choose.ts";
import { maskOf } from "./read.ts";
import type { Item } from "./scan.ts";

/** A request opens with one of these. */
const openers =
  /^(?:(?:and|also|then|plus|so|oh|ok|now|but|please|pls|or) )*(?:(?:how|hw|what|whats|wht|wat|which|when|why|where|who|whens|hows) |(?:can|could|should|do|does|is|are|will|would) (?:i|you|we|it|they|that)|(?:set|start|stop|cancel|add|give|take|call|rename|note|log|record|save|remember|forget|show|list|tell|split|divide|scale|convert|make|put|ping|remind|undo|plan|print|write|remove|change|time|turn|begin|delete|jot|buy|export|compare|double|halve|triple) |another (?:one|timer)|help|timer|\S*<step[^>]*> timer)/;

/** A whole turn that is one note from here on: nothing in it is another question. */
const noteStart =
  /^(?:(?:please|pls|ok|so|and|can you|could you) )*(?:note|notes|log|record|jot|save (?:a )?note|batch note|write (?:this |that )?down|add (?:a )?note|add to (?:that|the|my|it)|(?:save|remember|keep|store) (?:(?:the|my|our|this|that|a|new) )*(?:\S+ ){0,3}(?:recipe|formula)|save formula|pantry|shopping)(?: |$)/;
const timerInside = /^(?:and |then |also )*(?:set|start|put|begin) .*(?:timer|alarm|<time)/;

/** Splits items into questions. Linear in their number but for the scoring of each candidate. */
export function clauses(items: readonly Item[], tools: readonly Tool[]): Item[][] {
  const mask = (part: readonly Item[]) => part.map(maskOf).join(" ");
  if (noteStart.test(mask(items))) return splitNote(items, mask);
  const sentences = cutSentences(items);
  const parts = sentences.flatMap((sentence) => cutWithin(sentence, tools, mask));
  return join(parts, tools, mask);
}

/** A note keeps everything behind it, but "and set a timer" ends it. */
function splitNote(items: readonly Item[], mask: (part: readonly Item[]) => string): Item[][] {
  for (let i = 1; i < items.length; i++) {
    const item = items[i] as Item;
    if (
      (item.is === "word" && ["and", "then"].includes(item.text)) ||
      (item.is === "sign" && /[,.;]/.test(item.text))
    )
      if (timerInside.test(mask(items.slice(i + 1)))) return [items.slice(0, i), items.slice(i + 1)];
  }
  return [[...items]];
}

/** Hard ends: ? ! ; and a full stop. */
function cutSentences(items: readonly Item[]): Item[][] {
  const out: Item[][] = [[]];
  for (const item of items) {
    const end = item.is === "sign" && /^[?!;.]$/.test(item.text);
    if (!end) out.at(-1)?.push(item);
    else if (out.at(-1)?.length) {
      if (item.text === "?") out.at(-1)?.push(item);
      out.push([]);
    }
  }
  return out.filter((part) => part.some((item) => item.is !== "sign"));
}

/** Soft ends: "and", "then", a comma, where both sides ask something. */
function cutWithin(
  items: readonly Item[],
  tools: readonly Tool[],
  mask: (part: readonly Item[]) => string,
): Item[][] {
  const out: Item[][] = [];
  let from = 0;
  for (let i = 1; i < items.length; i++) {
    const joint = jointAt(items, i);
    if (!joint) continue;
    const left = items.slice(from, i);
    const right = items.slice(i + joint);
    if (right.length === 0 || !requests(left, tools, mask, spoken(items.slice(i, i + joint)))) continue;
    const next = nextJoint(items, i + joint);
    const head = items.slice(i + joint, next);
    const rightAsks =
      (openers.test(`${mask(right)} `) && !isTail(head) && !howAlone.test(mask(head))) ||
      (carriesAmount(head) && standsAlone(head, tools, mask) && carriesAmount(left)) ||
      flavorsAll(head, tools, mask) ||
      parallelTimes(left, head, mask);
    if (!rightAsks) continue;
    out.push(left);
    from = i + joint;
  }
  out.push(items.slice(from));
  return out;
}

/** "... and how long?": of what stands before it. */
const howAlone = /^(?:for )?how (?:long|much|many)(?: for)?(?: \?)?$/;

/** "... and mint flavor for the whole of it": a dose for what the first part makes. */
const flavorsAll = (items: readonly Item[], tools: readonly Tool[], mask: (part: readonly Item[]) => string) =>
  items.some((item) => item.is === "thing" && (item.thing.dose || item.thing.taste)) &&
  / (?:for|in|into) (?:it|that|the whole|all|the lot|this|them|each)(?: |$)/.test(mask(items)) &&
  standsAlone(items, tools, mask);

const isJoint = (item: Item | undefined) =>
  (item?.is === "word" && ["and", "then", "also", "plus", "n"].includes(item.text)) ||
  (item?.is === "sign" && [",", "&", "-"].includes(item.text));

/** "100 plus 45", "30 - 45": a sign of a sum, no joint. */
const isSign = (items: readonly Item[], i: number) =>
  ["plus", "-"].includes((items[i] as { text?: string } | undefined)?.text ?? "") && [items[i - 1], items[i + 1]].every((item) => item?.is === "amount" && item.amount.dim === "number");

const jointAt = (items: readonly Item[], i: number): number => {
  if (isSign(items, i)) return 0;
  let length = 0;
  while (isJoint(items[i + length])) length += 1;
  return length;
};

function nextJoint(items: readonly Item[], i: number): number {
  for (let at = i; at < items.length; at++) if (isJoint(items[at])) return at;
  return items.length;
}

const carriesAmount = (items: readonly Item[]) => items.some((item) => item.is === "amount");

const standsAlone = (
  items: readonly Item[],
  tools: readonly Tool[],
  mask: (part: readonly Item[]) => string,
) => (score({ mask: mask(items) }, tools)[0]?.points ?? 0) >= stands;

/** Before a comma alone only an open question or order counts as asked; before "and" a complete phrase does too. */
const bestFor = (items: readonly Item[], tools: readonly Tool[], mask: (part: readonly Item[]) => string) => score({ mask: mask(items) }, tools)[0]?.tool;

const requests = (
  items: readonly Item[],
  tools: readonly Tool[],
  mask: (part: readonly Item[]) => string,
  joined: boolean,
) => asks(items, mask) || (joined && !givesOnly(items) && standsAlone(items, tools, mask));

const spoken = (joint: readonly Item[]) => joint.some((item) => item.is === "word");

/** Weights with their things and talk around them: what is there, not what is wanted. */
const givesOnly = (items: readonly Item[]) =>
  items.every(
    (item) =>
      item.is === "sign" ||
      item.is === "amount" ||
      (item.is === "thing" && !item.thing.unit && !item.thing.dose && !item.thing.use) ||
      (item.is === "word" && giving.has(item.text)),
  );

const giving = new Set(
  "i ive have got we there is are theres of a the my some plus and with just only about here so ok well this its it was were used im using put in".split(
    " ",
  ),
);

/** "timer 40 min for resting, another 10 min for the oven": the second half of a pair of times. */
const parallelTimes = (
  left: readonly Item[],
  right: readonly Item[],
  mask: (part: readonly Item[]) => string,
) =>
  /timer|ping|remind|clock|alarm|^set |<time.*<step/.test(mask(left)) &&
  !/note|log/.test(mask(left)) &&
  left.some((item) => item.is === "amount" && item.amount.dim === "time") &&
  right.some((item) => item.is === "amount" && item.amount.dim === "time");

/** Verbs that are nouns too: "scale batteries died" orders nothing. */
const looseVerb =
  /^(?:scale|time|turn|plan|show|double|print|record|log|note|place|share|split|call|change) /;

/** A question word or an order somewhere in it. */
const asks = (items: readonly Item[], mask: (part: readonly Item[]) => string) => {
  const text = `${mask(items)} `;
  if (
    looseVerb.test(text) &&
    !carriesAmount(items) &&
    !/ (?:it|that|this|my|the|me|for|all|a|to|how|what|in) /.test(text)
  )
    return false;
  return (
    openers.test(text) ||
    / (?:how|what|whats|when|which|why) /.test(` ${text}`) ||
    items.some((item) => item.is === "sign" && item.text === "?")
  );
};

/** "save that", "put it in the pantry", "time it", "is that alright": leans wholly on what stands before it. */
const isTail = (items: readonly Item[]) =>
  !items.some(
    (item) =>
      item.is === "amount" ||
      item.is === "when" ||
      (item.is === "thing" && !item.thing.step && !item.thing.unit && !item.thing.color),
  ) &&
  items.some(
    (item) =>
      item.is === "word" &&
      ["it", "that", "this", "them", "those", "me", "enough", "do", "set", "down", "again"].includes(
        item.text,
      ),
  ) &&
  items.length <= 8 &&
  !items.some((item) => item.is === "word" && ["why", "undo"].includes(item.text));

/** Parts that ask nothing go with the next that does, or the one before. */
function join(parts: Item[][], tools: readonly Tool[], mask: (part: readonly Item[]) => string): Item[][] {
  const out: Item[][] = [];
  let waiting: Item[] = [];
  for (const part of parts) {
    const whole = asks(part, mask) || (standsAlone(part, tools, mask) && parts.length === 1);
    if (
      !whole &&
      !(
        standsAlone(part, tools, mask) &&
        carriesAmount(part) &&
        part === parts.at(-1) &&
        waiting.length === 0 &&
        out.length > 0
      )
    ) {
      const two = waiting.length > 0 && [waiting, part].every((each) => carriesAmount(each) && standsAlone(each, tools, mask) && orders(each, mask));
      if (two && bestFor(waiting, tools, mask) !== bestFor(part, tools, mask)) out.push(waiting);
      else if (waiting.length) {
        waiting = [...waiting, comma(part), ...part];
        continue;
      }
      waiting = part;
      continue;
    }
    if (
      waiting.length &&
      standsAlone(waiting, tools, mask) &&
      carriesAmount(waiting) &&
      orders(waiting, mask)
    ) {
      out.push(waiting);
      waiting = [];
    }
    out.push(waiting.length ? [...waiting, comma(part), ...part] : part);
    waiting = [];
  }
  if (waiting.length === 0) return out;
  const last = out.at(-1);
  if (!last || (standsAlone(waiting, tools, mask) && carriesAmount(waiting))) return [...out, waiting];
  return [...out.slice(0, -1), [...last, comma(waiting), ...waiting]];
}

/** A complete order without a question word: "house shells with 4 egg whites", "325 f in c". A statement is none. */
const orders = (items: readonly Item[], mask: (part: readonly Item[]) => string) =>
  !givesOnly(items) &&
  !/(?:^| )(?:i|ive|im|my|we|its|it|there|theres|have|got|is|are|was|were|weighs|looks|has|been|thats|put) /.test(
    `${mask(items)} `,
  );

const comma = (part: readonly Item[]): Item => {
  const first = part[0];
  const at =
    first === undefined
      ? 0
      : first.is === "thing"
        ? first.thing.at[0]
        : first.is === "amount"
          ? first.amount.at[0]
          : first.is === "when"
            ? first.when.at[0]
            : first.at[0];
  return { is: "sign", text: ",", at: [at, at] };
};
