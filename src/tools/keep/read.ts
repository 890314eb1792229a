/** Reads a question about keeping: what it is about, the days and times in it, how warm it was. */
import type { Memory, Reading } from "../contract/index.ts";
import { wordsOf } from "../lib/pieces.ts";
import { firstOf, type Way } from "../lib/ways.ts";
import { type About, aboutSaid, isEgg } from "./about-said.ts";
import { activitySaid, fillingSaid } from "./activity-said.ts";
import { coldOf, heatedTo } from "./cold-said.ts";
import { outWords, readDays } from "./days-said.ts";
import type { Draft } from "./draft.ts";
import { airSaid, heatsThem, onlyHeats } from "./heating-said.ts";
import type { KeepInputs } from "./keep.ts";
import { leftOf } from "./limit.ts";
import { limitAsked } from "./limit-source.ts";
import { otherOnes, withSpells } from "./spells.ts";
import { onTop, timesSaid } from "./times-said.ts";
import { warmthSaid } from "./warmth-said.ts";

/** @param memory a slot that was asked for takes the day that was said, whatever stands around it */
export function readKeep(reading: Reading, memory: Memory): Draft {
  const before = memory.last?.tool === "keep" ? (memory.last.inputs as Draft) : undefined;
  const ofLimit = limitAsked(reading);
  if (ofLimit) return ofLimit;
  if (onlyHeats(reading, before)) return { about: "outside", reheat: true };
  return withSpells(
    stillSpoiled(reading, memory) ? { about: "outside" } : readAlone(reading, memory),
    reading,
    memory,
  );
}

/** The sentence with no word of how long they were out before. */
function readAlone(reading: Reading, memory: Memory): Draft {
  const words = wordsOf(reading);
  const before = memory.last?.tool === "keep" ? (memory.last.inputs.about as About | undefined) : undefined;
  const said = firstOf(aboutWays, { reading, words, before });
  // "and rebaking them", of what stood out: that is still what is spoken of
  const about = said ?? (before === "outside" && heatsThem(reading) ? before : undefined);
  const mix = reading.things.find(({ base }) => base && base !== "filling" && base !== "batter")?.base;
  const filled = reading.things.some((each) => each.count === "macarons") || /\bfill?ed\b/.test(words);
  const days = daysOf(reading, memory);
  const aw = activitySaid(reading);
  return {
    ...(about ? { about } : {}),
    ...(mix && about !== "eggs" && !filled ? { what: mix } : {}),
    ...(about === "outside" && !mix && !filled && isEgg(reading) ? { what: "raw whites" } : {}),
    ...(reading.things.some((each) => each.ingredient === "egg yolk") ? { yolks: true } : {}),
    ...(dairy.test(words) ? { dairy: true } : {}),
    ...days,
    ...(about === "outside" && days.made && !days.on && outSinceMade.test(words)
      ? { out_since_made: true }
      : {}),
    ...timesSaid(reading, about ?? before),
    ...onTop(reading, memory),
    ...(about === "eggs" || about === "cold"
      ? warmthSaid(reading)
      : { ...airSaid(reading), ...reheats(reading) }),
    ...(about === "eggs" || memory.slot === "degrees" ? heatedTo(reading, memory) : {}),
    ...coldOf(reading, memory),
    ...(aw === undefined ? {} : { aw }),
    ...fillingSaid(reading),
    ...(asksStill(about, words) ? { still: true } : {}),
    ...(about === "freezer" && !days.made && howLong.test(words) ? { how_long: true } : {}),
  };
}

const howLong = /\bhow (?:long|many (?:days|weeks|months))\b/;

const reheats = (reading: Reading): Draft => (heatsThem(reading) ? { reheat: true } : {});

/** Fillings that spoil sooner than a ganache. */
const dairy =
  /\b(?:mascarpone|curd|cream cheese|fresh cream|whipped cream|pastry cream|custard|creme patissiere|ricotta|quark)\b/;

