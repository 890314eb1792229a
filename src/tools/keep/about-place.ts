/** Where they are kept, by the words for places: shells alone, out of the fridge, in the freezer, in the fridge. */
import type { Amount, Reading } from "../contract/index.ts";
import { inBase } from "../lib/units.ts";
import type { Said, Subject } from "./about-said.ts";
import { iceWords, outWords, stayed } from "./days-said.ts";

/** From here on what was said is the warmth of a room: no fridge is as warm. From memory. */
export const room_c = 20;

/** Shells that rest, or that are to be filled yet: no filling is in them that could spoil. */
const isUnbaked =
  /\bpiped\b|\b(?:before|until) (?:(?:they|it|i|we) )?(?:bak\w+|going in|go in|the oven)|\bto dry\b|\bstick(?:y|s|ing)?\b(?: \w+){0,2} (?:finger|touch)|\b(?:tacky|still sticky)\b|\b(?:ok|okay|fine|safe|good|going|able) to fill\b|\bstill bake\b/;

/** Shells without a filling: said so, or shells alone with no word of macarons. */
function isBareShells({ reading, words: said }: Said): boolean {
  // "filled macarons, not the empty shells"
  const words = said.replace(
    /\b(?:not|no|never) (?:the |my |any )?(?:empty |bare |plain |unfilled |naked )*shells?\b/g,
    "",
  );
  const unfilled =
    /\b(?:not|werent|wasnt|arent|isnt|never|havent) (?:been |yet )?filled\b|\b(?:unfilled|empty|bare|naked|plain|without filling|just the) ?(?:macaron )?(?:shells?|halves)?\b/;
  if (unfilled.test(words) && /shell|unfilled|halves|filled/.test(words)) return true;
  if (isUnbaked.test(words)) return true;
  const counts = reading.things.map((each) => each.count);
  return (
    counts.includes("shells") &&
    !/\bfill(?:ed|ings?)\b|assembl|sandwich|together/.test(words) &&
    !counts.includes("macarons")
  );
}

/** Out in the open, and not "out of the oven" or "sold out". */
function isOut({ reading, words }: Said): boolean {
  const otherOuts =
    /(?:took|taken|take|got) (?:(?:them|it|some|these) )?out (?:on|again|yesterday|today|this)\b|out of the (?:freezer|oven|box)|find out|(?:hand|give|dish|sell)(?:ing|ed)? (?:\w+ )?out|work(?:ed)? out|turn(?:ed)? out|came out/g;
  if (isOutSoLong(reading, otherOuts)) return true;
  if (!outWords.test(words.replace(otherOuts, ""))) return false;
  // "1 hour out, 1 hour in the fridge, 30 min out again"
  const isSpell = /\b(?:hours?|hrs?|h|min\w*) out\b/.test(words);
  return isSpell || !/how long .*fridge|in the fridge/.test(words.replace(intoFridge, ""));
}

const isHours = ({ dim, value, unit }: Amount): boolean => dim === "time" && inBase(value, unit) < 24 * 60;
const cut = /[,.;:?!]| (?:and|then|but|before|so|will|can|could|how|do|is|are|its) /;

/** "if they were out 3 hours how many days in the fridge": so long in the open, wherever they went afterwards. */
const isOutSoLong = ({ text, amounts }: Reading, otherOuts: RegExp): boolean =>
  amounts.filter(isHours).some(({ at }) => {
    const before = text.slice(0, at[0]).split(cut).at(-1) ?? "";
    const behind = text.slice(at[1]).split(cut)[0] ?? "";
    const around = `${before} # ${behind}`.replace(otherOuts, "");
    return (
      (outWords.test(around) || stayed.test(around)) && !/fridge|refrigerat|freez|thaw|rest/.test(around)
    );
  });

/** "3 hours out, can they go back in the fridge": where they are to go, and not where they were. */
const intoFridge =
  /\b(?:back|return\w*|put|go|goes|going|pop|stick|place|move|get|take)\b(?: \w+){0,3}? (?:in|into|to) (?:the |my |our )?(?:fridge|refrigerator)\b/g;

/** "they have sat for 90 minutes": nowhere cold, as nobody says where. */
const hasSat = ({ reading, words }: Said): boolean =>
  reading.amounts.some((each) => each.dim === "time" && inBase(each.value, each.unit) < 24 * 60) &&
  /\b(?:sat|sitting|stood|standing|been left|left|forgot\w*|lying)\b/.test(words) &&
  !/fridge|refrigerat|freez|chill|cool|cold|ice/.test(words);

/** "3 hours in the office", "in my bag for 2 h", "on the terrace since 2:30": no fridge is there. */
const isTimed = ({ reading, words }: Said): boolean =>
  stayed.test(words) &&
  (reading.amounts.some((each) => each.dim === "time" && inBase(each.value, each.unit) < 24 * 60) ||
    (/\bsince\b/.test(words) && reading.whens.some(({ minute }) => minute !== undefined))) &&
  !/fridge|refrigerat|freez|chill/.test(words);

export const ofPlace: readonly Subject[] = [
  ["shells", isBareShells],
  [
    "outside",
    ({ words }) =>
      /\b(?:out of|outside|without) (?:the |a |my )?(?:fridge|refrigerator|refrigeration)\b|unrefrigerated|not refrigerated/.test(
        words,
      ),
  ],
  ["outside", isOut],
  [
    "freezer",
    ({ words, dated }) =>
      iceWords.test(words) && !dated && !/\bthaw|defrost|took .*out of the freezer/.test(words),
  ],
  ["outside", ({ warm_c }) => warm_c !== undefined && warm_c >= room_c],
  ["outside", hasSat],
  ["outside", isTimed],
  [
    "fridge",
    ({ words }) =>
      /fridge|refrigerat|keep|last|good|ok|okay|eat|safe|days?|use by|best|sell|off|store|storage|how long|thaw|defrost|when/.test(
        words,
      ),
  ],
];
