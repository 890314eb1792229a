/** What batches teach, worked by hand: medians of the baker's own notes, never of what the program gave. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { buttercream } from "../../src/tools/buttercream/buttercream.ts";
import { buy } from "../../src/tools/buy/buy.ts";
import type { Bench, Note, Tool } from "../../src/tools/contract/index.ts";
import { Note as NoteShape } from "../../src/tools/contract/record.ts";
import { cost } from "../../src/tools/cost/cost.ts";
import { day } from "../../src/tools/day/day.ts";
import { dose } from "../../src/tools/dose/dose.ts";
import { fill } from "../../src/tools/fill/fill.ts";
import { ganache } from "../../src/tools/ganache/ganache.ts";
import { bestDose } from "../../src/tools/lib/best-dose.ts";
import { type LessonName, learned, lessonsIn, lessonText } from "../../src/tools/lib/learned.ts";
import { scale } from "../../src/tools/scale/scale.ts";
import { shells } from "../../src/tools/shells/shells.ts";
import { answer, names, range, value } from "../support/world.ts";

let ids = 0;
const note = (more: Partial<Note>): Note => ({
  id: ++ids,
  date: "2026-03-01",
  noted_ms: 0,
  text: "a batch",
  flavors: [],
  problems: [],
  ...more,
});
const batches = (...some: Partial<Note>[]): Note[] => {
  ids = 0;
  return some.map((each, at) => note({ date: `2026-03-${String(at + 1).padStart(2, "0")}`, ...each }));
};
const of = (name: LessonName, notes: Note[], bench: Bench = {}, asked_mm?: number) =>
  learned({ notes, bench }, asked_mm)[name]?.value;

/** 426 / 60, 497 / 70, 355 / 50 and 568 / 80 are 7.1 g each. */
const sevens = () =>
  batches(
    { batter_g: 426, shells: 60 },
    { batter_g: 497, shells: 70 },
    { batter_g: 355, shells: 50 },
    { batter_g: 568, shells: 80 },
  );
/** 216 / 36 = 6 and 260 / 40 = 6.5: 6.25 g of filling made for one. */
const fillings = () => batches({ filling_g: 216, macarons: 36 }, { filling_g: 260, macarons: 40 });

describe("one figure at a time", () => {
  test("four batches: 7.1 g a shell", () => {
    const lesson = learned({ notes: sevens(), bench: {} }).shell;
    expect(lesson?.value).toBeCloseTo(7.1, 12);
    expect(lesson && lessonText(lesson)).toMatch(/^your last 4 batches: 7\.1 g a shell/);
  });

  test("macarons count as two shells where nobody counted those", () => {
    expect(of("shell", batches({ batter_g: 432, macarons: 36 }, { batter_g: 480, shells: 80 }))).toBe(6);
  });

  test("fewer shells than the macarons take is a slip and tells nothing", () => {
    const slip = { batter_g: 480, shells: 36, macarons: 36 };
    expect(of("shell", batches(slip, slip))).toBeUndefined();
  });

  // 600 / 60 = 10 g at 45 mm; at 30 mm 10 x (30/45)^2 = 4.4444
  test("a noted size carries to other sizes by d squared, an unnoted one doesn't", () => {
    const wide = batches(
      { batter_g: 600, shells: 60, diameter_mm: 45 },
      { batter_g: 600, shells: 60, diameter_mm: 45 },
    );
    expect(of("shell", wide, {}, 30)).toBeCloseTo(4.444444, 6);
    expect(of("shell", wide, {}, 45)).toBe(10);
    expect(of("shell", sevens(), {}, 45)).toBeUndefined();
    expect(of("shell", sevens(), { diameter_mm: 45 }, 45)).toBeCloseTo(7.1, 12);
  });

  test("filling a macaron", () => expect(of("filling", fillings())).toBe(6.25));

  // 30 of 500 is 6 %, 40 of 400 is 10 %: kept 0.94 and 0.90, the middle 0.92
  test("what stays in the bowl", () => {
    const left = batches({ batter_g: 500, batter_left_g: 30 }, { batter_g: 400, batter_left_g: 40 });
    expect(of("batter loss", left)).toBeCloseTo(8, 9);
  });

  // 84 / 80 = 1.05, 86 / 80 = 1.075: 6.25 % beyond what 40 macarons take
  test("shells that were lost; exactly two a macaron is one count said twice", () => {
    const lost = batches({ shells: 84, macarons: 40 }, { shells: 86, macarons: 40 });
    expect(of("spares", lost)).toBeCloseTo(6.25, 9);
    expect(of("spares", batches({ shells: 80, macarons: 40 }, { shells: 72, macarons: 36 }))).toBeUndefined();
  });

  test("baking by shells of that size, rest by any", () => {
    const times = batches(
      { bake_min: 16, rest_min: 40 },
      { bake_min: 18, rest_min: 50 },
      { bake_min: 25, rest_min: 45, diameter_mm: 60 },
    );
    expect(of("bake", times)).toBe(17);
    expect(of("bake", times, {}, 60)).toBeUndefined();
    expect(of("rest", times)).toBe(45);
  });
});

