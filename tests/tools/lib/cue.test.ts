/** The little language of cues, and that its shortcut never changes what a cue matches. */
import { describe, expect, test } from "vitest";
import { cues, sign } from "../../../src/tools/lib/cue.ts";
import { needed } from "../../../src/tools/lib/cue-needs.ts";
import { cueTable, hitsIn } from "../../../src/tools/lib/cue-table.ts";
import { tools } from "../../../src/tools/registry.ts";
import { readings } from "../../support/ask.ts";

const mask =
  "i have 230_g<weight> buttercream<base=buttercream> , how much lemon_flavor<dose=flavor,taste=lemon> ?";

describe("patterns over a mask", () => {
  test.each([
    // a facet, wherever it stands among others
    ["{weight}", true],
    ["{base}", true],
    ["{dose}", true],
    ["{taste}", true],
    ["{chocolate}", false],
    // a facet of that very value, or of one of several
    ["{base=buttercream}", true],
    ["{base=ganache}", false],
    ["{base=(ganache|buttercream)}", true],
    ["{taste=lemon}", true],
    ["{taste=lem}", false],
    // side by side, and with other words between
    ["{weight} {base}", true],
    ["{weight} {dose}", false],
    ["{weight} .. {dose}", true],
    ["{dose} .. {weight}", false],
    ["{weight} .. {base}", true],
    // whole words only
    ["how much", true],
    ["how mu", false],
    ["ow much", false],
    ["(?:how|what) (?:much|many) .. {dose}", true],
    ["^i have", true],
    ["^have", false],
  ])("%s: %s", (pattern, matches) => {
    expect(sign(pattern).test(mask)).toBe(matches);
  });

  test("dots stand for some words, but not for a whole story", () => {
    const words = (count: number) => `230_g<weight> ${"and ".repeat(count)}butter<ingredient=butter>`;
    expect(sign("{weight} .. {ingredient}").test(words(5))).toBe(true);
    expect(sign("{weight} .. {ingredient}").test(words(20))).toBe(false);
  });

  test("a value of two words is written with an underscore in the mask", () => {
    expect(sign("{ingredient=almond flour}").test("almond<ingredient=almond_flour>")).toBe(true);
  });
});

describe("the shortcut", () => {
  test("asks for what a pattern can't do without, and for nothing that may be missing", () => {
    expect(needed("how much {dose}")).toEqual([["how "], ["much "], ["dose"]]);
    expect(needed("(?:how|what) many")).toEqual([["how ", "what "], ["many "]]);
    expect(needed("(?:please )?{base=ganache}")).toEqual([["base=ganache"]]);
    expect(needed("flavou?r")).toEqual([["flavo"]]);
    expect(needed("one|two")).toEqual([["one ", "two "]]);
    expect(needed("one|\\d")).toEqual([]);
    expect(needed("whip(?:ped)? it|whip\\S*")).toEqual([["whip"]]);
    expect(needed("back ?up .. all")).toEqual([["back"], ["all "]]);
    expect(needed("how(?: much)? do(?: i|ing)")).toEqual([["how "], ["do"]]);
    expect(needed("(?:un)?done")).toEqual([]);
    expect(needed("^(?:\\S+ ){0,3}please note")).toEqual([["please "], ["note "]]);
    expect(needed("\\d{2,3} grams")).toEqual([["grams "]]);
    expect(needed("(?:the )?{base} pasteuri[sz]ed")).toEqual([["base"], ["pasteuri"]]);
    expect(needed("(?:my |the )*oven (?:is|was) hot")).toEqual([["oven "], ["is ", "was "], ["hot "]]);
  });

  test("never changes what any cue of any calculator matches", () => {
    const said = tools.flatMap((tool) => [...tool.examples, ...tool.elsewhere].map((each) => each.say));
    const masks = [...new Set(said.flatMap((each) => readings(each).map((reading) => reading.mask)))];
    const hits = hitsIn(cueTable(tools));
    const whole = tools.map(({ cues }) =>
      cues.map(({ pattern, weight }) => ({ pattern, weight, sign: sign(pattern) })),
    );
    const wrong = masks.flatMap((each) => {
      const found = hits(each);
      return tools.flatMap(({ name }, at) => {
        const list = whole[at] ?? [];
        const expected = list.flatMap(({ sign, pattern }) => (sign.test(each) ? [pattern] : [])).join("\n");
        const given = found[at]?.map((hit) => list[hit.at]?.pattern).join("\n");
        return given === expected ? [] : [`${name} on ${each}: ${given} for ${expected}`];
      });
    });
    expect(masks.length).toBeGreaterThan(100);
    expect(wrong).toEqual([]);
  });
});

test("a list of cues keeps pattern and weight", () => {
  const list = cues([4, "{weight}", "{base}"], [-2, "timer"]);
  expect(list.map((each) => [each.pattern, each.weight])).toEqual([
    ["{weight}", 4],
    ["{base}", 4],
    ["timer", -2],
  ]);
});
