/**
 * The short way of measuring text agrees with Unicode's own tables, as node's ICU holds them: no sign that is taken for
 * one cell by its place alone joins its neighbors (UAX 29), is invisible, or is shown as a picture of two cells (UTS 51).
 */
import { expect, it } from "vitest";
import { cells, graphemes, width } from "../../src/cli/chat/text.ts";

const blocks = [
  [0x20, 0x7e],
  [0xa1, 0x2ff],
  [0x2010, 0x2027],
  [0x2030, 0x205e],
  [0x2190, 0x21ff],
  [0x2200, 0x22ff],
  [0x2500, 0x259f],
] as const;
const signs = blocks
  .flatMap(([from, to]) => Array.from({ length: to - from + 1 }, (_, at) => String.fromCharCode(from + at)))
  .filter((sign) => sign !== "\u00ad");

it("takes each sign for a grapheme of its own", () => {
  const segmenter = new Intl.Segmenter(undefined, { granularity: "grapheme" });
  const text = signs.flatMap((sign) => [sign, "a", sign]).join("");
  expect(graphemes(text)).toEqual(Array.from(segmenter.segment(text), ({ segment }) => segment));
});

it("takes each sign for one cell, and none of them is invisible or a picture", () => {
  expect(
    signs.filter(
      (sign) =>
        cells(sign) !== 1 ||
        /\p{Emoji_Presentation}|\p{Mark}|\p{Default_Ignorable_Code_Point}|\p{Control}/u.test(sign),
    ),
  ).toEqual([]);
});

it("still measures the others by Unicode: joined, invisible and wide signs", () => {
  expect(width("e\u0301")).toBe(1);
  expect(width("a\u00adb")).toBe(2);
  expect(width("抹茶")).toBe(4);
  expect(width("👩‍🍳")).toBe(2);
});
