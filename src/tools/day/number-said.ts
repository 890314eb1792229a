/** How many macarons are ordered: counted, or a bare number where only they can be meant. */
import type { Amount, Memory, Reading } from "../contract/index.ts";
import { bareNumbers, forUs, says } from "../lib/find.ts";
import { firstOf, type Way } from "../lib/ways.ts";
import type { Draft } from "./draft.ts";

/** An hour goes to twelve: a number up to there may be one, where more macarons than that were ordered. */
const lastHour = 12;
/** "make it 8" is still about macarons; below that, as about hours are spoken of, it is the hour. From memory. */
const leastRemade = 8;
/** Nobody bakes less than a small box where a dozen or more were ordered. From memory. */
const [leastOrder, dozen] = [6, 12];
/** Of one flavor for a day; one to three are trays, boxes or people. From memory. */
const leastOfTaste = 4;

/** What a number in an order says: the macarons, or the hour at which they are due. */
export function numberSaid(
  reading: Reading,
  memory: Memory,
  before: Draft | undefined,
): { macarons?: number; hour?: number } {
  const macarons = firstOf(countedWays, reading);
  if (macarons !== undefined) return { macarons };
  const bare = bareOrder(reading, memory, before);
  if (bare === undefined) return {};
  if (isHour(bare, reading, before)) return { hour: bare };
  // "no 1", behind two ovens: nobody bakes one where two dozen were ordered
  const isTooFew = bare < leastOrder && (before?.macarons ?? 0) >= dozen && memory.slot !== "macarons";
  return isTooFew ? {} : { macarons: bare };
}

const countsIn = ({ amounts }: Reading): Amount[] =>
  amounts.filter((each) => each.dim === "number" && each.unit === "" && !each.fraction);

/** Boxes of nobody knows how many are no number of macarons: it is asked for. */
const countedWays: readonly Way<Reading, number>[] = [
  // "36 macarons"
  (reading) => {
    const macarons = countsIn(reading).find((each) => each.of?.count === "macarons");
    return macarons && macarons.value + forUs(reading, macarons);
  },
  // "saturday: 20 pistachio 20 rose 20 vanilla": all of them
  (reading) => {
    const each = countsIn(reading).filter(
      ({ of }) => (of?.taste || of?.ingredient === "chocolate" || of?.chocolate) && !of.dose,
    );
    return each.length > 1 && reading.whens.length > 0
      ? each.reduce((sum, { value }) => sum + value, 0)
      : undefined;
  },
  // "she wants 12 more for tuesday 3 pm"
  (reading) =>
    /(?:wants?|needs?|ordered|asked for|orders?) \S*<number>(?: more| of them| extra)? (?:for|by|on) \S*<when>/.test(
      reading.mask,
    )
      ? countsIn(reading).find((each) => !each.of && each.value >= 2)?.value
      : undefined,
  // "need thirty six tomorrow at ten, is that possible": no time follows that counts itself
  (reading) =>
    /^(?:(?:ok|so|hi|hey|and|i|we|they|she|he|ill|well) )*(?:need|want|have to have|must have)s? \S*<number> \S*<when>/.test(
      reading.mask,
    )
      ? countsIn(reading).find((each) => !each.of && each.value >= 2)?.value
      : undefined,
  // "ok what about tomorrow 4 pm for the thirty six"
  (reading) =>
    /<when> (?:for|with) (?:the|those|these|all|my) \S*<number>(?: (?:then|please|pls))*(?: [?])?$/.test(
      reading.mask,
    )
      ? countsIn(reading).find((each) => !each.of && each.value >= 2)?.value
      : undefined,
  // "36 lemon for sunday 2pm"
  (reading) =>
    /<number> \S*<[^>]*taste=[^>]*>(?: ones)? (?:for|by|on) .*<when>/.test(reading.mask)
      ? reading.amounts.find(
          (each) => each.dim === "number" && each.unit === "" && each.of?.taste && each.value >= leastOfTaste,
        )?.value
      : undefined,
];

