/** "150 g butter", "no, whites": the weight was of another part of the same mix. */
import { takesBack } from "../../../data/words/openers.ts";
import type { Reading } from "../../tools/contract/index.ts";
import { spaced } from "./spaced.ts";
import type { Inputs, State } from "./state.ts";

const mixes = new Set(["buttercream", "ganache", "scale"]);
const partSlots = ["whites_g", "sugar_g", "butter_g", "chocolate_g", "cream_g"];

const names = new RegExp(
  `^${takesBack}(?:(?:it|that|its|thats|was|is|of|the|my|i|meant|mean|said|have|got) )*([a-z]+(?: [a-z]+){0,2}?)(?: (?:i|meant|mean|that is|that was|it is|it was|instead|sorry|not .+))*(?: [.!])?$`,
);

/** The one weight that was said of a part, where there is no more than one. */
function weightOf(inputs: Inputs): number | undefined {
  const slots = partSlots.filter((slot) => typeof inputs[slot] === "number");
  const lines = Array.isArray(inputs.have) ? (inputs.have as { grams?: number }[]) : [];
  if (slots.length + lines.length !== 1) return undefined;
  const [slot] = slots;
  return slot ? (inputs[slot] as number) : lines[0]?.grams;
}

/** The sentence with the weight that it is about; undefined where it is none of that. */
export function otherPart({ text, amounts, things }: Reading, { last }: State): string | undefined {
  const [part] = things;
  if (!last || !mixes.has(last.tool) || amounts.length > 0 || !part?.ingredient || part.chocolate)
    return undefined;
  // "no, milk": which chocolate it is
  if (last.tool === "ganache" && part.ingredient !== "cream") return undefined;
  if (things.some((each) => each.base ?? each.dose)) return undefined;
  const grams = weightOf(last.inputs);
  return grams !== undefined && names.exec(spaced(text))?.[1] === part.text
    ? `no, ${grams} g ${part.text}`
    : undefined;
}
