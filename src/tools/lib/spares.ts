/** Spare shells said with a question: "without spares", "with 20 % spares". They hold for that question alone. */
import * as z from "zod/mini";
import { spareShells } from "../../../data/rules/shells.ts";
import type { Bench, Outcome, Reading } from "../contract/index.ts";
import { counted, says } from "./find.ts";
import { plain } from "./show.ts";

/** Spares in % of the shells, 0 for none. */
export const spare_percent = z
  .number()
  .check(
    z.gte(0, { error: "Spares can't be fewer than none." }),
    z.lte(100, { error: "More spares than shells: check the number." }),
  );

/** So many % of the shells more than there were, or fewer. */
export const spare_more = z
  .number()
  .check(
    z.gte(0, { error: "Spares can't be fewer than none." }),
    z.lte(100, { error: "More spares than shells: check the number." }),
  );

interface SparesSaid {
  spare_percent?: number;
  spare_more?: number;
  spare_less?: number;
  spares?: string;
}

/** "10 % more spare", "5 % fewer spares": on what was meant before, the bench's or the usual ones. Pure. */
export function moreSparesSaid(reading: Reading, before: SparesSaid = {}): SparesSaid | undefined {
  const share = reading.amounts.find((each) => each.dim === "percent");
  const sign =
    /<percent> (?:of )?(more|extra|additional|less|fewer) (?:of )?(?:the )?(?:spares?|extras)(?: |$)/.exec(
      reading.mask,
    )?.[1];
  if (!share || !sign) return undefined;
  const isLess = /less|fewer/.test(sign);
  const { spare_percent, spare_more = 0, spare_less = 0 } = before;
  if (spare_percent !== undefined)
    return { spare_percent: Math.max(0, spare_percent + (isLess ? -share.value : share.value)) };
  return isLess
    ? { spare_less: spare_less + share.value, ...(spare_more > 0 ? { spare_more } : {}) }
    : { spare_more: spare_more + share.value, ...(spare_less > 0 ? { spare_less } : {}) };
}

/** The spares that a sentence names; nothing where it speaks of none. Pure. */
export function sparesSaid(reading: Reading, macarons?: number): { spare_percent?: number; spares?: string } {
  if (!/spare|extra/.test(reading.mask)) return {};
  const share = reading.amounts.find((each) => each.dim === "percent");
  if (share && says(reading, /<percent> (?:of )?(?:spares?|extras?)(?: |$)/))
    return { spare_percent: share.value };
  const number = reading.amounts.find(
    (each) =>
      each.dim === "number" &&
      each.unit === "" &&
      !each.fraction &&
      /^ (?:spares?|extras?)(?: (?:shells?|ones))?(?= |$|[,.?])(?! (?:batter|macarons?|pairs?))/.test(
        reading.text.slice(each.at[1]),
      ),
  );
  // "24 macarons with 5 spare": five shells more than they take
  const made = macarons ?? counted(reading, "macarons");
  if (number && made && number !== reading.amounts.find((each) => each.of?.count === "macarons"))
    // rounded down, so that five are five and not six
    return {
      spare_percent: Math.floor((1e6 * number.value) / (2 * made)) / 1e4,
      spares: `${plain(number.value)} spare shells`,
    };
  return says(
    reading,
    /(?:^| )(?:no|without|zero|skip|forget|minus|leave out|not counting) (?:\S+ )?(?:spares?|extras?)(?: |$)/,
  )
    ? { spare_percent: 0 }
    : {};
}

/** The bench with the spares of one question in the place of its own. */
export const withSpares = <B extends Pick<Bench, "spare_percent">>(
  bench: B,
  said: {
    spare_percent?: number | undefined;
    spare_more?: number | undefined;
    spare_less?: number | undefined;
  },
): B => {
  const { spare_percent: set = spareShells.value } = bench;
  if (said.spare_percent !== undefined) return { ...bench, spare_percent: said.spare_percent };
  const { spare_more = 0, spare_less = 0 } = said;
  return spare_more === spare_less
    ? bench
    : { ...bench, spare_percent: Math.max(0, set + spare_more - spare_less) };
};

/** An outcome whose assumption names the spares by number, as they were said. */
export const namedSpares = (outcome: Outcome, { spares: said }: { spares?: string | undefined }): Outcome =>
  said && outcome.assumed
    ? { ...outcome, assumed: outcome.assumed.map((each) => (/ % spare shells$/.test(each) ? said : each)) }
    : outcome;

/** The sign of a turn that says nothing else: "and without spares?", "what if 10 % more spare". */
export const spares =
  "^(?:(?:and|but|ok|no|now|so|what|if|its|i|we|want|need|take|took|sorry|actually|do|it|them|make|how|about) )*(?:no|without|zero|skip|forget|minus|with {percent}|{percent}|(?:with )?{percent} (?:more|extra|additional|less|fewer)|(?:with |and |plus )?{number}) (?:(?:the|any|my|of) )?(?:spares?|extras?)(?: {count=shells})?(?: (?:please|then|at all|this time))?(?: [?])?$";
