/**
 * What is told of eggs that are counted for their whites: what they weigh in the shell, or how large they are. The book
 * has one figure, 33 g of white each, so the answer says that it holds whatever was told.
 */
import * as z from "zod/mini";
import type { Reading } from "../contract/index.ts";
import { isWhitesCount, white_g } from "./find.ts";
import { listed, plain } from "./show.ts";
import { inBase } from "./units.ts";

/** g of an egg in its shell. */
export const eggs_g = z.array(z.number());
export const egg_size = z.string();

export interface EggsTold {
  eggs_g?: number[];
  egg_size?: string;
}

/** From a small hen's egg to a duck's, in g; from memory. Lighter is a white, heavier is something else. */
const [least_g, most_g] = [40, 95];

const sized =
  /\b(xxl|xl|l|m|s|extra[ -]large|large|medium|small|tiny|little|big|huge|jumbo|giant|pullet|duck|quail)(?:[ -]sized?)? eggs?\b/;

/** "3 eggs, 58 61 and 64 g", "5 L eggs", "3 small eggs". Nothing where no eggs are counted. Pure. */
export function eggsTold(reading: Reading): EggsTold {
  const eggs = reading.amounts.find((each) => isWhitesCount(each) && each.of?.ingredient === "egg");
  if (!eggs) return {};
  const weighed = reading.amounts.filter(
    ({ dim, unit, of, fraction }) =>
      (!of || of.ingredient === "egg") &&
      !fraction &&
      (dim === "weight" || (dim === "number" && unit === "")),
  );
  const grams = weighed
    .filter((each) => each !== eggs)
    .map(({ value, unit }) => (unit === "" ? value : inBase(value, unit)));
  const size = sized.exec(reading.text)?.[1];
  // bare numbers only in a row that ends in grams
  const isOfEggs =
    grams.length > 0 &&
    grams.every((each) => each >= least_g && each <= most_g) &&
    weighed.at(-1)?.dim === "weight" &&
    (grams.length === eggs.value || grams.length === 1);
  return {
    ...(isOfEggs ? { eggs_g: grams } : {}),
    ...(size ? { egg_size: size.length <= 3 ? size.toUpperCase() : size } : {}),
  };
}

/** The line that says so, among what was assumed. */
export function eggsNote({
  eggs_g: weights,
  egg_size: size,
}: { [K in keyof EggsTold]?: EggsTold[K] | undefined }): string[] {
  const some = weights && listed([...new Set(weights)].map((each) => plain(each)));
  return [
    ...(some
      ? [`${white_g} g of white in eggs of ${some} g too: what they weigh in the shell isn't used`]
      : []),
    ...(size
      ? [
          /^(?:l|large)$/i.test(size)
            ? `${white_g} g of white in a large egg`
            : `${white_g} g is a large egg's white; that yours are ${size} changes nothing here, so weigh the whites`,
        ]
      : []),
  ];
}
