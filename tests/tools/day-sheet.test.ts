/** Batch sheets: asked for in words, read back from the PDF. */
import { describe, expect, it } from "vitest";
import { baker } from "../support/ask.ts";
import { pagesOf } from "../support/pdf.ts";

async function sheet(...lines: string[]) {
  const one = baker();
  let answer = await one.one(lines[0] ?? "");
  for (const line of lines.slice(1)) answer = await one.one(line);
  const file = one.files.at(-1);
  const pages = file ? await pagesOf(file.bytes) : [];
  return { one, answer, file, pages, text: pages.map((page) => page.text).join(" ") };
}

describe("without an hour", () => {
  it("has weights, steps from the start, timers and room for notes", async () => {
    const { answer, file, text, pages, one } = await sheet("print a batch sheet for 40 macarons");
    expect(answer).toMatchObject({ tool: "day", status: "answered" });
    expect(file?.name).toBe("batch-2026-03-14.pdf");
    expect(Math.round(pages[0]?.width ?? 0)).toBe(210);
    // by hand from data/rules/shells.ts (from memory): ceil(2 × 40 × 1.1) = 88 shells of 0.53 × 3.8² g,
    // 4 % left in bowl and bag; whites 100 of 460
    const batter = (88 * 0.53 * 3.8 ** 2) / 0.96;
    expect(text).toContain(`Batter ${Math.round(batter)} g`);
    expect(text).toContain("88 shells, 3 trays");
    expect(text).toMatch(
      new RegExp(
        `whites ${Math.round((batter * 100) / 460)} g almond flour ${Math.round((batter * 130) / 460)} g`,
      ),
    );
    // fillings: 40 × 0.42 × 3.8² / 0.92, the ring 60 % of it
    const filling = (40 * 0.42 * 3.8 ** 2) / 0.92;
    expect(text).toContain(`Ring ${Math.round(filling * 0.6)} g`);
    expect(text).toContain(`Center ${Math.round(filling * 0.4)} g`);
    for (const step of [
      "Weigh and sift",
      "Meringue and macaronage",
      "Pipe tray 3",
      "Bake tray 3",
      "Fill",
      "Box and label",
    ])
      expect(text).toContain(step);
    expect(text).toMatch(/start Weigh and sift 20 min/);
    expect(text).toMatch(/20 min Meringue and macaronage 25 min/);
    expect(text).toMatch(/45 min Pipe tray 1 10 min/);
    expect(text).toMatch(/Rest tray 1 30 min/);
    expect(text).toMatch(/Mature 1 d at least/);
    expect(text).toContain("Oven: 150 °C (300 °F)");
    expect(text).toContain("Notes");
    expect(text).toContain("5 °C (41 °F)");
    expect(text).not.toContain("none between");
    // no plan is kept of a day that nobody named
    expect(one.record().plans).toEqual([]);
    expect(answer.assumed?.join()).toContain("A4 paper");
    expect(answer.assumed?.join()).toContain("no hour was said");
  });

  it("takes fillings, flavors, a paper and the number sized before", async () => {
    const { text, pages } = await sheet(
      "print a batch sheet for 60 macarons, pistachio buttercream, on us letter",
    );
    expect(text).toContain("pistachio buttercream");
    expect(text).toMatch(/pistachio flavor [\d.]+ to [\d.]+ g/);
    expect(Math.round((pages[0]?.width ?? 0) * 10)).toBe(2159);
    expect((await sheet("batter for 24 macarons", "print a batch sheet for it")).text).toContain(
      "24 macarons",
    );
  });

  it("asks or says what is missing", async () => {
    expect((await sheet("print a batch sheet")).answer.status).not.toBe("answered");
    expect((await sheet("print today's plan")).answer.headline).toContain("There is no plan");
    expect((await sheet("print a batch sheet for 400000 macarons")).answer.status).toBe("impossible");
  });
});

describe("of a plan", () => {
  const plan = "24 macarons for tomorrow 3pm";

  it("has the plan's own hours, the same as on screen", async () => {
    const { one, text, answer } = await sheet(plan, "print that plan");
    expect(answer.headline).toContain("24 macarons, ready Sun 15 Mar");
    const steps = one.record().plans[0]?.steps ?? [];
    const at = (seconds: number) => new Date(seconds * 1000).toISOString().slice(11, 16);
    for (const step of steps.filter((each) => each.hands)) expect(text).toContain(`${at(step.start)} `);
    expect(text).toContain("Sat 14 Mar");
    expect(text).toContain("Sun 15 Mar");
    expect(text).toContain("ready Sun 15 Mar 2026 15:00");
    expect(one.record().plans).toHaveLength(1);
  });

  it("is found again by another process, by today and by its number", async () => {
    for (const say of [
      "print today's plan",
      "pdf of tomorrow's plan",
      "print a batch sheet for 24 macarons",
      "print the schedule for the wall",
    ]) {
      const { one } = await sheet(plan);
      const later = baker({ record: one.record() });
      const answer = await later.one(say);
      expect(answer.headline, say).toContain("24 macarons, ready Sun 15 Mar");
      expect(later.files, say).toHaveLength(1);
    }
  });

  it("is not another one's: another number or another day", async () => {
    const { one } = await sheet(plan);
    const later = baker({ record: one.record() });
    expect((await later.one("print a batch sheet for 48 macarons")).headline).not.toContain("ready");
    expect((await later.one("print friday's plan")).status).toBe("impossible");
  });

  it("is made and kept in one sentence, and says so where it can't be", async () => {
    const { one, answer } = await sheet("print a batch sheet for 36 macarons for tomorrow 4pm");
    expect(answer.status).toBe("answered");
    expect(one.record().plans).toHaveLength(1);
    const never = await sheet("print a batch sheet for 36 macarons for today noon");
    expect(never.answer.status).toBe("impossible");
    expect(never.file).toBeUndefined();
  });
});

it("the paper is the bench's where it is set, and Letter where ounces or dollars are", async () => {
  for (const [setting, width] of [
    ["my paper is us letter", 216],
    ["set my currency to euros", 210],
    ["set my currency to dollars", 216],
    ["i use ounces", 216],
    ["my paper is a4", 210],
  ] as const) {
    const { pages } = await sheet(setting, "print a batch sheet for 12 macarons");
    expect(Math.round(pages[0]?.width ?? 0), setting).toBe(width);
  }
});
