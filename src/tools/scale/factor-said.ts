/** The factor that a sentence names: "double it", "by a third less", one count of macarons over another. */

import { takesBack } from "../../../data/words/openers.ts";
import { containerWords } from "../../../data/words/told-beside.ts";
import type { Amount, Memory, Reading } from "../contract/index.ts";
import { pointsBack, says, type Weighed } from "../lib/find.ts";
import { timesAnew } from "../lib/times-anew.ts";
import type { Draft } from "./draft.ts";
import { merged } from "./recipe-said.ts";

const houseNamed = /(?:^| )house (?:shells?\S*|recipes?|formulas?|batter\S*|mix)(?: |$)/;

/** The recipe as it was told, whatever it was scaled to since: "the original times 1.5", "double my recipe". */
const asTold =
  /(?:^| )(?:the |my |our )?(?:(?:original|full|entire|whole|initial|actual) (?:recipe|formula|card|thing|amounts?|weights?|version|list|one)|original)(?: |$)|(?:^| )(?:the|my|our|that|same) (?:card|sheet)(?: |$)|(?:^| )(?:my|our) (?:own )?(?:recipe|formula)(?: |$)|(?:^| )(?:recipe|formula) (?:as (?:i|it)|itself|i (?:gave|told|said))(?: |$)/;

/** "sod it, double": something said before is taken back, and with it how many times. */
const startsAgain = new RegExp(`^${takesBack}`);

