/** An order sized: batter with its colors, fillings with their parts and flavor, and what to buy. Weights in g. */
import { batterLoss, fillingLoss, ringShare } from "../../../data/rules/shells.ts";
import type { Figure, Item, Outcome, World } from "../contract/index.ts";
import { houseFor, houseOf, unweighedLine } from "../lib/house.ts";
import { type Lesson, learned, lessonText, oddLines, ownFigures } from "../lib/learned.ts";
import { type Line, merged } from "../lib/lines.ts";
import { shoppingFor } from "../lib/shopping.ts";
import { counted, plain, weight } from "../lib/show.ts";
import { batterFor, eggsFor, type Own, shellsFor, sizing } from "../lib/sizing.ts";
import type { DayInputs } from "./day.ts";
import { colorParts, doseOf } from "./doses.ts";
import {
  fillingName,
  fillingsOf,
  isRing,
  linesOf,
  type Portion,
  portionsOf,
  recipeFor,
  shared,
} from "./portions.ts";

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
  /** Every ingredient of the bake, flavors by the middle of their range: for its label, its cost, and the shelf. */
  recipe: Line[];
  /** What each mix weighs, in g: "split the batter half yellow" is of it. */
  masses: Record<string, number>;
}

/** Whether the order says more than how many and when: only then are the weights part of the answer. */
export const isDetailed = (inputs: Partial<DayInputs>): boolean =>
  Boolean(
    inputs.fillings?.length ||
      inputs.flavor ||
      inputs.unplaced?.length ||
      inputs.colors ||
      inputs.shell_recipe,
  );

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
  // a filling that no recipe makes is no list of itself
  const wanted = portions.map(({ filling, grams }) => linesOf(filling, grams, world));
  const made = wanted.map((lines, at) => (isItself(lines, portions[at]) ? [] : lines));
  const house = houseOf(world, inputs.shell_recipe);
  const shellLines = houseFor(house, batter_g);
  const recipes = portions.flatMap(({ filling }) => recipeFor(filling, world) ?? []);
  const shopping = shoppingFor(
    [
      ...shellLines.map((line) => ({ ...line, part: "shells" })),
      ...wanted.flatMap((lines, at) => lines.map((line) => ({ ...line, part: portions[at]?.part ?? "" }))),
    ],
    world.stock,
  );
  const whites = shopping.find((each) => each.name === "whites")?.grams ?? 0;
  const total = portions.reduce((sum, each) => sum + each.grams, 0);
  const scale = world.bench.scale_g;
  const listOf = (lines: readonly Line[]) =>
    lines.map(({ name, grams }) => `${name} ${weight(grams, scale)} g`);
  return {
    masses: { batter: batter_g },
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
    rule: `${house.name ? `shells by your "${house.name}"; ` : ""}${recipes.map((each) => `filling by your "${each.name}"; `).join("")}${sizeRule(own, size.diameter_mm, taught)}${isRing(portions) ? `; ring ${ringShare.value} %, center ${100 - ringShare.value} %` : ""}${doses.flatMap((each) => (each?.rule ? `; ${each.rule}` : [])).join("")}`,
    own:
      size.diameterFrom === "bench" ||
      taught.length > 0 ||
      house.name !== undefined ||
      recipes.length > 0 ||
      doses.some((each) => each?.own) ||
      world.stock.length > 0,
    assumed: [
      ...portions.flatMap(({ filling }) =>
        filling.base === "ganache" && !filling.chocolate && !recipeFor(filling, world)
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
    cautions: [
      ...new Set(doses.flatMap((each) => each?.cautions ?? [])),
      ...[house, ...recipes].flatMap(unweighedLine),
      ...oddLines(taught, world.now_ms),
    ],
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
    recipe: merged([
      ...shellLines,
      ...wanted.flat(),
      ...doses.flatMap((each) => (each?.figure ? [{ name: each.figure.name, grams: each.middle_g }] : [])),
    ]),
  };
}

/** A line list that only names the filling itself. */
const isItself = (lines: readonly Line[], portion: Portion | undefined): boolean =>
  lines.length === 1 && portion !== undefined && lines[0]?.name === fillingName(portion.filling);

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

/** A figure whose name is taken already carries what it is for: "whites, vanilla buttercream". */
function unique(figures: readonly (Figure & { of?: string })[]): Figure[] {
  const taken = new Set<string>();
  return figures.map(({ of, ...figure }) => {
    const name = taken.has(figure.name) && of ? `${figure.name}, ${of}` : figure.name;
    taken.add(name);
    return { ...figure, name };
  });
}
