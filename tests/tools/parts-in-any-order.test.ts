/**
 * A question told in little parts gets the same figure, whatever the order and the words of its parts. The numbers are
 * drawn anew in every run; what is expected is worked from them by the rule that stands beside each law.
 */
import fc from "fast-check";
import { expect, test } from "vitest";
import { baker, lastOf } from "../support/ask.ts";

const runs = { numRuns: 60 };

/** The parts in some order, with one sign between all of them. */
const told = (parts: readonly string[], signs: readonly string[]) =>
  fc
    .tuple(
      fc.shuffledSubarray([...parts], { minLength: parts.length, maxLength: parts.length }),
      fc.constantFrom(...signs),
    )
    .map(([order, sign]) => order.join(sign));

const grams = (min: number, max: number) => fc.integer({ min, max });

/** The one figure of that name, in the one answer. */
async function figure(name: string, ...turns: string[]): Promise<number | undefined> {
  const answers = await lastOf(...turns);
  expect(answers.length, turns.join(" | ")).toBe(1);
  return answers[0]?.figures?.find((each) => each.name === name)?.value;
}

const bowls = [
  (g: number) => `its ${g} g. buttercream`,
  (g: number) => `${g} g ganache`,
  (g: number) => `the buttercream weighs ${g} g`,
];
const flavors = ["lemon", "its pistachio", "flavor: mango"];
const shares = [(p: number) => `${p} percent`, (p: number) => `i go ${p} %`, (p: number) => `make it ${p}%`];

test("a dose by its bowl, flavor and percentage: base × p / 100 (arithmetic)", async () => {
  const said = fc
    .tuple(
      grams(80, 600),
      fc.constantFrom(2, 3, 4, 5),
      fc.constantFrom(...bowls),
      fc.constantFrom(...flavors),
      fc.constantFrom(...shares),
    )
    .chain(([g, p, bowl, flavor, share]) =>
      told([bowl(g), flavor, share(p)], [". ", "; "]).map((text) => ({ text, flavor_g: (g * p) / 100 })),
    );
  await fc.assert(
    fc.asyncProperty(said, async ({ text, flavor_g }) => {
      expect(await figure("flavor", text), text).toBeCloseTo(flavor_g, 6);
    }),
    runs,
  );
});

const bottles = [
  (g: number) => `i have ${g} g of lemon left`,
  (g: number) => `down to ${g} g of mango flavor`,
  (g: number) => `only ${g} g of coffee flavor`,
];
const enough = [
  "how much buttercream can i flavor",
  "how much ganache will it do",
  "what is it enough for, buttercream",
];

test("what is left of a flavor is enough for flavor / p × 100 (arithmetic), and never checked", async () => {
  const said = fc
    .tuple(grams(4, 30), fc.constantFrom(2, 3, 4, 5), fc.constantFrom(...bottles), fc.constantFrom(...enough))
    .chain(([g, p, bottle, asked]) =>
      told([bottle(g), asked, `${p} percent`], [". ", ", "]).map((text) => ({ text, base: (g / p) * 100 })),
    );
  await fc.assert(
    fc.asyncProperty(said, async ({ text, base }) => {
      expect(await figure("base", text), text).toBeCloseTo(base, 6);
    }),
    runs,
  );
});

const pairs = [
  (chocolate: number, cream: number) => `${cream} g. cream, ${chocolate} g. dark chocolate`,
  (chocolate: number, cream: number) => `${chocolate} g. of dark chocolate with ${cream} g of cream`,
  (chocolate: number, cream: number) => `i melted ${chocolate} g dark chocolate into ${cream} g cream`,
];
const stiff = ["its so hard", "it's a brick", "it turned out stiff"];
const asksMend = ["what do i add", "how much cream do i add", "how do i rescue it"];

test("a stiff dark ganache: chocolate / 1.25 − cream to add, for piping (common practice)", async () => {
  const said = fc
    .tuple(grams(80, 300), fc.constantFrom(...pairs), fc.constantFrom(...stiff), fc.constantFrom(...asksMend))
    .chain(([cream, pair, fault, asked]) =>
      // twice as much chocolate as cream: 2 × cream / 1.25 − cream = 0.6 × cream
      told([pair(2 * cream, cream), fault, asked], [". ", "; "]).map((text) => ({ text, add: 0.6 * cream })),
    );
  await fc.assert(
    fc.asyncProperty(said, async ({ text, add }) => {
      expect(await figure("add cream", text), text).toBeCloseTo(add, 6);
    }),
    runs,
  );
});

