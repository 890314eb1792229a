/** "mature 48 hours", "two trays at a time", "what if i rest them 45 min": of this order, whatever the bench says. */
import type { Reading } from "../contract/index.ts";
import { inBase } from "../lib/units.ts";
import type { DayInputs } from "./day.ts";
import type { Draft } from "./draft.ts";

type Lengths = NonNullable<DayInputs["lengths"]>;

const steps = {
  rest: "rest_min",
  bake: "bake_min",
  cool: "cool_min",
  mature: "mature_h",
} as const;

const before =
  /<step=(rest|bake|cool|mature)[^>]*>(?: (?:them|it|the \S+|each|for|time|of|is|about|around|a))* \S*<time>/;
const behind = /<time>(?: (?:of|to|for|the))* \S*<step=(rest|bake|cool|mature)/;
const atOnce =
  /<number> \S*<count=trays>(?: (?:bake|go|fit|in|into|on|the|my|oven|each|racks?))* (?:at once|at a time|at the same time|together|side by side)/;
/** "my oven takes 2 trays", "two trays fit in the oven". */
const ovenTakes =
  /(?:^| )oven (?:only |can |could |really |actually )*(?:takes?|fits?|holds?|bakes?|has room for|has space for|does) (?:only |up to |just )?\S*<number> \S*<count=trays>(?! of)|<number> \S*<count=trays> (?:will |can |do |both )*(?:fit|go) (?:in|into|inside)?(?:_| )?(?:(?:the|my)(?:_| ))?oven/;

export function lengthsSaid({ mask, amounts }: Reading, plan: Draft | undefined): Draft {
  // "i'm 40 minutes late with the resting" tells no length
  const isLate = /(?:late|behind|delay)/.test(mask);
  const step = isLate ? undefined : (before.exec(mask)?.[1] ?? behind.exec(mask)?.[1]);
  const time = amounts.find((each) => each.dim === "time");
  const trays =
    atOnce.test(mask) || ovenTakes.test(mask)
      ? amounts.find((each) => each.of?.count === "trays")?.value
      : undefined;
  const said: Lengths = {
    ...(step && time ? lengthOf(step as keyof typeof steps, inBase(time.value, time.unit)) : {}),
    ...(trays === undefined ? {} : { trays_at_once: trays }),
  };
  return Object.keys(said).length > 0 ? { lengths: { ...plan?.lengths, ...said } } : {};
}

const lengthOf = (step: keyof typeof steps, minutes: number): Lengths =>
  step === "mature" ? { mature_h: minutes / 60 } : { [steps[step]]: minutes };
