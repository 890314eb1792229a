/** Adds up what a bake needs and takes off what is on the shelf. */
import { batterLoss, fillingLoss, spareShells } from "../../../data/rules/shells.ts";
import type { Outcome, World } from "../contract/index.ts";
import type { Filling } from "../day/order.ts";
import { fillingName, linesOf, portionsOf, recipeFor, shared } from "../day/portions.ts";
import { isFilling } from "../formula/kind.ts";
import { asking } from "../lib/asking.ts";
import { houseFor, houseOf, unweighedLine } from "../lib/house.ts";
import { learned, lessonText, oddLines, ownFigures, taughtBench, taughtTo } from "../lib/learned.ts";
import { sameIngredient } from "../lib/lines.ts";
import { figuresOf, itemsOf, lessStock, shoppingList, toBuy } from "../lib/shopping.ts";
import { counted, listed, plain, weight } from "../lib/show.ts";
import { batterFor, batterForShells, eggsFor, saidSize, shellsFor, sizing } from "../lib/sizing.ts";
import { withSpares } from "../lib/spares.ts";
import type { BuyInputs } from "./buy.ts";

const eggMix = "33 g of white from an egg";

/** The shelf with what she says she has, in the place of what it knew of it. */
function withSaid(world: World, have: BuyInputs["have"]): World {
  if (!have) return world;
  const isSaid = (name: string) => have.some((each) => sameIngredient(each.name, name));
  const priceOf = (name: string) => world.stock.findLast((each) => sameIngredient(each.name, name));
  const said = have.map((each, at) => ({ ...priceOf(each.name), ...each, id: -1 - at }));
  return { ...world, stock: [...world.stock.filter(({ name }) => !isSaid(name)), ...said] };
}

/** @throws never: without a number of macarons it asks. */
export function answerBuy(inputs: BuyInputs, known: World): Outcome {
  const given = withSaid(known, inputs.have);
  const macarons =
    inputs.macarons ?? (inputs.shells !== undefined ? Math.floor(inputs.shells / 2) : undefined);
  if (macarons === undefined) return asking("For how many macarons?", "macarons");
  const size = sizing(inputs.diameter_mm, given.bench);
  const lessons = learned(given, size.diameter_mm);
  const spares = inputs.macarons === undefined ? [] : taughtTo(given.bench, lessons, ["spares"]);
  const world = { ...given, bench: withSpares(taughtBench(given.bench, spares), inputs) };
  const figures = ownFigures(lessons);
  const taught = [
    ...[lessons.shell, lessons["batter loss"]],
    ...(inputs.shells_only ? [] : [lessons.filling, lessons["filling loss"]]),
    ...spares,
  ].filter((lesson) => lesson !== undefined);
  const odd = oddLines(taught, world.now_ms);
  const batter =
    inputs.macarons === undefined && inputs.shells !== undefined
      ? batterForShells(inputs.shells, size.diameter_mm, figures)
      : batterFor(macarons, size.diameter_mm, world.bench, figures);
  const named = world.formulas.findLast((each) => each.name.toLowerCase() === inputs.formula?.toLowerCase());
  const makesFilling = named && isFilling(named.lines);
  const saved = makesFilling ? undefined : named;
  const house = houseOf(world, saved?.name);
  const shells = houseFor(house, batter);
  const fillings = shared(
    inputs.shells_only
      ? []
      : fillingsFor(withoutShells(inputs, saved?.name), makesFilling ? named.name : undefined),
    macarons,
  );
  if ("status" in fillings) return fillings;
  const portions = fillings.length ? portionsOf(fillings, macarons, size.diameter_mm, figures) : [];
  const recipes = portions.flatMap(({ filling }) => recipeFor(filling, world) ?? []);
  const needs = lessStock(
    [
      ...shells.map((line) => ({ ...line, part: "shells" })),
      ...portions.flatMap(({ filling, grams }) =>
        linesOf(filling, grams, world).map((line) => ({ ...line, part: partName(filling, fillings) })),
      ),
    ],
    world.stock,
  );
  const wanted = inputs.enough_of;
  // of one thing alone: what else a bake wants wasn't asked
  const asked = wanted === undefined ? needs : needs.filter((need) => sameIngredient(need.name, wanted));
  const buys = asked.filter((need) => toBuy(need) > 1e-9);
  const whites = buys.filter((need) => need.name === "whites").reduce((sum, need) => sum + toBuy(need), 0);
  const list = shoppingList(buys, world.stock);
  const cautions = [...[house, ...recipes].flatMap(unweighedLine), ...odd];
  const own =
    recipes.length > 0 ||
    house.name !== undefined ||
    needs.some((need) => need.have > 0) ||
    size.diameterFrom === "bench" ||
    taught.length > 0 ||
    world.bench.spare_percent !== undefined;
  return {
    status: "answered",
    headline:
      inputs.enough_of !== undefined
        ? enoughText(inputs.enough_of, needs)
        : list.length
          ? `${inputs.enough ? enoughOfAll(macarons, needs, world.stock.length > 0) : ""}To buy: ${list.map((each) => `${each.name} ${weight(each.grams)} g${each.name === "whites" ? ` (${counted(eggsFor(each.grams), "egg")})` : ""}${each.packs ? ` (${each.packs} × ${plain(each.pack_g ?? 0)} g)` : ""}`).join(", ")}`
          : inputs.enough
            ? `Yes: all that ${counted(macarons, "macaron")} take is on your shelf`
            : "Nothing: all of it is on your shelf",
    figures: [
      ...figuresOf(buys),
      ...(whites > 0 ? [{ name: "eggs", value: eggsFor(whites), unit: "eggs" }] : []),
    ],
    rule: {
      text: `${house.name ?? "house formula"} for ${plain(inputs.macarons === undefined ? (inputs.shells ?? 0) : shellsFor(macarons, world.bench))} shells, ${inputs.macarons === undefined ? "no" : `${plain(world.bench.spare_percent ?? spareShells.value)} %`} spares and ${lessons.shell ? "your own" : `${plain(figures.batterLoss_percent ?? batterLoss.value)} %`} loss in; fillings with ${lessons.filling ? "your own" : `${plain(figures.fillingLoss_percent ?? fillingLoss.value)} %`} loss; less what is on the shelf${taught.map((lesson) => `; ${lessonText(lesson)}`).join("")}`,
      basis: own ? "your bench" : "from memory",
    },
    assumed: [
      ...(size.diameterFrom === "book" ? [`${plain(size.diameter_mm)} mm shells`] : []),
      ...assumedFillings(inputs, fillings, world),
      ...(whites > 0 ? [eggMix] : []),
      "flavor and color not counted",
    ],
    ...(cautions.length ? { cautions } : {}),
    items: itemsOf(asked, list),
    working: [
      `batter ${plain(batter)} g`,
      ...asked.map(
        (need) =>
          `${need.name} for the ${need.part}: ${plain(need.grams)} g${need.have > 0 ? ` − ${plain(need.have)} g on the shelf = ${plain(toBuy(need))} g` : ""}`,
      ),
    ],
    leaves: { macarons, ...saidSize(size) },
  };
}

