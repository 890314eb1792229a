/** Behind a ganache that split: what was stirred in, the same for another weight, or one made anew. */
import { split } from "../../../data/rules/ganache.ts";
import { bareNumbers, says } from "../lib/find.ts";
import type { Draft, GanacheWay } from "./turn.ts";
import { readWeights } from "./weights-said.ts";

const startsOver =
  /(?:^| )(?:next time|start (?:over|again|fresh)|(?:new|fresh) (?:one|batch|lot)|make (?:the same|it again|another|a new))(?: |$)/;

/** "next time i make the same but 300 g total". */
export const madeAnew: GanacheWay = ({ reading, memory, last, weights, common }) =>
  (last?.want === "split" || last?.want === "mend") && weights.length === 1 && says(reading, startsOver)
    ? { ...common, want: "build", ...readWeights(reading, memory, false) }
    : undefined;

/** "same thing with 300 g". */
export const splitAgain: GanacheWay = ({ reading, last, weights: [only, ...more] }) =>
  last?.want === "split" &&
  only &&
  more.length === 0 &&
  says(reading, /(?:^| )same(?: thing| again)? (?:with|for|but)(?: |$)/)
    ? { want: "split", total_g: only.grams }
    : undefined;

const sumOf = ({ chocolate_g, cream_g }: Draft) =>
  chocolate_g !== undefined && cream_g !== undefined ? chocolate_g + cream_g : undefined;

const stirred =
  /(?:^| )(?:added|stirred|put|poured|used|tried|gave it|did|mixed|another|more)(?: in)?(?: |$)|\bstill (?:split|broken|grainy|greasy|oily)/;
const stillSo =
  /^(?:(?:and|but|oh|no|ugh|argh|now|ok|well|hm|its|it|is|the|my|all|ganache\S*) )*still (?:all |a bit |so |quite )*(?:split|broken|greasy|oily|separated)/;
const soManyTimes = /after \S*<number> (?:additions|goes|times|rounds|tries)/;

/** "added 10 g cream, still split": what has gone into it, on top of what went in before. */
export const stirredIn: GanacheWay = ({ reading, last, weights }) => {
  if (last?.want !== "split") return undefined;
  const total = last.total_g ?? sumOf(last);
  if (total === undefined) return undefined;
  const { stirred_g = 0 } = last;
  const total_g = total;
  // "still split after 3 additions": so many times what goes in at a time
  const times = reading.amounts.find((each) => each.dim === "number")?.value;
  if (times && says(reading, soManyTimes))
    return { want: "split", total_g, stirred_g: total_g * (split.atATime_percent / 100) * times };
  // "still split": how much has gone in isn't said
  if (reading.amounts.length === 0 && says(reading, stillSo)) return { ...last, still: true };
  const [only, ...more] = [
    ...weights.map(({ grams }) => grams),
    ...bareNumbers(reading).map(({ value }) => value),
  ];
  return only !== undefined && more.length === 0 && says(reading, stirred)
    ? { want: "split", total_g, stirred_g: stirred_g + only }
    : undefined;
};
