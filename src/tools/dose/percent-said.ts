/** The percentage that is asked for, or the end of the table's range. */
import type { Memory, Reading } from "../contract/index.ts";
import { says } from "../lib/find.ts";
import type { DoseInputs } from "./dose.ts";
import { type Draft, doseLeanedOn } from "./draft.ts";

export function readShare(reading: Reading, memory: Memory): Draft {
  const before = doseLeanedOn(memory);
  const checked =
    before?.base_g !== undefined &&
    before.flavor_g !== undefined &&
    !reading.amounts.some((each) => each.dim === "weight");
  const share = reading.amounts.find(
    (each) => each.dim === "percent" && !/^\S*<chocolate/.test(each.of?.chocolate ?? ""),
  );
  const end = endSaid(reading.mask);
  // "what % is that" and "the full range" are of the table, whatever share was asked for before
  const ofTable =
    before?.percent !== undefined &&
    says(
      reading,
      /(?:what|which) (?:\S*<unit=%>|percentage|percent|share)|(?:full|whole|entire)\S* range|whats the range/,
    );
  if (!share) return end ? { end, want: "flavor" } : ofTable ? { by_table: true } : {};
  // "1 % less", of a share that was said: the points taken off it; of none it says nothing
  const way = /\S*<percent> (less|more|lower|higher)(?= |$)/.exec(reading.mask)?.[1];
  if (way && share.value < 5) {
    const percent = (before?.percent ?? 0) + (/less|lower/.test(way) ? -share.value : share.value);
    return before?.percent !== undefined && percent > 0 ? { percent } : {};
  }
  const finished =
    /finished|final|altogether|of the (?:whole|total)|once mixed|in total/.test(reading.text) ||
    // the mask holds words mended, the text as typed
    /\bfinished\b/.test(reading.mask);
  const plainly = /of (?:the|my) (?:plain )?(?:base|filling|buttercream|ganache|mix)\b/.test(reading.text);
  return {
    ...(checked ? { want: "flavor" as const } : {}),
    percent: share.value,
    ...(share.high !== undefined ? { percent_high: share.high } : {}),
    ...(finished ? { of_finished: true } : before?.of_finished && plainly ? { of_finished: false } : {}),
  };
}

/** "right at the top of that", "the low end please", "the middle of the range". */
const ends = [
  "max",
  "min",
  "top",
  "high",
  "upp",
  "bottom",
  "low",
  "middle",
  "strong",
  "weak",
  "mild",
  "light",
  "most",
  "least",
];

function endSaid(mask: string): DoseInputs["end"] {
  // most questions hold none of these, and each pattern costs its compiling
  if (!ends.some((each) => mask.includes(each))) return undefined;
  // "minimum and maximum" are the range
  if (/\bmin(?:imum)?\b.*\bmax(?:imum)?\b|\bmax(?:imum)?\b.*\bmin(?:imum)?\b/.test(mask)) return undefined;
  if (
    /\b(?:max|maximum|the most)\b|\b(?:want|like|make|taste) (?:it |them )?(?:a bit |much )?stronger\b|^stronger\b/.test(
      mask,
    )
  )
    return "high";
  if (
    /\b(?:min|minimum|the least)\b|\b(?:want|like|make|taste) (?:it |them )?(?:a bit |much )?(?:weaker|milder|lighter)\b|^(?:weaker|milder)\b/.test(
      mask,
    )
  )
    return "low";
  if (/\bover the top\b/.test(mask)) return undefined;
  const said =
    /\b(?:at|to|the|use|go) (?:the )?(?:very )?(top|high|upper|bottom|low|lower|middle)(?: (?:end|side))?(?: (?:of (?:that|it|the range|your range|those)|please|pls|then)|$)/.exec(
      mask,
    )?.[1];
  if (!said) return undefined;
  return said === "middle" ? "middle" : /^(?:top|high|upper)$/.test(said) ? "high" : "low";
}
