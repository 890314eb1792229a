/** What a calculator leaves unread: a number that was said and counts for nothing makes the answer no answer. */
import { describe, expect, it } from "vitest";
import { leftOver } from "../../src/intents/chosen/left-over.ts";
import { baker } from "../support/ask.ts";
import { read } from "./reading.ts";

describe("a number that no input holds", () => {
  it.each([
    ["how much flavor for 230 g buttercream at 4 %", "dose", { base_g: 230 }, ["4 %"]],
    ["how much flavor for 230 g buttercream at 4 %", "dose", { base_g: 230, percent: 4 }, []],
    // both ends of a range
    ["flavor for 250 to 300 g buttercream", "dose", { base_g: 250 }, ["250 to 300 g"]],
    ["flavor for 250 to 300 g buttercream", "dose", { base_g: 250, other: 300 }, []],
    // held in another unit, as a share, as a half
    ["flavor for 1 lb buttercream", "dose", { base_g: 453.59237 }, []],
    ["540 g ganache, rum for half of it", "dose", { base_g: 270 }, []],
    // a sum, and a factor
    ["flavor for 200 g butter and 100 g buttercream", "dose", { base_g: 300 }, []],
    ["recipe makes 500 g, i want 250 g", "scale", { factor: 0.5 }, []],
    // numbers: of macarons they count, as talk they don't
    ["ganache for 14 macarons", "ganache", {}, ["14"]],
    ["2 much flavor for 230 g buttercream", "dose", { base_g: 230 }, []],
    // a factor of one changes nothing and is never missed
    ["ganache from 200 g dark, 2:1", "ganache", { chocolate_g: 200 }, ["2"]],
    ["ganache from 200 g dark, 2:1", "ganache", { chocolate_g: 200, ratio: 2 }, []],
    // a volume and a plain factor change a dose
    ["double the flavor for 200 g buttercream", "dose", { base_g: 200 }, ["double"]],
    // a note keeps all words
    ["note: 300 g ganache, split", "note", {}, []],
  ] as const)("%s, %s with %o: %o", (said, tool, held, expected) =>
    expect(leftOver(tool, read(said), [held])).toEqual(expected),
  );
});

it("leaves plain numbers to a follow-up, which holds them where the question before put them", () => {
  expect(leftOver("ganache", read("for 14 macarons"), [{}], true)).toEqual([]);
  expect(leftOver("dose", read("with 14 g of it"), [{}], true)).toEqual(["14 g"]);
});

/** Sentences whose numbers a calculator doesn't hold are asked about or taken by the one that does, never answered. */
it.each(["how much flavor for 250 to 300 g buttercream", "double the flavor for 200 g buttercream"])(
  "%s: no single number",
  async (said) => {
    const answers = await baker().ask(said);
    for (const { status, figures = [] } of answers)
      expect(status !== "answered" || figures.length > 1, JSON.stringify(answers)).toBe(true);
  },
);
