/** An order sized: batter with its colors, fillings with their parts and flavor, and what to buy. Weights in g. */
import { buttercreamParts } from "../../../data/rules/buttercream.ts";
import { ratios } from "../../../data/rules/ganache.ts";
import { batterLoss, fillingLoss, ringShare } from "../../../data/rules/shells.ts";
import { bases } from "../../../data/words/things.ts";
import { shoppingFor } from "../buy/answer.ts";
import type { Figure, Item, Outcome, World } from "../contract/index.ts";
import { answerDose } from "../dose/answer.ts";
import { type Lesson, learned, lessonText, oddLines, ownFigures } from "../lib/learned.ts";
import type { Line } from "../lib/lines.ts";
import { counted, listed, plain, weight, weightRange } from "../lib/show.ts";
import { batterFor, eggsFor, fillingFor, houseLines, type Own, shellsFor, sizing } from "../lib/sizing.ts";
import { split } from "../split/split.ts";
import type { DayInputs } from "./day.ts";
import type { Filling } from "./order.ts";

/** What sizing adds to the answer of a day. */
export interface Sized {
  figures: Figure[];
  items: Item[];
  rule: string;
  /** A bottle or setting of the baker's own went in. */
  own: boolean;
  assumed: string[];
  cautions: string[];
  working: string[];
  parts?: { name: string; grams: number }[];
}

/** A filling with its share: for how many macarons, of how many fillings in each. */
interface Portion {
  filling: Filling;
  /** How figures name it: "ring", "center", "filling", or its own name. */
  part: string;
  grams: number;
}

/** "apricot ganache", "white chocolate ganache". */
export const fillingName = ({ base, of, flavor, chocolate }: Filling): string =>
  [of || flavor?.taste, chocolate && `${chocolate} chocolate`, base].filter(Boolean).join(" ");

/** Whether the order says more than how many and when: only then are the weights part of the answer. */
export const isDetailed = (inputs: Partial<DayInputs>): boolean =>
  Boolean(inputs.fillings?.length || inputs.flavor || inputs.unplaced?.length || inputs.colors);

/** The fillings in force: those that were named, else a buttercream and a ganache; a loose flavor goes into each. */
export function fillingsOf(inputs: Partial<DayInputs>): Filling[] {
  const named: Filling[] = inputs.fillings ?? [{ base: "ganache" }, { base: "buttercream" }];
  const { flavor } = inputs;
  return flavor ? named.map((each) => (each.flavor || each.of ? each : { ...each, flavor })) : named;
}

