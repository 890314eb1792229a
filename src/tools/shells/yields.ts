/** Back from a bowl: what batter, whites or other lines at hand make, and whether that is enough. */
import { spareShells } from "../../../data/rules/shells.ts";
import type { Outcome, World } from "../contract/index.ts";
import { eggsNote } from "../lib/eggs-told.ts";
import { exact } from "../lib/exact.ts";
import { white_g } from "../lib/find.ts";
import { type House, houseOf } from "../lib/house.ts";
import { counted, listed, plain, weight } from "../lib/show.ts";
import { batterForShells, saidSize, shellsFor, shellsFrom, shellWeight } from "../lib/sizing.ts";
import { assumptions, keptShare, type Measures, oddOnes, shellRule } from "./rule.ts";
import type { ShellsInputs } from "./shells.ts";

export const whitesBatter = (said: ShellsInputs, { total, whites: own }: House): number | undefined => {
  const whites = said.whites_g ?? (said.whites_count !== undefined ? said.whites_count * white_g : undefined);
  return whites === undefined ? undefined : (whites * total) / own;
};

/** The batter that the scarcest of several lines is enough for, in g. */
export const haveBatter = ({ have }: ShellsInputs, house: House): number | undefined =>
  have &&
  Math.min(
    ...have.map(({ name, grams }) =>
      exact(grams)
        .mul(exact(house.total))
        .div(exact(house.lines.find((line) => line.name === name)?.grams ?? house.total))
        .valueOf(),
    ),
  );

export function fromBatter(
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
      ...eggsNote(said),
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
    leaves: { mass: { grams: batter_g, thing: "batter" }, macarons, shells, ...saidSize(size) },
  };
}

/** "is 380 g of batter enough for 20": what it makes beside what they take, spares and all. */
export function isEnough(
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

/** "batter 353.85 per 100 of almond flour". */
const batterPer = (have: NonNullable<ShellsInputs["have"]>, house: House): string =>
  `batter ${listed(
    have.map(({ name }) => {
      const line = house.lines.find((each) => each.name === name);
      return `${plain((house.total * 100) / (line?.grams ?? house.total))} per 100 of ${name}`;
    }),
  )}${have.length > 1 ? ", the scarcest of them counts" : ""}`;
