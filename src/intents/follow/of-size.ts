/** "48 shells of the small size", "filling for the big ones": one of the sizes that were spoken of. */
import type { Reading } from "../../tools/contract/index.ts";
import type { State, Topic } from "./state.ts";

export interface OfSize {
  /** The sentence with the size in place of the word for it. */
  text: string;
  /** The question that was of that size, where no number is said beside it. */
  topic?: Topic;
}

const named =
  /\b(?:of |in |at |with |for )?(?:the|those|my) (small|smaller|smallest|little|tiny|mini|big|bigger|biggest|large|larger|largest) (?:size|sized (?:ones|macarons|macs|shells)|ones|kind|sort|diameter)\b/;

/** Calculators that size shells. */
const sizing = new Set(["shells", "fill"]);

/** Undefined where only one size was spoken of, or none is named. */
export function ofSize({ text, amounts }: Reading, { last, past = [] }: State): OfSize | undefined {
  const [said = "", which = ""] = named.exec(text) ?? [];
  if (!which || !last || amounts.some(({ dim }) => dim === "length") || !sizing.has(last.tool))
    return undefined;
  const sized = past.filter(({ tool, inputs }) => sizing.has(tool) && typeof inputs.diameter_mm === "number");
  const bySize = sized.toSorted((a, b) => Number(a.inputs.diameter_mm) - Number(b.inputs.diameter_mm));
  const [least, most] = [bySize[0], bySize.at(-1)];
  if (!least || !most || least.inputs.diameter_mm === most.inputs.diameter_mm) return undefined;
  const topic = /^(?:big|large)/.test(which) ? most : least;
  // "60 of the small ones", behind shells on a tray: of shells
  const counted = amounts.some(({ dim, of }) => dim === "number" && !of?.count);
  const ones = / ones$/.test(said) && counted && last.inputs.macarons === undefined;
  const size = `${ones ? "shells " : ""}of ${topic.inputs.diameter_mm} mm`;
  if (amounts.length > 0) return { text: text.replace(said, size) };
  const { macarons } = topic.inputs;
  return typeof macarons === "number"
    ? { text: text.replace(said, `for ${macarons} macarons ${size}`), topic }
    : { text: text.replace(said, size) };
}
