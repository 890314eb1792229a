/** Works sizes out, forward from an order or back from a bowl. Counts are cut off exactly, never by a float's whim. */
import { bakedShare, batterLoss, shellBatter, spareShells } from "../../../data/rules/shells.ts";
import type { Figure, Outcome, Rule, World } from "../contract/index.ts";
import { exact } from "../lib/exact.ts";
import { white_g } from "../lib/find.ts";
import { type House, houseFor, houseOf } from "../lib/house.ts";
import {
  type Lessons,
  learned,
  lessonText,
  oddLines,
  ownFigures,
  taughtBench,
  taughtTo,
} from "../lib/learned.ts";
import { counted, listed, plain, weight } from "../lib/show.ts";
import {
  batterForShells,
  eggsFor,
  type Own,
  type Sizing,
  shellsFor,
  shellsFrom,
  shellsOnTray,
  shellWeight,
  sizing,
} from "../lib/sizing.ts";
import type { ShellsInputs } from "./shells.ts";

/** @throws never: what is missing comes back as `asking`. */
export function answerShells(said: ShellsInputs, given: World): Outcome {
  const size: Measures = { ...sizing(said.diameter_mm, given.bench), lessons: {}, own: {}, set: given.bench };
  size.lessons = learned(given, size.diameter_mm);
  size.own = ownFigures(size.lessons);
  // Spares that her batches teach stand where the bench sets none.
  const world = {
    ...given,
    bench: taughtBench(given.bench, taughtTo(given.bench, size.lessons, ["spares"])),
  };
  const onTray = said.on_tray ?? shellsOnTray(size.diameter_mm, world.bench);
  if (said.want === "tray") return trayAnswer(size, onTray, world);
  if (said.want === "one") return oneShell(size, world);
  if (said.baked_g !== undefined) return unbaked(said.baked_g, world);
  if (said.shell_g !== undefined) return baked(said.shell_g, 1, world);
  if (said.want === "whites" && said.batter_g !== undefined) return eggsAnswer(said.batter_g, world);
  if (said.want === "whites" && (said.whites_g !== undefined || said.whites_count !== undefined))
    return eggsAnswer(said.whites_g ?? (said.whites_count ?? 0) * white_g, world);
  if (said.want === "baked" && said.batter_g !== undefined) return baked(said.batter_g, 1, world);
  const house = houseOf(given);
  const lacks = said.have?.find((each) => !house.lines.some((line) => line.name === each.name));
  if (lacks)
    return {
      status: "impossible",
      headline: `Your house recipe, ${house.name}, has no ${lacks.name} in it.`,
    };
  const batter = said.batter_g ?? haveBatter(said, house) ?? whitesBatter(said, house);
  if (batter !== undefined && said.macarons !== undefined)
    return isEnough(fromBatter(batter, size, onTray, said, world), batter, said.macarons, size, world);
  if (batter !== undefined) return fromBatter(batter, size, onTray, said, world);
  const shells =
    said.shells ??
    (said.trays !== undefined && said.macarons === undefined ? said.trays * onTray : undefined) ??
    (said.macarons !== undefined ? shellsFor(said.macarons, world.bench) : undefined);
  if (shells === undefined && said.want === "baked" && said.diameter_mm !== undefined)
    return baked(shellWeight(size.diameter_mm, size.own), 1, world, size);
  if (shells === undefined)
    return {
      status: "asking",
      headline: "For how many macarons?",
      question: "For how many macarons?",
      slot: "macarons",
    };
  if (said.want === "baked")
    return baked(shellWeight(size.diameter_mm, size.own) * shells, shells, world, size);
  return forOrder(shells, size, onTray, said, world);
}

/** The size with what her batches teach about it; `set` is the bench as she set it. */
interface Measures extends Sizing {
  lessons: Lessons;
  own: Own;
  set: World["bench"];
}

const whitesBatter = (said: ShellsInputs, { total, whites: own }: House): number | undefined => {
  const whites = said.whites_g ?? (said.whites_count !== undefined ? said.whites_count * white_g : undefined);
  return whites === undefined ? undefined : (whites * total) / own;
};

/** The batter that the scarcest of several lines is enough for, in g. */
const haveBatter = ({ have }: ShellsInputs, house: House): number | undefined =>
  have &&
  Math.min(
    ...have.map(({ name, grams }) =>
      exact(grams)
        .mul(exact(house.total))
        .div(exact(house.lines.find((line) => line.name === name)?.grams ?? house.total))
        .valueOf(),
    ),
  );

