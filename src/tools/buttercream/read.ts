/** Reads what is known of a buttercream: the weight of a part or of the whole, whites or macarons by count. */
import { buttercreamParts } from "../../../data/rules/buttercream.ts";
import type { Memory, Reading } from "../contract/index.ts";
import { fewFor } from "../lib/few-for.ts";
import {
  diameter,
  isOfQuality,
  isWhitesCount,
  otherPart,
  pointsBack,
  says,
  weighed,
  white_g,
} from "../lib/find.ts";
import { mostCounted } from "../lib/lines.ts";
import { gramsOfVolume } from "../lib/portions.ts";
import { wholeSaid } from "../scale/whole-said.ts";
import type { ButtercreamInputs, Part } from "./buttercream.ts";

const partOf: Record<string, Part> = {
  whites: "whites",
  egg: "whites",
  "pasteurised whites": "whites",
  sugar: "sugar",
  "granulated sugar": "sugar",
  butter: "butter",
  "salted butter": "butter",
};

const slots = ["whites_g", "sugar_g", "butter_g", "total_g", "whites_count", "macarons"] as const;

type Slot = "whites_g" | "sugar_g" | "butter_g" | "total_g";

/** "and if I soften only 250 g", after a weight of butter: butter again, unless it is nearer to what that made in all. */
function likelier(slot: (typeof slots)[number], before: number, grams: number): Slot {
  const part = buttercreamParts.find((each) => `${each.name}_g` === slot);
  if (!part) return "total_g";
  const total = before * (buttercreamParts.reduce((sum, each) => sum + each.parts, 0) / part.parts);
  const away = (from: number) => Math.abs(Math.log(grams / from));
  return away(before) <= away(total) ? (slot as Slot) : "total_g";
}

/** Buttercreams without meringue, named before or behind: "french buttercream", "buttercream, french style". */
const kinds = "french|german|american|russian|ermine|custard|pate a bombe|yolk";

const otherKind = new RegExp(
  `\\b(${kinds})(?: (?:style|type))? (?:butter ?cream|b ?c\\b)|\\bbutter ?cream,? (${kinds}) (?:style|type)\\b`,
);

/** "add 50 g sugar", "and 50 g more butter", behind a buttercream: more of one part, and no other recipe. */
function partAdded(reading: Reading, { last, follows }: Memory): Partial<ButtercreamInputs> | undefined {
  const isIll = last?.tool === "trouble" && /buttercream$/.test(String(last.inputs.symptom ?? ""));
  if (!isIll && (last?.tool !== "buttercream" || !follows)) return undefined;
  const [only, ...others] = weighed(reading);
  const part = partOf[only?.thing?.ingredient ?? ""];
  const isAdded =
    /^(?:(?:and|so|ok|oh|now|then|also|oops|if|what if|can|should|could|i|we|ive|have|just|accidentally|already) )*(?:add(?:ed|ing)?|put(?: in)?|stir(?:red)?(?: in)?|tipped(?: in)?|plus) (?:another |an extra |in )?\S*<weight> |<weight> (?:more|extra) |\b(?:another|an extra) \S*<weight>/.test(
      reading.mask,
    );
  return only && part && others.length === 0 && isAdded && !/\bhow (?:much|many)\b/.test(reading.text)
    ? { added: { name: part, grams: only.grams } }
    : undefined;
}

const stick_g = gramsOfVolume("butter", 1, "stick")?.grams;

/** "found a third stick so 3", "theres a fourth stick": one more, and no third part of one. */
function sticksNow({ amounts, text }: Reading, before_g: number): number | undefined {
  // "found a second stick": no second of time
  if (
    stick_g &&
    /\b(?:a|the|another) (?:second|2nd) stick\b/.test(text) &&
    Math.abs(before_g - stick_g) < 0.01
  )
    return 2 * stick_g;
  const nth = amounts.find((each) => each.unit === "stick" && each.fraction?.[0] === 1);
  if (
    !nth ||
    !stick_g ||
    !/^(?:a|the|my|another) (?:third|fourth|quarter|fifth|sixth|eighth|tenth)\b/.test(nth.text)
  )
    return undefined;
  const told = amounts.find((each) => each !== nth && each.dim === "number" && Number.isInteger(each.value));
  const had = before_g / stick_g;
  const count = told?.value ?? nth.fraction?.[1];
  return count !== undefined && (told !== undefined || Math.abs(count - had - 1) < 0.01)
    ? count * stick_g
    : undefined;
}

