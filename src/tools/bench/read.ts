/** Reads settings out of a sentence: what is set, what is asked, what goes back to the book. */
import type { Memory, Reading } from "../contract/index.ts";
import { counted } from "../lib/find.ts";
import { paperSaid } from "../lib/paper-size.ts";
import { sparesSaid } from "../lib/spares.ts";
import { inBase } from "../lib/units.ts";
import type { BenchInputs } from "./bench.ts";
import { readLessons } from "./lessons-said.ts";
import { readHours, readMoney, readOven } from "./places.ts";
import { settings } from "./settings.ts";
import { severalSet } from "./several.ts";

type Draft = Partial<BenchInputs>;

const resets =
  /(?:^| )(?:forget|reset|clear|remove|delete|drop|unset|back to (?:the )?(?:book|usual|default|normal|standard)|(?:use|go by|follow|by) the book|the books?|default)(?: |$)/;
const drops = /^(?:(?:ok|please|no|and|oh) )*(?:forget|reset|clear|remove|delete|drop|unset) /;
const shows =
  /(?:^| )(?:what|whats|which|how is|hows|how are|show|list|see|tell me|do i have|is my|do you|anything|everything|read|recite|repeat|go through)(?: |$)/;

/** "i baked at 160": of a bake that is over; "always" and "from now on" make it a setting. */
const wentSo =
  /^(?!.*\b(?:always|usually|normally|from now on|every time|by default|remember|save|set)\b)(?:(?:well|but|and|so|oh|no|yes|ok|today|yesterday|this time|last time),? )*(?:i|we) (?:just |only |had )?(?:baked|rested|dried|cooled|matured) (?:(?:them|it|mine|these|those|my shells|the shells|everything|all) )?(?:(?:at|for|about) |\d)/;

/** "fan", "16 min", behind it: more of that bake. */
const goesOnSo =
  /^(?:(?:in|with|a|my|the|it|was|on|and|no|for|about|,) )*(?:fan|convection|conventional|static|\S*<time>)(?: (?:oven|too|each))?$/;

export function readBench(reading: Reading, memory: Memory): Draft {
  const { mask } = reading;
  const lesson = readLessons(mask);
  if (lesson) return lesson;
  const told = memory.last?.tool === "bench" && memory.last.inputs.do === "told";
  if (wentSo.test(reading.text) || (told && goesOnSo.test(mask))) return { do: "told" };
  const before = memory.slot && memory.last?.tool === "bench" ? (memory.last.inputs as Draft) : undefined;
  if (before && memory.slot === "cup_ml") return cupOf(reading);
  if (before && memory.slot === "oven_offset_c" && before.off_c !== undefined)
    return { do: "set", oven_offset_c: before.off_c * (/cold|cool|low|under/.test(mask) ? -1 : 1) };
  const paper = /\b(?:paper|print\w*)\b/.test(reading.text) ? paperSaid(reading) : undefined;
  const set = paper ? { paper } : (severalSet(reading, valuesIn) ?? valuesIn(reading));
  // "forget the fan oven": what is named goes, and isn't set
  const names =
    Object.keys(set).length === 0 ||
    (drops.test(mask) && Object.keys(set).every((key) => key === "fan_oven"));
  if (resets.test(mask) && names) {
    const keys = keysIn(mask);
    return {
      do: "reset",
      ...(keys.length ? { keys } : /(?:^| )books?(?: |$)/.test(mask) ? { book: true } : {}),
    };
  }
  if (Object.keys(set).length > 0) return { do: "set", ...set };
  if (/metric/.test(mask) && /cup/.test(mask)) return { do: "set", metric_cup: true };
  // "keep that as my size", behind macarons of 40 mm
  const spoken = memory.table.diameter_mm;
  if (spoken !== undefined && /(?:that|this|it) as (?:\S+ )*(?:size|diameter)(?: |$)/.test(mask))
    return { do: "set", diameter_mm: spoken };
  if (!shows.test(mask) && !/settings|bench|setup/.test(mask)) return { do: "set" };
  const keys = /settings|bench|setup|everything|kitchen/.test(mask) ? [] : keysIn(mask);
  return { do: "show", ...(keys.length ? { keys } : {}) };
}

