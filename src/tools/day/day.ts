/** The day worked back from the hour it is due: planned, reworked, put on timers, handed over as a calendar. */

import * as z from "zod/mini";
import { later, tool } from "../contract/index.ts";
import { count, diameter_mm, time_min } from "../lib/inputs.ts";
import { answerDay } from "./answer.ts";
import { dayCues, dayGoesOn } from "./cues.ts";
import { filling, flavor } from "./filling.ts";
import { readDay } from "./read.ts";

/** A moment as said; held against the clock only when the day is worked out. */
const when = z.looseObject({ text: z.optional(z.string()) });

/** Above zero, as the split calculator wants them. */
const share = z.number().check(z.gt(0, { error: "Each part has to be above zero." }));
const shares = z.optional(z.array(z.object({ name: z.optional(z.string()), size: share })));
const colors = z.object({
  percents: shares,
  parts: shares,
  rest: z.optional(z.string()),
  assumed: z.optional(z.boolean()),
});

export const inputs = later(() =>
  z.strictObject({
    macarons: z.optional(
      count("macarons").check(
        z.lte(10_000, { error: "More than 10000 macarons are no day's work; check the number." }),
      ),
    ),
    due: z.optional(when),
    /** Lengths and trays at once that were said with this order: they go before the bench's. */
    lengths: z.optional(
      z.object({
        mature_h: z.optional(z.number().check(z.gte(0), z.lte(168))),
        rest_min: z.optional(time_min),
        bake_min: z.optional(time_min),
        cool_min: z.optional(time_min),
        trays_at_once: z.optional(count("trays").check(z.lte(20))),
      }),
    ),
    /** Two orders in one sentence: nothing is planned until one of them is named. */
    orders: z.optional(z.array(z.object({ macarons: count("macarons"), due: when }))),
    /** The start that is wanted or asked about, where a plan is moved by it; or by so many minutes from where it was. */
    start: z.optional(when),
    /** "begun": told of a bake that is under way, "i started late at 1pm". */
    start_as: z.optional(z.enum(["at", "asked", "too late", "from", "begun"])),
    start_min: z.optional(z.number().check(z.gte(-20_160), z.lte(20_160))),
    /** Minutes that the hour of being ready is moved by, below zero for earlier. */
    shift_min: z.optional(z.number().check(z.gte(-20_160), z.lte(20_160))),
    /** So many minutes, and nobody knows which way. */
    unclear_min: z.optional(time_min),
    unclear_of: z.optional(z.enum(["start", "all"])),
    /** Nothing of what was said changes the plan, which is told. */
    idle: z.optional(z.boolean()),
    /** The steps that were said to be done, by their ids: no delay moves them any more. */
    done_ids: z.optional(z.array(z.string())),
    /** "in three hours": counted from when it is said. */
    within_min: z.optional(time_min),
    diameter_mm: z.optional(diameter_mm),
    no_rest: z.optional(z.boolean()),
    /** She would leave out the maturing, which no plan can. */
    no_mature: z.optional(z.boolean()),
    /** Nothing is said of the rest: a kept plan's own record tells, since skipping it may have been taken back. */
    by_record: z.optional(z.boolean()),
    /** The plan that was spoken of has been dropped: nothing of it is asked about any more. */
    gone: z.optional(z.boolean()),
    /** The baker's hours where they were said with this order, minutes of the day. */
    wake_min: z.optional(z.number().check(z.gte(0), z.lte(1440))),
    sleep_min: z.optional(z.number().check(z.gte(0), z.lte(1440))),
    /** Fillings that were named; without one it is a ganache and a buttercream. */
    fillings: z.optional(z.array(filling)),
    /** A saved recipe for the shells, where one was named. */
    shell_recipe: z.optional(z.string()),
    /** A flavor that was named with no filling of its own: it goes into each that has none. */
    flavor: z.optional(flavor),
    /** Flavors of which nobody knows what they go into. */
    unplaced: z.optional(z.array(z.string())),
    /** The colors of the shells, in the shares that the split calculator takes. */
    colors: z.optional(colors),
    /** The kept plan that is spoken of, by when it was made: what has begun by now stays as it was. */
    plan: z.optional(z.number()),
    /** "at": what there is to do at an hour; "when": when a step comes; "pin": a step is wanted at an hour of its own. */
    want: z.optional(
      z.enum(["plan", "timers", "calendar", "sheet", "next", "late", "done", "drop", "at", "when", "pin"]),
    ),
    /** With `want: "at"`: the hour that is asked about. */
    at: z.optional(when),
    /** Nothing of the order was said with what is wanted: the kept plan's own order stands. */
    as_kept: z.optional(z.boolean()),
    /** With `sheet`: the day whose plan is meant, and what it is printed on. */
    on: z.optional(when),
    paper: z.optional(z.enum(["a4", "letter"])),
    /** With `done`: the step that has just been finished. */
    step: z.optional(
      z.object({
        kind: z.optional(z.string()),
        tray: z.optional(z.number()),
        filling: z.optional(z.string()),
        /** Of so much of them, or of so many: "half of them are baked". */
        share: z.optional(z.number().check(z.gt(0), z.lt(1))),
        count: z.optional(count("macarons")),
        /** That tray and those that are planned before it. */
        first: z.optional(z.boolean()),
      }),
    ),
    /** How far behind the plan the bench is. */
    late_min: z.optional(
      z
        .number()
        .check(
          z.gt(0, { error: "Late by how many minutes?" }),
          z.lte(2880, { error: "More than two days late: plan it anew." }),
        ),
    ),
  }),
);