describe("odd ones", () => {
  // 7, 7.2 and 12: the median is 7.2, 12 is more than 2.4 away; 7.1 is the middle of the rest
  test("further than a third from the median: left out, by name", () => {
    const [lesson] = lessonsIn({
      notes: batches(
        { batter_g: 420, shells: 60 },
        { batter_g: 432, shells: 60 },
        { batter_g: 720, shells: 60 },
      ),
      bench: {},
    });
    expect(lesson?.value).toBeCloseTo(7.1, 12);
    expect(lesson?.odd).toEqual([{ note: 3, date: "2026-03-03", value: 12 }]);
    expect(lesson && lessonText(lesson)).toMatch(/^2 of your last 3 batches/);
  });

  test("exactly a third is still in", () => {
    const notes = batches({ bake_min: 12 }, { bake_min: 18 }, { bake_min: 24 });
    expect(lessonsIn({ notes, bench: {} })[0]).toMatchObject({ value: 18, odd: [] });
  });

  test("two that disagree teach nothing, a third one settles it", () => {
    const two = [{ bake_min: 6 }, { bake_min: 14 }];
    expect(of("bake", batches(...two))).toBeUndefined();
    expect(of("bake", batches(...two, { bake_min: 15 }))).toBe(14.5);
  });

  test("the latest ten count", () => {
    const old = Array.from({ length: 5 }, () => ({ bake_min: 12 }));
    const late = Array.from({ length: 10 }, () => ({ bake_min: 15 }));
    expect(learned({ notes: batches(...old, ...late), bench: {} }).bake).toMatchObject({
      value: 15,
      odd: [],
    });
  });
});

describe("when it isn't used", () => {
  test("one batch, notes set aside, the book wanted, or forgotten", () => {
    expect(learned({ notes: sevens().slice(0, 1), bench: {} })).toEqual({});
    expect(learned({ notes: sevens().map((each) => ({ ...each, ignored: true })), bench: {} })).toEqual({});
    expect(learned({ notes: sevens(), bench: { use_book: true } })).toEqual({});
    expect(of("shell", sevens(), { forgotten: { shells: 4 } })).toBeUndefined();
    expect(of("shell", sevens(), { forgotten: { filling: 4 } })).toBeCloseTo(7.1, 12);
    // the two after the second still teach
    expect(learned({ notes: sevens(), bench: { forgotten: { shells: 2 } } }).shell?.used).toHaveLength(2);
  });
});

const say = (tool: Tool, inputs: Record<string, unknown>, notes: Note[], bench: Bench = {}) =>
  answer(tool, inputs, { notes, bench });

