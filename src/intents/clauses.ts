/** Splits a turn into its questions and orders. A part that asks nothing belongs to the one that does. */
import type { Tool } from "../tools/contract/index.ts";
import { withoutAsides } from "./asides.ts";
import {
  asksFlavorOf,
  asksForOne,
  asksForPlain,
  asksOthers,
  asksOven,
  asksRest,
  asksToMatch,
  givesBowl,
  isBareTail,
  listsRecipe,
  tellsBowl,
  tellsMix,
  tellsThat,
} from "./belongs.ts";
import { withoutCourtesy } from "./courtesy.ts";
import { spanOf } from "./items.ts";
import {
  asks,
  carriesAmount,
  type Ear,
  earFor,
  forAllOfIt,
  givesOnly,
  howAlone,
  isTail,
  opens,
  orders,
  type Part,
  states,
} from "./part.ts";
import type { Item } from "./scan.ts";
import { sharedCount, sharedEnd } from "./shared-end.ts";
import { endsNote, wholeTurn } from "./whole-turn.ts";

/** A part, and whether it asks something by itself. */
interface Cut {
  part: Part;
  whole: boolean;
}

/** Splits items into questions. Linear in their number but for the scoring of each candidate. */
export function clauses(all: readonly Item[], tools: readonly Tool[]): Part[] {
  const ear = earFor(tools);
  const asked = withoutCourtesy(all, ear);
  const whole = wholeTurn(ear.mask(asked));
  if (whole) return whole === "note" ? splitNote(asked, ear) : [asked];
  const items = withoutAsides(asked, ear);
  const cuts = cutSentences(items).flatMap((sentence) => {
    const pair = pairedBases(sentence);
    const cut = pair.flatMap((each) => cutWithin(each, ear));
    return pair.length > 1 ? cut.map((each) => ({ ...each, whole: true })) : cut;
  });
  // signs alone are a question too, one that nobody understands
  return cuts.length === 0 ? [items] : sharedCount(sharedEnd(join(cuts, ear), ear), ear);
}

/** A note keeps everything behind it, but "and set a timer" ends it. */
function splitNote(items: Part, ear: Ear): Part[] {
  for (let i = 1; i < items.length; i++) {
    const item = items[i] as Item;
    const joint =
      (item.is === "word" && ["and", "then"].includes(item.text)) ||
      (item.is === "sign" && /[.;]/.test(item.text));
    const rest = items.slice(i + 1);
    const comma = item.is === "sign" && item.text === ",";
    if ((comma && endsNote(ear.mask(rest), "comma")) || (joint && endsNote(ear.mask(rest), "word")))
      return [items.slice(0, i), ...join(cutWithin(rest, ear), ear)];
  }
  return [items];
}

