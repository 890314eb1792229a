/**
 * "double it, because the neighbours are coming", "make that 14 minutes, my oven is old", "18 times 24? i used to do
 * these in my head": what is told beside a question, with nothing in it that any calculator could take.
 */
import { strangers } from "../../../data/words/strangers.ts";
import { namesEarlier } from "../follow/behind.ts";
import { mayBeEarlier } from "../follow/earlier-hint.ts";
import { wordOf } from "../found/items.ts";
import type { Item } from "../found/scan.ts";
import { withoutAsker } from "./asked-by.ts";
import { withoutSettledLead } from "./leads.ts";
import { withoutNoScale } from "./no-scale.ts";
import { carriesAmount, type Ear, opens, type Part } from "./part.ts";
import { asksWhatToSay, isRhetorical, isSoiled, isToldAsked } from "./scenes.ts";

/** The items without such asides; all of them where nothing else would be left. Pure. */
export function withoutAsides(all: Part, ear: Ear): Part {
  // "and now? when did i last make hazelnut"
  const items = /^(?:and |so |ok )*(?:now|then|next) \? \S/.test(ear.mask(all))
    ? all.slice(all.findIndex((item) => isSign(item, /^\?$/)) + 1)
    : all;
  const measured = withoutNoScale(withoutAfterthought(items, ear), ear);
  const settled = withoutSettledLead(withoutAsker(measured, ear), ear);
  let rest = withoutLead(withoutReasons(withoutHeading(settled, ear), ear), ear);
  for (const aside of sentencesIn(rest).filter((part) => isIdle(part, ear) && part.length > 3)) {
    const left = rest.filter((item) => !aside.includes(item));
    if (says(left, ear)) rest = left;
  }
  return withoutTail(rest, ear);
}

/** "whats left in the cupboard: 140 g almond flour, ...": a heading over what is told, and no question. */
function withoutHeading(items: Part, ear: Ear): Part {
  const at = items.findIndex((item) => isSign(item, /^:$/));
  const heading = at > 0 ? ear.mask(items.slice(0, at)) : "";
  const rest = items.slice(at + 1);
  // "whats in the cupboard: ... how far does the recipe go": asked of what is listed
  const asksBehind = sentencesIn(rest)
    .slice(1)
    .some((part) => opens(part, ear));
  if (
    asksBehind &&
    carriesAmount(rest) &&
    /^(?:(?:and|so|ok) )*(?:whats|what is|heres whats|this is whats) (?:in|on) (?:the |my )?\S+$/.test(
      heading,
    )
  )
    return rest;
  return /^(?:(?:and|so|ok) )*(?:whats|what is|all thats|all that is|whatever is) left(?: (?:in|on|of) (?:the |my )?\S+)?$/.test(
    heading,
  ) && carriesAmount(rest)
    ? rest
    : items;
}

const isSign = (item: Item | undefined, signs: RegExp) => item?.is === "sign" && signs.test(item.text);
const isEnd = (item: Item | undefined) => isSign(item, /^[.?!;]$/);

/** Something is left that can be answered. */
const says = (part: Part, ear: Ear) =>
  carriesAmount(part) || part.some(isSubstance) || ear.claimed(part) !== undefined || opens(part, ear);

/** "..., because i have been asked for two boxes", "..., since everyone likes the green ones". */
function withoutReasons(items: Part, ear: Ear): Part {
  const from = items.findIndex((item, at) => at > 1 && isReason(items, at, wordOf(item)));
  if (from < 0) return items;
  const end = items.findIndex((item, at) => at > from && isEnd(item));
  const to = end < 0 ? items.length : end;
  const reason = items.slice(from, to);
  const left = [...items.slice(0, from), ...items.slice(to)];
  const refuses = reason.some((item) => refusals.has(wordOf(item)));
  const talk = (item: Item) => isTalk(item) || (refuses && isKind(item));
  return reason.length > 2 && reason.every(talk) && !asksWithin(reason) && says(left, ear)
    ? trimmed(left, from)
    : items;
}

