/** Adds up what a bake needs and takes off what is on the shelf. */
import { buttercreamParts } from "../../../data/rules/buttercream.ts";
import { ratios } from "../../../data/rules/ganache.ts";
import { batterLoss, fillingLoss, ringShare, spareShells } from "../../../data/rules/shells.ts";
import type { Figure, Item, Outcome, Stock, World } from "../contract/index.ts";
import { asking } from "../lib/asking.ts";
import { houseFor, houseOf } from "../lib/house.ts";
import { learned, lessonText, oddLines, ownFigures, taughtBench, taughtTo } from "../lib/learned.ts";
import { type Line, sameIngredient } from "../lib/lines.ts";
import { moneyText } from "../lib/money.ts";
import { counted, listed, plain, weight } from "../lib/show.ts";
import { batterFor, batterForShells, eggsFor, fillingFor, shellsFor, sizing } from "../lib/sizing.ts";
import type { BuyInputs } from "./buy.ts";

interface Need extends Line {
  /** "shells", "buttercream" or "ganache". */
  part: string;
  /** What is on the shelf of it, at most what is needed. */
  have: number;
}

const toBuy = (need: Need) => need.grams - need.have;
const eggMix = "33 g of white from an egg";

/** @throws never: without a number of macarons it asks. */
export function answerBuy(inputs: BuyInputs, given: World): Outcome {
  const macarons =
    inputs.macarons ?? (inputs.shells !== undefined ? Math.floor(inputs.shells / 2) : undefined);
  if (macarons === undefined) return asking("For how many macarons?", "macarons");
  const size = sizing(inputs.diameter_mm, given.bench);
  const lessons = learned(given, size.diameter_mm);
  const spares = inputs.macarons === undefined ? [] : taughtTo(given.bench, lessons, ["spares"]);
  const world = { ...given, bench: taughtBench(given.bench, spares) };
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
  const saved =
    inputs.formula === undefined
      ? undefined
      : world.formulas.find((each) => each.name.toLowerCase() === inputs.formula?.toLowerCase());
  const house = houseOf(world);
  const shells = saved ? scaled(saved.lines, batter) : houseFor(house, batter);
  const mixes = inputs.shells_only ? [] : (inputs.fillings ?? (["buttercream", "ganache"] as const));
  const fillings = mixes.flatMap((mix) =>
    fillingLines(mix, inputs, shareOf(mix, mixes.length) * fillingFor(macarons, size.diameter_mm, figures)),
  );
  const needs = lessStock([...shells.map((line) => ({ ...line, part: "shells" })), ...fillings], world.stock);
  const buys = needs.filter((need) => toBuy(need) > 1e-9);
  const whites = buys.filter((need) => need.name === "whites").reduce((sum, need) => sum + toBuy(need), 0);
  const list = shoppingList(buys, world.stock);
  const own =
    saved !== undefined ||
    house.name !== undefined ||
    needs.some((need) => need.have > 0) ||
    size.diameterFrom === "bench" ||
    taught.length > 0 ||
    world.bench.spare_percent !== undefined;
  return {
    status: "answered",
    headline: list.length
      ? `To buy: ${list.map((each) => `${each.name} ${weight(each.grams)} g${each.name === "whites" ? ` (${counted(eggsFor(each.grams), "egg")})` : ""}${each.packs ? ` (${each.packs} × ${plain(each.pack_g ?? 0)} g)` : ""}`).join(", ")}`
      : "Nothing: all of it is on your shelf",
    figures: [
      ...figuresOf(buys),
      ...(whites > 0 ? [{ name: "eggs", value: eggsFor(whites), unit: "eggs" }] : []),
    ],
    rule: {
      text: `${saved?.name ?? house.name ?? "house formula"} for ${plain(inputs.macarons === undefined ? (inputs.shells ?? 0) : shellsFor(macarons, world.bench))} shells, ${inputs.macarons === undefined ? "no" : `${plain(world.bench.spare_percent ?? spareShells.value)} %`} spares and ${lessons.shell ? "your own" : `${plain(figures.batterLoss_percent ?? batterLoss.value)} %`} loss in; fillings with ${lessons.filling ? "your own" : `${plain(figures.fillingLoss_percent ?? fillingLoss.value)} %`} loss; less what is on the shelf${taught.map((lesson) => `; ${lessonText(lesson)}`).join("")}`,
      basis: own ? "your bench" : "from memory",
    },
    assumed: [
      ...(size.diameterFrom === "book" ? [`${plain(size.diameter_mm)} mm shells`] : []),
      ...assumedFillings(inputs, mixes),
      ...(whites > 0 ? [eggMix] : []),
      "flavor and color not counted",
    ],
    ...(odd.length ? { cautions: odd } : {}),
    items: itemsOf(needs, list),
    working: [
      `batter ${plain(batter)} g`,
      ...needs.map(
        (need) =>
          `${need.name} for the ${need.part}: ${plain(need.grams)} g${need.have > 0 ? ` − ${plain(need.have)} g on the shelf = ${plain(toBuy(need))} g` : ""}`,
      ),
    ],
    leaves: { macarons, diameter_mm: size.diameter_mm },
  };
}

