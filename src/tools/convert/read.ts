/** Reads conversions: what of what is to be turned into which unit. Each amount with its target is one draft. */
import { ingredients } from "../../../data/words/ingredients.ts";
import type { Memory, Reading, Thing } from "../contract/index.ts";
import { pointsBack } from "../lib/find.ts";
import { sameIngredient } from "../lib/lines.ts";
import { unitRow } from "../lib/units.ts";
import type { ConvertInputs } from "./convert.ts";
import { changed, continues, follow } from "./follow.ts";
import { mannerIn, nameOf } from "./named.ts";
import { kind, measured, ordersIn, targets } from "./orders.ts";
import { shareAgain } from "./share-again.ts";
import { spoonsOf, whichSpoon } from "./spoon-said.ts";
import { stepOn } from "./step-said.ts";
import { sumOf } from "./sum.ts";
import { turnsToEach } from "./turns.ts";

type Draft = Partial<ConvertInputs>;

/** The drafts of a sentence, what it leaves unsaid taken from the conversion before it. */
export function readConvert(reading: Reading, memory: Memory): Draft[] {
  const before =
    memory.last?.tool === "convert" &&
    (memory.follows ||
      memory.slot ||
      /(?:^| )same (?:weight|amount|volume|quantity|measure) of /.test(reading.text))
      ? (memory.last.inputs as Draft)
      : undefined;
  const answer = memory.slot && before ? answerTo(memory.slot, reading, before) : undefined;
  if (answer) return [answer];
  if (reading.amounts.some((each) => each.dim === "money")) return [{ exchange: true }];
  // "how much does one white weigh": no color in bakers' talk
  const ofWhite =
    /^(?:(?:and|so|ok) )*how (?:much|heavy|many \S+) (?:does|is|are|weighs?) (?:the )?(?:an? |one |1 )?(?:\S*<number> )?(?:single |large )?\S*white\S*(?: weigh| weight)?(?: [?])?$/;
  if (ofWhite.test(reading.mask)) {
    const value = reading.amounts.find((each) => each.dim === "number")?.value ?? 1;
    return [{ value, unit: "large", ingredient: "whites", to: "g" }];
  }
  const spoons = spoonsOf(reading, before);
  if (spoons) return [spoons];
  const gas = toGas(reading) ?? gasMark(reading);
  if (gas) return [gas];
  const divided = before && (dividedBy(reading, before) ?? shareOf(reading, before));
  if (divided) return [divided];
  const step = before && stepOn(reading, before, memory);
  if (step) return [step];
  const shares = before ? shareAgain(reading, before) : [];
  if (shares.length > 0) return shares;
  const sum = sumOf(reading);
  // "plus 8", behind a sum
  if (sum && before?.sum !== undefined && /^[+*/-] /.test(sum.sum))
    return [{ ...before, sum: `(${before.sum}) ${sum.sum}` }];
  // "so whats 119 plus 30", of the grams that came out
  const grams = memory.last?.tool === "convert" ? memory.table.recent : undefined;
  const ofGrams =
    sum &&
    sum.sum_unit === undefined &&
    grams?.length === 2 &&
    grams.every((each) => sum.sum.split(" ").includes(String(Math.round(each.grams))));
  if (sum && !(before && !before.sum && isLoneFraction(reading)))
    return [{ ...sum, ...(ofGrams ? { sum_unit: "g" } : {}) }];
  const found = ordersIn(reading);
  // "how many cups is 130 g", of what was turned before
  const known = memory.last?.tool === "convert" ? memory.last.inputs.ingredient : undefined;
  const [single] = found;
  const leans =
    found.length === 1 &&
    single?.to !== undefined &&
    ["cup", "tbsp", "tsp"].includes(single.to) &&
    !single.ingredient &&
    !single.unknown &&
    typeof known === "string" &&
    /^how many /.test(reading.text);
  const orders = leans ? [{ ...single, ingredient: known as string }] : weighedOf(found, reading, memory);
  if (before && orders.length > 0) {
    const following = orders.filter((order) => continues(before, order));
    // "a whole cup, sifted": of what was turned before
    const manner = orders.length === 1 && !orders[0]?.ingredient ? mannerIn(reading, undefined) : undefined;
    return following.length > 0
      ? following.map((order) => ({ ...follow(before, order), ...(manner ? { manner } : {}) }))
      : [{}];
  }
  // "2 cups cream to grams, and 3 tbsp": the rest of the order holds for both
  if (orders.length > 0)
    return orders.map((order, at) => {
      const [first] = orders;
      const isSame = !order.to || (order.to === first?.to && order.unit === first?.unit);
      const bare = at > 0 && isSame && !order.ingredient && !order.unknown && first?.ingredient;
      return bare && first ? follow(first, order) : order;
    });
  const to = targets(reading).at(-1);
  // "thats grams, whats it in oz", of a sum
  const isSum = memory.last?.tool === "convert" && memory.last.inputs.sum !== undefined;
  if (to && isSum && /\b(?:thats|that is|its|it is) (?:in )?grams\b/.test(reading.text))
    return [{ that: true, from: "g", to }];
  // "how much butter is that in oz", behind a recipe: that line of it
  const named = reading.things.find((each) => each.ingredient);
  const lastValue = memory.last?.tool === "convert" ? memory.last.inputs.value : undefined;
  const ofRecipe = lastValue === undefined || memory.table.recipe?.some((each) => each.grams === lastValue);
  const line =
    to &&
    named &&
    ofRecipe &&
    reading.amounts.length === 0 &&
    memory.table.recipe?.find((each) => sameIngredient(each.name, named.ingredient ?? ""));
  if (line)
    return [
      {
        value: line.grams,
        unit: "g",
        to,
        // a cup of it weighs what its own row says
        ...(unitRow(to).dim === "volume" ? { ingredient: line.name } : {}),
      },
    ];
  if (before) {
    const each = before.value !== undefined && before.ingredient ? turnsToEach(reading) : [];
    return each.length > 0
      ? each.map((thing) => changed(before, aloneOf(reading, thing)))
      : [changed(before, reading)];
  }
  return to && (pointsBack(reading) || allAgain.test(reading.mask))
    ? [{ that: true, to }]
    : to
      ? [{ to }]
      : [{}];
}

