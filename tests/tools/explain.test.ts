/** Why: the last rule with its numbers, and how the sentence was read. */
import { describe, expect, test } from "vitest";
import { explain } from "../../src/tools/explain.ts";
import { baker, steps } from "../support/ask.ts";
import { answer } from "../support/world.ts";

describe("examples read to their inputs", () => {
  test.each(explain.examples.map((each) => [each.say, each.inputs] as const))("%s", (say, inputs) => {
    const [step] = steps(say)[0] as { tool: { name: string }; inputs: unknown }[];
    expect([step?.tool.name, step?.inputs]).toEqual(["explain", inputs]);
  });
});

describe("every way of asking why", () => {
  test.each([
    "why?",
    "Why that much?",
    "but why",
    "how did you get that",
    "where do you get that from",
    "how did you work that out?",
    "explain that to me step by step",
    "where does the 3 come from",
    "says who",
    "show me the working",
  ])("%s", async (why) => {
    const one = baker();
    await one.ask("how much flavor for 250 g buttercream");
    const said = await one.one(why);
    expect(said.tool).toBe("explain");
    const text = JSON.stringify(said);
    // 250 × 3 / 100 and 250 × 5 / 100
    for (const part of ["250", "3-5 %", "common practice", "7.5", "12.5", "a concentrated flavor"])
      expect(text).toContain(part);
  });
});

test("it names a published source", async () => {
  const one = baker();
  await one.ask("9 oz in grams");
  expect((await one.one("why")).headline).toMatch(/28\.349523125 g \(published, NIST/);
});

test("how it was read shows the pieces", async () => {
  const one = baker();
  await one.ask("how much flavor for 230 g buttercream");
  const said = await one.one("how did you read that");
  expect(said.headline).toMatch(/230 g/);
});

test("nothing asked yet is said, and no rule made up", () => {
  const said = answer(explain, { about: "rule" });
  expect([said.status, said.figures, said.rule]).toEqual(["answered", undefined, undefined]);
});

test("the conversation goes on behind it", async () => {
  const one = baker();
  await one.ask("how much flavor for 250 g buttercream");
  await one.ask("why?");
  const said = await one.one("and for 300?");
  expect(said.figures?.[0]).toMatchObject({ low: 9, high: 15 });
});

test.each([
  ["why are my shells hollow", "trouble"],
  ["no feet at all why", "trouble"],
])("not explain's: %s", async (say, tool) => expect((await baker().one(say)).tool).toBe(tool));
