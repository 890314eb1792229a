/** What a number behind "alarm" is: the hour at which it rings, or minutes where it stands with a tray or is no hour. */
import { type Piece, textOf } from "../lib/pieces.ts";

/** "an alarm for 7", and no more of the clock: its hour. */
export function hourOfAlarm(some: readonly Piece[], { when }: Piece): number | undefined {
  const at = some.findIndex((each) => each.when === when);
  if (when?.minute === undefined) return undefined;
  const isBareHour =
    when.minute % 60 === 0 &&
    when.half === undefined &&
    when.days === undefined &&
    when.weekday === undefined &&
    /^(?:\d{1,2}|[a-z]+)$/.test(when.text) &&
    when.text !== "midnight";
  const lead = textOf(some.slice(0, at));
  return isBareHour && /(?:^| )alarms?(?: |$)/.test(lead) && !/ (?:at|by|until|till)$/.test(lead)
    ? when.minute / 60
    : undefined;
}

/** A tray, or a step that is named and no errand. */
export const isOfStep = (some: readonly Piece[]): boolean =>
  some.some(
    ({ thing }, at) =>
      (thing?.step ?? (thing?.count === "trays" || undefined)) && some[at - 1]?.text !== "to",
  );

/** "alarm for 14": minutes, which could be an hour of the day. */
export const isAlarmsNumber = (part: readonly Piece[], minutes = 60): boolean =>
  minutes <= 24 && /(?:^| )alarms?(?: |$)/.test(textOf(part));
