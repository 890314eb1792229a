/**
 * What was said is taken up with one thing changed. By hand: 3-5 % flavor in buttercream, 3-4 % in ganache (common
 * practice); 1-2 % vanilla extract; filling of 0.42 × 3.8² g a macaron, 8 % of it stay behind, a ring and a center
 * 60 : 40 (from memory). Allergens by name: FALCPA 2004, FASTER Act 2021.
 */
import { describe, expect, it } from "vitest";
import { baker, talk } from "../support/ask.ts";

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
    expect(await talk("how much flavor for my ganache", "enough for 20 please")).toMatchObject({
      status: "asking",
    }));
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

describe("in the middle of a bake", () => {
  // 180 / 1.25 = 144 g cream; with 70 of it, 74 are missing
  it("a ganache worked out is the one that is too stiff, and 70 cream is no chocolate", async () => {
    const { of } = await talk(
      "ganache 180 dark how much cream for piping",
      "its too stiff",
      "only got 70 cream",
    );
    expect(of("add cream")?.value).toBeCloseTo(74, 9);
  });
  it("whites that are on the scale are weighed, not counted: 172 × 1.3", async () =>
    expect((await talk("ive got 5 whites in the bowl 172 g total")).of("almond flour")?.value).toBeCloseTo(
      223.6,
      9,
    ));
  it("three whites of 98 g are 98 g: 98 × 1.3", async () =>
    expect((await talk("got 3 whites 98 g, everything else?")).of("almond flour")?.value).toBeCloseTo(
      127.4,
      9,
    ));
  it("24 are macarons where no bowl holds so few grams: 24 × 0.42 × 3.8² / 0.92", async () =>
    expect((await talk("smbc for 24")).of("total")?.value).toBeCloseTo((24 * 0.42 * 3.8 * 3.8) / 0.92, 9));
  it("5 more of nobody knows how much is asked about; 8 in 150 are over the 2-5 %", async () => {
    const first = ["raspberry powder for 150 g ganache", "tastes too weak, added 5 more"];
    expect((await talk(...first)).status).toBe("asking");
    const { of, headline } = await talk(...first, "8");
    expect([of("share")?.value, headline]).toEqual([
      expect.closeTo(800 / 150, 9),
      expect.stringContaining("over"),
    ]);
  });
  it.each(["set timer 14 tray one", "set timer 14 tray 1"])("%s: 14 minutes", async (say) => {
    const { of, headline } = await talk(say);
    expect([of("left")?.value, headline]).toEqual([14, expect.stringContaining("tray 1")]);
  });
  it("a bake that took 15 min starts no timer", async () => {
    const { one, record } = baker();
    const { tool } = await one("tray one out, took 15 min, feet fine but two hollow");
    expect([tool, record().timers]).toEqual(["trouble", []]);
  });
  it.each([
    ["oven runs 10 hot, what do i set for 150", 140],
    ["my oven runs 18 f cold, what do i set for 150", 160],
  ])("%s: %d", async (say, heat) => expect((await talk(say)).of("oven")?.value).toBeCloseTo(heat, 9));
});

describe("an allergy is never answered with one filling's list", () => {
  it.each([
    "a guest is allergic to tree nuts, are these safe",
    "she has an almond allergy, can she eat them",
  ])("%s", async (say) =>
    expect((await talk("ganache 180 dark how much cream", say)).status).toBe("declined"),
  );
  it("they are macarons, with their shells", async () => {
    const { items } = await talk("ganache 180 dark how much cream", "which allergens are in them");
    const named = items?.flatMap((each) => ("allergen" in each ? [each.allergen] : []));
    expect(named).toEqual(expect.arrayContaining(["almond", "egg", "milk"]));
  });
});
