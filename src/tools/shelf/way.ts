/** Which way an order goes: put there, taken out, counted, asked for. Where no word says, it is asked, never added. */
import type { Amount, Memory, Reading } from "../contract/index.ts";
import { says } from "../lib/find.ts";
import { nameOf } from "../lib/lines.ts";
import type { Draft } from "./draft.ts";
import type { Does } from "./entries.ts";
import {
  addingWord,
  adds,
  comes,
  corrects,
  counts,
  isBareList,
  leaves,
  ofShelf,
  putElsewhere,
  stands,
  takes,
  takingWord,
  undoes,
} from "./moves.ts";
import { asksStill } from "./still-have.ts";

/** "shelf", "my cupboard?", "bottles?": all that is there. */
const isNameOfAll =
  /^(?:(?:and|my|the|our|show|open|whole|list|see|check|what|which|all|saved) )*(?:pantry|larder|cupboards?|shelf|shelves|(?:store )?stock|inventory|store cupboard|bottles)(?: (?:list|contents|please|pls|saved))*(?: \?)?$/;

const isMeasure = ({ dim, fraction }: Amount): boolean =>
  dim === "weight" || dim === "volume" || (dim === "number" && !fraction);

export function doesWhat(reading: Reading, before: Draft | undefined, memory: Memory): Does | undefined {
  const measured = reading.amounts.filter(isMeasure);
  if (says(reading, isNameOfAll)) return "list";
  // "forget the butter" is all of it; "remove 100 g butter" so much
  if (
    measured.length === 0 &&
    says(reading, /^(?:please |pls |ok |and )*(?:forget|remove|delete|drop|take .* off)/)
  )
    return "forget";
  // "does the fridge have 250 g butter": so much is asked about, and not put there
  const wonders =
    /^(?:(?:so|and|hm|ok|but) )*(?:does|do|did|is there|are there|have (?:i|we)) (?:the|my|our|i|we|still|\S*<weight>)/;
  const asks =
    says(reading, wonders) ||
    (measured.length === 0 && (says(reading, nameAsked) || asksStill(reading.mask))) ||
    (!says(reading, putThere) &&
      !says(reading, putsSo) &&
      says(
        reading,
        /how (?:much|many)|how (?:are|am) (?:we|i) (?:doing )?(?:for|on|with)|^(?:(?:and|so|ok|now|please|can you) )*check (?:on |up on )?(?:(?:the|my|our|stock|of) )*\S*<|do i (?:still )?have|have i (?:still )?got (?:any|some)|is there (?:any|still)|any .* left|^(?:(?:and|so|is|there) )*any(?:thing)? left of |(?:in stock|on the shelf|left|in the (?:house|cupboard|pantry)) \?$|(?:in stock|on the shelf|left|remaining|pantry|larder|cupboard) (?:is|are|comes to|would be)(?: (?:now|then|what|how much|at))*(?: \?)?$|whats left|what is left|^(?:and )?(?:the |my )?\S*<(?:ingredient|chocolate|taste)\S* (?:\S*<\S* )?(?:left|remaining|remains?)(?: over)?(?: (?:now|then))*(?: \?)?$/,
      ));
  const hasPrice =
    reading.amounts.some((each) => each.dim === "money") ||
    says(reading, /(?:costs?|cost me|paid|price) \S*<number|<number> (?:per|a|the) \S*<unit=(?:kg|g|lb|oz)/);
  if (hasPrice && !asks) return "price";
  if (!asks) {
    const moved = moves(reading, before, measured);
    if (moved) return moved;
  }
  const named = reading.things.some((each) => each.ingredient || each.taste || each.chocolate);
  // "so whats left in the pantry": all of it, and not only what was spoken of last
  if (
    asks &&
    !named &&
    says(
      reading,
      /(?:whats|what is|what do i have|what have i got|whats all|anything) (?:\S+ )*(?:in|on) (?:the|my|our) (?:pantry|cupboard|larder|shelf|house|kitchen|stock)/,
    )
  )
    return "list";
  if (asks)
    return reading.things.some((each) => each.ingredient || each.taste) || memory.follows || before?.entries
      ? "ask"
      : "list";
  if (
    says(reading, /(?:what|whats|show|list|tell|which) /) &&
    !reading.amounts.some((each) => each.dim === "weight")
  )
    return "list";
  return told(reading, before, measured);
}

