/** Whatever is typed: reading never throws, every number it finds is finite, and everything has its place in the text. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { next, questions } from "../../src/intents/converse.ts";
import { freshState } from "../../src/intents/follow/state.ts";
import { itemsOf } from "../../src/intents/read.ts";
import { sanitise } from "../../src/intents/text/normalise.ts";
import type { Reading } from "../../src/tools/contract/index.ts";
import { read, understood } from "./reading.ts";

const names = { formulas: ["snowy shells"], bottles: ["mint"], timers: ["rest"] };

function sound(reading: Reading, whole: string): void {
  const { text } = reading;
  const { length } = text;
  // a question has its own text; what is told beside it is blank, everything else keeps its place
  const stands = (from: number) => {
    for (let at = 0; at < length; at++) {
      const there = whole[from + at] ?? "";
      // a stop between the parts of one question is read as a comma
      const isStop = text[at] === "," && /^[.;]$/.test(there);
      if (text[at] !== " " && text[at] !== there && !isStop) return false;
    }
    return true;
  };
  let from = 0;
  while (from + length <= whole.length && !stands(from)) from += 1;
  // what says nothing ("#0") is heard as "ok", which stands nowhere in it
  if (text !== "ok" || !saysNothing(reading, whole)) expect(from + length).toBeLessThanOrEqual(whole.length);
  for (const { at } of [...reading.amounts, ...reading.things, ...reading.whens]) {
    expect(at[0]).toBeGreaterThanOrEqual(0);
    expect(at[1]).toBeGreaterThan(at[0]);
    expect(at[1]).toBeLessThanOrEqual(length);
  }
  for (const { value, high, fraction, per } of reading.amounts)
    for (const number of [value, high, per?.value, ...(fraction ?? [])])
      if (number !== undefined) expect(Number.isFinite(number)).toBe(true);
  for (const { days, weekday, day, month, year, minute } of reading.whens)
    for (const number of [days, weekday, day, month, year, minute])
      if (number !== undefined) expect(Number.isFinite(number)).toBe(true);
}

/** Without what the reader set aside as told of something else no word is left: words are of the letters a to z. */
const saysNothing = ({ beside = [] }: Reading, whole: string): boolean =>
  !/[a-z]/.test(beside.reduce((rest, { said }) => rest.replace(said, ""), whole));

/** Reads a line as the program does, down to the inputs of each question. */
function through(line: string): void {
  const said = sanitise(line);
  const whole = itemsOf(said, understood.reader).text;
  sound(read(said), whole);
  for (const reading of questions(said, understood)) {
    sound(reading, whole);
    const found = next(reading, freshState(), names, understood);
    if (Array.isArray(found))
      for (const { inputs } of found) expect(JSON.stringify(inputs)).not.toContain("null");
  }
}

const trade = fc.constantFrom(
  "230",
  "g",
  "1/2",
  "half",
  "a",
  "to",
  "dozen",
  "cups",
  "of",
  "butter",
  "buttercream",
  "ganache",
  "at",
  "3pm",
  "tomorrow",
  "10:15",
  "%",
  "-",
  "$",
  "€",
  "macarons",
  "pistachio",
  "paste",
  "flavor",
  "rest",
  "x",
  "times",
  "°",
  "c",
  "hour",
  "30",
  ",",
  "?",
  "(",
  ")",
  ".",
  "quarter",
  "past",
  "ten",
  "march",
  "how",
  "much",
  "many",
  "split",
  "timer",
  "set",
  "note",
  "and",
  "then",
  "plus",
  "two",
  "hundred",
  "third",
  "oz",
  "lb",
  "in",
  "undo",
  "save",
  "recipe",
  "why",
  "minus",
  "between",
  "double",
  "twice",
  "1.250,5",
  "1,000",
  "½",
  "2026-03-20",
  "o'clock",
  "am",
  "the",
  "21st",
  "per",
  "kilo",
  "call",
  "bottle",
);

