/** Sums worked by hand against what the program says, to a millionth. */
import { expect } from "vitest";
import { talk } from "./ask.ts";

/** A figure's value, or its low and high end. */
export type Wanted = number | [low: number, high: number];

/** Turns by "|", the calculator, and of the last answer the figures by their names. */
export type Case = [turns: string, tool: string, figures: Readonly<Record<string, Wanted>>];

const toMillionth = (value: number | undefined) => Number(value?.toFixed(6));

/** Says the turns and expects the last to be answered by the calculator with these figures. */
export async function expectFigures(...[turns, tool, figures]: Case) {
  const answer = await talk(...turns.split("|"));
  expect([answer.tool, answer.status]).toEqual([tool, "answered"]);
  for (const [name, wanted] of Object.entries(figures)) {
    const found = answer.of(name);
    if (typeof wanted === "number") expect(toMillionth(found?.value), name).toBe(wanted);
    else expect([toMillionth(found?.low), toMillionth(found?.high)], name).toEqual(wanted);
  }
}
