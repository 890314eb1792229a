/** The weights of a ganache: of chocolate, of cream or of the whole, said, meant by a bare number or on the table. */
import type { Memory, Reading } from "../contract/index.ts";
import { fewFor } from "../lib/few-for.ts";
import { bareNumbers, diameter, says, type Weighed, weighed } from "../lib/find.ts";
import { gramsOfVolume } from "../lib/portions.ts";
import { shareSaid } from "../lib/shares.ts";
import { gramsOf } from "../lib/units.ts";
import { firstOf, type Way } from "../lib/ways.ts";
import { isChocolate } from "./kind-said.ts";
import { weightsByPart } from "./part-said.ts";
import { type Draft, ganacheBefore } from "./turn.ts";
import { fromBareNumber } from "./weights-bare.ts";
import { fromTable } from "./weights-table.ts";

interface WeightsTurn {
  reading: Reading;
  memory: Memory;
  weights: readonly Weighed[];
  /** The ganache that was asked for last. */
  before: Draft | undefined;
  /** Its weight in the bowl is wanted, whatever it is made of. */
  isBowl: boolean;
  /** What the weights of the sentence are of. */
  parts: Draft;
  /** None of them is of a part of a ganache. */
  isOpen: boolean;
}

type WeightsWay = Way<WeightsTurn, Draft>;

/** "what is 200 and 150 good for, its dark". */
const twoBare: WeightsWay = ({ reading, isOpen }) => {
  const [first, second, ...more] = bareNumbers(reading);
  return isOpen && first && second && more.length === 0 && says(reading, /good for/)
    ? { chocolate_g: first.value, cream_g: second.value }
    : undefined;
};

/** "no wait, i have a whole cup", of the cream that was spoken of. */
const cupOfCream: WeightsWay = ({ reading, memory, before, isOpen }) => {
  const cup = reading.amounts.find((each) => each.dim === "volume" && !each.of);
  if (!isOpen || !cup || !memory.follows || before?.cream_g === undefined) return undefined;
  const portion = gramsOfVolume("cream", cup.value, cup.unit);
  return portion && { cream_g: portion.grams, by_volume: true };
};

/** "it split, was 200 g dark, 150 g cream and 20 g butter", "150 white 60 cream 5 raspberry": all of it is in the bowl. */
const bowlOfLines: WeightsWay = ({ weights, isBowl }) => {
  const lines = isBowl ? weights.flatMap(({ grams, thing }) => lineOf(grams, thing)) : [];
  return lines.length > 1 ? { total_g: lines.reduce((sum, { grams }) => sum + grams, 0), lines } : undefined;
};

/** "60 cream", "150 white" of a ganache, "5 raspberry". */
const lineOf = (grams: number, thing: Weighed["thing"]): { name: string; grams: number }[] => {
  const white = thing?.color === "white" ? "white chocolate" : undefined;
  const name = thing?.chocolate
    ? `${thing.chocolate} chocolate`
    : (thing?.ingredient ?? white ?? thing?.taste);
  return name === undefined || thing?.base ? [] : [{ name, grams }];
};

const ofEach =
  /<(?:weight|number)> (?:\S*<unit=g> )?(?:of |for |in )?(?:each|both|apiece)(?: |$)|(?:^| )(?:both|each|each of them|they both|they) (?:(?:was|were|had been|is|are|would be|at|of|to|came to|weighed) )?\S*<(?:weight|number)>/;

/** "what if it was 200 g of each", of the chocolate and the cream that were said; "dark and cream, 200 g of each". */
const asMuchOfBoth: WeightsWay = ({ reading, before }) => {
  const [only, ...others] = reading.amounts;
  const isWeight = only?.dim === "weight" || (only?.dim === "number" && only.unit === "" && !only.fraction);
  if (!only || others.length > 0 || !isWeight || !says(reading, ofEach)) return undefined;
  const hadBoth = before?.chocolate_g !== undefined && before.cream_g !== undefined;
  const kinds = new Set(reading.things.flatMap((each) => (isChocolate(each) ? each.id : [])));
  const namesBoth = kinds.size === 1 && reading.things.some((each) => each.ingredient === "cream");
  if (!hadBoth && !namesBoth) return undefined;
  const grams = gramsOf(only);
  return { chocolate_g: grams, cream_g: grams };
};