/** "do i have enough almond flour for 40": what is needed of it against the shelf. */
function enoughText(name: string, needs: readonly { name: string; grams: number; have: number }[]): string {
  const own = needs.filter((each) => sameIngredient(each.name, name));
  const needed = own.reduce((sum, each) => sum + each.grams, 0);
  const lacks = own.reduce((sum, each) => sum + Math.max(0, each.grams - each.have), 0);
  if (own.length === 0) return `No ${name} is needed for it`;
  return lacks > 1e-9
    ? `No: ${weight(needed)} g ${name} is needed, ${weight(lacks)} g more than is on the shelf`
    : `Yes: ${weight(needed)} g ${name} is needed, and it is on the shelf`;
}

/** "enough for 30": what the shelf has of it, each thing by name, ahead of what is to be bought. */
function enoughOfAll(
  macarons: number,
  needs: readonly { name: string; grams: number; have: number }[],
  hasShelf: boolean,
): string {
  const many = counted(macarons, "macaron");
  if (!hasShelf) return `I can't tell for ${many}: nothing is on your shelf. `;
  const names = needs
    .map((each) => each.name)
    .filter((name, at, all) => all.findIndex((other) => sameIngredient(other, name)) === at);
  const isThere = (name: string) =>
    needs.every((each) => !sameIngredient(each.name, name) || each.grams - each.have <= 1e-9);
  const there = names.filter(isThere);
  return `Not enough for ${many}${there.length > 0 ? `, but enough ${listed(there)}` : ""}. `;
}

/** "60 rosy with buttercream": a recipe that makes the shells is no filling too. */
function withoutShells({ order, ...inputs }: BuyInputs, shells: string | undefined): BuyInputs {
  const fillings = order?.filter(
    ({ formula }) => formula === undefined || formula.toLowerCase() !== shells?.toLowerCase(),
  );
  return { ...inputs, ...(fillings?.length ? { order: fillings } : {}) };
}

/** The order's own fillings, those that were named, or a buttercream and a ganache. */
function fillingsFor({ order, fillings, chocolate }: BuyInputs, recipe: string | undefined): Filling[] {
  if (order?.length)
    return order.map((each) =>
      each.base === "ganache" && chocolate && !each.chocolate ? { ...each, chocolate } : each,
    );
  if (recipe !== undefined && !fillings) return [{ base: "filling", formula: recipe }];
  return (fillings ?? (["buttercream", "ganache"] as const)).map((base) => ({
    base,
    ...(base === "ganache" && chocolate ? { chocolate } : {}),
  }));
}

/** "buttercream", or its whole name where there are two of the kind. */
const partName = (filling: Filling, all: readonly Filling[]): string =>
  filling.formula === undefined && all.filter((each) => each.base === filling.base).length < 2
    ? ["buttercream", "ganache"].includes(filling.base)
      ? filling.base
      : fillingName(filling)
    : fillingName(filling);

function assumedFillings({ order, fillings }: BuyInputs, all: readonly Filling[], world: World): string[] {
  const isNamed = order !== undefined || fillings !== undefined || all.some((each) => each.formula);
  const dark = all.some(
    (each) => each.base === "ganache" && each.chocolate === undefined && !recipeFor(each, world),
  );
  return [
    ...(isNamed || all.length === 0
      ? []
      : [`filled with ${listed(["a ring of buttercream (60 %)", "a center of ganache (40 %)"])}`]),
    ...(dark ? ["dark chocolate in the ganache"] : []),
  ];
}
