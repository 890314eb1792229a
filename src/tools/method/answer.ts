/** The row of the method table, with the baker's own oven and times where the bench has them. */

import { fanLower, shellOven } from "../../../data/rules/heat.ts";
import { type MethodRow, methodRows } from "../../../data/rules/methods.ts";
import type { Bench, Figure, Outcome, World } from "../contract/index.ts";
import { plain } from "../lib/show.ts";
import { fahrenheit } from "../lib/units.ts";
import { judgeTime } from "./judge-time.ts";
import type { MethodInputs } from "./method.ts";
import { bakeOn, noSoftening } from "./told-signs.ts";

/** Shells this close to the rule's own size bake like them; from memory. */
const sameSize_mm = 2;

/** @throws never: without a step it asks which one. */
export function answerMethod(
  { step, oven, heat_c, offset_c, judge_c, judge_min, wobbles, softens, diameter_mm }: MethodInputs,
  world: World,
): Outcome {
  if (softens) return noSoftening;
  if (wobbles) return bakeOn(judge_min);
  if (judge_c !== undefined) return judge(judge_c, world.bench, oven);
  if (judge_min !== undefined && (step === "bake" || step === "rest" || step === undefined))
    return judgeTime(judge_min, step, world.bench);
  if (heat_c !== undefined)
    return dialFor(heat_c, offset_c ?? world.bench.oven_offset_c, offset_c !== undefined);
  const row = methodRows.find((each) => each.id === step);
  if (!row) {
    const question =
      "Which step: meringue, macaronage, piping, resting, baking, cooling, ganache, buttercream, maturing, freezing or thawing?";
    return { status: "asking", headline: question, question, slot: "step" };
  }
  const own = row.id === "bake" ? bakeOf(world.bench, oven) : ownTime(row, world.bench);
  const { headline, figures, basis } = own ?? {
    headline: row.headline,
    figures: row.figures,
    basis: row.basis,
  };
  const other =
    row.id === "bake" &&
    diameter_mm !== undefined &&
    Math.abs(diameter_mm - shellOven.diameter_mm) > sameSize_mm;
  return {
    status: "answered",
    headline: other
      ? `There is no rule here for shells of ${plain(diameter_mm)} mm; those of ${shellOven.diameter_mm} mm: ${headline}`
      : headline,
    ...(figures ? { figures: [...figures] } : {}),
    rule: {
      text: own ? `${headline}; the book: ${row.headline}` : row.headline,
      basis,
      ...(row.source && basis !== "your bench" ? { source: row.source } : {}),
    },
    ...(own?.assumed ? { assumed: own.assumed } : {}),
    ...(row.cautions ? { cautions: [...row.cautions] } : {}),
    items: row.steps.map((text, at) => ({ step: at + 1, text })),
    working: row.steps.map((text, at) => `${at + 1}. ${text}`),
  };
}

/** What the dial is set to so that an oven that runs hot or cold has a heat, °C. */
function dialFor(heat_c: number, offset: number | undefined, isSaid: boolean): Outcome {
  if (offset === undefined) {
    const question =
      'How many degrees does your oven run hot or cold? Say "my oven runs 10 hot"; an oven thermometer tells.';
    return { status: "asking", headline: question, question };
  }
  const set_c = heat_c - offset;
  const runs = `your oven runs ${plain(Math.abs(offset))} °C ${offset < 0 ? "cold" : "hot"}`;
  return {
    status: "answered",
    headline: `Set ${plain(set_c)} °C (${plain(fahrenheit(set_c), 0)} °F) for ${plain(heat_c)} °C: ${runs}`,
    figures: [
      { name: "oven", value: set_c, unit: "°C" },
      { name: "oven", value: fahrenheit(set_c), unit: "°F" },
    ],
    rule: { text: `${runs}: the dial = the heat wanted − ${plain(offset)} °C`, basis: "your bench" },
    ...(isSaid ? { assumed: ['for this once; "my oven runs 10 hot" alone keeps it'] } : {}),
    working: [`${plain(heat_c)} − ${plain(offset)} = ${plain(set_c)} °C`],
  };
}

