/** What a note says, as structure. What can't be told for sure stays in the words only. */
import * as z from "zod/mini";
import { bridges, negations } from "../../../data/words/note-talk.ts";
import { praise as praised, symptoms } from "../../../data/words/symptoms.ts";
import type { Reading } from "../contract/index.ts";
import { type Piece, pieces } from "../lib/pieces.ts";
import { ratingIn } from "../lib/rating.ts";
import { listed, plain } from "../lib/show.ts";
import { tastesIn, withBrownButter } from "../lib/tastes.ts";
import { inBase } from "../lib/units.ts";
import { countsIn, isDamage } from "./counts.ts";
import { ovenIn, timesIn } from "./heat.ts";
import { dosesIn, weightsIn } from "./weights.ts";

const number = z.optional(z.number());

/** Times in min (maturing in h), heat in °C, weights in g, lengths in mm, a rating out of 10. */
export const Facts = z.object({
  flavors: z.array(z.string()),
  problems: z.array(z.string()),
  praise: z.array(z.string()),
  /** Problems that are said not to be there. */
  absent: z.array(z.string()),
  rating: number,
  rating_said: z.optional(z.string()),
  macarons: number,
  shells: number,
  trays: number,
  diameter_mm: number,
  oven_c: number,
  bake_min: number,
  rest_min: number,
  mature_h: number,
  batter_g: number,
  filling_g: number,
  /** What stayed in bowl and bag of each. */
  batter_left_g: number,
  filling_left_g: number,
  weights: z.optional(z.array(z.object({ name: z.string(), grams: z.number() }))),
  doses: z.optional(z.array(z.object({ flavor: z.string(), percent: z.number() }))),
  /** Times in min of no named step, and numbers without a unit: a correction's neighbours settle them. */
  loose_min: z.array(z.number()),
  loose: z.array(z.number()),
  /** What is said to have been wrong: "17 min not 15". */
  wrong: z.array(z.number()),
  wrong_flavors: z.array(z.string()),
  assumed: z.array(z.string()),
});

export type Facts = z.infer<typeof Facts>;

/** @param from the piece from which on it counts: what stands before it only says which note is meant */
export function factsOf(reading: Reading, from = 0): Facts {
  const some = withoutVerbs(pieces(reading).slice(from));
  const rating = ratingIn(some);
  // A rating's numbers are taken; nothing else may read them again.
  const rest = some.map(
    (each, at): Piece => (rating && at >= rating.at[0] && at < rating.at[1] ? { text: each.text } : each),
  );
  const flavors = tastesIn(some);
  const wrongAt = new Set(rest.flatMap((each, at) => (each.amount && isWrong(rest, at) ? [at] : [])));
  const wrong = [...wrongAt].map((at) => valueIn(rest[at]));
  const said = rest.map((each, at): Piece => (wrongAt.has(at) ? { text: each.text } : each));
  const oven = ovenIn(said);
  const times = timesIn(said);
  const weights = weightsIn(said, flavors.length === 1 ? flavors[0] : undefined);
  const doses = dosesIn(said, flavors, weights);
  const length = said.find((each) => each.amount?.dim === "length")?.amount;
  const diameter_mm = length && inBase(length.value, length.unit);
  const counts = countsIn(said);
  const taken = new Set([...oven.taken, ...times.taken, ...counts.taken]);
  return {
    ...flaws(some),
    flavors,
    ...(rating ? { rating: rating.rating, rating_said: rating.said } : {}),
    ...counts.found,
    ...(diameter_mm !== undefined && diameter_mm >= 10 && diameter_mm <= 150 ? { diameter_mm } : {}),
    ...oven.found,
    ...times.found,
    ...weights.found,
    ...(doses.length ? { doses } : {}),
    loose_min: times.loose,
    loose: said.flatMap((each, at) =>
      each.amount?.dim === "number" && !each.amount.fraction && !each.amount.of && !taken.has(at)
        ? [each.amount.value]
        : [],
    ),
    wrong,
    wrong_flavors: tastesIn(some.filter((_, at) => ["not"].includes(some[at - 1]?.text ?? ""))),
    assumed: [...oven.assumed, ...times.assumed, ...unread(said, taken, times.loose)],
  };
}

