/** Raw whites and yolks: how hot they have to be, and how long they keep. */
import { eggs, fridge, keepingRules, rawWhites, rawYolks } from "../../../data/rules/keeping.ts";
import type { Outcome, World } from "../contract/index.ts";
import { asking } from "../lib/asking.ts";
import { daysBetween, localDay } from "../lib/days.ts";
import { counted, plain } from "../lib/show.ts";
import { fahrenheit } from "../lib/units.ts";
import { behind } from "../lib/when.ts";
import type { KeepInputs } from "./keep.ts";

/** Whether they may be used as they are, or at the heat that they had. */
export function rawEgg({ degrees, air_c, fahrenheit: said_f }: KeepInputs): Outcome {
  if (degrees !== undefined) return asking(`Is that ${plain(degrees, 1)} °C or °F?`, "degrees");
  return air_c === undefined ? unheated : heated(air_c, said_f);
}

const unheated: Outcome = {
  status: "answered",
  headline: `Not as they are: use pasteurised whites, or heat whites and sugar to ${eggs.safe_c} °C (${eggs.safe_f} °F) while stirring`,
  figures: [
    { name: "whites", value: eggs.safe_c, unit: "°C" },
    { name: "whites", value: eggs.safe_f, unit: "°F" },
  ],
  rule: keepingRules.eggs,
  cautions: ["Raw egg is a risk above all to children, the old, the pregnant and the sick."],
};

/** For the pregnant, the very young, the old and the sick. */
export const forTheFrail: Outcome = {
  ...unheated,
  headline: `Only where no egg in them is still raw: shells are baked, whites in a buttercream need ${eggs.safe_c} °C (${eggs.safe_f} °F) or are pasteurised ones; and kept at ${fridge.limit_c} °C (${fridge.limit_f} °F) or below all along`,
  cautions: [...(unheated.cautions ?? []), "Ask the doctor or midwife where there is any doubt."],
};

/** "i heated the whites only to 60": under the line or over it. */
function heated(told_c: number, said_f: boolean | undefined): Outcome {
  const told = said_f
    ? `${plain(fahrenheit(told_c), 0)} °F (${plain(told_c, 1)} °C)`
    : `${plain(told_c, 1)} °C`;
  const isSafe = told_c >= eggs.safe_c - 1e-9;
  return {
    ...unheated,
    headline: isSafe
      ? `Yes: ${told} is the ${eggs.safe_c} °C (${eggs.safe_f} °F) that whites need, or over it`
      : `No: ${told} is under the ${eggs.safe_c} °C (${eggs.safe_f} °F) that whites need. Heat them on while stirring, or use pasteurised whites`,
  };
}

/** Raw whites or yolks in the fridge: the published days, and where the ones asked about stand in them. */
export function rawEggKept({ old_days, made, yolks }: KeepInputs, world: World): Outcome {
  const since = made && behind(made, world.now_ms);
  if (since && !since.ok) return { status: "impossible", headline: since.why };
  const days = old_days ?? (since ? daysBetween(since.day, localDay(world.now_ms)) : undefined);
  const row = yolks ? rawYolks : rawWhites;
  const span = `${row.low} to ${row.high} days in the fridge, covered, at ${fridge.limit_c} °C (${fridge.limit_f} °F) or below`;
  const age = days === undefined ? "" : days < 1 ? "today's" : counted(days, "day");
  return {
    status: "answered",
    headline:
      days === undefined
        ? yolks
          ? `Raw yolks: ${span}; they don't freeze well`
          : `Raw whites: ${span}; ${rawWhites.months} months in the freezer`
        : days <= row.high
          ? `Yes: ${age} is inside the ${span}`
          : `No: ${age} is past the ${span}. Throw them out`,
    figures: [
      { name: yolks ? "raw yolks" : "raw whites", low: row.low, high: row.high, unit: "d" },
      ...(yolks ? [] : [{ name: "raw whites frozen", value: rawWhites.months, unit: "months" }]),
    ],
    rule: yolks ? keepingRules.yolks : keepingRules.whites,
    cautions: [
      `Kept ${yolks ? "yolks are still raw: use them in what is cooked, heated to" : "whites are still raw: heat whites and sugar to"} ${eggs.safe_c} °C (${eggs.safe_f} °F) while stirring${yolks ? "" : " for a buttercream"}, or use pasteurised ones.`,
    ],
  };
}
