/** Puts back together what was cut: parts that ask nothing go with the one that does. */

import { takesBack } from "../../../data/words/openers.ts";
import { spanOf } from "../found/items.ts";
import type { Item } from "../found/scan.ts";
import {
  asksFlavorOf,
  asksForPlain,
  asksOfIt,
  asksOfRighted,
  asksOven,
  asksRest,
  asksToMatch,
  givesBowl,
  isBareTail,
  listsRecipe,
  tellsBowl,
  tellsMix,
  tellsPutIn,
  tellsThat,
} from "./belongs.ts";
import type { Cut } from "./cut.ts";
import { bringsList } from "./list-brought.ts";
import { asks, asksOnly, carriesAmount, type Ear, isTail, opens, orders, type Part } from "./part.ts";
import { asksOfSplit, tellsFault, tellsFaultAhead, tellsFaultBesideTimer } from "./related.ts";
import { asksWeightOf, isShareOf } from "./shares.ts";
import { asksAnew } from "./told-anew.ts";
import { flavorsMix, wantsMix } from "./wants-mix.ts";

/** "no stick with the dark. instant coffee for all of it?": an order of its own, for the mix before. */
const sticksTo =
  /^(?:(?:no|ok|actually|hm|nah|lets|ill|i|well) )*(?:stick\S*|stay|keep|go|back|going back) (?:with |to |for )?(?:the |my )?\S*<[^>]*chocolate=[^>]*>(?: one)?$/;

/** "no wait, 550. and what would it cost": of the answer before, and a question behind it. */
const righted = new RegExp(
  `^${takesBack}(?:(?:its|it is|make it|make that|only|just) )*\\S*<(?:weight|number|percent)>$`,
);
const goesOnAsking = /^(?:and|then|also|now) (?:what|how|when|which) /;

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

/** "make me a us label. 120 g almond flour, ...": the order, and what it is of. */
const ordersLabel = (order: Part, list: Part, ear: Ear): boolean =>
  !carriesAmount(order) &&
  /^(?:(?:please|can|could|would|you|i|id|we|make|do|write|print|draw|give|me|us|need|want|like|to|have|an?|the|us|u s|eu|american|european|ingredients?|food|allergen|new|now|ok|so|and|up|out) )*labels?(?: (?:please|pls|now|for me|for (?:this|these|it|them|that)))*$/.test(
    ear.mask(order),
  ) &&
  (ear.mask(list).match(/<weight> (?:of )?\S*<[^>]*ingredient=|<[^>]*ingredient=\S* \S*<weight>/g) ?? [])
    .length >= 2;

const endsAsked = (part: Part): boolean => {
  const end = part.at(-1);
  return end?.is === "sign" && end.text === "?";
};
const isAnother = /^(?:(?:and|also|plus|or) )+(?:for |in )?(?:the |my )?\S*<weight>(?: \?)?$/;