/** "..., because the children will not eat the dark": what isn't meant. */
const refusals = new Set(
  "wont dont doesnt didnt not never hate hates dislike dislikes cant allergic".split(" "),
);
const isKind = (item: Item) =>
  item.is === "thing" && Boolean(item.thing.chocolate ?? item.thing.taste) && item.thing.base === undefined;

function isReason(items: Part, at: number, text: string): boolean {
  if (["because", "cos", "coz", "cuz", "bcs", "bc of"].includes(text)) return true;
  if (["while", "whilst"].includes(text) && subjects.has(wordOf(items[at + 1]))) return true;
  // "now that i counted the ribbon"
  if (text === "now" && wordOf(items[at + 1]) === "that" && subjects.has(wordOf(items[at + 2]))) return true;
  const behindComma = isSign(items[at - 1], /^,$/);
  if (!behindComma || !["since", "as", "for"].includes(text)) return false;
  // ", for the syrup" is what it is for, and ", for the children are asleep" why
  if (text === "for" && articles.has(wordOf(items[at + 1])))
    return items.slice(at + 2).some((item) => verbs.has(wordOf(item)));
  return subjects.has(wordOf(items[at + 1]));
}

const articles = new Set("the this that my our its".split(" "));
const verbs = new Set(
  "is are was were has have had will would wont can cant like likes love loves want wants hate hates need needs does do dont doesnt".split(
    " ",
  ),
);

/** "i always put it through the sieve, so what if it is sifted?" */
function withoutLead(items: Part, ear: Ear): Part {
  const at = items.findIndex((item, place) => isSign(item, /^,$/) && wordOf(items[place + 1]) === "so");
  const [lead, rest] = [items.slice(0, at), items.slice(at + 2)];
  return at > 2 && isIdle(lead, ear) && subjects.has(wordOf(lead[0])) && says(rest, ear) && opens(rest, ear)
    ? rest
    : items;
}

/** A comma that would stand at the end now. */
const trimmed = (items: Part, at: number): Part =>
  isSign(items[at - 1], /^,$/) ? [...items.slice(0, at - 1), ...items.slice(at)] : items;

/** In a reason: words, colors, boxes, small numbers; never a weight, a heat, a share, a flavor. */
const isTalk = (item: Item): boolean =>
  item.is === "word" || item.is === "sign"
    ? true
    : item.is === "when"
      ? item.when.minute === undefined && item.when.days === 0
      : item.is === "amount"
        ? item.amount.dim === "number" && item.amount.unit === "" && item.amount.value <= mostTalk
        : !isSubstance(item);
const mostTalk = 4;

const isSubstance = (item: Item): boolean =>
  item.is === "thing" &&
  Boolean(
    item.thing.base ??
      item.thing.ingredient ??
      item.thing.taste ??
      item.thing.dose ??
      item.thing.chocolate ??
      item.thing.symptom ??
      item.thing.step ??
      item.thing.use ??
      item.thing.formula ??
      item.thing.unit ??
      item.thing.manner,
  );

/** "my oven is old" at the end, behind a comma. */
function withoutTail(items: Part, ear: Ear): Part {
  const at = items.findLastIndex((item) => isSign(item, /^,$/));
  const [before, tail] = [items.slice(0, at), items.slice(at + 1)];
  // "..., half of them are on a diet"
  const ofSome =
    /^(?:half\S*|most|some|all|none|one\S*|two\S*) of (?:them|those|us) (?:are|is|dont|wont|cant|have|were|will|cannot|prefer) /.test(
      `${ear.mask(tail)} `,
    ) && !tail.some(isSubstance);
  if (at > 0 && ofSome && carriesAmount(before)) return before;
  const opened =
    subjects.has(wordOf(tail[0])) || subjects.has(wordOf(tail[0]).replace(/(?:s|ve|re|m|ll|d)$/, ""));
  const needed = carriesAmount(before) || (isSoiled(tail, ear) && says(before, ear));
  return at > 1 && tail.length > 2 && opened && isIdle(tail, ear) && needed ? before : items;
}

const subjects = new Set(
  "i im ive id we weve were my our he she they theyre theyve it its the this that everyone everybody people mum mom dad there someone somebody".split(
    " ",
  ),
);