/** A heat beside the one that shells are baked at here. */
function judge(judge_c: number, bench: Bench, oven: MethodInputs["oven"]): Outcome {
  const own = bakeOf(bench, oven);
  const [first] = own?.figures ?? [];
  const set_c = first?.value ?? shellOven.celsius;
  const set_f = own?.figures[1]?.value ?? shellOven.fahrenheit;
  const more = judge_c - set_c;
  const said = `${plain(judge_c, 0)} °C (${plain(fahrenheit(judge_c), 0)} °F)`;
  const usual = `${plain(set_c, 0)} °C (${plain(set_f, 0)} °F) for shells${own ? "" : ", 130 °C (275 °F) with a fan"}`;
  return {
    status: "answered",
    headline:
      Math.abs(more) < 1
        ? `${said} is what shells are baked at`
        : `${plain(Math.abs(more), 0)} °C ${more > 0 ? "hotter" : "cooler"}: ${said} against ${usual}`,
    figures: [
      { name: "oven", value: set_c, unit: "°C" },
      { name: "oven", value: set_f, unit: "°F" },
    ],
    rule: {
      text: `shells: ${plain(set_c, 0)} °C; ${fanLower.text}`,
      basis: own?.basis ?? "common practice",
    },
    cautions: [
      more > 0
        ? "Too hot makes hollow, cracked or browned shells; an oven thermometer tells what it really is."
        : "Too cool makes soft, sticky shells; an oven thermometer tells what it really is.",
    ],
  };
}

interface Own {
  headline: string;
  figures: Figure[];
  basis: "your bench" | MethodRow["basis"];
  assumed?: string[];
}

/** What shells are baked at here: her own heat and time, a fan's twenty degrees, an oven that runs hot. */
function bakeOf(bench: Bench, asked: MethodInputs["oven"]): Own | undefined {
  const fan = asked ? asked === "fan" : bench.fan_oven === true;
  const hers =
    bench.oven_c !== undefined ||
    bench.bake_min !== undefined ||
    bench.oven_offset_c !== undefined ||
    (!asked && bench.fan_oven !== undefined);
  if (!hers && !fan) return undefined;
  const base_c = bench.oven_c ?? shellOven.celsius - (fan ? fanLower.celsius : 0);
  const offset = bench.oven_c === undefined ? (bench.oven_offset_c ?? 0) : 0;
  const set_c = base_c - offset;
  const set_f =
    set_c === shellOven.celsius
      ? shellOven.fahrenheit
      : set_c === shellOven.celsius - fanLower.celsius
        ? shellOven.fahrenheit - fanLower.fahrenheit
        : fahrenheit(set_c);
  const bake: Figure =
    bench.bake_min !== undefined
      ? { name: "bake", value: bench.bake_min, unit: "min" }
      : { name: "bake", value: shellOven.minutes, low: shellOven.low, high: shellOven.high, unit: "min" };
  const range = bench.bake_min === undefined ? ` (${shellOven.low}-${shellOven.high})` : "";
  const notes = [
    fan ? "in a fan oven" : "",
    offset
      ? `set ${plain(Math.abs(offset))} °C ${offset > 0 ? "lower, since it runs hot" : "higher, since it runs cold"}`
      : "",
  ]
    .filter(Boolean)
    .join(", ");
  return {
    headline: `${plain(set_c)} °C (${plain(set_f, 0)} °F) for ${plain(bake.value ?? 0)} min${range}${notes ? `, ${notes}` : ""}`,
    figures: [{ name: "oven", value: set_c, unit: "°C" }, { name: "oven", value: set_f, unit: "°F" }, bake],
    basis: hers ? "your bench" : fanLower.basis,
  };
}

const settings: Record<string, { key: "rest_min" | "cool_min" | "mature_h"; name: string; per: number }> = {
  rest: { key: "rest_min", name: "rest", per: 1 },
  cool: { key: "cool_min", name: "cool", per: 1 },
  mature: { key: "mature_h", name: "mature", per: 60 },
};

/** A step's time as the bench has it. */
function ownTime(row: MethodRow, bench: Bench): Own | undefined {
  const setting = settings[row.id];
  const value = setting && bench[setting.key];
  if (!setting || value === undefined) return undefined;
  const shown =
    value === 0 ? "none, as you do it" : `${plain(value)} ${setting.per === 60 ? "h" : "min"}, as you do it`;
  return {
    headline: `${setting.name}: ${shown}`,
    figures: [{ name: setting.name, value: value * setting.per, unit: "min" }],
    basis: "your bench",
  };
}