function eggsAnswer(whites_g: number, world: World): Outcome {
  const eggs = eggsFor(whites_g);
  return {
    status: "answered",
    headline: `${counted(eggs, "egg white")} for ${weight(whites_g, world.bench.scale_g)} g`,
    figures: [{ name: "whites", value: eggs, unit: "whites" }],
    rule: {
      text: "one large egg's white is 33 g; whites = ceil(grams / 33)",
      basis: "published",
      source: "USDA SR, NDB 01124",
    },
    working: [`ceil(${plain(whites_g)} / 33) = ${eggs}`],
  };
}

const isOwn = (size: Measures) => size.diameterFrom === "bench";

function assumptions(size: Measures, spares: boolean, world: World): string[] {
  const { bench } = world;
  return [
    ...(size.diameterFrom === "book" ? [`${plain(size.diameter_mm)} mm shells`] : []),
    ...(spares ? [`${plain(bench.spare_percent ?? spareShells.value)} % spare shells`] : []),
  ];
}

/** The lessons that an answer rests on: of the batter, and of the spares where it takes some. */
function lessonsOf({ lessons, set }: Measures, spares: boolean) {
  const { shell, "batter loss": loss } = lessons;
  return [
    ...(shell ? [shell] : []),
    ...(loss ? [loss] : []),
    ...(spares ? taughtTo(set, lessons, ["spares"]) : []),
  ];
}

function shellRule(size: Measures, world: World, tail: string, tray: boolean, spares = false): Rule {
  const taught = lessonsOf(size, spares);
  const own =
    isOwn(size) ||
    (tray && (world.bench.shells_a_tray !== undefined || world.bench.tray_width_mm !== undefined)) ||
    size.set.spare_percent !== undefined ||
    taught.length > 0;
  const at = `${plain(size.diameter_mm)} mm${isOwn(size) ? ", your size" : ""}`;
  const rest = taught.filter((lesson) => lesson.name !== "shell").map((lesson) => `; ${lessonText(lesson)}`);
  const lost =
    size.own.batterLoss_percent === undefined ? `; ${batterLoss.value} % stays in bowl and bag` : "";
  return {
    text: size.lessons.shell
      ? `${lessonText(size.lessons.shell)}, at ${at}${rest.join("")}${tail}`
      : `${shellBatter.value} × d² g batter a shell, d in cm: ${plain(shellWeight(size.diameter_mm))} g at ${at}${lost}${rest.join("")}${tail}`,
    basis: own ? "your bench" : shellBatter.basis,
  };
}

/** What of the batter made reaches the shells: 0.96 by the book. */
const keptShare = (own: Own) => 1 - (own.batterLoss_percent ?? batterLoss.value) / 100;

/** Batches that were left out, as cautions. */
function oddOnes(size: Measures, world: World, spares: boolean): { cautions?: string[] } {
  const lines = oddLines(lessonsOf(size, spares), world.now_ms);
  return lines.length ? { cautions: lines } : {};
}

function forOrder(shells: number, size: Measures, onTray: number, said: ShellsInputs, world: World): Outcome {
  const batter = batterForShells(shells, size.diameter_mm, size.own);
  const trays = onTray > 0 ? Math.ceil(shells / onTray) : undefined;
  const house = houseOf(world);
  const lines = houseFor(house, batter);
  const whites = (batter * house.whites) / house.total;
  const eggs = eggsFor(whites);
  const macarons = said.macarons ?? Math.floor(shells / 2);
  const scale = world.bench.scale_g;
  const heads: Partial<Record<NonNullable<ShellsInputs["want"]>, string>> = {
    trays:
      trays === undefined
        ? "none fit"
        : `${counted(trays, "tray")} for ${counted(shells, "shell")}, ${onTray} a tray`,
    whites: `${counted(eggs, "egg white")}: ${weight(whites, scale)} g for ${counted(macarons, "macaron")}`,
    shells: `${counted(shells, "shell")} for ${counted(macarons, "macaron")}`,
    macarons: `${counted(macarons, "macaron")} from ${counted(shells, "shell")}`,
  };
  const figures: Figure[] = [
    { name: "batter", value: batter, unit: "g" },
    { name: "shells", value: shells, unit: "shells" },
    { name: "macarons", value: macarons, unit: "macarons" },
    ...(trays === undefined ? [] : [{ name: "trays", value: trays, unit: "trays" }]),
    { name: "whites", value: eggs, unit: "whites" },
    { name: "whites", value: whites, unit: "g" },
  ];
  const first =
    said.want === "trays" || said.want === "whites" || said.want === "shells" || said.want === "macarons"
      ? said.want
      : "batter";
  const spare = world.bench.spare_percent ?? spareShells.value;
  return {
    status: "answered",
    headline:
      heads[first] ??
      `${weight(batter, scale)} g batter for ${counted(shells, "shell")}${trays === undefined ? "" : `, ${counted(trays, "tray")}`}`,
    figures: [...figures].sort((a, b) => Number(b.name === first) - Number(a.name === first)),
    rule: {
      ...shellRule(
        size,
        world,
        first === "whites" ? "; one large egg's white is 33 g (USDA SR, NDB 01124)" : "",
        true,
        said.shells === undefined && said.trays === undefined,
      ),
      ...(first === "whites" && house.name ? { basis: "your bench" as const } : {}),
    },
    ...oddOnes(size, world, said.shells === undefined && said.trays === undefined),
    assumed: [
      ...assumptions(size, said.shells === undefined && said.trays === undefined, world),
      ...(first === "whites" ? [house.name ? `your house recipe, ${house.name}` : "the house formula"] : []),
    ],
    working: [
      ...(said.shells === undefined && said.trays === undefined
        ? [`shells = ceil(2 × ${plain(macarons)} × ${plain(100 + spare)} %) = ${shells}`]
        : []),
      size.own.shell_g === undefined
        ? `batter = ${shells} × ${plain(shellWeight(size.diameter_mm), 4)} / ${plain(keptShare(size.own), 4)} = ${plain(batter)} g`
        : `batter = ${shells} × ${plain(size.own.shell_g, 4)} = ${plain(batter)} g`,
      ...(trays === undefined ? [] : [`trays = ceil(${shells} / ${onTray}) = ${trays}`]),
      `whites = ${plain(batter)} × ${plain(house.whites)} / ${plain(house.total)} = ${plain(whites)} g = ${eggs} of 33 g`,
    ],
    leaves: {
      mass: { grams: batter, thing: "batter" },
      macarons,
      shells,
      diameter_mm: size.diameter_mm,
      recipe: lines,
    },
  };
}

