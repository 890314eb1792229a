/** The hours of an order: when it is due, within how long, and when the baker's own day begins. */
import type { Reading, When } from "../contract/index.ts";
import { bareNumbers } from "../lib/find.ts";
import { inBase } from "../lib/units.ts";
import type { Draft } from "./draft.ts";

/** "i start at 6 that day": when the bench opens, and not when they are due. */
const startsAt =
  /(?:^| )i (?:can |could |will |want to |have to )?(?:only )?(?:start|begin|get up|am up) (?:at|after|from) \S*<(?:when|number)>|(?:^| )(?:cant|can not|cannot|wont|not|never) (?:be able to )?(?:start|begin|get up|be up) (?:before|until|till|earlier than) \S*<(?:when|number)>/;
/** "can i sleep in till 9". */
const sleepsIn = /(?:^| )sleep (?:in )?(?:till|until|to) \S*<(?:when|number)>/;

/** Minutes after midnight at which the baker begins, where it is said of this day. */
export function startOfDay(reading: Reading): number | undefined {
  const hour = bareNumbers(reading)[0]?.value;
  if (sleepsIn.test(reading.mask)) {
    const late = (reading.whens[0]?.minute ?? (hour ?? 0) * 60) || undefined;
    if (late !== undefined) return late;
  }
  if (!startsAt.test(reading.mask)) return undefined;
  return (
    reading.whens.find((each) => each.minute !== undefined)?.minute ??
    (hour !== undefined && hour <= 23 ? hour * 60 : undefined)
  );
}

/** "24 macarons in three hours". */
export function withinSaid(reading: Reading): number | undefined {
  const time = reading.amounts.find((each) => each.dim === "time");
  const said = /<count=(?:macarons|boxes)>.* (?:in|within) (?:the next |about )?\S*<time>/.test(reading.mask);
  return time && said ? inBase(time.value, time.unit) : undefined;
}

/** "she changed it to 5": on the same day, and in the half of it that the hour before was in. */
export const dueAtHour = (hour: number, due: Partial<When>): Partial<When> => {
  const { minute = 0, half } = due;
  return half && minute >= 720 && hour < 12
    ? { ...due, minute: hour * 60 + 720, half: "pm" }
    : { ...due, minute: hour * 60 };
};

/** "start at 8 am, when will they be ready": the hour isn't when they are due, and plans are worked back from that. */
const asksReady =
  /start\w* (?:at|by|from|on) .*\bwhen .*(?:ready|done|finished)|when .*(?:ready|done|finished) .*\bif i (?:start|begin)/;

/** "what am i doing at 2", "i began at 1": the hour of something else, behind a plan. */
const isOfElse = (text: string): boolean =>
  /\b(?:started|began|begun|got going|got started)\b/.test(text) ||
  (/^(?:(?:and|so|but|ok|okay|then|now|hm) )*(?:what|whats|where|wheres|who|how|why|which|am|do|does|did)\b/.test(
    text,
  ) &&
    !/\b(?:ready|due|done|finish\w*|needs?|wants?|instead|if|about|deliver\w*|collect\w*|pick\w*|by|for|until|till|start\w*|make it)\b/.test(
      text,
    ));

/** A new hour keeps the day that was said before: "they want them at 4 now". */
export function dueSaid(reading: Reading, before: Draft | undefined): Draft["due"] | undefined {
  if (asksReady.test(reading.text) || sleepsIn.test(reading.mask) || startsAt.test(reading.mask))
    return undefined;
  const said = reading.whens.at(-1);
  if (!said || (before && isOfElse(reading.text))) return undefined;
  const { at: _at, ...due } = reading.whens.length > 1 ? ({ ...reading.whens[0], ...said } as When) : said;
  const old = before?.due as Partial<When> | undefined;
  const onlyTime =
    due.minute !== undefined && due.days === undefined && due.weekday === undefined && due.day === undefined;
  // "still by 7", of what is due at 7 pm
  const isSame =
    onlyTime &&
    old?.minute !== undefined &&
    due.half === undefined &&
    (old.minute - (due.minute ?? 0)) % 720 === 0;
  if (old && isSame && /\b(?:still|again|same|also)\b/.test(reading.text)) return old;
  const onlyDay = due.minute === undefined && old?.minute !== undefined;
  if (old && onlyTime) return { ...dayOnly(old), ...due };
  if (old && onlyDay) return { minute: old.minute, ...(old.half ? { half: old.half } : {}), ...due };
  return due;
}

function dayOnly({ days, weekday, which, day, month, year }: Partial<When>): Partial<When> {
  return Object.fromEntries(
    Object.entries({ days, weekday, which, day, month, year }).filter(([, value]) => value !== undefined),
  );
}
