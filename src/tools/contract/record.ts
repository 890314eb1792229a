/**
 * The baker's record as calculators see it: plain data that src/store reads, checks and hands over. The schemas are made
 * when there is something to check.
 */
import * as z from "zod/mini";
import { later } from "./later.ts";

/** A timer is an absolute end, so that it outlives the process. Times in ms since the epoch. */
export const Timer = later(() =>
  z.object({
    id: z.number(),
    label: z.string(),
    set_ms: z.number(),
    due_ms: z.number(),
    state: z.enum(["running", "rung", "stopped"]),
  }),
);

/** A batch as noted: structure beside the baker's own words. `date` is a local day, 2026-03-14. */
export const Note = later(() =>
  z.object({
    id: z.number(),
    date: z.string(),
    noted_ms: z.number(),
    text: z.string(),
    flavors: z.array(z.string()),
    problems: z.array(z.string()),
    /** What went well, by the word table's ids: "good feet", "full". */
    praise: z.optional(z.array(z.string())),
    rating: z.optional(z.number()),
    rating_said: z.optional(z.string()),
    macarons: z.optional(z.number()),
    shells: z.optional(z.number()),
    trays: z.optional(z.number()),
    diameter_mm: z.optional(z.number()),
    oven_c: z.optional(z.number()),
    bake_min: z.optional(z.number()),
    rest_min: z.optional(z.number()),
    mature_h: z.optional(z.number()),
    batter_g: z.optional(z.number()),
    filling_g: z.optional(z.number()),
    /** What stayed in bowl and bag of each. */
    batter_left_g: z.optional(z.number()),
    filling_left_g: z.optional(z.number()),
    weights: z.optional(z.array(z.object({ name: z.string(), grams: z.number() }))),
    doses: z.optional(z.array(z.object({ flavor: z.string(), percent: z.number() }))),
    ignored: z.optional(z.boolean()),
    /** The counts that were taken from the plan and not counted: they teach nothing. */
    planned: z.optional(z.array(z.string())),
  }),
);

/** A bottle on the shelf with what its own label says. Percentages by weight of the base. */
export const Bottle = later(() =>
  z.object({
    id: z.number(),
    taste: z.string(),
    form: z.optional(z.string()),
    low_percent: z.optional(z.number()),
    high_percent: z.optional(z.number()),
    /** How many times the usual strength: 2 is double. It counts where the bottle has no directions of its own. */
    strength: z.optional(z.number()),
    left_g: z.optional(z.number()),
    allergens: z.optional(z.array(z.string())),
  }),
);

/** Something in the cupboard: how much, what it cost, in what size it is sold. */
export const Stock = later(() =>
  z.object({
    id: z.number(),
    name: z.string(),
    grams: z.number(),
    price_per_g: z.optional(z.number()),
    currency: z.optional(z.string()),
    pack_g: z.optional(z.number()),
  }),
);

export const Formula = later(() =>
  z.object({
    id: z.number(),
    name: z.string(),
    kind: z.optional(z.string()),
    /** Of a range, `grams` is what counts; its ends are kept beside it. */
    lines: z.array(
      z.object({
        name: z.string(),
        grams: z.number(),
        low_g: z.optional(z.number()),
        high_g: z.optional(z.number()),
      }),
    ),
    /** Lines without a weight, in the baker's own words: "a pinch of salt". */
    unweighed: z.optional(z.array(z.string())),
  }),
);

/**
 * A day that was planned, as it stands: what has begun keeps its times when the rest is worked out again. `start`,
 * `ready` and the steps are seconds of wall-clock time since 1970-01-01T00:00, as src/tools/day-plan counts them.
 */
export const Plan = later(() =>
  z.object({
    id: z.number(),
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
        from: z.optional(z.number()),
      }),
    ),
    /** A note has taken its figures. */
    noted: z.optional(z.boolean()),
  }),
);

/** What batches teach, by what can be forgotten of it on its own. */
export const learnedTopics = ["shells", "filling", "losses", "bake", "rest", "doses"] as const;
export type LearnedTopic = (typeof learnedTopics)[number];

/** How the bench is set. Only what the baker said is here; the rest is the book's. */
export const Bench = later(() =>
  z.object({
    weight_unit: z.optional(z.enum(["g", "oz"])),
    scale_g: z.optional(z.number()),
    fan_oven: z.optional(z.boolean()),
    oven_offset_c: z.optional(z.number()),
    oven_c: z.optional(z.number()),
    diameter_mm: z.optional(z.number()),
    shells_a_tray: z.optional(z.number()),
    tray_width_mm: z.optional(z.number()),
    tray_depth_mm: z.optional(z.number()),
    trays_at_once: z.optional(z.number()),
    spare_percent: z.optional(z.number()),
    bake_min: z.optional(z.number()),
    rest_min: z.optional(z.number()),
    cool_min: z.optional(z.number()),
    mature_h: z.optional(z.number()),
    /** Steps of the day that need hands, in minutes; piping a tray, filling a macaron in seconds. */
    weigh_min: z.optional(z.number()),
    macaronage_min: z.optional(z.number()),
    pipe_min: z.optional(z.number()),
    fill_s: z.optional(z.number()),
    box_min: z.optional(z.number()),
    warm_min: z.optional(z.number()),
    wake_min: z.optional(z.number()),
    sleep_min: z.optional(z.number()),
    currency: z.optional(z.string()),
    labor_per_h: z.optional(z.number()),
    cup_ml: z.optional(z.number()),
    market: z.optional(z.enum(["us", "eu"])),
    /** What is printed on. */
    paper: z.optional(z.enum(["a4", "letter"])),
    /** The saved recipe that stands in for the book's shells, by its name. */
    house_formula: z.optional(z.string()),
    /** Figures that her batches teach are set aside; settings stay. */
    use_book: z.optional(z.boolean()),
    /** The last note that no longer teaches a topic, by its id: later ones teach again. */
    forgotten: z.optional(
      z.object({
        shells: z.optional(z.number()),
        filling: z.optional(z.number()),
        losses: z.optional(z.number()),
        bake: z.optional(z.number()),
        rest: z.optional(z.number()),
        doses: z.optional(z.number()),
      }),
    ),
  }),
);

export type Timer = z.infer<ReturnType<typeof Timer>>;
export type Note = z.infer<ReturnType<typeof Note>>;
export type Bottle = z.infer<ReturnType<typeof Bottle>>;
export type Stock = z.infer<ReturnType<typeof Stock>>;
export type Formula = z.infer<ReturnType<typeof Formula>>;
export type Plan = z.infer<ReturnType<typeof Plan>>;
export type Bench = z.infer<ReturnType<typeof Bench>>;

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