/** "is 380 g of batter enough for 20": what it makes beside what they take, spares and all. */
function isEnough(
  made: Outcome,
  batter_g: number,
  macarons: number,
  size: Measures,
  { bench }: World,
): Outcome {
  if (made.status !== "answered") return made;
  const most = made.figures?.find((each) => each.name === "macarons")?.value ?? 0;
  const needed_g = batterForShells(shellsFor(macarons, bench), size.diameter_mm, size.own);
  const verdict =
    most < macarons ? "Not enough" : batter_g < needed_g ? "Enough, but not for the spare shells" : "Enough";
  return {
    ...made,
    headline: `${verdict}: ${weight(batter_g, bench.scale_g)} g makes ${counted(most, "macaron")}; ${plain(macarons)} with ${plain(bench.spare_percent ?? spareShells.value)} % spare shells take ${weight(needed_g, bench.scale_g)} g`,
    figures: [...(made.figures ?? []), { name: "batter needed", value: needed_g, unit: "g" }],
  };
}

function fromBatter(
  batter_g: number,
  size: Measures,
  onTray: number,
  said: ShellsInputs,
  world: World,
): Outcome {
  const shells = shellsFrom(batter_g, size.diameter_mm, size.own);
  const macarons = Math.floor(shells / 2);
  if (shells === 0)
    return {
      status: "impossible",
      headline: `${plain(batter_g)} g of batter is less than one ${plain(size.diameter_mm)} mm shell takes.`,
    };
  const trays = onTray > 0 ? Math.ceil(shells / onTray) : undefined;
  const fromWhites = said.batter_g === undefined;
  const house = houseOf(world);
  const head =
    said.want === "trays" && trays !== undefined
      ? `${counted(trays, "tray")} for ${counted(shells, "shell")}`
      : said.want === "shells"
        ? counted(shells, "shell")
        : `${counted(macarons, "macaron")}, ${counted(shells, "shell")}`;
  return {
    status: "answered",
    headline: `${head} from ${weight(batter_g, world.bench.scale_g)} g batter`,
    figures: [
      { name: "macarons", value: macarons, unit: "macarons" },
      { name: "shells", value: shells, unit: "shells" },
      ...(trays === undefined ? [] : [{ name: "trays", value: trays, unit: "trays" }]),
      { name: "batter", value: batter_g, unit: "g" },
    ],
    rule: shellRule(
      size,
      world,
      size.own.shell_g === undefined
        ? `; shells = floor(B × ${plain(keptShare(size.own), 4)} / (0.53 d²))`
        : "; shells = floor(B / batter a shell)",
      true,
    ),
    ...oddOnes(size, world, false),
    assumed: [
      ...assumptions(size, false, world),
      ...(fromWhites
        ? [
            `${house.name ? `your house recipe, ${house.name}` : "the house formula"}, ${said.have ? batterPer(said.have, house) : `batter ${plain((house.total * 100) / house.whites)} per 100 of whites`}`,
          ]
        : []),
    ],
    working: [
      size.own.shell_g === undefined
        ? `${plain(batter_g)} × ${plain(keptShare(size.own), 4)} / ${plain(shellWeight(size.diameter_mm), 4)} = ${plain((batter_g * keptShare(size.own)) / shellWeight(size.diameter_mm))}, cut off to ${shells} shells`
        : `${plain(batter_g)} / ${plain(size.own.shell_g, 4)} = ${plain(batter_g / size.own.shell_g)}, cut off to ${shells} shells`,
      `${shells} / 2, cut off to ${macarons} macarons`,
    ],
    leaves: { mass: { grams: batter_g, thing: "batter" }, macarons, shells, diameter_mm: size.diameter_mm },
  };
}

