/** Reads orders on the shelf that stand for several things: a batch taken off it, the size something is sold in. */
import type { Memory, Note, Reading } from "../contract/index.ts";
import { says } from "../lib/find.ts";
import { nameOf } from "../lib/lines.ts";
import { inBase } from "../lib/units.ts";
import type { Draft } from "./draft.ts";

/** "take it off the shelf": the batch that was noted, when that came last; else the recipe on the table. */
export function readWhole(reading: Reading, memory: Memory): Draft | undefined {
  if (
    !says(
      reading,
      /(?:^| )(?:take|took|deduct|subtract|book|use) (?:all )?(?:it|that|them|this|those|these|all|everything)(?: \S+)* (?:off|from|out of) (?:(?:of|the|my) )*(?:shelf|stock|pantry|larder|cupboard)/,
    ) ||
    reading.things.some((each) => each.ingredient || each.taste)
  )
    return undefined;
  const noted =
    memory.last?.tool === "note" ? (memory.last.inputs.facts as Partial<Note> | undefined) : undefined;
  const isWeighed = noted?.batter_g !== undefined || Boolean(noted?.weights?.length);
  const recipe = isWeighed ? undefined : memory.table.recipe;
  if (recipe?.length)
    return { does: "use", whole: true, entries: recipe.map(({ name, grams }) => ({ name, grams })) };
  return { does: "use", whole: true, from_note: true };
}

/** "almond flour comes in 1 kg bags"; "2 kg almond flour have come in" is there now. */
export function readPack(reading: Reading): Draft | undefined {
  const owner = reading.things.find((each) => each.ingredient || each.chocolate);
  const weight = reading.amounts.find((each) => each.dim === "weight");
  if (!owner || !weight || reading.amounts.some((each) => each.dim === "money")) return undefined;
  if (!says(reading, /(?:comes?|sold|sells|packed) in (?![,.?!])/)) return undefined;
  return { does: "pack", entries: [{ name: nameOf(owner), pack_g: inBase(weight.value, weight.unit) }] };
}
