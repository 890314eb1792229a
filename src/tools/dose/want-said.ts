/** How strong a dose is said to be, what is wanted of it, and the spoon it is asked in. */
import type { Memory, Reading } from "../contract/index.ts";
import { says } from "../lib/find.ts";
import type { DoseInputs } from "./dose.ts";

type Draft = Partial<DoseInputs>;

const strengths: readonly (readonly [factor: number, said: string])[] = [
  [0.5, "half(?: the)? strength|half as strong"],
  [2, "(?:double|twice the) strength|(?:twice|double|two times|2x) as strong"],
  [3, "(?:triple|three times the) strength|(?:three times|3x|triple) as strong"],
];

/**
 * "my extract is twice as strong", "double strength lemon oil": a strong flavor is dosed lower. "flavor for 200 g, twice
 * as strong" may also ask for more of it, the very opposite: that is not guessed.
 */
export function readStrength({ text, things }: Reading, memory: Memory): Draft {
  const [strength, said] = strengths.find(([, each]) => new RegExp(`\\b(?:${each})\\b`).test(text)) ?? [];
  if (strength === undefined) return {};
  const wish = /\b(?:make|want|wants|like|taste|tastes|should|need|needs)\b/.test(text);
  const is = new RegExp(`\\b(?:is|its|it's|that's|thats|are|says|comes|being) (?:\\w+ )?(?:${said})\\b`).test(
    text,
  );
  const lead = new RegExp(`^.*?\\b(?:${said}) `).exec(text)?.[0];
  const named = things.some(
    (each) => each.at[0] === lead?.length && (each.dose ?? each.taste) && each.text !== "flavor",
  );
  return (is || named || memory.slot === "strength") && !wish ? { strength } : { strength_unclear: strength };
}

