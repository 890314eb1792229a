/** One pass over a sentence: what is found where, the longest reading first, and every piece in its place. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { scan } from "../../src/intents/found/scan.ts";
import { read, tokens, understood } from "./reading.ts";

const items = (said: string) =>
  scan(tokens(said), understood.reader.lexicon).map((item) => {
    if (item.is === "thing") return `thing ${item.thing.text}`;
    if (item.is === "amount") return `amount ${item.amount.text}`;
    if (item.is === "when") return `when ${item.when.text}`;
    return `${item.is} ${item.text}`;
  });

describe("what is found", () => {
  it.each([
    ["230 g buttercream", ["amount 230 g", "thing buttercream"]],
    ["how much vanilla bean paste", ["word how", "word much", "thing vanilla bean paste"]],
    ["half and half", ["thing half and half"]],
    ["2 cups half and half", ["amount 2 cups", "thing half and half"]],
    ["cream of tartar", ["thing cream of tartar"]],
    ["egg white powder", ["thing egg white powder"]],
    ["swiss meringue buttercream", ["thing swiss meringue buttercream"]],
    ["in grams", ["word in", "thing grams"]],
    ["350 f to c", ["amount 350 f", "word to", "thing c"]],
    ["24 macarons, tomorrow at 3pm", ["amount 24", "thing macarons", "sign ,", "when tomorrow at 3pm"]],
    ["another one", ["word another", "word one"]],
    ["one macaron", ["amount one", "thing macaron"]],
    ["that one please", ["word that", "word one", "word please"]],
    ["two of them", ["amount two", "word of", "word them"]],
    ["two to one", ["amount two", "word to", "amount one"]],
    ["one to two", ["amount one", "word to", "amount two"]],
    ["change that one to 12", ["word change", "word that", "word one", "word to", "amount 12"]],
    ["how many teaspoons", ["word how", "word many", "thing teaspoons"]],
    ["$16 a kilo", ["amount $16 a kilo"]],
    ["double cream", ["thing double cream"]],
    ["double it", ["amount double", "word it"]],
    ["5 mint macarons", ["amount 5", "thing mint", "thing macarons"]],
  ])("%s", (said, found) => {
    expect(items(said)).toEqual(found);
  });

  it("tells the rest of a recipe from the rest before the oven", () => {
    expect(read("what do i need of the rest").mask).toContain("remainder");
    expect(read("what about the rest?").mask).toContain("remainder");
    expect(read("start the rest timer").mask).toContain("step=rest");
    expect(read("rest 30 min").mask).toContain("step=rest");
    expect(read("how long do they rest").mask).toContain("step=rest");
  });
});

it("loses nothing: the pieces stand in order, without overlap, inside the text", () => {
  const words = fc.constantFrom(
    "230",
    "g",
    "1/2",
    "half",
    "and",
    "a",
    "to",
    "dozen",
    "cups",
    "of",
    "butter",
    "cream",
    "at",
    "3pm",
    "tomorrow",
    "10:15",
    "%",
    "-",
    "$",
    "one",
    "macarons",
    "pistachio",
    "paste",
    "the",
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
    ".",
    "quarter",
    "past",
    "ten",
    "march",
    "8",
    "oz",
  );
  fc.assert(
    fc.property(fc.array(words, { maxLength: 25 }), (said) => {
      const all = tokens(said.join(" "));
      const spans = scan(all, understood.reader.lexicon).map((item) =>
        item.is === "thing"
          ? item.thing.at
          : item.is === "amount"
            ? item.amount.at
            : item.is === "when"
              ? item.when.at
              : item.at,
      );
      expect(spans[0]?.[0]).toBe(all[0]?.at[0]);
      expect(spans.at(-1)?.[1]).toBe(all.at(-1)?.at[1]);
      spans.forEach((span, at) => {
        expect(span[1]).toBeGreaterThan(span[0]);
        const next = spans[at + 1];
        if (next) expect(next[0]).toBeGreaterThanOrEqual(span[1]);
      });
    }),
    { numRuns: 1000 },
  );
});
