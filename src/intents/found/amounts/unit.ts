/** A unit behind a number; a letter that means several things goes by its neighbours. */
import { unitRow } from "../../../tools/lib/units.ts";
import type { Token } from "../../text/tokens.ts";
import { unitIndex } from "../lexicon.ts";
import { text, type UnitRead } from "./parts.ts";

let index: ReturnType<typeof unitIndex> | undefined;
export const unitsAt = (word: string) => {
  index ??= unitIndex();
  return index.get(word);
};

/** A unit at `i`. Exact spellings only; letters that mean several things go by their neighbours. */
export function readUnit(tokens: readonly Token[], i: number, value: number): UnitRead | undefined {
  const token = tokens[i];
  if (!token) return undefined;
  const found = unitsAt(token.text)?.find(({ words }) =>
    words.every((word, at) => text(tokens[i + at]) === word),
  );
  if (!found) return undefined;
  const next = i + found.words.length;
  const unit = found.risky ? settle(tokens, i, next, value) : found.unit;
  if (!unit) return undefined;
  // "3 L eggs": a size
  if (unit === "l" && /^(?:eggs?|whites?|yolks?)$/.test(text(tokens[next]))) return undefined;
  // "2 tbsp. cocoa": the dot of an abbreviation, not the sentence's end
  const dotted =
    ["tsp", "tbsp", "oz", "lb", "in"].includes(unit) &&
    text(tokens[next]) === "." &&
    tokens[next]?.gap === false;
  const goesOn =
    (dotted && tokens[next + 1]?.kind === "word" && !sentenceStarts.has(text(tokens[next + 1]))) ||
    (["g", "kg", "ml"].includes(unit) && isOfNext(tokens, i, next));
  return { unit, dim: unitRow(unit).dim, next: goesOn ? next + 1 : next };
}

/**
 * "its 230 g. buttercream", "and 90 g. cream": the dot of "g." and what was weighed, where nothing before the number
 * could be that ("butter 100 g. cream 50 g") and what stands behind has no number of its own.
 */
function isOfNext(tokens: readonly Token[], i: number, next: number): boolean {
  if (text(tokens[next]) !== "." || tokens[next]?.gap !== false) return false;
  if (text(tokens[next + 1]) === "of") return true;
  const before = tokens[i - 2];
  const opensHere =
    !before ||
    before.kind === "sign" ||
    /^(?:its|is|and|have|with|of|got|plus|to|has|had)$/.test(before.text);
  // "20 g. buttercream came to 450 g", "cream: 50 g": that is weighed behind it
  const then = text(tokens[next + 2]);
  const isWeighedBehind =
    tokens[next + 2]?.kind === "number" ||
    /^(?::|is|was|are|came|comes|come|weighs|weighed|has|had|goes|went)$/.test(then);
  return opensHere && weighedFood.test(text(tokens[next + 1])) && !isWeighedBehind;
}

const weighedFood =
  /^(?:buttercream|ganache|batter|filling|cream|chocolate|choc|dark|milk|white|butter|whites|mascarpone|frosting|icing)$/;

const sentenceStarts = new Set(
  "how what whats which is does can should when so and i ive it that".split(" "),
);

/** Which of its meanings a one-letter unit has, from the number before it and the word behind it. */
function settle(tokens: readonly Token[], i: number, next: number, value: number): string | undefined {
  const [token, then] = [text(tokens[i]), text(tokens[next])];
  const numberBefore = tokens[i - 1]?.kind === "number" || tokens[i]?.gap === false;
  if (!numberBefore) return undefined;
  const converting = ["to", "in", "into"].includes(then);
  if (token === "c") {
    const toHeat = converting && /^(f|fahrenheit|farenheit|°)/.test(text(tokens[next + 1]));
    // "my oven runs 10 c hot": off by so much, and no cups
    const off =
      /^(?:too|hot|hotter|cold|colder|cool|cooler|warm|warmer|high|low|off|over|under)$/.test(then) &&
      /^(?:runs|reads|gets|bakes|about|by|is|roughly|around)$/.test(text(tokens[i - 2]));
    return value <= 12 &&
      !toHeat &&
      !off &&
      !(then === "" && value > 3) &&
      then !== "oven" &&
      then !== "fridge"
      ? "cup"
      : "°C";
  }
  if (token === "f") return "°F";
  if (token === "in") {
    const glued = tokens[i]?.gap === false;
    // "18 x 13 in, that's my tray"
    const ofTwo = /^(?:x|by|×)$/.test(text(tokens[i - 2])) && tokens[i - 3]?.kind === "number";
    // "3/4 in piping tip", and no share of what is in piping bags
    const ofTip =
      /^(?:piping|star|plain|open|icing|pastry)$/.test(then) &&
      /^(?:tips?|nozzles?|tubes?|star)$/.test(text(tokens[next + 1]));
    // "i put another 4 in": into the bowl
    if (!glued && then === "" && text(tokens[i - 2]) === "another") return undefined;
    return glued ||
      ofTwo ||
      ofTip ||
      [
        "to",
        "in",
        "into",
        "wide",
        "across",
        "round",
        "diameter",
        "shells",
        "tip",
        "macarons",
        "macs",
        "circles",
        "nozzle",
        "",
      ].includes(then)
      ? "in"
      : undefined;
  }
  if (token === '"') return "in";
  if (token === "m") return "min";
  if (token === "s") return "s";
  if (token === "d") return "d";
  if (token === "p") return tokens[i]?.gap === false ? "GBP penny" : undefined;
  if (token === "¢") return "USD cent";
  return undefined;
}
