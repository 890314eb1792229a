/** A ganache of what lies on the table: of the filling, a part of it, its rest, or the chocolate or cream that was weighed. */
import type { Memory, Reading } from "../contract/index.ts";
import { otherPart, pointsBack, says } from "../lib/find.ts";
import { firstOf, type Way } from "../lib/ways.ts";
import { isChocolate } from "./kind-said.ts";
import { type Draft, ganacheBefore } from "./turn.ts";
import { readWant } from "./want-said.ts";

interface OnTable {
  reading: Reading;
  memory: Memory;
  mass: { grams: number; thing: string } | undefined;
  parts: readonly { name: string; grams: number; of?: string }[];
  /** Another mix is spoken of too. */
  isOfOther: boolean;
}

type TableWay = Way<OnTable, Draft>;

/** "the bigger one": of what was split. */
const bySize: TableWay = ({ reading, parts }) => {
  const size =
    /\bthe (bigger|biggest|larger|largest|big|smaller|smallest|small) (?:one|part|half|bowl|bit)\b/.exec(
      reading.text,
    )?.[1];
  const weights = parts.map((each) => each.grams);
  if (!size || parts.length < 2) return undefined;
  return { total_g: /^(?:big|larg)/.test(size) ? Math.max(...weights) : Math.min(...weights) };
};

/** "for the center". */
const inPlace: TableWay = ({ reading, parts, isOfOther }) => {
  const place = /\b(ring|cent(?:er|re))\b/.exec(reading.text)?.[1]?.replace("centre", "center");
  const part = isOfOther ? undefined : parts.find((each) => each.name === place);
  return part && { total_g: part.grams };
};

/** "and the rest in ganache". */
const theRest: TableWay = ({ reading, memory: { table }, isOfOther }) =>
  table.rest && !isOfOther && otherPart.test(reading.text) ? { total_g: table.rest.grams } : undefined;

/** "how much chocolate for that", behind a ganache center in a ring of buttercream: of the ganache alone. */
const theGanacheInIt: TableWay = ({ memory, parts, isOfOther }) => {
  const [only, ...more] = parts.filter((each) => each.of === "ganache");
  return only && more.length === 0 && memory.last?.tool === "fill" && !isOfOther
    ? { total_g: only.grams }
    : undefined;
};

/** "the ganache half is dark", behind a filling that was split. */
const theGanacheHalf: TableWay = ({ reading, parts }) => {
  const own = parts.find((each) => /(?:^| )ganache$/.test(each.name));
  return own && says(reading, /<base=ganache> (?:half|part|bowl|one|bit|share|third|quarter)/)
    ? { total_g: own.grams }
    : undefined;
};

/** Nothing weighed lies there, or the ganache just worked out: its weights stand in the question before. */
const nothingNew: TableWay = ({ reading, memory, mass }) => {
  if (!mass) return {};
  const { chocolate_g, cream_g, total_g } = ganacheBefore(memory) ?? {};
  const [, ...more] = [chocolate_g, cream_g, total_g].filter((each) => each !== undefined);
  const { want } = readWant(reading);
  const wasWeighed = Object.keys(ganacheBefore(memory) ?? {}).some((key) => key.endsWith("_g"));
  // "so how much cream do i pour over it": of the one weight that was said
  const isAsked = !want || (want === "build" && more.length === 0);
  return wasWeighed && mass.thing === "ganache" && isAsked ? {} : undefined;
};

const pointsAtAll = (reading: Reading): boolean =>
  pointsBack(reading) || says(reading, /all of|the lot|the whole/);

/** "for all of it", of cream; "for that much cream", of a weight of nothing named. */
const ofCream: TableWay = ({ reading, mass }) => {
  const isMuch = says(reading, /(?:that|this) (?:much|amount of|quantity of) \S*<ingredient=cream>/);
  // "its cream, how much dark chocolate for piping", of what was weighed
  const isOfIt = says(reading, isCreamOfIt) && reading.things.some(isChocolate);
  return mass &&
    ((mass.thing === "cream" && pointsAtAll(reading)) || (mass.thing === "" && (isMuch || isOfIt)))
    ? { cream_g: mass.grams }
    : undefined;
};

