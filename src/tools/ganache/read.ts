/** Reads a ganache question: which chocolate, what for, which weights, and what is wrong with it. */
import type { Memory, Reading } from "../contract/index.ts";
import { says } from "../lib/find.ts";
import { firstOf } from "../lib/ways.ts";
import { readAim } from "./aim.ts";
import { compositionWays, partAgain } from "./composition-said.ts";
import { isGrade, kindOf, mixedKinds, otherKind } from "./kind-said.ts";
import { forAnotherUse, mendedNow, mendIt, moreOfPart, pouredIn, whatIsLeft } from "./mend-before.ts";
import { readLines } from "./mix-said.ts";
import { pairSaid } from "./pair-said.ts";
import { rightWays } from "./put-right.ts";
import { ratioSaid } from "./ratio-said.ts";
import { sameRatio } from "./same-ratio.ts";
import { kindsOfOrder, ofEachKind } from "./several-said.ts";
import { madeAnew, splitAgain, stirredIn } from "./split-before.ts";
import { type Draft, type GanacheWay, ganacheTurn } from "./turn.ts";
import { readWant } from "./want-said.ts";
import { readWeights } from "./weights-said.ts";

const liquid = "(?:butter|milk|water|coconut \\w+|yogh?urt|sour cream|mascarpone|oil)";
const inPlaceOfCream = new RegExp(
  `\\b${liquid} (?:instead of|in place of|rather than|(?:and |but )?not) (?:the |any )?cream\\b|\\bno cream,? (?:but|only|just) ${liquid}\\b`,
);

/** What no ratio is known for: another chocolate, or another liquid than cream. */
function unknownTo({ text }: Reading): Draft | undefined {
  const other = otherKind.exec(text)?.slice(1).find(Boolean);
  if (other) return { other };
  return inPlaceOfCream.test(text) ? { other: "anything but cream with it" } : undefined;
}

/** "dark and milk in one ganache". */
function mixed(reading: Reading): Draft | undefined {
  const kinds = mixedKinds(reading);
  const { lines } = readLines(reading);
  return kinds && { mixed: kinds, ...(lines ? { lines } : {}) };
}

/** "200/160 dark ganache, too runny". */
function paired(reading: Reading): Draft | undefined {
  const pair = pairSaid(reading);
  if (!pair) return undefined;
  const [chocolate, want] = [kindOf(reading), readWant(reading)];
  const uses = new Set(reading.things.flatMap((each) => each.use ?? []));
  // "is 200 to 100 dark more for piping or rolling", behind what is in it
  const judged = uses.size > 1 ? { want: "check" as const, use: undefined, lines: undefined } : {};
  return {
    ...judged,
    ...(chocolate ? { chocolate } : {}),
    ...(want.want === "mend" ? want : {}),
    ...pair,
  };
}

/** A mix to be brought to something, or to be moved; of a saved recipe where one is named. */
const aimed: GanacheWay = ({ reading, memory }) => {
  const formula = memory.names.formulas.find((name) => reading.text.includes(name.toLowerCase()));
  const aim = readAim(reading, memory);
  if (!formula) return aim;
  if (aim) return { ...aim, formula };
  return says(reading, /composition|water|fat|sugar|perishable/)
    ? { want: "composition", formula }
    : undefined;
};

/** "450 g milk ganache to fill", "300 g dark, how much cream". */
const byWeights: GanacheWay = ({ reading, memory, want, common }) => ({
  ...common,
  ...readWeights(reading, memory, want.want === "split"),
});

const orderWays: readonly GanacheWay[] = [
  partAgain,
  aimed,
  ofEachKind,
  madeAnew,
  splitAgain,
  whatIsLeft,
  stirredIn,
  ...rightWays,
  moreOfPart,
  mendIt,
  forAnotherUse,
  ...compositionWays,
  mendedNow,
  pouredIn,
  sameRatio,
  byWeights,
];

/** One order or several, with a ratio of her own and the grades of what goes in, where those are said. */
function ordered(reading: Reading, memory: Memory): Draft | Draft[] {
  const said = ratioSaid(reading);
  const found = firstOf(orderWays, ganacheTurn(said?.rest ?? reading, memory)) ?? {};
  if (Array.isArray(found)) return said ? found.map((each) => ({ ...each, ratio: said.ratio })) : found;
  const grades = reading.amounts.flatMap((each) => (isGrade(each, reading) ? [each.value] : []));
  return {
    ...found,
    // a ratio that was said is built with: none is asked for
    ...(said && found.want === "ratio" ? { want: "build" } : {}),
    ...(said ? { ratio: said.ratio } : {}),
    ...butterSaid(reading, found),
    ...(grades.length > 0 && found.want !== "target" ? { grades } : {}),
  };
}

/** "the one with butter", "i want no butter in": which of the two whites; a butter that is weighed is part of the mix. */
function butterSaid(reading: Reading, { want, lines }: Draft): Draft {
  const isPart = lines !== undefined || reading.amounts.some(({ of }) => of?.ingredient === "butter");
  if (isPart || (want !== undefined && want !== "build")) return {};
  // "the version without butter and the one with": both
  if (bothWays.test(reading.text) || withButterToo.test(reading.text)) return {};
  if (noButter.test(reading.text)) return { with_butter: false };
  return butterOne.test(reading.text) ? { with_butter: true } : {};
}
const bothWays = /\bwith(?:out)?\b.* (?:and|or|then|,) .*\bwith(?:out)?\b/;
/** "and gimme the one with butter too": beside the other. */
const withButterToo =
  /\b(?:and|plus|also)\b.*\bbutter\b.* (?:too|also|as well|besides)\b|\bboth\b.*\bbutter\b/;
const noButter =
  /\b(?:no|without|not|skip|leave out|hold)(?: (?:the|any|one with))* butter\b|\bbutter ?(?:less|free)\b/;
const butterOne =
  /\b(?:the|that) (?:one|version|way|recipe) (?:set )?(?:with|that has|using) (?:the )?butter\b|\b(?:the )?butter (?:one|version|way)\b|\bset with butter\b|^(?:(?:and|so|ok|then|no|actually|changed my mind|rather|make it|the one),? )*with (?:the )?butter(?: (?:then|please|after all|instead|now))*[ .?!]*$/;

export const readGanache = (reading: Reading, memory: Memory): Draft | Draft[] =>
  unknownTo(reading) ??
  kindsOfOrder(reading) ??
  mixed(reading) ??
  paired(reading) ??
  ordered(reading, memory);
