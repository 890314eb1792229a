/** The days in a question about keeping: when they were made, frozen, thawed, and which day she asks about. */
import { leadingIn, takingBack } from "../../../data/words/openers.ts";
import { warmPlaces } from "../../../data/words/warm-places.ts";
import type { Memory, Reading, When } from "../contract/index.ts";
import { wordsOf } from "../lib/pieces.ts";
import { inBase } from "../lib/units.ts";
import { placeless } from "../lib/when-said.ts";
import type { Draft } from "./draft.ts";
import { fridgeForUnfrozen } from "./unfrozen.ts";

export const outWords =
  /\b(?:out|outside|unchilled|(?:on|by|in) (?:the |a |my )?(?:bus|train|tube|tram|taxi)|(?:bus|train) (?:ride|trip)|rucksack|backpack|handbag|counter\w*|worktop|table|porch|car|stall|market|sun|room temp\w*|unrefrigerated|overnight|(?:kitchen|on the) side|sideboard|window ?sill|bench|boot|trunk|picnic|buffet|on (?:the |a )?(?:display|show)(?! fridge)|trestle|dessert bar|cake stand|(?:stand|stood|sit|sat|stay|last|left|set|survive|wait|be) (?:up |out )?at (?:the|a|my|our|her|his) (?:wedding|party|reception|shower|christening|office|fair|fete|show))\b/;
/** Places without a fridge, where a length of time is told of one. */
export const stayed = new RegExp(
  `\\b(?:on|in|at|by|under) (?:the |a |my |our |her |his )?(?:\\w+ )?(?:${warmPlaces})\\b`,
);
/** Longer than any limit, whatever the hours. */
export const dayLong =
  /\b(?:overnight|all (?:night|day|weekend)|last night|(?:since|from) (?:yesterday|the day before|last \w+|monday|tuesday|wednesday|thursday|friday|saturday|sunday))\b/;
/**
 * Macarons were filled then; "filled macarons" that are frozen, or "36 filled ones" in the freezer, are only what they
 * are like.
 */
export const filledThen = [
  "(?<!\\b(?:of|the|my|some|those|these|with|froze|freeze|freezing|frozen|\\d+|few|dozen) )",
  "fill?ed",
  "(?! (?:macarons?|macs|ones|boxes) (?:(?:that|which|i|we|were|was|are|got|went|have been|put) )*(?:froze|frozen|(?:in|into) the freezer))",
].join("");
export const iceWords = /\b(?:fr[ei]+z\w*|froze|frozen|frost\w*)\b/;

