/** A batch noted after a planned bake: what the note doesn't say is taken from the plan, and said to be. */
import type { Effect, Note, Plan, World } from "../contract/index.ts";
import { wallSeconds, wallText } from "../day-plan/index.ts";
import { friendlyDay, localIso } from "../lib/days.ts";
import { counted, listed } from "../lib/show.ts";
import { isTaste } from "../lib/tastes.ts";
import type { Facts } from "./facts.ts";

/** A note is about a plan from its last bake until so long after it was due, in seconds. */
const within_s = 3 * 86_400;

/** What a plan gives a note: the fields that it lacks, the words for it, and that the plan is used up. */
export interface FromPlan {
  fields: Partial<Note>;
  assumed: string[];
  effects: Effect[];
}

/**
 * @param said the note's own facts, which always win
 * @param date the day that was said for it, "2026-03-14"; none where no day was said
 * @returns undefined where no plan was baked lately, or the note is about another batch
 */
export function fromPlan(said: Facts, date: string | undefined, world: World): FromPlan | undefined {
  const plan = world.plans
    .filter((each) => fits(each, said, date, world))
    .sort((a, b) => (bakedAt(b) ?? 0) - (bakedAt(a) ?? 0))[0];
  if (!plan) return undefined;
  const day = dayOf(plan);
  const isCounted = said.macarons !== undefined || said.shells !== undefined;
  const fields: Partial<Note> = {
    ...(isCounted ? {} : { macarons: plan.macarons }),
    ...(said.trays === undefined && !isCounted ? { trays: plan.trays } : {}),
    ...(said.flavors.length === 0 && plan.flavors.length > 0 ? { flavors: plan.flavors } : {}),
    ...(date === undefined ? { date: day } : {}),
  };
  const planned = (["macarons", "trays"] as const).filter((name) => fields[name] !== undefined);
  if (planned.length) fields.planned = planned;
  const taken = [
    ...(fields.macarons ? [`${counted(fields.macarons, "macaron")}`] : []),
    ...(fields.trays ? [counted(fields.trays, "tray")] : []),
    ...(fields.flavors ? [listed(fields.flavors)] : []),
    ...(fields.date ? [`baked ${friendlyDay(fields.date, world.now_ms)}`] : []),
  ];
  return {
    fields,
    assumed: taken.length ? [`from the plan: ${taken.join(", ")}`] : [],
    effects: [{ do: "change", list: "plans", id: plan.id, patch: { noted: true } }],
  };
}

const bakedAt = (plan: Plan): number | undefined =>
  plan.steps
    .filter((step) => step.id.startsWith("bake-"))
    .map((step) => step.end)
    .sort((a, b) => b - a)[0];

const dayOf = (plan: Plan): string => wallText(bakedAt(plan) ?? plan.start).slice(0, 10);

/** Baked by now and not long ago, not noted yet, of that day and of those flavors, and the note is about a batch. */
function fits(plan: Plan, said: Facts, date: string | undefined, world: World): boolean {
  const now = wallSeconds(localIso(world.now_ms));
  const baked = bakedAt(plan) ?? Number.POSITIVE_INFINITY;
  if (plan.noted || baked > now || now > plan.ready + within_s) return false;
  if (date !== undefined && date !== dayOf(plan)) return false;
  const others = said.flavors.filter((each) => !plan.flavors.some((own) => isTaste(each, own)));
  if (plan.flavors.length > 0 && others.length > 0) return false;
  return isBatch(said);
}

/** It says how a batch came out, not just that the oven was cleaned. */
const isBatch = ({
  flavors,
  problems,
  praise,
  absent,
  rating,
  macarons,
  shells,
  trays,
  bake_min,
  oven_c,
}: Facts) =>
  [flavors, problems, praise, absent].some((each) => each.length > 0) ||
  [rating, macarons, shells, trays, bake_min, oven_c].some((each) => each !== undefined);
