/**
 * Where one question was heard and a part of it was left: the places at which it may be two after all. Only tried, and
 * kept where both are answered whole, so a wrong place costs nothing.
 */

const joint = /\s*(?:[,;.?!:]\s+|\s-\s|\b(?:and|then|also|so|plus)\b\s*)+/gi;
/** Nobody asks two things in more pieces than this. */
const most = 10;

/** The likelier a joint ends a question, the sooner it is tried. */
const strength = (said: string): number =>
  /[.;?!]/.test(said) ? 0 : /also|then|plus/i.test(said) ? 1 : /,.*\band\b|-/i.test(said) ? 2 : 3;

/** Both sides of each joint, those that end a sentence first. Pure. */
export function cutsAnew(text: string): [string, string][] {
  return [...text.matchAll(joint)]
    .map(({ 0: said, index }) => ({
      rank: strength(said),
      sides: [text.slice(0, index).trim(), text.slice(index + said.length).trim()] as [string, string],
    }))
    .filter(({ sides }) => sides.every((side) => /[a-z]{2}|\d/i.test(side)))
    .sort((a, b) => a.rank - b.rank)
    .slice(0, most)
    .map(({ sides }) => sides);
}
