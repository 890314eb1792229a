/** "how much does one macaron weigh", "net weight of 6 macarons": filled ones, as they are boxed. */
import type { Amount } from "../contract/index.ts";
import { diameter, says } from "../lib/find.ts";
import { isNumber, type ShellsWay, sized } from "./turn.ts";

const asksFinished =
  /(?:how (?:much|heavy|many \S*<unit=g>\S*)|what) (?:do|does|will|would|is|are) (?:\S+ ){0,3}\S*<count=(?:macarons|boxes)\S*(?: \S+){0,3} weigh(?: |$)|net weight (?:of|for) (?:\S+ ){0,2}\S*<count=macarons|weight of (?:one|an?|each|\S*<number>) (?:filled |finished )?\S*<count=macarons/;

export const finishedWeight: ShellsWay = ({ reading, memory: { table } }) => {
  if (!says(reading, asksFinished)) return undefined;
  const numbers = reading.amounts.filter(isNumber);
  // "boxes of 6": what one holds, while "2 boxes" says how many there are
  const isHeld = (each: Amount) =>
    each.of?.count !== "boxes" || /\bbox(?:es)? (?:of|with) $/.test(reading.text.slice(0, each.at[0]));
  const held = numbers.find(isHeld)?.value;
  const boxes = numbers.find((each) => !isHeld(each))?.value;
  // "how much do 2 boxes weigh", of boxes of nobody knows how many
  if (boxes !== undefined && held === undefined) return { want: "finished" };
  return {
    want: "finished",
    macarons: (held ?? 1) * (boxes ?? 1),
    ...sized(diameter(reading) ?? table.diameter_mm),
  };
};