describe("in the answers", () => {
  // 24 macarons: ceil(48 x 1.1) = 53 shells; 53 x 7.1 = 376.3
  test("batter for 24", () => {
    const said = say(shells, { macarons: 24, want: "batter" }, sevens());
    expect(value(said, "batter")).toBeCloseTo(376.3, 9);
    expect(said.rule?.basis).toBe("your bench");
    expect(said.rule?.text).toMatch(/your last 4 batches: 7\.1 g a shell/);
    expect(said.cautions).toBeUndefined();
  });

  // 460 / 7.1 = 64.8; in one 7.1 x 0.96 = 6.816
  test("back from a bowl, and in one", () => {
    expect(value(say(shells, { batter_g: 460 }, sevens()), "shells")).toBe(64);
    expect(value(say(shells, { want: "one" }, sevens()), "batter")).toBeCloseTo(6.816, 9);
  });

  // another size than the usual: the book's 0.53 x 4.5^2 = 10.7325
  test("the book stays where her batches don't tell", () => {
    const said = say(shells, { want: "one", diameter_mm: 45 }, sevens());
    expect(value(said, "batter")).toBeCloseTo(10.7325, 9);
    expect(said.rule?.basis).toBe("from memory");
  });

  // 53 x 0.53 x 3.8^2 = 405.6196; / 0.92 = 440.89087
  test("a learned loss in the book's formula", () => {
    const left = batches({ batter_g: 500, batter_left_g: 30 }, { batter_g: 400, batter_left_g: 40 });
    const said = say(shells, { macarons: 24, want: "batter" }, left);
    expect(value(said, "batter")).toBeCloseTo(440.89087, 4);
    expect(said.rule).toMatchObject({ basis: "your bench", text: expect.stringMatching(/8 % batter left/) });
  });

  // learned 6.25 %: ceil(48 x 1.0625) = 51; a set 0 % gives 48
  test("spares she set win over spares she had", () => {
    const lost = batches({ shells: 84, macarons: 40 }, { shells: 86, macarons: 40 });
    expect(value(say(shells, { macarons: 24, want: "shells" }, lost), "shells")).toBe(51);
    expect(value(say(shells, { macarons: 24, want: "shells" }, lost, { spare_percent: 0 }), "shells")).toBe(
      48,
    );
  });

  // 24 x 6.25 = 150; 300 / 6.25 = 48; in one 6.25 x 0.92 = 5.75
  test("filling forth, back and in one", () => {
    const said = say(fill, { macarons: 24 }, fillings());
    expect(value(said, "filling")).toBe(150);
    expect(said.rule).toMatchObject({
      basis: "your bench",
      text: expect.stringMatching(/your last 2 batches/),
    });
    expect(value(say(fill, { filling_g: 300 }, fillings()), "macarons")).toBe(48);
    expect(value(say(fill, { macarons: 1 }, fillings()), "filling")).toBeCloseTo(5.75, 12);
    const two = say(fill, { macarons: 24, two: true }, fillings());
    expect([value(two, "ring"), value(two, "center")]).toEqual([90, 60]);
  });

  // 150 g: buttercream 100 : 150 : 250 gives 30, 45, 75; dark ganache 1.25 : 1 gives 83.333 and 66.667
  test("fillings for a number of macarons", () => {
    const butter = say(buttercream, { macarons: 24 }, fillings());
    expect([value(butter, "whites"), value(butter, "sugar"), value(butter, "butter")]).toEqual([30, 45, 75]);
    const dark = say(ganache, { macarons: 24, chocolate: "dark" }, fillings());
    expect(value(dark, "chocolate")).toBeCloseTo(83.33333, 4);
    for (const said of [butter, dark]) expect(said.rule?.basis).toBe("your bench");
    // nothing of her batches is in a weight that she says
    expect(say(buttercream, { total_g: 500 }, fillings()).rule?.basis).toBe("common practice");
    expect(say(ganache, { total_g: 500, chocolate: "dark" }, fillings()).rule?.basis).toBe("common practice");
  });

  // 376.3 g of batter, 100 of 460 are whites: 81.80435
  test("the recipe, the shopping and the cost take the same batter", () => {
    const recipe = say(scale, { macarons: 24 }, sevens());
    expect(value(recipe, "total")).toBeCloseTo(376.3, 9);
    expect(value(recipe, "whites")).toBeCloseTo(81.80435, 4);
    expect(recipe.rule?.basis).toBe("your bench");
    const list = say(buy, { macarons: 24, shells_only: true }, sevens());
    expect(value(list, "whites", "g")).toBeCloseTo(81.80435, 4);
    expect(list.rule?.text).toMatch(/your last 4 batches/);
    const prices = ["whites", "almond flour", "powdered sugar", "granulated sugar"].map((name) => ({
      name,
      price_per_g: 0.01,
    }));
    const bill = say(cost, { want: "cost", macarons: 24, prices }, sevens());
    expect(value(bill, "cost")).toBeCloseTo(3.763, 6);
    expect(bill.rule?.basis).toBe("your bench");
  });

  test("an odd batch is named beside the answer", () => {
    const notes = [...sevens(), note({ date: "2026-03-09", batter_g: 470, shells: 36 })];
    const said = say(shells, { macarons: 24, want: "batter" }, notes);
    expect(value(said, "batter")).toBeCloseTo(376.3, 9);
    expect(said.cautions).toEqual([
      expect.stringMatching(/left out: the batch of Mon 9 Mar, 13\.1 g a shell/),
    ]);
  });
});

