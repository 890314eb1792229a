/** Weights and volumes, of anything or of a named ingredient. */

import { liquidTeaspoon_g } from "../../../data/rules/doses.ts";
import { ingredients } from "../../../data/words/ingredients.ts";
import type { Mass, Outcome, World } from "../contract/index.ts";
import { gramsOfLarge, gramsOfVolume, measuresOf, portionSource } from "../lib/portions.ts";
import { capital, plain } from "../lib/show.ts";
import { unitRow } from "../lib/units.ts";
import type { ConvertInputs } from "./convert.ts";
import { asking, result, shown, unitRule, type Wording } from "./result.ts";

type Ready = ConvertInputs & { value: number; unit: string };

/** What a baker wants when no target is said. */
const usual: Record<string, string> = {
  tsp: "ml",
  tbsp: "ml",
  "fl oz": "ml",
  cup: "ml",
  stick: "g",
  pint: "ml",
  quart: "ml",
  gallon: "l",
  l: "cup",
  dl: "cup",
  cl: "ml",
};

function targetOf(inputs: Ready, world: World): string {
  if (inputs.to) return inputs.to;
  const hers = world.bench.weight_unit ?? "g";
  if (inputs.unit === "large" || (dimOf(inputs.unit) === "volume" && (inputs.ingredient || inputs.unknown)))
    return hers;
  if (dimOf(inputs.unit) === "weight")
    return ["g", "kg", "mg"].includes(inputs.unit) ? (inputs.unit === "g" ? "oz" : "g") : "g";
  return inputs.unit === "ml" ? (inputs.value < 100 ? "tbsp" : "cup") : (usual[inputs.unit] ?? "ml");
}

const dimOf = (unit: string) => (unit === "large" ? "weight" : unitRow(unit).dim);

export function massAnswer(inputs: Ready, world: World): Outcome {
  const to = targetOf(inputs, world);
  const assumed = inputs.to ? [] : [`into ${to}`];
  const outcome =
    inputs.unit === "large"
      ? eggs(inputs, to)
      : dimOf(inputs.unit) === dimOf(to)
        ? sameKind(inputs, to, world)
        : crossing(inputs, to, world);
  if (outcome.status !== "answered") return outcome;
  const all = [...assumed, ...(outcome.assumed ?? [])];
  return { ...outcome, ...(all.length ? { assumed: all } : {}) };
}

/** A mass for the next question, where one end of the conversion is a weight. */
const leaves = (grams: number, inputs: Ready): { leaves: { mass: Mass } } => ({
  leaves: { mass: { grams, thing: inputs.ingredient ?? inputs.mix ?? "" } },
});

/** ml in one of a volume unit: the baker's own cup where it is set. */
const perUnit = (unit: string, world: World) =>
  unit === "cup" && world.bench.cup_ml ? world.bench.cup_ml : unitRow(unit).per;
const ownCup = (units: string[], world: World) => units.includes("cup") && world.bench.cup_ml !== undefined;

function sameKind(inputs: Ready, to: string, world: World): Outcome {
  const factor = perUnit(inputs.unit, world) / perUnit(to, world);
  const own = ownCup([inputs.unit, to], world);
  const rule: Wording = own
    ? {
        text: `your cup = ${plain(world.bench.cup_ml ?? 0)} ml, ${unitRule(inputs.unit === "cup" ? to : inputs.unit, to === "cup" ? inputs.unit : to).text}`,
        basis: "your bench",
      }
    : unitRule(inputs.unit, to);
  return {
    ...result(inputs, to, (value) => value * factor, rule, inputs.ingredient ?? ""),
    ...(dimOf(to) === "weight" ? leaves(inputs.value * unitRow(inputs.unit).per, inputs) : {}),
  };
}

/** Whites, yolks and eggs by number: a large egg's. */
function eggs(inputs: Ready, to: string): Outcome {
  const each = gramsOfLarge(inputs.ingredient ?? "") ?? gramsOfLarge("whites") ?? 0;
  const name = inputs.ingredient === "egg" ? "eggs" : inputs.ingredient === "egg yolk" ? "yolks" : "whites";
  if (dimOf(to) !== "weight")
    return {
      status: "declined",
      headline: `${capital(name)} by number turn into a weight: ${plain(each)} g each. Ask for grams.`,
    };
  const rule: Wording = {
    text: `one large egg's ${name === "eggs" ? "inside" : name.slice(0, -1)} weighs ${plain(each)} g`,
    basis: "published",
    source: portionSource,
  };
  const outcome = result(
    { ...inputs, unit: "" },
    to,
    (value) => (value * each) / unitRow(to).per,
    rule,
    name,
  );
  return { ...outcome, assumed: ["large eggs"], ...leaves(inputs.value * each, inputs) };
}

