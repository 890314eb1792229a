/** The size by a total, macarons or shells, by a bare number in reply, or by what lies on the table. */
import type { Memory, Reading } from "../contract/index.ts";
import { bareNumbers, pointsBack, says, weighed, white_g } from "../lib/find.ts";
import { mostCounted } from "../lib/lines.ts";
import { inBase } from "../lib/units.ts";
import type { Draft } from "./draft.ts";
import type { Line } from "./recipe-said.ts";
import { wholeSaid } from "./whole-said.ts";

/** The size by total, macarons or shells; by a bare number where one was said before; by what lies on the table. */
export function sizeOf(
  reading: Reading,
  memory: Memory,
  before: Draft | undefined,
  lines: readonly Line[],
): Draft {
  const numberOf = (what: string) =>
    reading.amounts.find((each) => each.dim === "number" && each.of?.count === what && !each.fraction)?.value;
  const macarons = numberOf("macarons") ?? /* "40 macarons shell recipe" */ describedBy(reading);
  if (macarons !== undefined) return { macarons };
  const shells = numberOf("shells");
  if (shells !== undefined) return { shells };
  // "900 g all in all", behind what there was of one ingredient; "so 195 g in total" of what there is stays that
  const whole = before && !says(reading, tellsStock) ? wholeSaid(reading) : undefined;
  if (whole !== undefined) return { total_g: whole };
  const total = reading.amounts.find(
    // "batter for shells, 550 g of it"
    (each) => each.dim === "weight" && (!each.of || each.of.base || each.of.count === "shells"),
  );
  const single = reading.things.filter((each) => each.ingredient && !each.base);
  if (
    total &&
    !total.of &&
    single.length === 1 &&
    single[0] &&
    !says(reading, /<base=batter/) &&
    !memory.follows
  )
    return { have: [{ name: single[0].ingredient ?? "", grams: inBase(total.value, total.unit) }] };
  if (total) {
    const grams = weighed(reading).find((each) => each.amount === total)?.grams;
    // "the garden shells so that they come to 651 g", behind them by their whites: of all of it, where none is named
    if (
      single.length === 0 &&
      namesFormula(reading, memory) &&
      !fromSo.test(reading.text.slice(0, total.at[0]))
    )
      return { total_g: grams };
    const isLoose = !total.of || total.of.base === "meringue";
    const own = single.length === 1 ? single[0]?.ingredient : undefined;
    // "what if i only have milk chocolate, 180 g": of what stands right before it, and no new weight of whites
    const beside = reading.things.find(
      (each) =>
        !each.base &&
        Boolean(each.ingredient ?? each.taste) &&
        each.at[1] <= total.at[0] &&
        /^ ?[,:-]? ?$/.test(reading.text.slice(each.at[1], total.at[0])),
    );
    if (beside && !total.of) return { have: [{ name: beside.ingredient ?? beside.text, grams: grams ?? 0 }] };
    // "get more whites so ive 143 g": that line of what is at hand
    if (own && isLoose && before?.have?.some(({ name }) => name === own) && memory.follows)
      return { have: before.have.map((each) => (each.name === own ? { ...each, grams: grams ?? 0 } : each)) };
    // "make it come to 300 g altogether", behind so many times a recipe
    const wasTimes = before?.factor !== undefined;
    if (before && memory.follows && isLoose && before.total_g === undefined && !wasTimes)
      return before.whites_count !== undefined
        ? { have: [{ name: "whites", grams: grams ?? 0 }] }
        : replaced(before, (grams ?? 0) + (saysMore(reading) ? weightOf(before) : 0));
    return { total_g: grams };
  }
  // "rosy for 24": so many macarons of a saved recipe
  const forSo = bareNumbers(reading)[0];
  if (
    forSo &&
    Number.isInteger(forSo.value) &&
    forSo.value >= 6 &&
    memory.names.formulas.some((name) => reading.text.includes(name.toLowerCase())) &&
    / for (?:\S+ )?$/.test(reading.text.slice(0, forSo.at[0]))
  )
    return { macarons: forSo.value };
  const bare = outcome(reading) ?? bareNumbers(reading)[0];
  const own = single.length === 1 ? single[0]?.ingredient : undefined;
  // "im short on almond flour, only 110"
  if (bare && own && bare.value >= 10 && says(reading, /(?:^| )(?:short|low) (?:on|of) /))
    return { have: [{ name: own, grams: bare.value }] };
  // "i found more almond flour, it is 140 now": that line of what is at hand
  if (bare && bare.value >= 10 && own && before?.have?.some(({ name }) => name === own) && memory.follows)
    return { have: before.have.map((each) => (each.name === own ? { ...each, grams: bare.value } : each)) };
  // "found 1 more so 3", of whites that were counted: no three grams
  const eggs =
    before?.have?.length === 1 && before.have[0]?.name === "whites" ? before.have[0].grams / white_g : 0;
  if (
    bare &&
    memory.follows &&
    Number.isInteger(eggs) &&
    eggs > 0 &&
    bare.value <= 20 &&
    Number.isInteger(bare.value)
  )
    return { have: [{ name: "whites", grams: bare.value * white_g }] };
  if (bare && before && memory.follows) return replaced(before, bare.value);
  if (bare && memory.slot === "total_g") return { total_g: bare.value };
  const named = reading.things.find((each) => each.ingredient);
  const mass = memory.table.mass;
  if (mass && lines.length === 0 && memory.last?.tool !== "scale" && pointsAtStock(reading)) {
    if (named && (mass.thing === named.ingredient || mass.thing === "" || named.ingredient === "sugar"))
      return { have: [{ name: named.ingredient ?? mass.thing, grams: mass.grams }] };
    if (mass.thing === "batter") return { total_g: mass.grams };
    if (["whites", "almond flour", "powdered sugar", "granulated sugar", "sugar"].includes(mass.thing))
      return { have: [{ name: mass.thing, grams: mass.grams }] };
  }
  // "and the rest of the shell recipe for 30", of macarons that were spoken of
  const ofThem = bareNumbers(reading).find(({ value }) => value === memory.table.macarons);
  if (ofThem && says(reading, /recipe|formula|shell|<count=shells/)) return { macarons: ofThem.value };
  // "how much almond flour", behind an order: of as many macarons
  const ordered = memory.last?.tool === "shells" ? memory.last.inputs.macarons : undefined;
  if (
    typeof ordered === "number" &&
    ordered === memory.table.macarons &&
    lines.length === 0 &&
    says(reading, /recipe|weigh|ingredients|each|<ingredient/)
  )
    return {
      macarons: ordered,
      ...(memory.table.diameter_mm === undefined ? {} : { diameter_mm: memory.table.diameter_mm }),
    };
  const batter = mass?.thing === "batter" && memory.last?.tool !== "scale" ? mass.grams : undefined;
  if (
    batter !== undefined &&
    lines.length === 0 &&
    says(reading, /recipe|weigh|ingredients|each|<ingredient/)
  )
    return { total_g: batter };
  const same = ofWhatWasSaid(reading, memory, before);
  if (same) return same;
  return memory.table.macarons !== undefined && says(reading, /recipe|weigh|ingredients/)
    ? { macarons: memory.table.macarons }
    : {};
}

