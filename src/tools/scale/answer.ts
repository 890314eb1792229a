/** One factor over all lines of a recipe: found from whatever was given, shown with what sets it. */
import { spareShells } from "../../../data/rules/shells.ts";
import type { Figure, Outcome, Rule, World } from "../contract/index.ts";
import { isFilling } from "../formula/kind.ts";
import { eggsNote } from "../lib/eggs-told.ts";
import { egg_g, white_g } from "../lib/find.ts";
import { houseOf, unweighedLine } from "../lib/house.ts";
import {
  type Lesson,
  type Lessons,
  learned,
  lessonText,
  oddLines,
  ownFigures,
  taughtBench,
  taughtTo,
} from "../lib/learned.ts";
import { counted, listed, plain, weight, weightRange } from "../lib/show.ts";
import { batterForShells, fillingFor, type Sizing, shellsFor, sizing } from "../lib/sizing.ts";
import { withSpares } from "../lib/spares.ts";
import type { ScaleInputs } from "./scale.ts";

interface Line {
  name: string;
  grams: number;
  /** The ends of a range in a saved recipe, of which `grams` is the middle. */
  low_g?: number;
  high_g?: number;
}

interface Recipe {
  lines: Line[];
  /** Where it comes from: "house", "said", or the saved formula's name. */
  from: string;
  /** It makes shell batter. */
  shells: boolean;
  /** Lines of it without a weight, in the baker's own words. */
  unweighed?: string[];
}

interface Factor {
  factor: number;
  why: string;
  assumed: string[];
  limiting?: string;
  left: Line[];
  /** What was weighed and is no part of the recipe. */
  unused?: string[];
  /** Figures of the baker's own batches that it rests on. */
  taught?: Lesson[];
}

/** @throws never: what can't be worked out comes back as `asking`, `impossible` or `declined`. */
export function answerScale(said: ScaleInputs, given: World): Outcome {
  const world = { ...given, bench: withSpares(given.bench, said) };
  const recipe = recipeOf(said, world);
  if ("status" in recipe) return recipe;
  const found = factorOf(said, recipe, world);
  if ("status" in found) return found;
  const lines = recipe.lines.map((line) => times(line, found.factor));
  const total = lines.reduce((sum, each) => sum + each.grams, 0);
  const scale = world.bench.scale_g;
  const cautions = [
    ...unweighedLine({ name: recipe.from, unweighed: recipe.unweighed }),
    ...oddLines(found.taught ?? [], world.now_ms),
  ];
  const first = said.asked
    ? [...lines].sort((a, b) => Number(b.name === said.asked) - Number(a.name === said.asked))
    : lines;
  const left: Figure[] = found.left.map(({ name, grams }) => ({
    name: `${name} left`,
    value: grams,
    unit: "g",
  }));
  return {
    status: "answered",
    headline: `${first.map((line) => lineText(line, scale)).join(", ")}${recipe.shells ? `: ${weight(total, scale)} g batter` : ""}${found.limiting ? `; ${found.limiting} runs out first` : ""}`,
    figures: [
      ...first.map(({ name, grams, low_g, high_g }) => ({
        name,
        value: grams,
        ...(low_g !== undefined && high_g !== undefined ? { low: low_g, high: high_g } : {}),
        unit: "g",
      })),
      { name: "total", value: total, unit: "g" },
      { name: "factor", value: found.factor, unit: "" },
      ...left,
    ],
    rule: ruleOf(recipe, found),
    ...(cautions.length ? { cautions } : {}),
    assumed: [
      ...(recipe.from === "house" ? ["the house formula"] : []),
      ...(said.counted_whites ? [`${white_g} g a white (USDA SR, NDB 01124)`] : []),
      ...(said.counted_eggs ? [`${egg_g} g an egg, large (USDA SR, NDB 01123)`] : []),
      ...found.assumed,
    ],
    ...(found.unused?.length ? { unused: found.unused } : {}),
    working: [
      `factor = ${found.why} = ${plain(found.factor, 4)}`,
      ...recipe.lines.map(
        ({ name, grams }, at) =>
          `${name}: ${plain(grams)} × ${plain(found.factor, 4)} = ${plain(lines[at]?.grams ?? 0)} g`,
      ),
      ...(left.length
        ? [
            `left over: ${left.map((each) => `${each.name.replace(/ left$/, "")} ${plain(each.value ?? 0)} g`).join(", ")}`,
          ]
        : []),
    ],
    leaves: {
      mass: { grams: total, thing: recipe.shells ? "batter" : "" },
      // what is no part of the formula was in her list all the same: labels and bills go by it
      recipe: [
        ...lines.map(({ name, grams }) => ({ name, grams })),
        ...(said.have ?? []).filter((each) => !lineFor(each.name, recipe.lines)),
      ],
      ...(said.macarons !== undefined ? { macarons: said.macarons } : {}),
      ...(said.diameter_mm !== undefined ? { diameter_mm: said.diameter_mm } : {}),
    },
  };
}