/** "made on monday, kept on the counter": out for as long as they exist. */
const outSinceMade =
  /\b(?:kept|been|stood|standing|sat|sitting|left|stored|staying)\b(?!.*\b(?:fridge|refrigerator|refrigerated|freezer)\b).*\b(?:counter|table|out|outside|room temp\w*|worktop|unrefrigerated|cupboard|pantry|shelf)\b/;

/** What it is about as the talk goes on, or by its own words. */
const aboutWays: readonly Way<{ reading: Reading; words: string; before: About | undefined }, About>[] = [
  // "and 5 days old", of whites
  ({ reading, before }) => (before === "whites" && otherAge.test(reading.mask) ? "whites" : undefined),
  // "can i freeze them?" "how long?": there, and not in the fridge; "how long in there", behind how cold it has to be
  ({ reading, before }) =>
    bareHowLong.test(reading.mask) ? (before === "cold" ? "fridge" : before) : undefined,
  // "to 55 c", of whites that are heated
  ({ reading, words, before }) =>
    before === "eggs" &&
    (reading.amounts.some((each) => each.dim === "temperature") || bareHeat.test(reading.mask)) &&
    !outWords.test(words)
      ? "eggs"
      : undefined,
  ({ reading }) => aboutSaid(reading),
];

const otherAge =
  /^(?:(?:and|what about|or|so) )*\S*<(?:time|when)>(?: old)?(?: (?:ones|whites|\S*<ingredient=whites>))?(?: \?)?$|^(?:and |or )?\S*_old\S*(?: \?)?$/;
const bareHowLong =
  /^(?:(?:and|so|ok|yes|for) )*(?:how (?:long|many (?:days|weeks|months))|(?:until|till) when)(?: (?:do|they|then|for|is that|can they|do they|will they|keep|stay|last|be|there|in there|like that))*(?: \?)?$/;
/** "and 60", of whites whose heat was spoken of. */
const bareHeat =
  /^(?:(?:and|so|or|if|what if|what about|is|ok|only|just|then|at|to|its|say|no) )*\S*<number>(?: (?:ok|okay|enough|then|instead|too))*(?: \?)?$/;

/** The days said; "and the use by?", behind a label's dates, is of the same day. */
function daysOf(reading: Reading, { last, ...memory }: Memory): Draft {
  const said = readDays(reading, { last, ...memory });
  const labelled = last?.tool === "label" ? (last.inputs.made as KeepInputs["made"]) : undefined;
  return labelled && Object.keys(said).length === 0 ? { made: labelled } : said;
}

/** Whether they are still good, not how long they keep. */
const asksStill = (about: About | undefined, words: string): boolean =>
  about === "freezer"
    ? /\bstill\b/.test(words)
    : about === "fridge" &&
      /\b(?:still|good|ok|okay|fine|safe|edible|alright|eat|serve|sell|toss|bin|chuck|throw|off)\b/.test(
        words,
      ) &&
      !/\b(?:how (?:long|many days)|until|till|last day|use by|when)\b/.test(words);

/** "can i freeze them", of those that were out too long: neither fridge nor freezer makes them good again. */
function stillSpoiled(reading: Reading, { follows, last }: Memory): boolean {
  const before = follows && last?.tool === "keep" ? (last.inputs as Draft) : undefined;
  if (before?.about !== "outside" || before.out_asked) return false;
  const words = wordsOf(reading);
  return (
    (before.overnight === true || leftOf(before, before.out_min ?? 0) < 0) &&
    !reading.amounts.some(({ dim }) => dim === "time" || (dim === "temperature" && !heatsThem(reading))) &&
    !otherOnes.test(reading.text) &&
    yesOrNo.test(words) &&
    !/\b(?:how long|how many|new|next)\b|\bunfilled|\bnot filled/.test(words)
  );
}

const yesOrNo =
  /^(?:(?:and|so|but|ok|then|even) )*(?:(?:if|what if) )?(?:can|could|may|should|shall|is|are|would|will|do|i (?:put|freeze|sell|eat|heat|reheat|warm|bake|cook)) .*\b(?:them|they|it|these|those|he|she|still|freeze|sell|eat)\b/;