/** Each moment goes to the last deed named before it: made, frozen, thawed; else it is the day asked about. */
export function readDays(reading: Reading, memory: Memory): Draft {
  const out: Draft = {};
  const slot =
    memory.slot === "made" || memory.slot === "frozen" || memory.slot === "thawed" ? memory.slot : undefined;
  const first = reading.whens[0];
  // "filled monday, ok to sell saturday?", where the day of freezing was asked: no answer to that
  const told = first ? deedsIn(reading.text.slice(0, first.at[0])) : [];
  const answers = slot !== undefined && (told.length === 0 || told.includes(slot));
  if (slot && first && answers) return { [slot]: placeless(first) };
  // "and the 8th?", behind those made on another day
  const followed = memory.follows && memory.last?.tool === "keep" ? (memory.last.inputs as Draft) : undefined;
  const made = followed?.made;
  // "it was the monday before"
  if (
    first?.weekday !== undefined &&
    made !== undefined &&
    /^ before\b/.test(reading.text.slice(first.at[1]))
  )
    return { made: placeless(first), weeks_before: 1 };
  // "on friday?", of those filled on the 11th: the day that is asked about; "and monday?" behind it is another
  const isAsked =
    askedDay.test(reading.mask) || (followed?.on !== undefined && anotherDay.test(reading.mask));
  if (first?.weekday !== undefined && made !== undefined && isAsked) return { on: placeless(first) };
  if (
    first &&
    made !== undefined &&
    anotherDay.test(reading.mask) &&
    first.days === undefined &&
    first.minute === undefined
  )
    return { made: placeless(first), made_before: [...(followed?.made_before ?? []), made] };
  // "last day would be the?", of those that were spoken of
  const spoken = memory.last?.tool === "keep" ? (memory.last.inputs as Draft).made : undefined;
  if (spoken !== undefined && reading.whens.length === 0 && /\blast day\b/.test(reading.text))
    return { made: spoken };
  let from = clauseStart(reading);
  for (const when of daysOfFilled(reading)) {
    const before = reading.text.slice(from, when.at[0]);
    const ahead = deedsIn(before);
    const behind = reading.text.slice(when.at[1]);
    // "in the fridge since tuesday, filled": filled and put there
    const isSince =
      /\bsince\W*$/.test(before) && when.minute === undefined && /^,? (?:and )?filled\b/.test(behind);
    const deeds = ahead.length > 0 ? ahead : isSince ? ["made" as const] : deedBehind(behind);
    const isOut = outWords.test(before) || stayed.test(before);
    if (/since\W*$/.test(before) && isOut && when.minute !== undefined) out.out_since = placeless(when);
    else if (deeds.length === 0)
      Object.assign(
        out,
        out.made === undefined && madeBehind(reading, when)
          ? { made: placeless(when) }
          : isClockTalk(when)
            ? {}
            : { on: placeless(when) },
      );
    else for (const deed of deeds) out[deed] ??= placeless(when);
    from = when.at[1];
  }
  // "filled them on 8 march, still ok?", behind others that were frozen: these are spoken of anew
  if (out.made && !out.frozen && !out.thawed && saidAnew.test(wordsOf(reading)))
    Object.assign(out, {
      frozen: undefined,
      thawed: undefined,
      frozen_on_day: undefined,
      frozen_days: undefined,
    });
  const age = ageInFridge(reading);
  if (age !== undefined && out.made === undefined) out.made = { days: -age };
  if (
    out.made &&
    /\b(?:will|ill|going to|gonna|want to|plan to|(?:if|when) i (?:make|fill)|making|filling)\b/.test(
      wordsOf(reading),
    ) &&
    (!/\b(?:made|filled)\b/.test(wordsOf(reading)) || /\bif i (?:make|fill)\b/.test(wordsOf(reading)))
  )
    out.coming = true;
  const said = wordsOf(reading);
  if (
    (out.frozen || out.thawed) &&
    /\b(?:freeze|thaw|defrost)\b/.test(said) &&
    !/\b(?:froze|frozen|thawed|defrosted)\b/.test(said)
  )
    out.planned = true;
  const onDay = /\b(?:froze\w*|freezer)\b.*?\bday (\d)\b|\bday (\d)\b.*?\bfroze\w*/.exec(said);
  if (onDay && !out.frozen) out.frozen_on_day = Number(onDay[1] ?? onDay[2]);
  return out;
}

/** "these went together on the 6th": two shells and their filling. */
const joined =
  "(?:put|stuck|went|came|got|were put|stick) (?:them |it |these |those |all )*together|paired|sandwiched";
const fills = new RegExp(
  `\\b(?:filled|fill|assembled|${joined}|boxed|put the filling in|filling went in)\\b`,
);
const ofParts = /\b(?:shells?|baked|buttercream|ganache|filling)\b/;

/** "shells from the 10th, filled on the 12th": filled macarons count from the day on which they were filled. */
function daysOfFilled({ text, whens }: Reading): readonly When[] {
  if (whens.length < 2 || iceWords.test(text) || /\bthaw/.test(text)) return whens;
  let from = 0;
  const pieces = whens.map((when, at) => {
    const stop = text.slice(when.at[1]).search(/[,.;:?!()]| and | but | with /);
    const behind = text.slice(when.at[1], stop < 0 ? text.length : when.at[1] + stop);
    const before = text.slice(from, when.at[0]);
    from = when.at[1] + (whens[at + 1] ? 0 : behind.length);
    return { when, before, said: before + (fills.test(before) || ofParts.test(before) ? "" : behind) };
  });
  // what stands last before the day is of it: "i baked the shells on the 10th and filled them on the 12th"
  const isFilled = ({ said }: (typeof pieces)[number]) =>
    fills.test(said.split(/[,.;]/).at(-1) ?? said) || fills.test(said);
  const filled = pieces.filter(isFilled);
  const rest = pieces.filter((piece) => !filled.includes(piece));
  const isOlder = rest.some(({ said }) => ofParts.test(said) || /\bfrom\b/.test(said));
  return filled.length > 0 && isOlder
    ? whens.filter(
        (when) =>
          !rest.some(
            (piece) => piece.when === when && (ofParts.test(piece.said) || /\bfrom\b/.test(piece.said)),
          ),
      )
    : whens;
}

