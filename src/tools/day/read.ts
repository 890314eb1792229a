/** Reads what is to be ready and when, or what is to be done with the plan there is. */
import type { Memory, Reading, When } from "../contract/index.ts";
import { bareNumbers, diameter, forUs, says } from "../lib/find.ts";
import { hoursSaid } from "../lib/hours.ts";
import { inBase } from "../lib/units.ts";
import type { DayInputs } from "./day.ts";
import { readDone } from "./done.ts";
import { lengthsSaid } from "./lengths-said.ts";
import { hasMoved, movedSaid } from "./moved-said.ts";
import { readDetails } from "./order.ts";
import { asksSheet, readSheet } from "./sheet-said.ts";
import { leftOpen, twoOrders } from "./two-orders.ts";

type Draft = Partial<DayInputs>;

export function readDay(reading: Reading, memory: Memory): Draft {
  const draft = readPlan(reading, memory);
  // the hour that a move came to, and not the one that was said before it
  const { due } = movedBefore(memory) ?? {};
  const isOf = memory.follows && Object.keys(draft).length > 0 && draft.due === undefined;
  return due && isOf && draft.within_min === undefined ? { ...draft, due } : draft;
}

function readPlan(reading: Reading, memory: Memory): Draft {
  const open = leftOpen(reading, memory);
  if (open) return open;
  const orders = twoOrders(reading);
  if (orders) return { orders };
  const plan = (memory.table.order as Draft | undefined)?.plan;
  if (asksSheet(reading))
    return readSheet(reading, { ...readOrder(reading, memory), ...readDetails(reading) }, plan, memory);
  // whether a kept plan rests its shells is the record's to say: it may have been taken back
  const before = plan === undefined ? planBefore(memory) : withoutRest(planBefore(memory));
  const moved = movedSaid(reading, memory);
  if (moved) {
    const last = memory.last?.tool === "day" ? (memory.last.inputs as Draft) : {};
    return {
      ...(plan === undefined ? before : before?.due ? { due: before.due } : {}),
      ...moved,
      // the plan is asked for again, not another set of timers
      ...(last.want ? { want: "plan" as const } : {}),
      ...(plan === undefined ? {} : { plan, by_record: true }),
    };
  }
  const asked = readWant(reading);
  // behind the plan itself it is nothing new
  const want = asked?.want === "plan" && (memory.last?.tool === "day" || !before) ? undefined : asked;
  const last = memory.last?.tool === "day" ? (memory.last.inputs as Draft) : undefined;
  if (want && (last?.want === "drop" || last?.gone)) return { ...want, as_kept: true, gone: true };
  const told: Draft =
    want?.want === "done"
      ? want
      : {
          ...readOrder(reading, memory),
          ...readDetails(reading),
          ...lengthsSaid(reading, before),
          ...(want ?? {}),
        };
  // "only half of those", of a day that is planned
  const times = memory.follows && told.macarons === undefined ? timesSaid(reading) : undefined;
  if (times !== undefined && before?.macarons !== undefined)
    told.macarons = Math.ceil(before.macarons * times);
  const due = mergedDue(reading, before);
  const within = due ? undefined : withinSaid(reading);
  const draft: Draft = {
    ...((want || isAboutHours(told, memory)) && before ? { ...before, ...told } : told),
    ...(want && !due && Object.keys(told).every((key) => key in want) ? { as_kept: true } : {}),
    // a new hour asks for the plan again, not for another set of timers
    ...(!want && memory.follows && before?.want ? { want: "plan" as const } : {}),
    ...(due ? { due } : {}),
    ...(within === undefined ? {} : { within_min: within }),
    ...fromTable(told, memory),
  };
  const goesOn = plan !== undefined && (want !== undefined || memory.follows) && !isAnother(told, due);
  if (!goesOn) return draft;
  const isSaid = draft.no_rest !== undefined || Object.keys(draft).length === 0;
  const idle = Object.keys(draft).length === 0 && saysChange(reading) ? { idle: true } : {};
  return { ...draft, plan, ...(isSaid ? {} : { by_record: true }), ...idle };
}