/** @returns the sizes, or an outcome that says why the order can't be */
export function sizedOrder(
  inputs: DayInputs,
  macarons: number,
  trays: number,
  world: World,
): Sized | Outcome {
  const size = sizing(inputs.diameter_mm, world.bench);
  const lessons = learned(world, size.diameter_mm);
  const own = ownFigures(lessons);
  const { shell, filling: one, "batter loss": batterLost, "filling loss": fillingLost } = lessons;
  const taught = [shell, batterLost, one, fillingLost].filter((lesson) => lesson !== undefined);
  const batter_g = batterFor(macarons, size.diameter_mm, world.bench, own);
  const shells = shellsFor(macarons, world.bench);
  const colors = colorParts(inputs, batter_g, world);
  if (colors && "status" in colors) return colors;
  const fillings = shared(fillingsOf(inputs), macarons);
  if ("status" in fillings) return fillings;
  const portions = portionsOf(fillings, macarons, size.diameter_mm, own);
  const doses = portions.map((each) => doseOf(each, world));
  const made = portions.map(({ filling, grams }) => linesOf(filling, grams));
  const shellLines = houseLines(batter_g);
  const shopping = shoppingFor(
    [
      ...shellLines.map((line) => ({ ...line, part: "shells" })),
      ...made.flatMap((lines, at) => lines.map((line) => ({ ...line, part: portions[at]?.part ?? "" }))),
    ],
    world.stock,
  );
  const whites = shopping.find((each) => each.name === "whites")?.grams ?? 0;
  const total = portions.reduce((sum, each) => sum + each.grams, 0);
  const scale = world.bench.scale_g;
  const listOf = (lines: readonly Line[]) =>
    lines.map(({ name, grams }) => `${name} ${weight(grams, scale)} g`);
  return {
    figures: unique([
      { name: "macarons", value: macarons, unit: "macarons" },
      { name: "shells", value: shells, unit: "shells" },
      { name: "trays", value: trays, unit: "trays" },
      { name: "batter", value: batter_g, unit: "g" },
      ...(colors ?? []).map((each): Figure => ({ name: each.name, value: each.grams, unit: "g" })),
      ...shellLines.map((each): Figure => ({ name: each.name, value: each.grams, unit: "g" })),
      ...(portions.length > 1 ? [{ name: "filling", value: total, unit: "g" }] : []),
      ...portions.flatMap(({ part, grams, filling }, at): (Figure & { of?: string })[] => [
        { name: part, value: grams, unit: "g" },
        ...(made[at] ?? []).map((each) => ({
          name: each.name.replace(/^(?:dark|milk|white) chocolate$/, "chocolate"),
          value: each.grams,
          unit: "g",
          of: fillingName(filling),
        })),
        ...(doses[at]?.figure ? [{ ...(doses[at]?.figure as Figure), of: fillingName(filling) }] : []),
      ]),
      ...(whites > 0 ? [{ name: "eggs", value: eggsFor(whites), unit: "eggs" }] : []),
    ]),
    items: [
      {
        part: "batter",
        grams: batter_g,
        what: `${counted(shells, "shell")}, ${counted(trays, "tray")}`,
        of: listOf(shellLines),
      },
      ...(colors ?? []).map((each): Item => ({ part: each.name, grams: each.grams, what: "of the batter" })),
      ...portions.map(({ part, grams, filling }, at): Item => {
        const of = [...listOf(made[at] ?? []), ...(doses[at] ? [doses[at]?.text ?? ""] : [])];
        const what = fillingName(filling);
        return { part: part === what ? "filling" : part, grams, what, ...(of.length ? { of } : {}) };
      }),
      {
        part: "to buy",
        of: shopping.length
          ? shopping.map(
              (each) =>
                `${each.name} ${weight(each.grams, scale)} g${each.name === "whites" ? ` (${counted(eggsFor(each.grams), "egg")})` : ""}${each.packs ? ` (${each.packs} × ${plain(each.pack_g ?? 0)} g)` : ""}`,
            )
          : ["nothing, it is all on your shelf"],
      },
    ],
    rule: `${sizeRule(own, size.diameter_mm, taught)}${isRing(portions) ? `; ring ${ringShare.value} %, center ${100 - ringShare.value} %` : ""}${doses.flatMap((each) => (each?.rule ? `; ${each.rule}` : [])).join("")}`,
    own:
      size.diameterFrom === "bench" ||
      taught.length > 0 ||
      doses.some((each) => each?.own) ||
      world.stock.length > 0,
    assumed: [
      ...portions.flatMap(({ filling }) =>
        filling.base === "ganache" && !filling.chocolate
          ? [`dark chocolate in the ${fillingName(filling)}`]
          : [],
      ),
      ...(isRing(portions) && !fillings.some((each) => each.part)
        ? [`${portions.map((each) => `${fillingName(each.filling)} as ${each.part}`).join(", ")}`]
        : []),
      ...(portions.length > 2 && !fillings.every((each) => each.macarons)
        ? ["fillings in equal shares"]
        : []),
      ...(inputs.colors?.assumed ? ["colors in equal parts"] : []),
      ...(inputs.unplaced?.length
        ? [`no dose for ${inputs.unplaced.join(" and ")}: say which filling each goes into`]
        : []),
      ...new Set(doses.flatMap((each) => each?.assumed ?? [])),
      "flavor and color not on the list to buy",
    ],
    cautions: [...new Set(doses.flatMap((each) => each?.cautions ?? [])), ...oddLines(taught, world.now_ms)],
    working: [
      own.shell_g === undefined
        ? `${plain(shells)} shells, batter ${plain(batter_g)} g with ${plain(own.batterLoss_percent ?? batterLoss.value)} % left in bowl and bag`
        : `${plain(shells)} shells × ${plain(own.shell_g, 4)} = ${plain(batter_g)} g batter`,
      own.filling_g === undefined
        ? `fillings ${plain(total)} g with ${plain(own.fillingLoss_percent ?? fillingLoss.value)} % left in bowl and bag`
        : `fillings ${plain(macarons)} × ${plain(own.filling_g, 4)} = ${plain(total)} g`,
      ...portions.map(({ part, grams, filling }) => `${part}: ${fillingName(filling)} ${plain(grams)} g`),
      ...doses.flatMap((each) => each?.working ?? []),
    ],
    ...(colors ? { parts: colors } : {}),
  };
}

/** How batter and fillings were sized: the book's formulas, or what her batches take. */
function sizeRule(own: Own, diameter_mm: number, taught: readonly Lesson[]): string {
  const kept = (loss: number) => plain(1 - loss / 100, 4);
  const book = [
    ...(own.shell_g === undefined
      ? [`batter = shells × 0.53 d² / ${kept(own.batterLoss_percent ?? batterLoss.value)}`]
      : []),
    ...(own.filling_g === undefined
      ? [`filling = macarons × 0.42 d² / ${kept(own.fillingLoss_percent ?? fillingLoss.value)}`]
      : []),
    `d ${plain(diameter_mm / 10)} cm`,
  ].join(", ");
  return [book, ...taught.map(lessonText)].join("; ");
}

const isRing = (portions: readonly Portion[]) => portions.some((each) => each.part === "ring");

