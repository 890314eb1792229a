/** Works a ganache out. ratio = chocolate / cream by weight; everything else follows from it. */
import {
  type Chocolate,
  type RatioRow,
  ratios,
  split,
  type Use,
  useNames,
  whiteWithButter,
} from "../../../data/rules/ganache.ts";
import type { Figure, Outcome, Rule, World } from "../contract/index.ts";
import { type Lesson, learned, lessonText, oddLines, ownFigures } from "../lib/learned.ts";
import { listed, plain, weight } from "../lib/show.ts";
import { fillingFor, saidSize, sizing } from "../lib/sizing.ts";
import { answerComposition } from "./composition.ts";
import type { GanacheInputs } from "./ganache.ts";
import { answerMoves } from "./moves.ts";
import { answerTarget } from "./target.ts";

const keepCold =
  "Keep ganache-filled macarons cold, at 5 °C (41 °F) or below; your local food authority has the last word.";

/** @throws never: what can't be worked out comes back as `asking` or `impossible`. */
export function answerGanache(inputs: GanacheInputs, world: World): Outcome {
  const assumed = inputs.by_volume ? ["cream weighed by the portion table"] : [];
  const outcome = route(inputs, world);
  return assumed.length && outcome.status === "answered"
    ? { ...outcome, assumed: [...(outcome.assumed ?? []), ...assumed] }
    : outcome;
}

function route(inputs: GanacheInputs, world: World): Outcome {
  if (inputs.unsure_g !== undefined && inputs.lines)
    return asking(
      `${plain(inputs.unsure_g)} g of what: ${listed(
        inputs.lines.map((each) => each.name),
        "or",
      )}?`,
      "unsure_g",
    );
  if (inputs.want === "composition") return answerComposition(inputs, world);
  if (inputs.mixed)
    return {
      status: "declined",
      headline: `I have a ratio for each chocolate, none for ${listed(inputs.mixed)} together. Make a ganache of each and stir them into one another, or save your own recipe.`,
    };
  if (inputs.other)
    return {
      status: "declined",
      headline: `I have ratios for dark, milk and white chocolate, none for ${inputs.other}: its fat and sugar differ. Go by its maker's, or save your own recipe.`,
    };
  if (inputs.unsure_g !== undefined)
    return asking(`Is the ${plain(inputs.unsure_g)} g the chocolate or the cream?`, "unsure_g");
  if (inputs.want === "moves") return answerMoves(inputs, world);
  if (inputs.want === "target") return answerTarget(inputs, world);
  if (inputs.want === "split") return mendSplit(inputs, world);
  const { chocolate } = inputs;
  const weighs = [inputs.chocolate_g, inputs.cream_g, inputs.total_g, inputs.macarons].some(
    (each) => each !== undefined,
  );
  if (inputs.ratio !== undefined && chocolate && !weighs) return judged(inputs.ratio, chocolate, inputs.use);
  if (inputs.ratio !== undefined && (inputs.chocolate_g === undefined || inputs.cream_g === undefined))
    return build(inputs, chocolate, inputs.use ?? "piping", ownRow(inputs.ratio), world);
  if (!chocolate) return asking("Which chocolate is it: dark, milk or white?", "chocolate");
  const use = inputs.use ?? "piping";
  const row = ratios[chocolate][use];
  if (inputs.want === "ratio") return ratioOf(chocolate, use, row, inputs.use === undefined);
  if (inputs.want === "mend") return mend(inputs, chocolate, use, row, world);
  if (inputs.chocolate_g !== undefined && inputs.cream_g !== undefined)
    return check(inputs.chocolate_g, inputs.cream_g, chocolate, inputs.use);
  return build(inputs, chocolate, use, row, world);
}

/** "is 1:1 dark ganache ok for piping": where a ratio lies to the book's range, or what it is good for. */
function judged(ratio: number, chocolate: Chocolate, use: Use | undefined): Outcome {
  if (!use) {
    const uses = usesOf(ratio, chocolate);
    return {
      status: "answered",
      headline: `${plain(ratio)} : 1, good for ${listed(
        uses.map((each) => useNames[each] ?? each),
        "or",
      )}`,
      figures: [{ name: "ratio", value: ratio, unit: ":1" }],
      rule: ruleOf(chocolate, uses[0] as Use, ratios[chocolate][uses[0] as Use]),
      cautions: [keepCold],
    };
  }
  const row = ratios[chocolate][use];
  const place = ratio < row.low - 1e-9 ? "under" : ratio > row.high + 1e-9 ? "over" : "within";
  return {
    status: "answered",
    headline: `${plain(ratio)} : 1 is ${place} the ${plain(row.low)}-${plain(row.high)} : 1 of ${chocolate} chocolate ${useNames[use] ?? use}`,
    figures: [{ name: "ratio", value: ratio, low: row.low, high: row.high, unit: ":1" }],
    rule: ruleOf(chocolate, use, row),
    cautions: [keepCold],
  };
}

