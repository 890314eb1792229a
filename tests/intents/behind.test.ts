/**
 * Turns that only mean something behind others, and parts of a turn that belong together. Worked by hand: 3-5 % flavor,
 * gel 0.5-1.5 %, 30 min to rest, 33 g a white (USDA SR, NDB 01124); the rest is arithmetic.
 */
import { describe, expect, it } from "vitest";
import { baker, talk } from "../support/ask.ts";

const allOf = async (...turns: string[]) => {
  const { ask } = baker();
  let answers = await ask(turns[0] as string);
  for (const turn of turns.slice(1)) answers = await ask(turn);
  return answers;
};

describe("boxes", () => {
  it("are the macarons in them", async () =>
    expect((await talk("12 boxes of 6, how much batter do i need")).of("macarons")?.value).toBe(72));
  it("go on holding as many", async () =>
    expect((await talk("10 boxes of 6, how much filling", "no 14 boxes")).headline).toContain("84 macarons"));
  it("of which nobody said what they hold are asked about", async () =>
    expect((await talk("how much batter for 12 boxes")).status).toBe("asking"));
});

describe("spares said with a question", () => {
  it("none: 60 macarons are 120 shells", async () =>
    expect((await talk("batter for 60 macarons", "without spares")).of("shells")?.value).toBe(120));
  it("20 % of them: ceil(2 × 60 × 1.2)", async () =>
    expect((await talk("batter for 60 macarons with 20 % spares")).of("shells")?.value).toBe(144));
});

describe("behind another calculator's answer", () => {
  it.each(["ok set it", "set a timer for that", "start it"])("a step's timer: %s", async (say) => {
    const { tool, of } = await talk("how long do i rest the shells", say);
    expect([tool, of("left")?.value]).toEqual(["timer", 30]);
  });
  it("what was turned into grams is judged: 21.6 of 300", async () =>
    expect(
      (await talk("4 tbsp cocoa powder in grams", "is that too much cocoa for 300 g buttercream")).of("share")
        ?.value,
    ).toBeCloseTo(7.2, 6));
});

describe("a turn that asked two things", () => {
  it("is changed where it took such an amount", async () => {
    const [answer] = await allOf(
      "4 egg whites for the house shells, and whats 150 c in f",
      "make that 3 egg whites",
    );
    expect([answer?.tool, answer?.figures?.find((each) => each.name === "whites")?.value]).toEqual([
      "scale",
      99,
    ]);
  });
  it("keeps a fault and a dose apart", async () =>
    expect(
      (await allOf("how much flavour for 180 g buttercream? also my 220 g ganache has split")).map(
        (each) => each.tool,
      ),
    ).toEqual(["dose", "ganache"]));
  it("splits a bowl and colors a part of it", async () => {
    const [split, gel] = await allOf("three equal bowls out of 420 g batter, and gel colour for one bowl?");
    expect(split?.figures?.[0]?.value).toBe(140);
    expect([gel?.figures?.[0]?.low, gel?.figures?.[0]?.high].map((each) => Number(each?.toFixed(6)))).toEqual(
      [0.7, 2.1],
    );
  });
  it("asks for nothing that its second half says", async () =>
    expect(
      (
        await allOf(
          "Trying to be honest with myself about what a batch really costs. I used 260 g almond flour at $13 a kilo and 200 g sugar at $2 a kilo. What does it come to?",
        )
      ).map((each) => each.headline),
    ).toEqual(["$3.78"]));
});

describe("the same sum again", () => {
  it.each([
    ["2 tsp salt is how many g", "half that?", 6],
    ["whats two thirds of 285", "and one third", 95],
    ["whats 15 times 12", "take 24 off that", 156],
  ])("%s / %s", async (first, then, value) =>
    expect((await talk(first, then)).of("result")?.value).toBeCloseTo(value, 9),
  );
});