function scaled(lines: readonly Line[], total_g: number): Line[] {
  const whole = lines.reduce((sum, each) => sum + each.grams, 0);
  return lines.map(({ name, grams }) => ({ name, grams: (grams / whole) * total_g }));
}

/** Two fillings are a ring of buttercream and a center of ganache, 60 to 40; one takes all. */
const shareOf = (mix: "buttercream" | "ganache", of: number) =>
  of < 2 ? 1 : mix === "buttercream" ? ringShare.value / 100 : 1 - ringShare.value / 100;

function fillingLines(
  mix: "buttercream" | "ganache",
  inputs: BuyInputs,
  total_g: number,
): (Line & { part: string })[] {
  if (mix === "buttercream") {
    const all = buttercreamParts.reduce((sum, each) => sum + each.parts, 0);
    return buttercreamParts.map(({ name, parts }) => ({ name, grams: (total_g * parts) / all, part: mix }));
  }
  const kind = inputs.chocolate ?? "dark";
  const { ratio } = ratios[kind].piping;
  return [
    { name: `${kind} chocolate`, grams: (total_g * ratio) / (ratio + 1), part: mix },
    { name: "cream", grams: total_g / (ratio + 1), part: mix },
  ];
}

/** The shelf goes to the shells first, what is left of it to the fillings. */
function lessStock(lines: readonly (Line & { part: string })[], stock: readonly Stock[]): Need[] {
  const left = stock.map((each) => each.grams);
  return lines.map((line) => {
    let have = 0;
    stock.forEach((each, at) => {
      if (!sameIngredient(each.name, line.name)) return;
      const taken = Math.min(left[at] ?? 0, line.grams - have);
      have += taken;
      left[at] = (left[at] ?? 0) - taken;
    });
    return { ...line, have };
  });
}

/** Shells by ingredient name; a filling's whites with its name behind, and both together where both want some. */
function figuresOf(buys: readonly Need[]): Figure[] {
  const out = buys.map(
    (need): Figure => ({
      name:
        need.part !== "shells" && buys.some((other) => other !== need && other.name === need.name)
          ? `${need.name}, ${need.part}`
          : need.name,
      value: toBuy(need),
      unit: "g",
    }),
  );
  const twice = buys.filter(
    (need) =>
      need.part !== "shells" &&
      buys.some((other) => other.part === "shells" && sameIngredient(other.name, need.name)),
  );
  const totals = twice.map(
    (need): Figure => ({
      name: `${need.name} in all`,
      value: buys
        .filter((each) => sameIngredient(each.name, need.name))
        .reduce((sum, each) => sum + toBuy(each), 0),
      unit: "g",
    }),
  );
  return [...out, ...totals];
}

/** What is to be bought of these lines, less what is on the shelf, a line a thing in the shop. */
export function shoppingFor(
  lines: readonly (Line & { part: string })[],
  stock: readonly Stock[],
): Shopping[] {
  return shoppingList(
    lessStock(lines, stock).filter((need) => toBuy(need) > 1e-9),
    stock,
  );
}

export interface Shopping extends Line {
  packs?: number;
  pack_g?: number;
  price?: string;
}

/** One line a thing in the shop, in packs where the shelf knows how it is sold. */
function shoppingList(buys: readonly Need[], stock: readonly Stock[]): Shopping[] {
  const lines: Line[] = [];
  for (const need of buys) {
    const known = lines.find((each) => sameIngredient(each.name, need.name));
    if (known) known.grams += toBuy(need);
    else lines.push({ name: need.name, grams: toBuy(need) });
  }
  return lines.map((line) => {
    const shelf = stock.findLast((each) => sameIngredient(each.name, line.name));
    const pack = shelf?.pack_g
      ? { packs: Math.ceil(line.grams / shelf.pack_g - 1e-9), pack_g: shelf.pack_g }
      : undefined;
    const grams = pack ? pack.packs * pack.pack_g : line.grams;
    return {
      ...line,
      ...pack,
      ...(shelf?.price_per_g !== undefined
        ? { price: moneyText(grams * shelf.price_per_g, shelf.currency ?? "USD") }
        : {}),
    };
  });
}

function itemsOf(needs: readonly Need[], list: readonly Shopping[]): Item[] {
  const covered = needs.filter((need) => toBuy(need) <= 1e-9);
  return [
    ...list.map(
      (each): Item => ({
        buy: each.name,
        grams: each.grams,
        ...(each.packs ? { packs: each.packs, pack_g: each.pack_g } : {}),
        ...(each.price ? { price: each.price } : {}),
        ...(each.name === "whites" ? { eggs: eggsFor(each.grams) } : {}),
      }),
    ),
    ...covered.map((need): Item => ({ on_the_shelf: need.name, part: need.part, grams: need.grams })),
  ];
}

function assumedFillings(inputs: BuyInputs, mixes: readonly string[]): string[] {
  if (mixes.length === 0) return [];
  const named = inputs.fillings !== undefined;
  const dark =
    mixes.includes("ganache") && inputs.chocolate === undefined ? ["dark chocolate in the ganache"] : [];
  return [
    ...(named
      ? []
      : [`filled with ${listed(["a ring of buttercream (60 %)", "a center of ganache (40 %)"])}`]),
    ...dark,
  ];
}
