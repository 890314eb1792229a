/** Two ovens in one sentence: 20 °C lower with a fan, for whichever of them is to be set. */
import { expect, it } from "vitest";
import { onlyOf, withFigures } from "../support/ask.ts";

it.each([
  [
    "my fan oven recipe says 140 C, the community kitchen only has a conventional one. what do i set it to",
    160,
  ],
  ["my conventional oven recipe says 160 C, the rental only has a fan one. what do i set it to", 140],
  ["my fan recipe is 140 c, at my sisters theres only a conventional oven. what do i dial", 160],
  ["my fan oven recipe says 140 c, what do i set my conventional one to", 160],
  ["i bake at 140 c in my fan oven at home, the cafe has a conventional one, what do i set", 160],
  // hers is the one that is set
  ["i have a fan oven, the recipe says 150 conventional. what do i set", 130],
  ["my recipe says 150 c conventional, i only have a fan oven. what do i set it to", 130],
  ["the class kitchen has fan ovens, my card says 155 C conventional, set to?", 135],
])("%s", async (said, value) => {
  expect((await withFigures(said)).value("result")).toBeCloseTo(value, 6);
});

it.each([
  ["mines a fan oven actually, so 150 conventional is?", 130],
  ["my oven is conventional, so 130 fan is what", 150],
])("%s, behind a timer", async (said, value) => {
  const answer = await withFigures("start the bake timer", said);
  expect([answer.tool, answer.value("result")]).toEqual(["convert", expect.closeTo(value, 6)]);
});

it("a timer for the fan oven stays one", async () => {
  const { tool } = await onlyOf("start the bake timer for the fan oven, 14 min", "make it 16");
  expect(tool).toBe("timer");
});