/** The turn as if it said nothing but the one thing. */
const aloneOf = (reading: Reading, thing: Thing): Reading => ({
  ...reading,
  text: thing.text,
  mask: `${thing.text.replaceAll(" ", "_")}<ingredient=${thing.ingredient}>`,
  things: [thing],
});

/** "both in oz", "again in ounces": the figures of the answer before. */
const allAgain =
  /(?:^| )(?:both|each|all|again|everything|same)(?: |$)|^(?:(?:in|as) )?\S*<unit=(?:oz|lb|kg)>(?: (?:please|pls|then|instead|now|too))*(?: \?)?$/;

const ofThat = /<volume> (?:of )?(?:it|that|this|the same)(?: |$)/;

/** "how much does 1 tsp of it weigh": of what was spoken of; of nothing known, it is asked what of. */
function weighedOf(orders: Draft[], { text, mask }: Reading, { last, follows }: Memory): Draft[] {
  if (!/\bweigh|\bhow heavy\b/.test(text) || (follows && last?.tool === "convert")) return orders;
  const spoken =
    last?.tool === "convert"
      ? last.inputs.ingredient
      : last?.tool === "dose" && ofThat.test(mask)
        ? last.inputs.name
        : undefined;
  const of: Draft =
    typeof spoken !== "string"
      ? {}
      : ingredients.some((row) => row.name === spoken)
        ? { ingredient: spoken }
        : { unknown: spoken };
  return orders.map((order) => {
    const { unit, to, ingredient, unknown } = order;
    const isBare = !to && !ingredient && !unknown && unit !== undefined && unit !== "large";
    return isBare && kind(unit) === "volume" ? { ...order, ...of, to: "g" } : order;
  });
}

/** "half that?", "double it", "a third of that, in ounces", behind a conversion or a sum. */
function shareOf(reading: Reading, before: Draft): Draft | undefined {
  const { mask, amounts } = reading;
  const [only, ...others] = amounts;
  const factor = only?.fraction || only?.unit === "times" ? only.value : undefined;
  if (factor === undefined || others.length > 0) return undefined;
  const said =
    /^(?:(?:no|nope|nah|sorry|wait|actually|oops|and|or|what about|how about|what|how much|whats|is|would|be|make it|ok|now|so|then|if i|i|just|only|but|give me) (?:, )?)*\S*<(?:factor|number,fraction)> (?:of )?(?:that|it|this)(?: (?:amount|then|please|instead|be))*(?:(?: ,)?(?: (?:in|as|into|to))? \S*<unit=[^>]*>)?(?: (?:then|please|pls|instead|be))*(?: \?)?$/;
  if (!said.test(mask)) return undefined;
  const [to] = targets(reading);
  if (before.sum !== undefined)
    return to === undefined ? { ...before, sum: `(${before.sum}) * ${factor}` } : undefined;
  return before.value === undefined
    ? undefined
    : { ...before, value: before.value * factor, ...(to === undefined ? {} : { to }) };
}