const askedDay =
  /^(?:(?:and|or|so|ok|but|then|what about|how about) )*(?:on|by|for|until|till) \S*<when>(?: (?:then|still|too))*(?: \?)?$/;

/** "and the 8th?", "say it had been the 7th": another day of making. */
const anotherDay = new RegExp(
  `^(?:(?:${leadingIn}|${takingBack}|or|what about|how about|what if|suppose|pretend|say|lets say|if|it was|it were|they were|had been|been|it|was|made|filled|the|ones|from|on) )*\\S*<when>(?: ones?)?(?: \\?)?$`,
);

const saidAnew = /^(?:i |we |they were |these were |ive |weve )?(?:filled|made|baked|assembled|boxed)\b/;

/** Where this clause begins in the text of the whole turn. */
function clauseStart(reading: Reading): number {
  const first = reading.whens[0]?.at[0] ?? 0;
  const stop = Math.max(...[". ", "? ", "! ", "; "].map((sign) => reading.text.lastIndexOf(sign, first)));
  return Math.max(0, stop);
}

type Deed = "made" | "frozen" | "thawed";
const deedWords: readonly (readonly [Deed, RegExp])[] = [
  [
    "made",
    new RegExp(
      `\\b(?:made|make|making|${filledThen}|fill|filling|baked|bake|boxed|assembled|${joined}|did|from)\\b`,
    ),
  ],
  ["frozen", /\b(?:froze|frozen|freeze|(?:in|into) the freezer)\b/],
  [
    "thawed",
    /\b(?:thawed|thaw|defrosted|defrost|thawing|out of the freezer|took them out|taken out|came out)\b/,
  ],
];

/** The deeds a moment belongs to: those joined by "and" right before it ("made and froze them on the 1st"), else the last. */
function deedsIn(said: string): Deed[] {
  // "made on monday and not frozen": nothing went into the freezer
  const before = fridgeForUnfrozen(said.replace(/['’]/g, ""));
  const lasts = deedWords.flatMap(([deed, words]) => {
    const hits = [...before.matchAll(new RegExp(words.source, "g"))];
    const hit = hits.at(-1);
    return hit ? [{ deed, at: hit.index, end: hit.index + hit[0].length }] : [];
  });
  const last = lasts.sort((a, b) => b.at - a.at)[0];
  if (!last) return [];
  const joined = lasts.filter(
    (each) =>
      each === last || /^(?: (?:them|it|these))? and (?:then )?$/.test(before.slice(each.end, last.at)),
  );
  return joined.map((each) => each.deed);
}

/** "it was the 8th i filled them", "the 9th is when they were frozen": the deed that follows the day. */
function deedBehind(behind: string): Deed[] {
  const clause =
    /^ (?:(?:is|was) )?(?:that |when )?(?:i|we|she|they were|they got) ([^,.?!]*?)(?: (?:and|but|so)\b|[,.?!]|$)/;
  return deedsIn(clause.exec(behind)?.[1] ?? "").filter((each) => each !== "made" || !goesByIt.test(behind));
}
/** "is it ok on the 9th that i make more": nothing that was done. */
const goesByIt = /^ (?:that |when )?(?:i|we|she) (?:can|could|will|want|would|may|should|make|fill|bake)\b/;

/** "a batch from today", "today's batch", "the box is from the 9th". */
const madeBehind = (reading: Reading, when: When) =>
  /^\W*(?:s )?(?:batch|bake|macarons|macs|ones|box)/.test(reading.text.slice(when.at[1])) ||
  /\bfrom(?: the)?\W*$/.test(reading.text.slice(0, when.at[0]));

/** A clock time without a day says nothing about days. */
const isClockTalk = (when: When) =>
  when.minute !== undefined &&
  when.days === undefined &&
  when.weekday === undefined &&
  when.day === undefined;

/** "been in the fridge 4 days": made that many days ago. */
function ageInFridge(reading: Reading): number | undefined {
  const age = reading.amounts.find(
    (each) => each.dim === "time" && ["d", "week", "month"].includes(each.unit),
  );
  const said = wordsOf(reading);
  if (
    !age ||
    iceWords.test(said) ||
    !/\b(?:been|old|ago|for|after|sitting|in the fridge|since)\b/.test(said) ||
    /how (?:long|many)/.test(said)
  )
    return undefined;
  return Math.round(inBase(age.value, age.unit) / 1440);
}