const keysIn = (mask: string): string[] =>
  settings.filter((row) => row.words.test(mask)).map((row) => row.key);

/** Every setting that the sentence gives a value for. */
function valuesIn(reading: Reading): Draft {
  return {
    ...readTray(reading),
    ...readSize(reading),
    ...readShares(reading),
    ...readTimes(reading),
    ...readUnits(reading),
    ...readOven(reading),
    ...readHours(reading),
    ...readMoney(reading),
  };
}

const amountOf = (reading: Reading, dim: string) => reading.amounts.find((each) => each.dim === dim);
const onTray = (reading: Reading) => reading.things.some((each) => each.count === "trays");

/** "my mat has 28 circles", "my tray is 30 by 40 cm", "two trays at once". */
function readTray(reading: Reading): Draft {
  if (!onTray(reading)) return {};
  // "my oven takes two trays": as many at once
  if (
    /at once|at a time|at the same time|together/.test(reading.mask) ||
    /oven (?:\S+ )?(?:takes?|holds?|fits?|has room for) (?:only )?\S*<number> \S*count=trays/.test(
      reading.mask,
    )
  ) {
    const trays = counted(reading, "trays");
    return trays === undefined ? {} : { trays_at_once: trays };
  }
  const rows = inRows(reading);
  if (rows !== undefined) return { shells_a_tray: rows };
  const size = /(?:^| )(\S+)<(?:number|length)> (?:by|x) (\S+)<(?:number|length)>/.exec(reading.mask);
  const [width, depth] = [size?.[1], size?.[2]].map((said) =>
    reading.amounts.find((each) => each.text.replaceAll(" ", "_") === said),
  );
  if (width && depth) {
    const unit = amountOf(reading, "length")?.unit ?? (width.value < 100 ? "cm" : "mm");
    return {
      tray_width_mm: inBase(width.value, width.unit || unit),
      tray_depth_mm: inBase(depth.value, depth.unit || unit),
    };
  }
  const number =
    counted(reading, "shells") ??
    reading.amounts.find(
      (each) =>
        each.dim === "number" &&
        each.unit === "" &&
        !each.fraction &&
        (!each.of || each.of.count === "trays") &&
        // "tray 1 goes in": which one, and not how many shells
        !/\btray (?:no |number )?$/.test(reading.text.slice(0, each.at[0])) &&
        !/^(?:a|one)$/.test(each.text),
    )?.value;
  return number === undefined ? {} : { shells_a_tray: number };
}

/** "6 rows of 5 circles", "6 by 5 rings": all of them. */
function inRows({ amounts, text }: Reading): number | undefined {
  const plain = amounts.filter(({ dim, unit, fraction }) => dim === "number" && unit === "" && !fraction);
  const [first, second, ...others] = plain;
  if (!first || !second || others.length > 0 || amounts.length > 2) return undefined;
  const [between, behind] = [text.slice(first.at[1], second.at[0]), text.slice(second.at[1])];
  const isRows = /^ (?:rows|lines|columns) (?:of|with|by) $/.test(between);
  const isGrid =
    /^ ?(?:by|x|times) ?$/.test(between) && /^ (?:circles|rings|rounds|outlines|spots|shells)\b/.test(behind);
  return isRows || isGrid ? first.value * second.value : undefined;
}

const setsShells =
  /^(?:(?:please|pls|ok|and|so|now) )*(?:(?:set|put|change|switch|reset) )?(?:(?:the|my|our) )?(?:shells?|\S*<count=(?:shells|macarons)>|macarons?|size|diameter)(?: (?:size|diameter))? (?:back )?to \S*<number>/;

