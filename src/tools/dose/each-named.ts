/** A dose for each flavor that the sentence names. */
import { tastes } from "../../../data/words/flavors.ts";
import type { Memory, Reading, Thing } from "../contract/index.ts";
import { says } from "../lib/find.ts";
import { anotherThan, asksAnew } from "./anew.ts";
import type { DoseTurn } from "./dose-turn.ts";
import { type Draft, doseBefore } from "./draft.ts";
import { flavorBefore, inFormBefore, replaced } from "./flavor-before.ts";
import { hueOf, nameOf, sameAgain } from "./flavor-said.ts";
import { readFlavorWeight } from "./flavor-weight.ts";
import { justConverted } from "./just-converted.ts";
import { readLoose } from "./loose-said.ts";
import { moreOfNamed } from "./more-said.ts";
import { putInBefore } from "./put-in.ts";

export function eachNamed(turn: DoseTurn): Draft[] {
  const { reading, memory, before, targets, weights, common, asksBase } = turn;
  const converted = justConverted(reading, memory);
  const putIn = putInBefore(reading, before);
  const isAnother = anotherThan(before, reading);
  const anew = asksAnew(reading, before, common);
  const drafts = targets.map((target): Draft => {
    const weight = readFlavorWeight(reading, weights, target);
    const isWeighed = weight.flavor_g !== undefined;
    const isSame = sameAgain(target, memory) || isTheOne(target, before, reading);
    const named =
      flavorBefore(target, memory) ??
      inFormBefore(target, memory, reading) ??
      inFormAsked(target, before, reading) ??
      nameOf(ofTaste(target, memory), reading);
    const isOfBefore = isSame || isOfBowlBefore(target, named, before);
    const more =
      isOfBefore && targets.length === 1 && common.base_g === undefined && weight.flavor_g !== undefined
        ? moreOfNamed(reading, memory.follows ? before : undefined, weight.flavor_g)
        : undefined;
    // "half tsp vanilla in 180 g, too much?": the share that was wished of another taste is none of its
    const otherTaste =
      before?.percent !== undefined &&
      isWeighed &&
      common.base_g !== undefined &&
      named.taste !== undefined &&
      named.taste !== before.taste;
    const otherRow = before?.percent !== undefined && nameOf(target, reading).dose !== before.dose;
    return {
      ...common,
      ...converted,
      // "16 g flavor in 250 g, how much more buttercream": both are weighed, and what is asked for comes on top
      ...(asksBase && isWeighed && !(common.want === "mend" && weights.length > 1)
        ? { asks_base: true, want: "base" }
        : {}),
      ...(isSame ? {} : { ...named, ...hueOf(target, reading) }),
      ...(isSame || targets.length > 1 || !memory.follows ? {} : replaced(before, named)),
      ...((otherRow || otherTaste) && common.percent === undefined ? { by_table: true } : {}),
      ...(before?.end !== undefined && common.end === undefined ? { whole_range: true } : {}),
      ...(isWeighed && (putIn || before?.want === "flavor") ? { want: "check" } : {}),
      ...(isWeighed && putIn ? { base_g: before?.base_g, base: before?.base } : {}),
      ...(anew || isAnother(target) ? { want: "flavor", fresh: true } : {}),
      ...weight,
      ...(targets.length === 1
        ? readLoose(reading, memory, weights, { ...common, ...weight })
        : bowlOfAll(turn)),
      ...more,
    };
  });
  const asks =
    asksBase ||
    before?.base_g !== undefined ||
    targets.length > 1 ||
    says(reading, /<[^>]*base=|how (?:far|many)/);
  return asks ? drafts : drafts.map(asBowl);
}

/** "matcha and salt again but for 200 g": the one weight that is of none of them is the bowl's. */
function bowlOfAll({ reading, weights, common }: DoseTurn): Draft {
  const [only, ...others] = weights;
  if (!only || only.thing || others.length > 0 || common.base_g !== undefined) return {};
  const into =
    /\b(?:for|in|into|to|with|on|of|have|got|theres|is|its|at) (?:just |only |about |the |my |a )*$/;
  const behind = /^ ?(?:,|[?]|$|bowl|batch|this time|instead|then|now|please|for)/;
  const { text } = reading;
  return into.test(text.slice(0, only.amount.at[0])) || behind.test(text.slice(only.amount.at[1]))
    ? { base_g: only.grams }
    : {};
}

