/** "10 less", "12 more macarons", "20 g less chocolate": added to or taken from what the turn before was about. */
import type { Amount, Reading } from "../tools/contract/index.ts";
import type { Topic } from "./converse.ts";
import { isBare } from "./slots.ts";

/** Calculators whose weights and counts can be moved so; a timer, a day and a conversion read such words themselves. */
const moves = new Set(["day", "dose", "shells", "fill", "scale", "buy", "split", "ganache", "buttercream"]);
const weights = [
  "base_g",
  "total_g",
  "batter_g",
  "filling_g",
  "chocolate_g",
  "cream_g",
  "butter_g",
  "whites_g",
  "sugar_g",
];
const counts = ["macarons", "shells", "whites_count", "equal"];

const slots: Record<string, string> = { whites: "whites_count", bowls: "equal" };

const less = /^(?:less|fewer)$/;
const more = /^(?:more|extra)$/;

/**
 * The reading with the sum in place of the difference, where nothing but the difference is said and only one earlier
 * figure can be meant; any other reading as it is. Pure.
 */
export function shifted(reading: Reading, last: Topic | undefined): Reading {
  const [amount, ...others] = reading.amounts;
  if (!last || !moves.has(last.tool) || !amount || others.length > 0) return reading;
  if (amount.high !== undefined || amount.fraction || amount.unit === "times") return reading;
  if (amount.dim !== "number" && amount.dim !== "weight") return reading;
  // "add 60 g", "plus 12": to a bowl or a count
  const adds =
    /^(?:(?:and|ok|so|now) )*(?:add|plus|adding) \S*<(?:number|weight)>(?: (?:to (?:it|that)|more|please|then))*$/.test(
      reading.mask,
    ) && !["dose", "ganache", "buttercream"].includes(last.tool);
  const said = adds ? reading.mask.replace(/(?:add|plus|adding) (\S+)(?: more)?/, "$1 more") : reading.mask;
  const tokens = said.replace(/ (?:than|on top of) (?:that|it|before|this|those)(?= |$)/, "").split(" ");
  const at = tokens.findIndex((each) => less.test(each) || more.test(each));
  const beside = [tokens[at - 1], tokens[at + 1]].some((each) => /<(?:number|weight)/.test(each ?? ""));
  if (at < 0 || !beside) return reading;
  const mask = tokens.filter((_, i) => i !== at).join(" ");
  if (!isBare({ ...reading, mask })) return reading;
  const up = more.test(tokens[at] ?? "");
  const lone = loneLine(last.inputs);
  const slot = lone ? "have" : meant(reading, amount, last.inputs, up);
  const before = lone ? lone.grams : slot && last.inputs[slot];
  // "30 g less cream", where no cream was said before: better nothing than just so much
  if (!slot || typeof before !== "number")
    return up || last.tool === "day" || last.inputs.lines !== undefined
      ? reading
      : { ...reading, amounts: [], things: [], mask: "" };
  const sum = up ? before + amount.value : before - amount.value;
  if (amount.unit !== "g" && amount.unit !== "") return reading;
  if (sum <= 0) return reading;
  const unit = lone || weights.includes(slot) ? " g" : "";
  const change = `${amount.value}${unit} ${tokens[at]}`;
  return {
    ...reading,
    mask,
    amounts: [
      { ...amount, value: sum, taken: `${round(sum)}${unit}: ${change} than ${round(before)}${unit}` },
    ],
  };
}

/** The one line of a recipe that was at hand: "100 g whites", of which ten more are said. */
function loneLine({ have }: Topic["inputs"]): { grams: number } | undefined {
  const [only, ...others] = Array.isArray(have) ? (have as { grams: number }[]) : [];
  return others.length === 0 ? only : undefined;
}

const round = (value: number) => Math.round(value * 100) / 100;

/** The earlier input that the difference is of: the one named, else the only one of its kind. */
function meant(reading: Reading, amount: Amount, inputs: Topic["inputs"], up: boolean): string | undefined {
  const known = (slots: readonly string[]) => slots.filter((slot) => typeof inputs[slot] === "number");
  const things = reading.things;
  const counted = things.find((each) => each.count)?.count;
  // "ten more, just the filling": of what was counted
  const ofMix = things.every((each) => each.base && !each.ingredient);
  if (counted || (amount.dim === "number" && ofMix && known(counts).length > 0))
    return counted
      ? known([slots[counted] ?? counted])[0]
      : known(counts.filter((slot) => slot !== "equal"))[0];
  const named = things.find((each) => each.ingredient || each.base);
  const part =
    named?.chocolate || named?.ingredient === "chocolate" ? "chocolate" : (named?.ingredient ?? named?.base);
  const held = known(weights);
  // what was put in besides is another sum, which the calculators work out themselves
  if (typeof inputs.flavor_g === "number" || (up && held.length > 1)) return undefined;
  const slot = part ? held.find((each) => each === `${part}_g`) : undefined;
  if (slot) return slot;
  if (part && part !== inputs.base && part !== inputs.thing && part !== "batter") return undefined;
  const [only, ...rest] = held;
  const isOfSize = !up || typeof inputs.base_g !== "number" || amount.value >= inputs.base_g / 20;
  return rest.length === 0 && isOfSize ? only : undefined;
}