/** A line so many times, the ends of its range with it. */
const times = ({ name, grams, low_g, high_g }: Line, factor: number): Line => ({
  name,
  grams: grams * factor,
  ...(low_g !== undefined && high_g !== undefined ? { low_g: low_g * factor, high_g: high_g * factor } : {}),
});

/** "whites 210 g (200 to 220 g)". */
const lineText = ({ name, grams, low_g, high_g }: Line, scale_g: number | undefined): string =>
  `${name} ${weight(grams, scale_g)} g${low_g !== undefined && high_g !== undefined ? ` (${weightRange(low_g, high_g, scale_g)})` : ""}`;

function ruleOf(recipe: Recipe, found: Factor): Rule {
  const taught = found.taught ?? [];
  const text = [`one factor over all lines, ${found.why}`, ...taught.map(lessonText)].join("; ");
  if (recipe.from === "house")
    return {
      text: `house formula, whites 100 : almond flour 130 : powdered sugar 130 : granulated sugar 100; ${text}`,
      basis: taught.length ? "your bench" : "common practice",
    };
  if (recipe.from === "said") return { text, basis: taught.length ? "your bench" : "arithmetic" };
  return { text: `your "${recipe.from}"; ${text}`, basis: "your bench" };
}

function recipeOf(said: ScaleInputs, world: World): Recipe | Outcome {
  const isHers = said.own && said.formula === undefined && houseOf(world).name === undefined;
  if ((said.pointed || isHers) && !said.lines?.length)
    return {
      status: "asking",
      headline: "Which recipe? Say its lines, for example 50 g butter, 40 g sugar.",
      question: "Which recipe?",
      slot: "lines",
    };
  if (said.lines?.length) return { lines: said.lines, from: "said", shells: isShells(said.lines) };
  const own =
    said.formula === undefined
      ? undefined
      : world.formulas.find((each) => each.name.toLowerCase() === said.formula?.toLowerCase());
  if (said.formula !== undefined && !own)
    return {
      status: "asking",
      headline: `I know no recipe called "${said.formula}". What goes into it? Say its lines, for example 100 g whites, 120 g almond flour.`,
      question: `What goes into ${said.formula}?`,
      slot: "lines",
    };
  if (own)
    return {
      lines: own.lines,
      from: own.name,
      shells: isShells(own.lines),
      ...(own.unweighed?.length ? { unweighed: own.unweighed } : {}),
    };
  const house = houseOf(world);
  const unweighed = house.unweighed ? { unweighed: house.unweighed } : {};
  return { lines: house.lines, from: house.name ?? "house", shells: true, ...unweighed };
}

const isShells = (lines: readonly Line[]) =>
  lines.some((each) => each.name === "almond flour") &&
  lines.some((each) => each.name === "whites") &&
  // almonds and whites alone are no batter yet
  lines.some((each) => /sugar/.test(each.name));

function factorOf(said: ScaleInputs, recipe: Recipe, world: World): Factor | Outcome {
  const total = recipe.lines.reduce((sum, each) => sum + each.grams, 0);
  const none: Pick<Factor, "assumed" | "left"> = { assumed: [], left: [] };
  if (said.factor !== undefined)
    return {
      factor: said.factor,
      why: plain(said.factor, 4),
      ...none,
      ...(recipe.from === "house" ? { assumed: ["100 g whites in one house recipe"] } : {}),
    };
  // "custard for 4 eggs": a recipe with eggs and no whites takes them whole
  const isOfEggs = said.whites_count !== undefined && lineFor("whites", recipe.lines)?.name === "egg";
  if (said.whites_count !== undefined && isOfEggs)
    return byStock([{ name: "egg", grams: said.whites_count * egg_g }], recipe, [
      `${egg_g} g an egg, large (USDA SR, NDB 01123)`,
    ]);
  if (said.whites_count !== undefined)
    return byStock([{ name: "whites", grams: said.whites_count * white_g }], recipe, [
      `${white_g} g a white (USDA SR, NDB 01124)`,
      ...eggsNote(said),
    ]);
  if (said.have?.length) return byStock(said.have, recipe, []);
  if (said.total_g !== undefined)
    return { factor: said.total_g / total, why: `${plain(said.total_g)} / ${plain(total)}`, ...none };
  if (said.shells !== undefined || said.macarons !== undefined) return byCount(said, recipe, total, world);
  if (recipe.from === "house" && said.unsized) {
    const question = "For how many macarons, or for how many grams of whites?";
    return { status: "asking", headline: question, question, slot: "macarons" };
  }
  if (recipe.from !== "said")
    return {
      factor: 1,
      why: "1",
      left: [],
      assumed: recipe.from === "house" ? ["100 g whites in one house recipe"] : [],
    };
  return {
    status: "asking",
    headline: "Scale it to what: a factor, a total weight, or what you have of one ingredient?",
    question: "Scale it to what: a factor, a total weight, or what you have of one ingredient?",
    slot: "factor",
  };
}