/** "put 2 kg icing sugar on the shelf?": an order, whatever sign stands behind it. */
const putsSo =
  /^(?:(?:please|pls|ok|and|so|can you|could you|would you) )*(?:put|add|stick|store|place|pop|throw) (?:another |the )?\S*<(?:weight|volume|number)/;
/** "theres 1.5 kg icing sugar here, put it in the pantry?": an order, however politely it ends. */
const putThere =
  /(?:^| )(?:put|place|set|store|stow|enter|add|keep) (?:all (?:of )?)?(?:it|them|that|this|those|these)(?: all| away| down)? (?:in|into|on|onto|to|under) (?:the|my|our) (?:pantry|larder|cupboard|shelf|stock|house|kitchen)(?: (?:please|too|then|for me))*(?: \?)?$/;

/** "almond flour?", "what about the sugar": how much there is of it, whatever was done before. */
const nameAsked =
  /^(?:(?:and|so|ok|then|now|the|my|any) )*\S*<(?:[^>]*,)?(?:ingredient|chocolate)=[^>]*>(?: (?:then|now|left|remaining))* \?$|^(?:(?:and|so|ok|then) )*(?:what|how) about (?:(?:the|my) )*\S*<(?:[^>]*,)?(?:ingredient|chocolate)=[^>]*>(?: (?:then|now))*(?: \?)?$/;

/** What a verb or a count says of it. */
function moves(reading: Reading, before: Draft | undefined, measured: readonly Amount[]): Does | undefined {
  const { mask } = reading;
  const isPlace =
    /^(?:(?:my|the|our|in|on|for) )*(?:pantry|larder|cupboard|shelf|stock)(?: :| has| holds|,)/.test(mask);
  // "pantry: 80 g almond flour and that's it, i gave the rest to my neighbor"
  if (isPlace) return adds.test(mask) ? "add" : "set";
  if (leaves.test(mask) && measured.length > 0) return "use";
  if (comes.test(mask)) return "add";
  const put = /(?:^| )(?:put|add|bought)(?: |$)/.test(mask);
  if (!put && stands.test(mask)) return "set";
  if ((undoes.test(mask) || wonders.test(mask)) && measured.length > 0) return "unsure";
  // "mom gave 100 g butter", "100 g butter went in the fridge": which way isn't sure
  const isUnsure =
    /^(?!(?:(?:and|so|ok|then|i|we|ive|have|just|also) )*(?:i|we|ive|gave|give|gives) )(?:[a-z]+ ){1,3}(?:gave|gives) \S*<weight>|<(?:[^>]*)> went (?:in|into) the (?:fridge|pantry|cupboard|freezer|larder)/;
  if (isUnsure.test(mask) && measured.length > 0) return "unsure";
  if (measured.some(({ value }) => value < 0)) return "use";
  if (lessOf.test(mask) || takes.test(mask)) return taken(reading, before, put);
  return undefined;
}

/** "can i take 100 g butter": nothing was taken yet. */
const wonders =
  /^(?:(?:and|so|ok|but) )*(?:(?:can|could|should|may|shall|will|would|do|did) (?:i|we)|what if|if|suppose|is it ok)(?: |$)/;

/** "40 g less", "less 40 g". */
const lessOf = /(?:^| )less \S*<(?:weight|volume)|<(?:weight|volume)>(?: \S*<[^>]*>)? less(?: |$)/;

