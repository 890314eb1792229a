/** What is told beside a question. By hand: 10 °C less than the heat told, shares and margins by arithmetic. */
import { describe, expect, it } from "vitest";
import { talk } from "../support/ask.ts";

describe("a heat told beside a fault", () => {
  it.each([
    ["im at 140 fan and they browned", 130],
    ["my shells are hollow at 160", 150],
    ["my shells are hollow", 140],
  ])("%s", async (say, oven) => expect((await talk(say)).of("oven")?.value).toBe(oven));
  it("or behind it", async () =>
    expect((await talk("my shells are hollow", "im at 155")).of("oven")?.value).toBe(145));
});

describe("a number behind a size", () => {
  it.each([
    ["filling for 24 at 4 cm", "and for 6", 6],
    ["filling for 24 at 4 cm", "and if theyre 3.8", 24],
  ])("%s / %s", async (first, then, macarons) =>
    expect((await talk(first, then)).headline).toContain(`${macarons} macarons`),
  );
});

describe("money", () => {
  it("of a part: 6 of 48 for 14.40", async () =>
    expect(
      (await talk("a batch of 48 costs £14.40, what does a box of 6 cost")).of("cost")?.value,
    ).toBeCloseTo(1.8, 9));
  it.each([
    ["box of 6 costs me £3.40 and sells for £9.50, margin?", "at £8.50", 60],
    ["whats my margin if it costs 7 and i sell for 20", "and at 14", 50],
    ["box costs me £9 and sells for £24, margin?", "whats the margin if i sell it at 20 pounds instead", 55],
  ])("a price said anew: %s / %s", async (first, then, margin) =>
    expect((await talk(first, then)).of("margin")?.value).toBeCloseTo(margin, 9),
  );
  it("packaging on top of packaging", async () =>
    expect(
      (
        await talk("Ingredients $19.20, boxes $8.80, 30% margin, price?", "thats another $3.50 in packaging")
      ).of("cost")?.value,
    ).toBeCloseTo(31.5, 9));
  it("a dozen is how many, and no sum", async () =>
    expect(
      (await talk("selling a dozen at $24 and it costs me $9 to make, what margin am i on")).of("margin")
        ?.value,
    ).toBeCloseTo(62.5, 9));
});

describe("allergens", () => {
  it("of another taste: the rest of them stays", async () => {
    const { headline } = await talk(
      "what allergens for hazelnut macarons with milk chocolate ganache",
      "and if theyre pistachio instead",
    );
    for (const each of ["almond", "egg", "milk", "pistachio"]) expect(headline).toContain(each);
    expect(headline).not.toContain("hazelnut");
  });
  it("of a filling alone say so", async () =>
    expect(
      (
        await talk("label for dark ganache with 200 choc 160 cream 20 butter", "does it have nuts")
      ).cautions?.join(" "),
    ).toContain("macaron shells bring almond and egg"));
});

describe("keeping", () => {
  it("a short time somewhere is a time out of the fridge", async () =>
    expect((await talk("filled macs have sat on the side for 3 hours, still fine?")).headline).toMatch(
      /^No/,
    ));
  it("another day in its place: the 8th makes the 14th", async () =>
    expect(
      (await talk("made and filled these on the 10th, still ok to eat today?", "and the 8th")).headline,
    ).toContain("use by Sat 14 Mar"));
});

describe("a recipe", () => {
  it("is named up to the dash, and loses no line", async () => {
    const { headline } = await talk(
      "keep this recipe as exam week shells - whites 100 g, almond flour 125 g, powdered sugar 120 g, granulated sugar 90 g",
    );
    expect(headline).toBe(
      "Saved exam week shells: whites 100 g, almond flour 125 g, powdered sugar 120 g, granulated sugar 90 g",
    );
  });
  it("is scaled by its name, and not changed: 140 / 100 of 125", async () =>
    expect(
      (
        await talk(
          "keep this recipe as exam week shells - whites 100 g, almond flour 125 g, powdered sugar 120 g, granulated sugar 90 g",
          "exam week shells but with 140 g whites please",
        )
      ).of("almond flour")?.value,
    ).toBeCloseTo(175, 9));
});