/** Batter for so many shells or macarons, by the book or by what her batches take. */
function byCount(said: ScaleInputs, recipe: Recipe, total: number, world: World): Factor {
  const size = sizing(said.diameter_mm, world.bench);
  const lessons = learned(world, size.diameter_mm);
  if (!recipe.shells && isFilling(recipe.lines)) return toFill(said, total, size, lessons);
  const spares = said.shells === undefined ? taughtTo(world.bench, lessons, ["spares"]) : [];
  const bench = taughtBench(world.bench, spares);
  const shells = said.shells ?? shellsFor(said.macarons ?? 1, bench);
  const batter = batterForShells(shells, size.diameter_mm, ownFigures(lessons));
  const { shell, "batter loss": loss } = lessons;
  return {
    factor: batter / total,
    why: `${plain(batter)} g batter for ${shells} shells / ${plain(total)}`,
    assumed: [
      ...(size.diameterFrom === "book" ? [`${plain(size.diameter_mm)} mm shells`] : []),
      ...(said.shells === undefined
        ? [`${plain(bench.spare_percent ?? spareShells.value)} % spare shells`]
        : []),
    ],
    left: [],
    taught: [...(shell ? [shell] : []), ...(loss ? [loss] : []), ...spares],
  };
}

/** A filling's recipe for so many macarons: what they take of it as their only filling, no spares. */
function toFill(said: ScaleInputs, total: number, size: Sizing, lessons: Lessons): Factor {
  const macarons = said.macarons ?? Math.floor((said.shells ?? 0) / 2);
  const grams = fillingFor(macarons, size.diameter_mm, ownFigures(lessons));
  const taught = [lessons.filling, lessons["filling loss"]].filter((each) => each !== undefined);
  return {
    factor: grams / total,
    why: `${plain(grams)} g filling for ${counted(macarons, "macaron")} / ${plain(total)}`,
    assumed: [
      ...(size.diameterFrom === "book" ? [`${plain(size.diameter_mm)} mm shells`] : []),
      "it is their only filling",
    ],
    left: [],
    taught,
  };
}

/** The scarcest ingredient sets the size; what is left of the others is given. */
function byStock(have: readonly Line[], recipe: Recipe, assumed: string[]): Factor | Outcome {
  const matched = have.flatMap((each) => {
    const line = lineFor(each.name, recipe.lines);
    return line ? [{ ...each, line, factor: each.grams / line.grams }] : [];
  });
  const strangers = have.filter((each) => !lineFor(each.name, recipe.lines));
  // butter and vanilla with a little sugar are no shells: most of it has to belong
  if (matched.length < strangers.length || matched.length === 0)
    return {
      status: "impossible",
      headline: `There is no ${listed(
        strangers.map((each) => each.name),
        "or",
      )} in ${recipe.from === "house" ? "the house formula" : "that recipe"}; it has ${listed(recipe.lines.map((each) => each.name))}.`,
    };
  const least = matched.reduce((a, b) => (b.factor < a.factor ? b : a));
  const left = matched
    .filter((each) => each !== least)
    // two that run out together leave nothing, and no dust of the division
    .map((each) => {
      const grams = each.grams - each.line.grams * least.factor;
      return { name: each.line.name, grams: Math.abs(grams) < each.grams * 1e-12 ? 0 : grams };
    });
  return {
    factor: least.factor,
    why: `${plain(least.grams)} / ${plain(least.line.grams)} of ${least.line.name}`,
    assumed: [...assumed, ...strangers.map((each) => `${each.name} is no part of it and was left out`)],
    unused: strangers.map((each) => each.name),
    ...(matched.length > 1 ? { limiting: least.line.name } : {}),
    left,
  };
}

const sameThing: Record<string, readonly string[]> = {
  "granulated sugar": ["sugar"],
  sugar: ["granulated sugar"],
  whites: ["egg", "pasteurised whites"],
  "salted butter": ["butter"],
};

/** The line an ingredient belongs to; "sugar" is the granulated where the recipe names that. */
function lineFor(name: string, lines: readonly Line[]): Line | undefined {
  return (
    lines.find((each) => each.name === name) ??
    lines.find((each) => sameThing[each.name]?.includes(name) || sameThing[name]?.includes(each.name)) ??
    lines.find((each) => / chocolate$/.test(each.name) && name === "chocolate")
  );
}
