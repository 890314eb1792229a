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
      /(?:what|which) (?:\S*<unit=%>|percentage|percent|share)|(?:full|whole|entire|usual|ordinary|normal|customary|common|book|standard|general)\S* range|whats the range|(?<!\bmy )(?<!\bour )(?:usual|ordinary|normal|customary|standard) (?:dose|amount|quantity|percentage|share)(?: |$)/,
    );
  if (!share && !end && namesBothEnds(reading.mask)) return { whole_range: true };
  if (!share) return end ? { end, want: "flavor" } : ofTable ? { by_table: true } : {};
  // "1 % less", of a share that was said: the points taken off it; of none it says nothing
  const way = /\S*<percent> (less|more|lower|higher)(?= |$)/.exec(reading.mask)?.[1];
  if (way && share.value < 5) {
    const percent = (before?.percent ?? 0) + (/less|lower/.test(way) ? -share.value : share.value);
    return before?.percent !== undefined && percent > 0 ? { percent } : {};
  }
  const finished =
    /finished|final|altogether|of the (?:whole|total)|once mixed|in total|\bend (?:weight|result|filling|mix)\b|\bonce (?:it is|its|it's|its all|everything is) (?:in|mixed|added)\b/.test(
      reading.text,
    ) ||
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
  "gest",
  "allest",
  "little",
  "far as",
  "much as",
];

const [least, most] = [
  "(?:min(?:imum)?|least|lowest|smallest|fewest)",
  "(?:max(?:imum)?|most|highest|largest|biggest)",
];
const bothEnds = new RegExp(`\\b${least}\\b.*\\b${most}\\b|\\b${most}\\b.*\\b${least}\\b`);
const namesBothEnds = (mask: string): boolean =>
  ends.some((each) => mask.includes(each)) && bothEnds.test(mask);

/** "the most ganache that it does": an end of what is asked for, and no end of how strong it is. */
const ofAmount = new RegExp(`\\b(?:${least}|${most})\\b`);
const other = { low: "high", middle: "middle", high: "low" } as const;

/** The most mix that a flavor is enough for takes the least percentage. */
export function endOfBase({ mask }: Reading, memory: Memory, draft: Draft): Draft {
  const before = doseLeanedOn(memory);
  const { end, base_g, flavor_g = before?.flavor_g, asks_base } = draft;
  const isBack =
    base_g === undefined && (asks_base || before?.base_g === undefined) && flavor_g !== undefined;
  return end && isBack && ofAmount.test(mask) ? { end: other[end] } : {};
}

function endSaid(mask: string): DoseInputs["end"] {
  // most questions hold none of these, and each pattern costs its compiling
  if (!ends.some((each) => mask.includes(each))) return undefined;
  // "minimum and maximum", "the least and most that it stretches to" are the range
  if (namesBothEnds(mask)) return undefined;
  if (
    /\b(?:max|maximum|the most|at most|the strongest(?= (?:i|we|you|it|one|that|for|to|dose))|most (?:that )?(?:i|we|you|one) (?:can|could|may|dare)|as (?:strong|far|much|high) as (?:possible|i (?:can|dare|may)|you can))\b|\b(?:want|like|make|taste) (?:it |them )?(?:a bit |much )?stronger\b|^stronger\b/.test(
      mask,
    )
  )
    return "high";
  if (
    /\b(?:min|minimum|the least|at least(?= \?|$)|the (?:weakest|mildest|lightest)(?= (?:i|we|you|it|one|that|for|to|dose))|least (?:that )?(?:i|we|you|one) (?:can|could|may|dare)|how little(?: \S+){0,3} (?:can|could|may|do) (?:i|we|you|one))\b|\b(?:want|like|make|taste) (?:it |them )?(?:a bit |much )?(?:weaker|milder|lighter)\b|^(?:weaker|milder)\b/.test(
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