/** Numbers under ten are talk more often than not: "day 3", "two of them". */
const leastTold = 10;

/** What stands in the words alone is said, so that nobody looks for it later: "33", "20 min" of no step. */
function unread(some: readonly Piece[], taken: ReadonlySet<number>, loose_min: readonly number[]): string[] {
  const left = some.flatMap(({ amount }, at) =>
    amount?.dim === "number" &&
    amount.unit === "" &&
    !amount.fraction &&
    !amount.of &&
    amount.value >= leastTold &&
    /\d/.test(amount.text) &&
    !taken.has(at) &&
    !isDamage(some, at)
      ? [amount.text]
      : [],
  );
  const all = [...left, ...loose_min.map((each) => `${plain(each)} min`)];
  return all.length > 0 ? [`${listed(all)} ${onlyWords}`] : [];
}

const onlyWords = "in its words only: what it is of isn't said";
/** What a correction took: its neighbours said what the number is of. */
export const withoutUnread = (assumed: readonly string[]): string[] =>
  assumed.filter((each) => !each.endsWith(onlyWords));

/** "they rose beautifully", "the shells all rose": what they did, and no flavor. */
const withoutVerbs = (some: readonly Piece[]): Piece[] =>
  withBrownButter(some).map((each, at, all) =>
    each.text === "rose" && risers.has(all[at - 1]?.text ?? "") ? { text: "rose" } : each,
  );

const risers = new Set(
  "they it all shells macarons macs tops feet batter these those which both some most never hardly barely".split(
    " ",
  ),
);

/** "17 min not 15": the number behind "not" is the one that was wrong. */
const isWrong = (some: readonly Piece[], at: number) =>
  some[at - 1]?.text === "not" || (some[at - 2]?.text === "instead" && some[at - 1]?.text === "of");

const valueIn = (piece: Piece | undefined) => {
  const { dim, value = 0, unit = "" } = piece?.amount ?? {};
  return dim === "time" ? inBase(value, unit) : value;
};

const rowOf = new Map(symptoms.map((row) => [row.id, row]));

/** What went wrong, what went well, and what is said not to have gone wrong. */
function flaws(some: readonly Piece[]): Pick<Facts, "problems" | "praise" | "absent"> {
  const [problems, praise, absent] = [new Set<string>(), new Set<string>(), new Set<string>()];
  some.forEach((piece, at) => {
    const id = piece.thing?.symptom ?? bareFault(some, at);
    if (!id || !belongs(id, piece, some)) return;
    if (praised.includes(id)) praise.add(id);
    else if (isDenied(some, at)) absent.add(id);
    else problems.add(id);
  });
  return { problems: [...problems], praise: [...praise], absent: [...absent] };
}

/** "wonky and cracked 3/10": before a number the reader takes "cracked" for what is done to eggs. */
function bareFault(some: readonly Piece[], at: number): string | undefined {
  const isEggs = some
    .slice(at + 1, at + 5)
    .some((each) => ["whites", "egg"].includes(each.thing?.ingredient ?? each.amount?.of?.ingredient ?? ""));
  return !some[at]?.thing && some[at]?.text === "cracked" && !isEggs ? "cracked tops" : undefined;
}

/** "split" in a note is a fault only with its ganache or buttercream beside it, not in "split the batter in two". */
function belongs(id: string, piece: Piece, some: readonly Piece[]): boolean {
  const of = rowOf.get(id)?.of;
  if (!of || piece.text.includes(of)) return true;
  return some.some(
    (each) =>
      each.thing?.base === of || (each.thing?.base === "filling" && of !== "batter" && of !== "meringue"),
  );
}

/** "no", "not", "none of them were" before it, with only small words between. */
function isDenied(some: readonly Piece[], at: number): boolean {
  for (let back = at - 1; back >= 0 && back > at - 6; back--) {
    const { text } = some[back] as Piece;
    if (negations.has(text)) return true;
    if (!bridges.has(text) && some[back]?.thing?.symptom === undefined && text !== "or") return false;
  }
  return false;
}
