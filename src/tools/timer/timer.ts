/** Timers: set, list, how long left, more or less time, rename, stop. Each is an end on the clock. */

import * as z from "zod/mini";
import { later, tool } from "../contract/index.ts";
import { time_min } from "../lib/inputs.ts";
import { whenSaid } from "../lib/when-said.ts";
import { answerTimer } from "./answer.ts";
import { timerAfter, timerCues, timerGoesOn } from "./cues.ts";
import { readTimer } from "./read.ts";

/** Minutes either way, a year at most. */
const minutes = z
  .number()
  .check(
    z.gte(-525_600, { error: "That is over a year; check the number." }),
    z.lte(525_600, { error: "That is over a year; check the number." }),
  );

export const inputs = later(() =>
  z.strictObject({
    do: z.enum([
      "set",
      "until",
      "clock",
      "list",
      "left",
      "add",
      "move",
      "rename",
      "stop",
      "pause",
      "restart",
    ]),
    /** What the timer is to be called, or the words that point at one. */
    name: z.optional(z.string()),
    /** With `rename`: the old and the new name in one run of words; the running timers say where to cut. */
    words: z.optional(z.string()),
    /** The new name alone. */
    to: z.optional(z.string()),
    all: z.optional(z.boolean()),
    /** Another one is stopped in the same breath: what still runs is told with the last. */
    more_to_stop: z.optional(z.boolean()),
    /** Two of those that run; with `name` these: "ganache and rest". */
    both: z.optional(z.boolean()),
    /** Days beside food and no word of a timer: it may have been kept so long. */
    kept: z.optional(z.string()),
    /** "16 min", behind how a bake went: it may be told of that too. */
    told: z.optional(z.string()),
    /** "everything except lemon": this one runs on. */
    except: z.optional(z.string()),
    /** "it": the timer that was spoken of last. */
    recent: z.optional(z.string()),
    for_min: z.optional(time_min),
    /** It starts when the last of those that run has rung. */
    after: z.optional(z.boolean()),
    /** It began so long ago. */
    ago_min: z.optional(time_min),
    /** "syrup 118": a heat or minutes. */
    heat: z.optional(z.number()),
    /** Said as a range: it rings at its low end. */
    high_min: z.optional(time_min),
    /** "1:30" alone: a length or a time of day. */
    unclear: z.optional(z.string()),
    /** A bare number was taken for minutes. */
    bare: z.optional(z.boolean()),
    /** That number was asked of an alarm, which could mean an hour as well. */
    alarm: z.optional(z.boolean()),
    /** Minutes to add, below zero to take off. */
    more_min: z.optional(minutes),
    /** A moment as said, with minutes before (below zero) or after it. */
    when: z.optional(whenSaid),
    shift_min: z.optional(minutes),
    /** The step whose own time it takes when none is said. */
    step: z.optional(z.string()),
  }),
);

export type TimerInputs = z.infer<ReturnType<typeof inputs>>;

export const timer = tool<TimerInputs>({
  name: "timer",
  purpose: "Timers by name, for a length of time or until a clock time; how long is left; more, less, stop",
  inputs,
  cues: timerCues,
  goesOn: timerGoesOn,
  after: timerAfter,
  examples: [
    { say: "set a timer for 12 min", inputs: { do: "set", for_min: 12 } },
    { say: "start the rest timer", inputs: { do: "set", name: "rest", step: "rest" } },
    {
      say: "15 minutes for tray 1 and 18 minutes for tray 2",
      inputs: { do: "set", name: "tray 1", for_min: 15 },
    },
    {
      say: "ping me at quarter past ten",
      inputs: { do: "set", when: { minute: 615 } },
    },
    {
      say: "remind me to flip the tray in 7 minutes",
      inputs: { do: "set", name: "flip the tray", for_min: 7 },
    },
    { say: "how long left on the ganache", inputs: { do: "left", name: "ganache" } },
    { say: "what's running", inputs: { do: "list" } },
    { say: "give it 2 more minutes", inputs: { do: "add", more_min: 2 } },
    { say: "take 5 minutes off the bake timer", inputs: { do: "add", name: "bake", more_min: -5 } },
    { say: "call tray 1 blue shells", inputs: { do: "rename", words: "tray 1 blue shells" } },
    { say: "stop the oven timer", inputs: { do: "stop", name: "oven" } },
    { say: "stop all the timers", inputs: { do: "stop", all: true } },
  ],
  elsewhere: [
    { say: "how long do i rest the shells", tool: "method" },
    { say: "how long do i usually bake the vanilla ones", tool: "recall" },
    { say: "note lemon batch, baked 15 min at 150", tool: "note" },
    { say: "24 macarons for tomorrow 3pm, when do i start", tool: "day" },
    { say: "how long do filled macarons keep in the fridge", tool: "keep" },
    { say: "90 minutes in hours", tool: "convert" },
    { say: "my rest time is 40 minutes from now on", tool: "bench" },
    { say: "double the house recipe", tool: "scale" },
  ],
  // Nothing of the order before stays in force: "give it 2 more" is no longer "set".
  rivals: [
    [
      "do",
      "name",
      "words",
      "to",
      "all",
      "both",
      "more_to_stop",
      "kept",
      "told",
      "recent",
      "for_min",
      "ago_min",
      "heat",
      "high_min",
      "bare",
      "alarm",
      "unclear",
      "more_min",
      "when",
      "shift_min",
      "step",
    ],
  ],
  alone: true,
  read: readTimer,
  compute: answerTimer,
});