/** What was worked out is no good, and another takes its place. */
const tooMuch =
  /^(?:(?:no|oh|hm|hmm|um|ok|well|but|sorry|argh|,) ?)*(?:(?:that|it|this)(?: is|'s|s| was|'d be|d be| would be| will be|'ll be)? )?(?:(?:way|far|bit|a bit|much|still|just|all|probably) )*(?:too (?:much|many|little|few|big|small|large)|more than (?:i|we) (?:need|want|can use|have room for|bargained for)|less than (?:i|we) (?:need|want)|not enough|a lot|loads|overkill|over the top)\b/;

/** "half a jar of nut spread": a share of what a thing comes in, and of no recipe. */
const isOfPack = (behind: string): boolean =>
  containerWords.has(/^ ?(?:(?:an?|the|my|one|of) )*([a-z]+)/.exec(behind)?.[1] ?? "");

/** "times 2.5 this curd": what is pointed at is counted by no number. */
const pointsAtOwn = ({ at, of }: Amount, { text }: Reading): boolean =>
  of !== undefined &&
  /^ (?:(?:of|on|for|to) )?(?:this|that|these|my|our)\b/.test(text.slice(at[1], of.at[0] + 1));

/** "1.5 times", "double", "half the recipe". */
export function factorOf(reading: Reading): number | undefined {
  const said = reading.amounts.find((each) => each.unit === "times");
  if (said) return said.value;
  // "cut this by a third" leaves two thirds, and "bump my recipe up by half" adds one
  const change = reading.amounts.find(
    (each) =>
      ((each.fraction && each.dim === "number") || each.dim === "percent") &&
      / by (?:a |an |about )?$/.test(reading.text.slice(0, each.at[0])),
  );
  const step = change && (change.dim === "percent" ? change.value / 100 : change.value);
  if (
    step !== undefined &&
    step < 1 &&
    says(
      reading,
      /(?:^| )(?:cut|reduce|shrink|decrease|lower|drop|less|down(?! to)|knock|trim|pare|dial|smaller)(?:<| |$)/,
    )
  )
    return 1 - step;
  if (step !== undefined && says(reading, /(?:^| )(?:increase|raise|grow|bump|up|enlarge|more)(?:<| |$)/))
    return 1 + step;
  const by = reading.amounts.find(
    (each) =>
      each.dim === "number" &&
      (!each.of || each.of.count === "bowls" || each.of.count === "batches" || pointsAtOwn(each, reading)) &&
      /(?:\bby(?: a)?(?: factor(?: of)?)?|factor(?: of)?|times|multiplied by) $/.test(
        reading.text.slice(0, each.at[0]),
      ),
  );
  if (by && says(reading, /multipl|factor|times|scale|recipe|formula|house|shells|^by /)) return by.value;
  const batches = reading.amounts.find(
    (each) => each.dim === "number" && each.of?.count === "batches" && !each.fraction && each.value > 1,
  );
  if (batches && says(reading, /(?:^| )(?:house|recipe|formula)(?: |$)/)) return batches.value;
  // "0.75 of it", "only 0,6 of the recipe"
  const less = reading.amounts.find(
    (each) =>
      each.dim === "number" &&
      each.unit === "" &&
      !each.of &&
      !each.fraction &&
      (each.value < 1 || /^ of the (?:house|original)/.test(reading.text.slice(each.at[1]))) &&
      /^ of (?:it|that|the (?:house |original )?(?:recipe|formula|batch)|the original)\b/.test(
        reading.text.slice(each.at[1]),
      ),
  );
  if (less) return less.value;
  const isPart = (each: Amount) =>
    each.fraction && each.dim === "number" && !isOfPack(reading.text.slice(each.at[1]));
  const cut = reading.amounts.find(isPart);
  if (cut && /(?:down|cut|reduce|bring|scale)\b.*\bto (?:a |one )?$/.test(reading.text.slice(0, cut.at[0])))
    return cut.value;
  const part = reading.amounts.find(isPart);
  return part &&
    says(
      reading,
      /^(?:(?:and|just|only|ok|so|make it|no|then|or) )*\S*<number,fraction>(?: (?:then|please|instead|now))*(?: \?)?$|<number,fraction> (?:of )?(?:the |my )?\S*<formula|<number,fraction> (?:of )?(?:the|a|my|this|that|it|batch|recipe|house)(?: |$)|(?:^| )(?:want|need|like|make|give me|just|only|do)(?: only| just)? \S*<number,fraction>(?: (?:please|then|instead|now|today))*(?: [?.])?$|<number,fraction> of |<number,fraction> as (?:much|many|big|large)(?: |$)|(?:it|this|that|recipe|everything) (?:down )?(?:in|by) \S*<number,fraction/,
    )
    ? part.value
    : undefined;
}

/** "double it": whatever set the size before, times the factor; at first the recipe on the table or the house formula. */
export function timesBefore(
  before: Draft | undefined,
  memory: Memory,
  factor: number,
  reading: Reading,
): Draft {
  // "double it", where it was asked by how much the recipe that was told is scaled
  if (before?.lines && memory.slot === "factor" && !says(reading, houseNamed))
    return { lines: before.lines, factor, pointed: false };
  // so many times the house recipe is that of 100 g of whites, whatever was scaled before
  if (before && says(reading, houseNamed))
    return { factor, ...(before.lines || before.formula ? { pointed: false } : {}) };
  const isTold = says(reading, asTold);
  const whole =
    isTold ||
    says(
      reading,
      /(?:^| )(?:double|triple|halve|half) the (?:recipe|formula)(?: |$)|<(?:factor|number,fraction)> the (?:recipe|formula)(?: |$)/,
    );
  if (before && (memory.follows || whole)) {
    // "just double the whole recipe", "the original times 1.5": the one that was said
    if (before.lines && (isTold || (before.have && whole))) return { lines: before.lines, factor };
    // "no just double the recipe", behind four whites of it
    if (whole && before.whites_count !== undefined) return { factor };
    if (before.have && before.formula !== undefined && !pointsBack(reading)) return { factor };
    if (before.have) return { have: before.have.map((each) => ({ ...each, grams: each.grams * factor })) };
    if (before.whites_count !== undefined) return { whites_count: before.whites_count * factor };
    if (before.total_g !== undefined) return { total_g: before.total_g * factor };
    if (before.macarons !== undefined) return { macarons: before.macarons * factor };
    const instead =
      startsAgain.test(reading.mask) ||
      /^(?:(?:no|oh|wait|sorry|ok|hm|hmm|,) )*(?:no|or|actually|rather|make it|only|just|wait|on second thoughts?)(?: |,|$)| instead(?: \?)?$| instead of | rather than |, (?:just|only|make it|rather) |,? rather[ .!]*$/.test(
        reading.text,
      );
    // "that's too much, one and a half times": of what was given; "too much, half of it" is of the last one
    const judged = tooMuch.exec(reading.text)?.[0];
    if (
      judged &&
      before.factor !== undefined &&
      !/\b(?:it|that|this)\b/.test(reading.text.slice(judged.length))
    )
      return { factor };
    // "and treble it?", behind another factor, is of what was given; "double that" and "again" go on from the last one
    const anew = instead || timesAnew(reading.text, factor, before.factor);
    if (before.factor !== undefined)
      return { factor: pointsBack(reading) && !anew ? before.factor * factor : factor };
  }
  const table = memory.table.recipe;
  // "the house recipe but 0.75 of it" points at nothing said before
  const back = pointsBack(reading) && !says(reading, houseNamed);
  if (back && !table?.length) return { factor, pointed: true };
  return back && table?.length
    ? { lines: table.map(({ name, grams }) => ({ name, grams })), factor }
    : { factor };
}

/** "recipe for 30 macarons is 100 g whites ..., i want 45": the factor is one count over the other. */
export function madeFor(reading: Reading, weights: readonly Weighed[]): Draft | undefined {
  if (
    weights.length < 2 ||
    !says(reading, /(?:recipe|formula|makes|does|gives|yields|for) (?:\S+ )?\S*<number/)
  )
    return undefined;
  const first = weights[0]?.amount.at[0] ?? 0;
  const counts = reading.amounts.filter(
    (each) =>
      each.dim === "number" &&
      each.unit === "" &&
      !each.fraction &&
      (!each.of || each.of.count === "macarons" || each.of.count === "shells"),
  );
  const isMade = (each: Amount) =>
    each.of !== undefined || /(?:does|makes|gives|yields) $/.test(reading.text.slice(0, each.at[0]));
  const made = counts.find((each) => each.at[0] < first && isMade(each));
  const wanted = counts.findLast((each) => each !== made && each.at[0] > first);
  if (!made || !wanted) return undefined;
  const lines = weights.map((each) => ({
    name: each.thing?.ingredient ?? each.thing?.text ?? "",
    grams: each.grams,
  }));
  return {
    lines: merged(lines),
    factor: wanted.value / made.value,
    // shells are counted in another way than what is asked for next
    ...(made.of?.count === "shells" || wanted.of?.count === "shells" ? {} : { makes: made.value }),
  };
}

/** Fewer are as many times the recipe rather than so many macarons (from memory: nobody bakes a recipe for five). */
const fewest = 6;

/** "what about 50", behind a recipe that makes 20: so many of what it makes. */
export function madeAnew(
  { amounts, text }: Reading,
  { follows }: Memory,
  before: Draft | undefined,
): Draft | undefined {
  const [only, ...others] = amounts;
  if (!follows || before?.makes === undefined || !before.lines || !only || others.length > 0)
    return undefined;
  // "no, 75", behind so much of one of its lines, is of that
  const isOfStock =
    before.have !== undefined &&
    !only.of &&
    !/\bfor (?:only |just |about )?$/.test(text.slice(0, only.at[0]));
  const isCount =
    !isOfStock &&
    only.dim === "number" &&
    only.unit === "" &&
    !only.fraction &&
    (!only.of || only.of.count === "macarons") &&
    Number.isInteger(only.value) &&
    only.value >= fewest;
  return isCount ? { factor: only.value / before.makes } : undefined;
}
