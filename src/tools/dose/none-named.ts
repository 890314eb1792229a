/** A dose where no flavor is named: by a word that nobody knows, or of what was spoken of before. */
import { says } from "../lib/find.ts";
import { firstOf, type Way } from "../lib/ways.ts";
import type { DoseTurn } from "./dose-turn.ts";
import { type Draft, flavorOf } from "./draft.ts";
import { justConverted, ofConverted, thoseInBowl } from "./just-converted.ts";
import { readLoose } from "./loose-said.ts";
import { bowlBefore, unknownAsked, unknownWeighed } from "./unknown-said.ts";

type NamelessWay = Way<DoseTurn, Draft>;

/** "how much zibbelmus for 300 g buttercream". */
const byUnknown: NamelessWay = ({ reading, common }) => {
  const unknown = unknownAsked(reading);
  return unknown === undefined ? undefined : { ...common, unknown };
};

/** "how much for 250 ganache", right after a bottle was saved: of that bottle. */
const ofSavedBottle: NamelessWay = ({ reading, memory, weights, common }) => {
  if (memory.last?.tool !== "shelf") return undefined;
  const { does, taste, form } = memory.last.inputs as { does?: string; taste?: string; form?: string };
  return does === "bottle" && taste
    ? { ...common, ...readLoose(reading, memory, weights, common), taste, dose: form ?? "flavor" }
    : undefined;
};

/** "15 g of zibbelmus in it": into the bowl that was spoken of where the sentence has none. */
const weighedUnknown: NamelessWay = ({ reading, memory, common }) => {
  const unknown = unknownWeighed(reading);
  const hasBowl = common.base_g !== undefined || common.base !== undefined;
  return unknown && { ...(hasBowl ? {} : bowlBefore(memory)), ...common, ...unknown };
};

/** "ok the reverse, for 220 g", behind how much the flavor is enough for: a bowl of it. */
const turnedLoose: NamelessWay = ({ before, weights, common, isTurned }) => {
  const [only, ...others] = weights;
  const isBack = before?.flavor_g !== undefined && before.base_g === undefined;
  return isTurned && isBack && only && !only.thing && others.length === 0
    ? { ...common, base_g: only.grams, want: "flavor", fresh: true }
    : undefined;
};

/** "a nut one", where it was asked which paste it is. */
const ofNut: NamelessWay = ({ reading, before, common }) =>
  before?.dose === "paste" && /\bnuts?\b/.test(reading.text) ? { ...common, dose: "nut paste" } : undefined;

/** "how much of it for 12 oz of ganache", behind a bowl with some in it. */
const ofItAnew: NamelessWay = ({ reading, before, common }) =>
  before?.dose &&
  common.base_g !== undefined &&
  says(reading, /how (?:much|many) of (?:it|that|the same|this) (?:for|in|into) /)
    ? { ...common, want: "flavor", fresh: true }
    : undefined;

/** "will 6 g be enough", "is the 6 g good": of the flavor, for a bowl that is to be found. */
const whatItDoes =
  /will|would|can|could|does|do(?: |$)|(?:is|are) (?:the |my |that |those )?\S*<weight> (?:good|enough|right)/;

/** Only a weight, bound to nothing. */
function ofLoose({ reading, memory, before, weights, common, isTurned, asksBase }: DoseTurn): Draft {
  const loose = readLoose(reading, memory, weights, common);
  const { flavor_g } = loose;
  // "and if it went into ganache, how much of that would it do": the way back again
  const isBack = before?.flavor_g !== undefined && before.base_g === undefined && weights.length === 0;
  const { want: _judged, ...others } = common;
  const shared: Draft = isBack && common.want === "check" ? others : common;
  if (before && flavor_g !== undefined) {
    const asksWhat = asksBase && shared.want !== "mend" && says(reading, whatItDoes);
    if (before.base_g !== undefined && (isTurned || asksWhat)) {
      const base = before.base ? { base: before.base } : {};
      return { ...shared, ...flavorOf(before), flavor_g, asks_base: true, ...base };
    }
    // "how much buttercream would a 6 g sachet do", behind its dose: of the same flavor
    if (asksBase && before.dose !== undefined) return { ...shared, ...loose, ...flavorOf(before) };
  }
  return {
    ...shared,
    ...loose,
    ...justConverted(reading, memory),
    ...thoseInBowl(reading, memory),
    ...ofConverted(reading, memory),
  };
}

export const noneNamed = (turn: DoseTurn): Draft =>
  firstOf([byUnknown, ofSavedBottle, weighedUnknown, turnedLoose, ofNut, ofItAnew], turn) ?? ofLoose(turn);
