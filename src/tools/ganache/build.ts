/** A ganache built from the weight of its chocolate, its cream or the whole. */
import { type Chocolate, type RatioRow, type Use, whiteWithButter } from "../../../data/rules/ganache.ts";
import type { Figure, Outcome, Rule, World } from "../contract/index.ts";
import { asking } from "../lib/asking.ts";
import { type Lesson, learned, lessonText, oddLines, ownFigures } from "../lib/learned.ts";
import { plain, weight } from "../lib/show.ts";
import { fillingFor, saidSize, sizing } from "../lib/sizing.ts";
import { keepFilledCold, leftOf, noise, ruleOf } from "./book-ratio.ts";
import type { GanacheInputs } from "./ganache.ts";

const parts = ["chocolate", "cream", "total"] as const;
type Part = (typeof parts)[number];
type Weights = Readonly<Record<Part, number>>;

/** All three weights by one of them. */
function weightsBy(given: Part, grams: number, ratio: number): Weights {
  const cream = given === "cream" ? grams : given === "chocolate" ? grams / ratio : grams / (ratio + 1);
  const chocolate = given === "chocolate" ? grams : given === "cream" ? grams * ratio : grams - cream;
  return { chocolate, cream, total: chocolate + cream };
}

/** The ratio's rule, and how much it was made for by her own batches. */
const taughtRule = (rule: Rule, taught: readonly Lesson[]): Rule => ({
  text: [rule.text, ...taught.map(lessonText)].join("; "),
  basis: "your bench",
});

/** @param chocolate left out where a ratio of her own is all that counts */
export function build(
  inputs: GanacheInputs,
  chocolate: Chocolate | undefined,
  use: Use,
  row: RatioRow,
  world: World,
): Outcome {
  const rule: Rule =
    inputs.ratio !== undefined || !chocolate
      ? { text: `chocolate : cream ${plain(row.ratio)} : 1, as you said`, basis: row.basis }
      : ruleOf(chocolate, use, row);
  const size = inputs.macarons === undefined ? undefined : sizing(inputs.diameter_mm, world.bench);
  const lessons = size ? learned(world, size.diameter_mm) : {};
  const taught = [lessons.filling, lessons["filling loss"]].filter((lesson) => lesson !== undefined);
  const total_g =
    inputs.total_g ??
    (size && inputs.macarons !== undefined
      ? fillingFor(inputs.macarons, size.diameter_mm, ownFigures(lessons))
      : undefined);
  // "370 altogether" fills the weight of chocolate that was asked for too: it is the whole's
  const chocolate_g = inputs.chocolate_g === inputs.total_g ? undefined : inputs.chocolate_g;
  const said = { chocolate: chocolate_g, cream: inputs.cream_g, total: total_g };
  const given = parts.find((part) => said[part] !== undefined);
  if (!given)
    return asking(
      `How many grams of ${chocolate ? `${chocolate} ` : ""}chocolate or cream, or of ganache in all?`,
      "chocolate_g",
    );
  const grams = said[given] ?? 0;
  if (grams <= 0) return { status: "impossible", headline: "There has to be some cream to build on." };
  const at = (ratio: number) => weightsBy(given, grams, ratio);
  const [usual, loosest, stiffest] = [at(row.ratio), at(row.low), at(row.high)];
  const other = parts.find(
    (part) => part !== given && misfits(said[part], [usual[part], loosest[part], stiffest[part]]),
  );
  if (other) {
    const both = `${plain(grams)} g ${named(given)} or ${plain(said[other] ?? 0)} g ${named(other)}`;
    const question = `Which of them counts: ${both}? At ${plain(row.ratio)} : 1 they don't go together.`;
    return { status: "asking", headline: question, question };
  }
  const figure = (name: Part): Figure => {
    const ends = [loosest[name], stiffest[name]].sort((a, b) => a - b) as [number, number];
    return ends[1] - ends[0] < noise
      ? { name, value: usual[name], unit: "g" }
      : { name, value: usual[name], low: ends[0], high: ends[1], unit: "g" };
  };
  const withButter =
    chocolate === "white" && use === "piping" && inputs.ratio === undefined && inputs.with_butter !== false
      ? butterVersion(given, grams)
      : undefined;
  const scale = world.bench.scale_g;
  const show = (name: Part) => `${weight(usual[name], scale)} g ${name === "total" ? "in all" : name}`;
  const order = parts.filter((name) => name !== given);
  if (withButter && inputs.with_butter)
    return {
      status: "answered",
      headline: `${withButter.text}, ${weight(withButter.total_g, scale)} g in all: set with butter`,
      figures: withButter.figures.map((each) => ({ ...each, name: each.name.replace(", with butter", "") })),
      rule,
      cautions: [keepFilledCold],
      leaves: { ...leftOf(withButter.total_g, chocolate) },
    };
  return {
    status: "answered",
    headline: `${order.map(show).join(", ")}${withButter ? `; or set with butter: ${withButter.text}` : ""}`,
    figures: [...order.map(figure), figure(given), ...(withButter?.figures ?? [])],
    rule: given === "total" && taught.length ? taughtRule(rule, taught) : rule,
    assumed: [
      ...(inputs.use || inputs.ratio !== undefined ? [] : [`for ${use}`]),
      ...(size
        ? [`${plain(inputs.macarons ?? 0)} macarons of ${plain(size.diameter_mm)} mm, filled with it alone`]
        : []),
    ],
    cautions: [keepFilledCold, ...oddLines(taught, world.now_ms)],
    working: [`chocolate = ${plain(row.ratio)} × cream`, ...workingOf(given, grams, row.ratio, usual)],
    leaves: {
      ...leftOf(usual.total, chocolate),
      ...(inputs.macarons !== undefined && size
        ? { macarons: inputs.of_macarons ?? inputs.macarons, ...saidSize(size) }
        : {}),
      ...(inputs.of_g !== undefined && inputs.of_g > usual.total
        ? { rest: { grams: inputs.of_g - usual.total, thing: "" } }
        : {}),
      // "in the butter one"
      ...(withButter ? { parts: [{ name: "with butter", grams: withButter.total_g }] } : {}),
      recipe: [
        { name: chocolate ? `${chocolate} chocolate` : "chocolate", grams: usual.chocolate },
        { name: "cream", grams: usual.cream },
      ],
    },
  };
}

