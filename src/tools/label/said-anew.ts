/** One thing of the label before put right or added, or the same label once more. */
import type { Reading } from "../contract/index.ts";
import { nameOf, sameIngredient } from "../lib/lines.ts";
import { gramsOf } from "../lib/units.ts";
import { isPrintOnly } from "./print-said.ts";
import { type Draft, type LabelTurn, type LabelWay, namesFood } from "./turn.ts";

/** A way of going on from a label whose ingredients were weighed. */
const onward =
  (way: (turn: LabelTurn, before: Draft & Required<Pick<Draft, "lines">>) => Draft | undefined): LabelWay =>
  (turn) => {
    const { before } = turn;
    return before?.lines ? way(turn, { ...before, lines: before.lines }) : undefined;
  };

/** "no 140 g": the net weight, which stood last; without one it is asked what weighs so much. */
const weightRight = onward(({ reading }, before) => {
  const grams = bareWeight(reading);
  if (grams === undefined) return undefined;
  return before.net_g === undefined && before.net_oz === undefined
    ? { ...before, bare_g: grams }
    : { ...before, net_g: grams, net_oz: undefined };
});

/** "the butter", "the net weight": what weighs as much as was asked about. */
const nameOfWeight = onward(({ reading, foods, memory }, before) => {
  const grams = memory.last?.inputs.bare_g as number | undefined;
  if (grams === undefined || reading.amounts.length > 0) return undefined;
  if (/\bnet\b/.test(reading.text)) return { ...before, net_g: grams, net_oz: undefined };
  const [food, ...more] = foods;
  if (!food || more.length > 0) return undefined;
  const name = nameOf(food);
  const others = before.lines.filter((each) => !sameIngredient(each.name, name));
  return { ...before, lines: [...others, { name, grams }] };
});

/** "call it Raspberry Cloud": as she typed it. */
const titled = onward(({ reading }, before) => {
  const title = /^(?:(?:please|ok|and) )*(?:call|name|title) (?:it|them|this) (.{2,60})$/i
    .exec(reading.said)?.[1]
    ?.trim();
  return title ? { ...before, title } : undefined;
});

/** "12 of them". */
const copied = onward(({ reading }, before) =>
  /^(?:and |ok |please )*\S*<number> of (?:them|those|it)(?: please)?$/.test(reading.mask)
    ? { ...before, as_pdf: true, copies: reading.amounts[0]?.value }
    : undefined,
);

/** The label before where one thing of it is said anew, without an ingredient among it. */
export const rightWays: readonly LabelWay[] = [weightRight, nameOfWeight, titled, copied];

/** "add my name: ...", and nothing else of the label. */
export const signed = onward(({ hasMaker, lines, common }, before) =>
  hasMaker && lines.length === 0 ? { ...before, ...common, want: before.want } : undefined,
);

/** "nut free version?", of the label before. */
export const askedAgain = onward((turn, before) =>
  turn.lines.length === 0 && turn.asked.length > 0 && !namesFood(turn)
    ? { ...before, want: "allergens", asked: turn.asked }
    : undefined,
);

/** "use by in 4 days", behind a label: of it. */
export const usedBy = onward(({ lines, common, reading, memory }, before) =>
  common.use_by &&
  lines.length === 0 &&
  memory.follows &&
  !/^(?:how|what|is|are|can|may)\b/.test(reading.text)
    ? { ...before, ...common, want: "label" }
    : undefined,
);

/** "net weight 480", behind its allergens: of the label again. */
export const netAgain = onward(({ hasNet, memory, common }, before) =>
  hasNet && memory.follows ? { ...before, ...common, want: "label" } : undefined,
);

/** "print that label" is about the one before, whatever came between. */
export const printedAgain: LabelWay = (turn) => {
  const { reading, memory, before, common } = turn;
  const label = before ?? (memory.table.label as Draft | undefined);
  return label && isPrintOnly(common, reading) && !namesFood(turn) ? { ...label, ...common } : undefined;
};

/** "no, 140 g", "make it 140": a weight in grams put right, of which nothing says what it is of. */
function bareWeight({ mask, amounts, things }: Reading): number | undefined {
  const [only, ...more] = amounts;
  const isBare =
    /^(?:(?:no|nope|oh|oops|sorry|actually|wait|hang on|i meant|i mean|make|it|that|its|thats|is|be|should|to|,) )*\S*<(?:weight|number)>(?: now| please| then)?$/.test(
      mask,
    );
  if (!isBare || !only || more.length > 0 || things.length > 0 || only.of) return undefined;
  // "make it 24" may be labels: a bare number counts only where something is put right
  const isRight = /^(?:no|nope|oh|oops|sorry|actually|wait|i meant|i mean)\b/.test(mask);
  return only.dim === "weight" || isRight ? gramsOf(only) : undefined;
}