/** Words that aren't about seeing the plan again: something was to be changed by them. */
const saysChange = ({ mask }: Reading): boolean =>
  mask.split(" ").length > 2 &&
  !/(?:^| )(?:plan|schedule|when|what|whats|show|again|start|steps?|list|times?|timeline|see|print|thanks?|ok|yes|great)(?: |$)|[?]$/.test(
    mask,
  );

/** "i can't start before 9", right behind the plan: of that plan. */
const isAboutHours = (told: Draft, memory: Memory): boolean =>
  (memory.last?.tool === "day" || memory.table.order !== undefined) &&
  (told.wake_min ?? told.sleep_min) !== undefined &&
  Object.keys(told).every((key) => ["wake_min", "sleep_min", "no_mature"].includes(key));

const withoutRest = (order: Draft | undefined): Draft | undefined => {
  const { no_rest: _rest, ...kept } = order ?? {};
  return order && kept;
};

/** A number and a day of its own are another order, not another number for this one. */
const isAnother = (told: Draft, due: Draft["due"]) =>
  told.macarons !== undefined &&
  due !== undefined &&
  ["days", "weekday", "day", "month"].some((key) => (due as Record<string, unknown>)[key] !== undefined);

/** The plan that is spoken of: the one of the turn before, or the last that was made. What is done is the record's. */
function planBefore(memory: Memory): Draft | undefined {
  const { table, last } = memory;
  const found =
    movedBefore(memory) ??
    (last?.tool === "day" ? (last.inputs as Draft) : (table.order as Draft | undefined));
  const { done_ids: _done, unclear_min: _min, unclear_of: _of, ...plan } = found ?? {};
  return found && plan;
}

/** What the plan was moved to in the turn before. */
function movedBefore({ table, last }: Memory): Draft | undefined {
  const order = table.order as Draft | undefined;
  return last?.tool === "day" && order && hasMoved(last.inputs as Draft) ? order : undefined;
}

function readWant(reading: Reading): Draft | undefined {
  if (says(reading, /calendar|(?:^| )ics(?: |$)|diary/)) return { want: "calendar" };
  if (says(reading, /timers?(?:<\S+)?(?: |$)/)) return { want: "timers" };
  if (
    says(
      reading,
      /^(?:(?:ok|okay|right|so|now|and|im|lets) )*(?:start|starting|begin|go|get going)(?: now| then)?$|(?:whats|what is|what comes|what do i do|and) next|(?:whats|what is) (?:the |my )?first (?:step|thing)|what (?:do i do|comes) first|(?:whats|what is) (?:still )?left to do|what do i still have to do/,
    )
  )
    return { want: "next" };
  if (
    says(
      reading,
      /^(?:\S+ )?(?:drop|forget|cancel|delete|scrap|remove) (?:the|that|my|this) (?:plan|schedule|bake)/,
    )
  )
    return { want: "drop" };
  // "when do i start", past another question: of the plan that there is
  const isBare = reading.amounts.length === 0 && reading.whens.length === 0;
  if (
    isBare &&
    says(
      reading,
      /^(?:(?:so|and|ok|now) )*(?:when|what time) (?:do|should|must|can) i (?:have to |need to )?(?:start|begin)(?: then| again)?(?: \?)?$/,
    )
  )
    return { want: "plan" };
  const step = readDone(reading);
  if (step) return { want: "done", step };
  const late = reading.amounts.find((each) => each.dim === "time");
  if (late && says(reading, /(?:^| )(?:late|behind|delay|delayed|running)(?: |$)/))
    return { want: "late", late_min: inBase(late.value, late.unit) };
  return undefined;
}

