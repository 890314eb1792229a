/** Sums worked by hand against what the program says, to a millionth. */
import { expect } from "vitest";
import type { Answer } from "../../src/tools/contract/index.ts";
import { baker } from "./ask.ts";

/** A figure's value, or its low and high end. */
export type Wanted = number | [low: number, high: number];

/** Turns by "|", the calculator, and of the last answer the figures by their names. */
export type Case = [turns: string, tool: string, figures: Readonly<Record<string, Wanted>>];

/** Expects these figures of an answer, to so many digits behind the point. */
export function expectIn(
  answer: Answer | undefined,
  figures: Readonly<Record<string, Wanted>>,
  digits = 6,
  about = "",
) {
  expect(answer?.status, `${about}: ${answer?.headline}`).toBe("answered");
  for (const [name, wanted] of Object.entries(figures)) {
    const found = answer?.figures?.find((each) => each.name === name);
    const pairs =
      typeof wanted === "number"
        ? [[found?.value, wanted]]
        : [
            [found?.low, wanted[0]],
            [found?.high, wanted[1]],
          ];
    for (const [have, want] of pairs)
      expect(have, `${name} of ${about}: ${answer?.headline}`).toBeCloseTo(want as number, digits);
  }
}

/** Says the turns and expects the last answer to be the calculator's, with these figures. */
export async function expectFigures(...[turns, tool, figures]: Case) {
  const { ask } = baker();
  const answers = [];
  for (const turn of turns.split("|")) answers.push(...(await ask(turn)));
  const answer = answers.at(-1);
  expect([answer?.tool, answer?.status]).toEqual([tool, "answered"]);
  expectIn(answer, figures, 6, turns);
}
