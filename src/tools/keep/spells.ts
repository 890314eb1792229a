/** Time out of the fridge as a talk goes on: what was out stays out, whatever is asked of it next. */
import { outside } from "../../../data/rules/keeping.ts";
import type { Amount, Memory, Reading, When } from "../contract/index.ts";
import { wordsOf } from "../lib/pieces.ts";
import { inBase } from "../lib/units.ts";
import { placeless } from "../lib/when-said.ts";
import type { KeepInputs } from "./keep.ts";

type Draft = Partial<KeepInputs>;

const outInputs = [
  "out_min",
  "out_since",
  "out_until",
  "out_earlier_min",
  "overnight",
  "out_since_made",
  "out_asked",
] as const;

/** @param draft what the sentence says by itself */
export function withSpells(draft: Draft, reading: Reading, memory: Memory): Draft {
  const last = memory.last?.tool === "keep" ? (memory.last.inputs as Draft) : undefined;
  const before = last && (wasOut(last) || wasHot(last)) ? last : undefined;
  const own = draft.about === "outside" || before ? ownSpells(reading, before) : {};
  const isTimed = draft.out_min !== undefined || draft.overnight === true;
  const asks =
    isTimed && mayThey.test(reading.text) && !wereOut.test(reading.text) ? { out_asked: true } : {};
  if (!before) return { ...draft, ...(draft.about === "outside" ? own : {}), ...asks };
  const isNew = isTimed && own.out_earlier_min === undefined;
  if (otherOnes.test(reading.text))
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

const wasOut = (inputs: Draft) =>
  !inputs.out_asked && outInputs.some((key) => inputs[key] && key !== "out_until");
/** Left in the heat, nobody said how long. */
const wasHot = ({ about, hot, air_c }: Draft) =>
  hot === true || (about === "outside" && air_c !== undefined && air_c > outside.hot_c);

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

/** Others than those that were out. */
export const otherOnes =
  /\b(?:new|fresh|next|other|another|different) (?:\w+ )?(?:ones?|batch\w*|box\w*|lot|macarons?|macs|trays?)\b|\b(?:normally|usually|in general|generally|as a rule)\b|\bthe (?:others|rest)\b|\bthe ones (?:that|which|i) (?:were|stayed|didnt|kept|are)\b|\bhow (?:long|many days) (?:do|does|will|would|can|should) (?:filled |the filled |my filled )?(?:macarons|macs|buttercream|ganache)\b|\bif (?:they|i|we) (?:hadnt|had not|had stayed|never)\b/;
const elsewhere =
  /\b(?:fridge|refrigerat\w*|freez\w*|frozen|cold|use by|best by|how (?:long|many)|until|till|when|date|day|days|tomorrow|made|filled)\b/;
const total =
  /^(?:(?:so|and|ok|whats|what is|how much is|how long is|the|that|thats|in) )*(?:total|altogether|all together|in all|sum|all)(?: (?:time|out|then|now|is that|is it|how long|how much|that is))* ?\??$/;
const yesOrNo = /\b(?:can|could|may|should|shall|ok|okay|fine|safe|still|back)\b/;

const moreBefore = /\b(?:another|plus|further|then|extra|more)(?: (?:about|around|like|only|just))? $/;
const moreBehind = /^ (?:more|extra|again|later|on top|longer)\b/;

/** Bare numbers that go on from a time: "90 min then another 60", "just 30 more later". */
function bareMinutes(reading: Reading): { min: number; at: Amount["at"] }[] {
  return reading.amounts
    .filter(
      (each) =>
        each.dim === "number" &&
        each.unit === "" &&
        !each.of &&
        each.value > 0 &&
        each.value <= 240 &&
        (moreBefore.test(reading.text.slice(0, each.at[0])) ||
          moreBehind.test(reading.text.slice(each.at[1]))),
    )
    .map(({ value, at }) => ({ min: value < 5 ? value * 60 : value, at }));
}

const shortTimes = (reading: Reading) =>
  reading.amounts.filter((each) => each.dim === "time" && inBase(each.value, each.unit) < 24 * 60);

const addsOn =
  /\b(?:another|more|again|on top|as well|too|plus|extra|before that|after that|later)\b|^(?:and|also|oh and|plus) .*\b(?:at|in|on) (?:the|a|my)\b/;
/** "then 30 min in the sun": another spell. */
const goesOn = /^(?:and |so |oh |but )*then\b/;
/** A spell that is put right, or supposed: in the place of the one before. */
const replaces =
  /^(?:(?:oh|and|but|so) )*(?:no|nope|sorry|actually|wait|oops|i meant|it was|they were|only|just|what if|if|suppose)\b|\b(?:instead|not|only|in all|total|altogether|rather)\b/;
const inCold = /\b(?:fridge|freezer|freez\w*|refrigerat\w*|cool ?box|oven|mixer|chill\w*)\b/;

/** The day that each time belongs to, where the turn says so: the day named nearest to it. */
function dayOf(reading: Reading, at: number): number | undefined {
  const days = reading.whens.filter((when) => when.days === 0 || when.days === -1);
  const near = [...days].sort((a, b) => Math.abs(a.at[0] - at) - Math.abs(b.at[0] - at))[0];
  return near?.days;
}

function ownSpells(reading: Reading, before: Draft | undefined): Draft {
  const said = wordsOf(reading);
  const until = hourNow(reading);
  const since = sinceOf(reading, before !== undefined);
  const times = shortTimes(reading);
  const bare = bareMinutes(reading);
  const at = [...times.map(({ at, value, unit }) => ({ at, min: inBase(value, unit) })), ...bare];
  const sum = at.reduce((all, each) => all + each.min, 0);
  const clock = {
    ...(since ? { out_since: since } : {}),
    ...(until ? { out_until: until } : since && before?.out_until ? { out_until: before.out_until } : {}),
  };
  if (since && times.length === 0) return clock;
  if (at.length === 0) return until && (before?.out_since || since) ? clock : {};
  if (before === undefined) {
    // "1.5 h yesterday and 1 h today": today's may be put right by itself
    const earlier = at.filter((each) => dayOf(reading, each.at[0]) === -1);
    const earlier_min = earlier.reduce((all, each) => all + each.min, 0);
    if (!inCold.test(said) && earlier.length > 0 && earlier.length < at.length && at.length === 2)
      return { out_min: sum - earlier_min, out_earlier_min: earlier_min };
    return bare.length > 0 && times.length > 0 && !inCold.test(said) ? { out_min: sum } : {};
  }
  if (inCold.test(said) || !wasOut(before)) return {};
  const day = at.length === 1 ? dayOf(reading, at[0]?.at[0] ?? 0) : undefined;
  const clockKept = before.out_since ? { out_since: before.out_since, out_until: before.out_until } : {};
  const earlier_min = before.out_earlier_min;
  // "only 20 min today", behind those of yesterday and today
  if (earlier_min !== undefined && day === 0 && !addsOn.test(reading.text))
    return { out_min: sum, out_earlier_min: earlier_min };
  if (earlier_min !== undefined && day === -1 && !addsOn.test(reading.text))
    return {
      ...(before.out_min === undefined ? clockKept : { out_min: before.out_min }),
      out_earlier_min: sum,
    };
  // "today 50 min", "and 45 min this morning": a time with its own day is a spell of its own
  const ofDay =
    reading.whens.some(
      ({ days, part, minute }) => minute === undefined && (days === 0 || days === -1 || part),
    ) && !replaces.test(reading.text);
  if (day === -1 || ofDay || goesOn.test(reading.text) || addsOn.test(reading.text))
    return {
      ...(before.out_min === undefined ? clockKept : { out_min: before.out_min }),
      out_earlier_min: (earlier_min ?? 0) + sum,
    };
  return {};
}

/** "20 min", where it was asked how long they were out. */
function asSlot(reading: Reading): Draft {
  const time = shortTimes(reading)[0];
  return time ? { out_min: inBase(time.value, time.unit) } : {};
}

/** "since 6", "took the boxes out at 8". */
function sinceOf(reading: Reading, goesOn: boolean): Draft["out_since"] {
  const found = reading.whens.find((when) => {
    if (when.minute === undefined || (when.days ?? 0) > 0) return false;
    const before = `${reading.text.slice(0, when.at[0])}${/^(?:at|from) /.test(when.text) ? "at " : ""}`;
    if (goesOn && /(?:^|\W)(?:since|from)(?: (?:about|around|like))?\W*$/.test(before)) return true;
    return /\b(?:took|taken|brought|carried|put|set|were|was|been|have been|left)\b(?: \w+){0,4}? out(?: of the (?:fridge|refrigerator|cool ?box))?(?: (?:since|at|from|around|about))+ $/.test(
      before,
    );
  });
  return found && placeless(found);
}

/** "now 10.30", "its 9:30 now": the hour by her own clock. */
function hourNow(reading: Reading): Draft["out_until"] {
  const said = reading.whens.find((when: When) => {
    if (when.minute === undefined || (when.days ?? 0) !== 0) return false;
    return (
      /\b(?:now|its now|it is now|now its)\W*$/.test(reading.text.slice(0, when.at[0])) ||
      (/\b(?:its|it is)\W*$/.test(reading.text.slice(0, when.at[0])) &&
        /^(?: (?:am|pm))? (?:now|right now)\b/.test(reading.text.slice(when.at[1])))
    );
  });
  if (said) return placeless(said);
  // "now 11": an hour by itself
  const bare = /\bnow(?: its| it is)? (\d{1,2})(?= (?:ok|okay|safe|fine|still|and|can)\b| ?[,?]|$)/.exec(
    reading.text,
  )?.[1];
  if (bare && Number(bare) < 24) return { minute: Number(bare) * 60 };
  const dotted = /\bnow(?: its| it is)? (\d{1,2})[.](\d{2})\b|\b(?:its|it is) (\d{1,2})[.](\d{2}) now\b/.exec(
    reading.text,
  );
  if (!dotted) return undefined;
  const minute = Number(dotted[1] ?? dotted[3]) * 60 + Number(dotted[2] ?? dotted[4]);
  return minute < 1440 ? { minute } : undefined;
}
