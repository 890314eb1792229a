/** What a part of a turn is: a question, an order, something given, a tail. `Ear` carries how parts are heard. */
import type { Amount, Tool } from "../../tools/contract/index.ts";
import { score, stands } from "../chosen/choose.ts";
import type { Item } from "../found/scan.ts";
import { maskOf } from "../read.ts";

export type Part = readonly Item[];

export interface Ear {
  mask(part: Part): string;
  /** The calculator that claims it most, if it claims it surely. */
  claimed(part: Part): Tool | undefined;
}

/** Nobody asks one thing in more pieces than this; without a limit a long line would cost the square of its length. */
export const longest = 120;

export function earFor(tools: readonly Tool[]): Ear {
  // what a part is shows in its beginning; a line of a hundred pages is still cut in time
  const shown = new Map<Item, string>();
  const shownOf = (item: Item) => {
    const text = shown.get(item) ?? maskOf(item);
    shown.set(item, text);
    return text;
  };
  // a part is looked at several times in a row; what begins, ends and counts alike is the same part
  const seen = new Map<Item, { last: Item; length: number; text: string }>();
  const mask = (whole: Part) => {
    const part = whole.length > 3 * longest ? whole.slice(0, 3 * longest) : whole;
    const [first, last] = [part[0], part.at(-1)];
    if (!first || !last) return "";
    const known = seen.get(first);
    if (known?.last === last && known.length === part.length) return known.text;
    const text = part.map(shownOf).join(" ");
    seen.set(first, { last, length: part.length, text });
    return text;
  };
  const heard = new Map<string, Tool | undefined>();
  return {
    mask,
    claimed(part) {
      if (part.length > longest) return undefined;
      const text = mask(part);
      if (!heard.has(text)) {
        const best = score({ mask: text }, tools)[0];
        heard.set(text, best && best.points >= stands ? best.tool : undefined);
      }
      return heard.get(text);
    },
  };
}

/** A few words that lead in to a request: without a limit a row of them costs its square. */
const leadIn = /^(?:(?:and|also|then|plus|so|oh|ok|now|but|please|pls|or) ){0,6}/;
/** A request opens with one of these, and then says of what. */
const openingWords = new Set(
  "how hw what whats wht wat which when why where who whens hows set start stop cancel add give take call rename note log record save remember forget show list tell split divide scale convert make put ping remind undo plan print write remove change time turn begin delete jot buy export compare double halve triple".split(
    " ",
  ),
);
const openingHelp = /^(?:another one|help|timer)/;
const openers =
  /^(?:(?:can|could|should|do|does|is|are|will|would) (?:i|you|we|it|they|that)|(?:is|was) \S*<(?:weight|percent|time)|(?:the )?(?:number|amount|weight|quantity) of \S*<(?:count|base|ingredient)=)/;
const timerOpeners =
  /^(?:(?:a|an|the|another) (?:\S+ )?timer|\S+ (?:me )?(?:a|an|the|my|another) (?:\S+ ){0,2}timers? (?:on|going|running|up)|\S+ on (?:a|an|the|my|another) (?:\S+ ){0,2}timers?|\S*<step[^>]*> timer)/;

/** @param text a mask, with a space behind its last word */
function isRequest(text: string): boolean {
  const lead = leadIn.exec(text)?.[0] ?? "";
  const said = text.slice(lead.length);
  const space = said.indexOf(" ");
  if (space > 0 && openingWords.has(said.slice(0, space))) return true;
  if (openingHelp.test(said) || openers.test(said)) return true;
  if (!text.includes("timer")) return false;
  // "so a bake timer on": a word that leads in may belong to it
  for (let at = lead.length; at >= 0; at = at === 0 ? -1 : text.lastIndexOf(" ", at - 2) + 1)
    if (timerOpeners.test(text.slice(at))) return true;
  return false;
}

/** Verbs that are nouns too: "scale batteries died" orders nothing. */
const looseVerb =
  /^(?:scale|time|turn|plan|show|double|print|record|log|note|place|share|split|call|change) /;

/** "when i make 50 macarons": what is given, and no question of an hour. */
const condition = /^(?:(?:and|so|but|ok) )*when (?:i|we|you) (?!should|must|can|could|need|have|start)\S+ /;

export const opens = (part: Part, ear: Ear): boolean => {
  const text = `${ear.mask(part)} `;
  return isRequest(text) && !condition.test(text);
};

export const carriesAmount = (part: Part): boolean => part.some((item) => item.is === "amount");

/** "the shells are going in so start the bake timer": what is told, and the order it leads to. */
const orderedBehind =
  / (?:so|,|, so) (?:(?:please|pls|can you|could you|just|then|now) )*(?:set|start|stop|cancel|note|log|save|split|divide|convert|ping|remind|begin|jot|time) (?:(?:a|an|the|my|me|it|that|this|them|another|us|down)(?: |$)|\S*<(?:time|weight))/;

/** "i put 4 g in 270 g, is that ok": asked whether or not a question mark stands behind it. */
const judged =
  / (?:is|was|are|were) (?:that|it|this|they|those|these) (?:still |about |really |at all )?(?:ok|okay|alright|all right|fine|right|safe|good|enough|too \S+) /;

/** "the butter is soft now, is 8 g rose in 220 g fine": what leads up to a question holds no amount. */
const leads = /^[^<,?]*(?:<(?!weight|number|percent|time|money|temperature|volume|length)[^<,?]*)*? , /;

