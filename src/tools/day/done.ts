/** Reads which step has just been finished: "done piping tray 1", "the ganache is done", "tray 2 is out". */
import type { Reading } from "../contract/index.ts";
import { says } from "../lib/find.ts";
import type { DayInputs } from "./day.ts";

/** A tray is out; "turns out its 45", "works out at 45" and "left two out" tell nothing that was baked. */
const out =
  "(?<!(?:turns?|turned|found|find|works?|worked|figured|leave|left|leaving|sold|ran|missed|miss) )out";
export const isOut = new RegExp(`(?:^| )${out}(?:<| |$)`);

const words: readonly (readonly [RegExp, string])[] = [
  [/(?:^| )(?:weigh|sift)/, "weigh"],
  [/macaronag|folding|meringue|whipping|(?:^| )batter/, "macaronage"],
  [/(?:^| )pip(?:ing|ed)/, "pipe"],
  [/(?:^| )(?:baking|baked)(?:<| |$)/, "bake"],
  [isOut, "bake"],
  [/(?:^| )cool/, "cool"],
  [/(?:^| )(?:filling|filled)(?:<| |$)/, "fill"],
  [/(?:^| )(?:boxing|boxed|label)/, "box"],
];

/** The kind of step that is spoken of. */
export const kindDone = (reading: Reading): string | undefined =>
  words.find(([pattern]) => says(reading, pattern))?.[1];

export function readDone(reading: Reading): DayInputs["step"] {
  const isDone =
    says(reading, /(?:^| )(?:done|finished|through|completed|piped|baked|ready|made)(?:<| |$)/) ||
    says(reading, isOut);
  if (!isDone) return undefined;
  if (says(reading, /(?:^| )(?:when|how|what|which|why|will|until|till|if|note|log)(?: |$)/))
    return undefined;
  // half of it is not all of it
  if (reading.amounts.some(({ fraction }) => fraction !== undefined)) return undefined;
  // "60 finished macarons by friday" is an order
  if (reading.whens.length > 0 || reading.amounts.some((each) => each.of?.count === "macarons"))
    return undefined;
  const mix = reading.things.find((each) => ["ganache", "buttercream"].includes(each.base ?? ""));
  const tray = reading.amounts.find((each) => each.of?.count === "trays")?.value;
  const recipe = reading.things.find((each) => each.formula)?.formula;
  if (recipe) return { filling: recipe.toLowerCase() };
  const taste = mix && reading.things.find((each) => each.taste && each.at[1] === mix.at[0] - 1)?.taste;
  if (mix?.base) return { filling: [taste, mix.base].filter(Boolean).join(" ") };
  const kind = kindDone(reading) ?? (tray === undefined ? undefined : "bake");
  return kind === undefined ? undefined : { kind, ...(tray !== undefined ? { tray } : {}) };
}
