/** How the baker's bench is set: oven, tray, size, scale, hours, money. Said once, it counts in every answer. */
import * as z from "zod/mini";
import { tool } from "../contract/index.ts";
import { cues } from "../lib/cue.ts";
import { diameter_mm, money, time_min } from "../lib/inputs.ts";
import { answerBench } from "./answer.ts";
import { readBench } from "./read.ts";

const within = (low: number, high: number, what: string) =>
  z.number().check(z.gte(low, { error: what }), z.lte(high, { error: what }));
const minutes = within(0, 10_080, "A step takes between nothing and a week.");
const clock = within(0, 1440, "A day has 24 hours.");

export const inputs = z.strictObject({
  do: z.optional(z.enum(["set", "show", "reset"])),
  /** Settings asked for or reset; all of them when none is named. */
  keys: z.optional(z.array(z.string())),
  /** "metric cups" without a size. */
  metric_cup: z.optional(z.boolean()),
  /** The oven is off by this, hot or cold not said. In °C. */
  off_c: z.optional(z.number()),
  shells_a_tray: z.optional(within(1, 500, "A tray holds between 1 and 500 shells.")),
  tray_width_mm: z.optional(within(60, 2000, "A tray is between 60 mm and 2 m wide.")),
  tray_depth_mm: z.optional(within(60, 2000, "A tray is between 60 mm and 2 m deep.")),
  trays_at_once: z.optional(within(1, 20, "Between 1 and 20 trays bake at once.")),
  diameter_mm: z.optional(diameter_mm),
  spare_percent: z.optional(within(0, 99, "Spare shells are between 0 and 99 %.")),
  fan_oven: z.optional(z.boolean()),
  oven_c: z.optional(within(50, 350, "An oven for shells is between 50 and 350 °C.")),
  oven_offset_c: z.optional(
    within(-100, 100, "An oven that is more than 100 °C off needs mending, not a setting."),
  ),
  bake_min: z.optional(time_min),
  rest_min: z.optional(minutes),
  cool_min: z.optional(minutes),
  mature_h: z.optional(within(0, 168, "Maturing takes up to a week.")),
  weigh_min: z.optional(minutes),
  macaronage_min: z.optional(minutes),
  pipe_min: z.optional(minutes),
  fill_s: z.optional(within(0, 3600, "Filling a macaron takes up to an hour.")),
  box_min: z.optional(minutes),
  warm_min: z.optional(minutes),
  wake_min: z.optional(clock),
  sleep_min: z.optional(clock),
  weight_unit: z.optional(z.enum(["g", "oz"])),
  scale_g: z.optional(within(0.001, 1000, "A scale's steps are between 0.001 g and 1 kg.")),
  cup_ml: z.optional(within(50, 500, "A cup holds between 50 and 500 ml.")),
  currency: z.optional(z.string()),
  labor_per_h: z.optional(money),
  market: z.optional(z.enum(["us", "eu"])),
});

export type BenchInputs = z.infer<typeof inputs>;

const end = "(?: (?:please|pls|now|remember|thanks|,|[.!?]))*$";
const mine = "(?:my|our|the)";
const habit = "(?:always|usually|normally|from now on|every time|by default)";
const coins = "(?:\\S*(?:pounds?|euros?|dollars?|quid|francs?|usd|eur|gbp|chf|cad|aud)(?:<\\S*>)?)";

