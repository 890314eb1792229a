/** So much of the flavor that was spoken of: what went into the bowl, and what is left of it. */
import type { Memory, Reading } from "../contract/index.ts";
import { says, weighed } from "../lib/find.ts";
import { weightsSaid } from "./dose-turn.ts";
import { bowlOf, type Draft, doseBefore, flavorOf } from "./draft.ts";
import { isFlavor } from "./flavor-said.ts";
import { iPut, tellsPut } from "./told-put.ts";

const intoIt = new RegExp(`${iPut.source} (?:in|into|to) (?:this|that|the|my) \\S*<[^>]*base=`);

/** "i put 8 g gel", behind the dose for a bowl: into that bowl. */
export const putInBefore = (reading: Reading, before: Draft | undefined): boolean =>
  before?.base_g !== undefined &&
  !reading.things.some((each) => each.base) &&
  weighed(reading).length === 1 &&
  tellsPut(reading);

/** "i put already 8 g in this ganache, is too much?": of the flavor that was spoken of, into the bowl that was. */
export function putIntoBowl(reading: Reading, memory: Memory): Draft | undefined {
  const before = doseBefore(memory);
  if (before?.base_g === undefined || !says(reading, intoIt)) return undefined;
  const [only, ...others] = weightsSaid(reading);
  if (!only || others.length > 0 || isFlavor(only.thing)) return undefined;
  return { ...flavorOf(before), ...bowlOf(before), flavor_g: only.grams, want: "check" };
}

const container =
  "(?:jars?|bottles?|tubs?|tubes?|pots?|pouch|packets?|packs?|bags?|tins?|vials?|phials?|sachets?|box|container)";
/** "i have 8 g of it, how much of that buttercream can i do". */
const haveOfIt =
  /(?:have|got|ive|left|theres|there is|only) (?:only |just |about )?\S*<weight> (?:left )?of (?:it|that)(?: left)? .*how (?:much|many) (?:of )?(?:the |that |my )?\S*<[^>]*base=(?:buttercream|ganache|filling|batter|[^>]*filling)/;
/** So much is there of it: "just 30 g in the jar", "the jar only holds 30 g", "30 g left". */
const thereIs = new RegExp(
  `<weight> (?:left )?of (?:it|that)(?: |$)|<weight> (?:(?:left|still|of it) )*(?:in|inside) (?:the|my|this|that) (?:\\S+ )?${container}|${container}(?:<\\S*)? (?:(?:only|just|still|about|has|holds|had|contains|got|is|was|down|to|i) )+\\S*<weight>|(?:only|just) (?:(?:have|got|had|a|about) )*\\S*<weight>|<weight> (?:left|remaining)(?: |$)`,
);
/** Of it, or in what holds it. Without such a word so much of a bowl may be left of that. */
const ofFlavor = new RegExp(`of (?:it|that)(?: |$)|${container}`);
const leastOfBowl = 1 / 4;
const verb = "(?:do|flavor|flavou?r(?:<\\S*)?|cover|dose|season|stretch to|good for|enough for|reach|see to)";
/** "how much of that buttercream can i do", "how much buttercream does that flavor", "what does that do". */
const goesHowFar = new RegExp(
  `how (?:much|many) (?:of )?(?:the |that |my )?\\S*<[^>]*base=(?:buttercream|ganache|batter|[^>]*filling)[^>]*>(?: (?:can|could|will|would|does|do|is|might) (?:i|it|that|this|you|we|they)(?: be)? ${verb}|(?: is)? (?:it|that|this)(?: is)? ${verb})(?: |$)|how (?:much|many) (?:of )?(?:the |that |my )?\\S*<[^>]*base=[^>]*>(?: (?:then|for it|for that))?(?: \\?)?$|(?:^| )what (?:does|will|would|can|could) (?:it|that|this|they) ${verb}(?: \\?)?$`,
);

/** "theres just 30 g in the jar, how much buttercream does that flavour", behind its dose. */
export function enoughFor(reading: Reading, memory: Memory): Draft | undefined {
  const before = doseBefore(memory);
  if (!before?.dose) return undefined;
  const asks = says(reading, haveOfIt) || (says(reading, thereIs) && says(reading, goesHowFar));
  if (!asks) return undefined;
  const [only, ...others] = weighed(reading);
  if (!only || only.thing || others.length > 0) return undefined;
  // what is in there weighs more than a bowl would: it may be the bowl
  if (before.base_g !== undefined && only.grams >= before.base_g) return undefined;
  const mayBeBowl = only.grams >= (before.base_g ?? 0) * leastOfBowl && !says(reading, ofFlavor);
  if (before.base_g !== undefined && mayBeBowl) return undefined;
  const base = reading.things.find((each) => each.base)?.base;
  return {
    ...flavorOf(before),
    base: base === "filling" ? before.base : (base ?? before.base),
    flavor_g: only.grams,
    asks_base: true,
    want: "base",
  };
}
