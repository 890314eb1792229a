/** Greetings and thanks around a question are no questions of their own; alone they are answered. */
import { describe, expect, it } from "vitest";
import { baker, readings } from "../support/ask.ts";

describe("a question with courtesies around it is that one question", () => {
  it.each([
    "hi, 230 g buttercream, how much flavor?",
    "hello! 230 g buttercream, how much flavor?",
    "hey there, how much flavor for 230 g buttercream",
    "hi how much flavor for 230 g buttercream please",
    "please, how much flavor for 230 g buttercream",
    "how much flavor for 230 g buttercream, thanks",
    "how much flavor for 230 g buttercream thank you",
    "hi, how much flavor for 230 g buttercream? thanks!",
    "how much flavor for 230 g buttercream, cheers",
    "pls how much flavor for 230 g buttercream thx",
  ])("%s", async (said) => {
    expect(await baker().ask(said)).toMatchObject([
      { tool: "dose", figures: [{ low: 6.9, high: 11.5, unit: "g" }] },
    ]);
  });
});

it.each(["hi", "hello there", "thanks", "thank you!", "perfect, thanks", "cheers"])(
  "alone it is small talk: %s",
  async (said) => {
    expect(await baker().ask(said)).toMatchObject([{ tool: "help", status: "answered" }]);
  },
);

it("takes nothing off a note", () => {
  expect(readings("note: rose batch, everyone said thanks")).toHaveLength(1);
  expect(readings("hi, note: rose batch, 2 hollow")[0]?.mask).toMatch(/^note/);
});
