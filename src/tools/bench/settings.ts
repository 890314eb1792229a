/** Every setting of the bench, a row each: what it is called, what shows it, what the book has instead. */
import type { Bench, Figure } from "../contract/index.ts";
import { counted, plain } from "../lib/show.ts";

export type SettingKey = Exclude<keyof Bench, "use_book" | "forgotten">;

export interface Setting {
  key: SettingKey;
  /** As figures and lists name it. */
  name: string;
  /** Words in the masked sentence that mean it, when it is asked for or reset. */
  words: RegExp;
  /** The unit of its figure; none for a choice of words. */
  unit?: string;
  /** The value in a sentence. */
  say(value: number): string;
  /** What holds without it. */
  book: string;
}

const clock = (minutes: number) =>
  `${String(Math.floor(minutes / 60) % 24).padStart(2, "0")}:${String(minutes % 60).padStart(2, "0")}`;
const min = (what: string) => (value: number) => (value === 0 ? `no ${what}` : `${what} ${plain(value)} min`);
const tag = (facet: string) => new RegExp(`<(?:[^>\\s]*,)?${facet}(?:[,>])`);

export const settings: readonly Setting[] = [
  {
    key: "shells_a_tray",
    name: "shells a tray",
    words: tag("count=trays"),
    unit: "shells",
    say: (v) => `${counted(v, "shell")} a tray`,
    book: "30 shells of 38 mm to a tray",
  },
  {
    key: "tray_width_mm",
    name: "tray width",
    words: tag("count=trays"),
    unit: "mm",
    say: (v) => `a tray ${plain(v)} mm wide`,
    book: "a tray of 400 × 300 mm",
  },
  {
    key: "tray_depth_mm",
    name: "tray depth",
    words: tag("count=trays"),
    unit: "mm",
    say: (v) => `a tray ${plain(v)} mm deep`,
    book: "a tray of 400 × 300 mm",
  },
  {
    key: "trays_at_once",
    name: "trays at once",
    words: /at once|at a time|ovens?(?: |$)/,
    unit: "trays",
    say: (v) => (v === 1 ? "one tray at once" : `${plain(v)} trays at once`),
    book: "one tray at a time",
  },
  {
    key: "diameter_mm",
    name: "shell diameter",
    words: /size|diameter|how (?:big|wide)|<count=(?:shells|macarons)>/,
    unit: "mm",
    say: (v) => `shells of ${plain(v)} mm`,
    book: "shells of 38 mm",
  },
  {
    key: "spare_percent",
    name: "spare shells",
    words: /spares?|extras?/,
    unit: "%",
    say: (v) => (v === 0 ? "no spare shells" : `${plain(v)} % spare shells`),
    book: "10 % spare shells",
  },
  {
    key: "fan_oven",
    name: "fan oven",
    words: /ovens?(?: |$)|fan/,
    say: (v) => (v ? "a fan oven" : "a conventional oven"),
    book: "a conventional oven",
  },
  {
    key: "oven_c",
    name: "oven",
    words: /ovens?(?: |$)|temperature|temp(?: |$)/,
    unit: "°C",
    say: (v) => `oven at ${plain(v)} °C`,
    book: "150 °C for shells",
  },
  {
    key: "oven_offset_c",
    name: "oven runs hot by",
    words: /ovens?(?: |$)|offset/,
    unit: "°C",
    say: (v) => `oven runs ${plain(Math.abs(v))} °C ${v < 0 ? "cold" : "hot"}`,
    book: "an oven that is as hot as it says",
  },
  {
    key: "bake_min",
    name: "bake",
    words: tag("step=bake"),
    unit: "min",
    say: min("bake"),
    book: "bake 15 min",
  },
  {
    key: "rest_min",
    name: "rest",
    words: tag("step=rest"),
    unit: "min",
    say: min("rest"),
    book: "rest 30 min",
  },
  {
    key: "cool_min",
    name: "cool",
    words: tag("step=cool"),
    unit: "min",
    say: min("cool"),
    book: "cool 30 min",
  },
  {
    key: "mature_h",
    name: "mature",
    words: tag("step=mature"),
    unit: "h",
    say: (v) => `mature ${plain(v)} h`,
    book: "mature 24 h",
  },
  {
    key: "weigh_min",
    name: "weigh and sift",
    words: /weigh|sift/,
    unit: "min",
    say: min("weigh and sift"),
    book: "weigh and sift 20 min",
  },
  {
    key: "macaronage_min",
    name: "meringue and macaronage",
    words: /macaronage|<base=meringue>/,
    unit: "min",
    say: min("meringue and macaronage"),
    book: "meringue and macaronage 25 min",
  },
  {
    key: "pipe_min",
    name: "pipe a tray",
    words: tag("use=piping"),
    unit: "min",
    say: min("piping a tray"),
    book: "piping 10 min a tray",
  },
  {
    key: "fill_s",
    name: "fill a macaron",
    words: /fill(?: |ing)/,
    unit: "s",
    say: (v) => `filling ${plain(v)} s a macaron`,
    book: "filling 20 s a macaron",
  },
  {
    key: "box_min",
    name: "box and label",
    words: /box|<count=boxes>/,
    unit: "min",
    say: min("box and label"),
    book: "box and label 20 min",
  },
  {
    key: "warm_min",
    name: "to room temperature",
    words: /room temp/,
    unit: "min",
    say: min("to room temperature"),
    book: "to room temperature 30 min",
  },
  {
    key: "wake_min",
    name: "up at",
    words: /hours|up(?: |$)|wake|morning/,
    unit: "min",
    say: (v) => `up at ${clock(v)}`,
    book: "up at 07:00",
  },
  {
    key: "sleep_min",
    name: "to bed at",
    words: /hours|bed|sleep|night/,
    unit: "min",
    say: (v) => `to bed at ${clock(v)}`,
    book: "to bed at 22:00",
  },
  {
    key: "weight_unit",
    name: "weights in",
    words: /units?(?: |$)|ounces|grams/,
    say: String,
    book: "weights in g",
  },
  {
    key: "scale_g",
    name: "scale steps",
    words: /scales?(?: |$)/,
    unit: "g",
    say: (v) => `a scale in ${plain(v, 3)} g steps`,
    book: "0.1 g below 20 g, whole grams above",
  },
  {
    key: "cup_ml",
    name: "cup",
    words: /cups?(?: |$|<)/,
    unit: "ml",
    say: (v) => `a cup of ${plain(v)} ml`,
    book: "a US cup of 236.59 ml",
  },
  { key: "currency", name: "currency", words: /currency|money/, say: String, book: "US dollars" },
  {
    key: "labor_per_h",
    name: "labor an hour",
    words: /labou?r|wage|my time|hourly/,
    unit: "an hour",
    say: (v) => `labor at ${plain(v)} an hour`,
    book: "no labor counted",
  },
  {
    key: "house_formula",
    name: "house recipe",
    words: /house|<formula=/,
    say: String,
    book: "the book's house formula",
  },
  { key: "market", name: "market", words: /market|labels?|sell/, say: String, book: "labels for the US" },
  {
    key: "paper",
    name: "paper",
    words: /paper|print/,
    say: String,
    book: "A4 paper, US Letter with ounces, dollars or a label for the US",
  },
];

/** One set value in words: "28 shells a tray", "currency EUR". */
export function saySetting(setting: Setting, value: unknown): string {
  if (typeof value === "number") return setting.say(value);
  if (typeof value === "boolean") return setting.say(value ? 1 : 0);
  if (setting.key === "paper") return `${value === "a4" ? "A4" : "US Letter"} paper`;
  return `${setting.name} ${setting.key === "market" ? String(value).toUpperCase() : String(value)}`;
}

/** The figure of a set number. */
export function settingFigure(setting: Setting, value: unknown): Figure[] {
  return typeof value === "number" && setting.unit ? [{ name: setting.name, value, unit: setting.unit }] : [];
}