/** "put in 100 g of the new bag, the old one is finished": of two ways neither is sure. */
function taken(reading: Reading, before: Draft | undefined, put: boolean): Does {
  const first = reading.mask.search(new RegExp(`(?:^| )${takingWord}(?:<\\S*)?(?= |$)`));
  const added = reading.mask.search(new RegExp(`(?:^| )${addingWord}(?:<\\S*)?(?= |$)`));
  const isBoth = put && added >= 0 && added < first && before?.does !== "use";
  return isBoth ? "unsure" : "use";
}

/** Words of putting, of counting, of putting right; at last a list that goes on from the order before. */
function told(reading: Reading, before: Draft | undefined, measured: readonly Amount[]): Does | undefined {
  // "ive got 300 g" tells what there is; "got 300 g" came
  const mask = reading.mask.replace(/(^| )(i have|ive|we have|weve|have|only|still) got(?= |$)/g, "$1$2");
  const own = before?.does;
  const goesOn = own === "use" || own === "add" || own === "set" || own === "unsure";
  const isAdd = adds.test(mask);
  const isOfShelf =
    goesOn || own === "ask" || own === "list" || own === "forget" || own === "price" || own === "pack";
  const isStored = isOfShelf || ofShelf.test(mask);
  // "and another 160", behind what was used
  if (
    own === "use" &&
    /^(?:(?:and|then|plus|ok|oh) )*(?:(?:another|more|a further) \S*<(?:weight|number)>|\S*<(?:weight|number)>(?: \S*<[^>]*>)? (?:more|extra|again)$)/.test(
      mask,
    )
  )
    return "use";
  // "and 260 g of the almond flour too", behind what was used: used as well
  if (own === "use" && isAdd && isBareList(mask.replace(asWell, " ")) && reading.amounts.length > 0)
    return "use";
  if (!isAdd && counts.test(mask)) return isStored || measured.length === 0 ? "set" : "unsure";
  if (!isAdd && goesOn && corrects.test(mask)) return own;
  if (/(?:^| )(?:correct|should be|change|set .* to|left)(?: |$)/.test(mask) && !isAdd) return "set";
  if (isAdd) return isStored && !putElsewhere.test(mask) ? "add" : measured.length > 0 ? "unsure" : own;
  if (/(?:^| )(?:pantry|larder|cupboard|stock|shelf)(?: |$)/.test(mask)) return "set";
  // "and for 120", behind a question of what there is: nothing came
  if (own === "ask" && /^(?:(?:and|or|what about|how about|ok) )*for \S*<number/.test(mask)) return undefined;
  if (measured.length === 0) return own;
  // "icing sugar 2.20", behind a price: the next price
  if (own === "price" && isBareList(mask) && isPriceList(reading)) return "price";
  if (isBareList(mask) && isOfShelf) return goesOn ? likeBefore(reading, before) : "add";
  return ofShelf.test(mask) ? "add" : "unsure";
}

/** Words of putting there that only say "as well". */
const asWell = /(?:^| )(?:also|too|as well|plus|another|extra)(?= |$)/g;

/** Things with one bare number each, and no weight. */
const isPriceList = ({ amounts, things }: Reading): boolean =>
  amounts.length > 0 &&
  amounts.every(
    ({ dim, unit, fraction }) => dim === "money" || (dim === "number" && unit === "" && !fraction),
  ) &&
  things.filter((each) => each.ingredient || each.chocolate).length === amounts.length;

/** "and 200 g sugar" goes the way of what came before; the same thing once more is more of it, or all that there is. */
function likeBefore({ mask, things }: Reading, before: Draft | undefined): Does | undefined {
  const entries = before?.entries ?? [];
  const isNamed = things.some((each) => each.ingredient || each.chocolate || each.taste);
  const isSame = entries.some(
    ({ name, grams }) => grams !== undefined && (!isNamed || things.some((each) => name === nameOf(each))),
  );
  const isMore = before?.does === "add" && /^(?:and|plus) /.test(mask);
  return isSame && before?.does !== "use" && !isMore ? "unsure" : before?.does;
}
