/** Time out of the fridge: two hours in all, one when it is hot, every spell counted. */
import { fridge, keepingRules } from "../../../data/rules/keeping.ts";
import type { Outcome, World } from "../contract/index.ts";
import { clock, daysBetween, localDay, shortDay, startOf } from "../lib/days.ts";
import { plain } from "../lib/show.ts";
import { fahrenheit } from "../lib/units.ts";
import { behind } from "../lib/when.ts";
import type { KeepInputs } from "./keep.ts";
import { isHot, leftOf, limitOf } from "./limit.ts";

/** How long they were out, and how long they may be. */
function spell(inputs: KeepInputs, world: World) {
  const from = inputs.out_since ?? (inputs.out_since_made ? inputs.made : undefined);
  const until_ms = inputs.out_until
    ? nearest(inputs.out_until.minute ?? 0, inputs.out_until.half !== undefined, world.now_ms)
    : world.now_ms;
  const since = from && behind(from, until_ms);
  // out since the day of making: without an hour all that is sure is a night or more
  const nights =
    inputs.out_since_made && since?.ok && !sayHour(from) ? daysBetween(since.day, localDay(world.now_ms)) : 0;
  // "since 1pm, its 4 now": the clock on her wall, whatever ours says
  const walls =
    from?.days === undefined && from?.minute !== undefined && inputs.out_until?.half === undefined
      ? inputs.out_until?.minute
      : undefined;
  const by_wall = walls === undefined ? undefined : (((walls - (from?.minute ?? 0)) % 720) + 720) % 720;
  const last_min =
    inputs.out_min ??
    by_wall ??
    (since?.ok && (nights === 0 ? sayHour(from) : false) ? (until_ms - since.at_ms) / 60_000 : undefined);
  const out_min =
    last_min === undefined && inputs.out_earlier_min === undefined
      ? undefined
      : (last_min ?? 0) + (inputs.out_earlier_min ?? 0);
  return { from, since, until_ms, nights, out_min };
}

/** An hour said as now, at that of the clock's times which lies nearest: her clock may be a little off. */
function nearest(minute: number, isSure: boolean, now_ms: number): number {
  const now_min = (now_ms - startOf(localDay(now_ms))) / 60_000;
  const round = isSure ? 1440 : 720;
  const ahead = (((minute - now_min) % round) + round) % round;
  return now_ms + (ahead > round / 2 ? ahead - round : ahead) * 60_000;
}

/** Out longer than they may be, for sure. */
export function isTooLong(inputs: KeepInputs, world: World): boolean {
  const { nights, out_min } = spell(inputs, world);
  return inputs.overnight === true || nights > 0 || (out_min !== undefined && leftOf(inputs, out_min) < 0);
}

/** Two hours in all, one when it is hot. */
export function outOfFridge(inputs: KeepInputs, world: World): Outcome {
  const { from, since, until_ms, nights, out_min } = spell(inputs, world);
  const [hot, limit_h] = [isHot(inputs), limitOf(inputs)];
  if (since && !since.ok) return { status: "impossible", headline: since.why };
  if (inputs.air_c !== undefined && inputs.air_c <= fridge.limit_c)
    return {
      status: "answered",
      headline: `Yes: at ${plain(inputs.air_c, 0)} °C (${plain(fahrenheit(inputs.air_c), 0)} °F) they are as cold as in the fridge, and the time doesn't count, if it was so all along`,
      figures: [{ name: "fridge", value: fridge.limit_c, unit: "°C" }],
      rule: keepingRules.fridge,
      cautions: ["Measure it beside the macarons: ice packs that have thawed no longer hold them cold."],
    };
  const part = inputs.out_earlier_min ? "part of it " : "";
  const warmth =
    inputs.air_c !== undefined
      ? `, ${hot ? part : ""}at ${plain(inputs.air_c, 0)} °C (${plain(fahrenheit(inputs.air_c), 0)} °F)`
      : hot
        ? `, ${part}in the heat`
        : "";
  const what = inputs.what && inputs.what !== "filling" ? inputs.what : "filled macarons";
  const limit = { name: "out of the fridge", value: limit_h, unit: "h" };
  const common = {
    status: "answered" as const,
    rule: keepingRules.outside,
    ...(inputs.air_c === undefined && !hot ? { assumed: ["no hotter than 32 °C (90 °F)"] } : {}),
  };
  if (out_min === undefined) {
    const headline =
      inputs.overnight || nights > 0
        ? `No: ${nights > 0 && since ? `out since ${shortDay(since.day)}` : "a night out"} is past the ${limit_h} h that ${what} may be out of the fridge. Throw it out.`
        : `${limit_h} h out of the fridge in all${warmth}; then eat them or throw them out`;
    const box = `In a cool box that holds ${fridge.limit_c} °C (${fridge.limit_f} °F) or below the time doesn't count.`;
    return {
      ...common,
      headline,
      figures: [limit],
      ...(inputs.overnight || nights > 0 ? {} : { cautions: [box] }),
    };
  }
  const left_min = leftOf(inputs, out_min);
  const headline =
    left_min < 0
      ? `No: ${hours(out_min)} is past the ${limit_h} h that ${what} may be out of the fridge${warmth}. Throw it out.`
      : left_min === 0
        ? `At the limit: ${hours(out_min)} is all the time out of the fridge${warmth}. Eat them now or throw them out.`
        : `Yes, so far: ${hours(out_min)} of the ${limit_h} h out of the fridge${warmth}; ${hours(left_min)} left, all spells together${since && sayHour(from) ? `, so back in the fridge by ${clock(until_ms + left_min * 60_000)}` : ""}`;
  return {
    ...common,
    headline,
    figures: [
      limit,
      { name: "was out", value: out_min, unit: "min" },
      ...(left_min >= 0 ? [{ name: "time left", value: left_min, unit: "min" }] : []),
    ],
    cautions: ["All the spells out of the fridge since filling count together."],
    working: [
      `${limit_h} h = ${limit_h * 60} min; ${limit_h * 60} − ${plain(out_min)} = ${plain(left_min)} min`,
    ],
  };
}

const sayHour = (when: KeepInputs["made"]) => when?.minute !== undefined;

/** "1.5 h", "1 h 50 min". */
const hours = (min: number) =>
  min < 60
    ? `${plain(min)} min`
    : min % 15 === 0
      ? `${plain(min / 60)} h`
      : `${Math.floor(Math.round(min) / 60)} h ${Math.round(min) % 60} min`;
