/** Papers as PDF: the text that went in comes out, on the page that was asked for, in its place. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { makePdf } from "../../src/cli/paper/paper.ts";
import type { Paper, PaperBlock } from "../../src/tools/contract/index.ts";
import { printable, printablePaper } from "../../src/tools/lib/printable.ts";
import { pagesOf, titleOf } from "../support/pdf.ts";

const paper = (blocks: PaperBlock[], more: Partial<Paper> = {}): Paper => ({
  title: "Batch sheet",
  size: "a4",
  made_ms: Date.UTC(2026, 2, 14, 9, 30),
  blocks,
  ...more,
});

async function bytesOf(made: Paper): Promise<Uint8Array> {
  const done = await makePdf(made);
  if (!done.ok) throw new Error(done.why);
  return done.bytes;
}

const table = (rows: string[][]): PaperBlock => ({
  is: "table",
  ticked: true,
  columns: [
    { title: "What", share: 3 },
    { title: "How much", share: 1, right: true },
  ],
  rows,
});

/** WinAnsi as the standard has it: ASCII, Latin-1's upper half, and 27 signs in between. ISO 32000-1, annex D.2. */
const between = "€‚ƒ„…†‡ˆ‰Š‹ŒŽ‘’“”•–—˜™š›œžŸ";
const ascii = Array.from({ length: 95 }, (_, n) => String.fromCodePoint(32 + n));
const upper = Array.from({ length: 95 }, (_, n) => String.fromCodePoint(161 + n)).filter(
  (each) => each !== "\u00ad",
);

describe("text", () => {
  it("is there sign by sign, all that the fonts have", async () => {
    const signs = [...ascii, ...upper, ...between].filter((each) => each !== " ");
    const rows = signs.map((sign) => [`a${sign}b`, "1 g"]);
    const pages = await pagesOf(await bytesOf(paper([table(rows)])));
    const all = pages.map(({ text }) => text).join(" ");
    expect(signs.filter((sign) => !all.includes(`a${sign}b`))).toEqual([]);
    expect(signs.filter((sign) => printable(sign).missing.length > 0)).toEqual([]);
  });

  it("any text: what is printed is read back, and what can't be is a blank and named", async () => {
    await fc.assert(
      fc.asyncProperty(fc.string({ unit: "grapheme", minLength: 1, maxLength: 60 }), async (said) => {
        const { text, missing } = printable(said);
        // nothing is dropped but what can't be seen
        const signs = said.normalize("NFC");
        for (const sign of missing) expect(signs).toContain(sign);
        if (missing.length > 0) expect(text).toContain("_");
        const [page] = await pagesOf(await bytesOf(paper([{ is: "text", text: `>${text}<` }])));
        const bare = (each: string) => each.replace(/\s+/g, "");
        expect(bare(page?.text ?? "")).toContain(bare(`>${text}<`));
      }),
      { numRuns: 150 },
    );
  });

  it.each([
    ["crème brûlée", "crème brûlée", []],
    ["cre\u0300me", "crème", []],
    ["−5 °C", "-5 °C", []],
    ["1⅓ cup", "1 1/3 cup", []],
    ["⅔ cup", "2/3 cup", []],
    ["抹茶 paste", "__ paste", ["抹", "茶"]],
    ["Słodkie", "S_odkie", ["ł"]],
    ["10⁴ g", "10_ g", ["⁴"]],
    ["🍋 lemon", "_ lemon", ["🍋"]],
  ])("%s is printed as %s", (said, text, missing) => {
    expect(printable(said)).toEqual({ text, missing });
  });

  it("a paper names each sign that it leaves blank, once", () => {
    const { paper: done, cautions } = printablePaper(
      paper([table([["抹茶", "抹"]]), { is: "title", text: "茶" }]),
    );
    expect(JSON.stringify(done)).not.toMatch(/抹|茶/);
    expect(cautions).toHaveLength(1);
    expect(cautions[0]).toContain('"抹" and "茶"');
    expect(printablePaper(paper([{ is: "text", text: "plain" }])).cautions).toEqual([]);
  });
});

describe("a sheet", () => {
  it("is of the size that was asked for, in mm", async () => {
    const [a4] = await pagesOf(await bytesOf(paper([{ is: "title", text: "A" }])));
    expect([a4?.width, a4?.height].map((side) => Math.round(side ?? 0))).toEqual([210, 297]);
    const [letter] = await pagesOf(await bytesOf(paper([{ is: "title", text: "A" }], { size: "letter" })));
    expect([letter?.width, letter?.height].map((side) => Math.round((side ?? 0) * 10))).toEqual([2159, 2794]);
  });

  it("goes on over as many pages as it takes, every row there once and in order, numbered", async () => {
    const rows = Array.from({ length: 200 }, (_, n) => [`row ${n + 1}.`, `${n} g`]);
    const pages = await pagesOf(await bytesOf(paper([{ is: "title", text: "Long" }, table(rows)])));
    const all = pages.map(({ text }) => text).join(" ");
    const found = [...all.matchAll(/row (\d+)\./g)].map(([, n]) => Number(n));
    expect(found).toEqual(rows.map((_, n) => n + 1));
    pages.forEach((page, n) => {
      expect(page.text).toContain(`page ${n + 1} of ${pages.length}`);
      for (const { y } of page.pieces) expect(y).toBeGreaterThan(20);
    });
  });

  it("never parts a heading from what it heads", async () => {
    for (let n = 70; n < 130; n++) {
      const rows = Array.from({ length: n }, () => ["x", "1 g"]);
      const blocks: PaperBlock[] = [
        table(rows),
        { is: "heading", text: "Timers" },
        table([["Rest", "30 min"]]),
      ];
      const pages = await pagesOf(await bytesOf(paper(blocks)));
      const page = pages.find(({ text }) => text.includes("Timers"));
      expect(page?.text, `${n} rows`).toContain("Rest");
    }
  });

  it("breaks a word that is longer than the line", async () => {
    const word = "x".repeat(400);
    const [page] = await pagesOf(await bytesOf(paper([{ is: "text", text: word }])));
    expect(page?.text.replace(/[^x]/g, "")).toContain(word);
    for (const { x, width } of page?.pieces ?? []) expect(x + width).toBeLessThan((200 / 25.4) * 72);
  });
});

describe("the file", () => {
  it("is the same for the same paper, and says what it is", async () => {
    const made = paper([{ is: "title", text: "Same" }]);
    const bytes = await bytesOf(made);
    expect(Buffer.compare(bytes, await bytesOf(made))).toBe(0);
    expect(Buffer.from(bytes.subarray(0, 5)).toString()).toBe("%PDF-");
    expect(await titleOf(bytes)).toBe("Batch sheet");
  });

  it("holds nothing but what it needs: no script, no link, no font file", async () => {
    const text = Buffer.from(await bytesOf(paper([{ is: "text", text: "plain" }]))).toString("latin1");
    expect(text).not.toMatch(/\/(?:JavaScript|JS|URI|Launch|EmbeddedFile|FontFile)/);
    expect(text).toContain("/WinAnsiEncoding");
  });
});
