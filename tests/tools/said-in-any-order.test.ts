/**
 * What is said in one breath means the same in any order and with any joint: the parts of a bill, the facts of a note,
 * two questions in one turn. Expected values are sums of what the sentence was made from (arithmetic), the doses and
 * ratios of the table by name. The numbers are drawn anew in every run; the ways to say a part are listed here.
 */
import fc from "fast-check";
import { expect, test } from "vitest";
import type { Answer } from "../../src/tools/contract/index.ts";
import { baker } from "../support/ask.ts";

const runs = { numRuns: 120 };
const oneOf = (...ways: string[]) => fc.constantFrom(...ways);
const inAnyOrder = (parts: readonly string[]) =>
  fc.shuffledSubarray([...parts], { minLength: parts.length, maxLength: parts.length });

const figuresOf = (answers: readonly Answer[], tool: string) =>
  answers
    .filter((each) => each.tool === tool && each.status === "answered")
    .flatMap(({ figures = [] }) => figures);
const has = (answers: readonly Answer[], tool: string, name: string | undefined, value: number) =>
  figuresOf(answers, tool).some(
    (each) =>
      (name === undefined || each.name.includes(name)) &&
      each.value !== undefined &&
      Math.abs(each.value - value) <= 1e-9 * Math.max(1, value),
  );
/** The sentence stands in the message of what fails. */
const expectFigure = (
  said: string,
  answers: readonly Answer[],
  tool: string,
  name: string | undefined,
  value: number,
) => {
  const told = answers.map((each) => `${each.tool}/${each.status}: ${each.headline}`).join(" || ");
  expect(has(answers, tool, name, value), `${said}\n  ${name} ${value} in ${told}`).toBe(true);
};

test("a bill comes to the same, whichever of its parts is said first", async () => {
  const sums = fc.record({
    sign: fc.constantFrom("$", "€", "£"),
    ingredients: fc.integer({ min: 8, max: 40 }),
    packaging: fc.integer({ min: 2, max: 9 }),
    hours: fc.integer({ min: 2, max: 4 }),
    rate: fc.integer({ min: 10, max: 25 }),
    joint: oneOf(", ", " and "),
    ask: oneOf(". what does the batch cost", ", total cost?", "; how much is that altogether"),
  });
  const words = { $: "dollars", "€": "euros", "£": "pounds" };
  const said = sums.chain((sum) => {
    const unit = words[sum.sign as keyof typeof words];
    const money = (value: number) => oneOf(`${sum.sign}${value}`, `${value} ${unit}`);
    const parts = fc
      .tuple(
        money(sum.ingredients).chain((each) =>
          oneOf(`ingredients ${each}`, `${each} of ingredients`, `i spent ${each} on ingredients`),
        ),
        money(sum.packaging).chain((each) =>
          oneOf(`packaging ${each}`, `${each} for packaging`, `boxes were ${each}`, `${each} on boxes`),
        ),
        money(sum.rate).chain((each) =>
          oneOf(
            `${sum.hours} hours of work at ${each} an hour`,
            `${sum.hours} h of my time at ${each} per hour`,
            `i worked ${sum.hours} hours and an hour of my time is ${each}`,
          ),
        ),
      )
      .chain(inAnyOrder);
    return parts.map((list) => ({ sum, line: list.join(sum.joint) + sum.ask }));
  });
  await fc.assert(
    fc.asyncProperty(said, async ({ sum, line }) => {
      const cost = sum.ingredients + sum.packaging + sum.hours * sum.rate;
      expectFigure(line, await baker().ask(line), "cost", "cost", cost);
    }),
    runs,
  );
});

test("a note keeps every fact, whichever is told first", async () => {
  const facts = fc.record({
    taste: oneOf("lime", "pistachio", "raspberry", "coffee", "mango", "salted caramel"),
    made: fc.integer({ min: 12, max: 60 }),
    rest: fc.integer({ min: 20, max: 60 }),
    bake: fc.integer({ min: 12, max: 18 }),
    oven: fc.integer({ min: 28, max: 32 }).map((each) => each * 5),
    rating: fc.integer({ min: 4, max: 10 }),
    joint: oneOf(", ", "; ", " and "),
  });
  const said = facts.chain((fact) => {
    const { taste, made, rest, bake, oven, rating, joint } = fact;
    const parts = fc
      .tuple(
        oneOf(`${made} of them`, `made ${made}`, `got ${made} out of it`, `${made} in all`),
        oneOf(`rested ${rest} min`, `${rest} min rest`, `let them rest ${rest} minutes`),
        oneOf(`baked ${bake} min`, `${bake} min in the oven`, `bake ${bake} min`),
        oneOf(`oven at ${oven}`, `oven on ${oven} c`, `${oven} °C`),
        oneOf(`rated ${rating}`, `${rating} out of 10`, `${rating}/10`, `rate it ${rating}`),
        oneOf("good feet", "a few cracked", "hollow ones", "kids loved them"),
      )
      .chain(inAnyOrder);
    return fc
      .tuple(
        parts,
        oneOf(`note: ${taste}, `, `log this: ${taste}, `, `write down ${taste}, `, `${taste} batch: `),
      )
      .map(([list, lead]) => {
        const told = lead + list.join(joint);
        return { fact, line: lead.includes("batch:") ? `${told}. save that` : told };
      });
  });
  await fc.assert(
    fc.asyncProperty(said, async ({ fact, line }) => {
      const answers = await baker().ask(line);
      expectFigure(line, answers, "note", "macarons", fact.made);
      expectFigure(line, answers, "note", "rest", fact.rest);
      expectFigure(line, answers, "note", "bake", fact.bake);
      expectFigure(line, answers, "note", "oven", fact.oven);
      expectFigure(line, answers, "note", "rating", fact.rating);
    }),
    runs,
  );
});

