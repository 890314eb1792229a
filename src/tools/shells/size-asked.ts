/** "i got 71 shells out of 520 g, what size are they": back from a bowl and what it made to how wide one is. */
import { shellBatter } from "../../../data/rules/shells.ts";
import type { Outcome, World } from "../contract/index.ts";
import { says, weighed } from "../lib/find.ts";
import { counted, plain, weight } from "../lib/show.ts";
import { keptShare, type Measures } from "./rule.ts";
import { isNumber, type ShellsWay } from "./turn.ts";

const asksSize =
  /(?:^| )(?:what|which|whats) (?:(?:is|was|the|their|my|shell|a) )*(?:size|diameter|width|mm)(?: |$)|how (?:big|wide|large|small)(?: |$)|(?:what|how many) \S*<unit=(?:mm|cm)>|(?:^| )size (?:are|were|is|did)(?: |$)/;
const made =
  /(?:^| )(?:got|get|made|piped|gave|came (?:out|to)|yielded)(?: |$).*(?:out of|from|with|of)(?: \S+){0,3} \S*<weight>|<weight>(?: \S+){0,4} (?:made|gave|yielded|got me|came to|piped)(?: \S+){0,2} \S*<number>/;

/** Shells, or macarons of two shells each, that a weight of batter made. */
export const sizeAsked: ShellsWay = ({ reading }) => {
  const [bowl, ...others] = weighed(reading).filter(({ amount }) => amount.dim === "weight");
  const made_of = bowl && (!bowl.thing || bowl.thing.base === "batter" || bowl.thing.count === "shells");
  const numbers = reading.amounts.filter(isNumber);
  const [count, ...more] = numbers;
  if (!bowl || !made_of || others.length > 0 || !count || more.length > 0) return undefined;
  if (reading.amounts.some(({ dim }) => !["number", "weight"].includes(dim))) return undefined;
  // "what size are my shells if 71 came out of 520 g"
  const of = count.of?.count ?? reading.things.find((each) => each.count)?.count;
  if (of !== "shells" && of !== "macarons") return undefined;
  const isTold = says(reading, made);
  // told, and nothing asked: how wide they came out is all that it says
  if (
    !says(reading, asksSize) &&
    (!isTold || says(reading, /(?:how|what|which|enough|whats|is|should)(?: |$)|\?/))
  )
    return undefined;
  if (!isTold && !says(reading, /(?:from|out of)/)) return undefined;
  return { batter_g: bowl.grams, [of]: count.value, want: "size" };
};

/** "i got 71 shells out of 520 g, how many macarons": they are counted, and nothing is worked out from the bowl. */
export const countedOut: ShellsWay = ({ reading }) => {
  const numbers = reading.amounts.filter(isNumber);
  const [count, ...more] = numbers;
  const [bowl, ...others] = weighed(reading).filter(({ amount }) => amount.dim === "weight");
  const isTold = count?.of?.count === "shells" && more.length === 0 && says(reading, made);
  return isTold && bowl && others.length === 0 && says(reading, /how many (?:\S+ )?\S*<count=macarons/)
    ? { shells: count.value, batter_g: bowl.grams, want: "macarons" }
    : undefined;
};

/** The diameter by the book's weight of a shell: all of the batter that stays in bowl and bag is taken off first. */
export function sizeFor(batter_g: number, shells: number, size: Measures, { bench }: World): Outcome {
  const kept = keptShare(size.own);
  const each_g = (batter_g * kept) / shells;
  const diameter_mm = 10 * Math.sqrt(each_g / shellBatter.value);
  return {
    status: "answered",
    headline: `${plain(diameter_mm, 1)} mm across: ${counted(shells, "shell")} from ${weight(batter_g, bench.scale_g)} g batter`,
    figures: [
      { name: "diameter", value: diameter_mm, unit: "mm" },
      { name: "batter a shell", value: each_g, unit: "g" },
    ],
    rule: {
      text: `${shellBatter.value} × d² g batter a shell, d in cm, so d = √(B × ${plain(kept, 4)} / shells / ${shellBatter.value})`,
      basis: shellBatter.basis,
    },
    assumed: ["all of one size"],
    working: [
      `${plain(batter_g)} × ${plain(kept, 4)} / ${plain(shells)} = ${plain(each_g)} g a shell`,
      `√(${plain(each_g)} / ${shellBatter.value}) = ${plain(diameter_mm / 10)} cm`,
    ],
    leaves: { mass: { grams: batter_g, thing: "batter" }, shells, diameter_mm },
  };
}
