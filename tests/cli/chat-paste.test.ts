/** A paste of several lines: each a turn, or one recipe. */
import { describe, expect, it } from "vitest";
import { pasted } from "../../src/cli/chat/paste.ts";

describe("a paste", () => {
  it("of questions is a turn a line; what isn't ended waits", () => {
    expect(pasted("", "batter for 24 macarons\n350 f in c\nand 300")).toEqual({
      turns: ["batter for 24 macarons", "350 f in c"],
      rest: "and 300",
    });
    expect(pasted("first: ", "one\ntwo\n")).toEqual({ turns: ["first: one", "two"], rest: "" });
  });

  it("of weights that ask something is no recipe", () => {
    const lines = [
      "300 g dark chocolate how much cream",
      "2 cups sugar in grams",
      "230 g buttercream, flavor?",
    ];
    expect(pasted("", `${lines.join("\n")}\n`).turns).toEqual(lines);
  });

  const lines = ["105 g egg whites", "130 g almond flour", "- powdered sugar: 130g", "1/2 tsp salt"];

  it.each([
    ["an order", "save recipe snowy shells:", "save recipe snowy shells:"],
    ["a name and a colon", "Snowy shells:", "save recipe Snowy shells:"],
    ["a name with the word", "Snowy shells (recipe)", "save recipe Snowy shells:"],
  ])("of a recipe under %s is one turn", (_name, heading, order) => {
    expect(pasted("", [heading, ...lines].join("\n"))).toEqual({
      turns: [[order, ...lines].join("\n")],
      rest: "",
    });
  });

  it("of ingredients alone is one turn too, and blank lines don't cut it", () => {
    expect(pasted("", lines.join("\n\n"))).toEqual({
      turns: [["save recipe:", ...lines].join("\n")],
      rest: "",
    });
  });

  it("of two ingredients is one turn, heard as it would be in one line; not ended, it waits", () => {
    const two = "200 g dark chocolate\n160 g cream";
    expect(pasted("", `${two}\n`)).toEqual({ turns: ["200 g dark chocolate; 160 g cream"], rest: "" });
    expect(pasted("", two)).toEqual({ turns: [], rest: "200 g dark chocolate; 160 g cream" });
  });

  const recipe = ["save recipe:", ...lines].join("\n");

  it.each([
    ["a blank line and a question", "\n\nhow many macarons is that", "how many macarons is that"],
    ["a question right below", "\nhow much batter is that?", "how much batter is that?"],
    ["a line of spaces and an order", "\n \nscale it to 90 g whites", "scale it to 90 g whites"],
  ])("of a list and %s keeps the list one turn, and the question waits", (_name, behind, rest) => {
    expect(pasted("", lines.join("\n") + behind)).toEqual({ turns: [recipe], rest });
    expect(pasted("", `${lines.join("\n")}${behind}\n`)).toEqual({ turns: [recipe, rest], rest: "" });
  });

  it("of a question above a list asks it behind the list, and saves no recipe by its words", () => {
    const turns = [recipe, "how many macarons from this"];
    expect(pasted("", ["how many macarons from this:", ...lines].join("\n"))).toEqual({ turns, rest: "" });
  });

  it("of two lists has two, and what stands between them is asked between them", () => {
    const text = ["Shells:", ...lines, "", "350 f in c", "", "200 g dark chocolate", "160 g cream", ""];
    expect(pasted("", text.join("\n"))).toEqual({
      turns: [
        ["save recipe Shells:", ...lines].join("\n"),
        "350 f in c",
        "200 g dark chocolate; 160 g cream",
      ],
      rest: "",
    });
  });

  it("of times, counts and doses is no list", () => {
    const rows = [
      "12 min rest",
      "24 macarons pistachio",
      "9 g coconut flavor in 150 g smbc",
      "5 g mint into 200 g ganache",
    ];
    expect(pasted("", `${rows.join("\n")}\n`).turns).toEqual(rows);
  });
});
