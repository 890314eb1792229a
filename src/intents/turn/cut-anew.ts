/**
 * Where one question was heard and a part of it was left: the places at which it may be two after all. Only tried, and
 * kept where both are answered whole, so a wrong place costs nothing.
 */

import { smallNumbers, tens } from "../../../data/words/numbers.ts";

/** "four hundred and thirty", "two and a half": one number. */
const numberBegun = /\b(?:hundred|thousand)$/i;
const numberEnds = new RegExp(
  `^(?:${[...Object.keys(smallNumbers), ...Object.keys(tens)].join("|")})\\b`,
  "i",
);
const partBehind = /^(?:an? )?(?:half|quarters?|third)\b(?! (?:of|is|are) )/i;
const countBegun = new RegExp(`\\b(?:${Object.keys(smallNumbers).join("|")}|\\d)$`, "i");
const isOneNumber = ([left, right]: [string, string]): boolean =>
  (numberBegun.test(left) && numberEnds.test(right)) || (countBegun.test(left) && partBehind.test(right));

const joint = /\s*(?:[,;.?!:]\s+|\s[-+&]\s|\b(?:and|then|also|so|plus)\b\s*|\sn\s(?=\S))+/gi;
/** Nobody asks two things in more pieces than this. */
const most = 10;

/** The likelier a joint ends a question, the sooner it is tried. */
const strength = (said: string): number =>
  /[.;?!]/.test(said) ? 0 : /also|then|plus/i.test(said) ? 1 : /,.*\band\b|-/i.test(said) ? 2 : 3;

/**
 * "140 g powdered sugar", "egg whites 115 g", "200 g sugar at $2 a kilo": a line of a list, that asks nothing; the first
 * one stands behind what the list is of, "my shells are 105 g whites".
 */
const line =
  /^(?:(?:(?:my|our|the|his|her) )?(?:[a-z'-]+ ){1,4}(?:are|is|takes?|uses?|needs?|ha(?:s|ve)|goes|=) )?(?:\d[\d.,/]* ?(?:g|gr|grams?|kg|oz|ounces?)(?: of)?(?: [a-zé'-]+){1,3}(?: at \S+ an? \S+)?|[a-zé'-]+(?: [a-zé'-]+){0,2} \d[\d.,/]* ?(?:g|gr|grams?|kg|oz|ounces?))$/i;
const asks =
  /\b(?:in|into|to|from|how|what|whats|which|when|why|timer|label|bake|rest|set|start|split|scale|convert|double|make|flavou?r(?:ed|ing)?|filling|batter|buttercream|ganache|bowl|ready|for|it|please|pls|if|with|is|more|too|again|same)\b/i;
const isLine = (piece: string): boolean => line.test(piece) && !asks.test(piece);

/** Both sides of each joint, those that end a sentence first; none within a list. Pure. */
export function cutsAnew(text: string): [string, string][] {
  const joints = [...text.matchAll(joint)].map(({ 0: said, index }) => ({
    said,
    index,
    end: index + said.length,
  }));
  const piece = (at: number) => text.slice(joints[at - 1]?.end ?? 0, joints[at]?.index ?? text.length).trim();
  const lines = joints.length > 1 ? [...joints, undefined].map((_, at) => isLine(piece(at))) : [];
  return joints
    .filter((_, at) => !lines[at] || !lines[at + 1])
    .map(({ said, index, end }) => ({
      rank: strength(said),
      sides: [text.slice(0, index).trim(), text.slice(end).trim()] as [string, string],
    }))
    .filter(({ sides }) => sides.every((side) => /[a-z]{2}|\d/i.test(side)) && !isOneNumber(sides))
    .sort((a, b) => a.rank - b.rank)
    .slice(0, most)
    .map(({ sides }) => sides);
}
