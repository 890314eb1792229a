/** The spells out of the fridge that a sentence tells of: how long each was, on which day, since when, until when. */
import type { Amount, Reading, When } from "../contract/index.ts";
import { wordsOf } from "../lib/pieces.ts";
import { inBase } from "../lib/units.ts";
import { placeless } from "../lib/when-said.ts";
import type { Draft } from "./draft.ts";
import { wasOut } from "./limit.ts";

const moreBefore = /\b(?:another|plus|further|then|extra|more)(?: (?:about|around|like|only|just))? $/;
const moreBehind = /^ (?:more|extra|again|later|on top|longer)\b/;

/** A bare number is minutes up to four hours, which is past any limit; below five it is hours. From memory. */
const bare = { least_min: 5, most_min: 240 };

/** Bare numbers that go on from a time: "90 min then another 60", "just 30 more later". */
function bareMinutes(reading: Reading): { min: number; at: Amount["at"] }[] {
  return reading.amounts
    .filter(
      (each) =>
        each.dim === "number" &&
        each.unit === "" &&
        !each.of &&
        each.value > 0 &&
        each.value <= bare.most_min &&
        (moreBefore.test(reading.text.slice(0, each.at[0])) ||
          moreBehind.test(reading.text.slice(each.at[1]))),
    )
    .map(({ value, at }) => ({ min: value < bare.least_min ? value * 60 : value, at }));
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

export function ownSpells(reading: Reading, before: Draft | undefined): Draft {
  const said = wordsOf(reading);
  const until = hourNow(reading);
  const since = sinceOf(reading, before !== undefined);
  const times = shortTimes(reading);
  const minutes = bareMinutes(reading);
  const at = [...times.map(({ at, value, unit }) => ({ at, min: inBase(value, unit) })), ...minutes];
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
    return minutes.length > 0 && times.length > 0 && !inCold.test(said) ? { out_min: sum } : {};
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
export function asSlot(reading: Reading): Draft {
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
export function hourNow(reading: Reading): Draft["out_until"] {
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
  const bare =
    /\bnow(?: its| it is)? (\d{1,2})(?= (?:ok|okay|safe|fine|still|and|can)\b| ?[,?]|$)/.exec(
      reading.text,
    )?.[1] ??
    /\b(?:its|it's|it is) (?:about |nearly |just )?(\d{1,2}) (?:right )?now\b/.exec(reading.text)?.[1];
  if (bare && Number(bare) < 24) return { minute: Number(bare) * 60 };
  const dotted = /\bnow(?: its| it is)? (\d{1,2})[.](\d{2})\b|\b(?:its|it is) (\d{1,2})[.](\d{2}) now\b/.exec(
    reading.text,
  );
  if (!dotted) return undefined;
  const minute = Number(dotted[1] ?? dotted[3]) * 60 + Number(dotted[2] ?? dotted[4]);
  return minute < 1440 ? { minute } : undefined;
}
