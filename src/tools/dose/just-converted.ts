/** Spoons were turned into grams right before: those grams are the flavor that is spoken of now. */
import { doseRows } from "../../../data/rules/doses.ts";
import type { Memory, Reading } from "../contract/index.ts";
import { weighed } from "../lib/find.ts";
import type { Draft } from "./draft.ts";

/** "is that too much", "thats way too much cocoa for 300 g". */
const verdict =
  /^(?:(?:so|and|hm|ok|but) )*(?:is|would|will|was) (?:that|it|this) (?:be )?(?:too (?:much|little|strong|weak)|enough|ok|okay|fine|right|alright|a lot)(?: |$)|^(?:(?:so|and|hm|ok|but) )*(?:thats|that is|its) (?:far |way )?too (?:much|little) \S*<[^>]*dose=\S* (?:in|for) /;

/** "is that too much cocoa for 300 g buttercream". */
export function justConverted({ mask, amounts }: Reading, { last, table }: Memory): Draft {
  const isFlavor =
    last?.tool === "convert" &&
    amounts.filter((each) => each.dim === "weight").length === 1 &&
    verdict.test(mask);
  return isFlavor && table.mass ? { flavor_g: table.mass.grams, want: "check" } : {};
}

/** Grams said again are rounded: 16.2 for 16.24, 16 for 16.5. */
const rounding = 0.06;

/** "i have put those 16.2 g in 300 g of buttercream". */
export function thoseInBowl(reading: Reading, { last, table }: Memory): Draft {
  if (last?.tool !== "convert" || !table.mass) return {};
  const [first, bowl] = weighed(reading);
  const isIt =
    first &&
    !first.thing &&
    bowl?.thing?.base !== undefined &&
    Math.abs(first.grams - table.mass.grams) < rounding * table.mass.grams;
  return isIt ? { flavor_g: first.grams, base_g: bowl.grams, base: bowl.thing?.base, want: "check" } : {};
}

/** What had been turned into grams, where the sentence names no flavor: "vanilla extract". */
export function ofConverted(reading: Reading, memory: Memory): Draft {
  const thing = memory.table.mass?.thing;
  const isIt = [justConverted(reading, memory), thoseInBowl(reading, memory)].some(
    (each) => each.flavor_g !== undefined,
  );
  if (!thing || !isIt) return {};
  if (/ extract$/.test(thing)) return { dose: "extract", taste: thing.replace(/ extract$/, ""), name: thing };
  const row = doseRows.find((each) => each.name === thing);
  return row ? { dose: row.name, name: thing } : {};
}
