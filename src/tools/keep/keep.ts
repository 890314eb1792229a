/** How long, how cold, is it still good: the published limits, worked out on the day that was said. */

import * as z from "zod/mini";
import { later, tool } from "../contract/index.ts";
import { temperature_c, time_min, weight_g } from "../lib/inputs.ts";
import { whenSaid as when } from "../lib/when-said.ts";
import { answerKeep } from "./answer.ts";
import { keepCues, keepGoesOn } from "./cues.ts";
import { readKeep } from "./read.ts";

/** A hundred years: further back the calendar is no help, and nothing keeps. */
const most_days = 36_525;
const tooOld = "That is over a hundred years; check the number.";

export const inputs = later(() =>
  z.strictObject({
    about: z.optional(
      z.enum([
        "fridge",
        "outside",
        "freezer",
        "thaw",
        "cold",
        "eggs",
        /** Whether somebody may eat them whom raw egg could harm. */
        "frail",
        "whites",
        "shelf stable",
        "activity",
        "shells",
        "again",
        "spoiled",
        "serve",
        "matured",
        "post",
      ]),
    ),
    /** What is kept, in her word: "ganache", "buttercream"; filled macarons when nothing is said. */
    what: z.optional(z.string()),
    made: z.optional(when),
    /** The days that were said before, where "and the 16th?" may be the one asked about: a day to come. */
    made_before: z.optional(z.array(when)),
    /** "the monday before": a week earlier than the day that was taken. */
    weeks_before: z.optional(z.number()),
    frozen: z.optional(when),
    thawed: z.optional(when),
    /** The day she asks about, when it isn't today. */
    on: z.optional(when),
    /** She means to make them on that day: look ahead, not back. */
    coming: z.optional(z.boolean()),
    /** Freezing and thawing are still to come: their days lie ahead. */
    planned: z.optional(z.boolean()),
    /** How long the freezer keeps them is asked, whatever days were spoken of. */
    how_long: z.optional(z.boolean()),
    /** "frozen on day 2": the day of the seven on which they went into the freezer. */
    frozen_on_day: z.optional(z.number().check(z.gte(1, { error: "The day of making is day 1." }))),
    /** They have been out of the fridge since they were made. */
    out_since_made: z.optional(z.boolean()),
    /** Time out of the fridge, all spells together. */
    out_min: z.optional(time_min),
    /** Out of the fridge from then to now. */
    out_since: z.optional(when),
    /** The hour it is now, where she says it. */
    out_until: z.optional(when),
    /** Spells out of the fridge before this one: they count with it. */
    out_earlier_min: z.optional(time_min),
    /** So long they have matured, or are to. */
    matured_min: z.optional(time_min),
    overnight: z.optional(z.boolean()),
    /** She asks whether they may be out so long; they weren't yet. */
    out_asked: z.optional(z.boolean()),
    /** It is yolks that are kept. */
    yolks: z.optional(z.boolean()),
    /** Fresh dairy or curd in the filling. */
    dairy: z.optional(z.boolean()),
    /** Days since the whites were separated. */
    old_days: z.optional(
      z
        .number()
        .check(z.gte(0, { error: "An age can't be below zero." }), z.lte(most_days, { error: tooOld })),
    ),
    /** Days it has been in the freezer. */
    frozen_days: z.optional(
      z
        .number()
        .check(
          z.gte(0, { error: "Days in the freezer can't be below zero." }),
          z.lte(most_days, { error: tooOld }),
        ),
    ),
    /** She asks whether it is still good, not how long it keeps: without a day that is asked back. */
    still: z.optional(z.boolean()),
    /** How warm it is outside the fridge, or how cold inside. */
    air_c: z.optional(temperature_c),
    /** The warmth was said in °F: then the line is 90 °F, else 32 °C. */
    fahrenheit: z.optional(z.boolean()),
    hot: z.optional(z.boolean()),
    /** They are to be heated, to make them good again. */
    reheat: z.optional(z.boolean()),
    /** How cold the freezer is. */
    freezer_c: z.optional(temperature_c),
    /** A heat of whites whose scale wasn't said. */
    degrees: z.optional(z.number()),
    /** What the filling is made of, where she says it: its water activity is estimated from it. */
    lines: z.optional(z.array(z.object({ name: z.string(), grams: weight_g }))),
    /** A measured water activity. */
    aw: z.optional(
      z
        .number()
        .check(
          z.gt(0, { error: "Water activity lies between 0 and 1." }),
          z.lte(1, { error: "Water activity lies between 0 and 1." }),
        ),
    ),
  }),
);

export type KeepInputs = z.infer<ReturnType<typeof inputs>>;

export const keep = tool<KeepInputs>({
  name: "keep",
  purpose: "How long filled macarons keep, how cold, and whether they are still good",
  inputs,
  cues: keepCues,
  examples: [
    { say: "I filled them this morning, how long in the fridge", inputs: { about: "fridge" } },
    {
      say: "the filled ones were left on the counter 3 hours, still ok?",
      inputs: { about: "outside", out_min: 180 },
    },
    { say: "can i freeze filled macarons and for how long", inputs: { about: "freezer" } },
    { say: "thaw the frozen macarons in the fridge or on the counter", inputs: { about: "thaw" } },
    { say: "how cold does the fridge have to be for filled macarons", inputs: { about: "cold" } },
    { say: "it was 95 F on the stall, how long can they stay out", inputs: { about: "outside", air_c: 35 } },
    { say: "i'm not heating the whites for my buttercream, is that safe", inputs: { about: "eggs" } },
    {
      say: "the flavor bottle says shelf stable so the filled macarons can sit out right",
      inputs: { about: "shelf stable" },
    },
    { say: "should I toss them, they sat on the porch overnight", inputs: { about: "outside" } },
  ],
  elsewhere: [
    { say: "how long do the shells rest", tool: "method" },
    { say: "how long left on the bake timer", tool: "timer" },
    { say: "which batches did i make last week", tool: "recall" },
    { say: "water activity of 110 g white chocolate and 70 g cream", tool: "ganache" },
  ],
  // "can they stand out at the party?" "4 hours"
  goesOn: keepGoesOn,
  rivals: [
    ["about", "still", "old_days", "reheat", "how_long"],
    ["out_min", "out_since", "out_until", "out_earlier_min", "overnight", "out_since_made", "out_asked"],
    ["air_c", "fahrenheit", "hot", "degrees"],
    ["freezer_c"],
    ["made", "coming", "weeks_before", "made_before", "how_long"],
    ["frozen", "frozen_days", "frozen_on_day", "planned"],
    ["thawed"],
    ["on"],
    ["aw", "lines"],
  ],
  sum: [],
  read: readKeep,
  compute: answerKeep,
});
