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

/** d in cm, squared, exactly. */
const squareCm = (diameter_mm: number) => exact(diameter_mm).div(10).pow(2);

/** Batter in one piped shell, g: 0.53 × d². From memory. */
export const shellWeight = (diameter_mm: number): number =>
  squareCm(diameter_mm).mul(exact(shellBatter.value)).valueOf();

/** Filling in one macaron, g: 0.42 × d². From memory. */
export const fillingWeight = (diameter_mm: number): number =>
  squareCm(diameter_mm).mul(exact(macaronFilling.value)).valueOf();

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
export function batterForShells(shells: number, diameter_mm: number): number {
  return exact(shells)
    .mul(squareCm(diameter_mm))
    .mul(exact(shellBatter.value))
    .div(exact(100 - batterLoss.value))
    .mul(100)
    .valueOf();
}

/** Batter to make for an order of macarons, g. */
export const batterFor = (
  macarons: number,
  diameter_mm: number,
  bench: Pick<Bench, "spare_percent"> = {},
): number => batterForShells(shellsFor(macarons, bench), diameter_mm);

/** Whole shells from a bowl of batter: floor(B × 0.96 / (0.53 d²)). */
export function shellsFrom(batter_g: number, diameter_mm: number): number {
  return wholeIn(
    exact(batter_g)
      .mul(exact(100 - batterLoss.value))
      .div(100)
      .div(squareCm(diameter_mm).mul(exact(shellBatter.value))),
  );
}

/** Filling to make for macarons, g, with what stays in the bag: N × 0.42 d² / 0.92. No spares. */
export function fillingFor(macarons: number, diameter_mm: number): number {
  return exact(macarons)
    .mul(squareCm(diameter_mm))
    .mul(exact(macaronFilling.value))
    .div(exact(100 - fillingLoss.value))
    .mul(100)
    .valueOf();
}

/** Macarons that a bowl of filling fills: floor(G × 0.92 / (0.42 d²)). */
export function macaronsFrom(filling_g: number, diameter_mm: number): number {
  return wholeIn(
    exact(filling_g)
      .mul(exact(100 - fillingLoss.value))
      .div(100)
      .div(squareCm(diameter_mm).mul(exact(macaronFilling.value))),
  );
}

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
