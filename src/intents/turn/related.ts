/** How two parts of a turn hang together: by their mix, by the bowl that is split, by a fault that is told. */
import { asksForOne } from "./belongs.ts";
import { carriesAmount, type Ear, opens, type Part } from "./part.ts";

export const hasBase = (part: Part) =>
  part.some((item) => item.is === "thing" && item.thing.base !== undefined);

/** Both name the same mix: the part behind asks about the one before. */
export const sharesBase = (left: Part, right: Part) =>
  right.some(
    (item) =>
      item.is === "thing" &&
      item.thing.base !== undefined &&
      left.some((other) => other.is === "thing" && other.thing.base === item.thing.base),
  );

const isOneBowl = (part: Part) =>
  part.some((item) => item.is === "thing" && item.thing.count === "bowls") &&
  part.filter((item) => item.is === "amount" && item.amount.dim === "weight").length === 1;

/** "500 g into 4 bowls. one is cocoa, how much in that bowl": of a part of the one that is split. */
export const asksOfSplit = (left: Part, right: Part, ear: Ear): boolean =>
  (isOneBowl(left) && ear.claimed(left)?.name === "split" && asksForOne(right, ear)) ||
  (isShared(left) && asksForColor.test(ear.mask(right))) ||
  (ear.claimed(left)?.name === "split" && asksForPart.test(ear.mask(right)));

/** "and gel for the bigger", "powder color for two of the four": into parts of what is split. */
const asksForPart =
  /^(?:(?:and|so|then|also|how much|what|whats|the|some|with|i want|i need|put|add|of) )*(?:\S+ )?\S*<[^>]*dose=[^>]*>(?: flavou?r\S*)?(?: (?:do i need|goes|should go|is needed|goes in))? (?:for|in|into) (?:just |only )?(?:the (?:bigger|larger|biggest|largest|big|smaller|smallest|small|little)(?: (?:\S*<count=bowls>|part|half|bowl|one)\S*)?|(?:one|two|three|\d)\S* of (?:them|those|these|the \S+))(?: (?:please|pls|too|as well))*(?: \?)?$/;

/** "420 g batter into 3 bowls, how much each": asked of the bowls that are told, and no question of its own. */
export const asksOfEach = (left: Part, right: Part, ear: Ear): boolean =>
  isOneBowl(left) && ear.claimed(left)?.name === "split" && ofEach.test(ear.mask(right));
const ofEach =
  /^(?:(?:so|and|then) )*(?:how (?:much|many grams|heavy)|what|whats|(?:the )?weight) (?:(?:is|goes|would|does|do|will|that|it|of|be|in|per|for|the|to|come|weigh|i|get|put|go|have) )*(?:each|every|apiece|per|one|bowl|a)(?: (?:one|bowls?|of (?:them|those)|\S*<count=bowls>|then|weigh|hold|get|have|come to|it is|is (?:that|it)))*(?: \?)?$/;

/** "1 part yellow 2 parts white", and "how much gel for the yellow" of it. */
const isShared = (part: Part) =>
  part.filter((item) => item.is === "thing" && item.thing.color !== undefined).length > 1 &&
  part.filter((item) => item.is === "amount").length > 1;
const asksForColor =
  /^(?:(?:and|so) )*how much (?:of )?(?:the )?\S*dose=(?:gel|powder)\S*(?: do i need| goes| should go)? (?:for|in|into) (?:just |only )?(?:the |my )?(?:\S+_)?\S*<[^>]*color=[^>]*>(?: one| part| half| bit)?(?: \?)?$/;

/** "they look brown already, take off 4": why the time of a timer is changed, and no question. */
const isReason =
  /^(?:(?:hm+|hmm|oh|ok|so|well|ah|ooh|,) )*(?:they|theyre|they re|these|its|it|the|my|tops?|shells?|edges?|some|most|one|a|few|tray)\S*(?: \S+){0,6}$/;
const changesTime =
  /^(?:(?:and|so|please|can you|could you|lets|let me|better|just) )*(?:(?:take|knock|shave|cut|chop|drop|lop)(?: it| them| that)?(?: (?:off|down|back|by))* (?:another |only )?\S*<(?:number|time)[,>]\S*(?: (?:min\S*|off|from (?:it|that|the \S+)|down|please|now))*$|(?:make (?:it|that) |give (?:it|them|that) |let (?:it|them) have )?(?:another )?\S*<(?:number|time)[,>]\S* (?:min\S* )?(?:less|fewer|more|longer|shorter|off)(?: (?:please|now))*$)/;
export const tellsWhyTime = (part: Part, order: Part, ear: Ear): boolean =>
  part.some((item) => item.is === "thing" && item.thing.symptom) &&
  isReason.test(ear.mask(part)) &&
  changesTime.test(ear.mask(order));

/** "my tops cracked again, also set a 25 min rest timer": a fault beside an order for the timers is asked about. */
export const tellsFaultBesideTimer = (part: Part, order: Part, ear: Ear): boolean =>
  part.some((item) => item.is === "thing" && item.thing.symptom) &&
  !carriesAmount(part) &&
  !tellsWhyTime(part, order, ear) &&
  ear.claimed(order)?.name === "timer" &&
  (opens(order, ear) || /(?:^| )(?:timers?|alarm|clock)(?: |$)/.test(ear.mask(order))) &&
  ear.claimed(part)?.name === "trouble";

/** "how much flavor for 180 g buttercream? also my ganache has split": a fault of another mix is a question too. */
export const tellsFault = (before: Part, part: Part, ear: Ear): boolean =>
  carriesAmount(before) &&
  hasBase(before) &&
  part.some((item) => item.is === "thing" && item.thing.symptom) &&
  hasBase(part) &&
  !sharesBase(before, part) &&
  ![undefined, ear.claimed(before)].includes(ear.claimed(part));

const sizes = new Set(["shells", "fill", "convert"]);
/** "..., so i need batter for 24 more", "of those": what the fault led to, and nothing of its own. */
const leanedOn =
  /^(?:(?:and|but|oh|ok|well|,) )*(?:so|because|since|as|again|still|instead|then)(?: |$)|(?:^| )(?:again|more|another|new|them|those|these|it|that|replace|redo|remake)(?: |$)/;
/** "whisked the whites 10 min, no peaks. batter for 24 macarons": the fault is asked about, and so is the size. */
export const tellsFaultAhead = (fault: Part, order: Part, ear: Ear): boolean =>
  fault.some((item) => item.is === "thing" && item.thing.symptom) &&
  !carriesAmount(fault) &&
  carriesAmount(order) &&
  !sharesBase(fault, order) &&
  ear.claimed(fault)?.name === "trouble" &&
  sizes.has(ear.claimed(order)?.name ?? "") &&
  !leanedOn.test(ear.mask(order));
