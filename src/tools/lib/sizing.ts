/** How much batter and filling macarons take, and how many come out. Diameters in mm, weights in g. */
import {
  batterLoss,
  eggWhite,
  fillingLoss,
  houseFormula,
  houseParts,
  macaronFilling,
  shellBatter,
  spareShells,
  tray,
  usualDiameter,
} from "../../../data/rules/shells.ts";
import type { Bench } from "../contract/index.ts";
import { ceil, exact, floor, wholeIn } from "./exact.ts";

/** Figures learned from the baker's batches, at the size asked about. Weights are for one, with what is lost in them. */
export interface Own {
  /** Batter made for one shell, g. */
  shell_g?: number;
  /** Filling made for one macaron, g. */
  filling_g?: number;
  batterLoss_percent?: number;
  fillingLoss_percent?: number;
}

/** What reaches the shell of the batter made, as a fraction. */
const batterKept = (own: Own) =>
  exact(100)
    .sub(exact(own.batterLoss_percent ?? batterLoss.value))
    .div(100);
const fillingKept = (own: Own) =>
  exact(100)
    .sub(exact(own.fillingLoss_percent ?? fillingLoss.value))
    .div(100);

type Size = Pick<Bench, "diameter_mm">;

/** What the sizing goes by: the book's figures, or the baker's own where her bench is set. */
export interface Sizing {
  diameter_mm: number;
  /** "said", "bench" or "book". */
  diameterFrom: "said" | "bench" | "book";
}

/** The shell's diameter in force: said now, set on the bench, or the book's 38 mm. */
export function sizing(said_mm: number | undefined, bench: Size): Sizing {
  if (said_mm !== undefined && said_mm === bench.diameter_mm)
    return { diameter_mm: said_mm, diameterFrom: "bench" };
  if (said_mm !== undefined) return { diameter_mm: said_mm, diameterFrom: "said" };
  if (bench.diameter_mm !== undefined) return { diameter_mm: bench.diameter_mm, diameterFrom: "bench" };
  return { diameter_mm: usualDiameter.value, diameterFrom: "book" };
}

/** The size that stays on the table: one that was said; the bench's and the book's hold without that. */
export const saidSize = ({ diameter_mm, diameterFrom }: Sizing): { diameter_mm?: number } =>
  diameterFrom === "said" ? { diameter_mm } : {};

/** d in cm, squared, exactly. */
const squareCm = (diameter_mm: number) => exact(diameter_mm).div(10).pow(2);

/** Batter in one piped shell, g: 0.53 × d², from memory; or what she makes for one, less what stays in the bowl. */
export const shellWeight = (diameter_mm: number, own: Own = {}): number =>
  (own.shell_g === undefined
    ? squareCm(diameter_mm).mul(exact(shellBatter.value))
    : exact(own.shell_g).mul(batterKept(own))
  ).valueOf();

/** Filling in one macaron, g: 0.42 × d², from memory; or what she makes for one, less what stays in the bag. */
export const fillingWeight = (diameter_mm: number, own: Own = {}): number =>
  (own.filling_g === undefined
    ? squareCm(diameter_mm).mul(exact(macaronFilling.value))
    : exact(own.filling_g).mul(fillingKept(own))
  ).valueOf();

/** Batter to make for one shell, g, exactly. */
const batterMade = (diameter_mm: number, own: Own) =>
  own.shell_g === undefined
    ? squareCm(diameter_mm).mul(exact(shellBatter.value)).div(batterKept(own))
    : exact(own.shell_g);

/** Filling to make for one macaron, g, exactly. */
const fillingMade = (diameter_mm: number, own: Own) =>
  own.filling_g === undefined
    ? squareCm(diameter_mm).mul(exact(macaronFilling.value)).div(fillingKept(own))
    : exact(own.filling_g);

/** Shells to pipe for an order, spares in: ceil(2 N × (1 + spares)); 110 for 50. */
export function shellsFor(macarons: number, bench: Pick<Bench, "spare_percent"> = {}): number {
  const spares = bench.spare_percent ?? spareShells.value;
  return ceil(
    exact(macarons)
      .mul(2)
      .mul(exact(100).add(exact(spares)))
      .div(100),
  );
}

/** Batter to make for a number of shells, g, with what stays in bowl and bag: shells × 0.53 d² / 0.96. */
export const batterForShells = (shells: number, diameter_mm: number, own: Own = {}): number =>
  exact(shells).mul(batterMade(diameter_mm, own)).valueOf();

/** Batter to make for an order of macarons, g. */
export const batterFor = (
  macarons: number,
  diameter_mm: number,
  bench: Pick<Bench, "spare_percent"> = {},
  own: Own = {},
): number => batterForShells(shellsFor(macarons, bench), diameter_mm, own);

/** Whole shells from a bowl of batter: floor(B × 0.96 / (0.53 d²)). */
export const shellsFrom = (batter_g: number, diameter_mm: number, own: Own = {}): number =>
  wholeIn(exact(batter_g).div(batterMade(diameter_mm, own)));

/** Filling to make for macarons, g, with what stays in the bag: N × 0.42 d² / 0.92. No spares. */
export const fillingFor = (macarons: number, diameter_mm: number, own: Own = {}): number =>
  exact(macarons).mul(fillingMade(diameter_mm, own)).valueOf();

/** Macarons that a bowl of filling fills: floor(G × 0.92 / (0.42 d²)). */
export const macaronsFrom = (filling_g: number, diameter_mm: number, own: Own = {}): number =>
  wholeIn(exact(filling_g).div(fillingMade(diameter_mm, own)));

/** Shells that fit one tray in rows: floor((380 + 20) / (d + 20)) × floor((280 + 20) / (d + 20)), d in mm. */
export function shellsOnTray(
  diameter_mm: number,
  bench: Pick<Bench, "shells_a_tray" | "tray_width_mm" | "tray_depth_mm"> = {},
): number {
  if (bench.shells_a_tray !== undefined) return bench.shells_a_tray;
  const along = (side: number) =>
    floor(exact(side - 2 * tray.margin_mm + tray.gap_mm).div(exact(diameter_mm).add(tray.gap_mm)));
  return (
    Math.max(0, along(bench.tray_width_mm ?? tray.width_mm)) *
    Math.max(0, along(bench.tray_depth_mm ?? tray.depth_mm))
  );
}

/** Eggs to crack for a weight of whites: ceil(g / 33). Source: USDA SR, NDB 01124. */
export const eggsFor = (whites_g: number): number => ceil(exact(whites_g).div(exact(eggWhite.value)));

/** The house formula's lines for a weight of batter, g. */
export function houseLines(batter_g: number): { name: string; grams: number }[] {
  return houseFormula.map(({ name, parts }) => ({
    name,
    grams: exact(batter_g).mul(parts).div(houseParts).valueOf(),
  }));
}
