/**
 * "Is that enough": what is there beside what is needed. By hand from the rules (from memory): 0.42 d² g filling a
 * macaron, 8 % of it lost; 0.53 d² g batter a shell, 4 % lost, a tenth of spare shells; d in cm, 3.8 unless said.
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { talk } from "../support/ask.ts";

const needed = (macarons: number, d = 3.8) => (macarons * 0.42 * d ** 2) / 0.92;

describe("filling", () => {
  it.each([
    ["is 300 g buttercream enough for 40", 40, 300, "Enough"],
    ["160 g of filling in the bag, will it do 24 macarons", 24, 160, "Enough"],
    ["will 280 g ganache be enough for 45 macarons", 45, 280, "Not enough"],
    ["i have 96 shells and 250 g filling enough?", 48, 250, "Not enough"],
  ])("%s", async (said, macarons, has, verdict) => {
    const { headline, of } = await talk(said);
    expect(headline.startsWith(`${verdict}:`)).toBe(true);
    expect(of("filling")?.value).toBeCloseTo(needed(macarons), 9);
    expect(of("filling left")?.value ?? -(of("filling short")?.value ?? 0)).toBeCloseTo(
      has - needed(macarons),
      9,
    );
  });

  it("says enough exactly when it fills them", async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.integer({ min: 20, max: 900 }),
        fc.integer({ min: 1, max: 120 }),
        async (has, many) => {
          const { headline, of } = await talk(`is ${has} g filling enough for ${many} macarons`);
          const fills = Math.floor((has * 0.92) / (0.42 * 3.8 ** 2) + 1e-9);
          expect(of("macarons")?.value).toBe(fills);
          expect(headline.startsWith("Enough")).toBe(fills >= many);
        },
      ),
      { numRuns: 40 },
    );
  });

  it("another number of macarons is held against the same bowl", async () => {
    const { headline } = await talk("is 300 g buttercream enough for 40", "what about 48");
    expect(headline).toContain("Not enough: 48 macarons take 316 g");
  });

  it("five flavors share it evenly", async () => {
    const { figures } = await talk("i want 60 macs in 5 flavors, how much filling per flavor");
    expect(figures?.[0]?.value).toBeCloseTo(needed(60) / 5, 9);
  });
});

describe("batter and what it is made from", () => {
  it("380 g make 23, and 20 with spares take 351 g", async () => {
    const { headline, of } = await talk("is 380 g of batter enough for 20 macarons");
    expect(headline).toMatch(/^Enough:/);
    expect(of("macarons")?.value).toBe(Math.floor(Math.floor((380 * 0.96) / (0.53 * 3.8 ** 2)) / 2));
    expect(of("batter needed")?.value).toBeCloseTo((44 * 0.53 * 3.8 ** 2) / 0.96, 9);
  });
  it.each([
    // 200 × 460 / 130 g batter; of two lines the scarcer counts
    ["how many macarons from 200 g almond flour", (200 * 460) / 130],
    ["with 150 g icing sugar how many shells can i get", (150 * 460) / 130],
    ["how many macarons can i make with 200 g almond flour and 90 g whites", 414],
  ])("%s", async (said, batter) => expect((await talk(said)).of("batter")?.value).toBeCloseTo(batter, 9));
  it("cracked shells are no shells", async () => {
    const { of } = await talk("112 shells, 6 cracked, how many left");
    expect([of("shells")?.value, of("macarons")?.value]).toEqual([106, 53]);
  });
  it("three batches are three times one", async () =>
    expect((await talk("3 batches of batter, each 460 g, how many macarons")).of("batter")?.value).toBe(
      1380,
    ));
  it("nothing is worked out where nothing says for how much", async () =>
    expect(await talk("how much almond flour do i need")).toMatchObject({ status: "asking", tool: "scale" }));
});
