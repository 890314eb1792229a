/** Reads a question about keeping: what it is about, the days and times in it, how warm it was. */
import type { Memory, Reading, When } from "../contract/index.ts";
import { celsius, inBase } from "../lib/units.ts";
import { placeless } from "../lib/when-said.ts";
import type { KeepInputs } from "./keep.ts";

type Draft = Partial<KeepInputs>;
type About = NonNullable<KeepInputs["about"]>;

const outWords = /\b(?:out|outside|counter\w*|worktop|table|porch|car|stall|market|sun|room temp\w*|unrefrigerated|overnight|kitchen side|window ?sill|bench|boot|trunk|picnic)\b/;
const iceWords = /\b(?:fr[ei]+z\w*|froze|frozen|frost\w*)\b/;
const stillWords = /\b(?:still|good|ok|okay|fine|safe|edible|alright|eat|serve|sell|toss|bin|chuck|throw|off)\b/;
const warmest_fridge_c = 20;

/** @param memory a slot that was asked for takes the day that was said, whatever stands around it */
export function readKeep(reading: Reading, memory: Memory): Draft {
  const about = aboutWhat(reading);
  const mix = reading.things.find((each) => each.base && each.base !== "filling" && each.base !== "batter")?.base;
  return {
    ...(about ? { about } : {}),
    ...(mix && about !== "eggs" ? { what: mix } : {}),
    ...readDays(reading, memory),
    ...readTimes(reading, about),
    ...readWarmth(reading),
    ...readActivity(reading),
    ...(about === "fridge" && stillWords.test(plainWords(reading)) && !/\b(?:how (?:long|many days)|until|till|last day|use by|when)\b/.test(plainWords(reading)) ? { still: true } : {}),
  };
}

function aboutWhat(reading: Reading): About | undefined {
  const said = plainWords(reading);
  const whites = reading.things.some((each) => ["whites", "egg", "pasteurised whites"].includes(each.ingredient ?? ""));
  const warm = readWarmth(reading).air_c;
  if (readActivity(reading).aw !== undefined) return "activity";
  if (/shelf[ -]?stable/.test(said)) return "shelf stable";
  if (whites && !/fridge|freez|out of the fridge|counter/.test(said)) return "eggs";
  if (/\b(?:raw|uncooked|unheated) (?:egg )?(?:white|egg)|pasteuri[sz]/.test(said)) return "eggs";
  if (/freezer/.test(said) && /how cold|what (?:temp|degree)|which temp|cold enough/.test(said)) return "freezer";
  if (/\b(?:refr[eo]+z\w*|freeze (?:\w+ )?(?:again|twice)|froze\w* again)/.test(said)) return "again";
  if (/how (?:cold|warm)|what (?:temp|heat|degree)|which temp|cold enough/.test(said) || (/fridge|refrigerator/.test(said) && warm !== undefined && warm < warmest_fridge_c)) return "cold";
  if (/\b(?:thaw|defrost)\w*/.test(said) && !/\b(?:thawed|defrosted)\b/.test(said)) return "thaw";
  const bareShells = /\b(?:unfilled|empty|bare|naked|plain|without filling|just the) ?(?:macaron )?(?:shells?|halves)?\b/.test(said) && /shell|unfilled|halves/.test(said);
  if (bareShells || (reading.things.some((each) => each.count === "shells") && !/fill/.test(said) && !reading.things.some((each) => each.count === "macarons"))) return "shells";
  if (/\b(?:out of|outside|without) (?:the |a |my )?(?:fridge|refrigerator|refrigeration)\b|unrefrigerated|not refrigerated/.test(said)) return "outside";
  const out = outWords.test(said.replace(/out of the (?:freezer|oven|box)|find out|work(?:ed)? out|turn(?:ed)? out|came out/g, ""));
  if (out && !/how long .*fridge|in the fridge/.test(said)) return "outside";
  if (iceWords.test(said) && !/\bthaw|defrost|took .*out of the freezer/.test(said)) return "freezer";
  if (warm !== undefined && warm >= warmest_fridge_c) return "outside";
  if (/fridge|refrigerat|keep|last|good|ok|okay|eat|safe|days?|use by|best|sell|off|store|storage|how long|thaw|defrost|when/.test(said)) return "fridge";
  return undefined;
}

/** The words of this clause, tags left out. */
const plainWords = (reading: Reading) => reading.mask.replace(/<[^>\s]*>/g, "").replaceAll("_", " ");

