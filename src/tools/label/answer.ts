/** Puts a label together, or says which allergens to declare. It never claims to be complete where it isn't. */
import type { Market } from "../../../data/rules/labels.ts";
import type { Outcome, World } from "../contract/index.ts";
import { asking } from "../lib/asking.ts";
import { houseOf } from "../lib/house.ts";
import { weight } from "../lib/show.ts";
import { type Brings, bringsOf, gather } from "./allergens.ts";
import { partsAt } from "./composite.ts";
import { datesAlone, datesOf } from "./dates.ts";
import { allergensOf, described } from "./declare.ts";
import { filledOf } from "./filled.ts";
import type { LabelInputs } from "./label.ts";
import { isRefusedAt } from "./refused-said.ts";
import { wholeLabel } from "./whole.ts";

/** @throws never: what is missing comes back as `asking`. */
export function answerLabel(inputs: LabelInputs, world: World): Outcome {
  const market: Market = inputs.market ?? world.bench.market ?? "us";
  if (inputs.elsewhere && !inputs.market && !inputs.asked && inputs.want !== "safe")
    return asking(
      `I know the forms of the United States and of the European Union, not of ${landName(inputs.elsewhere)}. Which of the two shall it have, us or eu?`,
      "market",
    );
  if (inputs.bare_g !== undefined)
    return asking(
      `What weighs ${weight(inputs.bare_g)}? Say it with its name: "net weight 100 g", "sugar 100 g".`,
      "lines",
    );
  const dates = datesOf(inputs, world);
  if (dates && "status" in dates) return dates;
  if (inputs.want === "dates") return datesAlone(dates);
  if (inputs.want === "safe") return noPromise(houseOf(world).name !== undefined);
  const filled = inputs.lines && !inputs.formulas ? undefined : filledOf(inputs.formulas ?? [], world);
  const lines = inputs.lines ? [...(filled?.lines ?? []), ...inputs.lines] : filled?.lines;
  const [unweighed] = inputs.also ?? [];
  if (unweighed && lines && inputs.want !== "allergens" && !inputs.asked)
    return asking(`How many grams of ${unweighed} are in it?`, "lines");
  const named = (inputs.also ?? []).map((name) => ({ name, grams: 0 }));
  const ingredients = (lines ? [...lines, ...named] : undefined)?.map(
    (each: { name: string; grams: number; taste?: string | undefined }) => ({
      ...each,
      brings: bringsOf(each.name, each.taste, world.bottles),
    }),
  );
  if (!ingredients?.length) {
    const isNet = inputs.net_g !== undefined || inputs.net_oz !== undefined;
    if ((inputs.mixes || inputs.named) && (!inputs.as_pdf || isNet)) {
      const outcome = allergensOf(described(inputs, world), inputs, market);
      // what is in it is told as far as it is known; a list by weight can't be printed of it
      return inputs.as_pdf
        ? {
            ...outcome,
            headline: `Nothing printed yet: it takes each ingredient with its weight in grams. ${outcome.headline}`,
          }
        : outcome;
    }
    return asking("What is in it? Each ingredient with its weight in grams, please.", "lines");
  }
  const weighed = gather(ingredients.map((each) => each.brings));
  const shells = inputs.from_table ? described({ mixes: inputs.mixes ?? [] }, world) : undefined;
  const brings = gather([weighed, namedBeside(inputs, weighed, world), ...(shells ? [shells] : [])]);
  if (inputs.want === "allergens")
    return allergensOf(
      {
        ...brings,
        from: [
          ...(shells?.from ?? []),
          ...ingredients.flatMap((each) => each.brings.sure.map((id) => ({ allergen: id, from: each.name }))),
        ],
      },
      inputs,
      market,
    );
  const outcome = wholeLabel(
    ingredients.map(({ name, grams, brings: own }) => ({ name, grams, allergens: own.sure })),
    brings,
    inputs,
    dates,
    market,
    world,
  );
  return filled?.assumed.length
    ? { ...outcome, assumed: [...(outcome.assumed ?? []), ...filled.assumed] }
    : outcome;
}

/** A piece of the sentence without what is said not to be in it: "brushed with egg, no milk". */
const taken = (text: string): string =>
  partsAt(text)
    .filter(({ at }) => isRefusedAt(text, at))
    .reduceRight((rest, { at: [start, end] }) => `${rest.slice(0, start)};${rest.slice(end)}`, text);

/** What was named and isn't weighed brings its allergens all the same, and is told where it brings more. */
function namedBeside({ unread = [], beside = [] }: LabelInputs, weighed: Brings, { bottles }: World): Brings {
  const of = (name: string) => bringsOf(name, undefined, bottles).sure;
  const open = (name: string) => partsAt(name).flatMap((part) => part.unsure ?? []);
  const more = beside.filter(
    (name) => open(name).length > 0 || of(name).some((id) => !weighed.sure.includes(id)),
  );
  return {
    sure: [...unread.map(taken), ...more].flatMap(of),
    unsure: more.map((name) =>
      [`${name}: named without a weight, so not in the list`, ...open(name)].join("; look for "),
    ),
  };
}

const landName = (land: string): string => (/^u\.?k\.?$/.test(land) ? "the UK" : `"${land}"`);

/** Nobody with an allergy is told that something is safe. */
const noPromise = (isOwn: boolean): Outcome => ({
  status: "declined",
  headline: `${isOwn ? "Macaron shells hold almond and egg, unless yours are made otherwise" : "Every macaron holds almond and egg, from its shells"}; fillings mostly bring milk, and often soy, wheat or nuts. I can't say that anything is safe for an allergy.`,
  cautions: [
    "Another flour doesn't help where the bowls, the flavors or the kitchen have met the allergen: read every wrapper, and leave it out when in doubt.",
    "Whoever has the allergy, and their doctor, have the last word; for selling, your local food authority.",
  ],
});
