/** "what's the ratio there and what is it good for", behind what a ganache is made of: of that mix, and none of the book's. */
import { opening } from "../../../data/words/openers.ts";
import type { Reading } from "../../tools/contract/index.ts";
import { spaced } from "./spaced.ts";
import type { State, Topic } from "./state.ts";

const it = "(?:it|that|this|the mix|that one|this one|that mix)";
const whatFor = `(?:what|which use|which) (?:(?:is|would|does|s) )?${it} (?:be )?(?:(?:good|right|best|suited|meant) )?(?:for|suit)`;
const tail = "(?: (?:then|now|please|pls|really|actually))*[ ,?.!]*$";
const asked: readonly RegExp[] = [
  new RegExp(
    `^${opening}(?:(?:what|whats|what's|which|is|the|its|tell me|give me|how about) )*ratio(?: (?:there|here|then|now|is (?:it|that|this)|(?:of|in|for) ${it}|of (?:choc\\w*|cream) to (?:choc\\w*|cream)|do i have|have i got|does that make|would that be))*(?:(?: ,)? and (?:${whatFor}|is (?:it|that) (?:good )?for [a-z]+))?${tail}`,
  ),
  new RegExp(`^${opening}(?:${whatFor}|whats ${it} good for)${tail}`),
  new RegExp(
    `^${opening}(?:is|would) ${it} (?:be )?(?:(?:good|more|better|rather|one) )*for (?:pip\\w+|fill\\w+|roll\\w+|pour\\w+|cut\\w+|drip\\w*)(?: or (?:for )?[a-z]+)?${tail}`,
  ),
];

interface Line {
  name: string;
  grams: number;
}

/** The sentence with its two weights; undefined where no mix was taken apart. Pure. */
export function ratioOfMix(
  { text, amounts, whens }: Reading,
  { last }: State,
): { text: string; topic: Topic } | undefined {
  if (last?.tool !== "ganache" || last.inputs.want !== "composition" || amounts.length + whens.length > 0)
    return undefined;
  const { lines = [] } = last.inputs as { lines?: readonly Line[] };
  const [chocolate, ...kinds] = lines.filter(({ name }) => /chocolate$/.test(name));
  const [cream, ...creams] = lines.filter(({ name }) => /cream$/.test(name));
  if (!chocolate || !cream || kinds.length + creams.length > 0) return undefined;
  const said = spaced(text);
  if (!asked.some((each) => each.test(said))) return undefined;
  const mix = `${chocolate.grams} g ${chocolate.name} and ${cream.grams} g cream`;
  // a question of its own: behind the composition the same weights would be taken apart again
  return {
    text: `${mix}, what is the ratio and what is it good for`,
    topic: { tool: "ganache", inputs: {} },
  };
}
