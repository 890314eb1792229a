/** "blue to 300", "no 50 50", behind the color for one of the parts: the split is changed, and no bowl or dose. */
import type { Reading } from "../../tools/contract/index.ts";
import { isBare } from "../chosen/slots.ts";
import type { State, Topic } from "./state.ts";

/** Lighter than this no part of a bowl is; so much of a color or a flavor may be. */
const leastPart_g = 40;

type Parts = { name?: string }[] | undefined;

const namesOf = ({ weights, parts, percents }: Topic["inputs"]): string[] =>
  ((weights ?? parts ?? percents) as Parts)?.flatMap(({ name }) => name ?? []) ?? [];

/** "no 50 50", "make it 60/40": as many shares of a hundred as there are parts. */
function sharesAnew({ text }: Reading, many: number): boolean {
  const [, said = ""] =
    /^(?:(?:no|nope|actually|sorry|ok|and|or|wait|rather|make it|make that|do|lets do),? )*(\d{1,2}(?:(?: ?[/:-] ?| | and | to )\d{1,2})+)(?: (?:then|instead|please))*$/.exec(
      text.trim(),
    ) ?? [];
  const sizes = (said.match(/\d+/g) ?? []).map(Number);
  return sizes.length === many && sizes.length > 1 && sizes.reduce((sum, each) => sum + each, 0) === 100;
}

/** The split that a sentence changes, with a dose for one of its parts since. */
export function splitChanged(reading: Reading, { last, topics }: State): Topic | undefined {
  const split = last?.tool === "dose" ? topics.findLast(({ tool }) => tool === "split") : undefined;
  if (!split) return undefined;
  const names = namesOf(split.inputs);
  if (sharesAnew(reading, names.length)) return split;
  const [amount, ...others] = reading.amounts;
  const [named, ...more] = reading.things;
  const isPart =
    more.length === 0 && named && !named.dose && names.includes(named.color ?? named.taste ?? named.text);
  const isWeight =
    amount !== undefined &&
    others.length === 0 &&
    (amount.dim === "weight" || (amount.dim === "number" && amount.unit === "" && !amount.fraction)) &&
    amount.value >= leastPart_g;
  return isPart && isWeight && split.inputs.weights !== undefined && isBare(reading) ? split : undefined;
}