/** Said too, and outside of what the ratio allows. */
const misfits = (grams: number | undefined, fits: readonly number[]): boolean =>
  grams !== undefined && (grams < Math.min(...fits) * 0.98 || grams > Math.max(...fits) * 1.02);

const named = (part: Part): string => (part === "total" ? "in all" : part);

/** What follows from the weight that was given. */
function workingOf(given: Part, grams: number, ratio: number, got: Weights): string[] {
  const first = {
    chocolate: `cream = ${plain(grams)} / ${plain(ratio)} = ${plain(got.cream)} g`,
    cream: `chocolate = ${plain(grams)} × ${plain(ratio)} = ${plain(got.chocolate)} g`,
    total: `cream = ${plain(grams)} / (${plain(ratio)} + 1) = ${plain(got.cream)} g; chocolate the rest, ${plain(got.chocolate)} g`,
  }[given];
  return [first, `in all ${plain(got.total)} g`];
}

/** White, set with butter for filling: the given weight by the book's three parts. */
function butterVersion(given: Part, grams: number): { text: string; figures: Figure[]; total_g: number } {
  const all = whiteWithButter.chocolate + whiteWithButter.cream + whiteWithButter.butter;
  const of = (part: number) => (grams * part) / (given === "total" ? all : whiteWithButter[given]);
  const lines = (["chocolate", "cream", "butter"] as const).map((name) => ({
    name,
    grams: of(whiteWithButter[name]),
  }));
  return {
    total_g: of(all),
    text: lines
      .filter((each) => each.name !== given)
      .map((each) => `${weight(each.grams)} g ${each.name}`)
      .join(", "),
    figures: [
      ...lines.map((each) => ({ name: `${each.name}, with butter`, value: each.grams, unit: "g" })),
      { name: "total, with butter", value: of(all), unit: "g" },
    ],
  };
}
