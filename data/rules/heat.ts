/** Ovens: what a fan takes off, and what shells are baked at. */
import type { Basis } from "../../src/tools/contract/answer.ts";

interface HeatRule {
  basis: Basis;
  text: string;
}

/** A fan oven is set lower than a conventional one by this, in its own scale. */
export const fanLower: HeatRule & { celsius: number; fahrenheit: number } = {
  celsius: 20,
  fahrenheit: 25,
  basis: "common practice",
  text: "a fan oven is set 20 °C (25 °F) lower than a conventional one",
};

/** Macaron shells in a conventional oven: °C, °F and minutes, at a diameter in mm. */
export const shellOven = {
  celsius: 150,
  fahrenheit: 300,
  minutes: 15,
  low: 12,
  high: 18,
  diameter_mm: 38,
  basis: "common practice",
} as const satisfies { basis: Basis } & Record<string, unknown>;

/** Marks of a British gas oven: °C of a conventional oven at 1 to 9, and at the two below. */
export const gasMarks: HeatRule & { celsius: ReadonlyMap<number, number> } = {
  celsius: new Map([
    [0.25, 110],
    [0.5, 120],
    [1, 140],
    [2, 150],
    [3, 160],
    [4, 180],
    [5, 190],
    [6, 200],
    [7, 220],
    [8, 230],
    [9, 240],
  ]),
  basis: "common practice",
  text: "gas marks as British ovens and cookbooks count them",
};
