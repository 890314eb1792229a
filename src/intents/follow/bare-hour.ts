/**
 * "now at 4", "no wait, by 1.25" in the middle of a sum: no hour of the clock. Where the calculator before deals in no
 * times, a bare hour is the number that it looks like.
 */
import { smallNumbers } from "../../../data/words/numbers.ts";
import type { Amount, Reading, When } from "../../tools/contract/index.ts";

/** Calculators for which an hour is an hour. */
const timed = new Set(["timer", "day", "keep", "note", "recall", "help", "label"]);

const number = new RegExp(
  `^(?:(?:at|by|to|from|around|about) )?(\\d+(?:[.,]\\d+)?|${Object.keys(smallNumbers).join("|")})$`,
);

const isNumber = (when: When) =>
  number.test(when.text) &&
  (when.half === undefined || when.half === "24") &&
  when.days === undefined &&
  when.weekday === undefined;

/** "ring me at eleven", behind what 150 F is in C: an order of the clock, whatever was worked out before. */
const ordersRing =
  /\b(?:(?:ring|wake|remind|ping|buzz|nudge|poke|alert|warn|beep|tell|shout(?: at)?) (?:me|us)|timers?|alarms?|reminder|start baking|bake at|ready (?:at|by|for)|due (?:at|by)|pick(?:ed)? up at)\b/;

/** The reading with such hours as numbers; the reading itself where there are none. */
export function withoutBareHours(reading: Reading, last: string | undefined): Reading {
  const bare = reading.whens.filter(isNumber);
  if (last === undefined || timed.has(last) || bare.length === 0 || reading.amounts.length > 0)
    return reading;
  if (ordersRing.test(reading.text)) return reading;
  const amounts = bare.map(({ text, at }): Amount => {
    const said = number.exec(text)?.[1] ?? "";
    return {
      dim: "number",
      value: smallNumbers[said] ?? Number(said.replace(",", ".")),
      unit: "",
      text: said,
      at: [at[1] - said.length, at[1]],
    };
  });
  const mask = reading.mask.replace(/(\S+)<when>/g, (whole, said: string) =>
    number.test(said.replaceAll("_", " "))
      ? said.replaceAll("_", " ").replace(/(\S+)$/, "$1<number>")
      : whole,
  );
  return { ...reading, amounts, whens: reading.whens.filter((when) => !isNumber(when)), mask };
}
