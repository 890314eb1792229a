/** Sums worked by hand against what the program says, to a millionth. */
import { expect } from "vitest";
import { baker } from "./ask.ts";

/** A figure's value, or its low and high end. */
export type Wanted = number | [low: number, high: number];

/** Turns by "|", the calculator, and of the last answer the figures by their names. */
export type Case = [turns: string, tool: string, figures: Readonly<Record<string, Wanted>>];

const toMillionth = (value: number | undefined) => Number(value?.toFixed(6));

/** Says the turns and expects the last answer to be the calculator's, with these figures. */
export async function expectFigures(...[turns, tool, figures]: Case) {
  const { ask } = baker();
  const answers = [];
  for (const turn of turns.split("|")) answers.push(...(await ask(turn)));
  const answer = answers.at(-1);
  expect([answer?.tool, answer?.status]).toEqual([tool, "answered"]);
  for (const [name, wanted] of Object.entries(figures)) {
    const found = answer?.figures?.find((each) => each.name === name);
    if (typeof wanted === "number") expect(toMillionth(found?.value), name).toBe(wanted);
    else expect([toMillionth(found?.low), toMillionth(found?.high)], name).toEqual(wanted);
  }
}