/** "ok and the recipe from that", behind three eggs: of those, and not of the macarons that were spoken of before. */
function ofWhatWasSaid(reading: Reading, { last }: Memory, before: Draft | undefined): Draft | undefined {
  if (last?.tool !== "scale" || !before || reading.amounts.length > 0) return undefined;
  if (!pointsBack(reading) && !says(reading, /(?:^| )(?:then|now|again)(?: |$)/)) return undefined;
  const { whites_count, have, total_g, eggs_g, egg_size } = before;
  if (whites_count !== undefined)
    return { whites_count, ...(eggs_g ? { eggs_g } : {}), ...(egg_size ? { egg_size } : {}) };
  if (have?.length) return { have };
  return total_g === undefined ? undefined : { total_g };
}

const namesFormula = ({ text }: Reading, { names }: Memory): boolean =>
  names.formulas.some((name) => text.includes(name.toLowerCase()));
/** "garden shells with 70 g": of what the size went by before. */
const fromSo = /\b(?:with|from|using|have|got|ive|left|out of) (?:only |just |about )?$/;

/** "and if two of them break, so five?": what comes of it is said. */
const outcome = (reading: Reading) =>
  bareNumbers(reading).findLast((each) =>
    /(?:^| )(?:so|leaves|thats) (?:only |just )?$/.test(reading.text.slice(0, each.at[0])),
  );

/** The number before "macarons", though "shell" stands behind that: "for 40 macarons shell recipe". */
const describedBy = (reading: Reading): number | undefined => {
  const said =
    /(?:^| )(\d+(?:\.\d+)?)<number> (?:\S+ )?\S*<count=macarons> \S*<count=shells> (?:recipe|batch|formula)/.exec(
      reading.mask,
    );
  return said ? Number(said[1]) : undefined;
};

/** "found another 75 g of it": on top of what there was. */
const saysMore = (reading: Reading): boolean =>
  says(reading, /(?:another|extra|found) \S*<weight>|<weight> (?:more|extra)(?: |$)/);
const weightOf = (before: Draft): number => before.have?.[0]?.grams ?? before.total_g ?? 0;

const tellsStock =
  /(?:^| )(?:i (?:only |just )?(?:have|got)|ive|we have|weve|got|theres|there (?:is|are)|found|in the (?:bowl|jar|house)|another|extra)(?: |$)/;

/** Less than such a part of what there was is no weight that takes its place. */
const leastShare = 15;

function replaced(before: Draft, value: number): Draft {
  if (before.whites_count !== undefined)
    return value > mostCounted ? { have: [{ name: "whites", grams: value }] } : { whites_count: value };
  const [only] = before.have ?? [];
  // "make it 3", behind 145 g of whites: three of them; of anything else it is asked
  if (only && value < only.grams / leastShare)
    return only.name === "whites" && Number.isInteger(value)
      ? { have: [{ ...only, grams: value * white_g }] }
      : { have: [], unsized: true };
  if (only) return { have: [{ ...only, grams: value }] };
  if (before.total_g !== undefined) return { total_g: value };
  if (before.macarons !== undefined) return { macarons: value };
  if (before.shells !== undefined) return { shells: value };
  return before.factor !== undefined && value <= mostCounted ? { factor: value } : {};
}

/** "it", "the other weights": what lies on the table is one of them. */
const pointsAtStock = (reading: Reading): boolean =>
  pointsBack(reading) ||
  says(reading, /(?:^| )the (?:other|rest of the) (?:weights|ingredients|amounts)(?: |$)/);
