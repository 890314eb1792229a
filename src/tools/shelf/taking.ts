/** A whole batch taken off the shelf, and the sizes that things are sold in. The shelf never goes below nothing. */
import type { Effect, Figure, Outcome, Plan, World } from "../contract/index.ts";
import { sizedOrder } from "../day/sizes.ts";
import { wallText } from "../day-plan/index.ts";
import { asking } from "../lib/asking.ts";
import { houseFor, houseOf } from "../lib/house.ts";
import { each_g } from "../lib/lines.ts";
import { capital, counted, listed } from "../lib/show.ts";
import { eggsFor } from "../lib/sizing.ts";
import type { ShelfInputs } from "./shelf.ts";
import { eggsText, g, stockOf } from "./stock.ts";

type Entry = NonNullable<ShelfInputs["entries"]>[number];

const egg_g = each_g.egg ?? 50;

/** Takes what is there, names what isn't and what didn't reach. */
export function takeWhole({ entries, from_note }: ShelfInputs, world: World): Outcome {
  const note = from_note ? usedInNote(world) : undefined;
  const used = entries ?? note?.entries;
  if (!used?.length)
    return asking("What was used? Say the recipe, or each ingredient with its grams.", "entries");
  const left = new Map<number, number>();
  const figures: Figure[] = [];
  const missing: string[] = [];
  const short: string[] = [];
  const eggs = world.stock.findLast((each) => each.name === "egg");
  for (const { name, grams: weighed = 0 } of used) {
    const own = stockOf(world, name);
    // whites come out of the eggs that are there, whole ones
    const known = own ?? (name === "whites" ? eggs : undefined);
    const grams = known && known !== own ? eggsFor(weighed) * egg_g : weighed;
    if (!known) {
      missing.push(name);
      continue;
    }
    const held = left.get(known.id) ?? known.grams;
    if (grams > held + 1e-9) short.push(`${name} (${g(grams, world)} of ${g(held, world)})`);
    left.set(known.id, Math.max(0, held - grams));
  }
  if (left.size === 0)
    return {
      status: "impossible",
      headline: `None of it is on the shelf: ${listed(missing)}. Nothing is changed.`,
    };
  const effects = [...left].map(
    ([id, grams]): Effect => ({ do: "change", list: "stock", id, patch: { grams } }),
  );
  const rest = [...left].map(([id, grams]) => {
    const name = world.stock.find((each) => each.id === id)?.name ?? "";
    figures.push({ name: `${name} left`, value: grams, unit: "g" });
    return `${g(grams, world)} ${name} left${eggsText(name, grams)}`;
  });
  return {
    status: "answered",
    headline: `${capital(listed(rest))}${missing.length ? `; not on the shelf: ${listed(missing)}` : ""}`,
    figures,
    rule: { text: "what was on the shelf less what the batch took", basis: "your bench" },
    ...(note?.how ? { assumed: [note.how] } : {}),
    ...(short.length
      ? { cautions: [`More was used than the shelf had: ${listed(short)}. It stands at nothing.`] }
      : {}),
    effects,
    change: "the batch taken off the shelf",
  };
}

/** The last note's own weights; else its batter by the house recipe. */
function usedInNote(world: World): { entries: Entry[]; how?: string } | undefined {
  const note = world.notes.at(-1);
  if (note?.weights?.length) return { entries: note.weights.map(({ name, grams }) => ({ name, grams })) };
  const plan = note && world.plans.findLast((each) => each.noted && bakedOn(each) === note.date);
  if (plan && note.batter_g === undefined) {
    const sized = sizedOrder(plan.made_for, note.macarons ?? plan.macarons, plan.trays, world);
    const how = `what the plan for ${counted(note.macarons ?? plan.macarons, "macaron")} takes`;
    return "status" in sized ? undefined : { entries: sized.recipe, how };
  }
  if (note?.batter_g === undefined) return undefined;
  const house = houseOf(world);
  return {
    entries: houseFor(house, note.batter_g),
    how: `${g(note.batter_g, world)} batter by ${house.name ?? "the house formula"}`,
  };
}

/** The day on which a plan's last tray baked. */
const bakedOn = ({ steps }: Plan): string =>
  wallText(Math.max(0, ...steps.filter((step) => step.id.startsWith("bake-")).map((step) => step.end))).slice(
    0,
    10,
  );

/** In what size something is sold; the shopping list goes by it. */
export function pack({ entries }: ShelfInputs, world: World): Outcome {
  const entry = entries?.[0];
  if (!entry?.pack_g) return asking("What is sold in which size?", "entries");
  const known = stockOf(world, entry.name);
  const effect: Effect = known
    ? { do: "change", list: "stock", id: known.id, patch: { pack_g: entry.pack_g } }
    : { do: "add", list: "stock", entry: { name: entry.name, grams: 0, pack_g: entry.pack_g } };
  return {
    status: "answered",
    headline: `Saved: ${entry.name} is sold in ${g(entry.pack_g, world)} packs`,
    figures: [{ name: entry.name, value: entry.pack_g, unit: "g" }],
    rule: { text: "shopping lists go by it from now on", basis: "your bench" },
    effects: [effect],
    change: `the pack of ${entry.name}`,
  };
}