describe("the day", () => {
  const order = { macarons: 24, due: { days: 2, minute: 16 * 60, half: "24", text: "monday 4 pm" } };
  const times = () => batches({ bake_min: 18, rest_min: 45 }, { bake_min: 20, rest_min: 55 });
  const length = (said: ReturnType<typeof say>, name: string) => {
    const step = said.steps?.find((each) => each.name === name);
    return (new Date(step?.end ?? 0).getTime() - new Date(step?.start ?? 0).getTime()) / 60_000;
  };

  test("bakes 19 and rests 50, the middle of two batches, and says so", () => {
    const said = say(day, order, times());
    expect([length(said, "Bake tray 1"), length(said, "Rest tray 1")]).toEqual([19, 50]);
    expect(said.rule?.basis).toBe("your bench");
    expect(said.rule?.text).toMatch(/your last 2 batches: 19 min bake.*50 min rest/);
  });

  test("a set length wins, and no rest is no rest", () => {
    expect(length(say(day, order, times(), { bake_min: 14 }), "Bake tray 1")).toBe(14);
    const none = say(day, { ...order, no_rest: true }, times());
    expect(none.steps?.some((each) => each.name === "Rest tray 1")).toBe(false);
    expect(none.rule?.text).not.toMatch(/min rest/);
  });
});

