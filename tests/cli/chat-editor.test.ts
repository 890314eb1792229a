import { StringDecoder } from "node:string_decoder";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Editor, edit, freshEditor } from "../../src/cli/chat/editor.ts";
import { decode, flush, freshDecoder } from "../../src/cli/chat/keys.ts";

const up = "\u001b[A";
const down = "\u001b[B";
const left = "\u001b[D";
const right = "\u001b[C";
const backspace = "\u007f";

/** What a terminal sends, in the chunks given, as far as the editor: its last state and all lines that were ended. */
function typed(chunks: readonly string[], history: readonly string[] = []) {
  let editor: Editor = freshEditor(history);
  let decoder = freshDecoder;
  const lines: string[] = [];
  let leave: "now" | "in turn" | undefined;
  for (const chunk of chunks) {
    const read = decode(decoder, chunk);
    decoder = read.state;
    if (leave) continue;
    const done = edit(editor, read.keys);
    editor = done.editor;
    lines.push(...done.submitted);
    leave = done.leave;
  }
  return { editor, lines, leave, decoder };
}

/** The line with the cursor as "|". */
const seen = (sent: string, history: readonly string[] = []) => {
  const { editor } = typed([sent], history);
  return `${editor.text.slice(0, editor.cursor)}|${editor.text.slice(editor.cursor)}`;
};

describe("writing", () => {
  it.each([
    ["plain text", "230 g", "230 g|"],
    ["in the middle", `ac${left}b`, "ab|c"],
    ["a tab is a space", "a\tb", "a b|"],
    ["other control characters are nothing", "a\u0000\u0007\u001cb\u009b", "ab|"],
    ["backspace as most terminals send it", `abc${backspace}`, "ab|"],
    ["backspace as some send it", "abc\u0008", "ab|"],
    ["backspaces in a burst", `abc${backspace}${backspace}`, "a|"],
    ["backspace at the start", `${backspace}a`, "a|"],
    ["delete", `abc${left}${left}\u001b[3~`, "a|c"],
    ["Ctrl-D in a line deletes", "ab\u0001\u0004", "|b"],
    ["to the start and the end", "abc\u0001x\u0005y", "xabcy|"],
    [
      "Home and End, every form",
      "b\u001b[Ha\u001b[Fc\u001bOH-\u001b[1~+\u001b[4~d\u001b[7~=\u001b[8~e",
      "=+-abcde|",
    ],
    ["Ctrl-U", `ab cd${left}\u0015`, "|d"],
    ["Ctrl-K", `ab cd${left}\u000b`, "ab c|"],
    ["Ctrl-W", "230 g butter  \u0017", "230 g |"],
    ["Alt-Backspace", "230 g butter\u001b\u007f", "230 g |"],
    ["Alt-D", "one two\u0001\u001bd", "| two"],
    ["words left", "one two\u001b[1;5D\u001b[1;3D", "|one two"],
    ["words right", "one two\u0001\u001b[1;5C\u001bf", "one two|"],
    ["words as an older family of terminals sends them", "one two\u001bOd\u001bOc", "one two|"],
    [
      "keys that mean nothing here",
      "a\u001b[5~\u001b[[A\u001bOP\u001b[24~\u001b[?1;2c\u001b]11;rgb:00/00/00\u0007b",
      "ab|",
    ],
    ["an escape before Ctrl-E", `ab${left}\u001b\u0005`, "ab|"],
  ])("%s", (_name, sent, line) => {
    expect(seen(sent)).toBe(line);
  });

  it("moves and erases by what the eye takes for one character", () => {
    expect(seen(`a👩‍🍳e\u0301${backspace}`)).toBe("a👩‍🍳|");
    expect(seen(`a👩‍🍳e\u0301${left}${left}`)).toBe("a|👩‍🍳e\u0301");
    expect(seen(`a👩‍🍳b${left}${left}${right}${backspace}`)).toBe("a|b");
    expect(seen(`🇫🇷${backspace}½`)).toBe("½|");
  });
});

describe("asking", () => {
  it("ends a line at CR, LF and CRLF, text and end in one chunk", () => {
    expect(typed(["one\rtwo\nthree\r\nfour"])).toMatchObject({
      lines: ["one", "two", "three"],
      editor: { text: "four" },
    });
  });

  it("takes CRLF that comes in two chunks for one end", () => {
    expect(typed(["one\r", "\ntwo\r"]).lines).toEqual(["one", "two"]);
  });

  it("asks the whole line wherever the cursor is", () => {
    expect(typed([`abc${left}${left}\r`]).lines).toEqual(["abc"]);
  });

  it("gives blank lines too", () => {
    expect(typed(["\r \r"]).lines).toEqual(["", " "]);
  });

  it("takes a paste as text: line ends end lines, the rest waits in the line", () => {
    const pasted = typed(["first: \u001b[200~one\rtwo\tx\u001b[Ay\r\nthree\u001b[201~!"]);
    expect(pasted).toMatchObject({ lines: ["first: one", "two xy"], editor: { text: "three!" } });
  });

  it("isn't locked by a paste whose end is lost", () => {
    expect(typed(["\u001b[200~abc\u0003"])).toMatchObject({ leave: undefined, editor: { text: "abc" } });
    expect(typed(["\u001b[200~abc\u0003\u0003\u0003"]).leave).toBe("now");
  });
});