test("filling for macarons of a size: n × 0.42 d² / 0.92 g (from memory)", async () => {
  const said = fc
    .tuple(
      grams(12, 90),
      fc.constantFrom(30, 35, 40, 45, 50),
      fc.constantFrom("how much filling", "filling needed", "how much do i need to fill them"),
      fc.constantFrom<(mm: number) => string>(
        (mm) => `each ${mm} mm`,
        (mm) => `${mm / 10} cm across`,
      ),
    )
    .chain(([n, mm, asked, size]) =>
      told([`for ${n} macarons`, asked, size(mm)], [". ", ", "]).map((text) => ({
        text,
        filling: (n * 0.42 * (mm / 10) ** 2) / 0.92,
      })),
    );
  await fc.assert(
    fc.asyncProperty(said, async ({ text, filling }) => {
      expect(await figure("filling", text), text).toBeCloseTo(filling, 6);
    }),
    runs,
  );
});

const noteIn = [
  (a: string, b: string) => `note: ${a}, ${b}`,
  (a: string, b: string) => `${a}. note: ${b}`,
  (a: string, b: string) => `${a}, ${b}, note that`,
];

test("a note keeps every fact, with the order before, between or behind them", async () => {
  const said = fc
    .tuple(
      grams(12, 60),
      fc.integer({ min: 4, max: 12 }),
      fc.integer({ min: 1, max: 5 }),
      fc.constantFrom(...noteIn),
    )
    .chain(([count, fives, mark, order]) => {
      const facts = [
        `made ${count}`,
        `rested ${5 * fives} min`,
        `${mark} of 5`,
        "tops cracked",
        "lemon macarons",
      ];
      return fc.shuffledSubarray(facts, { minLength: facts.length, maxLength: facts.length }).map((all) => ({
        text: order(all.slice(0, 2).join(", "), all.slice(2).join(", ")),
        // five marks are half of ten
        kept: {
          flavors: ["lemon"],
          problems: ["cracked tops"],
          macarons: count,
          rest_min: 5 * fives,
          rating: 2 * mark,
        },
      }));
    });
  await fc.assert(
    fc.asyncProperty(said, async ({ text, kept }) => {
      const { ask, record } = baker();
      await ask(text);
      expect(record().notes.length, text).toBe(1);
      expect(record().notes[0], text).toMatchObject(kept);
    }),
    runs,
  );
});

const timers = [
  (name: string, min: number) => `${name}: timer ${min} minutes`,
  (name: string, min: number) => `${min} minutes, timer, ${name}`,
  (name: string, min: number) => `${name} timer, ${min} min`,
];
const lefts = [(name: string) => `${name} timer?`, (name: string) => `how long left on ${name}`];
const stops = [
  (name: string) => `timer ${name} stop`,
  (name: string) => `${name} timer off`,
  (name: string) => `never mind the ${name} timer`,
];

test("a timer keeps its name and its minutes, is asked for and stopped by it, and no second one is set", async () => {
  const said = fc.tuple(
    fc.integer({ min: 5, max: 55 }),
    fc.constantFrom("ganache", "cooling", "tray one", "second tray"),
    fc.constantFrom(...timers),
    fc.constantFrom(...lefts),
    fc.constantFrom(...stops),
  );
  await fc.assert(
    fc.asyncProperty(said, async ([min, name, set, left, stop]) => {
      const { one, record } = baker();
      await one(set(name, min));
      const asked = await one(left(name));
      expect(asked.figures?.[0]?.value, `${set(name, min)} | ${left(name)}`).toBe(min);
      expect((await one(stop(name))).items?.[0]?.state, stop(name)).toBe("stopped");
      expect(record().timers.length, stop(name)).toBe(1);
    }),
    runs,
  );
});

test.each(["check the butter", "how are we for butter", "butter left?"])(
  "what is there: %s",
  async (asked) => {
    // 740 - 150
    const [answer] = await lastOf("i stocked up: 740 g butter, 280 g sugar", "used 150 g butter", asked);
    expect(answer?.headline).toContain("590 g");
  },
);

test("a name read out adds no note: what was written of it is told", async () => {
  for (const asked of ["my notes on lemon", "lemon, what did i write down", "recall lemon"]) {
    const { ask, one, record } = baker();
    await ask("note: lemon macarons, hollow");
    expect((await one(asked)).tool, asked).toBe("recall");
    expect(record().notes.length, asked).toBe(1);
  }
});
