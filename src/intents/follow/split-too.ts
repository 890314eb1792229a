/** "the other bowl is 400 g and split too", behind a ganache that split: one more to be mended, and nothing to share out. */
import type { Reading } from "../../tools/contract/index.ts";
import { spaced } from "./spaced.ts";
import type { State } from "./state.ts";

const fault = new Set("split splits splitting separated curdled broke broken seized".split(" "));
const another = new Set("other another second next too also aswell again well one".split(" "));
/** What orders it to be shared out, or is another matter. */
const elsewhere = new Set(
  "into in between ways parts halves equal equally evenly bowls divide share colors colours timer note log save buttercream batter".split(
    " ",
  ),
);

/** Undefined where no other weight of it is told. Pure. */
export function splitToo({ text, amounts, things }: Reading, { last }: State): string | undefined {
  const isMended = last?.tool === "ganache" && last.inputs.want === "split";
  const [only, ...others] = amounts.filter(({ dim }) => dim !== "number");
  if (!isMended && last?.inputs.symptom !== "split ganache") return undefined;
  if (only?.dim !== "weight" || others.length > 0 || things.some(({ taste, dose }) => taste ?? dose))
    return undefined;
  const words = spaced(text).split(" ");
  const has = (some: ReadonlySet<string>) => words.some((word) => some.has(word));
  return has(fault) && has(another) && !has(elsewhere) ? `my ganache split, ${only.text} of it` : undefined;
}
