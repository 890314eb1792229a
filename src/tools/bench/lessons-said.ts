/** How she speaks of what her batches taught: asks for it, forgets it, goes back to it. */
import type { LearnedTopic } from "../contract/index.ts";
import type { BenchInputs } from "./bench.ts";

const learn = "(?:learned|learnt|learn|picked up|worked out)";
const you = "(?:you|u|we|it|i|ive|youve|youd)";
const figures = "(?:figures|numbers|values|batches|data|measurements|averages|experience)";
const own = `(?:my (?:own |bench |learned |learnt )*${figures}|(?:what|everything) ${you}(?: have| had)? ${learn})`;
const end = "(?: (?:again|instead|please|pls|now|then|[.!?]))*$";

/** Decisive: no other calculator's sentences speak of learning. */
export const lessonCues: readonly [number, ...string[]][] = [
  [
    9,
    `(?:what|show|list|tell|see|which) .. ${learn}`,
    `have you ${learn} .. (?:anything|something)`,
    "what (?:have|did) i (?:teach|taught) you",
    "what (?:do|did|have) (?:my|the) batches (?:teach|taught|say|tell)",
    `(?:forget|unlearn|drop|discard|erase|clear|reset|ignore) .. (?:${learn}|i taught you)`,
    "^(?:please |ok |and )*unlearn",
    `(?:stop using|dont use|ignore) ${own}`,
    `(?:use|go by|go back to|back to|switch to|switch back to|trust|work with|calculate with) ${own}${end}`,
  ],
];

const topicWords: readonly [RegExp, LearnedTopic][] = [
  [/(?:^| )\S*<(?:[^>\s]*,)?(?:count=shells|base=batter)/, "shells"],
  [/(?:^| )\S*<(?:[^>\s]*,)?base=(?:filling|buttercream|ganache)|(?:^| )fillings?(?: |$)/, "filling"],
  [/(?:^| )(?:loss|losses|lost|leftovers?|waste|spares?|bowl|bag)(?: |$|<)/, "losses"],
  [/step=bake|(?:^| )oven(?: |$)/, "bake"],
  [/step=rest/, "rest"],
  [/(?:^| )(?:doses?|dosing|strengths?|flavou?rs?)(?: |$|<)|<(?:[^>\s]*,)?(?:dose|taste)=/, "doses"],
];

const lists = new RegExp(
  `(?:what|show|list|tell|see|which) .*${learn}(?: |$)|have you ${learn}|taught|teach|batches (?:say|tell)`,
);
const forgets = /(?:^| )(?:forget|unlearn|drop|discard|erase|clear|reset|ignore)(?: |$)/;
const stops = new RegExp(`(?:stop using|dont use|ignore) ${own}`);
const goesBack = new RegExp(
  `(?:use|go by|go back to|back to|switch to|switch back to|trust|work with|calculate with) ${own}`,
);

/** What a sentence about learned figures asks for; undefined where it is about something else. */
export function readLessons(mask: string): Partial<BenchInputs> | undefined {
  const topics = topicWords.flatMap(([words, topic]) => (words.test(mask) ? [topic] : []));
  const some = topics.length ? { topics } : {};
  if (stops.test(mask)) return { do: "reset", book: true };
  if (goesBack.test(mask)) return { do: "own" };
  if (
    /(?:^| )unlearn(?: |$)/.test(mask) ||
    (forgets.test(mask) && new RegExp(`${learn}(?: |$)|taught`).test(mask))
  )
    return { do: "forget", ...some };
  return lists.test(mask) ? { do: "learned", ...some } : undefined;
}