/** "2 g more lemon": the flavor that is in the bowl, whether or not its form is said again. */
const isOfBowlBefore = (target: Thing, named: Draft, before: Draft | undefined): boolean =>
  before?.taste !== undefined &&
  target.taste === before.taste &&
  (target.dose === undefined || named.dose === before.dose);

/** "back to the espresso one", "half of it gets lemon": in the form that it had before. */
const isTheOne = (target: Thing, before: Draft | undefined, { text }: Reading): boolean =>
  before?.dose !== undefined &&
  target.taste !== undefined &&
  target.taste === before.taste &&
  !target.dose &&
  ((/\bthe $/.test(text.slice(0, target.at[0])) && /^ (?:one|batch|bowl)\b/.test(text.slice(target.at[1]))) ||
    /\b(?:half|third|quarter|it|that|bowl|batter|lot|mix) (?:gets?|is|will be|becomes?|goes) (?:the )?$/.test(
      text.slice(0, target.at[0]),
    ));

/** The row of the dose table that a powder of a taste is; undefined where it could be several. */
function powderOf(taste: string): string | undefined {
  const row = tastes.find((each) => each.taste === taste);
  if (row?.fruit) return "fruit powder";
  if (row?.usual === "tea powder") return "tea powder";
  return { coffee: "coffee powder", espresso: "coffee powder", mocha: "coffee powder" }[taste];
}

/** "raspberry", where it was asked which powder it is: in that form, and no concentrated flavor. */
function inFormAsked(target: Thing, before: Draft | undefined, reading: Reading): Draft | undefined {
  const { ingredient: _fresh, ...plain } = target;
  const { taste, dose } = plain;
  if (!taste || dose) return undefined;
  const row = tastes.find((each) => each.taste === taste);
  const paste = taste === "vanilla" ? "vanilla paste" : row?.fruit ? "fruit paste" : "nut paste";
  const asked = before?.dose === "powder" ? powderOf(taste) : before?.dose === "paste" ? paste : undefined;
  return asked === undefined ? undefined : nameOf({ ...plain, id: taste, dose: asked }, reading);
}

/** Forms that one taste comes in. */
const forms = ["extract", "oil", "vanilla paste", "nut paste", "zest"];

/** "only got extract, how much of that", behind vanilla paste: the same taste in another form. */
function ofTaste(target: Thing, memory: Memory): Thing {
  const { dose = "" } = target;
  const before = doseBefore(memory);
  const taste = before?.taste;
  // "the same oil", behind spearmint oil: that one, and none to fry in
  const isForm = dose !== "" && dose === before?.dose && target.text === dose;
  if (!taste || target.taste || (target.ingredient && !isForm)) return target;
  // "powder instead", behind raspberry purée: what that taste is as a powder
  const powder = dose === "powder" || dose === "fruit powder" ? powderOf(taste) : undefined;
  if (powder && (dose === "powder" || powder === dose)) return { ...target, id: taste, dose: powder, taste };
  if (!forms.includes(dose)) return target;
  // "and paste", behind vanilla: that of its beans, and of no nut
  if (taste === "vanilla" && dose === "nut paste" && target.text === "paste")
    return { ...target, id: "vanilla bean paste", dose: "vanilla paste", taste };
  return { ...target, taste, ingredient: dose.startsWith(taste) ? dose : `${taste} ${dose}` };
}

/** Nobody stirs in so much flavor: at the 5 % where its range ends, 100 g are for two kilos of buttercream. */
const mostFlavor_g = 100;

/** "how strong should i go with lavender 180g": too much for a flavor, so the bowl is weighed. */
function asBowl({ flavor_g, ...draft }: Draft): Draft {
  if (flavor_g === undefined) return draft;
  const isBowl = flavor_g >= mostFlavor_g && draft.base_g === undefined && draft.want === undefined;
  return { ...draft, ...(isBowl ? { base_g: flavor_g } : { flavor_g }) };
}