function readOrder(reading: Reading, memory: Memory): Draft {
  const before = planBefore(memory);
  const counted = countedMacarons(reading);
  const boxed = reading.amounts.some((each) => each.of?.count === "boxes");
  const bare =
    counted === undefined &&
    !boxed &&
    (memory.slot === "macarons" ||
      memory.follows ||
      says(reading, /(?:^| )(?:ready|done|due|finished|needed|wanted)(?: |$)/) ||
      // "20 for saturday 3pm, mango ganache"
      says(reading, /^(?:(?:ok|and|so|now|need) )*\S*<number> (?:for|by) \S*<when>/) ||
      // "party mum wants 42"
      (before !== undefined && says(reading, /(?:wants?|needs?|asked for|ordered) \S*<number>$/)) ||
      // "making 60 for a christening next sunday noon"
      says(
        reading,
        /(?:making|baking|doing|bake|make|need|order of|order for) \S*<number> (?:for|by) .*<when>/,
      ) ||
      // "pink macarons, 24 for friday 3pm"
      (says(reading, /<number> (?:of them )?(?:for|by|on|until) \S*<when>/) &&
        reading.things.some((each) => each.count === "macarons")))
      ? bareNumbers(reading).find(
          ({ at }) => !/\b(?:instead of|rather than|not) $/.test(reading.text.slice(0, at[0])),
        )?.value
      : undefined;
  // "no i meant three", after "thirty macarons for tuesday at two": another hour, not three macarons
  const hour =
    bare !== undefined &&
    bare <= 12 &&
    (before?.macarons ?? 0) > 12 &&
    before?.due?.minute !== undefined &&
    (/(?:^| )(?:meant?|sorry|wait|actually|not|moved|changed|pushed|shifted|said|says) /.test(reading.text) ||
      (bare < 8 && /(?:^| )make (?:it|that) /.test(reading.text)))
      ? bare
      : undefined;
  // "no 1", behind two ovens: nobody bakes one where two dozen were ordered
  const tooFew =
    bare !== undefined && bare < 6 && (before?.macarons ?? 0) >= 12 && memory.slot !== "macarons";
  const macarons = hour === undefined ? (counted ?? (tooFew ? undefined : bare)) : undefined;
  const size = diameter(reading);
  const noRest = says(
    reading,
    /no.rest|without (?:any |the )?\S*rest|skip (?:the )?\S*rest|(?:dont|do not|wont|not|didnt) (?:let (?:them|it|the \S+) )?\S*rest(?:<|ing)/,
  );
  const { wake_min = lateRise(reading) ?? startSaid(reading), sleep_min } = hoursSaid(reading.text);
  return {
    ...(wake_min !== undefined ? { wake_min } : {}),
    ...(sleep_min !== undefined ? { sleep_min } : {}),
    ...(macarons !== undefined ? { macarons } : {}),
    ...(hour !== undefined && before?.due ? { due: { ...before.due, ...hourBeside(hour, before.due) } } : {}),
    ...(size !== undefined ? { diameter_mm: size } : {}),
    ...(noRest ? { no_rest: true } : {}),
    ...(says(reading, /(?:skip|without|no|leave out|drop) (?:the )?\S*(?:matur(?:ing|ation)|<step=mature>)/)
      ? { no_mature: true }
      : // what can't be left out isn't asked for again with every turn
        before?.no_mature
        ? { no_mature: false }
        : {}),
    ...(says(
      reading,
      /put (?:back )?(?:the )?\S*rest\S*(?: back)?(?: |$)|(?:do|let them) \S*rest\S* after all|(?:^| )if (?:i|we) (?:do|did|let them) \S*<step=rest>/,
    ) && !noRest
      ? { no_rest: false }
      : {}),
  };
}

/** "she changed it to 5": the half of the day that the hour before was in. */
const hourBeside = (hour: number, { minute = 0, half }: Partial<When>): Partial<When> =>
  half && minute >= 720 && hour < 12 ? { minute: hour * 60 + 720, half: "pm" } : { minute: hour * 60 };

/** "half of them", "twice as many". */
const timesSaid = (reading: Reading): number | undefined =>
  says(reading, /(?:of (?:that|those|them|it)|as many|that many|double|twice|triple|half)(?:<| |$)/)
    ? reading.amounts.find((each) => each.unit === "times" || (each.dim === "number" && each.fraction))?.value
    : undefined;

