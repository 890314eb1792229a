/** "print a batch sheet for 40 macarons", "print today's plan": which plan or order goes onto paper, and which paper. */
import type { Memory, Reading } from "../contract/index.ts";
import { says } from "../lib/find.ts";
import { paperSaid } from "../lib/paper-size.ts";
import { placeless } from "../lib/when-said.ts";
import type { Draft } from "./draft.ts";

export const asksSheet = (reading: Reading): boolean =>
  says(
    reading,
    /(?:^| )(?:print|prints|printed|printing|printout|printable|pdfs?|sheets?\S*|for the wall|\S*<count=batches> cards?)(?: |$)/,
  );

/**
 * @param told the order that the sentence holds
 * @param plan the plan that is spoken of, by when it was made
 */
export function readSheet(reading: Reading, told: Draft, plan: number | undefined, memory: Memory): Draft {
  const paper = paperSaid(reading);
  const said = reading.whens.at(-1);
  const when = said && placeless(said);
  const sheet: Draft = { want: "sheet", ...(paper ? { paper } : {}) };
  const isOrder = Object.keys(told).length > 0;
  if (isOrder || when?.minute !== undefined) return { ...told, ...sheet, ...(when ? { due: when } : {}) };
  const { macarons } = memory.table;
  // sized a moment ago, and of no plan
  if (macarons !== undefined && plan === undefined && !when && says(reading, /batch/))
    return { ...sheet, macarons };
  return {
    ...sheet,
    as_kept: true,
    ...(when ? { on: when } : plan === undefined ? {} : { plan }),
  };
}
