/** Finds running timers by the words that point at them, and names new ones so that no two are alike. */
import { ordinals } from "../../../data/words/numbers.ts";
import type { Timer } from "../contract/index.ts";
import { placeSaid } from "../lib/place.ts";

/** A timer as the clock has it now: what came due has rung, whether or not anybody wrote that down. */
export interface Live extends Timer {
  left_min: number;
  isRung: boolean;
}

/** The name of a timer that was given none. */
export const unnamed = "timer";

/** How long a timer that rang is still spoken of, in ms. */
const remember_ms = 12 * 3_600_000;

/** Timers that run or rang within the last twelve hours, the next to ring first. */
export function liveTimers(timers: readonly Timer[], now_ms: number): Live[] {
  return timers
    .filter(
      (each) => each.state !== "stopped" && (each.due_ms > now_ms || now_ms - each.due_ms < remember_ms),
    )
    .map((each) => ({
      ...each,
      left_min: Math.max(0, (each.due_ms - now_ms) / 60_000),
      isRung: each.state === "rung" || each.due_ms <= now_ms,
    }))
    .sort((a, b) => a.due_ms - b.due_ms);
}

/** "the second tray" is "tray 2", whichever way it was said. */
const inOrder = new RegExp(`\\b(${Object.keys(ordinals).join("|")}) (tray|batch|sheet|box|bowl|mat)\\b`);

const wordsOf = (label: string) =>
  label
    .toLowerCase()
    .replace(inOrder, (_, which: string, what: string) => `${what} ${ordinals[which]}`)
    .split(/[^\p{L}\p{N}]+/u)
    .filter(Boolean);

/** A number, or the letter of a tray. */
const isNumber = /^(?:\d+|[a-z])$/;
/** Words for any of them. */
const generic = new Set(["timer", "number", "no", "one"]);

/**
 * The timers that some words can mean: the very name, else those that have all the words, else those that have the
 * most of them. Small slips in longer words are forgiven, numbers never. Empty where no word fits.
 */
export function matching<T extends Pick<Timer, "label">>(said: string, timers: readonly T[]): T[] {
  const words = wordsOf(said);
  const exact = timers.filter((each) => wordsOf(each.label).join(" ") === words.join(" "));
  if (exact.length > 0) return exact;
  const hit = (each: T) => words.filter((word) => wordsOf(each.label).some((own) => alike(word, own)));
  // "tray 2" never means "timer 2": a number alone is no name where a word was said beside it
  const isNamed = words.some((word) => !isNumber.test(word) && !generic.has(word));
  const hits = (each: T) =>
    isNamed && hit(each).every((word) => isNumber.test(word)) ? 0 : hit(each).length;
  // "tray 2" never means "tray 1": a number or a letter that was said has to be there.
  const numbered = timers.filter((each) =>
    words.every((word) => !isNumber.test(word) || wordsOf(each.label).includes(word)),
  );
  // "the lemon tray one": the word that stands for a timer, not its number
  if (numbered.length === 0 && words.length > 1 && words.at(-1) === "1")
    return matching(
      words.slice(0, -1).join(" "),
      timers.filter((each) => !/\d/.test(each.label)),
    );
  const most = Math.max(0, ...numbered.map(hits));
  return most === 0 ? [] : numbered.filter((each) => hits(each) === most);
}

/**
 * The timers that some words mean, where no name does: "the ten minute one" by its length, "the first one" by when it
 * was set.
 */
export function meant(said: string, timers: readonly Live[], recent?: string): Live[] {
  const found = matching(said, timers);
  // "the second bake", of several bakes
  const [, which] = new RegExp(`^(?:the )?(${Object.keys(ordinals).join("|")}|last) `).exec(said) ?? [];
  if (which && found.length > 1 && !inOrder.test(said)) {
    const one = inRow(found).at(placeSaid(which) ?? found.length);
    return one ? [one] : found;
  }
  if (found.length > 0) return found;
  const [, count, unit] = /^(\d+(?:\.\d+)?) (min|minute|hour|h)s?$/.exec(said) ?? [];
  const length_ms = Number(count) * (unit?.startsWith("h") ? 3_600_000 : 60_000);
  if (count) return timers.filter((each) => Math.abs(each.due_ms - each.set_ms - length_ms) < 1000);
  if (said === "other") {
    if (timers.length === 1) return [...timers];
    const others = timers.filter((each) => each.label !== recent);
    if (others.length === 0) return [];
    return others.length < timers.length ? others : [];
  }
  // "the second tray" is a tray's name, and no place among timers for other things
  if (!onlyPlace.test(said)) return [];
  const one = inRow(timers).at(placeSaid(said) ?? timers.length);
  return one ? [one] : [];
}

