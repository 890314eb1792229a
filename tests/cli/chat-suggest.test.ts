/** The likely end of a line, and what takes it. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { edit, freshEditor } from "../../src/cli/chat/editor.ts";
import { decode, freshDecoder } from "../../src/cli/chat/keys.ts";
import { likelyEnd } from "../../src/cli/chat/suggest.ts";

const examples = ["I have 230 g buttercream, how much flavor?", "batter for 24 macarons", "3/4 of 260"];

describe("the likely end", () => {
  it.each<[string, string, string[], string]>([
    ["of an example", "batter f", [], "or 24 macarons"],
    ["whatever the case of its letters", "i HAVE 2", [], "30 g buttercream, how much flavor?"],
    [
      "of a line asked before, ahead of the examples",
      "batter f",
      ["batter for 36 macarons"],
      "or 36 macarons",
    ],
    ["of the latest of several", "note: ", ["note: lemon batch", "note: rose batch"], "rose batch"],
    ["after another number", "I have 300 g butter", [], "cream, how much flavor?"],
    ["after another number and a space", "I have 300 g buttercream, ", [], "how much flavor?"],
    ["never with a number that wasn't said, after another", "1/4 of", [], ""],
    ["not of what is too short", "I ", [], ""],
    ["not of what is whole", "batter for 24 macarons", [], ""],
    ["not of what nobody said", "lemon", [], ""],
    ["of signs that mean something to a pattern", "3/4 (", [], ""],
  ])("%s", (_name, text, history, end) => {
    expect(likelyEnd(text, history, examples)).toBe(end);
  });

  it("goes on with a line that works, or with nothing, and adds no number beside another", () => {
    const text = fc.oneof(
      fc.string(),
      fc.constantFrom(...examples).chain((line) => fc.nat(line.length).map((n) => line.slice(0, n))),
    );
    fc.assert(
      fc.property(text, (begun) => {
        const end = likelyEnd(begun, [], examples);
        const whole = (begun + end).toLowerCase();
        if (end !== "" && /\d/.test(end)) expect(examples.map((each) => each.toLowerCase())).toContain(whole);
      }),
    );
  });
});

/** The line after chunks of keys, with everything likely that is above. */
function typed(...chunks: string[]) {
  let editor = freshEditor([]);
  const asked: string[] = [];
  for (const chunk of chunks) {
    const done = edit(editor, decode(freshDecoder, chunk).keys, (text, history) =>
      likelyEnd(text, history, examples),
    );
    editor = done.editor;
    asked.push(...done.submitted);
  }
  return { line: editor.text, asked };
}
const right = "\u001b[C";
const left = "\u001b[D";

describe("taking it", () => {
  it("is one key: Tab, or the arrow right behind the last letter", () => {
    expect(typed("batter f", "\t").line).toBe("batter for 24 macarons");
    expect(typed("batter f", right).line).toBe("batter for 24 macarons");
    expect(typed("batter f", "\u0006").line).toBe("batter for 24 macarons");
  });

  it("leaves the arrow its work inside the line, and with nothing to take", () => {
    expect(typed("batter f", left, right, "!").line).toBe("batter f!");
    expect(typed("lemon", right, "s").line).toBe("lemons");
  });

  it("isn't done by a tab within text that comes at once, nor by one with nothing to take", () => {
    expect(typed("batter f\tx").line).toBe("batter f x");
    expect(typed("lemon", "\t", "x").line).toBe("lemon x");
  });

  it("never asks: Enter asks what stands there", () => {
    expect(typed("batter f", "\r").asked).toEqual(["batter f"]);
    expect(typed("batter f", "\t", "\r").asked).toEqual(["batter for 24 macarons"]);
  });
});
