/** Sizes that are no plain diameter: a bare number, the usual one, several at once. */
import type { Reading } from "../contract/index.ts";
import { bareNumbers, says } from "../lib/find.ts";
import { inBase } from "../lib/units.ts";
import type { Draft, ShellsWay } from "./turn.ts";
import { wantSaid } from "./want-said.ts";

/** A bare number within these is a macaron's diameter in mm; from memory, nobody pipes smaller or larger ones. */
const [least_mm, most_mm] = [20, 80];

/** "612 g batter, how many macs at 35": mm, where a weight or a count was said too. */
export function sizeAt(reading: Reading, before?: Draft): number | undefined {
  const at = bareNumbers(reading).find((each) => / at $/.test(reading.text.slice(0, each.at[0])));
  // "how many trays at 45", of an order that was spoken of
  const isOrder = [before?.macarons, before?.shells, before?.batter_g].some((each) => each !== undefined);
  const others =
    (isOrder && reading.amounts.length === 1 && says(reading, /<count=(?:trays|shells)/)) ||
    reading.amounts.some((each) => each !== at && (each.dim === "weight" || each.of?.count));
  return at && others && at.value >= least_mm && at.value <= most_mm ? at.value : undefined;
}

/** "and back to regular": the size that counts where none is said. */
export const isUsualSize = (reading: Reading): boolean =>
  says(
    reading,
    /back to (?:the |my )?(?:regular|normal|usual|standard)|(?:regular|normal|usual|standard) (?:size|ones)/,
  );

/** "40 shells at 35 mm and 40 at 45 mm": each size for itself. */
export const severalSizes: ShellsWay = ({ reading }) => {
  const lengths = reading.amounts.filter((each) => each.dim === "length");
  const counts = lengths.map((length) =>
    reading.amounts.find(
      (each) =>
        each.dim === "number" &&
        each.unit === "" &&
        /^ (?:\S+ )?(?:(?:at|of|with) )?$/.test(reading.text.slice(each.at[1], length.at[0])),
    ),
  );
  const first = counts[0]?.of?.count;
  const slot = first === "shells" || first === "macarons" ? first : undefined;
  if (lengths.length < 2 || !slot || counts.some((each) => each === undefined)) return undefined;
  const want = wantSaid(reading);
  return lengths.map(
    (length, at): Draft => ({
      [slot]: counts[at]?.value,
      diameter_mm: inBase(length.value, length.unit),
      ...(want ? { want } : {}),
    }),
  );
};