export function readButtercream(reading: Reading, memory: Memory): Partial<ButtercreamInputs> {
  const added = partAdded(reading, memory);
  if (added) return added;
  const out: Partial<ButtercreamInputs> = {};
  const other = otherKind.exec(reading.text)?.slice(1).find(Boolean);
  if (other) out.other = other;
  const before =
    memory.follows && memory.last?.tool === "buttercream"
      ? (memory.last.inputs as Partial<ButtercreamInputs>)
      : undefined;
  // "nine hundred grams all in all", behind one of its parts
  const whole = before && reading.amounts.length === 1 ? wholeSaid(reading) : undefined;
  if (whole !== undefined) return { total_g: whole };
  const weightBefore = before && slots.find((each) => each.endsWith("_g") && before[each] !== undefined);
  // "too much, i need 300", "only 300 g of it": of the whole
  const isOfWhole =
    /\b(?:(?:too much|too many)\b.*\b(?:need|want)|only (?:need|want)|of it\b|of (?:the )?butter ?cream)\b/.test(
      reading.text,
    ) && !reading.things.some((each) => partOf[each.ingredient ?? ""]);
  // "12 oz" alone takes the place of what was said; "and for 600 g" may be of the whole
  const nearest = (slot: (typeof slots)[number], grams: number) =>
    isOfWhole
      ? "total_g"
      : says(reading, /(?:^| )(?:for|make|makes|making|total|altogether|want|need)(?: |$)/)
        ? likelier(slot, before?.[slot] ?? grams, grams)
        : (slot as Slot);
  const nth = before?.butter_g === undefined ? undefined : sticksNow(reading, before.butter_g);
  if (nth !== undefined) return { butter_g: nth };
  for (const { grams, thing } of weighed(reading)) {
    const part = partOf[thing?.ingredient ?? ""];
    if (
      !part &&
      !thing &&
      reading.things.filter((each) => partOf[each.ingredient ?? ""]).length === 1 &&
      !says(reading, /how much|in all|total/)
    ) {
      // "one block of butter, 225 g"
      out[
        `${partOf[reading.things.find((each) => partOf[each.ingredient ?? ""])?.ingredient ?? ""] ?? "butter"}_g`
      ] ??= grams;
    } else if (part) out[`${part}_g`] ??= grams;
    else if (!thing && weightBefore) out[nearest(weightBefore, grams)] ??= grams;
    else if (thing?.base === "buttercream" || thing?.base === "filling" || !thing) out.total_g ??= grams;
  }
  // "smbc, i have 3 sticks": of butter
  const sticks = reading.amounts.find((each) => each.unit === "stick" && !each.of?.ingredient);
  const butter = sticks && gramsOfVolume("butter", sticks.value, "stick");
  if (butter && Object.keys(out).length === 0) return { butter_g: butter.grams };
  const part = reading.amounts.find(
    (each) =>
      each.dim === "number" && (each.fraction || each.unit === "times") && !isOfQuality(reading, each),
  );
  // "and the other half swiss meringue buttercream"
  if (memory.table.rest && Object.keys(out).length === 0 && otherPart.test(reading.text))
    return { total_g: memory.table.rest.grams };
  if (part && before && Object.keys(out).length === 0) {
    const slot = slots.find((each) => before[each] !== undefined);
    if (slot) return { [slot]: (before[slot] ?? 0) * part.value };
  }
  const bare = reading.amounts.find(
    (each) => each.dim === "number" && each.unit === "" && !each.of && !each.fraction,
  );
  if (bare && before && Object.keys(out).length === 0) {
    if (says(reading, /(?:^| )(?:total|altogether|in all)(?: |$)/) || isOfWhole)
      return { total_g: bare.value };
    const slot = slots.find((each) => before[each] !== undefined);
    // "two blocks", behind one of 250 g
    const packs = /\b(?:blocks?|packs?|packets?|bars?|tubs?|pats?)\b/.test(reading.text);
    if (slot?.endsWith("_g") && packs && bare.value <= 20)
      return { [slot]: (before[slot] ?? 0) * bare.value };
    // "150", behind so many whites: nobody cracks as many
    if (slot === "whites_count" && bare.value > mostCounted)
      return { [likelier("whites_g", (before.whites_count ?? 0) * white_g, bare.value)]: bare.value };
    // a count where hundreds of grams were is no weight
    if (slot && !(slot.endsWith("_g") && bare.value < (before[slot] ?? 0) / 25))
      return { [slot]: bare.value };
  }
  // "and buttercream with another five", behind so many whites
  const whitesBefore = (memory.last?.inputs as { whites_count?: number } | undefined)?.whites_count;
  const five = /\b(?:with|from|on|out of) (?:another|the other|the same|those|these) $/;
  if (bare && bare.value <= 24 && whitesBefore !== undefined && five.test(reading.text.slice(0, bare.at[0])))
    return { whites_count: bare.value };
  const whites = reading.amounts.find(isWhitesCount);
  if (whites) out.whites_count = whites.value;
  const macarons = reading.amounts.find((each) => each.of?.count === "macarons" && each.dim === "number");
  if (macarons && Object.keys(out).length === 0) out.macarons = macarons.value;
  const few = fewFor(reading, "buttercream");
  if (few !== undefined && Object.keys(out).length === 0) out.macarons = few;
  const size = out.macarons === undefined ? undefined : diameter(reading);
  if (size !== undefined) out.diameter_mm = size;
  if (says(reading, /how (?:hot|warm)|temp/) && Object.keys(out).length === 0) out.asks_heat = true;
  // "what goes in the buttercream then", behind a ring of it
  const filled = memory.last?.tool === "fill" ? memory.last.inputs : undefined;
  const inPlace =
    filled?.ring === "buttercream" ? "ring" : filled?.center === "buttercream" ? "center" : undefined;
  const place = /(?:^| )(?:ring|border|rim|dam)(?: |$)/.test(reading.mask)
    ? "ring"
    : /(?:^| )(?:center|centre|middle|core)(?: |$)/.test(reading.mask)
      ? "center"
      : inPlace;
  const share = memory.table.parts?.find((each) => each.name === place);
  if (share && Object.keys(out).length === 0) return { total_g: share.grams };
  if (says(reading, /how many \S*<ingredient=(?:egg|whites)/)) out.asks_eggs = true;
  const { mass } = memory.table;
  // a weight of batter is none of the filling's: the macarons are what both are for
  if (mass?.thing === "batter" && Object.keys(out).length === 0 && memory.table.macarons !== undefined)
    return {
      macarons: memory.table.macarons,
      ...(memory.table.diameter_mm === undefined ? {} : { diameter_mm: memory.table.diameter_mm }),
    };
  const known = Object.keys(out).some((key) => key !== "asks_eggs");
  const points =
    pointsBack(reading) ||
    says(reading, /that much|the lot|all of/) ||
    mass?.thing === "filling" ||
    // how much of it is to be made has just been said
    (memory.last?.tool === "fill" && mass?.thing === "buttercream");
  if (
    !known &&
    mass &&
    points &&
    (mass.thing === "buttercream" || reading.things.some((each) => each.base === "buttercream"))
  ) {
    // "thats how much butter i have", "i have that much butter"
    const own =
      mass.thing === ""
        ? /(?:thats how|that is how|(?:^| )that) (?:much|many) \S*<ingredient=([a-z_]+)/.exec(
            reading.mask,
          )?.[1]
        : undefined;
    const part = partOf[mass.thing] ?? partOf[own ?? ""];
    // "two of those as smbc butter"
    const times = reading.amounts.find(
      (each) => each.dim === "number" && /^ of (?:those|these|them) /.test(reading.text.slice(each.at[1])),
    );
    // "half of that filling as smbc, what goes in"
    const share = reading.amounts.find(
      (each) =>
        each.fraction &&
        each.value < 1 &&
        /^ (?:of )?(?:that|it|this|the)\b/.test(reading.text.slice(each.at[1])),
    );
    const of_g = mass.grams * (share?.value ?? 1);
    if (part) out[`${part}_g`] = of_g * (times?.value ?? 1);
    else out.total_g = of_g;
  }
  return out;
}