describe("doses", () => {
  const rated = (percent: number, rating: number, text = "coffee batch"): Partial<Note> => ({
    flavors: ["coffee"],
    doses: [{ flavor: "coffee", percent }],
    rating,
    text,
  });
  const ask = { dose: "flavor", taste: "coffee", bare: true, base: "buttercream", base_g: 200 };
  const asked = (notes: Note[]) =>
    bestDose({ taste: "coffee", row: "flavor", base: "buttercream" }, { notes, bench: {} });

  test("the best rated, and the usual where two liked ones agree within half a point", () => {
    expect(asked(batches(rated(4, 9), rated(4.4, 8), rated(3, 6)))).toMatchObject({
      best: { percent: 4, rating: 9 },
      usual: { percent: 4.2 },
    });
    expect(asked(batches(rated(4, 9), rated(4.6, 9)))?.usual).toBeUndefined();
    expect(asked(batches(rated(4, 9), rated(4.2, 7.5)))?.usual).toBeUndefined();
  });

  test("another form or another mix is another dose", () => {
    expect(asked(batches(rated(1.5, 9, "coffee extract"), rated(4, 9, "in ganache")))).toBeUndefined();
  });

  // the table's 3-5 % of 200 g stays; her 4.2 % of 200 g is 8.4 g
  test("beside the table's range; instead of it only as asked", () => {
    const notes = batches(rated(4, 9), rated(4.4, 8));
    const plain = say(dose, ask, notes);
    expect(range(plain, "flavor")).toEqual([6, 10]);
    expect(plain.rule?.basis).toBe("common practice");
    expect(JSON.stringify(plain.items)).toMatch(/4 % coffee, rated 9 out of 10.*4\.2 % is your usual/);
    const usual = say(dose, { ...ask, usual: true }, notes);
    expect(value(usual, "flavor")).toBeCloseTo(8.4, 9);
    expect(usual.rule?.basis).toBe("your bench");
    expect(usual.cautions?.join()).toMatch(/bottle/);
  });

  test("over the table it is said so; her bottle's directions stay before it", () => {
    const notes = batches(rated(7, 9), rated(7, 9));
    expect(say(dose, { ...ask, usual: true }, notes).cautions?.[0]).toMatch(/3-5 %.*over/);
    const bottles = [{ id: 1, taste: "coffee", low_percent: 2, high_percent: 3 }];
    const said = answer(dose, { ...ask, usual: true }, { notes, bottles });
    expect(range(said, "flavor")).toEqual([4, 6]);
    expect(said.assumed?.join()).toMatch(/bottle's directions/);
  });

  test("no usual yet: the table's range, and said", () => {
    const said = say(dose, { ...ask, usual: true }, batches(rated(4, 9)));
    expect(range(said, "flavor")).toEqual([6, 10]);
    expect(said.assumed?.join()).toMatch(/no two liked batches/);
  });
});

describe("laws", () => {
  const counts = fc.record({
    batter_g: fc.integer({ min: 100, max: 2000 }),
    shells: fc.integer({ min: 10, max: 300 }),
    filling_g: fc.integer({ min: 50, max: 2000 }),
    macarons: fc.integer({ min: 5, max: 150 }),
    bake_min: fc.integer({ min: 5, max: 40 }),
    rest_min: fc.integer({ min: 5, max: 200 }),
    batter_left_g: fc.integer({ min: 0, max: 99 }),
  });
  const some = fc.array(counts, { minLength: 0, maxLength: 15 });

  test("the order of the notes doesn't matter", () => {
    const shuffled = some.chain((each) => {
      const notes = batches(...each);
      return fc.tuple(fc.constant(notes), fc.shuffledSubarray(notes, { minLength: notes.length }));
    });
    fc.assert(
      fc.property(shuffled, ([notes, mixed]) => {
        expect(lessonsIn({ notes: mixed, bench: {} })).toEqual(lessonsIn({ notes, bench: {} }));
      }),
    );
  });

  test("a learned figure lies between the least and the greatest of at least two batches used", () => {
    fc.assert(
      fc.property(some, (each) => {
        for (const { value: v = Number.NaN, used } of Object.values(
          learned({ notes: batches(...each), bench: {} }),
        )) {
          const values = used.map((batch) => batch.value);
          expect(values.length).toBeGreaterThanOrEqual(2);
          expect(v).toBeGreaterThanOrEqual(Math.min(...values) - 1e-9);
          expect(v).toBeLessThanOrEqual(Math.max(...values) + 1e-9);
        }
      }),
    );
  });

  test("every batch that tells a figure is used or named", () => {
    fc.assert(
      fc.property(some, (each) => {
        for (const lesson of lessonsIn({ notes: batches(...each), bench: {} }))
          if (lesson.name === "bake")
            expect(lesson.used.length + lesson.odd.length).toBe(Math.min(10, each.length));
      }),
    );
  });

  test("one batch changes no answer", () => {
    fc.assert(
      fc.property(counts, fc.integer({ min: 1, max: 200 }), (one, macarons) => {
        for (const tool of [shells, fill, scale, buy]) {
          const taught = say(tool, { macarons }, batches(one));
          expect(taught).toEqual(say(tool, { macarons }, []));
        }
      }),
      { numRuns: 40 },
    );
  });

  test("an outlier doesn't move the result", () => {
    const close = fc.array(fc.double({ min: 6.8, max: 7.2, noNaN: true }), { minLength: 2, maxLength: 9 });
    const far = fc.oneof(
      fc.double({ min: 11, max: 500, noNaN: true }),
      fc.double({ min: 0.1, max: 4, noNaN: true }),
    );
    fc.assert(
      fc.property(close, far, (values, off) => {
        const notes = values.map((each) => ({ batter_g: each * 100, shells: 100 }));
        const before = of("shell", batches(...notes));
        const after = of("shell", batches(...notes, { batter_g: off * 100, shells: 100 }));
        expect(after).toBe(before);
      }),
    );
  });

  test("what is made for shells yields them again", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 3000 }), (count) => {
        const made = value(say(shells, { shells: count }, sevens()), "batter");
        expect(value(say(shells, { batter_g: made }, sevens()), "shells")).toBe(count);
      }),
      { numRuns: 60 },
    );
  });

  test("notes with these fields may be kept", () => {
    const kept = note({ batter_g: 460, batter_left_g: 18, filling_left_g: 12 });
    expect(NoteShape().parse(kept)).toEqual(kept);
    expect(names(say(shells, { macarons: 24 }, [kept]))).toContain("batter");
  });
});