/** A question, the calculator it is for and one figure of its answer. */
interface Asked {
  say: string;
  tool: string;
  name?: string;
  value: number;
}

const grams = fc.integer({ min: 12, max: 60 }).map((each) => each * 10);
const asDose = fc
  .record({ g: grams, percent: fc.integer({ min: 2, max: 5 }), taste: oneOf("lemon", "rose", "raspberry") })
  .chain(({ g, percent, taste }) =>
    oneOf(
      `how much ${taste} flavor for ${g} g buttercream at ${percent} %`,
      `${percent} % ${taste} flavor in ${g} g ganache`,
    ).map((say): Asked => ({ say, tool: "dose", name: "flavor", value: (g * percent) / 100 })),
  );
/** The house recipe: 130 of almond flour to 100 of whites. */
const asScale = fc
  .integer({ min: 60, max: 180 })
  .chain((g) =>
    oneOf(`how much almond flour for ${g} g whites`, `scale the recipe to ${g} g whites`).map(
      (say): Asked => ({ say, tool: "scale", name: "almond flour", value: 1.3 * g }),
    ),
  );
/** Milk chocolate for piping: 2 to 1 of cream. */
const asGanache = grams.chain((g) =>
  oneOf(`how much cream for ${g} g of milk chocolate`, `${g} g milk chocolate, how much cream`).map(
    (say): Asked => ({ say, tool: "ganache", name: "cream", value: g / 2 }),
  ),
);
const asHeat = fc
  .integer({ min: 24, max: 36 })
  .chain((each) =>
    oneOf(`what is ${each * 5} celsius in fahrenheit`, `oven at ${each * 5} c, whats that in f`).map(
      (say): Asked => ({ say, tool: "convert", value: each * 9 + 32 }),
    ),
  );
const asTimer = fc
  .integer({ min: 5, max: 55 })
  .chain((min) =>
    oneOf(`set a ${min} min timer for the syrup`, `time the syrup for ${min} minutes`).map(
      (say): Asked => ({ say, tool: "timer", name: "left", value: min }),
    ),
  );
const kinds = [asDose, asScale, asGanache, asHeat, asTimer];

test("two questions in one turn are both answered, whatever joins them and stands before them", async () => {
  const pair = fc
    .shuffledSubarray(kinds, { minLength: 2, maxLength: 2 })
    .chain(([one = asDose, other = asHeat]) => fc.tuple(one, other));
  const said = fc.tuple(
    pair,
    oneOf("", "", "ok so ", "shells are resting so ", "my hands are full, "),
    oneOf(", and ", ". also ", " and ", ". ", "; "),
  );
  await fc.assert(
    fc.asyncProperty(said, async ([[one, other], lead, joint]) => {
      const line = lead + one.say + joint + other.say;
      const answers = await baker().ask(line);
      for (const { tool, name, value } of [one, other]) expectFigure(line, answers, tool, name, value);
    }),
    runs,
  );
});

test("a bowl or a share said next takes the place of the one before, and nothing else", async () => {
  const next = fc.oneof(
    grams.chain((g) =>
      oneOf(`and for ${g} g`, `make it ${g} g`, `no, ${g} g`, `what if its ${g} g`, `${g} g instead`).map(
        (say) => ({ say, g, percent: undefined }),
      ),
    ),
    fc
      .integer({ min: 2, max: 6 })
      .chain((percent) =>
        oneOf(
          `at ${percent} %`,
          `and at ${percent} percent`,
          `make it ${percent} %`,
          `${percent} % instead`,
        ).map((say) => ({ say, g: undefined, percent })),
      ),
  );
  const talk = fc.tuple(
    grams,
    fc.integer({ min: 2, max: 5 }),
    fc.array(next, { minLength: 1, maxLength: 4 }),
  );
  await fc.assert(
    fc.asyncProperty(talk, async ([first_g, first_percent, turns]) => {
      const { ask } = baker();
      let [g, percent] = [first_g, first_percent];
      await ask(`${percent} % lemon flavor in ${g} g buttercream`);
      const before = [`${percent} % in ${g} g`];
      for (const turn of turns) {
        // what was said already would only be said again
        if (turn.g === g || turn.percent === percent) continue;
        [g, percent] = [turn.g ?? g, turn.percent ?? percent];
        before.push(turn.say);
        expectFigure(before.join(" | "), await ask(turn.say), "dose", "flavor", (g * percent) / 100);
      }
    }),
    runs,
  );
});
