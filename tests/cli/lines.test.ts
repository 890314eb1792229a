/** Lines of standard input: LF and CRLF end one and nothing else does, however the bytes arrive. */
import fc from "fast-check";
import { expect, it } from "vitest";
import { linesOf } from "../../src/cli/lines.ts";

async function* stream<T>(chunks: readonly T[]): AsyncGenerator<T> {
  yield* chunks;
}

async function lines(...chunks: (string | Uint8Array)[]): Promise<string[]> {
  const out: string[] = [];
  for await (const line of linesOf(stream(chunks))) out.push(line);
  return out;
}

it.each([
  ["nothing", "", []],
  ["one line", "a\n", ["a"]],
  ["a last line without its end", "a\nb", ["a", "b"]],
  ["a line end of two characters", "a\r\nb\r\n", ["a", "b"]],
  ["blank lines", "a\n\n\r\nb\n", ["a", "", "", "b"]],
  ["a carriage return inside a line", "a\rb\nc", ["a\rb", "c"]],
  [
    "other signs that some take for a line end",
    "a\u2028b\u2029c\u0085d\u000be\u000cf\n",
    ["a\u2028b\u2029c\u0085d\u000be\u000cf"],
  ],
  ["a carriage return at the very end", "a\r", ["a"]],
  ["only a line end", "\n", [""]],
])("%s", async (_, text, expected) => {
  expect(await lines(text)).toEqual(expected);
});

it("puts a line end together that was torn apart", async () => {
  expect(await lines("a\r", "\nb\r", "\n")).toEqual(["a", "b"]);
});

it("puts a character together that was torn apart", async () => {
  const bytes = new TextEncoder().encode("crème 🍪\n½\n");
  expect(await lines(...[...bytes].map((byte) => Uint8Array.of(byte)))).toEqual(["crème 🍪", "½"]);
});

it("lets no byte break it that is no text", async () => {
  expect(await lines(Uint8Array.of(0xff, 0x0a, 0xc3))).toEqual(["\ufffd", "\ufffd"]);
});

it("gives the same lines for any cut of the same bytes, with either line end", async () => {
  const line = fc.string({ unit: "grapheme", maxLength: 12 }).map((text) => text.replace(/[\r\n]/g, ""));
  await fc.assert(
    fc.asyncProperty(
      fc.array(line, { maxLength: 8 }),
      fc.array(fc.nat(40), { maxLength: 12 }),
      fc.constantFrom("\n", "\r\n"),
      async (said, cuts, end) => {
        const bytes = new TextEncoder().encode(said.map((each) => each + end).join(""));
        const places = [
          0,
          ...cuts.map((cut) => cut % (bytes.length + 1)).sort((a, b) => a - b),
          bytes.length,
        ];
        const chunks = places.slice(1).map((to, at) => bytes.slice(places[at], to));
        // a byte order mark at the very start is no part of the text
        expect(await lines(...chunks)).toEqual(
          said.map((each, at) => (at === 0 ? each.replace(/^\ufeff/, "") : each)),
        );
      },
    ),
  );
});
