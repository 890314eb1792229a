/** "timer for that long, call it cherry": as long as the answer before says. */
import type { Outcome, Reading } from "../../tools/contract/index.ts";
import { inBase } from "../../tools/lib/units.ts";
import type { State } from "./state.ts";

const times: ReadonlySet<string> = new Set(["s", "min", "h", "days"]);

/** The one length of time in an answer, in min; none where it has several, or a range. */
export function lengthIn({ figures = [] }: Outcome): number | undefined {
  const found = figures.filter(({ unit }) => times.has(unit));
  const [only, ...others] = found;
  return only?.value !== undefined && others.length === 0 ? inBase(only.value, only.unit) : undefined;
}

/** What points at a length that was said, the longer before the shorter. */
const pointers = [
  "as long as that",
  "that amount of time",
  "that many minutes",
  "that many mins",
  "that many min",
  "that much time",
  "exactly that long",
  "just that long",
  "that length",
  "that long",
  "exactly that",
  "that time",
];
/** Without one of these nothing is to be timed. */
const orders: ReadonlySet<string> = new Set(
  "timer alarm countdown set start run time ring ping buzz remind call beep".split(" "),
);

/** The sentence with the length in its place; undefined where none is pointed at. */
export function thatLong({ text, amounts, whens }: Reading, { minutes, last }: State): string | undefined {
  if (minutes === undefined || !last || amounts.some(({ dim }) => dim === "time") || whens.length > 0)
    return undefined;
  const words = text.toLowerCase().split(/[^a-z0-9]+/);
  if (words.length > 16 || !words.some((word) => orders.has(word))) return undefined;
  const found = pointers.find((each) => ` ${words.join(" ")} `.includes(` ${each} `));
  const length = `${Math.round(minutes * 100) / 100} min`;
  const lower = text.toLowerCase();
  if (found && lower.includes(found)) {
    const at = lower.indexOf(found);
    return text.slice(0, at) + length + text.slice(at + found.length);
  }
  // "set a timer for that, call it top tray"
  const bare = /\btimer for that(?= ?,| (?:please|pls|then|now|and)\b|$)/.exec(lower);
  return bare
    ? `${text.slice(0, bare.index)}timer for ${length}${text.slice(bare.index + bare[0].length)}`
    : undefined;
}