/** A ratio of her own: no range, and nothing of the book's. */
const ownRow = (ratio: number): RatioRow => ({ ratio, low: ratio, high: ratio, basis: "arithmetic" });

const asking = (question: string, slot: string): Outcome => ({
  status: "asking",
  headline: question,
  question,
  slot,
});

const ruleOf = (chocolate: Chocolate, use: Use, row: RatioRow): Rule => ({
  text: `${chocolate} chocolate : cream ${plain(row.ratio)} : 1 for ${use === "piping" ? use : `a ${use} one`} (${plain(row.low)}-${plain(row.high)} : 1)`,
  basis: row.basis,
  ...(row.source ? { source: row.source } : {}),
});

/** "what ratio for a milk ganache I can pipe": the table's own figure. */
const ratioOf = (chocolate: Chocolate, use: Use, row: RatioRow, assumed: boolean): Outcome => ({
  status: "answered",
  headline: `${plain(row.ratio)} : 1, ${chocolate} chocolate to cream by weight, for ${useNames[use] ?? use}`,
  figures: [{ name: "ratio", value: row.ratio, low: row.low, high: row.high, unit: ":1" }],
  rule: ruleOf(chocolate, use, row),
  ...(assumed ? { assumed: [`for ${use}`] } : {}),
  cautions: [keepCold],
});

/** The ratio's rule, and how much it was made for by her own batches. */
const taughtRule = (rule: Rule, taught: readonly Lesson[]): Rule => ({
  text: [rule.text, ...taught.map(lessonText)].join("; "),
  basis: "your bench",
});

