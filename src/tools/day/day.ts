/** The day worked back from the hour it is due: planned, reworked, put on timers, handed over as a calendar. */
import * as z from "zod/mini";
import { later, tool } from "../contract/index.ts";
import { cues } from "../lib/cue.ts";
import { count, diameter_mm, time_min } from "../lib/inputs.ts";
import { answerDay } from "./answer.ts";
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
    /** Two orders in one sentence: nothing is planned until one of them is named. */
    orders: z.optional(z.array(z.object({ macarons: count("macarons"), due: when }))),
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
    want: z.optional(z.enum(["plan", "timers", "calendar", "sheet", "next", "late", "done", "drop"])),
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
  cues: cues(
    // "save it as" is a recipe's otherwise
    [
      7,
      "^(?:(?:ok|okay|so|and|now|right|hi|hey|im|ive|i|am|have|we|were|weve|just|all|is|that|thats) )*(?:done|finished|through|completed) (?:with )?(?:the |my |all the )?(?:(?:{taste}|{chocolate}) )?(?:{use=piping}|weighing|sifting|whipping|boxing|labell?ing|macaronaging|{step=(bake|macaronage|cool)}|{base=(filling|ganache|buttercream|meringue|batter)}|{count=trays} {number})(?: (?:{count=trays}|{number}|all|now|already|them|it|up|and|please|pls|thanks|labell?ing))*(?: [.!])?$",
      "^(?:(?:ok|okay|so|and|now|the|my|all|that|thats) )*(?:(?:(?:{taste}|{chocolate}) )?{base=(ganache|buttercream|batter)}|{formula}) (?:(?:is|are|has|now|all|just|been) )*(?:done|ready|made|finished)(?: (?:now|already|too|please|thanks))*(?: [.!])?$",
      "^(?:(?:ok|okay|so|and|now|the) )*{count=trays} {number} (?:(?:is|are|has|now|all|just|been|come|came) )*(?:done|finished|out|piped|{use=piping}|{step=bake})(?: (?:of|the|oven|now|already|please|thanks|{step=bake}|{use=piping}))*(?: [.!])?$",
      "(?:drop|forget|cancel|delete|scrap|remove) (?:the|that|my|this) (?:plan|schedule|bake day)",
    ],
    [
      6,
      "^(?:(?:and|but|so|oh|ok|sorry) )*i (?:can |could |will )?(?:only )?(?:start|begin) (?:at|after|from) (?:{when}|{number})",
      "i (?:cant|can not|cannot|wont) (?:start|begin|get up|be up) (?:before|until|till) (?:{when}|{number})",
      "order (?:of|for) {number} .. {when}",
    ],
    [14, "{count=batches} (?:sheets?|cards?)\\S*"],
    [7, "(?:save|put|give|make|write|send|export) .. calendar"],
    [8, "(?:whats|what is) (?:still )?left to do", "what do i still have to do"],
    [
      8,
      "(?:print|printed|printout|pdf) .. (?:plan|schedule|timetable|timeline|bake day|{step=bake} day|day|steps)",
      "(?:plan|schedule|timetable|timeline|bake day|{step=bake} day|day|steps) .. (?:pdf|print|printed|paper|for the wall)",
      "(?:work|prep|production|kitchen|wall|run) sheets?\\S*",
      "(?:print|printed|pdf) .. (?:{step=bake}|baking) sheets?\\S*",
    ],
    [
      2,
      "(?:as|to|in) (?:a |an )?pdfs?",
      "pdfs?",
      "^(?:(?:and|can|could|you|please|ok|now) )*print",
      "for the wall",
    ],
    [
      6,
      "(?:whats|what is) (?:the |my )?(?:first|next) (?:step|thing)(?: [?])?$",
      "^what (?:do i do|comes) first(?: [?])?$",
    ],
    [
      9,
      "{when} .. {number} {taste} .. {number} {taste}",
      "{number} {taste} .. {number} {taste} .. (?:for|by|on) {when}",
    ],
    [9, "timers for (?:it|them|that|this|everything|all (?:of )?(?:it|that|them))$", "calendar"],
    [
      5,
      "{number} .. {count=(macarons|boxes|shells)} .. {when}",
      "{when} .. {number} .. {count=macarons}",
      "{number} .. {count=macarons} .. (?:in|within) {time}",
      "^(?:(?:ok|and|so|now|need) )*{number} (?:for|by) {when} , .. {taste}",
      "when (?:do|should|must|would|can|shall) (?:i|we) (?:have to |need to )?(?:start|begin)",
      "(?:work|plan|count) (?:it|that|me|this|the day|everything)? ?(?:back|backwards?)",
      "what time (?:do|should|must) i (?:start|begin)",
      "latest (?:i can )?start",
      "(?:put|set|make|turn|start|give) .. steps .. timers?",
      "(?:put|set|make|turn) (?:all )?(?:of )?(?:that|this|it|them|everything|those) (?:all )?(?:on|onto|in|into|as) (?:my |the )?timers?",
      "timers? for (?:the |those |these |all )*steps?",
      "(?:turn|make|put|set|convert) (?:that |this |the |my )?(?:plan|schedule|day) (?:into|to|on|onto|as) (?:my |the )?timers?",
      "steps? (?:on|onto|as|into) timers?",
      "timers? for (?:the |all the |those |these |each |every )?(?:steps?|it all|plan|day|whole)",
      "calendar",
      "running .. {time} (?:late|behind)",
      "{time} (?:late|behind)",
      "skip (?:the )?(?:rest|rest<remainder>|\\S*<step=rest>|\\S*<step=mature>)",
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
  // "brunch got pushed to 2"
  goesOn: cues(
    [
      12,
      "^(?:(?:and|but|so|ok|what|how|about|if|it|was|its|were|is|they|want|make|for|on|back to) )*{when}(?: ,)? (?:at )?(?:the )?same time",
      "^(?:and |but |so |what |how )*(?:about |if )(?:(?:it|they|its|was|is|were|want|for|on|by) )*{when}(?: ?,.*)?$",
    ],
    [
      12,
      "^(?:(?:ok|okay|right|so|now|and|im|lets) )*(?:start|starting|begin|go|get going)(?: now| then)?(?: [.!])?$",
    ],
    [9, "timer for (?:it|them|that|this|everything|all (?:of )?(?:it|that|them))$"],
    [12, "no.rest(?:<\\S+)?", "(?:skip|without|dont|not) (?:\\S+ )?{step=rest}"],
    [
      8,
      "^(?:(?:and|so|no|ok|actually|now|make it|make that) )*{time} (?:earlier|sooner|later)(?: (?:please|then|now|actually))?(?: [?])?$",
      "(?:pushed|moved|shifted|changed|bumped|put) (?:back |forward |up |off |on )?(?:to|till|until) (?:\\S+ )?(?:{number}|{when})",
    ],
  ),
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
    ["want", "late_min", "step", "as_kept"],
    ["due", "within_min"],
    ["fillings", "unplaced"],
    ["no_rest", "by_record"],
    ["gone", "macarons"],
  ],
  read: readDay,
  compute: answerDay,
});