/** Parts that ask nothing go with the next that does, or the one before; a complete order stands alone. */
export function join(cuts: readonly Cut[], ear: Ear): Part[] {
  const out: Part[] = [];
  let waiting: Part = [];
  for (const { part, whole: alone } of cuts) {
    const whole = alone && !tellsThat(part, ear);
    const last = out.at(-1);
    // "240 g buttercream flavor? also 120 g": another bowl
    if (
      waiting.length === 0 &&
      last &&
      ((endsAsked(last) && isAnother.test(ear.mask(part))) ||
        wantsMix(last, part, ear) ||
        flavorsMix(last, part, ear))
    ) {
      out.push(part);
      continue;
    }
    if (
      waiting.length === 0 &&
      last &&
      (isBareTail(part, ear) ||
        (tellsPutIn(last, ear) && asksForPlain(part, ear)) ||
        givesBowl(last, part, ear) ||
        asksOfRighted(last, part, ear) ||
        asksOf(last, part) ||
        bringsList(last, part, ear) ||
        ordersLabel(last, part, ear) ||
        asksWeightOf(last, part, ear) ||
        asksPartsOf(last, part, ear) ||
        namesTimer(last, part, ear) ||
        timesTimer(last, part, ear) ||
        asksAnew(last, part, ear) ||
        asksAlone(last, part, ear))
    ) {
      out[out.length - 1] = joined(last, part);
      continue;
    }
    const apart =
      waiting.length > 0 &&
      !isBareTail(part, ear) &&
      !asksWeightOf(waiting, part, ear) &&
      !asksAlone(waiting, part, ear) &&
      !asksAnew(waiting, part, ear) &&
      !(
        (tellsSums(waiting, ear) && asksOfSums(part, ear)) ||
        (tellsStock(waiting, ear) && asksMixOf(part, ear))
      ) &&
      !asksOven(waiting, part, ear) &&
      !bringsList(waiting, part, ear) &&
      !isShareOf(waiting, part, ear) &&
      !(listsRecipe(waiting, ear) && asksRest(part, ear)) &&
      !asksToMatch(part, ear) &&
      !asksOfIt(waiting, part, ear) &&
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
    const isFault =
      waiting.length > 0 &&
      ((whole && tellsFault(part, waiting, ear)) ||
        tellsFaultBesideTimer(waiting, part, ear) ||
        tellsFaultAhead(waiting, part, ear));
    const isWish = waiting.length > 0 && (wantsMix(waiting, part, ear) || flavorsMix(waiting, part, ear));
    if (apart || isTimer || isFault || isWish || asksOfSplit(waiting, part, ear)) {
      out.push(waiting);
      waiting = [];
    }
    const isRighted = righted.test(ear.mask(waiting)) && goesOnAsking.test(ear.mask(part));
    if (waiting.length > 0 && (isRighted || sticksTo.test(ear.mask(waiting)))) {
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
  if (
    !last ||
    orders(waiting, ear) ||
    startsTimer ||
    tellsFault(last, waiting, ear) ||
    flavorsMix(last, waiting, ear)
  )
    return [...out, waiting];
  return [...out.slice(0, -1), joined(last, waiting)];
}

const asksParts =
  /^(?:(?:so|and|ok) )*(?:what|whats|which) (?:are |is )?(?:all )?(?:the )?(?:amounts?|weights?|ingredients|quantities|proportions|breakdown)(?: (?:please|then|for (?:it|that)))*(?: \?)?$|^(?:(?:so|and|ok) )*what (?:do|should|must|shall|would|will) (?:i|we) (?:weigh|measure)(?: (?:out|up|then|now|please|for (?:it|that)))*(?: \?)?$|^(?:(?:so|and|ok) )*what goes (?:on the scales?|in(?:to)? (?:it|that))(?: \?)?$|^(?:(?:so|and|ok) )*(?:what|how much) (?:does|do|is|are|will|would|should) (?:each(?: (?:one|part|line|thing|of (?:them|those|it)))?|every one|everything in it|the single lines) ?(?:come (?:out )?(?:to|at)|become|be|weigh|make|then)?(?: (?:then|now|please))*(?: \?)?$/;

/** "make all of it milk chocolate ganache": of what was worked out before. */
const makesOf =
  /^(?:(?:so|and|ok|now|please|then) )*(?:make|do|have) (?:(?:all|the lot|half) (?:of )?)?(?:it|that|this|them)? ?(?:all )?(?:(?:an? |\S*<[^>]*chocolate=[^>]*> |[a-z]+ )){0,2}\S*<[^>]*base=(?:ganache|buttercream)[^>]*>$/;

/** "give me 900 g of batter. what are the amounts?": of the mix that is ordered, and of nothing else. */
const asksPartsOf = (before: Part, part: Part, ear: Ear): boolean =>
  asksParts.test(ear.mask(part)) &&
  (/<weight> (?:of )?(?:[a-z]+ )?\S*<[^>]*base=/.test(ear.mask(before)) || makesOf.test(ear.mask(before))) &&
  !before.some((item) => item.is === "thing" && Boolean(item.thing.dose ?? item.thing.taste));

/** "20 minutes on a timer. call it proofing": its name. */
const namesTimer = (before: Part, part: Part, ear: Ear): boolean =>
  /^(?:(?:and|please|then|you can|so) )*(?:call|name|label|title) (?:it|this|that|the timer|this one|that one) /.test(
    ear.mask(part),
  ) &&
  !carriesAmount(part) &&
  ear.claimed(before)?.name === "timer" &&
  (/<time[,>]/.test(ear.mask(before)) || opens(before, ear));

/** "set a timer. 25 minutes": its time. */
const timesTimer = (before: Part, part: Part, ear: Ear): boolean =>
  !carriesAmount(before) &&
  /^(?:(?:for|in|of|make it|about|just) )*\S*<time>(?: (?:please|pls|long|from now))*$/.test(
    ear.mask(part),
  ) &&
  ear.claimed(before)?.name === "timer" &&
  /(?:^| )(?:timers?|alarm|countdown)(?: |$)/.test(ear.mask(before)) &&
  !endsAsked(before);

/** "filling for 36 macarons. how much?", "cost $18, margin 55 %. price?": nothing but what is wanted of the part before. */
const asksAlone = (before: Part, part: Part, ear: Ear): boolean => {
  if (endsAsked(before) || asks(before, ear) || !carriesAmount(before)) return false;
  const tool = ear.claimed(before)?.name;
  const mask = ear.mask(part);
  return (
    (/^(?:fill|shells|ganache|buttercream|dose)$/.test(tool ?? "") && muchAlone.test(mask)) ||
    (tool === "dose" && doseAlone.test(mask)) ||
    (tool === "cost" && sumAlone.test(mask)) ||
    (tool === "label" && listAlone.test(mask))
  );
};
const muchAlone =
  /^(?:(?:so|and) )*how (?:much|many \S*<unit=g>)(?: (?:is|do|does|i|it|that|need|take|make|in all|in \S*<unit=g>))*(?: \?)?$/;
/** "what does the dose come to?" */
const doseAlone =
  /^(?:(?:so|and) )*(?:what|how much) (?:does|do|will|would|is) (?:(?:the|that|it|this|my) )*(?:dose|dosage|amount|weight|quantity|\S*<dose=flavor>)?(?: ?(?:come|comes|work|works|amount|amounts) (?:out )?(?:to|at|as))?(?: (?:in \S*<unit=g>|then|please))*(?: \?)?$/;
const sumAlone =
  /^(?:(?:so|and|the|my|what|whats|what is|which) )*(?:price|margin|mark ?up|profit|selling price|food cost|price each|each|per (?:piece|macaron\S*|one))(?: (?:please|then|is that|in percent|each|apiece|per piece|per \S*<count=macarons>))*(?: \?)?$/;
const listAlone = /^(?:(?:so|and) )*(?:it )?contains what(?: \?)?$/;

/** "my smbc curdled when i added the butter. what do i do": about the fault that is told. */
const asksOf = (before: Part, part: Part): boolean =>
  asksOnly(part) && before.some((item) => item.is === "thing" && item.thing.symptom);

const joined = (a: Part, b: Part): Part => (a.length === 0 ? b : [...a, comma(b[0]), ...b]);

function comma(before: Item | undefined): Item {
  const at = before === undefined ? 0 : spanOf(before)[0];
  return { is: "sign", text: ",", at: [at, at] };
}
