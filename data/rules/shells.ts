/** Shells, filling and trays: the figures the sizing works with, each with its basis. */
import type { Basis } from "../../src/tools/contract/answer.ts";

export interface Constant {
  value: number;
  unit: string;
  basis: Basis;
  source?: string;
}

/** House formula by weight, per 100 of whites; batter 460. Common practice. */
export const houseFormula: readonly { name: string; parts: number }[] = [
  { name: "whites", parts: 100 },
  { name: "almond flour", parts: 130 },
  { name: "powdered sugar", parts: 130 },
  { name: "granulated sugar", parts: 100 },
];

/** The parts of the house formula added up: arithmetic. */
export const houseParts = 460;

const fromMemory = (value: number, unit: string): Constant => ({ value, unit, basis: "from memory" });

/** Batter in one shell, times the diameter in cm squared. */
export const shellBatter = fromMemory(0.53, "g/cm²");
export const usualDiameter = fromMemory(38, "mm");
/** What stays in bowl and bag. */
export const batterLoss = fromMemory(4, "%");
export const fillingLoss = fromMemory(8, "%");
/** Shells piped beyond the order, because some fail. */
export const spareShells = fromMemory(10, "%");
/** What is left of a shell's weight after baking. */
export const bakedShare = fromMemory(87, "%");
/** Filling in one macaron, times the diameter in cm squared. */
export const macaronFilling = fromMemory(0.42, "g/cm²");
/** Of two fillings, what the ring takes. */
export const ringShare = fromMemory(60, "%");
/** A common tray, its margin all round and the gap between shells. */
export const tray = { width_mm: 400, depth_mm: 300, margin_mm: 10, gap_mm: 20, basis: "arithmetic" as Basis };
/** The white of one large egg. */
export const eggWhite: Constant = { value: 33, unit: "g", basis: "published", source: "USDA SR, NDB 01124" };
