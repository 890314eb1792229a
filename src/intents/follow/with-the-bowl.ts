/** "310 was with the bowl. its 190": what the scale showed had the bowl in it, and what there is without it. */
import { opening } from "../../../data/words/openers.ts";
import { vessel } from "../../../data/words/vessels.ts";
import type { Amount, Reading } from "../../tools/contract/index.ts";
import { gramsOf } from "../../tools/lib/units.ts";
import { spaced } from "./spaced.ts";
import { type State, sizing, type Topic } from "./state.ts";

const number = "#";
const bowl = `(?:the |my |that |a )?(?:${vessel}|scale pan)`;
const withIt = `(?:with ${bowl}(?: in| and all| on| too| still on| included)*|including ${bowl}|incl ${bowl}|${bowl} included|${bowl} and all|gross|bowl and all)`;
const meant =
  "(?:(?:so|and|but|its|it is|it's|thats|that's|that is|really|actually|only|just|in truth|theres|there is|there's|the real (?:weight|one) is|the (?:\\w+ )?(?:alone|itself|by itself|on its own) is|without it(?: its| it is)?|net|makes|leaves|it should be|should be|make it|say|without|,|\\.) )*";
const tail =
  "(?: (?:g|grams?|net|without it|without the bowl|without|then|really|actually|in it|of it))*[ .!]*$";
/** The weight that was said first had the bowl in it. */
const told: readonly RegExp[] = [
  new RegExp(
    `^${opening}(?:(?:the|that|those|my) )?${number} (?:g |grams? )?(?:(?:was|is|were|had been|thats|counts?|weighed|read|that i said was) )?${withIt} ${meant}${number}${tail}`,
  ),
  new RegExp(
    `^${opening}(?:(?:that|it|i) (?:was|is|weighed (?:it|that)|had (?:it|that)|said it|took it)|thats|(?:i )?forgot) ${withIt} ${meant}${number}${tail}`,
  ),
  new RegExp(
    `^${opening}(?:(?:its|it is|thats|theres|only|just) )*${number} (?:g |grams? )?without ${bowl}${tail}`,
  ),
  new RegExp(
    `^${opening}(?:i )?(?:forgot|didnt|did not|never) (?:to )?(?:take off|tare|tare out|take away|subtract|deduct|zero|take) ${bowl}(?: off| out| away)? ${meant}${number}${tail}`,
  ),
];

const isWeight = ({ dim, unit, high, fraction }: Amount): boolean =>
  high === undefined && (dim === "weight" || (dim === "number" && unit === "" && !fraction));

/** Whether one of the inputs is this weight. */
const holds = ({ inputs }: Topic, grams: number): boolean =>
  Object.entries(inputs).some(([key, value]) => key.endsWith("_g") && value === grams);

/** What is in it said plainly, and of which question; undefined where that isn't told. Pure. */
export function withTheBowl(
  { text, amounts, whens }: Reading,
  { last, past = [] }: State,
): { text: string; topic?: Topic } | undefined {
  if (!last || !sizing.has(last.tool) || whens.length > 0 || amounts.length < 1 || amounts.length > 2)
    return undefined;
  if (!amounts.every(isWeight)) return undefined;
  const put = amounts.reduceRight(
    (left, { at: [from, to] }) => `${left.slice(0, from)} ${number} ${left.slice(to)}`,
    text,
  );
  const [first, second] = amounts;
  const net = second ?? first;
  if (!net || !told.some((pattern) => pattern.test(spaced(put)))) return undefined;
  // "310 with the bowl, so 400": no bowl weighs less than nothing
  if (second && first && gramsOf(second) >= gramsOf(first)) return undefined;
  const meant = `no, its ${gramsOf(net)} g`;
  // "150 was with the dish", behind the coffee for what 150 g of butter make: of the butter
  if (!second || !first || holds(last, gramsOf(first))) return { text: meant };
  const topic = past.findLast((each) => sizing.has(each.tool) && holds(each, gramsOf(first)));
  return topic && { text: meant, topic };
}
