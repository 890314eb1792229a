/** What a turn that leans on a conversion takes from it: the target, the ingredient, the oven. */
import type { Reading } from "../contract/index.ts";
import { pointsBack } from "../lib/find.ts";
import { ovenWanted } from "../lib/oven.ts";
import type { ConvertInputs } from "./convert.ts";
import { mannerIn, nameOf, siftingTold } from "./named.ts";
import { kind, targets } from "./orders.ts";
import { tellsOfIt, turnsTo } from "./turns.ts";

type Draft = Partial<ConvertInputs>;

/** A time of which no unit is asked belongs to a timer, unless times are what was turned before. */
export const continues = (before: Draft, order: Draft): boolean =>
  order.to !== undefined ||
  !order.unit ||
  order.unit === "large" ||
  kind(order.unit) !== "time" ||
  (before.unit !== undefined && before.unit !== "large" && kind(before.unit) === "time");

const ofWhat = ({ ingredient, unknown }: Draft): string | undefined => ingredient ?? unknown;

/** A new amount after a conversion: its target and its ingredient go on, where they still make sense. */
export function follow(before: Draft, order: Draft): Draft {
  const from = order.unit === "large" ? "weight" : order.unit ? kind(order.unit) : undefined;
  const earlier =
    before.to ??
    (before.unit && from && before.unit !== "large" && kind(before.unit) !== from ? before.unit : undefined);
  // "1/2 tsp salt", behind fluid ounces of something else: its weight is asked for, and no other spoon
  const sameKind = ofWhat(order) && before.to && from === "volume" && kind(before.to) === "volume";
  if (sameKind && !order.to && ofWhat(order) !== before.ingredient) return order;
  const back =
    before.unit && before.to && before.to === order.unit && before.unit !== "large" && before.unit !== "°"
      ? before.unit
      : undefined;
  const to = order.to ?? (order.oven ? undefined : (back ?? earlier));
  const named = order.ingredient || order.unknown;
  const crossing = to && from && kind(to) !== from;
  const fits =
    to &&
    from &&
    (kind(to) === from ||
      (["weight", "volume"].includes(from) &&
        ["weight", "volume"].includes(kind(to)) &&
        (named || before.ingredient)));
  const kept =
    !named && before.ingredient && (crossing || !to) && ["weight", "volume"].includes(from ?? "")
      ? {
          ingredient: before.ingredient,
          ...(before.manner && !order.manner ? { manner: before.manner } : {}),
        }
      : {};
  const oven = from === "temperature" && !order.to && before.oven && !order.oven ? { oven: before.oven } : {};
  return { ...kept, ...oven, ...order, ...(to && (order.to || fits) && to !== order.unit ? { to } : {}) };
}

/** "almond flour, same number of cups", "same cups": the unit is what was measured before, and none to turn into. */
const measuresSame = (reading: Reading, before: Draft): boolean =>
  targets(reading)[0] === before.unit &&
  (/\b(?:same (?:number|amount|count|quantity)|(?:that|as|so) many|the same) (?:of )?\S+/.test(
    reading.text,
  ) ||
    reading.things.some((each) => each.unit && /\bsame $/.test(reading.text.slice(0, each.at[0]))));

/** Nothing but a measure, "in" which nothing is asked. */
const onlyUnit =
  /^(?:(?:and|or|for|what about|how about) )*(?:an? |one )?\S*<unit=[^>]*>(?: (?:then|too|[?.!]))*$/;

/** "a tsp of salt in grams. tbsp?": one of that measure, in grams as before. */
function oneOfThat(before: Draft, { mask }: Reading, unit: string | undefined): Draft | undefined {
  if (!unit || before.value !== 1 || !before.to || !before.unit || before.unit === "large") return undefined;
  const isAnother = kind(unit) === kind(before.unit) && kind(unit) !== kind(before.to);
  return isAnother && onlyUnit.test(mask) ? { ...before, unit } : undefined;
}

/** A follow-up without an amount of its own: "and in ounces", "and sifted?", "what about honey", "and 400?". */
export function changed(before: Draft, reading: Reading): Draft {
  // "whats that in fahrenheit", behind an oven's heat: of the answer
  if (before.oven && targets(reading).length === 1 && reading.amounts.length === 0 && pointsBack(reading))
    return { that: true, to: targets(reading)[0] };
  // "now its creeping up to 310": a number alone takes the place of the one before, in its unit
  const [lone, ...rest_] = reading.amounts;
  if (
    lone?.dim === "number" &&
    lone.unit === "" &&
    !lone.fraction &&
    rest_.length === 0 &&
    reading.things.length === 0 &&
    before.unit !== undefined &&
    before.value !== undefined
  ) {
    const { several: _s, high: _h, ...held } = before;
    return { ...held, value: lone.value };
  }
  // "fan?", behind a heat: that heat in the other oven
  const bareOven = /^(?:and |in |with |for )*(?:an? |my )?(?:fan|convection)(?: oven)?(?: \?)?$/.test(
    reading.mask,
  );
  if (bareOven && before.unit && kind(before.unit) === "temperature") return { ...before, oven: "fan" };
  if (
    !turnsTo(reading) &&
    !tellsOfIt(reading, before) &&
    !ovenWanted(reading) &&
    targets(reading).length === 0
  )
    return {};
  const isMeasure = measuresSame(reading, before);
  const to = isMeasure ? undefined : targets(reading)[0];
  const another = oneOfThat(before, reading, to);
  if (another) return another;
  // "and twice that many tablespoons?"
  const times = reading.amounts.find((each) => each.unit === "times")?.value;
  if (times !== undefined && before.value !== undefined && (to === undefined || to === before.unit))
    return { ...before, value: before.value * times };
  const ofIt = tellsOfIt(reading, before);
  const thing = turnsTo(reading) && !ofIt ? reading.things.find((each) => each.ingredient) : undefined;
  const manner = mannerIn(reading, thing) ?? (thing ? undefined : siftingTold(reading));
  const oven = ovenWanted(reading);
  const bare = reading.amounts.filter(
    (each) =>
      each.dim === "number" && each.unit === "" && (!each.of || (thing !== undefined && each.of === thing)),
  );
  // "half of that": a share of the amount before
  const share =
    /(?:of (?:that|it|this)|as much)/.test(reading.text) && bare[0]?.fraction ? before.value : undefined;
  const value = bare.length === 1 && bare[0] ? bare[0].value * (share ?? 1) : undefined;
  if (before.sum !== undefined)
    return value === undefined
      ? {}
      : { ...before, sum: before.sum.replace(/\d[\d.]*(?=\D*$)/, String(value)) };
  const { ingredient, manner: how, unknown, several: _several, liquid: _liquid, ...rest } = before;
  const named = thing
    ? nameOf(thing)
    : {
        ...(ingredient ? { ingredient } : {}),
        ...(unknown ? { unknown } : {}),
        ...(how ? { manner: how } : {}),
      };
  const said = {
    ...(to ? { to } : {}),
    ...(manner ? { manner } : {}),
    ...(value !== undefined ? { value, high: undefined } : {}),
    ...(oven && before.unit && kind(before.unit) === "temperature" ? { oven } : {}),
  };
  return thing || Object.keys(said).length > 0 ? { ...rest, ...named, ...said } : {};
}