/** Volume to weight of an ingredient, or back. */
function crossing(inputs: Ready, to: string, world: World): Outcome {
  const volume = dimOf(inputs.unit) === "volume" ? inputs.unit : to;
  const name = inputs.ingredient;
  if (name === undefined)
    return inputs.unknown
      ? {
          status: "declined",
          headline: `I don't know what a ${spoken(volume)} of ${inputs.unknown} weighs; it isn't in the portion table. Weigh it.${inputs.liquid ? ` A dose counts a liquid flavor's teaspoon as ${plain(liquidTeaspoon_g)} g, by estimate.` : ""}`,
        }
      : asking(`A ${spoken(volume)} of what? Every ingredient weighs its own.`, "ingredient");
  if (name === "chocolate")
    return asking("Which chocolate is it: dark, milk, white or semisweet chips?", "ingredient");
  if (inputs.several && !inputs.manner)
    return asking(`How are the ${name} measured: whole, chopped or ground?`, "manner");
  const portion = gramsOfVolume(name, 1, volume, inputs.manner);
  if (!portion || (volume === "stick" && portion.scaled)) return unknown(name, volume, inputs.manner);
  const own = ownCup([volume], world);
  const each = portion.grams * (ownCup([volume], world) ? perUnit("cup", world) / unitRow("cup").per : 1);
  const scaled = portion.scaled
    ? `; 1 ${volume} = ${plain(unitRow(volume).per / unitRow("cup").per, 6)} cup`
    : "";
  const rule: Wording = own
    ? {
        text: `${portion.row}, by your cup of ${plain(world.bench.cup_ml ?? 0)} ml: ${plain(each)} g`,
        basis: "your bench",
      }
    : {
        text: `${portion.row}${scaled}`,
        basis: "published",
        source: portion.scaled ? `${portionSource}; NIST Handbook 44, appendix C` : portionSource,
      };
  const toWeight = volume === inputs.unit;
  const turn = (value: number) =>
    toWeight ? (value * each) / unitRow(to).per : (value * unitRow(inputs.unit).per) / each;
  const grams = toWeight ? inputs.value * each : inputs.value * unitRow(inputs.unit).per;
  const manner = inputs.manner ?? ingredients.find((row) => row.name === name)?.manner;
  const outcome = result(
    inputs,
    to,
    turn,
    rule,
    `${name}${manner && manner !== "fluid" && !name.includes(manner) ? `, ${manner}` : ""}`,
  );
  return {
    ...outcome,
    working: [
      ...(outcome.working ?? []),
      toWeight
        ? `${shown(inputs.value, inputs.unit)} × ${plain(each, 4)} g = ${plain(grams, 3)} g`
        : `${plain(grams, 3)} g / ${plain(each, 4)} g = ${plain(grams / each, 4)} ${to}`,
    ],
    ...(inputs.manner || !manner ? {} : { assumed: [`${name} measured ${manner}`] }),
    ...(inputs.unknown ? { assumed: [`${inputs.unknown} taken as ${name}`] } : {}),
    ...leaves(grams, inputs),
  };
}

function unknown(name: string, volume: string, manner: string | undefined): Outcome {
  const rows = measuresOf(name).map((row) => row.replace(/ of .* = /, " = "));
  const known = rows.length ? ` The table knows: ${rows.slice(0, 4).join("; ")}.` : "";
  return {
    status: "declined",
    headline: `I don't know what a ${spoken(volume)} of ${name}${manner ? `, ${manner},` : ""} weighs; the portion table doesn't have it.${known} Weigh it.`,
  };
}

const spoken = (unit: string) =>
  ({ tsp: "teaspoon", tbsp: "tablespoon", ml: "ml", "fl oz": "fluid ounce" })[unit] ?? unit;
