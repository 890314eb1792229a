/** The day worked back from the hour it is due: planned, reworked, put on timers, handed over as a calendar. */
import * as z from "zod/mini";
import { tool } from "../contract/index.ts";
import { cues } from "../lib/cue.ts";
import { count, diameter_mm } from "../lib/inputs.ts";
import { answerDay } from "./answer.ts";
import { readDay } from "./read.ts";

/** A moment as said; held against the clock only when the day is worked out. */
const when = z.looseObject({ text: z.optional(z.string()) });

export const inputs = z.strictObject({
  macarons: z.optional(
    count("macarons").check(
      z.lte(10_000, { error: "More than 10000 macarons are no day's work; check the number." }),
    ),
  ),
  due: z.optional(when),
  diameter_mm: z.optional(diameter_mm),
  no_rest: z.optional(z.boolean()),
  /** Fillings by name; without one it is a ganache and a buttercream. */
  fillings: z.optional(z.array(z.string())),
  /** The plan there is, with what it was made for: what has begun by now stays as it was. */
  plan: z.optional(z.looseObject({})),
  want: z.optional(z.enum(["plan", "timers", "calendar", "next", "late"])),
  /** How far behind the plan the bench is. */
  late_min: z.optional(
    z
      .number()
      .check(
        z.gt(0, { error: "Late by how many minutes?" }),
        z.lte(2880, { error: "More than two days late: plan it anew." }),
      ),
  ),
});

export type DayInputs = z.infer<typeof inputs>;

export const day = tool<DayInputs>({
  name: "day",
  purpose: "The day worked back from when it is needed, on timers and as a calendar file",
  inputs,
  cues: cues(
    // "save it as" is a recipe's otherwise
    [7, "(?:save|put|give|make|write|send|export) .. calendar"],
    [
      5,
      "{number} .. {count=(macarons|boxes|shells)} .. {when}",
      "{when} .. {number} .. {count=macarons}",
      "when (?:do|should|must|would|can|shall) (?:i|we) (?:have to |need to )?(?:start|begin)",
      "(?:work|plan|count) (?:it|that|me|this|the day|everything)? ?(?:back|backwards?)",
      "what time (?:do|should|must) i (?:start|begin)",
      "latest (?:i can )?start",
      "(?:put|set|make|turn|start|give) .. steps .. timers?",
      "steps? (?:on|onto|as|into) timers?",
      "timers? for (?:the |all the |those |these |each |every )?(?:steps?|it all|plan|day|whole)",
      "calendar",
      "running .. {time} (?:late|behind)",
      "{time} (?:late|behind)",
      "skip (?:the )?(?:rest|rest<remainder>|\\S*<step=rest>)",
      "no.rest",
    ],
    [
      4,
      "(?:ready|due|wanted|needed|done|finished|deliver|delivered|collect|collected|pick|picked) .. {when}",
      "plan .. {when}",
      "plan .. {number} .. {count=macarons}",
      "(?:whats|what is|what comes|what do i do) next",
      "(?:plan|schedule|timetable|timeline) (?:for|the|my|a|out)",
      "schedule .. (?:macs|macarons|bake|baking)",
      "{count=macarons} .. (?:for|by) {when}",
      "work back",
    ],
    [
      2,
      "{when} (?:now|instead)",
      "(?:start|starting) .. {when}",
      "schedule",
      "(?:bake|baking)\\S* (?:day|plan)",
    ],
    [1, "plan", "{when}", "(?:by|for|until) {when}", "(?:start|starting)"],
    [
      -5,
      "(?:note|log|record|jot) ",
      "(?:made|filled|baked|piped|frozen|froze) .. {when}",
      "(?:fridge|freezer|freeze|counter|good|safe|keep|keeps|expire)",
      "last_\\S+<when",
      "yesterday",
      "timer (?:for|at|till|until) {when}",
      "(?:ping|remind|wake|alarm|tell|alert) .. {when}",
      "(?:did|was|were) .. {when}",
      "recall",
      "(?:show|what did|which batch)",
      "cost",
      "label",
    ],
    [-4, "how (?:much|many) ", "{weight} .. {base}", "batter"],
  ),
  examples: [
    { say: "24 macarons for tomorrow 3pm, when do I start", inputs: { macarons: 24 } },
    { say: "need 36 macarons ready friday 6 pm, work it back for me", inputs: { macarons: 36 } },
    { say: "plan 48 macarons for noon on saturday", inputs: { macarons: 48 } },
    {
      say: "can I have 24 macarons ready tomorrow at 5 pm without resting",
      inputs: { macarons: 24, no_rest: true },
    },
    { say: "put the steps on timers", inputs: { want: "timers" } },
    { say: "save it as a calendar file", inputs: { want: "calendar" } },
  ],
  elsewhere: [
    { say: "ping me at quarter past ten", tool: "timer" },
    { say: "filled them this morning, how long in the fridge", tool: "keep" },
    { say: "what did I bake last sunday", tool: "recall" },
    { say: "batter for 24 macarons", tool: "shells" },
  ],
  rivals: [["want", "late_min"]],
  read: readDay,
  compute: answerDay,
});
