/** "and those 12 in ganache?": the flavor that was weighed before, said once more and no weight of another thing. */
import type { Reading } from "../../tools/contract/index.ts";
import { inBase } from "../../tools/lib/units.ts";
import type { State } from "./state.ts";

const pointing = /(?:^|\b)(?:(?:with|from|for|if) )?(?:those|these|that|this|the(?: same)?|all|my) $/;

const howMuch =
  /^(?:(?:so|and|ok|then|now|but) )*(?:how (?:much|many grams of)|what (?:amount|weight|size) of) (?:of )?(?:the |that |my )?([a-z ]+?) (?:batch )?(?:can|could|will|would|does|do|might|should|is|for) .*\b(?:it|that|those|this|them)\b/;

/** "so how much ganache can i make with that", behind the flavor that there is. */
export function withItsFlavor({ text, amounts, things }: Reading, { last }: State): string | undefined {
  const flavor_g = last?.tool === "dose" ? last.inputs.flavor_g : undefined;
  const base = things.find((each) => each.base);
  if (amounts.length > 0 || typeof flavor_g !== "number" || !base || things.length > 1) return undefined;
  // "how much plain ganache do i add to that" mends the bowl
  if (/\b(?:add|plain|more|extra|fix|save|mend|rescue|stir|dilute|other|else)\b/.test(text)) return undefined;
  return howMuch.exec(text)?.[1] === base.text
    ? `i have ${flavor_g} g of it, how much ${base.text} can i make`
    : undefined;
}

/** The sentence without it, where nothing else is weighed in it; undefined where nothing is said again. */
export function withoutEcho({ text, amounts, things }: Reading, { last }: State): string | undefined {
  const [only, ...others] = amounts;
  const before_g = last?.tool === "dose" ? last.inputs.flavor_g : undefined;
  if (!only || others.length > 0 || typeof before_g !== "number") return undefined;
  if (only.of && !only.of.base) return undefined;
  // a mix is named, and no flavor
  if (!things.some((each) => each.base) || things.some((each) => each.dose ?? each.taste)) return undefined;
  const isGrams = only.dim === "weight" || (only.dim === "number" && only.unit === "" && !only.fraction);
  const grams = only.dim === "weight" ? inBase(only.value, only.unit) : only.value;
  if (!isGrams || Math.abs(grams - before_g) > 1e-9) return undefined;
  const [from, to] = only.at;
  const lead = pointing.exec(text.slice(0, from))?.[0];
  const behind = text.slice(to);
  return lead !== undefined &&
    /^ (?:(?:g|grams) )?(?:of (?:it|that) )?(?:in|into|for|with|of|to) /.test(behind)
    ? `${text.slice(0, from - lead.length)}${behind.replace(/^ (?:(?:g|grams) )?(?:of (?:it|that) )?(?:with|to|of) /, " in ")}`.replace(
        / +/g,
        " ",
      )
    : undefined;
}

const inBowl = /(?:^|\b)(?:in|into|to|for|of) (?:the|my|that|those|this|all) $/;

/** "15 g of it is in the 500 g already", behind a dose into 500 g: the bowl by its weight, which is known. */
export function withoutBowl({ text, amounts, things }: Reading, { last }: State): string | undefined {
  const [flavor, bowl, ...others] = amounts;
  const base_g = last?.tool === "dose" ? last.inputs.base_g : undefined;
  if (!flavor || !bowl || others.length > 0 || typeof base_g !== "number") return undefined;
  if (flavor.dim !== "weight" || bowl.dim !== "weight" || bowl.of?.base) return undefined;
  if (Math.abs(inBase(bowl.value, bowl.unit) - base_g) > 1e-9 || things.some((each) => each.base))
    return undefined;
  const [from, to] = bowl.at;
  const lead = inBowl.exec(text.slice(0, from))?.[0];
  const isBowl =
    lead !== undefined && /^(?: ?[,.?!]| (?:already|now|bowl|and|is|so)\b|$)/.test(text.slice(to));
  return isBowl
    ? `${text.slice(0, from - lead.length)}in it${text.slice(to).replace(/^ bowl\b/, "")}`
    : undefined;
}
