/** Labels as PDF, asked for in words and read back by another library. */
import { describe, expect, it } from "vitest";
import { baker } from "../support/ask.ts";
import { type Page, pagesOf } from "../support/pdf.ts";

const us =
  "us label: 130 g almond flour, 130 g powdered sugar, 100 g egg whites, 100 g sugar, 90 g butter, net weight 120 g, made today";

async function printed(...lines: string[]) {
  const one = baker();
  let answer = await one.one(lines[0] ?? "");
  for (const line of lines.slice(1)) answer = await one.one(line);
  return { answer, files: one.files, pages: await pagesOf(one.files.at(-1)?.bytes) };
}

const count = (pages: readonly Page[], text: string) =>
  pages.reduce((sum, page) => sum + page.text.split(text).length - 1, 0);

/** Helvetica's x-height is 523 thousandths of its size. Source: the metrics (AFM) of PDF's standard fonts. */
const xHeight_mm = (pt: number) => ((pt * 523) / 1000 / 72) * 25.4;

/** What stands below the last cut is cut away: no part of the label. */
const onLabels = ({ pieces }: Page) => {
  const notes = Math.max(...pieces.filter(({ text }) => text.startsWith("Print at 100")).map(({ y }) => y));
  return pieces.filter(({ y }) => y > notes + 1);
};

describe("a label", () => {
  it("has what was worked out, blanks for what isn't known, and a file of its own", async () => {
    const { answer, files, pages } = await printed(us, "print that label as a pdf");
    expect(answer).toMatchObject({ tool: "label", status: "answered" });
    expect(answer.headline).toContain("label.pdf");
    expect(files.map(({ name }) => name)).toEqual(["label.pdf"]);
    expect(pages).toHaveLength(1);
    // US Letter: 8.5 × 11 in, as it is a label for the US
    expect(pages[0]?.width).toBeCloseTo(215.9, 1);
    expect(pages[0]?.height).toBeCloseTo(279.4, 1);
    const text = pages[0]?.text ?? "";
    for (const part of [
      "Macarons",
      // by weight, the heaviest first; equal ones as they were said (21 CFR 101.4)
      "Ingredients: almond flour (almonds), powdered sugar [",
      "], egg whites, sugar, unsalted butter (cream)",
      "Contains: almond, egg, milk",
      "41 °F (5 °C)",
      // 14 March is day 1: day 5 is the 18th, day 7 the 20th
      "Best by 18 Mar 2026. Use by 20 Mar 2026.",
      "Made by",
      // 120 g / 28.3495 = 4.23, rounded down
      "Net Wt 4.2 oz (120 g)",
      "Print at 100 %",
      "Not complete. Check before it goes on a box:",
    ])
      expect(text).toContain(part);
    expect(count(pages, "Net Wt")).toBe(1);
    expect(answer.assumed?.join()).toContain("US Letter paper");
    expect(answer.cautions?.join()).toContain("100 %");
  });

  it("for the European Union: A4, allergens in capitals in the list, grams", async () => {
    const { pages } = await printed(us.replace("us label", "eu label"), "pdf of the label");
    // ISO 216
    expect(pages[0]?.width).toBeCloseTo(210, 1);
    expect(pages[0]?.height).toBeCloseTo(297, 1);
    expect(pages[0]?.text).toContain("ground ALMONDS");
    expect(pages[0]?.text).toContain("butter (MILK)");
    expect(pages[0]?.text).toContain("Best before 18 Mar 2026");
    expect(pages[0]?.text).not.toContain("Contains:");
  });

  it.each([
    [`${us} as pdf`, 1],
    [`${us}, 8 copies as a pdf on a4`, 8],
  ])("in one sentence: %s", async (say, copies) => {
    const { pages } = await printed(say);
    expect(count(pages, "Net Wt")).toBe(copies);
  });

  it("is found again after another topic, and only its own paper is taken", async () => {
    const { pages } = await printed(us, "350 f in c", "print the label on a4");
    expect(pages[0]?.width).toBeCloseTo(210, 1);
    expect(count(pages, "Net Wt")).toBe(1);
  });

  it("is asked for its ingredients where there are none", async () => {
    const one = baker();
    expect((await one.one("print 12 labels")).status).toBe("asking");
    expect(
      (await one.one("print 12 labels for pistachio macarons with white chocolate ganache")).status,
    ).toBe("asking");
    expect(one.files).toEqual([]);
  });

  it("leaves a blank among the allergens where something may bring more", async () => {
    const { pages } = await printed(`${us}, 60 g white chocolate`, "label as pdf");
    expect(pages[0]?.text).toMatch(/Contains: almond, egg, milk, _+/);
    expect(pages[0]?.text).toMatch(/white chocolate \[_+\]/);
  });
});