export const bench = tool<BenchInputs>({
  name: "bench",
  purpose: "How your bench is set: oven, tray, shell size, scale, hours, currency",
  inputs,
  cues: cues(
    [
      4,
      `${mine} (?:\\S+ )?{count=trays} (?:has|have|holds?|does|do|takes?|fits?|is|are|makes?|got|only|can|will) .. (?:{number}|{length})`,
      `i (?:can |usually |always |only )?(?:get|fit|put|pipe) {number} .. (?:on|to|per|in) .. {count=trays}`,
      `{number} (?:{count=shells} )?(?:fits?|go|to|on|per) .. ${mine} {count=trays}`,
      `${mine} scales? (?:reads?|weighs|goes|shows?|does|is|only|steps?|measures?|has|works) .. (?:{weight}|{unit=g|oz})`,
      `ovens? (?:runs?|is|reads?|bakes?|gets?) .. (?:{temperature}|{number}) (?:degrees )?(?:\\S+ )?(?:hot|hotter|cold|colder|cool|cooler|high|low|over|under|off|warm|warmer)`,
      `(?:${mine} oven is|${mine} oven has|i have|ive got|i got|i use|i bake (?:in|with)|its|mine is|we have|i own) (?:an? )?(?:\\S+ )?(?:fan|convection|conventional|static|(?:normal|regular|ordinary) oven)(?: oven)?(?: , \\S+(?: \\S+)?)?${end}`,
      `${mine} oven (?:has|hasnt|doesnt have|is without|comes with) (?:an? |no |any )?fan${end}`,
      `i ${habit} (?:{use=piping}|{step}|pipe|make|bake|rest|cool|mature|do|preheat|set) .. (?:{length}|{temperature}|{time}|{number})`,
      `(?:{length}|{time}|{temperature}) .. (?:from now on|by default|every time)`,
      `from today .. (?:{length}|{time}|{temperature})`,
      `(?:as a rule|my usual size|my usual|my standard|by default) .. (?:remember|save|store|keep|note)`,
      `{count=shells} (?:are|is) {length} .. (?:remember|save|store|keep|as a rule|always|from now)`,
      `from now on .. {volume}`,
      `(?:a_cup|my cup|cups?|1_cup)\\S* .. {volume} .. (?:remember|from now on|save)`,
      `from now on .. (?:{length}|{time}|{temperature}|{percent}|{unit}|{money})`,
      `(?:i|we) (?:get up|wake up|wake|go to bed|go to sleep|am up|am in bed|sleep|turn in|start work|stop work) .. {when}`,
      `(?:im|i am) (?:up|awake|in bed|asleep) .. {when}`,
      `${mine} currency`,
      `currency (?:to|is|in|should be|as) ${coins}`,
      `(?:i (?:sell|charge|price|pay|work)|prices?|show prices|use|switch to) (?:in )?${coins}${end}`,
      `(?:${mine} )(?:time|labou?r|hourly rate|wage|work) (?:is|costs?|=|should be|to) .. {money}`,
      `i (?:pay myself|charge myself|earn|count my time at) .. {money}`,
      `${mine} {unit=cup} (?:is|are|holds?|has|measures?|=) .. {volume}`,
      `use (?:an? |my )?{volume} {unit=cup}`,
      `(?:use|i use|i have|my cups are|switch to|set) (?:to )?metric (?:{unit=cup}|cups?)${end}`,
      `${mine} (?:market|labels?) (?:is|are|for|go|should be|to) .. (?:us|usa|eu|europe|america|american|european)`,
      `i sell (?:in|to) (?:the )?(?:us|usa|eu|europe|america)${end}`,
      `(?:plan|make|pipe|add|use|do|i (?:make|plan|pipe)|with) (?:always )?(?:{percent}|no|zero) (?:extra|spares?)`,
      `{percent} (?:\\S+ )?(?:spares?|extra|extras) .. (?:always|from now on|please|{count=shells})`,
      `(?:show|give|weigh|work|answer|think|prefer|use|switch to|set) .. (?:everything |weights |it all )?(?:in )?{unit=g|oz} .. (?:always|from now on|by default)`,
      `(?:i (?:use|weigh in|work in|prefer|think in|weigh everything in)|switch to|show (?:weights|everything|all weights|me weights) in|use) {unit=g|oz}${end}`,
      `(?:oven|i) (?:takes?|holds?|fits?|bakes?|can bake|do|can do|bake) {number} {count=trays} .. (?:at once|at a time|at the same time|together)`,
      `i (?:use|do|always use) (?:the |a )?no {step=rest}`,
      `set ${mine} (?:\\S+ )?(?:{count=trays}|{count=shells}|currency|oven|mat|size|scale|bench|market|cups?|{unit=cup}|hours|labou?r|wage|spares?|units?|diameter)`,
      `{use=piping} takes (?:me )?{time}`,
      `(?:how is|hows|how are|what is|whats|show(?: me)?|see|list|tell me) (?:\\S+ )?(?:my |the )?(?:bench|settings|setup)`,
      `^(?:my )?(?:bench|settings|setup)${end}`,
      `(?:what|whats|what is|what are|which|how big (?:is|are)|how wide (?:is|are)|show(?: me)?) (?:is |are )?my (?:\\S+ )?(?:{count=trays}|oven|ovens|scale|scales|currency|market|{unit=cup}|hours|units|spares|diameter|shell size|size|{count=shells} size|labou?r)(?: (?:set|setting|size))?(?: (?:to|at|right now))?${end}`,
      `(?:forget|reset|clear|unset|drop) (?:about )?(?:my|the) (?:\\S+ )?(?:{count=trays}|bench|settings|setup|oven|ovens|scale|scales|currency|market|cups?|{unit=cup}|hours|units?|spares?|size|diameter|{count=shells}|labou?r|{step}|offset)`,
      `(?:use|go by|follow|back to) the book(?:s)?`,
      `back to (?:the )?(?:usual|default|standard) .. (?:size|oven|{count=trays}|{count=shells}|settings)`,
      `reset (?:everything|all my settings|to the book)`,
    ],
    [
      3,
      `i (?:always |usually )?(?:{step=bake}|bake) (?:mine |them |my shells |everything )?at (?:{temperature}|{number}|{when})${end}`,
      `^no spares?${end}`,
    ],
    [
      3,
      `${mine} {count=shells|macarons} (?:are|is) (?:always |all )?{length}${end}`,
      `${mine} (?:{count=shells} |shell |macaron |usual |default |normal )*(?:size|diameter) (?:is|to|should be|=) .. {length}`,
    ],
    [
      2,
      `{length} .. (?:remember|keep (?:that|it|this) in mind|dont forget|save that)`,
      `remember .. (?:{length}|{count=trays})`,
      "settings",
    ],
    [1, "remember", habit, "my oven", "keep .. mind"],
    [
      -4,
      "(?:how|hw) (?:much|many)",
      "^(?:and |please |pls )*(?:note|log|record|jot)",
      "(?:timer|timers|alarm|remind|ping|wake me|countdown)",
      "(?:recipe|recipes|book) says",
      "when (?:do|should|must) i",
      "(?:bottle|stock|pantry|cupboard|shelf)",
      "{symptom}",
      "(?:price|margin|markup|ingredients|ingrediants)",
      "(?:last|best|usually) .. (?:ones|batch|batches)",
    ],
    [
      -2,
      "^(?:and |but )?(?:what )?if ",
      "what (?:do|should) i",
      "{base=batter|buttercream|ganache|filling}",
      "need|needs|want|wanted",
    ],
  ),
  examples: [
    { say: "my mat has 28 circles", inputs: { do: "set", shells_a_tray: 28 } },
    { say: "I always pipe mine 4 cm, remember that", inputs: { do: "set", diameter_mm: 40 } },
    { say: "my oven runs 10 hot", inputs: { do: "set", oven_offset_c: 10 } },
    { say: "my scale reads 1 g steps", inputs: { do: "set", scale_g: 1 } },
    { say: "my tray is 30 by 40 cm", inputs: { do: "set", tray_width_mm: 300, tray_depth_mm: 400 } },
    { say: "I get up at 6", inputs: { do: "set", wake_min: 360 } },
    { say: "set my currency to euros", inputs: { do: "set", currency: "EUR" } },
    { say: "how is my bench set", inputs: { do: "show" } },
    { say: "use the book", inputs: { do: "reset" } },
  ],
  elsewhere: [
    { say: "how many shells of 45 mm fit on one tray", tool: "shells" },
    { say: "recipe says 150 c conventional and mine is a fan oven, what do I set", tool: "convert" },
    { say: "what temperature do I usually bake the lemon ones at", tool: "recall" },
    { say: "my lavender bottle says 1 to 2 percent, save it", tool: "shelf" },
    { say: "wake me up at 8", tool: "timer" },
    { say: "forget porch shells", tool: "formula" },
  ],
  rivals: [
    ["do", "keys"],
    ["metric_cup", "cup_ml"],
    ["off_c", "oven_offset_c"],
  ],
  read: readBench,
  compute: answerBench,
});
