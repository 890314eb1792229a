/** A word of the allergens' tables that was taken for a typo is itself again: "amaretti" is no amaretto, "filo" no fill. */
import type { Mended, Reading, Span } from "../contract/index.ts";
import { isTableWord } from "./part-table.ts";

const hits = (text: string, words: readonly string[]): RegExpExecArray[] => [
  ...text.toLowerCase().matchAll(new RegExp(`(?<![a-z])(?:${words.join("|")})(?![a-z])`, "g")),
];

export function asTyped(reading: Reading): Reading {
  return reading.mended
    .filter(({ said, read }) => /^[a-z]+$/.test(said) && /^[a-z ]+$/.test(read) && isTableWord(said))
    .reduce(typedAgain, reading);
}

/** Where both words were typed, each stands again where it stood; else all of them were the one. */
function typedAgain(reading: Reading, { said, read }: Mended): Reading {
  const typed = hits(reading.said, [said, read]).map((hit) => hit[0]);
  const places = hits(reading.text, [read]);
  const isHit = (nth: number) => typed.length !== places.length || typed[nth] === said;
  const cuts = places.filter((_, nth) => isHit(nth)).map(({ index }) => index);
  const more = said.length - read.length;
  const moved = (place: number) => place + more * cuts.filter((cut) => cut + read.length <= place).length;
  const text = cuts.reduceRight(
    (all, cut) => all.slice(0, cut) + said + all.slice(cut + read.length),
    reading.text,
  );
  const shift = <T extends { at: Span }>(each: T): T => ({
    ...each,
    at: [moved(each.at[0]), moved(each.at[1])],
  });
  const isTaken = ({ at }: { at: Span }) => cuts.some((cut) => cut >= at[0] && cut < at[1]);
  const things = reading.things.map((each) =>
    // the mask keeps its place; of what it was taken for nothing is true
    isTaken(each)
      ? {
          id: said,
          ingredient: text.slice(...shift(each).at),
          text: text.slice(...shift(each).at),
          at: shift(each).at,
        }
      : shift(each),
  );
  // "halva" is no half of anything
  const stay = reading.amounts.filter((each) => !isTaken(each));
  const amounts = stay.map((each) => {
    const of = each.of && (things[reading.things.indexOf(each.of)] ?? shift(each.of));
    return { ...shift(each), ...(of ? { of } : {}) };
  });
  return { ...reading, text, things, amounts, whens: reading.whens.map(shift) };
}