describe("a sheet of labels", () => {
  it.each([1, 2, 7, 12, 13, 30, 100])(
    "has %d of them, cut apart, none over another or over the edge",
    async (n) => {
      const { answer, pages } = await printed(us, `a sheet of ${n} labels`);
      expect(answer.status).toBe("answered");
      expect(count(pages, "Net Wt")).toBe(n);
      for (const { pieces } of pages) {
        const names = pieces.filter(({ text }) => text === "Macarons").map(({ x, y }) => `${x}|${y}`);
        expect(new Set(names).size).toBe(names.length);
      }
      for (const { pieces, width } of pages)
        for (const { x, width: wide } of pieces) {
          expect(x).toBeGreaterThanOrEqual((10 / 25.4) * 72 - 0.01);
          expect(x + wide).toBeLessThanOrEqual(((width - 10) / 25.4) * 72 + 0.5);
        }
    },
  );

  it("fills a page where no number is said", async () => {
    const { pages } = await printed(us, "a sheet of labels as pdf");
    expect(pages).toHaveLength(1);
    expect(count(pages, "Net Wt")).toBeGreaterThan(3);
  });

  // 21 CFR 101.2(c) with 101.7(h)(2): the lower-case "o" at least 1/16 inch. Regulation (EU) 1169/2011, Article 13(2): 1.2 mm
  it.each([
    ["us", 25.4 / 16],
    ["eu", 1.2],
  ])("has no type on a %s label under %d mm", async (market, least) => {
    for (const n of [1, 12, 24, 60]) {
      const { pages } = await printed(us.replace("us label", `${market} label`), `a sheet of ${n} labels`);
      const sizes = pages.flatMap(onLabels).map(({ size }) => xHeight_mm(size));
      expect(sizes.length).toBeGreaterThan(n);
      expect(Math.min(...sizes)).toBeGreaterThanOrEqual(least - 1e-3);
    }
  });

  it("sets the net weight as tall as the law asks", async () => {
    // 21 CFR 101.7(i): 1/8 inch up to 25 square inches; bold Helvetica's x-height is 532 thousandths (AFM)
    const american = await printed(us, "print 6 labels");
    const net = american.pages[0]?.pieces.find(({ text }) => text.startsWith("Net"));
    expect(((net?.size ?? 0) * 532) / 1000 / 72).toBeGreaterThanOrEqual(1 / 8 - 1e-4);
    // Directive 76/211/EEC, annex I, 3.1: 3 mm over 50 and up to 200 g; its digits are 710 thousandths tall (AFM)
    const european = await printed(us.replace("us label", "eu label"), "print 6 labels");
    const grams = european.pages[0]?.pieces.find(({ text }) => text === "120 g");
    expect((((grams?.size ?? 0) * 710) / 1000 / 72) * 25.4).toBeGreaterThanOrEqual(3 - 1e-3);
  });

  it("keeps to the size that is said, in mm, cm and inches", async () => {
    for (const size of ["90 x 80 mm", "9 by 8 cm", "3.5 x 3 in"]) {
      const { answer, pages } = await printed(us, `12 labels ${size}`);
      expect(answer.status, size).toBe("answered");
      const xs = [
        ...new Set(pages[0]?.pieces.filter(({ text }) => text === "Macarons").map(({ x }) => Math.round(x))),
      ];
      const step = size.includes("in") ? 3.5 * 72 : (90 / 25.4) * 72;
      expect((xs[1] ?? 0) - (xs[0] ?? 0), size).toBeGreaterThan(step - 2);
      expect((xs[1] ?? 0) - (xs[0] ?? 0), size).toBeLessThan(step + 2);
    }
  });

  it("says so where the text doesn't fit in type that may be printed, and writes nothing", async () => {
    const one = baker();
    await one.one(us);
    const answer = await one.one("12 labels 40 x 30 mm");
    expect(answer.status).toBe("impossible");
    expect(answer.headline).toContain("21 CFR 101.2(c)");
    expect(answer.headline).toContain("40 × 30 mm");
    expect(one.files).toEqual([]);
    expect((await one.one("12 labels 300 x 300 mm")).headline).toContain("larger than the page");
    expect((await one.one("2000 labels")).status).toBe("impossible");
  });

  it("shrinks the type for a long list before it says so", async () => {
    const long = `${us}, 40 g cream, 30 g white chocolate, 20 g milk chocolate, 15 g dark chocolate, 10 g egg yolk, 5 g salt`;
    const short = await printed(us, "12 labels 98 x 85 mm");
    const more = await printed(long, "12 labels 98 x 85 mm");
    const size = (pages: readonly Page[]) => Math.min(...pages.flatMap(onLabels).map((piece) => piece.size));
    expect(more.answer.status).toBe("answered");
    expect(size(more.pages)).toBeLessThan(size(short.pages));
  });
});
