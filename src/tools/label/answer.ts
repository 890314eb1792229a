/** Puts a label together, or says which allergens to declare. It never claims to be complete where it isn't. */
import { inFridge } from "../../../data/rules/keeping.ts";
import type { Market } from "../../../data/rules/labels.ts";
import type { Outcome, World } from "../contract/index.ts";
import { asking } from "../lib/asking.ts";
import { sellingCaution } from "../lib/care.ts";
import { localDay, plusDays, shortDay } from "../lib/days.ts";
import { weight } from "../lib/show.ts";
import { ahead, behind } from "../lib/when.ts";
import { type Brings, bringsOf, gather } from "./allergens.ts";
import { allergensOf, described } from "./declare.ts";
import { filledOf } from "./filled.ts";
import type { LabelInputs } from "./label.ts";
import { type Dates, wholeLabel } from "./whole.ts";

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
  if (inputs.want === "safe") return noPromise;
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

const isRefused = /^(?:no|not|without)\b|\bfree\b/;

/** What was named and isn't weighed brings its allergens all the same, and is told where it brings more. */
function namedBeside({ unread = [], beside = [] }: LabelInputs, weighed: Brings, { bottles }: World): Brings {
  const of = (name: string) => bringsOf(name, undefined, bottles).sure;
  const more = beside.filter((name) => of(name).some((id) => !weighed.sure.includes(id)));
  return {
    sure: [...unread.filter((text) => !isRefused.test(text)), ...more].flatMap(of),
    unsure: more.map((name) => `${name}: named without a weight, so not in the list`),
  };
}

const landName = (land: string): string => (/^u\.?k\.?$/.test(land) ? "the UK" : `"${land}"`);

/** Nobody with an allergy is told that something is safe. */
const noPromise: Outcome = {
  status: "declined",
  headline:
    "Every macaron holds almond and egg, from its shells; fillings mostly bring milk, and often soy, wheat or nuts. I can't say that anything is safe for an allergy.",
  cautions: [
    "Another flour doesn't help where the bowls, the flavors or the kitchen have met the allergen: read every wrapper, and leave it out when in doubt.",
    "Whoever has the allergy, and their doctor, have the last word; for selling, your local food authority.",
  ],
};

/** Day 5 and day 7 of the day of making. */
function datesOf(inputs: LabelInputs, world: World): Dates | Outcome | undefined {
  const rule = datesByRule(inputs, world);
  if (!inputs.use_by || (rule && "status" in rule)) return rule;
  const said = ahead(inputs.use_by, world.now_ms);
  if (!said.ok) return { status: "impossible", headline: said.why };
  const latest = rule?.useBy ?? plusDays(localDay(world.now_ms), inFridge.days - 1);
  if (said.day > latest)
    return {
      status: "impossible",
      headline: `Use by ${named(said.day)} is past day ${inFridge.days}: made ${rule ? "that day" : "today"}, it is ${named(latest)} at the latest.`,
    };
  return { bestBy: rule && rule.bestBy < said.day ? rule.bestBy : said.day, useBy: said.day };
}

function datesByRule(inputs: LabelInputs, world: World): Dates | Outcome | undefined {
  if (!inputs.made) return undefined;
  const past = behind(inputs.made, world.now_ms);
  const made = past.ok ? past : ahead(inputs.made, world.now_ms);
  if (!made.ok) return { status: "impossible", headline: made.why };
  return { bestBy: plusDays(made.day, inFridge.best - 1), useBy: plusDays(made.day, inFridge.days - 1) };
}

const named = (day: string) => `${shortDay(day)} (${day})`;

function datesAlone(dates: Dates | undefined): Outcome {
  if (!dates) {
    return asking("Which day were they made?", "made");
  }
  return {
    status: "answered",
    headline: `Best by ${named(dates.bestBy)}, use by ${named(dates.useBy)}`,
    rule: {
      text: "best by on day 5 (from memory), use by on day 7, the day of making counted as day 1",
      basis: "published",
      source: inFridge.source,
    },
    items: [
      { line: "best by", text: dates.bestBy },
      { line: "use by", text: dates.useBy },
    ],
    cautions: ["Both hold for filled macarons kept at 5 °C (41 °F) or below.", sellingCaution],
  };
}
