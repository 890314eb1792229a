/** Time out of the fridge as a talk goes on: what was out stays out, whatever is asked of it next. */
import type { Memory, Reading } from "../contract/index.ts";
import { wordsOf } from "../lib/pieces.ts";
import type { Draft } from "./draft.ts";
import { outInputs, wasHot, wasOut } from "./limit.ts";
import { asSlot, hourNow, ownSpells } from "./spell-said.ts";

/** "3 hrs ok?", behind how long they may be out. */
const bareTime =
  /^(?:(?:and|so|is|are|but|for|what about|how about|if|its) )*\S*<time>(?: (?:is|ok|okay|safe|fine|too long|then|still|now|alright|out|[?.]))*$/;

/** @param draft what the sentence says by itself */
export function withSpells(draft: Draft, reading: Reading, memory: Memory): Draft {
  const last = memory.last?.tool === "keep" ? (memory.last.inputs as Draft) : undefined;
  if (last?.about === "outside" && !wasOut(last) && bareTime.test(reading.mask))
    return { about: "outside", ...(wasHot(last) ? warmthOf(last) : {}), ...asSlot(reading) };
  const before = last && (wasOut(last) || wasHot(last)) ? last : undefined;
  const own = draft.about === "outside" || before ? ownSpells(reading, before) : {};
  const isTimed = draft.out_min !== undefined || draft.overnight === true;
  const asks =
    isTimed && mayThey.test(reading.text) && !wereOut.test(reading.text) ? { out_asked: true } : {};
  const until = draft.out_since && draft.about === "outside" ? hourNow(reading) : undefined;
  if (!before)
    return {
      ...draft,
      ...(until ? { out_until: until } : {}),
      ...(draft.about === "outside" ? own : {}),
      ...asks,
    };
  const isNew = isTimed && own.out_earlier_min === undefined;
  if (otherOnes.test(reading.text) || (madeSince.test(reading.text) && asksDay.test(reading.text)))
    return isTimed ? draft : { ...draft, out_asked: false, ...(wasHot(before) ? { hot: false } : {}) };
  // what may be in question now is no time out: how cold, raw eggs, shells
  if (
    ![undefined, "fridge", "freezer", "outside", "post", "serve"].includes(draft.about) ||
    draft.freezer_c !== undefined
  )
    return draft;
  const warmth = draft.air_c === undefined && draft.hot === undefined ? warmthOf(before) : {};
  const asked = memory.slot === "out_min" ? asSlot(reading) : {};
  const told = { ...own, ...asked };
  if (Object.keys(told).some((key) => key !== "out_until")) {
    const { made: _made, on: _on, still: _still, out_min: _min, ...rest } = draft;
    return clean({ ...rest, ...warmth, ...told, about: "outside" });
  }
  if (isNew) return { ...draft, ...asks };
  const kept = clean({ ...carried(before), ...warmth, ...own });
  if (total.test(reading.text) && wasOut(before)) return { ...kept, about: "outside", still: true };
  if (Object.keys(draft).length === 0) return draft;
  if (draft.about === "outside") return { ...kept, ...draft };
  // "ok?", "still ok to sell": of the time out, and no day is needed for it
  const isBack =
    backIn.test(reading.text) && !/\b(?:how|until|till?|when|use by|best by)\b/.test(reading.text);
  const isBare = (draft.still && !elsewhere.test(wordsOf(reading))) || isBack;
  if (isBare && draft.about === "fridge" && !draft.made && wasOut(before)) {
    const { on: _on, ...rest } = draft;
    return { ...rest, ...kept, about: "outside", still: true };
  }
  const asksYes = !wasOut(before) && yesOrNo.test(reading.text) ? { still: true } : {};
  return { ...draft, ...kept, ...asksYes };
}

const carried = (before: Draft): Draft =>
  clean({
    ...Object.fromEntries(outInputs.map((key) => [key, before[key]])),
    ...(before.out_since_made ? { made: before.made } : {}),
  });

const warmthOf = (before: Draft): Draft =>
  clean({
    air_c: before.about === "outside" || before.hot ? before.air_c : undefined,
    fahrenheit: before.about === "outside" || before.hot ? before.fahrenheit : undefined,
    hot: wasHot(before) ? true : before.hot,
  });

const clean = (draft: Draft): Draft =>
  Object.fromEntries(Object.entries(draft).filter(([, value]) => value !== undefined));

/** "can they be out 3 h": asked before it is done, and so nothing is spoiled yet. */
const mayThey =
  /^(?:(?:and|so|then|ok|but) )*(?:can|could|may|should|shall|would|will|if|what if|is it ok|ok|safe)\b(?! .*\bout\b.*\b(?:sit|stand|stay|be|leave|go)\b).*\b(?:sit|stand|stay|be|leave|go)\b/;
const wereOut =
  /\b(?:was|were|been|sat|stood|forgot\w*|stayed|lay|had|have|still|back|again)\b|(?<!\bbe )\bleft\b/;
const backIn = /^(?!.*\bif\b).*\b(?:put|go|pop|stick|back)\b.*\b(?:back|again)\b|\bback in\b/;

/** "the ones i filled today, what is the last day": others than those that were out; "still ok?" may be of the same. */
const madeSince =
  /\b(?:the|those|my|our) (?:ones|box\w*|batch\w*|lot|macarons?|macs|trays?) (?:that |which )?(?:i|we|were|was|ive|weve|i've) (?:(?:just|only|have|all) )*(?:filled|made|baked|boxed|assembled|finished) (?:today|yesterday|this|just|now|earlier|on)\b|\b(?:i|we|ive|weve) (?:just |have )?(?:filled|made|baked|boxed|assembled) (?:some|a few|\d+) (?:more|others?)\b|\b(?:today|yesterday)s (?:ones|box\w*|batch\w*|lot|macarons?|macs)\b/;
const asksDay =
  /\b(?:what|which) (?:date|day)\b|\blast day\b|\bhow (?:long|many days)\b|\b(?:best|use|sell|eat) by\b|\bbest before\b|\bgood (?:until|till)\b|\b(?:until|till) when\b/;

/** Others than those that were out. */
export const otherOnes =
  /\b(?:new|fresh|next|other|another|different) (?:\w+ )?(?:ones?|batch\w*|box\w*|lot|macarons?|macs|trays?)\b|\b(?:normally|usually|in general|generally|as a rule)\b|\bthe (?:others|rest)\b|\bthe ones (?:that|which|i) (?:were|stayed|didnt|kept|are)\b|\bhow (?:long|many days) (?:do|does|will|would|can|should) (?:(?:filled |the filled |my filled )?(?:macarons|macs|buttercream|ganache)|(?:filled|finished|boxed|good|normal) ones)\b|\bif (?:they|i|we) (?:hadnt|had not|had stayed|never)\b/;
const elsewhere =
  /\b(?:fridge|refrigerat\w*|freez\w*|frozen|cold|use by|best by|how (?:long|many)|until|till|when|date|day|days|tomorrow|made|filled)\b/;
const total =
  /^(?:(?:so|and|ok|whats|what is|how much is|how long is|the|that|thats|in) )*(?:total|altogether|all together|in all|sum|all)(?: (?:time|out|then|now|is that|is it|how long|how much|that is))* ?\??$/;
const yesOrNo = /\b(?:can|could|may|should|shall|ok|okay|fine|safe|still|back)\b/;
