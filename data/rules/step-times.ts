/** How long a step's own timer runs when no time is said. The baker's own setting replaces it. */
import type { Basis } from "../../src/tools/contract/answer.ts";

export interface StepTime {
  /** The step's id in the word table, or the filling's where the step is its setting. */
  step: string;
  minutes: number;
  /** What the answer says that it rests on. */
  text: string;
  basis: Basis;
  /** The setting that replaces it, and how many minutes one of its unit is. */
  setting?: { name: "rest_min" | "bake_min" | "cool_min" | "mature_h"; per: number };
}

export const stepTimes: readonly StepTime[] = [
  {
    step: "rest",
    minutes: 30,
    text: "shells rest 30 min (30-60)",
    basis: "common practice",
    setting: { name: "rest_min", per: 1 },
  },
  {
    step: "bake",
    minutes: 15,
    text: "shells of 38 mm bake 15 min (12-18)",
    basis: "common practice",
    setting: { name: "bake_min", per: 1 },
  },
  {
    step: "cool",
    minutes: 30,
    text: "shells cool 30 min",
    basis: "common practice",
    setting: { name: "cool_min", per: 1 },
  },
  {
    step: "ganache",
    minutes: 45,
    text: "ganache sets 45 min in the fridge (30-60)",
    basis: "common practice",
  },
  {
    step: "mature",
    minutes: 1440,
    text: "filled macarons mature 24 h (24-48), boxed airtight in the fridge",
    basis: "common practice",
    setting: { name: "mature_h", per: 60 },
  },
];

/** How long filled macarons mature, h. */
export const matures = { low_h: 24, high_h: 48, basis: "common practice" as Basis };

/** Piped shells that stand for longer than this before they bake have dried through. */
export const longestStand_min = { value: 180, basis: "from memory" as Basis };
