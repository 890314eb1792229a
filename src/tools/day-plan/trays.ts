import { whole, within } from "./ranges.ts";
import type { DayOrder } from "./types.ts";

/**
 * Trays for a number of macarons: two shells each and one in ten to spare, on trays that hold so many.
 * Source: spare shells and 30 on a tray from memory, settings; the rest arithmetic.
 * @param macarons 1 to 10 000
 * @param shellsOnTray 1 to 1000
 * @throws RangeError outside of these
 */
export function traysFor(macarons: number, shellsOnTray = 30): number {
  within("macarons", whole("macarons", macarons), 1, 10_000);
  within("shellsOnTray", whole("shellsOnTray", shellsOnTray), 1, 1000);
  // 22 N / 10 is rounded once, and correctly, so it is whole exactly when it should be.
  return Math.ceil(Math.ceil((22 * macarons) / 10) / shellsOnTray);
}

/** The trays of an order: as said, else from the shells. */
export function trayCount({ macarons, shellsOnTray, trays }: DayOrder): number {
  const counted = traysFor(macarons, shellsOnTray);
  return trays === undefined ? counted : within("trays", whole("trays", trays), 1, 2000);
}