export type DayInputs = z.infer<ReturnType<typeof inputs>>;

export const day = tool<DayInputs>({
  name: "day",
  purpose: "The day worked back from when it is needed, on timers and as a calendar file",
  inputs,
  unboxes: true,
  shifts: "added",
  cues: dayCues,
  // "brunch got pushed to 2"
  goesOn: dayGoesOn,
  examples: [
    { say: "24 macarons for tomorrow 3pm, when do I start", inputs: { macarons: 24 } },
    { say: "need 36 macarons ready friday 6 pm, work it back for me", inputs: { macarons: 36 } },
    { say: "plan 48 macarons for noon on saturday", inputs: { macarons: 48 } },
    {
      say: "can I have 24 macarons ready tomorrow at 5 pm without resting",
      inputs: { macarons: 24, no_rest: true },
    },
    {
      say: "60 macarons by friday 10 am, apricot ganache and vanilla buttercream, half pink half white",
      inputs: { macarons: 60 },
    },
    { say: "done piping tray 2", inputs: { want: "done", step: { kind: "pipe", tray: 2 } } },
    { say: "put the steps on timers", inputs: { want: "timers" } },
    { say: "save it as a calendar file", inputs: { want: "calendar" } },
    { say: "print a batch sheet for 40 macarons", inputs: { macarons: 40, want: "sheet" } },
    { say: "print today's plan for the wall", inputs: { want: "sheet" } },
  ],
  elsewhere: [
    { say: "ping me at quarter past ten", tool: "timer" },
    { say: "filled them this morning, how long in the fridge", tool: "keep" },
    { say: "what did I bake last sunday", tool: "recall" },
    { say: "batter for 24 macarons", tool: "shells" },
  ],
  rivals: [
    ["want", "late_min", "step", "as_kept", "at"],
    ["due", "within_min"],
    ["fillings", "unplaced"],
    ["no_rest", "by_record"],
    ["gone", "macarons"],
    // a move is of the turn that said it
    ["start", "start_as", "start_min", "shift_min", "unclear_min", "unclear_of", "idle", "plan"],
    ["start", "start_as", "start_min", "shift_min", "unclear_min", "unclear_of", "idle", "macarons"],
  ],
  sum: [],
  read: readDay,
  compute: answerDay,
});