/** A number of nothing, where the sentence or the talk leaves only macarons to be counted. */
function bareOrder(reading: Reading, memory: Memory, before: Draft | undefined): number | undefined {
  if (reading.amounts.some((each) => each.of?.count === "boxes")) return undefined;
  const isMeant =
    memory.slot === "macarons" ||
    memory.follows ||
    orderWords.some((words) => says(reading, words)) ||
    // "party mum wants 42"
    (before !== undefined && says(reading, /(?:wants?|needs?|asked for|ordered) \S*<number>$/)) ||
    // "pink macarons, 24 for friday 3pm"
    (says(reading, /<number> (?:of them )?(?:for|by|on|until) \S*<when>/) &&
      reading.things.some((each) => each.count === "macarons"));
  return isMeant
    ? bareNumbers(reading).find(
        ({ at }) => !/\b(?:instead of|rather than|not) $/.test(reading.text.slice(0, at[0])),
      )?.value
    : undefined;
}

/** What macarons are called where they are given away: "60 party favors", "a hundred little ones". */
const given =
  "(?:favou?rs?|gifts?|treats?|pieces|pcs|bites|goodies|sweets|nibbles|dainties|presents|giveaways|thank ?yous?|ones)";
/** They eat them, or are counted themselves: "60 guests". */
const notPeople =
  "(?! (?:each|apiece|per|an?) )(?! (?:\\S+ )?(?:guests?|people|persons?|kids|children|friends|heads|adults|colleagues|students|families|tables?|years?|birthday|hours?|minutes|days|trays?|boxes|batches|ovens?))";

const orderWords: readonly RegExp[] = [
  new RegExp(
    `<number> (?:(?:little|small|mini|tiny|party|wedding|sweet|of the|[a-z]+) ){0,2}?${given}(?: |$)`,
  ),
  new RegExp(`(?:^| )${given}(?: (?:for|of) (?:\\S+ ){1,3}?)? ?[,:-] \\S*<number>${notPeople}`),
  // "baby shower treats: 40, thursday 5 pm", "wedding, 48 of them, on the 20th"
  /(?:^|[,:] )(?:(?:about|around|some|only|say|exactly) )?\S*<number> of (?:them|those|these)(?: |$)/,
  /(?:^| )(?:ready|done|due|finished|needed|wanted)(?: |$)/,
  // "20 for saturday 3pm, mango ganache"
  /^(?:(?:ok|and|so|now|need) )*\S*<number> (?:for|by) \S*<when>/,
  // "24 today", "..., 30 tomorrow at 4 pm": nothing else is counted for a day
  new RegExp(
    `(?:^|[,.;] )(?:(?:ok|and|so|now|need|just|only|then) )*\\S*<number>${notPeople} (?:(?:for|by|on|at) )*\\S*<when>(?: (?:at )?\\S*<when>)?(?: (?:please|pls|then|[.?!]))*$`,
  ),
  // "plan 36 for tuesday noon"
  new RegExp(
    `(?:^|[,:] )(?:(?:please|can you|could you|ok|and|so) )*(?:plan|schedule|time) (?:me )?\\S*<number>${notPeople} (?:\\S+ ){0,3}?(?:for|by|on|due|ready) .*<when>`,
  ),
  // "making 60 for a christening next sunday noon"
  /(?:making|baking|doing|bake|make|need|order of|order for) \S*<number> (?:for|by) .*<when>/,
];

/** "no i meant three", after "thirty macarons for tuesday at two": another hour, not three macarons. */
const isHour = (bare: number, reading: Reading, before: Draft | undefined): boolean =>
  bare <= lastHour &&
  (before?.macarons ?? 0) > lastHour &&
  before?.due?.minute !== undefined &&
  (/(?:^| )(?:meant?|sorry|wait|actually|not|moved|changed|pushed|shifted|said|says) /.test(reading.text) ||
    (bare < leastRemade && /(?:^| )make (?:it|that) /.test(reading.text)) ||
    // "without the rest, still for 6": the hour at which they were due
    (/(?:^| )(?:still|again|same|also) (?:(?:for|by|at|due|ready|needed) )+(?:the )?\d/.test(reading.text) &&
      (Number(before.due.minute) / 60 - bare) % lastHour === 0));

/** "half of them", "twice as many". */
export const timesSaid = (reading: Reading): number | undefined =>
  says(reading, /(?:of (?:that|those|them|it)|as many|that many|double|twice|triple|half)(?:<| |$)/)
    ? reading.amounts.find((each) => each.unit === "times" || (each.dim === "number" && each.fraction))?.value
    : undefined;