const partWas =
  /<[^>]*ingredient=((?:\w+_)?chocolate|cream)[^>]*> (?:(?:had|has|have|was|were|is|been|would|be|weighs|weighed|came|went|goes|to|up|down|at|only|just|about|really|actually|it|sorry|rather) )*\S*<(?:number|weight)>/;

/** "and if the cream had been 150", of the two weights that were said. */
const partPutRight: WeightsWay = (turn) => {
  const { reading, before, isOpen } = turn;
  const [only, ...others] = reading.amounts;
  const part = partWas.exec(reading.mask)?.[1];
  if (!isOpen || !part || !only || others.length > 0 || only.fraction || only.unit === "times")
    return undefined;
  if (before?.chocolate_g === undefined && before?.cream_g === undefined) return undefined;
  return withPartBefore({ [part === "cream" ? "cream_g" : "chocolate_g"]: gramsOf(only) }, turn);
};

const byPart: WeightsWay = (turn) => (turn.isOpen ? undefined : withPartBefore(turn.parts, turn));

/** "and the chocolate ones get dark ganache", of an order that was shared out. */
const shareOfOrder: WeightsWay = ({ reading, memory: { table } }) => {
  const share = shareSaid(reading, table.shares);
  return share && table.macarons !== undefined && reading.amounts.length === 0
    ? { macarons: Math.round(table.macarons * share.share), of_macarons: table.macarons }
    : undefined;
};

/** "for 24 macarons of 40 mm". */
const forMacarons: WeightsWay = (turn) => {
  const { reading } = turn;
  const said = reading.amounts.find((each) => each.of?.count === "macarons" && each.dim === "number");
  const macarons = said?.value ?? fewFor(reading, "ganache");
  if (macarons === undefined) return undefined;
  const diameter_mm = diameter(reading);
  return withPartBefore({ macarons, ...(diameter_mm === undefined ? {} : { diameter_mm }) }, turn);
};

const allOfIt =
  /(?:^| )(?:all|only|just|everything|make it|as) (?:of it )?(?:in |as )?(?:\S+ )?\S*<[^>]*(?:chocolate|base=ganache)/;

/** "all milk ganache", behind the filling that was worked out. */
const allTheFilling: WeightsWay = ({ reading, memory: { last, table } }) =>
  last?.tool === "fill" && table.mass?.thing === "filling" && says(reading, allOfIt)
    ? { total_g: table.mass.grams }
    : undefined;

const sameAmount = /(?:same|that) (?:amount|weight|quantity|much)(?: of)? \S*<[^>]*ingredient=\S*chocolate/;

/** "the milk ones need the same amount of chocolate". */
const asMuchChocolate: WeightsWay = ({ reading, before }) =>
  before?.chocolate_g !== undefined && says(reading, sameAmount)
    ? { chocolate_g: before.chocolate_g }
    : undefined;

const ways: readonly WeightsWay[] = [
  twoBare,
  asMuchOfBoth,
  partPutRight,
  cupOfCream,
  bowlOfLines,
  byPart,
  shareOfOrder,
  forMacarons,
  allTheFilling,
  asMuchChocolate,
  ({ reading, memory }) => ({ ...fromBareNumber(reading, memory), ...fromTable(reading, memory) }),
];

/** A weight of one part said in reply keeps the other part said before. */
function withPartBefore(now: Draft, { reading, memory, before }: WeightsTurn): Draft {
  const hadBoth = before?.chocolate_g !== undefined && before.cream_g !== undefined;
  const isReply = memory.follows && (hadBoth || before?.want === "mend");
  if (!before || !isReply || now.total_g !== undefined || says(reading, /how (?:much|many)/)) return now;
  const { chocolate_g = before.chocolate_g, cream_g = before.cream_g } = now;
  return {
    ...now,
    ...(chocolate_g === undefined ? {} : { chocolate_g }),
    ...(cream_g === undefined ? {} : { cream_g }),
  };
}

/** @param isBowl the whole weight in the bowl is wanted: that of one that split */
export function readWeights(reading: Reading, memory: Memory, isBowl: boolean): Draft {
  const weights = weighed(reading);
  const parts = weightsByPart(reading, memory, weights);
  const isOpen = Object.keys(parts).length === 0;
  const before = ganacheBefore(memory);
  return firstOf(ways, { reading, memory, weights, before, isBowl, parts, isOpen }) ?? {};
}
