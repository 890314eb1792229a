/** What every way of asking for a size looks at. */
import type { Amount, Memory, Reading } from "../contract/index.ts";
import type { Way } from "../lib/ways.ts";
import type { ShellsInputs } from "./shells.ts";

export type Draft = Partial<ShellsInputs>;

export interface ShellsTurn {
  reading: Reading;
  memory: Memory;
  /** The question before, where it was one of these. */
  before: Draft | undefined;
}

export type ShellsWay = Way<ShellsTurn, Draft | Draft[]>;

export const shellsTurn = (reading: Reading, memory: Memory): ShellsTurn => ({
  reading,
  memory,
  before: memory.last?.tool === "shells" ? (memory.last.inputs as Draft) : undefined,
});

/** A number without a unit, and no part of one. */
export const isNumber = ({ dim, unit, fraction }: Amount): boolean =>
  dim === "number" && unit === "" && !fraction;

/** A diameter in mm as a draft, where there is one. */
export const sized = (diameter_mm: number | undefined): Draft =>
  diameter_mm === undefined ? {} : { diameter_mm };

/** Of a bowl of batter it is the whites in it that are asked for. */
export const ofBatter = (want: ShellsInputs["want"]): Draft => (want === "whites" ? { of_batter: true } : {});