/** "divide by 3", "times 2", behind a conversion: what was turned, so many times. */
function dividedBy({ mask, amounts }: Reading, before: Draft): Draft | undefined {
  // "take 24 off that", "divided by 4", behind a sum
  const step =
    /^(?:(?:and|then|now|ok|this|that|it) )*(take|minus|subtract|less|plus|add|times|multipl\S+ by|divided? by) \S*<number>(?: (?:off|from|to|on))?(?: (?:that|it|this))?(?: \?)?$/.exec(
      mask,
    )?.[1];
  const next = amounts.find((each) => each.dim === "number")?.value;
  if (step && next !== undefined && amounts.length === 1 && before.sum !== undefined) {
    const sign = /^divid/.test(step)
      ? "/"
      : /^(?:times|multipl)/.test(step)
        ? "*"
        : /^(?:plus|add)/.test(step)
          ? "+"
          : "-";
    return { ...before, sum: `(${before.sum}) ${sign} ${next}` };
  }
  const said = /^(?:(?:and|then|now|ok) )*(divided? by|times|multipl\S+ by) \S*<number>(?: \?)?$/.exec(
    mask,
  )?.[1];
  const number = amounts.find((each) => each.dim === "number")?.value;
  if (!said || !number || before.value === undefined || before.sum !== undefined) return undefined;
  return { ...before, value: /^divid/.test(said) ? before.value / number : before.value * number };
}

/** "150 c in gas mark", "what gas mark is 180", "gas mark for 180 c". */
function toGas(reading: Reading): Draft | undefined {
  if (!/\b(?:in|to|as) (?:a |the )?gas(?: marks?)?\b|\bgas marks?\b(?! ?[\d½¼])/.test(reading.text))
    return undefined;
  const heat = reading.amounts.find(
    (each) => each.dim === "temperature" || (each.dim === "number" && each.value > 20),
  );
  return (
    heat && { value: heat.value, ...(heat.dim === "temperature" ? { unit: heat.unit } : {}), to_gas: true }
  );
}

/** "gas mark 4", "gas 1/2 in fahrenheit". */
function gasMark(reading: Reading): Draft | undefined {
  // "it only does gas marks. what's gas mark 3": the one with a number
  const said = /\bgas (?:mark )?(?=[\d½¼])/.exec(reading.text) ?? /\bgas (?:mark )?/.exec(reading.text);
  const amount = said && reading.amounts.find((each) => each.at[0] === said.index + said[0].length);
  const to = targets(reading).find((unit) => unitRow(unit).dim === "temperature");
  return amount ? { gas_mark: amount.value, ...(to ? { to } : {}) } : undefined;
}

const isLoneFraction = (reading: Reading) =>
  reading.amounts.length === 1 && Boolean(reading.amounts[0]?.fraction);

/** The answer to a question of ours: the ingredient, how it is measured, the unit. */
function answerTo(slot: string, reading: Reading, before: Draft): Draft | undefined {
  const thing = reading.things.find((each) => each.ingredient);
  const manner = mannerIn(reading, thing);
  if (slot === "ingredient") {
    if (before.ingredient === "chocolate" && /(?:^| )milk</.test(reading.mask))
      return { ...before, ingredient: "milk chocolate" };
    if (thing) return { ...before, ...nameOf(thing), ...(manner ? { manner } : {}) };
    const words = reading.mask
      .replace(/<[^>]*>/g, "")
      .replaceAll("_", " ")
      .replace(/^(?:its|it is|of|the|some|oh|um|sorry) /, "");
    return reading.amounts.length === 0 && words ? { ...before, unknown: words } : undefined;
  }
  if (slot === "manner") return manner ? { ...before, manner } : undefined;
  if (slot === "unit" && before.value !== undefined && !thing) {
    // "the tea one", where it was asked which spoon it is
    const spoon = before.spoon ? whichSpoon(reading.text) : undefined;
    if (spoon) return { ...before, unit: spoon };
    const unit = targets(reading)[0] ?? reading.amounts.find((each) => measured.has(each.dim))?.unit;
    return unit ? { ...before, unit } : undefined;
  }
  return undefined;
}