/** A question word or an order somewhere in it. */
export function asks(part: Part, ear: Ear): boolean {
  const text = `${ear.mask(part)} `;
  const idle = !carriesAmount(part) && !/ (?:it|that|this|my|the|me|for|all|a|to|how|what|in) /.test(text);
  if (looseVerb.test(text) && idle) return false;
  // "scale battery died on me": nothing to be scaled
  if (/^(?:my |the )?scales? (?:battery|batteries|died|is|are|broke|broken|isnt|doesnt|wont) /.test(text))
    return false;
  if (condition.test(text) && !/ (?:how|what|whats|which|\?) /.test(text)) return false;
  return (
    isRequest(text) ||
    (leads.test(text) && isRequest(text.slice(text.indexOf(" , ") + 3))) ||
    / (?:how|what|whats|when|which|why|tell me|give me|show me) /.test(` ${text}`) ||
    orderedBehind.test(text) ||
    judged.test(text) ||
    part.some((item) => item.is === "sign" && item.text === "?")
  );
}

const giving = new Set(
  "i ive have got we there is are theres of a the my some plus and with just only about here so ok well this its it was were used im using put in pan pot jug tub mixer counter side worktop melted already on".split(
    " ",
  ),
);

/** "half", "a third": what is to be done with a bowl, not what is there. */
const isShare = (amount: Amount) => amount.dim === "number" && amount.fraction !== undefined;

/** Weights with their things and talk around them: what is there, not what is wanted. */
export const givesOnly = (part: Part): boolean =>
  part.every(
    (item, at) =>
      (at === 0 && item.is === "word" && ["for", "from", "with", "using"].includes(item.text)) ||
      item.is === "sign" ||
      (item.is === "amount" && item.amount.unit !== "times" && !isShare(item.amount)) ||
      (item.is === "thing" && !item.thing.unit && !item.thing.dose && !item.thing.use) ||
      (item.is === "word" && giving.has(item.text)),
  );

/** "5% of 640", "640 / 16": a sum from end to end, which is an order though it holds nothing but amounts. */
export const isSum = (part: Part, ear: Ear): boolean =>
  /^(?:(?:and|then|also|plus) )*(?:\S*<(?:percent|number,fraction)> of \S*<number>|\d\d+_\/_\d+<number,fraction>|\S*<number> (?:[*x+/-]|plus|minus) \S*<number>)(?: [?=])*$/.test(
    ear.mask(part),
  );

export const states = (part: Part, ear: Ear): boolean => statement.test(`${ear.mask(part)} `);

const statement =
  /^(?:(?:so|ok|im|were|and) )*(?:making|doing|using|baking|working|mixing|piping|filling) |(?:^| )(?:i|ive|im|my|we|its|it|there|theres|have|got|is|are|was|were|weighs|looks|has|been|thats|put|went|came|fell) /;

/** A complete order without a question word: "house shells with 4 egg whites", "325 f in c". A statement is none. */
export const orders = (part: Part, ear: Ear): boolean =>
  carriesAmount(part) &&
  (!givesOnly(part) || isSum(part, ear)) &&
  !statement.test(`${ear.mask(part)} `) &&
  ear.claimed(part) !== undefined;

const tailWords = ["it", "that", "this", "them", "those", "me", "enough", "do", "set", "down", "again"];

/** "save that", "put it in the pantry", "time it", "is that alright": leans wholly on what stands before it. */
export const isTail = (part: Part): boolean => asksOnly(part) || leansBack(part);

/** "what do i change", "what now", "help": a question with nothing in it of its own. */
export const asksOnly = (part: Part): boolean => {
  if (part.some((item) => item.is !== "word" && item.is !== "sign")) return false;
  const text = part.flatMap((item) => (item.is === "word" ? [item.text] : [])).join(" ");
  return /^(?:(?:so|and|but|oh|please) )*(?:what (?:do|should|can|could) i (?:do|change|add|fix|try)|what now|why|whats wrong|what went wrong|how do i (?:fix|save|rescue|mend) (?:it|this|that|them)|help|any ideas?|what to do|what goes in(?:to it)?|what goes into it)(?: now| next| about it| please)?$/.test(
    text,
  );
};

const leansBack = (part: Part): boolean =>
  part.length <= 8 &&
  !part.some(
    (item) =>
      item.is === "amount" ||
      item.is === "when" ||
      (item.is === "thing" && !item.thing.step && !item.thing.unit && !item.thing.color) ||
      (item.is === "word" && ["why", "when", "undo", "timer", "timers", "alarm"].includes(item.text)),
  ) &&
  part.some((item) => item.is === "word" && tailWords.includes(item.text));

/** "... and how long?": of what stands before it. */
export const howAlone = (part: Part, ear: Ear): boolean =>
  /^(?:for )?how (?:long|much|many)(?: for)?(?: \?)?$/.test(ear.mask(part));

/** "... and mint flavor for the whole of it", "... and filling for them too": more for what the first part makes. */
export const forAllOfIt = (part: Part, ear: Ear): boolean =>
  // "200 g chocolate and 180 g cream in it": a part of what is there
  !/^\S+<weight> (?:of )?\S*<ingredient=[^,>]*(?:,chocolate=\w+)?> in (?:it|that|there)(?: |$)/.test(
    ear.mask(part),
  ) &&
  part.some(
    (item) =>
      item.is === "thing" &&
      Boolean(item.thing.dose || item.thing.taste || item.thing.base || item.thing.ingredient),
  ) &&
  / (?:for|in|into) (?:it|that|the whole|all|the lot|this|them|each|both|one of (?:it|them|those|these)|the other|the (?:bigger|larger|biggest|smaller|smallest|big|small|first|second) (?:part|half|bowl|one|\S+<count=bowls>)|the \S+<color)(?: |$|=)|^(?:the |some |their )?\S+<base=(?:filling|batter)\S* (?:too|as well|also)(?: |$)|^(?:the |some |their )?\S+<base=(?:filling|batter)\S* \?$/.test(
    ear.mask(part),
  );