function sentencesIn(items: Part): Part[] {
  const out: Item[][] = [[]];
  for (const item of items) {
    out.at(-1)?.push(item);
    if (isEnd(item)) out.push([]);
  }
  return out.length > 1 ? out.filter((part) => part.length > 0) : [];
}

/** "..., what shall i tell her?" */
function withoutAfterthought(items: Part, ear: Ear): Part {
  const at = items.findLastIndex((item) => isSign(item, /^[,.?!;]$/) && item !== items.at(-1));
  const before = items.slice(0, at);
  return at > 2 && asksWhatToSay(items.slice(at + 1), ear) && says(before, ear) ? before : items;
}

/** Talk that asks nothing, orders nothing and changes nothing of what was asked before. */
const isIdle = (part: Part, ear: Ear): boolean =>
  isSoiled(part, ear) || isToldAsked(part, ear) || isRhetorical(part, ear) || isPlainlyIdle(part, ear);

/** "at room temperature", "pink and white": a piece of the question told as a sentence of its own, and no talk. */
const isPiece = (part: Part): boolean =>
  (part.length <= 6 &&
    /^(?:at|in|on|inside|outside|under|without)$/.test(wordOf(part[0])) &&
    !part.some((item) => subjects.has(wordOf(item)) && !articles.has(wordOf(item)))) ||
  (part.some((item) => item.is === "thing" && item.thing.color !== undefined) &&
    part.every(
      (item) =>
        item.is === "sign" ||
        (item.is === "thing" && item.thing.color !== undefined) ||
        /^(?:and|plus|or|a|the|with|then)$/.test(wordOf(item)),
    ));

const isPlainlyIdle = (part: Part, ear: Ear): boolean =>
  !isPiece(part) &&
  part.every((item) => item.is === "word" || item.is === "sign" || (item.is === "thing" && isTalk(item))) &&
  !part.some((item) => isSign(item, /^\?$/)) &&
  // what speaks of another matter changes nothing here
  (part.some((item) => strangers.has(wordOf(item))) ||
    isModest(part, ear) ||
    !criedOut(part).some((item) => changes.has(wordOf(item)))) &&
  !(mayBeEarlier(ear.mask(part)) && namesEarlier(ear.mask(part))) &&
  !opens(criedOut(part), ear) &&
  (isModest(part, ear) || !asksWithin(part)) &&
  ear.claimed(criedOut(part)) === undefined;

/** "help the lid came off!!": a cry, where nothing is named that help is wanted with. */
const criedOut = (part: Part): Part =>
  wordOf(part[0]) === "help" && !part.some((item) => /^(?:with|on|about|for|from)$/.test(wordOf(item)))
    ? part.slice(wordOf(part[1]) === "me" ? 2 : 1)
    : part;

/** "my arithmetic isnt what it was", "ive forgotten how fractions work": what the baker can't do any more. */
const isModest = (part: Part, ear: Ear): boolean =>
  /(?:^| )(?:isnt|arent|not|wasnt) what (?:it|they|i) (?:was|were|used|once)(?: |$)|(?:^| )(?:forgot|forgotten|forget|no idea|never knew|cant remember|dont remember|dont know|never learned|never learnt) how (?:to do )?(?:my |the )?(?:fractions?|sums?|maths?|arithmetic|percentages?|percents?|division|times tables?|long division)(?: (?:work|works|go|goes))?$/.test(
    ear.mask(part).replace(/(?: [,.;!-])+$/, ""),
  );

const asksWithin = (part: Part) =>
  part.some((item) =>
    /^(?:how|what|whats|which|when|why|where|who|should|can|could|would|will|please)$/.test(wordOf(item)),
  );

/** Words that would make another question of the one beside them. */
const changes = new Set(
  "back fan convection conventional sifted unsifted packed raw half double twice triple instead without not no never same other both each enough strong weak weaker stronger more less fewer extra finished total left already size usual again only just all none plain rest thick thin runny stiff soft hard dry wet broke broken split forgot wrong sorry mean meant wait actually done ready late early undo save note remember stop cancel help".split(
    " ",
  ),
);
