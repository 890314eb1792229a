/** An order as a sentence says it: how many, of what size, in which hours, and which steps it leaves out. */
import type { Memory, Reading } from "../contract/index.ts";
import { diameter, says } from "../lib/find.ts";
import { hoursSaid } from "../lib/hours.ts";
import type { Draft } from "./draft.ts";
import { dueAtHour, startOfDay } from "./due-said.ts";
import { numberSaid } from "./number-said.ts";
import { planBefore } from "./plan-before.ts";
import { restsAgain, restsFor } from "./rest-again.ts";

export function readOrder(reading: Reading, memory: Memory): Draft {
  const before = planBefore(memory);
  const { macarons, hour } = numberSaid(reading, memory, before);
  const size = diameter(reading);
  const { wake_min = startOfDay(reading), sleep_min } = hoursSaid(reading.text);
  return {
    ...(wake_min !== undefined ? { wake_min } : {}),
    ...(sleep_min !== undefined ? { sleep_min } : {}),
    ...(macarons !== undefined ? { macarons } : {}),
    ...(hour !== undefined && before?.due ? { due: dueAtHour(hour, before.due) } : {}),
    ...(size !== undefined ? { diameter_mm: size } : {}),
    ...restSaid(reading, before),
    ...matureSaid(reading, before),
  };
}

const restsAsUsual = new RegExp(`(?:^| )(?:${restsAgain.join("|")})`);

function restSaid(reading: Reading, before: Draft | undefined): Draft {
  if (
    says(
      reading,
      /no.rest|without (?:any |the )?\S*rest|skip (?:the )?\S*rest|(?:dont|do not|wont|not|didnt) (?:let (?:them|it|the \S+) )?\S*rest(?:<|ing)/,
    )
  )
    return { no_rest: true };
  return says(
    reading,
    /put (?:back )?(?:the )?\S*rest\S*(?: back)?(?: |$)|(?:do|let them) \S*rest\S* after all|(?:^| )if (?:i|we) (?:do|did|let them) \S*<step=rest>/,
  ) ||
    restsAsUsual.test(reading.mask) ||
    // "and with a rest of 30 min", where there was to be none
    (before?.no_rest === true && says(reading, restsFor))
    ? { no_rest: false }
    : {};
}

function matureSaid(reading: Reading, before: Draft | undefined): Draft {
  if (says(reading, /(?:skip|without|no|leave out|drop) (?:the )?\S*(?:matur(?:ing|ation)|<step=mature>)/))
    return { no_mature: true };
  // what can't be left out isn't asked for again with every turn
  return before?.no_mature ? { no_mature: false } : {};
}