function build(
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
  const given =
    inputs.chocolate_g !== undefined
      ? "chocolate"
      : inputs.cream_g !== undefined
        ? "cream"
        : total_g !== undefined
          ? "total"
          : undefined;
  if (!given)
    return asking(
      `How many grams of ${chocolate ? `${chocolate} ` : ""}chocolate or cream, or of ganache in all?`,
      "chocolate_g",
    );
  const grams = inputs.chocolate_g ?? inputs.cream_g ?? total_g ?? 0;
  if (grams <= 0) return { status: "impossible", headline: "There has to be some cream to build on." };
  const parts = (ratio: number) => {
    const cream = given === "cream" ? grams : given === "chocolate" ? grams / ratio : grams / (ratio + 1);
    const choc = given === "chocolate" ? grams : given === "cream" ? grams * ratio : grams - cream;
    return { chocolate: choc, cream, total: choc + cream };
  };
  const [usual, loosest, stiffest] = [parts(row.ratio), parts(row.low), parts(row.high)];
  const figure = (name: "chocolate" | "cream" | "total"): Figure => {
    const ends = [loosest[name], stiffest[name]].sort((a, b) => a - b) as [number, number];
    return ends[1] - ends[0] < 1e-9
      ? { name, value: usual[name], unit: "g" }
      : { name, value: usual[name], low: ends[0], high: ends[1], unit: "g" };
  };
  const withButter =
    chocolate === "white" && use === "piping" && inputs.ratio === undefined
      ? butterVersion(given, grams)
      : undefined;
  const scale = world.bench.scale_g;
  const show = (name: "chocolate" | "cream" | "total") =>
    `${weight(usual[name], scale)} g ${name === "total" ? "in all" : name}`;
  const order = (["chocolate", "cream", "total"] as const).filter((name) => name !== given);
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
    cautions: [keepCold, ...oddLines(taught, world.now_ms)],
    working: [`chocolate = ${plain(row.ratio)} × cream`, ...workingOf(given, grams, row.ratio, usual)],
    leaves: {
      mass: { grams: usual.total, thing: "ganache" },
      ...(inputs.macarons !== undefined && size
        ? { macarons: inputs.of_macarons ?? inputs.macarons, ...saidSize(size) }
        : {}),
      ...(chocolate ? { chocolate } : {}),
      filling: "ganache",
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

function workingOf(
  given: "chocolate" | "cream" | "total",
  grams: number,
  ratio: number,
  got: { chocolate: number; cream: number; total: number },
): string[] {
  const first = {
    chocolate: `cream = ${plain(grams)} / ${plain(ratio)} = ${plain(got.cream)} g`,
    cream: `chocolate = ${plain(grams)} × ${plain(ratio)} = ${plain(got.chocolate)} g`,
    total: `cream = ${plain(grams)} / (${plain(ratio)} + 1) = ${plain(got.cream)} g; chocolate the rest, ${plain(got.chocolate)} g`,
  }[given];
  return [first, `in all ${plain(got.total)} g`];
}

function butterVersion(
  given: "chocolate" | "cream" | "total",
  grams: number,
): { text: string; figures: Figure[]; total_g: number } {
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

/** Which use a ratio suits: the nearest default by the logarithm, and both where two are as near. */
function usesOf(ratio: number, chocolate: Chocolate): Use[] {
  const apart = (Object.keys(ratios[chocolate]) as Use[]).map((use) => ({
    use,
    by: Math.abs(Math.log(ratio / ratios[chocolate][use].ratio)),
  }));
  const least = Math.min(...apart.map((each) => each.by));
  return apart.filter((each) => each.by - least < 1e-9).map((each) => each.use);
}

function check(chocolate_g: number, cream_g: number, chocolate: Chocolate, asked: Use | undefined): Outcome {
  if (cream_g <= 0) return { status: "impossible", headline: "Without cream there is no ganache to judge." };
  const ratio = chocolate_g / cream_g;
  const uses = usesOf(ratio, chocolate);
  const near = uses.map((use) => `${use} ${plain(ratios[chocolate][use].ratio)}`).join(", ");
  return {
    status: "answered",
    headline: `${plain(ratio)} : 1, good for ${listed(
      uses.map((use) => useNames[use]),
      "or",
    )}${asked && !uses.includes(asked) ? `; ${forUse(ratio, asked, ratios[chocolate][asked])}` : ""}`,
    figures: [
      { name: "ratio", value: ratio, unit: ":1" },
      { name: "total", value: chocolate_g + cream_g, unit: "g" },
    ],
    rule: { text: `nearest ratio for ${chocolate} chocolate: ${near} : 1`, basis: "common practice" },
    cautions: [keepCold],
    working: [
      `ratio = ${plain(chocolate_g)} / ${plain(cream_g)} = ${plain(ratio, 3)}`,
      `nearest by the logarithm: ${near}`,
    ],
    leaves: { mass: { grams: chocolate_g + cream_g, thing: "ganache" }, chocolate, filling: "ganache" },
  };
}

/** "is it ok for piping": inside the range of that use or not, whichever default is nearest. */
const forUse = (ratio: number, use: Use, { low, high }: RatioRow): string =>
  `for ${use} it is ${ratio < low - 1e-9 ? "under" : ratio > high + 1e-9 ? "over" : "within"} the ${plain(low)} to ${plain(high)} : 1`;

function mend(inputs: GanacheInputs, chocolate: Chocolate, use: Use, row: RatioRow, world: World): Outcome {
  const { chocolate_g, cream_g } = inputs;
  if (chocolate_g === undefined) return asking("How many grams of chocolate are in it?", "chocolate_g");
  if (cream_g === undefined) return asking("How many grams of cream are in it?", "cream_g");
  const loose = inputs.fault !== "stiff";
  const add_g = loose ? row.ratio * cream_g - chocolate_g : chocolate_g / row.ratio - cream_g;
  const what = loose ? "chocolate" : "cream";
  const formula = loose
    ? `${plain(row.ratio)} × ${plain(cream_g)} − ${plain(chocolate_g)}`
    : `${plain(chocolate_g)} / ${plain(row.ratio)} − ${plain(cream_g)}`;
  const rule = ruleOf(chocolate, use, row);
  if (add_g <= 1e-9)
    return {
      status: "answered",
      headline: loose
        ? "The ratio isn't the cause: chill it, 30-60 min in the fridge, before you judge it."
        : "The ratio isn't the cause: warm it gently and stir, then let it come to room temperature.",
      rule,
      leaves: { mass: { grams: chocolate_g + cream_g, thing: "ganache" }, chocolate, filling: "ganache" },
      working: [`${what} to add = ${formula} = ${plain(add_g)} g, not above zero`],
    };
  const total = chocolate_g + cream_g + add_g;
  const { have_g } = inputs;
  const now = have_g !== undefined && have_g < add_g - 1e-9 ? have_g : undefined;
  const ratioNow =
    now === undefined ? 0 : loose ? (chocolate_g + now) / cream_g : chocolate_g / (cream_g + now);
  const enough =
    have_g === undefined
      ? ""
      : now === undefined
        ? `: ${plain(have_g)} g is enough`
        : `: with ${plain(now)} g it comes to ${plain(ratioNow)} : 1 of the ${plain(row.ratio)} : 1`;
  return {
    status: "answered",
    headline: `Add ${weight(add_g, world.bench.scale_g)} g ${what}${enough}`,
    figures: [
      { name: `add ${what}`, value: add_g, unit: "g" },
      { name: "total", value: total, unit: "g" },
    ],
    rule: {
      ...rule,
      text: `${rule.text}; ${loose ? "chocolate to add = ratio × cream − chocolate" : "cream to add = chocolate / ratio − cream"}`,
    },
    ...(inputs.use ? {} : { assumed: [`for ${use}`] }),
    cautions: [
      loose
        ? "Melt the chocolate first and stir it in warm, from the center."
        : "Warm the cream first and stir it in from the center.",
      keepCold,
    ],
    working: [`${what} to add = ${formula} = ${plain(add_g)} g`],
    leaves: { mass: { grams: total, thing: "ganache" }, chocolate, filling: "ganache" },
  };
}

function mendSplit(inputs: GanacheInputs, world: World): Outcome {
  const total_g =
    inputs.total_g ??
    (inputs.chocolate_g !== undefined && inputs.cream_g !== undefined
      ? inputs.chocolate_g + inputs.cream_g
      : undefined);
  if (total_g === undefined) return asking("How many grams of ganache are in the bowl?", "total_g");
  const [step, most] = [(total_g * split.atATime_percent) / 100, (total_g * split.atMost_percent) / 100];
  const scale = world.bench.scale_g;
  const { stirred_g = 0 } = inputs;
  if (stirred_g > 0) return goOn(stirred_g, step, most, scale);
  return {
    status: "answered",
    headline: `Bring it to ${split.low_c}-${split.high_c} °C, then stir in warm cream or milk from the center, ${weight(step, scale)} g at a time, ${weight(most, scale)} g at most`,
    figures: [
      { name: "at a time", value: step, unit: "g" },
      { name: "at most", value: most, unit: "g" },
      { name: "temperature", low: split.low_c, high: split.high_c, unit: "°C" },
    ],
    rule: {
      text: `${split.low_c}-${split.high_c} °C, then ${split.atATime_percent} % of the weight at a time, ${split.atMost_percent} % at most`,
      basis: split.basis,
    },
    cautions: ["If it is still split after that, use it in something baked.", keepCold],
    working: [
      `${plain(total_g)} × ${split.atATime_percent} / 100 = ${plain(step)} g`,
      `${plain(total_g)} × ${split.atMost_percent} / 100 = ${plain(most)} g`,
    ],
  };
}

/** How much may still go into one that stays split. */
function goOn(stirred_g: number, step: number, most: number, scale: number | undefined): Outcome {
  const left = most - stirred_g;
  const rule: Rule = {
    text: `${split.atATime_percent} % of the weight at a time, ${split.atMost_percent} % at most`,
    basis: split.basis,
  };
  const working = [`${plain(most)} g at most - ${plain(stirred_g)} g stirred in = ${plain(left)} g`];
  if (left <= most * 1e-9)
    return {
      status: "answered",
      headline: `Stop: ${weight(stirred_g, scale)} g is all that it takes, ${weight(most, scale)} g at most. Use it in something baked.`,
      figures: [{ name: "at most", value: most, unit: "g" }],
      rule,
      cautions: [keepCold],
      working,
    };
  return {
    status: "answered",
    headline: `Go on at ${split.low_c}-${split.high_c} °C, ${weight(Math.min(step, left), scale)} g at a time: ${weight(left, scale)} g of the ${weight(most, scale)} g are left`,
    figures: [
      { name: "at a time", value: Math.min(step, left), unit: "g" },
      { name: "left", value: left, unit: "g" },
    ],
    rule,
    cautions: ["If it is still split after that, use it in something baked.", keepCold],
    working,
  };
}