const places = `(?:${Object.keys(ordinals).join("|")}|\\d+(?:st|nd|rd|th)|last|former|latter)`;
const onlyPlace = new RegExp(
  `^(?:(?:the|very|one|timer|of|i|set|started|to ring) ?)*${places}(?: (?:one|timer|i|that|set|started|made))*$`,
);

const inRow = (timers: readonly Live[]): Live[] => [...timers].sort((a, b) => a.id - b.id);

/** "the last two", "the first 2", "the other two": by when they were set; none where that isn't sure. */
export function severalSaid(said: string, timers: readonly Live[], recent?: string): Live[] {
  const [, which, digits] = /^(?:the )?(first|last|other) (\d+)$/.exec(said) ?? [];
  const count = Number(digits);
  if (!which || count < 2 || count > timers.length) return [];
  const row = inRow(timers);
  if (which === "first") return row.slice(0, count);
  if (which === "last") return row.slice(-count);
  const others = row.filter((each) => each.label !== recent);
  return others.length === count ? others : [];
}

/** One word for another: the same, a form of it ("resting", "rest"), or one slip in five letters, two in eight. */
function alike(a: string, b: string): boolean {
  if (a === b) return true;
  if (/\d/.test(a + b)) return false;
  const [short, long] = a.length < b.length ? [a, b] : [b, a];
  if (short.length >= 4 && long.startsWith(short) && /^(?:s|es|ed|d|ing|er)$/.test(long.slice(short.length)))
    return true;
  return slips(a, b) <= (short.length >= 8 ? 2 : short.length >= 5 ? 1 : 0);
}

/** Edits between two words, neighbours changing places counted once. */
function slips(a: string, b: string): number {
  if (Math.abs(a.length - b.length) > 2) return 3;
  const rows: number[][] = [Array.from({ length: b.length + 1 }, (_, at) => at)];
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      const best = Math.min(
        (rows[i - 1]?.[j] ?? 9) + 1,
        (row[j - 1] ?? 9) + 1,
        (rows[i - 1]?.[j - 1] ?? 9) + same,
      );
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      row.push(swapped ? Math.min(best, (rows[i - 2]?.[j - 2] ?? 9) + 1) : best);
    }
    rows.push(row);
  }
  return rows[a.length]?.[b.length] ?? 9;
}

/**
 * A name that no live timer has. A second "bake" is "bake 2", for trays in a row are baked under one name; behind a
 * digit the number goes in brackets: "tray 1 (2)".
 */
export function freeName(name: string, taken: readonly Pick<Timer, "label">[]): string {
  const labels = new Set(taken.map((each) => each.label.toLowerCase()));
  if (!labels.has(name.toLowerCase())) return name;
  for (let number = 2; ; number++) {
    const next = /\d\)?$/.test(name) ? `${name} (${number})` : `${name} ${number}`;
    if (!labels.has(next.toLowerCase())) return next;
  }
}

/** "tray 1 blue shells" cut into the timer that its first words name, and the name that the others give. */
export function cutRename<T extends Pick<Timer, "label">>(
  words: string,
  timers: readonly T[],
): { timer: T; to: string } | undefined {
  const all = words.split(" ");
  for (let cut = all.length - 1; cut >= 1; cut--) {
    const head = all.slice(0, cut).join(" ");
    const exact = timers.find((each) => wordsOf(each.label).join(" ") === wordsOf(head).join(" "));
    if (exact) return { timer: exact, to: all.slice(cut).join(" ") };
  }
  for (let cut = all.length - 1; cut >= 1; cut--) {
    const found = matching(all.slice(0, cut).join(" "), timers);
    const isWhole = all.slice(0, cut).every((word) => found[0] && matching(word, [found[0]]).length > 0);
    if (found.length === 1 && found[0] && isWhole) return { timer: found[0], to: all.slice(cut).join(" ") };
  }
  return undefined;
}
