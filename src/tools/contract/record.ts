/** The baker's record as calculators see it: plain data that src/store reads, checks and hands over. */
import * as z from "zod/mini";

const id = z.number();
const optionalNumber = z.optional(z.number());
const optionalText = z.optional(z.string());

/** A timer is an absolute end, so that it outlives the process. Times in ms since the epoch. */
export const Timer = z.object({
  id,
  label: z.string(),
  set_ms: z.number(),
  due_ms: z.number(),
  state: z.enum(["running", "rung", "stopped"]),
});

/** A batch as noted: structure beside the baker's own words. `date` is a local day, 2026-03-14. */
export const Note = z.object({
  id,
  date: z.string(),
  noted_ms: z.number(),
  text: z.string(),
  flavors: z.array(z.string()),
  problems: z.array(z.string()),
  /** What went well, by the word table's ids: "good feet", "full". */
  praise: z.optional(z.array(z.string())),
  rating: optionalNumber,
  rating_said: optionalText,
  macarons: optionalNumber,
  shells: optionalNumber,
  trays: optionalNumber,
  diameter_mm: optionalNumber,
  oven_c: optionalNumber,
  bake_min: optionalNumber,
  rest_min: optionalNumber,
  mature_h: optionalNumber,
  batter_g: optionalNumber,
  filling_g: optionalNumber,
  /** What stayed in bowl and bag of each. */
  batter_left_g: optionalNumber,
  filling_left_g: optionalNumber,
  weights: z.optional(z.array(z.object({ name: z.string(), grams: z.number() }))),
  doses: z.optional(z.array(z.object({ flavor: z.string(), percent: z.number() }))),
  ignored: z.optional(z.boolean()),
  /** The counts that were taken from the plan and not counted: they teach nothing. */
  planned: z.optional(z.array(z.string())),
});

/** A bottle on the shelf with what its own label says. Percentages by weight of the base. */
export const Bottle = z.object({
  id,
  taste: z.string(),
  form: optionalText,
  low_percent: optionalNumber,
  high_percent: optionalNumber,
  /** How many times the usual strength: 2 is double. It counts where the bottle has no directions of its own. */
  strength: optionalNumber,
  left_g: optionalNumber,
  allergens: z.optional(z.array(z.string())),
});

/** Something in the cupboard: how much, what it cost, in what size it is sold. */
export const Stock = z.object({
  id,
  name: z.string(),
  grams: z.number(),
  price_per_g: optionalNumber,
  currency: optionalText,
  pack_g: optionalNumber,
});

export const Formula = z.object({
  id,
  name: z.string(),
  kind: optionalText,
  /** Of a range, `grams` is what counts; its ends are kept beside it. */
  lines: z.array(
    z.object({ name: z.string(), grams: z.number(), low_g: optionalNumber, high_g: optionalNumber }),
  ),
  /** Lines without a weight, in the baker's own words: "a pinch of salt". */
  unweighed: z.optional(z.array(z.string())),
});

/**
 * A day that was planned, as it stands: what has begun keeps its times when the rest is worked out again. `start`,
 * `ready` and the steps are seconds of wall-clock time since 1970-01-01T00:00, as src/tools/day-plan counts them.
 */
export const Plan = z.object({
  id,
  /** When it was made; tells plans apart. */
  made_ms: z.number(),
  /** What was ordered, as it was understood. */
  made_for: z.record(z.string(), z.unknown()),
  macarons: z.number(),
  trays: z.number(),
  diameter_mm: z.number(),
  /** Flavors of the fillings, for the note of the batch. */
  flavors: z.array(z.string()),
  start: z.number(),
  ready: z.number(),
  steps: z.array(
    z.object({
      id: z.string(),
      name: z.string(),
      start: z.number(),
      end: z.number(),
      hands: z.boolean(),
      from: optionalNumber,
    }),
  ),
  /** A note has taken its figures. */
  noted: z.optional(z.boolean()),
});

/** What batches teach, by what can be forgotten of it on its own. */
export const learnedTopics = ["shells", "filling", "losses", "bake", "rest", "doses"] as const;
export type LearnedTopic = (typeof learnedTopics)[number];

/** How the bench is set. Only what the baker said is here; the rest is the book's. */
export const Bench = z.object({
  weight_unit: z.optional(z.enum(["g", "oz"])),
  scale_g: optionalNumber,
  fan_oven: z.optional(z.boolean()),
  oven_offset_c: optionalNumber,
  oven_c: optionalNumber,
  diameter_mm: optionalNumber,
  shells_a_tray: optionalNumber,
  tray_width_mm: optionalNumber,
  tray_depth_mm: optionalNumber,
  trays_at_once: optionalNumber,
  spare_percent: optionalNumber,
  bake_min: optionalNumber,
  rest_min: optionalNumber,
  cool_min: optionalNumber,
  mature_h: optionalNumber,
  /** Steps of the day that need hands, in minutes; piping a tray, filling a macaron in seconds. */
  weigh_min: optionalNumber,
  macaronage_min: optionalNumber,
  pipe_min: optionalNumber,
  fill_s: optionalNumber,
  box_min: optionalNumber,
  warm_min: optionalNumber,
  wake_min: optionalNumber,
  sleep_min: optionalNumber,
  currency: optionalText,
  labor_per_h: optionalNumber,
  cup_ml: optionalNumber,
  market: z.optional(z.enum(["us", "eu"])),
  /** What is printed on. */
  paper: z.optional(z.enum(["a4", "letter"])),
  /** The saved recipe that stands in for the book's shells, by its name. */
  house_formula: optionalText,
  /** Figures that her batches teach are set aside; settings stay. */
  use_book: z.optional(z.boolean()),
  /** The last note that no longer teaches a topic, by its id: later ones teach again. */
  forgotten: z.optional(
    z.object({
      shells: optionalNumber,
      filling: optionalNumber,
      losses: optionalNumber,
      bake: optionalNumber,
      rest: optionalNumber,
      doses: optionalNumber,
    }),
  ),
});

export type Timer = z.infer<typeof Timer>;
export type Note = z.infer<typeof Note>;
export type Bottle = z.infer<typeof Bottle>;
export type Stock = z.infer<typeof Stock>;
export type Formula = z.infer<typeof Formula>;
export type Plan = z.infer<typeof Plan>;
export type Bench = z.infer<typeof Bench>;

/** Everything a calculator may look at. `now_ms` is the clock's reading, taken outside. */
export interface World {
  now_ms: number;
  bench: Bench;
  timers: Timer[];
  notes: Note[];
  bottles: Bottle[];
  stock: Stock[];
  formulas: Formula[];
  plans: Plan[];
  /** The last change to the record in words, when it can be taken back. */
  undoable?: string;
  /** The local days that a copy of the record is kept of, the oldest first, and when it was last changed. */
  copies?: { days: string[]; changed_ms?: number };
  /** The answer before this one, for "why?". */
  last?: { tool: string; question: string; answer: import("./answer.ts").Outcome; readings: string[] };
  /** The question just before, when no calculator took it: for "how did you read that?". */
  unread?: { question: string; readings: string[] };
}
