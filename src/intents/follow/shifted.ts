/** "10 less", "12 more macarons", "20 g less chocolate": added to or taken from what the turn before was about. */
import type { Amount, Reading, Tool } from "../../tools/contract/index.ts";
import { inBase } from "../../tools/lib/units.ts";
import { isBare, sizes } from "../chosen/slots.ts";
import type { Inputs } from "./state.ts";

/** Weights that a difference can be of; what was put in besides is another sum, which the calculators work out. */
const weights = sizes.filter((slot) => slot.endsWith("_g") && slot !== "flavor_g");
const counts = sizes.filter((slot) => !slot.endsWith("_g"));
/** Where what is counted and its input have other names. */
const countSlots: Readonly<Record<string, string>> = { whites: "whites_count", bowls: "equal" };

const fewer = /^(?:less|fewer)$/;
const more = /^(?:more|extra)$/;
const addition =
  /^(?:(?:and|ok|so|now) )*(?:(?:add|plus|adding)(?: in)?|(?:chuck|throw|toss|crack|stick|pop|bung|sneak) in) (\S*<(?:number|weight)>)(?: (?:to (?:it|that)|more|please|then))*$/;

/** A difference with what it is of: the input before, and what that was. */
interface Difference {
  amount: Amount;
  mask: string;
  up: boolean;
}

/**
 * The reading with the sum in place of the difference, where nothing but the difference is said and only one earlier
 * figure can be meant. Where none can, nothing is left of it to be taken for an amount; any other reading is as it was.
 * Pure.
 * @param last the calculator that answered last, which says whether its figures move so, with the inputs it had
 */
export function shifted(reading: Reading, last: Tool | undefined, inputs: Inputs): Reading {
  const said = last?.shifts && differenceIn(reading, last.shifts === "added");
  if (!said) return reading;
  const { amount, mask, up } = said;
  const slot = loneLine(inputs) ? "have" : meant(reading, amount, inputs, up);
  const before = loneLine(inputs)?.grams ?? (slot && inputs[slot]);
  // a calculator that works from lines reads a difference of one of them itself, and "more" may be of a flavor
  if (typeof before !== "number")
    return up || inputs.lines !== undefined ? reading : { ...reading, amounts: [], things: [], mask: "" };
  const grams = slot === "have" || weights.includes(slot ?? "");
  // "2 g more each", of a bowl in so many parts
  const bowls =
    slot === "total_g" && typeof inputs.equal === "number" && /(?:^| )each(?: |$)/.test(mask)
      ? inputs.equal
      : 1;
  const step = bowls * (grams && amount.unit ? inBase(amount.value, amount.unit) : amount.value);
  const sum = before + (up ? step : -step);
  const unit = grams ? " g" : "";
  const how = `${amount.text}${grams && !amount.unit ? " g" : ""} ${up ? "more" : grams ? "less" : "fewer"}`;
  const taken = `${round(sum)}${unit}: ${how} than ${round(before)}${unit}`;
  return {
    ...reading,
    mask,
    amounts: [{ ...amount, value: sum, unit: amount.unit ? "g" : "", taken }],
  };
}

/** The one amount of a turn that says nothing but that it is more or less by so much. */
function differenceIn(reading: Reading, adds: boolean): Difference | undefined {
  const [amount, ...others] = reading.amounts;
  if (!amount || others.length > 0 || amount.high !== undefined || amount.fraction) return undefined;
  if (amount.unit === "times" || !["number", "weight"].includes(amount.dim)) return undefined;
  const said = adds ? reading.mask.replace(addition, "$1 more") : reading.mask;
  const tokens = said.replace(/ (?:than|on top of) (?:that|it|before|this|those)(?= |$)/, "").split(" ");
  const at = tokens.findIndex((each) => fewer.test(each) || more.test(each));
  const beside = [tokens[at - 1], tokens[at + 1]].some((each) => /<(?:number|weight)/.test(each ?? ""));
  const mask = tokens.filter((_, i) => i !== at).join(" ");
  return at >= 0 && beside && isBare({ ...reading, mask })
    ? { amount, mask, up: more.test(tokens[at] ?? "") }
    : undefined;
}

/** The one line of a recipe that was at hand: "100 g whites", of which ten more are said. */
function loneLine({ have }: Inputs): { grams: number } | undefined {
  const [only, ...others] = Array.isArray(have) ? (have as { grams: number }[]) : [];
  return others.length === 0 ? only : undefined;
}

const round = (value: number) => Math.round(value * 100) / 100;

const ofPlace =
  /(?:^| )(?:in|into|to|for) (?:the )?(?:first|second|third|fourth|fifth|last|other|one of (?:them|those))(?: |<|$)/;

/** The earlier input that the difference is of: the one named, else the only one of its kind. */
function meant(reading: Reading, amount: Amount, inputs: Inputs, up: boolean): string | undefined {
  const known = (slots: readonly string[]) => slots.filter((slot) => typeof inputs[slot] === "number");
  const { things } = reading;
  const counted = things.find((each) => each.count)?.count;
  // "20 g more in the pink": of one part, and not of the bowl
  if (inputs.total_g !== undefined && things.some((each) => each.color || (each.taste && !each.base)))
    return undefined;
  // "20 g more in the first": of one of the parts
  if (inputs.total_g !== undefined && ofPlace.test(reading.mask)) return undefined;
  if (counted) return known([countSlots[counted] ?? counted])[0];
  // "ten more, just the filling": of what was counted
  const ofMix = things.every((each) => each.base && !each.ingredient);
  if (amount.dim === "number" && ofMix && known(counts).length > 0) return known(counts)[0];
  const named = things.find((each) => each.ingredient || each.base);
  const part =
    named?.chocolate || named?.ingredient === "chocolate" ? "chocolate" : (named?.ingredient ?? named?.base);
  const held = known(weights);
  if (typeof inputs.flavor_g === "number" || (up && held.length > 1)) return undefined;
  const slot = held.find((each) => each === `${part}_g`);
  if (slot) return slot;
  if (part && part !== inputs.base && part !== inputs.thing && part !== "batter") return undefined;
  const isOfSize = !up || typeof inputs.base_g !== "number" || amount.value >= inputs.base_g / 20;
  return held.length === 1 && isOfSize ? held[0] : undefined;
}