/** Each moment goes to the last deed named before it: made, frozen, thawed; else it is the day asked about. */
function readDays(reading: Reading, memory: Memory): Draft {
  const out: Draft = {};
  const slot = memory.slot === "made" || memory.slot === "frozen" || memory.slot === "thawed" ? memory.slot : undefined;
  const first = reading.whens[0];
  if (slot && first) return { [slot]: placeless(first) };
  let from = clauseStart(reading);
  for (const when of reading.whens) {
    const before = reading.text.slice(from, when.at[0]);
    const deeds = deedsIn(before);
    if (/since\W*$/.test(before) && outWords.test(before) && when.minute !== undefined) out.out_since = placeless(when);
    else if (deeds.length === 0) Object.assign(out, out.made === undefined && madeBehind(reading, when) ? { made: placeless(when) } : isClockTalk(when) ? {} : { on: placeless(when) });
    else for (const deed of deeds) out[deed] ??= placeless(when);
    from = when.at[1];
  }
  const age = ageInFridge(reading);
  if (age !== undefined && out.made === undefined) out.made = { days: -age };
  if (out.made && /\b(?:will|going to|gonna|want to|plan to|if i (?:make|fill)|making|filling)\b/.test(plainWords(reading)) && !/\b(?:made|filled)\b/.test(plainWords(reading))) out.coming = true;
  return out;
}

/** Where this clause begins in the text of the whole turn. */
function clauseStart(reading: Reading): number {
  const first = reading.whens[0]?.at[0] ?? 0;
  const stop = Math.max(...[". ", "? ", "! ", "; "].map((sign) => reading.text.lastIndexOf(sign, first)));
  return Math.max(0, stop);
}

type Deed = "made" | "frozen" | "thawed";
const deedWords: readonly (readonly [Deed, RegExp])[] = [
  ["made", /\b(?:made|make|making|fill?ed|fill|filling|baked|bake|boxed|assembled|sandwiched|did|from)\b/],
  ["frozen", /\b(?:froze|frozen|freeze|(?:in|into) the freezer)\b/],
  ["thawed", /\b(?:thawed|defrosted|thawing|out of the freezer|took them out|taken out|came out)\b/],
];

/** The deeds a moment belongs to: those joined by "and" right before it ("made and froze them on the 1st"), else the last. */
function deedsIn(before: string): Deed[] {
  const lasts = deedWords.flatMap(([deed, words]) => {
    const hits = [...before.matchAll(new RegExp(words.source, "g"))];
    const hit = hits.at(-1);
    return hit ? [{ deed, at: hit.index, end: hit.index + hit[0].length }] : [];
  });
  const last = lasts.sort((a, b) => b.at - a.at)[0];
  if (!last) return [];
  const joined = lasts.filter((each) => each === last || /^(?: (?:them|it|these))? and (?:then )?$/.test(before.slice(each.end, last.at)));
  return joined.map((each) => each.deed);
}

/** "a batch from today", "today's batch", "the box is from the 9th". */
const madeBehind = (reading: Reading, when: When) => /^\W*(?:s )?(?:batch|bake|macarons|macs|ones|box)/.test(reading.text.slice(when.at[1])) || /\bfrom(?: the)?\W*$/.test(reading.text.slice(0, when.at[0]));

/** A clock time without a day says nothing about days. */
const isClockTalk = (when: When) => when.minute !== undefined && when.days === undefined && when.weekday === undefined && when.day === undefined;

/** "been in the fridge 4 days": made that many days ago. */
function ageInFridge(reading: Reading): number | undefined {
  const age = reading.amounts.find((each) => each.dim === "time" && ["d", "week", "month"].includes(each.unit));
  const said = plainWords(reading);
  if (!age || iceWords.test(said) || !/\b(?:been|old|ago|for|after|sitting|in the fridge|since)\b/.test(said) || /how (?:long|many)/.test(said)) return undefined;
  return Math.round(inBase(age.value, age.unit) / 1440);
}

function readTimes(reading: Reading, about: About | undefined): Draft {
  const times = reading.amounts.filter((each) => each.dim === "time");
  const total = times.reduce((sum, each) => sum + inBase(each.value, each.unit), 0);
  if (about === "freezer") return times.length > 0 ? { frozen_days: Math.round(total / 1440) } : {};
  if (about !== "outside") return {};
  if (times.length > 0) return { out_min: total };
  return /\b(?:overnight|all night|all day|last night)\b/.test(reading.text) ? { overnight: true } : {};
}

function readWarmth(reading: Reading): Draft {
  // "8 c" beside a fridge is no cups
  const cups = /fridge|refrigerator/.test(reading.text) ? reading.amounts.find((each) => each.unit === "cup" && !each.of && /\d ?c$/.test(each.text)) : undefined;
  const heat = reading.amounts.find((each) => each.dim === "temperature") ?? cups;
  const words = /\b(?:heat ?wave|boiling|scorching|baking hot|hot (?:day|car|van|sun|outside|out|afternoon|kitchen)|really hot|so hot|in the sun)\b/.test(reading.text);
  if (!heat) return words ? { hot: true } : {};
  const fahrenheit = heat.unit === "°F" || (heat.unit === "°" && heat.value >= 60);
  return { air_c: celsius(heat.value, fahrenheit ? "°F" : "°C"), ...(fahrenheit ? { fahrenheit } : {}) };
}

function readActivity(reading: Reading): Draft {
  if (!/water activity|(?:^| )a ?w(?: |$)/.test(plainWords(reading))) return {};
  const number = reading.amounts.find((each) => each.dim === "number" && each.value > 0 && each.value <= 1);
  return number ? { aw: number.value } : {};
}
