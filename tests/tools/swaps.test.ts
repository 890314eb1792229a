/**
 * What was said is taken up with one thing changed. By hand: 3-5 % flavor in buttercream, 3-4 % in ganache (common
 * practice); 1-2 % vanilla extract; filling of 0.42 × 3.8² g a macaron, 8 % of it stay behind, a ring and a center
 * 60 : 40 (from memory). Allergens by name: FALCPA 2004, FASTER Act 2021.
 */
import { describe, expect, it } from "vitest";
import { baker } from "../support/ask.ts";

async function talk(...turns: string[]) {
  const { one } = baker();
  let answer = await one(turns[0] as string);
  for (const turn of turns.slice(1)) answer = await one(turn);
  const of = (name: string) => answer.figures?.find((each) => each.name === name);
  return { ...answer, of };
}

describe("an ingredient in another's place keeps the rest of what was asked about", () => {
  const first = "allergens for pistachio macarons with swiss buttercream";
  const declared = async (...turns: string[]) =>
    (await talk(first, ...turns)).items?.flatMap((each) => ("allergen" in each ? [each.allergen] : []));
  it.each([
    [["swap the pistachio for hazelnut"], ["almond", "egg", "hazelnut", "milk"]],
    [["and with peanut butter in place of the pistachio"], ["almond", "egg", "milk", "peanut"]],
    [
      ["swap the pistachio for hazelnut", "use peanut butter not hazelnut"],
      ["almond", "egg", "milk", "peanut"],
    ],
  ])("%s", async (turns, all) => expect([...new Set(await declared(...turns))].sort()).toEqual(all));
});

describe("a bowl that was too strong or grew", () => {
  it("20 g in 310: to 5 % of 400, to the middle, 4 %, of 500", async () => {
    const { of } = await talk(
      "310 g buttercream, 20 g lemon flavor in it, too strong?",
      "how much plain do i add",
    );
    expect([of("add base")?.low, of("add base")?.high]).toEqual([90, 2000 / 4 - 310]);
  });
  it("30 g butter more in 315 g ganache: 3 to 4 % of 345", async () => {
    const { of } = await talk(
      "90 g cream and 225 g milk chocolate in the ganache, how much hazelnut flavor",
      "and if i put 30 g more butter in it",
    );
    expect([of("flavor")?.low, of("flavor")?.high]).toEqual([10.35, 13.8]);
  });
  it("so few grams answer no question for a bowl", async () =>
    expect((await talk("how much flavor for my ganache", "enough for 20 please")).of("flavor")?.low).not.toBe(
      0.6,
    ));
});

describe("lists and counts", () => {
  it("her own list, scaled to 280 g almond flour: 110 : 140 : 130 : 95 stays", async () => {
    const { of } = await talk(
      "110 whites, 140 almond flour, 130 powdered sugar, 95 sugar",
      "scale it to 280 g almond flour",
    );
    expect([of("whites")?.value, of("powdered sugar")?.value, of("sugar")?.value]).toEqual([220, 260, 190]);
  });
  it("a recipe just shown is the one that is scaled", async () => {
    const { of } = await talk(
      "save recipe porch shells: 90 g whites, 120 g almond flour, 115 g powdered sugar, 85 g granulated sugar",
      "show me porch shells",
      "scale it to 135 g whites",
    );
    expect([of("almond flour")?.value, of("powdered sugar")?.value]).toEqual([180, 172.5]);
  });
  it("the two sugars are two sugars, and no 2 g", async () =>
    expect(
      (await talk("118 g whites, how much of the two sugars do i need")).of("almond flour")?.value,
    ).toBeCloseTo(153.4, 9));
  it("36 with a ring are macarons, after a bowl's weight", async () => {
    const { of } = await talk(
      "320g filling left over, how many macs will that do",
      "and for 36 with a jam center and a buttercream ring, how much of each",
    );
    expect(of("ring")?.value).toBeCloseTo((36 * 0.42 * 3.8 * 3.8 * 0.6) / 0.92, 9);
  });
});

describe("hours and minutes", () => {
  it.each(["she changed it to 5", "make it 5"])("%s: in the afternoon, as before", async (turn) => {
    const { headline } = await talk("30 macarons for tomorrow 4pm, when must i begin", turn);
    expect(headline).toMatch(/30 macarons.*17:00/);
  });
  it("why less time is no timer's name", async () =>
    expect(
      (await talk("oven timer 16 min", "take 3 min off, the oven is hot today", "hm still pale, add 5")).of(
        "left",
      )?.value,
    ).toBe(18));
});