/** "batter 353.85 per 100 of almond flour". */
const batterPer = (have: NonNullable<ShellsInputs["have"]>, house: House): string =>
  `batter ${listed(
    have.map(({ name }) => {
      const line = house.lines.find((each) => each.name === name);
      return `${plain((house.total * 100) / (line?.grams ?? house.total))} per 100 of ${name}`;
    }),
  )}${have.length > 1 ? ", the scarcest of them counts" : ""}`;

function trayAnswer(size: Measures, onTray: number, world: World): Outcome {
  const own = world.bench.shells_a_tray !== undefined || world.bench.tray_width_mm !== undefined;
  if (onTray === 0)
    return { status: "impossible", headline: `No ${plain(size.diameter_mm)} mm shell fits that tray.` };
  return {
    status: "answered",
    headline: `${onTray} shells of ${plain(size.diameter_mm)} mm on one tray`,
    figures: [{ name: "shells", value: onTray, unit: "shells" }],
    rule:
      own || isOwn(size)
        ? {
            text:
              world.bench.shells_a_tray !== undefined
                ? `your mat has ${world.bench.shells_a_tray}`
                : "your tray and size, 10 mm margin, 20 mm gaps",
            basis: "your bench",
          }
        : { text: "400 × 300 mm tray, 10 mm margin all round, 20 mm between shells", basis: "arithmetic" },
    assumed: assumptions(size, false, world),
    working: [
      `a row floor((380 + 20) / (${plain(size.diameter_mm)} + 20)), rows floor((280 + 20) / (${plain(size.diameter_mm)} + 20)): ${onTray}`,
    ],
    leaves: { diameter_mm: size.diameter_mm },
  };
}

function oneShell(size: Measures, world: World): Outcome {
  const grams = shellWeight(size.diameter_mm, size.own);
  const less = `less the ${plain(100 * (1 - keptShare(size.own)))} % that stays in bowl and bag`;
  return {
    status: "answered",
    headline: `${plain(grams)} g batter in one ${plain(size.diameter_mm)} mm shell`,
    figures: [{ name: "batter", value: grams, unit: "g" }],
    rule: shellRule(size, world, size.own.shell_g === undefined ? "" : `; ${less}`, false),
    ...oddOnes(size, world, false),
    assumed: assumptions(size, false, world),
    working: [
      size.own.shell_g === undefined
        ? `${shellBatter.value} × ${plain(size.diameter_mm / 10)}² = ${plain(grams, 4)} g`
        : `${plain(size.own.shell_g, 4)} × ${plain(keptShare(size.own), 4)} = ${plain(grams, 4)} g`,
    ],
    leaves: { diameter_mm: size.diameter_mm },
  };
}

/** The batter that a baked weight was. */
function unbaked(baked_g: number, world: World): Outcome {
  const grams = (baked_g * 100) / bakedShare.value;
  return {
    status: "answered",
    headline: `${weight(grams, world.bench.scale_g)} g batter`,
    figures: [{ name: "batter", value: grams, unit: "g" }],
    rule: {
      text: `batter weight = baked weight / ${plain(bakedShare.value / 100)}`,
      basis: bakedShare.basis,
    },
    working: [`${plain(baked_g)} / ${plain(bakedShare.value / 100)} = ${plain(grams)} g`],
  };
}

function baked(raw_g: number, shells: number, world: World, size?: Measures): Outcome {
  const grams = (raw_g * bakedShare.value) / 100;
  return {
    status: "answered",
    headline: `${weight(grams, world.bench.scale_g)} g baked`,
    figures: [{ name: "baked", value: grams, unit: "g" }],
    rule: size?.lessons.shell
      ? {
          text: `${lessonText(size.lessons.shell)}; baked weight = 0.87 × batter weight`,
          basis: "your bench",
        }
      : { text: `baked weight = 0.87 × batter weight`, basis: bakedShare.basis },
    assumed: size ? assumptions(size, false, world) : [],
    working: [
      ...(size
        ? [
            `${shells} shells of ${plain(shellWeight(size.diameter_mm, size.own), 4)} g are ${plain(raw_g)} g piped`,
          ]
        : []),
      `${plain(raw_g)} × 0.87 = ${plain(grams)} g`,
    ],
  };
}
