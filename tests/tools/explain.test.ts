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

describe("how it was read", () => {
  const pieces = async (...said: string[]) => {
    const one = baker();
    for (const line of said) await one.ask(line);
    const answer = await one.one("how did you read that");
    expect(answer.headline).toContain(`"${said.at(-1)}"`);
    return (answer.items ?? []).map(({ text }) => String(text));
  };

  test("shows each piece in its order, whose question it was and each input with its value", async () => {
    const told = await pieces("how much pistachio paste for 230 g buttercream");
    expect(told.map((text) => /^"([^"]+)"/.exec(text)?.[1]).filter(Boolean)).toEqual([
      "pistachio paste",
      "230 g",
      "buttercream",
    ]);
    expect(told[0]).toMatch(/nut paste.*pistachio/);
    expect(told[1]).toMatch(/weight, 230 g of buttercream/);
    expect(told).toContain("a question for dose");
    expect(told).toContain("for dose, base: 230 g (said)");
  });

  test("shows moments, slips and words that nobody knew", async () => {
    const told = await pieces("30 macrons for saturday 3pm when do i start zorblax");
    expect(told.join("\n")).toMatch(/"saturday 3pm": a moment, Saturday 15:00/);
    expect(told.join("\n")).toMatch(/"zorblax": not known/);
  });

  test("shows what was remembered as such", async () => {
    const told = await pieces("how much flavor for 230 g buttercream", "and for 300 g?");
    expect(told).toContain("for dose, base: 300 g (said)");
    expect(told).toContain("for dose, base: buttercream (remembered)");
  });

  test("shows all questions of a turn", async () => {
    const told = await pieces("how much flavor for 230 g buttercream and set a timer for 20 min");
    expect(told).toContain("a question for dose");
    expect(told).toContain("a question for timer");
  });

  test("shows a sentence that no calculator took, not the one before it", async () => {
    const told = await pieces("how much flavor for 230 g buttercream", "zorblax quimble 20 g vexing");
    expect(told).toContain('"zorblax": not known');
    expect(told.join()).not.toMatch(/230/);
  });
});

test("nothing asked yet is said, and no rule made up", () => {
  const said = answer(explain, { about: "rule" });
  expect([said.status, said.figures, said.rule]).toEqual(["declined", undefined, undefined]);
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
