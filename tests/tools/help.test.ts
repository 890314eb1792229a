/** Help, thanks and small talk; and what is none of its business. */
import { describe, expect, test } from "vitest";
import { topics } from "../../data/words/topics.ts";
import { toolNamed, tools } from "../../src/tools/registry.ts";
import { baker } from "../support/ask.ts";

describe("what can you do", () => {
  test.each([
    "what can you do",
    "help",
    "What sort of things can you help me with?",
    "what all can you help me with",
    "how does this work",
    "what can i ask",
    "examples please",
  ])("%s", async (say) => {
    const said = await baker().one(say);
    expect([said.tool, said.status]).toEqual(["help", "answered"]);
    expect(said.headline).toMatch(/flavor/);
    expect(said.items).toHaveLength(tools.length - 1);
  });

  test("the examples that it shows work", async () => {
    const said = await baker().one("help");
    for (const { tool, say } of said.items ?? []) {
      const answers = await baker().ask(String(say));
      expect(answers[0]?.tool, String(say)).toBe(tool);
    }
  });
});

test.each([
  ["help with ganache", "ganache"],
  ["help with timers", "timer"],
  ["can you help me with my recipes", "formula"],
])("%s shows more of one", async (say, tool) => {
  const said = await baker().one(say);
  expect(said.tool).toBe("help");
  expect(said.headline).toContain(toolNamed(tool)?.purpose);
});

test("every topic is a calculator's", () => {
  for (const name of Object.keys(topics)) expect(toolNamed(name), name).toBeDefined();
});

describe("thanks and small talk are answered and leave the conversation where it was", () => {
  test.each([
    "thanks",
    "thank you hun youre a lifesaver",
    "cheers, that's grand",
    "lovely, thank you!",
    "hello",
    "who are you",
    "ok great thanks so much",
  ])("%s", async (say) => {
    const one = baker();
    await one.ask("how much flavor for 210 g buttercream");
    expect((await one.one(say)).tool).toBe("help");
    // 340 × 3 % and 5 %
    expect((await one.one("and for 340?")).figures?.[0]).toMatchObject({ low: 10.2, high: 17 });
  });
});

describe("what isn't its job is declined", () => {
  test.each([
    "tell me a joke",
    "what's the weather like",
    "who won the football",
    "write me a poem",
    "capital of france",
    "play some music",
  ])("%s", async (say) => {
    const said = await baker().one(say);
    expect([said.tool, said.status, said.figures]).toEqual(["help", "declined", undefined]);
  });
});

test("a cry for help about a bake is trouble's", async () => {
  expect((await baker().one("my buttercream went all soupy, help")).tool).toBe("trouble");
});
