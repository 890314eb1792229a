/** Turns behind others that name a scale, a number of pieces, another bowl or a usual time: each taken for what it is. */
import { describe, expect, it } from "vitest";
import { baker } from "../support/ask.ts";

async function last(...turns: string[]) {
  const { ask } = baker();
  let answers = await ask(turns[0] ?? "");
  for (const say of turns.slice(1)) answers = await ask(say);
  return answers[0];
}
const oven = ["my recipe says 160 c conventional, what in my fan oven", "whats that in f"];

describe("a heat behind a conversion", () => {
  it.each([
    ["and the 160?", 320],
    ["and 180?", 356],
    // a number that no oven has on that scale is of the other one: 320 °F is 160 °C
    ["and 320 f?", 160],
  ])("%s", async (say, value) => {
    const answer = await last(...oven, say);
    expect(answer?.figures?.[0]?.value).toBeCloseTo(value, 0);
  });
});

it("plain mix that was added goes by the flavor that was checked", async () => {
  const answer = await last(
    "10 g lemon oil in 200 g ganache, too much?",
    "how much ganache do i add",
    "i add 100",
  );
  // 10 g in 300 g
  expect(answer?.headline).toMatch(/^3\.33 %: over the 0\.2-0\.5 %/);
});

it("eggs are counted, and no grams", async () => {
  const answer = await last("150 g dark chocolate 120 g cream, how much coffee", "add 2 eggs");
  expect(answer?.status).not.toBe("answered");
});

it("what is only left may be of the bowl", async () => {
  const answer = await last(
    "200 g buttercream, how much hazelnut flavor",
    "theres only 100 g left, how much buttercream",
  );
  expect(answer?.status).toBe("asking");
});

describe("a reason for another length", () => {
  it.each(["muggy in here, make it 50", "its cold today so make it 50"])(
    "%s: of the timer that runs",
    async (say) => {
      const { ask } = baker();
      await ask("set the rest timer");
      await ask(say);
      expect((await ask("timers?"))[0]?.items).toHaveLength(1);
    },
  );

  it.each(["customer rang, make it 50", "the order grew, make it 60"])(
    "%s: no timer is moved by it",
    async (say) => {
      const { ask } = baker();
      await ask("set the rest timer");
      await ask(say);
      const left = (await ask("how long on the rest timer"))[0]?.figures?.[0]?.value;
      expect(left).toBe(30);
    },
  );
});

describe("a usual time that is asked for sets no timer", () => {
  it.each([
    "is 5 hours the usual maturing time",
    "is 45 min the normal resting time",
    "is resting 30 min right",
    "is it usual to rest 30 min",
    "is it right to bake 5 min",
  ])("%s", async (say) => {
    const { ask } = baker();
    expect((await ask(say))[0]?.tool).toBe("method");
    expect((await ask("timers?"))[0]?.items ?? []).toHaveLength(0);
  });
});