/** "36 macarons", or what the sentence says they add up to. Boxes of nobody knows how many are none: it is asked for. */
function countedMacarons(reading: Reading): number | undefined {
  const counts = reading.amounts.filter(
    (each) => each.dim === "number" && each.unit === "" && !each.fraction,
  );
  const macarons = counts.find((each) => each.of?.count === "macarons");
  if (macarons) return macarons.value + forUs(reading, macarons);
  // "saturday: 20 pistachio 20 rose 20 vanilla": all of them
  const each = reading.amounts.filter(
    (amount) =>
      amount.dim === "number" &&
      amount.unit === "" &&
      !amount.fraction &&
      (amount.of?.taste || amount.of?.ingredient === "chocolate" || amount.of?.chocolate) &&
      !amount.of.dose,
  );
  if (each.length > 1 && reading.whens.length > 0) return each.reduce((sum, { value }) => sum + value, 0);
  // "she wants 12 more for tuesday 3 pm"
  const wanted =
    /(?:wants?|needs?|ordered|asked for|orders?) \S*<number>(?: more| of them| extra)? (?:for|by|on) \S*<when>/.test(
      reading.mask,
    );
  const bare = wanted ? counts.find((each) => !each.of && each.value >= 2)?.value : undefined;
  if (bare !== undefined) return bare;
  // "36 lemon for sunday 2pm"
  const tasted = /<number> \S*<[^>]*taste=[^>]*>(?: ones)? (?:for|by|on) .*<when>/.test(reading.mask);
  return tasted
    ? reading.amounts.find(
        (each) => each.dim === "number" && each.unit === "" && each.of?.taste && each.value >= 4,
      )?.value
    : undefined;
}

/** "i start at 6 that day": when the bench opens, and not when they are due. */
const startsAt =
  /(?:^| )i (?:can |could |will |want to |have to )?(?:only )?(?:start|begin|get up|am up) (?:at|after|from) \S*<(?:when|number)>|(?:^| )(?:cant|can not|cannot|wont|not|never) (?:be able to )?(?:start|begin|get up|be up) (?:before|until|till|earlier than) \S*<(?:when|number)>/;
const startSaid = (reading: Reading): number | undefined => {
  if (!startsAt.test(reading.mask)) return undefined;
  const hour = bareNumbers(reading)[0]?.value;
  return (
    reading.whens.find((each) => each.minute !== undefined)?.minute ??
    (hour !== undefined && hour <= 23 ? hour * 60 : undefined)
  );
};

const sleepsIn = /(?:^| )sleep (?:in )?(?:till|until|to) \S*<(?:when|number)>/;

/** "can i sleep in till 9": minutes after midnight. */
const lateRise = (reading: Reading): number | undefined =>
  sleepsIn.test(reading.mask)
    ? (reading.whens[0]?.minute ?? (bareNumbers(reading)[0]?.value ?? 0) * 60) || undefined
    : undefined;

/** "24 macarons in three hours". */
function withinSaid(reading: Reading): number | undefined {
  const time = reading.amounts.find((each) => each.dim === "time");
  const said = /<count=(?:macarons|boxes)>.* (?:in|within) (?:the next |about )?\S*<time>/.test(reading.mask);
  return time && said ? inBase(time.value, time.unit) : undefined;
}

/** "start at 8 am, when will they be ready": the hour isn't when they are due, and plans are worked back from that. */
const asksReady =
  /start\w* (?:at|by|from|on) .*\bwhen .*(?:ready|done|finished)|when .*(?:ready|done|finished) .*\bif i (?:start|begin)/;

/** A new hour keeps the day that was said before: "they want them at 4 now". */
function mergedDue(reading: Reading, before: Draft | undefined): Draft["due"] | undefined {
  // "can i sleep in till 9": when the day begins, not when it is due
  if (asksReady.test(reading.text) || sleepsIn.test(reading.mask) || startsAt.test(reading.mask))
    return undefined;
  const said = reading.whens.at(-1);
  if (!said) return undefined;
  const { at: _at, ...due } = reading.whens.length > 1 ? ({ ...reading.whens[0], ...said } as When) : said;
  const old = before?.due as Partial<When> | undefined;
  const onlyTime =
    due.minute !== undefined && due.days === undefined && due.weekday === undefined && due.day === undefined;
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

/** The number of macarons that was sized before this was asked. */
const fromTable = (told: Draft, memory: Memory): Draft =>
  told.macarons === undefined &&
  memory.last?.tool !== "day" &&
  memory.table.macarons !== undefined &&
  !told.want
    ? { macarons: memory.table.macarons }
    : {};
