/** Hours of work, and the percentage that a price goes by. */
import type { Amount, Memory, Reading } from "../contract/index.ts";
import { bareNumbers, says } from "../lib/find.ts";
import { inBase } from "../lib/units.ts";
import { aimOf } from "./aim.ts";
import type { Draft } from "./draft.ts";
import { readExtras } from "./extras.ts";
import type { Sum } from "./money.ts";
import { shareSaid } from "./said-share.ts";

/** "two hours work at €15 an hour", "an hour and a half of my time at $18 an hour". */
export function readLabor(reading: Reading, money: readonly Sum[], slot?: string, before: Draft = {}): Draft {
  // "18", where it was asked what an hour is worth
  if (slot === "labor_per_h") {
    const said = money[0]?.value ?? bareNumbers(reading)[0]?.value;
    return said === undefined ? {} : { labor_per_h: said };
  }
  const rate = money.find((each) => each.use === "rate");
  const time = reading.amounts.find((each) => each.dim === "time");
  const worth = hourWorth(reading, money);
  // an hour's worth is no hour of work where the hours are known
  if (worth !== undefined) {
    // "worked three hours, my hour is $18": the hours that were worked stand beside what one is worth
    const worked =
      time &&
      !/^\S* ?hours?(?: of \w+(?: \w+)?)? (?:is|costs|counts|worth|goes)/.test(
        reading.text.slice(time.at[0]),
      );
    if (worked) return { labor_per_h: worth, labor_min: inBase(time.value, time.unit) };
    return { labor_per_h: worth, ...(before.labor_min === undefined ? { labor_min: 60 } : {}) };
  }
  const half = reading.amounts.find(
    (each) =>
      time &&
      each.fraction &&
      each.dim === "number" &&
      /^\s*and\s*$/.test(reading.text.slice(time.at[1], each.at[0])),
  );
  const min = time && inBase(time.value + (half?.value ?? 0), time.unit);
  return {
    ...(rate
      ? {
          labor_per_h: rate.amount.per
            ? (rate.value / inBase(rate.amount.per.value, rate.amount.per.unit)) * 60
            : rate.value,
        }
      : time
        ? bareRate(reading, time)
        : {}),
    ...(min !== undefined ? { labor_min: min } : {}),
  };
}

/** "labor 2 h x 15", "2 hours of my time at 12.50": so much an hour. */
function bareRate({ amounts, text }: Reading, time: Amount): Draft {
  const number = amounts.find((each) => {
    const between = text.slice(time.at[1], each.at[0]);
    const isBehind = each.dim === "number" && each.at[0] >= time.at[1];
    const asFactor = each.unit === "times" && /^[x×*]/.test(each.text) && isWork.test(`${between}x`);
    return isBehind && (asFactor || (each.unit === "" && isWork.test(between)));
  });
  return number ? { labor_per_h: number.value } : {};
}

const isWork = /^ ?(?:(?:of )?(?:my time|work|labou?r|wages?) )?(?:,? ?(?:at|for|x|@|times|paid at|a) ?)$/;

/** "an hour of my time is 20". */
function hourWorth({ mask, text, amounts, whens }: Reading, money: readonly Sum[]): number | undefined {
  const isSaid =
    /(?:^| )(?:an|1|one|each|every|per|my)?_?\S*hour\S*(?: of (?:my time|work|labou?r))? (?:is|costs|counts as|is worth|worth|goes for) (?:worth )?(?:about )?\S*<(?:money|number|when)>/.test(
      mask,
    );
  if (!isSaid) return undefined;
  const number = amounts.find((each) => each.dim === "number");
  const when = whens.find((each) => /^\d+(?:[.,]\d+)?$/.test(each.text));
  // of several sums the one behind these words
  const ends = [...text.matchAll(worthOfHour)].map((found) => found.index + found[0].length);
  const beside =
    money.length > 1
      ? money.find(({ amount, use }) => use === "rate" || ends.includes(amount.at[0]))
      : money[0];
  if (money.length > 1 && !beside) return undefined;
  return beside?.value ?? number?.value ?? (when && Number(when.text.replace(",", ".")));
}

const worthOfHour =
  /hours?(?: of (?:my time|work|labou?r))? (?:is|costs|counts as|is worth|worth|goes for) (?:worth )?(?:about )?/g;

/** A percentage is the margin, unless markup or food cost is what it stands beside. */
export function readShares(said: Reading, memory: Memory, before: Draft, money: readonly Sum[]): Draft {
  const other = otherShare(said, before);
  if (other) return other;
  const extras = readExtras(said);
  if (extras.taken.length === 0) return marginIn(said, memory, before, money);
  const reading = { ...said, amounts: said.amounts.filter((each) => !extras.taken.includes(each)) };
  const more = reading.amounts.some((each) => each.dim === "percent") || shareSaid(reading) !== undefined;
  return { ...extras.draft, ...(more ? marginIn(reading, memory, before, money) : {}) };
}

/** "margin instead", "markup not margin": the same percentage of the other. */
function otherShare({ text }: Reading, before: Draft): Draft | undefined {
  const said =
    /^(?:(?:no|and|ok|actually|sorry|i meant?|make it|as) )*(margin|mark ?-?up)(?: (?:instead|please|rather|i meant?)|,? not (?:a )?(?:margin|mark ?-?up))$/.exec(
      text,
    )?.[1];
  const value = before.margin_percent ?? before.markup_percent;
  if (!said || value === undefined) return undefined;
  return said === "margin" ? { margin_percent: value } : { markup_percent: value };
}

function marginIn(reading: Reading, memory: Memory, before: Draft, money: readonly Sum[]): Draft {
  const times = reading.amounts.find((each) => each.unit === "times");
  if (times && says(reading, /cost|sell|price|charge|mark ?-?up/))
    return { markup_percent: (times.value - 1) * 100 };
  const percent = reading.amounts.find((each) => each.dim === "percent");
  const last = aimOf(before) ?? "margin_percent";
  const named = says(reading, /mark ?-?up/)
    ? "markup_percent"
    : says(reading, /food cost/)
      ? "food_cost_percent"
      : says(reading, /margin|profit/)
        ? "margin_percent"
        : undefined;
  // "half that margin, its for a friend"
  const multiple = reading.amounts.find(
    (each) => (each.fraction || each.unit === "multiple") && each.dim === "number",
  );
  if (
    multiple &&
    memory.follows &&
    before.margin_percent !== undefined &&
    says(reading, /(?:that|the|this|my) margin/)
  )
    return { margin_percent: before.margin_percent * multiple.value };
  if (percent) return { [named ?? last]: percent.value };
  const part = reading.amounts.find((each) => each.fraction && each.dim === "number");
  if (part && named && says(reading, /<number,fraction> (?:a )?(?:margin|mark ?-?up|food cost)/))
    return { [named]: part.value * 100 };
  const stated = named && shareSaid(reading);
  if (stated) return { [named]: stated.value };
  const spent = money.filter((each) => each.use).map((each) => each.amount);
  const bare = bareNumbers(reading).find((each) => !spent.includes(each));
  const asked = memory.slot === "margin_percent";
  if (
    bare &&
    !/\bround\b/.test(reading.text) &&
    (asked ||
      (memory.follows && (named !== undefined || aimOf(before) !== undefined)) ||
      (named !== undefined &&
        says(reading, /<number> (?:margin|mark ?-?up)|(?:margin|mark ?-?up)(?: of| at| is)? \S*<number/)))
  )
    return { [named ?? last]: bare.value };
  return {};
}