export function readShare(reading: Reading, memory: Memory): Draft {
  const before = memory.follows && memory.last?.tool === "dose" ? (memory.last.inputs as Draft) : undefined;
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

export function readWant(reading: Reading, memory: Memory): Draft {
  const mend =
    /\b(?:rescues?|fix(?:es)?|saves?|dilutes?|(?<!\b(?:is|be|are)(?: then| the)? )correct|mend|tone it down|bring it (?:back|down)|balance it|weaken|put right|sort (?:it|that|this)|calm (?:it|that|this) down|even it out|water it down|too much what now|undo the|repair|to get it back|to bring)\b/.test(
      reading.text,
    );
  // "save my lemon oil, 0.1 to 0.2 percent": on the shelf
  const keeps = /\bsave (?:my |this |a |our )?\S*<[^>]*(?:dose|taste)=/.test(reading.mask);
  const strong =
    /too (?:strong|much|intense|sharp|powerful)\b.*\b(?:what|how (?:much|many)) (?:do|should|can|must) i (?:add|put|mix)/.test(
      reading.text,
    );
  const more =
    strong ||
    /(?:how (?:much|many)(?: g| grams)?(?: of)?|what (?:mass|weight|amount) of|what) (?:more|extra|plain|additional) (?:plain\S* |extra )?\S*(?:buttercream|ganache|filling|base|butter cream)/.test(
      reading.text,
    );
  const plain =
    /\bhow (?:much|many) (?:more |extra )?plain\b (?:\S+ ){0,2}(?:do|should|must|shall|can) i (?:need to |have to |need )?(?:add|stir|put|mix|beat)/.test(
      reading.text,
    );
  // "what now?", of a bowl with its flavor in
  const before = memory.follows && memory.last?.tool === "dose" ? (memory.last.inputs as Draft) : undefined;
  const inBowl = before?.flavor_g !== undefined && before.base_g !== undefined;
  if (
    inBowl &&
    /^(?:oh no |so |ok |and |oops )*(?:what now|now what|what (?:do|should|can|must) i (?:add|do)(?: so| then| now)*)(?: \?)?$/.test(
      reading.mask,
    )
  )
    return { want: "mend" };
  // "so how much more", "how much": what brings it back into the range
  if (
    inBowl &&
    before?.want !== "flavor" &&
    /^(?:(?:so|and|ok|but|then|well) )*how (?:much|many)(?: more| then| extra)*(?: (?:do|should|must|shall) i (?:need|add|put in))?(?: then)?(?: \?)?$/.test(
      reading.mask,
    )
  )
    return { want: "mend" };
  // "how much buttercream should i add", of the same
  if (
    inBowl &&
    /how (?:much|many) (?:\S+ ){0,3}\S*<[^>]*(?:base=|color=plain)\S* .*\b(?:add|adding|goes in|stir|to fix)\b|how (?:much|many) (?:\S+ ){0,2}(?:more|extra) (?:\S+ )?\S*<[^>]*base=|^(?:(?:so|and|then) )*\S*<base=\S+ to (?:add|put in)(?: \?)?$/.test(
      reading.mask,
    )
  )
    return { want: "mend" };
  // "what should it have been", of a bowl with too much in it
  if (
    inBowl &&
    /^(?:(?:so|and|ok|hm|then) )*(?:what|how much) (?:should|ought) (?:it|that|there|i|to) (?:have (?:been|had|put(?: in)?|used|gone in)|be)(?: (?:in(?: there)?|then))?(?: \?)?$/.test(
      reading.mask,
    )
  )
    return { want: "flavor" };
  const both = reading.amounts.filter((each) => each.dim === "weight").length > 1;
  const asksBase = both && /how (?:much|many) (?:plain\S* |more |extra )*\S*<[^>]*base/.test(reading.mask);
  if ((mend && !keeps) || more || plain || asksBase) return { want: "mend" };
  if (
    says(
      reading,
      /(?:what|which) (?:\S*<unit=%>|percentage|share) (?:is|was|are|were) (?:that|it|this|in|there)/,
    )
  )
    return { want: "check" };
  // "is 9 g of lemon flavor too much": that depends on what it went into
  const isVerdict =
    /^(?:(?:so|and|hm|um|ok) )*(?:is|would|will) \S*<weight> .*(?:too (?:much|little|strong|weak)|overdoing it|enough(?: \?)?$)|^(?:(?:so|and|hm|um|ok) )*\S*<(?:weight|volume)> (?:ok|okay|enough|fine|alright|too (?:much|little|strong|weak)|right)(?: then)?(?: \?)?$/;
  if (/^(?:so|and|hm|um|ok|is|would|will|\S*<)/.test(reading.mask) && isVerdict.test(reading.mask))
    return { want: "check" };
  const isShareFine =
    /^(?:(?:so|and|hm|um|ok) )*(?:is |would |will )?\S*<percent> (?:of )?(?:\S*<[^>]*(?:dose|taste)=\S* )?(?:be )?(?:ok|okay|enough|fine|alright|right|too (?:much|little|strong|weak))(?: then)?(?: (?:for|in) (?:an? |my |the )?\S*<base=\S+)?(?: \?)?$/;
  if (reading.mask.includes("<percent>") && isShareFine.test(reading.mask)) return { want: "check" };
  if (
    /already|verdict|over or under|under or over|over the top|(?:inside|within) (?:the )?(?:range|limit)|in range|is (?:that|it|this) (?:ok|okay|alright|enough|too)|: ?ok\b|went in/.test(
      reading.text,
    )
  )
    return { want: "check" };
  return /(?:^| )(?:my (?:usual|normal|best|own)|as (?:i )?(?:usual|always)|like (?:usual|always)|i (?:usually|normally|always))(?: |$)/.test(
    reading.mask,
  )
    ? { usual: true }
    : {};
}

export function readSpoon(reading: Reading): Draft {
  const unit = reading.things.find(
    (each) => each.unit === "tsp" || each.unit === "tbsp" || each.unit === "ml",
  )?.unit;
  return unit ? { spoon: unit as "tsp" } : {};
}
