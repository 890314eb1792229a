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
  (isShared(left) && asksForColor.test(ear.mask(right)));

/** "1 part yellow 2 parts white", and "how much gel for the yellow" of it. */
const isShared = (part: Part) =>
  part.filter((item) => item.is === "thing" && item.thing.color !== undefined).length > 1 &&
  part.filter((item) => item.is === "amount").length > 1;
const asksForColor =
  /^(?:(?:and|so) )*how much (?:of )?(?:the )?\S*dose=(?:gel|powder)\S*(?: do i need| goes| should go)? (?:for|in|into) (?:just |only )?(?:the |my )?(?:\S+_)?\S*<[^>]*color=[^>]*>(?: one| part| half| bit)?(?: \?)?$/;

/** "my tops cracked again, also set a 25 min rest timer": a fault beside an order for the timers is asked about. */
export const tellsFaultBesideTimer = (part: Part, order: Part, ear: Ear): boolean =>
  part.some((item) => item.is === "thing" && item.thing.symptom) &&
  !carriesAmount(part) &&
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