/** Hard ends: ? ! ; and a full stop. */
function cutSentences(items: Part): Part[] {
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

/** "remind me, how did they come out": only leads up to the question. */
const leadIn =
  /^(?:(?:ok|so|and|please|oh|hey|right|now) )*(?:remind me|tell me|let me know|quick question)(?: again| please)?$/;

/** "weight of batter, and weight of filling". */
const measures = new Set(["and", "the", "weight", "amount", "quantity", "grams", "of"]);

/** "batter and filling for 24 macarons" asks the same of two mixes: the rest of the sentence belongs to each. */
function pairedBases(sentence: Part): Part[] {
  const isMix = (item: Item | undefined, base: string) => item?.is === "thing" && item.thing.base === base;
  for (const [first, second] of [
    ["batter", "filling"],
    ["filling", "batter"],
  ] as const) {
    const at = sentence.findIndex((item) => isMix(item, first));
    const next = sentence[at + 1];
    const joint = next?.is === "sign" && next.text === "," ? sentence[at + 2] : next;
    const end = sentence.findIndex((item, i) => i > at + 1 && i <= at + 6 && isMix(item, second));
    const plain = sentence
      .slice(at + 2, Math.max(end, 0))
      .every(
        (item) =>
          (item.is === "word" &&
            (end <= at + 4 ? !/^(?:how|what|whats|which)$/.test(item.text) : measures.has(item.text))) ||
          (item.is === "sign" && item.text === ","),
      );
    if (at < 0 || end < 0 || !plain || !(joint?.is === "word" && joint.text === "and")) continue;
    return [
      [...sentence.slice(0, at + 1), ...sentence.slice(end + 1)],
      [...sentence.slice(0, at), ...sentence.slice(end)],
    ];
  }
  return [sentence];
}

/** Soft ends: "and", "then", a comma, where both sides ask something. */
function cutWithin(items: Part, ear: Ear): Cut[] {
  const out: Cut[] = [];
  let from = 0;
  for (let i = 1; i < items.length; i++) {
    const joint = jointAt(items, i);
    const right = items.slice(i + joint);
    if (!joint || right.length === 0) continue;
    const left = items.slice(from, i);
    if (leadIn.test(ear.mask(left))) continue;
    // "timer for 45 min, call it chill"
    if (
      /^(?:and |, )*(?:call|name|label) it /.test(ear.mask(right)) &&
      /timer|alarm|<time>/.test(ear.mask(left))
    )
      continue;
    if (tellsMix(left, ear) && asksFlavorOf(right, ear)) continue;
    if (asksOthers(right, ear) || tellsThat(left, ear)) continue;
    const spoken = items.slice(i, i + joint).some((item) => item.is === "word");
    // before a comma alone only an open question or order counts; before "and" a complete phrase does too
    const head = items.slice(i + joint, nextJoint(items, i + joint));
    const complete =
      (!givesOnly(left) ||
        putIn(left, ear) ||
        /^(?:the |my )?\S*count=shells\S* (?:with|from|for|using) /.test(ear.mask(left))) &&
      !tellsWhatIsThere(left, ear) &&
      (carriesAmount(left) || opens(left, ear) || !states(left, ear) || tellsFault(right, left, ear)) &&
      ear.claimed(left) !== undefined &&
      (spoken ||
        (isList(left, head, ear) && hasBase(left) && hasBase(head)) ||
        (differ(left, head, ear) && apart.includes(ear.claimed(head)?.name ?? "")));
    // "which was the better one, show me my best batch": what nobody claims goes with what is claimed behind it
    const vague = ear.claimed(left) === undefined && !carriesAmount(left);
    const ofSplit = asksOfSplit(left, right, ear);
    if ((!asks(left, ear) && !complete && !ofSplit) || (vague && !spoken)) continue;
    // "what temp and how long for shells", "2 g oil fell into 300 g, what extra base": the question behind is its own
    const leads = !asks(left, ear) && !carriesAmount(right) && ear.claimed(right) === undefined;
    if (isLoose(left, ear) || (leads && sharesBase(left, right))) continue;
    if (ring.test(ear.mask(left)) && center.test(ear.mask(right))) continue;
    if (!ofSplit && !rightAsks(left, right, head, ear)) continue;
    out.push({ part: left, whole: true });
    from = i + joint;
  }
  const rest = items.slice(from);
  // "also orange zest for all of it" behind a full stop
  const more = out.length === 0 && /^(?:also|and|plus) /.test(ear.mask(rest)) && forAllOfIt(rest, ear);
  return [...out, { part: rest, whole: out.length > 0 || more || asks(rest, ear) }];
}

/** "i've got 275 g of dark ganache on the side": no question in it, and nothing that was done to it. */
const tellsWhatIsThere = (part: Part, ear: Ear): boolean =>
  !asks(part, ear) &&
  /(?:^| )(?:ive got|ive|i have|i got|i ve got|weve got|we have|we got|theres|there is|there are) (?:about |roughly |exactly |around )?\S*<weight/.test(
    ear.mask(part),
  ) &&
  !part.some((item) => item.is === "thing" && (item.thing.dose || item.thing.symptom)) &&
  part.filter((item) => item.is === "amount").length === 1;

/** "i put 10 g rum in 200 g buttercream": so much in so much is judged, without a question in it. */
const putIn = (part: Part, ear: Ear): boolean =>
  part.filter((item) => item.is === "amount" && item.amount.dim === "weight").length === 2 &&
  ear.claimed(part)?.name === "dose";

/** A question of which nothing says what it is about: "what temp", "how much". */
const isLoose = (part: Part, ear: Ear) =>
  part.length <= 3 && part.every((item) => item.is === "word") && ear.claimed(part) === undefined;

const hasBase = (part: Part) => part.some((item) => item.is === "thing" && item.thing.base !== undefined);

/** Both name the same mix: the part behind asks about the one before. */
const sharesBase = (left: Part, right: Part) =>
  right.some(
    (item) =>
      item.is === "thing" &&
      item.thing.base !== undefined &&
      left.some((other) => other.is === "thing" && other.thing.base === item.thing.base),
  );

/** The two parts of one filling, asked for in one breath. */
const ring = /(?:^| )(?:ring|border|rim|dam|wall|outer|outside)(?: |$)/;
const center = /(?:^| )(?:center|centre|middle|core|inside|inner)(?: |$)/;

const stepAsked = /^(?:how long|how many min\S*|what temp\S*|how hot) .*<step=/;

/** "batter for 36 macarons, and the filling to make": the other mix for as many. */
const asksFilling = (left: Part, right: Part, ear: Ear): boolean =>
  ear.claimed(left)?.name === "shells" &&
  carriesAmount(left) &&
  left.some((item) => item.is === "thing" && item.thing.count === "macarons") &&
  /^(?:the |their )?(?:\S+ )?\S*<base=filling>(?: (?:to make|too|as well|for (?:them|those|it|all)))*(?: \?)?$/.test(
    ear.mask(right),
  );

function rightAsks(left: Part, right: Part, head: Part, ear: Ear): boolean {
  if (asksFilling(left, right, ear)) return true;
  if (opens(right, ear) && !isTail(head) && !howAlone(head, ear)) return true;
  // "how many trays for 48 and how long do i bake them": of a step, whatever "them" are
  if (stepAsked.test(ear.mask(head)) && !["timer", "method", undefined].includes(ear.claimed(left)?.name))
    return true;
  if (
    carriesAmount(head) &&
    carriesAmount(left) &&
    (differ(left, head, ear) || isList(left, head, ear)) &&
    (!states(head, ear) || (differ(left, head, ear) && asks(head, ear)))
  )
    return true;
  // "cool timer, and 12 g caramel flavor in 350 g buttercream, fine?"
  const timer = ear.claimed(left)?.name === "timer" && opens(left, ear) && !carriesAmount(left);
  if (timer && carriesAmount(head) && differ(left, right, ear)) return true;
  return forAllOfIt(head, ear) || parallelTimes(left, head, ear);
}

const isOneBowl = (part: Part) =>
  part.some((item) => item.is === "thing" && item.thing.count === "bowls") &&
  part.filter((item) => item.is === "amount" && item.amount.dim === "weight").length === 1;

/** "500 g into 4 bowls. one is cocoa, how much in that bowl": of a part of the one that is split. */
const asksOfSplit = (left: Part, right: Part, ear: Ear): boolean =>
  (isOneBowl(left) && ear.claimed(left)?.name === "split" && asksForOne(right, ear)) ||
  (isShared(left) && asksForColor.test(ear.mask(right)));

/** "1 part yellow 2 parts white", and "how much gel for the yellow" of it. */
const isShared = (part: Part) =>
  part.filter((item) => item.is === "thing" && item.thing.color !== undefined).length > 1 &&
  part.filter((item) => item.is === "amount").length > 1;
const asksForColor =
  /^(?:(?:and|so) )*how much (?:of )?(?:the )?\S*dose=(?:gel|powder)\S*(?: do i need| goes| should go)? (?:for|in|into) (?:just |only )?(?:the |my )?(?:\S+_)?\S*<[^>]*color=[^>]*>(?: one| part| half| bit)?(?: \?)?$/;

/** The parts are for two calculators. */
const differ = (left: Part, right: Part, ear: Ear) => {
  const [first, second] = [ear.claimed(left), ear.claimed(right)];
  return second !== undefined && first !== second && !givesOnly(right);
};

/** Calculators that share nothing with a question before a comma. */
const apart = ["timer", "convert", "note"];

/** Calculators of which a sentence may hold several: "1 lb in g and 5 fl oz in ml". */
const several = ["convert", "dose", "timer"];
const isList = (left: Part, right: Part, ear: Ear) => {
  const tool = ear.claimed(right);
  return tool !== undefined && tool === ear.claimed(left) && several.includes(tool.name);
};

/** "timer 40 min for resting, another 10 min for the oven": the second half of a pair of times. */
const parallelTimes = (left: Part, right: Part, ear: Ear) =>
  /timer|ping|remind|clock|alarm|^set |<time.*<step/.test(ear.mask(left)) &&
  !/note|log/.test(ear.mask(left)) &&
  [left, right].every((part) => part.some((item) => item.is === "amount" && item.amount.dim === "time"));

const isJoint = (item: Item | undefined) =>
  (item?.is === "word" && ["and", "then", "also", "plus", "n"].includes(item.text)) ||
  (item?.is === "sign" && [",", "&", "-"].includes(item.text));

/** "100 plus 45", "30 - 45": a sign of a sum, no joint. */
const isSum = (items: Part, i: number) =>
  ["plus", "-"].includes((items[i] as { text?: string } | undefined)?.text ?? "") &&
  [items[i - 1], items[i + 1]].every((item) => item?.is === "amount" && item.amount.dim === "number");

function jointAt(items: Part, i: number): number {
  if (isSum(items, i)) return 0;
  let length = 0;
  while (isJoint(items[i + length])) length += 1;
  return length;
}

function nextJoint(items: Part, i: number): number {
  const at = items.findIndex((item, index) => index >= i && isJoint(item));
  return at < 0 ? items.length : at;
}

/** "no stick with the dark. instant coffee for all of it?": an order of its own, for the mix before. */
const sticksTo =
  /^(?:(?:no|ok|actually|hm|nah|lets|ill|i|well) )*(?:stick\S*|stay|keep|go|back|going back) (?:with |to |for )?(?:the |my )?\S*<[^>]*chocolate=[^>]*>(?: one)?$/;

/** "only 180 g sugar in the house. how much butter and whites for smbc": what there is, and the mix it goes into. */
const tellsStock = (part: Part, ear: Ear): boolean =>
  carriesAmount(part) &&
  /^(?:(?:i|ive|have|got|only|just|theres|there is|we) )*\S*<weight> (?:of )?\S*<[^>]*ingredient=\S*(?: (?:left|in the house|at home|here|in))*$/.test(
    ear.mask(part),
  );
const asksMixOf = (part: Part, ear: Ear): boolean =>
  !carriesAmount(part) &&
  /^(?:(?:so|and|ok) )*how much .*<[^>]*ingredient=.*(?:for|in) (?:the |my |a )?\S*<base=(?:buttercream|ganache)/.test(
    ear.mask(part),
  );

/** "ingredients £5, price £20. whats my food cost": sums, and what is asked of them. */
const tellsSums = (part: Part, ear: Ear): boolean =>
  ear.claimed(part)?.name === "cost" &&
  carriesAmount(part) &&
  !endsAsked(part) &&
  !/(?:^| )(?:how|what|whats|charge|which|margin|markup|calculate|work)(?: |$)/.test(ear.mask(part));
const asksOfSums = (part: Part, ear: Ear): boolean =>
  !carriesAmount(part) &&
  /^(?:(?:so|and|ok) )*(?:what|whats|how) .*(?:food cost|margin|mark ?up|profit|charge|price)/.test(
    ear.mask(part),
  );

const endsAsked = (part: Part): boolean => {
  const end = part.at(-1);
  return end?.is === "sign" && end.text === "?";
};
const isAnother = /^(?:(?:and|also|plus|or) )+(?:for |in )?(?:the |my )?\S*<weight>(?: \?)?$/;

/** Parts that ask nothing go with the next that does, or the one before; a complete order stands alone. */
function join(cuts: readonly Cut[], ear: Ear): Part[] {
  const out: Part[] = [];
  let waiting: Part = [];
  for (const { part, whole: alone } of cuts) {
    const whole = alone && !tellsThat(part, ear);
    const last = out.at(-1);
    // "240 g buttercream flavor? also 120 g": another bowl
    if (waiting.length === 0 && last && endsAsked(last) && isAnother.test(ear.mask(part))) {
      out.push(part);
      continue;
    }
    if (waiting.length === 0 && last && (isBareTail(part, ear) || givesBowl(last, part, ear))) {
      out[out.length - 1] = joined(last, part);
      continue;
    }
    const apart =
      waiting.length > 0 &&
      !isBareTail(part, ear) &&
      !(
        (tellsSums(waiting, ear) && asksOfSums(part, ear)) ||
        (tellsStock(waiting, ear) && asksMixOf(part, ear))
      ) &&
      !asksOven(waiting, part, ear) &&
      !(listsRecipe(waiting, ear) && asksRest(part, ear)) &&
      !asksToMatch(part, ear) &&
      !(tellsBowl(waiting, ear) && asksFlavorOf(part, ear)) &&
      !(tellsMix(waiting, ear) && asksFlavorOf(part, ear)) &&
      !(!asks(waiting, ear) && asksForPlain(part, ear)) &&
      orders(waiting, ear) &&
      !isTail(part) &&
      !/^(?:and |so )*(?:the |whats the |how )?(?:biggest|largest|most|big) /.test(ear.mask(part)) &&
      (whole || (orders(part, ear) && ear.claimed(part) !== ear.claimed(waiting)));
    // "..., i have 90 g cream. please start also the ganache timer"
    const isTimer =
      waiting.length > 0 &&
      ear.claimed(part)?.name === "timer" &&
      opens(part, ear) &&
      !["timer", undefined].includes(ear.claimed(waiting)?.name);
    const isFault = waiting.length > 0 && whole && tellsFault(part, waiting, ear);
    if (apart || isTimer || isFault || asksOfSplit(waiting, part, ear)) {
      out.push(waiting);
      waiting = [];
    }
    if (waiting.length > 0 && sticksTo.test(ear.mask(waiting))) {
      out.push(waiting);
      waiting = [];
    }
    waiting = joined(waiting, part);
    if (!whole) continue;
    out.push(waiting);
    waiting = [];
  }
  if (waiting.length === 0) return out;
  const last = out.at(-1);
  const startsTimer =
    last !== undefined &&
    ear.claimed(waiting)?.name === "timer" &&
    /(?:^| )timers?(?: |$)/.test(ear.mask(waiting)) &&
    !["timer", undefined].includes(ear.claimed(last)?.name);
  if (!last || orders(waiting, ear) || startsTimer || tellsFault(last, waiting, ear))
    return [...out, waiting];
  return [...out.slice(0, -1), joined(last, waiting)];
}

/** "how much flavor for 180 g buttercream? also my ganache has split": a fault of another mix is a question too. */
const tellsFault = (before: Part, part: Part, ear: Ear): boolean =>
  carriesAmount(before) &&
  hasBase(before) &&
  part.some((item) => item.is === "thing" && item.thing.symptom) &&
  hasBase(part) &&
  !sharesBase(before, part) &&
  ![undefined, ear.claimed(before)].includes(ear.claimed(part));

const joined = (a: Part, b: Part): Part => (a.length === 0 ? b : [...a, comma(b[0]), ...b]);

function comma(before: Item | undefined): Item {
  const at = before === undefined ? 0 : spanOf(before)[0];
  return { is: "sign", text: ",", at: [at, at] };
}