/** A figure whose name is taken already carries what it is for: "whites, vanilla buttercream". */
function unique(figures: readonly (Figure & { of?: string })[]): Figure[] {
  const taken = new Set<string>();
  return figures.map(({ of, ...figure }) => {
    const name = taken.has(figure.name) && of ? `${figure.name}, ${of}` : figure.name;
    taken.add(name);
    return { ...figure, name };
  });
}

/** Where fillings have numbers of their own, one without takes the rest; numbers that don't add up are said. */
function shared(fillings: Filling[], macarons: number): Filling[] | Outcome {
  const own = fillings.flatMap((each) => each.macarons ?? []);
  if (own.length === 0) return fillings;
  const rest = macarons - own.reduce((sum, each) => sum + each, 0);
  const open = fillings.length - own.length;
  if (open === 0 && rest === 0) return fillings;
  if (open === 1 && rest > 0)
    return fillings.map((each) => (each.macarons === undefined ? { ...each, macarons: rest } : each));
  return {
    status: "impossible",
    headline: `${listed(own.map((each) => plain(each)))} of ${plain(macarons)} macarons: say for every filling how many it fills, so that they add up.`,
  };
}

/** Of two fillings 60 % are ring and 40 % center; fillings of so many macarons each take what those take. */
function portionsOf(
  fillings: readonly Filling[],
  macarons: number,
  diameter_mm: number,
  own: Own,
): Portion[] {
  const all = fillingFor(macarons, diameter_mm, own);
  const [first, second] = fillings;
  if (fillings.every((each) => each.macarons !== undefined))
    return fillings.map((filling) => ({
      filling,
      part: fillings.length === 1 ? "filling" : fillingName(filling),
      grams: fillingFor(filling.macarons ?? 0, diameter_mm, own),
    }));
  if (first && !second) return [{ filling: first, part: "filling", grams: all }];
  if (first && second && fillings.length === 2) {
    const ring = ringOf(first, second);
    const center = ring === first ? second : first;
    return [
      { filling: ring, part: "ring", grams: (all * ringShare.value) / 100 },
      { filling: center, part: "center", grams: (all * (100 - ringShare.value)) / 100 },
    ];
  }
  return fillings.map((filling) => ({ filling, part: fillingName(filling), grams: all / fillings.length }));
}

/** The ring is what was said to be it, else the one that stands firmer: a butter filling around a ganache or jam. */
function ringOf(first: Filling, second: Filling): Filling {
  if (first.part === "ring" || second.part === "center") return first;
  if (second.part === "ring" || first.part === "center") return second;
  const isButter = ({ base }: Filling) => bases.find((each) => each.id === base)?.column === "buttercream";
  return !isButter(first) && isButter(second) ? second : first;
}

/** What a filling is made of, where there is a rule for it. */
function linesOf({ base, chocolate }: Filling, total_g: number): Line[] {
  if (base === "buttercream") {
    const all = buttercreamParts.reduce((sum, each) => sum + each.parts, 0);
    return buttercreamParts.map(({ name, parts }) => ({ name, grams: (total_g * parts) / all }));
  }
  if (base !== "ganache") return [];
  const { ratio } = ratios[chocolate ?? "dark"].piping;
  return [
    { name: `${chocolate ?? "dark"} chocolate`, grams: (total_g * ratio) / (ratio + 1) },
    { name: "cream", grams: total_g / (ratio + 1) },
  ];
}

interface Dosed {
  figure?: Figure;
  text: string;
  rule?: string;
  own: boolean;
  assumed: string[];
  cautions: string[];
  working: string[];
}

/** The flavor into a filling, by the dose calculator: its table, its bottles, its cautions. */
function doseOf({ filling, grams }: Portion, world: World): Dosed | undefined {
  const { flavor, base } = filling;
  if (!flavor) return undefined;
  const outcome = answerDose({ ...flavor, base, base_g: grams }, world);
  const [dosed] = outcome.figures ?? [];
  const name = dosed?.name === "flavor" && flavor.taste ? `${flavor.taste} flavor` : dosed?.name;
  if (!dosed || !name)
    return { text: outcome.headline, own: false, assumed: [], cautions: outcome.cautions ?? [], working: [] };
  const [low, high] = [dosed.low ?? dosed.value ?? 0, dosed.high ?? dosed.value ?? 0];
  return {
    figure: { ...dosed, name },
    text: `${name} ${weightRange(low, high, world.bench.scale_g)}`,
    rule: `${name} ${outcome.rule?.text}`,
    own: outcome.rule?.basis === "your bench",
    assumed: outcome.assumed ?? [],
    cautions: outcome.cautions ?? [],
    working: outcome.working ?? [],
  };
}

/** The batter by color, as the split calculator splits a bowl. */
function colorParts(
  { colors }: DayInputs,
  total_g: number,
  world: World,
): { name: string; grams: number }[] | Outcome | undefined {
  if (!colors) return undefined;
  const { assumed: _assumed, ...shares } = colors;
  const outcome = split.compute({ total_g, thing: "batter", ...shares }, world);
  return outcome.status === "answered" ? (outcome.leaves?.parts ?? []) : outcome;
}