describe("any text is read", () => {
  it("made of words of the trade in any order", () => {
    fc.assert(
      fc.property(
        fc.array(trade, { maxLength: 24 }).map((words) => words.join(" ")),
        through,
      ),
      { numRuns: 1000 },
    );
  });

  it("made of words of the trade without spaces", () => {
    fc.assert(
      fc.property(
        fc.array(trade, { maxLength: 12 }).map((words) => words.join("")),
        through,
      ),
      { numRuns: 300 },
    );
  });

  it("made of any characters of Unicode", () => {
    fc.assert(fc.property(fc.string({ unit: "binary", maxLength: 80 }), through), { numRuns: 500 });
    fc.assert(fc.property(fc.string({ unit: "grapheme", maxLength: 80 }), through), { numRuns: 300 });
  });

  it("made of bytes that are no text", () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 120 }), (bytes) => {
        through(new TextDecoder().decode(bytes));
        through(String.fromCharCode(...bytes));
      }),
      { numRuns: 300 },
    );
  });

  it("a sign and a nought, which ask for nothing", () => through("#0"));

  it("made of half of a character", () => {
    through("230 g \ud83c buttercream");
    through("\udf6a\ud83c");
  });

  it.each([
    ["very many digits", "9".repeat(400)],
    ["very many digits with a unit", `${"9".repeat(400)} g buttercream, how much flavor`],
    ["very many digits over very many", `${"1".repeat(350)}/${"3".repeat(350)} cup`],
    ["digits with many commas", "1,".repeat(300)],
    ["many points", `${".".repeat(300)}5 g`],
    ["nested brackets", `${"(".repeat(500)}230 g${")".repeat(500)}`],
    ["nested tags", "<".repeat(300) + ">".repeat(300)],
    ["one unit again and again", "g ".repeat(500)],
    ["one amount again and again", "230 g ".repeat(200)],
    ["one joint again and again", "and ".repeat(300)],
    ["one question again and again", "how much flavor for 230 g buttercream? ".repeat(20)],
    ["halves of halves", "half of a ".repeat(200)],
    ["hundreds of thousands", "hundred thousand ".repeat(200)],
    ["minus minus", "minus ".repeat(300)],
    ["dashes", "-".repeat(500)],
    ["one long word", "a".repeat(2000)],
    ["one long word nearly known", `buttercream${"m".repeat(500)}`],
    ["quotes", "'\"".repeat(300)],
    ["tomorrow tomorrow", "tomorrow at ".repeat(200)],
    ["dozens of dozens", "dozen ".repeat(400)],
    ["twenty twenty", "twenty ".repeat(300)],
    ["one hour again and again", "1 hour 20 min ".repeat(100)],
  ])("%s", (_, line) => {
    through(line);
  });

  it("a line as long as a chat takes one", () => {
    const words = "buttercream flavor 230 g and ganache how much almnd flour ".repeat(170);
    through(words.slice(0, 10_000));
  });
});

it.each([
  "buttercream flavor 230 g and ganache how much almnd flour ",
  "1 cup and ",
  "at 3 to ",
  "minus ",
  "100 g each of butter and sugar, ",
  "how much flavor for 230 g buttercream? ",
  "half of a ",
  "3 x ",
  "(((",
  "note: and what is ",
  "and then ",
  "so and now ok ",
])("twenty thousand characters of %j come to an end", (piece) => {
  through(piece.repeat(Math.ceil(20_000 / piece.length)));
});

it("no number is ever read as one with another size: digits come through as they are", () => {
  fc.assert(
    fc.property(fc.double({ min: 0.01, max: 1e6, noNaN: true }), (value) => {
      const text = value.toFixed(3);
      const [amount] = read(`${text} g butter`).amounts;
      expect(amount?.value).toBe(Number(text));
    }),
  );
});

it("the same line is read the same way twice", () => {
  fc.assert(
    fc.property(
      fc.array(trade, { maxLength: 20 }).map((words) => words.join(" ")),
      (line) => {
        expect(questions(line, understood)).toEqual(questions(line, understood));
      },
    ),
    { numRuns: 200 },
  );
});
