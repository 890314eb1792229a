/** Several settings in one breath: "45 mm shells, 24 to a tray, fan oven". Each part is read by itself, so none is lost. */
import type { Reading } from "../contract/index.ts";
import { partsOf } from "../lib/cut-parts.ts";
import type { BenchInputs } from "./bench.ts";

type Draft = Partial<BenchInputs>;

/** Words that say nothing of what a number is for. */
const talk =
  /^(?:[^ ]*<(?:number|length|time|temperature|percent|weight|volume|money)[^ ]*|always|usually|normally|from|now|on|please|pls|too|also|well|by|default|remember|save|keep|that|this|it|so|ok|in|mind|use|them|for|good|as|a|rule|\W+)$/;
const isBare = (part: Reading): boolean => part.mask.split(" ").every((token) => talk.test(token));
const isSaid = (part: Reading): boolean => part.amounts.length + part.whens.length > 0 || !isBare(part);

const keysOf = (draft: Draft): string[] =>
  Object.entries(draft).flatMap(([key, value]) => (value === undefined ? [] : [key]));

/** Sizes of shells that a length of its own can be, in mm. */
const shells_mm = [15, 90] as const;

/**
 * @param values what one reading sets
 * @returns the settings of all parts, where each part with a number sets one and no two set the same
 */
export function severalSet(reading: Reading, values: (part: Reading) => Draft): Draft | undefined {
  const parts = partsOf(reading).filter(isSaid);
  if (parts.length < 2) return undefined;
  const drafts = parts.map((part): Draft => {
    // "euros", in a row of settings
    const coin = /^(?:in |money in )?\S*<unit=([A-Z]{3})>$/.exec(part.mask)?.[1];
    if (coin) return { currency: coin };
    if (!isBare(part)) return values(part);
    const size = values(part).diameter_mm;
    const fits = parts.length > 2 && size !== undefined && size >= shells_mm[0] && size <= shells_mm[1];
    return fits ? { diameter_mm: size } : {};
  });
  const lost = parts.some((part, at) => part.amounts.length > 0 && keysOf(drafts[at] ?? {}).length === 0);
  const keys = drafts.flatMap(keysOf);
  const setting = drafts.filter((draft) => keysOf(draft).length > 0);
  if (lost || setting.length < 2 || new Set(keys).size < keys.length) return undefined;
  return Object.assign({}, ...setting) as Draft;
}
