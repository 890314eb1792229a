/** Reads which step is asked about: the one that is named first; "how long to rest the piped shells" is about resting. */
import { methodRows } from "../../../data/rules/methods.ts";
import { readOven } from "../bench/places.ts";
import type { Memory, Reading } from "../contract/index.ts";
import { sign } from "../lib/cue.ts";
import { inCelsius, ovenNamed } from "../lib/oven.ts";
import { inBase } from "../lib/units.ts";
import { judgedTime } from "./judged-time.ts";
import type { MethodInputs } from "./method.ts";
import { signTold } from "./told-signs.ts";

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

export function readMethod(reading: Reading, memory: Memory): Partial<MethodInputs> {
  const { mask } = reading;
  const told = signTold(reading);
  if (told) return told;
  const time = judgedTime(reading);
  if (time) return time;
  const asked = rows().find((row) => row.asks.some((pattern) => pattern.test(mask)));
  const named = asked ?? firstNamed(mask, "words") ?? firstNamed(mask, "loose");
  const oven = ovenNamed(reading);
  const about = aboutOf(mask);
  // "how long does it take to set", of the ganache that was worked out
  const setsIt =
    (memory.last?.tool === "ganache" ||
      (memory.last?.tool === "fill" && memory.table.mass?.thing === "ganache")) &&
    /how long .*(?:to set|set|sets|firm up|before i (?:can )?(?:pipe|use|fill)|(?:until|till) i can (?:pipe|use)|(?:until|till|before) (?:it is|its|it gets|it goes) firm\S*)(?: |<|$)/.test(
      mask,
    ) &&
    !/<count=|<base=buttercream/.test(mask);
  if (setsIt) return { step: "ganache sets", about: "time" };
  // "what temp do i set": the oven's
  const sets =
    !named &&
    /what (?:(?:do|should|must|shall) )?i set|(?:what|which) temp\S* (?:do|should|must|shall) i (?:set|bake|use|put)/.test(
      reading.mask,
    );
  // "until which temperature i heat white and sugar"
  if (
    !named &&
    /heat .*<(?:color=white|ingredient=whites)> .*<ingredient=(?:sugar|granulated_sugar)>/.test(mask)
  )
    return { step: "whites heated", ...(about ? { about } : {}) };
  // "it was at 170 instead of 150", behind what to set: what is aimed at stays
  const wanted =
    memory.last?.tool === "method" ? (memory.last.inputs as { heat_c?: number }).heat_c : undefined;
  const wasAt =
    /^(?:(?:but|and|so|oh|it|the oven|mine) )*(?:was|read|reads|is|showed|went|got) (?:at |to |up to )?\S*<(?:number|temperature)>/.test(
      mask,
    );
  if (wanted !== undefined && wasAt) return { step: "bake", about: "heat", heat_c: wanted };
  // "they have been in about 20 min"
  if (!named && /(?:^| )(?:been|were) (?:in|in there|in the oven|baking)(?: \S+){0,2} \S*<time>/.test(mask))
    return { step: "bake", about: "time" };
  const heat = heatWanted(reading);
  if (heat !== undefined) {
    // "my oven runs 10 hot, what do i set for 150"
    const { oven_offset_c: offset_c } = readOven(reading);
    return { step: "bake", about: "heat", heat_c: heat, ...(offset_c === undefined ? {} : { offset_c }) };
  }
  const judge = judged(reading);
  if (judge !== undefined) return { step: "bake", about: "heat", judge_c: judge, ...(oven ? { oven } : {}) };
  if (sets) return { step: "bake", ...(about ? { about } : {}), ...(oven ? { oven } : {}) };
  const width = named?.id === "bake" ? reading.amounts.find(({ dim }) => dim === "length") : undefined;
  const wide = width ? { diameter_mm: inBase(width.value, width.unit) } : {};
  return {
    ...(named ? { step: named.id } : {}),
    ...wide,
    ...(about ? { about } : {}),
    ...(oven ? { oven } : {}),
  };
}

/** "is 350 too hot for shells": °C. */
const judged = ({ mask, amounts }: Reading): number | undefined => {
  const heat = amounts.find((each) => each.dim === "temperature" || each.dim === "number");
  return heat &&
    /(?:too (?:hot|cold|cool|low|high|warm)|(?:is|are|was|will) \S*<(?:temperature|number)> (?:\S+ ){0,2}(?:ok|okay|right|fine|alright|good)) (?:for|to) (?:\S+ )*\S*(?:<count=(?:shells|macarons)|bake)/.test(
      mask,
    )
    ? inCelsius(heat)
    : undefined;
};

/** "what do i set for 150": °C, above 230 °F where no scale was said. */
function heatWanted({ mask, amounts }: Reading): number | undefined {
  if (
    !/(?:what|where) (?:do|should|must|shall|would) i set .*for \S*<(?:temperature|number)>(?: \?)?$/.test(
      mask,
    )
  )
    return undefined;
  const heat = amounts.findLast((each) => each.dim === "temperature" || each.dim === "number");
  return heat && inCelsius(heat);
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
  if (/(?:^| )(?:temp|temps|temperature|temperatures|hot|degrees)(?: |$)|degrees?<unit/.test(mask))
    return "heat";
  if (/how (?:long|many|much time)/.test(mask)) return "time";
  return /(?:^| )(?:how|way|order|when)(?: |$)/.test(mask) ? "how" : undefined;
}
