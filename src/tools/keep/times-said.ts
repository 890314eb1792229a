/** The times in a question about keeping, by what it is about: out of the fridge, in the freezer, matured, old. */

import type { Memory, Reading } from "../contract/index.ts";
import { inBase } from "../lib/units.ts";
import { day_min } from "../lib/when.ts";
import type { About } from "./about-said.ts";
import { dayLong } from "./days-said.ts";
import type { Draft } from "./draft.ts";

export function timesSaid(reading: Reading, about: About | undefined): Draft {
  const times = reading.amounts.filter((each) => each.dim === "time");
  const lasted = (some: typeof times) => some.reduce((sum, each) => sum + inBase(each.value, each.unit), 0);
  if (times.length === 0) return about === "outside" && dayLong.test(reading.text) ? { overnight: true } : {};
  switch (about) {
    case "matured":
      return { matured_min: lasted(times) };
    case "whites":
      return { old_days: lasted(times) / day_min };
    case "freezer":
      return { frozen_days: Math.round(lasted(times) / day_min) };
    case "outside": {
      // "1 hour out, 1 hour in the fridge, 30 min out again": the cold ones don't count, and take nothing back
      const warm = times.filter(({ at }) => !inTheCold.test(reading.text.slice(at[1])));
      return { out_min: lasted(warm.length > 0 ? warm : times) };
    }
    default:
      return {};
  }
}

const inTheCold =
  /^ ?(?:back |again )?(?:in|inside) (?:the |my )?(?:fridge|freezer|refrigerator|cold|cooler)\b/;

const moreWords = /\b(?:another|more|again|on top|as well|too|plus|extra|before that|after that)\b/;

/** "and another 30 min this morning": all spells out of the fridge count together. */
export function onTop(reading: Reading, { follows, last }: Memory): Draft {
  const before = follows && last?.tool === "keep" ? (last.inputs as Draft) : undefined;
  if (before?.about !== "outside" || before.out_min === undefined) return {};
  const [time, ...others] = reading.amounts.filter((each) => each.dim === "time");
  if (!time || others.length > 0 || !moreWords.test(reading.text)) return {};
  return { about: "outside", out_min: before.out_min + inBase(time.value, time.unit) };
}
