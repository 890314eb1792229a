/** Cuts a sentence where one question ends and the next begins. */
import { asksFlavorOf, asksForPlain, asksOthers, tellsMix, tellsThat } from "./belongs.ts";
import { jointAt, nextJoint } from "./joints.ts";
import {
  asks,
  carriesAmount,
  type Ear,
  forAllOfIt,
  givesOnly,
  howAlone,
  isSum,
  isTail,
  opens,
  orders,
  type Part,
  states,
} from "./part.ts";
import {
  asksOfEach,
  asksOfSplit,
  hasBase,
  sharesBase,
  tellsFault,
  tellsFaultBesideTimer,
  tellsWhyTime,
} from "./related.ts";
import { isShareOf } from "./shares.ts";
import { timerOrdered } from "./timer-ordered.ts";
import { wantsMix } from "./wants-mix.ts";

/** A part, and whether it asks something by itself. */
export interface Cut {
  part: Part;
  whole: boolean;
}

/** "remind me, how did they come out": only leads up to the question. */
const leadIn =
  /^(?:(?:ok|so|and|please|oh|hey|right|now) )*(?:remind me|tell me|let me know|quick question)(?: again| please)?$/;

/** Soft ends: "and", "then", a comma, where both sides ask something. */
export function cutWithin(items: Part, ear: Ear): Cut[] {
  const out: Cut[] = [];
  let from = 0;
  for (let i = 1; i < items.length; i++) {
    const joint = jointAt(items, i);
    const right = items.slice(i + joint);
    if (!joint || right.length === 0) continue;
    const left = items.slice(from, i);
    if (leadIn.test(ear.mask(left))) continue;
    // "hmm they look brown already, take off 4": why, and nothing that is asked
    if (tellsWhyTime(left, right, ear)) {
      from = i + joint;
      continue;
    }
    // "no, take that back, undo it please": one thing taken back
    if (ear.claimed(left)?.name === "undo" && ear.claimed(right)?.name === "undo") continue;
    // "timer for 45 min, call it chill"
    if (
      /^(?:and |, )*(?:call|name|label) it /.test(ear.mask(right)) &&
      /timer|alarm|<time[,>]/.test(ear.mask(left))
    )
      continue;
    // "what if i only do 30 macarons, how much filling is that": on what condition it is asked
    if (
      isSign(items[i]) &&
      joint === 1 &&
      supposes.test(`${ear.mask(left)} `) &&
      asksSize.test(ear.mask(right))
    )
      continue;
    if (tellsMix(left, ear) && asksFlavorOf(right, ear)) continue;
    if (isShareOf(left, right, ear)) continue;
    if (asksPartToo(left, right, ear) || asksOfEach(left, right.slice(0, nextJoint(right, 0)), ear)) continue;
    if (isNextPriced(left, right, ear)) continue;
    // "i put 18 g in 310 g, how much plain do i add": one question
    if (putIn(left, ear) && asksForPlain(right, ear)) continue;
    if (asksOthers(right, ear) || tellsThat(left, ear)) continue;
    const spoken = items.slice(i, i + joint).some((item) => item.is === "word");
    // before a comma alone only an open question or order counts; before "and" a complete phrase does too
    const head = items.slice(i + joint, nextJoint(items, i + joint));
    if (wantsMix(left, head, ear)) {
      out.push({ part: left, whole: true });
      from = i + joint;
      continue;
    }
    const faulty = tellsFaultBesideTimer(left, right, ear);
    // "dark ganache, ive 160 g cream, and put the rest timer on": an order of its own
    if (((spoken && ordersTimer(right, ear)) || setsPlainly(right, ear)) && isOtherMatter(left, ear)) {
      out.push({ part: left, whole: true });
      from = i + joint;
      continue;
    }
    // "how long do they keep, and half an hour timer so i remember": a question, and an order behind it
    if (timerOrdered(ear.mask(right)) && asksOtherMatter(left, ear)) {
      out.push({ part: left, whole: true });
      from = i + joint;
      continue;
    }
    // "same for thirty, and how many whites for thirty": of the answer before, and a question of its own
    if (spoken && sameFor.test(ear.mask(left)) && (opens(right, ear) || ear.claimed(head) !== undefined)) {
      out.push({ part: left, whole: true });
      from = i + joint;
      continue;
    }
    const complete =
      (!givesOnly(left) ||
        putIn(left, ear) ||
        isSum(left, ear) ||
        faulty ||
        /^(?:the |my )?\S*count=shells\S* (?:with|from|for|using) /.test(ear.mask(left))) &&
      !tellsWhatIsThere(left, ear) &&
      (carriesAmount(left) ||
        opens(left, ear) ||
        !states(left, ear) ||
        tellsFault(right, left, ear) ||
        faulty) &&
      ear.claimed(left) !== undefined &&
      (spoken ||
        faulty ||
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

const ordersTimer = (part: Part, ear: Ear): boolean =>
  /^(?:please |also |can you |could you |then )*(?:put|set|start|get) (?:the|a|an|my|me a|another) (?:\S+ ){0,2}(?:timer|alarm)(?: (?:on|going|running|off|up|too|for \S+(?: \S+)?|please|pls|now))*(?: [.!?])*$/.test(
    ear.mask(part),
  );
const sameFor =
  /^(?:(?:and|so|ok|now|then|please|do) )*(?:(?:the |exactly the )?same(?: (?:again|thing|question))?|(?:that|it|this) again|once more) (?:for|with|at|in) (?:a |the )?\S*<(?:number|weight)>(?: (?:\S+ )?\S*<(?:count|base)=[^>]*>)?$/;

/** "dark ganache, 260 g, timer 5 min", "weights for 90 g whites, bake timer of 15 min": nothing but a timer and its time. */
const setsPlainly = (part: Part, ear: Ear): boolean =>
  /^(?:(?:please|also|then|and|set|start|put) )*(?:(?:a|an|the|my) )?(?:\S*<[^>]*step=[^>]*> )?(?:timer|alarm) (?:(?:for|of|to|at) )?\S*<time>(?: (?:please|pls|now|too))*(?: [.!?])*$/.test(
    ear.mask(part),
  );
const isOtherMatter = (part: Part, ear: Ear): boolean =>
  carriesAmount(part) && !["timer", "note", undefined].includes(ear.claimed(part)?.name);

/** A question of another calculator; "can you" and "how about" alone are none. */
const asksOtherMatter = (part: Part, ear: Ear): boolean =>
  part.length > 2 &&
  (!carriesAmount(part) || ear.claimed(part)?.name === "keep") &&
  questions.test(ear.mask(part)) &&
  !/(?:^| )(?:timers?|alarms?|ring|rings)(?: |$)/.test(ear.mask(part)) &&
  !["timer", "note", "formula", "undo"].includes(ear.claimed(part)?.name ?? "");
const questions =
  /^(?:(?:and|so|ok|oh|hey|please|now|but) )*(?:how (?!about)|hows |what (?!about)|whats |when |why |which |(?:do|does|is|are|will|can|could|should) (?:they|it|the|my|these|those|filled|\S*<))/;

const isSign = (item: Part[number] | undefined) => item?.is === "sign";
const supposes =
  /^(?:(?:and|so|but|ok|now|well) )*(?:what if|if|suppose|supposing|say) (?:i|we|its|it|there|theyre|they) /;
const asksSize =
  /^(?:(?:then|so) )?how (?:much|many) \S*<(?:base|count)=[^ ]*(?: (?:is|would|does|do|will|that|it|i|need|be|then|\?))*$/;

/** "260 g of almond flour at $15 a kilo ... and 200 g of whites at $7 a kilo": lines of one bill. */
const pricedLine =
  /\S*<(?:weight|number)> (?:of )?(?:\S+ ){0,2}?\S*<[^>]*ingredient=\S* (?:(?:at|for|which is|thats|costs?|costing) )*\S*<money/;
const isNextPriced = (left: Part, right: Part, ear: Ear): boolean =>
  (pricedLine.test(ear.mask(left)) && new RegExp(`^${pricedLine.source}`).test(ear.mask(right))) ||
  // "$5 of nuts plus $1 labels": sums of one bill
  (spentOn.test(ear.mask(right)) && /<money>/.test(ear.mask(left)) && ear.claimed(left)?.name === "cost");
const spentOn =
  /^(?:(?:the|a|an|some|my|another|also) )*\S*<money> (?:(?:of|for|on|worth|in|the|some|my) )*(?:packag\S*|packing|boxes\S*|box\S*|bags?|ribbons?|stickers?|labels?|wrap\S*|cartons?|ingredients|materials|\S*<[^>]*ingredient=\S*|nuts|\S*<count=boxes>)(?: (?:too|as well|please|\?))*$/;

const partAsked =
  "(?:so |then |also )*(?:how (?:much|many)|what|whats) (?:of )?(?:the |my |about )?(?:egg )?\\S*<ingredient=[^>]*>";
const onePart = new RegExp(
  `^${partAsked}(?: (?:do|should|must|would|will) (?:i|we) (?:need|use|want|weigh))?(?: (?:is|for) (?:that|it|this))?(?: then| please)*(?: \\?)?$`,
);
const partBefore = new RegExp(`(?:^| )${partAsked}(?: (?:do|should) (?:i|we) (?:need|use|want))?$`);

/** "350 g of butter for smbc, what whites and what sugar": two parts of one mix are asked for. */
const asksPartToo = (left: Part, right: Part, ear: Ear): boolean =>
  carriesAmount(left) &&
  !carriesAmount(right) &&
  partBefore.test(ear.mask(left)) &&
  onePart.test(ear.mask(right.slice(0, nextJoint(right, 0)))) &&
  ["buttercream", "scale", "ganache"].includes(ear.claimed(left)?.name ?? "");

/** "i've got 275 g of dark ganache on the side": no question in it, and nothing that was done to it. */
const tellsWhatIsThere = (part: Part, ear: Ear): boolean =>
  !asks(part, ear) &&
  /(?:^| )(?:ive got|ive|i have|i got|i ve got|weve got|we have|we got|theres|there is|there are) (?:about |roughly |exactly |around )?\S*<weight/.test(
    ear.mask(part),
  ) &&
  // "... and i want to make a milk ganache": what is there, and what it is for
  !/ (?:want|wanna|going|gonna|need|like|trying|hoping|plan|planning) (?:to |a )/.test(ear.mask(part)) &&
  !part.some((item) => item.is === "thing" && (item.thing.dose || item.thing.symptom)) &&
  part.filter((item) => item.is === "amount").length === 1;

/** "i put 10 g rum in 200 g buttercream": so much in so much is judged, without a question in it. */
const putIn = (part: Part, ear: Ear): boolean =>
  part.filter((item) => item.is === "amount" && item.amount.dim === "weight").length === 2 &&
  ear.claimed(part)?.name === "dose";

/** A question of which nothing says what it is about: "what temp", "how much". */
const isLoose = (part: Part, ear: Ear) =>
  part.length <= 3 && part.every((item) => item.is === "word") && ear.claimed(part) === undefined;

/** The two parts of one filling, asked for in one breath. */
const ring = /(?:^| )(?:ring|border|rim|dam|wall|outer|outside)(?: |$)/;
const center = /(?:^| )(?:center|centre|middle|core|inside|inner)(?: |$)/;

const stepAsked = /^(?:how long|how many min\S*|what temp\S*|how hot) .*<step=/;

/** "batter for 36 macarons, and the filling to make": the other mix for as many. */
const asksFilling = (left: Part, right: Part, ear: Ear): boolean =>
  ear.claimed(left)?.name === "shells" &&
  carriesAmount(left) &&
  left.some((item) => item.is === "thing" && item.thing.count === "macarons") &&
  /^(?:the |their )?(?:\S+ )?\S*<base=filling>(?: (?:to make|too|as well|for (?:them|those|it|all)|for (?:the|those|these|all|all the) \S*<number>(?: \S*<count=macarons[^>]*>)?))*(?: \?)?$/.test(
    ear.mask(right),
  );

/** "macarons from 420 g batter and batter for 36 macarons": two sizes of one matter, each with what is asked of it. */
const asksAnother = (left: Part, right: Part, ear: Ear): boolean => {
  if (!carriesAmount(left) || !ordersOfIts.test(`${ear.mask(right)} `)) return false;
  const tool = ear.claimed(left);
  return ["shells", "fill", "ganache"].includes(tool?.name ?? "") && tool === ear.claimed(right);
};
const ordersOfIts =
  /^(?:(?:the|also|and|then) )*\S*<[^>]*(?:base=(?:batter|filling)|ingredient=cream|chocolate=|count=(?:macarons|shells|trays))[^>]*> (?:(?:to make|needed|i need) )?(?:for|with|from|to go with) (?:(?:the|another|other) )?\S*<(?:weight|number)> /;

function rightAsks(left: Part, right: Part, head: Part, ear: Ear): boolean {
  if (asksFilling(left, right, ear) || asksAnother(left, head, ear)) return true;
  if (opens(right, ear) && !isTail(head) && !howAlone(head, ear)) return true;
  // "why is my batter runny some days, and fan oven for 150 c": no part of the fault
  if (
    ["trouble", "keep", "method"].includes(ear.claimed(left)?.name ?? "") &&
    asks(left, ear) &&
    ["convert", "timer", "dose", "cost"].includes(ear.claimed(head)?.name ?? "") &&
    (asks(head, ear) || orders(head, ear)) &&
    carriesAmount(head)
  )
    return true;
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
  // the allergens of one thing and another are one list
  return (forAllOfIt(head, ear) && ear.claimed(left)?.name !== "label") || parallelTimes(left, head, ear);
}

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
