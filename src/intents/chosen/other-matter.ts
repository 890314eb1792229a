/** A question of another matter, told by its turn of phrase, and how many a guest eats, which no rule says. */
import { otherMatters } from "../../../data/words/other-matters.ts";
import { people } from "../../../data/words/people.ts";
import type { Reading } from "../../tools/contract/index.ts";

const plainOf = ({ mask }: Reading): string =>
  mask
    .replace(/<[^>]*>/g, "")
    .replaceAll("_", " ")
    .replace(/ [?.!,;:]/g, "")
    .trim();

/** "no calories needed": what isn't asked. */
const refused = /\b(?:no|not|without|dont need|dont want|skip|never mind|forget)(?: the| any| about)* $/;

const unasked =
  /^ (?:dont|do not|doesnt|does not|arent|isnt|not) (?:matter|needed|count|counted|important|wanted|interest)/;

/** "after i walk the dog: flavor for 230 g": told before what is asked, or behind it. */
function isTold({ mask }: Reading, found: string): boolean {
  const parts = mask.split(/ [,:;.?!]+(?: |$)/);
  const at = parts.findIndex((part) =>
    part
      .replace(/<[^>]*>/g, "")
      .replaceAll("_", " ")
      .includes(found),
  );
  const ours = (part: string) => /<(?:[^>]*,)?(?:base|dose)=/.test(part);
  return (
    at >= 0 &&
    !asks.test(parts[at] ?? "") &&
    !ours(parts[at] ?? "") &&
    parts.some((part, place) => place !== at && ours(part))
  );
}
const asks =
  /(?:^| )(?:how|what|whats|who|whos|which|why|when|can|could|any|recommend|suggest|please|text|call|email|message|play|tell|give)(?: |$)/;

/**
 * Its name; undefined where a fault is told, or the words are a note's. Pure.
 * @param isTimed a length of time is taken for a timer's: what may be timed is ours
 */
export function otherMatter(reading: Reading, isTimed = false): string | undefined {
  const said = plainOf(reading);
  return otherMatters.find(({ says, hasHours, unless }) => {
    if ((isTimed && !hasHours) || unless?.test(reading.mask)) return false;
    const found = says.exec(said);
    if (found === null || isTold(reading, found[0])) return false;
    return (
      !refused.test(said.slice(0, found.index)) && !unasked.test(said.slice(found.index + found[0].length))
    );
  })?.name;
}

const eaters = [...people, "guest", "people", "heads", "of us", "of them", "eaters", "colleagues"].join("|");
const howMany =
  /(?:how|hw) many (?:of )?(?:the |my )?\S*<(?:[^>]*,)?count=(?:macarons|boxes)|(?:number|amount) of \S*<(?:[^>]*,)?count=macarons|how many (?:boxes|per|each|for|do i (?:need|make|bake)|should i (?:make|bake))/;
const ofGuests = new RegExp(
  `(?:^| )\\S+<number> (?:[a-z]+ ){0,2}?(?:${eaters})(?: |$)|(?:party|wedding|crowd|group|table|dinner|tea) (?:of|for) (?:about |around )?\\S+<number>(?: |$)`,
);
const perGuest = new RegExp(`(?:^| )(?:per|for each|for every) (?:single )?(?:${eaters}|head)(?: |$)`);
const isShared = /(?:^| )(?:each|apiece|everyone|everybody|a head|a piece)(?: |$)/;
const fromBatch = /<(?:weight|volume)|base=(?:batter|filling)/;

/** "how many macarons for 30 guests", "how many per person": what each eats isn't said, and no rule says it. Pure. */
export function asksPerGuest({ mask, amounts }: Reading): boolean {
  const counted = amounts.some((each) => each.of?.count === "macarons" && !isPerson(mask));
  if (!howMany.test(mask) || counted || isShared.test(mask) || fromBatch.test(mask)) return false;
  return ofGuests.test(mask) || perGuest.test(mask);
}

/** The number stands before whoever comes: "for 30 guests". */
const isPerson = (mask: string): boolean => ofGuests.test(mask);

/** "if only i had a 4th hand, lol": a sigh, and nothing asked. Pure. */
export const isSigh = ({ mask, things }: Reading): boolean =>
  /^(?:(?:and|so|oh|ha|haha|lol|well|ugh|god|but|ok|,) )*(?:if (?:only )?(?:i|we) (?:only )?had|(?:i )?wish (?:i|we) had|would that i had|(?:(?:i|we) )?could (?:do with|use)|(?:i|we) need|what i (?:need|want) is) (?:\S+ ){0,3}(?:hands?|arms?|heads?|brains?|ovens?|kitchens?|fridges?|clones?|of me|lives|coffees?|helpers?|mixers?|eyes|legs)(?: (?:,|lol|haha|ha|hehe|too|now|right now|today|here|though|tho|!|[.]))*$/.test(
    mask.replace(/<[^>]*>/g, ""),
  ) && !things.some((each) => each.base ?? each.ingredient ?? each.dose);
