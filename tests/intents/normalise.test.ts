/** What was typed, made readable: nothing that controls a terminal comes through, and no figure changes. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { normalise, sanitise } from "../../src/intents/text/normalise.ts";
import { tokenise } from "../../src/intents/text/tokens.ts";

// biome-ignore lint/suspicious/noControlCharactersInRegex: this is what must not be left
const control = /[\u0000-\u001f\u007f-\u009f\u2028\u2029\u202a-\u202e\u2066-\u2069\u200b\ufeff]/;

describe("sanitise", () => {
  it.each([
    ["colors", "230 g \u001b[31mbuttercream\u001b[0m", "230 g buttercream"],
    ["a cursor move", "230\u001b[2;5H g", "230 g"],
    ["a window title", "\u001b]0;title\u0007how much flavor", "how much flavor"],
    ["a link", "\u001b]8;;target\u001b\\text\u001b]8;;\u001b\\", "text"],
    ["a lone escape", "flavor\u001b", "flavor"],
    ["an eight-bit control sequence", "a\u009b31mb", "a 31mb"],
    ["a bell and a backspace", "ping\u0007 me\u0008", "ping me"],
    ["tabs and line ends", "230\tg\r\nbuttercream", "230 g buttercream"],
    ["a change of writing direction", "300 g \u202ecream\u202c", "300 g cream"],
    ["spaces of no width", "butter\u200b cream\ufeff", "butter cream"],
    ["spaces at the ends", "   24 macarons  ", "24 macarons"],
  ])("takes out %s", (_, line, clean) => {
    expect(sanitise(line)).toBe(clean);
  });

  it("leaves letters, signs, accents and emoji as they were typed", () => {
    for (const line of ["Crème brûlée: 1½ tsp, 3–5 %", "macarons 🍪 für 24", "“half” a dozen"])
      expect(sanitise(line)).toBe(line);
  });

  it("lets no control character through, and a second time changes nothing, whatever was typed", () => {
    const anything = fc.oneof(
      fc.string({ unit: "binary" }),
      fc
        .array(
          fc.constantFrom("\u001b", "[", "]", "3", "1", "m", "\u0007", "\\", "\u009b", "g", " ", "?", ";"),
        )
        .map((parts) => parts.join("")),
    );
    fc.assert(
      fc.property(anything, (line) => {
        const clean = sanitise(line);
        expect(clean).not.toMatch(control);
        expect(sanitise(clean)).toBe(clean);
      }),
      { numRuns: 2000 },
    );
  });
});

describe("normalise", () => {
  it.each([
    ["1½ tsp", "1 1/2 tsp"],
    ["½ cup", "1/2 cup"],
    ["2⅔ cups", "2 2/3 cups"],
    ["⅛ tsp", "1/8 tsp"],
    ["1⁄2 cup", "1/2 cup"],
    ["3–5 %", "3-5 %"],
    ["3—5 %", "3-5 %"],
    ["−18 °C", "-18 °c"],
    ["150 ºC", "150 °c"],
    ["2 × 45", "2 x 45"],
    ["90 ÷ 4", "90 / 4"],
    ["what’s left", "what's left"],
    ["Crème Fraîche", "creme fraiche"],
    ["Eiweiß", "eiweiss"],
    ["blancs d’œufs", "blancs d'oeufs"],
    ["BUTTERCREAM", "buttercream"],
    ["5″ tip", '5" tip'],
    ["freeze-dried", "freeze dried"],
    ["twenty-four", "twenty four"],
  ])("%s becomes %s", (typed, plain) => {
    expect(normalise(typed)).toBe(plain);
  });

  it("never glues a fraction to the digit before it", () => {
    for (const sign of "¼½¾⅓⅔⅛⅜⅝⅞")
      for (const whole of [1, 2, 11])
        expect(normalise(`${whole}${sign}`)).toMatch(new RegExp(`^${whole} \\d/\\d$`));
  });

  it("makes one word of what isn't in it, so that no nut, egg or gluten is heard", () => {
    for (const free of ["nut-free", "gluten-free", "dairy-free", "egg-free"])
      expect(tokenise(normalise(`${free} macarons`)).map(({ text }) => text)).toEqual([
        free.replace("-", ""),
        "macarons",
      ]);
  });

  it("throws at nothing and changes nothing the second time", () => {
    fc.assert(
      fc.property(fc.oneof(fc.string({ unit: "binary" }), fc.string({ unit: "grapheme" })), (line) => {
        const once = normalise(sanitise(line));
        expect(normalise(once)).toBe(once);
      }),
      { numRuns: 2000 },
    );
  });
});