const howMuchCream = /how much \S*<[^>]*ingredient=cream|(?:^|, )(?:the )?\S*<ingredient=cream> for /;
const isIt =
  "(?:^| )(?:(?:its|it is|thats|that is|this is|that was|it was|all|so much|that much|as much) (?:how much |what |all |my |the |some |of )*)";
const isKindOfIt = new RegExp(`${isIt}\\S*<[^>]*chocolate(?!\\S* \\S*<[^>]*base=)`);
const isCreamOfIt = new RegExp(`${isIt}\\S*<ingredient=cream>`);
const asksForCream = /<ingredient=cream>(?: |$)/;

/** "how much cream for that", of chocolate. */
const ofChocolate: TableWay = ({ reading, mass }) => {
  if (mass && /chocolate$/.test(mass.thing) && pointsAtAll(reading)) {
    const kind = (["dark", "milk", "white"] as const).find((each) => mass.thing.startsWith(each));
    return { chocolate_g: mass.grams, ...(kind ? { chocolate: kind } : {}) };
  }
  // "its milk chocolate - cream to make it pipeable?", of what was weighed
  if (mass?.thing === "" && says(reading, isKindOfIt) && says(reading, asksForCream))
    return { chocolate_g: mass.grams };
  return mass?.thing === "" &&
    pointsBack(reading) &&
    reading.things.some((each) => each.chocolate || each.ingredient === "chocolate") &&
    says(reading, howMuchCream)
    ? { chocolate_g: mass.grams }
    : undefined;
};

/** "the filling is dark ganache", where something else was weighed since. */
const theFilling: TableWay = ({ reading, memory: { table }, mass }) => {
  const filling_g = table.masses?.filling;
  return filling_g !== undefined &&
    mass?.thing !== "filling" &&
    says(
      reading,
      /(?:^| )(?:the|that|my|this) \S*<base=filling> (?:is|will be|are|all|should be|as|to be|becomes)(?: |$)|(?:^| )(?:make|turn|have|do|want|need|like) (?:the|that|my|this) \S*<base=filling> (?:(?:an?|into|in|all|be|to be|as|out of|of|from|some|nice|plain|simple) )*\S*<[^>]*(?:chocolate=|base=ganache)/,
    )
    ? { total_g: filling_g }
    : undefined;
};

/** What can be a ganache: a weight of nothing named too. */
const mayBeGanache = ["filling", "ganache", "", "ring", "center"];

/** "half of that is dark ganache". */
const shareOfIt: TableWay = ({ reading, mass }) => {
  const isShare = /<number,fraction> (?:of )?(?:it|that|this|the \S*<base=filling>)(?: |$)/;
  if (!mass || !mayBeGanache.includes(mass.thing) || !says(reading, isShare)) return undefined;
  const share = reading.amounts.find(
    (each) =>
      each.fraction &&
      (!each.of ||
        each.of.base === "filling" ||
        /^ of (?:it|that|this) /.test(reading.text.slice(each.at[1]))),
  )?.value;
  return share !== undefined && share < 1 ? { total_g: mass.grams * share, of_g: mass.grams } : undefined;
};

/** "make all of that dark ganache"; right behind the filling, "in dark ganache, how much chocolate and cream". */
const allOfIt: TableWay = ({ reading, memory, mass }) => {
  if (!mass || !mayBeGanache.includes(mass.thing)) return undefined;
  const isFilling =
    mass.thing === "filling" &&
    (memory.last?.tool === "fill" || says(reading, /(?:^| )(?:the|my|this|that) \S*<base=filling>/));
  return isFilling ||
    pointsBack(reading) ||
    says(reading, /all of|the lot|for (?:the )?(?:filling|ring|center)/) ||
    readWant(reading).want === "split"
    ? { total_g: mass.grams }
    : undefined;
};

const ways: readonly TableWay[] = [
  bySize,
  inPlace,
  theRest,
  theGanacheInIt,
  theGanacheHalf,
  nothingNew,
  ofCream,
  ofChocolate,
  theFilling,
  shareOfIt,
  allOfIt,
];

/** Empty where nothing on the table is meant. */
export function fromTable(reading: Reading, memory: Memory): Draft {
  const { mass, parts = [] } = memory.table;
  const isOfOther = reading.things.some((each) => each.base === "buttercream");
  return firstOf(ways, { reading, memory, mass, parts, isOfOther }) ?? {};
}
