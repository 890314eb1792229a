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

  it("of two ingredients is two turns", () => {
    expect(pasted("", "105 g egg whites\n130 g almond flour\n").turns).toHaveLength(2);
  });
});
