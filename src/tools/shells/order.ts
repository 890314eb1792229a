/** Forward from an order: batter, trays and whites for a number of shells. */
import { spareShells } from "../../../data/rules/shells.ts";
import type { Figure, Outcome, World } from "../contract/index.ts";
import { houseFor, houseOf } from "../lib/house.ts";
import { counted, plain, weight } from "../lib/show.ts";
import { batterForShells, eggsFor, saidSize, shellWeight } from "../lib/sizing.ts";
import { assumptions, keptShare, type Measures, oddOnes, shellRule } from "./rule.ts";
import type { ShellsInputs } from "./shells.ts";

export function forOrder(
  shells: number,
  size: Measures,
  onTray: number,
  said: ShellsInputs,
  world: World,
): Outcome {
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
  // a number of shells or trays that was said takes none
  const hasSpares = said.shells === undefined && said.trays === undefined;
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
        hasSpares,
      ),
      ...(first === "whites" && house.name ? { basis: "your bench" as const } : {}),
    },
    ...oddOnes(size, world, hasSpares),
    assumed: [
      ...assumptions(size, hasSpares, world),
      ...(first === "whites" ? [house.name ? `your house recipe, ${house.name}` : "the house formula"] : []),
    ],
    working: [
      ...(hasSpares ? [`shells = ceil(2 × ${plain(macarons)} × ${plain(100 + spare)} %) = ${shells}`] : []),
      size.own.shell_g === undefined
        ? `batter = ${shells} × ${plain(shellWeight(size.diameter_mm), 4)} / ${plain(keptShare(size.own), 4)} = ${plain(batter)} g`
        : `batter = ${shells} × ${plain(size.own.shell_g, 4)} = ${plain(batter)} g`,
      ...(trays === undefined ? [] : [`trays = ceil(${shells} / ${onTray}) = ${trays}`]),
      `whites = ${plain(batter)} × ${plain(house.whites)} / ${plain(house.total)} = ${plain(whites)} g = ${eggs} of 33 g`,
    ],
    leaves: {
      ...(said.shares ? { shares: said.shares } : {}),
      mass: { grams: batter, thing: "batter" },
      macarons,
      shells,
      ...saidSize(size),
      recipe: lines,
    },
  };
}
