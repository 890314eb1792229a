/** Reads which step is asked about: the one that is named first; "how long to rest the piped shells" is about resting. */
import { methodRows } from "../../../data/rules/methods.ts";
import type { Memory, Reading } from "../contract/index.ts";
import { sign } from "../lib/cue.ts";
import { ovenNamed } from "../lib/oven.ts";
import type { MethodInputs } from "./method.ts";

/** The patterns of each row, compiled when first asked. */
let compiled: { id: string; asks: RegExp[]; words: RegExp[]; loose: RegExp[] }[] | undefined;

const rows = () => {
  compiled ??= methodRows.map((row) => ({
    id: row.id,
    asks: (row.asks ?? []).map(sign),
    words: row.words.map(sign),
    loose: (row.loose ?? []).map(sign),
  }));
  return compiled;
};

export function readMethod(reading: Reading, _memory: Memory): Partial<MethodInputs> {
  const { mask } = reading;
  const asked = rows().find((row) => row.asks.some((pattern) => pattern.test(mask)));
  const named = asked ?? firstNamed(mask, "words") ?? firstNamed(mask, "loose");
  const oven = ovenNamed(reading);
  const about = aboutOf(mask);
  // "what temp do i set": the oven's
  const sets =
    !named && /(?:what|which) temp\S* (?:do|should|must|shall) i (?:set|bake|use|put)/.test(reading.mask);
  if (sets) return { step: "bake", ...(about ? { about } : {}), ...(oven ? { oven } : {}) };
  return { ...(named ? { step: named.id } : {}), ...(about ? { about } : {}), ...(oven ? { oven } : {}) };
}

/** The row whose words come first in the sentence; of two that start together, the one that stands first in the table. */
function firstNamed(mask: string, which: "words" | "loose"): { id: string } | undefined {
  let best: { id: string; at: number } | undefined;
  for (const row of rows())
    for (const pattern of row[which]) {
      const at = mask.search(pattern);
      if (at >= 0 && (!best || at < best.at)) best = { id: row.id, at };
    }
  return best;
}

function aboutOf(mask: string): MethodInputs["about"] {
  if (/(?:^| )(?:temp|temps|temperature|temperatures|hot|degrees)(?: |$)/.test(mask)) return "heat";
  if (/how (?:long|many|much time)/.test(mask)) return "time";
  return /(?:^| )(?:how|way|order|when)(?: |$)/.test(mask) ? "how" : undefined;
}