describe("leaving", () => {
  it("leaves at once with Ctrl-C on an empty line, and no later key is carried out", () => {
    expect(typed(["\u0003c\r"])).toMatchObject({ leave: "now", lines: [], editor: { text: "" } });
  });

  it("clears a line that is begun with the first Ctrl-C, and leaves with the next", () => {
    expect(typed(["ab\u0003"])).toMatchObject({ leave: undefined, editor: { text: "", cursor: 0 } });
    expect(typed(["ab\u0003c\r"])).toMatchObject({ leave: undefined, lines: ["c"] });
    expect(typed(["ab\u0003\u0003"])).toMatchObject({ leave: "now", lines: [] });
  });

  it("leaves in turn with Ctrl-D on an empty line", () => {
    expect(typed(["one\r\u0004"])).toMatchObject({ leave: "in turn", lines: ["one"] });
  });

  it("hears Ctrl-C behind a sequence that was cut off", () => {
    for (const begun of ["\u001b", "\u001b[", "\u001b[1;", "\u001bO", "\u001b]0;title"]) {
      // what the rest of it left in the line is cleared first
      expect(typed([`${begun}\u0003`]).editor.text, begun).toBe("");
      expect(typed([`${begun}\u0003\u0003`]).leave, begun).toBe("now");
    }
  });

  it("takes an Escape with nothing behind it for the key, not for part of the next", () => {
    const { decoder } = typed(["\u001b"]);
    expect(flush(decoder)).toMatchObject({ state: freshDecoder, keys: [{ do: "escape" }] });
    expect(flush(typed(["\u001b["]).decoder)).toMatchObject({ state: freshDecoder, keys: [] });
  });

  it.each(["\u001b", "\u001b[", "\u001b[5", "\u001b[5;", "\u001b[5;1"])(
    "takes where the cursor is for no text, its rest late behind %j",
    (begun) => {
      const late = flush(typed([begun]).decoder).state;
      const rest = "\u001b[5;11R".slice(begun.length);
      expect(decode(late, `${rest}g`).keys).toEqual([{ do: "insert", text: "g" }]);
      // anything else was typed, and so is the same a second time
      expect(decode(late, "11 g").keys).toEqual([{ do: "insert", text: "11 g" }]);
      expect(decode(decode(late, rest).state, "11R").keys).toEqual([{ do: "insert", text: "11R" }]);
    },
  );
});

describe("history", () => {
  const past = ["first", "second"];

  it.each([
    ["the last one", up, "second|"],
    ["no further than the oldest", up + up + up, "first|"],
    ["back to the draft", `draft${up}${up}${down}${down}${down}`, "draft|"],
    ["an older line edited and asked", `${up}!\r${up}`, "second!|"],
    ["Ctrl-P and Ctrl-N", "\u0010\u0010\u000e", "second|"],
    ["the cursor forms of the other keyboard mode", "\u001bOA\u001bOA\u001bOB", "second|"],
    ["down with nothing newer", `draft${down}`, "draft|"],
  ])("%s", (_name, sent, line) => {
    expect(seen(sent, past)).toBe(line);
  });

  it("keeps what is worth asking again", () => {
    const { editor } = typed(["second\r\r  \r third \rthird\rbye\rBye!\r"], past);
    expect(editor.history).toEqual(["first", "second", "third"]);
  });

  it("is clean and not endless", () => {
    const long = Array.from({ length: 600 }, (_, at) => `line ${at}`);
    const editor = freshEditor([...long, "", "with \u001b[31mred"]);
    expect(editor.history).toHaveLength(500);
    expect(editor.history.at(-1)).toBe("with [31mred");
    expect(typed(["one more\r"], long).editor.history).toHaveLength(500);
  });
});

describe("however it comes in chunks", () => {
  const piece = fc.constantFrom(
    "a",
    "bc",
    " ",
    "230 g",
    "é",
    "e\u0301",
    "½",
    "👩‍🍳",
    "🇫🇷",
    "漢",
    "\t",
    "\r",
    "\n",
    "\r\n",
    "\u001b",
    "\u001b[200~",
    "\u001b[201~",
    up,
    down,
    left,
    right,
    "\u001b[1;5D",
    "\u001b[3~",
    "\u001bOH",
    "\u001bb",
    "\u001b[24~",
    "\u001b]0;x\u0007",
    backspace,
    "\u0001",
    "\u0005",
    "\u000b",
    "\u0015",
    "\u0017",
    "\u0004",
    "\u0003",
  );
  const stream = fc.array(piece, { maxLength: 30 }).map((pieces) => pieces.join(""));

  it("the same bytes give the same lines, line being written, history and end", () => {
    fc.assert(
      fc.property(stream, fc.array(fc.nat({ max: 8 }), { maxLength: 60 }), (text, sizes) => {
        const bytes = Buffer.from(text);
        const decoder = new StringDecoder("utf8");
        const chunks: string[] = [];
        let at = 0;
        for (const size of [...sizes, bytes.length]) {
          chunks.push(decoder.write(bytes.subarray(at, at + size)));
          at += size;
        }
        expect(typed(chunks, ["past"])).toEqual(typed([text], ["past"]));
      }),
      { numRuns: 2000 },
    );
  });

  it("never leaves the line, and never holds what can't be shown", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary" }), stream, (any, text) => {
        const { editor } = typed([any + text]);
        expect(editor.cursor).toBeGreaterThanOrEqual(0);
        expect(editor.cursor).toBeLessThanOrEqual(editor.text.length);
        // biome-ignore lint/suspicious/noControlCharactersInRegex: none may be left
        expect(editor.text).not.toMatch(/[\u0000-\u001f\u007f-\u009f\u2028\u2029]/);
      }),
    );
  });
});
