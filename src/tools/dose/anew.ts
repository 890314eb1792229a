/** Behind a bowl with its flavor in: what is asked for now is another thing, of which nothing is in it yet. */
import type { Reading, Thing } from "../contract/index.ts";
import { says, weighed } from "../lib/find.ts";
import type { Draft } from "./draft.ts";
import { isFlavor, nameOf } from "./flavor-said.ts";

/** "and vanilla extract?", behind 14 g of raspberry in a bowl: what was put in was none of it. */
export function anotherThan(before: Draft | undefined, reading: Reading): (target: Thing) => boolean {
  if (before?.flavor_g === undefined) return () => false;
  // "and the flavor too", "and salt?", behind nut paste: beside it, not the same by another name
  const beside =
    /^(?:and|plus|also) |(?:^| )(?:too|also|as well)(?: \?)?$/.test(reading.mask) &&
    !/\b(?:if|was|is|its|were|instead|actually|mean|meant|no|not|same|it|that)\b|<(?:weight|number|volume)/.test(
      reading.mask,
    );
  // "how much salt for the same ganache", behind rum that was put in
  const asked =
    !/<(?:weight|number|volume)|\b(?:is|are|was|did|instead) (?:in|it|that|there)\b/.test(reading.mask) &&
    says(reading, /how (?:much|many)(?: of)?(?: the| my)? (?:\S+ )?\S*<[^>]*(?:dose|taste)=/);
  return (target) => {
    const { taste, dose } = nameOf(target, reading);
    if (before.base_g === undefined) return asked && dose !== before.dose && taste !== before.taste;
    // "4 g plum flavor in 120 g, is that ok", behind a bowl with pear in it: what is weighed is in its own
    if (isWeighed(target, reading)) return false;
    if (isBesideOnly(target, dose, before, reading)) return true;
    if (dose !== before.dose && (asked || (beside && taste === undefined))) return true;
    return taste !== undefined && before.taste !== undefined && taste !== before.taste;
  };
}

/** What nobody calls a flavor by: it goes in beside one, and was never that under another name. */
const besideOnly: ReadonlySet<string> = new Set(["salt", "citric acid"]);
const putsRight = /\b(?:was|were|its|instead|actually|mean|meant|not|no|same)\b/;

/** "salt in that?", "salt for 200 g", behind a bowl with too much raspberry in it: none of it is in yet. */
const isBesideOnly = (target: Thing, dose: string | undefined, before: Draft, reading: Reading): boolean =>
  dose !== undefined &&
  dose !== before.dose &&
  besideOnly.has(dose) &&
  !putsRight.test(reading.text) &&
  !reading.amounts.some(({ of, dim }) => of === target && dim !== "percent");

/** A weight of the flavor and one of the bowl, both said. */
const isWeighed = (target: Thing, reading: Reading): boolean => {
  const said = weighed(reading);
  return said.some(({ thing }) => thing === target) && said.some(({ thing }) => thing?.base !== undefined);
};

/** "and for half of the batter how much gel", behind a bowl with gel in it: what goes into another weight of it. */
export const asksAnew = (reading: Reading, before: Draft | undefined, { base_g }: Draft): boolean =>
  before?.flavor_g !== undefined &&
  base_g !== undefined &&
  weighed(reading).every((each) => !each.thing || !isFlavor(each.thing)) &&
  says(reading, /how (?:much|many)(?: g| grams)?(?: of)?(?: the| my)? \S*<[^>]*(?:dose|taste)=/);