/** "i always pipe mine 4 cm". */
function readSize(reading: Reading): Draft {
  const length = amountOf(reading, "length");
  // "my mat has 24 circles, 35 mm": the circles' size, where the mat's own would be two lengths
  const ofCircles =
    /circles?|rounds?|<count=shells>/.test(reading.mask) && counted(reading, "shells") !== undefined;
  if (length && (!onTray(reading) || ofCircles || /use=piping|(?:^| )pip(?:e|ing) /.test(reading.mask)))
    return { diameter_mm: inBase(length.value, length.unit) };
  // "set shells back to 38": of shells so many are millimeters
  const [bare, ...others] = reading.amounts.filter(({ dim, unit }) => dim === "number" && unit === "");
  return bare && others.length === 0 && setsShells.test(reading.mask) && bare.value >= 15 && bare.value <= 90
    ? { diameter_mm: bare.value }
    : {};
}

/** "15 % spare shells", "no spares". */
function readShares(reading: Reading): Draft {
  if (!/spare|spares|extra|extras/.test(reading.mask)) return {};
  const share = amountOf(reading, "percent");
  return share ? { spare_percent: share.value } : sparesSaid(reading);
}

const stepKeys: [
  RegExp,
  "bake_min" | "rest_min" | "cool_min" | "weigh_min" | "macaronage_min" | "pipe_min" | "box_min",
][] = [
  [/step=bake/, "bake_min"],
  [/step=rest/, "rest_min"],
  [/step=cool/, "cool_min"],
  [/macaronage|base=meringue/, "macaronage_min"],
  [/use=piping/, "pipe_min"],
  [/weigh|sift/, "weigh_min"],
  [/box/, "box_min"],
];

/** "i always rest mine 45 min", "i mature them 2 days", "no rest". */
function readTimes(reading: Reading): Draft {
  const time = amountOf(reading, "time");
  if (!time)
    return /(?:^| )(?:no|without|dont) (?:\S+ )?\S*<step=rest>/.test(reading.mask) ? { rest_min: 0 } : {};
  const minutes = inBase(time.value, time.unit);
  if (/step=mature/.test(reading.mask)) return { mature_h: minutes / 60 };
  if (
    /(?:^| )(?:fill|filling|\S*<base=filling>)/.test(reading.mask) &&
    /macaron|each|apiece/.test(reading.mask)
  )
    return { fill_s: minutes * 60 };
  const step = stepKeys.find(([pattern]) => pattern.test(reading.mask));
  return step ? { [step[1]]: minutes } : {};
}

function cupOf(reading: Reading): Draft {
  const volume = amountOf(reading, "volume");
  const bare = amountOf(reading, "number");
  const ml = volume ? inBase(volume.value, volume.unit) : bare?.value;
  return ml === undefined ? {} : { do: "set", cup_ml: ml, metric_cup: undefined };
}

/** The scale's step, the cup, the unit that weights are shown in. */
function readUnits(reading: Reading): Draft {
  const { mask } = reading;
  const weight = amountOf(reading, "weight");
  if (/(?:^| )scales?(?: |$)/.test(mask)) {
    // "my scale only shows whole grams, 1.2 g vanilla?": what is to be weighed is no step
    if (/(?:whole|full|entire|round) \S*<unit=g>/.test(mask)) return { scale_g: 1 };
    return weight ? { scale_g: inBase(weight.value, weight.unit) } : {};
  }
  const volume = reading.amounts.find((each) => each.dim === "volume" && each.unit !== "cup");
  if (volume && /cups?(?:_| |$|<)/.test(mask)) return { cup_ml: inBase(volume.value, volume.unit) };
  const unit = reading.things.find((each) => each.unit === "g" || each.unit === "oz")?.unit as
    | "g"
    | "oz"
    | undefined;
  return unit && !/currency/.test(mask) ? { weight_unit: unit } : {};
}
