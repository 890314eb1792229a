/** More than there was: on top of what is in the bowl, or over what was meant. */
import type { Reading } from "../contract/index.ts";
import type { Draft } from "./draft.ts";
import type { LooseWay } from "./loose-turn.ts";

const saysMore =
  /<(?:weight|number)> (?:\S*<unit=g> )?(?:of )?(?:more|extra|additional|on top|further)\b|\b(?:another|extra|additional|further|plus) \S*<(?:weight|number)>|_(?:more|extra|additional)_\S*<weight>|<weight> \S*<[^>]*(?:dose|taste)=\S* (?:more|extra|on top|again)\b/;
const ofAnother = /\b(?:how|buttercream|ganache|plain)\b|<[^>]*base=/;

/** "lemon zest for another 180 g": a bowl of that weight, and no more of what is in the first. */
const forAnother =
  /\bfor (?:(?:about|around|a|an) )*(?:another|further|extra|additional) \S*<(?:weight|number)>|\bfor \S*<(?:weight|number)> more\b/;

/** "dripped in 5 more". */
export const moreOfIt: LooseWay = ({ reading: { mask }, loose, before, found }) => {
  // "i add another 80", of the plain mix: that is in the bowl already
  if (found.added_g !== undefined) return {};
  if (loose === undefined || before?.base_g === undefined || loose <= 0) return undefined;
  if (!saysMore.test(mask) || ofAnother.test(mask) || forAnother.test(mask)) return undefined;
  if (before.flavor_g === undefined) return { more_g: loose, want: "check" };
  // "i can spare 100 g more", where 10 g went in: of the plain mix, to bring it down with
  const isPlain = /\b(?:have|ive|got|spare|left|theres|there is|with|w)\b/.test(mask);
  return isPlain && loose > before.flavor_g
    ? {
        base_g: before.base_g + loose,
        added_g: (before.added_g ?? 0) + loose,
        flavor_g: before.flavor_g,
        want: "check",
      }
    : { flavor_g: before.flavor_g + loose, want: "check" };
};

/** "2 g more lemon", "another 2 g of lemon flavor", behind what went into a bowl of it: on top of that. */
export function moreOfNamed({ mask }: Reading, before: Draft | undefined, grams: number): Draft | undefined {
  if (before?.base_g === undefined || !saysMore.test(mask)) return undefined;
  if (ofAnother.test(mask) || forAnother.test(mask)) return undefined;
  return before.flavor_g === undefined
    ? { flavor_g: undefined, more_g: grams, want: "check" }
    : { flavor_g: before.flavor_g + grams, want: "check" };
}

/** "i added 2 g too much flavor": over what was wanted; how much is in it isn't said. */
export const isOver = ({ mask }: Reading): boolean =>
  /<weight> (?:of )?too (?:much|many)\b(?!.*<weight> \S*<[^>]*dose=)/.test(mask) &&
  /\b(?:added|put|used|poured|tipped|dropped)\b/.test(mask);

/** So much over what was meant: how much is in it in all is asked. */
export const asOver = ({ flavor_g, ...draft }: Draft): Draft => ({
  ...draft,
  more_g: flavor_g,
  want: "check",
});
